/** Spots within a bed: "row 2", "by the gate", "the north end", "between the tomatoes", "the corner by the gate". */
import { afterArticle, articles, bedNouns, bedPrepositions, type Role, roleOf } from "./bed-words.ts";
import type { Line } from "./line.ts";
import { isCapital } from "./line-words.ts";
import { amountAt } from "./quantities.ts";
import { unitCalled } from "./units.ts";

export interface FoundSpot {
  readonly is: "spot";
  readonly spot: string;
  /** "the corner of Long Bed" */
  readonly of?: { readonly bed: string; readonly role: Role } | undefined;
  readonly end: number;
}

const spotNouns = new Set(
  "row rows end side corner edge middle centre center half back front top bottom third quarter strip square left right gap ends sides edges station bay".split(
    " ",
  ),
);
/** These name a spot without "the" too, with a number: "row 2". */
const numberedSpots = new Set("row rows bay station square line drill pot pots tub box".split(" "));
const ordinals =
  /^(?:first|second|third|fourth|fifth|last|middle|outer|inner|back|front|outside|inside|top|bottom|left|right|north|south|east|west|far|near)$/;
const besides = new Set(
  "by beside near behind along against opposite alongside around under beneath below above outside towards toward".split(
    " ",
  ),
);

/** "row 2", "by the gate", "between the tomatoes", "next to the leeks", "at the north end", "the corner by the gate". */
export function spotAt(line: Line, at: number, lower: string): FoundSpot | undefined {
  const start = spotStart(line, at, lower);
  if (start === undefined) return undefined;
  const end = spotEnd(line, Math.max(start.noun, at + 1));
  const text = line.slice(start.from, end);
  if (text === "") return undefined;
  const bed = line.lower(end) === "of" ? line.names.at("bed", line.words, afterArticle(line, end + 1)) : undefined;
  if (bed === undefined) return { is: "spot", spot: text, end };
  return { is: "spot", spot: text, of: { bed: bed.id, role: roleOf(lower, false) }, end: bed.end };
}

/** Where the words of the spot begin: "in" and "at" before a part of the bed are left out, "by the gate" is kept whole. */
function spotStart(
  line: Line,
  at: number,
  lower: string,
): { readonly from: number; readonly noun: number } | undefined {
  if (lower === "next" && line.lower(at + 1) === "to")
    return line.lower(at + 2) === "" ? undefined : { from: at, noun: at + 2 };
  const side = lower === "on" ? at + 1 : at;
  if (/^(?:either|both)$/.test(line.lower(side)) && /^sides?$/.test(line.lower(side + 1)))
    return { from: side, noun: side + 2 };
  if (lower === "close" && line.lower(at + 1) === "to") return { from: at, noun: at + 2 };
  if (lower === "in" && line.lower(at + 1) === "front" && line.lower(at + 2) === "of")
    return { from: at, noun: at + 3 };
  const distance = unitCalled(line.lower(at - 1))?.dimension === "length";
  if (
    !distance &&
    lower === "between" &&
    (articles.has(line.lower(at + 1)) ||
      numberedSpots.has(line.lower(at + 1)) ||
      line.names.plantAt(line.words, at + 1))
  ) {
    return { from: at, noun: at + 1 };
  }
  if (besides.has(lower)) {
    const named = articles.has(line.lower(at + 1)) || line.names.plantAt(line.words, at + 1) !== undefined;
    return named &&
      !/^(?:hand|mistake|day|night|time|way|end|weekend|week)$/.test(line.lower(afterArticle(line, at + 1)))
      ? { from: at, noun: at + 1 }
      : undefined;
  }
  const from = /^(?:in|into|at|on|along|to|from)$/.test(lower) ? at + 1 : at;
  return partOfBed(line, from);
}

/** "row 2", "rows 1-3", "2nd row", "the far end", "the left-hand side", "the corner". */
function partOfBed(line: Line, from: number): { readonly from: number; readonly noun: number } | undefined {
  const first = line.lower(from);
  if (numberedSpots.has(first)) {
    const next = line.words[from + 1];
    const numbered = amountAt(line.words, from + 1, line.system)?.count !== undefined;
    return numbered || (next !== undefined && next.text.length === 1 && isCapital(next))
      ? { from, noun: from + 1 }
      : undefined;
  }
  const definite = articles.has(first);
  let at = definite ? from + 1 : from;
  for (let steps = 0; steps < 4; steps++, at++) {
    const word = line.words[at];
    if (word === undefined || at >= line.end) return undefined;
    if (spotNouns.has(word.lower) && (definite || steps > 0)) {
      // "the back bed" is a bed, "the back" a spot.
      const next = line.lower(at + 1);
      if (spotNouns.has(next) || bedNouns.has(next) || next === "hand" || line.words[at + 1]?.text === "-") continue;
      return { from, noun: at + 1 };
    }
    const describes =
      ordinals.test(word.lower) || word.lower === "hand" || word.text === "-" || /^(?:st|nd|rd|th)$/.test(word.lower);
    const ordinal = word.kind === "number" && /^(?:st|nd|rd|th)$/.test(line.lower(at + 1));
    if (!describes && !ordinal && !(definite && steps === 0 && spotNouns.has(line.lower(at + 1)))) return undefined;
  }
  return undefined;
}

/** A spot goes on to the next comma, a bed, or an amount of something. "of Long Bed" after it belongs to the bed. */
function spotEnd(line: Line, from: number): number {
  let at = from;
  while (at < line.end) {
    const word = line.words[at];
    if (word === undefined) break;
    if (word.kind === "mark" && word.text !== "-" && word.text !== "'" && word.text !== "/") break;
    const lower = word.lower;
    if (lower === "with" || lower === "where" || lower === "because" || lower === "which" || lower === "indoors") break;
    if (at > from && line.names.at("bed", line.words, at)) break;
    if ((bedPrepositions.has(lower) || lower === "of") && line.names.at("bed", line.words, afterArticle(line, at + 1)))
      break;
    if (lower === "of" && !line.words[at + 1]) break;
    at += 1;
  }
  return at;
}
