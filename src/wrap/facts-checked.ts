/**
 * Numbers and days said that the records tell otherwise. Both sides are listed and nothing is changed: a slip of the tongue
 * and a slip of the pen look alike from here. What fits any reading of the records is left alone.
 */
import { heldAgainstRecords } from "./claims/against-records.ts";
import { claimsOf } from "./claims/claims.ts";
import type { Check } from "./fact-check.ts";
import type { FilmHeard } from "./hear-film.ts";
import { firstTimes, sizes } from "./sizes-and-firsts.ts";
import { subjectsOf } from "./spoken-subjects.ts";
import type { Stretch } from "./stops-heard.ts";
import type { Disagreement } from "./wrap.ts";

export function factsChecked(film: FilmHeard, stretches: readonly Stretch[]): readonly Disagreement[] {
  const check: Check = {
    film,
    plain: film.speech.words.map(({ plain }) => plain),
    subjects: subjectsOf(film, stretches),
    stretches,
  };
  return [...heldAgainstRecords(check, claimsOf(check)), ...firstTimes(check), ...sizes(check, stretches)].sort(
    (a, b) => a.at - b.at,
  );
}
