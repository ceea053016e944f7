/**
 * The speed of the photo work on drawn 12-megapixel photos, as ratios inside one run. Contenders take turns on parts of
 * the photos, each in a process of its own, so that a machine's drift falls on all alike; beside the ratio of wall clocks
 * stands the one of processor time, which other work on the machine disturbs less.
 *
 *   node scripts/bench-photos.ts [PHOTOS]
 */
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { fuzzPhotoDates } from "./bench/fuzz-photo-dates.ts";

const count = Number(process.argv[2] ?? 200);
const parts = 4;
const megapixels = 12;
const fuzzCases = 20_000;

interface Figures {
  readonly ms: number;
  readonly cpuMs: number;
  readonly photos: number;
  readonly peakMiB: number;
}

const work = mkdtempSync(path.join(tmpdir(), "plotreel-bench-photos-"));
try {
  const records = path.join(work, "records");
  console.log(`Drawing ${count} photos of ${megapixels} megapixels …`);
  const draws = path.join(import.meta.dirname, "demo-photos", "draw-demo-photos.ts");
  const wanted = ["--count", String(count), "--megapixels", String(megapixels), path.join(records, "photos")];
  execFileSync(process.execPath, [draws, ...wanted], { stdio: ["ignore", "ignore", "inherit"] });

  const scan = fastest(3, () => measure("scan", records));
  const exifr = fastest(3, () => measure("bare-exifr", records));
  const exiftool = exiftoolIsThere() ? fastest(3, () => measure("exiftool", records)) : undefined;
  const toolRatio = exiftool && (perSecond(scan) / perSecond(exiftool)).toFixed(1);
  row("EXIF scan ÷ exiftool -fast2, photos a second", toolRatio ?? "not measured: apt-get install exiftool", "≥ 5");
  row("EXIF scan ÷ bare exifr, photos a second", (perSecond(scan) / perSecond(exifr)).toFixed(2), "≥ 0.9");

  const made = { copies: none(), "bare-sharp": none(), astro: none() };
  for (let part = 0; part < parts; part++) {
    const [from, to] = [Math.floor((count * part) / parts), Math.floor((count * (part + 1)) / parts)];
    // Each goes first in turn: the first finds the photos cold.
    const turns = (["copies", "bare-sharp", "astro"] as const).map((_, index, all) => all[(index + part) % 3]);
    for (const mode of turns) {
      if (mode === undefined) continue;
      const out = path.join(work, mode === "copies" ? "cache" : `${mode}-${part}`);
      made[mode] = sum(made[mode], measure(mode, records, out, from, to));
    }
  }
  const again = fastest(3, () => measure("copies", records, path.join(work, "cache")));
  row("copies ÷ bare sharp making the same files", ratio(made.copies, made["bare-sharp"]), "≤ 1.10");
  row("copies ÷ Astro's own image build", ratio(made.copies, made.astro), "< 1");
  row("unchanged second run ÷ first", ratio(again, made.copies, 4), "≤ 0.02");
  row("copies a second", perSecond(made.copies).toFixed(1));

  const few = measure("copies", records, path.join(work, "few"));
  const manyRecords = path.join(work, "many");
  multiply(path.join(records, "photos"), path.join(manyRecords, "photos"), 4);
  const many = measure("copies", manyRecords, path.join(work, "many-cache"));
  row(
    `peak memory at ${many.photos} photos ÷ at ${few.photos}`,
    `${(many.peakMiB / few.peakMiB).toFixed(2)}: ${many.peakMiB.toFixed(0)} and ${few.peakMiB.toFixed(0)} MiB`,
    "≤ 1.15",
  );

  const fuzz = await fuzzPhotoDates(fuzzCases);
  row(
    "mutated headers read without a fault",
    `${fuzz.cases}, ${fuzz.withDay} with a day, slowest ${fuzz.slowestMs.toFixed(0)} ms`,
    "≥ 20000",
  );
} finally {
  rmSync(work, { recursive: true, force: true });
}

function measure(mode: string, records: string, out = "", from = 0, to = 1_000_000): Figures {
  const script = path.join(import.meta.dirname, "bench", "measure-photos.ts");
  const printed = execFileSync(process.execPath, [script, mode, records, out, String(from), String(to)], {
    encoding: "utf8",
  });
  return JSON.parse(printed.trim().split("\n").at(-1) ?? "") as Figures;
}

function fastest(runs: number, of: () => Figures): Figures {
  return Array.from({ length: runs }, of).reduce((best, one) => (one.ms < best.ms ? one : best));
}

function none(): Figures {
  return { ms: 0, cpuMs: 0, photos: 0, peakMiB: 0 };
}

function sum(a: Figures, b: Figures): Figures {
  return {
    ms: a.ms + b.ms,
    cpuMs: a.cpuMs + b.cpuMs,
    photos: a.photos + b.photos,
    peakMiB: Math.max(a.peakMiB, b.peakMiB),
  };
}

function perSecond({ photos, ms }: Figures): number {
  return (photos / ms) * 1000;
}

function ratio(a: Figures, b: Figures, digits = 2): string {
  return `${(a.ms / b.ms).toFixed(digits)} (processor time ${(a.cpuMs / b.cpuMs).toFixed(digits)})`;
}

function exiftoolIsThere(): boolean {
  try {
    execFileSync("exiftool", ["-ver"], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}

/** The same photos several times over, each with bytes of its own: a comment behind the first marker. */
function multiply(from: string, to: string, times: number): void {
  mkdirSync(to, { recursive: true });
  for (const name of readdirSync(from)) {
    const bytes = readFileSync(path.join(from, name));
    for (let time = 0; time < times; time++) {
      const comment = Buffer.from([0xff, 0xfe, 0, 4, 0x30 + Math.floor(time / 10), 0x30 + (time % 10)]);
      writeFileSync(
        path.join(to, `${time}-${name}`),
        Buffer.concat([bytes.subarray(0, 2), comment, bytes.subarray(2)]),
      );
    }
  }
}

function row(what: string, figure: string, goal?: string): void {
  console.log(`${what.padEnd(52)} ${figure}${goal === undefined ? "" : `   (goal ${goal})`}`);
}
