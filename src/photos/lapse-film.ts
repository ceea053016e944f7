/** A time-lapse as a film that an editing program takes, by a program on the machine: none is shipped, and without one there is no film. */
import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdir, stat } from "node:fs/promises";
import path from "node:path";
import { makeWhole } from "../store/index.ts";
import type { LapseFrames } from "./lapse-frames.ts";

const program = "ffmpeg";

/** Frames a second: the time each photo stays is a whole number of them. */
const rate = 10;

/** Minutes are a film's; a time-lapse takes seconds. */
const longestMs = 120_000;

/** The film's path, made unless it is there; undefined where the program is not on the machine, or has no film to give. */
export async function filmOfFrames(
  file: string,
  frames: () => Promise<LapseFrames>,
  stays: readonly number[],
): Promise<string | undefined> {
  if ((await stat(file).catch(() => undefined)) !== undefined) return file;
  if (!(await isThere())) return undefined;
  const drawn = await frames();
  try {
    await mkdir(path.dirname(file), { recursive: true });
    await makeWhole(file, (part) => encode(part, drawn, stays));
    return file;
  } catch {
    return undefined;
  }
}

function isThere(): Promise<boolean> {
  return new Promise((resolve) => {
    const asking = spawn(program, ["-version"], { stdio: "ignore" });
    asking.once("error", () => resolve(false)).once("exit", (code) => resolve(code === 0));
  });
}

/** Each photo as often as it stays; nothing is told of the machine or the hour. */
async function encode(part: string, { data, width, height }: LapseFrames, stays: readonly number[]): Promise<void> {
  const bytes = width * height * 3;
  const raw = ["-f", "rawvideo", "-pix_fmt", "rgb24", "-s", `${width}x${height}`, "-r", String(rate), "-i", "-"];
  const out = ["-an", "-pix_fmt", "yuv420p", "-map_metadata", "-1", "-fflags", "+bitexact", "-movflags", "+faststart"];
  const making = spawn(program, ["-v", "error", "-y", ...raw, ...out, "-f", "mp4", part], {
    stdio: ["pipe", "ignore", "ignore"],
    timeout: longestMs,
  });
  const ended = once(making, "exit");
  // A program that gives up closes its ear; what it says then is its exit code.
  making.stdin.on("error", () => undefined);
  for (const [at, stay] of stays.entries())
    for (let again = 0; again < Math.round((stay / 1000) * rate); again++)
      if (!making.stdin.write(data.subarray(at * bytes, (at + 1) * bytes)) && making.exitCode === null)
        await Promise.race([once(making.stdin, "drain"), ended]);
  making.stdin.end();
  const [code] = await ended;
  if (code !== 0) throw new Error(`${program} ended with ${code}`);
}
