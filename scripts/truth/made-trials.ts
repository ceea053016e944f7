/**
 * Side-by-side trials as a garden could have them, written as note lines: plots that differ by themselves, beds that are better
 * and worse, several pickings of each row, days that slip, plants that die. `effect` is what the first arm truly gives more.
 */
import { addDays } from "../../src/calendar.ts";
import type { Day } from "../../src/model.ts";
import type { Chance } from "./chance.ts";
import { MadeNotes } from "./made-garden.ts";

export interface TrialSetting {
  readonly name: string;
  readonly measure:
    | "kilograms a head at picking"
    | "kilograms picked"
    | "height"
    | "clean heads"
    | "days to the first picking";
  /** Rows of each arm in each bed. */
  readonly rows: number;
  readonly beds: number;
  readonly arms: number;
  /** Rows of an arm side by side, in a bed of its own, or in turn with the others. */
  readonly lie: "in turn" | "side by side" | "own beds";
  readonly pickings: number;
  /** Spread (standard deviation of the logarithm) between rows, between beds, and within a row. */
  readonly betweenRows: number;
  readonly betweenBeds: number;
  readonly withinRow: number;
  /** How much more the last row of a bed gives than the first. */
  readonly slope: number;
  /** Days by which one arm's pickings come later. */
  readonly later: number;
}

export const armNames = ["netted row", "bare row", "mulched row"] as const;
const planted = "2026-04-25";

interface Row {
  readonly arm: number;
  readonly where: string;
  /** What a head of it weighs, kilograms, without chance within the row. */
  readonly level: number;
}

export function madeTrial(setting: TrialSetting, { normal, next, whole }: Chance, effect = 0): MadeNotes {
  const notes = new MadeNotes();
  const names = armNames.slice(0, setting.arms);
  notes.record("varieties/greyhound.md", { title: "Greyhound", crop: "cabbage" });
  notes.record("trials/net.md", {
    title: "Net or no net",
    question: "Does a net help?",
    arms: `[${names.map((name) => `{name: ${name}, variety: greyhound}`).join(", ")}]`,
    measure: setting.measure,
    started: "2026-04-01",
  });
  const rows = layRows(setting, { normal, next, whole }, effect);
  for (const bed of new Set(rows.map(({ where }) => where.slice(0, 5))))
    notes.record(`beds/${bed.toLowerCase().replace(" ", "-")}.md`, { title: bed });
  for (const { arm, where } of rows) notes.line(planted, `planted 8 bought Greyhound in ${where}, ${names[arm]}`);
  const first = rows.map(({ level, arm }) => firstDay(setting, level, arm, normal()));
  if (setting.measure === "days to the first picking") {
    rows.forEach(({ arm, where }, at) => {
      notes.line(first[at] ?? planted, `picked 1 kg Greyhound from ${where}, ${names[arm]}`);
    });
  } else {
    for (let picking = 0; picking < setting.pickings; picking += 1) {
      for (const { arm, where, level } of rows) {
        const day = addDays("2026-06-20", picking * 4 + (arm === 1 ? setting.later : 0));
        const value = level * Math.exp(setting.withinRow * normal()) * (1 + 0.05 * picking);
        notes.line(day, lineOf(setting.measure, value, where, names[arm] ?? "", { next, whole }));
      }
    }
  }
  for (const { where, arm } of rows)
    if (next() < 0.2) notes.line("2026-06-01", `lost 1 Greyhound to slugs, from ${where}, ${names[arm]}`);
  for (const bed of new Set(rows.map(({ where }) => where.slice(0, 5))))
    notes.line("2026-09-20", `cleared Greyhound from ${bed}`);
  return notes;
}

function layRows(setting: TrialSetting, { normal }: Chance, effect: number): readonly Row[] {
  const { arms, rows: ofEach, lie } = setting;
  const beds = lie === "own beds" ? setting.beds * arms : setting.beds;
  return Array.from({ length: beds }, (_, bed) => {
    const better = setting.betweenBeds * normal();
    const inBed = lie === "own beds" ? ofEach : ofEach * arms;
    return Array.from({ length: inBed }, (__, row): Row => {
      const arm = lie === "own beds" ? bed % arms : lie === "in turn" ? row % arms : Math.floor(row / ofEach);
      const log = better + setting.betweenRows * normal() + (setting.slope * row) / Math.max(1, inBed - 1);
      return {
        arm,
        where: `Bed ${String.fromCharCode(65 + bed)}, row ${row + 1}`,
        level: Math.exp(log) * (arm === 0 ? 1 + effect : 1),
      };
    });
  }).flat();
}

/** A better row is ready sooner. */
function firstDay({ later }: TrialSetting, level: number, arm: number, by: number): Day {
  return addDays(planted, Math.max(20, Math.round(60 - 12 * Math.log(level) + 2 * by) + (arm === 1 ? later : 0)));
}

function lineOf(
  measure: TrialSetting["measure"],
  value: number,
  where: string,
  arm: string,
  { next, whole }: Pick<Chance, "next" | "whole">,
): string {
  switch (measure) {
    case "height":
      return `measured Greyhound ${Math.max(1, 30 * value).toFixed(1)} cm tall in ${where}, ${arm}`;
    case "clean heads": {
      const chanceOfClean = Math.min(0.95, Math.max(0.05, 0.6 * value));
      const clean = Array.from({ length: 10 }, next).filter((one) => one < chanceOfClean).length;
      return `picked 10 heads Greyhound from ${where}, ${clean} clean, ${arm}`;
    }
    default: {
      const heads = whole(1, 3);
      return `picked ${Math.max(0.05, value * heads).toFixed(2)} kg Greyhound from ${where}, ${arm}, ${heads} heads`;
    }
  }
}
