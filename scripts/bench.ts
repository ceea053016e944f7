/**
 * `npm run bench`: how long the main work takes, as ratios inside one run, and how good what is measured and heard is. Each
 * figure of the main path is the median of RUNS processes, taken in turn so that a machine's drift falls on all alike; its
 * ratios are of processor time, with those of the clock on the wall beside them.
 *
 * The other figures come from scripts that also run alone: bench-tour.ts (plan and walk), bench-wrap.ts (names, promises, a
 * film of four hours), bench-season.ts (forecasts, recap, weather), bench-measures.ts (cover and alignment against
 * what was drawn) and bench-photos.ts (dates, copies, memory; 200 photos of 12 megapixels, or as many as `npm run bench -- 40`
 * asks for). `npm run bench:site` measures the pages.
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { type GardenSize, LARGE, QUARTER, writeLargeGarden } from "./bench/large-garden.ts";
import { sayTook } from "./bench/processor-time.ts";

const RUNS = 3;
const PHOTOS = process.argv[2] ?? "200";

interface Figures {
  readonly ms: number;
  readonly cpuMs: number;
  readonly peakMiB: number;
  readonly events?: number;
  readonly stops?: number;
}

const work = mkdtempSync(path.join(tmpdir(), "plotreel-bench-"));
try {
  const large = timesOf("large", LARGE);
  const quarter = timesOf("quarter", QUARTER);
  row("load, check and timeline ÷ reading and bare remark", ratio(large.cold, large.bare), "≤ 1.5");
  row("warm run ÷ cold run", ratio(large.warm, large.cold), "≤ 0.35");
  row("brief after loading", `${sayTook(large.brief)} for ${large.brief.stops} stops`, "≤ 50 ms");
  row(
    "growth exponent from a quarter of the size",
    `${exponent(large.cold.cpuMs, quarter.cold.cpuMs)} (wall ${exponent(large.cold.ms, quarter.cold.ms)})`,
    "≤ 1.1",
  );
  row(
    "peak memory",
    `${large.cold.peakMiB.toFixed(0)} MiB; bare remark ${large.bare.peakMiB.toFixed(0)} MiB; a quarter ${quarter.cold.peakMiB.toFixed(0)} MiB`,
  );
  row(
    "the garden",
    `${large.cold.events} events; cold ${(large.cold.ms / 1000).toFixed(1)} s, warm ${(large.warm.ms / 1000).toFixed(1)} s`,
  );
  for (const [title, ...script] of [
    ["Plan and walk of a tour", "bench-tour.ts"],
    ["Films heard", "bench-wrap.ts"],
    ["Season and weather", "bench-season.ts"],
    ["Photos against what was drawn", "bench-measures.ts"],
    ["Photos: dates, copies, memory", "bench-photos.ts", PHOTOS],
  ] as const) {
    console.log(`\n${title}`);
    const [file, ...more] = script;
    execFileSync(process.execPath, ["--expose-gc", path.join(import.meta.dirname, file), ...more], {
      stdio: "inherit",
    });
  }
} finally {
  rmSync(work, { recursive: true, force: true });
}

function timesOf(name: string, size: GardenSize) {
  const records = path.join(work, name);
  writeLargeGarden(records, size);
  const runs = Array.from({ length: RUNS }, (_, run) => {
    const cache = path.join(work, `${name}-cache-${run}`);
    return {
      bare: measure("bare", records, cache),
      cold: measure("cold", records, cache),
      warm: measure("warm", records, cache),
      brief: measure("brief", records, cache),
    };
  });
  const middle = (of: "bare" | "cold" | "warm" | "brief") =>
    runs.map((run) => run[of]).sort((a, b) => a.cpuMs - b.cpuMs)[Math.floor(RUNS / 2)] as Figures;
  return { bare: middle("bare"), cold: middle("cold"), warm: middle("warm"), brief: middle("brief") };
}

function measure(mode: string, records: string, cache: string): Figures {
  const script = path.join(import.meta.dirname, "bench", "measure.ts");
  return JSON.parse(execFileSync(process.execPath, [script, mode, records, cache], { encoding: "utf8" })) as Figures;
}

function ratio(a: Figures, b: Figures): string {
  return `${(a.cpuMs / b.cpuMs).toFixed(2)} (wall ${(a.ms / b.ms).toFixed(2)})`;
}

function exponent(large: number, quarter: number): string {
  return (Math.log(large / quarter) / Math.log(4)).toFixed(2);
}

function row(what: string, figure: string, goal?: string): void {
  console.log(`${what.padEnd(52)} ${figure}${goal === undefined ? "" : `   (goal ${goal})`}`);
}
