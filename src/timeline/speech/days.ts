/** Days, weekdays and months as a language writes them. */
import type { Day } from "../../model.ts";
import { goesWithoutYear, sayDay, sayMonth, sayWeekday } from "../words.ts";
import type { Speech } from "./speech.ts";

export function daysIn(tongue: string): Pick<Speech, "day" | "weekday" | "weekdayAndDay" | "month" | "shortMonth"> {
  const made = (options: Intl.DateTimeFormatOptions) =>
    new Intl.DateTimeFormat(tongue, { ...options, timeZone: "UTC" });
  const short = made({ month: "short" });
  const whole = made({ weekday: "long", day: "numeric", month: "long" });
  const wholeWithYear = made({ weekday: "long", day: "numeric", month: "long", year: "numeric" });
  return {
    day: (day, near) => sayDay(day, { language: tongue, near }),
    weekday: (day) => sayWeekday(day, { language: tongue }),
    weekdayAndDay: (day: Day, near?: Day) =>
      (goesWithoutYear(day, near) ? whole : wholeWithYear).format(Date.parse(day)),
    month: (day, near) => sayMonth(day, { language: tongue, near }),
    shortMonth: (day) => short.format(Date.parse(day)),
  };
}
