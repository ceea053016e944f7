/** Opens the fullest page of every kind once, and reads it as different people would: what stands in somebody's way, by check. */
import type { Page } from "playwright-core";
import type { DemoSite } from "./demo-site.ts";
import { addStyle, axeViolations, COLOUR_RULES, layOutWhole } from "./page-checks.ts";
import {
  cutTexts,
  lostLetters,
  movements,
  sideways,
  unseenFocus,
  untoldPictures,
  WIDE_SPACES,
} from "./reading-checks.ts";

export const CHECKS = [
  "moved under its reader's eyes while it came",
  "axe on a phone, by day",
  "axe on a phone, by night",
  "axe at a desk, by day",
  "axe at a desk, by night",
  "pushed sideways at 320, 360, 640 and 1280 pixels",
  "cut off at 320 pixels, or with wide spaces",
  "focus that cannot be seen",
  "pictures without words",
  "movement where none is wanted",
  "lost in colours of the reader's own",
  "stopped by the page's own policy",
  "asked of another server",
  "cookies",
] as const;

export type Findings = Readonly<Record<(typeof CHECKS)[number], readonly string[]>>;

export async function readEveryKind({ browser, kinds }: DemoSite): Promise<Findings> {
  const found = Object.fromEntries(CHECKS.map((check) => [check, [] as string[]])) as Record<
    (typeof CHECKS)[number],
    string[]
  >;
  for (const { kind, url, isPublic } of kinds) {
    const called = `${isPublic ? "public" : "private"} ${kind.address || "first page"}`;
    const say = (check: (typeof CHECKS)[number], complaints: readonly string[]) =>
      found[check].push(...complaints.map((complaint) => `${called}: ${complaint}`));
    const context = await browser.newContext({ colorScheme: "light", viewport: { width: 360, height: 780 } });
    const page = await context.newPage();
    const stopped = await listenForStops(page);
    const { origin } = new URL(url);
    page.on("request", (request) => {
      const asked = new URL(request.url());
      if (asked.protocol !== "data:" && asked.origin !== origin) say("asked of another server", [asked.href]);
    });
    const moves = await movesWhileItComes(page, url);
    if (isPublic) say("moved under its reader's eyes while it came", moves);
    await layOutWhole(page);
    const wide = async (width: number, height: number) => {
      await page.setViewportSize({ width, height });
      const pixels = await sideways(page);
      if (pixels > 0) say("pushed sideways at 320, 360, 640 and 1280 pixels", [`${pixels} at ${width}`]);
    };
    for (const [device, width, height] of [
      ["on a phone", 360, 780],
      ["at a desk", 1280, 844],
    ] as const) {
      await wide(width, height);
      await page.emulateMedia({ colorScheme: "light" });
      say(`axe ${device}, by day`, await axeViolations(page));
      await page.emulateMedia({ colorScheme: "dark" });
      say(`axe ${device}, by night`, await axeViolations(page, COLOUR_RULES));
    }
    say("pictures without words", await untoldPictures(page));
    // What 1280 pixels are at 200 %; at 400 % they are 320, which WCAG 2.2 asks for in 1.4.10.
    await wide(640, 422);
    await wide(320, 640);
    say("cut off at 320 pixels, or with wide spaces", await cutTexts(page));
    say("focus that cannot be seen", await unseenFocus(page));
    await page.emulateMedia({ reducedMotion: "reduce" });
    say("movement where none is wanted", await movements(page));
    await page.emulateMedia({ forcedColors: "active" });
    say("lost in colours of the reader's own", [...(await lostLetters(page)), ...(await unseenFocus(page))]);
    await page.emulateMedia({ forcedColors: "none" });
    await addStyle(page, WIDE_SPACES);
    await wide(320, 640);
    say("cut off at 320 pixels, or with wide spaces", await cutTexts(page));
    say("stopped by the page's own policy", await stopped());
    say("cookies", await cookiesOf(page));
    await context.close();
  }
  return found;
}

/** The browser drops a cross-fade between two pages when the second is there too soon, and tells of it as an error. */
const GAVE_UP = /^Transition was (?:aborted|skipped)/u;

/** Begins to listen before the page's first byte; the answer gives what its policy stopped, and every error it told. */
export async function listenForStops(page: Page): Promise<() => Promise<readonly string[]>> {
  const told: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error") told.push(message.text());
  });
  page.on("pageerror", ({ message }) => {
    if (!GAVE_UP.test(message)) told.push(message);
  });
  await page.addInitScript(() => {
    const stops: string[] = [];
    (globalThis as { stops?: string[] }).stops = stops;
    document.addEventListener("securitypolicyviolation", ({ violatedDirective, blockedURI }) =>
      stops.push(`${violatedDirective} ${blockedURI}`),
    );
  });
  return async () => [...told, ...(await page.evaluate(() => (globalThis as { stops?: string[] }).stops ?? []))];
}

/** Milliseconds by which pictures, letters and scripts come later than the page. */
const LATE = 200;

/** Opens a page over a slow line; gives what moved without anybody having done anything (Layout Instability, W3C). */
async function movesWhileItComes(page: Page, url: string): Promise<readonly string[]> {
  const beside = /\.(?:webp|jpg|js|woff2)$/u;
  await page.route(beside, async (route) => {
    await new Promise((resolve) => setTimeout(resolve, LATE));
    await route.continue();
  });
  await page.addInitScript(() => {
    const moves: string[] = [];
    (globalThis as { moves?: string[] }).moves = moves;
    interface Shift extends PerformanceEntry {
      readonly value: number;
      readonly sources: readonly { readonly node: Element | null }[];
    }
    const watch = (entries: PerformanceEntryList) => {
      for (const { value, sources } of entries as Shift[])
        moves.push(
          `${value.toFixed(3)} ${sources.map(({ node }) => `${node?.nodeName}.${node?.className}`).join(" ")}`,
        );
    };
    new PerformanceObserver((list) => watch(list.getEntries())).observe({ type: "layout-shift", buffered: true });
  });
  await page.goto(url);
  await page.waitForTimeout(2 * LATE);
  await page.unrouteAll({ behavior: "wait" });
  return page.evaluate(() => (globalThis as { moves?: string[] }).moves ?? []);
}

async function cookiesOf(page: Page): Promise<readonly string[]> {
  const kept = await page.context().cookies();
  const seen = await page.evaluate(() => document.cookie);
  return [...kept.map(({ name }) => name), ...(seen === "" ? [] : [seen])];
}
