/** Trials: how often a winner is named where there is none, and where there is one; mirrored arms; sizes that would do. */
import ttest2 from "@stdlib/stats-ttest2";
import { noWeather } from "../../src/almanac/index.ts";
import { seasonBook } from "../../src/season/index.ts";
import { trialResult } from "../../src/season/trial-results.ts";
import { compareArms, plotsToShow } from "../../src/season/trial-statistics.ts";
import { publishedSizes } from "../../tests/season/published-sizes.ts";
import { type Chance, chance } from "./chance.ts";
import type { MadeNotes } from "./made-garden.ts";
import { armNames, madeTrial, type TrialSetting } from "./made-trials.ts";
import { percent, type TruthRow } from "./table.ts";

const seed = 20261129;
const nullTrials = 10_000;
const poweredTrials = 300;
const mirrored = 300;
const today = "2026-12-01";

const usual: TrialSetting = {
  name: "",
  measure: "kilograms a head at picking",
  rows: 4,
  beds: 1,
  arms: 2,
  lie: "in turn",
  pickings: 2,
  betweenRows: 0.15,
  betweenBeds: 0.3,
  withinRow: 0.15,
  slope: 0,
  later: 0,
};

/** As gardens are: most have one row a side. */
const settings: readonly TrialSetting[] = [
  { ...usual, name: "one row a side, ten pickings", rows: 1, pickings: 10 },
  { ...usual, name: "one row a side, rows uneven", rows: 1, betweenRows: 0.2, withinRow: 0.1, pickings: 8 },
  { ...usual, name: "one row a side, heights", rows: 1, measure: "height", pickings: 6 },
  { ...usual, name: "four rows a side in turn" },
  { ...usual, name: "six rows a side in turn on a slope", rows: 6, slope: 0.3 },
  { ...usual, name: "four rows a side, side by side on a slope", lie: "side by side", slope: 0.4 },
  { ...usual, name: "four rows in a bed of its own for each arm", lie: "own beds", pickings: 4 },
  { ...usual, name: "a row of each in six beds", rows: 1, beds: 6 },
  { ...usual, name: "two rows of each in three beds", rows: 2, beds: 3 },
  { ...usual, name: "three arms, five rows of each", arms: 3, rows: 5, pickings: 2 },
  { ...usual, name: "six beds of each arm", lie: "own beds", beds: 6, rows: 1, pickings: 2 },
  { ...usual, name: "five rows a side, totals", rows: 5, measure: "kilograms picked" },
  { ...usual, name: "five rows a side, heights", rows: 5, measure: "height" },
  { ...usual, name: "five rows a side, clean heads", rows: 5, measure: "clean heads" },
  { ...usual, name: "five rows a side, days", rows: 5, measure: "days to the first picking" },
  { ...usual, name: "five rows a side, one arm two days later", rows: 5, later: 2 },
];

export async function trialRows(): Promise<readonly TruthRow[]> {
  const known = "made-up gardens without any effect, read from note lines";
  const named: { setting: TrialSetting; cases: number; winners: number }[] = [];
  for (const [at, setting] of settings.entries()) {
    const cases = Math.floor(nullTrials / settings.length) + (at < nullTrials % settings.length ? 1 : 0);
    named.push({ setting, cases, winners: await winners(setting, cases, chance(seed + at)) });
  }
  const random = chance(seed - 1);
  const all = named.reduce((sum, { winners: n }) => sum + n, 0);
  const worst = named.toSorted((a, b) => b.winners / b.cases - a.winners / a.cases)[0] ?? named[0];
  const rows: TruthRow[] = [
    {
      quantity: "trials without an effect that name a winner",
      cases: nullTrials,
      found: percent(all / nullTrials),
      against: known,
      goal: "at most 5 %",
      met: all <= 0.05 * nullTrials,
    },
  ];
  if (worst !== undefined) {
    // Twice the standard error of 5 % of so many cases.
    const limit = 0.05 + 2 * Math.sqrt((0.05 * 0.95) / worst.cases);
    rows.push({
      quantity: `  the worst kind: ${worst.setting.name}`,
      cases: worst.cases,
      found: percent(worst.winners / worst.cases),
      against: known,
      goal: `at most 5 % (${percent(limit)} with chance)`,
      met: worst.winners / worst.cases <= limit,
    });
  }
  for (const [setting, effect] of [
    [{ ...usual, rows: 1, pickings: 10 }, 0.5],
    [usual, 0.3],
    [{ ...usual, rows: 6 }, 0.3],
    [{ ...usual, rows: 1, beds: 6 }, 0.3],
    [{ ...usual, rows: 6 }, 0.5],
  ] as const) {
    const n = await winners(setting, poweredTrials, random, effect);
    rows.push({
      quantity: `  power: ${setting.rows * setting.beds} a side${setting.beds > 1 ? " in as many beds" : ""}, truly ${effect * 100} % more`,
      cases: poweredTrials,
      found: percent(n / poweredTrials),
      against: "made-up gardens, rows uneven by 15 %",
      goal: "",
    });
  }
  return [...rows, await mirrors(random), sizes(), intervals(random)];
}

async function verdictsOf(notes: MadeNotes): Promise<readonly string[]> {
  const garden = await notes.garden(today);
  const trial = garden.trials.get("net");
  if (trial === undefined) throw new Error("the made-up trial was not read");
  return trialResult(seasonBook(garden, noWeather, today), trial).measures.map(({ verdict }) => verdict.text);
}

const namesWinner = /came out ahead|took longer|stood taller|was greener|had the larger share/;

async function winners(setting: TrialSetting, cases: number, random: Chance, effect = 0): Promise<number> {
  let named = 0;
  for (let run = 0; run < cases; run += 1) {
    const verdicts = await verdictsOf(madeTrial(setting, random, effect));
    if (verdicts.length === 0) throw new Error(`no measure was read: ${setting.measure}`);
    if (verdicts.some((verdict) => namesWinner.test(verdict))) named += 1;
  }
  return named;
}

/** The same notes with the names of the arms changed must give the same sentences with the names changed. */
async function mirrors(random: Chance): Promise<TruthRow> {
  const [a, b] = armNames;
  const turned = (text: string) => text.replaceAll(a, "@").replaceAll(b, a).replaceAll("@", b);
  let unlike = 0;
  for (let run = 0; run < mirrored; run += 1) {
    const setting = { ...(settings[run % settings.length] as TrialSetting), arms: 2 };
    const notes = madeTrial(setting, random, run % 3 === 0 ? 0.5 : 0);
    const first = await verdictsOf(notes);
    for (const [file, text] of notes.files) notes.files.set(file, turned(text));
    const second = await verdictsOf(notes);
    // The order in which the record names the arms is turned with them.
    if (second.map(turned).join(" ") !== first.join(" ")) unlike += 1;
  }
  return {
    quantity: "arms changed about: sentences that are not mirrored",
    cases: mirrored,
    found: String(unlike),
    against: "the same notes with the arms' names changed",
    goal: "none",
    met: unlike === 0,
  };
}

function sizes(): TruthRow {
  const off = publishedSizes.map(([steps, size]) => ({ size, by: Math.abs(plotsToShow(steps, 1) - size) }));
  const most = off.toSorted((a, b) => b.by - a.by)[0] ?? { size: 0, by: 0 };
  return {
    quantity: "plots a side that would do (power 0.8, 0.05)",
    cases: off.length,
    found: `${most.by} of ${most.size}`,
    against: "MRC CBU StatsWiki, FAQ/dunp (seen)",
    goal: "within one, or 1 %",
    met: off.every(({ size, by }) => by <= Math.max(1, size / 100)),
  };
}

/** The interval of the difference against Welch's, as a share of its width, for data without outliers. */
function intervals(random: Chance): TruthRow {
  let worst = 0;
  const cases = 40;
  for (let run = 0; run < cases; run += 1) {
    const values = () => Array.from({ length: 8 }, () => 10 + random.normal());
    const [a, b] = [values(), values()];
    const { ci } = ttest2(a, b);
    const [low, high] = [ci[0] as number, ci[1] as number];
    const own = compareArms(a, b)?.interval ?? [Number.NaN, Number.NaN];
    worst = Math.max(worst, Math.abs(own[0] - low) / (high - low), Math.abs(own[1] - high) / (high - low));
  }
  return {
    quantity: "interval of a difference, eight against eight",
    cases,
    found: `${percent(worst)} of its width`,
    against: "Welch's interval (@stdlib/stats-ttest2)",
    goal: "within 15 %",
    met: worst <= 0.15,
  };
}
