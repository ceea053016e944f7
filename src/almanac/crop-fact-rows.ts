/**
 * The rows behind crop-facts.ts, in the inches and pounds of their sources.
 *
 * Yields per 100 ft of row: Marr, "Vegetable Garden Planting Guide", MF315, Kansas State University. Everything else, and
 * the yields marked so, is from memory of tables such as Clemson HGIC 1256, Texas A&M E-502 and VCE 426-331, and of common
 * practice in Britain for crops those do not have.
 */
import type { CropFacts, Fact, FactSource, Hardiness, Range, RowYield } from "./crop-facts.ts";
import type { HeatScale } from "./heat-units.ts";

const cmPerInch = 2.54;
/** Grams in a pound over metres in 100 ft. */
const gramsPerMetre = 453.59237 / 30.48;
const metresPerRow = 30.48;

const plantingGuide: FactSource = {
  title: "Kansas State University, Vegetable Garden Planting Guide (MF315)",
  fromMemory: false,
};
const memory: FactSource = { title: "typical of extension planting tables", fromMemory: true };
const warmBase: FactSource = {
  title: "University of Maryland, state climatology, degree days (base 50 °F)",
  fromMemory: false,
};
const coolBase: FactSource = { title: "University of Delaware, Weekly Crop Update (base 40 °F)", fromMemory: false };
const maizeMethod: FactSource = {
  title: "Ohio State University Extension, AGF-101 (86/50 °F method)",
  fromMemory: false,
};

const warm: Fact<HeatScale> = { value: { method: "mean first", base: 10 }, source: warmBase };
const cool: Fact<HeatScale> = { value: { method: "mean first", base: 40 / 9 }, source: coolBase };
const maize: Fact<HeatScale> = { value: { method: "limits first", base: 10, cap: 30 }, source: maizeMethod };
const warmAsUsual: Fact<HeatScale> = { value: { method: "mean first", base: 10 }, source: memory };
const coolAsUsual: Fact<HeatScale> = { value: { method: "mean first", base: 40 / 9 }, source: memory };

/** Crops for which a source itself names the base. */
const namedWarm = new Set(["tomato"]);
const namedCool = new Set([
  "pea",
  "lettuce",
  "cabbage",
  "broccoli",
  "cauliflower",
  "brussels-sprout",
  "kale",
  "potato",
]);

type Pair = readonly [from: number, to: number];
/** "150 lb": pounds per 100 ft; "80 head": pieces per 100 ft. A tilde in front: from memory. */
type YieldText = `${"" | "~"}${number} ${"lb" | "head" | "fruit" | "bunch" | "stem" | "ear"}`;

const hardinessWords = { H: "hardy", HH: "half-hardy", T: "tender", VT: "very tender" } as const;

interface Row {
  readonly crop: string;
  /** Days to maturity; "T" counts from planting out, "S" from sowing. */
  readonly days?: readonly [from: number, to: number, counted: "S" | "T"];
  /** Inches in the row, and between rows. */
  readonly inRow?: Pair;
  readonly rows?: Pair;
  readonly gives?: YieldText;
  readonly hardy?: keyof typeof hardinessWords;
  readonly ph?: Pair;
}

const rows: readonly Row[] = [
  { crop: "asparagus", inRow: [12, 18], rows: [36, 60], gives: "30 lb", hardy: "H", ph: [6.5, 7.5] },
  { crop: "french-bean", days: [50, 60, "S"], inRow: [2, 4], rows: [18, 36], gives: "120 lb", hardy: "T", ph: [6, 7] },
  { crop: "runner-bean", days: [60, 75, "S"], inRow: [4, 6], rows: [36, 48], gives: "150 lb", hardy: "T", ph: [6, 7] },
  { crop: "lima-bean", days: [65, 78, "S"], inRow: [3, 6], rows: [24, 36], gives: "25 lb", hardy: "VT", ph: [6, 7] },
  {
    crop: "broad-bean",
    days: [90, 120, "S"],
    inRow: [8, 9],
    rows: [18, 24],
    gives: "~50 lb",
    hardy: "H",
    ph: [6, 7.5],
  },
  { crop: "beetroot", days: [50, 70, "S"], inRow: [2, 4], rows: [12, 24], gives: "150 lb", hardy: "HH", ph: [6, 7.5] },
  { crop: "broccoli", days: [55, 80, "T"], inRow: [12, 18], rows: [24, 36], gives: "100 lb", hardy: "H", ph: [6, 7] },
  {
    crop: "sprouting-broccoli",
    days: [220, 270, "T"],
    inRow: [24, 24],
    rows: [24, 30],
    gives: "~60 lb",
    hardy: "H",
    ph: [6, 7],
  },
  {
    crop: "brussels-sprout",
    days: [90, 110, "T"],
    inRow: [18, 24],
    rows: [30, 36],
    gives: "75 lb",
    hardy: "H",
    ph: [6, 7],
  },
  { crop: "cabbage", days: [60, 90, "T"], inRow: [12, 18], rows: [24, 36], gives: "150 lb", hardy: "H", ph: [6, 7.5] },
  {
    crop: "chinese-cabbage",
    days: [55, 75, "S"],
    inRow: [10, 12],
    rows: [18, 30],
    gives: "80 head",
    hardy: "HH",
    ph: [6, 7.5],
  },
  { crop: "carrot", days: [60, 80, "S"], inRow: [1, 3], rows: [12, 24], gives: "100 lb", hardy: "HH", ph: [5.5, 7] },
  {
    crop: "cauliflower",
    days: [55, 80, "T"],
    inRow: [18, 18],
    rows: [24, 36],
    gives: "100 lb",
    hardy: "HH",
    ph: [6, 7],
  },
  { crop: "celery", days: [90, 120, "T"], inRow: [6, 8], rows: [24, 36], gives: "180 stem", hardy: "HH", ph: [6, 7] },
  {
    crop: "celeriac",
    days: [110, 140, "T"],
    inRow: [12, 12],
    rows: [15, 24],
    gives: "~75 lb",
    hardy: "HH",
    ph: [6, 7],
  },
  { crop: "chard", days: [50, 60, "S"], inRow: [6, 8], rows: [18, 24], gives: "75 lb", hardy: "HH", ph: [6, 7.5] },
  {
    crop: "perpetual-spinach",
    days: [50, 60, "S"],
    inRow: [6, 8],
    rows: [18, 24],
    gives: "~75 lb",
    hardy: "H",
    ph: [6, 7.5],
  },
  { crop: "collard", days: [55, 75, "S"], inRow: [12, 18], rows: [24, 36], gives: "100 lb", hardy: "H", ph: [6, 7.5] },
  { crop: "kale", days: [55, 75, "S"], inRow: [12, 18], rows: [24, 36], gives: "100 lb", hardy: "H", ph: [6, 7.5] },
  { crop: "kohlrabi", days: [45, 60, "S"], inRow: [4, 6], rows: [12, 18], gives: "~75 lb", hardy: "HH", ph: [6, 7] },
  { crop: "sweetcorn", days: [65, 95, "S"], inRow: [8, 12], rows: [30, 36], gives: "120 ear", hardy: "T", ph: [6, 7] },
  { crop: "cucumber", days: [50, 70, "S"], inRow: [12, 12], rows: [48, 72], gives: "120 lb", hardy: "VT", ph: [6, 7] },
  { crop: "gherkin", days: [50, 60, "S"], inRow: [12, 12], rows: [48, 72], gives: "~120 lb", hardy: "VT", ph: [6, 7] },
  {
    crop: "aubergine",
    days: [65, 80, "T"],
    inRow: [18, 24],
    rows: [30, 36],
    gives: "100 lb",
    hardy: "VT",
    ph: [5.5, 6.8],
  },
  { crop: "fennel", days: [80, 100, "S"], inRow: [8, 12], rows: [15, 18], gives: "~60 lb", hardy: "HH", ph: [6, 7] },
  { crop: "garlic", days: [240, 270, "T"], inRow: [4, 6], rows: [12, 18], gives: "~40 lb", hardy: "H", ph: [6, 7] },
  { crop: "leek", days: [100, 150, "T"], inRow: [6, 9], rows: [12, 15], gives: "~150 lb", hardy: "H", ph: [6, 7.5] },
  { crop: "shallot", days: [90, 120, "T"], inRow: [6, 6], rows: [9, 12], gives: "~80 lb", hardy: "H", ph: [6, 7] },
  {
    crop: "spring-onion",
    days: [60, 70, "S"],
    inRow: [1, 1],
    rows: [6, 9],
    gives: "~100 bunch",
    hardy: "H",
    ph: [6, 7],
  },
  { crop: "lettuce", days: [40, 50, "S"], inRow: [4, 8], rows: [12, 18], gives: "~50 lb", hardy: "HH", ph: [6, 7] },
  { crop: "melon", days: [75, 100, "S"], inRow: [24, 36], rows: [60, 72], gives: "100 fruit", hardy: "VT", ph: [6, 7] },
  { crop: "okra", days: [50, 65, "S"], inRow: [12, 18], rows: [36, 36], gives: "100 lb", hardy: "VT", ph: [6, 7.5] },
  { crop: "onion", days: [90, 120, "T"], inRow: [3, 4], rows: [12, 18], gives: "100 lb", hardy: "H", ph: [6, 7] },
  { crop: "parsnip", days: [100, 130, "S"], inRow: [3, 3], rows: [18, 24], gives: "100 lb", hardy: "H", ph: [5.5, 7] },
  { crop: "pea", days: [55, 70, "S"], inRow: [1, 3], rows: [12, 24], gives: "20 lb", hardy: "H", ph: [6, 7.5] },
  { crop: "mangetout", days: [55, 70, "S"], inRow: [1, 3], rows: [12, 24], gives: "~20 lb", hardy: "H", ph: [6, 7.5] },
  { crop: "sugar-snap", days: [55, 70, "S"], inRow: [1, 3], rows: [12, 24], gives: "~20 lb", hardy: "H", ph: [6, 7.5] },
  { crop: "cowpea", days: [60, 90, "S"], inRow: [3, 6], rows: [24, 36], gives: "40 lb", hardy: "VT", ph: [5.5, 7] },
  { crop: "pepper", days: [60, 80, "T"], inRow: [18, 24], rows: [24, 36], gives: "60 lb", hardy: "VT", ph: [5.5, 7] },
  { crop: "chilli", days: [70, 90, "T"], inRow: [15, 18], rows: [24, 30], gives: "~40 lb", hardy: "VT", ph: [5.5, 7] },
  { crop: "potato", days: [80, 120, "T"], inRow: [10, 12], rows: [30, 36], gives: "100 lb", hardy: "HH", ph: [5, 6.5] },
  {
    crop: "pumpkin",
    days: [100, 120, "S"],
    inRow: [36, 60],
    rows: [72, 120],
    gives: "100 lb",
    hardy: "VT",
    ph: [5.5, 7],
  },
  { crop: "radish", days: [22, 30, "S"], inRow: [1, 2], rows: [8, 12], gives: "100 bunch", hardy: "H", ph: [6, 7] },
  { crop: "rhubarb", inRow: [36, 36], rows: [36, 48], gives: "~100 lb", hardy: "H", ph: [5.5, 7] },
  { crop: "rocket", days: [35, 45, "S"], inRow: [4, 6], rows: [10, 12], hardy: "H", ph: [6, 7] },
  { crop: "spinach", days: [40, 50, "S"], inRow: [2, 4], rows: [12, 18], gives: "45 lb", hardy: "H", ph: [6, 7.5] },
  { crop: "corn-salad", days: [60, 80, "S"], inRow: [3, 4], rows: [6, 9], hardy: "H", ph: [6, 7] },
  {
    crop: "summer-squash",
    days: [45, 60, "S"],
    inRow: [24, 36],
    rows: [36, 60],
    gives: "150 lb",
    hardy: "VT",
    ph: [6, 7],
  },
  {
    crop: "courgette",
    days: [45, 60, "S"],
    inRow: [24, 36],
    rows: [36, 60],
    gives: "~150 lb",
    hardy: "VT",
    ph: [6, 7],
  },
  { crop: "squash", days: [85, 110, "S"], inRow: [36, 48], rows: [72, 96], gives: "100 lb", hardy: "VT", ph: [6, 7] },
  { crop: "swede", days: [90, 120, "S"], inRow: [6, 9], rows: [15, 18], gives: "~150 lb", hardy: "H", ph: [6, 7] },
  {
    crop: "sweet-potato",
    days: [100, 130, "T"],
    inRow: [12, 12],
    rows: [36, 36],
    gives: "100 lb",
    hardy: "VT",
    ph: [5.5, 6.5],
  },
  { crop: "tomato", days: [60, 85, "T"], inRow: [18, 36], rows: [36, 48], gives: "100 lb", hardy: "T", ph: [6, 7] },
  { crop: "turnip", days: [40, 60, "S"], inRow: [2, 4], rows: [12, 18], gives: "75 lb", hardy: "H", ph: [6, 7] },
  {
    crop: "watermelon",
    days: [75, 95, "S"],
    inRow: [36, 60],
    rows: [72, 96],
    gives: "40 fruit",
    hardy: "VT",
    ph: [5.5, 6.8],
  },

  { crop: "strawberry", inRow: [18, 24], rows: [36, 48], hardy: "H", ph: [5.5, 6.5] },
  { crop: "blueberry", inRow: [48, 60], rows: [96, 120], hardy: "H", ph: [4.5, 5.5] },
  { crop: "raspberry", inRow: [18, 18], rows: [60, 72], hardy: "H", ph: [5.6, 6.5] },
  { crop: "gooseberry", inRow: [48, 60], rows: [60, 72], hardy: "H", ph: [6, 6.8] },
  { crop: "blackcurrant", inRow: [48, 60], rows: [60, 72], hardy: "H", ph: [6, 6.8] },
  { crop: "redcurrant", inRow: [48, 60], rows: [60, 72], hardy: "H", ph: [6, 6.8] },

  { crop: "basil", days: [50, 70, "S"], inRow: [8, 12], rows: [12, 18], hardy: "VT", ph: [6, 7] },
  { crop: "parsley", days: [70, 90, "S"], inRow: [6, 9], rows: [12, 15], hardy: "H", ph: [6, 7] },
  { crop: "coriander", days: [45, 60, "S"], inRow: [4, 6], rows: [10, 12], hardy: "HH", ph: [6, 7] },
  { crop: "dill", days: [50, 65, "S"], inRow: [6, 9], rows: [12, 15], hardy: "HH", ph: [6, 7] },

  { crop: "sweet-pea", days: [60, 90, "T"], inRow: [8, 8], rows: [12, 24], hardy: "H", ph: [6.5, 7.5] },
  { crop: "dahlia", days: [70, 100, "T"], inRow: [18, 24], rows: [24, 30], hardy: "T", ph: [6, 7] },
  { crop: "cosmos", days: [60, 90, "S"], inRow: [12, 12], rows: [12, 18], hardy: "HH", ph: [6, 7] },
  { crop: "sunflower", days: [60, 100, "S"], inRow: [12, 18], rows: [18, 24], hardy: "HH", ph: [6, 7.5] },
  { crop: "zinnia", days: [60, 80, "S"], inRow: [9, 12], rows: [12, 15], hardy: "T", ph: [6, 7] },
  { crop: "calendula", days: [50, 65, "S"], inRow: [10, 12], rows: [12, 15], hardy: "H", ph: [6, 7] },
  { crop: "cornflower", days: [70, 90, "S"], inRow: [8, 9], rows: [9, 12], hardy: "H", ph: [6.5, 7.5] },
  { crop: "nigella", days: [65, 80, "S"], inRow: [8, 9], rows: [9, 12], hardy: "H", ph: [6, 7] },
  { crop: "nasturtium", days: [50, 65, "S"], inRow: [10, 12], rows: [12, 12], hardy: "T", ph: [6, 7] },
  { crop: "tulip", inRow: [4, 6], rows: [4, 6], hardy: "H", ph: [6, 7] },
];

const remembered = <Value>(value: Value): Fact<Value> => ({ value, source: memory });
const range = ([from, to]: Pair, factor = 1): Range => ({ from: from * factor, to: to * factor });

export const facts: readonly CropFacts[] = rows.map(({ crop, days, inRow, rows: between, gives, hardy, ph }) => ({
  crop,
  maturity:
    days === undefined
      ? undefined
      : remembered({ from: days[0], to: days[1], counted: days[2] === "T" ? "planting" : "sowing" } as const),
  inRowCm: inRow === undefined ? undefined : remembered(range(inRow, cmPerInch)),
  betweenRowsCm: between === undefined ? undefined : remembered(range(between, cmPerInch)),
  rowYield: gives === undefined ? undefined : yieldOf(gives),
  hardiness: hardy === undefined ? undefined : remembered<Hardiness>(hardinessWords[hardy]),
  ph: ph === undefined ? undefined : remembered(range(ph)),
  heat: heatOf(crop, hardy),
}));

function yieldOf(written: YieldText): Fact<RowYield> {
  const [, tilde, amount, unit] = /^(~?)([\d.]+) (\w+)$/.exec(written) ?? [];
  const source = tilde === "~" ? memory : plantingGuide;
  const value = Number(amount);
  if (unit === "lb") return { value: { gramsPerMetre: value * gramsPerMetre }, source };
  return { value: { piecesPerMetre: value / metresPerRow, unit: unit as "head" }, source };
}

/** Warmth-loving crops grow from 10 °C, the others from 4.4 °C; maize by its growers' own method. */
function heatOf(crop: string, hardy: Row["hardy"]): Fact<HeatScale> {
  if (crop === "sweetcorn") return maize;
  if (hardy === "T" || hardy === "VT") return namedWarm.has(crop) ? warm : warmAsUsual;
  return namedCool.has(crop) ? cool : coolAsUsual;
}
