/** Trials from their records and note lines: which line is of which arm, what it measures, what may be said. */
import { describe, expect, it } from "vitest";
import { noWeather } from "../../src/almanac/index.ts";
import type { PhotoMeasure, Trial } from "../../src/model.ts";
import { seasonBook, seasonProblems } from "../../src/season/index.ts";
import { oneIn } from "../../src/season/recap-words/trial-words.ts";
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

const alone = "One row a side is one against one, however often it was picked, and settles nothing.";

describe("one row a side", () => {
  const lines = {
    "2026-06-20": picked("1, netted", 2.1, 3) + picked("2, bare", 1.3, 2),
    "2026-06-27": picked("1, netted", 1.7, 2) + picked("2, bare", 0.9, 2),
    "2026-07-11": `${picked("1, netted", 0.9, 1)}${picked("2, bare", 0.5, 1)}- lost 1 Greyhound to clubroot, from Brassica Bed, row 2, bare row\n`,
  };

  it("is one against one, and says what was seen and what would settle it", async () => {
    const { result } = await resultOf(cabbages(lines));
    expect(result.measures[0]?.verdict.text).toBe(
      `The netted row averaged 783 g a head, six heads in three pickings; the bare row averaged 540 g a head, five heads in three pickings. ${alone} Four rows a side, the arms in turn, would begin to tell.`,
    );
    expect(result.besides?.text).toBe("Beside that, the bare row lost one plant to clubroot.");
    expect(result.measures[0]?.verdict.sources.map(({ file }) => file)).toContain("notes/2026-07-11.md");
  });

  it("names no winner however often and however clearly it was picked", async () => {
    const days = Array.from({ length: 12 }, (_, at) => `2026-07-${10 + at}`);
    const { result } = await resultOf(
      cabbages(Object.fromEntries(days.map((day) => [day, picked("1, netted", 4, 2) + picked("2, bare", 1, 2)]))),
    );
    expect(result.measures[0]?.verdict.text).toContain(`24 heads in twelve pickings. ${alone}`);
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

  it("weighs every head alike: many light ones of one day are many", async () => {
    // Netted 10 of 990 g and four of about 500; bare ten of 700 and four of about 1,175: 851 and 836 g a head.
    const { result } = await resultOf(
      cabbages({
        "2026-06-20": picked("1, netted", 9.9, 10) + picked("2, bare", 1.2, 1),
        "2026-06-24": picked("1, netted", 0.5, 1) + picked("2, bare", 1.15, 1),
        "2026-06-26": picked("1, netted", 0.52, 1) + picked("2, bare", 1.18, 1),
        "2026-06-27": picked("1, netted", 1, 2) + picked("2, bare", 8.2, 11),
      }),
    );
    const [measure] = result.measures;
    expect(measure?.arms.map(({ mean }) => Math.round(mean ?? 0))).toEqual([851, 838]);
    expect(measure?.compared).toMatchObject({ higher: "netted row", lower: "bare row" });
    expect(measure?.compared?.comparison.difference).toBeCloseTo(851.43 - 837.86, 1);
  });
});

/** Rows of two treatments in turn in one bed, or in beds of so many rows. */
function rows(
  netted: readonly number[],
  bare: readonly number[],
  { perBed = 100, order = (at: number) => at % 2 === 0, measure = "kilograms a head at picking" } = {},
): Files {
  const all: { name: string; kg: number; row: number }[] = [];
  const [left, right] = [[...netted], [...bare]];
  for (let at = 0; left.length + right.length > 0; at += 1) {
    const first = order(at) ? left.length > 0 : right.length === 0;
    all.push({ name: first ? "netted row" : "bare row", kg: (first ? left : right).shift() ?? 0, row: at });
  }
  const bedOf = (row: number) => `Bed ${"ABCDEFGH"[Math.floor(row / perBed)]}`;
  const beds = [...new Set(all.map(({ row }) => bedOf(row)))];
  const line = (row: number) => `${bedOf(row)}, row ${(row % perBed) + 1}`;
  return {
    ...Object.fromEntries(
      beds.map((bed) => [`beds/${bed.toLowerCase().replace(" ", "-")}.md`, `---\ntitle: ${bed}\n---\n`]),
    ),
    "varieties/greyhound.md": "---\ntitle: Greyhound\ncrop: cabbage\n---\n",
    "trials/net.md": `---
title: Net or no net
question: Does a net help?
arms: [{name: netted row, variety: greyhound}, {name: bare row, variety: greyhound}]
measure: ${measure}
started: 2026-04-01
---
`,
    "notes/2026-04-25.md": all
      .map(({ name, row }) => `- planted 8 bought Greyhound in ${line(row)}, ${name}\n`)
      .join(""),
    "notes/2026-07-01.md": all
      .map(({ name, kg, row }) => `- picked ${kg} kg Greyhound from ${line(row)}, ${name}, 4 heads\n`)
      .join(""),
    "notes/2026-07-08.md": all
      .map(({ name, kg, row }) => `- picked ${kg} kg Greyhound from ${line(row)}, ${name}, 4 heads\n`)
      .join(""),
    "notes/2026-07-20.md": beds.map((bed) => `- cleared Greyhound from ${bed}\n`).join(""),
  };
}

describe("several rows a side", () => {
  it("can show a difference, once however often they are picked", async () => {
    const { result } = await resultOf(rows([4, 4.4, 4.2, 4.6], [3, 3.4, 3.2, 3.6]));
    // Four rows against four, clean: 2 of C(8, 4) = 70 splits.
    expect(result.measures[0]?.verdict.text).toBe(
      "The netted row averaged 1.08 kg a head over four rows, 32 heads in eight pickings; the bare row averaged 825 g a head over four rows, 32 heads in eight pickings. The netted row came out ahead, four rows against four: a difference as large comes up only one time in 35 by chance; the true gap may lie anywhere from 100 g to 400 g. That is one garden and one season.",
    );
  });

  it("too few of them can't, and say how many would", async () => {
    const { result } = await resultOf(rows([4, 4.4, 4.2], [3, 4.1, 3.2]));
    expect(result.measures[0]?.verdict.text).toMatch(
      /Three rows against three can't settle this: the best that size could show happens one time in ten by chance, and this is no clean split\. A difference of this size, with rows as uneven as these, takes about seven a side to show\.$/,
    );
  });

  it("says when no garden could show a difference so small", async () => {
    const { result } = await resultOf(rows([4, 4.4, 3.2, 3.64], [3, 4.6, 3.5, 4.1]));
    expect(result.measures[0]?.verdict.text).toMatch(
      /does not stand out from chance: four rows against four, and one as large comes up nearly every time by chance; the true gap may be anything from \d+ g the other way to \d+ g\. No garden can show a difference this small: with rows as uneven as these it would take about 59,000 a side\.$/,
    );
  });

  it("of one treatment next to one another are one", async () => {
    const { result } = await resultOf(rows([4, 4.4, 4.2, 4.6], [3, 3.4, 3.2, 3.6], { order: (at) => at < 4 }));
    expect(result.measures[0]?.verdict.text).toContain(`32 heads in eight pickings. ${alone}`);
  });

  it("of one treatment in a bed of their own are one bed", async () => {
    const { result } = await resultOf(
      rows([4, 4.4, 4.2, 4.6], [3, 3.4, 3.2, 3.6], { order: (at) => at < 4, perBed: 4 }),
    );
    expect(result.measures[0]?.verdict.text).toContain(
      "One bed a side is one against one, however often it was picked, and settles nothing.",
    );
  });

  it("are set against one another within their beds", async () => {
    // Six beds from poor to rich, a row of each in every one: 2 of 64 ways to change the sides.
    const poorToRich = [1, 2, 3, 4, 5, 6];
    const { result } = await resultOf(
      rows(
        poorToRich.map((kg) => kg + 0.4),
        poorToRich,
        { perBed: 2 },
      ),
    );
    expect(result.measures[0]?.compared?.comparison.permutation).toMatchObject({ asLarge: 2, splits: 64 });
    expect(result.measures[0]?.verdict.text).toContain("The netted row came out ahead, six rows against six");
  });

  it("in a line that names none of them can't be dealt out", async () => {
    const files = rows([4, 4.4, 4.2, 4.6], [3, 3.4, 3.2, 3.6]);
    const { result } = await resultOf({
      ...files,
      "notes/2026-07-05.md": "- picked 3 kg Greyhound from Bed A, netted row, 2 heads\n",
    });
    expect(result.measures[0]?.verdict.text).toContain(
      "Not every line says which row it is of, so they can't be set against each other.",
    );
  });

  it("that were lost altogether count as nothing gained", async () => {
    const files = rows([4, 4.4, 4.2, 4.6], [3, 3.4, 3.2, 3.6], { measure: "kilograms picked" });
    const without = (text: string) => text.replace(/^- picked .* row 1, .*\n/m, "");
    const { result } = await resultOf({
      ...files,
      "notes/2026-06-01.md": "- lost 8 Greyhound in Bed A, row 1, netted row, to slugs\n",
      "notes/2026-07-01.md": without(files["notes/2026-07-01.md"] ?? ""),
      "notes/2026-07-08.md": without(files["notes/2026-07-08.md"] ?? ""),
    });
    const [netted] = result.measures[0]?.arms ?? [];
    expect(netted?.plots.map(({ value }) => value)).toEqual([1100, 1050, 1150, 0]);
    expect(result.measures[0]?.verdict.text).toContain(
      "The netted row averaged 825 g a plant over four rows, 26.4 kg in all",
    );
  });

  it("are corrected for every measure looked at", async () => {
    const { result } = await resultOf(
      rows([4, 4.4, 4.2, 4.6], [3, 3.4, 3.2, 3.6], { measure: "kilograms a head at picking; kilograms picked" }),
    );
    expect(result.measures.map(({ verdict }) => /can't settle this: even a clean split/.test(verdict.text))).toEqual([
      true,
      true,
    ]);
  });

  it("give the mirrored sentence when the arms change their names", async () => {
    const swap = (text: string | undefined) =>
      text?.replaceAll("netted", "@").replaceAll("bare", "netted").replaceAll("@", "bare");
    for (const [a, b] of [
      [
        [4, 4.4, 4.2, 4.6],
        [3, 3.4, 3.2, 3.6],
      ],
      [
        [4, 4.4, 4.2],
        [3, 4.1, 3.2],
      ],
      [
        [4, 4.4, 3.2, 3.64],
        [3, 4.6, 3.5, 4.1],
      ],
    ] as const) {
      const files = rows(a, b);
      const swapped = Object.fromEntries(Object.entries(files).map(([file, text]) => [file, swap(text) ?? ""]));
      const [one, other] = [await resultOf(files), await resultOf(swapped)];
      expect(other.result.measures[0]?.verdict.text).toBe(swap(one.result.measures[0]?.verdict.text));
    }
  });
});

describe("what may be set against what", () => {
  it("pickings weeks apart may not, and are told with their days", async () => {
    const early = ["06-01", "06-03", "06-05", "06-07"].map((day) => [`2026-${day}`, picked("1, netted", 1, 2)]);
    const late = ["07-20", "07-22", "07-24", "07-26"].map((day) => [`2026-${day}`, picked("2, bare", 1.6, 2)]);
    const { result } = await resultOf(cabbages(Object.fromEntries([...early, ...late])));
    expect(result.measures[0]?.verdict.text).toBe(
      `The netted row averaged 500 g a head, eight heads in four pickings from 1 June to 7 June; the bare row averaged 800 g a head, eight heads in four pickings from 20 July to 26 July. They were picked too far apart in time to be set against each other. ${alone} Four rows a side, the arms in turn, would begin to tell.`,
    );
    expect(result.measures[0]?.compared).toBeUndefined();
  });

  it("one picking against twenty: those of the same days", async () => {
    const twenty = Array.from({ length: 20 }, (_, at) => `2026-07-${String(at + 1).padStart(2, "0")}`);
    const { result } = await resultOf(
      cabbages(
        Object.fromEntries(
          twenty.map((day, at) => [day, picked("2, bare", 1 + at, 2) + (at === 0 ? picked("1, netted", 3, 2) : "")]),
        ),
      ),
    );
    expect(result.measures[0]?.verdict.text).toContain(
      "the bare row averaged 1.25 kg a head, eight heads in four pickings from 1 July to 4 July, with 16 pickings at another time left out.",
    );
  });

  it("a whole arm weighed together is told by the plant", async () => {
    const { result } = await resultOf(
      cabbages(
        {
          "2026-07-01": `${picked("1, netted", 3, 4)}${picked("2, bare", 2, 4)}- cleared Greyhound from Brassica Bed\n`,
        },
        { measure: "kilograms picked" },
      ),
    );
    expect(result.measures[0]?.verdict.text).toBe(
      "The netted row gave 3 kg from eight plants, 375 g a plant; the bare row gave 2 kg from eight plants, 250 g a plant. One row a side is one against one and settles nothing. Four rows a side, the arms in turn, would begin to tell.",
    );
  });

  it("totals may not while some are still picked, unless the trial is over", async () => {
    const lines = { "2026-07-01": picked("1, netted", 3, 4) + picked("2, bare", 2, 4) };
    const still = "Some are still growing, so there are no totals to set against each other yet.";
    const running = await resultOf(cabbages(lines, { measure: "kilograms picked" }));
    expect(running.result.measures[0]?.verdict.text).toContain(still);
    const settled = await resultOf(cabbages(lines, { measure: "kilograms picked", status: "settled" }));
    expect(settled.result.measures[0]?.verdict.text).not.toContain(still);
  });

  describe("days", () => {
    const two = (left: string, right: string, more: Readonly<Record<string, string>> = {}): Files => ({
      "beds/left-bed.md": "---\ntitle: Left Bed\n---\n",
      "beds/right-bed.md": "---\ntitle: Right Bed\n---\n",
      "varieties/greyhound.md": "---\ntitle: Greyhound\ncrop: cabbage\n---\n",
      "trials/net.md": `---
title: Compost or none
question: Is it sooner?
arms: [{name: left bed, variety: greyhound, bed: left-bed}, {name: right bed, variety: greyhound, bed: right-bed}]
measure: days to the first picking
started: 2026-04-01
---
`,
      "notes/2026-04-25.md": left,
      "notes/2026-05-25.md": right,
      ...more,
    });
    const both = {
      "notes/2026-07-10.md": "- picked 1 kg Greyhound from Left Bed\n",
      "notes/2026-07-12.md": "- picked 1 kg Greyhound from Right Bed\n",
    };

    it("of a sowing may not be set against those of plants set out", async () => {
      const { result } = await resultOf(
        two("- sowed 8 Greyhound in Left Bed\n", "- planted 8 bought Greyhound in Right Bed\n", both),
      );
      expect(result.measures[0]?.verdict.text).toMatch(
        /^The left bed took 76 days from sowing; the right bed took 48 days from planting\. One was sown in its place and another planted out, so their days can't be set against each other\./,
      );
    });

    it("count from the same thing where every planting has it", async () => {
      const { result } = await resultOf(
        two("- planted 8 bought Greyhound in Left Bed\n", "- planted 8 bought Greyhound in Right Bed\n", both),
      );
      expect(result.measures[0]?.verdict.text).toMatch(
        /^The left bed took 76 days from planting; the right bed took 48 days from planting\. One bed a side is/,
      );
    });

    it("that are not over yet decide nothing, nor do rows that never came to it", async () => {
      const files = rows([4, 4.4, 4.2, 4.6], [3, 3.4, 3.2, 3.6], { measure: "days to the first picking" });
      const without = Object.fromEntries(
        Object.entries(files).map(([file, text]) => [file, text.replace(/^- picked .* row 1, .*\n/m, "")]),
      );
      const failed = await resultOf(without);
      expect(failed.result.measures[0]?.verdict.text).toMatch(
        /Some plantings never came to it, so the days of the others don't tell which was sooner\.$/,
      );
      const going = await resultOf({ ...without, "notes/2026-07-20.md": "" });
      expect(going.result.measures[0]?.verdict.text).toMatch(
        /Not every planting has come to it yet, so there is nothing to decide\.$/,
      );
      expect([failed, going].map(({ result }) => result.measures[0]?.compared)).toEqual([undefined, undefined]);
    });
  });
});

describe("what may be said", () => {
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
    [0.34, "one time in three"],
    [0.41, "four times in ten"],
    [0.5, "every second time"],
    [0.94, "nine times in ten"],
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

  it("cover is that of photos of one day, and one bed a side settles nothing", async () => {
    const [cover] = await measured();
    expect(cover?.verdict.text).toBe(
      "On 20 July the left bed was 61 % green; the right bed was 40 % green. One bed a side is one against one and settles nothing. Five beds a side, the arms in turn, would begin to tell.",
    );
    expect(cover?.verdict.sources.map(({ file }) => file)).toContain("photos/left-bed/gate/2026-07-20.jpg");
  });

  it("heights seen against a stake stand beside those measured with a rule, and are compared on one day", async () => {
    const [, height] = await measured();
    expect(height?.arms.map(({ figures }) => figures.map(({ value }) => value))).toEqual([[20, 30], [24]]);
    expect(height?.verdict.text).toMatch(/^On 20 July the left bed stood 30 cm tall; the right bed stood 24 cm tall\./);
  });

  it("heights of May are not set against heights of July", async () => {
    const weeks = ["05-01", "05-08", "05-15", "05-22"].map((day, at) => [
      `notes/2026-${day}.md`,
      `- measured Greyhound ${6 + 3 * at} cm tall in Right Bed\n`,
    ]);
    const trial = files["trials/net.md"]?.replace("green cover; height", "height") ?? "";
    const late = { "notes/2026-07-31.md": "- measured Greyhound 41 cm tall in Left Bed\n", "trials/net.md": trial };
    const only = await gardenOf({ ...files, ...Object.fromEntries(weeks), ...late }, today);
    const result = trialResult(seasonBook(only, noWeather, today), only.trials.get("net") as Trial);
    // The left bed was measured on 25 April and on 31 July, the right bed in May.
    expect(result.measures[0]?.verdict.text).toMatch(
      /^The left bed stood 41 cm tall on 31 July; the right bed stood 15 cm tall on 22 May\. They were never measured at the same time, and plants grow on, so these figures can't be set against each other\./,
    );
  });

  it("cover tells nothing of arms that share a bed", async () => {
    const shared = files["trials/net.md"]?.replace("bed: right-bed", "bed: left-bed") ?? "";
    const [cover] = await measured({ "trials/net.md": shared });
    expect(cover?.arms.every(({ figures }) => figures.length === 0) ?? true).toBe(true);
  });
});
