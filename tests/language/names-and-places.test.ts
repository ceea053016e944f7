/** Small words: names in sentences, places in beds, names hard to say, phrasing by id, sums of pickings. */
import { describe, expect, test } from "vitest";
import { yearBefore } from "../../src/calendar.ts";
import { secondsToSay } from "../../src/films/film-time.ts";
import { againstLastYear, onDay, type Voice, whenDone } from "../../src/language/days-said.ts";
import { looksHardToSay } from "../../src/language/hard-names.ts";
import { sayPicked, sayPickedOf } from "../../src/language/harvests.ts";
import { inTurn, oneOf } from "../../src/language/phrasing.ts";
import { bedVerb, inBed, isGround, theBed, theGear, withPreposition } from "../../src/language/places.ts";
import { cultivar, isUnnamed, label, plantName } from "../../src/language/plant-names.ts";
import { fromWords } from "../../src/language/sources.ts";
import { comparable, pickedInAll } from "../../src/picked.ts";
import { crops } from "../../src/records/index.ts";
import { gardenOf } from "../tour/garden-of.ts";

const { settings } = await gardenOf({}, "2026-06-19");
const crop = (id: string) => crops.find((one) => one.id === id);
const variety = (title: string) => ({
  id: title,
  title,
  private: false,
  body: "",
  described: true,
  alsoSpelled: [],
  perennial: false,
});

test("beds are said as people say them", () => {
  expect(
    [
      "Long Bed",
      "Tunnel North",
      "Tunnel Left",
      "Tomato Pots",
      "Nan's corner",
      "Gullstone bed",
      "Bed 3",
      "The Arch",
      "Block Two",
      "Wicking Bed Three",
    ].map((title) => theBed({ title })),
  ).toEqual([
    "the long bed",
    "the tunnel's north side",
    "the tunnel's left side",
    "the tomato pots",
    "Nan's corner",
    "the Gullstone bed",
    "bed 3",
    "the arch",
    "Block Two",
    "Wicking Bed Three",
  ]);
  expect(inBed({ title: "Tunnel North" })).toBe("on the tunnel's north side");
  expect(inBed({ title: "Long Bed" })).toBe("in the long bed");
  expect(bedVerb({ title: "Tomato Pots" }, "is", "are")).toBe("are");
  expect(bedVerb({ title: "Cress" }, "is", "are")).toBe("is");
  expect(isGround({ title: "Tomato Pots", built: [] })).toBe(false);
  expect(isGround({ title: "Long Bed", built: [{ what: "larch boards on edge" }] })).toBe(true);
});

test("a spot as noted becomes part of a sentence", () => {
  expect(
    [
      "row 2",
      "pots 1 to 4, the door end",
      "the corner by the gate",
      "by the gate",
      "north end",
      "between the tomatoes",
      "middle",
    ].map(withPreposition),
  ).toEqual([
    "in row 2",
    "in pots 1 to 4, the door end",
    "in the corner by the gate",
    "by the gate",
    "at the north end",
    "between the tomatoes",
    "in the middle",
  ]);
  expect(theGear("Hazel arch")).toBe("the hazel arch");
});

test("varieties and crops, one and many", () => {
  const leek = { variety: variety("Musselburgh"), crop: crop("leek") };
  expect([plantName(leek), plantName(leek, 1), cultivar(leek), label(leek)]).toEqual([
    "Musselburgh leeks",
    "Musselburgh leek",
    "Musselburgh",
    "Musselburgh, leek",
  ]);
  const named = { variety: variety("Red Baron onion"), crop: crop("onion") };
  expect([plantName(named), cultivar(named), label(named)]).toEqual([
    "Red Baron onions",
    "Red Baron",
    "Red Baron onion",
  ]);
  const unnamed = { variety: variety("Lettuce"), crop: crop("lettuce") };
  expect([plantName(unnamed), isUnnamed(unnamed), isUnnamed(leek)]).toEqual(["lettuces", true, false]);
});

describe("names that look hard to say", () => {
  test("to a reader of English", () => {
    const hard = [
      "Uchiki Kuri",
      "Musselburgh",
      "Café au Lait",
      "Nero di Toscana",
      "Aquadulce",
      "Rouge Vif d'Étampes",
      "Noire de Crimée",
      "Żółty",
    ];
    const easy = [
      "Crown Prince",
      "Boltardy",
      "Red Baron",
      "Black Beauty",
      "Gardener's Delight",
      "Painted Lady",
      "Tender and True",
    ];
    expect(hard.filter((name) => !looksHardToSay(name))).toEqual([]);
    expect(easy.filter((name) => looksHardToSay(name))).toEqual([]);
  });
});

test("days are said from the filming day", () => {
  const voice: Voice = { settings, day: "2026-06-19" };
  expect(
    ["2026-06-19", "2026-06-18", "2026-06-16", "2026-06-12", "2025-06-19", "2026-06-20"].map((day) =>
      onDay(day, voice),
    ),
  ).toEqual(["today", "yesterday", "on Tuesday", "on 12 June", "on 19 June 2025", "tomorrow"]);
  expect([
    whenDone("2023-03", voice),
    whenDone("2023", voice),
    whenDone("2026-03-14", voice),
    whenDone(undefined, voice),
  ]).toEqual(["in March 2023", "in 2023", "on 14 March", ""]);
  expect(yearBefore("2024-02-29")).toBe("2023-02-28");
  expect(
    ["2025-06-25", "2025-06-16", "2025-06-15", "2025-06-09"].map((last) => againstLastYear("2026-06-16", last)),
  ).toEqual([
    "nine days earlier than last year",
    "on the same day as last year",
    "a day later than last year",
    "a week later than last year",
  ]);
});

test("one way to say a thing for one id, the next way for the next turn", () => {
  const ways = ["a", "b", "c"] as const;
  expect(oneOf("long-bed", ways)).toBe(oneOf("long-bed", ways));
  expect(new Set(Array.from({ length: 30 }, (_, n) => oneOf(`bed-${n}`, ways))).size).toBe(3);
  const turns = [0, 1, 2, 3].map((turn) => inTurn("long-bed", turn, ways));
  expect(new Set(turns.slice(0, 3)).size).toBe(3);
  expect(turns[3]).toBe(turns[0]);
});

describe("sums of pickings", () => {
  const sum = (...harvests: Parameters<typeof pickedInAll>[0][number]["harvest"][]) =>
    pickedInAll(harvests.map((harvest) => ({ harvest, day: "2026-06-01" })));
  const count = (value: number) => ({ value, approx: false });

  test("a crate that was weighed is told once", () => {
    const roots = sum({ grams: 900, count: count(20), unit: "root" }, { grams: 1400, count: count(20), unit: "root" });
    expect(sayPicked(roots, settings)).toBe("40 roots, 2.3 kg");
    expect(sayPickedOf(roots, "Early Nantes carrots", settings)).toBe(
      "40 roots of Early Nantes carrots, 2.3 kg in all",
    );
  });

  test("pieces that were never weighed stand beside a weight; a half-weighed lot is told by its number", () => {
    expect(sayPicked(sum({ grams: 1200 }, { count: count(5), unit: "head" }), settings)).toBe("1.2 kg and five heads");
    expect(
      sayPicked(sum({ grams: 500, count: count(2), unit: "head" }, { count: count(3), unit: "head" }), settings),
    ).toBe("five heads");
    expect(sayPicked(sum({}), settings)).toBeUndefined();
    expect(sayPicked(sum({ count: count(1), unit: "bunch" }), settings)).toBe("one bunch");
  });

  test("only like is compared with like", () => {
    expect(comparable(sum({ grams: 500 }), sum({ grams: 900 }))).toBe(true);
    expect(comparable(sum({ grams: 500 }), sum({ count: count(5), unit: "stem" }))).toBe(false);
    expect(comparable(sum({}), sum({}))).toBe(false);
  });
});

test("where it came from", () => {
  expect([
    fromWords({ name: "own saved seed", obtained: "saved", year: 2025 }),
    fromWords({ name: "Wilma", obtained: "saved" }),
    fromWords({ name: "Saltmarsh Hall seed swap", obtained: "swapped", year: 2026 }),
    fromWords({ name: "Wilma", obtained: "swapped" }),
    fromWords({ name: "Drift Lane Seeds", obtained: "bought" }),
    fromWords({ name: "Drift Lane Seeds", obtained: "paid promotion" }),
    fromWords({ name: "Dougal in the tunnel" }),
    fromWords(undefined, "given"),
    fromWords(undefined),
  ]).toEqual([
    "own saved seed, 2025",
    "own saved seed, from Wilma",
    "Saltmarsh Hall seed swap, 2026",
    "Wilma, swapped",
    "Drift Lane Seeds, bought",
    "Drift Lane Seeds, paid promotion",
    "Dougal in the tunnel",
    "given as plants",
    "not known",
  ]);
});

test("time to say a sentence: 150 words at 150 a minute take 60 s, 65 words at 130 take 30 s (by arithmetic)", () => {
  expect(secondsToSay(Array.from({ length: 150 }, () => "word").join(" "), 150)).toBe(60);
  expect(secondsToSay(Array.from({ length: 65 }, () => "word").join(" "), 130)).toBe(30);
  expect(secondsToSay("", 130)).toBe(0);
});
