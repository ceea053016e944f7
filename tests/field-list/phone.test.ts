/** The list in a phone's browser, opened as a file: everything that is done to it, kept, told and taken home. */
import { readFile } from "node:fs/promises";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openBrowser } from "../browser.ts";
import { axeViolations, listOnDisk, smallList } from "./tour-list.ts";

const phone = {
  viewport: { width: 390, height: 844 },
  hasTouch: true,
  isMobile: true,
  locale: "en-GB",
  timezoneId: "Europe/London",
} as const;

let browser: Browser;
let address: string;

beforeAll(async () => {
  browser = await openBrowser();
  address = await listOnDisk(await smallList());
});
afterAll(() => browser?.close());

/** Fails on every error the page meets, refused scripts and styles among them. */
async function open(
  options: Parameters<Browser["newContext"]>[0] = {},
): Promise<{ page: Page; context: BrowserContext; errors: string[] }> {
  const context = await browser.newContext({ ...phone, acceptDownloads: true, ...options });
  const page = await context.newPage();
  const errors: string[] = [];
  page.on("pageerror", (error) => errors.push(error.message));
  page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
  page.on("request", (request) => /^(?:file|data|blob):/.test(request.url()) || errors.push(request.url()));
  await page.goto(address);
  // The cover is the first screen; without a script all stand below it.
  if (options.javaScriptEnabled !== false) await page.click("#next");
  return { page, context, errors };
}

const shot = (page: Page, id: string) => page.locator(`#shot-${id.replace(".", "-")}`);
const stateOf = (page: Page, id: string) => shot(page, id).getAttribute("data-state");
const saidOf = (page: Page, id: string) => shot(page, id).locator(".state").textContent();
const hold = (page: Page, id: string) => shot(page, id).locator(".tick").click({ delay: 700 });
const tap = (page: Page, id: string) => shot(page, id).locator(".tick").click();

async function saved(page: Page, button: string): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: button }).click(),
  ]);
  return { name: download.suggestedFilename(), text: await readFile(await download.path(), "utf8") };
}

describe("a stop", () => {
  test("stands alone on the screen, with the next a button, a swipe or a key away", async () => {
    const { page, context, errors } = await open();
    const title = () => page.locator("section:not([hidden]) h2").allInnerTexts();
    expect(await title()).toEqual(["1 Long Bed"]);
    expect(await page.getByText("Stop 1 of 2").isVisible()).toBe(true);
    expect(await page.getByRole("button", { name: "Back: the cover" }).isEnabled()).toBe(true);
    await page.getByRole("button", { name: "Next: Pea Row" }).click();
    expect(await title()).toEqual(["2 Pea Row"]);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("s2-name");
    await page.keyboard.press("ArrowLeft");
    expect(await title()).toEqual(["1 Long Bed"]);
    await swipe(page, { from: 330, to: 60 });
    expect(await title()).toEqual(["2 Pea Row"]);
    await swipe(page, { from: 60, to: 330 });
    expect(await title()).toEqual(["1 Long Bed"]);
    await swipe(page, { from: 200, to: 180 });
    expect(await title()).toEqual(["1 Long Bed"]);
    expect(errors).toEqual([]);
    await context.close();
  });

  test("keeps ticks, holds, skips, takes and notes over a reload, in every hand", async () => {
    const { page, context, errors } = await open();
    await tap(page, "S1.1");
    await hold(page, "S1.2");
    expect(await stateOf(page, "S1.2")).toBe("retake");
    await shot(page, "S1.3").getByRole("button", { name: "More for S1.3" }).click();
    await page.getByRole("button", { name: "wind" }).click();
    await page.getByRole("button", { name: "Skip", exact: true }).click();
    await shot(page, "S1.4").locator(".more").click();
    await page.getByLabel("Another reason").fill("the gate was shut");
    await page.getByRole("button", { name: "Skip", exact: true }).click();
    await shot(page, "S1.1").locator(".more").click();
    await page.getByRole("button", { name: "Good", exact: true }).click();
    await page.getByRole("button", { name: "Note" }).click();
    await page.getByRole("textbox").fill("picked 1.4 kg Crown Prince\ntrouble: blackfly on Uchiki Kuri");
    await page.getByRole("button", { name: "Done" }).click();

    const check = async () => {
      expect(await saidOf(page, "S1.1")).toBe("Filmed on take 2");
      expect(await saidOf(page, "S1.2")).toBe("Film again");
      expect(await saidOf(page, "S1.3")).toBe("Skipped: wind");
      expect(await saidOf(page, "S1.4")).toBe("Skipped: the gate was shut");
      expect(await page.locator("section:not([hidden]) .noted").textContent()).toContain("trouble: blackfly");
    };
    await check();
    await page.reload();
    await check();
    expect(await page.locator("#start").isVisible(), "the first tick starts the clock").toBe(false);
    expect(errors).toEqual([]);
    await context.close();
  });

  test("is untouched by a trembling finger, a scroll, or a glove that bounces", async () => {
    const { page, context } = await open();
    const box = await shot(page, "S1.1").locator(".tick").boundingBox();
    const { x, y } = { x: (box?.x ?? 0) + 60, y: (box?.y ?? 0) + 30 };
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y + 40, { steps: 4 });
    await page.waitForTimeout(700);
    await page.mouse.move(x + 500, y + 400);
    await page.mouse.up();
    expect(await stateOf(page, "S1.1")).toBe("open");
    await shot(page, "S1.1").locator(".tick").dblclick();
    expect(await stateOf(page, "S1.1")).toBe("filmed");
    await context.close();
  });

  test("works by keyboard alone", async () => {
    const { page, context } = await open({ hasTouch: false, isMobile: false });
    await page.locator("#shot-S1-2 .tick").focus();
    await page.keyboard.press("Enter");
    expect(await stateOf(page, "S1.2")).toBe("filmed");
    expect(await page.locator("#said").textContent()).toBe("S1.2: Filmed");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    expect(await page.locator("#shot-sheet").isVisible()).toBe(true);
    await page.getByRole("button", { name: /^Take 1/ }).press("Enter");
    expect(await saidOf(page, "S1.2")).toBe("Filmed, on hold");
    await page.getByRole("button", { name: /^Take 1/ }).press("Enter");
    expect(await stateOf(page, "S1.2")).toBe("retake");
    await page.keyboard.press("Escape");
    expect(await page.locator("#shot-sheet").isVisible()).toBe(false);
    await page.getByRole("button", { name: "Note" }).press("Enter");
    await page.keyboard.type("did: nothing");
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("Escape");
    expect(await page.locator("section:not([hidden]) .noted").textContent()).toContain("did: nothing");
    expect(await page.getByText("Stop 1 of 2").isVisible()).toBe(true);
    await context.close();
  });
});

describe("a take", () => {
  test("is good, on hold or no good, with its time and why, in either order and over a reload", async () => {
    const { page, context, errors } = await open();
    await page.clock.install({ time: new Date("2026-06-19T09:00:00+01:00") });
    await page.reload();
    await page.clock.pauseAt(new Date("2026-06-19T09:20:05+01:00"));
    const sheet = page.locator("#shot-sheet");
    const press = (name: string) => sheet.getByRole("button", { name, exact: true }).click();
    const takes = () => sheet.locator("#takes li").allInnerTexts();
    await shot(page, "S1.2").locator(".more").click();
    await press("No good");
    await press("wind");
    await page.clock.fastForward("01:00");
    await press("noise");
    await press("No good");
    expect((await takes()).map((take) => take.replace(/\s+/g, " "))).toEqual([
      "Take 1 9:20:05, no good: noise",
      "Take 2 9:21:05, no good",
    ]);
    await press("focus");
    await press("Hold");
    expect((await takes()).at(-1)?.replace(/\s+/g, " "), "the reason of the take before is not this one's").toBe(
      "Take 3 9:21:05, hold",
    );
    await press("Take back");
    expect(await sheet.locator("#shot-state").textContent()).toBe("Film again, 2 takes so far: focus");
    await page.clock.fastForward("01:00");
    await press("Good");
    expect(await sheet.isVisible()).toBe(false);
    await page.reload();
    expect(await saidOf(page, "S1.2")).toBe("Filmed on take 3");
    await page.getByRole("button", { name: "Stops" }).click();
    const { stops } = JSON.parse((await saved(page, "Save the ticks")).text);
    expect(stops[0].ticks).toMatchObject([
      {
        key: "long-bed/first-flower/uchiki-kuri",
        state: "filmed",
        takes: [
          { at: "09:20:05", mark: "no good", why: "noise" },
          { at: "09:21:05", mark: "no good", why: "focus" },
          { at: "09:22:05", mark: "good" },
        ],
      },
    ]);
    expect(errors).toEqual([]);
    await context.close();
  });

  test("that was no good is to go back for, and so is a must at a stop that is left", async () => {
    const { page, context } = await open();
    await hold(page, "S1.2");
    await page.click("#next");
    await page.getByRole("button", { name: "Stops" }).click();
    const list = page.locator("#again-list button");
    expect((await list.allInnerTexts()).map((row) => row.replace(/\s+/g, " "))).toEqual([
      expect.stringMatching(/^S1\.1 Wide.* Not filmed$/),
      expect.stringMatching(/^S1\.2 Female flower.* Film again$/),
    ]);
    await list.last().click();
    expect(await page.locator("section:not([hidden]) h2").allInnerTexts()).toEqual(["1 Long Bed"]);
    await context.close();
  });
});

describe("the cover", () => {
  test("is the first screen, and a row of all stops leads back to it", async () => {
    const { page, context, errors } = await open();
    await page.click("#back");
    const heading = page.locator("section:not([hidden]) h2");
    expect(await heading.allInnerTexts()).toEqual(["June tour"]);
    for (const name of ["Back", "Note", "Talk"])
      expect(await page.getByRole("button", { name }).isDisabled()).toBe(true);
    expect(await page.locator("#cover .order li").count()).toBe(2);
    await page.click("#next");
    await page.click("#next");
    await page.getByRole("button", { name: "Stops" }).click();
    await page.getByRole("button", { name: "Cover", exact: true }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("cover-name");
    expect(errors).toEqual([]);
    await context.close();
  });
});

describe("the clock", () => {
  test("runs from its start against the plan, stops, and goes on without the pause", async () => {
    const { page, context } = await open();
    await page.clock.install({ time: new Date("2026-06-19T09:15:00+01:00") });
    await page.reload();
    await page.getByRole("button", { name: "Start the clock" }).click();
    await page.clock.fastForward("06:00");
    expect(await page.locator("#elapsed").textContent()).toBe("6:00");
    expect(await page.locator("#against").textContent()).toBe("3 min behind");
    await page.getByRole("button", { name: /^Next/ }).click();
    expect(await page.locator("#against").textContent()).toBe("on plan");
    await page.getByRole("button", { name: "Stops" }).click();
    await page.getByRole("button", { name: "Stop the clock" }).click();
    await page.clock.fastForward("30:00");
    expect(await page.locator("#elapsed").textContent()).toBe("6:00");
    await page.getByRole("button", { name: "Let the clock go on" }).click();
    await page.clock.fastForward("01:00");
    expect(await page.locator("#elapsed").textContent()).toBe("7:00");
    await context.close();
  });
});

describe("what goes home", () => {
  test("equals what was done", async () => {
    const { page, context, errors } = await open();
    await page.clock.install({ time: new Date("2026-06-19T09:00:00+01:00") });
    await page.reload();
    // Standing still, so that a slow machine is no second late.
    await page.clock.pauseAt(new Date("2026-06-19T09:20:05+01:00"));
    await tap(page, "S1.1");
    await page.clock.fastForward("01:30");
    await shot(page, "S1.3").locator(".more").click();
    await page.getByRole("button", { name: "rain" }).click();
    await page.getByRole("button", { name: "Skip", exact: true }).click();
    await page.getByRole("button", { name: "Note" }).click();
    await page.getByRole("textbox").fill("first flower: Uchiki Kuri");
    await page.getByRole("button", { name: "Done" }).click();
    await page.getByRole("button", { name: "Stops" }).click();
    expect(await page.locator("#counts").textContent()).toBe("Filmed 1 of 8 shots, at 9:20.");

    const list = await saved(page, "Save the ticks");
    expect(list.name).toBe("field-list.json");
    const home = {
      plotreel: "field list",
      version: 2,
      episode: "2026-06-tour",
      day: "2026-06-19",
      exported: "2026-06-19T09:21:35+01:00",
      stops: [
        {
          bed: "long-bed",
          ticks: [
            {
              shot: "S1.1",
              key: "long-bed/wide",
              words: "Wide from the gate",
              state: "filmed",
              takes: [{ at: "09:20:05", mark: "good" }],
              at: "09:20:05",
            },
            {
              shot: "S1.3",
              key: "long-bed/label/uchiki-kuri",
              words: "Hand's width between leaves",
              state: "skipped",
              reason: "rain",
              takes: [],
              at: "09:21:35",
            },
          ],
          note: "first flower: Uchiki Kuri",
        },
        { bed: "pea-row", ticks: [] },
      ],
      plan: (await smallList()).plan,
    };
    expect(JSON.parse(list.text)).toEqual(home);

    const note = await saved(page, "Save the note");
    expect(note.name).toBe("2026-06-19-filming.md");
    expect(note.text).toContain("date: 2026-06-19\n");
    expect(note.text).toContain("## Long Bed\n\n- first flower: Uchiki Kuri\n");

    await context.grantPermissions(["clipboard-read", "clipboard-write"]);
    await page.getByRole("button", { name: "Copy the ticks" }).click();
    await page.locator("#copied", { hasText: "Copied." }).waitFor();
    expect(JSON.parse(await page.evaluate(() => navigator.clipboard.readText()))).toEqual(home);
    expect(errors).toEqual([]);
    await context.close();
  });

  test("can be copied by hand where a page may not write to the clipboard", async () => {
    const { page, context } = await open();
    await page.evaluate(() => Object.defineProperty(navigator, "clipboard", { value: undefined }));
    await page.getByRole("button", { name: "Stops" }).click();
    await page.getByRole("button", { name: "Copy the note" }).click();
    const field = page.getByLabel("Text to copy");
    expect(await field.inputValue()).toContain("Filmed: June tour");
    expect(
      await page.evaluate(
        () => String(getSelection()).length || (document.activeElement as HTMLTextAreaElement).selectionEnd,
      ),
    ).toBeGreaterThan(50);
    await context.close();
  });

  test("is forgotten only when it is said twice", async () => {
    const { page, context } = await open();
    await tap(page, "S1.1");
    await page.getByRole("button", { name: "Stops" }).click();
    await page.getByRole("button", { name: "Begin this list again" }).click();
    expect(await stateOf(page, "S1.1")).toBe("filmed");
    await page.getByRole("button", { name: "Forget them" }).click();
    expect(await stateOf(page, "S1.1")).toBe("open");
    await page.reload();
    expect(await stateOf(page, "S1.1")).toBe("open");
    await context.close();
  });
});

test("a list made anew keeps the ticks of shots it still has, wherever they now stand", async () => {
  const { page, context } = await open();
  await tap(page, "S1.2");
  const list = await smallList();
  const [first, second] = list.stops;
  const shots = [...(first?.shots ?? [])].reverse().map((each, index) => ({ ...each, id: `S2.${index + 1}` }));
  const turned = {
    ...list,
    stops: [
      { ...second, number: 1, shots: [] },
      { ...first, number: 2, shots },
    ],
  } as typeof list;
  // The same address as before stands for the file that was put in the place of the old one.
  await page.goto(await listOnDisk(turned));
  expect(await page.locator("[data-state=filmed] .what").allTextContents()).toEqual(["Female flower, hold 10"]);
  expect(await stateOf(page, "S2.3")).toBe("filmed");
  await context.close();
});

test("a sheet closes by a tap beside it, not by one between its buttons", async () => {
  const { page, context } = await open();
  await shot(page, "S1.1").locator(".more").click();
  const sheet = page.locator("#shot-sheet");
  const box = await sheet.boundingBox();
  await page.mouse.click((box?.x ?? 0) + 4, (box?.y ?? 0) + 200);
  expect(await sheet.isVisible()).toBe(true);
  await page.mouse.click(195, (box?.y ?? 0) - 40);
  expect(await sheet.isVisible()).toBe(false);
  await context.close();
});

test("two open pages of one list do not undo each other", async () => {
  const { page, context } = await open();
  const other = await context.newPage();
  await other.goto(address);
  await tap(page, "S1.1");
  await other.locator("#shot-S1-1[data-state=filmed]").waitFor();
  await tap(other, "S1.2");
  await page.locator("#shot-S1-2[data-state=filmed]").waitFor();
  await page.reload();
  expect([await stateOf(page, "S1.1"), await stateOf(page, "S1.2")]).toEqual(["filmed", "filmed"]);
  await context.close();
});

test("a browser that keeps nothing is told of, and the list works for as long as it is open", async () => {
  const { page, context } = await open();
  await page.addInitScript(() => {
    Object.defineProperty(window, "localStorage", {
      get: () => {
        throw new DOMException("no", "SecurityError");
      },
    });
  });
  await page.reload();
  await page.click("#next");
  await tap(page, "S1.1");
  expect(await stateOf(page, "S1.1")).toBe("filmed");
  expect(await page.locator("#offline").textContent()).toBe("Not kept: see Stops");
  await page.getByRole("button", { name: "Stops" }).click();
  expect(await page.getByText("This browser keeps nothing.").isVisible()).toBe(true);
  await context.close();
});

describe("the talking view", () => {
  test("moves at the narration rate and pauses at a tap", async () => {
    const { page, context } = await open();
    await page.getByRole("button", { name: "Talk" }).click();
    const text = page.locator("#talk-text");
    expect(await text.locator("p").allTextContents()).toEqual((await smallList()).stops[0]?.outline);
    const size = await text.evaluate((element) => Number.parseFloat(getComputedStyle(element).fontSize));
    expect(size).toBeGreaterThanOrEqual(44);
    const rate = await text.evaluate((element) => {
      const [first, second] = [...element.querySelectorAll("p")];
      const words = (first?.textContent ?? "").split(/\s+/).length;
      return ((second?.offsetTop ?? 0) - (first?.offsetTop ?? 0)) / ((words * 60) / 130);
    });
    await page.getByRole("button", { name: "Start", exact: true }).click();
    const scrolled = () => text.evaluate((element) => ({ top: element.scrollTop, time: performance.now() }));
    await page.waitForTimeout(300);
    const from = await scrolled();
    await page.waitForTimeout(1500);
    const to = await scrolled();
    const pace = (to.top - from.top) / ((to.time - from.time) / 1000);
    expect(pace / rate).toBeGreaterThan(0.85);
    expect(pace / rate).toBeLessThan(1.15);
    await text.click();
    const still = await scrolled();
    await page.waitForTimeout(400);
    expect((await scrolled()).top).toBe(still.top);
    expect(await page.locator("#talk-go").textContent()).toBe("Go on");
    await context.close();
  });

  test("steps from part to part where motion is not wanted", async () => {
    const { page, context } = await open({ reducedMotion: "reduce" });
    await page.getByRole("button", { name: "Talk" }).click();
    const text = page.locator("#talk-text");
    const top = () => text.evaluate((element) => element.scrollTop);
    await page.waitForTimeout(500);
    expect(await top()).toBe(0);
    await page.getByRole("button", { name: "Next lines" }).click();
    const first = await top();
    expect(first).toBeGreaterThan(0);
    await page.waitForTimeout(400);
    expect(await top()).toBe(first);
    await context.close();
  });
});

describe("for everyone", () => {
  const screens: readonly (readonly [string, (page: Page) => Promise<void>])[] = [
    ["the stop", async () => undefined],
    [
      "a stop with every kind of tick",
      async (page) => {
        await tap(page, "S1.1");
        await hold(page, "S1.2");
        await shot(page, "S1.3").locator(".more").click();
        await page.getByRole("button", { name: "light" }).click();
        await page.getByRole("button", { name: "Skip", exact: true }).click();
        await page.locator("summary:visible").first().click();
      },
    ],
    ["the cover", (page) => page.click("#back")],
    [
      "the shot's sheet",
      async (page) => {
        await shot(page, "S1.2").locator(".more").click();
        await page.getByRole("button", { name: "No good" }).click();
        await page.getByRole("button", { name: "wind" }).click();
      },
    ],
    ["the note", (page) => page.getByRole("button", { name: "Note" }).click()],
    [
      "all stops, with what to go back for",
      async (page) => {
        await hold(page, "S1.2");
        await page.getByRole("button", { name: "Stops" }).click();
      },
    ],
    ["the talking view", (page) => page.getByRole("button", { name: "Talk" }).click()],
    ["the picture", (page) => page.getByRole("button", { name: /view of Long Bed/ }).click()],
  ];

  for (const colorScheme of ["light", "dark"] as const) {
    test.each(screens)(`%s is open to all: ${colorScheme}`, async (_, show) => {
      const { page, context, errors } = await open({ colorScheme });
      await show(page);
      expect(await axeViolations(page)).toEqual([]);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(wide).toBeLessThanOrEqual(0);
      expect(errors).toEqual([]);
      await context.close();
    });
  }

  // Common practice for gloves: 48 CSS pixels, as the largest of the usual guidelines asks.
  test.each(screens)("%s has no target below 48 pixels", async (_, show) => {
    const { page, context } = await open();
    await show(page);
    const targets = page.locator("button:visible, summary:visible, input:visible, textarea:visible, a:visible");
    const small: string[] = [];
    let measured = 0;
    for (const target of await targets.all()) {
      const box = await target.boundingBox();
      measured += 1;
      if (box === null || box.width < 48 || box.height < 48)
        small.push(`${await target.textContent()} ${box?.width} × ${box?.height}`);
    }
    expect(small).toEqual([]);
    expect(measured).toBeGreaterThan(0);
    await context.close();
  });

  test("without scripts it is a list to read", async () => {
    const { page, context } = await open({ javaScriptEnabled: false });
    expect(await page.locator("h2:visible").allInnerTexts()).toEqual(["June tour", "1 Long Bed", "2 Pea Row"]);
    expect(await page.getByText("Open the file in a browser.").isVisible()).toBe(true);
    await context.close();
  });
});

/** A finger along the middle of the screen. */
async function swipe(page: Page, { from, to }: { from: number; to: number }): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const y = 300;
  await session.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: [{ x: from, y }] });
  for (const part of [0.25, 0.5, 0.75, 1]) {
    await session.send("Input.dispatchTouchEvent", {
      type: "touchMove",
      touchPoints: [{ x: from + (to - from) * part, y }],
    });
  }
  await session.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
  await session.detach();
}
