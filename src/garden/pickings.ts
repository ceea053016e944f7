/** Every picking that the notes tell, with what it is credited to. */

import { cropOf } from "../crop-of.ts";
import type { Change, Day, Event, Garden, Harvest, Place, Planting } from "../model.ts";
import { compare } from "../order.ts";

export interface Picking {
  readonly day: Day;
  readonly bed: string;
  /** Planting id; undefined when the line does not tell which of several was picked. */
  readonly planting?: string | undefined;
  readonly variety?: string | undefined;
  readonly crop?: string | undefined;
  readonly harvest: Harvest;
  readonly event?: Event | undefined;
  readonly note: Place;
  readonly private: boolean;
}

/** In order of day. */
export function pickingsIn(garden: Garden, eventOf: (id: string) => Event | undefined): readonly Picking[] {
  const found = [...garden.changes].flatMap(([bed, changes]) =>
    changes.flatMap((change) => {
      if (change.kind !== "picked" || change.harvest === undefined) return [];
      const event = change.event === undefined ? undefined : eventOf(change.event);
      return [pickingOf(garden, bed, change, event, change.effect.plantings?.[0])];
    }),
  );
  return found.sort((a, b) => compare(a.day, b.day) || compare(a.note.file, b.note.file) || a.note.line - b.note.line);
}

function pickingOf(
  garden: Garden,
  bed: string,
  change: Change,
  event: Event | undefined,
  touched: Planting | undefined,
): Picking {
  const planting = change.effect.unassigned === undefined ? (touched?.id ?? change.planting) : undefined;
  const variety = touched?.variety ?? change.effect.unassigned?.variety ?? event?.variety;
  const crop = touched?.crop ?? change.effect.unassigned?.crop ?? event?.crop;
  return {
    day: change.day,
    bed,
    planting,
    variety,
    crop: crop ?? cropOf(garden, { variety })?.id,
    harvest: change.harvest ?? {},
    event,
    note: change.note,
    private: change.private,
  };
}
