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
}

export const showValues: Readonly<Record<ShowKind, ShowValue>> = {
  owed: { level: "must", value: 100 },
  "asked for": { level: "must", value: 95 },
  new: { level: "must", value: 80 },
  trouble: { level: "should", value: 65 },
  lost: { level: "should", value: 60 },
  "first picking": { level: "should", value: 58 },
  "first flower": { level: "should", value: 55 },
  "first fruit": { level: "should", value: 52 },
  "trouble over": { level: "should", value: 50 },
  trial: { level: "should", value: 48 },
  finished: { level: "should", value: 45 },
  picking: { level: "could", value: 42 },
  question: { level: "could", value: 40 },
  "due soon": { level: "could", value: 35 },
  up: { level: "could", value: 32 },
  grew: { level: "could", value: 25 },
  built: { level: "could", value: 22 },
  work: { level: "could", value: 20 },
  standing: { level: "could", value: 10 },
};

/** How many of each level a stop shows at most; what the person must show has no limit. */
export const mostPerStop: Readonly<Record<Exclude<Level, "must">, number>> = { should: 4, could: 2 };
