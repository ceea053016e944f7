/** The brief's page in a browser: whole in itself, readable in both schemes, with boxes to tick on paper. */
import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import path from "node:path";
import { HtmlValidate } from "html-validate";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { readPhotos } from "../../src/photos/index.ts";
import { openRecordsFolder, readRecords } from "../../src/records/index.ts";
import { briefPage } from "../../src/site/brief-page.ts";
import { growGarden } from "../../src/timeline/index.ts";
import { makeBrief } from "../../src/tour/index.ts";
import { openBrowser } from "../browser.ts";
import { cardsAround, gardenOf } from "./garden-of.ts";

const today = "2026-07-18";
const axeSource = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
let browser: Browser;
let page: Page;
let html: string;

beforeAll(async () => {
  const folder = await openRecordsFolder(path.join(import.meta.dirname, "../../demo-content"));
  const records = await readRecords(folder, { today });
  const garden = growGarden(records, (await readPhotos(records, folder)).photos);
  html = briefPage(cardsAround(makeBrief(garden, { episode: "2026-07-tour", today }), garden), garden);
  browser = await openBrowser();
});

afterAll(() => browser?.close());

describe("the file itself", () => {
  test("is valid HTML", async () => {
    const report = await new HtmlValidate({
      extends: ["html-validate:recommended"],
      rules: {
        "no-trailing-whitespace": "off",
        "long-title": "off",
        "void-style": "off",
        "doctype-style": "off",
        "no-inline-style": "error",
        // On a phone the rows are lines of text, and the roles keep them a table.
        "no-redundant-role": "off",
      },
    }).validateString(html);
    expect(
      report.results.flatMap(({ messages }) => messages.map(({ line, message }) => `${line}: ${message}`)),
    ).toEqual([]);
  });

  test("asks nothing of the network and runs nothing", () => {
    expect(html).not.toMatch(/<script|<link|<img|<iframe|\son\w+=|@import/i);
    // Its letters, and the mark along its edge, are in the page itself.
    expect(html.replace(/url\((?:data:font\/woff2;base64,[^)]*|#tape)\)/g, "")).not.toMatch(/url\(|https?:\/\//);
    const style = /<style>([\s\S]*)<\/style>/.exec(html)?.[1] ?? "";
    const hash = createHash("sha256").update(style).digest("base64");
    expect(html).toContain(
      `content="default-src 'none'; style-src 'sha256-${hash}'; font-src data:; base-uri 'none'; form-action 'none'"`,
    );
  });

  test("is marked private and carries no position", () => {
    expect(html).toContain("<strong>Private</strong>");
    expect(html).toContain('<meta name="robots" content="noindex, nofollow">');
    expect(html).not.toMatch(/54\.3\d*|-5\.6\d*|latitude|longitude/i);
  });

  test("keeps what records write as text", async () => {
    const files = {
      "beds/b.md": '---\ntitle: "<img src=x onerror=alert(1)>"\nin use since: 2026-01-01\n---\n',
      "varieties/v.md": '---\ntitle: "</style><script>alert(1)</script>"\ncrop: leek\n---\n',
      "notes/2026-03-01.md": "- planted 3 v in b\n",
    };
    const garden = await gardenOf(files, "2026-06-01");
    const hostile = briefPage(
      cardsAround(makeBrief(garden, { day: "2026-06-01", today: "2026-06-01" }), garden),
      garden,
    );
    expect(hostile).not.toMatch(/<img|<script/);
    expect(hostile.match(/<\/style>/g)).toHaveLength(1);
  });
});

describe("on a screen", () => {
  test.each([
    ["phone", 390, 844, "light"],
    ["phone", 390, 844, "dark"],
    ["desk", 1280, 900, "light"],
    ["desk", 1280, 900, "dark"],
  ] as const)(
    "%s %i × %i, %s: no violation, no sideways scroll, large targets",
    async (_, width, height, colorScheme) => {
      await open({ viewport: { width, height }, colorScheme });
      expect(await axeViolations()).toEqual([]);
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
      ).toBe(0);
      const heights = await page.$$eval(".show label, .ticks label", (all) =>
        all.map((one) => one.getBoundingClientRect().height),
      );
      expect(Math.min(...heights)).toBeGreaterThanOrEqual(48);
      await page.close();
    },
  );

  test("boxes can be ticked by hand and by keyboard without a script", async () => {
    await open({ viewport: { width: 390, height: 844 } });
    await page.getByRole("checkbox").first().check();
    await page.keyboard.press("Tab");
    await page.keyboard.press("Space");
    expect(await page.locator("input:checked").count()).toBe(2);
    await page.close();
  });
});

test("each thing that must be shown keeps its box on paper", async () => {
  await open({});
  await page.emulateMedia({ media: "print" });
  const musts = page.locator(".show .must");
  expect(await musts.count()).toBeGreaterThan(5);
  expect(await page.locator(".show .must input:visible").count()).toBe(await musts.count());
  await page.close();
});

async function open(options: Parameters<Browser["newPage"]>[0]): Promise<void> {
  page = await browser.newPage(options);
  const requests: string[] = [];
  page.on("request", (request) => requests.push(request.url()));
  await page.setContent(html);
  expect(requests.filter((url) => !url.startsWith("data:"))).toEqual([]);
}

async function axeViolations(): Promise<readonly string[]> {
  await page.evaluate(axeSource);
  const violations = await page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run(): Promise<{ violations: { id: string; nodes: { target: unknown[] }[] }[] }> };
    };
    return (await axe.run()).violations;
  });
  return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${String(target)}`));
}
