/** A still picture out of a clip, by a program on the machine: none is shipped, and without one clips only have their day. */
import { execFile } from "node:child_process";
import sharp from "sharp";

/** No such program is installed. */
export class NoFilmProgram extends Error {}

const program = "ffmpeg";
const longestMs = 60_000;
const mostBytes = 250_000_000;

/** The frame of a film at so many seconds, as a JPEG that tells nothing else. */
export async function filmFrame(file: string, second: number): Promise<Uint8Array> {
  const frame = await run(["-nostdin", "-v", "error", "-ss", second.toFixed(1), "-i", file, ...asPng]);
  if (frame.length === 0) throw new Error("it holds no picture there");
  return sharp(frame).jpeg({ quality: 90 }).toBuffer();
}

/** A second in, where the camera has settled; of a shorter clip its first frame. As PNG, upright. */
export async function stillFrame(file: string): Promise<Uint8Array> {
  for (const second of ["1", "0"]) {
    const frame = await run(["-nostdin", "-v", "error", "-ss", second, "-i", file, ...asPng]);
    if (frame.length > 0) return frame;
  }
  throw new Error("it holds no picture");
}

const asPng = ["-map", "0:v:0", "-frames:v", "1", "-map_metadata", "-1", "-f", "image2pipe", "-c:v", "png", "-"];

function run(argv: readonly string[]): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    const options = { encoding: "buffer", timeout: longestMs, maxBuffer: mostBytes } as const;
    execFile(program, argv, options, (error, stdout) => {
      if (error === null) resolve(stdout);
      else reject((error as NodeJS.ErrnoException).code === "ENOENT" ? new NoFilmProgram() : error);
    });
  });
}
