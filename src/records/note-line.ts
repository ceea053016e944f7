/**
 * One log line of a note, from its text to the events it tells of.
 *
 * The verb table says how the rest is read; plant-line, said-line and other-lines say what is in it, and event-facts
 * makes facts of that, with what the note says for the whole of it.
 */
import type { Event, EventKind, Place, Problem } from "../model.ts";
import { dayOfLine } from "./event-day.ts";
import {
  type Facts,
  gearFacts,
  movedGear,
  plantFacts,
  type ReadFacts,
  soilFacts,
  taskFacts,
  troubleFacts,
  workFacts,
} from "./event-facts.ts";
import { goodsFacts, putsUpStores, stateFacts, storesFacts } from "./goods-and-stores.ts";
import { Line, type LineContext } from "./line.ts";
import { type Word, wordsOf } from "./line-words.ts";
import type { Names } from "./names.ts";
import { withoutPrice } from "./prices.ts";
import { withoutReason } from "./reasons.ts";
import { readSaid } from "./said-line.ts";
import { plantedAfterBuying, unknownVerb } from "./unknown-verb.ts";
import type { FoundVerb } from "./verb-forms.ts";
import { kindOf, provenVerb } from "./verb-proof.ts";
import type { LineShape } from "./verb-table.ts";

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
  const verb = provenVerb(words, context);
  if (verb === undefined) {
    const slip = unknownVerb(words, context.names, place);
    return slip === undefined ? undefined : { events: [], problems: [slip] };
  }
  if (verb.verb.kind === "acquired" && plantedAfterBuying(words) !== undefined) {
    const slip = unknownVerb(words, context.names, place);
    return slip === undefined ? undefined : { events: [], problems: [slip] };
  }
  const from = afterVerb(words, verb.end);
  const { kind, shape } = verb.verb;
  const besides = asideOf(noteLine.text, kind, shape, words[from]?.start ?? noteLine.text.length, context.names);
  const left = besides.text === noteLine.text ? words : wordsOf(besides.text).slice(bed?.end ?? 0);
  const line = new Line(besides.text, left, place, bed === undefined ? context : { ...context, beds: [bed.id] });
  const told = undated.has(kind) ? undefined : dayOfLine(line, from);
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
      reason: besides.reason,
      price: besides.price,
      ...facts,
      more: read.listed ? [] : noteLine.more,
    };
  });
  return { events, problems: line.problems };
}

/** Kinds whose words keep the day that stands in them. */
const undated: ReadonlySet<EventKind> = new Set(["to do", "promised", "asked", "plan"]);

/** What a line says beside its facts: why, and for how much; and the line without it. Tasks and questions keep their words. */
function asideOf(
  text: string,
  kind: EventKind,
  shape: LineShape,
  from: number,
  names: Names,
): { readonly text: string; readonly reason?: string | undefined; readonly price?: string | undefined } {
  const [verb, said] = [text.slice(0, from), text.slice(from)];
  const priced = shape === "words" ? { text: said } : withoutPrice(said);
  const { text: bare, reason } = withoutReason(priced.text, kind, names);
  return { text: `${verb}${bare}`, reason, price: priced.price };
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

function factsOf(line: Line, verb: FoundVerb, from: number, more: readonly string[]): ReadFacts | undefined {
  const { kind, shape } = verb.verb;
  switch (shape) {
    case "plants": {
      const meant = kindOf(verb, line, from);
      if (meant === "did") return told("did", workFacts(line, readSaid(line, 0)));
      const gear = meant === "moved" ? movedGear(line, from) : undefined;
      return told(meant, gear ?? plantFacts(line, meant, from, verb));
    }
    case "work":
      return told(kind, workFacts(line, readSaid(line, verb.form === "did" ? from : 0)));
    case "trouble":
      return told(kind, troubleFacts(line, from, kind === "cured" ? "cured" : "trouble"));
    case "gear":
      if (kind === "put up" && putsUpStores(line, from)) return told("preserved", storesFacts(line, from));
      if (verb.particle !== undefined) line.claim(verb.particle, verb.particle + 1);
      return told(kind, gearFacts(line, from, kind === "took down" ? "took down" : "put up"));
    case "soil":
      return told(kind, soilFacts(line, from));
    case "goods":
      return told(kind, goodsFacts(line, from, verb));
    case "state":
      return told(kind, stateFacts(line, from));
    case "stores":
      return told(kind, storesFacts(line, from));
    case "words":
      return taskFacts(line, kind, from, more);
  }
}

function told(kind: EventKind, facts: readonly Facts[] | undefined): ReadFacts | undefined {
  return facts === undefined ? undefined : { kind, facts };
}
