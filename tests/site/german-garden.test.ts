/** A garden whose language is German, built as any other: every page speaks German, and none is worse for it. */
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { gardenWeather } from "../../src/almanac/index.ts";
import type { Garden } from "../../src/model.ts";
import { measureGrowth, publishComparisons } from "../../src/photos/index.ts";
import { openRecordsFolder, readRecords, readTexts } from "../../src/records/index.ts";
import { type BuiltSites, buildSites, type StaticServer, serveFolder } from "../../src/site/index.ts";
import { wordsIn } from "../../src/site/words/index.ts";
import { openBrowser } from "../browser.ts";
import { brokenLinks, filesOf, filmTexts, pagesOf, photoCopies, readGarden, today } from "./built-site.ts";
import { axeViolations, htmlComplaints } from "./page-checks.ts";

const records = path.resolve("tests/gardens/hanggarten");

let folder: string;
let sites: BuiltSites;
let browser: Browser;
let server: StaticServer;

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "plotreel-german-"));
  const cacheDir = path.join(folder, "cache");
  const read = await readGarden(records);
  const { growth, viewpoints } = await measureGrowth(read, {
    recordsDir: records,
    cacheDir: path.join(folder, "growth"),
  });
  const garden: Garden = { ...read, growth };
  const { weatherFiles } = await readRecords(await openRecordsFolder(records), { today });
  const { texts } = await readTexts(await openRecordsFolder(records), weatherFiles);
  sites = await buildSites(garden, {
    outDir: path.join(folder, "out"),
    cacheDir,
    today,
    photos: await photoCopies(garden, records, cacheDir),
    comparisons: await publishComparisons(viewpoints, {
      recordsDir: records,
      cacheDir: path.join(folder, "comparisons"),
      today,
    }),
    briefs: [],
    films: await filmTexts(garden, records),
    weather: gardenWeather(texts, garden.settings.position, today),
  });
  server = await serveFolder(sites.publicDir, { base: "/garten/" });
  browser = await openBrowser();
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
  await rm(folder, { recursive: true, force: true });
});

/** A page of each kind that viewers can come to. */
const KINDS = [
  ...["index.html", "404.html", "search/index.html", "varieties/index.html", "varieties/ochsenherz/index.html"],
  ...["beds/index.html", "beds/langes-beet/index.html", "beds/langes-beet/then-and-now/index.html"],
  ...["episodes/index.html", "episodes/juni-rundgang/index.html", "recaps/index.html", "recaps/2026/index.html"],
];

/** Words that no German sentence has, and the person who keeps this garden writes none. */
const ENGLISH =
  /(?<![\p{L}{/-])(?:the|and|of|were|is|are|from|with|this|that|by|for|since|not|more|than|picked|sown|planted|week|year|days?|here|its?|on|at|or|one|two|say|new)(?![\p{L}}/-])/iu;

/** What a page says: its text, and what it says of elements beside their text. */
function saidOn(page: Document): readonly string[] {
  const said: string[] = [];
  const walk = (node: Node): void => {
    if (node.nodeType === 3) said.push(node.textContent ?? "");
    if (node.nodeType !== 1) return;
    const element = node as Element;
    if (["SCRIPT", "STYLE"].includes(element.tagName)) return;
    for (const { name, value } of element.attributes)
      if (
        /^(?:aria-label|alt|title|placeholder|content|data-(?:one|many|none|all|share|same|kept|lost|failed|cover|mine).*)$/u.test(
          name,
        ) &&
        element.getAttribute("http-equiv") === null
      )
        said.push(value);
    for (const child of node.childNodes) walk(child);
  };
  walk(page.documentElement);
  return said.map((text) => text.replace(/\s+/gu, " ").trim()).filter((text) => text !== "");
}

/** Settings in a head that are no words. */
const NO_WORDS = /^(?:width=|light dark|strict-origin|website|summary|noindex|https?:|Astro|utf-8)/u;

function stringsIn(words: unknown): readonly string[] {
  if (typeof words === "string") return [words];
  return typeof words === "object" && words !== null ? Object.values(words).flatMap(stringsIn) : [];
}

describe("a German garden", () => {
  it("has a page of every kind", async () => {
    expect(await filesOf(sites.publicDir)).toEqual(expect.arrayContaining([...KINDS]));
  });

  it("says in which language it is", async () => {
    for (const siteDir of [sites.publicDir, sites.privateDir])
      for (const [file, page] of await pagesOf(siteDir))
        expect(page.documentElement.getAttribute("lang"), file).toBe("de");
    expect(await readFile(path.join(sites.publicDir, "feed.xml"), "utf8")).toContain("<language>de</language>");
  });

  it("has no English word on any page for viewers", async () => {
    const found: string[] = [];
    for (const [file, page] of await pagesOf(sites.publicDir))
      for (const text of saidOn(page)) if (ENGLISH.test(text) && !NO_WORDS.test(text)) found.push(`${file}: ${text}`);
    expect(found).toEqual([]);
  });

  it("has no word of the English catalogue on any page for viewers", async () => {
    const german = new Set(stringsIn(wordsIn("de")));
    const english = new Set(stringsIn(wordsIn("en")).filter((text) => !german.has(text)));
    expect(english.size).toBeGreaterThan(150);
    for (const [file, page] of await pagesOf(sites.publicDir))
      for (const text of saidOn(page)) expect(english.has(text), `${file}: ${text}`).toBe(false);
  });

  it("reads as German is written", async () => {
    const page = async (file: string) =>
      (await pagesOf(sites.publicDir)).get(file)?.body.textContent?.replace(/\s+/gu, " ").replaceAll("\u00a0", " ") ??
      "";
    const variety = await page("varieties/ochsenherz/index.html");
    expect(variety).toContain("In diesem Jahr bisher 3,8 kg geerntet, seit dem 11. Juli.");
    expect(variety).toContain("Acht Pflanzen, gesät am 14. März und ausgepflanzt am 16. Mai.");
    expect(variety).toContain("Herkunft: Samenhof Lindgrund, 2025 gekauft");
    expect(variety).toContain("Acht Tomaten Ochsenherz ausgepflanzt, 60 cm Abstand, aus der Aussaat vom 14. März.");
    const bed = await page("beds/langes-beet/index.html");
    expect(bed).toContain("Drei Lauch Blauer Winter verloren, Ursache: Lauchmotte.");
    expect(bed).toContain("Bodenprobe: pH 6,8.");
    expect(bed).toContain("Erste weibliche Blüte: Kürbisse Uchiki Kuri.");
    expect(bed).toMatch(/Bedeckung: von \d+ % auf \d+ %/u);
    const film = await page("episodes/juni-rundgang/index.html");
    expect(film).toContain("Langes Beet: Gartenbohnen und Kürbisse");
    expect(await readFile(path.join(sites.publicDir, "varieties.csv"), "utf8")).toContain("Uchiki Kuri,Kürbis,");
  });

  it("keeps what is private to itself", async () => {
    for (const [file, page] of await pagesOf(sites.publicDir))
      expect(page.documentElement.textContent, file).not.toMatch(
        /Wildes Eck|Am Bach|Schaulauch|Nachbarn|Schindel|47\.31/u,
      );
  });

  it("has no broken link, and is valid HTML", async () => {
    expect(await brokenLinks(sites.publicDir, "/garten/")).toEqual([]);
    const complaints: string[] = [];
    for (const file of KINDS)
      for (const complaint of await htmlComplaints(path.join(sites.publicDir, file)))
        complaints.push(`${file}:${complaint}`);
    expect(complaints).toEqual([]);
  });

  it("is open to everyone", async () => {
    for (const width of [390, 1280]) {
      const page = await browser.newPage({ viewport: { width, height: 844 } });
      for (const file of KINDS) {
        await page.goto(new URL(file.replace(/index\.html$/u, ""), server.url).href);
        expect(await axeViolations(page), file).toEqual([]);
        const wider = await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        );
        expect(wider, `${file} at ${width}`).toBeLessThanOrEqual(0);
      }
      await page.close();
    }
  });
});
