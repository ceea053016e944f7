/**
 * Where a line says something is: a bed, gear it grows on, the nursery, a spot within the bed.
 */
import { monthNumber, weekdayNumber } from "../calendar.ts";
import type { EventKind } from "../model.ts";
import type { Line } from "./line.ts";
import { isCapital } from "./line-words.ts";
import { problem } from "./problem-rules.ts";
import { amountAt } from "./quantities.ts";
import { unitCalled } from "./units.ts";

export type FoundPlace =
  | { readonly is: "bed"; readonly bed: string; readonly role: "in" | "from" | "to"; readonly end: number }
  | { readonly is: "gear"; readonly gear: string; readonly end: number }
  | { readonly is: "nursery"; readonly end: number }
  | {
      readonly is: "spot";
      readonly spot: string;
      /** "the corner of Long Bed" */
      readonly of?: { readonly bed: string; readonly role: "in" | "from" | "to" } | undefined;
      readonly end: number;
    };

const articles = new Set(["the", "my", "our", "that", "this"]);
const bedPrepositions = new Set([
  "in",
  "into",
  "from",
  "on",
  "onto",
  "at",
  "inside",
  "within",
  "to",
  "for",
  "across",
  "through",
  "off",
  "over",
  "around",
  "round",
]);
const gearPrepositions = new Set([
  "in",
  "on",
  "onto",
  "up",
  "over",
  "under",
  "against",
  "along",
  "through",
  "beneath",
  "from",
  "underneath",
]);
/** A name in lower case is taken for a bed nobody described when it ends in one of these: "in the raised bed". */
const bedNouns = new Set(
  "bed beds border patch plot tunnel polytunnel greenhouse glasshouse frame coldframe tub tubs trough planter planters pot pots barrel barrels terrace bank rockery orchard cage container containers allotment".split(
    " ",
  ),
);
/** What seed is raised in away from its bed. */
const nurseryNouns = new Set(
  (
    "tray trays seedtray seedtrays module modules cell cells plug plugs pot pots propagator propagators windowsill sill windowsills glass lights " +
    "light block blocks rootrainer rootrainers roottrainers roll rolls gutter gutters guttering greenhouse glasshouse conservatory kitchen " +
    "cupboard porch house mat heat nursery flats flat pellets tubes lightbox trainer trainers"
  ).split(" "),
);
const nurseryPrepositions = new Set(["in", "into", "on", "under"]);
/** Kinds whose plants may be in the nursery. */
const nurseryKinds = new Set<EventKind>(["sowed", "up", "potted on"]);

/** Kinds whose plants come from where they were raised. */
export const raised: ReadonlySet<EventKind> = new Set<EventKind>(["sowed", "planted", "potted on"]);

const spotNouns = new Set(
  "row rows end side corner edge middle centre center half back front top bottom third quarter strip square left right gap ends sides edges station bay".split(
    " ",
  ),
);
/** These name a spot without "the" too, with a number: "row 2". */
const numberedSpots = new Set([
  "row",
  "rows",
  "bay",
  "station",
  "square",
  "line",
  "drill",
  "pot",
  "pots",
  "tub",
  "box",
]);
const ordinals =
  /^(?:first|second|third|fourth|fifth|last|middle|outer|inner|back|front|outside|inside|top|bottom|left|right|north|south|east|west|far|near)$/;
const besides = new Set(
  "by beside near behind along against opposite alongside around under beneath below above outside towards toward".split(
    " ",
  ),
);

/** The place that begins at word `at`, if one does. Beds nobody described are taken as named. */
export function placeAt(line: Line, at: number, kind: EventKind): FoundPlace | undefined {
  const lower = line.lower(at);
  if (line.words[at]?.kind === "mark") return undefined;
  if (nurseryKinds.has(kind) && (lower === "indoors" || lower === "inside") && !bedAfter(line, at + 1)) {
    return { is: "nursery", end: at + 1 };
  }
  return (
    known(line, at, lower, kind) ??
    nursery(line, at, lower, kind) ??
    spot(line, at, lower) ??
    unknownBed(line, at, lower, kind)
  );
}

/** A known bed with no preposition, as in "cleared Long Bed". */
export function bareBedAt(line: Line, at: number): FoundPlace | undefined {
  const bed = line.names.at("bed", line.words, articles.has(line.lower(at)) ? at + 1 : at);
  return bed === undefined || bed.end > line.end ? undefined : { is: "bed", bed: bed.id, role: "in", end: bed.end };
}

function bedAfter(line: Line, at: number): boolean {
  return bareBedAt(line, at) !== undefined;
}

function known(line: Line, at: number, lower: string, kind: EventKind): FoundPlace | undefined {
  const outOf = lower === "out" && line.lower(at + 1) === "of";
  const isBed = bedPrepositions.has(lower) || outOf;
  if (!isBed && !gearPrepositions.has(lower)) return undefined;
  const noun = afterArticle(line, outOf ? at + 2 : at + 1);
  if (isBed && !(lower === "to" && (kind === "lost" || kind === "gave away"))) {
    const bed = line.names.at("bed", line.words, noun);
    // Plants come "from the cold frame" out of the nursery: where they went is another bed.
    if (bed !== undefined && !(roleOf(lower, outOf) === "from" && raised.has(kind))) {
      warnNearBed(line, line.names.title("bed", bed.id), bed.id);
      return { is: "bed", bed: bed.id, role: roleOf(lower, outOf), end: bed.end };
    }
    const site = line.names.at("site", line.words, noun);
    const [only, second] = site === undefined ? [] : line.names.bedsOfSite(site.id);
    if (site !== undefined && only !== undefined && second === undefined) {
      return { is: "bed", bed: only, role: roleOf(lower, outOf), end: site.end };
    }
  }
  if (!gearPrepositions.has(lower)) return undefined;
  const gear = line.names.at("gear", line.words, noun);
  return gear === undefined ? undefined : { is: "gear", gear: gear.id, end: gear.end };
}

function roleOf(preposition: string, outOf: boolean): "in" | "from" | "to" {
  if (outOf || preposition === "from" || preposition === "off") return "from";
  return preposition === "to" || preposition === "into" || preposition === "onto" ? "to" : "in";
}

function afterArticle(line: Line, at: number): number {
  return articles.has(line.lower(at)) ? at + 1 : at;
}

/** "in trays", "under glass", "in 9 cm pots", "on the kitchen windowsill". */
function nursery(line: Line, at: number, lower: string, kind: EventKind): FoundPlace | undefined {
  if (!nurseryKinds.has(kind) || !nurseryPrepositions.has(lower)) return undefined;
  let word = at + 1;
  for (let steps = 0; steps < 5 && word < line.end; steps++) {
    const amount = amountAt(line.words, word, line.system);
    if (amount !== undefined) {
      word = amount.end;
      if (line.words[word]?.text === "-") word += 1;
      continue;
    }
    if (line.words[word]?.kind === "mark" && line.words[word]?.text !== "-") return undefined;
    if (nurseryNouns.has(line.lower(word))) return { is: "nursery", end: word + 1 };
    if (endsPlace(line, word)) return undefined;
    word += 1;
  }
  return undefined;
}

/** "row 2", "by the gate", "between the tomatoes", "next to the leeks", "at the north end", "the corner by the gate". */
function spot(line: Line, at: number, lower: string): FoundPlace | undefined {
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

/** Words at which a name or a place ends. */
const stops = new Set(
  "in into from on onto at to by under between with near next along behind beside against for because as after before and but".split(
    " ",
  ),
);

function endsPlace(line: Line, at: number): boolean {
  const word = line.words[at];
  return (
    at >= line.end ||
    word === undefined ||
    stops.has(word.lower) ||
    (word.kind === "mark" && word.text !== "-" && word.text !== "'" && word.text !== "’")
  );
}

/** "in Sunny Corner", "in the raised bed": a bed that no file describes. Seed and plants come "from" elsewhere than beds. */
function unknownBed(line: Line, at: number, lower: string, kind: EventKind): FoundPlace | undefined {
  const fromBed =
    kind === "picked" ||
    kind === "cleared" ||
    kind === "moved" ||
    kind === "lost" ||
    kind === "gave away" ||
    kind === "took down";
  if (lower !== "in" && lower !== "into" && !(lower === "from" && fromBed) && !(lower === "to" && kind === "moved"))
    return undefined;
  const first = afterArticle(line, at + 1);
  const definite = first > at + 1;
  let end = first;
  while (!endsPlace(line, end)) end += 1;
  const word = line.words[first];
  const last = line.words[end - 1];
  if (word === undefined || last === undefined || end === first || end - first > 5) return undefined;
  if (monthNumber(word.lower) !== undefined || weekdayNumber(word.lower) !== undefined) return undefined;
  const noun = last.kind === "number" || last.text.length === 1 ? line.words[end - 2] : last;
  const named = isCapital(word) && word.kind === "word" && !/^(?:spring|summer|autumn|fall|winter)$/.test(word.lower);
  const described =
    bedNouns.has(noun?.lower ?? "") && (definite || end - first > 1 || last.kind === "number") && word.kind === "word";
  const inPots = /^(?:pots?|tubs?|containers?)$/.test(noun?.lower ?? "") && !definite && !named;
  if (!(named || described) || inPots || line.lower(at + 1) === "a") return undefined;
  if (knownBedWithin(line, first, end) || line.names.plantAt(line.words, first) !== undefined) return undefined;
  const title = line.slice(first, end);
  const bed = line.names.takeBed(title, line.place);
  if (bed === undefined) return undefined;
  warnNearBed(line, title, bed);
  return { is: "bed", bed, role: roleOf(lower, false), end };
}

/** "in each of Long Bed": a bed that the words around it hide. */
function knownBedWithin(line: Line, from: number, end: number): boolean {
  for (let at = from; at < end; at++) if (line.names.at("bed", line.words, at)) return true;
  return false;
}

function warnNearBed(line: Line, title: string, bed: string): void {
  if (line.names.isDescribed("bed", bed)) return;
  const near = line.names.nearest("bed", title);
  if (near === undefined) return;
  line.problems.push(
    problem(
      "note/unknown-bed",
      line.place,
      `No file describes a bed "${title}", so it is taken as a new one.`,
      `Did you mean "${near}"?`,
    ),
  );
}
