/** Photos dropped on a page: kept at their bed or variety, under a safe name, over no other file, and nothing but photos. */
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import sharp from "sharp";
import { beforeEach, describe, expect, it } from "vitest";
import { type Effects, realEffects } from "../../src/cli/effects.ts";
import { loadGarden } from "../../src/cli/load-garden.ts";
import { type PhotoTaker, photoTaker } from "../../src/cli/take-photos.ts";
import type { PhotoAsk } from "../../src/site/index.ts";
import { photoAsk } from "../../src/site/photo-taking.ts";
import { folderWith } from "./run.ts";

let cwd: string;
let taker: PhotoTaker;
const modified = Date.UTC(2026, 6, 18, 9);
const of = { bed: "left-bed" };
const at = (file: string) => path.join(cwd, "content", file);

beforeEach(async () => {
  cwd = folderWith("two-beds");
  const { garden, recordsDir } = await load();
  taker = photoTaker(garden, recordsDir, { err: () => undefined });
});

function load() {
  const effects: Effects = { ...realEffects(), cwd, err: () => undefined, cacheFor: () => path.join(cwd, ".cache") };
  return loadGarden({ today: "2026-07-18" }, effects);
}

const drawn = (green: number) =>
  sharp({ create: { width: 64, height: 48, channels: 3, background: { r: 60, g: green, b: 40 } } });

async function drop(more: Partial<PhotoAsk> = {}) {
  const bytes = more.bytes ?? (await drawn(120).jpeg().toBuffer());
  return taker.take({ of, name: "2026-07-18.jpg", modified, bytes, ...more });
}

describe("a photo", () => {
  it("of a bed lies in the bed's folder, and is that bed's", async () => {
    expect(await drop()).toEqual({ told: "It lies in photos/left-bed/2026-07-18.jpg.", done: true });
    const { garden } = await load();
    expect(garden.photos.map(({ path: file, bed, day }) => [file, bed, day])).toEqual([
      ["photos/left-bed/2026-07-18.jpg", "left-bed", "2026-07-18"],
    ]);
  });

  it("of a variety shows that variety", async () => {
    await drop({ of: { variety: "musselburgh" }, name: "2026-07-18 leeks.jpg" });
    const { garden } = await load();
    expect(garden.photos.map(({ path: file, varieties }) => [file, varieties])).toEqual([
      ["photos/varieties/musselburgh/2026-07-18 leeks.jpg", ["musselburgh"]],
    ]);
  });

  it("takes no other's name, and is not kept twice", async () => {
    await drop();
    expect((await drop({ bytes: await drawn(90).jpeg().toBuffer() })).told).toBe(
      "It lies in photos/left-bed/2026-07-18-2.jpg.",
    );
    expect((await drop({ of: { variety: "musselburgh" } })).told).toBe(
      "It is in the records already: photos/left-bed/2026-07-18.jpg.",
    );
    expect(readdirSync(at("photos/left-bed")).sort()).toEqual(["2026-07-18-2.jpg", "2026-07-18.jpg"]);
  });

  it("is known by its bytes, whatever it is called", async () => {
    expect((await drop({ name: "scan.exe", bytes: await drawn(70).png().toBuffer() })).told).toContain("scan.png");
    expect((await drop({ name: "a.JPG", bytes: await drawn(60).jpeg().toBuffer() })).told).toContain("a.JPG");
    for (const bytes of [
      Buffer.from("<svg xmlns='http://www.w3.org/2000/svg'/>"),
      Buffer.from("MZ"),
      Buffer.alloc(0),
      await drawn(1).gif().toBuffer(),
    ])
      expect((await drop({ bytes })).told).toContain("is no photo that can be kept here");
    expect(readdirSync(at("photos/left-bed")).sort()).toEqual(["a.JPG", "scan.png"]);
  });

  it.each([
    ["../../outside.jpg", "outside.jpg"],
    ["..\\..\\outside.jpg", "outside.jpg"],
    ["/etc/passwd", "passwd.jpg"],
    [".hidden.jpg", "hidden.jpg"],
    ["..", "photo.jpg"],
    ["", "photo.jpg"],
    ["C:evil?.jpg", "Cevil.jpg"],
    ["a\u0000b\u001b[2J.jpg", "ab[2J.jpg"],
    ["\u202egpj.exe", "gpj.jpg"],
    [`${"x".repeat(300)}.jpg`, `${"x".repeat(100)}.jpg`],
  ])("named %j is called %j", async (name, called) => {
    expect((await drop({ name })).told).toBe(`It lies in photos/left-bed/${called}.`);
    expect(existsSync(at(`photos/left-bed/${called}`))).toBe(true);
    expect(readdirSync(cwd).sort()).toEqual([".cache", "content"]);
  });

  it("of no bed or variety of this garden is not kept", async () => {
    for (const other of [{ bed: ".." }, { bed: "../notes" }, { variety: "__proto__" }, { bed: "no-bed" }])
      expect((await drop({ of: other })).told).toContain("not in the records");
    expect(existsSync(at("photos"))).toBe(false);
  });

  it("that was there before is left as it is", async () => {
    mkdirSync(at("photos/left-bed"), { recursive: true });
    writeFileSync(at("photos/left-bed/2026-07-18.jpg"), "mine");
    await drop();
    expect(readFileSync(at("photos/left-bed/2026-07-18.jpg"), "utf8")).toBe("mine");
  });
});

it("is taken from a page only as its own sends it", () => {
  const bytes = new Uint8Array([1]);
  const ask = (said: string) => photoAsk(new URLSearchParams(said), bytes);
  expect(ask("bed=x&name=a.jpg&modified=1")).toEqual({ of: { bed: "x" }, name: "a.jpg", modified: 1, bytes });
  for (const bad of [
    "name=a.jpg&modified=1",
    "bed=x&variety=y&name=a.jpg&modified=1",
    "bed=x&modified=1",
    "bed=x&name=a.jpg",
    "bed=x&name=a.jpg&modified=late",
  ])
    expect(ask(bad), bad).toBeUndefined();
});
