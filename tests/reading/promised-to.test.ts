/** A promise to viewers is the film's debt; whether one to somebody else is, the person says. */
import { expect, it } from "vitest";
import { reading } from "./a-reader.ts";

it.each([
  "promised you I'd show the leeks in July",
  "promised y'all I'd show the leeks in July",
  "I promised everyone we would show the leeks in July",
])("%s", (line) => {
  const { as, events } = reading(line);
  expect([as, events.map(({ kind, what }) => [kind, what])]).toEqual([
    "facts",
    [["promised", "show the leeks in July"]],
  ]);
});

it.each(["promised Beau's nan I'd show the leeks in July", "promised the school we'd show the leeks in July"])(
  "%s is asked about",
  (line) => {
    const { as, readings } = reading(line);
    expect(as).toBe("question");
    expect(readings.map(({ events: [event] }) => [event?.kind, event?.what])).toEqual([
      ["promised", "show the leeks in July"],
      ["to do", "show the leeks in July"],
    ]);
  },
);

it.each(["promised: show the leeks in July", "promised to show the leeks in July", "promised in July: show the leeks"])(
  "%s is a promise as before",
  (line) => {
    expect(reading(line).events.map(({ kind }) => kind)).toEqual(["promised"]);
  },
);
