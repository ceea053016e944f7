/** What the phone makes of taps, holds, time and words, without a phone. Rules of the trade: a take counts when the camera ran. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { toGoBackFor } from "../../src/site/field-list/phone/going-back.ts";
import { fromBefore } from "../../src/site/field-list/phone/kept-before.ts";
import { type SpokenPart, scrolledAfter, secondsAt, wordsIn } from "../../src/site/field-list/phone/pacing.ts";
import { dayOf, instantOf, sayAgainstPlan, sayElapsed } from "../../src/site/field-list/phone/plan-clock.ts";
import type { Kept, ListData } from "../../src/site/field-list/phone/shapes.ts";
import { noteHome, sayCounts, takenHome } from "../../src/site/field-list/phone/take-home.ts";
import {
  explained,
  marked,
  nextMark,
  nothingKept,
  saySoFar,
  sayTake,
  sayTick,
  skipped,
  stateOf,
  taken,
  takenBack,
  tapped,
  tickOf,
  toRetake,
  untouched,
  withNote,
  withTick,
} from "../../src/site/field-list/phone/ticks.ts";
import { recordsOf } from "../records/records-of.ts";

const at = "09:24:31";
const now = new Date(2026, 6, 18, 11, 2, 9);

const plan: ListData["plan"] = {
  plotreel: "plan",
  version: 1,
  episode: "2026-07-tour",
  day: "2026-07-18",
  stops: [
    {
      bed: "long-bed",
      title: "Long Bed",
      show: [],
      shots: [
        { id: "S1.1", key: "long-bed/wide", text: "wide from the gate post", level: "must" },
        { id: "S1.2", key: "long-bed/first-flower", text: "first flower" },
      ],
      cautions: [],
    },
    { bed: "pea-row", title: "Pea Row", show: [], shots: [], cautions: [] },
  ],
};

const list: ListData = {
  plan,
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
        {
          id: "S1.1",
          key: "long-bed/wide",
          words: "wide from the gate post",
          text: "Wide from the gate",
          level: "must",
        },
        { id: "S1.2", key: "long-bed/first-flower", words: "first flower", text: "Female flower, close." },
      ],
      outline: [],
    },
    {
      bed: "pea-row",
      title: "Pea Row",
      begins: 130,
      ends: 190,
      shots: [{ id: "S2.1", key: "pea-row/picking", words: "peas in the hand", text: "Pods" }],
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
  const good = taken(untouched, "good", at);
  const later = "09:26:02";

  test("is filmed by a tap, and untouched again by a second", () => {
    expect(tapped(untouched, at)).toEqual({ takes: [{ at, mark: "good" }], at });
    expect(stateOf(tapped(untouched, at))).toBe("filmed");
    expect(tapped(tapped(untouched, at), later)).toEqual({ takes: [], at: later });
  });

  test("held is to be filmed again, and the take that was made counts once", () => {
    expect(toRetake(untouched, at).takes).toEqual([{ at, mark: "no good" }]);
    expect(toRetake(good, later).takes).toEqual([{ at, mark: "no good" }]);
    expect(stateOf(toRetake(good, later))).toBe("retake");
    expect(toRetake(toRetake(untouched, at), later).takes).toHaveLength(2);
    expect(tapped(toRetake(untouched, at), later).takes).toEqual([
      { at, mark: "no good" },
      { at: later, mark: "good" },
    ]);
  });

  test("has takes of three worths, each with its time and its reason", () => {
    const three = taken(taken(taken(untouched, "no good", at, "wind"), "hold", "09:25:00"), "good", later);
    expect(three.takes).toEqual([
      { at, mark: "no good", why: "wind" },
      { at: "09:25:00", mark: "hold" },
      { at: later, mark: "good" },
    ]);
    expect(stateOf(three)).toBe("filmed");
    expect(stateOf(takenBack(three, later)), "a take on hold can be used").toBe("filmed");
    expect(stateOf(takenBack(takenBack(three, later), later))).toBe("retake");
    expect(explained(takenBack(three, later), "focus", later).takes.at(-1)).toEqual({
      at: "09:25:00",
      mark: "hold",
      why: "focus",
    });
    expect(explained(explained(good, "focus", later), "", later).takes).toEqual([{ at, mark: "good" }]);
    expect(marked(three, 0, "hold", later).takes[0]).toEqual({ at, mark: "hold", why: "wind" });
    expect([nextMark("good"), nextMark("hold"), nextMark("no good"), nextMark(undefined)]).toEqual([
      "hold",
      "no good",
      "good",
      "good",
    ]);
  });

  test("skipped keeps its reason and its takes, and a take ends the skip", () => {
    const left = skipped(toRetake(untouched, at), "wind", later);
    expect(left).toEqual({ takes: [{ at, mark: "no good" }], skipped: { reason: "wind" }, at: later });
    expect(stateOf(left)).toBe("skipped");
    expect(skipped(untouched, "", at)).toEqual({ takes: [], skipped: {}, at });
    expect(stateOf(taken(left, "good", later))).toBe("filmed");
    expect(takenBack(left, later)).toEqual({ takes: [{ at, mark: "no good" }], at: later });
  });

  test("whatever is done to it has a take when it is filmed or to be filmed again, and none when it is open", () => {
    const acts = [tapped, toRetake, takenBack, (tick: typeof untouched, time: string) => skipped(tick, "light", time)];
    fc.assert(
      fc.property(fc.array(fc.nat(acts.length - 1)), (choices) => {
        const end = choices.reduce((tick, choice) => (acts[choice] as typeof tapped)(tick, at), untouched);
        const state = stateOf(end);
        if (state === "open") expect(end.takes).toEqual([]);
        if (state === "filmed" || state === "retake") expect(end.takes.length).toBeGreaterThan(0);
      }),
    );
  });

  test("is spoken of in whole words", () => {
    expect(sayTick(untouched)).toBe("");
    expect(sayTick(good)).toBe("Filmed");
    expect(sayTick(taken(toRetake(untouched, at), "good", at))).toBe("Filmed on take 2");
    expect(sayTick(taken(good, "no good", at))).toBe("Filmed on take 1");
    expect(sayTick(taken(untouched, "hold", at))).toBe("Filmed, on hold");
    expect(sayTick(toRetake(untouched, at))).toBe("Film again");
    expect(sayTick(taken(toRetake(untouched, at), "no good", at, "wind"))).toBe("Film again, 2 takes so far: wind");
    expect(sayTick(skipped(untouched, "wind", at))).toBe("Skipped: wind");
    expect(sayTake({ at, mark: "no good", why: "wind" })).toBe("9:24:31, no good: wind");
    expect(sayTake({})).toBe("");
  });

  test("adds up with the others of its stop", () => {
    const kept = withTick(withTick(nothingKept, long, wide, good), long, flower, toRetake(untouched, at));
    expect(saySoFar(kept, long)).toBe("1 of 2 filmed, 1 to film again");
    expect(saySoFar(kept, peas)).toBe("0 of 1 filmed");
  });

  test("is gone back for when no take was good, or when it had to be shown and its stop is left", () => {
    const kept = withTick(nothingKept, long, flower, taken(untouched, "no good", at, "wind"));
    const again = { stop: 0, words: "S1.2 Female flower, close.", said: "Film again: wind", level: undefined };
    expect(toGoBackFor(list, kept)).toEqual([again]);
    expect(toGoBackFor(list, { ...kept, stop: 1 })).toEqual([
      { stop: 0, words: "S1.1 Wide from the gate", said: "Not filmed", level: "must" },
      again,
    ]);
  });

  test("is gone back for when it was skipped and matters", () => {
    const kept = withTick(nothingKept, long, wide, skipped(untouched, "wind", at));
    expect(toGoBackFor(list, kept)).toEqual([
      { stop: 0, words: "S1.1 Wide from the gate", said: "Skipped: wind", level: "must" },
    ]);
    expect(toGoBackFor(list, withTick(nothingKept, long, flower, skipped(untouched, "wind", at)))).toEqual([]);
  });

  test("ticked by a list of before 0.2.0 keeps what was ticked, under the words it had", () => {
    const before = {
      version: 1,
      stop: 1,
      day: "2026-07-18",
      beds: {
        "long-bed": {
          ticks: {
            "wide from the gate post": { state: "filmed", takes: 2, at },
            "first flower": { state: "skipped", takes: 0, at, reason: "wind" },
          },
          note: "picked 1.4 kg Boltardy",
        },
      },
    } as const;
    const kept = fromBefore(before);
    expect(kept).toMatchObject({ version: 2, stop: 1, day: "2026-07-18" });
    expect(sayTick(tickOf(kept, long, wide))).toBe("Filmed on take 2");
    expect(sayTick(tickOf(kept, long, flower))).toBe("Skipped: wind");
    expect(kept.beds["long-bed"]?.note).toBe("picked 1.4 kg Boltardy");
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
        withTick({ ...nothingKept, day: "2026-07-18" }, long, wide, {
          takes: [
            { at: "09:20:00", mark: "no good", why: "noise" },
            { at: "09:24:31", mark: "good" },
          ],
          at: "09:24:31",
        }),
        long,
        flower,
        skipped(untouched, "wind", "09:26:00"),
      ),
      peas,
      peas.shots[0] as never,
      taken(untouched, "no good", "10:01:00", "focus"),
    ),
    long,
    "picked 1.4 kg Boltardy\n\n - asked: what is the mesh?\n# a thought\n1. first",
  );

  test("are the ticks, as the records folder reads them", async () => {
    const home = takenHome(list, kept, now);
    expect(home).toEqual({
      plotreel: "field list",
      version: 2,
      episode: "2026-07-tour",
      day: "2026-07-18",
      exported: instantOf(now),
      stops: [
        {
          bed: "long-bed",
          ticks: [
            {
              shot: "S1.1",
              key: "long-bed/wide",
              words: "wide from the gate post",
              state: "filmed",
              takes: [
                { at: "09:20:00", mark: "no good", why: "noise" },
                { at: "09:24:31", mark: "good" },
              ],
              at: "09:24:31",
            },
            {
              shot: "S1.2",
              key: "long-bed/first-flower",
              words: "first flower",
              state: "skipped",
              reason: "wind",
              takes: [],
              at: "09:26:00",
            },
          ],
          note: "picked 1.4 kg Boltardy\nasked: what is the mesh?\n# a thought\n1. first",
        },
        {
          bed: "pea-row",
          ticks: [
            {
              shot: "S2.1",
              key: "pea-row/picking",
              words: "peas in the hand",
              state: "retake",
              takes: [{ at: "10:01:00", mark: "no good", why: "focus" }],
              at: "10:01:00",
            },
          ],
        },
      ],
      plan,
    });
    const records = await recordsOf({
      "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
      "beds/pea-row.md": "---\ntitle: Pea Row\n---\n",
      "episodes/2026-07-tour/index.md": "---\ntitle: July tour\ndate: 2026-07-18\n---\n",
      "episodes/2026-07-tour/field-list.json": JSON.stringify(home),
    });
    expect(records.problems).toEqual([]);
    const filming = records.episodes.get("2026-07-tour")?.filming;
    expect(filming?.stops).toEqual(home.stops);
    expect(filming?.plan?.stops.map(({ bed, shots }) => [bed, shots])).toEqual(
      plan.stops.map(({ bed, shots }) => [bed, shots]),
    );
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

To film again: S2.1, Pods (focus).
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
