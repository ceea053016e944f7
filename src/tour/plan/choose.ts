/** Which things the film has room for: what the person said first, then the best fit to the length. */

import { filmTime, fitToTarget, stopOverhead } from "../../films/index.ts";
import type { BedOnTheDay } from "../bed-on-the-day.ts";
import type { Weighed } from "../candidates/candidate.ts";
import { mostPerStop } from "../show-values.ts";

/** What one bed offers. */
export interface Offer {
  readonly here: BedOnTheDay;
  /** The strongest first. */
  readonly candidates: readonly Weighed[];
  /** The person listed the stop or wrote `keep` or `must` for its bed: it is walked to whatever the length. */
  readonly fixed: boolean;
}

export interface Passed {
  readonly here: BedOnTheDay;
  readonly candidate: Weighed;
  readonly why: "skip" | "no room" | "full stop";
}

export interface Choice {
  /** Beds to stop at, in the order given, each with what is shown there. */
  readonly stops: readonly { readonly here: BedOnTheDay; readonly show: readonly Weighed[] }[];
  /** Things of those stops that are not shown, the most valuable first. */
  readonly passed: readonly Passed[];
  /** Beds of which nothing fits, in the order given, with all they offer. */
  readonly unvisited: readonly Offer[];
  /** Keys of what stays whatever the length. */
  readonly held: ReadonlySet<string>;
  /** Seconds of the film that are left over. */
  readonly room: number;
  /** Seconds by which what must be in is longer than the target. */
  readonly over: number;
}

/** Greeting and goodbye are in every film. */
export const frame = filmTime.opening + filmTime.goodbye;

export function chooseWhatFits(offers: readonly Offer[], target: number | undefined): Choice {
  const open = offers.map((offer) => ({
    ...offer,
    candidates: offer.candidates.filter(({ wish }) => wish !== "skip"),
  }));
  const fixed = new Set(open.flatMap(fixedThings).map(({ key }) => key));
  const fit = target === undefined ? undefined : fitTo(target, open, fixed);
  const chosen = fit === undefined ? new Set(open.flatMap(withinLimits)) : new Set(fit.chosen);
  for (const key of fixed) chosen.add(key);
  const stops = open.flatMap(({ here, candidates }) => {
    const show = candidates.filter(({ key }) => chosen.has(key));
    return show.length === 0 ? [] : [{ here, show }];
  });
  const visited = new Set(stops.map(({ here }) => here));
  const passed = offers
    .filter(({ here }) => visited.has(here))
    .flatMap(({ here, candidates }) =>
      candidates
        .filter(({ key }) => !chosen.has(key))
        .map((candidate): Passed => {
          const why = candidate.wish === "skip" ? "skip" : target === undefined ? "full stop" : "no room";
          return { here, candidate, why };
        }),
    );
  return {
    stops,
    passed: passed.toSorted((a, b) => b.candidate.value - a.candidate.value),
    unvisited: offers.filter(({ here }) => !visited.has(here)),
    held: fixed,
    room: fit === undefined || target === undefined ? 0 : Math.max(0, target - frame - fit.seconds),
    over: fit?.over ?? 0,
  };
}

/** What stays whatever the length: musts and what the person keeps; at a stop the person chose, its strongest thing. */
function fixedThings({ candidates, fixed }: Offer): readonly Weighed[] {
  const kept = candidates.filter(({ level, wish }) => level === "must" || wish === "keep" || wish === "must");
  return kept.length === 0 && fixed ? candidates.slice(0, 1) : kept;
}

function fitTo(target: number, offers: readonly Offer[], fixed: ReadonlySet<string>) {
  const things = offers.flatMap(({ here, candidates }) =>
    candidates.map(({ key, seconds, value }) => ({
      id: key,
      stop: here.bed.id,
      seconds,
      value,
      must: fixed.has(key),
    })),
  );
  return fitToTarget(things, target - frame, () => stopOverhead);
}

/** Without a target a stop holds as much as anybody reads in the garden. */
function withinLimits({ candidates }: Offer): readonly string[] {
  const ofLevel = (level: "should" | "could") =>
    candidates.filter((candidate) => candidate.level === level).slice(0, mostPerStop[level]);
  return [...ofLevel("should"), ...ofLevel("could")].map(({ key }) => key);
}
