/** What lines are taken to say, as data for programs: names as their titles, absent what is absent. */
import type { Count, Event, EventKind, LineReading, PickUnit } from "../model.ts";
import { idOfName, type Names } from "./names.ts";

export interface ReadingData {
  readonly file: string;
  readonly line: number;
  /** As written, on one line. */
  readonly text: string;
  readonly as: LineReading["as"];
  readonly events: readonly EventData[];
  /** Of a question: up to three ways to take the line, the likeliest first. */
  readonly readings: readonly { readonly line: string; readonly events: readonly EventData[] }[];
}

export interface EventData {
  readonly kind: EventKind;
  /** As the line calls it, when that is another name than the table's first. */
  readonly crop?: string;
  readonly variety?: string;
  /** The lower end of "8 to 10". */
  readonly count?: Count["value"];
  readonly unit?: PickUnit;
  readonly grams?: number;
  readonly litres?: number;
  readonly centimetres?: number;
  readonly celsius?: number;
  readonly ph?: number;
  readonly bed?: string;
  readonly toBed?: string;
  readonly nursery?: boolean;
  readonly day: string;
  readonly due?: string;
  readonly cause?: string;
  readonly reason?: string;
  readonly what?: string;
}

export function readingData({ place, text, as, events, readings }: LineReading, names: Names): ReadingData {
  return {
    file: place.file,
    line: place.line,
    text,
    as,
    events: events.map((event) => eventData(event, names, "")),
    readings: readings.map((offered) => ({
      line: offered.line,
      events: offered.events.map((event) => eventData(event, names, offered.line)),
    })),
  };
}

/** `line` is the plain line that says it, where there is one. */
function eventData(event: Event, names: Names, line: string): EventData {
  const crop = event.crop ?? (event.variety === undefined ? undefined : names.cropOf(event.variety));
  const all: { readonly [key in keyof EventData]: EventData[key] | undefined } = {
    kind: event.kind,
    crop: (event.crop && names.cropWordIn(event.crop, event.text)) ?? names.crop(crop)?.name ?? crop,
    variety: titleIn(names, "variety", event.variety, line),
    count: event.count?.value,
    unit: event.unit,
    grams: event.grams,
    litres: event.litres,
    centimetres: event.heightCm ?? event.girthCm,
    celsius: event.celsius,
    ph: event.ph,
    bed: titleIn(names, "bed", event.bed, line),
    toBed: titleIn(names, "bed", event.toBed, line),
    nursery: event.nursery,
    day: event.day,
    due: event.due,
    cause: event.cause,
    reason: event.reason,
    what: event.what,
  };
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined)) as unknown as EventData;
}

/** A name that only an offered reading has is no record's: its plain line holds it, a variety in quotation marks. */
function titleIn(names: Names, kind: "bed" | "variety", id: string | undefined, line: string): string | undefined {
  if (id === undefined) return undefined;
  const title = names.title(kind, id);
  if (title !== id) return title;
  const quoted = [...line.matchAll(/"([^"]+)"/g)].map(([, name = ""]) => name);
  return quoted.find((name) => idOfName(name) === id) ?? title;
}
