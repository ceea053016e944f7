/** What stands in a bed beside plants, what it is built of and filled with, and its soil. */
import { addDays, isDay, parseSince } from "../calendar.ts";
import type { Bed, ChangeEffect, DatedWork, Day, Event } from "../model.ts";
import { compare } from "../order.ts";
import { bedLedger, bedsMeant, type Ledger } from "./ledger.ts";
import { become } from "./living-plantings.ts";
import { tryAgainst } from "./troubles.ts";
import { addChange, at, oneBedMeant, pushChange, report } from "./write-down.ts";

export function putUp(ledger: Ledger, event: Event): void {
  const { gear } = event;
  const id = oneBedMeant(ledger, event);
  if (id === undefined) return;
  const bed = bedLedger(ledger, id);
  if (gear !== undefined && !bed.gear.includes(gear)) bed.gear = [...bed.gear, gear];
  const what = gear === undefined ? (event.what ?? event.text) : (ledger.records.gear.get(gear)?.title ?? gear);
  const tried = tryAgainst(bed, event, gear === undefined ? { what } : { gear }, { words: what, plantings: [] });
  addChange(ledger, event, { kind: "did", bed: id, told: { is: "gear up" }, effect: { ...tried, gear: bed.gear } });
}

/** Without a bed, gear is taken down where it stands. Plants that grew on it do so no longer. */
export function takeDown(ledger: Ledger, event: Event): void {
  const { gear } = event;
  const standing = [...ledger.beds.values()].filter((bed) => gear !== undefined && bed.gear.includes(gear));
  const meant = bedsMeant(ledger, event);
  const here = standing.filter((bed) => meant.includes(bed.id));
  const beds = here.length > 0 ? here : standing.length === 1 ? standing : [];
  if (beds.length === 0 && gear !== undefined) report(ledger, { rule: "timeline/gear-not-there", ...at(event), gear });
  for (const bed of beds) {
    bed.gear = bed.gear.filter((id) => id !== gear);
    const freed = bed.living.filter(({ now }) => now.gear === gear);
    const plantings = freed.map((growing) => become(growing, { gear: undefined }));
    const effect: ChangeEffect = plantings.length === 0 ? { gear: bed.gear } : { gear: bed.gear, plantings };
    addChange(ledger, event, { kind: "did", bed: bed.id, told: { is: "gear down" }, effect });
  }
  if (beds.length > 0) return;
  for (const bed of meant) addChange(ledger, event, { kind: "did", bed, told: { is: "gear down" } });
}

export function testSoil(ledger: Ledger, event: Event): void {
  const { ph, day } = event;
  const bed = oneBedMeant(ledger, event);
  if (bed === undefined) return;
  const effect = ph === undefined ? {} : { soilPh: { ph, day } };
  addChange(ledger, event, { kind: "did", bed, told: { is: "soil test" }, effect });
}

/** What a bed's own file says of its days: in use since, built, filled. */
export function bedHistory(ledger: Ledger, bed: Bed): void {
  const note = bed.place;
  if (note === undefined) return;
  const kept = { bed: bed.id, note, private: bed.private };
  if (bed.inUseSince !== undefined) {
    pushChange(ledger, { ...kept, kind: "new", day: bed.inUseSince, told: { is: "in use" } });
  }
  // The day after the last one of a name; of several names each gave way to the next.
  const names = [...(bed.was ?? [])].sort((a, b) => compare(a.until, b.until));
  for (const [at, { name, until }] of names.entries()) {
    const now = names[at + 1]?.name ?? bed.title;
    pushChange(ledger, { ...kept, kind: "did", day: addDays(until, 1), told: { is: "renamed", before: name, now } });
  }
  const works = (all: readonly DatedWork[], part: "built" | "filled") => {
    for (const work of all) {
      const day = dayOfWork(work);
      if (day === undefined) continue;
      pushChange(ledger, {
        ...kept,
        kind: "did",
        day,
        told: { is: part, what: work.what },
        effect: { [part]: work },
      });
    }
  };
  works(bed.built, "built");
  works(bed.filled, "filled");
}

/** A work's day; the first of a month or year when no more is known. */
function dayOfWork({ day }: DatedWork): Day | undefined {
  if (day === undefined || isDay(day)) return day;
  const read = parseSince(day);
  return "day" in read ? read.day : undefined;
}
