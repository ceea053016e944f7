/** Things that ask to be seen beside each other: then and now, this year and last, one arm of a trial and the other. */

import { cultivar, dayOnly, onDay, say, sayShare, theBed } from "../../language/index.ts";
import type { Place } from "../../model.ts";
import { batchOf, byVariety, theBatch } from "../batches.ts";
import { type BedOnTheDay, voiceOf } from "../bed-on-the-day.ts";
import { coverChange, sideBySide } from "../growth-lines.ts";
import { thisDayLastYear } from "../last-seen.ts";
import { pickedFact } from "../picked-sentences.ts";
import { heightFact } from "../planting-sentences.ts";
import type { PhotosByBed } from "../spot.ts";
import { trialSentence, trialsIn } from "../trial-lines.ts";
import type { Candidate } from "./candidate.ts";

export function trialCandidates(here: BedOnTheDay): Candidate[] {
  const voice = voiceOf(here);
  return trialsIn(here).map((trial) => ({
    kind: "trial",
    sentence: trialSentence(trial, here),
    why: (trial.verdictDue ?? "9999") <= here.day ? "its verdict is due" : "the trial is running",
    about: `the trial “${trial.title}”`,
    gist: trial.verdictDue === undefined ? "running" : `verdict due ${onDay(trial.verdictDue, voice)}`,
    keepBy: trial.title,
    lots: here.growing.filter(({ planting }) => trial.arms.some((arm) => arm.variety === planting.variety)),
    of: trial.id,
  }));
}

/** What it gave by now against last year, variety by variety; then what stood in the bed a year ago. */
export function lastYearCandidates(here: BedOnTheDay): Candidate[] {
  const picked = byVariety(here.growing).flatMap((batch) => {
    const fact = pickedFact(batch, here);
    return fact?.text.includes("by this day last year") !== true
      ? []
      : [
          {
            kind: "last year" as const,
            sentence: fact,
            why: "last year's figure is on record",
            about: theBatch(batch),
            gist: "against last year",
            keepBy: cultivar(batch.lots[0]),
            lots: batch.lots,
          },
        ];
  });
  const stood = thisDayLastYear(here);
  if (stood === undefined) return picked;
  const bed = theBed(here.bed);
  return [
    ...picked,
    {
      kind: "a year ago",
      sentence: stood,
      why: "last year's bed is on record",
      about: `${bed} a year ago`,
      gist: "what stood there",
      keepBy: here.bed.title,
      lots: [],
    },
  ];
}

/** "Cover went from 12 % to 61 % since the last tour: the two photos from the gate show it." */
export function sideBySideCandidates(here: BedOnTheDay, photos: PhotosByBed): Candidate[] {
  const pair = sideBySide(here.index.garden, here, photos);
  if (pair === undefined) return [];
  const { before, after, viewpoint } = pair;
  const voice = voiceOf(here);
  const days = `${dayOnly(before.day, voice)} and ${dayOnly(after.day, voice)}`;
  const cover = coverChange(pair);
  const place = (path: string): { readonly place: Place } => ({ place: { file: path, line: 1, column: 1 } });
  const text =
    cover === undefined
      ? `Side by side: ${theBed(here.bed)} from the ${viewpoint} on ${days}.`
      : `Cover went from ${sayShare(cover.from)} to ${sayShare(cover.to)} ${here.since.text}: the two photos from the ${viewpoint} show it.`;
  return [
    {
      kind: "side by side",
      sentence: say(text, [place(before.path), place(after.path)]),
      why: "two photos from one spot show it",
      about: `${theBed(here.bed)} then and now`,
      gist: `photos of ${days}`,
      keepBy: "then and now",
      lots: [],
      of: viewpoint,
    },
  ];
}

export function grownCandidates(here: BedOnTheDay): Candidate[] {
  return here.growing.flatMap((lot) => {
    const measured = lot.events.findLast((event) => event.kind === "measured");
    const fact = measured !== undefined && measured.day > here.newsAfter ? heightFact(lot, here) : undefined;
    return fact === undefined || measured === undefined
      ? []
      : [
          {
            kind: "grew" as const,
            sentence: fact,
            why: "it was measured again",
            about: theBatch(batchOf([lot])),
            gist: `measured ${onDay(measured.day, voiceOf(here))}`,
            keepBy: cultivar(lot),
            lots: [lot],
          },
        ];
  });
}
