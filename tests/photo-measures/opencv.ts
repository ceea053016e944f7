/** OpenCV's WebAssembly build, the yardstick for thresholds. It becomes usable some time after it is loaded. */

import cvModule from "@techstark/opencv-js";

export type OpenCv = typeof cvModule;

export async function openCv(): Promise<OpenCv> {
  const cv = await (cvModule as OpenCv | Promise<OpenCv>);
  if (!("Mat" in cv)) await new Promise<void>((resolve) => Object.assign(cv, { onRuntimeInitialized: resolve }));
  return cv;
}
