/** The camera page of a viewpoint, in Chromium with its fake camera: overlay, shutter, file input, blinking, no network. */
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Browser, BrowserContext, Page } from "playwright-core";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { publishPhotos, viewpointInName } from "../../src/photos/index.ts";
import { type BuiltSites, buildSites, type StaticServer, serveFolder } from "../../src/site/index.ts";
import { openBrowser } from "../browser.ts";
import {
  height,
  pathOf,
  readPhotographedGarden,
  shots,
  today,
  width,
  writePhotographedGarden,
} from "./photographed-garden.ts";

let recordsDir: string;
let folder: string;
let sites: BuiltSites;
let server: StaticServer;
let browser: Browser;

beforeAll(async () => {
  recordsDir = await writePhotographedGarden(shots.slice(0, 3));
  folder = await mkdtemp(path.join(tmpdir(), "plotreel-camera-"));
  const cacheDir = path.join(folder, "cache");
  const garden = await readPhotographedGarden(recordsDir);
  const { copies } = await publishPhotos(garden.photos, { recordsDir, cacheDir: path.join(cacheDir, "photos") });
  sites = await buildSites(garden, { outDir: path.join(folder, "out"), cacheDir, today, photos: copies, briefs: [] });
  server = await serveFolder(sites.privateDir);
  browser = await openBrowser("--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream");
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
  await rm(folder, { recursive: true, force: true });
  await rm(recordsDir, { recursive: true, force: true });
});

async function openCamera(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(new URL("viewpoints/long-bed/gate/", server.url).href);
  return page;
}

const phone = { viewport: { width: 390, height: 844 }, timezoneId: "Europe/London" } as const;
const newPhoto = () => path.join(recordsDir, pathOf({ day: "2026-04-18", cover: 0 }));

/** What a click saves: the file's name and its bytes. */
async function saved(page: Page, button: string): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: button }).click(),
  ]);
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
}

describe("where the browser may show the camera", () => {
  it("lays the last photo over its picture, as strongly as asked", async () => {
    const context = await browser.newContext(phone);
    const page = await openCamera(context);
    await page.getByRole("button", { name: "Start the camera" }).click();
    await page.getByRole("button", { name: "Take the photo" }).waitFor();
    const last = page.locator(".last");
    expect(await last.evaluate((element) => getComputedStyle(element).opacity)).toBe("0.5");
    await page.getByLabel("How strongly the last photo shows").fill("20");
    expect(await last.evaluate((element) => getComputedStyle(element).opacity)).toBe("0.2");
    expect(await page.locator("video").evaluate((video: HTMLVideoElement) => video.videoWidth)).toBeGreaterThan(0);
    // One over the other, to the pixel.
    expect(await page.locator("video").boundingBox()).toEqual(await last.boundingBox());
    // All that is needed while shooting is on the screen at once.
    const shutter = await page.getByRole("button", { name: "Take the photo" }).boundingBox();
    expect((shutter?.y ?? 9999) + (shutter?.height ?? 0)).toBeLessThanOrEqual(844);
    await context.close();
  });

  it("saves what is seen as a JPEG that ingest knows by its name", async () => {
    const context = await browser.newContext(phone);
    const page = await openCamera(context);
    await page.getByRole("button", { name: "Start the camera" }).click();
    const { name, bytes } = await saved(page, "Take the photo");
    expect(name).toMatch(/^long-bed__gate__\d{4}-\d\d-\d\dT\d\d-\d\d-\d\d\.jpg$/u);
    expect(viewpointInName(name)).toEqual({ bed: "long-bed", viewpoint: "gate" });
    const shot = await sharp(bytes).metadata();
    expect(shot.format).toBe("jpeg");
    expect(shot.width / shot.height).toBeCloseTo(width / height, 2);
    expect(await page.getByRole("status").textContent()).toContain(`Saved as ${name}.`);
    await context.close();
  });
});

describe("where it may not", () => {
  /** As on a phone that opens the page by plain http: no camera for the page. */
  async function withoutCamera(
    how: { reducedMotion?: "reduce" } = {},
  ): Promise<{ context: BrowserContext; page: Page }> {
    const context = await browser.newContext({ ...phone, ...how });
    await context.addInitScript(() => Object.defineProperty(navigator, "mediaDevices", { value: undefined }));
    const page = await openCamera(context);
    await page.locator("input[type=file]").setInputFiles(newPhoto());
    await page.getByRole("button", { name: "Keep" }).waitFor();
    return { context, page };
  }

  it("takes the phone's own photo and lets it take turns with the last one", async () => {
    const { context, page } = await withoutCamera();
    expect(await page.getByRole("button", { name: "Start the camera" }).count()).toBe(0);
    const taken = page.locator("canvas");
    const seen = new Set<boolean>();
    for (let look = 0; look < 20; look++) {
      seen.add(await taken.evaluate((element) => getComputedStyle(element).visibility === "visible"));
      await page.waitForTimeout(100);
    }
    expect(seen).toEqual(new Set([true, false]));
    await page.getByRole("button", { name: "Stop blinking" }).click();
    expect(await taken.evaluate((element) => getComputedStyle(element).visibility)).toBe("visible");
    await context.close();
  });

  it("does not blink for those who asked for less motion", async () => {
    const { context, page } = await withoutCamera({ reducedMotion: "reduce" });
    expect(await page.getByRole("button", { name: "Blink", exact: true }).isVisible()).toBe(true);
    await context.close();
  });

  it("keeps the phone's file byte for byte, under the name that ingest knows", async () => {
    const { context, page } = await withoutCamera();
    const { name, bytes } = await saved(page, "Keep");
    expect(viewpointInName(name)).toEqual({ bed: "long-bed", viewpoint: "gate" });
    expect(bytes.equals(await readFile(newPhoto()))).toBe(true);
    await context.close();
  });

  it("asks again when told so, and saves nothing", async () => {
    const { context, page } = await withoutCamera();
    let downloads = 0;
    page.on("download", () => {
      downloads += 1;
    });
    const [chooser] = await Promise.all([
      page.waitForEvent("filechooser"),
      page.getByRole("button", { name: "Again" }).click(),
    ]);
    await chooser.setFiles(newPhoto());
    await page.getByRole("button", { name: "Keep" }).waitFor();
    expect(downloads).toBe(0);
    await context.close();
  });

  it("keeps a file that the browser cannot show", async () => {
    const { context, page } = await withoutCamera();
    await page.getByRole("button", { name: "Again" }).click();
    await page
      .locator("input[type=file]")
      .setInputFiles({ name: "IMG_1.heic", mimeType: "image/heic", buffer: Buffer.from("not a picture") });
    await expect.poll(() => page.getByRole("status").textContent()).toContain("cannot show that photo");
    const { name, bytes } = await saved(page, "Keep");
    expect(name).toMatch(/\.heic$/u);
    expect(bytes.toString()).toBe("not a picture");
    await context.close();
  });
});

it("says how to go on without scripts", async () => {
  const context = await browser.newContext({ ...phone, javaScriptEnabled: false });
  const page = await openCamera(context);
  expect(await page.locator(".by-hand").textContent()).toContain("photos/long-bed/gate");
  expect(await page.getByRole("button").count()).toBe(0);
  await context.close();
});

it("works without a network after the first load, camera and last photo too", async () => {
  const context = await browser.newContext(phone);
  const page = await openCamera(context);
  await expect
    .poll(() => page.locator(".offline").textContent(), { timeout: 20_000 })
    .toContain("works without a signal");
  await context.setOffline(true);
  await page.reload();
  expect(await page.locator(".last").evaluate((picture: HTMLImageElement) => picture.naturalWidth)).toBeGreaterThan(0);
  await page.getByRole("button", { name: "Start the camera" }).click();
  expect((await saved(page, "Take the photo")).bytes.length).toBeGreaterThan(1000);
  await page.goto(new URL("viewpoints/", server.url).href);
  expect(await page.getByRole("link", { name: "Long Bed, Gate" }).count()).toBe(1);
  await context.close();
});
