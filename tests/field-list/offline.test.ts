/** The list as a page of the private site: kept by its worker, told as ready only when it is, and there without a network. */
import { createHash } from "node:crypto";
import { cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { offlineWorker } from "../../src/site/field-list/phone-script.ts";
import { type BuiltSites, briefPage, buildSites, serveFolder } from "../../src/site/index.ts";
import { openBrowser } from "../browser.ts";
import { brokenLinks, filesOf } from "../site/built-site.ts";
import { gardenOf, squashTour } from "../tour/garden-of.ts";
import { asCards, axeViolations, day, smallBrief, smallList } from "./tour-list.ts";

const PORT = 18_641;
let folder: string;
let sites: BuiltSites;
let browser: Browser;

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "plotreel-offline-"));
  const garden = await gardenOf(squashTour, day);
  const brief = await smallBrief();
  sites = await buildSites(garden, {
    outDir: path.join(folder, "out"),
    cacheDir: path.join(folder, "cache"),
    today: day,
    photos: new Map(),
    briefs: [{ name: brief.tour, html: briefPage(asCards(brief), garden) }],
    fieldLists: [await smallList()],
  });
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
  await rm(folder, { recursive: true, force: true });
});

const list = "field-lists/2026-06-tour.html";
const ready = (page: Page, says: string) => page.locator("#offline", { hasText: says }).waitFor({ timeout: 20_000 });

describe("the private site", () => {
  test("has the list as a page and as a file, a worker, and a link to it; the public one has none of them", async () => {
    const files = await filesOf(sites.privateDir);
    expect(files).toEqual(expect.arrayContaining([list, "field-lists/2026-06-tour-file.html", "service-worker.js"]));
    expect(await readFile(path.join(sites.privateDir, "index.html"), "utf8")).toContain(`href="/${list}"`);
    const broken = await brokenLinks(sites.privateDir, "/");
    expect(broken.filter((link) => !link.includes(": data:image/"))).toEqual([]);
    expect((await filesOf(sites.publicDir)).filter((file) => /field-list|service-worker/.test(file))).toEqual([]);
  });

  test("keeps every page but photos, by their bytes", async () => {
    const worker = await readFile(path.join(sites.privateDir, "service-worker.js"), "utf8");
    const pages = JSON.parse(/^const pages = (.*);$/m.exec(worker)?.[1] ?? "") as Record<string, string>;
    expect(Object.keys(pages)).toEqual(
      expect.arrayContaining([list, "briefs/2026-06-tour.html", "index.html", "beds/long-bed/index.html"]),
    );
    expect(Object.keys(pages).filter((file) => /^photos|-file|service-worker/.test(file))).toEqual([]);
  });
});

describe("in a browser on this machine", () => {
  test("the list is ready offline after one visit, and opens with the server gone", async () => {
    const server = await serveFolder(sites.privateDir, { port: PORT });
    const context = await browser.newContext({ viewport: { width: 390, height: 844 }, serviceWorkers: "allow" });
    const page = await context.newPage();
    const errors: string[] = [];
    page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
    await page.goto(server.url + list);
    await ready(page, "Ready offline");
    expect(await axeViolations(page)).toEqual([]);
    await page.click("#next");
    await page.locator("#shot-S1-1 .tick").click();
    expect(errors).toEqual([]);
    await server.close();

    await page.reload();
    expect(await page.locator("#shot-S1-1[data-state=filmed]").count()).toBe(1);
    await ready(page, "Ready offline");
    await page.goto(`${server.url}beds/long-bed/`);
    expect(await page.locator("h1").textContent()).toContain("Long Bed");
    await page.goto(server.url);
    expect(await page.locator("h1").textContent()).toBe("Today");
    await context.close();
  });

  test("a site made anew is what the next visit keeps", async () => {
    const context = await browser.newContext({ serviceWorkers: "allow" });
    const page = await context.newPage();
    let server = await serveFolder(sites.privateDir, { port: PORT + 1 });
    await page.goto(server.url + list);
    await ready(page, "Ready offline");
    await server.close();

    const changed = path.join(folder, "changed");
    await rm(changed, { recursive: true, force: true });
    await cp(sites.privateDir, changed, { recursive: true });
    const home = path.join(changed, "index.html");
    await writeFile(home, (await readFile(home, "utf8")).replace(/Today\s*<\/h1>/, "New pages</h1>"));
    const worker = path.join(changed, "service-worker.js");
    const old = await readFile(worker, "utf8");
    const pages = JSON.parse(/^const pages = (.*);$/m.exec(old)?.[1] ?? "") as Record<string, string>;
    const hash = createHash("sha256")
      .update(await readFile(home))
      .digest("base64");
    await writeFile(worker, offlineWorker({ ...pages, "index.html": hash }, "next"));

    server = await serveFolder(changed, { port: PORT + 1 });
    await page.goto(server.url + list);
    const kept = () => page.evaluate(() => caches.keys());
    await expect.poll(kept, { timeout: 20_000 }).toEqual(["plotreel field pages next"]);
    await server.close();
    await page.goto(server.url);
    expect(await page.locator("h1").textContent()).toBe("New pages");
    await context.close();
  });

  test("looks into the cache each time, and keeps again what the browser dropped", async () => {
    const context = await browser.newContext({ serviceWorkers: "allow" });
    const page = await context.newPage();
    let server = await serveFolder(sites.privateDir, { port: PORT + 2 });
    await page.goto(server.url + list);
    await ready(page, "Ready offline");
    const drop = () =>
      page.evaluate(async () => {
        for (const name of await caches.keys()) await (await caches.open(name)).delete("/beds/pea-row/index.html");
      });
    await drop();
    await page.reload();
    await ready(page, "Ready offline");
    expect(await page.evaluate(async () => (await caches.match("/beds/pea-row/index.html"))?.status)).toBe(200);
    await drop();
    await server.close();
    await page.reload();
    await ready(page, "Not ready offline");
    server = await serveFolder(sites.privateDir, { port: PORT + 2 });
    await page.reload();
    await ready(page, "Ready offline");
    await context.close();
    await server.close();
  });

  test("is never called ready when a page is not what it should be", async () => {
    const broken = path.join(folder, "broken");
    await cp(sites.privateDir, broken, { recursive: true });
    await writeFile(path.join(broken, "beds/long-bed/index.html"), "half a pa");
    const server = await serveFolder(broken);
    const context = await browser.newContext({ serviceWorkers: "allow" });
    const page = await context.newPage();
    await page.goto(server.url + list);
    await page.waitForTimeout(2500);
    expect(await page.locator("#offline").textContent()).not.toContain("Ready offline");
    expect(
      await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.active ?? null),
    ).toBeNull();
    await context.close();
    await server.close();
  });
});

test("by plain http from another device it says that it needs the network, and offers the file", async () => {
  // A page has no worker where its address is not secure; a browser without workers stands for that.
  const server = await serveFolder(sites.privateDir);
  const context = await browser.newContext({ acceptDownloads: true });
  const page = await context.newPage();
  await page.addInitScript(() => {
    Reflect.deleteProperty(Navigator.prototype, "serviceWorker");
  });
  await page.goto(server.url + list);
  await ready(page, "Needs the network");
  await page.getByRole("button", { name: "Stops" }).click();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("link", { name: "Save it as a file" }).click(),
  ]);
  expect(download.suggestedFilename()).toBe("2026-06-tour-field-list.html");
  const box = await page.getByRole("link", { name: "Save it as a file" }).boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(48);
  await context.close();
  await server.close();
});
