/** The day a line tells of and the day something is due. The note is of Wednesday 20 May 2026; the days are counted by hand. */
import { expect, test } from "vitest";
import { dueDay } from "../../src/records/due-day.ts";
import { lineDay } from "../../src/records/line-day.ts";
import { wordsOf } from "../../src/records/line-words.ts";

const noteDay = "2026-05-20";

function dayAtEnd(text: string) {
  const words = wordsOf(text);
  return lineDay(words, 1, words.length, noteDay);
}

test.each([
  ["today", "2026-05-20"],
  ["this morning", "2026-05-20"],
  ["earlier today", "2026-05-20"],
  ["yesterday", "2026-05-19"],
  ["yesterday evening", "2026-05-19"],
  ["last night", "2026-05-19"],
  ["the day before yesterday", "2026-05-18"],
  ["two days ago", "2026-05-18"],
  ["a week ago", "2026-05-13"],
  ["3 weeks ago", "2026-04-29"],
  ["on Tuesday", "2026-05-19"],
  ["on Wednesday", "2026-05-20"],
  ["last Wednesday", "2026-05-13"],
  ["last Tuesday", "2026-05-19"],
  ["last Sat", "2026-05-16"],
  ["on Saturday morning", "2026-05-16"],
  ["on the 3rd", "2026-05-03"],
  ["on the 29th", "2026-04-29"],
  ["on 3 May", "2026-05-03"],
  ["on May 3", "2026-05-03"],
  ["on 3rd May", "2026-05-03"],
  ["on the 3rd of May", "2026-05-03"],
  ["on Sunday 3 May", "2026-05-03"],
  ["on 3 May 2026", "2026-05-03"],
  ["on May 3, 2026", "2026-05-03"],
  ["on 28 December", "2025-12-28"],
  [", 3 May", "2026-05-03"],
  ["2026-05-03", "2026-05-03"],
  ["on 2026-05-03.", "2026-05-03"],
])("planted 12 Musselburgh %s", (words, day) => {
  const text = `planted 12 Musselburgh ${words}`;
  const found = dayAtEnd(text);
  expect(found?.day).toBe(day);
  // Nothing but the words of the day is cut off, and all of them are.
  expect(
    wordsOf(text)
      .slice(1, found?.from)
      .map((word) => word.text)
      .filter((word) => word !== ","),
  ).toEqual(["12", "Musselburgh"]);
});

test.each([
  "planted 3 Ruby Tuesday",
  "planted 12 Musselburgh, sown 2 March",
  "planted 12 Musselburgh, best since last Tuesday",
  "planted 12 Musselburgh, bought on Tuesday",
  "planted 12 Musselburgh, the first of May",
  "planted 12 Musselburgh in the evening",
  "planted 12 Musselburgh",
  "planted 12 Musselburgh, 24 to go",
])("%s tells of no other day", (text) => {
  expect(dayAtEnd(text)).toBeUndefined();
});

test.each([
  ["on 30 February", "note/unclear-day"],
  ["on 31 June", "note/unclear-day"],
  ["on 3/5", "note/unclear-day"],
  ["on Monday 3 May", "note/unclear-day"],
  ["on 25 May", "note/day-after-note"],
  ["on 2026-06-01", "note/day-after-note"],
])("planted 12 Musselburgh %s is asked about", (words, rule) => {
  const found = dayAtEnd(`planted 12 Musselburgh ${words}`);
  expect([found?.rule, found?.day]).toEqual([rule, undefined]);
});

test.each([
  ["by 2026-06-20", "2026-06-20"],
  ["before 2026-06-20", "2026-06-19"],
  ["by 20 June", "2026-06-20"],
  ["by June 20th", "2026-06-20"],
  ["by the 20th of June", "2026-06-20"],
  ["by 1 March", "2027-03-01"],
  ["on 1 March 2028", "2028-03-01"],
  ["today", "2026-05-20"],
  ["tomorrow", "2026-05-21"],
  ["by Friday", "2026-05-22"],
  ["by Wednesday", "2026-05-20"],
  ["on Sunday", "2026-05-24"],
  ["before Friday", "2026-05-21"],
  ["this Friday", "2026-05-22"],
  ["next Friday", "2026-05-29"],
  ["this week", "2026-05-24"],
  ["next week", "2026-05-31"],
  ["at the weekend", "2026-05-24"],
  ["next weekend", "2026-05-31"],
  ["this month", "2026-05-31"],
  ["by the end of the month", "2026-05-31"],
  ["next month", "2026-06-30"],
  ["in July", "2026-07-31"],
  ["before July", "2026-06-30"],
  ["in early July", "2026-07-10"],
  ["by mid July", "2026-07-20"],
  ["in late September", "2026-09-30"],
  ["mid June", "2026-06-20"],
  ["next June", "2026-06-30"],
  ["by the end of August", "2026-08-31"],
  ["in March", "2027-03-31"],
  ["in May", "2026-05-31"],
  ["in February 2028", "2028-02-29"],
  ["this summer", "2026-08-31"],
  ["this autumn", "2026-11-30"],
  ["in the fall", "2026-11-30"],
  ["next spring", "2027-05-31"],
  ["this winter", "2027-02-28"],
  ["this year", "2026-12-31"],
  ["next year", "2027-12-31"],
  ["by the end of the season", "2026-12-31"],
  ["in 10 days", "2026-05-30"],
  ["in two weeks", "2026-06-03"],
  ["within a fortnight", "2026-06-03"],
  ["in a month", "2026-06-20"],
  ["by New Year", "2027-01-01"],
  ["before Christmas", "2026-12-24"],
  ["before Hallowe'en", "2026-10-30"],
  ["by the 24th", "2026-05-24"],
  ["before the 24th", "2026-05-23"],
  ["by the 3rd", "2026-06-03"],
])("show the leeks %s", (words, day) => {
  const due = dueDay(`show the leeks ${words} if they live`, noteDay);
  expect(due?.day).toBe(day);
  expect(`show the leeks ${words} if they live`.slice(due?.start, due?.end)).toBe(words.replace(/^the leeks /, ""));
});

test.each([
  "show the leeks again",
  "show what may happen next",
  "plant next to the leeks",
  "the week was cold",
  "the march of the slugs",
  "this may be late",
  "they may march on",
  "second sowing",
  "the sun on the bed",
])("%s names no day", (text) => {
  expect(dueDay(text, noteDay)).toBeUndefined();
});

test("south of the equator autumn is March to May", () => {
  expect(dueDay("this autumn", noteDay, { southern: true })?.day).toBe("2026-05-31");
  expect(dueDay("next autumn", noteDay, { southern: true })?.day).toBe("2027-05-31");
  expect(dueDay("this summer", noteDay, { southern: true })?.day).toBe("2027-02-28");
  expect(dueDay("this winter", noteDay, { southern: true })?.day).toBe("2026-08-31");
});

test.each([
  ["in the first week of October", "2026-10-07"],
  ["the third week in June", "2026-06-21"],
  ["in the last week of October", "2026-10-31"],
  ["before the last week of October", "2026-10-24"],
  ["the first half of July", "2026-07-16"],
])("%s is a part of a month", (words, day) => {
  expect(dueDay(`show the leeks ${words} if they live`, noteDay)?.day).toBe(day);
});

test("a month from the 31st is the last day of a shorter month", () => {
  expect(dueDay("in a month", "2026-01-31")?.day).toBe("2026-02-28");
  expect(dueDay("in a month", "2028-01-31")?.day).toBe("2028-02-29");
});

/** In figures: the day a line tells of, and the day it is due. */
function inFigures(day: string, monthFirst?: boolean) {
  const words = wordsOf(`planted 12 Musselburgh on ${day}`);
  const told = lineDay(words, 1, words.length, noteDay, monthFirst);
  return [told?.day ?? told?.rule, dueDay(`by ${day}: thin the leeks`, noteDay, { monthFirst })?.day];
}

test.each([
  ["4/23", "2026-04-23", "2027-04-23"],
  ["4/5", "2026-04-05", "2027-04-05"],
  ["4/5/25", "2025-04-05", "2025-04-05"],
  // No month is the 23rd.
  ["23/4", "2026-04-23", "2027-04-23"],
  ["6/12", "note/day-after-note", "2026-06-12"],
  ["2/29", "note/day-after-note", "2028-02-29"],
  ["13/32", "note/unclear-day", undefined],
])("where months are written first %s is one day", (day, told, due) => {
  expect(inFigures(day, true)).toEqual([told, due]);
});

test.each([
  ["4/23", "2026-04-23", "2027-04-23"],
  ["23/4", "2026-04-23", "2027-04-23"],
  ["5/5", "2026-05-05", "2027-05-05"],
  ["4/5", "note/unclear-day", undefined],
])("elsewhere %s is a day only where it can be no other", (day, told, due) => {
  expect(inFigures(day)).toEqual([told, due]);
});

test("a share within a task is no day", () => {
  expect(dueDay("cut the hedge back by 1/3", noteDay, { monthFirst: true })).toBeUndefined();
});
