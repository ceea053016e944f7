/** What is to do and what is owed to viewers, as field pages show it: with its day, its bed and the line that says so. */
import { capital, fullStop } from "../../language/index.ts";
import type { Bed, Day, FollowUp, Task } from "../../model.ts";
import type { Jump } from "./note-pages.ts";
import type { FieldTask, Link } from "./shapes.ts";
import type { View } from "./view.ts";

/** Open tasks of a bed, the first due first. */
export function tasksOf(view: View, bed: Bed): readonly Task[] {
  const open = (view.states.get(bed.id)?.tasks ?? []).filter(({ done }) => done === undefined);
  return open.map((task) => ({ ...task, bed: bed.id })).sort(byDue);
}

export function byDue(a: Task, b: Task): number {
  const left = `${a.due ?? "9999"} ${a.opened} ${a.id}`;
  const right = `${b.due ?? "9999"} ${b.opened} ${b.id}`;
  return left < right ? -1 : left > right ? 1 : 0;
}

export function fieldTask(view: View, task: Task, jump: Jump): FieldTask {
  return {
    what: fullStop(capital(task.what)),
    bed: bedLink(view, task.bed),
    ...due(view, task.due),
    from: jump(task.place.file, task.place.line),
  };
}

export function fieldFollowUp(view: View, followUp: FollowUp, jump: Jump): FieldTask {
  const { garden } = view;
  const film = followUp.episode === undefined ? undefined : garden.episodes.get(followUp.episode)?.title;
  const said = view.words.field.promised(view.locale.day(followUp.promisedOn, view.today), film);
  return {
    what: `${fullStop(capital(followUp.what))} ${said}`,
    bed: bedLink(view, followUp.bed),
    ...due(view, followUp.due),
    from: jump(followUp.place.file, followUp.place.line),
  };
}

function due(view: View, day: Day | undefined): Pick<FieldTask, "due" | "isLate"> {
  if (day === undefined) return { due: undefined, isLate: false };
  const { due: said } = view.words.field;
  const isLate = day < view.today;
  const when = view.locale.weekdayAndDay(day, view.today);
  return { due: day === view.today ? said.today : isLate ? said.past(when) : said.coming(when), isLate };
}

export function bedLink(view: View, id: string | undefined): Link | undefined {
  const bed = id === undefined ? undefined : view.garden.beds.get(id);
  return bed === undefined ? undefined : { href: view.links.bed(bed.id), text: bed.title };
}
