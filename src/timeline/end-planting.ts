/** What the end of a planting leaves behind. */
import type { ChangeEffect, Day, Event, Planting, Stage } from "../model.ts";
import type { Growing, Ledger } from "./ledger.ts";
import { become, takeOut } from "./living-plantings.ts";

/** Takes a planting out of the living and says what that leaves behind. */
export function endPlanting(
  ledger: Ledger,
  growing: Growing,
  day: Day,
  stage: Extract<Stage, "finished" | "lost">,
  patch: Partial<Planting> = {},
  event?: Event,
): ChangeEffect {
  const troubles = takeOut(ledger, growing, day).map(({ trouble }) => trouble.now);
  const now = become(growing, { ...patch, ended: day, stage, stageSince: day }, event);
  return troubles.length === 0 ? { plantings: [now] } : { plantings: [now], troubles };
}

/** The effect of several endings that one line made. */
export function joined(effects: readonly ChangeEffect[]): ChangeEffect {
  const troubles = effects.flatMap((effect) => effect.troubles ?? []);
  const plantings = effects.flatMap((effect) => effect.plantings ?? []);
  return troubles.length === 0 ? { plantings } : { plantings, troubles };
}
