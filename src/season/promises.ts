/** What viewers were promised in a season, and what came of it. */

import { addDays } from "../calendar.ts";
import { say, type Voice } from "../language/index.ts";
import type { Day, FollowUp } from "../model.ts";
import { compare } from "../order.ts";
import type { PromiseRow } from "./recap.ts";
import { recapWords } from "./recap-words/words.ts";
import type { SeasonBook } from "./season-book.ts";

/** Days after which viewers have forgotten what was promised, and the tour's brief alone still lists it. */
const remembered = 366;

/** Promises made, due or kept in a stretch of days: broken ones first, the latest due before the others, then open, then kept. */
export function promiseRows(book: SeasonBook, from: Day, to: Day): readonly PromiseRow[] {
  const voice: Voice = { settings: book.garden.settings, day: to };
  const order = { broken: 0, open: 1, kept: 2 } as const;
  const since = addDays(from, -remembered);
  return book.garden.followUps
    .filter(
      ({ promisedOn, due, kept, putOff }) =>
        promisedOn <= to &&
        // The promise that stands for it is told.
        !(putOff !== undefined && putOff <= to) &&
        (promisedOn >= from ||
          within(due, from, to) ||
          within(kept, from, to) ||
          (kept === undefined && within(due, since, to))),
    )
    .map((one) => promiseRow(one, to, voice))
    .sort(
      (a, b) =>
        order[a.standing] - order[b.standing] ||
        (a.standing === "broken" && a.due !== b.due ? ((a.due ?? "") > (b.due ?? "") ? -1 : 1) : 0) ||
        compare(a.promisedOn, b.promisedOn),
    );
}

function within(day: Day | undefined, from: Day, to: Day): boolean {
  return day !== undefined && day >= from && day <= to;
}

function promiseRow(followUp: FollowUp, to: Day, voice: Voice): PromiseRow {
  const kept = followUp.kept !== undefined && followUp.kept <= to ? followUp.kept : undefined;
  const broken = kept === undefined && followUp.due !== undefined && followUp.due < to;
  const standing = kept !== undefined ? "kept" : broken ? "broken" : "open";
  const what = followUp.what.trim().replace(/(?<![.;,\s])[.;,\s]+$/, "");
  const { due, promisedOn } = followUp;
  const text = recapWords.promise({ what, promisedOn, kept, due, standing }, voice);
  return { ...say(text, [followUp]), what, promisedOn, standing, kept, due };
}
