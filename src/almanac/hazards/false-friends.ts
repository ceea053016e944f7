/**
 * Names that end like a plant of the table and are none of it, and names that two plants share. From common floras and the
 * mix-ups that poison centres write of; from memory where no row names them.
 */

/** Whole names that take no row. */
export const falseFriends: readonly string[] = [
  // lilies that are no lilies and have no row of their own
  ...["water lily", "waterlily", "canna lily", "peace lily", "toad lily", "trout lily", "foxtail lily", "torch lily"],
  ...["pineapple lily", "ginger lily", "spider lily", "mariposa lily", "rain lily", "blackberry lily", "lily turf"],
  ...["corn lily", "fawn lily", "pond lily"],
  // potatoes, tomatoes, beans, peas
  ...["air potato", "tree tomato", "coffee bean", "vanilla bean", "jelly bean", "cocoa bean"],
  ...["locust bean", "butterfly pea", "rosary pea"],
  // apples, cherries, plums, pears, figs, grapes
  ...["custard apple", "may apple tree", "pineapple", "love apple", "prickly pear", "cornelian cherry"],
  ...["barbados cherry", "natal plum", "oregon grape", "hottentot fig", "barbary fig", "weeping fig"],
  // trees and shrubs
  ...["plum yew", "yew pine", "japanese spurge", "laburnum-leaf holly", "sea holly", "box elder", "ground elder"],
  ...["foxglove tree", "monkshood vine", "tulip tree", "boston ivy", "ground ivy", "german ivy", "spotted laurel"],
  ...["spanish broom", "sweet chestnut", "butterfly bush", "desert rose"],
  // herbs and flowers
  ...["meadow rue", "goat's rue", "wall rue", "evening primrose", "pot marigold", "corn marigold", "english marigold"],
  ...["summer hyacinth", "water hyacinth", "dead nettle", "deadnettle", "vietnamese mint"],
  ...["stone mint", "fool's watercress", "sea lavender", "new zealand flax", "mexican sunflower", "black nigella"],
  ...["horned poppy", "plume poppy", "tree poppy", "blue poppy", "himalayan poppy", "water soldier", "sea onion"],
  ...["rocket", "salad rocket", "sweet rocket", "dyer's rocket", "garden nasturtium", "creeping jenny"],
  ...["chilean glory vine", "potato bean", "jerusalem artichoke", "bishop's hat"],
];

export interface SharedName {
  readonly name: string;
  /** Which plants are called so, with their botanical names. */
  readonly means: string;
}

/** Names of two plants, one of them harmful: asked about, and no row until it is answered. */
export const sharedNames: readonly SharedName[] = [
  { name: "bishop's weed", means: "ammi (Ammi), whose sap burns skin in sun, or ground elder (Aegopodium)" },
  { name: "rose of sharon", means: "St John's wort (Hypericum) or a hibiscus (Hibiscus)" },
  { name: "winter cherry", means: "Chinese lantern (Alkekengi) or Jerusalem cherry (Solanum pseudocapsicum)" },
  { name: "naked lady", means: "autumn crocus (Colchicum), which can kill, or belladonna lily (Amaryllis)" },
  { name: "burning bush", means: "dittany (Dictamnus), a spindle (Euonymus) or summer cypress (Bassia)" },
  { name: "laurel", means: "bay (Laurus), which is eaten, or cherry laurel (Prunus laurocerasus), which is poisonous" },
  { name: "celandine", means: "greater celandine (Chelidonium) or lesser celandine (Ficaria)" },
  { name: "aconite", means: "monkshood (Aconitum), which can kill, or winter aconite (Eranthis)" },
  { name: "hemlock", means: "poison hemlock (Conium), which can kill, or the tree (Tsuga)" },
  { name: "elephant's ear", means: "taro and its kin (Colocasia, Alocasia) or bergenia (Bergenia)" },
  { name: "queen anne's lace", means: "wild carrot (Daucus), cow parsley (Anthriscus) or ammi (Ammi)" },
  { name: "bachelor's button", means: "cornflower (Centaurea) or feverfew (Tanacetum parthenium)" },
  { name: "jessamine", means: "jasmine (Jasminum), cestrum (Cestrum) or yellow jessamine (Gelsemium), which can kill" },
  { name: "white cedar", means: "chinaberry (Melia), whose berries are poisonous, or a conifer (Thuja)" },
];
