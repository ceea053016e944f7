/**
 * Lines about plants: amounts, names, beds, spots and spacing, in whatever order a gardener puts them.
 *
 * The words are read once from left to right. An amount followed by a name is one item; items up to the next bed share
 * that bed; an amount on its own belongs to the item before it ("Crown Prince 8.4 kg").
 */
import type { EventKind } from "../model.ts";
import { leaveRest, takeBracketed } from "./crop-heads.ts";
import type { Line } from "./line.ts";
import { causeEnd, readCause } from "./loss-causes.ts";
import { bareBedAt, type FoundPlace, placeAt, raised } from "./place-words.ts";
import { readAmount, readName } from "./plant-items.ts";
import { phraseEnd, plantIn, plantNouns } from "./plant-names.ts";
import { currentPlace, type PlantLine, type Scan } from "./plant-scan.ts";
import { readSpacing, readThinnedTo } from "./plant-spacing.ts";

const bought = new Set(["bought", "purchased", "shop-bought", "bought-in"]);

const given = new Set(["given", "gifted", "donated", "free"]);

export function readPlants(line: Line, from: number, kind: EventKind): PlantLine {
  const read: PlantLine = { items: [], places: [{}], nursery: false };
  // "planted and watered 12 Musselburgh"
  const at = line.lower(from) === "and" && line.lower(from + 1).endsWith("ed") ? from + 2 : from;
  const scan: Scan = { line, kind, read, at, listOpen: true, afterItem: false, passedOver: false };
  while (scan.at < line.end) {
    const before = scan.at;
    step(scan);
    if (scan.at <= before) scan.at = before + 1;
  }
  leaveRest(scan);
  takeBracketed(scan);
  sharePlaces(read);
  return read;
}

function step(scan: Scan): void {
  const { line, at } = scan;
  const word = line.words[at];
  if (word === undefined) return;
  if (word.kind === "mark" || word.lower === "and" || word.lower === "plus") {
    // A sign before a number or a quotation mark begins an amount or a name.
    const minus = word.text === "-" && line.words[at + 1]?.start === word.end;
    if (!minus && !/^['‘"“~≈−@]$/.test(word.text)) {
      separator(scan, word.text);
      return;
    }
  }
  if (
    readGiver(scan) ||
    readPlace(scan) ||
    readSpacing(scan) ||
    readThinnedTo(scan) ||
    readCause(scan) ||
    readBought(scan)
  )
    return;
  if (readAmount(scan)) return;
  const counted = countedAfter(scan);
  if ((scan.listOpen || counted) && readName(scan, at, undefined, counted)) return;
  scan.at = at + 1;
  scan.afterItem = false;
  scan.passedOver = true;
  if (scan.read.items.length > 0) scan.listOpen = false;
}

/**
 * "Sungold x3 (north end), Gardener's Delight x2", "chilli Apache 5, pepper Californian Wonder 4": a known plant, a name
 * beside its crop, or any name in capitals with "x2", goes on with any list when its number stands behind it.
 */
function countedAfter({ line, at, kind }: Scan): boolean {
  if (!/^[,;]$/.test(line.lower(at - 1))) return false;
  const named = plantIn(line, at, phraseEnd(line, at), kind, false);
  const plant = named?.from === at && named.title !== undefined ? named : line.names.plantAt(line.words, at);
  if (plant === undefined) return false;
  const times = /^[x×(:]$/.test(line.lower(plant.end)) ? plant.end + 1 : plant.end;
  const sure = plant !== named || named.crop !== undefined || /^[x×]$/.test(line.lower(times - 1));
  return sure && line.words[times]?.kind === "number";
}

function separator(scan: Scan, mark: string): void {
  scan.at += 1;
  if (mark === ";" || mark === ".") scan.headCrop = undefined;
  if (mark === ":" || (mark === "(" && scan.read.items.length === 0)) scan.listOpen = true;
  else if (mark === ";") scan.listOpen = scan.afterItem || scan.read.items.length === 0 || plantAlone(scan);
  else if (mark === "." || mark === ")" || mark === "(") scan.listOpen = scan.read.items.length === 0;
  else scan.listOpen = scan.afterItem || scan.read.items.length === 0;
}

/** "Nantes, 2 rows; Boltardy beetroot, 1 row": a plant in a clause of its own goes on with the list, "; Nantes looks well" does not. */
function plantAlone({ line, at, kind }: Scan): boolean {
  const plant = plantIn(line, at, phraseEnd(line, at), kind, false);
  if (plant === undefined || plant.from !== at || (plant.title !== undefined && plant.crop === undefined)) return false;
  return (
    plant.end >= line.end ||
    line.words[plant.end]?.kind === "mark" ||
    /^(?:in|from|on|at|to|x)$/.test(line.lower(plant.end))
  );
}

function readPlace(scan: Scan): boolean {
  const { line, at, kind } = scan;
  const place = placeAt(line, at, kind) ?? bareBed(scan);
  if (place === undefined || (place.is === "spot" && !mayBeSpot(line, at, kind))) return false;
  // "in 9 cm pots" says more than "indoors" does, so its words stay.
  if (place.is !== "nursery" || place.end === at + 1) line.claim(at, place.end);
  setPlace(scan, place);
  scan.at = place.end;
  if (place.is === "bed") scan.bedEnd = place.end;
  scan.afterItem = false;
  scan.listOpen = scan.read.items.length === 0;
  return true;
}

/** "by the gate" is a spot behind what was understood or after a comma; "tunnelled by the fly" and "full to the edges" are none. */
function mayBeSpot(line: Line, at: number, kind: EventKind): boolean {
  if (line.lower(at) !== "by" && kind !== "doing") return true;
  const before = line.words[at - 1];
  return before === undefined || before.kind === "mark" || line.isClaimed(at - 1) || plantNouns.has(before.lower);
}

/** A bed without preposition counts where no plant of that name can be meant. */
function bareBed(scan: Scan): FoundPlace | undefined {
  const { line, at, kind } = scan;
  const bed = bareBedAt(line, at);
  if (bed === undefined || (currentPlace(scan.read).bed !== undefined && !followsBed(scan))) return undefined;
  // Of plants that came "from Cold Frame" the bed is where they went, and seed sown "for Long Bed" is not there yet.
  if (raised.has(kind) && /^(?:from|for)$/.test(line.lower(line.lower(at - 1) === "the" ? at - 2 : at - 1))) {
    return undefined;
  }
  const plant = line.names.plantAt(line.words, at);
  return plant !== undefined && plant.end >= bed.end ? undefined : bed;
}

/** "in Long Bed and Cold Frame": a bed joined to the one before it. */
function followsBed({ line, at, bedEnd }: Scan): boolean {
  return bedEnd === at - 1 && /^(?:and|&|\+|,)$/.test(line.lower(at - 1));
}

function setPlace(scan: Scan, found: FoundPlace): void {
  const { read, kind } = scan;
  const place = currentPlace(read);
  if (found.is === "nursery") read.nursery = true;
  else if (found.is === "gear") place.gear = found.gear;
  else if (found.is === "bed" && place.bed !== undefined && followsBed(scan))
    place.alsoBeds = [...(place.alsoBeds ?? []), found.bed];
  else if (found.is === "spot") {
    place.spot = place.spot === undefined ? found.spot : `${place.spot}, ${found.spot}`;
    if (found.of !== undefined) setPlace(scan, { is: "bed", ...found.of, end: found.end });
  } else if (kind === "moved" && (found.role === "to" || (found.role === "in" && place.bed !== undefined)))
    place.toBed = found.bed;
  else place.bed = found.bed;
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

/** "planted 3 bought Black Beauty", "…, bought". A clause that says more keeps its words. */
function readBought(scan: Scan): boolean {
  const { line, at, read } = scan;
  if (scan.kind !== "planted" && scan.kind !== "potted on" && scan.kind !== "acquired") return false;
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

/** From whom plants came: "from a neighbour", up to the next comma or the bed they stand in. */
function readGiver(scan: Scan): boolean {
  const { line, at, read, kind } = scan;
  if (kind !== "acquired" || read.from !== undefined || !/^(?:from|off|by)$/.test(line.lower(at))) return false;
  const end = causeEnd(line, at + 1);
  const from = line.slice(at + 1, end);
  if (from === "") return false;
  read.from = from;
  line.claim(at, end);
  scan.at = end;
  scan.afterItem = false;
  scan.listOpen = read.items.length === 0;
  return true;
}
