/** A small garden with things to keep back and things that would do harm: what comes out of it, byte by byte and in a browser. */
import { cp, mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { parse } from "csv-parse/sync";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Garden } from "../../src/model.ts";
import { type BuiltSites, buildSites, PrivacyBreach, serveFolder } from "../../src/site/index.ts";
import { openBrowser } from "../browser.ts";
import { brokenLinks, filesOf, pagesOf, photoCopies, readGarden, today } from "./built-site.ts";

let folder: string;
let recordsDir: string;
let garden: Garden;
let sites: BuiltSites;

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "plotreel-privacy-"));
  recordsDir = path.join(folder, "records");
  await cp(path.resolve("tests/gardens/two-walls"), recordsDir, { recursive: true });
  await drawPhoto("photos/south-wall/bench/2026-05-25.jpg", { r: 60, g: 90, b: 50 });
  await drawPhoto("photos/south-wall/bench/2026-07-16.jpg", { r: 70, g: 120, b: 50 });
  await drawPhoto("photos/thief-proof-bed/2026-07-15.jpg", { r: 20, g: 40, b: 90 });
  garden = await readGarden(recordsDir);
  sites = await build("out");
});

afterAll(() => rm(folder, { recursive: true, force: true }));

/** A flat picture that says in its EXIF where it was taken. */
async function drawPhoto(file: string, background: { r: number; g: number; b: number }): Promise<void> {
  const target = path.join(recordsDir, file);
  await mkdir(path.dirname(target), { recursive: true });
  const day = path.basename(file, ".jpg").replaceAll("-", ":");
  const picture = sharp({ create: { width: 1200, height: 800, channels: 3, background } })
    .jpeg()
    .withExif({
      IFD0: { Copyright: "Made for a test" },
      IFD2: { DateTimeOriginal: `${day} 08:15:00`, OffsetTimeOriginal: "+01:00" },
      IFD3: {
        GPSLatitudeRef: "N",
        GPSLatitude: "51/1 28/1 5567/100",
        GPSLongitudeRef: "W",
        GPSLongitude: "0/1 54/1 4957/100",
      },
    });
  await writeFile(target, await picture.toBuffer());
}

async function build(name: string): Promise<BuiltSites> {
  const cacheDir = path.join(folder, `${name}-cache`);
  return buildSites(garden, {
    outDir: path.join(folder, name),
    cacheDir,
    today,
    photos: await photoCopies(garden, recordsDir, cacheDir),
    briefs: [{ name: "july-tour", html: "<!doctype html><title>July</title><p>the surprise behind the curtain</p>" }],
  });
}

async function everyByte(siteDir: string): Promise<string> {
  const parts = await Promise.all(
    (await filesOf(siteDir)).map(async (file) => `${file}\n${await readFile(path.join(siteDir, file), "latin1")}`),
  );
  return parts.join("\n");
}

describe("what viewers get", () => {
  it("holds nothing that is private", async () => {
    const bytes = await everyByte(sites.publicDir);
    const secrets = [
      /grandfather/iu,
      /thief/iu,
      /\bshed\b/iu,
      /since 1961/u,
      /quarrel/iu,
      /next door/u,
      /flowerpot/u,
      /surprise/u,
      /not filmed yet/u,
      /july-tour/u,
      /walnut/u,
      /kitchen door/u,
      /51[.,]48/u,
      /0[.,]91377/u,
      /remark to myself/u,
      /0\.9 kg|900 g/u,
      /Made for a test/u,
      /Exif\0\0/u,
      /08:15/u,
    ];
    expect(secrets.filter((secret) => secret.test(bytes))).toEqual([]);
  });

  it("still tells the public half of it", async () => {
    const pages = await pagesOf(sites.publicDir);
    const northWall = pages.get("beds/north-wall/index.html")?.querySelector("main")?.textContent ?? "";
    expect(northWall).toContain("Musselburgh");
    const crownPrince = pages.get("varieties/crown-prince/index.html")?.querySelector("main")?.textContent ?? "";
    expect(crownPrince).toContain("commission link");
    expect(crownPrince).toContain("May tour");
    expect(crownPrince).toContain("1:05");
  });

  it("is all there for the person who films", async () => {
    const bytes = await everyByte(sites.privateDir);
    for (const known of [
      "Thief-proof bed",
      "Shed row",
      "Quarrel with the man next door",
      "flowerpot",
      "the surprise behind the curtain",
      "walnut",
    ])
      expect(bytes).toContain(known);
  });

  it("has no broken link below its own path", async () => {
    expect(await brokenLinks(sites.publicDir, "/garden/")).toEqual([]);
    expect(await brokenLinks(sites.privateDir, "/")).toEqual([]);
  });

  it("does not run what a record brings along", async () => {
    const server = await serveFolder(sites.publicDir, { base: "/garden/" });
    const browser = await openBrowser();
    const page = await browser.newPage();
    const shouts: string[] = [];
    page.on("dialog", (dialog) => {
      shouts.push(dialog.message());
      void dialog.dismiss();
    });
    for (const address of ["varieties/hostile/", "varieties/", "beds/south-wall/", ""]) {
      await page.goto(new URL(address, server.url).href);
      expect(
        await page.locator("img[src='x'], iframe, a[href^='javascript'], [onmouseover], [onerror]").count(),
        address,
      ).toBe(0);
    }
    await page.goto(new URL("varieties/", server.url).href);
    await page.getByLabel("Source").selectOption({ label: '=HYPERLINK("https://evil.example")' });
    expect(await page.locator(".row").filter({ visible: true }).allTextContents()).toEqual([
      expect.stringContaining("onerror"),
    ]);
    await page.goto(new URL("varieties/hostile/", server.url).href);
    expect(await page.getByRole("heading", { level: 1 }).textContent()).toContain("<img src=x onerror=alert(1)>");
    expect(shouts).toEqual([]);
    await browser.close();
    await server.close();
  });

  it("gives spreadsheets no formula to run", async () => {
    const text = await readFile(path.join(sites.publicDir, "varieties.csv"), "utf8");
    expect(text.startsWith("\ufeffvariety,")).toBe(true);
    const rows = parse(text, { bom: true, columns: true }) as Record<string, string>[];
    expect(rows.map(({ variety }) => variety)).toHaveLength(4);
    for (const value of rows.flatMap((row) => Object.values(row))) expect(value).not.toMatch(/^[=+\-@\t\r]/u);
    expect(rows.find(({ variety }) => variety === "Crown Prince")).toMatchObject({
      crop: "squash",
      source: "Drift Lane Seeds",
      "how obtained": expect.stringContaining("commission link"),
      "beds now": "South wall",
      "new this year": "yes",
      page: "https://garden.example/garden/varieties/crown-prince/",
    });
  });
});

describe("the two folders", () => {
  it("come out the same, byte for byte, wherever they are built", async () => {
    const again = await build("again");
    for (const [one, other] of [
      [sites.publicDir, again.publicDir],
      [sites.privateDir, again.privateDir],
    ] as const) {
      expect(await filesOf(other)).toEqual(await filesOf(one));
      for (const file of await filesOf(one))
        expect((await readFile(path.join(other, file))).equals(await readFile(path.join(one, file))), file).toBe(true);
    }
  });

  it("leave no work behind, neither beside them nor in the cache", async () => {
    expect((await filesOf(path.join(folder, "out"))).every((file) => /^(?:public|private)\//u.test(file))).toBe(true);
    const kept = await filesOf(path.join(folder, "out-cache"));
    expect(kept.filter((file) => !/^(?:photos|pages)\//u.test(file) || /(?:^|\/)work-|\.part$/u.test(file))).toEqual(
      [],
    );
  });

  it("stay as they were when the new pages would tell something private", async () => {
    const before = await everyByte(sites.publicDir);
    const careless: Garden = {
      ...garden,
      // Words are looked at before pages are made; an address is taken as it is.
      settings: { ...garden.settings, address: "https://garden.example/51.48213,-0.91377" },
    };
    const attempt = buildSites(careless, {
      outDir: path.join(folder, "out"),
      cacheDir: path.join(folder, "out-cache"),
      today,
      photos: new Map(),
      briefs: [],
    });
    await expect(attempt).rejects.toBeInstanceOf(PrivacyBreach);
    expect(await everyByte(sites.publicDir)).toBe(before);
    expect((await filesOf(path.join(folder, "out"))).every((file) => /^(?:public|private)\//u.test(file))).toBe(true);
  });
});
