/**
 * `node scripts/bench-season.ts [forecasts | recaps | weather | twenty]`: how good forecasts are on the demo's past seasons, and how long a recap and a century of
 * weather take. Each time is the least of several runs in one warm process, as processor time; the first run is printed
 * beside it.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { gardenWeather, noWeather } from "../src/almanac/index.ts";
import { realEffects } from "../src/cli/effects.ts";
import { loadGarden } from "../src/cli/load-garden.ts";
import { seasonBeginning } from "../src/garden/index.ts";
import { type BackTest, backTest, makeRecap, makeRecapCards, seasonBook } from "../src/season/index.ts";
import { namesSomebody } from "../src/site/without-people.ts";
import { centuryWeather } from "./bench/century-weather.ts";
import { type GardenSize, LARGE, QUARTER, SIXTEENTH, TWENTY_SEASONS, writeLargeGarden } from "./bench/large-garden.ts";
import { least, sayTook, type Took, took } from "./bench/processor-time.ts";

const RUNS = 7;
const DEMO = path.join(import.meta.dirname, "..", "demo-content");
const DEMO_DAY = "2026-07-18";
const LARGE_DAY = "2026-11-20";

const work = mkdtempSync(path.join(tmpdir(), "plotreel-bench-season-"));
process.env.PLOTREEL_CACHE = path.join(work, "cache");
try {
  const [asked] = process.argv.slice(2);
  if (asked === undefined || asked === "forecasts") await forecasts();
  if (asked === undefined || asked === "recaps") await recaps();
  if (asked === undefined || asked === "weather") weatherFiles();
  if (asked === "twenty") await twentySeasons();
} finally {
  rmSync(work, { recursive: true, force: true });
}

async function forecasts(): Promise<void> {
  const { garden, weather } = await loadGarden({ records: DEMO, today: DEMO_DAY }, realEffects());
  const book = seasonBook(garden, weather, DEMO_DAY);
  for (const [when, test] of [
    ["made on the day of sowing or planting", backTest(book)],
    ["made 60 % of the way", backTest(book, 0.6)],
    ["the same without weather, on the first day", backTest(seasonBook(garden, noWeather, DEMO_DAY))],
  ] as const) {
    if (test !== undefined) row(`forecasts of the demo, ${when}`, backTested(test), "better than the catalogue");
  }
  const demo = times(() => makeRecap(garden, weather, { season: seasonBeginning(2026, "01-01"), today: DEMO_DAY }));
  row("recap of the demo", said(demo));
}

function backTested(test: BackTest): string {
  const one = (value: number) => value.toFixed(1);
  return (
    `${test.plantings} plantings: mean ${one(test.meanError)} days off, catalogue ${one(test.catalogueMeanError)}; ` +
    `median ${test.medianError} and ${test.catalogueMedianError}; ` +
    `${Math.round(test.coverage * 100)} % within windows of ${Math.round(test.windowDays)} days, ` +
    `${Math.round(test.catalogueCoverage * 100)} % within as wide ones about the catalogue's day`
  );
}

async function recaps(): Promise<void> {
  const large = await recapTimes("large", LARGE);
  const quarter = await recapTimes("quarter", QUARTER);
  const sixteenth = await recapTimes("sixteenth", SIXTEENTH);
  row("recap over ten seasons of the large garden", said(large), "≤ 300 ms");
  row("growth exponent from a quarter of the size", grown(large, quarter), "≤ 1.1");
  row("and to that from a sixteenth", grown(quarter, sixteenth), "≤ 1.1");
}

async function recapTimes(name: string, size: GardenSize) {
  const records = path.join(work, name);
  writeLargeGarden(records, size);
  const { garden, weather } = await loadGarden({ records, today: LARGE_DAY }, realEffects());
  return times(() => makeRecapCards(garden, weather, { season: seasonBeginning(2026, "01-01"), today: LARGE_DAY }));
}

/** A garden as it may become, read with nothing kept and its last season told, at three sizes. */
async function twentySeasons(): Promise<void> {
  const effects = realEffects();
  const today = "2036-11-20";
  const sizes: { readonly load: Took; readonly recap: ReturnType<typeof times>; readonly people: Took }[] = [];
  for (const [at, size] of TWENTY_SEASONS.entries()) {
    const records = path.join(work, `twenty-${at}`);
    writeLargeGarden(records, size);
    const before = process.cpuUsage();
    const began = performance.now();
    const { garden, weather } = await loadGarden({ records, today }, effects);
    const { user, system } = process.cpuUsage(before);
    const load = { cpuMs: (user + system) / 1000, ms: performance.now() - began };
    const people = took(() => namesSomebody(garden));
    const recap = times(() => makeRecapCards(garden, weather, { season: seasonBeginning(2036, "01-01"), today }));
    sizes.push({ load, recap, people });
    row(`twenty seasons, ${size.logLines} lines: read, with nothing kept`, sayTook(load));
    row("  of it, whom the lines name", `${sayTook(people)}: ${((100 * people.cpuMs) / load.cpuMs).toFixed(1)} %`);
    row("  recap of the last season", said(recap));
    row("  peak memory so far", `${(process.resourceUsage().maxRSS / 1024).toFixed(0)} MiB`, "≤ 1 GB");
  }
  for (const [of, size] of [
    ["from a quarter", [2, 1]],
    ["from a sixteenth to a quarter", [1, 0]],
  ] as const) {
    const [large, small] = size.map((at) => sizes[at]) as [(typeof sizes)[number], (typeof sizes)[number]];
    row(
      `growth exponents ${of}`,
      `read ${exponent(large.load, small.load, 4)}; recap ${grown(large.recap, small.recap)}`,
    );
  }
}

/** In a warm process, and the first time. */
function grown(large: ReturnType<typeof times>, small: ReturnType<typeof times>): string {
  return `${exponent(large.least, small.least, 4)}, the first ${exponent(large.first, small.first, 4)}`;
}

function weatherFiles(): void {
  const whole = centuryWeather(100);
  const quarter = centuryWeather(25);
  for (const [layout, text] of Object.entries(whole)) {
    const read = (of: string) => times(() => gardenWeather([{ file: "weather", text: of }], undefined, DEMO_DAY));
    const century = read(text);
    row(`a hundred years of weather, ${layout}`, said(century), "≤ 200 ms");
    row("  growth exponent from 25 years", exponent(century.least, read(quarter[layout] ?? "").least, 4));
  }
}

function times(work: () => unknown): { readonly first: Took; readonly least: Took } {
  const all = Array.from({ length: RUNS }, () => took(work));
  return { first: all[0] as Took, least: least(all) };
}

function exponent(large: Took, small: Took, sizes: number): string {
  return (Math.log(large.cpuMs / small.cpuMs) / Math.log(sizes)).toFixed(2);
}

function said({ least: best, first }: ReturnType<typeof times>): string {
  return `${sayTook(best)}; the first ${first.cpuMs.toFixed(0)} ms`;
}

function row(what: string, figure: string, goal?: string): void {
  console.log(`${what.padEnd(60)} ${figure}${goal === undefined ? "" : `   (goal ${goal})`}`);
}
