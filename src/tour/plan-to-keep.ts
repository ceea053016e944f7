/**
 * The plan a tour is filmed by, as it is kept beside its episode and carried by the phone: what was to be shown and filmed,
 * in the words it had that day. The records read it back (`records/kept-plans.ts`).
 */
import type { Day, PlannedShot, PlannedThing } from "../model.ts";
import type { Brief } from "./brief.ts";

export interface PlanToKeep {
  readonly plotreel: "plan";
  readonly version: 1;
  readonly episode: string;
  readonly day: Day;
  readonly stops: readonly {
    readonly bed: string;
    readonly title: string;
    readonly show: readonly PlannedThing[];
    readonly shots: readonly PlannedShot[];
    /** Those for viewers' ears too: they go into the description. */
    readonly cautions: readonly string[];
  }[];
  readonly care?: string | undefined;
}

export function planToKeep(brief: Brief): PlanToKeep {
  return {
    plotreel: "plan",
    version: 1,
    episode: brief.tour,
    day: brief.date,
    stops: brief.stops.map(({ bed, title, show, shots, cautions, furtherCautions }) => ({
      bed,
      title,
      show: show.map(({ id, key, kind, level, text, plantings, shot }) => ({
        id,
        key,
        kind,
        level,
        text,
        plantings,
        ...(shot === undefined ? {} : { shot }),
      })),
      shots: shots.map(({ id, key, text, level }) => ({ id, key, text, ...(level === undefined ? {} : { level }) })),
      cautions: [...cautions, ...furtherCautions].flatMap((one) => (one.private ? [] : [one.text])),
    })),
    ...(brief.closingCaution === undefined ? {} : { care: brief.closingCaution }),
  };
}
