/** What the phone makes of taps, holds, time and words, without a phone. Rules of the trade: a take counts when the camera ran. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type SpokenPart, scrolledAfter, secondsAt, wordsIn } from "../../src/site/field-list/phone/pacing.ts";
import { dayOf, instantOf, sayAgainstPlan, sayElapsed } from "../../src/site/field-list/phone/plan-clock.ts";
import type { Kept, ListData } from "../../src/site/field-list/phone/shapes.ts";
import { noteHome, sayCounts, takenHome } from "../../src/site/field-list/phone/take-home.ts";
import {
  counted,
  filmed,
  nothingKept,
  saySoFar,
  sayTick,
  skipped,
  tapped,
  toRetake,
  untouched,
  withNote,
  withTick,
} from "../../src/site/field-list/phone/ticks.ts";
import { recordsOf } from "../records/records-of.ts";

const at = "09:24:31";
const now = new Date(2026, 6, 18, 11, 2, 9);

const list: ListData = {
  tour: "2026-07-tour",
  title: "July tour",
  garden: "Gullstone",
  rate: 130,
  stops: [
    {
      bed: "long-bed",
      title: "Long Bed",
      begins: 0,
      ends: 130,
      shots: [
        { id: "S1.1", key: "Wide", text: "Wide from the gate" },
        { id: "S1.2", key: "Flower", text: "Female flower, close." },
      ],
      outline: [],
    },
    {
      bed: "pea-row",
      title: "Pea Row",
      begins: 130,
      ends: 190,
      shots: [{ id: "S2.1", key: "Pods", text: "Pods" }],
      outline: [],
    },
  ],
};
const [long, peas] = list.stops as [ListData["stops"][number], ListData["stops"][number]];
const [wide, flower] = long.shots as [
  ListData["stops"][number]["shots"][number],
  ListData["stops"][number]["shots"][number],
];

describe("a shot", () => {
  test("is filmed by a tap, and untouched again by a second", () => {
    expect(tapped(untouched, at)).toEqual({ state: "filmed", takes: 1, at });
    expect(tapped(tapped(untouched, at), at)).toEqual({ state: "open", takes: 0, at });
  });

  test("held is to be filmed again, and the take that was made counts once", () => {
    expect(toRetake(untouched, at)).toMatchObject({ state: "retake", takes: 1 });
    expect(toRetake(filmed(untouched, at), at)).toMatchObject({ state: "retake", takes: 1 });
    expect(filmed(toRetake(untouched, at), at)).toMatchObject({ state: "filmed", takes: 2 });
  });

  test("skipped keeps its reason and its takes", () => {
    expect(skipped(toRetake(untouched, at), "wind", at)).toEqual({ state: "skipped", takes: 1, at, reason: "wind" });
    expect(skipped(untouched, "", at)).toEqual({ state: "skipped", takes: 0, at });
  });

  test("has takes counted by hand, never below none", () => {
    expect(counted(untouched, 1, at)).toMatchObject({ state: "filmed", takes: 1 });
    expect(counted(filmed(untouched, at), 0, at)).toMatchObject({ state: "open", takes: 0 });
    expect(counted(untouched, -1, at)).toMatchObject({ state: "open", takes: 0 });
    expect(counted(skipped(untouched, "rain", at), -1, at)).toMatchObject({
      state: "skipped",
      takes: 0,
      reason: "rain",
    });
  });

  test("whatever is done to it has takes from 0 up, and none when it is open", () => {
    const acts = [tapped, toRetake, filmed, (tick: typeof untouched, time: string) => skipped(tick, "light", time)];
    fc.assert(
      fc.property(fc.array(fc.nat(acts.length - 1)), (choices) => {
        const end = choices.reduce((tick, choice) => (acts[choice] as typeof tapped)(tick, at), untouched);
        expect(end.takes).toBeGreaterThanOrEqual(0);
        if (end.state === "filmed" || end.state === "retake") expect(end.takes).toBeGreaterThan(0);
      }),
    );
  });

  test("is spoken of in whole words", () => {
    expect(sayTick(untouched)).toBe("");
    expect(sayTick(filmed(untouched, at))).toBe("Filmed");
    expect(sayTick(filmed(toRetake(untouched, at), at))).toBe("Filmed on take 2");
    expect(sayTick(toRetake(untouched, at))).toBe("Film again");
    expect(sayTick(toRetake(toRetake(untouched, at), at))).toBe("Film again, 2 takes so far");
    expect(sayTick(skipped(untouched, "wind", at))).toBe("Skipped: wind");
  });

  test("adds up with the others of its stop", () => {
    const kept = withTick(
      withTick(nothingKept, long, wide, filmed(untouched, at)),
      long,
      flower,
      toRetake(untouched, at),
    );
    expect(saySoFar(kept, long)).toBe("1 of 2 filmed, 1 to film again");
    expect(saySoFar(kept, peas)).toBe("0 of 1 filmed");
  });
});

describe("the clock", () => {
  test.each([
    [0, "0:00"],
    [42, "0:42"],
    [760, "12:40"],
    [3599.9, "59:59"],
    [3760, "1:02:40"],
    [-3, "0:00"],
  ])("says %d seconds as %s", (seconds, said) => expect(sayElapsed(seconds)).toBe(said));

  test.each([
    [0, "2 min ahead"],
    [95, "on plan"],
    [130, "on plan"],
    [260, "on plan"],
    [285, "on plan"],
    [290, "1 min behind"],
    [620, "6 min behind"],
  ])("after %d seconds at a stop planned from 120 to 260: %s", (elapsed, said) => {
    expect(sayAgainstPlan(elapsed, { begins: 120, ends: 260 })).toBe(said);
  });

  test("gives the phone's own day and offset", () => {
    expect(dayOf(now)).toBe("2026-07-18");
    expect(instantOf(now)).toMatch(/^2026-07-18T11:02:09[+-]\d\d:\d\d$/);
    expect(new Date(instantOf(now)).getTime()).toBe(now.getTime());
  });
});

describe("what goes home", () => {
  const kept: Kept = withNote(
    withTick(
      withTick(
        withTick({ ...nothingKept, day: "2026-07-18" }, long, wide, { state: "filmed", takes: 2, at: "09:24:31" }),
        long,
        flower,
        { state: "skipped", takes: 0, at: "09:26:00", reason: "wind" },
      ),
      peas,
      peas.shots[0] as never,
      { state: "retake", takes: 1, at: "10:01:00" },
    ),
    long,
    "picked 1.4 kg Boltardy\n\n - asked: what is the mesh?\n# a thought\n1. first",
  );

  test("are the ticks, as the records folder reads them", async () => {
    const home = takenHome(list, kept, now);
    expect(home).toEqual({
      plotreel: "field list",
      version: 1,
      episode: "2026-07-tour",
      day: "2026-07-18",
      exported: instantOf(now),
      stops: [
        {
          bed: "long-bed",
          ticks: [
            { shot: "S1.1", state: "filmed", takes: 2, at: "09:24:31" },
            { shot: "S1.2", state: "skipped", takes: 0, at: "09:26:00", reason: "wind" },
          ],
          note: "picked 1.4 kg Boltardy\nasked: what is the mesh?\n# a thought\n1. first",
        },
        { bed: "pea-row", ticks: [{ shot: "S2.1", state: "retake", takes: 1, at: "10:01:00" }] },
      ],
    });
    const records = await recordsOf({
      "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
      "beds/pea-row.md": "---\ntitle: Pea Row\n---\n",
      "episodes/2026-07-tour/index.md": "---\ntitle: July tour\ndate: 2026-07-18\n---\n",
      "episodes/2026-07-tour/field-list.json": JSON.stringify(home),
    });
    expect(records.problems).toEqual([]);
    expect(records.episodes.get("2026-07-tour")?.filming?.stops).toEqual(home.stops);
  });

  test("is a note whose items are log lines of their beds", async () => {
    const note = noteHome(list, kept, now);
    expect(note).toBe(`---
date: 2026-07-18
title: "Filmed: July tour"
---

Filmed 1 of 3 shots, at 9:24.

## Long Bed

- picked 1.4 kg Boltardy
- asked: what is the mesh?
- \\# a thought
- 1\\. first

Skipped: S1.2, Female flower, close (wind).

## Pea Row

To film again: S2.1, Pods.
`);
    const records = await recordsOf({
      "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
      "beds/pea-row.md": "---\ntitle: Pea Row\n---\n",
      "varieties/boltardy.md": "---\ntitle: Boltardy\ncrop: beetroot\n---\n",
      "notes/2026-07-18-filming.md": note,
    });
    expect(records.problems).toEqual([]);
    expect(records.events.map(({ kind, bed, grams }) => ({ kind, bed, grams }))).toEqual([
      { kind: "picked", bed: "long-bed", grams: 1400 },
      { kind: "asked", bed: "long-bed", grams: undefined },
    ]);
    expect(records.notes[0]?.title).toBe("Filmed: July tour");
  });

  test("of nothing done is whole all the same", () => {
    expect(takenHome(list, nothingKept, now)).toMatchObject({
      day: "2026-07-18",
      stops: [{ ticks: [] }, { ticks: [] }],
    });
    expect(noteHome(list, nothingKept, now)).toContain("No shot is ticked as filmed.");
    expect(sayCounts(list, nothingKept)).toBe("No shot is ticked as filmed.");
  });

  test("brings any line home as one list item with the same words", async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: "grapheme", maxLength: 40 }), async (line) => {
        const one = line.replace(/[\r\n\u2028\u2029\u0085]/g, " ");
        const note = noteHome(list, withNote({ ...nothingKept, day: "2026-07-18" }, long, one), now);
        const items = note.split("\n").filter((each) => each.startsWith("- "));
        expect(items.length).toBeLessThanOrEqual(1);
      }),
    );
  });

  test("of a bed that two stops show is one entry", () => {
    const twice = { ...list, stops: [long, { ...peas, bed: "long-bed", title: "Long Bed" }] };
    expect(takenHome(twice, kept, now).stops.map(({ bed }) => bed)).toEqual(["long-bed"]);
  });
});

describe("the pace of the talking view", () => {
  const parts: readonly SpokenPart[] = [
    { words: 65, height: 900 },
    { words: 130, height: 1500 },
  ];

  // Narration: 65 words at 130 words a minute last 30 seconds.
  test("is the narration rate", () => {
    expect(scrolledAfter(30, parts, 130)).toBeCloseTo(900);
    expect(scrolledAfter(15, parts, 130)).toBeCloseTo(450);
    expect(scrolledAfter(90, parts, 130)).toBeCloseTo(2400);
    expect(scrolledAfter(1000, parts, 130)).toBe(2400);
  });

  test("goes on from where a hand has scrolled", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 89.9, noNaN: true }), (seconds) => {
        expect(secondsAt(scrolledAfter(seconds, parts, 130), parts, 130)).toBeCloseTo(seconds, 6);
      }),
    );
  });

  test("counts words as they are set apart", () => {
    expect(wordsIn("  2.5 lb of   Crown Prince ")).toBe(5);
    expect(wordsIn("")).toBe(0);
  });
});
