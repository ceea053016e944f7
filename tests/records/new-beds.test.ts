/** Beds that a first note names and no file describes. */
import { describe, expect, test } from "vitest";
import { timelineProblems } from "../../src/garden/index.ts";
import { growGarden } from "../../src/timeline/index.ts";
import { recordsOf } from "./records-of.ts";

const garden = { "garden.md": "---\nunits: metric\n---\n" };
const read = (body: string) => recordsOf({ ...garden, "notes/2026-06-20.md": body }, "2026-06-21");

describe("a heading or a lead that is nothing but a bed's name", () => {
  test.each([
    ["## Greenhouse border", "greenhouse-border"],
    ["## The old tub:", "old-tub"],
    ["### Back raised bed", "back-raised-bed"],
    ["## Wicking Bed One", "wicking-bed-one"],
    ["## Raised Bed 2", "raised-bed-2"],
    ["## Bed A", "bed-a"],
    ["## Tattie Rows", "tattie-rows"],
    ["## Kale Yard", "kale-yard"],
  ])("%s is taken as one", async (heading, bed) => {
    const { events, beds } = await read(`${heading}\n\n- 4 Moneymaker tomatoes planted 24 May\n`);
    expect([...beds.keys()]).toEqual([bed]);
    expect(events.map((event) => [event.kind, event.bed])).toEqual([["planted", bed]]);
  });

  test("an item with lines below it too", async () => {
    const { events } = await read("- Onion bed:\n  - 12 Sturon onions planted\n");
    expect(events.map((event) => [event.kind, event.bed])).toEqual([["planted", "onion-bed"]]);
  });

  test.each([
    "## Weeding the border",
    "## Beds",
    "## Bed",
    "## Watered the squash patch",
    "## What I saw in June",
    "## Sowed two rows",
    "## Day One",
  ])("%s is none", async (heading) => {
    const { beds } = await read(`${heading}\n\nIt rained.\n`);
    expect([...beds.keys()]).toEqual([]);
  });
});

test.each<[string, string, number]>([
  ["## Kitchen Side", "- the first leeks are up", 1],
  ["## Kitchen Side", "- trouble: slugs on the leeks", 1],
  ["## Kitchen Side", "- it rained all day", 0],
  ["## Weather", "- trouble: hail on the leeks", 0],
  ["## Jobs", "- picked 2 kg leeks", 0],
])("%s over %j is asked about %i times", async (heading, line, times) => {
  const { problems } = await read(`${heading}\n\n${line}\n`);
  expect(problems.filter(({ rule }) => rule === "note/heading-not-bed").length).toBe(times);
});

describe("a place within a line", () => {
  test.each([
    ["12 Sturon onions planted in the onion bed", "onion-bed"],
    ["a dozen Sturon onions went into my back border today", "back-border"],
  ])("%s", async (line, bed) => {
    const { events } = await read(`- ${line}\n`);
    expect(events.map((event) => [event.kind, event.bed])).toEqual([["planted", bed]]);
  });

  test.each([
    "lovely dahlias in the neighbour's front border",
    "the robin sat in the onion bed all morning",
    "maybe I'll plant the onions in the back border",
  ])("of a line that is no fact is none: %s", async (line) => {
    const { beds, events } = await read(`- ${line}\n`);
    expect([[...beds.keys()], events]).toEqual([[], []]);
  });
});

test("a line above the first heading does not speak of the bed below it", async () => {
  const records = await read(
    "- the Glen Ample raspberries have set fruit\n\n## Greenhouse border\n\n- 4 Moneymaker tomatoes planted\n- the Moneymaker have set fruit\n",
  );
  const grown = growGarden(records, []);
  const fruit = [...grown.changes].flatMap(([bed, all]) =>
    all.filter(({ told }) => told.is === "fruited").map(({ note }) => [bed, note.line]),
  );
  expect(fruit).toEqual([["greenhouse-border", 6]]);
  expect(timelineProblems(grown).map(({ rule, line }) => [rule, line])).toContainEqual(["timeline/nothing-planted", 1]);
});
