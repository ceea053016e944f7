/** The workbench in a browser: a line typed by keyboard alone, read as it is typed, written, and taken back. */
import { existsSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import type { Browser } from "playwright-core";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "../browser.ts";
import { axeViolations, htmlComplaints } from "../site/page-checks.ts";
import { listenForStops } from "../site/read-every-kind.ts";
import { sideways } from "../site/reading-checks.ts";
import { folderWith } from "./run.ts";
import { type Watched, watched } from "./watched.ts";

let browser: Browser;
let cwd: string;
let watching: Watched;
const note = () => path.join(cwd, "content/notes/2026-07-18.md");
const field = (below = "") => new URL(below, watching.address("Your field")).href;

beforeAll(async () => {
  cwd = folderWith("two-beds");
  writeFileSync(path.join(cwd, "content/notes/2026-07-17.md"), "- lifted the leeks\n");
  watching = await watched(cwd);
  browser = await openBrowser();
});

afterAll(async () => {
  await browser?.close();
  expect(await watching.stop()).toBe(0);
});

async function opened(below = "", viewport = { width: 390, height: 844 }) {
  const page = await browser.newPage({ viewport });
  const stopped = await listenForStops(page);
  await page.goto(field(below));
  await page.locator("#write-form[data-ready]").waitFor();
  return { page, stopped };
}

describe("a question", () => {
  const asking = () => path.join(cwd, "content/notes/2026-07-17.md");

  it("is answered by a tap on the desk, as settle would write it, and the answer taken back", async () => {
    const { page } = await opened();
    const answers = page.locator("[data-settle]");
    const chosen = answers.first().locator("button").first();
    const plain = await chosen.textContent();
    await chosen.focus();
    await page.keyboard.press("Enter");
    await expect
      .poll(() => readFileSync(asking(), "utf8"), { timeout: 15_000 })
      .toBe(`- lifted the leeks\n  - = ${plain}\n`);
    await page.locator("#undo-bar button").click();
    await expect.poll(() => readFileSync(asking(), "utf8"), { timeout: 15_000 }).toBe("- lifted the leeks\n");
    await page.close();
  });

  it("is answered on the page of its note too, where the desk leads to its line", async () => {
    await expect
      .poll(async () => (await fetch(field()).then((answer) => answer.text())).includes("data-settle"), {
        timeout: 15_000,
      })
      .toBe(true);
    const { page } = await opened();
    await page.locator(".asked-lines .file a").first().click();
    await page.waitForURL(/notes\/2026-07-17\/#line-1$/u);
    expect(await page.locator(".note-lines > li:target").textContent()).toContain("lifted the leeks");
    expect(await axeViolations(page)).toEqual([]);
    await page.locator("#line-1 .answers button:not([data-reading])").click();
    await expect
      .poll(() => readFileSync(asking(), "utf8"), { timeout: 15_000 })
      .toBe("- lifted the leeks\n  - = story\n");
    await page.locator("#undo-bar button").click();
    await expect.poll(() => readFileSync(asking(), "utf8"), { timeout: 15_000 }).toBe("- lifted the leeks\n");
    await page.close();
  });
});

describe("a photo", () => {
  it("chosen on the page of a bed lies in its folder and shows there", async () => {
    const bytes = await sharp({ create: { width: 64, height: 48, channels: 3, background: "#3c7828" } })
      .jpeg()
      .toBuffer();
    const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
    await page.goto(field("beds/left-bed/"));
    expect(await axeViolations(page)).toEqual([]);
    const chooser = page.locator("[data-drop='bed=left-bed'] input");
    await chooser.setInputFiles({ name: "2026-07-16.jpg", mimeType: "image/jpeg", buffer: bytes });
    await expect
      .poll(() => existsSync(path.join(cwd, "content/photos/left-bed/2026-07-16.jpg")), { timeout: 15_000 })
      .toBe(true);
    await expect
      .poll(() => page.locator("#undo-bar p").textContent(), { timeout: 15_000 })
      .toContain("photos/left-bed/2026-07-16.jpg");
    await chooser.setInputFiles({ name: "notes.txt", mimeType: "text/plain", buffer: Buffer.from("no photo") });
    await expect
      .poll(() => page.locator("#undo-bar p").textContent(), { timeout: 15_000 })
      .toContain("no photo that can be kept");
    const file = path.join(cwd, "page.html");
    writeFileSync(file, await (await fetch(field("beds/left-bed/"))).text());
    expect(await htmlComplaints(file)).toEqual([]);
    await page.close();
  });
});

describe("the box to write in", () => {
  it("reads each line as it is typed, completes names by arrow keys, writes what a person would, and takes it back", async () => {
    const { page, stopped } = await opened();
    const line = page.locator("#write-line");
    await page.locator("#write-bed").selectOption("left-bed");
    await line.focus();
    await page.keyboard.type("picked 300 g aquad");
    const options = page.locator("#write-options [role=option]");
    await expect.poll(() => options.count()).toBeGreaterThan(0);
    expect(await line.getAttribute("aria-expanded")).toBe("true");
    await page.keyboard.press("ArrowDown");
    expect(await line.getAttribute("aria-activedescendant")).toBe(await options.first().getAttribute("id"));
    await page.keyboard.press("Enter");
    expect(await line.inputValue()).toBe("picked 300 g Aquadulce Claudia ");
    expect(await options.count()).toBe(0);
    const reading = page.locator("#write-reading");
    expect(await reading.textContent()).toBe("= picked 300 g Aquadulce Claudia from Left bed");
    await page.keyboard.press("Enter");
    await page.keyboard.type("lifted the leeks");
    const rows = await reading.locator("li").allTextContents();
    expect(rows.slice(0, 2)).toEqual(["? a question to you", "– picked leeks from Left bed"]);
    await page.keyboard.press("Control+Enter");
    await expect.poll(() => existsSync(note()), { timeout: 15_000 }).toBe(true);
    const written = "## Left bed\n\n- picked 300 g Aquadulce Claudia\n- lifted the leeks\n";
    expect(readFileSync(note(), "utf8")).toBe(written);
    // The page is made again, and still offers the way back.
    await expect.poll(() => page.locator("main").textContent(), { timeout: 15_000 }).toContain("notes/2026-07-18.md:4");
    await page.locator("#undo-bar button").click();
    await expect.poll(() => existsSync(note()), { timeout: 15_000 }).toBe(false);
    expect(await stopped()).toEqual([]);
    await page.close();
  });

  it("takes a name by a tap, and keeps what is typed when the garden changes meanwhile", async () => {
    const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true });
    const page = await context.newPage();
    await page.goto(field("?bed=right-bed#write"));
    await page.locator("#write-form[data-ready]").waitFor();
    expect(await page.locator("#write-bed").inputValue()).toBe("right-bed");
    await page.locator("#write-line").pressSequentially("watered muss");
    await page.locator("#write-options [role=option]").first().tap();
    expect(await page.locator("#write-line").inputValue()).toBe("watered Musselburgh ");
    const heights = await page
      .locator(".writing button:visible, .writing input, .writing select:visible")
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(48);
    writeFileSync(path.join(cwd, "content/notes/2026-07-16.md"), "- watered everything\n");
    await expect.poll(() => watching.said(), { timeout: 15_000 }).toContain("Shown again: notes/2026-07-16.md");
    await page.waitForTimeout(500);
    expect(await page.locator("#write-line").inputValue()).toBe("watered Musselburgh ");
    // Nor is it lost with the page.
    await page.reload();
    await expect.poll(() => page.locator("#write-line").inputValue()).toBe("watered Musselburgh ");
    await context.close();
  });

  it("shows what a changed file says now, and writes there when that is agreed to", async () => {
    const { page } = await opened();
    await page.locator("#write-line").fill("a wren");
    writeFileSync(note(), "- mine\n");
    await expect.poll(() => watching.said(), { timeout: 15_000 }).toContain("Shown again: notes/2026-07-18.md");
    await page.locator("#write-form button[type=submit]").click();
    const asks = page.locator("#write-asks");
    await expect.poll(() => asks.isVisible()).toBe(true);
    expect(await asks.locator("pre").textContent()).toBe("- mine\n");
    await page.keyboard.press("Enter");
    await expect.poll(() => readFileSync(note(), "utf8"), { timeout: 15_000 }).toBe("- mine\n- a wren\n");
    rmSync(note());
    await page.close();
  });

  it("is open to everyone, by day and by night, on a phone and at a desk", async () => {
    for (const [colorScheme, width] of [
      ["light", 320],
      ["dark", 390],
      ["light", 1280],
    ] as const) {
      const context = await browser.newContext({ colorScheme, viewport: { width, height: 844 } });
      const page = await context.newPage();
      await page.goto(field());
      await page.locator("#write-form[data-ready]").waitFor();
      await page.locator("#write-line").pressSequentially("picked 300 g aquad");
      await expect.poll(() => page.locator("#write-options [role=option]").count()).toBeGreaterThan(0);
      expect(await axeViolations(page)).toEqual([]);
      expect(await sideways(page)).toBe(0);
      await context.close();
    }
    const file = path.join(cwd, "page.html");
    writeFileSync(file, await (await fetch(field())).text());
    expect(await htmlComplaints(file)).toEqual([]);
  });
});
