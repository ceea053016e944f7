/** Plants at their moment: first flower and first picking, in flower, ripe, ready soon. */

import { daysBetween } from "../../calendar.ts";
import { capital, cultivar, dayOnly, onDay, say, sinceDay, thePlants } from "../../language/index.ts";
import { agree, batchesOf, bySowing, byVariety, groundsOf, theBatch } from "../batches.ts";
import { type BedOnTheDay, isNews, voiceOf } from "../bed-on-the-day.ts";
import { aboutWhen, expectedDay, expectedFact } from "../expected-picking.ts";
import { milestonesSince } from "../milestones.ts";
import { pickedSinceSentence } from "../picked-sentences.ts";
import type { Candidate } from "./candidate.ts";

/** Days within which "ready soon" is worth saying. */
const soon = 14;

/** Days for which vegetables in flower are worth a look; flowers are grown for it and always are. */
const freshlyInFlower = 14;

export function firstCandidates(here: BedOnTheDay): Candidate[] {
  const voice = voiceOf(here);
  const gists = {
    up: (day: string) => `up ${sinceDay(day, voice)}`,
    "first flower": (day: string) => `in flower ${sinceDay(day, voice)}`,
    "first fruit": (day: string) => `in fruit ${sinceDay(day, voice)}`,
    "first picking": (day: string) => `first picked ${onDay(day, voice)}`,
    "only picking": (day: string) => `taken up ${onDay(day, voice)}`,
  };
  return milestonesSince(here).map((milestone) => ({
    kind: milestone.kind,
    sentence: milestone,
    why: `first time ${here.since.episode === undefined ? "this season" : here.since.text}`,
    about: thePlants(milestone.lot),
    gist: gists[milestone.kind](milestone.day),
    keepBy: cultivar(milestone.lot),
    lots: [milestone.lot],
  }));
}

export function pickingCandidates(here: BedOnTheDay): Candidate[] {
  const begun = new Set(
    milestonesSince(here)
      .filter(({ kind }) => kind === "first picking" || kind === "only picking")
      .map(({ lot }) => lot.planting.id),
  );
  return byVariety(here.growing)
    .filter((batch) => !batch.lots.some((lot) => begun.has(lot.planting.id)))
    .flatMap((batch) => {
      const sentence = pickedSinceSentence(batch, here);
      return sentence === undefined
        ? []
        : [
            {
              kind: "picking" as const,
              sentence,
              why: "it is being picked",
              about: theBatch(batch),
              gist: "being picked",
              keepBy: cultivar(batch.lots[0]),
              lots: batch.lots,
            },
          ];
    });
}

/** What should be ready by now and is not picked, and what will be before the next tour. */
export function readyCandidates(here: BedOnTheDay): Candidate[] {
  return bySowing(here.growing).flatMap((batch) => {
    const day = expectedDay(batch.lots[0], here);
    if (day === undefined) return [];
    const away = daysBetween(here.day, day);
    const fact = Math.abs(away) <= soon ? expectedFact(batch, here) : undefined;
    if (fact === undefined) return [];
    const due = away > 0;
    return [
      {
        kind: due ? ("due soon" as const) : ("ready" as const),
        sentence: fact,
        why: due ? "it should be ready before the next tour" : "it should be ready by now",
        about: theBatch(batch),
        gist: due ? `ready ${aboutWhen(batch.lots[0], day, here)}` : `due since about ${dayOnly(day, voiceOf(here))}`,
        keepBy: cultivar(batch.lots[0]),
        lots: batch.lots,
      },
    ];
  });
}

/** "The Velvet Queen sunflowers are in flower, since Thursday." One for each story, first flowers apart. */
export function flowerCandidates(here: BedOnTheDay): Candidate[] {
  const told = new Set(milestonesSince(here).map(({ lot }) => lot.planting.id));
  const voice = voiceOf(here);
  const open = here.growing.filter(
    (lot) =>
      lot.planting.stage === "flowering" &&
      !told.has(lot.planting.id) &&
      !isNews(lot, here) &&
      (lot.crop?.use === "flower" || daysBetween(lot.planting.stageSince, here.day) <= freshlyInFlower),
  );
  return batchesOf(open).map((batch) => {
    const since = sinceDay(batch.lots[0].planting.stageSince, voice);
    const flowered = batch.lots.flatMap(({ events }) => events.filter(({ kind }) => kind === "flowered").slice(-1));
    return {
      kind: "in flower",
      sentence: say(
        `${capital(theBatch(batch))} ${agree(batch, "has", "have")} been in flower ${since}.`,
        flowered.length > 0 ? flowered : groundsOf(batch),
      ),
      why: "it is in flower today",
      about: theBatch(batch),
      gist: `in flower ${since}`,
      keepBy: cultivar(batch.lots[0]),
      lots: batch.lots,
    };
  });
}
