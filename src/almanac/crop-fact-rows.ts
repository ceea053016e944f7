/**
 * The rows behind crop-facts.ts, in the inches and pounds of their sources. Each row names where it is from: its yield, and
 * everything else in it; tests hold both against what was published, and hold still what nobody could look up.
 */
import { centimetresPerInch, gramsPerPound, metresPerFoot } from "../measures.ts";
import type { CropFacts, Fact, FactSource, Hardiness, Range, RowYield } from "./crop-facts.ts";
import type { HeatScale } from "./heat-units.ts";

/** Grams in a pound over metres in 100 ft. */
const gramsPerMetre = gramsPerPound / (100 * metresPerFoot);
const metresPerRow = 100 * metresPerFoot;

const plantingGuide: FactSource = {
  title: "Kansas State University, Vegetable Garden Planting Guide (MF315)",
  fromMemory: false,
};
const memory: FactSource = { title: "typical of extension planting tables", fromMemory: true };
const practice: FactSource = { title: "common practice of kitchen and cutting gardens", fromMemory: true };

/** Where a row's yield is from. MF315 is Marr's table of average crops per 100 ft of row; of a range it gives, the middle. */
const yieldSources = { MF315: plantingGuide, memory } as const;
/**
 * Where the rest of a row is from. "tables": from memory of such as Clemson HGIC 1256, Texas A&M E-502 and VCE 426-331;
 * "practice": from memory of common practice, British for what those tables do not have.
 */
const rowSources = { tables: memory, practice } as const;
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
/** "150 lb": pounds per 100 ft; "80 head": pieces per 100 ft. */
type YieldText = `${number} ${"lb" | "head" | "fruit" | "bunch" | "stem" | "ear"}`;

const hardinessWords = { H: "hardy", HH: "half-hardy", T: "tender", VT: "very tender" } as const;

interface Row {
  readonly crop: string;
  /** Days to maturity; "T" counts from planting out, "S" from sowing. */
  readonly days?: readonly [from: number, to: number, counted: "S" | "T"];
  /** Inches in the row, and between rows. */
  readonly inRow?: Pair;
  readonly rows?: Pair;
  readonly gives?: readonly [amount: YieldText, from: keyof typeof yieldSources];
  readonly hardy?: keyof typeof hardinessWords;
  readonly ph?: Pair;
  /** Source of everything in the row but the yield. */
  readonly from: keyof typeof rowSources;
}

/**
 * Days to maturity ("T" from planting out, "S" from sowing); inches in the row and between rows; what 100 ft of row give and
 * whose figure that is; hardiness; pH; source of all but the yield.
 */
const table = `
asparagus          |           | 12-18  | 36-60  | 30 lb, MF315      | H     | 6.5-7.5 | tables
french-bean        | 50-60 S   | 2-4    | 18-36  | 120 lb, MF315     | T     | 6-7     | tables
runner-bean        | 60-75 S   | 4-6    | 36-48  | 150 lb, memory    | T     | 6-7     | practice
lima-bean          | 65-78 S   | 3-6    | 24-36  | 25 lb, MF315      | VT    | 6-7     | tables
broad-bean         | 90-120 S  | 8-9    | 18-24  | 50 lb, memory     | H     | 6-7.5   | practice
beetroot           | 50-70 S   | 2-4    | 12-24  | 150 lb, MF315     | HH    | 6-7.5   | tables
broccoli           | 55-80 T   | 12-18  | 24-36  | 100 lb, MF315     | H     | 6-7     | tables
sprouting-broccoli | 220-270 T | 24     | 24-30  | 60 lb, memory     | H     | 6-7     | practice
brussels-sprout    | 90-110 T  | 18-24  | 30-36  | 75 lb, MF315      | H     | 6-7     | tables
cabbage            | 60-90 T   | 12-18  | 24-36  | 150 lb, MF315     | H     | 6-7.5   | tables
chinese-cabbage    | 55-75 S   | 10-12  | 18-30  | 80 head, MF315    | HH    | 6-7.5   | tables
carrot             | 60-80 S   | 1-3    | 12-24  | 100 lb, MF315     | HH    | 5.5-7   | tables
cauliflower        | 55-80 T   | 18     | 24-36  | 100 lb, MF315     | HH    | 6-7     | tables
celery             | 90-120 T  | 6-8    | 24-36  | 180 stem, MF315   | HH    | 6-7     | tables
celeriac           | 110-140 T | 12     | 15-24  | 60 lb, MF315      | HH    | 6-7     | practice
chard              | 50-60 S   | 6-8    | 18-24  | 75 lb, MF315      | HH    | 6-7.5   | tables
perpetual-spinach  | 50-60 S   | 6-8    | 18-24  | 75 lb, memory     | H     | 6-7.5   | practice
collard            | 55-75 S   | 12-18  | 24-36  | 100 lb, MF315     | H     | 6-7.5   | tables
kale               | 55-75 S   | 12-18  | 24-36  | 100 lb, MF315     | H     | 6-7.5   | tables
kohlrabi           | 45-60 S   | 4-6    | 12-18  | 75 lb, memory     | HH    | 6-7     | practice
sweetcorn          | 65-95 S   | 8-12   | 30-36  | 120 ear, MF315    | T     | 6-7     | tables
cucumber           | 50-70 S   | 12     | 48-72  | 120 lb, MF315     | VT    | 6-7     | tables
gherkin            | 50-60 S   | 12     | 48-72  | 120 lb, memory    | VT    | 6-7     | practice
aubergine          | 65-80 T   | 18-24  | 30-36  | 100 lb, MF315     | VT    | 5.5-6.8 | tables
fennel             | 80-100 S  | 8-12   | 15-18  | 60 lb, memory     | HH    | 6-7     | practice
garlic             | 240-270 T | 4-6    | 12-18  | 40 lb, memory     | H     | 6-7     | tables
leek               | 100-150 T | 6-9    | 12-15  | 150 lb, memory    | H     | 6-7.5   | practice
shallot            | 90-120 T  | 6      | 9-12   | 80 lb, memory     | H     | 6-7     | practice
spring-onion       | 60-70 S   | 1      | 6-9    | 100 bunch, memory | H     | 6-7     | practice
lettuce            | 40-50 S   | 4-8    | 12-18  | 50 lb, memory     | HH    | 6-7     | tables
melon              | 75-100 S  | 24-36  | 60-72  | 100 fruit, MF315  | VT    | 6-7     | tables
okra               | 50-65 S   | 12-18  | 36     | 100 lb, MF315     | VT    | 6-7.5   | tables
onion              | 90-120 T  | 3-4    | 12-18  | 100 lb, MF315     | H     | 6-7     | tables
parsnip            | 100-130 S | 3      | 18-24  | 100 lb, MF315     | H     | 5.5-7   | tables
pea                | 55-70 S   | 1-3    | 12-24  | 20 lb, MF315      | H     | 6-7.5   | tables
mangetout          | 55-70 S   | 1-3    | 12-24  | 20 lb, memory     | H     | 6-7.5   | practice
sugar-snap         | 55-70 S   | 1-3    | 12-24  | 20 lb, memory     | H     | 6-7.5   | practice
cowpea             | 60-90 S   | 3-6    | 24-36  | 40 lb, MF315      | VT    | 5.5-7   | tables
pepper             | 60-80 T   | 18-24  | 24-36  | 60 lb, MF315      | VT    | 5.5-7   | tables
chilli             | 70-90 T   | 15-18  | 24-30  | 40 lb, memory     | VT    | 5.5-7   | practice
potato             | 80-120 T  | 10-12  | 30-36  | 100 lb, MF315     | HH    | 5-6.5   | tables
pumpkin            | 100-120 S | 36-60  | 72-120 | 100 lb, MF315     | VT    | 5.5-7   | tables
radish             | 22-30 S   | 1-2    | 8-12   | 100 bunch, MF315  | H     | 6-7     | tables
rhubarb            |           | 36     | 36-48  | 100 lb, memory    | H     | 5.5-7   | practice
rocket             | 35-45 S   | 4-6    | 10-12  |                   | H     | 6-7     | practice
spinach            | 40-50 S   | 2-4    | 12-18  | 45 lb, MF315      | H     | 6-7.5   | tables
corn-salad         | 60-80 S   | 3-4    | 6-9    |                   | H     | 6-7     | practice
summer-squash      | 45-60 S   | 24-36  | 36-60  | 150 lb, MF315     | VT    | 6-7     | tables
courgette          | 45-60 S   | 24-36  | 36-60  | 150 lb, memory    | VT    | 6-7     | practice
squash             | 85-110 S  | 36-48  | 72-96  | 100 lb, MF315     | VT    | 6-7     | tables
swede              | 90-120 S  | 6-9    | 15-18  | 150 lb, memory    | H     | 6-7     | practice
sweet-potato       | 100-130 T | 12     | 36     | 100 lb, MF315     | VT    | 5.5-6.5 | tables
tomato             | 60-85 T   | 18-36  | 36-48  | 100 lb, MF315     | T     | 6-7     | tables
turnip             | 40-60 S   | 2-4    | 12-18  | 75 lb, MF315      | H     | 6-7     | tables
watermelon         | 75-95 S   | 36-60  | 72-96  | 40 fruit, MF315   | VT    | 5.5-6.8 | tables
strawberry         |           | 18-24  | 36-48  |                   | H     | 5.5-6.5 | tables
blueberry          |           | 48-60  | 96-120 |                   | H     | 4.5-5.5 | tables
raspberry          |           | 18     | 60-72  |                   | H     | 5.6-6.5 | practice
gooseberry         |           | 48-60  | 60-72  |                   | H     | 6-6.8   | practice
blackcurrant       |           | 48-60  | 60-72  |                   | H     | 6-6.8   | practice
redcurrant         |           | 48-60  | 60-72  |                   | H     | 6-6.8   | practice
basil              | 50-70 S   | 8-12   | 12-18  |                   | VT    | 6-7     | practice
parsley            | 70-90 S   | 6-9    | 12-15  |                   | H     | 6-7     | practice
coriander          | 45-60 S   | 4-6    | 10-12  |                   | HH    | 6-7     | practice
dill               | 50-65 S   | 6-9    | 12-15  |                   | HH    | 6-7     | practice
sweet-pea          | 60-90 T   | 8      | 12-24  |                   | H     | 6.5-7.5 | practice
dahlia             | 70-100 T  | 18-24  | 24-30  |                   | T     | 6-7     | practice
cosmos             | 60-90 S   | 12     | 12-18  |                   | HH    | 6-7     | practice
sunflower          | 60-100 S  | 12-18  | 18-24  |                   | HH    | 6-7.5   | practice
zinnia             | 60-80 S   | 9-12   | 12-15  |                   | T     | 6-7     | practice
calendula          | 50-65 S   | 10-12  | 12-15  |                   | H     | 6-7     | practice
cornflower         | 70-90 S   | 8-9    | 9-12   |                   | H     | 6.5-7.5 | practice
nigella            | 65-80 S   | 8-9    | 9-12   |                   | H     | 6-7     | practice
nasturtium         | 50-65 S   | 10-12  | 12     |                   | T     | 6-7     | practice
tulip              |           | 4-6    | 4-6    |                   | H     | 6-7     | practice
`;

const rows: readonly Row[] = table.trim().split("\n").map(rowOf);

function rowOf(line: string): Row {
  const [crop = "", days = "", inRow = "", between = "", gives = "", hardy = "", ph = "", from = ""] = line
    .split("|")
    .map((cell) => cell.trim());
  const [amount = "", source = ""] = gives.split(", ");
  if (
    !(from in rowSources) ||
    (gives !== "" && !(source in yieldSources)) ||
    (hardy !== "" && !(hardy in hardinessWords))
  )
    throw new Error(`The row of ${crop} names no known source or hardiness: ${line}`);
  return {
    crop,
    ...(days !== "" && { days: [...pairOf(days.slice(0, -2)), days.endsWith("T") ? "T" : "S"] as const }),
    ...(inRow !== "" && { inRow: pairOf(inRow) }),
    ...(between !== "" && { rows: pairOf(between) }),
    ...(gives !== "" && { gives: [amount as YieldText, source as keyof typeof yieldSources] as const }),
    ...(hardy !== "" && { hardy: hardy as keyof typeof hardinessWords }),
    ...(ph !== "" && { ph: pairOf(ph) }),
    from: from as keyof typeof rowSources,
  };
}

/** "60-80", or "18" for both ends. */
function pairOf(text: string): Pair {
  const [from = Number.NaN, to = from] = text.split("-").map(Number);
  if (Number.isNaN(from + to)) throw new Error(`"${text}" is no range.`);
  return [from, to];
}

const range = ([from, to]: Pair, factor = 1): Range => ({ from: from * factor, to: to * factor });

export const facts: readonly CropFacts[] = rows.map((row) => {
  const { crop, days, inRow, rows: between, gives, hardy, ph } = row;
  const by = <Value>(value: Value): Fact<Value> => ({ value, source: rowSources[row.from] });
  return {
    crop,
    maturity:
      days === undefined
        ? undefined
        : by({ from: days[0], to: days[1], counted: days[2] === "T" ? "planting" : "sowing" } as const),
    inRowCm: inRow === undefined ? undefined : by(range(inRow, centimetresPerInch)),
    betweenRowsCm: between === undefined ? undefined : by(range(between, centimetresPerInch)),
    rowYield: gives === undefined ? undefined : { value: yieldOf(gives[0]), source: yieldSources[gives[1]] },
    hardiness: hardy === undefined ? undefined : by<Hardiness>(hardinessWords[hardy]),
    ph: ph === undefined ? undefined : by(range(ph)),
    heat: heatOf(crop, hardy),
  };
});

function yieldOf(written: YieldText): RowYield {
  const [amount, unit] = written.split(" ");
  const value = Number(amount);
  if (unit === "lb") return { gramsPerMetre: value * gramsPerMetre };
  return { piecesPerMetre: value / metresPerRow, unit: unit as "head" };
}

/** Warmth-loving crops grow from 10 °C, the others from 4.4 °C; maize by its growers' own method. */
function heatOf(crop: string, hardy: Row["hardy"]): Fact<HeatScale> {
  if (crop === "sweetcorn") return maize;
  if (hardy === "T" || hardy === "VT") return namedWarm.has(crop) ? warm : warmAsUsual;
  return namedCool.has(crop) ? cool : coolAsUsual;
}
