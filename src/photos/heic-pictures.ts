/**
 * HEIC, the format phones save by default. The library behind the other pictures cannot decode it for its patents, so a
 * decoder in WebAssembly does, in one worker and one picture at a time. It turns the picture as the container says; the
 * EXIF orientation, which phones write as well, must not turn it again (ISO/IEC 23008-12, 6.5.10).
 */
import path from "node:path";
import { Worker } from "node:worker_threads";
import { crc32, deflateSync } from "node:zlib";
import pLimit from "p-limit";
import sharp from "sharp";
import { longestSide, pixelLimit } from "./copy-recipe.ts";
import type { HeicAnswer, HeicTask } from "./heic-worker.ts";

/** The decoder is not installed. */
export class NoHeicDecoder extends Error {}

/** A picture that takes longer is damaged in a way that never ends: 100 times what a phone's picture takes. */
const patienceMs = 60_000;

export class HeicPictures {
  readonly #oneAtATime = pLimit(1);
  #worker: Worker | undefined;

  /**
   * The picture as a PNG no wider than asked for, with its colour profile, ready for sharp. Throws NoHeicDecoder, or an
   * error in the words that other decoders use.
   */
  async decode(bytes: Uint8Array, width: number): Promise<Buffer> {
    const answer = await this.#oneAtATime(() => this.#ask({ bytes, pixelLimit }));
    if ("refused" in answer) {
      if (answer.refused === "no decoder") throw new NoHeicDecoder();
      throw new Error(answer.refused === "too large" ? "Input image exceeds pixel limit" : answer.said);
    }
    const raw = { width: answer.width, height: answer.height, channels: 4 } as const;
    const png = await sharp(answer.data, { raw, limitInputPixels: pixelLimit })
      .resize({ width, height: longestSide, fit: "inside", withoutEnlargement: true })
      .png({ compressionLevel: 0 })
      .toBuffer();
    const { icc } = await sharp(bytes)
      .metadata()
      .catch(() => ({ icc: undefined }));
    return icc ? withProfile(png, icc) : png;
  }

  async close(): Promise<void> {
    await this.#worker?.terminate();
    this.#worker = undefined;
  }

  #ask(task: HeicTask): Promise<HeicAnswer> {
    // Built for a registry the worker is a .js file beside this one. What the decoder prints, the problem says better.
    const file = new URL(`./heic-worker${path.extname(import.meta.url)}`, import.meta.url);
    this.#worker ??= new Worker(file, { stdout: true, stderr: true });
    const worker = this.#worker;
    return new Promise<HeicAnswer>((resolve) => {
      const settle = (answer: HeicAnswer) => {
        clearTimeout(patience);
        worker.off("message", settle).off("error", failed).off("exit", ended);
        resolve(answer);
      };
      const broken = (said: string) => {
        settle({ refused: "damaged", said });
        void this.close();
      };
      const failed = (error: unknown) => broken(String(error));
      const ended = () => broken("the decoder gave up");
      const patience = setTimeout(() => broken("it never comes to an end"), patienceMs);
      worker.on("message", settle).on("error", failed).on("exit", ended);
      worker.postMessage(task);
    });
  }
}

/** The pixels are still in the phone's own colours: the profile says which, in a chunk before the first pixels. */
function withProfile(png: Buffer, profile: Buffer): Buffer {
  const content = Buffer.concat([Buffer.from("iCCPicc\0\0", "latin1"), deflateSync(profile)]);
  const chunk = Buffer.alloc(content.length + 8);
  chunk.writeUInt32BE(content.length - 4, 0);
  content.copy(chunk, 4);
  chunk.writeUInt32BE(crc32(content), content.length + 4);
  const afterHeader = 33;
  return Buffer.concat([png.subarray(0, afterHeader), chunk, png.subarray(afterHeader)]);
}
