/** OpenCV's WebAssembly build, the yardstick for thresholds. */

import { createRequire } from "node:module";

type OpenCv = typeof import("@techstark/opencv-js");

/**
 * Required, not imported, and never awaited nor what a promise resolves to: the library has a `then` of its own that
 * hands over itself, and whoever awaits it (an import in tests does) goes round for ever.
 */
export const cv = createRequire(import.meta.url)("@techstark/opencv-js") as OpenCv;

/** Resolves when OpenCV can be used. */
export function openCvReady(): Promise<void> {
  if ("Mat" in cv) return Promise.resolve();
  return new Promise((resolve) => Object.assign(cv, { onRuntimeInitialized: resolve }));
}
