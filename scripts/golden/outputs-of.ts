/** Everything that Plotreel says of one garden, as texts by name. */
import { createHash } from "node:crypto";
import { mkdtemp, readdir, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { ahead } from "../../src/cli/ahead-command.ts";
import { cardsFor } from "../../src/cli/brief-command.ts";
import { check } from "../../src/cli/check-command.ts";
import { type Effects, realEffects } from "../../src/cli/effects.ts";
import { type Loaded, loadGarden } from "../../src/cli/load-garden.ts";
import { measured } from "../../src/cli/measured-garden.ts";
import { recap } from "../../src/cli/recap-command.ts";
import { timeline } from "../../src/cli/timeline-command.ts";
import { wrap } from "../../src/cli/wrap-command.ts";
import type { Day, Garden } from "../../src/model.ts";
import { type PublishedPhoto, pageWidths } from "../../src/photos/index.ts";
import { briefPage, publicCaptions, publicGarden } from "../../src/site/index.ts";
import { makePages } from "../../src/site/make-pages.ts";
import { fieldSite } from "../../src/site/page-data/field-site.ts";
import { publicSite } from "../../src/site/page-data/public-site.ts";
import { FIELD_PAGES, PUBLIC_PAGES } from "../../src/site/page-table.ts";
import { cardsMarkdown } from "../../src/tour/index.ts";

export interface GardenCase {
  readonly name: string;
  readonly records: string;
  readonly today: Day;
  /** Whether its sites are made too. */
  readonly pages: boolean;
}

/** `work` keeps what photos measure and pages that were made; what is read of notes is never taken from there. */
export async function outputsOf(
  { records, today, pages }: GardenCase,
  work: string,
  withTemplates: boolean,
): Promise<ReadonlyMap<string, string>> {
  const outputs = new Map<string, string>();
  const run = async (name: string, command: (effects: Effects) => unknown) => {
    const heard: string[] = [];
    const effects = deaf(work, heard, (file, text) => outputs.set(`${name}/${path.basename(file)}`, readable(text)));
    try {
      await command(effects);
    } catch (error) {
      heard.push(error instanceof Error ? error.message : String(error));
    }
    outputs.set(`${name}.txt`, `${heard.join("\n")}\n`.replaceAll(path.resolve(records), "RECORDS"));
  };
  const read = await loadGarden(
    { records, today },
    deaf(work, [], () => undefined),
  );
  const loaded = await measured(read);
  const { garden } = loaded;
  await run("check", (effects) => check(loaded, {}, effects));
  await run("reading", (effects) => check(loaded, { reading: true }, effects));
  await run("timeline", (effects) => timeline(loaded, { since: "0001-01-01" }, effects));
  await run("timeline-data", (effects) => timeline(loaded, { since: "0001-01-01", json: true }, effects));
  await run("ahead", (effects) => ahead(loaded, { weeks: 4, out: "out" }, effects));
  for (const year of yearsOf(garden, today))
    await run(`recap-${year}`, (effects) => recap(loaded, { year, out: "out" }, effects));
  for (const { id, status } of garden.episodes.values()) {
    if (status === "planned") await run(`brief-${id}`, (effects) => tellBrief(loaded, id, effects));
    await run(`wrap-${id}`, (effects) => wrap(loaded, { episode: id, out: "out" }, effects));
  }
  await run("brief-today", (effects) => tellBrief(loaded, today, effects));
  if (pages) for (const [file, text] of await pagesOf(loaded, work, withTemplates)) outputs.set(file, text);
  return outputs;
}

function tellBrief(loaded: Loaded, tour: string, effects: Effects): void {
  const brief = cardsFor(loaded, tour);
  effects.out(cardsMarkdown(brief, loaded.garden.settings, { sources: true }));
  effects.out(JSON.stringify(brief, null, 1));
  effects.out(readable(briefPage(brief, loaded.garden)));
}

/** Effects that write nothing to disk. */
function deaf(work: string, heard: string[], wrote: (file: string, text: string) => void): Effects {
  return {
    ...realEffects(),
    terminal: false,
    canAsk: false,
    out: (line) => void heard.push(line),
    err: (line) => void heard.push(line),
    writeText: async (file, text) => wrote(file, text),
    createText: async () => true,
    readerVersion: () => `${process.pid} ${process.env.TZ}`,
    cacheFor: (recordsDir) => path.join(work, path.basename(recordsDir)),
  };
}

function yearsOf(garden: Garden, today: Day): readonly string[] {
  const days = garden.events.map(({ day }) => day).filter((day) => day <= today);
  return [...new Set(days.map((day) => day.slice(0, 4)))].sort();
}

/** Both sites without their pictures; elsewhere than at home only the data, since templates hold no words. */
async function pagesOf(loaded: Loaded, work: string, withTemplates: boolean): Promise<ReadonlyMap<string, string>> {
  const { garden, today, weather, films } = loaded;
  const photos = new Map(garden.photos.map(({ path: file }) => [file, copyAsIfMade(file)]));
  const open = publicGarden(garden);
  const pages = publicSite(open, today, photos, photos, weather, publicCaptions(garden, open, films));
  const tours = [...garden.episodes.values()].filter(({ status }) => status === "planned").map(({ id }) => id);
  const field = fieldSite(garden, today, {
    photos,
    comparisons: photos,
    weather,
    briefs: tours,
    fieldLists: tours,
  });
  const outputs = new Map([
    ["public-data.txt", digest(JSON.stringify(pages))],
    ["field-data.txt", digest(JSON.stringify(field))],
  ]);
  if (!withTemplates) return outputs;
  const outDir = await mkdtemp(path.join(tmpdir(), "plotreel-golden-pages-"));
  try {
    const publicPages = { name: "public", pages: PUBLIC_PAGES, base: garden.settings.base } as const;
    await makePages(publicPages, pages, { cacheDir: work, outDir: path.join(outDir, "public") });
    const fieldPages = { name: "field", pages: FIELD_PAGES, base: "/" } as const;
    await makePages(fieldPages, field, { cacheDir: work, outDir: path.join(outDir, "field") });
    for (const file of (await readdir(outDir, { recursive: true })).sort())
      if (/\.(?:html|csv|json|xml|txt)$/u.test(file))
        outputs.set(file, readable(await readFile(path.join(outDir, file), "utf8")));
  } finally {
    await rm(outDir, { recursive: true, force: true });
  }
  for (const { path: file, text } of pages.files) outputs.set(`public/${file}`, text);
  return outputs;
}

/** Pages only need to know how large a copy is. */
function copyAsIfMade(file: string): PublishedPhoto {
  const name = digest(file).slice(0, 8);
  const files = pageWidths.flatMap((width) =>
    (["webp", "jpeg"] as const).map((format) => ({
      name: `${name}-${width}.${format}`,
      format,
      width,
      height: Math.round(width * 0.75),
      bytes: 1,
      cachePath: "",
    })),
  );
  return { width: 1600, height: 1200, placeholder: "#888", files };
}

/** A line for each part of a page, its style and its type as a digest. */
function readable(text: string): string {
  if (!text.trimStart().startsWith("<")) return text;
  return text
    .replace(/<style>(.*?)<\/style>/gsu, (_all, style: string) => `<style>${digest(style)}</style>`)
    .replace(/base64,[\w+/=]+/gu, (data) => `base64,${digest(data)}`)
    .replace(/>\s*</gu, ">\n<");
}

function digest(text: string): string {
  return createHash("sha256").update(text).digest("hex").slice(0, 16);
}
