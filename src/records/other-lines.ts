/** Lines of troubles, of gear put up and taken down, and of soil tests. */
import type { Line } from "./line.ts";
import { isCapital } from "./line-words.ts";
import { bareBedAt, type FoundPlace, placeAt } from "./place-words.ts";
import { readPlants } from "./plant-line.ts";
import { knownPlant, takePlant } from "./plant-names.ts";
import type { PlantLine } from "./plant-scan.ts";
import { amountAt } from "./quantities.ts";

export interface TroubleLine {
  /** Undefined when only what has the trouble is named. */
  readonly cause?: string | undefined;
  readonly plants: PlantLine;
}

/** "blackfly on Aquadulce, growing tips": the cause, then on what; a plant that comes first is what has the trouble. */
export function readTrouble(line: Line, from: number, kind: "trouble" | "cured"): TroubleLine | undefined {
  const head = headColon(line, from);
  if (head !== undefined) return causeAfterColon(line, from, head, kind);
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
  const plants = readPlants(line, from, kind);
  const left = line.firstLeft(from);
  if (left !== undefined) {
    // "Black Beauty wilting, row 2": the first words left over are the cause.
    const start = /^(?:with|has|have|is|are)$/.test(line.lower(left.from)) ? left.from + 1 : left.from;
    line.claim(left.from, left.end);
    return { cause: line.slice(start, left.end), plants };
  }
  return plants.items.length === 0 ? undefined : { plants };
}

/** "on Aquadulce: blackfly" */
function headColon(line: Line, from: number): number | undefined {
  if (!/^(?:on|in|with)$/.test(line.lower(from))) return undefined;
  for (let at = from + 1; at < Math.min(line.end, from + 8); at++) if (line.words[at]?.text === ":") return at;
  return undefined;
}

function causeAfterColon(line: Line, from: number, colon: number, kind: "trouble" | "cured"): TroubleLine {
  let end = colon + 1;
  while (end < line.end && !/^[,;(]$/.test(line.words[end]?.text ?? "")) end += 1;
  const cause = line.slice(colon + 1, end);
  line.claim(colon, end);
  const stop = line.end;
  line.end = colon;
  const plants = readPlants(line, from, kind);
  line.end = stop;
  return { cause: cause === "" ? undefined : cause, plants };
}

/** The word after the cause: "on" or "in" before something named, else the first comma; `from` when a plant comes first. */
function whereCauseEnds(line: Line, from: number): number {
  const counted = amountAt(line.words, from, line.system)?.end ?? from;
  const plantFirst = line.names.plantAt(line.words, line.lower(counted) === "the" ? counted + 1 : counted);
  const bedFirst = bareBedAt(line, from);
  let comma = line.end;
  for (let at = from; at < line.end; at++) {
    const word = line.words[at];
    if (word === undefined) break;
    // A day that was said is understood already: "frost last night, Crown Prince".
    if (comma === line.end && (/^[,;(]$/.test(word.text) || line.isClaimed(at))) comma = at;
    if (/^(?:on|in|among|amongst|at|all|under)$/.test(word.lower) && at > from && namedAfter(line, at + 1))
      // "beans in Long Bed" names what has the trouble, and none.
      return plantFirst?.end === at && counted === from ? from : Math.min(at, comma);
  }
  if (plantFirst !== undefined || bedFirst !== undefined) return from;
  return comma;
}

/** Whether a plant, a bed or a name in capitals comes within the next words. */
function namedAfter(line: Line, from: number): boolean {
  for (let at = from; at < Math.min(line.end, from + 6); at++) {
    const word = line.words[at];
    if (word === undefined || (word.kind === "mark" && !/^['‘’"“”-]$/.test(word.text))) return false;
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

/** "Long Bed pH 6.4", "6.4 in Long Bed", "Long Bed 6.4, Cold Frame 7.0". A pH is a number from 2 to 12. */
export function readSoil(line: Line, from: number): readonly SoilLine[] {
  const tests: SoilLine[] = [{}];
  for (let at = from; at < line.end; ) {
    const test = tests.at(-1) ?? {};
    const place = placeAt(line, at, "soil test") ?? bareBedAt(line, at);
    const read = place === undefined ? soilNumberAt(line, at, test) : soilPlace(test, place);
    if (read === undefined) {
      at += 1;
      continue;
    }
    // A second bed after a number is a test of its own.
    if (place?.is === "bed" && test.bed !== undefined) tests.push(read.test);
    else tests[tests.length - 1] = read.test;
    line.claim(at, read.end);
    at = read.end;
  }
  return tests;
}

interface SoilRead {
  readonly test: SoilLine;
  readonly end: number;
}

function soilPlace(test: SoilLine, place: FoundPlace): SoilRead | undefined {
  if (place.is === "spot") return { test: { ...test, spot: place.spot }, end: place.end };
  if (place.is !== "bed") return undefined;
  if (test.bed === undefined) return { test: { ...test, bed: place.bed }, end: place.end };
  return test.ph === undefined ? undefined : { test: { bed: place.bed }, end: place.end };
}

function soilNumberAt(line: Line, at: number, test: SoilLine): SoilRead | undefined {
  const amount = amountAt(line.words, at, line.system);
  if (amount?.celsius !== undefined) {
    return test.celsius === undefined ? { test: { ...test, celsius: amount.celsius }, end: amount.end } : undefined;
  }
  const named = line.lower(at) === "ph";
  const word = line.words[named ? at + 1 : at];
  const ph = word?.kind === "number" ? Number(word.text.replace(",", ".")) : Number.NaN;
  if (test.ph !== undefined || !(ph >= 2 && ph <= 12) || amount?.cm !== undefined || amount?.grams !== undefined)
    return undefined;
  return { test: { ...test, ph }, end: named || line.lower(at + 1) === "ph" ? at + 2 : at + 1 };
}
