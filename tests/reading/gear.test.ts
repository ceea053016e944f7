/** Gear that no file describes: the thing is its name alone, and what it covers stands behind it. */
import { expect, it } from "vitest";
import { readNoteLine } from "../../src/records/note-line.ts";
import { printEvent } from "../../src/records/print-event.ts";
import { names, reading } from "./a-reader.ts";

it.each([
  ["put up bird netting over the figs", "bird netting", "over the figs"],
  ["put over bird netting over the figs", "bird netting", "over the figs"],
  ["put fleece over the carrots", "fleece", "over the carrots"],
  ["put the netting up over the figs yesterday", "netting", "over the figs"],
  ["put up a wigwam for the beans", "wigwam", "for the beans"],
  ["netting went up over the figs", "netting", "over the figs"],
  ["took the bird netting off the figs", "bird netting", "off the figs"],
])("%s", (text, what, detail) => {
  const { as, events } = reading(text);
  expect([as, events.map((event) => [event.what, event.detail])]).toEqual(["facts", [[what, detail]]]);
  const [event] = events;
  if (event === undefined) return;
  const context = { note: { id: "n", day: "2026-06-14", private: false }, beds: [], names };
  const again = readNoteLine({ text: printEvent(event, names), more: [], place: event.place }, context);
  expect(again?.events.map((one) => [one.kind, one.what, one.detail])).toEqual([[event.kind, what, detail]]);
});

it("is said by its bed where that is all that follows", () => {
  const { events } = reading("put up netting over the Squash Bed");
  expect(events.map(({ what, detail, bed }) => [what, detail, bed])).toEqual([["netting", undefined, "squash-bed"]]);
});
