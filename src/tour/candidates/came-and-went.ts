/** What is new, what was lost, what ended, what troubles, and what will soon be gone. */

import { daysBetween } from "../../calendar.ts";
import { isNewToGarden } from "../../garden/index.ts";
import {
  bedVerb,
  capital,
  cultivar,
  onDay,
  say,
  sayList,
  sentencesOf,
  sinceDay,
  theBed,
} from "../../language/index.ts";
import type { Event } from "../../model.ts";
import { batchesOf, batchOf, named, theBatch } from "../batches.ts";
import { type BedOnTheDay, isNews, type Lot, voiceOf } from "../bed-on-the-day.ts";
import type { TroubleLine } from "../brief.ts";
import { endedSentences, foundThere, lostSentences, newSentence } from "../news-sentences.ts";
import { isToldOf } from "../own-lines.ts";
import { isTakenLongAgo } from "../picked-sentences.ts";
import { firstDayOf, standsNow } from "../planting-sentences.ts";
import type { ShownBefore } from "../shown-before.ts";
import { endedTroubles, openTroubles } from "../trouble-lines.ts";
import type { Candidate } from "./candidate.ts";

export function newCandidates(here: BedOnTheDay): Candidate[] {
  const voice = voiceOf(here);
  return batchesOf(here.growing.filter((lot) => isNews(lot, here) && !isTakenLongAgo(lot, here))).map((batch) => {
    const [lot] = batch.lots;
    const { planted, sown, since, selfSown, implied } = lot.planting;
    const up = firstDayOf(lot, "up");
    const gist =
      selfSown === true
        ? `self-sown, up ${sinceDay(since, voice)}`
        : planted !== undefined
          ? `planted ${onDay(planted, voice)}`
          : up !== undefined
            ? `up ${sinceDay(up, voice)}`
            : implied
              ? `first noted ${onDay(since, voice)}`
              : `sown ${onDay(sown ?? since, voice)}`;
    return {
      kind: "new",
      sentence: newSentence(batch, here),
      why:
        here.since.episode === undefined
          ? "this bed has never been shown"
          : foundThere(batch.lots)
            ? `first noted ${here.since.text}`
            : `it came ${here.since.text}`,
      about: theBatch(batch),
      gist,
      keepBy: cultivar(lot),
      lots: batch.lots,
    };
  });
}

/** "First time in this garden: Chioggia beetroot and Lucullus chard." For what viewers saw unnamed; what is new says so itself. */
export function firstTimeCandidates(here: BedOnTheDay, shown: ShownBefore): Candidate[] {
  const lots = here.growing.filter(
    (lot) =>
      !isNews(lot, here) &&
      lot.variety !== undefined &&
      isNewToGarden(here.index.garden, lot.variety.id, here.day) &&
      shown.lastNamed(lot.variety) === undefined,
  );
  const [first, ...more] = [...new Map(lots.map((lot) => [lot.planting.variety, lot])).values()];
  if (first === undefined) return [];
  const names = [...new Set([first, ...more].map((lot) => named(batchOf([lot]))))];
  return [
    {
      kind: "first time",
      sentence: say(
        `First time in this garden: ${sayList(names)}.`,
        [first, ...more].flatMap((lot) => lot.grounds),
      ),
      why: "it was never grown here before this year",
      about: sayList(names),
      gist: "first time in this garden",
      keepBy: cultivar(first),
      lots: [first, ...more],
    },
  ];
}

export function goneCandidates(here: BedOnTheDay): Candidate[] {
  const voice = voiceOf(here);
  const lost = lostSentences(here).map(({ sentence, batch }) => ({
    kind: "lost" as const,
    sentence,
    why: "viewers saw more of them last time",
    about: theBatch(batch),
    gist: "some were lost",
    keepBy: cultivar(batch.lots[0]),
    lots: batch.lots,
  }));
  const ended = endedSentences(here)
    .filter(({ lot: { planting } }) => (planting.ended ?? "") >= here.season)
    .map(({ lot, sentence }) => ({
      kind: lot.planting.stage === "lost" ? ("lost" as const) : ("finished" as const),
      sentence,
      why: lot.before === undefined ? "it came and went between two tours" : "viewers will look for it",
      about: theBatch(batchOf([lot])),
      gist: `${lot.planting.stage === "lost" ? "lost" : "out"} ${onDay(lot.planting.ended ?? here.day, voice)}`,
      keepBy: cultivar(lot),
      lots: [lot],
    }));
  return [...lost, ...ended];
}

export function troubleCandidates(here: BedOnTheDay): Candidate[] {
  const voice = voiceOf(here);
  const open = openTroubles(here)
    .filter((line) => !isOldNews(line, here))
    .map((line) => ({
      kind: "trouble" as const,
      sentence: line,
      why: line.opened > here.newsAfter ? "it is new" : "it is not over",
      about: `the ${line.what}`,
      gist: sinceDay(line.opened, voice),
      keepBy: line.cause,
      lots: lotsOf(here, line.plantings),
      of: line.cause,
    }));
  const over = endedTroubles(here).map((line) => ({
    kind: "trouble over" as const,
    sentence: line,
    why: "it ended well",
    about: `the ${line.what}`,
    gist: "over",
    keepBy: line.cause,
    lots: lotsOf(here, line.plantings),
    of: line.cause,
  }));
  return [...open, ...over];
}

/** Days after which a trouble that was not noted again is no news of plants that do well. */
const oldNews = 42;
const well = /\b(?:well|fine|healthy|recovered|recovering|thriving|better|great)\b/i;
const unwell = /\b(?:not|no|never|n't|less|poorly|badly)\b/i;

/** Nobody noted it as over, but weeks ago, and all its plants were picked or said to do well since. */
function isOldNews({ cause, opened, plantings }: TroubleLine, here: BedOnTheDay): boolean {
  const lots = lotsOf(here, plantings);
  const noted = lots.flatMap(({ events }) =>
    events.filter((event) => event.kind === "trouble" && event.cause === cause).map(({ day }) => day),
  );
  const last = [opened, ...noted].toSorted().at(-1) ?? opened;
  if (lots.length === 0 || daysBetween(last, here.day) < oldNews) return false;
  const isGood = ({ kind, what = "" }: Event) =>
    kind === "picked" || (kind === "doing" && well.test(what) && !unwell.test(what));
  return lots.every(({ events }) => events.some((event) => event.day > last && isGood(event)));
}

function lotsOf(here: BedOnTheDay, plantings: readonly string[]): readonly Lot[] {
  return here.growing.filter((lot) => plantings.includes(lot.planting.id));
}

/** Nothing happened: what stands is still worth a look, and an empty bed is told as such. */
export function standingCandidates(here: BedOnTheDay): Candidate[] {
  if (here.growing.length === 0 && isToldOf(here)) {
    // Nothing is on record, and that is no proof that nothing grows.
    const [first] = sentencesOf(here.bed.body);
    const text = first === undefined ? `This is ${theBed(here.bed)}.` : `${capital(theBed(here.bed))}: ${first}`;
    return [
      {
        kind: "standing",
        sentence: say(text, [here.bed]),
        why: "your notes tell of it in lines that are still questions",
        about: theBed(here.bed),
        gist: "in lines that are still questions",
        keepBy: here.bed.title,
        lots: [],
      },
    ];
  }
  if (here.growing.length === 0) {
    const text = `${capital(theBed(here.bed))} ${bedVerb(here.bed, "is", "are")} empty at the moment.`;
    return [
      {
        kind: "standing",
        sentence: say(text, [here.bed]),
        why: "nothing grows in it",
        about: theBed(here.bed),
        gist: "empty",
        keepBy: here.bed.title,
        lots: [],
      },
    ];
  }
  return batchesOf(here.growing)
    .slice(0, 2)
    .map((batch) => ({
      kind: "standing",
      sentence: standsNow(batch, here),
      why: here.since.episode === undefined ? "this bed has never been shown" : `nothing is noted ${here.since.text}`,
      about: theBatch(batch),
      gist: "as it stood",
      keepBy: cultivar(batch.lots[0]),
      lots: batch.lots,
    }));
}
