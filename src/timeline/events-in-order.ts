/** In which order events are gone through: by day, within a day by what kind they are, then as they stand in the notes. */

import type { Event, EventKind, Records } from "../model.ts";
import { compare } from "../order.ts";
import { plantIds } from "./ledger.ts";

/** Kinds that put plants where they were not. */
const begins: ReadonlySet<EventKind> = new Set(["sowed", "planted", "volunteer", "moved"]);

/** Kinds that take plants away: of plants that began that same day, in the order of the lines. */
const takes: ReadonlySet<EventKind> = new Set(["lost", "gave away", "sold", "moved"]);

/** `kinds` in the order in which events of one day are gone through. */
export function ordering(kinds: readonly EventKind[]): (records: Records) => readonly Event[] {
  const rank = new Map<EventKind, number>(kinds.map((kind, index) => [kind, index]));
  const after = (kind: EventKind) => (rank.get(kind) ?? 0) + 0.5;
  return (records) => {
    const { events } = records;
    const troubles = new Set(events.filter(({ kind }) => kind === "trouble").map(dayAndCause));
    const begun = beginningsOf(records);
    const rankOf = (event: Event) => {
      // "trouble: hornworm" and "cured: hornworm" of one day are in the order of life; else a cure ends what was there before.
      if (event.kind === "cured" && troubles.has(dayAndCause(event))) return after("trouble");
      // "planted 12 leeks in Long Bed", then "lost 2 leeks in Long Bed": of these twelve.
      if (takes.has(event.kind) && begun(event)) return after("planted");
      return rank.get(event.kind) ?? 0;
    };
    const ranks = new Map(events.map((event) => [event, rankOf(event)]));
    return events.toSorted(
      (a, b) =>
        compare(a.day, b.day) ||
        (ranks.get(a) ?? 0) - (ranks.get(b) ?? 0) ||
        compare(a.place.file, b.place.file) ||
        a.place.line - b.place.line ||
        a.place.column - b.place.column ||
        a.id.length - b.id.length ||
        compare(a.id, b.id),
    );
  };
}

/** Says of an event whether a line above it in its note began plants of its name that day, in its bed if it names one. */
function beginningsOf(records: Records): (event: Event) => boolean {
  const byPlant = Map.groupBy(
    records.events
      .filter(({ kind }) => begins.has(kind))
      .flatMap((event) => keysOf(records, event).map((key) => ({ key, event }))),
    ({ key }) => key,
  );
  return (event) => {
    const ids = plantIds(records, event);
    const key = ids.variety === undefined ? ids.crop : ids.variety;
    if (key === undefined) return false;
    return (byPlant.get(`${event.place.file} ${event.day} ${key}`) ?? []).some(({ event: beginning }) => {
      const bed = beginning.kind === "moved" ? beginning.toBed : beginning.bed;
      return beginning.place.line < event.place.line && (event.bed === undefined || bed === event.bed);
    });
  };
}

/** A planting answers to its variety and to its crop. */
function keysOf(records: Records, event: Event): readonly string[] {
  const { variety, crop } = plantIds(records, event);
  return [variety, crop].flatMap((name) => (name === undefined ? [] : [`${event.place.file} ${event.day} ${name}`]));
}

function dayAndCause({ day, cause }: Event): string {
  return `${day} ${cause?.toLowerCase()}`;
}
