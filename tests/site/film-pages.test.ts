/** The page of a film with captions: what is said, when, and nothing that the records keep back. */
import { cp, mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Browser } from "playwright-core";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import {
  type BuiltSites,
  buildSites,
  type FilmTexts,
  publicCaptions,
  publicGarden,
  type StaticServer,
  serveFolder,
} from "../../src/site/index.ts";
import { filmAt } from "../../src/site/page-data/film-time.ts";
import { openCaptions } from "../../src/wrap/index.ts";
import { openBrowser } from "../browser.ts";
import { brokenLinks, filmTexts, pagesOf, photoCopies, readGarden, today } from "./built-site.ts";
import { axeViolations, htmlComplaints } from "./page-checks.ts";

/** Times in seconds; each caption stands until the next. */
const JUNE: readonly (readonly [number, string])[] = [
  [0, "Hello. It is the twentieth of June and it has rained at last."],
  [10, "The south wall. Six Crown Prince, and they have taken."],
  [16, "<b>Crown Prince</b> <script>alert(1)</script>is the grey one."],
  [22, "&lt;img src=x onerror=alert(2)&gt; It wants a metre each way."],
  [28, "Beside it stands the thief proof bed, and you will not see it."],
  [32, "In the beef proof red there is something to come."],
  [36, "Grandfathers show leeks are nothing for a film."],
  [40, "And the north wall. Twenty musselborough leeks, all of one sowing."],
  [50, "I had a quarrel with the man next door about the fence again."],
  [56, "They like it wet, and they have had it wet."],
  [70, "These are for the judges, and nobody else has them."],
  [80, "They stand as tall as my knee."],
  [90, "Back at the south wall, the squash is in the sun now."],
  [100, "That is all of it. See you in July."],
];

const FILES: Readonly<Record<string, string>> = {
  "episodes/june-tour/index.md":
    '---\ntitle: June tour\ndate: 2026-06-20\npublished: 2026-06-23\nstatus: published\nlink: "https://films.example/watch?v=june"\nstops:\n  - {bed: south-wall, at: "0:10"}\n  - {bed: north-wall, at: "0:40"}\n  - {bed: thief-proof-bed, at: "1:10"}\n  - {bed: south-wall, at: "1:30"}\n---\n',
  "episodes/june-tour/captions.vtt": vtt(JUNE),
  "episodes/no-address/index.md":
    "---\ntitle: A film without an address\ndate: 2026-06-20\nstatus: published\nstops: [south-wall]\n---\n",
  "episodes/no-address/captions.vtt": vtt([
    [0, "The south wall once more."],
    [5, "Six Crown Prince."],
  ]),
  "episodes/july-tour/captions.vtt": vtt([[0, "The surprise behind the curtain is a walnut."]]),
};

function vtt(cues: readonly (readonly [number, string])[]): string {
  const stamp = (seconds: number) => `00:0${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}.000`;
  const blocks = cues.map(
    ([at, text], index) => `${stamp(at)} --> ${stamp(cues[index + 1]?.[0] ?? at + 5)}\n${text}\n`,
  );
  return `WEBVTT\n\n${blocks.join("\n")}`;
}

let folder: string;
let films: FilmTexts;
let sites: BuiltSites;
let server: StaticServer;
let browser: Browser;
let pages: ReadonlyMap<string, Document>;

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "plotreel-films-"));
  const recordsDir = path.join(folder, "records");
  await cp(path.resolve("tests/gardens/two-walls"), recordsDir, { recursive: true });
  for (const [file, text] of Object.entries(FILES)) {
    await mkdir(path.dirname(path.join(recordsDir, file)), { recursive: true });
    await writeFile(path.join(recordsDir, file), text);
  }
  for (const [bed, red] of [
    ["south-wall", 60],
    ["north-wall", 90],
    ["thief-proof-bed", 120],
  ] as const) {
    const photo = sharp({ create: { width: 1200, height: 800, channels: 3, background: { r: red, g: 120, b: 40 } } });
    await mkdir(path.join(recordsDir, "photos", bed), { recursive: true });
    await photo.jpeg().toFile(path.join(recordsDir, "photos", bed, "2026-06-20.jpg"));
  }
  const garden = await readGarden(recordsDir);
  const cacheDir = path.join(folder, "cache");
  films = {
    ...(await filmTexts(garden, recordsDir)),
    glossary: [{ name: "Thief-proof bed", heardAs: ["beef proof red"] }],
  };
  sites = await buildSites(garden, {
    outDir: path.join(folder, "out"),
    cacheDir,
    today,
    photos: await photoCopies(garden, recordsDir, cacheDir),
    briefs: [],
    films,
  });
  pages = await pagesOf(sites.publicDir);
  server = await serveFolder(sites.publicDir, { base: "/garden/" });
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
  await rm(folder, { recursive: true, force: true });
});

const june = () => pages.get("episodes/june-tour/index.html") as Document;
const textOf = (element: Element | null | undefined) => element?.textContent?.replace(/\s+/gu, " ").trim() ?? "";

describe("what is said", () => {
  it("stands on the page in order, with its times and names set right", () => {
    const said = [...june().querySelectorAll(".transcript p")].map(textOf);
    expect(said[0]).toBe("0:00 Hello. It is the twentieth of June and it has rained at last.");
    expect(said.join(" ")).toContain("Six Crown Prince, and they have taken. Crown Prince is the grey one.");
    expect(said.join(" ")).toContain("Twenty Musselburgh leeks, all of one sowing.");
    expect(said.join(" ")).toContain("They like it wet, and they have had it wet.");
    expect(said.join(" ")).toContain("See you in July.");
  });

  it("says nothing that the records keep back, however it was said", async () => {
    const bytes = await readFile(path.join(sites.publicDir, "episodes/june-tour/index.html"), "utf8");
    const secrets = [/thief/iu, /beef proof/iu, /grandfather/iu, /quarrel/iu, /judges/u, /tall as my knee/u];
    expect(secrets.filter((secret) => secret.test(bytes))).toEqual([]);
    expect(pages.has("episodes/july-tour/index.html")).toBe(false);
    for (const [file, page] of pages) expect(page.body.textContent, file).not.toContain("surprise");
  });

  it("brings along no markup of a caption", () => {
    const main = june().querySelector("main");
    expect(main?.querySelectorAll("b, img[src='x'], [onerror]")).toHaveLength(0);
    expect(main?.textContent).not.toContain("alert(1)");
    expect(main?.querySelectorAll("script")).toHaveLength(1);
  });
});

describe("times", () => {
  it("open the film there, from chapters, stops and the page of a variety", () => {
    const chapters = [...june().querySelectorAll(".chapters li")].map((item) => [
      textOf(item),
      ...[...item.querySelectorAll("a")].map((link) => link.getAttribute("href")),
    ]);
    expect(chapters[0]).toEqual([
      expect.stringMatching(/^0:00 /u),
      "https://films.example/watch?v=june&t=0#t=0",
      "#t-0",
    ]);
    expect(chapters).toContainEqual([
      expect.stringMatching(/^0:40 North wall/u),
      "https://films.example/watch?v=june&t=40#t=40",
      "#t-40",
    ]);
    const seen = [...(pages.get("varieties/crown-prince/index.html")?.querySelectorAll(".seen li") ?? [])];
    const inJune = seen.find((item) => textOf(item).startsWith("June tour"));
    expect(textOf(inJune)).toBe("June tour Filmed on 20 June 2026 0:10 South wall 1:30 South wall 0:12 first named");
    expect(inJune?.querySelector('a[href="https://films.example/watch?v=june&t=12#t=12"]')).not.toBeNull();
  });

  it("lead into the transcript where the film has no address", () => {
    const seen = [...(pages.get("varieties/crown-prince/index.html")?.querySelectorAll(".seen li") ?? [])];
    const item = seen.find((one) => textOf(one).startsWith("A film without"));
    expect(item?.querySelector(".stop:last-child a")?.getAttribute("href")).toBe("/garden/episodes/no-address/#t-0");
  });

  it("are told of a film without captions as its record has them", () => {
    const may = pages.get("episodes/may-tour/index.html");
    expect(may?.querySelector(".transcript, .chapters, .named, script")).toBeNull();
    expect(textOf(may?.querySelector(".stops h3"))).toBe("1 South wall 1:05");
  });

  it("go after what an address has already", () => {
    expect(filmAt("https://films.example/w?v=1&t=9", 83.9)).toBe("https://films.example/w?v=1&t=83#t=83");
    expect(filmAt("https://films.example/#/watch/june", 5)).toBe("https://films.example/?t=5#/watch/june");
  });
});

describe("the page beside it", () => {
  it("shows each variety at the stop where it is named, with source and disclosure", () => {
    const plates = [...june().querySelectorAll(".stops > li")].map((stop) => [
      textOf(stop.querySelector("h3")),
      ...[...stop.querySelectorAll(".small-plate")].map((plate) =>
        [".name", ".from", ".from:last-child"].map((part) => textOf(plate.querySelector(part))).join(", "),
      ),
    ]);
    expect(plates).toEqual([
      [
        "1 South wall 0:10",
        "Crown Prince squash new, Drift Lane Seeds, 2026, commission link: this garden earns when you buy, 0:12",
      ],
      ["2 North wall 0:40", "Musselburgh leek new, Drift Lane Seeds, bought in 2025, 0:44"],
      ["3 South wall 1:30"],
    ]);
    expect(june().querySelector(".named")).toBeNull();
  });

  it("shows the photos of that day, and none of a private bed", () => {
    const shown = [...june().querySelectorAll("main img")].map((image) => image.getAttribute("alt"));
    expect(shown).toEqual(["South wall, 20 June 2026", "North wall, 20 June 2026"]);
  });

  it("carries the film as structured data, with the fields that results of films ask for", () => {
    const data = JSON.parse(june().querySelector('script[type="application/ld+json"]')?.textContent ?? "");
    expect(data).toMatchObject({
      "@type": "VideoObject",
      name: "June tour",
      thumbnailUrl: [expect.stringMatching(/^https:\/\/garden\.example\/garden\/photos\//u)],
      uploadDate: "2026-06-23",
      duration: "PT1M45S",
      url: "https://films.example/watch?v=june",
    });
    expect(data.description).toContain("commission");
    expect(data.hasPart.length).toBeGreaterThanOrEqual(3);
    expect(data.hasPart[1]).toEqual({
      "@type": "Clip",
      name: expect.stringContaining("wall"),
      startOffset: expect.any(Number),
      endOffset: expect.any(Number),
      url: expect.stringMatching(/^https:\/\/films\.example\/watch\?v=june&t=\d+#t=\d+$/u),
    });
  });

  it("is valid HTML without a broken link or anchor", async () => {
    expect(await brokenLinks(sites.publicDir, "/garden/")).toEqual([]);
    for (const file of ["episodes/june-tour", "episodes/no-address", "varieties/crown-prince"])
      expect(await htmlComplaints(path.join(sites.publicDir, file, "index.html"))).toEqual([]);
  });
});

describe("in a browser", () => {
  it("narrows what is said to a word, and opens it again for a jump", async () => {
    const page = await browser.newPage();
    const refused: string[] = [];
    const elsewhere: string[] = [];
    page.on("console", (message) => {
      if (message.type() === "error") refused.push(message.text());
    });
    page.on("dialog", (dialog) => {
      refused.push(dialog.message());
      void dialog.dismiss();
    });
    page.on("request", (request) => {
      if (new URL(request.url()).origin !== new URL(server.url).origin) elsewhere.push(request.url());
    });
    const address = new URL("episodes/june-tour/", server.url).href;
    await page.goto(address);
    const paragraphs = page.locator(".transcript p").filter({ visible: true });
    const all = await paragraphs.count();
    await page.getByLabel("Find a word in it").fill("LEEKS");
    expect(await paragraphs.allTextContents()).toEqual([expect.stringContaining("Twenty Musselburgh leeks")]);
    expect(await page.getByRole("status").textContent()).toBe("Said once.");
    expect(new URL(page.url()).searchParams.get("said")).toBe("LEEKS");
    await page.reload();
    expect(await paragraphs.count()).toBe(1);
    await page.getByLabel("Find a word in it").fill("nasturtium");
    expect(await page.getByRole("status").textContent()).toBe("Nobody says that in this film.");
    await page.getByText("Chapters", { exact: true }).click();
    await page.locator(".chapters a[href='#t-0']").click();
    expect(await paragraphs.count()).toBe(all);
    expect([refused, elsewhere]).toEqual([[], []]);
    await page.close();
  });

  it("shows everything without scripts", async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(new URL("episodes/june-tour/#t-40", server.url).href);
    expect(await page.getByText("Twenty Musselburgh leeks").isVisible()).toBe(true);
    expect(await page.getByText("Find a word in it").isVisible()).toBe(false);
    await context.close();
  });

  it.each([
    [390, "light"],
    [390, "dark"],
    [1280, "light"],
    [1280, "dark"],
  ] as const)("is open to everyone: %d pixels, %s", async (width, colorScheme) => {
    const page = await browser.newPage({ viewport: { width, height: 844 }, colorScheme });
    for (const address of ["episodes/june-tour/?said=wet", "episodes/june-tour/#t-40", "varieties/crown-prince/"]) {
      await page.goto(new URL(address, server.url).href);
      expect(await axeViolations(page), address).toEqual([]);
    }
    await page.close();
  });
});

describe("captions for viewers", () => {
  it("are the file itself where nothing is kept back", async () => {
    const garden = await readGarden(path.resolve("tests/gardens/two-beds"));
    const captions = new Map(
      [...garden.episodes.keys()].map((id) => [id, { file: "c.vtt", bytes: Buffer.from(vtt(JUNE)) }]),
    );
    const open = publicGarden(garden);
    const shown = publicCaptions(garden, open, { captions }).captions;
    expect([...shown.keys()]).toEqual([...open.episodes.keys()]);
    for (const [id, file] of shown) expect(file).toBe(captions.get(id));
  });

  it("keep the time of every caption that stays", async () => {
    const garden = await readGarden(path.join(folder, "records"));
    const { captions, glossary } = publicCaptions(garden, publicGarden(garden), films);
    expect(glossary).toEqual([]);
    expect([...captions.keys()].sort()).toEqual(["june-tour", "no-address"]);
    const { bytes, file } = captions.get("june-tour") as { bytes: Uint8Array; file: string };
    expect(openCaptions(file, bytes).cues.map(({ start }) => start / 1000)).toEqual([0, 10, 16, 22, 40, 56, 90, 100]);
  });
});
