/** What goes home from the phone: one file of ticks, and one note whose list items are draft log lines. */

import type { ShotState, Take } from "../../../model.ts";
import type { PlanToKeep } from "../../../tour/index.ts";
import { dayOf, instantOf } from "./plan-clock.ts";
import type { Kept, ListData, ListedShot, ListedStop } from "./shapes.ts";
import { bestOf, stateOf, tickOf } from "./ticks.ts";

/** The shape that the records folder reads as `field-list.json`. */
export interface TakenHome {
  readonly plotreel: "field list";
  readonly version: 2;
  readonly episode: string;
  readonly day: string;
  readonly exported: string;
  readonly stops: readonly {
    readonly bed: string;
    readonly ticks: readonly TickHome[];
    readonly note?: string;
  }[];
  /** What the list was made from. */
  readonly plan: PlanToKeep;
}

interface TickHome {
  readonly shot: string;
  readonly key: string;
  readonly words: string;
  readonly state: ShotState;
  readonly reason?: string;
  readonly takes: readonly Take[];
  readonly at: string;
}

export function takenHome(list: ListData, kept: Kept, now: Date): TakenHome {
  return {
    plotreel: "field list",
    version: 2,
    episode: list.tour,
    day: kept.day ?? dayOf(now),
    exported: instantOf(now),
    stops: bedsOf(list).map(({ bed, stops }) => {
      const note = noteLines(kept, bed).join("\n");
      const ticks = stops.flatMap((stop) =>
        stop.shots.flatMap(({ id: shot, key, words, text }): readonly TickHome[] => {
          const tick = tickOf(kept, stop, { id: shot, key, words, text });
          const state = stateOf(tick);
          const reason = tick.skipped?.reason;
          if (state === "open") return [];
          return [
            { shot, key, words, state, ...(reason === undefined ? {} : { reason }), takes: tick.takes, at: tick.at },
          ];
        }),
      );
      return { bed, ticks, ...(note === "" ? {} : { note }) };
    }),
    plan: list.plan,
  };
}

/** A note of the day it was filmed: quick notes as list items below their beds, and what is left to film as story. */
export function noteHome(list: ListData, kept: Kept, now: Date): string {
  const parts = bedsOf(list).flatMap(({ bed, title, stops }) => {
    const lines = noteLines(kept, bed).map((line) => `- ${plainStart(line)}`);
    const shots = stops.flatMap((stop) => stop.shots.map((shot) => ({ shot, tick: tickOf(kept, stop, shot) })));
    const because = (shot: ListedShot, why: string | undefined) =>
      why === undefined ? named(shot) : `${named(shot)} (${escaped(why)})`;
    const again = shots
      .filter(({ tick }) => stateOf(tick) === "retake")
      .map(({ shot, tick }) => because(shot, tick.takes.at(-1)?.why));
    const left = shots
      .filter(({ tick }) => stateOf(tick) === "skipped")
      .map(({ shot, tick }) => because(shot, tick.skipped?.reason));
    const told = [
      ...(again.length === 0 ? [] : [`To film again: ${again.join("; ")}.`]),
      ...(left.length === 0 ? [] : [`Skipped: ${left.join("; ")}.`]),
    ];
    if (lines.length + told.length === 0) return [];
    return [`## ${escaped(title)}`, ...(lines.length === 0 ? [] : [lines.join("\n")]), ...told];
  });
  const front = `---\ndate: ${kept.day ?? dayOf(now)}\ntitle: ${JSON.stringify(`Filmed: ${list.title}`)}\n---`;
  return `${[front, sayCounts(list, kept), ...parts].join("\n\n")}\n`;
}

/** "Filmed 31 of 38 shots, from 9:17 to 10:41." */
export function sayCounts(list: ListData, kept: Kept): string {
  const ticks = list.stops.flatMap((stop) => stop.shots.map((shot) => tickOf(kept, stop, shot)));
  const times = ticks
    .filter((tick) => stateOf(tick) === "filmed")
    .map(({ takes, at }) => (takes[bestOf(takes)]?.at ?? at).slice(0, 5).replace(/^0/, ""));
  if (times.length === 0) return "No shot is ticked as filmed.";
  const ordered = times.sort((a, b) => Number(a.replace(":", "")) - Number(b.replace(":", "")));
  const [first, last] = [ordered[0], ordered.at(-1)];
  const span = first === last ? `at ${first}` : `from ${first} to ${last}`;
  return `Filmed ${times.length} of ${ticks.length} ${ticks.length === 1 ? "shot" : "shots"}, ${span}.`;
}

/** A bed that two stops show comes home once. */
function bedsOf(list: ListData) {
  const beds = new Map<string, { bed: string; title: string; stops: ListedStop[] }>();
  for (const stop of list.stops) {
    const known = beds.get(stop.bed);
    if (known === undefined) beds.set(stop.bed, { bed: stop.bed, title: stop.title, stops: [stop] });
    else known.stops.push(stop);
  }
  return [...beds.values()];
}

function noteLines(kept: Kept, bed: string): readonly string[] {
  const lines = (kept.beds[bed]?.note ?? "").split("\n").map((line) => line.replace(/^\s*[-*•]\s+/, "").trim());
  return lines.filter((line) => line !== "");
}

/** A line stays the words it is: nothing at its front may make a heading, a quotation or a list of its own. */
function plainStart(line: string): string {
  return line.replace(/^(?=[#>+=~`|-])/, "\\").replace(/^(\d+)([.)])(?=\s)/, "$1\\$2");
}

function named(shot: { readonly id: string; readonly text: string }): string {
  return `${shot.id}, ${escaped(shot.text.replace(/[.;]\s*$/, ""))}`;
}

function escaped(words: string): string {
  return words.replace(/[\\`*_[\]<>#]/g, "\\$&");
}
