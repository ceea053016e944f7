/**
 * `npm run bench:site`: how long pages take, as ratios inside one run. Each figure is the median of RUNS processes, taken in
 * turn. Ratios are of processor time, because the wall clock also counts what else a machine does; wall times stand beside.
 *
 *   node bench-site.ts [--quarter] [--pages | --publish | --watch | --typing]
 */
import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { type ChildTime, timeChild } from "./bench/child-time.ts";
import { type GardenSize, LARGE, QUARTER, writeLargeGarden } from "./bench/large-garden.ts";

const RUNS = 3;
const SAVES = 7;

interface Figures {
  readonly ms: number;
  readonly cpuMs: number;
  readonly peakMiB: number;
  readonly pages: number;
  /** Of `cpuMs`, what working out the data took. */
  readonly dataCpuMs?: number;
  /** The variety list, compressed. */
  readonly listBytes?: number;
}

/** 200 films of a large garden's ten seasons, and as many for its size in the smaller one. */
const large: GardenSize = { ...LARGE, episodes: 200 };
const quarter: GardenSize = { ...QUARTER, episodes: 50 };

const asked = process.argv.slice(2);
const wants = (part: string) => asked.includes(part) || !asked.some((one) => one !== "--quarter");
const [size, name] = asked.includes("--quarter") ? ([quarter, "quarter"] as const) : ([large, "large"] as const);

const work = mkdtempSync(path.join(tmpdir(), "plotreel-bench-site-"));
try {
  if (wants("--pages")) pages();
  if (wants("--publish")) {
    publishing("demo garden", demoGarden(), "2026-07-18", "picked {n}.3 kg Musselburgh leek from Onion Bed");
    publishing(
      `${name} garden`,
      written(name, size),
      "2026-11-20",
      "picked {n}.3 kg Amber Anchor from Anchor Bed Amber 1",
    );
  }
  if (wants("--watch")) {
    const onion = "picked {n} kg Musselburgh leek from Onion Bed";
    const demo = [path.join(import.meta.dirname, "..", "demo-content"), "2026-07-18"] as const;
    watching("demo garden, a bed viewers see", ...demo, "public", "beds/onion-bed/", onion, "{n}");
    watching("demo garden, the same bed of one’s own", ...demo, "field", "beds/onion-bed/", onion, "{n} kg");
    watching("demo garden, today’s desk", ...demo, "field", "", onion, "-");
    const anchor = "picked {n} kg Amber Anchor from Anchor Bed Amber 1";
    const whole = [written(name, size), "2026-11-20"] as const;
    watching(`${name} garden, a bed viewers see`, ...whole, "public", "beds/bed-0/", anchor, "-");
    watching(`${name} garden, today’s desk`, ...whole, "field", "", anchor, "-");
  }
  if (wants("--typing")) typing();
} finally {
  rmSync(work, { recursive: true, force: true });
}

/** From the garden in memory to written pages: page data, preparing the templates, making and writing. */
function pages(): void {
  const small = timesOf("quarter", quarter);
  const whole = size === quarter ? small : timesOf("large", large);
  const { pages: first, again, constant, both } = whole;
  row("public pages, from nothing ÷ constant pages by Astro", ratio(first, constant), "≤ 1.3");
  row("public pages, all of them on another day ÷ constant pages", ratio(again, constant), "≤ 1.3");
  row(
    "the same ÷ the same pages from data worked out before",
    (again.cpuMs / (again.cpuMs - (again.dataCpuMs ?? 0))).toFixed(2),
  );
  if (whole !== small) {
    const growth = (of: "pages" | "again") =>
      Math.log(whole[of].cpuMs / small[of].cpuMs) / Math.log(whole[of].pages / small[of].pages);
    row(
      "growth exponent over the number of pages",
      `${growth("pages").toFixed(2)}; on another day ${growth("again").toFixed(2)}`,
      "≤ 1.1",
    );
  }
  row(
    "processor time",
    `${seconds(first.cpuMs)} for ${first.pages} pages, of it data ${seconds(first.dataCpuMs ?? 0)}; another day ${seconds(again.cpuMs)}; constant ${seconds(constant.cpuMs)}`,
  );
  row("wall clock", `${seconds(first.ms)}; another day ${seconds(again.ms)}; constant ${seconds(constant.ms)}`);
  row(
    "peak memory",
    `${first.peakMiB.toFixed(0)} MiB; constant ${constant.peakMiB.toFixed(0)} MiB; everything ${both.peakMiB.toFixed(0)} MiB`,
  );
  row("both sites with gate and search ÷ public pages", ratio(both, first));
  row(
    `variety list of ${size.varieties} varieties, compressed`,
    `${((first.listBytes ?? 0) / 1000).toFixed(1)} kB`,
    "≤ 60 kB",
  );
}

function timesOf(of: string, garden: GardenSize) {
  const records = written(of, garden);
  const cache = path.join(work, `${of}-cache`);
  const runs = Array.from({ length: RUNS }, () => ({
    pages: measure("pages", records, cache),
    again: measure("again", records, cache),
    constant: measure("constant", records, cache),
    both: measure("whole", records, cache),
  }));
  const middle = (mode: keyof (typeof runs)[number]) =>
    median(
      runs.map((run) => run[mode]),
      ({ cpuMs }) => cpuMs,
    );
  return { pages: middle("pages"), again: middle("again"), constant: middle("constant"), both: middle("both") };
}

function measure(mode: string, records: string, cache: string): Figures {
  const script = path.join(import.meta.dirname, "bench", "site-build.ts");
  const sizes = path.join(work, `${path.basename(records)}-sizes.json`);
  const printed = execFileSync(process.execPath, [script, mode, records, cache, sizes], {
    encoding: "utf8",
    stdio: ["ignore", "pipe", "inherit"],
  });
  return JSON.parse(printed.trim().split("\n").at(-1) as string) as Figures;
}

/** The whole command, photos copied and records read before: with no page kept, and after one note was written. */
function publishing(garden: string, records: string, today: string, line: string): void {
  const cache = path.join(work, `${path.basename(records)}-publish-cache`);
  const env = { ...process.env, PLOTREEL_CACHE: cache };
  const plotreel = path.join(import.meta.dirname, "..", "bin", "plotreel.js");
  const publish = () =>
    timeChild([plotreel, "publish", "--records", records, "--today", today, "--out", `${records}-out`], work, env);
  publish();
  const full: ChildTime[] = [];
  const changed: ChildTime[] = [];
  for (let run = 0; run < RUNS; run += 1) {
    for (const pagesKept of foldersNamed("pages", cache)) rmSync(pagesKept, { recursive: true, force: true });
    full.push(publish());
    const note = path.join(records, "notes", `${today}-measured.md`);
    mkdirSync(path.dirname(note), { recursive: true });
    writeFileSync(note, `- ${line.replace("{n}", String(run + 1))}\n`);
    changed.push(publish());
  }
  const [whole, after] = [full, changed].map((runs) => median(runs, ({ cpuMs, ms }) => cpuMs ?? ms)) as [
    ChildTime,
    ChildTime,
  ];
  const [, made = "?", all = "?"] = /public pages: (\d+) of (\d+) changed/u.exec(after.err) ?? [];
  row(
    `publish after one changed note ÷ no page kept, ${garden}`,
    `${((after.cpuMs ?? after.ms) / (whole.cpuMs ?? whole.ms)).toFixed(2)} (wall clock ${(after.ms / whole.ms).toFixed(2)}): ` +
      `${seconds(after.cpuMs ?? 0)} of processor against ${seconds(whole.cpuMs ?? 0)}; ${made} of ${all} public pages made`,
    "≤ 0.5",
  );
}

/** A cache has a folder for each garden. */
function foldersNamed(folder: string, cache: string): readonly string[] {
  return readdirSync(cache).map((garden) => path.join(cache, garden, folder));
}

interface Saved {
  readonly noticed: number;
  readonly waited: number;
  readonly read: number;
  readonly page: number;
  readonly all: number;
  readonly processor: number;
}

function watching(what: string, ...garden: readonly string[]): void {
  const script = path.join(import.meta.dirname, "bench", "watch-save.ts");
  const [records = ""] = garden;
  const cache = path.join(work, `watch-cache-${path.basename(records)}`);
  const printed = execFileSync(process.execPath, [script, cache, String(SAVES), ...garden], { encoding: "utf8" });
  const { first, saves } = JSON.parse(printed) as { readonly first: Saved; readonly saves: readonly Saved[] };
  const usual = median(saves, ({ all }) => all);
  const parts = `noticed ${ms(usual.noticed)}, waited for more ${ms(usual.waited)}, read and grown ${ms(usual.read)}, page ${ms(usual.page)}`;
  row(
    `a saved line on the open page, ${what}`,
    `${ms(usual.all)}, of processor ${ms(usual.processor)} (${parts})`,
    "≤ 500 ms",
  );
  row("the first one; the slowest of the others", `${ms(first.all)}; ${ms(Math.max(...saves.map(({ all }) => all)))}`);
}

interface Typed {
  readonly lines: number;
  readonly keys: number;
  readonly middle: number;
  readonly late: number;
  readonly slowest: number;
  readonly first: number;
}

function typing(): void {
  const script = path.join(import.meta.dirname, "bench", "typing.ts");
  const printed = execFileSync(process.execPath, [script, written(name, size)], { encoding: "utf8" });
  const { lines, keys, middle, late, slowest, first } = JSON.parse(printed) as Typed;
  const exact = (of: number) => `${of.toFixed(1)} ms`;
  row(`a key to its reading, ${lines} lines on record`, `${exact(late)} for 95 of 100`, "≤ 50 ms");
  row(
    "the middle of them; the slowest; names made ready",
    `${exact(middle)}; ${exact(slowest)} of ${keys}; ${ms(first)}`,
  );
}

function written(of: string, garden: GardenSize): string {
  const records = path.join(work, of);
  writeLargeGarden(records, garden);
  return records;
}

function demoGarden(): string {
  const records = path.join(work, "demo");
  cpSync(path.join(import.meta.dirname, "..", "demo-content"), records, { recursive: true });
  return records;
}

function median<T>(all: readonly T[], of: (one: T) => number): T {
  return all.toSorted((a, b) => of(a) - of(b))[Math.floor(all.length / 2)] as T;
}

function ratio(a: Figures, b: Figures): string {
  return `${(a.cpuMs / b.cpuMs).toFixed(2)} (wall clock ${(a.ms / b.ms).toFixed(2)})`;
}

function seconds(of: number): string {
  return `${(of / 1000).toFixed(1)} s`;
}

function ms(of: number): string {
  return `${of.toFixed(0)} ms`;
}

function row(what: string, figure: string, goal?: string): void {
  console.log(`${what.padEnd(62)} ${figure}${goal === undefined ? "" : `   (goal ${goal})`}`);
}
