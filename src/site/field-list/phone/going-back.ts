/** What to go back for while the light is there: takes that were no good, musts at stops already left, what was skipped. */
import { at, rowButton } from "./page.ts";
import type { Kept, ListData } from "./shapes.ts";
import { sayTick, stateOf, tickOf } from "./ticks.ts";

export interface ToGoBackFor {
  /** Number of the stop, from 0. */
  readonly stop: number;
  readonly words: string;
  readonly said: string;
}

const rank = { must: 0, should: 1, could: 2 } as const;

/** Stop by stop, what matters most first, as the wrap lists it at home; what could be shown and was skipped is let be. */
export function toGoBackFor({ stops }: Pick<ListData, "stops">, kept: Kept): readonly ToGoBackFor[] {
  return stops.flatMap((stop, index) => {
    const open = stop.shots.flatMap((shot) => {
      const tick = tickOf(kept, stop, shot);
      const state = stateOf(tick);
      const left = state === "open" && shot.level === "must" && index < kept.stop;
      const wasPutOff = state === "skipped" && (shot.level === "must" || shot.level === "should");
      if (state !== "retake" && !left && !wasPutOff) return [];
      const words = `${shot.id} ${shot.text}`;
      return [{ stop: index, words, said: left ? "Not filmed" : sayTick(tick), level: shot.level }];
    });
    return open.toSorted((a, b) => rank[a.level ?? "could"] - rank[b.level ?? "could"]);
  });
}

export function drawGoingBack(list: ListData, kept: Kept, go: (stop: number) => void): void {
  const open = toGoBackFor(list, kept);
  at("again").hidden = open.length === 0;
  at("again-list").replaceChildren(...open.map(({ stop, words, said }) => rowButton(words, said, () => go(stop))));
}
