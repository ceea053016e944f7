/**
 * The crops a garden grows: vegetables, fruit, herbs, flowers for cutting and cover crops.
 *
 * Families follow extension rotation tables (WVU Extension 2025; UC Master Gardener Handbook) with today's names:
 * onions in Amaryllidaceae, beet and spinach in Amaranthaceae. Families of flowers, herbs and fruit are from memory of
 * standard floras. `perennial` means that the crop commonly stands from year to year where it was planted: rhubarb and
 * dahlias do, tomatoes do not, whatever they would do in a warmer place.
 */
import type { Crop, PickUnit } from "../model.ts";

/** Name, plural, other names of Britain and America. The id is the name in kebab-case. */
type Row = readonly [name: string, plural: string, ...alsoCalled: string[]];

function grown(family: string, use: Crop["use"], perennial: boolean, rows: readonly Row[]): Crop[] {
  return rows.map(([name, plural, ...alsoCalled]) => ({
    id: name.toLowerCase().replace(/’/g, "").replace(/ /g, "-"),
    name,
    plural,
    alsoCalled,
    family,
    perennial,
    use,
  }));
}

const years = true;
const oneYear = false;

export const crops: readonly Crop[] = [
  // ------------------------------------------------------------------------------------------------------- vegetables
  ...grown("Solanaceae", "vegetable", oneYear, [
    ["tomato", "tomatoes", "toms", "cherry tomato", "plum tomato", "beefsteak tomato"],
    ["pepper", "peppers", "sweet pepper", "bell pepper", "capsicum"],
    ["chilli", "chillies", "chili", "chile", "chilli pepper", "chili pepper", "hot pepper", "chilies"],
    ["aubergine", "aubergines", "eggplant", "brinjal"],
    ["potato", "potatoes", "spud", "new potato", "seed potato", "maincrop potato", "early potato"],
    ["tomatillo", "tomatillos"],
    ["ground cherry", "ground cherries", "cape gooseberry", "physalis", "goldenberry"],
  ]),
  ...grown("Brassicaceae", "vegetable", oneYear, [
    ["cabbage", "cabbages", "red cabbage", "savoy cabbage", "spring cabbage", "pointed cabbage", "spring greens"],
    ["Chinese cabbage", "Chinese cabbages", "napa cabbage", "Chinese leaf"],
    ["broccoli", "broccoli", "calabrese", "heading broccoli"],
    [
      "sprouting broccoli",
      "sprouting broccoli",
      "purple sprouting broccoli",
      "purple sprouting",
      "PSB",
      "broccoli raab",
    ],
    ["cauliflower", "cauliflowers", "cauli"],
    ["Brussels sprout", "Brussels sprouts", "sprouts"],
    ["kale", "kale", "borecole", "curly kale", "black kale", "Russian kale"],
    ["collard", "collards", "collard greens"],
    ["kohlrabi", "kohlrabi"],
    ["radish", "radishes", "salad radish"],
    ["mooli", "mooli", "daikon", "winter radish"],
    ["turnip", "turnips", "turnip greens"],
    ["swede", "swedes", "rutabaga", "neep"],
    ["mustard greens", "mustard greens", "leaf mustard", "oriental mustard"],
    ["mizuna", "mizuna", "mibuna"],
    ["pak choi", "pak choi", "bok choy", "bok choi", "pac choi"],
    ["rocket", "rocket", "arugula", "rucola", "wild rocket"],
    ["cress", "cress", "garden cress", "land cress"],
    ["watercress", "watercress"],
  ]),
  ...grown("Brassicaceae", "vegetable", years, [
    ["horseradish", "horseradish"],
    ["sea kale", "sea kale"],
  ]),
  ...grown("Cucurbitaceae", "vegetable", oneYear, [
    ["cucumber", "cucumbers", "cuke"],
    ["gherkin", "gherkins", "pickling cucumber"],
    ["squash", "squash", "squashes", "winter squash", "butternut squash", "butternut"],
    ["summer squash", "summer squash", "summer squashes", "patty pan", "pattypan", "crookneck squash"],
    ["courgette", "courgettes", "zucchini", "zucchinis"],
    ["marrow", "marrows", "vegetable marrow"],
    ["pumpkin", "pumpkins"],
    ["gourd", "gourds", "ornamental gourd", "loofah", "luffa"],
  ]),
  ...grown("Fabaceae", "vegetable", oneYear, [
    ["pea", "peas", "garden pea", "English pea", "shelling pea", "pea shoots"],
    ["mangetout", "mangetout", "snow pea"],
    ["sugar snap", "sugar snaps", "sugar snap pea", "snap pea"],
    ["bean", "beans", "dried bean", "dry bean", "shell bean"],
    ["broad bean", "broad beans", "fava bean", "fava"],
    ["runner bean", "runner beans", "scarlet runner"],
    [
      "French bean",
      "French beans",
      "green bean",
      "snap bean",
      "string bean",
      "dwarf bean",
      "dwarf French bean",
      "climbing French bean",
      "climbing bean",
      "pole bean",
      "bush bean",
      "haricot",
      "borlotti bean",
      "borlotti",
      "wax bean",
      "haricot vert",
    ],
    ["lima bean", "lima beans", "butter bean"],
    ["soya bean", "soya beans", "soybean", "edamame"],
    ["cowpea", "cowpeas", "southern pea", "black-eyed pea"],
    ["chickpea", "chickpeas", "garbanzo"],
    ["peanut", "peanuts", "groundnut"],
  ]),
  ...grown("Amaryllidaceae", "vegetable", oneYear, [
    ["onion", "onions", "red onion", "bulb onion"],
    ["spring onion", "spring onions", "scallion", "green onion", "salad onion", "bunching onion"],
    ["shallot", "shallots", "banana shallot"],
    ["leek", "leeks"],
    ["garlic", "garlic", "hardneck garlic", "softneck garlic", "elephant garlic"],
  ]),
  ...grown("Amaryllidaceae", "vegetable", years, [["Welsh onion", "Welsh onions", "walking onion"]]),
  ...grown("Amaranthaceae", "vegetable", oneYear, [
    ["beetroot", "beetroot", "beet", "red beet"],
    ["chard", "chard", "Swiss chard"],
    ["perpetual spinach", "perpetual spinach", "spinach beet", "leaf beet"],
    ["spinach", "spinach"],
    ["amaranth", "amaranth", "love-lies-bleeding", "callaloo"],
    ["orach", "orach", "orache"],
  ]),
  ...grown("Apiaceae", "vegetable", oneYear, [
    ["carrot", "carrots"],
    ["parsnip", "parsnips"],
    ["celery", "celery"],
    ["celeriac", "celeriac", "celery root"],
    ["fennel", "fennel", "Florence fennel", "bulb fennel"],
    ["Hamburg parsley", "Hamburg parsley", "root parsley"],
  ]),
  ...grown("Asteraceae", "vegetable", oneYear, [
    ["lettuce", "lettuces", "cos lettuce", "romaine", "butterhead", "romaine lettuce"],
    ["endive", "endives", "escarole", "frisée"],
    ["chicory", "chicory", "radicchio", "witloof"],
    ["salsify", "salsify"],
    ["scorzonera", "scorzonera", "black salsify"],
  ]),
  ...grown("Asteraceae", "vegetable", years, [
    ["globe artichoke", "globe artichokes", "artichoke"],
    ["Jerusalem artichoke", "Jerusalem artichokes", "sunchoke", "fartichoke"],
    ["cardoon", "cardoons"],
  ]),
  ...grown("Poaceae", "vegetable", oneYear, [
    ["sweetcorn", "sweetcorn", "sweet corn", "corn", "maize", "popcorn", "corn on the cob"],
  ]),
  ...grown("Convolvulaceae", "vegetable", oneYear, [["sweet potato", "sweet potatoes", "kumara"]]),
  ...grown("Malvaceae", "vegetable", oneYear, [["okra", "okra", "lady’s fingers"]]),
  ...grown("Polygonaceae", "vegetable", years, [
    ["rhubarb", "rhubarb"],
    ["sorrel", "sorrel", "French sorrel"],
  ]),
  ...grown("Asparagaceae", "vegetable", years, [["asparagus", "asparagus"]]),
  ...grown("Caprifoliaceae", "vegetable", oneYear, [["corn salad", "corn salad", "lamb’s lettuce", "mâche"]]),
  ...grown("Montiaceae", "vegetable", oneYear, [
    ["winter purslane", "winter purslane", "claytonia", "miner’s lettuce"],
  ]),
  ...grown("Portulacaceae", "vegetable", oneYear, [["purslane", "purslane", "summer purslane"]]),
  ...grown("Aizoaceae", "vegetable", oneYear, [["New Zealand spinach", "New Zealand spinach"]]),
  ...grown("Oxalidaceae", "vegetable", oneYear, [["oca", "oca"]]),

  // ------------------------------------------------------------------------------------------------------------ fruit
  ...grown("Cucurbitaceae", "fruit", oneYear, [
    ["melon", "melons", "muskmelon", "cantaloupe", "cantaloupe melon", "honeydew"],
    ["watermelon", "watermelons"],
  ]),
  ...grown("Rosaceae", "fruit", years, [
    ["strawberry", "strawberries", "strawbs", "alpine strawberry"],
    ["raspberry", "raspberries", "autumn raspberry", "summer raspberry"],
    ["blackberry", "blackberries", "bramble"],
    ["loganberry", "loganberries", "tayberry", "boysenberry", "hybrid berry"],
    ["apple", "apples", "crab apple"],
    ["pear", "pears"],
    ["plum", "plums", "damson", "gage", "greengage"],
    ["cherry", "cherries", "sour cherry"],
    ["peach", "peaches", "nectarine"],
    ["apricot", "apricots"],
    ["quince", "quinces"],
    ["medlar", "medlars"],
  ]),
  ...grown("Ericaceae", "fruit", years, [
    ["blueberry", "blueberries"],
    ["cranberry", "cranberries"],
  ]),
  ...grown("Grossulariaceae", "fruit", years, [
    ["blackcurrant", "blackcurrants", "black currant"],
    ["redcurrant", "redcurrants", "red currant", "whitecurrant", "white currant"],
    ["gooseberry", "gooseberries", "jostaberry"],
  ]),
  ...grown("Caprifoliaceae", "fruit", years, [["honeyberry", "honeyberries", "haskap"]]),
  ...grown("Vitaceae", "fruit", years, [["grape", "grapes", "grapevine", "grape vine"]]),
  ...grown("Moraceae", "fruit", years, [
    ["fig", "figs"],
    ["mulberry", "mulberries"],
  ]),
  ...grown("Actinidiaceae", "fruit", years, [["kiwi", "kiwis", "kiwi fruit", "kiwi berry"]]),
  ...grown("Rutaceae", "fruit", years, [["lemon", "lemons", "citrus"]]),

  // ------------------------------------------------------------------------------------------------------------ herbs
  ...grown("Apiaceae", "herb", oneYear, [
    ["parsley", "parsley", "flat-leaf parsley", "curly parsley"],
    ["dill", "dill"],
    ["coriander", "coriander", "cilantro"],
    ["chervil", "chervil"],
    ["caraway", "caraway"],
  ]),
  ...grown("Apiaceae", "herb", years, [["lovage", "lovage"]]),
  ...grown("Amaryllidaceae", "herb", years, [
    ["chive", "chives"],
    ["garlic chive", "garlic chives", "Chinese chive"],
  ]),
  ...grown("Lamiaceae", "herb", oneYear, [
    ["basil", "basil", "Thai basil", "sweet basil"],
    ["summer savory", "summer savory", "savory"],
    ["shiso", "shiso", "perilla"],
  ]),
  ...grown("Lamiaceae", "herb", years, [
    ["mint", "mint", "spearmint", "peppermint"],
    ["sage", "sage"],
    ["thyme", "thyme", "lemon thyme"],
    ["rosemary", "rosemary"],
    ["oregano", "oregano", "marjoram"],
    ["lemon balm", "lemon balm"],
    ["hyssop", "hyssop"],
  ]),
  ...grown("Asteraceae", "herb", years, [["tarragon", "tarragon", "French tarragon"]]),
  ...grown("Asteraceae", "herb", oneYear, [["chamomile", "chamomile", "camomile"]]),
  ...grown("Boraginaceae", "herb", oneYear, [["borage", "borage"]]),
  ...grown("Boraginaceae", "herb", years, [["comfrey", "comfrey"]]),
  ...grown("Lauraceae", "herb", years, [["bay tree", "bay trees", "bay laurel", "sweet bay"]]),
  ...grown("Poaceae", "herb", years, [["lemongrass", "lemongrass", "lemon grass"]]),

  // ---------------------------------------------------------------------------------------------------------- flowers
  ...grown("Asteraceae", "flower", oneYear, [
    ["sunflower", "sunflowers"],
    ["zinnia", "zinnias"],
    ["cosmos", "cosmos"],
    ["calendula", "calendulas", "pot marigold", "English marigold"],
    ["marigold", "marigolds", "tagetes", "French marigold", "African marigold"],
    ["cornflower", "cornflowers", "bachelor’s button"],
    ["China aster", "China asters", "callistephus"],
    ["strawflower", "strawflowers", "helichrysum"],
    ["ageratum", "ageratum", "flossflower"],
  ]),
  ...grown("Asteraceae", "flower", years, [
    ["dahlia", "dahlias"],
    ["chrysanthemum", "chrysanthemums"],
    ["aster", "asters", "Michaelmas daisy"],
    ["rudbeckia", "rudbeckias", "black-eyed Susan"],
    ["echinacea", "echinaceas", "coneflower"],
    ["yarrow", "yarrow", "achillea"],
    ["feverfew", "feverfew"],
    ["globe thistle", "globe thistles", "echinops"],
  ]),
  ...grown("Fabaceae", "flower", oneYear, [["sweet pea", "sweet peas"]]),
  ...grown("Fabaceae", "flower", years, [["lupin", "lupins", "lupine"]]),
  ...grown("Brassicaceae", "flower", oneYear, [
    ["stock", "stocks", "matthiola"],
    ["wallflower", "wallflowers", "erysimum"],
    ["honesty", "honesty", "lunaria"],
    ["sweet alyssum", "sweet alyssum", "alyssum"],
  ]),
  ...grown("Plantaginaceae", "flower", oneYear, [
    ["snapdragon", "snapdragons", "antirrhinum"],
    ["foxglove", "foxgloves", "digitalis"],
  ]),
  ...grown("Plantaginaceae", "flower", years, [["penstemon", "penstemons"]]),
  ...grown("Ranunculaceae", "flower", oneYear, [
    ["larkspur", "larkspur"],
    ["nigella", "nigella", "love-in-a-mist"],
    ["ranunculus", "ranunculus", "ranunculuses"],
    ["anemone", "anemones"],
  ]),
  ...grown("Ranunculaceae", "flower", years, [
    ["delphinium", "delphiniums"],
    ["aquilegia", "aquilegias", "columbine"],
    ["hellebore", "hellebores"],
  ]),
  ...grown("Papaveraceae", "flower", oneYear, [["poppy", "poppies", "Iceland poppy", "California poppy"]]),
  ...grown("Caryophyllaceae", "flower", oneYear, [
    ["sweet William", "sweet Williams"],
    ["gypsophila", "gypsophila", "baby’s breath"],
    ["corncockle", "corncockles"],
  ]),
  ...grown("Caryophyllaceae", "flower", years, [["dianthus", "dianthus", "carnation"]]),
  ...grown("Apiaceae", "flower", oneYear, [
    ["ammi", "ammi", "bishop’s flower", "false Queen Anne’s lace"],
    ["orlaya", "orlaya", "white lace flower"],
  ]),
  ...grown("Apiaceae", "flower", years, [
    ["sea holly", "sea hollies", "eryngium"],
    ["astrantia", "astrantias"],
  ]),
  ...grown("Amaranthaceae", "flower", oneYear, [
    ["celosia", "celosias", "cockscomb"],
    ["gomphrena", "gomphrenas", "globe amaranth"],
  ]),
  ...grown("Plumbaginaceae", "flower", oneYear, [["statice", "statice", "limonium"]]),
  ...grown("Tropaeolaceae", "flower", oneYear, [["nasturtium", "nasturtiums"]]),
  ...grown("Onagraceae", "flower", oneYear, [["clarkia", "clarkias", "godetia"]]),
  ...grown("Boraginaceae", "flower", oneYear, [
    ["forget-me-not", "forget-me-nots", "myosotis"],
    ["cerinthe", "cerinthe", "honeywort"],
  ]),
  ...grown("Caprifoliaceae", "flower", years, [["scabious", "scabious", "scabiosa", "pincushion flower"]]),
  ...grown("Lamiaceae", "flower", years, [
    ["lavender", "lavender", "lavenders"],
    ["salvia", "salvias", "clary"],
  ]),
  ...grown("Lamiaceae", "flower", oneYear, [["bells of Ireland", "bells of Ireland", "moluccella"]]),
  ...grown("Polemoniaceae", "flower", oneYear, [
    ["phlox", "phlox"],
    ["cobaea", "cobaea", "cup and saucer vine"],
  ]),
  ...grown("Verbenaceae", "flower", oneYear, [["verbena", "verbenas"]]),
  ...grown("Violaceae", "flower", oneYear, [["viola", "violas", "pansy", "pansies"]]),
  ...grown("Malvaceae", "flower", oneYear, [
    ["hollyhock", "hollyhocks"],
    ["lavatera", "lavateras", "mallow"],
  ]),
  ...grown("Iridaceae", "flower", years, [
    ["gladiolus", "gladioli", "gladiola", "gladioluses"],
    ["iris", "irises"],
    ["crocus", "crocuses"],
  ]),
  ...grown("Iridaceae", "flower", oneYear, [["freesia", "freesias"]]),
  ...grown("Liliaceae", "flower", years, [
    ["tulip", "tulips"],
    ["lily", "lilies"],
  ]),
  ...grown("Amaryllidaceae", "flower", years, [
    ["daffodil", "daffodils", "narcissus", "narcissi", "jonquil"],
    ["allium", "alliums", "ornamental onion"],
    ["snowdrop", "snowdrops"],
  ]),
  ...grown("Asparagaceae", "flower", years, [["hyacinth", "hyacinths"]]),
  ...grown("Alstroemeriaceae", "flower", years, [["alstroemeria", "alstroemerias", "Peruvian lily"]]),
  ...grown("Paeoniaceae", "flower", years, [["peony", "peonies"]]),
  ...grown("Rosaceae", "flower", years, [
    ["rose", "roses"],
    ["geum", "geums"],
  ]),
  ...grown("Geraniaceae", "flower", years, [["geranium", "geraniums", "cranesbill"]]),
  ...grown("Geraniaceae", "flower", oneYear, [["pelargonium", "pelargoniums"]]),
  ...grown("Hydrangeaceae", "flower", years, [["hydrangea", "hydrangeas"]]),

  // ------------------------------------------------------------------------------------------------------ cover crops
  ...grown("Fabaceae", "cover", oneYear, [
    ["clover", "clover", "crimson clover", "red clover", "white clover"],
    ["vetch", "vetch", "tares", "winter tares", "hairy vetch"],
    ["field bean", "field beans", "winter field bean", "bell bean"],
    ["field pea", "field peas", "Austrian winter pea"],
    ["fenugreek", "fenugreek"],
    ["lucerne", "lucerne", "alfalfa"],
  ]),
  ...grown("Poaceae", "cover", oneYear, [
    ["rye", "rye", "grazing rye", "winter rye", "cereal rye", "Hungarian rye", "Hungarian grazing rye"],
    ["oat", "oats", "winter oats"],
    ["wheat", "wheat"],
    ["barley", "barley"],
    ["ryegrass", "ryegrass", "Westerwolds ryegrass"],
  ]),
  ...grown("Brassicaceae", "cover", oneYear, [
    ["mustard", "mustard", "white mustard", "caliente mustard"],
    ["fodder radish", "fodder radish", "tillage radish"],
  ]),
  ...grown("Polygonaceae", "cover", oneYear, [["buckwheat", "buckwheat"]]),
  ...grown("Boraginaceae", "cover", oneYear, [["phacelia", "phacelia"]]),
  ...grown("Linaceae", "cover", oneYear, [["flax", "flax", "linseed"]]),

  // ------------------------------------------------------------------------------------- trees, shrubs and climbers
  ...grown("Oleaceae", "fruit", years, [["olive", "olives", "olive tree"]]),
  ...grown("Betulaceae", "fruit", years, [["hazelnut", "hazelnuts", "cobnut", "filbert"]]),
  ...grown("Juglandaceae", "fruit", years, [["walnut", "walnuts"]]),
  ...grown("Ranunculaceae", "flower", years, [["clematis", "clematis", "clematises"]]),
  ...grown("Caprifoliaceae", "flower", years, [["honeysuckle", "honeysuckles", "lonicera"]]),
  ...grown("Fabaceae", "flower", years, [["wisteria", "wisterias", "wistaria"]]),
  ...grown("Oleaceae", "flower", years, [["jasmine", "jasmines"]]),
];

/**
 * What one piece of a crop is when a picking only counts: "picked 3 Crown Prince" is three fruits, "cut 12 dahlias"
 * twelve stems. Flowers are counted in stems; crops that stand neither here nor among flowers in pieces.
 */
const countedIn: Readonly<Partial<Record<PickUnit, readonly string[]>>> = {
  fruit: [
    ...["tomato", "pepper", "chilli", "aubergine", "tomatillo", "ground-cherry", "cucumber", "gherkin", "squash"],
    ...[
      "summer-squash",
      "courgette",
      "marrow",
      "pumpkin",
      "gourd",
      "melon",
      "watermelon",
      "strawberry",
      "apple",
      "pear",
    ],
    ...["plum", "cherry", "peach", "apricot", "quince", "medlar", "fig", "lemon"],
  ],
  head: [
    ...["cabbage", "chinese-cabbage", "broccoli", "cauliflower", "lettuce", "endive", "chicory", "pak-choi"],
    ...["globe-artichoke", "celery", "fennel"],
  ],
  root: ["radish", "mooli", "turnip", "swede", "beetroot", "carrot", "parsnip", "celeriac", "hamburg-parsley"],
  bulb: ["onion", "shallot", "garlic"],
  ear: ["sweetcorn"],
  stem: ["rhubarb", "asparagus"],
  pod: ["pea", "mangetout", "sugar-snap", "broad-bean", "runner-bean", "french-bean", "okra"],
};

/** Cultivars whose names end in another crop's word, which says nothing of what they are; by crop id. From memory of seed lists. */
const namedLikeCrops: Readonly<Record<string, readonly string[]>> = {
  potato: ["Pink Fir Apple"],
  tomato: ["Yellow Pear", "Red Pear", "Black Cherry", "Chocolate Cherry", "Black Plum", "Red Fig", "Garden Peach"],
  cucumber: ["Crystal Lemon", "Crystal Apple", "True Lemon"],
};

export const cropOfCultivar: ReadonlyMap<string, string> = new Map(
  Object.entries(namedLikeCrops).flatMap(([crop, names]) => names.map((name) => [name.toLowerCase(), crop] as const)),
);

const pieceByCrop = new Map(
  Object.entries(countedIn).flatMap(([unit, ids]) => ids.map((id) => [id, unit as PickUnit] as const)),
);

/** The unit in which a picking of this crop is counted when the line names none. */
export function pieceOf(crop: Crop | undefined): PickUnit {
  if (crop === undefined) return "piece";
  return pieceByCrop.get(crop.id) ?? (crop.use === "flower" ? "stem" : "piece");
}
