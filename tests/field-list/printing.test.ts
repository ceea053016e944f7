/** The brief on paper: a cover, two cards to a sheet of A4 or Letter with their backs behind them, then the dossier. */

import { execFileSync, spawnSync } from "node:child_process";
import { mkdtemp, readdir, readFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import sharp from "sharp";
import { afterEach, beforeAll, describe, expect, test } from "vitest";
import { realEffects } from "../../src/cli/effects.ts";
import { printBrief } from "../../src/cli/print-brief.ts";
import { cardLimits } from "../../src/films/index.ts";
import type { Garden } from "../../src/model.ts";
import { briefPage } from "../../src/site/index.ts";
import { makeCards, mostShots, type TourCards } from "../../src/tour/index.ts";
import { hasChromium, needsChromium, openBrowser } from "../browser.ts";
import { readGarden, today } from "../site/built-site.ts";

const draws = spawnSync("pdftoppm", ["-v"]).error === undefined;
const chromium = process.env.CHROMIUM;

let garden: Garden;
let brief: TourCards;
let folder: string;

beforeAll(async () => {
  process.env.CHROMIUM ??= "/usr/bin/chromium";
  garden = await readGarden(path.resolve("demo-content"));
  brief = makeCards(garden, { episode: "2026-07-tour", today });
  folder = await mkdtemp(path.join(tmpdir(), "plotreel-paper-"));
});
afterEach(() => {
  if (chromium === undefined) process.env.CHROMIUM = "/usr/bin/chromium";
  else process.env.CHROMIUM = chromium;
});

async function print(name: string, units: "metric" | "us"): Promise<{ pdf: Buffer; said: string }> {
  needsChromium();
  const said: string[] = [];
  const effects = { ...realEffects(), err: (line: string) => void said.push(line) };
  const stem = path.join(folder, name);
  await printBrief({ garden: { ...garden, settings: { ...garden.settings, units } } }, brief, stem, effects);
  return { pdf: await readFile(`${stem}.pdf`), said: said.join("\n") };
}

/** Points, 72 to the inch. */
const papers = {
  A4: { units: "metric", width: 595, height: 842 },
  Letter: { units: "us", width: 612, height: 792 },
} as const;

describe.skipIf(!hasChromium).each(Object.entries(papers))("on %s", (paper, { units, width, height }) => {
  let pdf: Buffer;
  let said: string;
  beforeAll(async () => {
    ({ pdf, said } = await print(paper, units));
  });

  test("a cover, five sheets with fronts and backs, and the dossier", () => {
    expect(brief.dossier.stops).toHaveLength(10);
    expect(said).toBe(`Printed on ${paper}: ${path.join(folder, paper)}.pdf`);
    const pages = pdf.toString("latin1").match(/\/Type\s*\/Page\b/gu)?.length ?? 0;
    expect(pages).toBeGreaterThan(1 + 10);
    expect(pages).toBeLessThanOrEqual(1 + 10 + 12);
    const [, right, top] = /\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf.toString("latin1")) ?? [];
    expect(Number(right)).toBeCloseTo(width, -0.5);
    expect(Number(top)).toBeCloseTo(height, -0.5);
  });

  test.skipIf(!draws)("the pages are filled, whole, and cost little ink", async () => {
    for (const page of await pictures(path.join(folder, `${paper}.pdf`))) {
      const { ink, solid, edge } = page;
      expect(ink, "share of the page that is ink").toBeGreaterThan(0.02);
      expect(ink, "share of the page that is ink").toBeLessThan(0.14);
      expect(solid, "square centimetres printed through").toBe(0);
      expect(edge, "millimetres left free at the edge").toBeGreaterThanOrEqual(5);
    }
  });

  test.skipIf(!draws)("every stop and everything that must be shown is there to read", () => {
    const words = execFileSync("pdftotext", [path.join(folder, `${paper}.pdf`), "-"], { encoding: "utf8" });
    const plain = words.replace(/\s+/g, " ");
    for (const { title } of brief.dossier.stops) expect(plain).toContain(title);
    const musts = brief.dossier.stops.flatMap(({ show }) => show).filter(({ level }) => level === "must");
    expect(musts.length).toBeGreaterThan(5);
    for (const { text } of musts) expect(plain).toContain(text.slice(0, 40));
  });
});

test("the same brief is the same PDF, whenever it is printed", async () => {
  const [first, second] = [await print("once", "metric"), await print("again", "metric")];
  expect(first.pdf.equals(second.pdf)).toBe(true);
  expect(first.pdf.toString("latin1")).toContain("(D:20260718000000+00'00')");
});

test("nothing is left beside the PDF", async () => {
  await print("alone", "metric");
  expect((await readdir(folder)).filter((file) => !/\.(?:pdf|png)$/.test(file))).toEqual([]);
});

test("without a Chromium it says so in one line, and where to print instead", async () => {
  process.env.CHROMIUM = path.join(folder, "no-such-program");
  const said: string[] = [];
  await printBrief({ garden }, brief, path.join(folder, "none"), {
    ...realEffects(),
    err: (line) => void said.push(line),
  });
  expect(said).toEqual([
    `No PDF. No Chromium was found on this machine (CHROMIUM may name one); print ${folder}/none.html from any browser instead.`,
  ]);
  expect(await readdir(folder)).not.toContain("none.pdf");
});

describe.each([
  ["A4", 297, false, 20],
  ["Letter", 279.4, false, 20],
  // Of a stop four faces: what is shown, what is told of it, and what is filmed on two.
  ["A4", 297, true, 40],
  ["Letter", 279.4, true, 40],
] as const)("the cards on %s", (paper, high, pocket, cards) => {
  test(`${pocket ? "for the pocket " : ""}no card overflows its share of the sheet, and no letter is smaller than 18 points, 24 for the opening`, async () => {
    const browser = await openBrowser();
    const page = await browser.newPage();
    await page.emulateMedia({ media: "print" });
    await page.setContent(briefPage(brief, garden, { paper, pocket }));
    const found = await page.evaluate(() => {
      const points = (node: Element) => (Number.parseFloat(getComputedStyle(node).fontSize) * 72) / 96;
      const cards = [...document.querySelectorAll(".card")];
      return {
        cards: cards.length,
        over: cards
          .filter((card) => card.scrollHeight > card.clientHeight || card.scrollWidth > card.clientWidth)
          .map(({ id }) => id),
        least: Math.min(...cards.flatMap((card) => [...card.querySelectorAll("*:not(input)")].map(points))),
        opening: Math.min(...[...document.querySelectorAll(".card .opening")].map(points)),
        wide: Math.max(...cards.map((card) => card.getBoundingClientRect().width)),
        beyond: cards.flatMap((card) => {
          const edge = card.getBoundingClientRect();
          return [...card.querySelectorAll("*")].filter((node) => {
            const { right, bottom } = node.getBoundingClientRect();
            return right > edge.right || bottom > edge.bottom;
          });
        }).length,
        sheet: [...document.querySelectorAll(".sheet")].map((sheet) => sheet.getBoundingClientRect().height),
        cover: document.querySelector(".cover")?.getBoundingClientRect().height ?? 0,
        dossier: points(document.querySelector(".paper .facts li") as Element),
      };
    });
    expect(found).toMatchObject({ cards, over: [], beyond: 0 });
    if (pocket) expect(found.wide).toBeLessThanOrEqual((108 * 96) / 25.4);
    expect(found.least).toBeGreaterThanOrEqual(17.9);
    expect(found.opening).toBeGreaterThanOrEqual(23.9);
    expect(found.dossier).toBeGreaterThanOrEqual(9.9);
    const sheet = (high * 96) / 25.4;
    expect(Math.max(...found.sheet)).toBeLessThanOrEqual(sheet);
    expect(found.cover, "the cover is one page").toBeLessThanOrEqual(sheet - (22 * 96) / 25.4);
    await browser.close();
  });
});

test("a card as full as its limits allow still fits", async () => {
  const spoken = "Musselburgh leeks under the fine mesh until September".split(" ");
  const words = (n: number) => Array.from({ length: n }, (_, at) => spoken[at % spoken.length]).join(" ");
  const line = (n: number) => ({ text: words(n), sources: [], private: false });
  const [first] = brief.cards;
  const full = {
    ...(first as TourCards["cards"][number]),
    opening: line(cardLimits.opening),
    before: undefined,
    now: [line(cardLimits.now), line(cardLimits.now), line(cardLimits.now)],
    figure: undefined,
    why: line(cardLimits.why),
    next: line(cardLimits.next),
    names: Array.from({ length: cardLimits.names }, () => ({ ...line(1), name: "Musselburgh", say: "MUSSEL-bruh" })),
    aloud: [line(8)],
    shots: Array.from({ length: mostShots }, (_, at) => ({
      id: `S1.${at + 1}`,
      text: words(9),
      hold: true,
      cutaway: at === mostShots - 1,
    })),
  };
  const browser = await openBrowser();
  const page = await browser.newPage();
  await page.emulateMedia({ media: "print" });
  for (const paper of ["A4", "Letter"] as const) {
    for (const pocket of [false, true]) {
      await page.setContent(briefPage({ ...brief, cards: [full] }, garden, { paper, pocket }));
      const over = await page.evaluate(() =>
        [...document.querySelectorAll(".card")].map((card) => card.scrollHeight - card.clientHeight),
      );
      expect(over).toEqual(over.map(() => 0));
      expect(over).toHaveLength(pocket ? 4 : 2);
    }
  }
  await browser.close();
});

test("what is to be shown has a box to tick on paper", async () => {
  const browser = await openBrowser();
  const page = await browser.newPage();
  await page.emulateMedia({ media: "print" });
  await page.setContent(briefPage(brief, garden));
  const stops = page.locator("article.stop");
  expect(await stops.count()).toBe(10);
  for (const stop of await stops.all()) {
    const box = await stop.locator("input[type=checkbox]:visible").first().boundingBox();
    expect(box?.width).toBeGreaterThan(5);
    expect(box?.height).toBeCloseTo(box?.width ?? 0, 0);
  }
  await browser.close();
});

/** Each page drawn at 50 dots to the inch, in grey. */
async function pictures(pdf: string): Promise<readonly { ink: number; solid: number; edge: number }[]> {
  const dots = 50;
  execFileSync("pdftoppm", ["-r", String(dots), "-gray", "-png", pdf, pdf.replace(/\.pdf$/, "-drawn")]);
  const base = path.basename(pdf, ".pdf");
  const files = (await readdir(folder)).filter((file) => file.startsWith(`${base}-drawn`)).sort();
  expect(files.length).toBeGreaterThan(2);
  return Promise.all(
    files.map(async (file) => {
      const { data, info } = await sharp(path.join(folder, file)).raw().toBuffer({ resolveWithObject: true });
      const dark = (x: number, y: number) => 1 - (data[(y * info.width + x) * info.channels] ?? 255) / 255;
      let ink = 0;
      let solid = 0;
      const free = { left: info.width, right: info.width, top: info.height, bottom: info.height };
      const square = Math.round(dots / 2.54);
      for (let y = 0; y < info.height; y += 1) {
        for (let x = 0; x < info.width; x += 1) {
          const here = dark(x, y);
          ink += here;
          if (here < 0.1) continue;
          free.left = Math.min(free.left, x);
          free.right = Math.min(free.right, info.width - 1 - x);
          free.top = Math.min(free.top, y);
          free.bottom = Math.min(free.bottom, info.height - 1 - y);
        }
      }
      for (let y = 0; y + square <= info.height; y += square) {
        for (let x = 0; x + square <= info.width; x += square) {
          let sum = 0;
          for (let dy = 0; dy < square; dy += 1) for (let dx = 0; dx < square; dx += 1) sum += dark(x + dx, y + dy);
          if (sum / square ** 2 > 0.6) solid += 1;
        }
      }
      const edge = (Math.min(free.left, free.right, free.top, free.bottom) / dots) * 25.4;
      return { ink: ink / (info.width * info.height), solid, edge };
    }),
  );
}
