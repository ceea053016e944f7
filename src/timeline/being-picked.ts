/** Whether plants are being picked: not for ever after their last picking. */
import { daysBetween } from "../calendar.ts";
import type { Day, Planting } from "../model.ts";

/** What is picked is picked again within days; after three weeks without, it rests or is over (common practice). */
const goesOn = 21;

export function isBeingPicked({ stage, picked, ended }: Planting, on: Day): boolean {
  const { last } = picked;
  return (
    stage === "picking" && (ended === undefined || ended > on) && last !== undefined && daysBetween(last, on) <= goesOn
  );
}
