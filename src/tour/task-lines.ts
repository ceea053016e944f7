/** What is still to do in a bed, as a note to the person rather than a sentence for viewers. */
import { capital, onDay, say, sinceDay, type Voice } from "../language/index.ts";
import type { Day, Task } from "../model.ts";
import type { TaskLine } from "./brief.ts";

/** "Due since Monday: net the brassicas." "Due on 25 July: sow Purple Top Milan where the broad beans were." */
export function taskLine(task: Task, voice: Voice): TaskLine {
  const what = task.what.trim().replace(/[.;,\s]+$/, "");
  const overdue = isOverdue(task.due, voice.day);
  return { ...say(taskText(what, task.due, overdue, voice), [task]), what, due: task.due, overdue };
}

function taskText(what: string, due: Day | undefined, overdue: boolean, voice: Voice): string {
  if (due === undefined) return `${capital(what)}.`;
  return overdue ? `Due ${sinceDay(due, voice)}: ${what}.` : `${capital(`due ${onDay(due, voice)}`)}: ${what}.`;
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
