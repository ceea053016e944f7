/** Laws that hold for any garden: plants are conserved, changes fold, totals are sums, the order of a day's notes is no matter. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays } from "../../src/calendar.ts";
import { changeSentence } from "../../src/language/index.ts";
import type { BedState, EventKind, Garden } from "../../src/model.ts";
import { applyChange, changes, growGarden, state } from "../../src/timeline/index.ts";
import { bedTitles, grow, inWords, type Line, recordsOf, type Said } from "./small-garden.ts";

const beds = Object.keys(bedTitles).slice(0, 3);
const varieties = ["musselburgh", "gardeners-delight", "ailsa-craig", "victoria", "solent", "mystery"];
const crops = ["leek", "tomato", "squash"];

const day = fc.integer({ min: 0, max: 450 }).map((n) => addDays("2024-02-01", n));
const plants = fc.oneof(
  { weight: 5, arbitrary: fc.constantFrom(...varieties).map((variety) => ({ variety })) },
  { weight: 1, arbitrary: fc.constantFrom(...crops).map((crop) => ({ crop })) },
);
const bed = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...beds).map((id) => ({ bed: id })) },
  { weight: 1, arbitrary: fc.constant({}) },
);
const number = fc.integer({ min: 1, max: 30 });
const count = fc.oneof(
  number.map((n) => ({ count: n })),
  fc.constant({}),
);

const line = (kind: EventKind, ...parts: readonly fc.Arbitrary<Said>[]): fc.Arbitrary<Line> =>
  fc.tuple(day, ...parts).map(([on, ...said]) => [on, kind, Object.assign({}, ...(said as Said[]))] as const);

const anyLine: fc.Arbitrary<Line> = fc.oneof(
  line("sowed", plants, count, fc.constant({ nursery: true })),
  line(
    "sowed",
    plants,
    count,
    fc.constantFrom(...beds).map((id) => ({ bed: id })),
  ),
  line("planted", plants, count, bed),
  line("planted", plants, count, bed, fc.constant({ plantsFrom: "bought" as const })),
  line("up", plants, bed),
  line("potted on", plants),
  line("thinned", plants, bed, count),
  line("flowered", plants, bed),
  line(
    "picked",
    plants,
    bed,
    fc.integer({ min: 1, max: 5000 }).map((grams) => ({ grams })),
  ),
  line(
    "picked",
    plants,
    bed,
    number.map((n) => ({ count: n, unit: "bunch" as const })),
  ),
  line(
    "picked",
    plants,
    bed,
    number.map((n) => ({ count: n, verb: "lifted" })),
  ),
  line(
    "measured",
    plants,
    bed,
    number.map((n) => ({ heightCm: n })),
  ),
  line(
    "did",
    plants,
    bed,
    fc.constantFrom("watered", "pruned side shoots").map((what) => ({ what, verb: "did" })),
  ),
  line(
    "trouble",
    plants,
    bed,
    fc.constantFrom("slugs", "rust").map((cause) => ({ cause })),
  ),
  line(
    "trouble",
    bed,
    fc.constantFrom("slugs", "pigeons").map((cause) => ({ cause })),
  ),
  line(
    "cured",
    plants,
    bed,
    fc.constantFrom("slugs", "rust").map((cause) => ({ cause })),
  ),
  line("lost", plants, bed, count),
  line("gave away", plants, bed, count),
  line("cleared", plants, bed),
  line("cleared", bed),
  line(
    "moved",
    plants,
    bed,
    count,
    fc.constantFrom(...beds).map((id) => ({ toBed: id })),
  ),
  line(
    "put up",
    bed,
    fc.constantFrom("arch", "mesh").map((gear) => ({ gear })),
  ),
  line(
    "took down",
    bed,
    fc.constantFrom("arch", "mesh").map((gear) => ({ gear })),
  ),
  line("soil test", bed, fc.constant({ ph: 6.4 })),
  line(
    "to do",
    bed,
    fc.constantFrom("net the brassicas", "stake the beans").map((what) => ({ what })),
  ),
  line(
    "done",
    bed,
    fc.constantFrom("netted the brassicas", "staked beans").map((what) => ({ what })),
  ),
  line("promised", bed, fc.constant({ what: "show the leeks again" })),
  line("asked", bed, fc.constant({ what: "what is it?" })),
);

const lines = fc
  .array(anyLine, { minLength: 10, maxLength: 100, size: "max" })
  .map((all) => all.toSorted((a, b) => (a[0] < b[0] ? -1 : a[0] > b[0] ? 1 : 0)));
const garden = lines.map((all) => grow({ lines: all }));
const runs = { numRuns: 300, seed: 20260718 };

function allChanges(of: Garden) {
  return [...of.changes.values()].flat();
}

describe("changes fold", () => {
  test("the state of a day and the changes after it give the state of a later day", () => {
    fc.assert(
      fc.property(garden, fc.constantFrom(...beds), day, day, (of, id, one, other) => {
        const [a, b] = one < other ? [one, other] : [other, one];
        const folded = changes(of, id, a, b).reduce<BedState>(applyChange, state(of, id, a));
        expect({ ...folded, on: b }).toEqual(state(of, id, b));
      }),
      runs,
    );
  });

  test("by way of a day between", () => {
    fc.assert(
      fc.property(garden, fc.constantFrom(...beds), fc.tuple(day, day, day), (of, id, days) => {
        const [a = "", b = "", c = ""] = days.toSorted();
        expect([...changes(of, id, a, b), ...changes(of, id, b, c)]).toEqual(changes(of, id, a, c));
      }),
      runs,
    );
  });

  test("no state is touched by reading it or by applying a change", () => {
    fc.assert(
      fc.property(garden, fc.constantFrom(...beds), day, (of, id, on) => {
        const before = state(of, id, on);
        const copy = structuredClone(before);
        for (const change of changes(of, id, on, "2030-01-01")) applyChange(before, change);
        expect(before).toEqual(copy);
        expect(state(of, id, on)).toEqual(copy);
      }),
      { ...runs, numRuns: 100 },
    );
  });
});

describe("plants are conserved", () => {
  test("in every planting at every change, while all are counted", () => {
    let counted = 0;
    fc.assert(
      fc.property(garden, (of) => {
        for (const planting of allChanges(of).flatMap(({ effect }) => effect.plantings ?? [])) {
          const { began, count: now, lost, givenAway, movedOut, thinnedOut, pickedWhole } = planting;
          if (now !== undefined) expect(now.value).toBeGreaterThanOrEqual(0);
          if (began === undefined || now === undefined || now.approx || began.approx) continue;
          counted += 1;
          expect(began.value).toBe(now.value + lost + givenAway + movedOut + thinnedOut + pickedWhole);
        }
      }),
      runs,
    );
    expect(counted).toBeGreaterThan(1000);
  });

  test("in every nursery lot: what was taken and what is left is what was sown", () => {
    let counted = 0;
    fc.assert(
      fc.property(garden, (of) => {
        for (const lot of of.nurseryLots) {
          if (lot.count === undefined || lot.left === undefined) continue;
          counted += 1;
          const taken = lot.taken.reduce((sum, taking) => sum + (taking.count ?? 0), 0);
          expect(lot.left).toBeGreaterThanOrEqual(0);
          expect(taken + lot.left).toBe(lot.count.value);
        }
      }),
      runs,
    );
    expect(counted).toBeGreaterThan(200);
  });

  test("what is planted, lost and given away never exceeds what was sown without a word about it", () => {
    let short = 0;
    fc.assert(
      fc.property(
        number,
        fc.array(fc.tuple(fc.constantFrom<EventKind>("planted", "lost", "gave away"), number), {
          minLength: 1,
          maxLength: 6,
        }),
        (sown, takings) => {
          const all: Line[] = [["2026-03-01", "sowed", { variety: "musselburgh", nursery: true, count: sown }]];
          for (const [index, [kind, n]] of takings.entries()) {
            const where = kind === "planted" ? { bed: "long-bed" } : { nursery: true };
            all.push([addDays("2026-04-01", index), kind, { variety: "musselburgh", count: n, ...where }]);
          }
          const of = grow({ lines: all });
          const wanted = takings.reduce((sum, [, n]) => sum + n, 0);
          const [lot] = of.nurseryLots;
          if (wanted <= sown) {
            expect(lot?.left).toBe(sown - wanted);
            expect(of.problems).toEqual([]);
          } else {
            short += 1;
            expect(lot?.left).toBe(0);
            expect(of.problems.length).toBeGreaterThan(0);
          }
        },
      ),
      runs,
    );
    expect(short).toBeGreaterThan(50);
  });
});

test("picked totals are the sums of what was picked", () => {
  let picked = 0;
  fc.assert(
    fc.property(lines, (all) => {
      const of = grow({ lines: all });
      const told = new Set(
        allChanges(of)
          .filter(({ kind }) => kind === "picked")
          .map(({ event }) => event),
      );
      const events = of.events.filter((event) => told.has(event.id));
      picked += events.length;
      const ends = beds.map((id) => state(of, id, "2030-01-01"));
      const totals = ends.flatMap((end) => [
        ...end.plantings.map((planting) => planting.picked),
        ...end.unassigned.map((one) => one.picked),
      ]);
      const sum = (of: (one: (typeof totals)[number]) => number) => totals.reduce((total, one) => total + of(one), 0);
      expect(sum(({ grams }) => grams)).toBe(events.reduce((total, { grams = 0 }) => total + grams, 0));
      expect(sum(({ times }) => times)).toBe(events.length);
      const pieces = events.reduce((total, { count: n }) => total + (n?.value ?? 0), 0);
      expect(sum(({ counts }) => Object.values(counts).reduce((a, b) => a + b, 0))).toBe(pieces);
    }),
    runs,
  );
  expect(picked).toBeGreaterThan(1000);
});

test("the order in which a day's notes are read makes no difference", () => {
  fc.assert(
    fc.property(lines, fc.array(fc.nat(), { minLength: 100, maxLength: 100 }), (all, keys) => {
      const records = recordsOf({ lines: all });
      const shuffled = records.events
        .map((event, index) => ({ event, key: keys[index] ?? 0 }))
        .sort((a, b) => (a.event.day < b.event.day ? -1 : a.event.day > b.event.day ? 1 : a.key - b.key))
        .map(({ event }) => event);
      const one = growGarden(records, []);
      const other = growGarden({ ...records, events: shuffled }, []);
      expect(other.changes).toEqual(one.changes);
      expect(other.nurseryLots).toEqual(one.nurseryLots);
      expect(inWords(other).problems).toEqual(inWords(one).problems);
    }),
    { ...runs, numRuns: 150 },
  );
});

test("every change is one sentence with a capital and an end, and rests on a note", () => {
  fc.assert(
    fc.property(garden, (of) => {
      for (const change of allChanges(of)) {
        const { note, day: on } = change;
        const text = changeSentence(change, of);
        expect(text).toMatch(/^[\p{Lu}\d“"].*[.?!]$/u);
        expect(text).not.toMatch(/undefined|NaN|\(s\)|\b1 (days|leeks|weeks)\b| {2}|,,|\bthe the\b/);
        expect(note.file).not.toBe("");
        expect(on).toMatch(/^\d{4}-\d\d-\d\d$/);
      }
    }),
    runs,
  );
});
