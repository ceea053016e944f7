/**
 * Lines about plants: amounts, names, beds, spots and spacing, in whatever order a gardener puts them.
 *
 * The words are read once from left to right. An amount followed by a name is one item; items up to the next bed share
 * that bed; an amount on its own belongs to the item before it ("Crown Prince 8.4 kg").
 */
import type { EventKind } from "../model.ts";
import type { Line } from "./line.ts";
import { isCapital } from "./line-words.ts";
import { bareBedAt, type FoundPlace, placeAt } from "./place-words.ts";
import { type NamedPlant, phraseEnd, plainNouns, plantIn, plantNouns, takePlant } from "./plant-names.ts";
import { type Amount, amountAt, numberAt, pickUnitCalled } from "./quantities.ts";

export interface PlantItem {
  variety?: string | undefined;
  crop?: string | undefined;
  amount?: Amount | undefined;
  spacingCm?: number | undefined;
  /** Index into `places`. */
  place: number;
}

export interface PlantPlace {
  bed?: string | undefined;
  /** Further beds of "in Long Bed and Cold Frame". */
  alsoBeds?: string[] | undefined;
  toBed?: string | undefined;
  spot?: string | undefined;
  gear?: string | undefined;
}

/** What a line about plants says. */
export interface PlantLine {
  readonly items: PlantItem[];
  readonly places: PlantPlace[];
  /** An amount that no item took. */
  loose?: Amount | undefined;
  heightCm?: number | undefined;
  celsius?: number | undefined;
  /** A distance said before any plant. */
  spacingCm?: number | undefined;
  /** Plants left after thinning. */
  leftOver?: Amount | undefined;
  nursery: boolean;
  plantsFrom?: "bought" | "given" | undefined;
  cause?: string | undefined;
}

/** Things plants stand in by the number: "4 trays" counts trays. */
const containers = new Set(
  (
    "tray trays row rows pot pots packet packets module modules drill drills block blocks patch patches cell cells strip strips station stations " +
    "line lines bag bags pinch pinches trug trugs bowl bowls basket baskets bucket buckets colander seedtray seedtrays flat flats plug-trays " +
    "days weeks day week times degrees varieties kinds sorts sowings batches batch barrow barrows barrowloads"
  ).split(" "),
);
const notHeight = new Set("wide across diameter girth round circumference spread deep".split(" "));
const afterSpacing = new Set(["apart", "spacing", "spacings", "centres", "centers"]);
const bought = new Set(["bought", "purchased", "shop-bought", "bought-in"]);
const given = new Set(["given", "gifted", "donated", "free"]);
/** Causes that may follow a loss after a comma alone: "lost 4 lettuces, slugs". */
export const causeWords: ReadonlySet<string> = new Set(
  (
    "slug slugs snail snails frost blight rust mildew moth fly rot canker virus mosaic aphids blackfly greenfly whitefly caterpillars pigeon pigeons " +
    "mice mouse rabbit rabbits deer squirrel squirrels badger badgers drought heat wind storm hail flood damping rats voles vole moles gophers " +
    "groundhog birds blackbirds sparrows pheasants cat cats dog fox foxes wireworm cutworm chafer weevil weevils beetle beetles hornworm botrytis " +
    "wilt clubroot eelworm borer bug bugs neglect underwatering overwatering cold"
  ).split(" "),
);

export function readPlants(line: Line, from: number, kind: EventKind): PlantLine {
  const read: PlantLine = { items: [], places: [{}], nursery: false };
  const scan: Scan = { line, kind, read, at: from, listOpen: true, afterItem: false, passedOver: false };
  while (scan.at < line.end) {
    const before = scan.at;
    step(scan);
    if (scan.at <= before) scan.at = before + 1;
  }
  sharePlaces(read);
  return read;
}

interface Scan {
  readonly line: Line;
  readonly kind: EventKind;
  readonly read: PlantLine;
  at: number;
  /** Whether a name without an amount may stand here: at the beginning, and after a separator in a list. */
  listOpen: boolean;
  /** Whether the last thing understood was an item, so that a separator continues the list. */
  afterItem: boolean;
  /** Whether words were passed over that mean nothing here; after them no word in lower case is taken for a name. */
  passedOver: boolean;
  /** The word after the last bed said. */
  bedEnd?: number | undefined;
}

function step(scan: Scan): void {
  const { line, at } = scan;
  const word = line.words[at];
  if (word === undefined) return;
  if (word.kind === "mark" || word.lower === "and" || word.lower === "plus") {
    // A fraction sign or a quotation mark begins an amount or a name.
    if (!/^['‘"“~≈−@-]$/.test(word.text)) {
      separator(scan, word.text);
      return;
    }
  }
  if (readPlace(scan) || readSpacing(scan) || readThinnedTo(scan) || readCause(scan) || readBought(scan)) return;
  if (readAmount(scan)) return;
  if (scan.listOpen && readName(scan, at, undefined)) return;
  scan.at = at + 1;
  scan.afterItem = false;
  scan.passedOver = true;
  if (scan.read.items.length > 0) scan.listOpen = false;
}

function separator(scan: Scan, mark: string): void {
  scan.at += 1;
  if (mark === ":" || (mark === "(" && scan.read.items.length === 0)) scan.listOpen = true;
  else if (mark === "." || mark === ")" || mark === "(") scan.listOpen = scan.read.items.length === 0;
  else scan.listOpen = scan.afterItem || scan.read.items.length === 0;
}

// -------------------------------------------------------------------------------------------------------------- places

function readPlace(scan: Scan): boolean {
  const { line, at, kind } = scan;
  const place = placeAt(line, at, kind) ?? bareBed(scan);
  if (place === undefined) return false;
  // "in 9 cm pots" says more than "indoors" does, so its words stay.
  if (place.is !== "nursery" || place.end === at + 1) line.claim(at, place.end);
  setPlace(scan, place);
  scan.at = place.end;
  if (place.is === "bed") scan.bedEnd = place.end;
  scan.afterItem = false;
  scan.listOpen = scan.read.items.length === 0;
  return true;
}

/** A bed without preposition counts where no plant of that name can be meant. */
function bareBed(scan: Scan): FoundPlace | undefined {
  const { line, at } = scan;
  const bed = bareBedAt(line, at);
  if (bed === undefined || (currentPlace(scan.read).bed !== undefined && !followsBed(scan))) return undefined;
  const plant = line.names.plantAt(line.words, at);
  return plant !== undefined && plant.end >= bed.end ? undefined : bed;
}

/** "in Long Bed and Cold Frame": a bed joined to the one before it. */
function followsBed({ line, at, bedEnd }: Scan): boolean {
  return bedEnd === at - 1 && /^(?:and|&|\+|,)$/.test(line.lower(at - 1));
}

function currentPlace(read: PlantLine): PlantPlace {
  return read.places.at(-1) as PlantPlace;
}

function setPlace(scan: Scan, found: FoundPlace): void {
  const { read, kind } = scan;
  const place = currentPlace(read);
  if (found.is === "nursery") read.nursery = true;
  else if (found.is === "gear") place.gear = found.gear;
  else if (found.is === "bed" && place.bed !== undefined && followsBed(scan))
    place.alsoBeds = [...(place.alsoBeds ?? []), found.bed];
  else if (found.is === "spot") place.spot = place.spot === undefined ? found.spot : `${place.spot}, ${found.spot}`;
  else if (kind === "moved" && (found.role === "to" || (found.role === "in" && place.bed !== undefined)))
    place.toBed = found.bed;
  else place.bed = found.bed;
}

/** An item after a bed begins a new place; at the end items without a bed take the one said before or after them. */
function placeOfNewItem(read: PlantLine): number {
  const place = currentPlace(read);
  const used = read.items.some((item) => item.place === read.places.length - 1);
  if (used && (place.bed !== undefined || place.toBed !== undefined || place.spot !== undefined)) read.places.push({});
  return read.places.length - 1;
}

function sharePlaces(read: PlantLine): void {
  for (const [index, place] of read.places.entries()) {
    const before = read.places[index - 1];
    if (before !== undefined && place.bed === undefined) {
      place.bed = before.bed;
      place.alsoBeds = before.alsoBeds;
    }
    if (before !== undefined && place.toBed === undefined) place.toBed = before.toBed;
  }
}

// -------------------------------------------------------------------------------------------------------------- spacing

/** "20 cm apart", "spaced 9 in", "at 30 cm", "20 x 30 cm apart"; the distance of rows from each other is kept as detail. */
function readSpacing(scan: Scan): boolean {
  const { line, at } = scan;
  const lower = line.lower(at);
  const lead =
    lower === "at" || lower === "every" || lower === "@"
      ? 1
      : lower === "spaced"
        ? line.lower(at + 1) === "at"
          ? 2
          : 1
        : 0;
  if (scan.kind === "measured") return false;
  const spaced = spacingAt(line, at + lead);
  if (spaced === undefined) return false;
  const next = line.lower(spaced.end);
  const between = next === "between" && /^(?:plants|them|each|seeds|seedlings)$/.test(line.lower(spaced.end + 1));
  if (!afterSpacing.has(next) && !between && lead === 0) return false;
  if (/^(?:rows|row|lines)$/.test(line.lower(at - 1)) || !takesSpacing(scan.read)) return false;
  const end = between ? spaced.end + 2 : afterSpacing.has(next) ? spaced.end + 1 : spaced.end;
  setSpacing(scan.read, spaced.cm);
  line.claim(at, end);
  scan.at = end;
  // "6 Crown Prince 3 ft apart, 4 Uchiki Kuri …" goes on.
  scan.listOpen = false;
  return true;
}

function takesSpacing(read: PlantLine): boolean {
  return read.items.length === 0
    ? read.spacingCm === undefined
    : read.items.some((item) => item.spacingCm === undefined);
}

/** A distance belongs to the items before it that have none; said first, it belongs to all. */
function setSpacing(read: PlantLine, cm: number): void {
  if (read.items.length === 0) read.spacingCm = cm;
  for (const item of read.items) item.spacingCm ??= cm;
}

function spacingAt(line: Line, at: number): { readonly cm: number; readonly end: number } | undefined {
  const amount = amountAt(line.words, at, line.system);
  if (amount?.cm !== undefined) return { cm: amount.cm, end: amount.end };
  const first = numberAt(line.words, at);
  if (
    first === undefined ||
    (line.lower(first.end) !== "x" && line.lower(first.end) !== "by" && line.lower(first.end) !== "×")
  )
    return undefined;
  const second = numberAt(line.words, first.end + 1);
  const both = amountAt(line.words, first.end + 1, line.system);
  if (second === undefined || both?.cm === undefined || second.value === 0) return undefined;
  return { cm: (both.cm / second.value) * first.value, end: both.end };
}

/** "thinned Nantes to 10" leaves ten; "to 10 cm" sets a distance. */
function readThinnedTo(scan: Scan): boolean {
  const { line, at, read } = scan;
  if (scan.kind !== "thinned" || line.lower(at) !== "to") return false;
  const amount = amountAt(line.words, at + 1, line.system);
  if (amount?.cm !== undefined) setSpacing(read, amount.cm);
  else if (amount?.count !== undefined) read.leftOver = amount;
  else return false;
  let end = amount.end;
  if (afterSpacing.has(line.lower(end)) || plainNouns.has(line.lower(end))) end += 1;
  line.claim(at, end);
  scan.at = end;
  scan.afterItem = false;
  scan.listOpen = read.items.length === 0;
  return true;
}

// --------------------------------------------------------------------------------------------------------------- causes

/** "to leek moth", "because of frost", and after a comma a pest or disease alone. */
function readCause(scan: Scan): boolean {
  const { line, at, read } = scan;
  if (scan.kind !== "lost" || read.cause !== undefined) return false;
  const lower = line.lower(at);
  const second = line.lower(at + 1);
  let from: number | undefined;
  if (/^(?:to|from|after|by)$/.test(lower)) from = at + 1;
  else if ((lower === "because" && second === "of") || (lower === "due" && second === "to")) from = at + 2;
  const clause = line.words[at - 1]?.text;
  if (from === undefined && (clause === "," || clause === "(" || clause === ":") && read.items.length > 0) {
    const end = causeEnd(line, at);
    if (causeWords.has(line.lower(end - 1)) || causeWords.has(lower)) from = at;
  }
  if (from === undefined) return false;
  const end = causeEnd(line, from);
  const cause = line.slice(from, end);
  if (cause === "") return false;
  read.cause = cause;
  line.claim(at, end);
  scan.at = end;
  scan.afterItem = false;
  scan.listOpen = read.items.length === 0;
  return true;
}

function causeEnd(line: Line, from: number): number {
  let at = from;
  while (at < line.end) {
    const word = line.words[at];
    if (word === undefined || /^[,;:().–—]$/.test(word.text)) break;
    if ((word.lower === "in" || word.lower === "from") && bareBedAt(line, at + 1)) break;
    at += 1;
  }
  return at;
}

/** "planted 3 bought Black Beauty", "…, bought". A clause that says more keeps its words. */
function readBought(scan: Scan): boolean {
  const { line, at, read } = scan;
  if (scan.kind !== "planted" && scan.kind !== "potted on") return false;
  const lower = line.lower(at);
  const how = bought.has(lower) ? "bought" : given.has(lower) ? "given" : undefined;
  if (how === undefined || read.plantsFrom !== undefined) return false;
  read.plantsFrom = how;
  const next = line.words[at + 1];
  const alone = read.items.length === 0 || next === undefined || at + 1 >= line.end || next.kind === "mark";
  if (alone) line.claim(at, at + 1);
  scan.at = at + 1;
  if (read.items.length > 0) {
    scan.listOpen = false;
    scan.afterItem = false;
  }
  return true;
}

// ---------------------------------------------------------------------------------------------------------------- items

function readAmount(scan: Scan): boolean {
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
function readName(scan: Scan, from: number, amount: Amount | undefined): boolean {
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
