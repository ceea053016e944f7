/**
 * How strongly each kind of thing asks to be shown.
 *
 * Common practice of people who film their gardens, not science: what viewers were told they would see comes first, then
 * what they have never seen, then what went well or wrong, then what goes on as before. `weights` in garden.md multiply
 * a row's value.
 */
import type { Level, ShowKind } from "./brief.ts";

interface ShowValue {
  readonly level: Level;
  readonly value: number;
  /** The reason in a word or two, beside the level: "Must, owed". */
  readonly tag: string;
}

export const showValues: Readonly<Record<ShowKind, ShowValue>> = {
  owed: { level: "must", value: 100, tag: "owed" },
  "asked for": { level: "must", value: 95, tag: "asked for" },
  new: { level: "must", value: 80, tag: "new" },
  trouble: { level: "should", value: 65, tag: "trouble" },
  lost: { level: "should", value: 60, tag: "lost" },
  "first picking": { level: "should", value: 58, tag: "first picking" },
  "first flower": { level: "should", value: 55, tag: "first flower" },
  "first fruit": { level: "should", value: 52, tag: "first fruit" },
  "trouble over": { level: "should", value: 50, tag: "trouble over" },
  trial: { level: "should", value: 61, tag: "trial" },
  finished: { level: "should", value: 45, tag: "finished" },
  picking: { level: "could", value: 42, tag: "being picked" },
  question: { level: "could", value: 40, tag: "viewers ask" },
  "due soon": { level: "could", value: 35, tag: "ready soon" },
  up: { level: "could", value: 32, tag: "up" },
  grew: { level: "could", value: 25, tag: "growth" },
  built: { level: "could", value: 22, tag: "built" },
  work: { level: "could", value: 20, tag: "work" },
  standing: { level: "could", value: 10, tag: "as it stands" },
};

/** Changes that are no news to viewers: they stand in the brief as tasks and follow-ups. */
export const quietChanges: ReadonlySet<string> = new Set(["to do", "done", "overdue", "promised", "asked"]);

/** How many of each level a stop shows at most; what the person must show has no limit. */
export const mostPerStop: Readonly<Record<Exclude<Level, "must">, number>> = { should: 4, could: 2 };

/** "Must, owed": what stands before the sentence. */
export function levelWords({ level, kind }: { readonly level: Level; readonly kind: ShowKind }): string {
  return `${level.charAt(0).toUpperCase()}${level.slice(1)}, ${showValues[kind].tag}`;
}
