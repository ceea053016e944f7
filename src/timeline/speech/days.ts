/** Days, weekdays and months as a language writes them. Formatters are slow, so each is made once and each day written once. */
import { yearOf } from "../../calendar.ts";
import type { Day } from "../../model.ts";
import { goesWithoutYear } from "../words.ts";
import type { Speech } from "./speech.ts";

export function daysIn(tongue: string): Pick<Speech, "day" | "weekday" | "weekdayAndDay" | "month" | "shortMonth"> {
  const made = (options: Intl.DateTimeFormatOptions) => {
    const format = new Intl.DateTimeFormat(tongue, { ...options, timeZone: "UTC" });
    const said = new Map<Day, string>();
    return (day: Day) => {
      const known = said.get(day);
      if (known !== undefined) return known;
      const words = format.format(Date.parse(day));
      said.set(day, words);
      return words;
    };
  };
  const plain = made({ day: "numeric", month: "long" });
  const ofYear = made({ day: "numeric", month: "long", year: "numeric" });
  const whole = made({ weekday: "long", day: "numeric", month: "long" });
  const wholeOfYear = made({ weekday: "long", day: "numeric", month: "long", year: "numeric" });
  const month = made({ month: "long" });
  const monthOfYear = made({ month: "long", year: "numeric" });
  return {
    day: (day, near) => (goesWithoutYear(day, near) ? plain(day) : ofYear(day)),
    weekday: made({ weekday: "long" }),
    weekdayAndDay: (day, near) => (goesWithoutYear(day, near) ? whole(day) : wholeOfYear(day)),
    month: (day, near) => (near !== undefined && yearOf(near) === yearOf(day) ? month(day) : monthOfYear(day)),
    shortMonth: made({ month: "short" }),
  };
}
