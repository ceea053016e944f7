/** Days as they are said on a day: "today", "on Tuesday", "on 24 May", "in March 2023". */

import { daysBetween, yearBefore } from "../calendar.ts";
import type { Day, GardenSettings } from "../model.ts";
import { sayDay, sayMonth, sayWeekday } from "./days.ts";
import { sayNumber } from "./numbers.ts";

/** The day on which something is said, and the settings that decide how things are said. */
export interface Voice {
  readonly settings: GardenSettings;
  readonly day: Day;
}

/** "today", "yesterday", "on Tuesday" within a week, else "on 24 May", with the year where it has to be said. */
export function onDay(day: Day, { settings, day: said }: Voice): string {
  const ago = daysBetween(day, said);
  if (ago === 0) return "today";
  if (ago === 1) return "yesterday";
  if (ago > 1 && ago < 7) return `on ${sayWeekday(day, settings)}`;
  if (ago === -1) return "tomorrow";
  return `on ${dayOnly(day, { settings, day: said })}`;
}

/** "since Tuesday", "since 24 May". */
export function sinceDay(day: Day, voice: Voice): string {
  return `since ${onDay(day, voice).replace(/^on /, "")}`;
}

/** A brief says the same few days thousands of times, and formatting one costs more than the sentence around it. */
const said = new WeakMap<GardenSettings, Map<string, string>>();

/** "24 May", or "24 May 2025" when the year has to be said. */
export function dayOnly(day: Day, { settings, day: near }: Voice): string {
  const known = said.get(settings) ?? new Map<string, string>();
  said.set(settings, known);
  const key = `${day} ${near}`;
  const text = known.get(key) ?? sayDay(day, { language: settings.language, near });
  known.set(key, text);
  return text;
}

/** A day long past is told by its month: "in March 2023"; a near one by its date. */
export function roughly(day: Day, voice: Voice): string {
  return daysBetween(day, voice.day) > 330
    ? `in ${sayMonth(day, { language: voice.settings.language, near: voice.day })}`
    : onDay(day, voice);
}

/** A dated work's day as written in a record: a day, a month "2023-03" or a year "2023"; "" when it has none. */
export function whenDone(written: string | undefined, voice: Voice): string {
  if (written === undefined) return "";
  if (/^\d{4}$/.test(written)) return `in ${written}`;
  if (/^\d{4}-\d\d$/.test(written)) {
    return `in ${sayMonth(`${written}-01`, { language: voice.settings.language, near: voice.day })}`;
  }
  return /^\d{4}-\d\d-\d\d$/.test(written) ? roughly(written, voice) : "";
}

/** How a milestone's day compares with last year's: "nine days earlier than last year". */
export function againstLastYear(day: Day, lastYears: Day): string {
  const later = daysBetween(yearBefore(day), lastYears) * -1;
  if (later === 0) return "on the same day as last year";
  const days = Math.abs(later);
  const span = days === 1 ? "a day" : days === 7 ? "a week" : days === 14 ? "two weeks" : `${sayNumber(days)} days`;
  return `${span} ${later < 0 ? "earlier" : "later"} than last year`;
}
