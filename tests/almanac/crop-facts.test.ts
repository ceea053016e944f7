import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import {
  airborne,
  allCropFacts,
  areaPerPlant,
  cannerLoads,
  canningCautions,
  canningFactFor,
  canningFacts,
  cropFacts,
  gramsForJars,
  meanPh,
  phQuarrels,
  phRange,
  phStanding,
  rotationRule,
  rotationRules,
  soilDiseases,
  yieldPerPlant,
} from "../../src/almanac/index.ts";
import { crops } from "../../src/records/index.ts";

const known = new Map(crops.map((crop) => [crop.id, crop]));
const pounds = (grams: number) => grams / 453.59237;

describe("crop facts", () => {
  it("are of crops the records know, each once, with sources", () => {
    expect(allCropFacts.length).toBeGreaterThan(65);
    expect(allCropFacts.filter(({ crop }) => !known.has(crop))).toEqual([]);
    expect(new Set(allCropFacts.map(({ crop }) => crop)).size).toBe(allCropFacts.length);
    for (const { maturity, inRowCm, betweenRowsCm, rowYield, ph, heat } of allCropFacts) {
      for (const fact of [maturity, inRowCm, betweenRowsCm, rowYield, ph, heat])
        if (fact !== undefined) expect(fact.source.title).not.toBe("");
    }
  });

  // K-State MF315 per 100 ft of row; worked by hand: 25 ft of snap beans 30 lb, 10 ft of tomatoes 10 lb, 40 ft of potatoes 40 lb.
  it.each([
    ["french-bean", 25, 30],
    ["tomato", 10, 10],
    ["potato", 40, 40],
  ])("%s: %d ft of row give %d lb", (crop, feet, expected) => {
    const fact = cropFacts(crop)?.rowYield;
    const value = fact?.value as { gramsPerMetre: number };
    expect(pounds(value.gramsPerMetre * feet * 0.3048)).toBeCloseTo(expected, 6);
    expect(fact?.source).toEqual({
      title: "Kansas State University, Vegetable Garden Planting Guide (MF315)",
      fromMemory: false,
    });
  });

  it("stand as they were checked: a figure changes only together with its line here", () => {
    const range = (value: { readonly from: number; readonly to: number } | undefined, per = 1) =>
      value === undefined
        ? "-"
        : `${Math.round((value.from / per) * 100) / 100}-${Math.round((value.to / per) * 100) / 100}`;
    const lines = allCropFacts.map(({ crop, maturity, inRowCm, betweenRowsCm, rowYield, hardiness, ph, heat }) =>
      [
        crop,
        `${range(maturity?.value)} ${maturity?.value.counted ?? ""}`.trim(),
        range(inRowCm?.value, 2.54),
        range(betweenRowsCm?.value, 2.54),
        rowYield === undefined
          ? "-"
          : "gramsPerMetre" in rowYield.value
            ? `${Math.round(pounds(rowYield.value.gramsPerMetre) * 30.48)} lb`
            : `${Math.round(rowYield.value.piecesPerMetre * 30.48)} ${rowYield.value.unit}`,
        hardiness?.value ?? "-",
        range(ph?.value),
        heat === undefined ? "-" : `${heat.value.method} ${Math.round(heat.value.base * 10) / 10}`,
      ].join(" | "),
    );
    const checked = readFileSync(path.join(import.meta.dirname, "checked-crop-facts.txt"), "utf8");
    expect(lines).toEqual(checked.trimEnd().split("\n"));
  });

  it("keep what is counted apart from what is weighed", () => {
    expect(cropFacts("sweetcorn")?.rowYield?.value).toEqual({ piecesPerMetre: 120 / 30.48, unit: "ear" });
    expect(yieldPerPlant("sweetcorn")?.value).not.toHaveProperty("grams");
    // Tomatoes: 100 lb from 100 ft at 27 in, 44.4 plants, 2.25 lb a plant (computed).
    expect(pounds(yieldPerPlant("tomato")?.value.grams ?? 0)).toBeCloseTo(2.25, 6);
    expect(yieldPerPlant("dahlia")).toBeUndefined();
  });

  it("say what is from memory", () => {
    expect(cropFacts("leek")?.rowYield?.source.fromMemory).toBe(true);
    expect(cropFacts("cabbage")?.rowYield?.source.fromMemory).toBe(false);
    expect(cropFacts("tomato")?.inRowCm?.source.fromMemory).toBe(true);
    // Bases: University of Maryland 50 °F for warm crops, University of Delaware 40 °F for peas and cole crops.
    expect(cropFacts("tomato")?.heat).toMatchObject({ value: { base: 10 }, source: { fromMemory: false } });
    expect(cropFacts("pea")?.heat.value.base).toBeCloseTo(4.444, 3);
    expect(cropFacts("sweetcorn")?.heat.value).toEqual({ method: "limits first", base: 10, cap: 30 });
  });

  it("give each plant its ground", () => {
    expect(areaPerPlant("leek", 15)).toBeCloseTo(0.0225, 9);
    expect(areaPerPlant("tomato")).toBeCloseTo(0.6858 ** 2, 4);
    expect(areaPerPlant("nothing known")).toBeUndefined();
    expect(areaPerPlant("leek", 0)).toBeGreaterThan(0);
  });
});

describe("soil pH", () => {
  // Computed: the mean of pH 5 and 6 by hydrogen ions is 5.26.
  it("is averaged as hydrogen ions", () => {
    expect(meanPh([5, 6])).toBeCloseTo(5.26, 2);
    expect(meanPh([6.4])).toBeCloseTo(6.4, 9);
    expect(meanPh([])).toBeUndefined();
  });

  it("stands to a crop's range", () => {
    const cabbage = phRange("cabbage")?.value ?? { from: 0, to: 0 };
    expect([5.4, 5.5, 5.9, 6, 7.5, 7.6, 8, 8.1].map((ph) => phStanding(ph, cabbage))).toEqual([
      "too acid",
      "a little acid",
      "a little acid",
      "right",
      "right",
      "a little limy",
      "a little limy",
      "too limy",
    ]);
  });

  it("sets blueberries apart from vegetables", () => {
    expect(phQuarrels(["cabbage", "blueberry", "gooseberry", "kale", "potato"])).toEqual([
      ["blueberry", "cabbage"],
      ["blueberry", "gooseberry"],
      ["blueberry", "kale"],
    ]);
    expect(phQuarrels(["cabbage", "leek"])).toEqual([]);
  });
});

describe("rotation", () => {
  it("knows families by today's names", () => {
    const families = new Set(crops.map(({ family }) => family));
    expect([...rotationRules, ...soilDiseases].filter(({ family }) => !families.has(family))).toEqual([]);
    expect(rotationRule("Polygonaceae")).toBeUndefined();
    expect(rotationRule("Brassicaceae")?.years).toBe(3);
    expect(soilDiseases.find(({ cause }) => cause.test("clubroot"))?.years).toBe(7);
  });

  // Families as each page names them, read there: West Virginia's five, Kansas's column, Sacramento's ten.
  it("cites for a family only a page that names it, and its interval", () => {
    const named: Readonly<Record<string, readonly [years: readonly number[], families: readonly string[]]>> = {
      "West Virginia": [
        [2, 3],
        ["Solanaceae", "Brassicaceae", "Amaryllidaceae", "Cucurbitaceae", "Fabaceae"],
      ],
      "K-State": [[3], ["Solanaceae", "Brassicaceae", "Apiaceae", "Amaranthaceae", "Amaryllidaceae", "Fabaceae"]],
      "UC Master Gardeners": [[2], ["Amaryllidaceae", "Amaranthaceae", "Brassicaceae", "Asteraceae", "Apiaceae"]],
    };
    for (const { family, years, source, reasonSource } of rotationRules) {
      const page = Object.entries(named).find(([title]) => source.title.startsWith(title))?.[1];
      expect.soft(page?.[1], family).toContain(family);
      expect.soft(page?.[0], family).toContain(years);
      expect.soft(reasonSource.fromMemory, family).toBe(true);
    }
  });

  it("sells another bed as no cure for what comes through the air", () => {
    expect(airborne.find(({ cause }) => cause.test("powdery mildew"))?.why).toContain("through the air");
    expect(soilDiseases.some(({ cause }) => cause.test("powdery mildew"))).toBe(false);
  });
});

describe("canning", () => {
  const of = (words: string) => canningFactFor(words);

  // USDA Complete Guide, Guide 3: 21 lb of tomatoes fill 7 quarts, 13 lb 9 pints; the rest computed from those.
  it("reckons quarts and pints by their own columns", () => {
    const tomatoes = of("tomatoes");
    if (tomatoes === undefined) throw new Error("no row for tomatoes");
    expect(pounds(gramsForJars(tomatoes, 7, "quart"))).toBeCloseTo(21, 9);
    expect(pounds(gramsForJars(tomatoes, 14, "quart"))).toBeCloseTo(42, 9);
    expect(pounds(gramsForJars(tomatoes, 1, "pint"))).toBeCloseTo(1.444, 3);
    expect(cannerLoads(14, "quart")).toEqual({ full: 2, over: 0 });
    expect(cannerLoads(10, "quart")).toEqual({ full: 1, over: 3 });
  });

  it("tells products of one crop apart", () => {
    expect(
      ["thick tomato sauce", "tomato sauce", "tomato juice", "crushed tomatoes", "our own tomatoes"].map(
        (words) => of(words)?.product,
      ),
    ).toEqual(["thick tomato sauce", "tomato sauce", "tomato juice", "crushed tomatoes", "tomatoes"]);
  });

  it("reads words whole, and the head noun decides", () => {
    expect([of("apple sauce")?.fresh, of("applesauce")?.fresh, of("green beans")?.fresh, of("Beets")?.product]).toEqual(
      ["apples", "apples", "green beans", "beetroot"],
    );
    for (const unknown of [
      "sauce",
      "cranberry sauce",
      "chilli sauce",
      "cornichons",
      "pineapple",
      "sweet peas",
      "tomato soup",
      "tomato ketchup",
      "tomato chutney",
      "peach jam",
      "baked beans",
      "broad beans",
      "runner beans",
      "pickled beetroot",
      "peanuts",
      "corn relish",
      "apple butter",
      "carrot cake",
      "peas and carrots",
    ])
      expect(of(unknown), unknown).toBeUndefined();
  });

  it("always carries its cautions", () => {
    for (const fact of canningFacts) {
      const said = canningCautions(fact).join(" ");
      expect(said).toContain("tested recipe");
      expect(said).toContain("look up your own");
      if (fact.acid === "low") expect(said).toContain("pressure canner");
      if (fact.crops.includes("tomato")) expect(said).toContain("need acid");
    }
  });
});
