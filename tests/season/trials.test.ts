/** Trials from their records and note lines: which line is of which arm, what it measures, what may be said. */
import { describe, expect, it } from "vitest";
import { noWeather } from "../../src/almanac/index.ts";
import type { PhotoMeasure } from "../../src/model.ts";
import { seasonBook, seasonProblems } from "../../src/season/index.ts";
import { oneIn } from "../../src/season/recap-words/english-trials.ts";
import { trialResult } from "../../src/season/trial-results.ts";
import { type Files, gardenOf } from "../tour/garden-of.ts";

const today = "2026-09-01";

function cabbages(
  lines: Readonly<Record<string, string>>,
  trial: Partial<Record<"arms" | "measure" | "status", string>> = {},
): Files {
  return {
    "beds/brassica-bed.md": "---\ntitle: Brassica Bed\n---\n",
    "varieties/greyhound.md": "---\ntitle: Greyhound\ncrop: cabbage\n---\n",
    "trials/net.md": `---
title: Net or no net
question: Does a net help?
arms: ${trial.arms ?? "[{name: netted row, variety: greyhound, bed: brassica-bed}, {name: bare row, variety: greyhound, bed: brassica-bed}]"}
measure: ${trial.measure ?? "kilograms a head at picking"}
started: 2026-04-01
${trial.status === undefined ? "" : `status: ${trial.status}`}
---
`,
    "notes/2026-04-25.md":
      "- planted 8 bought Greyhound in Brassica Bed, row 1, netted row\n- planted 8 bought Greyhound in Brassica Bed, row 2, bare row\n",
    ...Object.fromEntries(Object.entries(lines).map(([day, text]) => [`notes/${day}.md`, text])),
  };
}

async function resultOf(files: Files) {
  const garden = await gardenOf(files, today);
  const trial = garden.trials.get("net");
  if (trial === undefined) throw new Error("no trial was read");
  return { garden, result: trialResult(seasonBook(garden, noWeather, today), trial) };
}

const picked = (row: "1, netted" | "2, bare", kg: number, heads: number) =>
  `- picked ${kg} kg Greyhound from Brassica Bed, row ${row} row, ${heads} heads\n`;

describe("a trial of three against three", () => {
  const lines = {
    "2026-06-20": picked("1, netted", 2.1, 3) + picked("2, bare", 1.3, 2),
    "2026-06-27": picked("1, netted", 1.7, 2) + picked("2, bare", 0.9, 2),
    "2026-07-11": `${picked("1, netted", 0.9, 1)}${picked("2, bare", 0.5, 1)}- lost 1 Greyhound to clubroot, from Brassica Bed, row 2, bare row\n`,
  };

  it("can't be settled, and says so with its odds", async () => {
    const { result } = await resultOf(cabbages(lines));
    // Three against three: the smallest two-sided p is 2 of 20 splits, one in ten.
    expect(result.measures[0]?.verdict.text).toBe(
      "The netted row averaged 783 g a head, six heads in three pickings; the bare row averaged 540 g a head, five heads in three pickings. Three against three pickings can't settle this: even a clean split of that size happens one time in ten by chance. Worth repeating with eight a side.",
    );
    expect(result.besides?.text).toBe("Beside that, the bare row lost one plant to clubroot.");
    expect(result.measures[0]?.compared?.comparison.permutation).toMatchObject({ p: 0.1, exact: true });
    expect(result.measures[0]?.verdict.sources.map(({ file }) => file)).toContain("notes/2026-07-11.md");
  });

  it("shows every figure", async () => {
    const { result } = await resultOf(cabbages(lines));
    expect(result.measures[0]?.arms.map(({ figures }) => figures.map(({ value }) => Math.round(value)))).toEqual([
      [700, 850, 900],
      [650, 450, 500],
    ]);
  });

  it("leaves out lines that name neither row", async () => {
    const { result } = await resultOf(
      cabbages({ ...lines, "2026-07-20": "- picked 9 kg Greyhound from Brassica Bed, 1 head\n" }),
    );
    expect(result.measures[0]?.arms.map(({ figures }) => figures.length)).toEqual([3, 3]);
  });
});

describe("what may be said", () => {
  it("grows with the number of figures, and stays with one garden", async () => {
    const days = ["06-20", "06-24", "06-28", "07-02", "07-06", "07-10"];
    const { result } = await resultOf(
      cabbages(
        Object.fromEntries(
          days.map((day, at) => [
            `2026-${day}`,
            picked("1, netted", 2 + at / 10, 2) + picked("2, bare", 1 + at / 10, 2),
          ]),
        ),
      ),
    );
    // Six against six, clean: 2 of C(12, 6) = 924 splits.
    expect(result.measures[0]?.verdict.text).toMatch(
      /The netted row came out ahead, six against six pickings: a difference as large comes up only one time in 462 by chance; the true gap may lie anywhere from \d+ g to \d+ g\. That is one garden and one season\.$/,
    );
  });

  it("is nothing of a difference that chance makes as well", async () => {
    const weights = [2, 1, 2.2, 1.1, 1.9];
    const { result } = await resultOf(
      cabbages(
        Object.fromEntries(
          weights.map((kg, at) => [
            `2026-07-${10 + at}`,
            picked("1, netted", kg, 2) + picked("2, bare", weights[(at + 2) % 5] as number, 2),
          ]),
        ),
      ),
    );
    expect(result.measures[0]?.verdict.text).toContain("There is no difference between them, five against five.");
  });

  it("is one figure a side where a whole arm was weighed together", async () => {
    const { result } = await resultOf(
      cabbages({ "2026-07-01": picked("1, netted", 3, 4) + picked("2, bare", 2, 4) }, { measure: "kilograms picked" }),
    );
    expect(result.measures[0]?.verdict.text).toBe(
      "The netted row gave 3 kg from eight plants, 375 g a plant; the bare row gave 2 kg from eight plants, 250 g a plant. Each side was added up as one lot, and one against one can't tell the arms from chance.",
    );
  });

  it("counts clean roots in so many", async () => {
    const { result } = await resultOf(
      cabbages(
        {
          "2026-07-01": "- picked 20 heads Greyhound from Brassica Bed, row 1, 12 clean, netted row\n",
          "2026-07-08": "- picked 20 heads Greyhound from Brassica Bed, row 1, 7 clean, netted row\n",
        },
        { measure: "clean heads in every twenty" },
      ),
    );
    expect(result.measures[0]?.verdict.text).toBe(
      "19 of 40 heads from the netted row were clean. Nothing is noted yet for the bare row, so there is nothing to set against it.",
    );
  });

  it("is nothing where no figure is noted", async () => {
    const { result } = await resultOf(cabbages({}));
    expect(result.measures[0]?.verdict.text).toBe("No figures are noted for either side yet.");
  });
});

describe("a trial set up so that it can tell nothing", () => {
  it("has one arm", async () => {
    const { garden, result } = await resultOf(cabbages({}, { arms: "[{name: netted row, variety: greyhound}]" }));
    expect(seasonProblems(garden)).toMatchObject([
      {
        rule: "trial/one-arm",
        file: "trials/net.md",
        what: 'The trial "Net or no net" has one arm, so there is nothing to compare.',
      },
    ]);
    expect(result.measures).toEqual([]);
  });

  it("has arms that overlap", async () => {
    const { garden, result } = await resultOf(
      cabbages(
        {},
        { arms: "[{name: the row, variety: greyhound}, {name: Row, variety: greyhound, bed: brassica-bed}]" },
      ),
    );
    expect(seasonProblems(garden).map(({ rule }) => rule)).toEqual(["trial/arms-overlap"]);
    expect(result.measures).toEqual([]);
  });
});

describe("chance in words", () => {
  it.each([
    [0.1, "one time in ten"],
    [0.0286, "one time in 35"],
    [0.5, "about every second time"],
    [1, "nearly every time"],
    [0, "one time in 1,000,000"],
  ])("%d is %s", (p, said) => {
    expect(oneIn(p)).toBe(said);
  });
});

describe("photos as a measure", () => {
  const files: Files = {
    "beds/left-bed.md": "---\ntitle: Left Bed\n---\n",
    "beds/right-bed.md": "---\ntitle: Right Bed\n---\n",
    "varieties/greyhound.md": "---\ntitle: Greyhound\ncrop: cabbage\n---\n",
    "notes/2026-04-25.md":
      "- planted 8 bought Greyhound in Left Bed\n- planted 8 bought Greyhound in Right Bed\n- measured Greyhound 20 cm tall in Left Bed\n",
    "trials/net.md": `---
title: Compost or none
question: Does compost fill the bed sooner?
arms: [{name: left bed, variety: greyhound, bed: left-bed}, {name: right bed, variety: greyhound, bed: right-bed}]
measure: green cover; height
started: 2026-04-01
---
`,
  };
  const photo = (bed: string, day: string, cover: number, heightCm?: number): PhotoMeasure => ({
    photo: `photos/${bed}/gate/${day}.jpg`,
    bed,
    viewpoint: "gate",
    day,
    cover,
    coverOf: "bed",
    aligned: true,
    heights: heightCm === undefined ? [] : [{ variety: "greyhound", heightCm, uncertaintyCm: 1 }],
  });
  const photos = [
    photo("left-bed", "2026-03-20", 0.9),
    photo("left-bed", "2026-06-20", 0.3),
    photo("left-bed", "2026-07-20", 0.61, 30),
    photo("right-bed", "2026-07-20", 0.4, 24),
  ];

  async function measured(more: Files = {}) {
    const garden = { ...(await gardenOf({ ...files, ...more }, today)), growth: { photos } };
    const trial = garden.trials.get("net");
    if (trial === undefined) throw new Error("no trial was read");
    return trialResult(seasonBook(garden, noWeather, today), trial).measures;
  }

  it("cover is that of each bed's last photo, and one bed a side settles nothing", async () => {
    const [cover] = await measured();
    expect(cover?.verdict.text).toBe(
      "The left bed was 61 % green in its last photo; the right bed was 40 % green in its last photo. One bed stands for each side, and one against one can't tell the arms from chance.",
    );
    expect(cover?.verdict.sources.map(({ file }) => file)).toContain("photos/left-bed/gate/2026-07-20.jpg");
  });

  it("heights seen against a stake stand beside those measured with a rule", async () => {
    const [, height] = await measured();
    expect(height?.arms.map(({ figures }) => figures.map(({ value }) => value))).toEqual([[20, 30], [24]]);
  });

  it("cover tells nothing of arms that share a bed", async () => {
    const shared = files["trials/net.md"]?.replace("bed: right-bed", "bed: left-bed") ?? "";
    const [cover] = await measured({ "trials/net.md": shared });
    expect(cover?.arms.every(({ figures }) => figures.length === 0) ?? true).toBe(true);
  });
});
