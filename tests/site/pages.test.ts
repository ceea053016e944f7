/** The demo garden's two sites, built once and walked page by page: links, validity, access, filters. */
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Garden } from "../../src/model.ts";
import { type BuiltSites, buildSites, type StaticServer, serveFolder } from "../../src/site/index.ts";
import { colourPairs } from "../../src/site/look/colour-pairs.ts";
import { brokenLinks, filesOf, filmTexts, openBrowser, pagesOf, photoCopies, readGarden, today } from "./built-site.ts";
import { axeViolations, htmlComplaints } from "./page-checks.ts";

const demo = path.resolve("demo-content");

let folder: string;
let garden: Garden;
let sites: BuiltSites;
let browser: Browser;
let publicServer: StaticServer;
let fieldServer: StaticServer;

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "plotreel-pages-"));
  const cacheDir = path.join(folder, "cache");
  garden = await readGarden(demo);
  const briefs = [
    {
      name: "2026-07-tour",
      html: '<!doctype html><html lang="en"><head><title>July</title></head><body><h1>July</h1></body></html>',
    },
  ];
  sites = await buildSites(garden, {
    outDir: path.join(folder, "out"),
    cacheDir,
    today,
    photos: await photoCopies(garden, demo, cacheDir),
    briefs,
    films: await filmTexts(garden, demo),
  });
  publicServer = await serveFolder(sites.publicDir);
  fieldServer = await serveFolder(sites.privateDir);
  browser = await openBrowser();
});

afterAll(async () => {
  await browser?.close();
  await publicServer?.close();
  await fieldServer?.close();
  await rm(folder, { recursive: true, force: true });
});

/** One page of every kind, the fullest of it, by path. */
async function kindsOfPages(siteDir: string): Promise<readonly string[]> {
  const fullest = new Map<string, { size: number; file: string }>();
  for (const file of await filesOf(siteDir)) {
    if (!file.endsWith(".html") || file.startsWith("briefs/")) continue;
    const kind = file.replace(/\/[^/]+\/index\.html$/u, "/*");
    const { length: size } = await readFile(path.join(siteDir, file));
    if (size > (fullest.get(kind)?.size ?? 0)) fullest.set(kind, { size, file });
  }
  return [...fullest.values()].map(({ file }) => file.replace(/index\.html$/u, ""));
}

describe("the files", () => {
  it("are a page for every public variety, bed and film, and a field page for every bed", async () => {
    const files = await filesOf(sites.publicDir);
    const published = [...garden.episodes.values()].filter(({ status }) => status === "published");
    expect(files.filter((file) => /^varieties\/.+\/index\.html$/u.test(file))).toHaveLength(garden.varieties.size);
    expect(files.filter((file) => /^beds\/.+\/index\.html$/u.test(file))).toHaveLength(garden.beds.size);
    expect(files.filter((file) => /^episodes\/.+\/index\.html$/u.test(file))).toHaveLength(published.length);
    expect(files).toEqual(expect.arrayContaining(["404.html", "index.html", "varieties.csv", "varieties/filters.css"]));
    expect((await filesOf(sites.privateDir)).filter((file) => /^beds\/.+\/index\.html$/u.test(file))).toHaveLength(
      garden.beds.size,
    );
  });

  it("have no broken link, picture or anchor", async () => {
    expect(await brokenLinks(sites.publicDir, "/")).toEqual([]);
    expect(await brokenLinks(sites.privateDir, "/")).toEqual([]);
  });

  it("are valid HTML", async () => {
    const complaints: string[] = [];
    for (const siteDir of [sites.publicDir, sites.privateDir]) {
      for (const file of await filesOf(siteDir)) {
        if (!file.endsWith(".html") || file.startsWith("briefs/")) continue;
        for (const complaint of await htmlComplaints(path.join(siteDir, file))) complaints.push(`${file}:${complaint}`);
      }
    }
    expect(complaints.slice(0, 10)).toEqual([]);
  });

  it("say what is private: every field page and no public one", async () => {
    for (const [file, page] of await pagesOf(sites.privateDir)) {
      if (file.startsWith("briefs/")) continue;
      expect(page.querySelector(".mark")?.textContent, file).toContain("Private");
      expect(page.querySelector('meta[name="robots"]')?.getAttribute("content"), file).toContain("noindex");
    }
    for (const [file, page] of await pagesOf(sites.publicDir))
      expect(page.querySelector("header .mark"), file).toBeNull();
  });

  it("carry no style of their own, and a script only where a viewer does something", async () => {
    for (const [file, page] of await pagesOf(sites.publicDir)) {
      expect(page.querySelectorAll("[style]"), file).toHaveLength(0);
      const scripts = page.querySelectorAll('script:not([type="application/ld+json"])').length;
      const does = page.querySelector("main :is(select, input)") !== null;
      expect(scripts, file).toBe(does ? 1 : 0);
      expect(page.querySelector('meta[http-equiv="content-security-policy"]')?.getAttribute("content"), file).toContain(
        "default-src 'none'",
      );
    }
  });

  it("give every picture its size, so that nothing jumps when it arrives", async () => {
    let pictures = 0;
    for (const [file, page] of await pagesOf(sites.publicDir)) {
      for (const picture of page.querySelectorAll("img")) {
        pictures += 1;
        expect(Number(picture.getAttribute("width")), file).toBeGreaterThan(0);
        expect(Number(picture.getAttribute("height")), file).toBeGreaterThan(0);
        expect(picture.getAttribute("alt"), file).not.toBe("");
      }
    }
    expect(pictures).toBeGreaterThan(20);
  });
});

describe("the order of things", () => {
  const marks = (html: string, all: readonly string[]) => all.filter((mark) => html.includes(mark));
  const inOrder = (html: string, all: readonly string[]) =>
    marks(html, all).toSorted((a, b) => html.indexOf(a) - html.indexOf(b));

  it("of a variety: photo, name and how to say it, result, source, where and when, growth, films, notes", async () => {
    const order = [
      'class="lead',
      'class="title"',
      'class="say"',
      'class="result"',
      'class="source"',
      'id="where"',
      'id="growth"',
      'id="seen"',
      'id="notes"',
    ];
    let whole = 0;
    for (const { id } of garden.varieties.values()) {
      const page = await readFile(path.join(sites.publicDir, "varieties", id, "index.html"), "utf8");
      const main = page.slice(page.indexOf("<main"));
      expect(inOrder(main, order), id).toEqual(marks(main, order));
      if (marks(main, order).length === order.length) whole += 1;
    }
    expect(whole, "pages that have all of it").toBeGreaterThan(5);
  });

  it("of a bed: its place on the plan, now, the year so far, then and now", async () => {
    const order = ['class="plan"', 'id="now"', 'id="timeline"', 'id="then-and-now"', 'id="earlier"'];
    for (const { id } of garden.beds.values()) {
      const page = await readFile(path.join(sites.publicDir, "beds", id, "index.html"), "utf8");
      expect(inOrder(page, order), id).toEqual(marks(page, order));
    }
    const longBed = await readFile(path.join(sites.publicDir, "beds/long-bed/index.html"), "utf8");
    expect(marks(longBed, order)).toEqual(expect.arrayContaining(['class="plan"', 'id="timeline"', 'id="earlier"']));
    expect(longBed).toContain("Long Bed lies in the south of Hill Allotment, next to Brassica Bed and Onion Bed.");
  });

  it("of the style page: every pair of colours in every scheme with its contrast, every part by day and by night", async () => {
    const page = (await pagesOf(sites.privateDir)).get("looks/index.html");
    expect(page?.querySelectorAll(".pairs")).toHaveLength(4);
    for (const pairs of page?.querySelectorAll(".pairs") ?? [])
      expect([...pairs.querySelectorAll(".at")].map((said) => said.textContent)).toEqual(
        colourPairs.map(({ least }) =>
          expect.stringMatching(new RegExp(`^\\d+(?:\\.\\d)? to 1; wanted ${least}$`, "u")),
        ),
      );
    for (const part of [".plate + .along", ".row", "select", ".photo", ".growth", ".timeline", ".empty"])
      for (const scheme of [".by-day", ".by-night"])
        expect(page?.querySelector(`${scheme} ${part}`), `${part} ${scheme}`).not.toBeNull();
  });
});

describe("in a browser", () => {
  for (const scheme of ["light", "dark"] as const) {
    for (const [device, width] of [
      ["phone", 390],
      ["desktop", 1280],
    ] as const) {
      it(`every kind of page is open to everyone: ${device}, ${scheme}`, async () => {
        for (const [server, siteDir] of [
          [publicServer, sites.publicDir],
          [fieldServer, sites.privateDir],
        ] as const) {
          const page = await browser.newPage({ viewport: { width, height: 844 }, colorScheme: scheme });
          const refused: string[] = [];
          page.on("console", (message) => {
            if (message.type() === "error") refused.push(message.text());
          });
          for (const address of await kindsOfPages(siteDir)) {
            await page.goto(new URL(address, server.url).href);
            expect(await axeViolations(page), `${address} ${device} ${scheme}`).toEqual([]);
            const overflow = await page.evaluate(
              () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
            );
            expect(overflow, `${address} is wider than the screen`).toBeLessThanOrEqual(0);
          }
          expect(refused).toEqual([]);
          await page.close();
        }
      });
    }
  }

  it("asks no other server for anything", async () => {
    const page = await browser.newPage();
    const elsewhere: string[] = [];
    page.on("request", (request) => {
      if (new URL(request.url()).origin !== new URL(publicServer.url).origin) elsewhere.push(request.url());
    });
    for (const address of await kindsOfPages(sites.publicDir)) await page.goto(new URL(address, publicServer.url).href);
    expect(elsewhere).toEqual([]);
    await page.close();
  });

  it("narrows the variety list without scripts", async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(new URL("varieties/", publicServer.url).href);
    const all = await visibleRows(page);
    expect(all).toBe(garden.varieties.size);
    await page.getByLabel("Bed", { exact: true }).selectOption({ label: garden.beds.get("long-bed")?.title ?? "" });
    const inBed = await visibleRows(page);
    expect(inBed).toBeGreaterThan(0);
    expect(inBed).toBeLessThan(all);
    await page.getByLabel("New in 2026").check();
    const newInBed = await visibleRows(page);
    expect(newInBed).toBeLessThan(inBed);
    await context.close();
  });

  it("marks a field page from top to bottom, whatever part of it is seen", async () => {
    const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
    for (const address of await kindsOfPages(sites.privateDir)) {
      await page.goto(new URL(address, fieldServer.url).href);
      expect(await page.locator(".tape text").textContent(), address).toBe("Private");
      const { height, whole } = await page.evaluate(() => ({
        height: document.querySelector(".tape")?.getBoundingClientRect().height ?? 0,
        whole: document.documentElement.scrollHeight,
      }));
      expect(height, address).toBeGreaterThanOrEqual(whole - 1);
      await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
      expect(await page.locator(".mark").first().boundingBox(), address).toMatchObject({ y: 0 });
    }
    await page.close();
  });

  it("prints the variety list as a hand-out on two pages, with its address", async () => {
    const page = await browser.newPage();
    await page.goto(new URL("varieties/", publicServer.url).href);
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".address").filter({ visible: true }).textContent()).toBe("gullstone.example/varieties/");
    for (const format of ["A4", "Letter"]) {
      const pdf = await page.pdf({ format });
      expect(pdf.toString("latin1").match(/\/Type\s*\/Page\b/gu), format).toHaveLength(2);
    }
    await page.close();
  });

  it("keeps the choices in the address, says how many are left, and hides empty crops", async () => {
    const page = await browser.newPage();
    await page.goto(new URL("varieties/", publicServer.url).href);
    await page.getByLabel("Crop", { exact: true }).selectOption({ label: "Tomatoes" });
    expect(new URL(page.url()).searchParams.get("crop")).toBe("tomato");
    const left = await visibleRows(page);
    expect(await page.getByRole("status").textContent()).toBe(`${left} varieties`);
    await page.reload();
    expect(await visibleRows(page)).toBe(left);
    expect(await page.locator(".crop-group").filter({ visible: true }).count()).toBe(1);
    await page.close();
  });
});

async function visibleRows(page: Page): Promise<number> {
  return page.locator(".row").filter({ visible: true }).count();
}
