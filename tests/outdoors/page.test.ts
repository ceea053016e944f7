/** The page to write outdoors in a browser: by keyboard and by touch, offline, with the connection cut, and what strangers may not do. */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import path from "node:path";
import type { Browser, BrowserContext, Page } from "playwright-core";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readHomeFile } from "../../src/past/index.ts";
import { buildSites, serveFolder } from "../../src/site/index.ts";
import { openBrowser } from "../browser.ts";
import { emptyFolder, folderWith } from "../cli/run.ts";
import { type Watched, watched } from "../cli/watched.ts";
import { axeViolations, htmlComplaints } from "../site/page-checks.ts";
import { sideways } from "../site/reading-checks.ts";
import { gardenOf, squashTour } from "../tour/garden-of.ts";

const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, locale: "en-GB" } as const;
const now = new Date("2026-07-18T10:00:00");
const jpeg = (background = "#3c7828") =>
  sharp({ create: { width: 640, height: 480, channels: 3, background } })
    .jpeg()
    .toBuffer();

let browser: Browser;
let cwd: string;
let watching: Watched;
const at = (file: string) => path.join(cwd, "content", file);
const note = () => at("notes/2026-07-18.md");
const noted = () => (existsSync(note()) ? readFileSync(note(), "utf8") : "");
const field = (below = "") => new URL(below, watching.address("Your field")).href;

beforeAll(async () => {
  cwd = folderWith("two-beds");
  mkdirSync(at("photos/left-bed/gate"), { recursive: true });
  writeFileSync(at("photos/left-bed/gate/2026-06-20.jpg"), await jpeg());
  watching = await watched(cwd);
  browser = await openBrowser("--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream");
});

afterAll(async () => {
  await browser?.close();
  expect(await watching.stop()).toBe(0);
});

async function opened(context: BrowserContext, address = field("outdoors/write.html")): Promise<Page> {
  const page = await context.newPage();
  page.on("pageerror", (error) => expect.soft(error.message).toBe(""));
  await page.clock.setFixedTime(now);
  await page.goto(address);
  await page.locator("html[data-ready]").waitFor();
  return page;
}

const waits = (page: Page) => page.locator("#home").textContent();

describe("a line", () => {
  it("comes from the desk by one tap, is read as it is typed, completed, kept, and stands in the note", async () => {
    const context = await browser.newContext(phone);
    const page = await context.newPage();
    await page.clock.setFixedTime(now);
    await page.goto(field());
    await page.getByRole("link", { name: "Write outdoors" }).tap();
    await page.locator("html[data-ready]").waitFor();
    await page.getByRole("button", { name: "Left bed" }).tap();
    expect(await page.getByRole("button", { name: "Left bed" }).getAttribute("aria-pressed")).toBe("true");
    await page.getByRole("button", { name: "picked" }).tap();
    await page.keyboard.type("300 g aquad");
    await page.locator("#options [role=option]").first().waitFor();
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await expect
      .poll(() => page.locator("#reading").textContent())
      .toBe("= picked 300 g Aquadulce Claudia from Left bed");
    await page.keyboard.press("Enter");
    await expect.poll(noted, { timeout: 15_000 }).toBe("## Left bed\n\n- picked 300 g Aquadulce Claudia\n");
    await expect.poll(() => waits(page)).toBe("Home");
    expect(await page.locator("#line").inputValue()).toBe("");
    await context.close();
    rmSync(note());
  });

  it("survives closing while nobody answers, and goes home once, though the first answer is lost on the way", async () => {
    const context = await browser.newContext(phone);
    let page = await opened(context);
    await context.setOffline(true);
    await page.locator("#line").fill("watered the leeks");
    await page.getByRole("button", { name: "Keep" }).tap();
    await expect.poll(() => waits(page)).toBe("Home 1");
    await page.locator("#line").fill("half a li");
    await page.waitForTimeout(200);
    await page.close();
    await context.setOffline(false);
    let lost = 0;
    await context.route("**/@outdoors", async (route) => {
      await route.fetch();
      lost += 1;
      await route.abort("connectionreset").catch(() => undefined);
    });
    page = await opened(context);
    expect(await page.locator("#line").inputValue()).toBe("half a li");
    await expect.poll(() => lost).toBe(1);
    await expect.poll(noted, { timeout: 15_000 }).toBe("- watered the leeks\n");
    await page.getByRole("button", { name: "Home" }).tap();
    await expect.poll(() => page.locator("#waiting").textContent()).toContain("sent, not answered yet");
    expect(await page.getByRole("button", { name: "Change" }).count()).toBe(0);
    await context.unroute("**/@outdoors");
    await page.reload();
    await page.locator("html[data-ready]").waitFor();
    await expect.poll(() => waits(page), { timeout: 15_000 }).toBe("Home");
    expect(noted()).toBe("- watered the leeks\n");
    await context.close();
    rmSync(note());
  });

  it("that stands there already stays with the reason, to be sent again or left out, and can be put back", async () => {
    writeFileSync(note(), "- wet\n");
    const context = await browser.newContext(phone);
    const page = await opened(context);
    await page.locator("#line").fill("wet");
    await page.keyboard.press("Enter");
    await expect.poll(() => waits(page)).toBe("Home 1");
    await page.getByRole("button", { name: "Home" }).tap();
    await expect.poll(() => page.locator("#waiting").textContent(), { timeout: 15_000 }).toContain("says this already");
    await page.getByRole("button", { name: "Leave out: wet" }).tap();
    await expect.poll(() => page.locator("#waiting > li").count()).toBe(0);
    await page.getByRole("button", { name: "Put it back" }).tap();
    await page.getByRole("button", { name: "It happened again: wet" }).tap();
    await expect.poll(noted, { timeout: 15_000 }).toBe("- wet\n- wet\n");
    await context.close();
    rmSync(note());
  });

  it("is dictated where the browser can, by a tap and never by itself", async () => {
    const context = await browser.newContext(phone);
    await context.addInitScript(() => {
      class Fake {
        lang = "";
        onresult?: (event: object) => void;
        onend?: () => void;
        start() {
          document.documentElement.dataset.listens = this.lang;
          this.onresult?.({ results: [[{ transcript: "picked two leeks" }]] });
        }
        stop() {
          this.onend?.();
        }
      }
      Object.assign(globalThis, { SpeechRecognition: Fake, webkitSpeechRecognition: Fake });
    });
    const page = await opened(context);
    expect(await page.locator("html").getAttribute("data-listens")).toBeNull();
    expect(await page.locator("#speech").textContent()).toContain("may send what you say");
    await page.getByRole("button", { name: "Speak" }).tap();
    expect(await page.locator("#line").inputValue()).toBe("picked two leeks ");
    await page.getByRole("button", { name: "Stop" }).tap();
    expect(await page.getByRole("button", { name: "Speak" }).isVisible()).toBe(true);
    await context.close();
  });
});

describe("a photo", () => {
  it("is taken over the last one from that spot, and lies in its folder", async () => {
    const context = await browser.newContext(phone);
    const page = await opened(context);
    await page.getByRole("button", { name: "Photo" }).tap();
    await page.locator("#spot").selectOption({ label: "Left bed, Gate" });
    await page.getByRole("button", { name: "Take it" }).waitFor();
    const last = page.locator("#last");
    expect(await last.getAttribute("alt")).toBe("The last photo of Gate: match this view");
    expect(await last.evaluate((image) => (image as HTMLImageElement).decode().then(() => true))).toBe(true);
    expect(await last.evaluate((image) => getComputedStyle(image).opacity)).toBe("0.5");
    await page.getByRole("button", { name: "Take it" }).tap();
    const name = "left-bed__gate__2026-07-18T10-00-00.jpg";
    await expect
      .poll(() => readdirSync(at("photos/left-bed/gate")), { timeout: 15_000 })
      .toEqual(["2026-06-20.jpg", name]);
    const { width, height } = await sharp(at(`photos/left-bed/gate/${name}`)).metadata();
    expect((width ?? 0) / (height ?? 1)).toBeCloseTo(640 / 480, 1);
    // By the phone's own camera, of a bed and no spot.
    await page.locator("#spot").selectOption({ label: "Right bed, anywhere" });
    await page
      .locator("#pick")
      .setInputFiles({ name: "IMG.JPG", mimeType: "image/jpeg", buffer: await jpeg("#783c28") });
    await expect.poll(() => existsSync(at("photos/right-bed")), { timeout: 15_000 }).toBe(true);
    await expect.poll(() => waits(page), { timeout: 15_000 }).toBe("Home");
    await context.close();
  });
});

describe("without a signal", () => {
  it("the page opens from the worker that keeps the field list, keeps what is written, and gives one file", async () => {
    const folder = emptyFolder();
    const garden = await gardenOf(squashTour, "2026-06-19");
    const sites = await buildSites(garden, {
      ...{ outDir: path.join(folder, "out"), cacheDir: path.join(folder, "cache"), today: "2026-06-19" },
      ...{ photos: new Map(), briefs: [] },
    });
    expect(existsSync(path.join(sites.publicDir, "outdoors"))).toBe(false);
    expect(await htmlComplaints(path.join(sites.privateDir, "outdoors/write.html"))).toEqual([]);
    const server = await serveFolder(sites.privateDir, { port: 18_671 });
    const context = await browser.newContext({ ...phone, serviceWorkers: "allow", acceptDownloads: true });
    const page = await opened(context, `${server.url}outdoors/write.html`);
    await page.locator("#offline", { hasText: "Ready offline" }).waitFor({ timeout: 20_000 });
    await server.close();
    await page.reload();
    await page.locator("html[data-ready]").waitFor();
    await page.locator("#line").fill("picked 2 kg Crown Prince");
    await page.keyboard.press("Enter");
    await expect.poll(() => waits(page)).toBe("Home 1");
    await page.reload();
    await page.locator("html[data-ready]").waitFor();
    await expect.poll(() => waits(page)).toBe("Home 1");
    await page.getByRole("button", { name: "Home" }).tap();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save it as one file" }).tap(),
    ]);
    expect(download.suggestedFilename()).toBe("2026-07-18-outdoors.jsonl");
    const file = readHomeFile(readFileSync(await download.path()));
    expect(file?.entries).toMatchObject([{ kind: "line", day: "2026-07-18", text: "picked 2 kg Crown Prince" }]);
    expect(await page.locator("#waiting > li").count()).toBe(1);
    await page.getByRole("button", { name: "Clear what is in a file" }).tap();
    await page.getByRole("button", { name: "Clear it" }).tap();
    await expect.poll(() => page.locator("#waiting > li").count()).toBe(0);
    await context.close();
    // As one file it asks for nothing at all.
    const alone = await browser.newContext(phone);
    const single = await alone.newPage();
    const asked: string[] = [];
    single.on("request", (one) => /^(?:file|data|blob):/u.test(one.url()) || asked.push(one.url()));
    await single.goto(`file://${path.join(sites.privateDir, "outdoors/write-file.html")}`);
    await single.locator("html[data-ready]").waitFor();
    await single.locator("#line").fill("picked 1 kg Crown Prince");
    await single.keyboard.press("Enter");
    await expect.poll(() => waits(single)).toBe("Home 1");
    await single.getByRole("button", { name: "Home" }).tap();
    expect(await single.getByRole("button", { name: "Send it home now" }).isVisible()).toBe(false);
    expect(asked).toEqual([]);
    await alone.close();
  });
});

describe("the page", () => {
  it("keeps nobody out, by day and by night, on small screens and large ones", async () => {
    const sizes = [{ width: 320, height: 640 }, phone.viewport, { width: 1280, height: 800 }];
    for (const [index, viewport] of sizes.entries()) {
      const context = await browser.newContext({ viewport, colorScheme: index === 1 ? "light" : "dark" });
      const page = await opened(context);
      await context.setOffline(true);
      await page.locator("#line").fill("picked 300 g Aquadulce");
      await page.getByRole("button", { name: "Keep" }).click();
      await page.locator("#line").pressSequentially("watered muss");
      await page.locator("#options [role=option]").first().waitFor();
      expect(await axeViolations(page)).toEqual([]);
      expect(await sideways(page)).toBe(0);
      await page.keyboard.press("Escape");
      const low = () =>
        page
          .locator("button:visible, a.download:visible, input:visible, select:visible, label.pick:visible")
          .evaluateAll((all) =>
            all.flatMap((one) => (one.getBoundingClientRect().height < 47.9 ? [one.id || one.textContent] : [])),
          );
      expect((await low()).filter((id) => id !== "take-file" && id !== "pick")).toEqual([]);
      for (const name of ["Home", "Photo"]) {
        await page.locator(`nav #${name.toLowerCase()}`).click();
        await page.waitForTimeout(300);
        expect(await axeViolations(page), name).toEqual([]);
        expect(
          (await low()).filter((id) => id !== "take-file" && id !== "pick"),
          name,
        ).toEqual([]);
        await page.keyboard.press("Escape");
      }
      await context.close();
    }
  });

  it("takes nothing from a page elsewhere, from a form, nor more than there is room for", async () => {
    const own = new URL(field()).origin;
    const body = JSON.stringify({ id: "stranger-1", day: "2026-07-18", text: "private: false" });
    const sent = (headers: Record<string, string>, content: string | Buffer = body, to = "@outdoors") =>
      new Promise<number>((resolve, reject) => {
        request(field(to), { method: "POST", headers }, (answer) => {
          answer.resume();
          resolve(answer.statusCode ?? 0);
        })
          .on("error", reject)
          .end(content);
      });
    const json = { "content-type": "application/json" };
    expect(await sent(json)).toBe(405);
    expect(await sent({ ...json, origin: "https://elsewhere.example" })).toBe(405);
    expect(await sent({ ...json, origin: own, "sec-fetch-site": "cross-site" })).toBe(405);
    expect(await sent({ "content-type": "text/plain", origin: own })).toBe(405);
    expect(await sent({ ...json, origin: own, host: "elsewhere.example" })).toBe(421);
    expect(await sent({ ...json, origin: own, "content-length": "9000000" }, "{}")).toBe(413);
    const bytes = { "content-type": "application/octet-stream", origin: own };
    expect(await sent(bytes, await jpeg(), "@outdoors-photo?id=../../x&bed=left-bed&name=a.jpg&modified=1")).toBe(405);
    expect(
      await sent(
        { ...bytes, origin: "null" },
        await jpeg(),
        "@outdoors-photo?id=stranger-2&bed=left-bed&name=a.jpg&modified=1",
      ),
    ).toBe(405);
    expect(existsSync(note())).toBe(false);
    expect(await fetch(field("@outdoors.json")).then((answer) => answer.json())).toEqual({
      takes: "Two beds behind the house",
    });
  });
});
