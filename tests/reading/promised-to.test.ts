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

it.each([
  ["promised agogo a basin of leeks when they are up", "a basin of leeks when they are up for agogo"],
  ["promised the school some leeks", "some leeks for the school"],
  ["promised Mary Ellen two leeks", "two leeks for Mary Ellen"],
])("%s, a thing to somebody, is asked about", (line, what) => {
  const { as, readings } = reading(line);
  expect(as).toBe("question");
  expect(readings.map(({ events: [event] }) => [event?.kind, event?.what])).toEqual([
    ["promised", what],
    ["to do", what],
  ]);
});

it.each(["promised viewers a count of the leeks", "promised a count of the leeks"])("%s is owed to viewers", (line) => {
  expect(reading(line).events.map(({ kind, what }) => [kind, what])).toEqual([["promised", "a count of the leeks"]]);
});

it.each(["promised photos of the leeks", "promised weighing the leeks"])("%s names nobody", (line) => {
  expect(reading(line).events.map(({ kind }) => kind)).toEqual(["promised"]);
});

it.each(["promised: show the leeks in July", "promised to show the leeks in July", "promised in July: show the leeks"])(
  "%s is a promise as before",
  (line) => {
    expect(reading(line).events.map(({ kind }) => kind)).toEqual(["promised"]);
  },
);
