/** A season's ribbon as people use it: by key, by hand, without scripts; nothing moves while it comes, nothing runs over. */
import { cp, mkdir, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Browser } from "playwright-core";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildSites, type StaticServer, serveFolder } from "../../src/site/index.ts";
import { hasChromium, openBrowser } from "../browser.ts";
import { photoCopies, readGarden, today } from "./built-site.ts";
import { axeViolations } from "./page-checks.ts";

let folder: string;
let server: StaticServer;
let browser: Browser;

const DAYS = ["2026-05-30", "2026-06-20", "2026-07-11"];

beforeAll(async () => {
  if (!hasChromium) return;
  folder = await mkdtemp(path.join(tmpdir(), "plotreel-ribbon-"));
  const recordsDir = path.join(folder, "records");
  await cp(path.resolve("tests/gardens/two-walls"), recordsDir, { recursive: true });
  await mkdir(path.join(recordsDir, "photos/south-wall"), { recursive: true });
  for (const [index, day] of DAYS.entries()) {
    const colour = { r: 40 + 60 * index, g: 120, b: 40 };
    const photo = sharp({ create: { width: 1200, height: 900, channels: 3, background: colour } });
    await photo.jpeg().toFile(path.join(recordsDir, `photos/south-wall/${day}.jpg`));
  }
  const garden = await readGarden(recordsDir);
  const cacheDir = path.join(folder, "cache");
  const photos = await photoCopies(garden, recordsDir, cacheDir);
  const sites = await buildSites(garden, { outDir: path.join(folder, "out"), cacheDir, today, photos, briefs: [] });
  server = await serveFolder(sites.publicDir, { base: "/garden/" });
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
  if (folder !== undefined) await rm(folder, { recursive: true, force: true });
});

const bed = () => new URL("beds/south-wall/", server.url).href;

describe.skipIf(!hasChromium)("a bed's ribbon in a browser", () => {
  it("goes from day to day by keys, and photo, names and words follow", async () => {
    const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
    const refused: string[] = [];
    page.on("console", (message) => {
      if (message.type() === "error") refused.push(message.text());
    });
    await page.goto(bed());
    const slider = page.locator(".ribbon").first().getByRole("slider", { name: "Day of the season" });
    const shown = () => page.locator(".day-shown strong").first().textContent();
    const photo = () => page.locator(".ribbon-photo img").first().getAttribute("alt");
    const days = await page.locator(".ribbon").first().locator(".timeline > li").count();
    expect(await shown()).toBe("11 July");
    expect(await photo()).toContain("11 July");
    await slider.focus();
    const seen: (string | null)[] = [await shown()];
    for (let press = 1; press < days; press += 1) {
      await page.keyboard.press("ArrowLeft");
      seen.push(await shown());
    }
    expect(new Set(seen).size).toBe(days);
    expect(seen.at(-1)).toBe(await page.locator(".ribbon").first().locator(".timeline time").last().textContent());
    await page.keyboard.press("End");
    expect(await shown()).toBe("11 July");
    await page.getByRole("button", { name: "Earlier" }).first().click();
    const before = await shown();
    expect(before).not.toBe("11 July");
    expect(await slider.getAttribute("aria-valuetext")).toBe(before);
    await slider.focus();
    await page.keyboard.press("Home");
    for (let press = 0; press < days && (await shown()) !== "30 May"; press += 1)
      await page.getByRole("button", { name: "Later" }).first().click();
    expect(await photo()).toContain("30 May");
    expect(await page.locator(".that-day").first().textContent()).toContain("In the bed: Crown Prince");
    expect(await page.locator(".rows .stands-now").count()).toBeGreaterThan(0);
    expect(refused).toEqual([]);
    await page.close();
  });

  it("shows the photo of a bead that is tapped", async () => {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    await page.goto(bed());
    const bead = await page.locator(".track circle").nth(1).boundingBox();
    await page.mouse.click((bead?.x ?? 0) + (bead?.width ?? 0) / 2, (bead?.y ?? 0) + (bead?.height ?? 0) / 2);
    expect(await page.locator(".day-shown strong").first().textContent()).toBe("20 June");
    expect(await page.locator(".ribbon-photo img").first().getAttribute("alt")).toContain("20 June");
    await page.close();
  });

  it("is a strip of links to its photos without scripts, its bars told in words", async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(bed());
    const links = page.locator(".bead-links a").filter({ visible: true });
    expect(await links.allTextContents()).toEqual(["30 May", "20 June", "11 July"]);
    for (const link of await links.all()) {
      const found = await page.request.get(new URL((await link.getAttribute("href")) ?? "", bed()).href);
      expect([found.status(), found.headers()["content-type"]?.startsWith("image/")]).toEqual([200, true]);
    }
    expect(await page.getByRole("slider").count()).toBe(0);
    expect(await page.locator(".rows svg").first().getAttribute("aria-label")).toMatch(/planted on/u);
    await context.close();
  });

  it("moves nothing while its script comes", async () => {
    const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
    await page.goto(bed());
    await page.waitForTimeout(500);
    const shift = await page.evaluate(
      () =>
        new Promise<number>((resolve) => {
          let sum = 0;
          new PerformanceObserver((list) => {
            for (const entry of list.getEntries()) sum += (entry as unknown as { value: number }).value;
          }).observe({ type: "layout-shift", buffered: true });
          setTimeout(() => resolve(sum), 300);
        }),
    );
    expect(shift).toBe(0);
    await page.close();
  });

  it.each([
    [320, "light"],
    [390, "dark"],
    [1280, "light"],
  ] as const)("is open to everyone and runs over no edge: %d pixels, %s", async (width, colorScheme) => {
    const page = await browser.newPage({ viewport: { width, height: 844 }, colorScheme });
    for (const address of ["beds/south-wall/", "episodes/may-tour/", "recaps/2026/", "beds/"]) {
      await page.goto(new URL(address, server.url).href);
      for (const fold of await page.locator("details").all())
        await fold.evaluate((one) => one.setAttribute("open", ""));
      expect(await page.evaluate(() => document.documentElement.scrollWidth), address).toBe(width);
      expect(await axeViolations(page), address).toEqual([]);
    }
    await page.close();
  });
});
