/**
 * Numbers and days said that the records tell otherwise. Both sides are listed and nothing is changed: a slip of the tongue
 * and a slip of the pen look alike from here. What fits any reading of the records is left alone.
 */
import { heldAgainstRecords } from "./claims/against-records.ts";
import { claimsOf } from "./claims/claims.ts";
import { withoutFillers } from "./claims/fillers.ts";
import type { Check } from "./fact-check.ts";
import type { FilmHeard } from "./hear-film.ts";
import { sizes } from "./sizes-said.ts";
import { subjectsOf } from "./spoken-subjects.ts";
import type { Stretch } from "./stops-heard.ts";
import type { ClaimsHeard, Disagreement } from "./wrap.ts";

export interface FactsChecked {
  readonly disagreements: readonly Disagreement[];
  readonly claims: ClaimsHeard;
}

export function factsChecked(heard: FilmHeard, whole: readonly Stretch[]): FactsChecked {
  const { film, stretches } = withoutFillers(heard, whole);
  const check: Check = {
    film,
    plain: film.speech.words.map(({ plain }) => plain),
    subjects: subjectsOf(film, stretches),
    stretches,
  };
  const { differing, agreed, notCompared } = heldAgainstRecords(check, claimsOf(check));
  const others = sizes(check, stretches);
  const disagreements = [...differing, ...others].sort((a, b) => a.at - b.at);
  const compared = agreed + disagreements.length;
  return {
    disagreements,
    claims: {
      heard: compared + notCompared.length,
      compared,
      agreed,
      differed: disagreements.length,
      notCompared,
    },
  };
}
