/** Photos named by tap: what is written, what is asked first, and what can be taken back. */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import sharp from "sharp";
import { beforeEach, expect, it } from "vitest";
import { type Effects, realEffects } from "../../src/cli/effects.ts";
import { loadGarden } from "../../src/cli/load-garden.ts";
import { type PhotoNamer, photoNamer } from "../../src/cli/name-photos.ts";
import { type WrittenFiles, writtenFiles } from "../../src/cli/written-files.ts";
import { folderWith } from "./run.ts";

let cwd: string;
let namer: PhotoNamer;
let files: WrittenFiles;
const photo = "photos/left-bed/2026-06-13.jpg";
const beside = () => path.join(cwd, "content/photos/left-bed/2026-06-13.md");
const read = () => readFileSync(beside(), "utf8");

beforeEach(async () => {
  cwd = folderWith("two-beds");
  mkdirSync(path.dirname(beside()), { recursive: true });
  const picture = sharp({ create: { width: 64, height: 48, channels: 3, background: "#3c7828" } });
  await picture.jpeg().toFile(path.join(cwd, "content", photo));
  await reload();
});

async function reload(): Promise<void> {
  const effects: Effects = {
    ...realEffects(),
    cwd,
    out: () => undefined,
    err: () => undefined,
    cacheFor: () => path.join(cwd, ".cache"),
  };
  const { garden, recordsDir } = await loadGarden({ today: "2026-07-18" }, effects);
  files = writtenFiles(recordsDir, effects);
  namer = photoNamer(garden, files, effects);
}

function tap(name: string, state = namer.state(photo), as: "name" | "caption" = "name") {
  return namer.name({ photo, state, as, name });
}

async function known(): Promise<string> {
  const { garden } = await loadGarden(
    { today: "2026-07-18" },
    { ...realEffects(), cwd, cacheFor: () => path.join(cwd, ".cache") },
  );
  return [...garden.varieties.values()][0]?.title ?? "";
}

it("writes what a person would write, which is then what the photo shows, and takes it back", async () => {
  const title = await known();
  const { undo, told } = await tap(title);
  expect(read()).toBe(`---\nvarieties: ${title}\n---\n`);
  expect(told).toContain("photos/left-bed/2026-06-13.md");
  const { garden } = await loadGarden(
    { today: "2026-07-18" },
    { ...realEffects(), cwd, err: () => undefined, cacheFor: () => path.join(cwd, ".cache") },
  );
  expect(garden.photos.find((one) => one.path === photo)?.varieties).toHaveLength(1);
  expect(await files.undo(undo ?? -1)).toMatchObject({ done: true });
  expect(existsSync(beside())).toBe(false);
});

it("asks before it changes what was changed underneath, and writes when the person agrees", async () => {
  const title = await known();
  const state = namer.state(photo);
  writeFileSync(beside(), "---\nprivate: true\n---\n");
  const asked = await tap(title, state);
  expect(asked).toMatchObject({ asks: { text: "---\nprivate: true\n---\n" } });
  expect(asked.undo).toBeUndefined();
  expect(read()).toBe("---\nprivate: true\n---\n");
  await tap(title, asked.asks?.state);
  expect(read()).toBe(`---\nprivate: true\nvarieties: ${title}\n---\n`);
});

it("does not take back what was changed since", async () => {
  const { undo } = await tap(await known());
  writeFileSync(beside(), "---\ncaption: mine\n---\n");
  expect(await files.undo(undo ?? -1)).toEqual({ told: expect.stringContaining("left as it is") });
  expect(read()).toBe("---\ncaption: mine\n---\n");
});

it("takes a name nobody knows for no name, and a caption for a caption", async () => {
  expect(await tap("Blue Moon of Nowhere")).toEqual({ told: expect.stringContaining("No variety or bed") });
  expect(existsSync(beside())).toBe(false);
  await tap("The arch: in July", namer.state(photo), "caption");
  expect(read()).toBe('---\ncaption: "The arch: in July"\n---\n');
});

it("writes beside no photo that the records do not have", async () => {
  const answer = await namer.name({ photo: "../outside.jpg", state: "", as: "caption", name: "x" });
  expect(answer.told).toContain("not in the records");
  expect(existsSync(path.join(cwd, "outside.md"))).toBe(false);
});
