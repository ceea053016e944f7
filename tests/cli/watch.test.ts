/** Watching a garden in a browser: a saved note shows on the open page, in both sites, and photos come through. */
import { existsSync, readFileSync } from "node:fs";
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { type IncomingHttpHeaders, request } from "node:http";
import path from "node:path";
import type { Browser } from "playwright-core";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "../browser.ts";
import { folderWith, run } from "./run.ts";
import { type Watched, watched } from "./watched.ts";

let browser: Browser;
let cwd: string;
let watching: Watched;

beforeAll(async () => {
  cwd = folderWith("two-beds");
  await drawPhoto("2026-06-13.jpg");
  watching = await watched(cwd);
  browser = await openBrowser();
});

afterAll(async () => {
  await browser?.close();
  expect(await watching.stop()).toBe(0);
});

async function drawPhoto(name: string): Promise<void> {
  const folder = path.join(cwd, "content/photos/left-bed");
  await mkdir(folder, { recursive: true });
  const picture = sharp({ create: { width: 640, height: 480, channels: 3, background: { r: 60, g: 120, b: 40 } } });
  await picture.jpeg().toFile(path.join(folder, name));
}

const address = (words: string) => watching.address(words);

describe("watching", () => {
  it("shows a saved note on the open public page without anybody asking", async () => {
    const page = await browser.newPage();
    await page.goto(new URL("beds/left-bed/", address("Public site")).href);
    const main = page.locator("main");
    expect(await main.textContent()).not.toContain("Boltardy");
    await writeFile(path.join(cwd, "content/notes/2026-07-17.md"), "- planted 12 Boltardy beetroot in Left Bed\n");
    await expect.poll(() => main.textContent(), { timeout: 15_000 }).toContain("Boltardy");
    // A page that did not exist before, and the list as data.
    const answer = await page.goto(new URL("varieties/boltardy/", address("Public site")).href);
    expect(answer?.status()).toBe(200);
    const list = await page.goto(new URL("varieties.json", address("Public site")).href);
    expect(await list?.text()).toContain("Boltardy");
    await page.close();
  });

  it("shows a saved note on the open field page, private ones too, and keeps those from the public one", async () => {
    const page = await browser.newPage();
    await page.goto(new URL("beds/left-bed/", address("Your field")).href);
    await writeFile(
      path.join(cwd, "content/notes/2026-07-18-own.md"),
      "---\nprivate: true\nbed: left-bed\n---\n\nThe neighbour asked about the fence.\n",
    );
    await expect.poll(() => page.locator("main").textContent(), { timeout: 15_000 }).toContain("about the fence");
    await page.goto(new URL("beds/left-bed/", address("Public site")).href);
    await expect.poll(() => page.locator("main").textContent()).toContain("Left bed");
    expect(await page.locator("main").textContent()).not.toContain("about the fence");
    await page.close();
  });

  it("shows the brief as it would be made now: it follows a save, marks the card that is new, and writes nothing", async () => {
    const film = path.join(cwd, "content/episodes/july-walk");
    await mkdir(film, { recursive: true });
    await writeFile(
      path.join(film, "index.md"),
      "---\ntitle: July walk\ndate: 2026-07-19\nstatus: planned\nstops: [left-bed, right-bed]\n---\n",
    );
    const page = await browser.newPage();
    await page.goto(address("Your field"));
    await page.getByRole("link", { name: "The brief as it stands now" }).click();
    await page.waitForURL(/briefs\/july-walk\.html$/u);
    expect(await page.locator(".card.front").count()).toBe(2);
    expect(await page.locator(".changed").count()).toBe(0);
    await writeFile(path.join(cwd, "content/notes/2026-07-18-loss.md"), "- lost 2 Musselburgh in Right Bed to slugs\n");
    await expect
      .poll(() => page.locator(".live .changed").textContent({ timeout: 15_000 }), { timeout: 15_000 })
      .toMatch(/^New since you last looked: \d Right bed\.$/u);
    expect(await page.locator(".card > .changed").count()).toBe(1);
    // The brief that the command makes says the same, and only it keeps the plan.
    expect(existsSync(path.join(film, "plan.json"))).toBe(false);
    const cards = await page.locator(".card.front dl").allTextContents();
    await run(["brief", "july-walk", "--records", "content"], { cwd, today: "2026-07-18" });
    const made = await readFile(path.join(cwd, "out/briefs/july-walk.html"), "utf8");
    await page.setContent(made);
    expect(await page.locator(".card.front dl").allTextContents()).toEqual(cards);
    await page.close();
  });

  it("brings a new photo in, and its picture loads", async () => {
    await drawPhoto("2026-07-16.jpg");
    await expect
      .poll(() => watching.said(), { timeout: 15_000 })
      .toContain("Shown again: photos/left-bed/2026-07-16.jpg");
    const page = await browser.newPage();
    await page.goto(new URL("beds/left-bed/", address("Public site")).href);
    const loaded = await page.evaluate(async () => {
      const pictures = [...document.querySelectorAll("img")];
      for (const picture of pictures) picture.loading = "eager";
      await Promise.all(pictures.map((picture) => picture.decode().catch(() => undefined)));
      return pictures.map((picture) => picture.naturalWidth);
    });
    expect(loaded.length).toBeGreaterThan(0);
    for (const width of loaded) expect(width).toBeGreaterThan(0);
    await page.close();
  });

  it("names a photo by keyboard, in the words a person would write beside it, and takes that back", async () => {
    const beside = path.join(cwd, "content/photos/left-bed/2026-06-13.md");
    const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
    await page.goto(new URL("naming/", address("Your field")).href);
    const first = page.locator("[data-photo='photos/left-bed/2026-06-13.jpg']");
    const heights = await first
      .locator("button:visible, input")
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));
    expect(heights.length).toBeGreaterThan(3);
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(64);
    const choice = first.locator("[data-name]").first();
    const name = await choice.getAttribute("data-name");
    await choice.focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => existsSync(beside), { timeout: 15_000 }).toBe(true);
    expect(readFileSync(beside, "utf8")).toBe(`---\nvarieties: ${name}\n---\n`);
    // The page is made again without the photo, and still offers the way back.
    await expect.poll(() => first.count(), { timeout: 15_000 }).toBe(0);
    await page.locator(".undo button").click();
    await expect.poll(() => existsSync(beside), { timeout: 15_000 }).toBe(false);
    await expect.poll(() => first.count(), { timeout: 15_000 }).toBe(1);
    await page.goto(new URL("naming/", address("Public site")).href);
    expect(await page.title()).not.toContain("without a name");
    await page.close();
  });

  it("tells of an error in what was saved, and goes on", async () => {
    const file = path.join(cwd, "content/notes/2026-07-18-wrong.md");
    await writeFile(file, "---\nbed: [left-bed\n---\n\n- watered\n");
    await expect.poll(() => watching.said(), { timeout: 15_000 }).toContain("notes/2026-07-18-wrong.md:");
    await writeFile(file, "---\nbed: left-bed\n---\n\n- watered everything\n");
    await expect.poll(() => watching.said().split("Shown again: notes/2026-07-18-wrong.md").length).toBe(3);
  });
});

/** The raw path as sent, without a client tidying it first. */
function ask(to: string, rawPath: string, method = "GET", headers: Readonly<Record<string, string>> = {}) {
  const { port } = new URL(to);
  return new Promise<{ status: number; text: string; headers: IncomingHttpHeaders }>((resolve, reject) => {
    request({ hostname: "127.0.0.1", port, path: rawPath, method, headers }, (response) => {
      let text = "";
      response.setEncoding("utf8").on("data", (part) => {
        text += part;
      });
      response.on("end", () => resolve({ status: response.statusCode ?? 0, text, headers: response.headers }));
    })
      .on("error", reject)
      .end();
  });
}

describe("the doors of a watched garden", () => {
  it.each(["Public site", "Your field"])(
    "are shut to other names, other methods and other pages (%s)",
    async (site) => {
      const url = address(site);
      for (const host of ["evil.example", "localhost.evil.example", "127.0.0.2:80"]) {
        const { status, text } = await ask(url, "/", "GET", { host });
        expect([status, text], host).toEqual([421, ""]);
      }
      for (const method of ["POST", "PUT", "DELETE", "OPTIONS"]) {
        const { status, headers } = await ask(url, "/", method, { origin: "https://evil.example" });
        expect(status, method).toBe(405);
        expect(headers["access-control-allow-origin"]).toBeUndefined();
      }
      for (const path of ["/", "/nothing/", "/@follow.js"]) {
        const { headers } = await ask(url, path);
        expect(headers["cross-origin-resource-policy"], path).toBe("same-origin");
        expect(headers["content-security-policy"], path).toBe("frame-ancestors 'none'");
      }
    },
  );

  it.each(["Public site", "Your field"])("lead to nothing outside the site (%s)", async (site) => {
    for (const path of [
      "/../../../../../../etc/passwd",
      "/%2e%2e/%2e%2e/%2e%2e/%2e%2e/etc/passwd",
      "/..%2f..%2f..%2f..%2fetc%2fpasswd",
      "/@fs/etc/passwd",
      "/photos/..%2f..%2f..%2f..%2fetc/passwd",
      "/content/garden.md",
      "/src/cli/main.ts",
      "/%00",
      "/%zz",
      "//etc/passwd",
    ]) {
      const { status, text } = await ask(address(site), path);
      expect([302, 404], path).toContain(status);
      expect(text, path).not.toMatch(/root:|time zone|import /u);
    }
  });
});
