/** What viewers do with the demo garden's pages, and what may not stand in anybody's way. `pages.test.ts` runs these tests. */
import path from "node:path";
import type { Page } from "playwright-core";
import { beforeAll, describe, expect, it } from "vitest";
import { state } from "../../src/timeline/index.ts";
import { hasChromium } from "../browser.ts";
import type { DemoSite } from "./demo-site.ts";
import { enter, isTrap, tabTo } from "./keyboard.ts";
import { CHECKS, type Findings, listenForStops, readEveryKind } from "./read-every-kind.ts";
import { waysOf, within } from "./ways.ts";

/** Milliseconds for what looks at every kind of page, on a machine that does other things too. */
const LONG = 600_000;

const PHONE = { width: 390, height: 844 };

export function inABrowser(demo: () => DemoSite): void {
  describe.skipIf(!hasChromium)("every kind of page is open to everyone", () => {
    let found: Findings;
    beforeAll(async () => {
      found = await readEveryKind(demo());
    }, LONG);

    it("and every kind was looked at", () => {
      const kinds = demo().kinds.map(({ kind, isPublic }) => `${isPublic ? "" : "private "}${kind.kind}`);
      for (const kind of ["", "404.html", "varieties/[id]/", "beds/[id]/then-and-now/", "episodes/[id]/", "search/"])
        expect(kinds).toContain(kind);
      for (const kind of [
        "",
        "viewpoints/[bed]/[name]/",
        "briefs/2026-07-tour.html",
        "field-lists/2026-07-tour.html",
        "outdoors/write.html",
      ])
        expect(kinds).toContain(`private ${kind}`);
    });

    it.each(CHECKS)("nothing is found: %s", (check) => {
      expect(found[check].slice(0, 10)).toEqual([]);
    });
  });

  describe("by the keyboard alone", () => {
    it("a viewer gets from the first page to a variety, compares two days, and searches", async () => {
      const page = await demo().browser.newPage({ viewport: { width: 1280, height: 844 } });
      const stopped = await listenForStops(page);
      await page.goto(demo().at(""));
      expect(await tabTo(page, ".skip")).toBe(1);
      expect((await page.locator(".skip").boundingBox())?.y).toBeGreaterThanOrEqual(0);
      await page.keyboard.press("Enter");
      await page.keyboard.press("Tab");
      expect(await page.evaluate(() => document.activeElement?.closest("main") !== null)).toBe(true);

      await page.goto(demo().at(""));
      await tabTo(page, "nav a[href='/varieties/']");
      await enter(page);
      await tabTo(page, "#by-crop");
      const chosen = () => new URL(page.url()).searchParams.get("crop");
      await page.keyboard.press("ArrowDown");
      await expect.poll(chosen).toBe("asparagus");
      await page.keyboard.press("Home");
      await expect.poll(chosen).toBeNull();
      await tabTo(page, ".letters a[href='#crop-dahlia'], .letters a:last-child");
      const letter = await page.evaluate(() => document.activeElement?.getAttribute("href") ?? "");
      await page.keyboard.press("Enter");
      await page.keyboard.press("Tab");
      expect(await page.evaluate((id) => document.activeElement?.closest(id) !== null, letter)).toBe(true);

      await page.goto(demo().at("varieties/?crop=dahlia"));
      await tabTo(page, "a[href='/varieties/bishop-of-llandaff/']");
      await enter(page);
      await tabTo(page, "[data-part=growth] > summary");
      await page.keyboard.press("Enter");
      await tabTo(page, ".compare input");
      const slider = page.locator(".compare input").first();
      const before = Number(await slider.inputValue());
      for (let press = 0; press < 5; press += 1) await page.keyboard.press("ArrowRight");
      await expect.poll(async () => Number(await slider.inputValue())).toBe(before + 5);
      expect(await slider.getAttribute("aria-valuetext")).toMatch(/\d/u);
      await tabTo(page, ".compare select", 1);
      await tabTo(page, "[data-part=seen] > summary");
      await page.keyboard.press("Enter");
      await tabTo(page, "[data-part=seen] a");

      await page.goto(demo().at(""));
      await tabTo(page, "nav a[href='/search/']");
      await enter(page);
      await tabTo(page, "input[type=search]");
      await page.keyboard.type("bishop of landaf");
      await page.locator(".names-found a").first().waitFor();
      await tabTo(page, "a[href='/varieties/bishop-of-llandaff/']");
      await enter(page);
      expect(await page.locator("h1").textContent()).toContain("Bishop of Llandaff");
      expect(await stopped()).toEqual([]);
      await page.close();
    });

    it(
      "nobody is held on any kind of page",
      async () => {
        const page = await demo().browser.newPage({ viewport: PHONE });
        for (const { url } of demo().kinds) {
          await page.goto(url);
          expect(await isTrap(page), url).toBe(false);
        }
        await page.close();
      },
      LONG,
    );
  });

  describe("within two taps", () => {
    it("lies the page of every variety that a film shows, and from the first page that of every variety", async () => {
      const { garden, publicDir } = demo();
      const ways = await waysOf(publicDir);
      const missing: string[] = [];
      let seen = 0;
      for (const episode of garden.episodes.values()) {
        if (episode.status !== "published") continue;
        const near = within(ways, `episodes/${episode.id}/index.html`, 2);
        for (const { bed } of episode.stops) {
          for (const { variety, ended } of state(garden, bed, episode.day).plantings) {
            if (variety === undefined || ended !== undefined) continue;
            seen += 1;
            if (!near.has(`varieties/${variety}/index.html`)) missing.push(`${episode.id}: ${variety} in ${bed}`);
          }
        }
      }
      expect(missing).toEqual([]);
      expect(seen).toBeGreaterThan(100);
      const fromHome = within(ways, "index.html", 2);
      expect([...garden.varieties.keys()].filter((id) => !fromHome.has(`varieties/${id}/index.html`))).toEqual([]);
    });

    it("stand a variety's name and source on a phone's first screen", async () => {
      const { garden, browser, at } = demo();
      const page = await browser.newPage({ viewport: PHONE });
      const some = [...garden.varieties.values()].filter(
        ({ source }, index) => index % 8 === 0 && source !== undefined,
      );
      for (const id of [...some.map((variety) => variety.id), "bishop-of-llandaff", "crown-prince"]) {
        await page.goto(at(`varieties/${id}/`));
        for (const part of ["h1", ".source"]) {
          const box = await page.locator(part).first().boundingBox();
          expect((box?.y ?? 9999) + (box?.height ?? 0), `${part} of ${id}`).toBeLessThanOrEqual(PHONE.height);
        }
      }
      await page.close();
    });
  });

  describe("the variety list", () => {
    it("is whole without scripts, and can be narrowed", async () => {
      const { browser, garden, at } = demo();
      const context = await browser.newContext({ javaScriptEnabled: false });
      const page = await context.newPage();
      await page.goto(at("varieties/"));
      const all = await visibleRows(page);
      expect(all).toBe(garden.varieties.size);
      expect(await page.locator(".row .name a[href^='/varieties/']").count()).toBe(all);
      await page.getByLabel("Bed", { exact: true }).selectOption({ label: garden.beds.get("long-bed")?.title ?? "" });
      const inBed = await visibleRows(page);
      expect(inBed).toBeGreaterThan(0);
      expect(inBed).toBeLessThan(all);
      await page.getByLabel("New in 2026").check();
      expect(await visibleRows(page)).toBeLessThan(inBed);
      await context.close();
    });

    it("keeps the choices in the address, through a reload and a way back, says how many are left, and hides empty crops", async () => {
      const page = await demo().browser.newPage();
      await page.goto(demo().at("varieties/"));
      await page.getByLabel("Crop", { exact: true }).selectOption({ label: "Tomatoes" });
      await expect.poll(() => new URL(page.url()).searchParams.get("crop")).toBe("tomato");
      const left = await visibleRows(page);
      expect(await page.getByRole("status").textContent()).toBe(`${left} varieties`);
      const isAsChosen = async () => {
        expect(await page.getByLabel("Crop", { exact: true }).inputValue()).toBe("tomato");
        expect(await visibleRows(page)).toBe(left);
        expect(await page.locator(".crop-group").filter({ visible: true }).count()).toBe(1);
      };
      await isAsChosen();
      await page.reload();
      await isAsChosen();
      await page.locator(".row a").filter({ visible: true }).first().click();
      await page.locator("main .lead, main .source").first().waitFor();
      await page.goBack();
      await isAsChosen();
      await page.close();
    });

    it("narrows alike with scripts and without", async () => {
      const { browser, at } = demo();
      const withScripts = await browser.newPage();
      const context = await browser.newContext({ javaScriptEnabled: false });
      const without = await context.newPage();
      for (const page of [withScripts, without]) await page.goto(at("varieties/"));
      for (const control of ["#by-crop", "#by-bed", "#by-source"]) {
        const values = await withScripts
          .locator(`${control} option`)
          .evaluateAll((all) => all.map((option) => (option as HTMLOptionElement).value));
        for (const value of ["", ...values.slice(1, 5)]) {
          for (const page of [withScripts, without]) await page.locator(control).selectOption(value);
          expect(await namesShown(withScripts), `${control} ${value}`).toEqual(await namesShown(without));
        }
        for (const page of [withScripts, without]) await page.locator(control).selectOption("");
      }
      await withScripts.close();
      await context.close();
    });

    it("prints as a hand-out on two pages, with its address", async () => {
      const page = await demo().browser.newPage();
      await page.goto(demo().at("varieties/"));
      await page.emulateMedia({ media: "print" });
      expect(await page.locator(".address").filter({ visible: true }).textContent()).toBe(
        "gullstone.example/varieties/",
      );
      for (const format of ["A4", "Letter"]) {
        const pdf = await page.pdf({ format });
        expect(pdf.toString("latin1").match(/\/Type\s*\/Page\b/gu), format).toHaveLength(2);
      }
      await page.close();
    });
  });

  it("marks a field page from top to bottom, whatever part of it is seen", async () => {
    const page = await demo().browser.newPage({ viewport: PHONE });
    for (const { kind, url, isPublic } of demo().kinds) {
      if (isPublic || path.extname(kind.address) === ".html") continue;
      await page.goto(url);
      expect(await page.locator(".tape text").textContent(), url).toBe("Private");
      const { height, whole } = await page.evaluate(() => ({
        height: document.querySelector(".tape")?.getBoundingClientRect().height ?? 0,
        whole: document.documentElement.scrollHeight,
      }));
      expect(height, url).toBeGreaterThanOrEqual(whole - 1);
      await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
      expect(await page.locator(".mark").first().boundingBox(), url).toMatchObject({ y: 0 });
    }
    await page.close();
  });
}

async function visibleRows(page: Page): Promise<number> {
  return page.locator(".row").filter({ visible: true }).count();
}

async function namesShown(page: Page): Promise<readonly string[]> {
  return page.locator(".row .name a").filter({ visible: true }).allTextContents();
}
