/** Two hundred varieties, some with names nobody breaks: no page is pushed sideways, and the list narrows while one types. */
import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type StaticServer, serveFolder } from "../../src/site/index.ts";
import { hasChromium, openBrowser } from "../browser.ts";
import { emptyFolder, run } from "../cli/run.ts";

const LONG = "Siebenbürgischerriesenspeisekürbis";
const PLACE = "Llanfairpwllgwyngyllgogerychwyrndrobwll";
const CROPS = ["tomato", "squash", "leek", "kale", "carrot", "beetroot", "potato", "onion"];

describe.skipIf(!hasChromium)("two hundred names", () => {
  let browser: Browser;
  let server: StaticServer;
  let page: Page;

  beforeAll(async () => {
    const cwd = emptyFolder();
    for (const folder of ["notes", "varieties"]) mkdirSync(path.join(cwd, "content", folder), { recursive: true });
    writeFileSync(path.join(cwd, "content/garden.md"), `---\nname: ${PLACE}\nlanguage: en-GB\n---\n`);
    const lines: string[] = [];
    for (let n = 0; n < 200; n += 1) {
      const name = n === 0 ? LONG : `Prize ${n}`;
      const say = n === 7 ? "say it as: seven-AIRY-sound\n" : "";
      const crop = CROPS[n % CROPS.length];
      writeFileSync(path.join(cwd, `content/varieties/v${n}.md`), `---\ntitle: ${name}\ncrop: ${crop}\n${say}---\n`);
      if (n < 40) lines.push(`- planted 3 ${name} in ${n % 2 === 0 ? PLACE : "Long Bed"}`);
    }
    writeFileSync(path.join(cwd, "content/notes/2026-07-12.md"), `${lines.join("\n")}\n`);
    const { exitCode, err } = await run(["publish", "--hold-back"], { cwd });
    expect(exitCode, err).toBe(0);
    server = await serveFolder(path.join(cwd, "out/public"));
    browser = await openBrowser();
    page = await browser.newPage();
  }, 300_000);
  afterAll(async () => {
    await browser?.close();
    await server?.close();
  });

  it("push no page sideways, on the narrowest phone, upright or on its side", async () => {
    for (const address of ["", "varieties/", "varieties/v0/", "beds/", `search/?q=${LONG}`]) {
      for (const [width, height] of [
        [320, 568],
        [568, 320],
        [390, 844],
      ] as const) {
        await page.setViewportSize({ width, height });
        await page.goto(server.url + address);
        if (address.startsWith("search")) await page.locator(".names-found a").first().waitFor();
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(wide, `${address} at ${width}`).toBeLessThanOrEqual(width);
      }
    }
  });

  it("are narrowed as one types, with a letter only where something is left and a count that agrees", async () => {
    await page.goto(`${server.url}varieties/`);
    const shown = () => page.locator(".row").filter({ visible: true }).count();
    expect(await shown()).toBe(200);
    await page.getByLabel("Name").fill("siebenbur");
    expect(await shown()).toBe(1);
    expect(await page.getByRole("status").textContent()).toBe("1 variety");
    expect(await page.locator(".jumps .letters a").filter({ visible: true }).allTextContents()).toEqual(["T"]);
    // By how it is said, and by its crop.
    await page.getByLabel("Name").fill("seven airy");
    expect(await page.locator(".row .name").filter({ visible: true }).allTextContents()).toEqual([
      expect.stringContaining("Prize 7"),
    ]);
    await page.getByLabel("Name").fill("kale");
    expect(await shown()).toBe(25);
    expect(new URL(page.url()).searchParams.get("name")).toBe("kale");
    await page.getByLabel("Name").fill("carrot");
    await page.getByLabel("Crop", { exact: true }).selectOption({ label: "Kale" });
    expect(await shown()).toBe(0);
    expect(await page.locator(".jumps .letters a").filter({ visible: true }).count()).toBe(0);
    expect(await page.getByRole("status").textContent()).toBe("0 varieties");
    await page.getByLabel("Name").fill("");
    expect(await page.locator(".jumps .letters a").filter({ visible: true }).allTextContents()).toEqual(["K"]);
  });

  it("a letter leads to the first of its crops that is left", async () => {
    await page.goto(`${server.url}varieties/`);
    const letter = page.locator(".variety-list > .jumps .letters a", { hasText: "C" });
    expect(await letter.getAttribute("href")).toBe("#crop-carrot");
  });

  it("are asked for on the first page, without scripts too", async () => {
    await page.goto(server.url);
    await page.getByLabel("Which variety was that?").fill(LONG.slice(0, 9));
    await page.locator(".names-found a").first().waitFor();
    expect(await page.locator(".names-found .name").allTextContents()).toEqual([`${LONG} tomato`]);
    const context = await browser.newContext({ javaScriptEnabled: false });
    const plain = await context.newPage();
    await plain.goto(server.url);
    await plain.getByLabel("Which variety was that?").fill("prize");
    await plain.getByRole("button", { name: "Find" }).click();
    await plain.waitForURL(/\/search\/\?q=prize$/u);
    expect(await plain.locator("noscript a, main a[href='/varieties/']").count()).toBeGreaterThan(0);
    await context.close();
  });
});
