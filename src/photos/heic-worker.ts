/** Runs in a thread of its own: decodes one HEIC after another, since each takes about a second and 120 MB. */
import { parentPort } from "node:worker_threads";

export interface HeicTask {
  readonly bytes: Uint8Array;
  readonly pixelLimit: number;
}

/** RGBA pixels, upright, or why there are none. */
export type HeicAnswer =
  | { readonly width: number; readonly height: number; readonly data: Uint8Array<ArrayBuffer> }
  | { readonly refused: "no decoder" | "too large" | "damaged"; readonly said: string };

parentPort?.on("message", async (task: HeicTask) => {
  const answer = await decode(task);
  parentPort?.postMessage(answer, "data" in answer ? [answer.data.buffer] : []);
});

async function decode({ bytes, pixelLimit }: HeicTask): Promise<HeicAnswer> {
  // Optional: the decoder's licence (LGPL-3) may keep people from installing it.
  const decoder = await import("heic-decode").then(
    (module) => module.default,
    () => undefined,
  );
  if (!decoder) return { refused: "no decoder", said: "" };
  try {
    const images = await decoder.all({ buffer: bytes });
    try {
      const [first] = images;
      if (!first) return { refused: "damaged", said: "it holds no picture" };
      if (first.width * first.height > pixelLimit) return { refused: "too large", said: "" };
      const { width, height, data } = await first.decode();
      return { width, height, data: new Uint8Array(data.buffer) };
    } finally {
      images.dispose();
    }
  } catch (error) {
    return { refused: "damaged", said: error instanceof Error ? error.message : String(error) };
  }
}
