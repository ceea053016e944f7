/** The items of a line about plants: an amount and a name, an amount alone, a measure. */
import type { EventKind } from "../model.ts";
import type { Line } from "./line.ts";
import { isCapital } from "./line-words.ts";
import { type NamedPlant, phraseEnd, plainNouns, plantIn, plantNouns, takePlant } from "./plant-names.ts";
import { currentPlace, type PlantItem, type PlantLine, type Scan } from "./plant-scan.ts";
import { type Amount, amountAt, pickUnitCalled } from "./quantities.ts";

/** Things plants stand in by the number: "4 trays" counts trays. */
const containers = new Set(
  (
    "tray trays row rows pot pots packet packets module modules drill drills block blocks patch patches cell cells strip strips station stations " +
    "line lines bag bags pinch pinches trug trugs bowl bowls basket baskets bucket buckets colander seedtray seedtrays flat flats plug-trays " +
    "days weeks day week times degrees varieties kinds sorts sowings batches batch barrow barrows barrowloads"
  ).split(" "),
);

const notHeight = new Set("wide across diameter girth round circumference spread deep".split(" "));

export function readAmount(scan: Scan): boolean {
  const { line, at, read, kind } = scan;
  const amount = amountAt(line.words, at, line.system);
  if (amount === undefined || amount.end > line.end) return false;
  if (amount.cm !== undefined || amount.celsius !== undefined) return readMeasure(scan, amount);
  const contained = amount.count !== undefined && amount.unit === undefined && containers.has(line.lower(amount.end));
  if (contained) {
    // "2 rows of Nantes", "2 trays of 24 Musselburgh"
    const of = line.lower(amount.end + 1) === "of" ? amount.end + 2 : undefined;
    const each = of === undefined ? undefined : amountAt(line.words, of, line.system);
    if (each?.count !== undefined && amount.count !== undefined) {
      const value = each.count.value * amount.count.value;
      if (readName(scan, each.end, { ...each, count: { value, approx: amount.count.approx || each.count.approx } }))
        return true;
    } else if (of !== undefined && readName(scan, of, undefined)) return true;
    scan.at = amount.end + 1;
    scan.afterItem = false;
    scan.listOpen = false;
    return true;
  }
  if (readName(scan, amount.end, amount)) return true;
  return strayAmount(scan, amount, kind, read);
}

/** An amount with no name behind it belongs to the item before it, when the clause says nothing else. */
function strayAmount(scan: Scan, amount: Amount, kind: EventKind, read: PlantLine): boolean {
  const { line, at } = scan;
  let end = amount.end;
  // "day 9" is no count, and neither is the "a" of "a male one".
  const joined = scan.afterItem || at === 0 || /^[,;:(x×]$/.test(line.lower(at - 1)) || read.items.length === 0;
  const article = /^an?$/.test(line.lower(at)) && amount.count !== undefined && amount.unit === undefined;
  const noun = plantNouns.has(line.lower(end)) ? end : undefined;
  if (noun !== undefined) end += 1;
  else if (line.lower(end) === "of" && line.lower(end + 1) === "them") end += 2;
  else if (plainNouns.has(line.lower(end))) end += 1;
  if (line.lower(end) === "in" && /^(?:all|total)$/.test(line.lower(end + 1))) end += 2;
  else if (line.lower(end) === "altogether" || line.lower(end) === "total") end += 1;
  const next = line.words[end];
  const alone =
    end >= line.end ||
    next === undefined ||
    (next.kind === "mark" && next.text !== "-" && next.text !== "/") ||
    next.lower === "and" ||
    placeFollows(scan, end);
  const item = read.items.at(-1);
  const free = item === undefined ? read.loose === undefined : takes(item.amount, amount);
  if (!alone || !free || !joined || article || (kind === "thinned" && item !== undefined)) {
    scan.at = amount.end;
    scan.afterItem = false;
    scan.listOpen = read.items.length === 0;
    return true;
  }
  const times = /^[x×]$/.test(line.lower(at - 1)) ? at - 1 : at;
  if (item === undefined) read.loose = amount;
  else item.amount = { ...item.amount, ...amount };
  keepLoose(line, times, noun ?? end, amount);
  scan.at = end;
  scan.listOpen = read.items.length === 0;
  return true;
}

function placeFollows(scan: Scan, at: number): boolean {
  const lower = scan.line.lower(at);
  return /^(?:in|from|into|on|at|to|indoors|out)$/.test(lower);
}

/** Whether an item can take a second amount: a weight beside a count, never two weights. */
function takes(has: Amount | undefined, more: Amount): boolean {
  if (has === undefined) return true;
  if (more.count !== undefined) return has.count === undefined;
  return (
    (more.grams !== undefined && has.grams === undefined) || (more.litres !== undefined && has.litres === undefined)
  );
}

/** A measure that is only about right keeps its words, for the number alone says too much. */
function keepLoose(line: Line, from: number, end: number, amount: Amount): void {
  if (amount.loose !== true) line.claim(from, end);
}

/** A height, length or temperature; width and girth are no height and stay as detail. */
function readMeasure(scan: Scan, amount: Amount): boolean {
  const { line, at, read, kind } = scan;
  scan.at = amount.end;
  scan.afterItem = false;
  if (kind !== "measured" && kind !== "soil test") return true;
  if (amount.celsius !== undefined) {
    if (read.celsius === undefined) {
      read.celsius = amount.celsius;
      keepLoose(line, at, amount.end, amount);
    }
    return true;
  }
  const what = line.lower(amount.end);
  const inWhat = what === "in" ? line.lower(amount.end + 1) : what;
  if (notHeight.has(inWhat)) return true;
  const item = read.items.at(-1);
  if (item === undefined ? read.heightCm !== undefined : item.amount?.cm !== undefined) return true;
  if (item === undefined) read.heightCm = amount.cm;
  else item.amount = { ...item.amount, ...amount };
  const said = /^(?:tall|high|long)$/.test(what) ? 1 : what === "in" && /^(?:height|length)$/.test(inWhat) ? 2 : 0;
  keepLoose(line, at, amount.end + said, amount);
  scan.at = amount.end + said;
  scan.listOpen = true;
  scan.afterItem = item !== undefined;
  return true;
}

/** Reads the name that begins at or soon after word `from`; `amount` is what stands before it. */
export function readName(scan: Scan, from: number, amount: Amount | undefined): boolean {
  const { line, kind, read } = scan;
  const start = line.lower(from) === "of" ? from + 1 : from;
  const end = phraseEnd(line, start);
  if (end <= start) return false;
  const plant = plantIn(line, start, end, kind, amount !== undefined);
  if (plant === undefined || plantIsDetail(scan, plant, amount)) return false;
  if (amount === undefined && refinesCrop(scan, plant)) return true;
  claimItem(scan, plant, amount);
  const item: PlantItem = { ...takePlant(line, plant), amount, place: placeOfNewItem(read) };
  if (item.amount === undefined && read.loose !== undefined && read.items.length === 0) {
    item.amount = read.loose;
    read.loose = undefined;
  }
  if (read.heightCm !== undefined && read.items.length === 0) {
    item.amount = { end: 0, ...item.amount, cm: read.heightCm };
    read.heightCm = undefined;
  }
  read.items.push(item);
  scan.at = afterNoun(scan, item, plant.end);
  scan.listOpen = false;
  scan.afterItem = true;
  return true;
}

/** An item after a bed begins a new place; at the end items without a bed take the one said before or after them. */
function placeOfNewItem(read: PlantLine): number {
  const place = currentPlace(read);
  const used = read.items.some((item) => item.place === read.places.length - 1);
  if (used && (place.bed !== undefined || place.toBed !== undefined || place.spot !== undefined)) read.places.push({});
  return read.places.length - 1;
}

/** "broad beans, Aquadulce": the variety of a crop named just before. */
function refinesCrop(scan: Scan, plant: NamedPlant): boolean {
  const { line, read } = scan;
  const item = read.items.at(-1);
  if (item?.crop === undefined || item.variety !== undefined || plant.variety === undefined) return false;
  if (line.names.cropOf(plant.variety) !== item.crop || line.words[plant.from - 1]?.text !== ",") return false;
  line.claim(plant.from, plant.end);
  item.variety = plant.variety;
  item.crop = undefined;
  scan.at = plant.end;
  scan.listOpen = false;
  scan.afterItem = true;
  return true;
}

/**
 * After the first item a name nobody described needs its amount or a place in the list, and in lower case it counts only
 * in a list of such names: "12 nantes and 20 boltardy", but not "24 Musselburgh, one per pot".
 */
function plantIsDetail(scan: Scan, plant: NamedPlant, amount: Amount | undefined): boolean {
  const { line, read } = scan;
  if (plant.title === undefined) return false;
  const first = line.words[plant.from];
  const inLowerCase = plant.crop === undefined && first?.kind === "word" && !isCapital(first);
  if (read.items.length === 0) return inLowerCase && scan.passedOver;
  if (amount === undefined && !scan.listOpen) return true;
  return (
    inLowerCase &&
    read.items.some((item) => item.variety === undefined || line.names.isDescribed("variety", item.variety))
  );
}

function claimItem(scan: Scan, plant: NamedPlant, amount: Amount | undefined): void {
  const { line } = scan;
  if (amount !== undefined) {
    // "18 of 24 Musselburgh" says more than the count.
    const share = line.lower(amount.end) === "of" && line.words[amount.end + 1]?.kind === "number";
    if (amount.loose !== true && !share) line.claim(scan.at, amount.end);
  }
  for (let at = scan.at; at < plant.from; at++) {
    if (/^(?:bought|purchased)$/.test(line.lower(at)) && scan.kind === "planted") scan.read.plantsFrom = "bought";
    else if (/^(?:given|gifted|donated)$/.test(line.lower(at)) && scan.kind === "planted")
      scan.read.plantsFrom = "given";
    else continue;
    line.claim(at, at + 1);
  }
  line.claim(plant.from, plant.end);
}

/** A noun after the name: "plants" says nothing new, "stems" is the unit of the count, "sets" is kept. */
function afterNoun(scan: Scan, item: PlantItem, end: number): number {
  const { line, kind } = scan;
  if (plainNouns.has(line.lower(end))) {
    line.claim(end, end + 1);
    return end + 1;
  }
  const unit = pickUnitCalled(line.lower(end));
  if (unit !== undefined && item.amount?.count !== undefined && item.amount.unit === undefined && countsPieces(kind)) {
    item.amount = { ...item.amount, unit };
    line.claim(end, end + 1);
    return end + 1;
  }
  return plantNouns.has(line.lower(end)) ? end + 1 : end;
}

/** Kinds in which what is counted may be stems, heads or bunches rather than plants. */
export function countsPieces(kind: EventKind): boolean {
  return kind === "picked" || kind === "gave away" || kind === "saved seed";
}
