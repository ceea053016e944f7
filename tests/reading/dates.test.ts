/** A day that is still to come, or that no calendar has, is never a day on which something was done. */
import { expect, it } from "vitest";
import { reading } from "./a-reader.ts";

it.each([
  "20.6. sowed leeks in Long Bed",
  "31 June: planted 3 leeks",
  "planted 3 leeks on June 31",
  "planted 3 leeks on 31st of April",
  "picked 12 leeks on 20 June",
])("%s", (text) => {
  const { events } = reading(text);
  expect(events.filter(({ kind }) => !/^(?:to do|plan|promised)$/.test(kind))).toEqual([]);
});

it.each([
  ["10.6. sowed leeks in Long Bed", "2026-06-10"],
  ["planted 3 leeks on 31 May", "2026-05-31"],
  ["planted 3 leeks on May 31st", "2026-05-31"],
])("%s", (text, day) => {
  expect(reading(text).events.map((event) => event.day)).toEqual([day]);
});

it("takes a day in figures behind what was picked for the day, and for no count", () => {
  const offered = reading("picked the first Sungold 5/6, just a handful").readings.flatMap(({ events }) => events);
  expect(offered[0]).toMatchObject({ kind: "picked", variety: "sungold", day: "2026-06-05" });
  expect(offered.filter(({ count }) => count !== undefined)).toEqual([]);
});
