/**
 * Finds the garden's and the sites' positions in text, however they are spelled: decimal degrees with point or comma,
 * degrees with minutes and seconds, EXIF fractions, a receiver's sentence (NMEA 0183), whole numbers of 10⁻⁷ or 10⁻⁶
 * degrees, geohash and plus code.
 *
 * A position is two numbers, and pages are full of numbers that mean something else. So two numbers near each other need
 * to be close to the position; one alone must have at least five digits of it and stand for nothing else.
 */
import type { Garden, Position, Records } from "../../model.ts";
import { geohash, plusCode } from "./place-codes.ts";

export interface SecretPosition {
  /** Whose: "the garden", "the site harbour-yard". */
  readonly of: string;
  readonly position: Position;
}

/** A number in a text that may be a coordinate. */
interface Reading {
  /** Degrees, without sign. */
  readonly value: number;
  /** How far the true value may be, in degrees. */
  readonly within: number;
  /** Whether it may stand for a coordinate without its partner. */
  readonly alone: boolean;
  readonly start: number;
  readonly end: number;
}

/** Three decimals of a degree: 111 metres to the north. */
const near = 0.001;
const lookAhead = 80;

export function secretPositions(records: Records & Pick<Garden, "photosTakenAt">): SecretPosition[] {
  const { photosTakenAt } = records;
  const garden = records.settings.position;
  const sites = [...records.sites.values()].flatMap(({ id, position }) =>
    position ? [{ of: `the site ${id}`, position }] : [],
  );
  const taken = (photosTakenAt ?? []).map((position) => ({ of: "a place in your photos", position }));
  return [...(garden ? [{ of: "the garden", position: garden }] : []), ...sites, ...taken];
}

/**
 * The first spelling of a position in a text as it is shown, or undefined. `drawn` says that the text is without SVG
 * geometry, so that a lone number can be judged.
 */
export function findPosition(
  text: string,
  secrets: readonly SecretPosition[],
): { of: string; spelled: string } | undefined {
  const readings = [...readingsOf(text)].sort((a, b) => a.start - b.start);
  for (const { of, position } of secrets) {
    const found = pair(readings, position) ?? coarsePair(text, position) ?? code(text, position);
    if (found) return { of, spelled: typeof found === "string" ? found : text.slice(found.start, found.end) };
  }
  return undefined;
}

/** A coordinate that stands alone in a text without drawings. */
export function findLoneCoordinate(
  text: string,
  secrets: readonly SecretPosition[],
): { of: string; spelled: string } | undefined {
  for (const reading of readingsOf(text)) {
    if (!reading.alone) continue;
    for (const { of, position } of secrets) {
      for (const coordinate of [position.latitude, position.longitude]) {
        if (decimalsOf(coordinate) >= 3 && Math.abs(reading.value - Math.abs(coordinate)) <= reading.within) {
          return { of, spelled: text.slice(reading.start, reading.end) };
        }
      }
    }
  }
  return undefined;
}

// ------------------------------------------------------------------------------------------------------------- numbers

const degreeMark = "(?:°|º|˚|\\bdeg(?:rees)?\\b)";
const minuteMark = "(?:′|'|’|‘|´|\\bmin(?:utes)?\\b)";
const secondMark = "(?:″|\"|”|“|''|′′|\\bsec(?:onds)?\\b)";
const part = "(\\d{1,2}(?:[.,]\\d+)?)";

const point = /(?<![\d.])(\d{1,3})\.(\d{3,})(?!\d)(?:\s?(°|º|[NSEW]\b))?/g;
const comma = /(?<![\d.,])(\d{1,3}),(\d{3,})(?![\d,.])/g;
const sexagesimal = new RegExp(
  `(?<!\\d)(\\d{1,3})\\s*${degreeMark}\\s*${part}\\s*${minuteMark}?\\s*(?:${part}\\s*${secondMark}?)?`,
  "g",
);
const hemisphereLast = /(?<![\d.])(\d{1,3})[ :](\d{1,2}(?:\.\d+)?)(?:[ :](\d{1,2}(?:\.\d+)?))?\s*[NSEW]\b/g;
const hemisphereFirst = /\b[NSEW]\s*(\d{1,3})[ :](\d{1,2}(?:\.\d+)?)(?:[ :](\d{1,2}(?:\.\d+)?))?(?![\d.])/g;
const fractions = /(?<!\d)(\d{1,3})\/1[\s,;]+(\d{1,2})\/1[\s,;]+(\d{1,10})\/(\d{1,8})(?!\d)/g;
const receiver = /(?<!\d)(\d{2,3})(\d{2}\.\d{2,}),?\s?[NSEW]\b/g;
const wholes = /(?<![\w.])\d{6,10}(?![\w.])/g;

function* readingsOf(text: string): Generator<Reading> {
  for (const found of text.matchAll(point)) {
    const digits = (found[1] as string) + (found[2] as string);
    const named = found[3] !== undefined;
    const unit = /^\s?(?:kg|g|lb|oz|mm|cm|m|in|ft|l|ml|%|€|£|\$|px|r?em|v[hw]|s|ms)(?![a-z])/i.test(
      text.slice(found.index + found[0].length, found.index + found[0].length + 5),
    );
    const exact = 10 ** -(found[2] as string).length;
    yield reading(
      found,
      Number(`${found[1]}.${found[2]}`),
      Math.min(near, exact),
      named || (digits.replace(/^0+/, "").length >= 5 && !unit),
    );
  }
  for (const found of text.matchAll(comma)) {
    const decimals = (found[2] as string).length;
    // "54,312" may be fifty-four thousand: alone it needs more digits.
    yield reading(found, Number(`${found[1]}.${found[2]}`), Math.min(near, 10 ** -decimals), decimals >= 4);
  }
  for (const pattern of [sexagesimal, hemisphereLast, hemisphereFirst]) {
    for (const found of text.matchAll(pattern)) {
      const minutes = number(found[2]);
      const seconds = found[3] === undefined ? 0 : number(found[3]);
      const fine = found[3] !== undefined || /[.,]\d\d/.test(found[2] as string);
      yield reading(found, Number(found[1]) + minutes / 60 + seconds / 3600, fine ? near : 1 / 60, fine);
    }
  }
  for (const found of text.matchAll(fractions)) {
    yield reading(
      found,
      Number(found[1]) + Number(found[2]) / 60 + Number(found[3]) / Number(found[4]) / 3600,
      near,
      true,
    );
  }
  for (const found of text.matchAll(receiver))
    yield reading(found, Number(found[1]) + Number(found[2]) / 60, near, true);
  for (const found of text.matchAll(wholes)) {
    for (const scale of [1e7, 1e6]) yield reading(found, Number(found[0]) / scale, near, false);
  }
}

function reading(found: RegExpExecArray, value: number, within: number, alone: boolean): Reading {
  return { value, within, alone, start: found.index, end: found.index + found[0].length };
}

function number(written: string | undefined): number {
  return Number((written ?? "").replace(",", "."));
}

// --------------------------------------------------------------------------------------------------------------- pairs

function pair(
  readings: readonly Reading[],
  { latitude, longitude }: Position,
): { start: number; end: number } | undefined {
  const is = (one: Reading, coordinate: number) =>
    Math.abs(one.value - Math.abs(coordinate)) <= Math.max(near, one.within);
  for (const [index, first] of readings.entries()) {
    const other = is(first, latitude) ? longitude : is(first, longitude) ? latitude : undefined;
    if (other === undefined) continue;
    for (let next = index + 1; next < readings.length; next++) {
      const second = readings[next] as Reading;
      if (second.start - first.end > lookAhead) break;
      if (second.start >= first.end && is(second, other)) return { start: first.start, end: second.end };
    }
  }
  return undefined;
}

/**
 * A position that the records give with one or two decimals only, spelled just so. With one decimal nothing but signs
 * may stand between, since "54.3 kg and 5.6 kg" is a harvest; whole degrees are no position.
 */
function coarsePair(text: string, { latitude, longitude }: Position): string | undefined {
  const decimals = Math.min(decimalsOf(latitude), decimalsOf(longitude));
  if (decimals === 0 || (decimalsOf(latitude) >= 3 && decimalsOf(longitude) >= 3)) return undefined;
  const between = decimals === 1 ? "[\\s,;/:°ºNSEW()\\[\\]−–-]{1,8}" : "[^\\d]{1,40}";
  for (const [one, other] of [
    [latitude, longitude],
    [longitude, latitude],
  ] as const) {
    const found = new RegExp(`(?<![\\d.,])${spelled(one)}(?!\\d)${between}${spelled(other)}(?!\\d)`).exec(text);
    if (found) return found[0];
  }
  return undefined;
}

function spelled(coordinate: number): string {
  return `${String(Math.abs(coordinate)).replace(".", "[.,]")}0*`;
}

function code(text: string, position: Position): string | undefined {
  const hash = geohash(position, 12);
  for (const [word] of text.matchAll(/(?<![\w-])[0-9b-hjkmnp-z]{6,12}(?![\w-])/g)) {
    if (hash.startsWith(word)) return word;
  }
  // The last four digits before the plus name the place to anyone who knows the town.
  const plus = plusCode(position);
  return new RegExp(`(?:${plus.slice(0, 4)})?${plus.slice(4, 8)}\\+(?:${plus.slice(9)})?(?![\\w])`).exec(text)?.[0];
}

function decimalsOf(coordinate: number): number {
  return String(coordinate).split(".")[1]?.length ?? 0;
}
