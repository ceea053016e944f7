/** What a tap, a hold and the sheet make of a shot: takes with their worth and time, or none and why. */
import type { ShotState, Take, TakeMark } from "../../../model.ts";
import { COVER, type Kept, type ListedShot, type ListedStop, type Tick } from "./shapes.ts";

export const untouched: Tick = { takes: [], at: "" };

export const nothingKept: Kept = { version: 2, stop: COVER, beds: {} };

/** Lists made before 0.2.0 kept a tick under the shot's words. */
export function tickOf(kept: Kept, stop: ListedStop, shot: ListedShot): Tick {
  const ticks = kept.beds[stop.bed]?.ticks;
  return ticks?.[shot.key] ?? ticks?.[shot.words] ?? untouched;
}

export function withTick(kept: Kept, stop: ListedStop, shot: ListedShot, tick: Tick): Kept {
  const bed = kept.beds[stop.bed] ?? { ticks: {} };
  return { ...kept, beds: { ...kept.beds, [stop.bed]: { ...bed, ticks: { ...bed.ticks, [shot.key]: tick } } } };
}

export function withNote(kept: Kept, stop: ListedStop, note: string): Kept {
  const bed = kept.beds[stop.bed] ?? { ticks: {} };
  return { ...kept, beds: { ...kept.beds, [stop.bed]: { ...bed, note } } };
}

/** One take that can be used is enough; takes without one are to be made again. */
export function stateOf({ takes, skipped }: Tick): ShotState | "open" {
  if (skipped !== undefined) return "skipped";
  if (takes.length === 0) return "open";
  return takes.some(({ mark }) => mark !== "no good") ? "filmed" : "retake";
}

/** One more take; a shot that was left out is not any more. */
export function taken({ takes }: Tick, mark: TakeMark, at: string, why = ""): Tick {
  return { takes: [...takes, { at, mark, ...(why === "" ? {} : { why }) }], at };
}

/** A tap on a shot that is filmed takes the take before it back. */
export function tapped(tick: Tick, at: string): Tick {
  return stateOf(tick) === "filmed" ? takenBack(tick, at) : taken(tick, "good", at);
}

/** The take just made is no good. One that was ticked already is counted already. */
export function toRetake(tick: Tick, at: string): Tick {
  const last = tick.takes.at(-1);
  if (tick.skipped !== undefined || last === undefined || last.mark === "no good") return taken(tick, "no good", at);
  return marked(tick, tick.takes.length - 1, "no good", at);
}

/** The last thing done, undone: a skip, else a take. */
export function takenBack({ takes, skipped }: Tick, at: string): Tick {
  return { takes: skipped === undefined ? takes.slice(0, -1) : takes, at };
}

export function marked({ takes, skipped }: Tick, take: number, mark: TakeMark, at: string): Tick {
  return { takes: takes.map((one, index) => (index === take ? { ...one, mark } : one)), skipped, at };
}

/** Why the last take is what it is; nothing where there is no reason any more. */
export function explained({ takes, skipped }: Tick, why: string, at: string): Tick {
  const last = takes.at(-1);
  if (last === undefined) return { takes, skipped, at };
  const { why: _, ...bare } = last;
  return { takes: [...takes.slice(0, -1), why === "" ? bare : { ...bare, why }], skipped, at };
}

export function skipped({ takes }: Tick, reason: string, at: string): Tick {
  return { takes, skipped: reason === "" ? {} : { reason }, at };
}

const marks: readonly TakeMark[] = ["good", "hold", "no good"];

/** What a tap on a take makes of it. */
export function nextMark(mark: TakeMark | undefined): TakeMark {
  return marks[(marks.indexOf(mark ?? "no good") + 1) % marks.length] ?? "good";
}

/** "9:24:31, no good: wind" */
export function sayTake({ at, mark, why }: Take): string {
  const worth = mark === undefined ? undefined : `${mark}${why === undefined ? "" : `: ${why}`}`;
  return [at?.replace(/^0/, ""), worth].filter((part) => part !== undefined).join(", ");
}

export function sayTick(tick: Tick): string {
  const { takes, skipped: left } = tick;
  const many = takes.length > 1;
  switch (stateOf(tick)) {
    case "filmed": {
      const best = bestOf(takes);
      const held = takes[best]?.mark === "hold" ? ", on hold" : "";
      return `Filmed${many ? ` on take ${best + 1}` : ""}${held}`;
    }
    case "retake": {
      const why = takes.at(-1)?.why;
      return `Film again${many ? `, ${takes.length} takes so far` : ""}${why === undefined ? "" : `: ${why}`}`;
    }
    case "skipped":
      return left?.reason === undefined ? "Skipped" : `Skipped: ${left.reason}`;
    case "open":
      return "";
  }
}

/** The last good take, else the last that can be used. */
export function bestOf(takes: readonly Take[]): number {
  const good = takes.findLastIndex(({ mark }) => mark === "good");
  return good >= 0 ? good : takes.findLastIndex(({ mark }) => mark !== "no good");
}

/** "3 of 5 filmed, 1 to film again" */
export function saySoFar(kept: Kept, stop: ListedStop): string {
  const states = stop.shots.map((shot) => stateOf(tickOf(kept, stop, shot)));
  if (states.length === 0) return "No shots listed";
  const count = (state: string) => states.filter((each) => each === state).length;
  const parts = [
    `${count("filmed")} of ${states.length} filmed`,
    count("retake") === 0 ? "" : `${count("retake")} to film again`,
    count("skipped") === 0 ? "" : `${count("skipped")} skipped`,
  ];
  return parts.filter((part) => part !== "").join(", ");
}
