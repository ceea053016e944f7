/** What programs read beside the pages: feeds, the map, structured data, the list as data, headers; served below a path. */
import { mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { parse } from "csv-parse/sync";
import { DOMParser } from "linkedom";
import sharp from "sharp";
import ts from "typescript";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { z } from "zod";
import { shareOf } from "../../src/site/components/share-picture.ts";
import { type BuiltSites, buildSites, serveFolder } from "../../src/site/index.ts";
import { openBrowser } from "../browser.ts";
import { brokenLinks, filesOf, pagesOf, photoCopies, readGarden, today } from "./built-site.ts";

const FILES: Readonly<Record<string, string>> = {
  "garden.md":
    "---\nname: Wall & Path\nlanguage: en-GB\ntime zone: Europe/London\naddress: https://garden.example\nbase: /garden/\n---\n",
  "beds/long-bed.md": "---\ntitle: Long bed\n---\n",
  "beds/hidden.md": "---\ntitle: Hidden bed\nprivate: true\n---\n",
  "varieties/aquadulce.md":
    "---\ntitle: Aquadulce\ncrop: broad bean\nsay it as: ah-kwa-DOOL-chay\nsource: { name: Drift Lane Seeds, obtained: bought, year: 2025 }\n---\n",
  "notes/2026-05-16.md": "---\nbed: long-bed\n---\n\n- planted 12 Aquadulce broad bean\n- picked 400 g Aquadulce\n",
  "notes/2025-06-01.md": "---\nbed: long-bed\n---\n\n- planted 6 Aquadulce broad bean\n- picked 300 g Aquadulce\n",
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
  const picture = sharp({ create: { width: 1600, height: 1000, channels: 3, background: { r: 60, g: 120, b: 40 } } });
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

  it("works there in a browser: every file from below the path, nothing refused, the search and its names", async () => {
    const server = await serveFolder(sites.publicDir, { base: "/garden/" });
    const browser = await openBrowser();
    try {
      const page = await browser.newPage();
      const wrong: string[] = [];
      page.on("console", (message) => message.type() === "error" && wrong.push(message.text()));
      page.on("pageerror", (error) => wrong.push(String(error)));
      page.on("response", (response) => {
        if (response.status() >= 400) wrong.push(`${response.status()} ${response.url()}`);
        if (!response.url().startsWith(server.url)) wrong.push(response.url());
      });
      for (const file of await filesOf(sites.publicDir)) {
        if (!file.endsWith("index.html")) continue;
        await page.goto(server.url + file.replace(/index\.html$/u, ""));
        const links = await page
          .locator("a[href], link[href]")
          .evaluateAll((all) => all.map((one) => (one as HTMLAnchorElement).href));
        for (const link of links.filter((one) => one.startsWith(new URL(server.url).origin)))
          expect(link, file).toContain("/garden/");
      }
      await page.goto(`${server.url}search/`);
      await page.getByRole("searchbox").fill("aquaduce");
      await page.getByRole("link", { name: "Aquadulce" }).first().click();
      await page.waitForURL(`${server.url}varieties/aquadulce/`);
      await page.goto(`${server.url}search/`);
      await page.getByRole("searchbox").fill("wall does");
      await page.getByRole("main").getByRole("link", { name: /June/u }).first().waitFor();
      for (const file of ["feed.xml", "feed.json", "varieties.csv", "varieties.json", "sitemap.xml"])
        expect((await page.request.get(server.url + file)).status(), file).toBe(200);
      expect(wrong).toEqual([]);
      expect((await page.request.get(`${server.url}nothing/`)).status()).toBe(404);
      expect((await page.request.get(new URL("/varieties/", server.url).href)).status()).toBe(404);
    } finally {
      await browser.close();
      await server.close();
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

  it("shows a photo, cut for a card, where a page's address is passed on", async () => {
    for (const file of ["episodes/june", "beds/long-bed"]) {
      const page = (await pagesOf(path.join(sites.publicDir, file))).get("index.html");
      const meta = (property: string) =>
        page?.querySelector(`meta[property="${property}"]`)?.getAttribute("content") ?? "";
      expect(meta("og:image"), file).toMatch(/^https:\/\/garden\.example\/garden\/photos\/[\da-f]{32}-card1\.jpg$/u);
      const card = path.join(sites.publicDir, meta("og:image").slice("https://garden.example/garden/".length));
      const { format, width, height, exif } = await sharp(card).metadata();
      expect({ format, width, height, exif }).toEqual({ format: "jpeg", width: 1200, height: 630, exif: undefined });
      expect([meta("og:image:type"), meta("og:image:width"), meta("og:image:height")]).toEqual([
        "image/jpeg",
        "1200",
        "630",
      ]);
      expect(meta("og:image:alt")).toContain("Long bed");
      expect(meta("og:title")).not.toBe("");
      expect(page?.querySelector('meta[name="twitter:card"]')?.getAttribute("content")).toBe("summary_large_image");
    }
  });

  it("takes as much of a smaller photo as it has", () => {
    const share = (width: number, height: number) => {
      const card = shareOf({ src: "/photos/ab-480.jpg", width, height });
      return [card?.src, card?.width, card?.height];
    };
    expect(share(1600, 1200)).toEqual(["/photos/ab-card1.jpg", 1200, 630]);
    expect(share(600, 400)).toEqual(["/photos/ab-card1.jpg", 600, 315]);
    expect(share(1600, 315)).toEqual(["/photos/ab-card1.jpg", 600, 315]);
    expect(shareOf({ src: "/photos/ab-480.webp", width: 1600, height: 1200 })).toBeUndefined();
  });

  /** https://www.sitemaps.org/protocol.html: UTF-8, escaped, whole addresses below the map's own, none twice. */
  it("has a map as the protocol wants it", async () => {
    const map = await published("sitemap.xml");
    expect(
      map.startsWith(
        '<?xml version="1.0" encoding="UTF-8"?>\n<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">',
      ),
    ).toBe(true);
    const listed = [...map.matchAll(/<url><loc>([^<]*)<\/loc><\/url>/gu)].map(([, page]) => page ?? "");
    expect(new Set(listed).size).toBe(listed.length);
    for (const page of listed) {
      expect(page).toMatch(/^https:\/\/garden\.example\/garden\/[\x21-\x7e]*$/u);
      expect(page).not.toMatch(/&(?!amp;|apos;|quot;|lt;|gt;)/u);
    }
    expect(await published("robots.txt")).toContain("Sitemap: https://garden.example/garden/sitemap.xml");
  });

  it("tells the host which headers to send", async () => {
    const headers = await published("_headers");
    expect(headers).toContain("/garden/*\n  Content-Security-Policy: frame-ancestors 'none'\n");
    expect(headers).toContain("/garden/photos/*\n  Cache-Control: public, max-age=31536000, immutable\n");
    for (const line of headers.split("\n")) expect(line, line).toMatch(/^(?:|\/\S+| {2}[\w-]+: \S.*)$/u);
  });
});

describe("feeds", () => {
  /** https://www.rssboard.org/rss-specification, and the RSS advisory board's best practices profile. */
  it("are RSS with everything it requires", async () => {
    const text = await published("feed.xml");
    const document = new DOMParser().parseFromString(text, "text/xml");
    const said = (parent: Element | null, name: string) => parent?.querySelector(`:scope > ${name}`)?.textContent ?? "";
    const channel = document.querySelector("rss[version='2.0'] > channel");
    expect(said(channel, "title")).toBe("Wall & Path");
    expect(said(channel, "description")).not.toBe("");
    expect(said(channel, "link")).toBe("https://garden.example/garden/");
    expect(text).toContain(
      '<atom:link href="https://garden.example/garden/feed.xml" rel="self" type="application/rss+xml"/>',
    );
    expect(said(channel, "language")).toMatch(/^[a-z]{2}(?:-[a-z]{2})?$/iu);
    const items = [...document.querySelectorAll("item")];
    expect(items.map((item) => said(item, "title"))).toEqual([
      "June: beans & <greens>",
      "May",
      expect.stringContaining("2025"),
    ]);
    const guids = items.map((item) => said(item, "guid"));
    expect(guids).toEqual([
      "https://garden.example/garden/episodes/june/",
      "https://garden.example/garden/episodes/may/",
      "https://garden.example/garden/recaps/2025/",
    ]);
    for (const item of items) {
      // RFC 822, with the four digits of a year that RSS asks for.
      expect(said(item, "pubDate")).toMatch(
        /^(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun), \d\d (?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec) \d{4} \d\d:\d\d:\d\d \+0000$/u,
      );
      expect(Number.isNaN(Date.parse(said(item, "pubDate")))).toBe(false);
      expect(said(item, "description")).toMatch(/^<p>/u);
      for (const [, address] of said(item, "description").matchAll(/(?:href|src)="([^"]*)"/gu))
        expect(address).toMatch(/^https?:/u);
    }
    const files = await filesOf(sites.publicDir);
    for (const guid of guids)
      expect(files).toContain(`${guid.slice("https://garden.example/garden/".length)}index.html`);
    expect(said(items[0] ?? null, "pubDate")).toBe("Fri, 19 Jun 2026 12:00:00 +0000");
    expect(said(items[0] ?? null, "description")).toContain("<strong>wall</strong>");
    expect(said(items[2] ?? null, "pubDate")).toBe("Wed, 31 Dec 2025 12:00:00 +0000");
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
    expect(feed.items.map(({ external_url }) => external_url)).toEqual([
      "https://films.example/june",
      undefined,
      undefined,
    ]);
    expect(new Set(feed.items.map(({ id }) => id)).size).toBe(3);
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
    expect(complaints(data.replace('"@type":"Clip"', '"@type":"Klip"'))).toHaveLength(1);
    // Types know no difference between texts: dates and addresses are held to their forms here.
    const video = JSON.parse(data);
    for (const day of [video.uploadDate, video.dateCreated]) expect(day).toMatch(/^\d{4}-\d\d-\d\d$/u);
    for (const address of [
      video.url,
      video.mainEntityOfPage,
      ...video.thumbnailUrl,
      video.isPartOf.url,
      ...video.hasPart.map(({ url }: { url: string }) => url),
    ])
      expect(z.url().safeParse(address).success, address).toBe(true);
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
    const documented = (await readFile(path.resolve("docs/variety-list.md"), "utf8")).split(/^Each variety:$/mu);
    const keysIn = (table = "") =>
      [...table.matchAll(/^\| (`.*?) \|/gmu)].flatMap(([, cell = ""]) =>
        [...cell.matchAll(/`(\w+)`/gu)].map(([, key]) => key),
      );
    expect(keysIn(documented[0])).toEqual(Object.keys(shape.shape));
    expect(keysIn(documented[1])).toEqual(Object.keys(variety.shape));
  });

  /** RFC 4180: lines end in CR LF, every line has as many fields, a field with a comma, quote or line end stands in quotes. */
  it("is a table of the columns that docs/variety-list.md names", async () => {
    const text = await published("varieties.csv");
    expect(text.startsWith("\ufeff")).toBe(true);
    expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/u);
    expect(text.endsWith("\r\n")).toBe(true);
    const rows = parse(text, { bom: true, relax_column_count: false }) as string[][];
    const documented = await readFile(path.resolve("docs/variety-list.md"), "utf8");
    const columns = /Columns: ([^.]*)\./u.exec(documented)?.[1]?.replace(/\s+/gu, " ").split(", ");
    expect(rows[0]).toEqual(columns);
    expect(rows).toHaveLength(2);
  });
});
