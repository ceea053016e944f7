/**
 * How strongly each kind of thing asks to be shown, and how it is filmed.
 *
 * Common practice of people who film their gardens, not science: what viewers were told they would see comes first, then
 * what they have never seen, then what went well or wrong, then what goes on as before. The steps between the levels are
 * wide, because the fit to the film's length adds values up: three small things must not push out a large one merely by
 * being short. `weights` in garden.md multiply a row's value.
 */

import type { Handling, Level } from "../films/index.ts";
import type { ShowKind } from "./brief.ts";

interface ShowValue {
  readonly level: Level;
  readonly value: number;
  /** The reason in a word or two, beside the level: "Must, owed". */
  readonly tag: string;
  readonly filmed: Handling;
}

export const showValues: Readonly<Record<ShowKind, ShowValue>> = {
  owed: { level: "must", value: 100, tag: "owed", filmed: "demonstration" },
  new: { level: "must", value: 80, tag: "new", filmed: "close-up" },
  trouble: { level: "should", value: 75, tag: "trouble", filmed: "close-up" },
  trial: { level: "should", value: 70, tag: "trial", filmed: "comparison" },
  going: { level: "should", value: 68, tag: "soon gone", filmed: "close-up" },
  "only picking": { level: "should", value: 62, tag: "the harvest", filmed: "close-up" },
  "first picking": { level: "should", value: 62, tag: "first picking", filmed: "close-up" },
  lost: { level: "should", value: 60, tag: "lost", filmed: "close-up" },
  "first flower": { level: "should", value: 58, tag: "first flower", filmed: "close-up" },
  "first time": { level: "should", value: 55, tag: "first time here", filmed: "close-up" },
  "first fruit": { level: "should", value: 52, tag: "first fruit", filmed: "close-up" },
  "trouble over": { level: "should", value: 50, tag: "trouble over", filmed: "close-up" },
  ready: { level: "should", value: 45, tag: "ready", filmed: "close-up" },
  finished: { level: "should", value: 36, tag: "finished", filmed: "to camera" },
  question: { level: "could", value: 26, tag: "viewers ask", filmed: "to camera" },
  picking: { level: "could", value: 24, tag: "being picked", filmed: "close-up" },
  "side by side": { level: "could", value: 22, tag: "then and now", filmed: "comparison" },
  "last year": { level: "could", value: 20, tag: "against last year", filmed: "to camera" },
  "due soon": { level: "could", value: 18, tag: "ready soon", filmed: "close-up" },
  "in flower": { level: "could", value: 18, tag: "in flower", filmed: "close-up" },
  up: { level: "could", value: 16, tag: "up", filmed: "close-up" },
  grew: { level: "could", value: 12, tag: "growth", filmed: "comparison" },
  built: { level: "could", value: 10, tag: "built", filmed: "close-up" },
  "a year ago": { level: "could", value: 8, tag: "a year ago", filmed: "to camera" },
  work: { level: "could", value: 6, tag: "work", filmed: "to camera" },
  standing: { level: "could", value: 4, tag: "as it stands", filmed: "close-up" },
};

/**
 * What viewers know already is worth less, what no film has named is worth more. Only films with captions can tell, so
 * in a garden without any, every row keeps its value.
 */
export const novelty = { neverNamed: 1.2, namedLastTime: 0.9 } as const;

/** The second thing of a kind at one stop is worth less than the first, the third less again. */
export const repeated = 0.85;

/** The same plants told of a second time: viewers have just looked at them. */
export const toldAgain = 0.7;

/** Changes that are no news to viewers: they stand in the brief as tasks and follow-ups, or are only assumed or planned. */
export const quietChanges: ReadonlySet<string> = new Set([
  ...["to do", "done", "overdue", "promised", "asked"],
  ...["plan", "taken to be over"],
]);

/**
 * How many of each level a stop offers at most; what the person must show has no limit. A longer list is not read in the
 * garden, however long the film may be.
 */
export const mostPerStop: Readonly<Record<Exclude<Level, "must">, number>> = { should: 4, could: 3 };

/** "Must, owed": what stands before the sentence. */
export function levelWords({ level, kind }: { readonly level: Level; readonly kind: ShowKind }): string {
  return `${level.charAt(0).toUpperCase()}${level.slice(1)}, ${showValues[kind].tag}`;
}
