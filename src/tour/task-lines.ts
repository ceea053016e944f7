/** What is still to do in a bed, as a note to the person rather than a sentence for viewers. */
import { capital, onDay, say, type Voice } from "../language/index.ts";
import type { Day, Task } from "../model.ts";
import type { TaskLine } from "./brief.ts";

/** Longer tasks than this are named after their day: "net over the blueberries was due" already strains the ear. */
const shortTask = 5;

/** "Net the brassicas was due on Monday." "Due on 25 July: sow Purple Top Milan where the broad beans were." */
export function taskLine(task: Task, voice: Voice): TaskLine {
  const what = task.what.trim().replace(/[.;,\s]+$/, "");
  const overdue = isOverdue(task.due, voice.day);
  return { ...say(taskText(what, task.due, overdue, voice), [task]), what, due: task.due, overdue };
}

function taskText(what: string, due: Day | undefined, overdue: boolean, voice: Voice): string {
  if (due === undefined) return `${capital(what)}.`;
  const day = onDay(due, voice);
  if (what.split(" ").length > shortTask) {
    return overdue ? `Due ${day} and still open: ${what}.` : `${capital(`due ${day}`)}: ${what}.`;
  }
  return overdue ? `${capital(what)} was due ${day}.` : `${capital(what)}, due ${day}.`;
}

export function isOverdue(due: Day | undefined, day: Day): boolean {
  return due !== undefined && due < day;
}

/** Overdue first, then by due day, those without one last, oldest first. */
export function openTaskLines(tasks: readonly Task[], voice: Voice): readonly TaskLine[] {
  const key = ({ due, opened }: Task) => `${due ?? "9999"} ${opened}`;
  return tasks
    .filter((task) => task.done === undefined || task.done > voice.day)
    .toSorted((a, b) => (key(a) < key(b) ? -1 : 1))
    .map((task) => taskLine(task, voice));
}
