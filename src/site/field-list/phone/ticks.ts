/** What a tap, a hold and a skip make of a shot. */
import type { Kept, ListedShot, ListedStop, Tick } from "./shapes.ts";

export const untouched: Tick = { state: "open", takes: 0, at: "" };

export const nothingKept: Kept = { version: 1, stop: 0, beds: {} };

export function tickOf(kept: Kept, stop: ListedStop, shot: ListedShot): Tick {
  return kept.beds[stop.bed]?.ticks[shot.key] ?? untouched;
}

export function withTick(kept: Kept, stop: ListedStop, shot: ListedShot, tick: Tick): Kept {
  const bed = kept.beds[stop.bed] ?? { ticks: {} };
  return { ...kept, beds: { ...kept.beds, [stop.bed]: { ...bed, ticks: { ...bed.ticks, [shot.key]: tick } } } };
}

export function withNote(kept: Kept, stop: ListedStop, note: string): Kept {
  const bed = kept.beds[stop.bed] ?? { ticks: {} };
  return { ...kept, beds: { ...kept.beds, [stop.bed]: { ...bed, note } } };
}

/** One more take, and it is good. */
export function filmed(tick: Tick, at: string): Tick {
  return { state: "filmed", takes: tick.takes + 1, at };
}

/** A tap on a shot that is filmed takes the tap before it back. */
export function tapped(tick: Tick, at: string): Tick {
  return tick.state === "filmed" ? { state: "open", takes: tick.takes - 1, at } : filmed(tick, at);
}

/** The take just made is no good. One that was ticked already is counted already. */
export function toRetake(tick: Tick, at: string): Tick {
  return { state: "retake", takes: tick.state === "filmed" ? tick.takes : tick.takes + 1, at };
}

export function skipped(tick: Tick, reason: string, at: string): Tick {
  return { state: "skipped", takes: tick.takes, at, ...(reason === "" ? {} : { reason }) };
}

/** Takes counted by hand. The first makes an open shot a filmed one. */
export function counted(tick: Tick, takes: number, at: string): Tick {
  if (takes < 1) return tick.state === "skipped" ? { ...tick, takes: 0, at } : { ...untouched, at };
  return { ...tick, state: tick.state === "open" ? "filmed" : tick.state, takes: Math.min(takes, 99), at };
}

export function sayTick({ state, takes, reason }: Tick): string {
  if (state === "filmed") return takes > 1 ? `Filmed on take ${takes}` : "Filmed";
  if (state === "retake") return takes > 1 ? `Film again, ${takes} takes so far` : "Film again";
  if (state === "skipped") return reason === undefined ? "Skipped" : `Skipped: ${reason}`;
  return "";
}

/** "3 of 5 filmed, 1 to film again" */
export function saySoFar(kept: Kept, stop: ListedStop): string {
  const states = stop.shots.map((shot) => tickOf(kept, stop, shot).state);
  if (states.length === 0) return "No shots listed";
  const count = (state: string) => states.filter((each) => each === state).length;
  const parts = [
    `${count("filmed")} of ${states.length} filmed`,
    count("retake") === 0 ? "" : `${count("retake")} to film again`,
    count("skipped") === 0 ? "" : `${count("skipped")} skipped`,
  ];
  return parts.filter((part) => part !== "").join(", ");
}
