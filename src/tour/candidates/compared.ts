/** Things that ask to be seen beside each other: then and now, this year and last, one arm of a trial and the other. */
import { daysBetween } from "../../calendar.ts";
import type { Place } from "../../model.ts";

import { batchOf, byVariety, theBatch } from "../batches.ts";
import { theBed } from "../bed-names.ts";
import type { BedOnTheDay } from "../bed-on-the-day.ts";
import { dayOnly, onDay, speechOf } from "../days-said.ts";
import { thisDayLastYear } from "../last-seen.ts";
import { pickedFact } from "../picked-sentences.ts";
import { cultivar } from "../plant-names.ts";
import { heightFact } from "../planting-sentences.ts";
import { say } from "../sentence.ts";
import type { PhotosByBed } from "../spot.ts";
import { trialSentence, trialsIn } from "../trial-lines.ts";
import type { Candidate } from "./candidate.ts";

/** A photo stands for a day when it was taken within this many days of it. */
const sameDays = 10;

/** Cover has changed when it went up or down by this share of the frame; less is light and wind. */
const coverChanged = 0.1;

export function trialCandidates(here: BedOnTheDay): Candidate[] {
  const speech = speechOf(here);
  return trialsIn(here).map((trial) => ({
    kind: "trial",
    sentence: trialSentence(trial, here),
    why: (trial.verdictDue ?? "9999") <= here.day ? "its verdict is due" : "the trial is running",
    about: `the trial “${trial.title}”`,
    gist: trial.verdictDue === undefined ? "running" : `verdict due ${onDay(trial.verdictDue, speech)}`,
    keepBy: trial.title,
    lots: here.growing.filter(({ planting }) => trial.arms.some((arm) => arm.variety === planting.variety)),
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
  const { episode, day: then } = here.since;
  const viewpoint = here.bed.viewpoints[0]?.name;
  if (episode === undefined || viewpoint === undefined) return [];
  const all = (photos.get(here.bed.id) ?? []).filter(
    (photo) => photo.viewpoint === viewpoint && !photo.private && (photo.day ?? "9999") <= here.day,
  );
  const before = all.findLast(({ day }) => day !== undefined && day <= then && daysBetween(day, then) <= sameDays);
  const now = all.findLast(({ day }) => day !== undefined && day > then && daysBetween(day, here.day) <= sameDays);
  if (before?.day === undefined || now?.day === undefined) return [];
  const speech = speechOf(here);
  const days = `${dayOnly(before.day, speech)} and ${dayOnly(now.day, speech)}`;
  const cover = coverChange(here, before.path, now.path);
  const place = (path: string): { readonly place: Place } => ({ place: { file: path, line: 1, column: 1 } });
  const text =
    cover === undefined
      ? `Side by side: ${theBed(here.bed)} from the ${viewpoint} on ${days}.`
      : `Cover went from ${percent(cover.from)} to ${percent(cover.to)} ${here.since.text}: the two photos from the ${viewpoint} show it.`;
  return [
    {
      kind: "side by side",
      sentence: say(text, [place(before.path), place(now.path)]),
      why: "two photos from one spot show it",
      about: `${theBed(here.bed)} then and now`,
      gist: `photos of ${days}`,
      keepBy: "then and now",
      lots: [],
    },
  ];
}

function coverChange(here: BedOnTheDay, before: string, now: string) {
  const measured = here.index.garden.growth?.photos ?? [];
  const coverOf = (path: string) => measured.find(({ photo }) => photo === path)?.cover;
  const [from, to] = [coverOf(before), coverOf(now)];
  return from === undefined || to === undefined || Math.abs(to - from) < coverChanged ? undefined : { from, to };
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
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
            gist: `measured ${onDay(measured.day, speechOf(here))}`,
            keepBy: cultivar(lot),
            lots: [lot],
          },
        ];
  });
}
