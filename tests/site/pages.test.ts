/** The demo garden's two sites, published once and walked page by page: links, validity, policy, order, and use in a browser. */
import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { brokenLinks, filesOf, pagesOf } from "./built-site.ts";
import { type DemoSite, openDemoSite } from "./demo-site.ts";
import { inABrowser } from "./in-a-browser.ts";
import { htmlComplaints } from "./page-checks.ts";

const SCRIPTS = 'script:not([type="application/ld+json"])';

let demo: DemoSite;

beforeAll(async () => {
  demo = await openDemoSite();
}, 600_000);
afterAll(() => demo?.close());

describe("the files", () => {
  it("are a page for every public variety, bed and film, and a field page for every bed", async () => {
    const files = await filesOf(demo.publicDir);
    const published = [...demo.garden.episodes.values()].filter(({ status }) => status === "published");
    expect(files.filter((file) => /^varieties\/.+\/index\.html$/u.test(file))).toHaveLength(demo.garden.varieties.size);
    expect(files.filter((file) => /^beds\/[^/]+\/index\.html$/u.test(file))).toHaveLength(demo.garden.beds.size);
    expect(files.filter((file) => /^episodes\/.+\/index\.html$/u.test(file))).toHaveLength(published.length);
    expect(files).toEqual(expect.arrayContaining(["404.html", "index.html", "varieties.csv", "varieties/filters.css"]));
    expect((await filesOf(demo.privateDir)).filter((file) => /^beds\/[^/]+\/index\.html$/u.test(file))).toHaveLength(
      demo.garden.beds.size,
    );
  });

  it("have no broken link, picture or anchor", async () => {
    expect(await brokenLinks(demo.publicDir, "/")).toEqual([]);
    expect(await brokenLinks(demo.privateDir, "/")).toEqual([]);
  });

  it("are valid HTML", async () => {
    const complaints: string[] = [];
    for (const siteDir of [demo.publicDir, demo.privateDir]) {
      for (const file of await filesOf(siteDir)) {
        if (!file.endsWith(".html")) continue;
        for (const complaint of await htmlComplaints(path.join(siteDir, file))) complaints.push(`${file}:${complaint}`);
      }
    }
    expect(complaints.slice(0, 10)).toEqual([]);
  });

  it("say what is private: every field page and no public one", async () => {
    for (const [file, page] of await pagesOf(demo.privateDir)) {
      if (/^(?:briefs|field-lists)\//u.test(file)) continue;
      expect(page.querySelector(".mark")?.textContent, file).toContain("Private");
      expect(page.querySelector('meta[name="robots"]')?.getAttribute("content"), file).toContain("noindex");
    }
    for (const [file, page] of await pagesOf(demo.publicDir))
      expect(page.querySelector("header .mark"), file).toBeNull();
  });

  it("carry no style of their own, and a script only where a viewer does something", async () => {
    for (const [file, page] of await pagesOf(demo.publicDir)) {
      expect(page.querySelectorAll("[style]"), file).toHaveLength(0);
      const isScripted = page.querySelector(SCRIPTS) !== null;
      expect(isScripted, file).toBe(page.querySelector("main :is(select, input)") !== null);
    }
  });

  it("say in a policy of their own that only what stands in it runs: no script in a line, no evaluation, nothing from elsewhere", async () => {
    for (const siteDir of [demo.publicDir, demo.privateDir]) {
      for (const [file, page] of await pagesOf(siteDir)) {
        const meta = page.querySelector('meta[http-equiv="content-security-policy" i]');
        const policy = new Map(
          (meta?.getAttribute("content") ?? "").split(";").map((part) => {
            const [name = "", ...sources] = part.trim().split(/\s+/u);
            return [name, sources];
          }),
        );
        expect(policy.get("default-src"), file).toEqual(["'none'"]);
        expect([...policy.values()].flat().join(" "), file).not.toMatch(/unsafe-(?:inline|eval|hashes)|https?:|\*/u);
        const text = await readFile(path.join(siteDir, file), "utf8");
        for (const [, attributes = "", script = ""] of text.matchAll(/<script\b([^>]*)>(.*?)<\/script>/gsu)) {
          if (/\bsrc=|json"/u.test(attributes)) continue;
          expect(policy.get("script-src"), file).toContain(
            `'sha256-${createHash("sha256").update(script).digest("base64")}'`,
          );
        }
        expect(
          [...page.querySelectorAll("*")].filter(({ attributes }) =>
            [...attributes].some(({ name }) => name.startsWith("on")),
          ),
        ).toEqual([]);
      }
    }
  });

  it("give every picture its size, so that nothing jumps when it arrives", async () => {
    let pictures = 0;
    for (const [file, page] of await pagesOf(demo.publicDir)) {
      for (const picture of page.querySelectorAll("img")) {
        pictures += 1;
        expect(Number(picture.getAttribute("width")), file).toBeGreaterThan(0);
        expect(Number(picture.getAttribute("height")), file).toBeGreaterThan(0);
        expect(picture.getAttribute("alt"), file).not.toBe("");
      }
    }
    expect(pictures).toBeGreaterThan(20);
  });
});

describe("the order of things", () => {
  const marks = (html: string, all: readonly string[]) => all.filter((mark) => html.includes(mark));
  const inOrder = (html: string, all: readonly string[]) =>
    marks(html, all).toSorted((a, b) => html.indexOf(a) - html.indexOf(b));

  it("of a variety: photo, name and how to say it, source, result, its years, where and when, growth, films, notes", async () => {
    const order = [
      'class="lead',
      'class="title"',
      'class="say"',
      'class="source"',
      'class="result"',
      'id="years"',
      'id="where"',
      'id="growth"',
      'id="seen"',
      'id="notes"',
    ];
    let whole = 0;
    for (const { id } of demo.garden.varieties.values()) {
      const page = await readFile(path.join(demo.publicDir, "varieties", id, "index.html"), "utf8");
      const main = page.slice(page.indexOf("<main"));
      expect(inOrder(main, order), id).toEqual(marks(main, order));
      if (marks(main, order).length === order.length) whole += 1;
    }
    expect(whole, "pages that have all of it").toBeGreaterThan(5);
  });

  it("of a bed: its season, what stands now, and folded behind it then and now, earlier seasons, its place, films", async () => {
    const order = ['class="ribbon', 'id="now"', 'id="then-and-now"', 'id="earlier"', 'class="plan"', 'id="seen"'];
    for (const { id } of demo.garden.beds.values()) {
      const page = await readFile(path.join(demo.publicDir, "beds", id, "index.html"), "utf8");
      expect(inOrder(page, order), id).toEqual(marks(page, order));
    }
    const longBed = await readFile(path.join(demo.publicDir, "beds/long-bed/index.html"), "utf8");
    expect(marks(longBed, order)).toEqual(order);
    expect(longBed).toContain("Long Bed lies in the south of Hill Allotment, next to Brassica Bed and Onion Bed.");
  });
});

describe("in a browser", () => inABrowser(() => demo));
