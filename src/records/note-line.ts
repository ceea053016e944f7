/**
 * One log line of a note, from its text to the events it tells of.
 *
 * The verb table says how the rest is read; plant-line, said-line and other-lines say what is in it, and event-facts
 * makes facts of that, with what the note says for the whole of it.
 */
import type { Crop, Day, Event, EventKind, Place, Problem } from "../model.ts";
import { pieceOf } from "./crops.ts";
import {
  type Facts,
  gearFacts,
  inBeds,
  plantFacts,
  type ReadFacts,
  taskFacts,
  troubleFacts,
  workFacts,
} from "./event-facts.ts";
import { Line, type LineContext } from "./line.ts";
import { lineDay, nearDayWithin } from "./line-day.ts";
import { isCapital, type Word, wordsOf } from "./line-words.ts";
import { causeWords } from "./loss-causes.ts";
import type { Names } from "./names.ts";
import { readSoil } from "./other-lines.ts";
import { knownPlant } from "./plant-names.ts";
import { problem } from "./problem-rules.ts";
import { amountAt } from "./quantities.ts";
import { readSaid } from "./said-line.ts";
import { unknownVerb } from "./unknown-verb.ts";
import { type FoundVerb, gearVerbAt, verbAt } from "./verb-forms.ts";

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

/**
 * Characters beyond which a list item is story: nobody writes a log line of several pages, and the words of a line are
 * looked over again from each place where a name may begin.
 */
const longestLine = 4000;

/** Reads a list item; undefined means that it is story. */
export function readNoteLine(noteLine: NoteLine, context: LineContext): ReadLine | undefined {
  const { place } = noteLine;
  if (noteLine.text.length > longestLine) return undefined;
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
  const mark = words[end];
  const dash = mark?.text === "-" && words[end + 1]?.start !== mark.end;
  return dash || /^[:–—]$/.test(mark?.text ?? "") ? end + 1 : end;
}

/** Whether a form that is also ordinary English is followed by what makes it a log line. */
function proven(verb: FoundVerb, words: readonly Word[], { names }: LineContext): boolean {
  if (verb.proof === undefined) return true;
  const next = words[verb.end];
  if (next === undefined) return false;
  if (next.text === ":") return true;
  let at = verb.end;
  while (/^(?:the|all|my|our|some|more|another|a|an|of|first|last|few|rest|half)$/.test(words[at]?.lower ?? ""))
    at += 1;
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

/** The day said at the end of the line, else at the end of a clause that names what it tells of; else the note's. */
function dayOfLine(line: Line, from: number): Day {
  const { day: noteDay } = line.context.note;
  const atEnd = lineDay(line.words, from, line.end, noteDay);
  if (atEnd?.day !== undefined) {
    line.end = atEnd.from;
    return atEnd.day;
  }
  if (atEnd?.rule !== undefined) {
    line.problems.push(problem(atEnd.rule, line.place, atEnd.what ?? "", atEnd.fix ?? ""));
    return noteDay;
  }
  const early = dayInFirstClause(line, from);
  if (early !== undefined) return early;
  let clause = from;
  for (let at = from; at < line.end; at++) {
    if (line.words[at]?.text !== ",") continue;
    // "planted 6 Crown Prince today, 90 cm apart", but not "…, hardened off on 3 May, row 2".
    const found = lineDay(line.words, clause, at, noteDay);
    if (found?.day !== undefined && found.from > clause && namesSomething(line, clause, found.from)) {
      line.claim(found.from, at);
      return found.day;
    }
    clause = at + 1;
  }
  return noteDay;
}

/** "planted yesterday: 12 Musselburgh", "planted on 3 May: …", "picked 1 kg Sungold this morning from Tunnel North". */
function dayInFirstClause(line: Line, from: number): Day | undefined {
  const { day: noteDay } = line.context.note;
  let stop = from;
  while (stop < line.end && !/^[,;:(.]$/.test(line.words[stop]?.text ?? "")) stop += 1;
  const atHead = line.words[stop]?.text === ":" ? lineDay(line.words, from, stop, noteDay) : undefined;
  if (atHead?.day !== undefined && atHead.from === from) {
    line.claim(from, stop + 1);
    return atHead.day;
  }
  const near = nearDayWithin(line.words, from, stop, noteDay);
  if (near !== undefined) line.claim(near.from, near.end);
  return near?.day;
}

function namesSomething(line: Line, from: number, end: number): boolean {
  for (let at = from; at < end; at++) {
    if (line.names.plantAt(line.words, at) ?? line.names.at("bed", line.words, at)) return true;
  }
  return false;
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
