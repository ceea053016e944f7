/** What viewers are still owed, and what is still to do, on a day. */
import type { Day, FollowUp, Garden, Task } from "../model.ts";

/** Promises made by a day and neither kept nor put off yet, the earliest due first; those without a due day after them, oldest first. */
export function openFollowUps(garden: Garden, on: Day): readonly FollowUp[] {
  return garden.followUps
    .filter(({ promisedOn, kept, putOff }) => promisedOn <= on && isAfter(kept, on) && isAfter(putOff, on))
    .sort((a, b) => inOrder(a.due, b.due) || inOrder(a.promisedOn, b.promisedOn) || inOrder(a.id, b.id));
}

/** Tasks of no bed in particular that are open on a day, in the same order. Those of a bed stand in its state. */
export function openTasks(garden: Garden, on: Day): readonly Task[] {
  return garden.tasks
    .filter((one) => one.opened <= on && (one.done === undefined || one.done > on))
    .sort((a, b) => inOrder(a.due, b.due) || inOrder(a.opened, b.opened) || inOrder(a.id, b.id));
}

function isAfter(day: Day | undefined, on: Day): boolean {
  return day === undefined || day > on;
}

function inOrder(a: string | undefined, b: string | undefined): number {
  if (a === b) return 0;
  if (a === undefined || b === undefined) return a === undefined ? 1 : -1;
  return a < b ? -1 : 1;
}
