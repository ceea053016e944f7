/**
 * Where a line says something is: a bed, gear it grows on, the nursery, a spot within the bed.
 */
import { monthNumber, weekdayNumber } from "../calendar.ts";
import type { EventKind } from "../model.ts";
import { afterArticle, articles, bedNouns, bedPrepositions, type Role, roleOf } from "./bed-words.ts";
import type { Line } from "./line.ts";
import { lineProblem } from "./line-rules.ts";
import { isCapital, isPointOfName } from "./line-words.ts";
import { amountAt } from "./quantities.ts";
import { type FoundSpot, spotAt } from "./spots.ts";

export type FoundPlace =
  | { readonly is: "bed"; readonly bed: string; readonly role: Role; readonly end: number }
  | { readonly is: "gear"; readonly gear: string; readonly end: number }
  | { readonly is: "nursery"; readonly end: number }
  | FoundSpot;

const gearPrepositions = new Set("in on onto up over under against along through beneath from underneath".split(" "));
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

/** Kinds that tell of what left a bed. */
const leavesBed = new Set<EventKind>(["picked", "cleared", "moved", "lost", "gave away", "sold", "took down"]);

/** The place that begins at word `at`, if one does. Beds nobody described are taken as named. */
export function placeAt(line: Line, at: number, kind: EventKind): FoundPlace | undefined {
  const lower = line.lower(at);
  if (line.words[at]?.kind === "mark") return undefined;
  if (nurseryKinds.has(kind) && (lower === "indoors" || lower === "inside") && bareBedAt(line, at + 1) === undefined) {
    return { is: "nursery", end: at + 1 };
  }
  return (
    known(line, at, lower, kind) ??
    nursery(line, at, lower, kind) ??
    spotAt(line, at, lower) ??
    unknownBed(line, at, lower, kind)
  );
}

/** A known bed with no preposition, as in "cleared Long Bed". */
export function bareBedAt(line: Line, at: number): FoundPlace | undefined {
  const bed = bedNamedAt(line, at, articles.has(line.lower(at)) ? at + 1 : at);
  return bed === undefined || bed.end > line.end ? undefined : { is: "bed", bed: bed.id, role: "in", end: bed.end };
}

/** A bed's name at `noun`, or with the article before it when the bed is also called "the tank". */
function bedNamedAt(line: Line, article: number, noun: number) {
  return (
    line.names.at("bed", line.words, noun) ?? (noun > article ? line.names.at("bed", line.words, article) : undefined)
  );
}

function known(line: Line, at: number, lower: string, kind: EventKind): FoundPlace | undefined {
  const outOf = lower === "out" && line.lower(at + 1) === "of";
  const isBed = bedPrepositions.has(lower) || outOf;
  if (!isBed && !gearPrepositions.has(lower)) return undefined;
  const noun = afterArticle(line, outOf ? at + 2 : at + 1);
  if (isBed && !(lower === "to" && (kind === "lost" || kind === "gave away" || kind === "sold"))) {
    const bed = bedNamedAt(line, outOf ? at + 2 : at + 1, noun);
    // Plants come "from the cold frame" out of the nursery: where they went is another bed.
    if (bed !== undefined && !(roleOf(lower, outOf) === "from" && raised.has(kind))) {
      if (!line.names.isDescribed("bed", bed.id)) warnNearBed(line, line.names.title("bed", bed.id), bed.id);
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
    (word.kind === "mark" &&
      word.text !== "-" &&
      word.text !== "'" &&
      word.text !== "’" &&
      !isPointOfName(line.words, at))
  );
}

/** "in Sunny Corner", "in the raised bed": a bed that no file describes. Seed and plants come "from" elsewhere than beds. */
function unknownBed(line: Line, at: number, lower: string, kind: EventKind): FoundPlace | undefined {
  const leads =
    /^(?:in|into)$/.test(lower) || (lower === "from" && leavesBed.has(kind)) || (lower === "to" && kind === "moved");
  if (!leads) return undefined;
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
  // "in the Musselburgh" is among plants, "in the Onion Bed" in a bed.
  const plant = line.names.plantAt(line.words, first);
  if (knownBedWithin(line, first, end) || (plant !== undefined && plant.end >= end)) return undefined;
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
  const near = line.names.slipFor("bed", title);
  if (near === undefined) return;
  line.problems.push(
    lineProblem(
      "note/unknown-bed",
      line.place,
      `No file describes a bed "${title}", so it is taken as a new one.`,
      `Did you mean "${near}"?`,
    ),
  );
}
