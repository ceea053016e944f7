/** Every kind of change, read whole. The measure is how a person would say it on camera. */
import { describe, expect, test } from "vitest";
import { grow, type Line, type Said } from "../timeline/small-garden.ts";

const gear = {
  "hazel-arch": { title: "Hazel arch" },
  mesh: { title: "Fine mesh" },
  pots: { title: "Thirty-litre pots" },
};

/** The sentence of the last line, in a garden with some plants in Long Bed. */
function said(kind: Line[1], what: Said, before: readonly Line[] = [], settings = {}): string | undefined {
  const day = "2026-07-10";
  const garden = grow({ gear, settings, lines: [...before, [day, kind, { bed: "long-bed", ...what }]] });
  return garden.changes.get("long-bed")?.findLast((change) => change.day === day)?.text;
}

const leeks: Line = [
  "2026-05-30",
  "planted",
  { variety: "musselburgh", bed: "long-bed", count: 24, plantsFrom: "bought" },
];
const squash: Line = [
  "2026-05-24",
  "planted",
  { variety: "crown-prince", bed: "long-bed", count: 11, plantsFrom: "bought" },
];
const kale: Line = ["2026-05-24", "planted", { variety: "nero-di-toscana", bed: "long-bed", plantsFrom: "bought" }];
const tomato: Line = [
  "2026-05-24",
  "planted",
  { variety: "ailsa-craig", bed: "long-bed", count: 1, plantsFrom: "bought" },
];
const beetroot: Line = ["2026-06-12", "sowed", { variety: "boltardy", bed: "long-bed" }];

describe("sowing and planting", () => {
  test.each<[Said, string]>([
    [{ variety: "boltardy" }, "Boltardy beetroot was sown."],
    [
      { variety: "aquadulce", count: 40, spacingCm: 20, spot: "row 2" },
      "40 Aquadulce Claudia broad beans were sown, 20 cm apart, in row 2.",
    ],
    [{ variety: "matucana", count: 1 }, "One Matucana sweet pea was sown."],
    [
      { crop: "radish", spot: "between the tomatoes", detail: "a row" },
      "Radishes were sown, between the tomatoes, a row.",
    ],
    [{ variety: "mystery", count: 6 }, "Six Mystery from the swap were sown."],
  ])("sowed %o", (what, text) => expect(said("sowed", what)).toBe(text));

  const sowing: Line = ["2026-04-21", "sowed", { variety: "crown-prince", nursery: true, count: 12 }];
  test.each<[Said, string]>([
    [
      { variety: "crown-prince", count: 11, spacingCm: 90 },
      "Eleven Crown Prince squash went in, 90 cm apart, raised from the sowing of 21 April.",
    ],
    [
      { variety: "crown-prince", count: 1, spot: "the corner by the gate" },
      "One Crown Prince squash went into the corner by the gate, raised from the sowing of 21 April.",
    ],
    [
      { variety: "crown-prince", count: { value: 8, upTo: 10, approx: true }, spot: "north end" },
      "Eight to ten Crown Prince squash went in, at the north end, raised from the sowing of 21 April.",
    ],
    [
      { variety: "crown-prince", gear: "hazel-arch" },
      "Crown Prince squash went in, on the hazel arch, raised from the sowing of 21 April.",
    ],
    [
      { variety: "musselburgh", count: 24, plantsFrom: "bought", gear: "mesh" },
      "24 bought-in Musselburgh leeks went in, under the fine mesh.",
    ],
    [
      { variety: "musselburgh", count: 5, plantsFrom: "given", gear: "pots" },
      "Five Musselburgh leeks went into the thirty-litre pots, a gift.",
    ],
    [
      { variety: "musselburgh", count: { value: 10, approx: true }, plantsFrom: "bought", detail: "firmed in well" },
      "About ten bought-in Musselburgh leeks went in, firmed in well.",
    ],
  ])("planted %o", (what, text) => expect(said("planted", what, [sowing])).toBe(text));

  test("a sowing of last year is said with its year when it could be mistaken", () => {
    const old: Line = ["2025-11-20", "sowed", { variety: "victoria", nursery: true, count: 3 }];
    expect(said("planted", { variety: "victoria", count: 2 }, [old])).toBe(
      "Two Victoria rhubarb went in, raised from the sowing of 20 November 2025.",
    );
  });
});

describe("growth", () => {
  test.each<[Line[1], Said, Line, string]>([
    ["up", { variety: "boltardy" }, beetroot, "The Boltardy beetroot came up, four weeks after sowing."],
    [
      "up",
      { variety: "boltardy", detail: "patchy" },
      beetroot,
      "The Boltardy beetroot came up, four weeks after sowing, patchy.",
    ],
    ["thinned", { variety: "boltardy", count: 20 }, beetroot, "The Boltardy beetroot was thinned to 20."],
    ["thinned", { variety: "boltardy", spacingCm: 10 }, beetroot, "The Boltardy beetroot was thinned to 10 cm apart."],
    [
      "flowered",
      { variety: "crown-prince", verb: "first flower" },
      squash,
      "The Crown Prince squash showed their first flower.",
    ],
    [
      "flowered",
      { variety: "crown-prince", verb: "first female flower" },
      squash,
      "The Crown Prince squash showed their first female flower.",
    ],
    [
      "flowered",
      { variety: "ailsa-craig", verb: "first flower" },
      tomato,
      "The Ailsa Craig tomato showed its first flower.",
    ],
    ["flowered", { variety: "nero-di-toscana", verb: "in flower" }, kale, "The Nero di Toscana kale was in flower."],
    [
      "flowered",
      { variety: "nero-di-toscana", verb: "came into flower" },
      kale,
      "The Nero di Toscana kale came into flower.",
    ],
    ["fruited", { variety: "crown-prince", verb: "set fruit" }, squash, "The Crown Prince squash set fruit."],
    ["fruited", { variety: "ailsa-craig", verb: "first fruit" }, tomato, "The Ailsa Craig tomato set its first fruit."],
    [
      "measured",
      { variety: "crown-prince", heightCm: 42, text: "42 cm tall" },
      squash,
      "The Crown Prince squash stood 42 cm tall.",
    ],
    [
      "measured",
      { variety: "crown-prince", heightCm: 240, text: "2.4 m long" },
      squash,
      "The Crown Prince squash were 2.4 m long.",
    ],
    ["measured", { variety: "crown-prince", grams: 4200 }, squash, "The Crown Prince squash weighed 4.2 kg."],
    ["potted on", { variety: "musselburgh" }, leeks, "The Musselburgh leeks were potted on."],
  ])("%s %o", (kind, what, before, text) => expect(said(kind, what, [before])).toBe(text));

  test("what grew since it was last measured", () => {
    const before: Line = ["2026-06-20", "measured", { variety: "crown-prince", bed: "long-bed", heightCm: 30 }];
    expect(said("measured", { variety: "crown-prince", heightCm: 42 }, [squash, before])).toBe(
      "The Crown Prince squash stood 42 cm tall, 12 cm more than on 20 June.",
    );
  });
});

describe("pickings", () => {
  const picked: Line = ["2026-07-01", "picked", { variety: "musselburgh", bed: "long-bed", grams: 100 }];
  test.each<[Said, readonly Line[], string]>([
    [{ variety: "musselburgh", grams: 1400 }, [leeks], "The first picking of Musselburgh leeks came to 1.4 kg."],
    [{ variety: "musselburgh", grams: 1400 }, [leeks, picked], "The Musselburgh leeks gave 1.4 kg."],
    [{ variety: "musselburgh", count: 5, verb: "lifted" }, [leeks], "The first five Musselburgh leeks were lifted."],
    [
      { variety: "musselburgh", count: 1, verb: "dug up", grams: 300 },
      [leeks, picked],
      "One Musselburgh leek was dug, 300 g.",
    ],
    [{ variety: "musselburgh", count: 1 }, [leeks], "The first Musselburgh leek was picked."],
    [
      { variety: "musselburgh", count: 3, unit: "bunch" },
      [leeks, picked],
      "Three bunches were picked from the Musselburgh leeks.",
    ],
    [
      { variety: "musselburgh", count: 1, unit: "crate", verb: "harvested" },
      [leeks, picked],
      "One crate was harvested from the Musselburgh leeks.",
    ],
    [{ variety: "musselburgh", litres: 0.5 }, [leeks, picked], "The Musselburgh leeks gave 500 ml."],
    [{ variety: "musselburgh" }, [leeks, picked], "The Musselburgh leeks were picked."],
    [{ variety: "nero-di-toscana" }, [kale], "The first Nero di Toscana kale was picked."],
    [{ crop: "tomato", grams: 2000 }, [tomato], "The first picking of Ailsa Craig tomatoes came to 2 kg."],
  ])("%o", (what, before, text) => expect(said("picked", { verb: "picked", ...what }, before)).toBe(text));

  test.each<[Said, string]>([
    [{ variety: "musselburgh", grams: 30 }, "30 g of seed was saved from the Musselburgh leeks."],
    [
      { variety: "musselburgh", count: { value: 60, approx: true }, text: "saved seed: about 60 seeds" },
      "About 60 seeds were saved from the Musselburgh leeks.",
    ],
    [
      { variety: "musselburgh", count: 2, text: "saved seed: 2 Musselburgh" },
      "Seed was saved from two Musselburgh leeks.",
    ],
    [{ variety: "musselburgh" }, "Seed was saved from the Musselburgh leeks."],
  ])("saved seed %o", (what, text) => expect(said("saved seed", what, [leeks])).toBe(text));
});

describe("partings", () => {
  test.each<[Line[1], Said, Line, string]>([
    [
      "lost",
      { variety: "musselburgh", count: 3, cause: "leek moth" },
      leeks,
      "Three Musselburgh leeks were lost to leek moth.",
    ],
    ["lost", { variety: "musselburgh", count: 1 }, leeks, "One Musselburgh leek was lost."],
    ["lost", { variety: "musselburgh", cause: "rust" }, leeks, "The Musselburgh leeks were lost to rust."],
    [
      "lost",
      { variety: "musselburgh", cause: "rust", text: "lost some leeks to rust" },
      leeks,
      "Some of the Musselburgh leeks were lost to rust.",
    ],
    [
      "gave away",
      { variety: "musselburgh", count: 4, detail: "to the school" },
      leeks,
      "Four Musselburgh leeks were given away, to the school.",
    ],
    ["gave away", { variety: "nero-di-toscana" }, kale, "Some of the Nero di Toscana kale was given away."],
    ["cleared", { variety: "crown-prince" }, squash, "The Crown Prince squash were cleared."],
    ["cleared", { variety: "ailsa-craig" }, tomato, "The Ailsa Craig tomato was cleared."],
    ["cleared", {}, squash, "Long Bed was cleared."],
    [
      "moved",
      { variety: "musselburgh", count: 5, toBed: "bean-row" },
      leeks,
      "Five Musselburgh leeks moved to Bean Row.",
    ],
    ["moved", { variety: "musselburgh", toBed: "bean-row" }, leeks, "The Musselburgh leeks moved to Bean Row."],
  ])("%s %o", (kind, what, before, text) => expect(said(kind, what, [before])).toBe(text));

  test("plants that come from another bed", () => {
    const garden = grow({
      lines: [
        leeks,
        [
          "2026-07-10",
          "moved",
          { variety: "musselburgh", bed: "long-bed", toBed: "bean-row", count: 5, spot: "row 1" },
        ],
      ],
    });
    expect(garden.changes.get("bean-row")?.[0]?.text).toBe("Five Musselburgh leeks came over from Long Bed, in row 1.");
  });
});

describe("work", () => {
  const dahlias: readonly Line[] = [leeks, squash];
  test.each<[Said, string]>([
    [{ crop: "leek", verb: "did", what: "pruned side shoots, all leeks" }, "Side shoots were pruned on the leeks."],
    [
      { variety: "musselburgh", verb: "watered", what: "watered Musselburgh leeks" },
      "The Musselburgh leeks were watered.",
    ],
    [
      { variety: "musselburgh", verb: "fed", what: "fed Musselburgh with seaweed" },
      "The Musselburgh leeks were fed with seaweed.",
    ],
    [
      { variety: "musselburgh", verb: "fed", what: "fed Musselburgh, sulphur chips, as the packet says" },
      "The Musselburgh leeks were fed, sulphur chips, as the packet says.",
    ],
    [{ crop: "squash", verb: "pinched", what: "pinched the tips out" }, "The tips were pinched out on the squash."],
    [{ crop: "squash", verb: "pinched out", what: "pinched out the tips" }, "The tips were pinched out on the squash."],
    [{ crop: "leek", verb: "earthed up", what: "earthed up all leeks" }, "The leeks were earthed up."],
    [{ verb: "weeded", what: "weeded and hoed Long Bed" }, "Long Bed was weeded and hoed."],
    [
      { verb: "mulched", what: "mulched Long Bed, leaf mould, through the sieve" },
      "Long Bed was mulched, leaf mould, through the sieve.",
    ],
    [{ verb: "did", what: "cut the tops off, to ground level" }, "The tops were cut off, to ground level."],
    [{ verb: "did", what: "new boards on Long Bed, the path side" }, "Work on Long Bed: new boards, the path side."],
    [
      { variety: "crown-prince", verb: "tied in", what: "tied in Crown Prince" },
      "The Crown Prince squash were tied in.",
    ],
    [{ crop: "leek", verb: "did", what: "took the lower leaves off" }, "The lower leaves were taken off the leeks."],
    [
      { crop: "leek", verb: "did", what: "took the lower leaves off the leeks against blight" },
      "The lower leaves were taken off the leeks against blight.",
    ],
    [
      { crop: "leek", verb: "watered", what: "watered everything, four cans to the leeks" },
      "Everything was watered, four cans to the leeks.",
    ],
    [
      { verb: "did", what: "tied in, everything that had fallen over" },
      "Long Bed was tied in, everything that had fallen over.",
    ],
    [{ verb: "did", what: "tidied everything that had fallen over" }, "Everything that had fallen over was tidied."],
  ])("%o", (what, text) => expect(said("did", what, dahlias)).toBe(text));

  test("of a line that names several plants is told once", () => {
    const what = "mulched Musselburgh and Crown Prince, straw, a foot of it";
    const file = "notes/2026-07-10.md";
    const both = grow({
      lines: [
        ...dahlias,
        [
          "2026-07-10",
          "did",
          { variety: "musselburgh", bed: "long-bed", verb: "mulched", what, place: { file, line: 3, column: 1 } },
        ],
        [
          "2026-07-10",
          "did",
          { variety: "crown-prince", bed: "long-bed", verb: "mulched", what, place: { file, line: 3, column: 1 } },
        ],
      ],
    });
    expect(
      both.changes
        .get("long-bed")
        ?.filter(({ kind }) => kind === "did")
        .map(({ text, effect }) => [text, effect.plantings?.length]),
    ).toEqual([["The Musselburgh leeks and Crown Prince squash were mulched, straw, a foot of it.", 2]]);
  });
});

describe("troubles, gear and questions", () => {
  test.each<[Line[1], Said, string]>([
    [
      "trouble",
      { variety: "musselburgh", cause: "leek moth", detail: "mines in the young leaves" },
      "Leek moth showed up on the Musselburgh leeks, mines in the young leaves.",
    ],
    ["trouble", { cause: "slugs" }, "Slugs showed up in Long Bed."],
    ["trouble", { cause: "deer", variety: "musselburgh" }, "Deer got at the Musselburgh leeks."],
    ["put up", { gear: "mesh", detail: "over the leeks" }, "The fine mesh went up over the leeks."],
    ["put up", { what: "bird netting", detail: "over the figs" }, "Bird netting went up over the figs."],
    ["asked", { what: "which variety is the red lettuce?" }, "A viewer asked: which variety is the red lettuce?"],
    ["promised", { what: "show the leeks again in July" }, "Promised to viewers: show the leeks again in July."],
    ["soil test", { ph: 6.4 }, "The soil tested at pH 6.4."],
  ])("%s %o", (kind, what, text) => expect(said(kind, what, [leeks])).toBe(text));
});

describe("a garden in US units and another language for its days", () => {
  const american = { units: "us", language: "en-US" };
  test("says its own", () => {
    const sowing: Line = ["2026-04-21", "sowed", { variety: "crown-prince", nursery: true, count: 12 }];
    expect(said("planted", { variety: "crown-prince", count: 11, spacingCm: 91.44 }, [sowing], american)).toBe(
      "Eleven Crown Prince squash went in, 36 inches apart, raised from the sowing of April 21.",
    );
    expect(said("picked", { variety: "crown-prince", grams: 1360.77711, verb: "picked" }, [squash], american)).toBe(
      "The first picking of Crown Prince squash came to 3 lb.",
    );
  });
});
