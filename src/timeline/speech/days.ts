/** Days, weekdays and months as a language writes them. */
import { sayDay, sayMonth, sayWeekday } from "../words.ts";
import type { Speech } from "./speech.ts";

export function daysIn(tongue: string): Pick<Speech, "day" | "weekday" | "month" | "shortMonth"> {
  const short = new Intl.DateTimeFormat(tongue, { month: "short", timeZone: "UTC" });
  return {
    day: (day, near) => sayDay(day, { language: tongue, near }),
    weekday: (day) => sayWeekday(day, { language: tongue }),
    month: (day, near) => sayMonth(day, { language: tongue, near }),
    shortMonth: (day) => short.format(Date.parse(day)),
  };
}
