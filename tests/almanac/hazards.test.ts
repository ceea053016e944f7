/** The hazard table: every row whole, and every name to its own row; false friends of names get none. */
import { describe, expect, test } from "vitest";
import { hazardRows } from "../../scripts/truth/hazards.ts";
import {
  type NamedPlant,
  plantHazards,
  plantHazardsOf,
  sharedNameOf,
  workCaution,
  workHazards,
  workHazardsIn,
} from "../../src/almanac/index.ts";
import { crops } from "../../src/records/index.ts";

const cropOf = (id: string) => crops.find((crop) => crop.id === id);
const rowsOf = (plant: NamedPlant | string) =>
  plantHazardsOf(typeof plant === "string" ? { title: plant } : plant).map(({ title }) => title);
const rowOf = (name: string) => plantHazardsOf({ title: name })[0];

describe("rows", () => {
  // Counts of the list of 29 November 2026.
  test("are 142 of plants and 48 of work", () => {
    const proofs = Object.groupBy(plantHazards, ({ proof }) => proof);
    expect(plantHazards).toHaveLength(142);
    expect(Object.fromEntries(Object.entries(proofs).map(([proof, rows]) => [proof, rows?.length]))).toEqual({
      seen: 81,
      partly: 6,
      "animals only": 23,
      memory: 32,
    });
    expect(new Set(plantHazards.flatMap(({ genera }) => genera)).size).toBe(218);
    expect(workHazards).toHaveLength(48);
  });

  test("have part, route, grade, a source or the word that they are from memory, and a short line", () => {
    for (const row of plantHazards) {
      expect.soft(row.part, row.title).not.toBe("");
      expect.soft(row.routes.length, row.title).toBeGreaterThan(0);
      expect.soft(row.caution.length, row.title).toBeLessThanOrEqual(175);
      expect.soft(row.names.length, row.title).toBeGreaterThan(0);
      expect.soft(row.sources.length > 0 || row.proof === "memory", row.title).toBe(true);
    }
    for (const row of workHazards) {
      expect.soft(row.caution.length, row.what).toBeLessThanOrEqual(175);
      expect.soft(row.sources.length > 0 || row.proof === "memory", row.what).toBe(true);
    }
  });

  test("defer to somebody who knows", () => {
    const deferral = /poison centre|doctor|ambulance|\bvet\b/;
    expect(plantHazards.filter(({ caution }) => !deferral.test(caution)).map(({ title }) => title)).toEqual([]);
    const other =
      /poison centre|doctor|ambulance|\bvet\b|label|recipe|maker|law|rules|licensed|extension office|council|regulator|electrician|canner and fresh/;
    expect(workHazards.filter((row) => !other.test(workCaution(row))).map(({ what }) => what)).toEqual([]);
  });

  test("show at once all that can kill", () => {
    expect(plantHazards.filter(({ grade, show }) => grade === "can kill" && show !== "always")).toEqual([]);
    expect(plantHazards.filter(({ show }) => show === "always")).toHaveLength(61);
  });

  test("name crops the records know, in whole ids", () => {
    const ids = new Set(crops.map(({ id }) => id));
    expect(plantHazards.flatMap((row) => row.crops).filter((id) => !ids.has(id))).toEqual([]);
  });
});

describe("a name goes to its own row", () => {
  test.each<[string, NamedPlant | string, string[]]>([
    ["winter aconite", "Winter aconite (Eranthis)", ["Eranthis"]],
    ["winter aconite without brackets", "Winter aconite", ["Eranthis"]],
    ["castor bean", "Ricinus communis", ["Ricinus"]],
    ["castor bean by its botanical name", { title: "Castor bean", botanical: "Ricinus communis" }, ["Ricinus"]],
    ["yellow oleander", "Yellow oleander (Cascabela)", ["Nerium, Cascabela (Thevetia)"]],
    ["a potato-leaved tomato", { crop: cropOf("tomato"), title: "Brandywine Potato Leaf" }, ["Solanum lycopersicum"]],
    ["the same in quotation marks", "Tomato 'Brandywine Potato Leaf'", ["Solanum lycopersicum"]],
    ["tree tomato", "Tree tomato", []],
    ["tree tomato taken for a tomato", { crop: cropOf("tomato"), title: "Tree tomato" }, []],
    ["tamarillo", "Tamarillo", []],
    ["tamarillo by its botanical name", { title: "Tamarillo", botanical: "Solanum betaceum" }, []],
    ["potato vine", "Potato vine (Solanum laxum)", [nightshades()]],
    ["Jerusalem cherry", "Jerusalem cherry (Solanum pseudocapsicum)", [nightshades()]],
    ["Penstemon digitalis", "Penstemon digitalis", []],
    ["Penstemon digitalis as botanical", { title: "Husker Red", botanical: "Penstemon digitalis" }, []],
    ["foxglove tree", "Foxglove tree (Paulownia)", []],
    ["Foxglove Tree", "Foxglove Tree", []],
    ["everlasting pea", "Everlasting pea", ["Lathyrus (odoratus, latifolius, sylvestris)"]],
    ["autumn crocus", "Autumn crocus", ["Colchicum"]],
    ["autumn crocus taken for a crocus", { crop: cropOf("crocus"), title: "Autumn crocus" }, ["Colchicum"]],
    ["ammi", { crop: cropOf("ammi") }, ["Ammi majus, A. visnaga"]],
    ["lily", { crop: cropOf("lily"), title: "Stargazer" }, ["Lilium"]],
    ["daylily", "Daylily", ["Hemerocallis"]],
    ["lima bean", { crop: cropOf("lima-bean"), title: "Christmas" }, ["Phaseolus lunatus"]],
    ["cherry laurel", "Cherry laurel", ["Prunus laurocerasus, P. lusitanica"]],
    ["hemlock water dropwort", "Hemlock water dropwort", ["Conium, Oenanthe, Cicuta, Aethusa"]],
    ["Peruvian lily", { crop: cropOf("lily"), title: "Peruvian lily" }, ["Alstroemeria"]],
    ["arum lily", { crop: cropOf("lily"), title: "Arum lily" }, ["Arum, Zantedeschia, Arisaema, Lysichiton, Calla"]],
    ["water lily", { crop: cropOf("lily"), title: "Water lily" }, []],
    ["lily of the valley", { crop: cropOf("lily"), title: "Lily of the valley" }, ["Convallaria"]],
    ["lilies of the valley", "Lilies of the Valley", ["Convallaria"]],
    ["lilyturf", "Lilyturf", []],
    ["yew pine", "Yew pine (Podocarpus)", []],
    ["plum yew", "Plum yew (Cephalotaxus)", []],
    ["Japanese spurge", "Japanese spurge (Pachysandra)", []],
    ["spurge laurel", "Spurge laurel (Daphne laureola)", ["Daphne"]],
    ["false hellebore", "False hellebore (Veratrum)", ["Podophyllum, Veratrum, Aristolochia"]],
    [
      "narcissus-flowered dahlia",
      "Narcissus-flowered dahlia",
      ["Gladiolus, Dahlia, Dianthus, Gypsophila, Hosta, Begonia, Cyclamen"],
    ],
    ["daffodil garlic", "Daffodil garlic (Allium neapolitanum)", ["Allium (crop and ornamental)"]],
    ["laburnum-leaf holly", "Laburnum-leaf holly", []],
    ["monkshood vine", "Monkshood vine (Ampelopsis)", []],
    ["rheumatism root", "Rheumatism root", []],
    ["rocket larkspur", { crop: cropOf("larkspur"), title: "Rocket larkspur" }, ["Delphinium, Consolida"]],
    ["rocket", { crop: cropOf("rocket") }, []],
    ["lemon verbena", { crop: cropOf("verbena"), title: "Lemon verbena" }, ["Aloysia"]],
    ["the bedding verbena", { crop: cropOf("verbena"), title: "Quartz" }, []],
    ["sweet potato", { crop: cropOf("sweet-potato") }, ["Ipomoea batatas"]],
    ["sweet potato by its botanical name", { title: "Beauregard", botanical: "Ipomoea batatas" }, ["Ipomoea batatas"]],
    ["bay", "Bay", ["Laurus"]],
    ["laurel hedge", "Laurel hedge", ["Prunus laurocerasus, P. lusitanica"]],
    ["marsh marigold", { crop: cropOf("marigold"), title: "Marsh marigold" }, ["Caltha"]],
    ["pot marigold", { crop: cropOf("marigold"), title: "Pot marigold" }, []],
    ["calendula", { crop: cropOf("calendula") }, []],
    ["French marigold", { crop: cropOf("marigold"), title: "French marigold" }, [daisies()]],
    ["nasturtium", { crop: cropOf("nasturtium"), title: "Alaska" }, []],
    ["nasturtium without a crop", "Nasturtium Alaska", []],
    ["Tropaeolum", { title: "Alaska", botanical: "Tropaeolum majus" }, []],
    ["Nasturtium officinale", "Nasturtium officinale", ["Nasturtium officinale"]],
    ["horse chestnut", "Horse chestnut", ["Aesculus"]],
    ["sweet chestnut", "Sweet chestnut", []],
    ["thorn apple", { crop: cropOf("apple"), title: "Thorn apple" }, ["Brugmansia, Datura"]],
    ["mayapple", "Mayapple", ["Podophyllum, Veratrum, Aristolochia"]],
    ["ground cherry", { crop: cropOf("ground-cherry") }, ["Physalis pruinosa, P. peruviana"]],
    ["tomatillo", { crop: cropOf("tomatillo") }, ["Physalis philadelphica"]],
    ["cherry tomato", "Cherry tomato", ["Solanum lycopersicum"]],
    ["elder", "Elder", ["Sambucus"]],
    ["ground elder", "Ground elder", []],
    ["box elder", "Box elder", []],
    ["Christmas rose", { crop: cropOf("rose"), title: "Christmas rose" }, ["Helleborus"]],
    ["Lenten rose", "Lenten roses", ["Helleborus"]],
    ["rose of Sharon, a hibiscus", { title: "Rose of Sharon", botanical: "Hibiscus syriacus" }, []],
    ["rose of Sharon, St John's wort", { title: "Rose of Sharon", botanical: "Hypericum calycinum" }, ["Hypericum"]],
    ["poison ivy", "Poison ivy", ["Toxicodendron"]],
    ["ivy", "Ivy", ["Hedera"]],
    ["Boston ivy", "Boston ivy", []],
    ["ground ivy", "Ground ivy", []],
    ["hemlock tree", { title: "Hemlock", botanical: "Tsuga canadensis" }, []],
    ["poison hemlock", "Poison hemlock", ["Conium, Oenanthe, Cicuta, Aethusa"]],
    ["yuca", "Yuca (cassava)", ["Manihot"]],
    ["yucca", "Yucca", []],
    ["soya bean", { crop: cropOf("soya-bean") }, ["Glycine, Cicer, Vigna"]],
    ["coffee bean", { crop: cropOf("bean"), title: "Coffee bean" }, []],
    ["castor bean taken for a bean", { crop: cropOf("bean"), title: "Castor bean" }, ["Ricinus"]],
    ["bean", { crop: cropOf("bean") }, ["Phaseolus vulgaris"]],
    ["broad bean", { crop: cropOf("broad-bean") }, ["Vicia faba"]],
    ["opium poppy", { crop: cropOf("poppy"), title: "Opium poppy" }, ["Papaver somniferum"]],
    ["Iceland poppy", { crop: cropOf("poppy"), title: "Iceland poppy" }, ["Papaver (other), Eschscholzia"]],
    ["Papaver somniferum", { title: "Lauren's Grape", botanical: "Papaver somniferum" }, ["Papaver somniferum"]],
    ["Papaver rhoeas", { title: "Amazing Grey", botanical: "Papaver rhoeas" }, ["Papaver (other), Eschscholzia"]],
    ["garden pea by its botanical name", { title: "Sweet peas", botanical: "Pisum sativum" }, []],
    ["aubergine by its genus and crop", { crop: cropOf("aubergine"), botanical: "Solanum" }, ["Solanum melongena"]],
    [
      "old name of the tomato",
      { title: "Ailsa Craig", botanical: "Lycopersicon esculentum" },
      ["Solanum lycopersicum"],
    ],
    ["a common name first", "Foxglove 'Excelsior'", ["Digitalis"]],
    ["a common name first, capitals behind", "Lily Stargazer", ["Lilium"]],
    ["a plural", "Foxgloves", ["Digitalis"]],
    ["a colour before the name", "White foxglove", ["Digitalis"]],
    [
      "crop and botanical name apart",
      { crop: cropOf("poppy"), botanical: "Eschscholzia californica" },
      ["Papaver (other), Eschscholzia"],
    ],
    ["unknown", "Grandmother's blue one", []],
  ])("%s", (_, plant, expected) => {
    expect(rowsOf(plant)).toEqual(expected);
  });

  test("the cats' lily row is for lilies alone", () => {
    expect(rowOf("Peruvian lily")?.caution).not.toContain("cats");
    expect(rowOf("Lilium regale")?.caution).toContain("Lilies kill cats");
    expect(rowOf("Winter aconite")?.grade).toBe("short illness");
    expect(rowOf("Monkshood")?.grade).toBe("can kill");
  });
});

test("no name that only sounds like a row takes it, and no row's own name misses it", () => {
  expect(hazardRows().filter(({ met }) => met === false)).toEqual([]);
});

test("two plants of one name are asked about and take no row", () => {
  const asked = [
    { title: "Sweet peas (sugar snap)" },
    { title: "Sweet pea", crop: cropOf("sugar-snap") },
    { title: "Bishop's weed" },
    { title: "Rose of Sharon" },
    { title: "Winter cherry" },
    { title: "Laurel" },
    { title: "Hemlock" },
  ];
  expect(asked.filter((plant) => sharedNameOf(plant) === undefined)).toEqual([]);
  expect(asked.flatMap((plant) => plantHazardsOf(plant))).toEqual([]);
  expect(sharedNameOf({ title: "Matucana", crop: cropOf("sweet-pea") })).toBeUndefined();
  expect(sharedNameOf({ title: "Hemlock", botanical: "Tsuga heterophylla" })).toBeUndefined();
});

describe("work", () => {
  const found = (line: string) => workHazardsIn(line).map(({ what }) => what);
  test.each<[string, string[]]>([
    ["put up 12 quarts of tomatoes", ["Low-acid vegetables in jars", "Tomatoes, figs and other borderline fruit"]],
    ["put up twelve pints", ["Low-acid vegetables in jars"]],
    ["put up thirty-litre pots by the shed", []],
    ["put up bean canes", []],
    ["water-bath processed beans", ["Low-acid vegetables in jars", "Altitude"]],
    ["jarred the beans", ["Low-acid vegetables in jars"]],
    ["stored garlic in olive oil", ["Garlic, herbs, chillies or vegetables in oil"]],
    ["worked the soil round the garlic", []],
    ["fermented sauerkraut", ["Fermenting"]],
    ["made elderberry wine", ["Elderberries in jars", "Rhubarb and elder drinks, fruit wine"]],
    ["picked 3 Brandywine", []],
    ["canned the white peaches", ["Low-acid vegetables in jars", "White-fleshed peaches and nectarines", "Altitude"]],
    ["put down metaldehyde", ["Metaldehyde slug pellets"]],
    ["applied copper to the vines", ["Copper, Bordeaux mixture"]],
    [
      "did: washing-up liquid and garlic water on the aphids",
      ["Home-made mixtures: soap, garlic, chilli, rhubarb leaf"],
    ],
    ["dusted with diatomaceous earth", ["Diatomaceous earth, dusts, lime, sulphur"]],
    ["sprayed home-made nicotine tea", ["Any pesticide, herbicide, fungicide", "Tobacco or nicotine mixture"]],
    ["mowed", ["Mowers"]],
    ["strimmed the paths", ["Strimmers, brush cutters, hedge trimmers, shredders, chain saws"]],
    ["climbed the steps to pick pears", ["Ladders, steps"]],
    ["treated the fence with creosote", ["Old railway sleepers, creosote"]],
    ["spread fresh manure on the lettuces", ["Fresh manure before harvest"]],
    ["dug a trench 1.5 m deep", ["Trenches and holes"]],
    ["filled the pots with potting soil", ["Potting mix and bagged compost"]],
    ["moved the water butt", ["Ponds and water butts"]],
    ["did: bonfire of blighted haulms", ["Bonfires"]],
    ["found lead in the soil test", ["Foul soil, old paint, ash"]],
    ["planted 4 squash when the ash came into leaf", []],
    ["sowed 20 Rose de Lautrec and some Moroccan mint", []],
    ["picked 2 kg thornless blackberries under the hawthorn", []],
  ])("%s", (line, expected) => {
    expect(found(line)).toEqual(expected);
  });
});

function nightshades(): string {
  return "Solanum (nigrum, dulcamara, pseudocapsicum, laxum and other nightshades)";
}

function daisies(): string {
  return "Chrysanthemum, Leucanthemum, Argyranthemum, Tagetes, Helianthus, Callistephus and other daisies";
}
