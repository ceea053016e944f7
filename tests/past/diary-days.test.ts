import { describe, expect, it } from "vitest";
import { readDiary } from "../../src/past/read-diary.ts";

const context = { today: "2026-07-18", year: undefined, order: undefined };
const days = (
  text: string,
  more: Partial<typeof context> | { year?: number; order?: "day-first" | "month-first" } = {},
) => readDiary(text, { ...context, ...more }).days.map(({ day, lines }) => [day, ...lines]);
const told = (text: string) => readDiary(text, context).told.map(({ line, what }) => `${line}: ${what}`);

describe("the days of a diary", () => {
  it.each([
    ["2019-03-12: sowed peas", ["2019-03-12", "sowed peas"]],
    ["2019-03-12 sowed peas", ["2019-03-12", "sowed peas"]],
    ["12 March 2019\nsowed peas", ["2019-03-12", "sowed peas"]],
    [
      "## Tuesday 12th March 2019\n\n- sowed peas\n  - in the gutter",
      ["2019-03-12", "- sowed peas", "  - in the gutter"],
    ],
    ["March 12, 2019 - sowed peas", ["2019-03-12", "sowed peas"]],
    ["Tue 12 Mar '19: sowed peas", ["2019-03-12", "sowed peas"]],
    ["**12.3.2019**\n13.3.2019 sowed peas", ["2019-03-13", "sowed peas"]],
    ["Garden 2019\nMarch\n12th: sowed peas", ["2019-03-12", "sowed peas"]],
    ["MARCH 2019\nTues 12 - sowed peas", ["2019-03-12", "sowed peas"]],
  ])("%j", (text, expected) => expect(days(text)).toEqual([expected]));

  it("without a year follow the entry before, over New Year too", () => {
    expect(days("28 December 2019: frost\n2 January: more frost\n20 Dec: told late")).toEqual([
      ["2019-12-28", "frost"],
      ["2020-01-02", "more frost"],
      ["2019-12-20", "told late"],
    ]);
  });

  it("take the year from the person where no entry has one", () => {
    expect(days("12 March: sowed peas")).toEqual([]);
    expect(told("12 March: sowed peas")).toEqual(['1: "12 March" does not say which year: sowed peas']);
    expect(days("12 March: sowed peas", { year: 2019 })).toEqual([["2019-03-12", "sowed peas"]]);
  });

  it("in numbers are read in the order that one of them proves", () => {
    expect(days("3/4/2019 one\n25/4/2019 two")).toEqual([
      ["2019-04-03", "one"],
      ["2019-04-25", "two"],
    ]);
    expect(days("3/4/2019 one\n4/25/2019 two").map(([day]) => day)).toEqual(["2019-03-04", "2019-04-25"]);
    expect(told("3/4/2019 one")).toEqual(['1: "3/4/2019" can be 2019-04-03 or 2019-03-04: one']);
    expect(days("3/4/2019 one", { order: "month-first" })).toEqual([["2019-03-04", "one"]]);
  });

  it("by a weekday alone are the next such day, and that is told", () => {
    expect(days("Mon 11 March 2019: dug\nWednesday\nsowed peas\nWed: rain")).toEqual([
      ["2019-03-11", "dug"],
      ["2019-03-13", "sowed peas"],
      ["2019-03-20", "rain"],
    ]);
    expect(told("Mon 11 March 2019: dug\nWednesday\nsowed peas")).toEqual([
      '2: "Wednesday" was taken for 2019-03-13, the next one after the entry before it',
    ]);
  });

  it("that another day of the week belies are no days, and their lines are told", () => {
    const text = "11 March 2019: dug\nFri 12 March: sowed\nand hoed\n14 March: rain";
    expect(days(text)).toEqual([
      ["2019-03-11", "dug"],
      ["2019-03-14", "rain"],
    ]);
    expect(told(text)).toEqual([
      '2: "Fri 12 March" would be 2019-03-12, which is another day of the week: sowed',
      '3: "Fri 12 March" would be 2019-03-12, which is another day of the week: and hoed',
    ]);
  });

  it("are not found in what an entry says", () => {
    const entry = [
      "20 May sowings are up",
      "Sunday was wet",
      "12 leeks lifted",
      "3 May sowings too",
      "Planted 12 March cabbages",
    ];
    expect(days(`21 May 2019\n${entry.join("\n")}`)).toEqual([["2019-05-21", ...entry]]);
  });

  it("of a week are none", () => {
    expect(days("11 March 2019: dug\nWeek ending 24 March\nsowed peas")).toEqual([["2019-03-11", "dug"]]);
    expect(told("11 March 2019: dug\nWeek ending 24 March\nsowed peas")[1]).toContain("sowed peas");
  });

  it("after today are none", () => {
    expect(days("1 August 2026: picked beans")).toEqual([]);
  });

  it("keep an entry's words, without the blanks that would make them code, and drawn rules", () => {
    expect(days("12 March 2019\n    sowed peas\n---------\n\tand beans\n\n2 inches of rain\n")).toEqual([
      ["2019-03-12", "sowed peas", "", "and beans", "", "2 inches of rain"],
    ]);
  });

  it("several entries of one day are one day", () => {
    expect(days("12 March 2019: sowed\n12 March 2019: hoed")).toEqual([["2019-03-12", "sowed", "hoed"]]);
  });
});
