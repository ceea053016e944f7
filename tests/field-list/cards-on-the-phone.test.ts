/** A card is one screen of a phone: its words large, its first line and first shot in view however small the phone is held. */
import path from "node:path";
import { pathToFileURL } from "node:url";
import { parseHTML } from "linkedom";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { coverHtml } from "../../src/site/cards-page.ts";
import { fieldListData } from "../../src/site/field-list/field-list-data.ts";
import { makeCards, type TourCards } from "../../src/tour/index.ts";
import { openBrowser } from "../browser.ts";
import { readGarden, today } from "../site/built-site.ts";
import { listOnDisk, pictures } from "./tour-list.ts";

let browser: Browser;
let cards: TourCards;
let address: string;

beforeAll(async () => {
  browser = await openBrowser();
  const garden = await readGarden(path.resolve("demo-content"));
  cards = makeCards(garden, { episode: "2026-07-tour", today });
  const photo = [...(await pictures()).values()][0];
  const shown = new Map(
    cards.cards.flatMap(({ shots }) =>
      shots.flatMap(({ match }) => (match === undefined || photo === undefined ? [] : [[match, photo] as const])),
    ),
  );
  const long = "Rindfleischetikettierungsüberwachungsaufgabenübertragungsgesetz";
  const list = fieldListData(cards, garden.settings, shown);
  const last = list.stops.at(-1);
  address = await listOnDisk({
    ...list,
    stops: [
      ...list.stops,
      { ...last, id: "s99", number: 11, title: long, lines: [{ part: "Now", text: long }] } as never,
    ],
  });
});
afterAll(() => browser?.close());

const overEach = async (page: Page, stops: number, look: () => Promise<unknown>) => {
  const found: unknown[] = [];
  for (let at = 0; at < stops; at += 1) {
    found.push(await look());
    if (at < stops - 1) await page.click("#next");
  }
  return found;
};

test("spoken words have at least 22 px, the opening 28, ticks and buttons 64", async () => {
  const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
  await page.goto(pathToFileURL(address.replace("file://", "")).href);
  await page.click("#next");
  const size = (selector: string) =>
    page
      .locator(selector)
      .first()
      .evaluate((node) => Number.parseFloat(getComputedStyle(node).fontSize));
  expect(await size(".opening")).toBeGreaterThanOrEqual(28);
  for (const part of ["now", "figure", "why", "next"])
    expect(await size(`.lines > .${part} dd`)).toBeGreaterThanOrEqual(22);
  const high = (selector: string) =>
    page
      .locator(selector)
      .first()
      .evaluate((node) => node.getBoundingClientRect().height);
  expect(await high(".tick")).toBeGreaterThanOrEqual(64);
  expect(await high("nav.bar button")).toBeGreaterThanOrEqual(64);
  await page.locator("section.stop:not([hidden]) .more").first().click();
  await page.click("#shot-again");
  for (const target of ["#shot-filmed", "#shot-hold", "#shot-again", "[data-reason]", "#takes button", "#shot-skip"])
    expect(await high(target), target).toBeGreaterThanOrEqual(64);
  await page.close();
});

describe.each([
  [390, 844],
  [320, 568],
  [844, 390],
] as const)("at %i × %i", (width, height) => {
  test("first line and first shot are in view, nothing runs over the side", async () => {
    const page = await browser.newPage({ viewport: { width, height } });
    await page.goto(address);
    await page.click("#next");
    const found = await overEach(page, cards.cards.length + 1, () =>
      page.evaluate(() => {
        const stop = document.querySelector("section.stop:not([hidden])") as HTMLElement;
        const main = document.querySelector("main") as HTMLElement;
        const floor = main.getBoundingClientRect().bottom;
        const below = (selector: string) => (stop.querySelector(selector)?.getBoundingClientRect().bottom ?? 0) > floor;
        return { line: below(".opening"), shot: below(".shots.first li"), wide: main.scrollWidth > main.clientWidth };
      }),
    );
    expect(found).toEqual(found.map(() => ({ line: false, shot: false, wide: false })));
    await page.close();
  });
});

test.each([
  [390, 844],
  [320, 568],
  [844, 390],
] as const)(
  "at %i × %i the first screen is the cover: when to be there and what the film is about",
  async (width, height) => {
    const page = await browser.newPage({ viewport: { width, height } });
    await page.goto(address);
    const found = await page.evaluate(() => {
      const main = document.querySelector("main") as HTMLElement;
      const floor = main.getBoundingClientRect().bottom;
      const below = (selector: string) =>
        (document.querySelector(selector)?.getBoundingClientRect().bottom ?? 9e9) > floor;
      return { times: below("#cover .times"), film: below("#cover .film"), wide: main.scrollWidth > main.clientWidth };
    });
    expect(found).toEqual({ times: false, film: false, wide: false });
    // The same facts as on paper.
    const words = (html: string) =>
      parseHTML(html).document.querySelector(".cover")?.textContent?.replace(/\s+/g, " ").trim();
    const shown = await page.locator("#cover").evaluate((node) => node.outerHTML);
    expect(words(shown)).toBe(words(coverHtml(cards.cover)));
    await page.close();
  },
);

test("at 390 × 844 what is said stands on one screen", async () => {
  const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
  await page.goto(address);
  await page.click("#next");
  const beyond = await overEach(page, cards.cards.length, () =>
    page.evaluate(() => {
      const words = document.querySelector("section.stop:not([hidden]) .lines")?.getBoundingClientRect().bottom ?? 0;
      return Math.max(0, Math.round(words - (document.querySelector("main")?.getBoundingClientRect().bottom ?? 0)));
    }),
  );
  expect(beyond).toEqual(beyond.map(() => 0));
  await page.close();
});
