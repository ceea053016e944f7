/**
 * One log line of a note, from its text to the events it tells of.
 *
 * The verb table says how the rest is read; the readers in plant-line, said-line and other-lines say what is in it; here
 * their answers become events, one for each variety, and the note fills in what the line leaves out.
 */
import type { Crop, Day, Event, EventKind, Place, Problem } from "../model.ts";
import { pieceOf } from "./crops.ts";
import { Line, type LineContext } from "./line.ts";
import { lineDay } from "./line-day.ts";
import { isCapital, type Word, wordsOf } from "./line-words.ts";
import type { Names } from "./names.ts";
import { readGear, readSoil, readTrouble } from "./other-lines.ts";
import { causeWords, countsPieces, type PlantItem, type PlantLine, readPlants } from "./plant-line.ts";
import { knownPlant } from "./plant-names.ts";
import { problem } from "./problem-rules.ts";
import { amountAt } from "./quantities.ts";
import { readSaid, readTask, type SaidLine } from "./said-line.ts";
import { unknownVerb } from "./unknown-verb.ts";
import { type FoundVerb, gearVerbAt, verbAt } from "./verb-table.ts";

export type { LineContext } from "./line.ts";

/** A list item as plain text, with its nested items. */
export interface NoteLine {
  readonly text: string;
  readonly more: readonly string[];
  /** Where the text begins. */
  readonly place: Place;
}

/** `events` is empty when the line was kept as story and only a problem is to be told. */
export interface ReadLine {
  readonly events: readonly Event[];
  readonly problems: readonly Problem[];
}

/** What a line says of one event; the line itself says the rest. */
type Facts = Partial<Omit<Event, "id" | "kind" | "verb" | "text" | "place" | "private" | "more">>;

/** Reads a list item; undefined means that it is story. */
export function readNoteLine(noteLine: NoteLine, context: LineContext): ReadLine | undefined {
  const { place } = noteLine;
  const all = wordsOf(noteLine.text);
  const bed = bedBefore(all, context.names);
  const words = bed === undefined ? all : all.slice(bed.end);
  const verb = verbAt(words) ?? gearVerbAt(words, context.names);
  if (verb === undefined || !proven(verb, words, context)) {
    const slip = unknownVerb(words, context.names, place);
    return slip === undefined ? undefined : { events: [], problems: [slip] };
  }
  const line = new Line(noteLine.text, words, place, bed === undefined ? context : { ...context, beds: [bed.id] });
  const from = afterVerb(words, verb.end);
  const { kind } = verb.verb;
  const told = kind === "to do" || kind === "promised" || kind === "asked" ? undefined : dayOfLine(line, from);
  const read = factsOf(line, verb, from, noteLine.more);
  if (read === undefined) return line.problems.length === 0 ? undefined : { events: [], problems: line.problems };
  const events = read.facts.map((facts, index) => {
    const id = index === 0 ? `${place.file}:${place.line}` : `${place.file}:${place.line}/${index + 1}`;
    return {
      id,
      kind: read.kind,
      day: told ?? context.note.day,
      verb: verb.form,
      text: noteLine.text,
      place,
      private: context.note.private,
      ...facts,
      more: read.listed ? [] : noteLine.more,
    };
  });
  return { events, problems: line.problems };
}

/** "Long Bed: sowed …" speaks of that bed. */
function bedBefore(words: readonly Word[], names: Names): { readonly id: string; readonly end: number } | undefined {
  const bed = names.at("bed", words, words[0]?.lower === "the" ? 1 : 0);
  return bed !== undefined && /^[:–—]$/.test(words[bed.end]?.text ?? "") ? { id: bed.id, end: bed.end + 1 } : undefined;
}

function afterVerb(words: readonly Word[], end: number): number {
  return /^[:–—]$/.test(words[end]?.text ?? "") ? end + 1 : end;
}

// ---------------------------------------------------------------------------------------------------------------- verbs

/** Whether a form that is also ordinary English is followed by what makes it a log line. */
function proven(verb: FoundVerb, words: readonly Word[], { names }: LineContext): boolean {
  if (verb.proof === undefined) return true;
  const next = words[verb.end];
  if (next === undefined) return false;
  if (next.text === ":") return true;
  const at = /^(?:the|all|my|our|some|more|another)$/.test(next.lower) ? verb.end + 1 : verb.end;
  switch (verb.proof) {
    case "colon":
      return false;
    case "question":
      return words.at(-1)?.text === "?" || /^(?:which|what|where|when|why|how|who|whether|if|about)$/.test(next.lower);
    case "number":
      return next.kind === "number" || next.lower === "ph" || names.at("bed", words, at) !== undefined;
    case "trouble":
      return words.slice(verb.end, verb.end + 4).some((word) => causeWords.has(word.lower));
    case "plant":
    case "name": {
      if (amountAt(words, verb.end, "metric") !== undefined) return true;
      if (names.plantAt(words, at) ?? names.at("bed", words, at)) return true;
      if (words.slice(at, at + 3).some((word, index) => word.kind === "word" && names.plantAt(words, at + index)))
        return true;
      const named = words[at];
      return verb.proof === "name" && named !== undefined && isCapital(named) && named.text !== "I";
    }
  }
}

function dayOfLine(line: Line, from: number): Day {
  const { day: noteDay } = line.context.note;
  const found = lineDay(line.words, from, noteDay);
  if (found === undefined) return noteDay;
  if (found.day !== undefined) {
    line.end = found.from;
    return found.day;
  }
  if (found.rule !== undefined) line.problems.push(problem(found.rule, line.place, found.what ?? "", found.fix ?? ""));
  return noteDay;
}

interface ReadFacts {
  readonly kind: EventKind;
  readonly facts: readonly Facts[];
  /** Whether the nested items became events themselves. */
  readonly listed?: boolean | undefined;
}

function factsOf(line: Line, verb: FoundVerb, from: number, more: readonly string[]): ReadFacts | undefined {
  const { kind, shape } = verb.verb;
  switch (shape) {
    case "plants": {
      const meant = kindOf(verb, line, from);
      return told(meant, plantFacts(line, meant, from, verb));
    }
    case "work":
      return told(kind, workFacts(line, readSaid(line, verb.form === "did" ? from : 0)));
    case "trouble":
      return told(kind, troubleFacts(line, from, kind === "cured" ? "cured" : "trouble"));
    case "gear":
      if (verb.particle !== undefined) line.claim(verb.particle, verb.particle + 1);
      return told(kind, gearFacts(line, from, kind === "took down" ? "took down" : "put up"));
    case "soil": {
      const { bed, ...soil } = readSoil(line, from);
      const detail = line.rest(from);
      return told(
        kind,
        inBeds(bed === undefined ? line.context.beds : [bed]).map((where) => ({ ...soil, ...where, detail })),
      );
    }
    case "words":
      return taskFacts(line, kind, from, more);
  }
}

function told(kind: EventKind, facts: readonly Facts[] | undefined): ReadFacts | undefined {
  return facts === undefined ? undefined : { kind, facts };
}

function inBeds(beds: readonly string[]): readonly { readonly bed?: string | undefined }[] {
  return beds.length === 0 ? [{}] : beds.map((bed) => ({ bed }));
}

/**
 * "pulled" clears a planting, but what comes by weight, by the bunch, or is a root was picked; "lifted" and "dug" pick,
 * but flowers are lifted to be stored, which ends their time in the bed.
 */
function kindOf(verb: FoundVerb, line: Line, from: number): EventKind {
  const { kind } = verb.verb;
  if (verb.form === "pulled") {
    const amount = amountAt(line.words, from, line.system);
    if (amount === undefined) return kind;
    const weighed = amount.grams !== undefined || amount.litres !== undefined || amount.unit !== undefined;
    const piece = pieceOf(cropIn(line, amount.end));
    return weighed || piece === "root" || piece === "bulb" ? "picked" : kind;
  }
  if (verb.form === "lifted" || verb.form === "dug" || verb.form === "dug up") {
    return cropIn(line, from)?.use === "flower" ? "cleared" : kind;
  }
  return kind;
}

function cropIn(line: Line, from: number): Crop | undefined {
  const plant = knownPlant(line, from, Math.min(line.end, from + 6));
  return line.names.crop(plant?.variety === undefined ? plant?.crop : line.names.cropOf(plant.variety));
}

// --------------------------------------------------------------------------------------------------------------- plants

/** Kinds that a bed without a plant makes sense with: all of its plantings are meant. */
const wholeBed = new Set<EventKind>(["cleared", "lost", "measured", "moved"]);
/** Kinds whose plants may stand in the nursery, so that the note's bed is not theirs unless the line says so. */
const bedOnlyWhenSaid = new Set<EventKind>(["potted on", "gave away"]);

function plantFacts(line: Line, kind: EventKind, from: number, verb: FoundVerb): Facts[] | undefined {
  const read = readPlants(line, from, kind);
  const saysBed = read.places.some((place) => place.bed !== undefined);
  const detail = line.rest(from);
  const whole: Facts = {
    plantsFrom: read.plantsFrom,
    cause: read.cause,
    celsius: read.celsius,
    detail,
  };
  if (read.items.length === 0) {
    const amount = read.loose ?? read.leftOver;
    if (!saysBed && amount === undefined && read.celsius === undefined && read.heightCm === undefined) {
      const meant = verb.proof === undefined || line.words[from - 1]?.text === ":";
      if (meant && from < line.end) line.problems.push(noPlant(line, verb, "it was kept as story"));
      return undefined;
    }
    if (read.celsius === undefined && !(wholeBed.has(kind) && saysBed))
      line.problems.push(noPlant(line, verb, "it counts for no planting"));
    return inPlace(line, kind, read, { place: 0, amount, crop: undefined }).map((facts) => ({ ...whole, ...facts }));
  }
  return read.items.flatMap((item) => inPlace(line, kind, read, item).map((facts) => ({ ...whole, ...facts })));
}

/** The facts of one item, with its bed: the line's own, else the note's. */
function inPlace(line: Line, kind: EventKind, read: PlantLine, item: PlantItem): Facts[] {
  const place = read.places[item.place] ?? {};
  const facts: Facts = {
    variety: item.variety,
    crop: item.crop,
    ...amountFacts(line, kind, read, item),
    spacingCm: item.spacingCm ?? read.spacingCm,
    spot: place.spot,
    gear: place.gear,
    bed: place.bed,
    toBed: place.toBed,
  };
  if (place.bed === undefined && place.toBed !== undefined && kind !== "moved") return [{ ...facts, bed: place.toBed }];
  if (place.bed !== undefined) {
    const nursery = kind === "sowed" && read.nursery ? true : undefined;
    const beds = [place.bed, ...(place.alsoBeds ?? [])];
    return beds.length === 1 ? [{ ...facts, nursery }] : sharedOut(line, facts, beds);
  }
  if (bedOnlyWhenSaid.has(kind)) return [facts];
  const [only, second] = line.context.beds;
  if (kind === "sowed" && (read.nursery || only === undefined)) {
    if (!read.nursery && item === read.items[0]) line.problems.push(sownWhere(line));
    return [{ ...facts, nursery: true }];
  }
  if (only !== undefined && second === undefined) return [{ ...facts, bed: only }];
  if ((kind === "sowed" || kind === "planted") && item === (read.items[0] ?? item))
    line.problems.push(whichBed(line, kind));
  return [facts];
}

/** "planted 12 Musselburgh in Long Bed and Cold Frame": how many went into each is not said, so no bed is given a number. */
function sharedOut(line: Line, facts: Facts, beds: readonly string[]): Facts[] {
  const { count, unit, grams, litres, ...rest } = facts;
  if (count !== undefined || grams !== undefined || litres !== undefined) {
    line.problems.push(
      problem(
        "note/which-bed",
        line.place,
        `This line gives one amount for ${beds.length} beds, so it was counted for none of them.`,
        "Write a line for each bed, with its own amount.",
      ),
    );
  }
  return beds.map((bed) => ({ ...rest, bed }));
}

function amountFacts(line: Line, kind: EventKind, read: PlantLine, item: PlantItem): Facts {
  const amount = kind === "thinned" ? (read.leftOver ?? item.amount) : item.amount;
  const crop = item.crop ?? (item.variety === undefined ? undefined : line.names.cropOf(item.variety));
  const pieces = countsPieces(kind) ? amount?.unit : undefined;
  return {
    count: amount?.count,
    unit: pieces ?? (kind === "picked" && amount?.count !== undefined ? pieceOf(line.names.crop(crop)) : undefined),
    grams: amount?.grams,
    litres: amount?.litres,
    heightCm: amount?.cm ?? (read.items.length === 0 ? read.heightCm : undefined),
  };
}

function noPlant(line: Line, verb: FoundVerb, so: string): Problem {
  return problem(
    "note/no-plant",
    line.place,
    `After "${verb.form}" this line names no plant, so ${so}.`,
    "Name the variety or crop; begin the name with a capital letter if no file describes it yet.",
  );
}

function sownWhere(line: Line): Problem {
  return problem(
    "note/sown-where",
    line.place,
    "This sowing names no bed, so it is taken as indoors.",
    'Add "indoors", or the bed it was sown in.',
  );
}

function whichBed(line: Line, kind: EventKind): Problem {
  const several = line.context.beds.length > 1;
  return problem(
    "note/which-bed",
    line.place,
    several
      ? `This line does not say in which of the note's ${line.context.beds.length} beds it was ${kind === "sowed" ? "sown" : "planted"}.`
      : "This line does not say in which bed it was planted.",
    several ? 'Add "in" and the bed.' : 'Add "in" and the bed, or a "bed" in the note\'s front matter.',
  );
}

// --------------------------------------------------------------------------------------------------------- what was said

function workFacts(line: Line, said: SaidLine): Facts[] | undefined {
  if (said.what === "") return undefined;
  const beds = said.beds.length > 0 ? said.beds : line.context.beds;
  const facts = { what: said.what, gear: said.gear };
  if (said.plants.length === 0) return inBeds(beds).map((where) => ({ ...facts, ...where }));
  // Plants without a bed of their own are looked for in all beds, so several beds of the note are none.
  const theirs = said.beds.length > 0 || beds.length === 1 ? beds : [];
  return said.plants.flatMap((plant) => inBeds(theirs).map((where) => ({ ...facts, ...plant, ...where })));
}

function taskFacts(line: Line, kind: EventKind, from: number, more: readonly string[]): ReadFacts | undefined {
  const said = readTask(line, from, kind);
  if (said.what !== "") {
    const [plant] = said.plants;
    return { kind, facts: [{ what: said.what, due: said.due, ...plant, bed: said.beds[0] ?? onlyBed(line) }] };
  }
  if (more.length === 0) return undefined;
  // "to do:" over a nested list of things.
  return { kind, facts: more.map((what) => ({ what, bed: onlyBed(line), due: said.due })), listed: true };
}

function onlyBed(line: Line): string | undefined {
  return line.context.beds.length === 1 ? line.context.beds[0] : undefined;
}

function troubleFacts(line: Line, from: number, kind: "trouble" | "cured"): Facts[] | undefined {
  const read = readTrouble(line, from, kind);
  if (read === undefined) return undefined;
  const { items, places } = read.plants;
  const facts = { cause: read.cause, detail: line.rest(from) };
  const bed = places[0]?.bed;
  if (items.length === 0) {
    return inBeds(bed === undefined ? line.context.beds : [bed]).map((where) => ({
      ...facts,
      spot: places[0]?.spot,
      ...where,
    }));
  }
  return items.map((item) => ({
    ...facts,
    variety: item.variety,
    crop: item.crop,
    spot: places[item.place]?.spot,
    bed: places[item.place]?.bed ?? onlyBed(line),
  }));
}

function gearFacts(line: Line, from: number, kind: "put up" | "took down"): Facts[] | undefined {
  const read = readGear(line, from, kind);
  if (read === undefined) return undefined;
  return [
    { gear: read.gear, what: read.what, spot: read.spot, bed: read.bed ?? onlyBed(line), detail: line.rest(from) },
  ];
}
