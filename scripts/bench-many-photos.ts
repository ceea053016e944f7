/**
 * `node scripts/bench-many-photos.ts [READ] [BROUGHT]`: how long a garden's photos take to be read, and to be brought in from a card, and
 * how much memory, with a quarter of as many beside them. Of each only the head of a photo is there: 24 pixels, a date of its own.
 * Each figure is of a process of its own; exponents are of processor time.
 */
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import sharp from "sharp";
import { realEffects } from "../src/cli/effects.ts";
import { loadGarden } from "../src/cli/load-garden.ts";
import { ingestFolder } from "../src/photos/index.ts";

interface Figures {
  readonly photos: number;
  readonly cpuMs: number;
  readonly ms: number;
  readonly peakMiB: number;
}

const DAY = "2036-11-20";
const STAMP = "2026:05:16 18:05:09";
const MINUTES = 100;

const [mode = "100000", ...more] = process.argv.slice(2);
if (mode === "read" || mode === "brought") await measure(mode, more);
else await compare(Number(mode), Number(more[0] ?? 20_000));

async function compare(read: number, brought: number): Promise<void> {
  const work = mkdtempSync(path.join(tmpdir(), "plotreel-bench-many-photos-"));
  try {
    for (const [kind, most] of [
      ["read", read],
      ["brought", brought],
    ] as const) {
      const [small, large] = [await figures(work, kind, most / 4), await figures(work, kind, most)] as const;
      const what = kind === "read" ? "photos of a garden read, nothing kept" : "photos brought in from a card";
      const exponent = Math.log(large.cpuMs / small.cpuMs) / Math.log(large.photos / small.photos);
      for (const one of [small, large])
        console.log(
          `${what.padEnd(42)} ${one.photos}: ${(one.cpuMs / 1000).toFixed(1)} s of processor, ${(one.ms / 1000).toFixed(1)} s, peak ${one.peakMiB.toFixed(0)} MiB`,
        );
      console.log(`  growth exponent ${exponent.toFixed(2)}   (goal ≤ 1.1)`);
    }
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
}

async function figures(work: string, kind: "read" | "brought", count: number): Promise<Figures> {
  const records = path.join(work, `${kind}-${count}`);
  mkdirSync(records);
  writeFileSync(path.join(records, "garden.md"), "---\nname: Many photos\ntime zone: Europe/London\n---\n");
  const card = kind === "read" ? path.join(records, "photos", "long-bed") : path.join(work, `card-${count}`);
  await writePhotos(card, count);
  const printed = execFileSync(process.execPath, [import.meta.filename, kind, records, card], {
    encoding: "utf8",
    env: { ...process.env, PLOTREEL_CACHE: path.join(work, `cache-${kind}-${count}`) },
    stdio: ["ignore", "pipe", "ignore"],
  });
  for (const folder of [records, card]) rmSync(folder, { recursive: true, force: true });
  return JSON.parse(printed) as Figures;
}

/** Taken every hundred minutes over the years: no two have the same bytes. */
async function writePhotos(folder: string, count: number): Promise<void> {
  const drawn = await sharp({ create: { width: 24, height: 16, channels: 3, background: "#5a8a3c" } })
    .withExif({ IFD0: { Make: "Maker", Model: "Model" }, IFD2: { DateTimeOriginal: STAMP } })
    .jpeg()
    .toBuffer();
  const at = drawn.indexOf(STAMP, 0, "latin1");
  mkdirSync(folder, { recursive: true });
  for (let photo = 0; photo < count; photo += 1) {
    const taken = new Date(Date.UTC(2016, 0, 1) + photo * MINUTES * 60_000).toISOString();
    drawn.write(taken.slice(0, 19).replaceAll("-", ":").replace("T", " "), at, "latin1");
    writeFileSync(path.join(folder, `IMG_${String(photo).padStart(6, "0")}.jpg`), drawn);
  }
}

async function measure(kind: "read" | "brought", [records = "", card = ""]: readonly string[]): Promise<void> {
  const began = performance.now();
  const photos =
    kind === "read"
      ? (await loadGarden({ records, today: DAY }, realEffects())).garden.photos.length
      : (await ingestFolder(card, records, { beds: new Map(), timeZone: "Europe/London", dryRun: false })).broughtIn
          .length;
  const { user, system } = process.cpuUsage();
  console.log(
    JSON.stringify({
      photos,
      cpuMs: (user + system) / 1000,
      ms: performance.now() - began,
      peakMiB: process.resourceUsage().maxRSS / 1024,
    }),
  );
}
