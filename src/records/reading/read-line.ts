/**
 * One line of a note, read by three readers that must agree: the written form, verb first; mentions and frames in any order;
 * and a learned opinion. A fact when the written form leaves nothing over, or when the likeliest way is likely enough; else a
 * question with the likeliest ways; story where nothing of a garden is told.
 */
import type { Event, LineReading, OfferedReading, Problem } from "../../model.ts";
import { wordsOf } from "../line-words.ts";
import { takeBedWithin } from "../new-beds.ts";
import { type LineContext, type NoteLine, readNoteLine } from "../note-line.ts";
import { candidatesOf, signature } from "./candidates.ts";
import choice from "./choice.weights.json" with { type: "json" };
import { type ChoiceWeights, decide, type Thresholds } from "./decide.ts";
import type { Fact } from "./fact.ts";
import { type FindContext, seenIn, verbMentions } from "./find-mentions.ts";
import { type FormLine, readForm } from "./form.ts";
import { isGardenThing, isOfGarden } from "./mention.ts";
import { offerOf } from "./offered.ts";
import { saysMoreThanItTells } from "./open-lines.ts";
import type { OpinionWeights } from "./opinion.ts";
import packed from "./opinion.weights.json" with { type: "json" };
import { unpackedOpinion } from "./packed-opinion.ts";
import { promisedTo } from "./promised-to.ts";

export interface ReadingContext extends LineContext {
  /** "7/20" is the 20th of July. */
  readonly monthFirst: boolean;
}

/** How the line stands in its note. */
export interface Standing {
  /** A sentence of a paragraph: what people tell at length is seldom a record, so it has a higher bar. */
  readonly prose: boolean;
  readonly lastLine: number;
  /** What a heading above says was done, for lines that say nothing of it themselves. */
  readonly head?: string | undefined;
}

export interface LineRead {
  readonly reading: LineReading;
  readonly problems: readonly Problem[];
}

/** What was learned, and where the lines are drawn. */
export interface ReaderModels {
  readonly opinion: OpinionWeights;
  readonly choice: ChoiceWeights;
  readonly limits: Thresholds;
}

export const thresholds: Thresholds = { facts: 0.68, prose: 0.96, story: 0.55, proseStory: 0.3, nothing: 0.4 };

/** Lines longer than this are story: nobody writes a log line of several pages. */
const longestLine = 4000;

let unpacked: ReaderModels | undefined;

/** Unpacked when a line is first weighed. */
function learned(): ReaderModels {
  unpacked ??= { opinion: unpackedOpinion(packed), choice, limits: thresholds };
  return unpacked;
}

/** `given` are others than the learned ones only where these are judged. */
export function readLine(own: NoteLine, context: ReadingContext, standing: Standing, given?: ReaderModels): LineRead {
  const { names, note } = context;
  const { head } = standing;
  const line = head === undefined || saysWhatWasDone(own.text) ? own : { ...own, text: `${head}: ${own.text}` };
  const made = (
    as: LineReading["as"],
    events: readonly Event[],
    readings: readonly OfferedReading[],
    problems: readonly Problem[] = [],
  ): LineRead => ({
    reading: {
      place: own.place,
      lastLine: standing.lastLine,
      text: own.text,
      as,
      events: events.map(told),
      readings,
      private: note.private,
    },
    problems,
  });
  // A line read with the words of a heading is told by its own.
  const told = (event: Event): Event => (line === own ? event : { ...event, text: own.text });
  if (line.text.length > longestLine) return made("story", [], []);
  const find: FindContext & { beds: readonly string[]; southern: boolean } = {
    names,
    noteDay: note.day,
    system: context.units ?? "metric",
    monthFirst: context.monthFirst,
    beds: context.beds,
    southern: context.southern === true,
  };
  const promised = standing.prose ? undefined : promisedTo(line.text);
  if (promised !== undefined) {
    const ways = [`promised: ${promised.what}`, `to do: ${promised.what}`].slice(0, promised.isToViewers ? 1 : 2);
    const offers = ways.flatMap((text) => {
      const events = readNoteLine({ ...line, text }, context)?.events ?? [];
      return events.length === 0 ? [] : (offerOf(events, line, context) ?? []);
    });
    const [only] = offers;
    if (promised.isToViewers && only !== undefined) return made("facts", only.events, []);
    if (offers.length > 0) return made("question", [], offers);
  }
  const mark = names.mark();
  const form = standing.prose ? undefined : readForm(line, context, find);
  if (form?.clean === true) return made("facts", form.read.events, [], form.read.problems);
  names.backTo(mark);
  const dated = standing.prose || form !== undefined ? undefined : behindDay(line, context, find);
  if (dated !== undefined) return made("facts", dated.read.events, [], dated.read.problems);
  names.backTo(mark);
  const asStory = !standing.prose && saysMoreThanItTells(line.text) ? "question" : "story";
  const { mentions } = seenIn(line.text, find);
  const isBox = !standing.prose && box.test(line.text);
  if (!isBox && !mentions.some(standing.prose ? isGardenThing : isOfGarden)) return made(asStory, [], []);
  const isTask = isBox && mentions.some(isOfGarden);
  const models = given ?? learned();
  const weighed = candidatesOf(line.text, find, models.opinion);
  const decision = decide(weighed, form, models.choice, models.limits, { prose: standing.prose, isTask });
  if (decision.as === "story") return made(asStory, [], []);
  if (decision.as === "facts") {
    if (form !== undefined && signature(form.facts) === signature(decision.facts)) {
      // The same facts in the written form carry more of the line's own words.
      const again = readForm(line, context, find);
      if (again !== undefined) return made("facts", again.read.events, [], again.read.problems);
    }
    const events = eventsOf(decision.facts, line, context);
    if (events.every(({ bed }) => bed === undefined)) takeBedWithin(wordsOf(line.text), line.text, names, line.place);
    return made("facts", events, [], ofDates(form));
  }
  const readings: OfferedReading[] = [];
  for (const facts of decision.offered) {
    const before = names.mark();
    const offer = offerOf(eventsOf(facts, line, context), line, context);
    // Two ways that are told by the same words are one choice.
    if (offer !== undefined && !readings.some((one) => one.line === offer.line)) readings.push(offer);
    names.backTo(before);
  }
  return made("question", [], readings, ofDates(form));
}

/** "10.6. sowed leeks": the written form behind a day that has been, which is then the day of what it says. */
function behindDay(line: NoteLine, context: ReadingContext, find: FindContext): FormLine | undefined {
  const { words, mentions } = seenIn(line.text, find);
  const day = mentions.find((one) => one.type === "day" && one.from === 0);
  if (day?.type !== "day" || day.day > context.note.day) return undefined;
  const at = /^[:,–—-]$/.test(words[day.end]?.text ?? "") ? day.end + 1 : day.end;
  const text = line.text.slice(words[at]?.start ?? line.text.length);
  const then = { ...context, note: { ...context.note, day: day.day } };
  const form = readForm({ ...line, text }, then, { ...find, noteDay: day.day });
  if (form?.clean !== true) return undefined;
  const events = form.read.events.map((event) => ({ ...event, text: line.text }));
  return { ...form, read: { ...form.read, events } };
}

/** A day that does not exist, or is not clear, is told of whatever becomes of its line. */
function ofDates(form: FormLine | undefined): readonly Problem[] {
  return form?.read.problems.filter(({ rule }) => rule === "note/unclear-day") ?? [];
}

/** A checkbox says that something is to do, or done, whatever it is. */
const box = /^\s*(?:[-*]\s*)?\[[ xX✓]?\]/;

function saysWhatWasDone(text: string): boolean {
  return verbMentions(wordsOf(text)).some(({ weak }) => !weak);
}

/** Events of the facts of a line; names that no file describes are taken. */
function eventsOf(facts: readonly Fact[], line: NoteLine, { names, note }: LineContext): Event[] {
  return facts.map((fact, index) => {
    const { variety, title, crop, said: _, day, ...rest } = fact;
    const id = variety ?? (title === undefined ? undefined : names.takeVariety(title, crop, line.place));
    return {
      ...withoutUndefined(rest),
      kind: fact.kind,
      id: index === 0 ? `${line.place.file}:${line.place.line}` : `${line.place.file}:${line.place.line}/${index + 1}`,
      day: day ?? note.day,
      verb: fact.kind,
      text: line.text,
      place: line.place,
      private: note.private,
      variety: id,
      crop: id === undefined ? crop : undefined,
      more: line.more,
    };
  });
}

function withoutUndefined<Part extends object>(part: Part): Part {
  return Object.fromEntries(Object.entries(part).filter(([, value]) => value !== undefined)) as Part;
}
