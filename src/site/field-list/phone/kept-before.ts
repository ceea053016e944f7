/** What a phone kept of a tour by a list made before 0.2.0, where takes were only counted. */
import type { Day, ShotState, Take } from "../../../model.ts";
import type { Kept, KeptBed, Tick } from "./shapes.ts";

export interface KeptBefore extends Omit<Kept, "version" | "beds"> {
  readonly version: 1;
  readonly day?: Day | undefined;
  readonly beds: Readonly<
    Record<string, { readonly ticks: Readonly<Record<string, CountedTick>>; readonly note?: string }>
  >;
}

interface CountedTick {
  readonly state: ShotState | "open";
  readonly takes: number;
  readonly at: string;
  readonly reason?: string | undefined;
}

export function fromBefore({ beds, ...kept }: KeptBefore): Kept {
  const now = Object.entries(beds).map(([bed, { ticks, ...rest }]): [string, KeptBed] => [
    bed,
    { ...rest, ticks: Object.fromEntries(Object.entries(ticks).map(([words, tick]) => [words, withTakes(tick)])) },
  ]);
  return { ...kept, version: 2, beds: Object.fromEntries(now) };
}

/** Of takes that were only counted, the last is the one that was ticked or held. */
function withTakes({ state, takes: count, at, reason }: CountedTick): Tick {
  const last: Take = state === "filmed" ? { at, mark: "good" } : state === "retake" ? { at, mark: "no good" } : {};
  const before: Take = state === "retake" ? { mark: "no good" } : {};
  const takes = Array.from({ length: count }, (_, take) => (take === count - 1 ? last : before));
  return { takes, at, ...(state === "skipped" ? { skipped: reason === undefined ? {} : { reason } } : {}) };
}
