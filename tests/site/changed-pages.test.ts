/**
 * Publishing again after a change makes only pages that changed, and gives byte for byte what publishing from nothing
 * would: for every kind of change, and whatever became of what was kept.
 */
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { mkdir } from "node:fs/promises";
import path from "node:path";
import sharp from "sharp";
import { afterAll, beforeAll, expect, it } from "vitest";
import { emptyFolder, folderWith, run } from "../cli/run.ts";
import { filesOf } from "./built-site.ts";

/** Published again and again, with what it keeps. */
let garden: string;
const folders: string[] = [];

beforeAll(async () => {
  garden = folderWith("two-beds");
  folders.push(garden);
  write("varieties/boltardy.md", "---\ntitle: Boltardy\ncrop: beetroot\nsource: Drift Lane Seeds\n---\n");
  write("notes/2026-05-02-beetroot.md", "- sowed 40 Boltardy in Right Bed\n");
  write(
    "episodes/first-walk/index.md",
    "---\ntitle: First walk\ndate: 2026-06-20\npublished: 2026-06-21\nstatus: published\nstops: [left-bed]\n---\n",
  );
  await drawPhoto("2026-06-13", 90);
  await publish(garden);
});
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

function write(file: string, text: string): void {
  const target = path.join(garden, "content", file);
  mkdirSync(path.dirname(target), { recursive: true });
  writeFileSync(target, text);
}

function rewrite(file: string, from: string, to: string): void {
  const text = readFileSync(path.join(garden, "content", file), "utf8");
  expect(text).toContain(from);
  writeFileSync(path.join(garden, "content", file), text.replace(from, to));
}

async function drawPhoto(day: string, green: number): Promise<void> {
  const folder = path.join(garden, "content/photos/left-bed");
  await mkdir(folder, { recursive: true });
  const picture = sharp({ create: { width: 640, height: 480, channels: 3, background: { r: 60, g: green, b: 40 } } });
  await picture.jpeg().toFile(path.join(folder, `${day}.jpg`));
}

/** How many public pages were made, of how many there are. */
async function publish(cwd: string): Promise<{ readonly made: number; readonly all: number }> {
  const { exitCode, err } = await run(["publish"], { cwd });
  expect({ exitCode, err }).toMatchObject({ exitCode: 0 });
  const [, made = "", all = made] = /^Making the public pages: (\d+)(?: of (\d+) changed)?$/mu.exec(err) ?? [];
  return { made: Number(made), all: Number(all) };
}

/** Publishes both ways and holds the folders against one another. */
async function publishAgain() {
  const counts = await publish(garden);
  const fresh = emptyFolder();
  folders.push(fresh);
  cpSync(path.join(garden, "content"), path.join(fresh, "content"), { recursive: true });
  const whole = await publish(fresh);
  expect(whole.made).toBe(whole.all);
  expect(whole.all).toBe(counts.all);
  await expectSame(path.join(garden, "out"), path.join(fresh, "out"));
  return counts;
}

async function expectSame(one: string, other: string): Promise<void> {
  const files = await filesOf(other);
  expect(await filesOf(one)).toEqual(files);
  const differing = files.filter(
    (file) => !readFileSync(path.join(one, file)).equals(readFileSync(path.join(other, file))),
  );
  expect(differing).toEqual([]);
}

it("makes nothing when nothing changed", async () => {
  expect((await publishAgain()).made).toBe(0);
});

it("a note changes the pages that tell of it", async () => {
  write("notes/2026-07-10-beans.md", "- picked 1 kg Aquadulce Claudia from Left Bed\n");
  const { made, all } = await publishAgain();
  expect(made).toBeGreaterThan(0);
  // The bed and the variety, both lists, both first pages, the season, the note and the bed on the private side: half, no more.
  expect(made).toBeLessThanOrEqual(all / 2);
});

it("a note of private matters changes no public page", async () => {
  write("notes/2026-07-11-own.md", "---\nprivate: true\nbed: left-bed\n---\n\nThe neighbour asked about the fence.\n");
  expect((await publishAgain()).made).toBe(0);
});

it("a new variety gets its page, and the old pages of others stay", async () => {
  write("varieties/cobra.md", "---\ntitle: Cobra\ncrop: bean\nsource: saved seed\n---\n\nClimbs well.\n");
  const { made, all } = await publishAgain();
  expect(existsSync(path.join(garden, "out/public/varieties/cobra/index.html"))).toBe(true);
  expect(made).toBeLessThan(all / 2);
});

it("a variety that is gone takes its page with it", async () => {
  rmSync(path.join(garden, "content/varieties/cobra.md"));
  await publishAgain();
  expect(existsSync(path.join(garden, "out/public/varieties/cobra"))).toBe(false);
});

it("a bed is given another name", async () => {
  rewrite("beds/left-bed.md", "Left bed", "Bed by the wall");
  rewrite("episodes/first-walk/index.md", "[left-bed]", "[left-bed, right-bed]");
  await publishAgain();
});

it("the garden is given another name, which stands on every page", async () => {
  rewrite("garden.md", "Two beds behind the house", "Two beds and a path");
  const { made, all } = await publishAgain();
  // All but the list for other programs and the choices of the variety list.
  expect(made).toBeGreaterThanOrEqual(all - 2);
});

it("a new photo comes", async () => {
  await drawPhoto("2026-07-12", 140);
  expect((await publishAgain()).made).toBeGreaterThan(0);
});

it("an episode is made private", async () => {
  rewrite("episodes/first-walk/index.md", "status: published", "status: published\nprivate: true");
  await publishAgain();
  expect(existsSync(path.join(garden, "out/public/episodes/first-walk"))).toBe(false);
});

it("what was kept is only used when it is whole", async () => {
  const kept = path.join(garden, ".cache/pages/public");
  const list = readFileSync(path.join(kept, "list.json"), "utf8");
  const files = readdirSync(kept)
    .filter((file) => file !== "list.json")
    .sort();
  // A disk that lost the end of one file, changed a letter of others, and lost some.
  for (const [index, file] of files.entries()) {
    const bytes = readFileSync(path.join(kept, file));
    rmSync(path.join(kept, file));
    if (index % 4 === 0) continue;
    if (index % 4 === 1) bytes.fill(120, 10, 11);
    writeFileSync(path.join(kept, file), index % 4 === 2 ? bytes.subarray(0, 100) : bytes);
  }
  expect((await publishAgain()).made).toBeGreaterThan(0);
  expect((await publish(garden)).made).toBe(0);
  // A list that was cut off, and one that gives the bytes of one page for another.
  for (const bad of [
    list.slice(0, -40),
    list.replace(/"([0-9a-f]{64})"\],\["([0-9a-f]{64})"/u, '"$2"],["$1"'),
    "",
    "{}",
  ]) {
    writeFileSync(path.join(kept, "list.json"), bad);
    const { made, all } = await publish(garden);
    expect(made).toBe(all);
  }
  await publishAgain();
});
