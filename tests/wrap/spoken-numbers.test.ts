/** Numbers and days as people say them, and as captioners write them. */
import { describe, expect, it } from "vitest";
import { spokenDay, spokenNumber, spokenOrdinal } from "../../src/wrap/spoken-numbers.ts";

const words = (text: string) => text.split(" ");

describe("spoken numbers", () => {
  it.each([
    ["six", 6],
    ["36", 36],
    ["thirty six", 36],
    ["thirtysix", 36],
    ["one point eight", 1.8],
    ["1.8", 1.8],
    ["twenty six point one", 26.1],
    ["a dozen", 12],
    ["two dozen", 24],
    ["half a dozen", 6],
    ["nine hundred", 900],
    ["two hundred and ten", 210],
    ["thirtyeight and a half", 38.5],
    ["a couple", 2],
  ])("%s", (text, value) => {
    expect(spokenNumber(words(text), 0)).toEqual({ value, end: words(text).length });
  });

  it.each(["leeks", "point", "a", "and", "constructor", ""])("none in: %s", (text) => {
    expect(spokenNumber(words(text), 0)).toBeUndefined();
  });

  it.each([
    ["twentysecond", 22],
    ["twenty second", 22],
    ["22nd", 22],
    ["sixth", 6],
  ])("%s", (text, value) => {
    expect(spokenOrdinal(words(text), 0)?.value).toBe(value);
  });
});

describe("spoken days", () => {
  // The film is of 14 June 2026; a day without a year is the last one before it.
  it.each([
    ["the sixth of april", "2026-04-06"],
    ["6th april", "2026-04-06"],
    ["november the ninth", "2025-11-09"],
    ["the eighth of november 2024", "2024-11-08"],
    ["the fourteenth of june", "2026-06-14"],
  ])("%s", (text, day) => {
    expect(spokenDay(words(text), 0, "2026-06-14")?.day).toBe(day);
  });

  it.each(["the thirtyfirst of april", "the sixth of them", "may I"])("none in: %s", (text) => {
    expect(spokenDay(words(text.toLowerCase()), 0, "2026-06-14")).toBeUndefined();
  });
});
