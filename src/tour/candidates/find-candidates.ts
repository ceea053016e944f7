/** Everything that asks to be shown at a stop, weighed: kind, novelty, and what the person said in the episode's record. */

import { filmTime, type Level, secondsToSay } from "../../films/index.ts";
import type { Event } from "../../model.ts";
import type { BedOnTheDay, Lot } from "../bed-on-the-day.ts";
import { novelty, repeated, showValues, toldAgain } from "../show-values.ts";
import type { ShownBefore } from "../shown-before.ts";
import type { PhotosByBed } from "../spot.ts";
import type { Wishes } from "../wishes.ts";
import {
  firstTimeCandidates,
  goneCandidates,
  newCandidates,
  standingCandidates,
  troubleCandidates,
} from "./came-and-went.ts";
import type { Candidate, OwedLine } from "./candidate.ts";
import { speaksOf, type Weighed } from "./candidate.ts";
import { grownCandidates, lastYearCandidates, sideBySideCandidates, trialCandidates } from "./compared.ts";
import { goingCandidates } from "./going.ts";
import { owedCandidates, questionCandidates } from "./owed-and-asked.ts";
import { firstCandidates, flowerCandidates, pickingCandidates, readyCandidates } from "./ripe-and-in-flower.ts";
import { workCandidates } from "./works.ts";

/** What the candidates of every stop are found with. */
export interface Findings {
  /** Follow-ups to be kept at a stop, by bed id. */
  readonly owed: ReadonlyMap<string, readonly OwedLine[]>;
  readonly questions: ReadonlyMap<string, readonly Event[]>;
  readonly photos: PhotosByBed;
  readonly shown: ShownBefore;
  readonly wishes: Wishes;
}

/** The strongest first. What rests on something private is left to the brief's notes. */
export function candidatesAt(here: BedOnTheDay, findings: Findings): readonly Weighed[] {
  const found = everything(here, findings).filter(({ sentence }) => !sentence.private);
  const all = found.length === 0 ? standingCandidates(here) : found;
  const timesOf = new Map<string, number>();
  const weighed = all.map((candidate, at) => {
    const times = timesOf.get(candidate.kind) ?? 0;
    timesOf.set(candidate.kind, times + 1);
    return weigh(candidate, here, findings.shown, times, at);
  });
  return inOrder(asWished(inOrder(onceEach(inOrder(weighed))), findings.wishes));
}

/** Of the things that speak of the same plants only the strongest has its full worth; what must be shown keeps its own. */
function onceEach(weighed: readonly Weighed[]): readonly Weighed[] {
  const told = new Set<Lot>();
  return weighed.map((one) => {
    const again = one.lots.length > 0 && one.lots.every((lot) => told.has(lot));
    for (const lot of one.lots) told.add(lot);
    return again && one.level !== "must" ? { ...one, value: rounded(one.value * toldAgain) } : one;
  });
}

const rank: Readonly<Record<Level, number>> = { must: 0, should: 1, could: 2 };

function inOrder(weighed: readonly Weighed[]): readonly Weighed[] {
  return weighed.toSorted((a, b) => rank[a.level] - rank[b.level] || b.value - a.value);
}

/**
 * The person's own words overrule the table. `must` and `keep` each hold the strongest thing they name at a stop that is not
 * held anyway, `skip` takes out all it names; out goes before in, and the contradiction is told among the checks.
 */
function asWished(weighed: readonly Weighed[], { must, keep, skip }: Wishes): readonly Weighed[] {
  if (must.length + keep.length + skip.length === 0) return weighed;
  const skipped = new Set(weighed.filter((one) => skip.some((name) => speaksOf(one, name))));
  const strongest = (names: readonly string[]) =>
    new Set(
      names.flatMap((name) => {
        const named = weighed.filter((one) => !skipped.has(one) && speaksOf(one, name));
        return named.find(({ level }) => level !== "must") ?? named[0] ?? [];
      }),
    );
  const [musts, kept] = [strongest(must), strongest(keep)];
  return weighed.map((one): Weighed => {
    if (skipped.has(one)) return { ...one, wish: "skip" };
    if (musts.has(one)) return { ...one, wish: "must", level: "must", why: `you asked for it; ${one.why}` };
    return kept.has(one) ? { ...one, wish: "keep" } : one;
  });
}

function everything(here: BedOnTheDay, { owed, questions, photos, shown }: Findings): Candidate[] {
  return [
    ...owedCandidates(owed.get(here.bed.id) ?? []),
    ...newCandidates(here),
    ...troubleCandidates(here),
    ...goingCandidates(here),
    ...trialCandidates(here),
    ...goneCandidates(here),
    ...firstCandidates(here),
    ...firstTimeCandidates(here, shown),
    ...readyCandidates(here),
    ...pickingCandidates(here),
    ...questionCandidates(here, questions.get(here.bed.id) ?? []),
    ...sideBySideCandidates(here, photos),
    ...lastYearCandidates(here),
    ...flowerCandidates(here),
    ...grownCandidates(here),
    ...workCandidates(here),
  ];
}

function weigh(candidate: Candidate, here: BedOnTheDay, shown: ShownBefore, times: number, at: number): Weighed {
  const { settings } = here.index.garden;
  const { level, value, filmed } = showValues[candidate.kind];
  const weight = settings.weights[candidate.kind] ?? 1;
  const worth = value * weight * noveltyOf(candidate, shown) * repeated ** times;
  const said = candidate.said ?? candidate.sentence;
  return {
    ...candidate,
    key: `${here.bed.id} ${at}`,
    level,
    value: rounded(worth),
    seconds: secondsToSay(said.text, settings.narrationRate) + filmTime.handling[filmed],
  };
}

function rounded(value: number): number {
  return Math.round(value * 10) / 10;
}

/** Only what goes on as before loses by having been told; news is news. */
const goesOn: ReadonlySet<string> = new Set([
  "picking",
  "standing",
  "in flower",
  "last year",
  "a year ago",
  "trial",
  "work",
  "grew",
]);

function noveltyOf({ lots, kind }: Candidate, { lastTold, lastNamed }: ShownBefore): number {
  const varieties = lots.flatMap(({ variety }) => (variety === undefined ? [] : [variety]));
  if (lastTold === undefined || varieties.length === 0) return 1;
  const namings = varieties.map(lastNamed);
  if (namings.every((naming) => naming === undefined)) return novelty.neverNamed;
  const lately = namings.every((naming) => naming?.episode === lastTold);
  return lately && goesOn.has(kind) ? novelty.namedLastTime : 1;
}
