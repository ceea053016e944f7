/** Work done in a bed: what was built, put up, tied, fed, cut back. */

import { addDays } from "../../calendar.ts";
import { capital, changeSentence, dayOnly, fullStop, onDay, say, theBed } from "../../language/index.ts";
import { type BedOnTheDay, voiceOf } from "../bed-on-the-day.ts";
import type { Candidate } from "./candidate.ts";

/** Older work is not seen any more. */
const stillSeen = 14;

export function workCandidates(here: BedOnTheDay): Candidate[] {
  const recent = addDays(here.day, -stillSeen);
  const voice = voiceOf(here);
  return here.changes
    .filter((change) => change.kind === "did" && change.day > recent)
    .map((change): Candidate => {
      const { gear, built, filled } = change.effect;
      const words = changeSentence(change, here.index.garden);
      return {
        kind: gear !== undefined || built !== undefined || filled !== undefined ? "built" : "work",
        sentence: say(fullStop(capital(words)), [change]),
        why: `done on ${dayOnly(change.day, voice)}`,
        about: `work in ${theBed(here.bed)}`,
        gist: `done ${onDay(change.day, voice)}`,
        keepBy: "work",
        lots: here.growing.filter((lot) => lot.planting.id === change.planting),
        of: `${change.day} ${words}`,
      };
    })
    .toReversed();
}
