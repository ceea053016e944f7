/** The threads of a stretch of days, the most worth first: at most one of each crop, and no more than a film holds. */
import { cropOf } from "../../crop-of.ts";
import type { Material } from "../material.ts";
import { changedBedThread } from "./changed-bed.ts";
import { comingThread } from "./coming.ts";
import { cropThreads, newThreads, surpriseThreads } from "./did-well.ts";
import { failedThreads } from "./failed.ts";
import { debtThread } from "./owed.ts";
import { telling } from "./telling.ts";
import type { Part, Thread, ThreadKind } from "./thread.ts";
import { trialThreads } from "./trials.ts";
import { triedThreads } from "./tried.ts";
import { yearThread } from "./whole-year.ts";

const mostThreads = 10;
/** Of one kind, so that no year is told as a list of losses. */
const mostOfKind: Readonly<Record<ThreadKind, number>> = {
  tried: 4,
  failed: 3,
  surprise: 2,
  crop: 3,
  new: 2,
  bed: 1,
  trial: 2,
  year: 1,
  debt: 1,
  next: 1,
};

export function threadsOf(material: Material, forViewers: boolean): readonly Thread[] {
  const told = telling(material, forViewers);
  const found = [
    ...triedThreads(told),
    ...failedThreads(told),
    ...surpriseThreads(told),
    ...newThreads(told),
    ...cropThreads(told),
    ...changedBedThread(told),
    ...trialThreads(told),
    ...yearThread(told),
    ...debtThread(told),
  ].map(openly);
  const best = found.flatMap((one) => one ?? []).toSorted((a, b) => b.worth - a.worth);
  const chosen: Thread[] = [];
  const crops = new Set<string>();
  for (const thread of best) {
    const crop = cropOf(material.book.garden, thread.about)?.id;
    if (!tells(thread) || (crop !== undefined && crops.has(crop))) continue;
    if (chosen.filter(({ kind }) => kind === thread.kind).length >= mostOfKind[thread.kind]) continue;
    if (crop !== undefined) crops.add(crop);
    chosen.push(thread);
  }
  const coming = comingThread(told, chosen).flatMap((one) => openly(one) ?? []);
  // What comes next ends the film, and is never what falls out.
  return [...chosen.slice(0, mostThreads - coming.length), ...coming];
}

/** Without what is private; a thread that begins with it is none. */
function openly(thread: Thread): Thread | undefined {
  const open = <Value>(one: Part<Value> | undefined) => (one?.private === true ? undefined : one);
  if (thread.lead.private) return undefined;
  return {
    ...thread,
    before: open(thread.before),
    now: thread.now.filter((one) => !one.private),
    figure: open(thread.figure),
    notes: thread.notes.filter((one) => !one.private),
    next: open(thread.next),
  };
}

/** A name alone is no thread. */
function tells({ kind, now, figure, notes, before }: Thread): boolean {
  return kind === "debt" || now.length + notes.length > 0 || figure !== undefined || before !== undefined;
}
