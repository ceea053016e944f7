/** What was ticked while filming, as the takes it was ticked for. The one place that takes are read from a field list's export. */
import type { Filming } from "../../model.ts";

export type TakeMark = "good" | "hold" | "no good";

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

/** In order of time. A tick knows only of its last take: "filmed" keeps it, "retake" throws it away. */
export function takesTicked({ day, stops }: Filming): readonly TickedTake[] {
  return stops
    .flatMap(({ bed, ticks }) =>
      ticks.flatMap(({ shot, state, takes, at, reason }): TickedTake[] =>
        state === "skipped"
          ? []
          : [
              {
                bed,
                shot,
                at: Date.parse(`${day}T${at}Z`),
                takes: Math.max(1, takes),
                mark: state === "filmed" ? "good" : "no good",
                why: reason,
              },
            ],
      ),
    )
    .filter(({ at }) => !Number.isNaN(at))
    .sort((a, b) => a.at - b.at);
}
