/** What programs read beside the pages: feeds, the map, structured data, the list as data, headers; served below a path. */
import { mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { parseHTML } from "linkedom";
import sharp from "sharp";
import ts from "typescript";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { z } from "zod";
import { type BuiltSites, buildSites } from "../../src/site/index.ts";
import { brokenLinks, filesOf, pagesOf, photoCopies, readGarden, today } from "./built-site.ts";

const FILES: Readonly<Record<string, string>> = {
  "garden.md":
    "---\nname: Wall & Path\nlanguage: en-GB\ntime zone: Europe/London\naddress: https://garden.example\nbase: /garden/\n---\n",
  "beds/long-bed.md": "---\ntitle: Long bed\n---\n",
  "beds/hidden.md": "---\ntitle: Hidden bed\nprivate: true\n---\n",
  "varieties/aquadulce.md":
    "---\ntitle: Aquadulce\ncrop: broad bean\nsay it as: ah-kwa-DOOL-chay\nsource: { name: Drift Lane Seeds, obtained: bought, year: 2025 }\n---\n",
  "notes/2026-05-16.md": "---\nbed: long-bed\n---\n\n- planted 12 Aquadulce broad bean\n- picked 400 g Aquadulce\n",
  "episodes/june/index.md":
    '---\ntitle: "June: beans & <greens>"\ndate: 2026-06-13\npublished: 2026-06-19\nstatus: published\nlink: https://films.example/june\nstops: [{ bed: long-bed, at: "1:02" }, { bed: hidden, at: "2:00" }]\n---\n\nWhat the **wall** does.\n',
  "episodes/may/index.md": "---\ntitle: May\ndate: 2026-05-16\nstatus: published\nstops: [long-bed]\n---\n",
};

let folder: string;
let sites: BuiltSites;

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "plotreel-programs-"));
  const recordsDir = path.join(folder, "records");
  for (const [file, text] of Object.entries(FILES)) {
    await mkdir(path.dirname(path.join(recordsDir, file)), { recursive: true });
    await writeFile(path.join(recordsDir, file), text);
  }
  await mkdir(path.join(recordsDir, "photos/long-bed"), { recursive: true });
  const picture = sharp({ create: { width: 1200, height: 800, channels: 3, background: { r: 60, g: 120, b: 40 } } });
  await picture.jpeg().toFile(path.join(recordsDir, "photos/long-bed/2026-06-13.jpg"));
  const garden = await readGarden(recordsDir);
  const cacheDir = path.join(folder, "cache");
  sites = await buildSites(garden, {
    outDir: path.join(folder, "out"),
    cacheDir,
    today,
    photos: await photoCopies(garden, recordsDir, cacheDir),
    briefs: [],
  });
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const published = (file: string) => readFile(path.join(sites.publicDir, file), "utf8");

describe("a site below a path", () => {
  it("has no broken link, and every page says where it really is", async () => {
    expect(await brokenLinks(sites.publicDir, "/garden/")).toEqual([]);
    for (const [file, page] of await pagesOf(sites.publicDir)) {
      if (file === "404.html") continue;
      const canonical = page.querySelector('link[rel="canonical"]')?.getAttribute("href");
      expect(canonical).toBe(`https://garden.example/garden/${file.replace(/index\.html$/u, "")}`);
      expect(page.querySelector('meta[property="og:url"]')?.getAttribute("content")).toBe(canonical);
    }
  });

  it("lists every page in its map, and no private one", async () => {
    const listed = [...(await published("sitemap.xml")).matchAll(/<loc>([^<]*)<\/loc>/gu)].map(([, page]) => page);
    const pages = (await filesOf(sites.publicDir)).filter((file) => file.endsWith(".html") && file !== "404.html");
    expect(listed).toHaveLength(pages.length);
    expect(listed).toContain("https://garden.example/garden/");
    expect(listed).toContain("https://garden.example/garden/beds/long-bed/");
    expect(listed.join()).not.toContain("hidden");
  });

  it("shows a photo, in a copy the site already has, where its address is passed on", async () => {
    const page = (await pagesOf(path.join(sites.publicDir, "episodes/june"))).get("index.html");
    const address = page?.querySelector('meta[property="og:image"]')?.getAttribute("content") ?? "";
    expect(address).toMatch(/^https:\/\/garden\.example\/garden\/photos\//u);
    expect(await filesOf(sites.publicDir)).toContain(address.slice("https://garden.example/garden/".length));
  });

  it("tells the host which headers to send", async () => {
    const headers = await published("_headers");
    expect(headers).toContain("/garden/*\n  Content-Security-Policy: frame-ancestors 'none'\n");
    expect(headers).toContain("/garden/photos/*\n  Cache-Control: public, max-age=31536000, immutable\n");
    for (const line of headers.split("\n")) expect(line, line).toMatch(/^(?:|\/\S+| {2}[\w-]+: \S.*)$/u);
  });
});

describe("feeds", () => {
  /** https://www.rssboard.org/rss-specification */
  it("hold the films, newest first, as RSS", async () => {
    const { document } = parseHTML(await published("feed.xml"));
    const items = [...document.querySelectorAll("item")];
    expect(items.map((item) => item.querySelector("title")?.textContent)).toEqual(["June: beans & <greens>", "May"]);
    expect(items[0]?.querySelector("guid")?.textContent).toBe("https://garden.example/garden/episodes/june/");
    expect(items[0]?.querySelector("pubDate")?.textContent).toBe("Fri, 19 Jun 2026 12:00:00 +0000");
    expect(items[0]?.querySelector("description")?.textContent).toContain("<strong>wall</strong>");
    expect(document.querySelector("channel > title")?.textContent).toBe("Wall & Path");
  });

  /** https://www.jsonfeed.org/version/1.1/ */
  it("hold the same as JSON Feed", async () => {
    const address = z.url();
    const item = z.strictObject({
      id: address,
      url: address,
      external_url: address.optional(),
      title: z.string(),
      summary: z.string(),
      content_html: z.string(),
      image: address.optional(),
      date_published: z.iso.datetime(),
    });
    const shape = z.strictObject({
      version: z.literal("https://jsonfeed.org/version/1.1"),
      title: z.string(),
      home_page_url: address,
      feed_url: address,
      language: z.string(),
      items: z.array(item),
    });
    const feed = shape.parse(JSON.parse(await published("feed.json")));
    expect(feed.items.map(({ external_url }) => external_url)).toEqual(["https://films.example/june", undefined]);
  });
});

describe("a film as structured data", () => {
  it("is there for the film that can be watched, without the bed that is not shown", async () => {
    const data = JSON.parse(await structured("june"));
    expect(data).toMatchObject({
      "@type": "VideoObject",
      name: "June: beans & <greens>",
      uploadDate: "2026-06-19",
      hasPart: [{ "@type": "Clip", name: "Long bed", startOffset: 62 }],
    });
    expect(await structured("may")).toBe("");
  });

  it("says only what the vocabulary of schema.org knows, in values it allows", async () => {
    const data = await structured("june");
    expect(complaints(data)).toEqual([]);
    // The check itself can fail.
    expect(complaints(data.replace('"uploadDate"', '"uploadedOn"'))).toHaveLength(1);
    expect(complaints(data.replace('"startOffset":62', '"startOffset":{"minutes":1}'))).toHaveLength(1);
  });

  async function structured(episode: string): Promise<string> {
    const page = (await pagesOf(path.join(sites.publicDir, "episodes", episode))).get("index.html");
    return page?.querySelector('script[type="application/ld+json"]')?.textContent ?? "";
  }

  /** What TypeScript says when the data is held against the vocabulary as types (schema-dts, generated from it). */
  function complaints(json: string): readonly string[] {
    const file = path.resolve("tests/site/film-data-as-types.ts");
    const source = `import type { VideoObject, WithContext } from "schema-dts";\nexport const film: WithContext<VideoObject> = ${json};\n`;
    const options: ts.CompilerOptions = {
      strict: true,
      noEmit: true,
      skipLibCheck: true,
      module: ts.ModuleKind.ESNext,
      moduleResolution: ts.ModuleResolutionKind.Bundler,
      target: ts.ScriptTarget.ES2022,
      types: [],
    };
    const host = ts.createCompilerHost(options);
    const { getSourceFile, fileExists, readFile: read } = host;
    host.fileExists = (name) => name === file || fileExists(name);
    host.readFile = (name) => (name === file ? source : read(name));
    host.getSourceFile = (name, target, ...rest) =>
      name === file ? ts.createSourceFile(name, source, target) : getSourceFile.call(host, name, target, ...rest);
    const program = ts.createProgram([file], options, host);
    return ts
      .getPreEmitDiagnostics(program)
      .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, " "));
  }
});

describe("the variety list as data", () => {
  it("has the shape that docs/variety-list.md describes", async () => {
    const variety = z.strictObject({
      id: z.string(),
      variety: z.string(),
      crop: z.string().optional(),
      family: z.string().optional(),
      botanicalName: z.string().optional(),
      sayAs: z.string().optional(),
      alsoSpelled: z.array(z.string()),
      source: z
        .strictObject({
          name: z.string(),
          obtained: z.string().optional(),
          year: z.number().optional(),
          link: z.url().optional(),
        })
        .optional(),
      bedsNow: z.array(z.string()),
      newThisYear: z.boolean(),
      pickedThisYear: z
        .strictObject({
          grams: z.number(),
          litres: z.number(),
          pieces: z.record(z.string(), z.number()),
          times: z.number(),
        })
        .optional(),
      page: z.url(),
    });
    const shape = z.strictObject({
      plotreel: z.literal("variety list"),
      version: z.literal(1),
      garden: z.string(),
      day: z.iso.date(),
      varieties: z.array(variety),
    });
    const list = shape.parse(JSON.parse(await published("varieties.json")));
    expect(list.varieties).toEqual([
      {
        id: "aquadulce",
        variety: "Aquadulce",
        crop: "broad bean",
        family: expect.any(String),
        sayAs: "ah-kwa-DOOL-chay",
        alsoSpelled: [],
        source: { name: "Drift Lane Seeds", obtained: "bought", year: 2025 },
        bedsNow: ["Long bed"],
        newThisYear: false,
        pickedThisYear: { grams: 400, litres: 0, pieces: {}, times: 1 },
        page: "https://garden.example/garden/varieties/aquadulce/",
      },
    ]);
    const documented = await readFile(path.resolve("docs/variety-list.md"), "utf8");
    for (const key of [...Object.keys(shape.shape), ...Object.keys(variety.shape)])
      expect(documented, key).toContain(`\`${key}\``);
  });
});
