/** What viewers are waiting for: promises to be kept at a stop, and questions that no film has answered yet. */

import { daysBetween } from "../../calendar.ts";
import { cropName, cultivar, mentions, say, together, toYou } from "../../language/index.ts";
import type { Event } from "../../model.ts";
import type { BedOnTheDay } from "../bed-on-the-day.ts";
import { promiseWords } from "../keys.ts";
import { answerInNotes } from "./answers-in-notes.ts";
import type { Candidate, OwedLine } from "./candidate.ts";

export function owedCandidates(owed: readonly OwedLine[]): Candidate[] {
  return owed.map((line) => ({
    kind: "owed",
    sentence: line.now === undefined ? line : together([line, line.now]),
    said: line.now === undefined ? line.said : together([line.said, toldByMe(line.now)]),
    why: line.standing === "overdue" ? "viewers have been waiting for it" : "viewers were told they would see it",
    about: `the promise: ${toYou(line.what.replace(/^to /i, ""))}`,
    gist: line.standing === "open" ? "owed" : line.standing,
    keepBy: line.what,
    lots: line.lots,
    of: promiseWords(line),
  }));
}

/** "Your notes" are the speaker's own when they speak. */
function toldByMe<Told extends { readonly text: string }>(told: Told): Told {
  return { ...told, text: told.text.replace(/\b([Ii]n )your notes\b/g, "$1my notes") };
}

/** A question that is older than this was answered elsewhere or forgotten. */
const stillAsked = 120;

/**
 * Questions noted since viewers last saw the bed, on that day itself too: questions come in while a film is out. Each goes
 * to the bed its line names; where it names none, to the first stop that grows what it speaks of.
 */
export function questionCandidates(here: BedOnTheDay, questions: readonly Event[]): Candidate[] {
  return questions
    .filter(({ day }) => day >= here.since.day && daysBetween(day, here.day) <= stillAsked)
    .map((event) => {
      const question = (event.what ?? "").trim().replace(/(?<!\?)\?*$/, "?");
      const asked = say(`A viewer asks: “${question}”`, [event]);
      const answer = answerInNotes(event, here.index.garden.notes, here.day);
      const sentence = answer === undefined || answer.private ? asked : together([asked, answer]);
      return {
        kind: "question",
        sentence,
        said: toldByMe(sentence),
        why: "a viewer wants to know",
        about: `the question “${question}”`,
        gist: "viewers ask",
        keepBy: "question",
        lots: [],
        of: question,
      };
    });
}

/** Open questions by the stop that can answer them. */
export function questionsByBed(events: readonly Event[], stops: readonly BedOnTheDay[]): ReadonlyMap<string, Event[]> {
  const [first] = stops;
  const found = new Map<string, Event[]>();
  if (first === undefined) return found;
  for (let at = events.length - 1; at >= 0; at -= 1) {
    const event = events[at];
    if (event === undefined || daysBetween(event.day, first.day) > stillAsked) break;
    if (event.kind !== "asked" || event.what === undefined || event.day > first.day) continue;
    const bed = event.bed ?? bedAskedAbout(event.what, stops)?.bed.id;
    if (bed !== undefined) found.set(bed, [event, ...(found.get(bed) ?? [])]);
  }
  return found;
}

function bedAskedAbout(what: string, stops: readonly BedOnTheDay[]): BedOnTheDay | undefined {
  const grows = (here: BedOnTheDay, of: "variety" | "crop") =>
    here.growing.some((lot) => {
      if (of === "variety") return lot.variety !== undefined && mentions(what, [cultivar(lot)]);
      return lot.crop !== undefined && mentions(what, [cropName(lot.crop, 1), cropName(lot.crop, 2)]);
    });
  return (
    stops.find((here) => mentions(what, [here.bed.title, ...here.bed.alsoCalled])) ??
    stops.find((here) => grows(here, "variety")) ??
    stops.find((here) => grows(here, "crop"))
  );
}
