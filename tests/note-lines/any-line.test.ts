/** Properties of reading and writing lines: whatever is written, nothing throws; what is printed is read again. */
import fc from "fast-check";
import { expect, test } from "vitest";
import type { Event, EventKind } from "../../src/model.ts";
import { crops, printEvent, readNoteLine, verbTable } from "../../src/records/index.ts";
import { factsOf, gardenNames, noteDay, place, readLine } from "./a-garden.ts";

/** One record of names for all properties: building it is slower than reading. */
const names = gardenNames();

// --------------------------------------------------------------------------------------------------------------- any text

const verbs = verbTable.flatMap((verb) => [...verb.forms, ...Object.values(verb.guarded ?? {}).flat()]);
const pieces = [
  ...[
    "12",
    "½",
    "1 1/2",
    "8-10",
    "about",
    "a",
    "dozen",
    "kg",
    "lb",
    "in",
    "cm",
    "apart",
    "°C",
    "pH",
    "6.4",
    "x",
    "/",
    "-",
    "'",
    '"',
  ],
  ...[
    "Musselburgh",
    "leek",
    "Long Bed",
    "the",
    "Cold Frame",
    "arch",
    "mesh",
    "row 2",
    "by the gate",
    "between",
    "of",
    "and",
    ",",
  ],
  ...[
    ":",
    "(",
    ")",
    "to",
    "from",
    "on",
    "under",
    "indoors",
    "in trays",
    "yesterday",
    "last",
    "Tuesday",
    "3 May",
    "by Friday",
    "each",
  ],
  ...[
    "some",
    "Zorblax",
    "quim",
    "every",
    "bought",
    "given",
    "left",
    "stems",
    "rows",
    "&",
    "–",
    "…",
    "🌱",
    "é",
    "\u0301",
    "‑",
  ],
];
const wordy = fc
  .tuple(fc.constantFrom(...verbs, "", "Long Bed:", "sowd"), fc.array(fc.constantFrom(...pieces), { maxLength: 14 }))
  .map(([verb, rest]) => `${verb} ${rest.join(" ")}`);

test("no text makes reading throw, and reading twice says the same", () => {
  const texts = fc.oneof(
    fc.string({ unit: "grapheme", maxLength: 120 }),
    wordy,
    fc.string({ unit: "binary", maxLength: 60 }),
  );
  const beds = fc.subarray(["long-bed", "cold-frame"]);
  fc.assert(
    fc.property(texts, beds, fc.constantFrom("metric", "us"), (text, noteBeds, units) => {
      const once = readLine(text, { beds: noteBeds, units, names });
      expect(readLine(text, { beds: noteBeds, units, names })).toEqual(once);
      for (const event of once?.events ?? []) {
        expect(event.text).toBe(text);
        expect(() => printEvent(event, names)).not.toThrow();
      }
    }),
    { numRuns: 3000 },
  );
});

test("a list item of several pages is story, and takes no time", () => {
  const long = `planted ${"some of those there ".repeat(100_000)}`;
  expect(readLine(long)).toBeUndefined();
  const atMost = `planted ${"so ".repeat(1200)}`;
  const began = performance.now();
  readLine(atMost);
  expect(performance.now() - began).toBeLessThan(2000);
});

test("every line of one event carries its place and its note's privacy", () => {
  const note = { id: "n", day: noteDay, private: true };
  const read = readNoteLine(
    { text: "planted 6 Crown Prince and 4 Uchiki Kuri in Squash Bed", more: ["watered in"], place },
    { note, beds: [], names: gardenNames() },
  );
  expect(
    read?.events.map(({ id, private: hidden, more, verb, place: where }) => ({ id, hidden, more, verb, where })),
  ).toEqual([
    { id: "notes/2026-05-20.md:7", hidden: true, more: ["watered in"], verb: "planted", where: place },
    { id: "notes/2026-05-20.md:7/2", hidden: true, more: ["watered in"], verb: "planted", where: place },
  ]);
});

test('a list below "to do" gives a thing to do for each', () => {
  const read = readLine("to do by Friday:", { more: ["net the brassicas", "order garlic"] });
  expect(read?.events.map(factsOf)).toEqual([
    { kind: "to do", what: "net the brassicas", due: "2026-05-22" },
    { kind: "to do", what: "order garlic", due: "2026-05-22" },
  ]);
});

// ------------------------------------------------------------------------------------------------------- parse(print(e)) = e

const varieties = [
  "musselburgh",
  "black-beauty",
  "crown-prince",
  "cafe-au-lait",
  "sungold",
  "gardeners-delight",
  "lady-in-red",
];
const beds = ["long-bed", "cold-frame", "squash-bed", "brassica-bed", "tunnel-north"];
const some = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });

const counts = fc
  .record({
    value: fc.integer({ min: 1, max: 400 }),
    more: fc.option(fc.integer({ min: 1, max: 20 })),
    approx: fc.boolean(),
  })
  .map(({ value, more, approx }) => ({ value, ...(more === null ? {} : { upTo: value + more }), approx }));
const plants = fc.oneof(
  fc.constantFrom(...varieties).map((variety) => ({ variety })),
  fc.constantFrom(...crops).map(({ id }) => ({ crop: id })),
);
const measures = fc.integer({ min: 1, max: 99_999 }).map((tenths) => tenths / 10);
const bed = fc.constantFrom(...beds);
const spots = fc.constantFrom(
  "row 2",
  "rows 1-3",
  "by the gate",
  "the north end",
  "the corner by the gate",
  "next to the leeks",
  "between the tomatoes",
);
const details = fc.constantFrom(
  "4 trays",
  "growing tips",
  "rather late",
  "mind the slugs",
  "the first lot never showed",
  "best so far",
  "(windfalls)",
);
const causes = fc.constantFrom("leek moth", "slugs", "late frost", "blossom end rot", "carrot fly");
const doings = fc.constantFrom(
  "pruned side shoots",
  "net the brassicas again",
  "show the gate",
  "look under the cloth",
  "why so thin?",
);
const reasons = fc.constantFrom(
  ...["because of the moth last year", "because they were in the way", "so that the air gets through"],
  ...["to keep the pigeons off", "to keep the frost away", "in order to try both"],
);
const prices = fc.constantFrom("£4", "$3 each", "50p a bunch", "4 € the lot", "two dollars", "a tenner");
const givers = fc.constantFrom("a neighbour", "the plant swap", "Aunt May", "next door");
const states = fc.constantFrom(
  ...["thriving", "rather sorry for themselves", "knee high and not a slug on them", "a week behind last year"],
  ...["as tall as the fence", "sulking in the cold"],
);
const plans = ["make room at the back", "try two rows next year", "move half of it in spring", "no more of those"];
const dues = fc.constantFrom("2026-06-20", "2026-12-31", "2027-02-28");
const units = fc.constantFrom(
  ...(["stem", "bunch", "head", "fruit", "pod", "punnet", "crate", "root", "bulb", "ear", "handful", "piece"] as const),
);

/** The facts that an event of each kind may carry. */
const factsByKind: Readonly<Record<EventKind, fc.Arbitrary<Partial<Event>>>> = {
  sowed: fc
    .tuple(
      plants,
      some(counts),
      fc.oneof(
        bed.map((id) => ({ bed: id })),
        fc.constant({ nursery: true }),
      ),
      some(spots),
      some(details),
    )
    .map(([plant, count, where, spot, detail]) => ({
      ...plant,
      count,
      ...where,
      spot: "bed" in where ? spot : undefined,
      detail,
    })),
  up: about({ count: some(counts), bed: some(bed), detail: some(details) }),
  "potted on": about({ count: some(counts), detail: some(details) }),
  planted: about({
    count: some(counts),
    bed,
    spacingCm: some(measures),
    spot: some(spots),
    gear: some(fc.constantFrom("arch", "mesh-tunnel")),
    plantsFrom: some(fc.constantFrom("bought" as const, "given" as const)),
    price: some(prices),
    reason: some(reasons),
    detail: some(details),
  }),
  thinned: about({ count: some(counts), bed: some(bed), reason: some(reasons), detail: some(details) }),
  did: fc.record({
    ...{ what: doings, bed: some(bed), variety: some(fc.constantFrom(...varieties)) },
    ...{ reason: some(reasons), price: some(prices) },
  }),
  flowered: about({ bed: some(bed), detail: some(details) }),
  fruited: about({ bed: some(bed), detail: some(details) }),
  picked: fc
    .tuple(
      plants,
      fc.oneof(
        fc.record({ count: counts, unit: units, grams: some(measures) }),
        fc.record({ grams: measures }),
        fc.record({ litres: measures }),
      ),
      some(bed),
      some(details),
    )
    .map(([plant, amount, from, detail]) => ({ ...plant, ...amount, bed: from, detail })),
  measured: about({ heightCm: measures, bed: some(bed) }),
  "soil test": fc.record({
    bed,
    ph: fc.integer({ min: 20, max: 120 }).map((tenths) => tenths / 10),
    celsius: some(fc.integer({ min: -20, max: 45 })),
  }),
  trouble: about({ cause: causes, bed: some(bed), detail: some(details) }),
  cured: about({ cause: causes, bed: some(bed), detail: some(details) }),
  lost: about({ count: some(counts), bed: some(bed), cause: some(causes), detail: some(details) }),
  "gave away": about({ count: some(counts), bed: some(bed), detail: some(details) }),
  cleared: about({ bed: some(bed), reason: some(reasons), detail: some(details) }),
  moved: about({ count: some(counts), bed: some(bed), toBed: bed, spot: some(spots), reason: some(reasons) }).filter(
    (facts) => facts.bed !== facts.toBed,
  ),
  "put up": fc.record({
    gear: fc.constantFrom("arch", "mesh-tunnel"),
    bed: some(bed),
    spot: some(spots),
    reason: some(reasons),
    detail: some(details),
  }),
  "took down": fc.record({ gear: fc.constantFrom("arch", "mesh-tunnel"), bed: some(bed), detail: some(details) }),
  "to do": fc.record({ what: doings, due: some(dues), bed: some(bed), variety: some(fc.constantFrom(...varieties)) }),
  done: fc.record({ what: doings, bed: some(bed) }),
  promised: fc.record({ what: doings, due: some(dues), bed: some(bed), variety: some(fc.constantFrom(...varieties)) }),
  asked: fc.record({ what: doings, bed: some(bed) }),
  "saved seed": about({ count: some(counts), grams: some(measures), detail: some(details) }),
  acquired: fc.oneof(
    about({
      count: some(counts),
      plantsFrom: some(fc.constantFrom("bought" as const, "given" as const)),
      from: some(givers),
      bed: some(bed),
      price: some(prices),
      reason: some(reasons),
      detail: some(details),
    }),
    fc.record({
      ...{ gear: fc.constantFrom("arch", "mesh-tunnel"), from: some(givers) },
      ...{ bed: some(bed), price: some(prices), detail: some(details) },
    }),
    fc.record({
      ...{ what: fc.constantFrom("cold frame lid", "11 bags of bark", "spare cloche"), from: some(givers) },
      ...{ bed: some(bed), price: some(prices), detail: some(details) },
    }),
  ),
  volunteer: about({ count: some(counts), bed: some(bed), spot: some(spots), detail: some(details) }),
  "came back": about({ count: some(counts), bed: some(bed), detail: some(details) }),
  doing: fc.oneof(
    about({ what: states, bed: some(bed), count: some(counts) }),
    fc.record({ what: states, bed: some(bed) }),
  ),
  preserved: fc
    .tuple(
      fc.oneof(
        fc.integer({ min: 1, max: 60 }).map((value) => ({ said: `${value} jars`, count: { value, approx: false } })),
        measures.map((grams) => ({ said: `${grams} g`, grams })),
        measures.map((litres) => ({ said: `${litres} litres`, litres })),
      ),
      fc.constantFrom(
        ...[{ crop: "blackcurrant" }, { crop: "tomato" }, { variety: "sungold" }, { variety: "crown-prince" }],
      ),
      fc.boolean(),
      some(bed),
      some(reasons),
    )
    .map(([{ said, ...amount }, plant, named, from, reason]) => ({
      ...amount,
      ...plant,
      what: named ? `${said} of ${"crop" in plant ? plant.crop : plant.variety.replace("-", " ")}` : `${said}, the lot`,
      bed: from,
      reason,
    })),
  sold: fc
    .tuple(
      plants,
      fc.oneof(
        fc.record({ count: counts, unit: some(units) }),
        fc.record({ grams: measures }),
        fc.record({ litres: measures }),
      ),
      fc.record({ bed: some(bed), price: some(prices), reason: some(reasons), detail: some(details) }),
    )
    .map(([plant, amount, rest]) => ({ ...plant, ...amount, ...rest })),
  plan: fc.record({
    ...{ what: fc.constantFrom(...plans), due: some(dues), bed: some(bed), reason: some(reasons) },
    variety: some(fc.constantFrom(...varieties)),
  }),
};

function about(facts: { readonly [K in keyof Event]?: fc.Arbitrary<Event[K]> }): fc.Arbitrary<Partial<Event>> {
  return fc.tuple(plants, fc.record(facts)).map(([plant, rest]) => ({ ...plant, ...(rest as Partial<Event>) }));
}

const kinds = Object.keys(factsByKind) as EventKind[];

test("all kinds are written and read", () => {
  expect(kinds.length).toBe(31);
});

test.each(kinds)("%s: what is written is read again", (kind) => {
  fc.assert(
    fc.property(factsByKind[kind], fc.array(details, { maxLength: 2 }), (facts, more) => {
      const event: Event = {
        id: "x:1",
        kind,
        day: noteDay,
        verb: kind,
        text: "",
        place,
        private: false,
        more,
        ...facts,
      };
      const [text = "", ...nested] = printEvent(event, names).split("\n  - ");
      const read = readLine(text, { more: nested, names });
      expect([text, read?.events.map(factsOf)]).toEqual([text, [factsOf(event)]]);
    }),
    { numRuns: 300 },
  );
});

test.each<EventKind>(["planted", "acquired", "picked", "lost", "gave away", "cleared", "saved seed", "thinned", "up"])(
  "%s: every crop of the table is written and read again, one of it and several",
  (kind) => {
    const events = crops.flatMap(({ id }) =>
      [1, 3].map(
        (value): Event => ({
          ...{ id: "x:1", kind, day: noteDay, verb: kind, text: "", place, private: false, more: [] },
          ...{ crop: id, count: { value, approx: false }, bed: "long-bed" },
          ...(kind === "picked" ? { unit: "fruit" } : {}),
        }),
      ),
    );
    const lines = events.map((event) => printEvent(event, names));
    expect(lines.map((line) => [line, readLine(line, { names })?.events.map(factsOf)])).toEqual(
      events.map((event, at) => [lines[at], [factsOf(event)]]),
    );
  },
);
