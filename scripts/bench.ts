/**
 * `npm run bench`: how long the main work takes, as ratios inside one run. Each figure is the median of RUNS processes,
 * taken in turn so that a machine's drift falls on all alike.
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { type GardenSize, LARGE, QUARTER, writeLargeGarden } from "./bench/large-garden.ts";

const RUNS = 3;

interface Figures {
  readonly ms: number;
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
  row("brief after loading", `${large.brief.ms.toFixed(1)} ms for ${large.brief.stops} stops`, "≤ 50 ms");
  row(
    "growth exponent from a quarter of the size",
    (Math.log(large.cold.ms / quarter.cold.ms) / Math.log(4)).toFixed(2),
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
  for (const script of ["bench-tour.ts", "bench-wrap.ts"])
    execFileSync(process.execPath, [path.join(import.meta.dirname, script)], { stdio: "inherit" });
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
    runs.map((run) => run[of]).sort((a, b) => a.ms - b.ms)[Math.floor(RUNS / 2)] as Figures;
  return { bare: middle("bare"), cold: middle("cold"), warm: middle("warm"), brief: middle("brief") };
}

function measure(mode: string, records: string, cache: string): Figures {
  const script = path.join(import.meta.dirname, "bench", "measure.ts");
  return JSON.parse(execFileSync(process.execPath, [script, mode, records, cache], { encoding: "utf8" })) as Figures;
}

function ratio(a: Figures, b: Figures): string {
  return (a.ms / b.ms).toFixed(2);
}

function row(what: string, figure: string, goal?: string): void {
  console.log(`${what.padEnd(52)} ${figure}${goal === undefined ? "" : `   (goal ${goal})`}`);
}
