/** Searching the public site: what is found, what never is, and what it costs a viewer. */
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { gunzipSync, gzipSync } from "node:zlib";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Garden } from "../../src/model.ts";
import { closeNames, type Named } from "../../src/site/components/search/close-names.ts";
import { type BuiltSites, buildSites, gatePublicFolder, type StaticServer, serveFolder } from "../../src/site/index.ts";
import { openBrowser } from "../browser.ts";
import { filesOf, photoCopies, readGarden, today } from "./built-site.ts";

const names: readonly Named[] = [
  ["Black Beauty"],
  ["Boothby's Blonde"],
  ["Cavolo Nero", "kah-VOH-loh NAIR-oh"],
  ["Costoluto Fiorentino"],
  ["Crown Prince"],
  ["Musselburgh", "MUSSEL-bruh"],
  ["Rouge Vif d'Étampes"],
  ["Uchiki Kuri", "oo-CHEE-kee KOO-ree"],
].map(([name = "", ...also]) => ({ name, href: `/${name}/`, also }));

/** Titles of the demo garden's varieties, without the other spellings that make finding easier. */
async function demoNames(): Promise<readonly Named[]> {
  const folder = path.resolve("demo-content/varieties");
  const files = await filesOf(folder);
  const texts = await Promise.all(files.map((file) => readFile(path.join(folder, file), "utf8")));
  return texts.map((text) => {
    const name = /^title: *"?(.+?)"?$/mu.exec(text)?.[1] ?? "";
    return { name, href: `/${name}/`, also: [] };
  });
}

/** A letter left out, typed twice, swapped with the next, or the key to its right on a QWERTY keyboard. */
function slipsIn(name: string): readonly string[] {
  const keys = "qwertyuiop asdfghjkl zxcvbnm ";
  return [...name].flatMap((letter, at) => {
    if (!/[a-z]/u.test(letter)) return [];
    const [before, after] = [name.slice(0, at), name.slice(at + 1)];
    const beside = keys[keys.indexOf(letter) + 1]?.trim() || letter;
    return [
      before + after,
      before + letter + letter + after,
      before + after.slice(0, 1) + letter + after.slice(1),
      before + beside + after,
    ];
  });
}

describe("names close to what was typed", () => {
  it.each([
    ["musselburgh", "Musselburgh"],
    ["muselburg", "Musselburgh"],
    ["mussleburgh", "Musselburgh"],
    ["beauty", "Black Beauty"],
    ["blak beuty", "Black Beauty"],
    ["boothbys", "Boothby's Blonde"],
    ["cavalo", "Cavolo Nero"],
    ["etampes", "Rouge Vif d'Étampes"],
    ["rouge viv", "Rouge Vif d'Étampes"],
    ["florentino", "Costoluto Fiorentino"],
    ["uchikki", "Uchiki Kuri"],
    ["oo chee kee", "Uchiki Kuri"],
    ["crown p", "Crown Prince"],
    ["vif d'etamps", "Rouge Vif d'Étampes"],
    ["costoluto & fiorentino", "Costoluto Fiorentino"],
  ])("%s finds %s first", (typed, name) => {
    expect(closeNames(typed, names)[0]?.name).toBe(name);
  });

  // Heard in a film and written down, or typed in haste (from memory; the names are the demo garden's).
  it.each([
    ["bishop of landuff", "Bishop of Llandaff"],
    ["cafe o lay", "Café au Lait"],
    ["kioggia", "Chioggia"],
    ["lobjoits green coz", "Lobjoits Green Cos"],
    ["verte cambray", "Verte de Cambrai"],
    ["rose de lotrec", "Rose de Lautrec"],
    ["turks turbin", "Turk's Turban"],
    ["shantenay", "Chantenay Red Cored"],
    ["tender & true", "Tender and True"],
    ["lingua di fuoca", "Borlotto Lingua di Fuoco"],
    ["whinams industry", "Whinham's Industry"],
  ])("%s finds %s first among the demo garden's", async (typed, name) => {
    expect(closeNames(typed, await demoNames())[0]?.name).toBe(name);
  });

  it("every slip of one letter in any of the demo garden's names finds it first", async () => {
    const all = await demoNames();
    const lost: string[] = [];
    let typed = 0;
    for (const { name } of all) {
      for (const slip of slipsIn(name.toLowerCase())) {
        typed += 1;
        if (closeNames(slip, all)[0]?.name !== name) lost.push(`${slip} for ${name}`);
      }
    }
    expect(lost).toEqual([]);
    expect(typed).toBeGreaterThan(3000);
  });

  it("two neighbouring letters in the wrong order are one slip, two others two", () => {
    const short = [{ name: "Ratte", href: "/ratte/", also: [] }];
    expect(closeNames("artte", short).map(({ name }) => name)).toEqual(["Ratte"]);
    expect(closeNames("tatre", short)).toEqual([]);
  });

  it.each(["", "x", "zzzzzz", "potato"])("%j finds nothing", (typed) => {
    expect(closeNames(typed, names)).toEqual([]);
  });

  it("looks through two thousand names faster than a person types", () => {
    const many = Array.from({ length: 2000 }, (_, n) => ({ name: `Amber Anchor Prize ${n}`, href: "/", also: [] }));
    const began = performance.now();
    closeNames("amebr anchro", many);
    expect(performance.now() - began).toBeLessThan(500);
  });
});

describe("the published search", () => {
  let folder: string;
  let garden: Garden;
  let sites: BuiltSites;
  let browser: Browser;
  let server: StaticServer;

  beforeAll(async () => {
    folder = await mkdtemp(path.join(tmpdir(), "plotreel-search-"));
    const recordsDir = path.resolve("tests/gardens/two-walls");
    const read = await readGarden(recordsDir);
    garden = { ...read, settings: { ...read.settings, base: "/garden/" } };
    const cacheDir = path.join(folder, "cache");
    sites = await buildSites(garden, {
      outDir: path.join(folder, "out"),
      cacheDir,
      today,
      photos: await photoCopies(garden, recordsDir, cacheDir),
      briefs: [],
    });
    server = await serveFolder(sites.publicDir, { base: "/garden/" });
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser?.close();
    await server?.close();
    await rm(folder, { recursive: true, force: true });
  });

  it("knows nothing that is private", async () => {
    expect(await gatePublicFolder(sites.publicDir, garden)).toEqual([]);
    const fragments = (await filesOf(sites.publicDir)).filter((file) => /^pagefind\/fragment\//u.test(file));
    expect(fragments.length).toBeGreaterThan(3);
    const said = await Promise.all(
      fragments.map(async (file) => gunzipSync(await readFile(path.join(sites.publicDir, file))).toString("utf8")),
    );
    expect(said.join()).toMatch(/Uchiki Kuri/u);
    for (const secret of [/grandfather/iu, /thief/iu, /quarrel/iu, /surprise/iu])
      expect(said.join()).not.toMatch(secret);
  });

  it("is of sentences: no choices of a list, heads of tables or marks stand in it, and no lists of pages", async () => {
    const fragments = (await filesOf(sites.publicDir)).filter((file) => /^pagefind\/fragment\//u.test(file));
    const read = await Promise.all(
      fragments.map(async (file) => {
        const text = gunzipSync(await readFile(path.join(sites.publicDir, file))).toString("utf8");
        return JSON.parse(text.slice(text.indexOf("{"))) as { url: string; content: string; meta: { title: string } };
      }),
    );
    for (const { url, content, meta } of read) {
      expect(content, url).not.toMatch(/all crops|all beds|Year ?Amount|Pickings|I grow this|In words|Hollow: raised/u);
      expect(meta.title, url).not.toMatch(/new this year/u);
    }
    for (const list of ["/garden/", "/garden/varieties/", "/garden/beds/", "/garden/search/"])
      expect(read.map(({ url }) => url)).not.toContain(list);
    expect(read.length).toBeGreaterThan(3);
  });

  it("shows a name with its crop, its source and one sentence, varieties before beds", async () => {
    const page = await browser.newPage();
    await page.goto(new URL("search/", server.url).href);
    const field = page.getByRole("searchbox");
    const squash = [...garden.varieties.values()].filter(({ crop, private: own }) => crop === "squash" && !own);
    expect(squash.length).toBeGreaterThan(0);
    await field.fill("which variety is that squash");
    await page.locator(".names-found a").first().waitFor();
    const found = page.locator(".names-found > li");
    for (let at = 0; at < squash.length; at += 1) {
      const plate = found.nth(at);
      expect(squash.map(({ title }) => title)).toContain(await plate.locator(".name a").textContent());
      expect(await plate.locator(".crop").textContent()).toBe("squash");
      expect(await plate.locator(".how").textContent()).toMatch(/\.$/u);
    }
    await page.close();
  });

  it("belongs to the public site only, and brings no boxes and buttons of its own", async () => {
    expect((await filesOf(sites.privateDir)).filter((file) => file.startsWith("pagefind"))).toEqual([]);
    expect((await filesOf(sites.publicDir)).filter((file) => /^pagefind\/.*(?:ui|highlight)/u.test(file))).toEqual([]);
  });

  it("finds pages by their words and names by their sound, below a path, and keeps the question in the address", async () => {
    const page = await browser.newPage();
    const { refused, scripts } = listen(page);
    await page.goto(new URL("search/", server.url).href);
    const field = page.getByRole("searchbox");
    const [variety] = [...garden.varieties.values()].filter((one) => !one.private && one.title.length > 6);
    const title = variety?.title ?? "";
    await field.fill(title.slice(0, 2) + title.slice(3));
    await page.locator(".names-found a").first().waitFor();
    expect(await page.locator(".names-found a").first().textContent()).toBe(title);
    await field.fill(title);
    await page.locator(".pages-found a").first().waitFor();
    expect(await page.locator(".pages-found a").first().getAttribute("href")).toMatch(/^\/garden\//u);
    expect(new URL(page.url()).searchParams.get("q")).toBe(title);
    await page.reload();
    await page.locator(".pages-found a").first().waitFor();
    await field.fill("qqqqqqqq");
    await expect.poll(() => page.getByRole("status").textContent()).toBe("Nothing was found.");
    expect(refused).toEqual([]);
    // All scripts of the heaviest page, compressed as every host sends them.
    expect(scripts.size).toBeGreaterThan(1);
    expect([...scripts.values()].reduce((sum, bytes) => sum + bytes, 0)).toBeLessThan(35 * 1024);
    await page.close();
  });

  function listen(page: Page) {
    const refused: string[] = [];
    const scripts = new Map<string, number>();
    page.on("console", (message) => {
      if (message.type() === "error") refused.push(message.text());
    });
    page.on("response", async (answer) => {
      if (answer.request().resourceType() === "script")
        scripts.set(answer.url(), gzipSync(await answer.body().catch(() => Buffer.alloc(0))).length);
    });
    return { refused, scripts };
  }
});
