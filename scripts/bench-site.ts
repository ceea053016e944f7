/**
 * `npm run bench:site`: how long the pages of a very large garden take, against pages of the same number and sizes that
 * Astro makes from constant data, as ratios inside one run. Each figure is the median of RUNS processes, taken in turn.
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
  readonly pages: number;
}

const work = mkdtempSync(path.join(tmpdir(), "plotreel-bench-site-"));
try {
  const quarter = timesOf("quarter", QUARTER);
  const large = process.argv.includes("--quarter") ? quarter : timesOf("large", LARGE);
  row("public pages ÷ constant pages", (large.pages.ms / large.constant.ms).toFixed(2), "≤ 1.3");
  row("both sites with gate and search ÷ public pages", (large.whole.ms / large.pages.ms).toFixed(2));
  if (large !== quarter) {
    const growth = Math.log(large.pages.ms / quarter.pages.ms) / Math.log(large.pages.pages / quarter.pages.pages);
    row("growth exponent over the number of pages", growth.toFixed(2), "≤ 1.1");
  }
  row(
    "the site",
    `${large.pages.pages} public pages in ${(large.pages.ms / 1000).toFixed(1)} s, peak ${large.pages.peakMiB.toFixed(0)} MiB; ` +
      `constant ${large.constant.peakMiB.toFixed(0)} MiB; everything ${(large.whole.ms / 1000).toFixed(1)} s, peak ${large.whole.peakMiB.toFixed(0)} MiB`,
  );
} finally {
  rmSync(work, { recursive: true, force: true });
}

function timesOf(name: string, size: GardenSize) {
  const records = path.join(work, name);
  const cache = path.join(work, `${name}-cache`);
  writeLargeGarden(records, size);
  const runs = Array.from({ length: RUNS }, () => ({
    pages: measure("pages", records, cache),
    constant: measure("constant", records, cache),
    whole: measure("whole", records, cache),
  }));
  const middle = (of: "pages" | "constant" | "whole") =>
    runs.map((run) => run[of]).sort((a, b) => a.ms - b.ms)[Math.floor(RUNS / 2)] as Figures;
  return { pages: middle("pages"), constant: middle("constant"), whole: middle("whole") };
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

function row(what: string, figure: string, goal?: string): void {
  console.log(`${what.padEnd(52)} ${figure}${goal === undefined ? "" : `   (goal ${goal})`}`);
}
