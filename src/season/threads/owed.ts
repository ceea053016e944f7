/**
 * What viewers were promised and did not get. Each broken promise is told in one recap, that of the days in which it fell due,
 * and in one card of it.
 */
import type { PromiseRow } from "../recap.ts";
import type { Telling } from "./telling.ts";
import { type Part, part, type Thread, type Told } from "./thread.ts";

/** Words of a promise that waits for another time or for something to happen. */
const later =
  /\b(?:next|when|once|if|until|january|february|march|april|may|june|july|august|september|october|november|december|spring|summer|autumn|fall|winter)\b/i;

export function debtThread({ material }: Telling): readonly Thread[] {
  const { promises, from, to, past } = material;
  const told = promises.filter((one) => !one.private && isOfTheseDays(one, from, to));
  const owed = told.filter(
    (one) =>
      one.standing === "broken" || (past && one.standing === "open" && one.due === undefined && !later.test(one.what)),
  );
  const open = told.filter((one) => one.standing === "open" && !owed.includes(one));
  const kept = told.filter(({ standing }) => standing === "kept");
  const [first] = owed;
  if (first === undefined) return [];
  const made = [...kept, ...owed];
  const line = (one: PromiseRow): Part<Told> => part({ is: "promise", what: one.what, due: one.due }, [one], to);
  return [
    {
      kind: "debt",
      about: {},
      worth: 50 + Math.min(6, 2 * owed.length),
      lead: part({ is: "owed", promises: owed.length }, owed, to),
      now: owed.map(line),
      figure: kept.length === 0 ? undefined : part({ is: "kept of", kept: kept.length, made: made.length }, made, to),
      notes: [],
      next: open[0] === undefined ? undefined : line(open[0]),
      gear: [],
      photos: [],
    },
  ];
}

/** Due in these days; without a day, made in them. */
function isOfTheseDays({ due, kept, promisedOn, standing }: PromiseRow, from: string, to: string): boolean {
  if (standing === "kept") return kept !== undefined && kept >= from && kept <= to;
  if (standing === "broken") return due !== undefined && due >= from && due <= to;
  return promisedOn >= from && promisedOn <= to;
}
