/**
 * One measurement in a process of its own, so that memory and warm-up of one never help another: prints
 * { ms, cpuMs, peakMiB, … } as JSON. The processor time is what a loaded machine disturbs least.
 *
 *   node measure.ts bare|cold|warm|brief RECORDS CACHE
 */
import { readFileSync } from "node:fs";
import path from "node:path";
import remarkParse from "remark-parse";
import { glob } from "tinyglobby";
import { unified } from "unified";
import { realEffects } from "../../src/cli/effects.ts";
import { loadGarden } from "../../src/cli/load-garden.ts";
import { makeBrief } from "../../src/tour/index.ts";
import { least, took } from "./processor-time.ts";

const [mode = "", records = "", cache = ""] = process.argv.slice(2);
const TODAY = "2026-11-20";
process.env.PLOTREEL_CACHE = cache;

const began = performance.now();
const used = process.cpuUsage();
const figures = mode === "bare" ? await bare() : mode === "brief" ? await brief() : await load();
const { user, system } = process.cpuUsage(used);
console.log(
  JSON.stringify({
    ms: performance.now() - began,
    cpuMs: (user + system) / 1000,
    ...figures,
    peakMiB: process.resourceUsage().maxRSS / 1024,
  }),
);

/** Reading the same files and parsing them with remark, nothing else. */
async function bare() {
  const files = await glob("**/*.md", { cwd: records });
  const remark = unified().use(remarkParse);
  for (const file of files) remark.parse(readFileSync(path.join(records, file), "utf8"));
  return {};
}

async function load() {
  const { garden } = await loadGarden({ records, today: TODAY }, realEffects());
  return { events: garden.events.length };
}

async function brief() {
  const { garden } = await loadGarden({ records, today: TODAY }, realEffects());
  const make = () => makeBrief(garden, { day: TODAY, today: TODAY });
  return {
    ...least(Array.from({ length: 5 }, () => took(make))),
    stops: make().stops.length,
  };
}
