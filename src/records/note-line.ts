/**
 * One log line of a note, from its text to the events it tells of.
 *
 * The verb table says how the rest is read; the readers in plant-line, said-line and other-lines say what is in it; here
 * their answers become events, one for each variety, and the note fills in what the line leaves out.
 */
import type { Day, Event, EventKind, Place, Problem } from "../model.ts";
import { pieceOf } from "./crops.ts";
import { Line, type LineContext } from "./line.ts";
import { lineDay } from "./line-day.ts";
import { isCapital, type Word, wordsOf } from "./line-words.ts";
import { readGear, readSoil, readTrouble } from "./other-lines.ts";
import { causeWords, countsPieces, type PlantItem, type PlantLine, readPlants } from "./plant-line.ts";
import { problem } from "./problem-rules.ts";
import { amountAt } from "./quantities.ts";
import { readSaid, readTask, type SaidLine } from "./said-line.ts";
import { unknownVerb } from "./unknown-verb.ts";
import { type FoundVerb, verbAt } from "./verb-table.ts";

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
  const words = wordsOf(noteLine.text);
  const verb = verbAt(words);
  if (verb === undefined || !proven(verb, words, context)) {
    const slip = verb === undefined ? unknownVerb(words, context.names, place) : undefined;
    return slip === undefined ? undefined : { events: [], problems: [slip] };
  }
  const line = new Line(noteLine.text, words, place, context);
  const from = afterVerb(words, verb.end);
  const day = verb.verb.shape === "words" && verb.verb.kind !== "done" ? context.note.day : dayOfLine(line, from);
  const facts = factsOf(line, verb, from, noteLine.more);
  if (facts === undefined) return line.problems.length === 0 ? undefined : { events: [], problems: line.problems };
  return {
    events: facts.map((fact, index) => eventOf(noteLine, context, verb, day, fact, index)),
    problems: line.problems,
  };
}

function afterVerb(words: readonly Word[], end: number): number {
  const mark = words[end];
  return mark?.text === ":" || mark?.text === "–" || mark?.text === "—" ? end + 1 : end;
}

function eventOf(
  noteLine: NoteLine,
  context: LineContext,
  verb: FoundVerb,
  day: Day,
  facts: Facts,
  index: number,
): Event {
  const { place } = noteLine;
  const id = `${place.file}:${place.line}`;
  return {
    id: index === 0 ? id : `${id}/${index + 1}`,
    kind: verb.verb.kind,
    day,
    verb: verb.form,
    text: noteLine.text,
    place,
    private: context.note.private,
    ...facts,
    more: facts.what !== undefined && noteLine.more.includes(facts.what) ? [] : noteLine.more,
  };
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

function factsOf(line: Line, verb: FoundVerb, from: number, more: readonly string[]): Facts[] | undefined {
  const { kind, shape } = verb.verb;
  switch (shape) {
    case "plants":
      return plantFacts(line, kind, from, line.words[from - 1]?.text === ":");
    case "work":
      return workFacts(line, readSaid(line, verb.form === "did" ? from : 0));
    case "trouble":
      return troubleFacts(line, from, kind === "cured" ? "cured" : "trouble");
    case "gear":
      return gearFacts(line, from, kind === "took down" ? "took down" : "put up");
    case "soil": {
      const { bed, ...soil } = readSoil(line, from);
      return inBeds(bed === undefined ? line.context.beds : [bed]).map((where) => ({
        ...soil,
        ...where,
        detail: line.rest(from),
      }));
    }
    case "words":
      return taskFacts(line, kind, from, more);
  }
}

function inBeds(beds: readonly string[]): readonly { readonly bed?: string | undefined }[] {
  return beds.length === 0 ? [{}] : beds.map((bed) => ({ bed }));
}

// --------------------------------------------------------------------------------------------------------------- plants

/** Kinds that a bed without a plant makes sense with: all of its plantings are meant. */
const wholeBed = new Set<EventKind>(["cleared", "lost", "measured", "moved"]);
/** Kinds whose plants may stand in the nursery, so that the note's bed is not theirs unless the line says so. */
const bedOnlyWhenSaid = new Set<EventKind>(["potted on", "gave away"]);

function plantFacts(line: Line, kind: EventKind, from: number, colon: boolean): Facts[] | undefined {
  const read = readPlants(line, from, kind);
  const saysBed = read.places.some((place) => place.bed !== undefined);
  const detail = line.rest(from);
  const whole: Facts = {
    spacingCm: read.spacingCm,
    plantsFrom: read.plantsFrom,
    cause: read.cause,
    celsius: read.celsius,
    detail,
  };
  if (read.items.length === 0) {
    const amount = read.loose ?? read.leftOver;
    if (!saysBed && amount === undefined && read.celsius === undefined && read.heightCm === undefined) {
      if (!colon) return undefined;
      line.problems.push(noPlant(line, kind));
      return undefined;
    }
    if (!(wholeBed.has(kind) && (saysBed || line.context.beds.length > 0))) line.problems.push(noPlant(line, kind));
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
    spot: place.spot,
    gear: place.gear,
    bed: place.bed,
    toBed: place.toBed,
  };
  if (place.bed === undefined && place.toBed !== undefined && kind !== "moved") return [{ ...facts, bed: place.toBed }];
  if (place.bed !== undefined || bedOnlyWhenSaid.has(kind)) {
    return [{ ...facts, nursery: kind === "sowed" && read.nursery ? true : undefined }];
  }
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

function noPlant(line: Line, kind: EventKind): Problem {
  return problem(
    "note/no-plant",
    line.place,
    `This line does not say which plant was meant by "${kind}".`,
    "Name a variety or crop, in capitals or in quotation marks if no file describes it yet.",
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

function taskFacts(line: Line, kind: EventKind, from: number, more: readonly string[]): Facts[] | undefined {
  const said = readTask(line, from, kind);
  if (said.what === "") {
    // "to do:" over a nested list of things.
    return more.length === 0 ? undefined : more.map((what) => ({ what, bed: onlyBed(line), due: said.due }));
  }
  const [plant] = said.plants;
  return [{ what: said.what, due: said.due, ...plant, bed: said.beds[0] ?? onlyBed(line) }];
}

function onlyBed(line: Line): string | undefined {
  return line.context.beds.length === 1 ? line.context.beds[0] : undefined;
}

function troubleFacts(line: Line, from: number, kind: "trouble" | "cured"): Facts[] | undefined {
  const read = readTrouble(line, from, kind);
  if (read === undefined) return undefined;
  const { items, places } = read.plants;
  const facts = { cause: read.cause, detail: read.cause === line.rest(from) ? undefined : line.rest(from) };
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
