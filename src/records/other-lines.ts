/** Lines of troubles, of gear put up and taken down, and of soil tests. */
import type { Line } from "./line.ts";
import { isCapital } from "./line-words.ts";
import { bareBedAt, placeAt } from "./place-words.ts";
import { readPlants } from "./plant-line.ts";
import { knownPlant, takePlant } from "./plant-names.ts";
import type { PlantLine } from "./plant-scan.ts";
import { amountAt } from "./quantities.ts";

export interface TroubleLine {
  readonly cause: string;
  readonly plants: PlantLine;
}

/** "blackfly on Aquadulce, growing tips": the cause, then on what; a plant that comes first is what has the trouble. */
export function readTrouble(line: Line, from: number, kind: "trouble" | "cured"): TroubleLine | undefined {
  const on = whereCauseEnds(line, from);
  const cause = line.slice(from, on);
  if (cause !== "") {
    line.claim(from, on);
    const plants = readPlants(line, on, kind);
    if (plants.items.length === 0) {
      // "yellow leaves Black Beauty", "under the leaves of Sungold": named among other words.
      const named = knownPlant(line, from, line.end);
      if (named !== undefined) plants.items.push({ ...takePlant(line, named), place: 0 });
    }
    return { cause, plants };
  }
  const first = line.lower(from) === "on" || line.lower(from) === "in" ? from + 1 : from;
  const plants = readPlants(line, first, kind);
  return causeAfterPlant(line, first, plants);
}

/** "Black Beauty wilting, row 2": the first words left over are the cause. */
function causeAfterPlant(line: Line, from: number, plants: PlantLine): TroubleLine | undefined {
  const left = line.firstLeft(from);
  if (left === undefined) return undefined;
  line.claim(left.from, left.end);
  return { cause: line.slice(left.from, left.end), plants };
}

/** The word after the cause: "on" or "in" before something named, else the first comma; `from` when a plant comes first. */
function whereCauseEnds(line: Line, from: number): number {
  const plantFirst = line.names.plantAt(line.words, line.lower(from) === "the" ? from + 1 : from);
  const bedFirst = bareBedAt(line, from);
  let comma = line.end;
  for (let at = from; at < line.end; at++) {
    const word = line.words[at];
    if (word === undefined) break;
    if (comma === line.end && /^[,;(]$/.test(word.text)) comma = at;
    if (/^(?:on|in|among|amongst|at|all|under)$/.test(word.lower) && at > from && namedAfter(line, at + 1))
      return Math.min(at, comma);
  }
  if (plantFirst !== undefined || bedFirst !== undefined) return from;
  return comma;
}

/** Whether a plant, a bed or a name in capitals comes within the next words. */
function namedAfter(line: Line, from: number): boolean {
  for (let at = from; at < Math.min(line.end, from + 6); at++) {
    const word = line.words[at];
    if (word === undefined || (word.kind === "mark" && word.text !== "'" && word.text !== "-")) return false;
    if (word.kind === "word" && isCapital(word)) return true;
    if (line.names.plantAt(line.words, at) ?? line.names.at("bed", line.words, at)) return true;
  }
  return false;
}

export interface GearLine {
  readonly gear?: string | undefined;
  /** The thing as said, when no file describes it. */
  readonly what?: string | undefined;
  readonly bed?: string | undefined;
  readonly spot?: string | undefined;
}

export function readGear(line: Line, from: number, kind: "put up" | "took down"): GearLine | undefined {
  let gear: string | undefined;
  let bed: string | undefined;
  let spot: string | undefined;
  for (let at = from; at < line.end; ) {
    const thing = gear === undefined ? line.names.at("gear", line.words, at) : undefined;
    if (thing !== undefined) {
      gear = thing.id;
      line.claim(at, thing.end);
      at = thing.end;
      continue;
    }
    const place = at > from ? (placeAt(line, at, kind) ?? bareBedAt(line, at)) : undefined;
    if (place?.is === "bed" && bed === undefined) bed = place.bed;
    else if (place?.is === "spot" && spot === undefined) spot = place.spot;
    else {
      at += 1;
      continue;
    }
    line.claim(at, place.end);
    at = place.end;
  }
  if (gear !== undefined) return { gear, bed, spot };
  const end = unnamedGearEnd(line, from);
  const start = /^(?:the|a|an|some|my|our)$/.test(line.lower(from)) ? from + 1 : from;
  const what = line.slice(start, end);
  if (what === "") return undefined;
  line.claim(from, end);
  return { what, bed, spot };
}

/** A thing nobody described goes on to the first comma or word of place. */
function unnamedGearEnd(line: Line, from: number): number {
  let at = from;
  while (at < line.end) {
    const word = line.words[at];
    if (word === undefined || /^[,;:().–—]$/.test(word.text)) break;
    if (
      at > from &&
      /^(?:in|into|on|over|from|at|around|round|against|by|along|across|to|for|off|with)$/.test(word.lower)
    )
      break;
    at += 1;
  }
  return at;
}

export interface SoilLine {
  readonly bed?: string | undefined;
  readonly spot?: string | undefined;
  readonly ph?: number | undefined;
  readonly celsius?: number | undefined;
}

/** "Long Bed pH 6.4", "6.4 in Long Bed". A pH is a number from 2 to 12: beyond that it is something else. */
export function readSoil(line: Line, from: number): SoilLine {
  let read: SoilLine = {};
  for (let at = from; at < line.end; ) {
    const place = placeAt(line, at, "soil test") ?? bareBedAt(line, at);
    if (place?.is === "bed" && read.bed === undefined) read = { ...read, bed: place.bed };
    else if (place?.is === "spot" && read.spot === undefined) read = { ...read, spot: place.spot };
    else {
      const amount = amountAt(line.words, at, line.system);
      const ph = line.lower(at) === "ph" ? line.words[at + 1] : line.words[at];
      const value = ph?.kind === "number" ? Number(ph.text.replace(",", ".")) : Number.NaN;
      if (amount?.celsius !== undefined && read.celsius === undefined) {
        read = { ...read, celsius: amount.celsius };
        line.claim(at, amount.end);
        at = amount.end;
      } else if (
        read.ph === undefined &&
        value >= 2 &&
        value <= 12 &&
        amount?.cm === undefined &&
        amount?.grams === undefined
      ) {
        read = { ...read, ph: value };
        const end = line.lower(at) === "ph" || line.lower(at + 1) === "ph" ? at + 2 : at + 1;
        line.claim(at, end);
        at = end;
      } else {
        at += 1;
      }
      continue;
    }
    line.claim(at, place.end);
    at = place.end;
  }
  return read;
}
