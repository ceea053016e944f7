/** The weeks ahead as an iCalendar file (RFC 5545): whole days, the same bytes for the same records and day. */

import { createEvents, type DateArray, type EventAttributes } from "ics";
import { addDays } from "../calendar.ts";
import { capital } from "../language/index.ts";
import type { Day, GardenSettings } from "../model.ts";
import type { Ahead, Deadline, Expected } from "../tour/index.ts";

/** Private things stay out: calendars are shared more often than notes. */
export function aheadCalendar(ahead: Ahead, { name }: GardenSettings): string {
  const entries = [...ahead.deadlines, ...ahead.expected].filter((entry) => !entry.private);
  if (entries.length === 0) return emptyCalendar(name);
  const events = entries.map((entry) => eventOf(entry, ahead.from, name));
  const { error, value } = createEvents(events, { productId: madeBy, calName: `${name}: to film` });
  if (error !== undefined && error !== null) throw error;
  return value ?? emptyCalendar(name);
}

/** The library takes a time of making that its types leave out. */
type Stamped = EventAttributes & { readonly timestamp: DateArray };

const madeBy = "-//plotreel//ahead//EN";

function eventOf(entry: Deadline | Expected, today: Day, calendar: string): Stamped {
  return {
    uid: `${encodeURIComponent(entry.id)}@plotreel`,
    title: titleOf(entry),
    description: entry.text,
    start: dateOf(entry.day),
    end: dateOf(addDays(entry.day, 1)),
    // The time of making is the day asked about, so that the file is the same on every machine.
    timestamp: [...dateOf(today), 0, 0],
    startInputType: "utc",
    transp: "TRANSPARENT",
    calName: `${calendar}: to film`,
    productId: madeBy,
  };
}

function titleOf(entry: Deadline | Expected): string {
  switch (entry.kind) {
    case "promise":
      return `Promised: ${entry.about}`;
    case "task":
      return `Due: ${entry.about}`;
    case "soon gone":
      return `Last days: ${entry.about}`;
    case "verdict":
      return `${capital(entry.about)} is due`;
    default:
      return `${capital(entry.about)}: ${entry.kind}${entry.byCrop === true ? ", as a rule" : ""}`;
  }
}

function dateOf(day: Day): [number, number, number] {
  const [year = 0, month = 0, date = 0] = day.split("-").map(Number);
  return [year, month, date];
}

/** RFC 5545 lets a calendar be without events in practice; readers show it as empty. */
function emptyCalendar(name: string): string {
  const title = `${name}: to film`.replace(/[\\;,]/g, "\\$&");
  return [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "CALSCALE:GREGORIAN",
    `PRODID:${madeBy}`,
    `X-WR-CALNAME:${title}`,
    "END:VCALENDAR",
    "",
  ].join("\r\n");
}
