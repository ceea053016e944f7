/**
 * How each planned shot came home: which takes were made of it and what they are worth, what is to be filmed again and why.
 * A tick finds its shot by what it is of; one that the plan does not hold is told in its own words.
 */
import type { Filming, PlannedShot, PlannedTour, ShotState, ShotTick } from "../model.ts";
import type { PlannedAnswer } from "./claims/planned-answer.ts";
import type { Covered, PlannedCovered, Reshoot } from "./wrap.ts";

type PlannedStop = PlannedTour["stops"][number];

/** Every shot of the plan, then what was ticked and stands in no plan. */
export function shotsFilmed(stops: readonly PlannedStop[], filming: Filming): readonly PlannedCovered[] {
  const planned = stops.flatMap(({ bed, shots }) => shots.map((shot) => ofShot(shot, bed, tickOf(filming, bed, shot))));
  const known = new Set(stops.flatMap(({ bed, shots }) => shots.flatMap((shot) => tickOf(filming, bed, shot) ?? [])));
  const others = filming.stops.flatMap(({ bed, ticks }) =>
    ticks
      .filter((tick) => tick.words !== undefined && !known.has(tick))
      .map((tick) => ofShot({ id: tick.shot, key: tick.key ?? tick.shot, text: tick.words ?? "" }, bed, tick)),
  );
  return [...planned, ...others];
}

function ofShot({ id, key, level, text }: PlannedShot, bed: string, tick: ShotTick | undefined): PlannedCovered {
  return {
    id,
    key,
    bed,
    level: level ?? "could",
    text,
    covered: covered("missed", tick?.state),
    reason: tick?.reason,
    takes: tick?.takes ?? [],
  };
}

/** Lists made before shots had keys know them by their number in that plan. */
export function tickOf(
  filming: Filming | undefined,
  bed: string,
  { id, key }: Pick<PlannedShot, "id" | "key">,
): ShotTick | undefined {
  return filming?.stops
    .find((stop) => stop.bed === bed)
    ?.ticks.find((tick) => (tick.key === undefined ? tick.shot === id : tick.key === key));
}

/** What was filmed without a good take was not got; what was told is not owed, and what was only shown is still untold. */
export function covered(answer: PlannedAnswer["is"], state: ShotState | undefined): Covered {
  if (state === "filmed") return answer === "said" ? "said and filmed" : answer === "missed" ? "filmed" : answer;
  if (answer !== "missed") return answer;
  return state === "skipped" ? "skipped" : state === "retake" ? "to film again" : "missed";
}

const rank = { must: 0, should: 1, could: 2 } as const;

/** Bed by bed along the walk, what matters most first: takes that were no good, musts that were not got, and what was put off. */
export function reshoots(shots: readonly PlannedCovered[], things: readonly PlannedCovered[]): readonly Reshoot[] {
  // A shot asked for by a thing that was shown or told is not owed any more.
  const got = new Set(things.filter(({ covered: how }) => how.startsWith("said")).map(({ key }) => key));
  const open = shots.flatMap((shot): readonly Reshoot[] => {
    const { covered: how, level, reason, takes = [] } = shot;
    const { id, key, bed, text } = shot;
    const again = { id, key, bed, level, text };
    if (how === "to film again")
      return [{ ...again, what: "no good take", why: takes.findLast(({ why }) => why !== undefined)?.why }];
    if (level === "could" || got.has(key)) return [];
    if (how === "skipped") return [{ ...again, what: "skipped", why: reason }];
    return how === "missed" && level === "must" ? [{ ...again, what: "not filmed" }] : [];
  });
  const beds = [...new Set(shots.map(({ bed }) => bed))];
  return open.toSorted((a, b) => beds.indexOf(a.bed) - beds.indexOf(b.bed) || rank[a.level] - rank[b.level]);
}
