/** A viewer's own marks: they stay in the browser, come back, narrow the list, and are not asked about without scripts. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { type BuiltSites, buildSites, type StaticServer, serveFolder } from "../../src/site/index.ts";
import { openBrowser } from "../browser.ts";
import { readGarden, today } from "./built-site.ts";

let folder: string;
let sites: BuiltSites;
let server: StaticServer;
let browser: Browser;

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "plotreel-grown-"));
  const garden = await readGarden(path.resolve("tests/gardens/two-beds"));
  sites = await buildSites(garden, {
    outDir: path.join(folder, "out"),
    cacheDir: path.join(folder, "cache"),
    today,
    photos: new Map(),
    briefs: [],
  });
  server = await serveFolder(sites.publicDir);
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
  await rm(folder, { recursive: true, force: true });
});

it("keeps a mark in the browser, shows it in the list, and narrows the list to it", async () => {
  const page = await browser.newPage();
  const asked: string[] = [];
  const refused: string[] = [];
  page.on("request", (request) => asked.push(`${request.method()} ${new URL(request.url()).origin}`));
  page.on("console", (message) => {
    if (message.type() === "error") refused.push(message.text());
  });
  await page.goto(new URL("varieties/", server.url).href);
  expect(await page.getByLabel("What I grow").isVisible()).toBe(false);

  await page.goto(new URL("varieties/musselburgh/", server.url).href);
  await page.getByLabel("I grow this").check();
  expect(await page.getByRole("status").textContent()).toBe("Kept in this browser and sent nowhere.");
  await page.reload();
  expect(await page.getByLabel("I grow this").isChecked()).toBe(true);

  await page.goto(new URL("varieties/", server.url).href);
  const rows = page.locator(".row").filter({ visible: true });
  expect(await rows.count()).toBeGreaterThan(1);
  expect(await page.locator(".row.is-mine").textContent()).toContain("you grow this");
  await page.getByLabel("What I grow").check();
  expect(await rows.count()).toBe(1);
  expect(new URL(page.url()).searchParams.get("mine")).toBe("yes");

  expect(await page.context().cookies()).toEqual([]);
  expect(new Set(asked)).toEqual(new Set([`GET ${new URL(server.url).origin}`]));
  expect(refused).toEqual([]);
  await page.close();
});

it("is not there without scripts", async () => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(new URL("varieties/musselburgh/", server.url).href);
  expect(await page.getByText("I grow this").isVisible()).toBe(false);
  await context.close();
});
