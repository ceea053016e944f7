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
    ["have it read by Michaelmas", "2026-09-29"],
    ["light it on St John's Eve", "2026-06-23"],
    ["dig them over Easter Saturday", "2026-04-04"],
    ["plant them by Pentecost", "2026-05-24"],
    ["cut them at Corpus Christi", "2026-06-04"],
    ["weigh them by Labor Day", "2026-09-07"],
    ["open it on Christmas Eve", "2026-12-24"],
    ["taste it on New Year's Eve", "2026-12-31"],
  ])("%s", (text, day) => {
    expect(dueDay(text, "2026-02-18")?.day).toBe(day);
  });

  // 5 U.S.C. 6103: the fourth Thursday in November. In Canada it is in October.
  it("Thanksgiving where the month is written first, and is left alone elsewhere", () => {
    expect(dueDay("before Thanksgiving", "2026-02-18", { monthFirst: true })?.day).toBe("2026-11-25");
    expect(dueDay("by Thanksgiving", "2027-11-26", { monthFirst: true })?.day).toBe("2028-11-23");
    expect(dueDay("by Thanksgiving", "2026-02-18")).toBeUndefined();
  });

  it.each(["Sunday was wet", "the Easter lilies are up", "it was a good week"])("nothing in: %s", (text) => {
    expect(dueDay(text, "2026-02-18")).toBeUndefined();
  });
});
