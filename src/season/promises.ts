/** What viewers were promised in a season, and what came of it. */
import { addDays } from "../calendar.ts";
import type { Day, FollowUp } from "../model.ts";
import { capital } from "../timeline/index.ts";
import { dayOnly, type Speech, say } from "../tour/index.ts";
import type { PromiseRow } from "./recap.ts";
import type { SeasonBook } from "./season-book.ts";

/** Days after which viewers have forgotten what was promised, and the tour's brief alone still lists it. */
const remembered = 366;

/** Promises made, due or kept in a stretch of days: broken ones first, the latest due before the others, then open, then kept. */
export function promiseRows(book: SeasonBook, from: Day, to: Day): readonly PromiseRow[] {
  const speech: Speech = { settings: book.garden.settings, day: to };
  const order = { broken: 0, open: 1, kept: 2 } as const;
  const since = addDays(from, -remembered);
  return book.garden.followUps
    .filter(
      ({ promisedOn, due, kept }) =>
        promisedOn <= to &&
        (promisedOn >= from ||
          within(due, from, to) ||
          within(kept, from, to) ||
          (kept === undefined && within(due, since, to))),
    )
    .map((one) => promiseRow(one, to, speech))
    .sort(
      (a, b) =>
        order[a.standing] - order[b.standing] ||
        (a.standing === "broken" && a.due !== b.due ? ((a.due ?? "") > (b.due ?? "") ? -1 : 1) : 0) ||
        (a.promisedOn < b.promisedOn ? -1 : a.promisedOn > b.promisedOn ? 1 : 0),
    );
}

function within(day: Day | undefined, from: Day, to: Day): boolean {
  return day !== undefined && day >= from && day <= to;
}

function promiseRow(followUp: FollowUp, to: Day, speech: Speech): PromiseRow {
  const kept = followUp.kept !== undefined && followUp.kept <= to ? followUp.kept : undefined;
  const broken = kept === undefined && followUp.due !== undefined && followUp.due < to;
  const standing = kept !== undefined ? "kept" : broken ? "broken" : "open";
  const what = followUp.what.trim().replace(/[.;,\s]+$/, "");
  const promised = `Promised on ${dayOnly(followUp.promisedOn, speech)}: ${what.charAt(0).toLowerCase()}${what.slice(1)}${/[?!]$/.test(what) ? "" : "."}`;
  const end =
    kept !== undefined
      ? late(followUp, kept, speech)
      : broken && followUp.due !== undefined
        ? `It was due by ${dayOnly(followUp.due, speech)} and is still owed.`
        : followUp.due === undefined
          ? "Still to come."
          : followUp.due === to
            ? "It is due today."
            : `Due by ${dayOnly(followUp.due, speech)}.`;
  return {
    ...say(`${promised} ${capital(end)}`, [followUp]),
    what,
    promisedOn: followUp.promisedOn,
    standing,
    kept,
    due: followUp.due,
  };
}

function late({ due }: FollowUp, kept: Day, speech: Speech): string {
  const day = dayOnly(kept, speech);
  return due !== undefined && kept > due ? `Kept on ${day}, later than said.` : `Kept on ${day}.`;
}
