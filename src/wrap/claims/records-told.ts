/** What records tell of the plants a claim is about, and what comes of holding the two against each other. */
import { cropOf } from "../../crop-of.ts";
import { sayDay } from "../../language/index.ts";
import type { Count, Day, Event, EventKind, Garden, Place } from "../../model.ts";
import type { Check } from "../fact-check.ts";
import type { Subject } from "../spoken-subjects.ts";
import type { Disagreement } from "../wrap.ts";

interface Told {
  readonly kind: Disagreement["kind"];
  readonly text: string;
  readonly sources: readonly Place[];
}

/** "not told": the records hold nothing of the kind, which is no agreement. */
export type Verdict = Told | "agrees" | "not told";

/** Share by which a spoken weight or height may differ: people round. */
const ROUNDED = 0.07;
export const near = (said: number, known: number, share = ROUNDED) =>
  Math.abs(said - known) <= Math.max(known * share, 0.01);

export function eventsOf(
  { film: { day } }: Check,
  { variety, crop }: Subject,
  kinds: readonly EventKind[],
): readonly Event[] {
  const { garden } = day;
  const own = variety === undefined ? crop : garden.varieties.get(variety)?.crop;
  return (eventsByCrop(garden).get(own) ?? []).filter(
    (event) =>
      kinds.includes(event.kind) &&
      event.day <= day.day &&
      (variety === undefined || event.variety === variety || (event.variety === undefined && own !== undefined)),
  );
}

const made = new WeakMap<Garden, ReadonlyMap<string | undefined, readonly Event[]>>();

/** A long film claims a thousand things of a garden of many thousand lines. */
function eventsByCrop(garden: Garden): ReadonlyMap<string | undefined, readonly Event[]> {
  const known = made.get(garden) ?? Map.groupBy(garden.events, (event) => cropOf(garden, event)?.id);
  made.set(garden, known);
  return known;
}

/** Days of a season that is told of as this one. */
export const THIS_SEASON = 330;

/** The numbers a count may stand for; "about ten" a fifth either way. */
export function meant(count: Count | undefined): readonly { readonly from: number; readonly to: number }[] {
  if (count === undefined) return [];
  const to = count.upTo ?? count.value;
  return [count.approx ? { from: count.value * 0.8, to: to * 1.2 } : { from: count.value, to }];
}

export function saidDay({ film: { day } }: Check, of: Day): string {
  return sayDay(of, { language: day.garden.settings.language, near: day.day });
}
