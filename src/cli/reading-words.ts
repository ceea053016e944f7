/** Lines of notes with what they are taken to say, for the terminal: by file, with line numbers. */
import { capital, sayDay, sayList, sayNumber } from "../language/index.ts";
import type { Day, Event, Garden, GardenSettings, LineReading } from "../model.ts";
import { type Names, printEvent } from "../records/index.ts";
import { wrapped } from "./wrapped-text.ts";

/** Letters of a question's readings. */
export const OFFERED: readonly string[] = ["a", "b", "c"];

/** `readings` in the order of the notes. */
export function sayReadings(
  readings: readonly LineReading[],
  garden: Pick<Garden, "notes" | "settings">,
  names: Names,
): readonly string[] {
  const days = new Map(garden.notes.map(({ place, day }) => [place.file, day]));
  const lines: string[] = [];
  for (const [file, all] of Map.groupBy(readings, ({ place }) => place.file)) {
    if (lines.length > 0) lines.push("");
    lines.push(file);
    const digits = Math.max(3, ...all.map(({ place }) => String(place.line).length));
    for (const reading of all) {
      lines.push(...wrapped(`${String(reading.place.line).padStart(digits)}  `, reading.text));
      lines.push(...saidBelow(reading, " ".repeat(digits + 2), garden.settings, days.get(file), names));
    }
  }
  return lines;
}

function saidBelow(
  { as, events, readings }: LineReading,
  indent: string,
  settings: Pick<GardenSettings, "language" | "units">,
  noteDay: Day | undefined,
  names: Names,
): readonly string[] {
  if (as === "story") return [`${indent}– story`];
  if (as === "facts")
    return events.flatMap((event) => wrapped(`${indent}= `, sayEvent(event, names, settings, noteDay)));
  if (readings.length === 0) return [`${indent}? it may hold a fact, and no reading explains it`];
  return readings.flatMap(({ line }, at) =>
    sayOffered(line, `${indent}${at === 0 ? "? " : "  "}${OFFERED[at] ?? "–"}) `),
  );
}

/** The plain line that says it, with the day where that is not the note's. */
export function sayEvent(
  event: Event,
  names: Names,
  { language, units }: Pick<GardenSettings, "language" | "units">,
  noteDay: Day | undefined,
): string {
  const line = printEvent({ ...event, more: [] }, names, units);
  if (event.day === noteDay) return line;
  return `${line}, on ${sayDay(event.day, { language, near: noteDay })}`;
}

/** The plain lines of one offered reading, one below the other. */
function sayOffered(line: string, before: string): readonly string[] {
  if (line.trim() === "") return wrapped(before, "holds no fact");
  const below = " ".repeat(Array.from(before).length);
  return line.split("\n").flatMap((plain, at) => wrapped(at === 0 ? before : below, plain));
}

/** "12 lines are facts, two are questions, 30 are story." */
export function sayHowRead(readings: readonly LineReading[]): string {
  const said = (["facts", "question", "story"] as const).flatMap((as) => {
    const count = readings.filter((reading) => reading.as === as).length;
    return count === 0 ? [] : [{ count, is: NAMES[as][count === 1 ? 0 : 1] }];
  });
  if (said.length === 0) return "No lines to read.";
  const [first, ...more] = said;
  const lines = `${first?.count} ${first?.count === 1 ? "line" : "lines"} ${first?.is}`;
  return `${sayList([lines, ...more.map(({ count, is }) => `${count} ${is}`)])}.`;
}

const NAMES = {
  facts: ["is facts", "are facts"],
  question: ["is a question", "are questions"],
  story: ["is story", "are story"],
} as const;

/** How many questions are open and how to settle them; undefined when none is. */
export function sayOpen(readings: readonly LineReading[]): string | undefined {
  const open = readings.filter(({ as }) => as === "question").length;
  if (open === 0) return undefined;
  return open === 1
    ? 'One line is a question to you: "plotreel settle" asks it.'
    : `${capital(sayNumber(open))} lines are questions to you: "plotreel settle" asks them one by one.`;
}
