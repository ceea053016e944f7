/** Pictures for plates out of a film: offered beside the report where film and program are at hand, and nowhere else. */
import { chmodSync, existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import sharp from "sharp";
import { afterEach, expect, it } from "vitest";
import { gardenFiles, vtt } from "../wrap/small-film.ts";
import { emptyFolder, run } from "./run.ts";

const before = process.env.PATH;
afterEach(() => {
  process.env.PATH = before;
});

const walk = ["The long bed.", "Musselburgh, all of it.", "Now the squash bed.", "Five Uchiki Kuri.", "See you."];

function garden(more: Readonly<Record<string, string>> = {}): string {
  const cwd = emptyFolder();
  const files = { ...gardenFiles, "episodes/june/captions.vtt": Buffer.from(vtt(walk)).toString(), ...more };
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(path.join(cwd, "content", path.dirname(file)), { recursive: true });
    writeFileSync(path.join(cwd, "content", file), text);
  }
  return cwd;
}

/** A stand-in for the program, which gives one picture and keeps what it was asked for. */
async function standIn(cwd: string): Promise<string> {
  const bin = path.join(cwd, "bin");
  mkdirSync(bin);
  await sharp({ create: { width: 64, height: 36, channels: 3, background: "#3c7828" } })
    .png()
    .toFile(path.join(bin, "frame.png"));
  writeFileSync(path.join(bin, "ffmpeg"), `#!/bin/sh\necho "$@" >> "${bin}/asked"\ncat "${bin}/frame.png"\n`);
  chmodSync(path.join(bin, "ffmpeg"), 0o755);
  process.env.PATH = `${bin}${path.delimiter}${before}`;
  return path.join(bin, "asked");
}

it("takes a frame where a variety without a picture is named, and tells where it would go", async () => {
  const cwd = garden({ "episodes/june/june.mp4": "film" });
  const asked = await standIn(cwd);
  const { exitCode, out } = await run(["wrap", "june"], { cwd });
  expect(exitCode).toBe(0);
  expect(out).toContain("Musselburgh, at 0:03: plates/2026-06-14-musselburgh.jpg → photos/varieties/musselburgh/");
  expect(out).toContain("None of them is on any page.");
  const lines = readFileSync(asked, "utf8").trim().split("\n");
  // A second after each name, which stands somewhere within its caption.
  expect(lines.map((line) => /-ss (\S+)/.exec(line)?.[1])).toEqual(["4.0", "10.9"]);
  const picture = await sharp(path.join(cwd, "out/wraps/june/plates/2026-06-14-uchiki-kuri.jpg")).metadata();
  expect(picture).toMatchObject({ format: "jpeg", width: 64 });
  expect(picture.exif).toBeUndefined();
  expect(existsSync(path.join(cwd, "content/photos"))).toBe(false);
});

it("asks nothing of several films, of which nobody knows the right one", async () => {
  const one = garden({ "episodes/june/one.mp4": "film", "episodes/june/two.mp4": "film" });
  const asked = await standIn(one);
  const { out } = await run(["wrap", "june"], { cwd: one });
  expect(out).not.toContain("plates/");
  expect(existsSync(asked)).toBe(false);
});

it("offers nothing where the program is not on the machine", async () => {
  const cwd = garden({ "episodes/june/june.mp4": "film" });
  process.env.PATH = path.join(cwd, "nothing-here");
  const { exitCode, out, err } = await run(["wrap", "june"], { cwd });
  expect(exitCode).toBe(0);
  expect(out).not.toContain("plates/");
  expect(err).not.toContain("frame");
});

it("takes the film that is named, and says when there is none of that name", async () => {
  const cwd = garden();
  await standIn(cwd);
  writeFileSync(path.join(cwd, "cut.mov"), "film");
  expect((await run(["wrap", "june", "--film", "cut.mov"], { cwd })).out).toContain(
    "plates/2026-06-14-musselburgh.jpg",
  );
  const { exitCode, err } = await run(["wrap", "june", "--film", "gone.mov"], { cwd });
  expect([exitCode, err]).toEqual([3, expect.stringContaining("gone.mov")]);
});
