/** Directions and lengths in the words of a shade line: "on the north-east side", "SSW", "6 feet 6 inches high", "180 cm tall". */
import { metresPerFoot, metresPerInch, metresPerYard } from "../measures.ts";

/** The sixteen points in turn, from north through east; their letters are those of their words. */
const POINTS = "n nne ne ene e ese se sse s ssw sw wsw w wnw nw nnw".split(" ");

const side = "(?:north|south|east|west)";
/** "north", "north-east", "north-north-east", "northeastern"; or "NNE". */
const point = new RegExp(`\\b(${side}(?:ern)?(?:(?:[ -]?(?:${side}))(?:ern)?){0,2})\\b`, "gi");
const letters = /\b(N|S|E|W|[NS][EW]|[NS][NS][EW]|[EW][NS][EW])\b/g;

/** Directions in degrees from north, and the text without them; a direction that is none of the sixteen is not a number. */
export function compassOf(text: string): { readonly directions: readonly number[]; readonly rest: string } {
  const directions: number[] = [];
  const take = (_: string, said: string): string => {
    const key = (said.toLowerCase().match(new RegExp(side, "g")) ?? [said.toLowerCase()])
      .map((word) => (word.length > 3 ? word[0] : word))
      .join("");
    directions.push(POINTS.indexOf(key) < 0 ? Number.NaN : POINTS.indexOf(key) * 22.5);
    return " ";
  };
  const rest = text.replace(point, take).replace(letters, take);
  return { directions: directions.some(Number.isNaN) ? [] : directions, rest };
}

const METRES: Readonly<Record<string, number>> = {
  mm: 0.001,
  cm: 0.01,
  m: 1,
  in: metresPerInch,
  ft: metresPerFoot,
  yd: metresPerYard,
};
const UNITS: readonly (readonly [key: string, words: string])[] = [
  ["mm", "mm|millimetres?|millimeters?"],
  ["cm", "cms?|centimetres?|centimeters?"],
  ["m", "m|metres?|meters?"],
  ["in", 'ins?|inch|inches|"|″|”'],
  ["ft", "ft|foot|feet|'|′|’"],
  ["yd", "yds?|yards?"],
];
const NUMBERS = "a one two three four five six seven eight nine ten eleven twelve".split(" ");
const number = `\\d+(?:[.,]\\d+)?|${NUMBERS.join("|")}|half a`;
const anyUnit = UNITS.map(([, words]) => words).join("|");
/** "3 m", "6 feet 6 inches", "6'6\"", "six-foot", "two and a half metres". */
const length = `(?<![\\w.,])(${number})( and a half)?[ -]?(${anyUnit})(?![a-z])(?:[ ,]?(?:and )?(${number})[ -]?(?:${UNITS[3]?.[1]})(?![a-z]))?`;

type Role = "high" | "away" | "wide";
const said = (behind: string, before: string): readonly RegExp[] => [
  new RegExp(`${length}[ -]?(?:${behind})\\b`, "i"),
  new RegExp(`\\b(?:${before})(?: of|:)? ?${length}`, "i"),
];
const roles: Readonly<Record<Role, readonly RegExp[]>> = {
  high: said("high|tall|in height", "height|high"),
  away: said(
    "(?:away|off|distant|from (?:the|its) (?:bed|edge|row|plot))(?: from (?:the|its) (?:bed|edge))?",
    "distance|away",
  ),
  wide: said("wide|long|across|in width|in length", "width|length"),
};

interface Lengths {
  readonly high: number | undefined;
  readonly away: number | undefined;
  readonly wide: number | undefined;
  /** The text without them. */
  readonly left: string;
}

/** Metres by what they are of; a length that does not say is left in the text. */
export function lengthsIn(text: string): Lengths {
  let left = text;
  const take = (role: Role): number | undefined => {
    for (const pattern of roles[role]) {
      const found = pattern.exec(left);
      if (found === null) continue;
      left = `${left.slice(0, found.index)} ${left.slice(found.index + found[0].length)}`;
      return metres(found);
    }
    return undefined;
  };
  const [high, away, wide] = [take("high"), take("away"), take("wide")];
  return { high, away, wide, left };
}

function metres([, whole = "", half, unit = "", inches]: RegExpExecArray): number {
  const key = UNITS.find(([, words]) => new RegExp(`^(?:${words})$`, "i").test(unit))?.[0] ?? "m";
  const rest = inches === undefined ? 0 : numberOf(inches) * metresPerInch;
  return (numberOf(whole) + (half === undefined ? 0 : 0.5)) * (METRES[key] ?? 1) + rest;
}

function numberOf(said: string): number {
  const word = said.toLowerCase();
  if (word === "half a") return 0.5;
  const spelt = NUMBERS.indexOf(word);
  return spelt < 0 ? Number(said.replace(",", ".")) : Math.max(1, spelt);
}
