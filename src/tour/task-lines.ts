/** What is still to do in a bed, as a note to the person rather than a sentence for viewers. */
import type { Day, Task } from "../model.ts";
import { capital } from "../timeline/index.ts";
import type { TaskLine } from "./brief.ts";
import { onDay, type Speech } from "./days-said.ts";
import { say } from "./sentence.ts";

/** "Net the brassicas: due on Monday." overdue ones: "Net the brassicas was due on Monday." */
export function taskLine(task: Task, speech: Speech): TaskLine {
  const what = task.what.trim().replace(/[.;,\s]+$/, "");
  const overdue = isOverdue(task.due, speech.day);
  const when =
    task.due === undefined
      ? "."
      : overdue
        ? ` was due ${onDay(task.due, speech)}.`
        : `, due ${onDay(task.due, speech)}.`;
  return { ...say(`${capital(what)}${when}`, [task]), what, due: task.due, overdue };
}

export function isOverdue(due: Day | undefined, day: Day): boolean {
  return due !== undefined && due < day;
}

/** Overdue first, then by due day, those without one last, oldest first. */
export function openTaskLines(tasks: readonly Task[], speech: Speech): readonly TaskLine[] {
  const key = ({ due, opened }: Task) => `${due ?? "9999"} ${opened}`;
  return tasks
    .filter((task) => task.done === undefined || task.done > speech.day)
    .toSorted((a, b) => (key(a) < key(b) ? -1 : 1))
    .map((task) => taskLine(task, speech));
}
