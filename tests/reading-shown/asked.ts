/** Questions made by hand, as a reader would ask them. */
import type { Event, LineReading, OfferedReading } from "../../src/model.ts";

export const place = { file: "notes/2026-07-18-long-bed.md", line: 7, column: 3 };

export function event(kind: Event["kind"], facts: Partial<Event> = {}): Event {
  return {
    id: `${place.file}:${place.line}`,
    kind,
    day: "2026-07-18",
    verb: kind,
    text: "",
    place,
    private: false,
    more: [],
    ...facts,
  };
}

export function offered(line: string, ...events: readonly Event[]): OfferedReading {
  return { line, events };
}

export function question(
  text: string,
  readings: readonly OfferedReading[],
  at: Partial<LineReading> = {},
): LineReading {
  return { place, lastLine: place.line, text, as: "question", events: [], readings, private: false, ...at };
}

export function facts(text: string, events: readonly Event[], at: Partial<LineReading> = {}): LineReading {
  return { ...question(text, [], at), as: "facts", events };
}

export function story(text: string, at: Partial<LineReading> = {}): LineReading {
  return { ...question(text, [], at), as: "story" };
}
