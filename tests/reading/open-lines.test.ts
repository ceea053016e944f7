/** Lines that lean on another line, put a number right or give a new name are asked about; a diary's "others" are not. */
import { expect, it } from "vitest";
import { reading } from "./a-reader.ts";

it.each([
  "did the other two as well, same as Tuesday",
  "3 more rows, same as before",
  "oops, 2 trays, not 3",
  "I wrote 36, it was 30",
  "the Long Bed is the Front Bed from here on",
])("%s", (text) => {
  expect(reading(text).as).toBe("question");
});

it.each(["Spent the evening with the others.", "Sorry, no film this week.", "the rest is silence"])("%s", (text) => {
  expect(reading(text).as).toBe("story");
});

it.each([
  ["[ ] net the leeks", "to do"],
  ["[x] weeded Long Bed", "done"],
])("%s", (text, kind) => {
  expect(reading(text).events.map((event) => event.kind)).toEqual([kind]);
});

it.each([
  ["[ ] stakes for the corn wire", "stakes for the corn wire"],
  ["[x] stakes for the corn wire", "stakes for the corn wire"],
])("what %s says is not its box", (text, said) => {
  const [event] = reading(text).events;
  expect(event).toMatchObject({ what: said });
});
