/** The written form of a note line, verb first, as one more reader: what it makes of a line, and whether it left anything over. */
import type { Event, EventKind } from "../../model.ts";
import { wordsOf } from "../line-words.ts";
import { type LineContext, type NoteLine, type ReadLine, readNoteLine } from "../note-line.ts";
import type { Fact } from "./fact.ts";
import type { FormReading } from "./features.ts";
import { type FindContext, findMentions } from "./find-mentions.ts";

export interface FormLine extends FormReading {
  readonly read: ReadLine;
}

/** Kinds whose words are kept whole, so that nothing in them is left over. */
const whole = new Set<EventKind>(["to do", "done", "promised", "asked", "plan"]);

/** Undefined when the line does not begin with a verb of the table. Names it takes are given back when `keep` is false. */
export function readForm(line: NoteLine, context: LineContext, find: FindContext): FormLine | undefined {
  const read = readNoteLine(line, context);
  if (read === undefined || read.events.length === 0) return undefined;
  const clean = read.events.every((event) => isClean(event, find)) && !read.problems.some(({ severity }) => severity !== "hint");
  return { read, facts: read.events.map((event) => factOf(event, context)), clean };
}

function isClean(event: Event, find: FindContext): boolean {
  if (whole.has(event.kind)) return true;
  for (const rest of [event.detail, event.what, event.spot]) {
    if (rest === undefined) continue;
    const words = wordsOf(rest);
    for (const mention of findMentions(words, find)) {
      if (mention.type === "cue" && mention.is !== "question" && mention.is !== "other" && mention.is !== "habit") return false;
      if (rest === event.what && event.kind === "did") continue;
      if (mention.type === "plant" || mention.type === "cause" || mention.type === "day") return false;
      if (mention.type === "verb" && !mention.weak) return false;
      if (mention.type === "amount" && mention.use !== "label" && mention.use !== "spacing" && mention.use !== "vessel") return false;
    }
  }
  return true;
}

export function factOf(event: Event, { names, note }: LineContext): Fact {
  const described = event.variety !== undefined && names.isDescribed("variety", event.variety);
  return {
    kind: event.kind,
    variety: described ? event.variety : undefined,
    title: event.variety === undefined || described ? undefined : names.title("variety", event.variety),
    crop: event.crop ?? (event.variety === undefined ? undefined : names.cropOf(event.variety)),
    count: event.count,
    unit: event.unit,
    grams: event.grams,
    litres: event.litres,
    heightCm: event.heightCm,
    spacingCm: event.spacingCm,
    celsius: event.celsius,
    ph: event.ph,
    bed: event.bed,
    toBed: event.toBed,
    nursery: event.nursery,
    day: event.day === note.day ? undefined : event.day,
    due: event.due,
    cause: event.cause,
    reason: event.reason,
    from: event.from,
    price: event.price,
    gear: event.gear,
    what: event.what,
  };
}
