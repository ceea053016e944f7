/** Days: arithmetic against the Temporal polyfill, which follows the ECMAScript proposal, and reading as people write them. */
import fc from "fast-check";
import { Temporal } from "temporal-polyfill";
import { describe, expect, test } from "vitest";
import {
  addDays,
  type DayReading,
  daysBetween,
  daysInMonth,
  inYear,
  isDay,
  parseDay,
  parseMonthDay,
  parseSince,
  seasonStart,
  weekday,
  writeDay,
} from "../../src/calendar.ts";

const anyDay = fc
  .record({ year: fc.integer({ min: 1800, max: 2199 }), of: fc.integer({ min: 0, max: 364 }) })
  .map(({ year, of }) => Temporal.PlainDate.from({ year, month: 1, day: 1 }).add({ days: of }).toString());

describe("arithmetic", () => {
  test("adding days agrees with Temporal", () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: -4000, max: 4000 }), (day, n) => {
        expect(addDays(day, n)).toBe(Temporal.PlainDate.from(day).add({ days: n }).toString());
      }),
    );
  });

  test("days between agree with Temporal", () => {
    fc.assert(
      fc.property(anyDay, anyDay, (a, b) => {
        expect(daysBetween(a, b)).toBe(Temporal.PlainDate.from(a).until(b, { largestUnit: "day" }).days);
      }),
    );
  });

  test("weekdays agree with Temporal", () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        expect(weekday(day)).toBe(Temporal.PlainDate.from(day).dayOfWeek);
      }),
    );
  });

  test("every month of every kind of year has its days", () => {
    for (const year of [1900, 2000, 2023, 2024]) {
      for (let month = 1; month <= 12; month++) {
        expect(daysInMonth(year, month)).toBe(Temporal.PlainYearMonth.from({ year, month }).daysInMonth);
      }
    }
  });

  test("an evening clock change takes no day away", () => {
    // The night in which clocks go forward in Europe and in the United States, 2026.
    expect(daysBetween("2026-03-28", "2026-03-30")).toBe(2);
    expect(addDays("2026-03-07", 2)).toBe("2026-03-09");
  });

  test("29 February is the 28th in years that lack it", () => {
    expect(inYear("02-29", 2026)).toBe("2026-02-28");
    expect(inYear("02-29", 2028)).toBe("2028-02-29");
  });

  test("a season that begins in autumn runs over the new year", () => {
    expect(seasonStart("2026-02-01", "10-01")).toBe("2025-10-01");
    expect(seasonStart("2026-10-01", "10-01")).toBe("2026-10-01");
    expect(seasonStart("2026-07-18", "01-01")).toBe("2026-01-01");
  });
});

describe("reading a day", () => {
  test.each([
    "2026-05-16",
    "2026-5-16",
    "2026/05/16",
    "16 May 2026",
    "16th May 2026",
    "16th of May 2026",
    "May 16, 2026",
    "May 16 2026",
    "16 MAY 2026",
    "Saturday 16 May 2026",
    "Sat, 16 May 2026",
    " 16 May 2026 ",
  ])("%s", (written) => {
    expect(parseDay(written)).toEqual({ day: "2026-05-16", precision: "day" });
  });

  test("what is written out is read back", () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        expect(parseDay(writeDay(day))).toEqual({ day, precision: "day" });
      }),
    );
  });

  test("any text gives a day that exists or a refusal in whole sentences", () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.stringMatching(/^[\d -/.]{0,12}$/),
          fc.stringMatching(/^\d{1,2} [A-Z][a-z]{2,8} \d{1,4}$/),
        ),
        (written) => {
          const reading = parseDay(written);
          if ("day" in reading) expect(isDay(reading.day)).toBe(true);
          else expect([reading.what, reading.fix].every((sentence) => /[.!?]$/.test(sentence))).toBe(true);
        },
      ),
    );
  });

  test.each([
    ["2026-02-30", '"2026-02-30" does not exist: February 2026 has 28 days.', "Correct the day."],
    ["30 February 2028", '"30 February 2028" does not exist: February 2028 has 29 days.', "Correct the day."],
    ["31 April 2026", '"31 April 2026" does not exist: April 2026 has 30 days.', "Correct the day."],
    [
      "2026-13-01",
      '"2026-13-01" does not exist: there is no month 13.',
      "Months go from 1 to 12; the order is year, month, day.",
    ],
    [
      "16 May 26",
      '"16 May 26" gives its year with two digits.',
      'Write the year with four digits, for example "16 May 2026".',
    ],
    [
      "16/05/26",
      '"16/05/26" gives its year with two digits.',
      "Write the year with four digits, for example 2026-05-16.",
    ],
    [
      "26-05-16",
      '"26-05-16" gives its year with two digits.',
      "Write the year with four digits, for example 2026-05-16.",
    ],
    [
      "05/06/2026",
      '"05/06/2026" can mean 5 June 2026 or 6 May 2026.',
      "Write 2026-06-05 or 2026-05-06, whichever it was.",
    ],
    ["16/05/2026", '"16/05/2026" is a date in an order that differs from country to country.', "Write 2026-05-16."],
    ["16 May", '"16 May" does not say which year.', 'Add the year with four digits, for example "16 May 2026".'],
    [
      "Friday 16 May 2026",
      '"Friday 16 May 2026" does not exist: 16 May 2026 is a Saturday.',
      "Correct the weekday or the date, or leave the weekday out.",
    ],
    [
      "0206-05-16",
      '"0206-05-16" is not a date.',
      'Write year, month and day, for example 2026-05-16 or "16 May 2026".',
    ],
    ["soon", '"soon" is not a date.', 'Write year, month and day, for example 2026-05-16 or "16 May 2026".'],
  ])("refuses %s", (written, what, fix) => {
    expect(refusal(parseDay(written))).toEqual({ what, fix });
  });

  test("a day without a year is the nearest on the side that is meant", () => {
    expect(parseDay("3 May", { onOrBefore: "2026-07-18" })).toEqual({ day: "2026-05-03", precision: "day" });
    expect(parseDay("3 December", { onOrBefore: "2026-07-18" })).toEqual({ day: "2025-12-03", precision: "day" });
    expect(parseDay("18 July", { onOrAfter: "2026-07-18" })).toEqual({ day: "2026-07-18", precision: "day" });
    expect(parseDay("3 May", { onOrAfter: "2026-07-18" })).toEqual({ day: "2027-05-03", precision: "day" });
    expect(parseDay("29 February", { onOrBefore: "2026-07-18" })).toEqual({ day: "2024-02-29", precision: "day" });
    expect(refusal(parseDay("30 February", { onOrAfter: "2026-07-18" }))).toEqual({
      what: '"30 February" does not exist: February has 29 days at most.',
      fix: "Correct the day.",
    });
  });

  test("months and years are read where a beginning is enough", () => {
    expect(parseSince("2023-03")).toEqual({ day: "2023-03-01", precision: "month" });
    expect(parseSince("March 2023")).toEqual({ day: "2023-03-01", precision: "month" });
    expect(parseSince("2023")).toEqual({ day: "2023-01-01", precision: "year" });
    expect(parseSince("2023-03-14")).toEqual({ day: "2023-03-14", precision: "day" });
    expect(parseSince("2023-14")).toMatchObject({ refused: "not a date" });
  });

  test("days of every year", () => {
    expect(parseMonthDay("20 April")).toEqual({ monthDay: "04-20" });
    expect(parseMonthDay("April 20")).toEqual({ monthDay: "04-20" });
    expect(parseMonthDay("04-20")).toEqual({ monthDay: "04-20" });
    expect(parseMonthDay("29 February")).toEqual({ monthDay: "02-29" });
    expect(parseMonthDay("20 April 2026")).toEqual({
      refused: "not a date",
      what: '"20 April 2026" names one year, and a day of every year is wanted here.',
      fix: 'Leave the year out: "20 April".',
    });
    expect(parseMonthDay("31 June")).toMatchObject({ what: '"31 June" does not exist: June has 30 days.' });
  });
});

function refusal(reading: DayReading): { readonly what: string; readonly fix: string } | undefined {
  return "refused" in reading ? { what: reading.what, fix: reading.fix } : undefined;
}
