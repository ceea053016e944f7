/** What is still to do in a bed, as a note to the person rather than a sentence for viewers. */
import type { Day, Task } from "../model.ts";
import { capital } from "../timeline/index.ts";
import type { TaskLine } from "./brief.ts";
import { onDay, type Speech } from "./days-said.ts";
import { say } from "./sentence.ts";

/** Longer tasks than this are named after their day: "net over the blueberries was due" already strains the ear. */
const shortTask = 5;

/** "Net the brassicas was due on Monday." "Due on 25 July: sow Purple Top Milan where the broad beans were." */
export function taskLine(task: Task, speech: Speech): TaskLine {
  const what = task.what.trim().replace(/[.;,\s]+$/, "");
  const overdue = isOverdue(task.due, speech.day);
  return { ...say(taskText(what, task.due, overdue, speech), [task]), what, due: task.due, overdue };
}

function taskText(what: string, due: Day | undefined, overdue: boolean, speech: Speech): string {
  if (due === undefined) return `${capital(what)}.`;
  const day = onDay(due, speech);
  if (what.split(" ").length > shortTask) {
    return overdue ? `Due ${day} and still open: ${what}.` : `${capital(`due ${day}`)}: ${what}.`;
  }
  return overdue ? `${capital(what)} was due ${day}.` : `${capital(what)}, due ${day}.`;
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
