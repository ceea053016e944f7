/** Days that people reckon by. Easter from published tables (the same in the Book of Common Prayer's and the Astronomical Almanac's). */
import { describe, expect, it } from "vitest";
import { easter } from "../../src/records/feasts.ts";
import { dueDay } from "../../src/records/index.ts";

describe("Easter Sunday", () => {
  it.each([
    "1818-03-22",
    "1943-04-25",
    "2000-04-23",
    "2008-03-23",
    "2024-03-31",
    "2025-04-20",
    "2026-04-05",
    "2027-03-28",
    "2038-04-25",
  ])("%s", (day) => {
    expect(easter(Number(day.slice(0, 4)))).toBe(day);
  });
});

describe("what is due, said on Wednesday 18 February 2026", () => {
  it.each([
    ["show the peas by Easter", "2026-04-05"],
    ["prune it before Easter", "2026-04-04"],
    ["dig them by Good Friday", "2026-04-03"],
    ["have the rest off by Anzac Day", "2026-04-25"],
    ["ripe about the Fourth of July", "2026-07-04"],
    ["sow them on St Patrick's Day", "2026-03-17"],
    ["come back to it on Saint David's Day", "2026-03-01"],
    ["pick it at Christmas", "2026-12-25"],
    ["weigh them Sunday week", "2026-03-01"],
    ["weigh them on Friday week", "2026-02-27"],
    ["weigh them on Friday", "2026-02-20"],
    ["tell you on Burns Night", "2027-01-25"],
  ])("%s", (text, day) => {
    expect(dueDay(text, "2026-02-18")?.day).toBe(day);
  });

  it.each(["Sunday was wet", "the Easter lilies are up", "it was a good week"])("nothing in: %s", (text) => {
    expect(dueDay(text, "2026-02-18")).toBeUndefined();
  });
});
