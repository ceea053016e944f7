/** What was ticked while filming, as the takes it was ticked for. The one place that takes are read from a field list's export. */
import type { Day, Filming, ShotTick, TakeMark } from "../../model.ts";

export interface TickedTake {
  /** Bed id. */
  readonly bed: string;
  /** Shot id of the brief. */
  readonly shot: string;
  /** Milliseconds of the wall clock at the garden, as if it were UTC: just after the take ended. */
  readonly at: number;
  /** How many takes of this shot had been made by then. */
  readonly takes: number;
  /** Of the last of them; undefined when nobody said. */
  readonly mark?: TakeMark | undefined;
  readonly why?: string | undefined;
}

/** In order of time: every take that has one, else the last as its tick tells of it: "filmed" keeps it, "retake" throws it away. */
export function takesTicked({ day, stops }: Filming): readonly TickedTake[] {
  return stops
    .flatMap(({ bed, ticks }) => ticks.flatMap((tick) => takesOf(day, bed, tick)))
    .filter(({ at }) => !Number.isNaN(at))
    .sort((a, b) => a.at - b.at);
}

function takesOf(day: Day, bed: string, { shot, state, takes, at, reason }: ShotTick): readonly TickedTake[] {
  const time = (clock: string) => Date.parse(`${day}T${clock}Z`);
  const last: TakeMark = state === "filmed" ? "good" : "no good";
  if (takes.some((take) => take.at !== undefined))
    return takes.flatMap((take, index): TickedTake[] => {
      if (take.at === undefined) return [];
      const mark = take.mark ?? (index === takes.length - 1 ? last : undefined);
      return [{ bed, shot, at: time(take.at), takes: index + 1, mark, why: take.why }];
    });
  return state === "skipped"
    ? []
    : [{ bed, shot, at: time(at), takes: Math.max(1, takes.length), mark: takes.at(-1)?.mark ?? last, why: reason }];
}
