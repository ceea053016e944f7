/** A way to take a line, as the plain lines that are written when it is chosen; what it offers is what these give when they are read. */
import type { Event, OfferedReading } from "../../model.ts";
import { type LineContext, type NoteLine, readNoteLine } from "../note-line.ts";
import { printEvent } from "../print-event.ts";

/** Undefined where plain lines would say another thing, or nothing. */
export function offerOf(meant: readonly Event[], own: NoteLine, context: LineContext): OfferedReading | undefined {
  const offered = meant.map((event) => readBack(event, own, context));
  if (!offered.every((one) => one !== undefined)) return undefined;
  return { line: offered.map(({ plain }) => plain).join("\n"), events: offered.map(({ event }) => event) };
}

interface Plain {
  readonly plain: string;
  readonly event: Event;
}

function readBack(meant: Event, own: NoteLine, context: LineContext): Plain | undefined {
  const first = readPlain(plainLine(meant, context), meant, own, context);
  if (first === undefined || !saysAll(meant, first)) return undefined;
  // Read so, it may say more, such as the note's own bed or what was counted: that is shown too.
  const plain = plainLine(first, context);
  const event = readPlain(plain, meant, own, context);
  if (event === undefined || plainLine(event, context) !== plain) return undefined;
  // How many were eaten stands in the person's own words alone; whoever weighs the ways may ask for it.
  return { plain, event: { ...meant, ...said(event) } };
}

/** With its day where that is not the note's: a plain line has to say all that the event says. */
function plainLine(event: Event, { names, units, note }: LineContext): string {
  const said = printEvent(event, names, units);
  return event.day === note.day ? said : `${said} on ${event.day}`;
}

function readPlain(plain: string, meant: Event, own: NoteLine, context: LineContext): Event | undefined {
  const [event, another] = readNoteLine({ ...own, text: plain, more: [] }, context)?.events ?? [];
  if (event === undefined || another !== undefined || event.kind !== meant.kind) return undefined;
  const { id, text, place, verb, more } = meant;
  return { ...event, id, text, place, verb, more };
}

function said(event: Event): Event {
  return Object.fromEntries(Object.entries(event).filter(([, value]) => value !== undefined)) as unknown as Event;
}

/** Kinds whose plain line keeps words alone, so that plants and numbers in them are not told apart. */
const inWords: ReadonlySet<Event["kind"]> = new Set(["put up", "took down", "preserved", "soil test"]);

function saysAll(meant: Event, read: Event): boolean {
  const isSame = (key: keyof Event) => meant[key] === undefined || meant[key] === read[key];
  if (!isSame("day") || !isSame("bed") || !isSame("toBed") || !isSame("cause") || !isSame("nursery")) return false;
  return (
    inWords.has(meant.kind) ||
    (meant.variety === read.variety && (meant.variety !== undefined || meant.crop === read.crop))
  );
}
