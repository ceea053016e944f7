/** The growth pages of a small photographed garden, built and opened in a browser: sliders, strips, charts, privacy, access. */
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import path from "node:path";
import { HtmlValidate } from "html-validate";
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { measureGrowth, publishComparisons, publishPhotos } from "../../src/photos/index.ts";
import { type BuiltSites, buildSites, gatePublicFolder, type StaticServer, serveFolder } from "../../src/site/index.ts";
import { openBrowser } from "../browser.ts";
import { brokenLinks, filesOf, pagesOf } from "../site/built-site.ts";
import { readPhotographedGarden, shots, today, writePhotographedGarden } from "./photographed-garden.ts";

const axeSource = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const pages = ["beds/long-bed/", "beds/long-bed/then-and-now/", "varieties/crown-prince/", ""];

let recordsDir: string;
let folder: string;
let sites: BuiltSites;
let browser: Browser;
let server: StaticServer;
let fieldServer: StaticServer;
let breaches: readonly unknown[];

beforeAll(async () => {
  recordsDir = await writePhotographedGarden();
  folder = await mkdtemp(path.join(tmpdir(), "plotreel-growth-pages-"));
  const cacheDir = path.join(folder, "cache");
  const read = await readPhotographedGarden(recordsDir);
  const { growth, viewpoints } = await measureGrowth(read, { recordsDir, cacheDir: path.join(cacheDir, "growth") });
  const garden = { ...read, growth };
  sites = await buildSites(garden, {
    outDir: path.join(folder, "out"),
    cacheDir,
    today,
    photos: (await publishPhotos(garden.photos, { recordsDir, cacheDir: path.join(cacheDir, "photos") })).copies,
    comparisons: await publishComparisons(viewpoints, {
      recordsDir,
      cacheDir: path.join(cacheDir, "comparisons"),
      today,
    }),
    briefs: [],
  });
  breaches = await gatePublicFolder(sites.publicDir, garden);
  server = await serveFolder(sites.publicDir);
  fieldServer = await serveFolder(sites.privateDir);
  browser = await openBrowser();
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
  await fieldServer?.close();
  await rm(folder, { recursive: true, force: true });
  await rm(recordsDir, { recursive: true, force: true });
});

async function open(address: string, how: Parameters<Browser["newContext"]>[0] = {}): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 844 }, ...how });
  const page = await context.newPage();
  await page.goto(new URL(address, server.url).href);
  return page;
}

describe("what is public", () => {
  it("passes the gate, and shows no private photo and none that lies over no other", async () => {
    expect(breaches).toEqual([]);
    const thenAndNow = (await pagesOf(sites.publicDir)).get("beds/long-bed/then-and-now/index.html");
    const days = [...(thenAndNow?.querySelectorAll("select")[0]?.querySelectorAll("option") ?? [])].map(
      ({ textContent }) => textContent?.trim(),
    );
    expect(days).toEqual([
      "21 June 2025",
      "18 April 2026",
      "2 May 2026",
      "16 May 2026",
      "13 June 2026",
      "19 June 2026",
    ]);
    const draft = (await pagesOf(sites.privateDir)).get("beds/long-bed/then-and-now/index.html");
    const all = [...(draft?.querySelectorAll("select")[0]?.querySelectorAll("option") ?? [])].map((option) =>
      option.textContent?.trim(),
    );
    expect(all).toContain("23 May 2026");
    expect(all).not.toContain("6 June 2026");
  });

  it("has no broken link, and the comparison copies of public photos only", async () => {
    expect(await brokenLinks(sites.publicDir, "/")).toEqual([]);
    expect(await brokenLinks(sites.privateDir, "/")).toEqual([]);
    const inPublic = (await filesOf(sites.publicDir)).filter((file) => file.startsWith("photos/"));
    const inPrivate = (await filesOf(sites.privateDir)).filter((file) => file.startsWith("photos/"));
    expect(inPrivate.length).toBeGreaterThan(inPublic.length);
  });

  it("is valid HTML", async () => {
    const validator = new HtmlValidate({
      extends: ["html-validate:recommended"],
      rules: {
        "aria-label-misuse": ["error", { allowAnyNamable: true }],
        "attribute-boolean-style": "off",
        "attribute-empty-style": "off",
        "long-title": "off",
        "no-trailing-whitespace": "off",
        "void-style": "off",
      },
    });
    const complaints: string[] = [];
    for (const siteDir of [sites.publicDir, sites.privateDir]) {
      for (const file of await filesOf(siteDir)) {
        if (!/^(?:beds|varieties|viewpoints)\/.*\.html$|^index\.html$/u.test(file)) continue;
        const { results } = await validator.validateString(await readFile(path.join(siteDir, file), "utf8"));
        for (const { messages } of results)
          complaints.push(...messages.map(({ line, ruleId, message }) => `${file}:${line} ${ruleId}: ${message}`));
      }
    }
    expect(complaints).toEqual([]);
  });
});

describe("the slider", () => {
  it("moves by keys, and says to a screen reader what is seen", async () => {
    const page = await open("beds/long-bed/then-and-now/");
    const slider = page.getByRole("slider");
    expect(await slider.getAttribute("aria-valuetext")).toBe("50 % 18 April 2026, the rest 19 June 2026");
    const seenOfLater = () => clipOf(page.locator(".compare figure").nth(1).locator("picture"));
    const before = await seenOfLater();
    await slider.focus();
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("ArrowRight");
    expect(await slider.inputValue()).toBe("52");
    expect(await seenOfLater()).not.toBe(before);
    await page.keyboard.press("End");
    expect(await slider.getAttribute("aria-valuetext")).toBe("All 18 April 2026");
    await page.keyboard.press("Home");
    expect(await slider.getAttribute("aria-valuetext")).toBe("All 19 June 2026");
    await page.context().close();
  });

  it("moves by a finger, and leaves up and down to the page", async () => {
    const page = await open("beds/long-bed/then-and-now/", {
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
    });
    const slider = page.getByRole("slider");
    await slider.scrollIntoViewIfNeeded();
    const box = await slider.boundingBox();
    if (!box) throw new Error("The slider is not to be seen.");
    await page.touchscreen.tap(box.x + box.width * 0.8, box.y + box.height / 2);
    expect(Number(await slider.inputValue())).toBeGreaterThan(70);
    expect(await slider.evaluate((element) => getComputedStyle(element).touchAction)).toBe("pan-y");
    // As large as the photo: there is no small knob to hit.
    const photo = await page.locator(".compare img").first().boundingBox();
    expect(Math.round(box.height)).toBe(Math.round(photo?.height ?? 0));
    await page.context().close();
  });

  it("shows the days that are chosen, earlier first, with how far the bed came", async () => {
    const page = await open("beds/long-bed/then-and-now/");
    const between = page.locator(".compare .between");
    expect(await between.textContent()).toMatch(/^Nearly nine weeks apart\. Cover went from 0.% to 80.%\.$/u);
    const photo = (at: number) => page.locator(".compare img").nth(at);
    const first = await photo(0).getAttribute("src");
    await page.getByLabel("Earlier", { exact: true }).selectOption({ label: "16 May 2026" });
    expect(await photo(0).getAttribute("src")).not.toBe(first);
    expect(await photo(0).getAttribute("alt")).toBe("Long Bed from the gate, 16 May 2026");
    expect(await between.textContent()).toMatch(/^34 days apart\. Cover went from 20.% to 80.%\.$/u);
    // Chosen the wrong way round, they change places.
    await page.getByLabel("Later", { exact: true }).selectOption({ label: "18 April 2026" });
    expect(await page.locator(".compare figcaption").allTextContents()).toEqual(["18 April 2026", "16 May 2026"]);
    await page.getByLabel("Later", { exact: true }).selectOption({ label: "18 April 2026" });
    expect((await between.textContent())?.startsWith("The same photo twice.")).toBe(true);
    await page.context().close();
  });

  it("is two pictures side by side without scripts", async () => {
    const page = await open("beds/long-bed/then-and-now/", { javaScriptEnabled: false });
    const [left, right] = await Promise.all([0, 1].map((at) => page.locator(".compare img").nth(at).boundingBox()));
    expect(left?.y).toBe(right?.y);
    expect((left?.x ?? 0) + (left?.width ?? 0)).toBeLessThanOrEqual(right?.x ?? 0);
    expect(await page.getByRole("slider").count()).toBe(0);
    expect(await page.locator(".compare .days").isVisible()).toBe(false);
    expect(await page.locator(".compare figcaption").allTextContents()).toEqual(
      ["18 April 2026", "19 June 2026"].map((day) => expect.stringContaining(day)),
    );
    await page.context().close();
  });

  it("is two whole pictures on paper", async () => {
    const page = await open("beds/long-bed/then-and-now/");
    await page.emulateMedia({ media: "print" });
    expect(await clipOf(page.locator(".compare figure").nth(1).locator("picture"))).toBe("none");
    expect(await page.getByRole("slider").count()).toBe(0);
    await page.context().close();
  });
});

describe("the pages", () => {
  it("set the last tour against now, and the same week last year", async () => {
    const page = await open("beds/long-bed/then-and-now/");
    expect(await page.locator("h3").allTextContents()).toEqual([
      "The tour of 16 May, and now",
      "The same week last year, and now",
    ]);
    const captions = await page.locator(".pair figcaption").allTextContents();
    expect(captions.map((caption) => caption.trim())).toEqual([
      "16 May 2026",
      "19 June 2026",
      "21 June 2025",
      "19 June 2026",
    ]);
    expect(await page.locator(".method").textContent()).toContain("Brightness and white balance are evened out");
    await page.context().close();
  });

  it("show a season week by week, with its gaps", async () => {
    const page = await open("beds/long-bed/then-and-now/");
    const weeks = await page.locator(".strip li").allTextContents();
    expect(weeks).toHaveLength(10);
    expect(weeks.map((week) => week.replaceAll(/\s+/gu, " ").trim()).slice(-3)).toEqual([
      "2 May",
      "no photo week of 20 April",
      "18 April",
    ]);
    // The newest week is in sight before anything is pushed.
    const edges = await page
      .locator(".strip li")
      .first()
      .evaluate((week) => {
        const [own, strip] = [week, week.parentElement as Element].map((one) => one.getBoundingClientRect());
        return { left: (own?.left ?? 0) - (strip?.left ?? 0), right: (strip?.right ?? 0) - (own?.right ?? 0) };
      });
    expect(Math.min(edges.left, edges.right)).toBeGreaterThanOrEqual(0);
    await page.context().close();
  });

  it("draw cover and heights with units, and the same numbers in a table", async () => {
    const page = await open("beds/long-bed/");
    const [cover, heights] = [page.locator(".growth").nth(0), page.locator(".growth").nth(1)];
    expect(await cover.locator("svg").getAttribute("aria-label")).toMatch(
      /^How much of Long Bed is green\. Cover went from 0.% to 80.% between 18 April and 19 June\.$/u,
    );
    expect(await cover.locator("circle").count()).toBe(shots.filter(({ isPrivate }) => isPrivate !== true).length);
    expect(await cover.locator("tbody tr").count()).toBe(7);
    expect(await heights.locator("h3").textContent()).toBe("Measured height or length");
    expect(await heights.locator("tbody tr").first().allTextContents()).toEqual([
      expect.stringMatching(/19 June\s*75 cm, give or take 6 cm \(30 inches\)\s*11 cm more, give or take 2 cm/u),
    ]);
    await page.context().close();
  });

  it("give a variety its photos with its age on each day", async () => {
    const page = await open("varieties/crown-prince/");
    await page.getByText("How it grew").click();
    expect(await page.getByRole("heading", { name: "Then and now in Long Bed" }).count()).toBe(1);
    expect(await page.locator(".photos .age").allTextContents()).toContain("36 days after planting.");
    await page.context().close();
  });

  for (const scheme of ["light", "dark"] as const) {
    for (const width of [390, 1280]) {
      it(`are open to everyone at ${width} pixels, ${scheme}, and break no rule of their own`, async () => {
        const context = await browser.newContext({ viewport: { width, height: 844 }, colorScheme: scheme });
        const page = await context.newPage();
        const refused: string[] = [];
        page.on("console", (message) => {
          if (message.type() === "error") refused.push(message.text());
        });
        const field = ["beds/long-bed/", "beds/long-bed/then-and-now/", "viewpoints/", "viewpoints/long-bed/gate/"];
        const addresses = [
          ...pages.map((address) => new URL(address, server.url).href),
          ...field.map((address) => new URL(address, fieldServer.url).href),
        ];
        for (const address of addresses) {
          await page.goto(address);
          expect(await axeViolations(page), address).toEqual([]);
          const overflow = await page.evaluate(
            () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
          );
          expect(overflow, address).toBeLessThanOrEqual(0);
        }
        expect(refused).toEqual([]);
        await context.close();
      });
    }
  }
});

function clipOf(picture: Locator): Promise<string> {
  return picture.evaluate((element) => getComputedStyle(element).clipPath);
}

async function axeViolations(page: Page): Promise<readonly string[]> {
  await page.evaluate(axeSource);
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run(): Promise<{ violations: { id: string; nodes: { target: unknown[]; failureSummary: string }[] }[] }> };
    };
    const { violations } = await axe.run();
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id} ${target.join(" ")} ${failureSummary}`),
    );
  });
}
