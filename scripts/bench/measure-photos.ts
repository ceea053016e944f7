/**
 * One measurement of the photo work in a process of its own: prints { ms, cpuMs, photos, peakMiB } as JSON.
 *
 *   node measure-photos.ts scan|bare-exifr|exiftool|copies|bare-sharp|astro RECORDS OUT FROM TO
 *
 * FROM and TO cut out a part of the photos in order of name, so that two contenders can take turns.
 */
import { execFileSync } from "node:child_process";
import { mkdir, readFile, symlink, writeFile } from "node:fs/promises";
import { availableParallelism } from "node:os";
import path from "node:path";
import exifr from "exifr";
import pLimit from "p-limit";
import sharp from "sharp";
import type { Photo, Records } from "../../src/model.ts";
import { jpegSettings, webpSettings } from "../../src/photos/copy-recipe.ts";
import { openPhotoFolder, pageWidths, publishPhotos, readPhotos } from "../../src/photos/index.ts";
import { openRecordsFolder } from "../../src/records/index.ts";

const [mode = "", recordsDir = "", out = "", from = "0", to = "1000000"] = process.argv.slice(2);
const listed = await (await openRecordsFolder(recordsDir)).list();
const files = listed.filter((file) => file.startsWith("photos/")).slice(Number(from), Number(to));
const onDisk = files.map((file) => path.join(recordsDir, file));

/** Dates are read so fast that one round of them is noise. */
const scanRounds = 7;

const contenders: Record<string, () => Promise<number>> = {
  scan: () => fastestRound(async () => void (await readPhotos(bareRecords(files), openPhotoFolder(recordsDir)))),
  "bare-exifr": () => fastestRound(bareExifr),
  exiftool: async () => timed(async () => void exiftool()),
  copies: () => timed(async () => void (await publishPhotos(files.map(asPhoto), { recordsDir, cacheDir: out }))),
  "bare-sharp": () => timed(bareSharp),
  astro: () => timed(astroBuild),
};

const ms = (await contenders[mode]?.()) ?? Number.NaN;
const { user, system } = process.cpuUsage();
console.log(
  JSON.stringify({
    ms,
    cpuMs: (user + system) / 1000,
    photos: files.length,
    peakMiB: process.resourceUsage().maxRSS / 1024,
  }),
);

async function timed(work: () => Promise<void>): Promise<number> {
  const began = performance.now();
  await work();
  return performance.now() - began;
}

async function fastestRound(work: () => Promise<void>): Promise<number> {
  const rounds = [];
  for (let round = 0; round < scanRounds; round++) rounds.push(await timed(work));
  return Math.min(...rounds);
}

function bareRecords(photoFiles: readonly string[]): Records {
  const none = new Map<string, never>();
  return {
    settings: {
      name: "",
      southern: false,
      timeZone: "Europe/London",
      units: "metric",
      language: "en-GB",
      seasonStarts: "01-01",
      narrationRate: 130,
      photoGapDays: 14,
      kit: [],
      weights: {},
      base: "/",
      body: "",
    },
    sites: none,
    beds: none,
    varieties: none,
    crops: none,
    gear: none,
    trials: none,
    episodes: none,
    notes: [],
    events: [],
    readings: [],
    words: [],
    photoFiles,
    clipFiles: [],
    asideFiles: [],
    sounds: [],
    photoSidecars: none,
    weatherFiles: [],
    problems: [],
  };
}

function asPhoto(file: string): Photo {
  return { path: file, dateBasis: "unknown", varieties: [], private: false };
}

/** The library alone, by path, with the options found best for it. */
async function bareExifr(): Promise<void> {
  await pLimit(8).map(onDisk, (file) =>
    exifr.parse(file, { firstChunkSize: 65_536, reviveValues: false, translateValues: false }),
  );
}

/** The same files as `copies` with nothing else done: one decode, every width from it, as many photos at once as cores. */
async function bareSharp(): Promise<void> {
  sharp.concurrency(1);
  sharp.cache(false);
  await mkdir(out, { recursive: true });
  const [largest = 1600] = pageWidths.toSorted((a, b) => b - a);
  await pLimit(availableParallelism()).map(onDisk, async (file, index) => {
    const { data, info } = await sharp(await readFile(file))
      .autoOrient()
      .resize({ width: largest, withoutEnlargement: true })
      .raw()
      .toBuffer({ resolveWithObject: true });
    const raw = { width: info.width, height: info.height, channels: info.channels };
    for (const width of pageWidths) {
      const narrow = sharp(await sharp(data, { raw }).resize({ width }).raw().toBuffer(), {
        raw: { width, height: Math.round((info.height * width) / info.width), channels: info.channels },
      });
      await narrow
        .clone()
        .webp(webpSettings)
        .toFile(path.join(out, `${index}-${width}.webp`));
      await narrow
        .clone()
        .jpeg(jpegSettings)
        .toFile(path.join(out, `${index}-${width}.jpg`));
    }
  });
}

function exiftool(): void {
  const tags = ["-DateTimeOriginal", "-OffsetTimeOriginal", "-SubSecTimeOriginal", "-GPSDateStamp", "-GPSTimeStamp"];
  execFileSync("exiftool", ["-fast2", "-json", ...tags, "-@", "-"], {
    input: onDisk.join("\n"),
    maxBuffer: 1 << 28,
    stdio: ["pipe", "pipe", "ignore"],
  });
}

/** A page of all photos, made by the site builder's own image work at the same sizes and formats. */
async function astroBuild(): Promise<void> {
  const { build } = await import("astro");
  await mkdir(path.join(out, "src/pages"), { recursive: true });
  await symlink(path.join(import.meta.dirname, "../../node_modules"), path.join(out, "node_modules"), "junction");
  const imports = onDisk.map((file, index) => `import photo${index} from ${JSON.stringify(file)};`).join("\n");
  const pictures = onDisk
    .map(
      (_, index) =>
        `<Picture src={photo${index}} widths={[${pageWidths.join()}]} formats={["webp"]} fallbackFormat="jpg" alt="" />`,
    )
    .join("\n");
  await writeFile(
    path.join(out, "src/pages/index.astro"),
    `---\nimport { Picture } from "astro:assets";\n${imports}\n---\n<html><body>${pictures}</body></html>\n`,
  );
  process.chdir(out);
  process.env.ASTRO_TELEMETRY_DISABLED = "1";
  await build({
    configFile: false,
    logLevel: "error",
    root: out,
    outDir: path.join(out, "dist"),
    cacheDir: path.join(out, "cache"),
    image: { service: { entrypoint: "astro/assets/services/sharp", config: { limitInputPixels: false } } },
    vite: {
      server: { fs: { strict: false } },
      cacheDir: path.join(out, "vite"),
      environments: { prerender: { resolve: { external: ["sharp"], noExternal: [/^(?!sharp)/] } } },
    },
  });
}
