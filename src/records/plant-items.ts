/** The items of a line about plants: an amount and a name, an amount alone, a measure. */
import type { Count, EventKind } from "../model.ts";
import { takeCropHead } from "./crop-heads.ts";
import type { Line } from "./line.ts";
import { isCapital } from "./line-words.ts";
import { measureUnitAt } from "./measure-units.ts";
import { readMeasure, strayAmount } from "./plant-amounts.ts";
import { type NamedPlant, nameJoints, phraseEnd, plainNouns, plantIn, plantNouns, takePlant } from "./plant-names.ts";
import { currentPlace, type PlantItem, type PlantLine, type Scan } from "./plant-scan.ts";
import { type Amount, amountAt, pickUnitCalled } from "./quantities.ts";

/** Things plants stand in by the number: "4 trays" counts trays. */
const containers = new Set(
  (
    "tray trays row rows pot pots packet packets module modules drill drills block blocks patch patches cell cells strip strips station stations " +
    "line lines bag bags pinch pinches trug trugs bowl bowls basket baskets bucket buckets colander seedtray seedtrays flat flats plug-trays " +
    "mess load loads pile heap sack sackful basketful bowlful bowlfuls armful " +
    "days weeks day week times degrees varieties kinds sorts sowings batches batch barrow barrows barrowloads"
  ).split(" "),
);

/** An amount, with the name it belongs to when one follows. */
export function readAmount(scan: Scan): boolean {
  const { line, at, kind } = scan;
  const share = kind === "up" || kind === "lost" ? shareAt(line, at) : undefined;
  const amount = share ?? amountAt(line.words, at, line.system);
  if (amount === undefined || amount.end > line.end) return false;
  if (amount.cm !== undefined || amount.celsius !== undefined) return readMeasure(scan, amount);
  if (amount.count !== undefined && amount.unit === undefined && containers.has(line.lower(amount.end))) {
    return readContained(scan, amount, amount.count);
  }
  if (line.lower(amount.end) === "each" && line.lower(amount.end + 1) === "of") {
    scan.each = amount;
    line.claim(at, amount.end + 2);
    if (readName(scan, amount.end + 2, amount)) return true;
  }
  return readName(scan, amount.end, amount) || strayAmount(scan, amount);
}

/** "9/10 Crown Prince": nine of ten. */
function shareAt(line: Line, at: number): Amount | undefined {
  const [part, slash, whole] = [line.words[at], line.words[at + 1], line.words[at + 2]];
  if (part?.kind !== "number" || slash?.text !== "/" || whole?.kind !== "number") return undefined;
  const value = Number(part.text);
  if (!Number.isInteger(value) || !(value <= Number(whole.text)) || measureUnitAt(line.words, at + 3)) return undefined;
  return { count: { value, approx: false }, end: at + 3, loose: true };
}

/** "2 rows of Nantes" counts rows and "2 trays of 24 Musselburgh" plants. */
function readContained(scan: Scan, amount: Amount, holds: Count): boolean {
  const { line } = scan;
  const of = line.lower(amount.end + 1) === "of" ? amount.end + 2 : undefined;
  const each = of === undefined ? undefined : amountAt(line.words, of, line.system);
  if (each?.count !== undefined) {
    const count = { value: each.count.value * holds.value, approx: holds.approx || each.count.approx };
    if (readName(scan, each.end, { ...each, count })) return true;
  } else if (of !== undefined && readName(scan, of, undefined)) {
    return true;
  }
  scan.at = amount.end + 1;
  scan.afterItem = false;
  scan.listOpen = false;
  return true;
}

/** Reads the name that begins at or soon after word `from`; `amount` stands before it, or its number behind it. */
export function readName(scan: Scan, from: number, amount: Amount | undefined, countedBehind = false): boolean {
  const { line, kind, read } = scan;
  const start = line.lower(from) === "of" ? from + 1 : from;
  const end = phraseEnd(line, start);
  if (end <= start) return false;
  const found = plantIn(line, start, end, kind, amount !== undefined);
  if (found === undefined || (!countedBehind && plantIsDetail(scan, found, amount))) return false;
  const counted = amount !== undefined && countsRows(line, scan.at, found.from) ? undefined : amount;
  const { plant, amount: own } = takeCropHead(scan, found, counted);
  claimItem(scan, plant, counted);
  const item: PlantItem = {
    ...takePlant(line, plant),
    amount: own ?? scan.each,
    at: plant.from,
    place: placeOfNewItem(read),
  };
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

/** "a long row of Boltardy", "a 10 ft row": the article counts the row. */
function countsRows(line: Line, from: number, plant: number): boolean {
  if (!/^an?$/.test(line.lower(from))) return false;
  for (let at = from + 1; at < plant; at++) if (containers.has(line.lower(at))) return true;
  return false;
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
  if (amount === undefined && !(scan.listOpen && goesOnList(scan, plant))) return true;
  return (
    inLowerCase &&
    read.items.some((item) => item.variety === undefined || line.names.isDescribed("variety", item.variety))
  );
}

/**
 * "sowed Nantes, Autumn King and Boltardy" is a list; "picked 12 Café au Lait, Mum's birthday" and "24 Musselburgh, Row Two"
 * are none: every word of the name has its capital, and the names before have no numbers.
 */
function goesOnList({ line, at, read }: Scan, plant: NamedPlant): boolean {
  const afterComma = /^[,;]$/.test(line.lower(Math.min(at, plant.from) - 1));
  if (afterComma && read.items.at(-1)?.amount !== undefined && read.items.at(-1)?.variety !== undefined) return false;
  for (let word = plant.from; word < plant.end; word++) {
    const text = line.words[word];
    if (text?.kind === "word" && !isCapital(text) && !nameJoints.test(text.lower) && !isNoun(line, word)) return false;
  }
  return true;
}

/** A crop word or a noun such as "seedlings" may follow a name in small letters. */
function isNoun(line: Line, at: number): boolean {
  return (
    plantNouns.has(line.lower(at)) ||
    plainNouns.has(line.lower(at)) ||
    line.names.at("crop", line.words, at) !== undefined
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
    const came = scan.kind === "planted" || scan.kind === "acquired";
    if (/^(?:bought|purchased)$/.test(line.lower(at)) && came) scan.read.plantsFrom = "bought";
    else if (/^(?:given|gifted|donated)$/.test(line.lower(at)) && came) scan.read.plantsFrom = "given";
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
  return kind === "picked" || kind === "gave away" || kind === "sold" || kind === "saved seed";
}
