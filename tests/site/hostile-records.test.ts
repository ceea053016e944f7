/**
 * Records that somebody wrote to do harm, each with what must come out. They are published in one garden, and the finished
 * pages are looked at as bytes, as documents, and in a browser.
 */
import { mkdir, mkdtemp, readFile, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { addDays } from "../../src/calendar.ts";
import type { Garden } from "../../src/model.ts";
import { type BuiltSites, buildSites, type StaticServer, serveFolder } from "../../src/site/index.ts";
import { openBrowser } from "../browser.ts";
import { filesOf, pagesOf, photoCopies, readGarden, today } from "./built-site.ts";

const DEEP = 10_000;

/** What each record says, the page its words must stand on, and how they must read there. */
const STORIES: readonly { readonly what: string; readonly text: string; readonly reads: string }[] = [
  { what: "a script", text: "<script>globalThis.ran = 1</script> after the script", reads: "after the script" },
  {
    what: "a script in many pieces",
    text: "<scr<script>ipt>globalThis.ran = 1</scr</script>ipt> pieces",
    reads: "pieces",
  },
  {
    what: "a picture that fails",
    text: "<img src=x onerror=globalThis.ran=1> the failing picture",
    reads: "the failing picture",
  },
  { what: "a drawing that loads", text: "<svg onload=globalThis.ran=1><a>the drawing</a></svg>", reads: "the drawing" },
  { what: "a style", text: "<style>body{display:none}</style> after the style", reads: "after the style" },
  {
    what: "a style on an element",
    text: '<p style="position:fixed;inset:0">over everything</p>',
    reads: "over everything",
  },
  {
    what: "a frame",
    text: '<iframe srcdoc="<script>parent.ran=1</script>"></iframe> after the frame',
    reads: "after the frame",
  },
  { what: "a form", text: '<form action="https://evil.example"><input name=q> the form</form>', reads: "the form" },
  { what: "a base address", text: '<base href="https://evil.example/"> after the base', reads: "after the base" },
  {
    what: "a page that moves on",
    text: '<meta http-equiv="refresh" content="0;url=https://evil.example"> stay',
    reads: "stay",
  },
  { what: "a script as a link", text: "[the script link](javascript:globalThis.ran=1)", reads: "the script link" },
  { what: "the same in capitals and pieces", text: "[odd link](JaVa&#x0A;ScRiPt:globalThis.ran=1)", reads: "odd link" },
  { what: "the same with a tab in it", text: "[tabbed link](<java\tscript:globalThis.ran=1>)", reads: "tabbed link" },
  { what: "the same behind a space", text: "[spaced link](&#32;javascript:globalThis.ran=1)", reads: "spaced link" },
  { what: "the same behind a control", text: "[low link](&#1;javascript:globalThis.ran=1)", reads: "low link" },
  { what: "the same in entities", text: "[coded link](&#106;avascript&colon;globalThis.ran=1)", reads: "coded link" },
  { what: "the same percent-encoded", text: "[percent link](javascript%3AglobalThis.ran=1)", reads: "percent link" },
  { what: "the same by reference", text: "[far link][far]\n\n[far]: javascript:globalThis.ran=1", reads: "far link" },
  { what: "the same in brackets", text: "<javascript:globalThis.ran=1> bracket link", reads: "bracket link" },
  { what: "the same as view-source", text: "[view link](view-source:javascript:globalThis.ran=1)", reads: "view link" },
  { what: "an older script as a link", text: "[old link](vbscript:globalThis.ran=1)", reads: "old link" },
  { what: "a file as a link", text: "[file link](file:///etc/passwd)", reads: "file link" },
  { what: "an address without a scheme", text: "[bare link](//evil.example/)", reads: "bare link" },
  { what: "a blob as a link", text: "[blob link](blob:https://evil.example/1)", reads: "blob link" },
  {
    what: "a script in a title",
    text: `[titled link](https://ok.example "" onmouseover=globalThis.ran=1 x="")`,
    reads: "titled link",
  },
  {
    what: "a script in a picture's words",
    text: '![" onerror=globalThis.ran=1 x="](photos/x.jpg) the worded picture',
    reads: "the worded picture",
  },
  {
    what: "code that ends itself",
    text: '```html"><script>globalThis.ran=1</script>\nthe code\n```',
    reads: "the code",
  },
  {
    what: "a remark that ends early",
    text: "<!--> <script>globalThis.ran=1</script> --> the remark",
    reads: "the remark",
  },
  {
    what: "mathematics that hides a script",
    text: "<math><mtext><table><mglyph><style><img src=x onerror=globalThis.ran=1></style></mglyph></table></mtext></math> the sum",
    reads: "the sum",
  },
  {
    what: "an element that breaks another out",
    text: '<noscript><p title="</noscript><img src=x onerror=globalThis.ran=1>"></noscript> the breakout',
    reads: "the breakout",
  },
  {
    what: "an id that stands for a global",
    text: '<a id="plotreel"></a><form name="getElementById"></form> the clobber',
    reads: "the clobber",
  },
  { what: "data as a link", text: "[the data link](data:text/html;base64,PHNjcmlwdD4x)", reads: "the data link" },
  {
    what: "data as a picture",
    text: "before ![p](data:image/svg+xml,<svg/onload=globalThis.ran=1>) the data picture",
    reads: "the data picture",
  },
  {
    what: "a giant picture elsewhere",
    text: "![a](https://evil.example/40000x40000.png) the giant",
    reads: "the giant",
  },
  { what: "a picture up the folders", text: "![a](../../../../etc/passwd) up the folders", reads: "up the folders" },
  {
    what: "a quote ten thousand deep",
    text: `${"> ".repeat(DEEP)}bottom of the quotes`,
    reads: "bottom of the quotes",
  },
  {
    what: "emphasis ten thousand deep",
    text: `${"*a ".repeat(DEEP)}bottom of the stars`,
    reads: "bottom of the stars",
  },
  {
    what: "brackets ten thousand deep",
    text: `${"[".repeat(DEEP)}bottom of the brackets`,
    reads: "bottom of the brackets",
  },
  {
    what: "a list ten thousand deep",
    text: `${"- ".repeat(DEEP)}bottom of the lists`,
    reads: "bottom of the lists",
  },
  {
    what: "numbers ten thousand deep",
    text: `${"1. ".repeat(DEEP)}bottom of the numbers`,
    reads: "bottom of the numbers",
  },
  {
    what: "links ten thousand deep",
    text: `${"[a](".repeat(DEEP)}bottom of the links`,
    reads: "bottom of the links",
  },
  {
    what: "pictures ten thousand deep",
    text: `${"![".repeat(DEEP)}bottom of the pictures`,
    reads: "bottom of the pictures",
  },
  {
    what: "elements ten thousand deep",
    text: `${"<b>".repeat(DEEP)}bottom of the elements`,
    reads: "bottom of the elements",
  },
  {
    what: "ticks of ten thousand lengths",
    text: `${Array.from({ length: 1000 }, (_, length) => "`".repeat(length + 1)).join(" ")} bottom of the ticks`,
    reads: "bottom of the ticks",
  },
  {
    what: "quotes that go one deeper every line",
    text: `${Array.from({ length: 1000 }, (_, depth) => `${"> ".repeat(depth)}deeper`).join("\n")} bottom of the steps`,
    reads: "bottom of the steps",
  },
  {
    what: "entities by the thousand",
    text: `${"&amp;#x202e;&lt;".repeat(1000)} bottom of the entities`,
    reads: "bottom of the entities",
  },
  { what: "a NUL", text: "before\0after the NUL", reads: "after the NUL" },
  {
    what: "a turned reading direction",
    text: "the seeds \u202egnp.exe\u202c turned",
    reads: "the seeds gnp.exe turned",
  },
];

const FILES: Readonly<Record<string, string>> = {
  "garden.md":
    '---\nname: "</title><script>globalThis.ran=1</script>"\nlanguage: en-GB\ntime zone: Europe/London\n---\n',
  // Every story is an own note on an own day, about a bed of its own.
  ...Object.fromEntries(
    STORIES.map(({ text }, index) => [`notes/${dayOf(index)}-story.md`, `---\nbed: bed-${index}\n---\n\n${text}\n`]),
  ),
  ...Object.fromEntries(
    STORIES.map(({ text }, index) => [`beds/bed-${index}.md`, `---\ntitle: Bed ${index}\n---\n\n${text}\n`]),
  ),
  "beds/pollute.md":
    "---\ntitle: Polluting bed\n__proto__: { polluted: true, private: false }\nconstructor: { prototype: { polluted: true } }\n---\n",
  "beds/__proto__.md": "---\ntitle: A bed called proto\n---\n",
  "varieties/constructor.md": "---\ntitle: Constructor\ncrop: leek\n---\n",
  "varieties/turned.md": '---\ntitle: "Red\u202eneerg\u202c Giant"\ncrop: tomato\nsay it as: "\u2066red\u2069"\n---\n',
  "varieties/quotes.md":
    '---\ntitle: \'"><video src=z onerror=globalThis.ran=1>\'\ncrop: "pea\'}]{--x:url(//evil.example)}</style><script>globalThis.ran=1</script>"\nsource: { name: "</script><script>globalThis.ran=1</script>", link: "javascript:globalThis.ran=1" }\n---\n',
  "varieties/data-link.md":
    '---\ntitle: Data Address\ncrop: pea\nsource: { name: Data house, link: "data:text/html,<script>ran=1</script>" }\ngrow again: "yes, <script>globalThis.ran=1</script> \u202eylevol\u202c"\n---\n',
  "beds/runs.md": "---js\n{ title: globalThis.ran = 1 }\n---\n",
  "beds/bomb.md": `---\ntitle: Bomb\na: &a [x, x, x, x, x, x, x, x, x]\nb: &b [*a, *a, *a, *a, *a, *a, *a, *a, *a]\nc: &c [*b, *b, *b, *b, *b, *b, *b, *b, *b]\nd: &d [*c, *c, *c, *c, *c, *c, *c, *c, *c]\ne: &e [*d, *d, *d, *d, *d, *d, *d, *d, *d]\nf: [*e, *e, *e, *e, *e, *e, *e, *e, *e]\n---\n`,
  "beds/deep-yaml.md": `---\ntitle: Deep\nsoil: ${"[".repeat(DEEP)}${"]".repeat(DEEP)}\n---\n`,
  "episodes/film/index.md":
    '---\ntitle: "</script><script>globalThis.ran=1</script>"\ndate: 2026-06-13\nstatus: published\nlink: "javascript:globalThis.ran=1"\nstops: [bed-0, ../../../etc]\n---\n\n<script>globalThis.ran=1</script> about the film\n',
  "notes/2026-07-17-planted.md":
    "---\nbed: bed-0\n---\n\n- planted 3 Constructor leek\n- planted 2 <script>globalThis.ran=1</script> tomato\n- planted 4 ../../../etc/passwd\n- planted 2 __proto__\n- acquired: 3 leeks from <img src=x onerror=globalThis.ran=1>, in bed-0\n- planted 3 leeks\n- doing: leeks, <script>globalThis.ran=1</script> sulking\n- preserved: 2 jars of leeks <svg onload=globalThis.ran=1>\n- sold: 2 bunches of leeks because <script>globalThis.ran=1</script>\n- plan: <script>globalThis.ran=1</script> next year\n",
};

function dayOf(index: number): string {
  return addDays("2026-04-01", index);
}

let folder: string;
let garden: Garden;
let sites: BuiltSites;
let browser: Browser;
/** Of each site, public first. */
let pages: readonly ReadonlyMap<string, Document>[];

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "plotreel-hostile-"));
  const recordsDir = path.join(folder, "records");
  for (const [file, text] of Object.entries(FILES)) {
    await mkdir(path.dirname(path.join(recordsDir, file)), { recursive: true });
    await writeFile(path.join(recordsDir, file), text);
  }
  await writeFile(path.join(folder, "outside.md"), "---\ntitle: Outside the folder\n---\n");
  await symlink(path.join(folder, "outside.md"), path.join(recordsDir, "beds", "leads-out.md"));
  garden = await readGarden(recordsDir);
  const cacheDir = path.join(folder, "cache");
  sites = await buildSites(garden, {
    outDir: path.join(folder, "out"),
    cacheDir,
    today,
    photos: await photoCopies(garden, recordsDir, cacheDir),
    briefs: [],
  });
  pages = [await pagesOf(sites.publicDir), await pagesOf(sites.privateDir)];
  browser = await openBrowser();
});

afterAll(async () => {
  await browser?.close();
  await rm(folder, { recursive: true, force: true });
});

describe("hostile records", () => {
  it.each(STORIES.map((story, index) => ({ ...story, index })))("$what stays words", ({ reads, index }) => {
    for (const site of pages) {
      const page = site.get(`beds/bed-${index}/index.html`);
      expect(page?.querySelector("main")?.textContent?.replace(/\s+/gu, " ")).toContain(reads);
    }
  });

  it("write no element, attribute or address that could run or fetch", () => {
    const wrong: string[] = [];
    for (const [file, page] of pages.flatMap((site) => [...site])) {
      // A phone takes these along, with pictures, letters and the names of the garden in themselves.
      const isTakenAlong = file.startsWith("outdoors/");
      for (const element of page.querySelectorAll("*")) {
        for (const { name, value } of element.attributes) {
          if (isTakenAlong && name === "src" && value.startsWith("data:image/")) continue;
          const runs = /^(?:on|style$|srcdoc$|formaction$)/iu.test(name);
          const leads =
            ["href", "src", "action"].includes(name) && !/^(?:https?:|mailto:|\/|#|\.|[\w-]+\.html)/iu.test(value);
          if (runs || leads) wrong.push(`${file}: ${name}="${value}"`);
        }
      }
      // The one form is our own, and leads to the search.
      for (const element of page.querySelectorAll(
        `iframe, form:not(.ask > [action='/search/']), base, object, embed, main svg[onload], meta[http-equiv=refresh]${isTakenAlong ? "" : ", style"}`,
      ))
        wrong.push(`${file}: ${element.outerHTML}`);
      for (const script of page.querySelectorAll("script"))
        if ((isTakenAlong ? /<\/?script|<!--/iu : /\bran\s*=/u).test(script.textContent ?? ""))
          wrong.push(`${file}: a script`);
      for (const picture of page.querySelectorAll("img"))
        if (!isTakenAlong && picture.getAttribute("src")?.startsWith("/photos/") !== true)
          wrong.push(`${file}: ${picture.outerHTML}`);
    }
    expect(wrong).toEqual([]);
    expect(pages.map(({ size }) => size > STORIES.length)).toEqual([true, true]);
  });

  it("turn no reading direction anywhere", async () => {
    for (const file of await filesOf(sites.publicDir)) {
      const text = await readFile(path.join(sites.publicDir, file), "utf8");
      expect(/[\u202a-\u202e\u2066-\u2069]/u.test(text), file).toBe(false);
    }
    const page = pages[0]?.get("varieties/turned/index.html");
    expect(page?.querySelector("h1")?.textContent).toBe("Redneerg Giant");
  });

  it("add nothing to the objects everything is made from", () => {
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    expect(Object.prototype).not.toHaveProperty("polluted");
    expect(garden.problems.filter(({ file }) => file === "beds/pollute.md").map(({ severity }) => severity)).toContain(
      "error",
    );
  });

  it("run nothing while they are read, and read nothing outside the folder", () => {
    expect((globalThis as Record<string, unknown>).ran).toBeUndefined();
    expect([...garden.beds.values()].map(({ title }) => title)).not.toContain("Outside the folder");
    for (const file of ["beds/runs.md", "beds/bomb.md", "beds/deep-yaml.md"])
      expect(
        garden.problems.some((problem) => problem.file === file),
        file,
      ).toBe(true);
  });

  it("promise no whole address where garden.md gives none", async () => {
    const files = await filesOf(sites.publicDir);
    for (const file of ["feed.xml", "feed.json", "sitemap.xml", "robots.txt"]) expect(files).not.toContain(file);
    for (const [file, page] of pages[0] ?? [])
      expect(
        page.querySelectorAll("link[rel=canonical], link[rel=alternate], meta[property^='og:']"),
        file,
      ).toHaveLength(0);
  });

  it("write no file beside the two sites", async () => {
    const files = await filesOf(path.join(folder, "out"));
    expect(files.filter((file) => !/^(?:public|private)\//u.test(file))).toEqual([]);
    expect(files.filter((file) => /passwd(?!\/index\.html$)/u.test(file))).toEqual([]);
  });

  it("run nothing and ask no other server in a browser", async () => {
    for (const siteDir of [sites.publicDir, sites.privateDir]) {
      const server: StaticServer = await serveFolder(siteDir);
      const page = await browser.newPage();
      const elsewhere: string[] = [];
      page.on("request", (request) => {
        if (new URL(request.url()).origin !== new URL(server.url).origin) elsewhere.push(request.url());
      });
      for (const file of await filesOf(siteDir)) {
        if (!file.endsWith(".html")) continue;
        const address = file
          .replace(/index\.html$/u, "")
          .split("/")
          .map(encodeURIComponent)
          .join("/");
        await page.goto(new URL(address, server.url).href);
        expect(await page.evaluate(() => (globalThis as Record<string, unknown>).ran), file).toBeUndefined();
      }
      expect(elsewhere).toEqual([]);
      await page.close();
      await server.close();
    }
  });
});
