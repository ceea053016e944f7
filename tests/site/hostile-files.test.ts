/**
 * Files that somebody made to do harm: pictures that are none, names that lead elsewhere, links out of the folder, captions,
 * sidecars and data that try to run. The real command reads and publishes them all in one garden.
 */
import { existsSync } from "node:fs";
import { mkdir, mkdtemp, readFile, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { crc32, deflateSync } from "node:zlib";
import { parse } from "csv-parse/sync";
import ICAL from "ical.js";
import { parseHTML } from "linkedom";
import type { Browser } from "playwright-core";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serveFolder } from "../../src/site/index.ts";
import { openBrowser } from "../browser.ts";
import { type Ran, run } from "../cli/run.ts";
import { filesOf, pagesOf } from "./built-site.ts";

const SCRIPT = "<script>globalThis.ran=1</script>";
const PICTURE = "<img src=x onerror=globalThis.ran=1>";

/** Longest time for everything, on a slow and busy machine. A hang would take for ever. */
const PATIENCE = 240_000;

const FILES: Readonly<Record<string, string>> = {
  "garden.md": `---\nname: Hostile garden\nlanguage: en-GB\ntime zone: Europe/London\naddress: https://garden.example\nweights: { __proto__: { polluted: 1 }, constructor: 1 }\n---\n`,
  "beds/long-bed.md": `---\ntitle: "Long bed"\nviewpoints: [{ name: ../../../../../escaped }, { name: ".." }, { name: "a/b" }, { name: "nul\\0name" }, { name: gate }]\n---\n`,
  "beds/turned\u202efdp.md": "---\ntitle: A turned name\n---\n",
  "beds/%2e%2e%2f%2e%2e%2fescaped.md": "---\ntitle: Escaped by percent\n---\n",
  "beds/..\\..\\escaped.md": "---\ntitle: Escaped by backslash\n---\n",
  [`varieties/${"long-".repeat(40)}name.md`]: "---\ntitle: A long file name\ncrop: pea\n---\n",
  "varieties/formula.md": `---\ntitle: "=cmd|'/c calc'!A1"\ncrop: pea\nsource: { name: "@SUM(1+1)*cmd|'/c calc'!A1" }\nsay it as: "+1"\nbotanical: "\\t=1+1"\nalso spelled: ["-2+3"]\n---\n`,
  "varieties/lines.md": `---\ntitle: "Two\\nEND:VEVENT\\r\\nBEGIN:VEVENT\\r\\nSUMMARY:injected"\ncrop: pea\ndays to maturity: 60 from sowing\n---\n`,
  "varieties/search.md": `---\ntitle: Searchable\ncrop: pea\n---\n\nZyzzogeton ${PICTURE} ${SCRIPT} after it.\n`,
  "notes/2026-05-16.md": `---\nbed: long-bed\n---\n\n- planted 4 Searchable\n- sowed 5 Two\n- planted 3 ${"Very long name ".repeat(60)}\n- planted 2 Nul\0name\n- did: ${"x".repeat(100_000)}\n\nNul\0 byte in the story of Searchable.\n`,
  // Two megabytes in one line, and ten thousand short ones.
  "notes/2026-05-17.md": `---\nbed: long-bed\n---\n\n${"word ".repeat(400_000)}\n`,
  "notes/2026-05-18.md": `---\nbed: long-bed\n---\n\n${"a\n\n".repeat(10_000)}\n`,
  "notes/2026-05-19.md": `---\nbed: long-bed\n---\n\n${Array.from({ length: 2000 }, (_, depth) => `${"  ".repeat(depth)}- deeper`).join("\n")}\n`,
  "notes/2026-05-20.md": `---\nbed: long-bed\n---\n\n${"[a](".repeat(10_000)}${"`".repeat(10_001)}${"<b>".repeat(10_000)}${"![".repeat(10_000)}\n`,
  "episodes/film/index.md": `---\ntitle: "</script>${SCRIPT}]]>&amp;"\ndate: 2026-06-13\nstatus: published\nlink: "https://films.example/film?a=1&b=</script>${SCRIPT}"\nstops: [{ bed: long-bed, at: "0:05" }]\n---\n\n${SCRIPT} ${PICTURE}\n`,
  "episodes/film/film.vtt": `WEBVTT - ${SCRIPT}\n\nSTYLE\n::cue { background: url(https://evil.example/x) }\n\n00:00:05.000 --> 00:00:09.000\n${SCRIPT}<v Bob><c.x>This is Searchable ${PICTURE}</c></v> \u202egnp.exe\n\n00:00:10.000 --> 00:00:14.000\n&lt;script&gt;globalThis.ran=1&lt;/script&gt; and more of it\n`,
  "episodes/planned/index.md": `---\ntitle: "${SCRIPT.replaceAll('"', "")} planned"\ndate: 2026-07-19\nstatus: planned\nstops: [long-bed, ../../../etc/passwd]\nmust: ["</script>${SCRIPT}"]\n---\n`,
  "photos/long-bed/gate/2026-06-13.md": `---\ncaption: "${SCRIPT}${PICTURE} \u202egnp.exe"\ncredit: "${SCRIPT}"\n---\n`,
  "weather/rain.csv": `date,rain\n2026-05-01,"${SCRIPT}"\n=1+1,2\n`,
  "trials/one.md": `---\ntitle: "${SCRIPT}"\nquestion: "${PICTURE}"\nmeasure: weight\nstatus: running\narms: [{ name: "${SCRIPT}", variety: search, bed: long-bed }, { name: b, variety: formula, bed: long-bed }]\n---\n`,
};

let folder: string;
let recordsDir: string;
let checked: Ran;
let published: Ran;
let took: number;
let browser: Browser;

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "plotreel-hostile-files-"));
  const cwd = path.join(folder, "a/b/c/d/e");
  recordsDir = path.join(cwd, "content");
  for (const [file, text] of Object.entries(FILES)) await put(file, text);
  await putPhotos();
  await writeFile(path.join(folder, "secret.md"), "---\ntitle: Outside the folder\n---\n");
  await writeFile(path.join(folder, "secret.jpg"), await drawn().jpeg().toBuffer());
  await mkdir(path.join(folder, "secrets"));
  await writeFile(path.join(folder, "secrets/outside.md"), "---\ntitle: Outside too\n---\n");
  for (const [target, link] of [
    ["secret.md", "beds/leads-out.md"],
    ["secret.jpg", "photos/long-bed/gate/2026-06-20.jpg"],
    ["secrets", "varieties/leads-out"],
    ["secret.md", "episodes/planned/other.vtt"],
    ["a/b/c/d/e/content", "notes/round"],
  ] as const)
    await symlink(path.join(folder, target), path.join(recordsDir, link));
  const began = performance.now();
  checked = await run(["check"], { cwd });
  // Links lead out of the records, so something of it is in doubt.
  published = await run(["publish", "--hold-back"], { cwd });
  took = performance.now() - began;
  browser = await openBrowser();
}, PATIENCE);

afterAll(async () => {
  await browser?.close();
  await rm(folder, { recursive: true, force: true });
});

async function put(file: string, content: string | Uint8Array): Promise<void> {
  const target = path.join(recordsDir, ...file.split("/"));
  await mkdir(path.dirname(target), { recursive: true });
  await writeFile(target, content);
}

function drawn(width = 640, height = 480) {
  return sharp({ create: { width, height, channels: 3, background: { r: 60, g: 120, b: 40 } } });
}

/** A whole PNG of one colour, one bit a pixel: a few bytes that unpack to hundreds of megabytes. */
function flatPng(width: number, height: number): Buffer {
  const chunk = (type: string, data: Buffer) => {
    const body = Buffer.concat([Buffer.from(type, "latin1"), data]);
    const frame = Buffer.alloc(8);
    frame.writeUInt32BE(data.length, 0);
    frame.writeUInt32BE(crc32(body), 4);
    return Buffer.concat([frame.subarray(0, 4), body, frame.subarray(4)]);
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([1, 0, 0, 0, 0], 8);
  const rows = deflateSync(Buffer.alloc((Math.ceil(width / 8) + 1) * height));
  return Buffer.concat([
    Buffer.from("\x89PNG\r\n\x1a\n", "latin1"),
    chunk("IHDR", head),
    chunk("IDAT", rows),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

const SVG = `<svg xmlns="http://www.w3.org/2000/svg" width="400" height="300" onload="globalThis.ran=1"><script>globalThis.ran=1</script><image href="file:///etc/passwd" width="10" height="10"/></svg>`;

async function putPhotos(): Promise<void> {
  const gate = "photos/long-bed/gate";
  const jpeg = await drawn().jpeg().toBuffer();
  await put(`${gate}/2026-06-13.jpg`, Buffer.concat([jpeg, Buffer.from(`\n<html>${SCRIPT} polyglot</html>`)]));
  await put(`${gate}/2026-06-14.jpg`, SVG);
  await put(`${gate}/2026-06-14.svg`, SVG);
  await put(`${gate}/2026-06-15.png`, flatPng(50_000, 50_000));
  await put(`${gate}/2026-06-16.png`, flatPng(15_000, 15_000));
  await put(`${gate}/2026-06-17.jpg`, `GIF89a/*${" ".repeat(40)}*/=1;globalThis.ran=1;`);
  await put(`${gate}/2026-06-18.jpg`, `<html>${SCRIPT}</html>`);
  await put(`${gate}/2026-06-19.jpg`, await drawn(1, 8).jpeg().toBuffer());
  await put(`${gate}/${"\u202e"}gpj.2026-06-21.jpg`, jpeg);
  await put(`${gate}/2026-06-22 ..\\..\\escaped${PICTURE.replaceAll("/", "")}.jpg`, jpeg);
}

function inOut(site: "public" | "private"): string {
  return path.join(published.cwd, "out", site);
}

describe("a garden full of hostile files", () => {
  it("is read and published in good time, and the good in it is there", () => {
    expect(checked.exitCode, checked.err).toBe(0);
    expect(published.exitCode, published.err).toBe(0);
    expect(took).toBeLessThan(PATIENCE / 2);
    expect(existsSync(path.join(inOut("public"), "varieties/search/index.html"))).toBe(true);
  });

  it("writes nothing outside its own folder, and no file that a name leads elsewhere", async () => {
    const files = await filesOf(folder);
    expect(files.filter((file) => file.startsWith("a/b/c/d/e/") === false)).toEqual([
      "secret.jpg",
      "secret.md",
      "secrets/outside.md",
    ]);
    for (const site of ["public", "private"] as const) {
      for (const file of await filesOf(inOut(site))) expect(file).not.toMatch(/(?:^|\/)\.\.?(?:\/|$)|\\|\0|\u202e/u);
    }
  });

  it("says of each bad file what is wrong with it, and reads nothing through a link that leads out", async () => {
    const gate = "photos/long-bed/gate";
    for (const [file, rule] of [
      [`${gate}/2026-06-14.jpg`, "photo/not-a-picture"],
      [`${gate}/2026-06-14.svg`, "folder/not-a-photo"],
      [`${gate}/2026-06-18.jpg`, "photo/not-a-picture"],
      ["beds/leads-out.md", "folder/link-outside"],
      [`${gate}/2026-06-20.jpg`, "folder/link-outside"],
      ["varieties/leads-out", "folder/link-outside"],
      ["episodes/planned/other.vtt", "folder/link-outside"],
      ["notes/round", "folder/link-loop"],
      ["notes/2026-05-17.md", "text/very-long"],
    ] as const)
      expect(checked.out, file).toMatch(new RegExp(`^${file.replaceAll(".", "\\.")}:\\d+:\\d+ \\w+ ${rule}$`, "mu"));
    expect(published.err).toContain(`${gate}/2026-06-15.png:1:1 warning photo/too-large`);
    expect(published.err).toContain(`${gate}/2026-06-17.jpg:1:1 warning photo/damaged`);
    expect(checked.out).toContain("This link leads out of the records folder, so it was not followed.");
    for (const site of ["public", "private"] as const) {
      for (const [file, page] of await pagesOf(inOut(site)))
        expect(page.documentElement?.textContent, file).not.toContain("Outside");
    }
  });

  it("publishes pictures as pictures: nothing of what was hung onto one or written into it", async () => {
    const photos = path.join(inOut("public"), "photos");
    const files = await filesOf(photos);
    expect(files.length).toBeGreaterThan(4);
    for (const file of files) {
      const bytes = await readFile(path.join(photos, file));
      expect(bytes.includes("polyglot"), file).toBe(false);
      expect(bytes.includes("script"), file).toBe(false);
      expect((await sharp(bytes).metadata()).format).toBe(file.endsWith(".webp") ? "webp" : "jpeg");
    }
    expect(
      (await filesOf(inOut("public"))).filter((file) => file.endsWith(".svg") && !file.startsWith("_astro/")),
    ).toEqual([]);
  });

  it("adds nothing to the objects everything is made from", () => {
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    expect((globalThis as Record<string, unknown>).ran).toBeUndefined();
  });
});

describe("what programs read of it", () => {
  const text = (file: string) => readFile(path.join(inOut("public"), file), "utf8");

  it("is XML, JSON and a calendar with as many entries as there are", async () => {
    const { document } = parseHTML(await text("feed.xml"));
    expect(document.querySelectorAll("item")).toHaveLength(1);
    expect(document.querySelector("item > title")?.textContent).toBe(`</script>${SCRIPT}]]>&amp;`);
    expect(document.querySelectorAll("script, img")).toHaveLength(0);
    const feed = JSON.parse(await text("feed.json"));
    expect(feed.items[0].content_html).not.toMatch(/<(?:script|img)/u);
    const ahead = await run(["ahead", "--ics", "--weeks", "52"], { cwd: published.cwd, today: "2026-05-20" });
    expect(ahead.exitCode, ahead.err).toBe(0);
    const calendar = await readFile(path.join(published.cwd, "out/ahead.ics"), "utf8");
    expect(calendar).toContain("END:VCALENDAR");
    for (const event of new ICAL.Component(ICAL.parse(calendar)).getAllSubcomponents("vevent")) {
      expect(event.getFirstPropertyValue("uid")).toMatch(/@plotreel$/u);
      expect(event.getFirstPropertyValue("summary")).not.toBe("injected");
    }
  });

  it("is structured data that closes no script", async () => {
    const page = (await pagesOf(path.join(inOut("public"), "episodes/film"))).get("index.html");
    const data = page?.querySelector('script[type="application/ld+json"]')?.textContent ?? "";
    expect(data).not.toContain("<");
    expect(JSON.parse(data)).toMatchObject({ "@type": "VideoObject", name: `</script>${SCRIPT}]]>&amp;` });
  });

  it("is a table without a formula", async () => {
    const rows = parse(await text("varieties.csv"), { bom: true, columns: true }) as Record<string, string>[];
    const cells = rows.flatMap((row) => Object.values(row));
    expect(cells.filter((cell) => /^[\s\u200b-\u200f\ufeff]*[=+\-@\uff1d\uff0b\uff0d\uff20]/u.test(cell))).toEqual([]);
    expect(cells).toContain("'=cmd|'/c calc'!A1");
    expect(cells).toContain("'@SUM(1+1)*cmd|'/c calc'!A1");
    expect(cells.join()).not.toMatch(/[\u202a-\u202e]/u);
  });

  it("holds no NUL and turns no reading direction", async () => {
    for (const site of ["public", "private"] as const) {
      for (const file of await filesOf(inOut(site))) {
        if (!/\.(?:html|json|xml|csv|txt|js)$/u.test(file)) continue;
        const bytes = await readFile(path.join(inOut(site), file), "utf8");
        expect(/\0|[\u202a-\u202e\u2066-\u2069]/u.test(bytes), `${site}/${file}`).toBe(false);
      }
    }
  });
});

describe("in a browser", () => {
  it("runs nothing and asks no other server, on any page of both sites", async () => {
    for (const site of ["public", "private"] as const) {
      const server = await serveFolder(inOut(site));
      const page = await browser.newPage();
      const elsewhere: string[] = [];
      page.on("request", (request) => {
        if (new URL(request.url()).origin !== new URL(server.url).origin) elsewhere.push(request.url());
      });
      for (const file of await filesOf(inOut(site))) {
        if (!file.endsWith(".html")) continue;
        const address = server.url + file.split("/").map(encodeURIComponent).join("/");
        await page.goto(address, { waitUntil: "domcontentloaded", timeout: PATIENCE / 2 });
        expect(
          await page.evaluate(() => (globalThis as Record<string, unknown>).ran),
          `${site}/${file}`,
        ).toBeUndefined();
      }
      expect(elsewhere).toEqual([]);
      await page.close();
      await server.close();
    }
  });

  it("shows what the search finds as words", async () => {
    const server = await serveFolder(inOut("public"));
    const page = await browser.newPage();
    await page.goto(`${server.url}search/`);
    await page.getByRole("searchbox").fill("Zyzzogeton");
    await page.getByText("after it", { exact: false }).first().waitFor();
    expect(await page.locator("main").textContent()).toContain("<img src=x onerror=globalThis.ran=1>");
    expect(await page.locator("main img[src='x']").count()).toBe(0);
    expect((await page.locator("main script").allTextContents()).join()).not.toMatch(/\bran\b/u);
    expect(await page.evaluate(() => (globalThis as Record<string, unknown>).ran)).toBeUndefined();
    await page.close();
    await server.close();
  });
});
