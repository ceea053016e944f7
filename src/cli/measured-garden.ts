/** The garden with what its photos show of growth, measured once and remembered in a corner of the cache of its own. */
import path from "node:path";
import { type AlignedViewpoint, measureGrowth } from "../photos/index.ts";
import type { Loaded } from "./load-garden.ts";

export interface Measured extends Loaded {
  /** What comparison copies are made from. */
  readonly viewpoints: readonly AlignedViewpoint[];
}

/** `only`: paths of the photos that are asked about. */
export async function measured(loaded: Loaded, only?: ReadonlySet<string>): Promise<Measured> {
  const { garden, recordsDir, cacheDir, report } = loaded;
  const { growth, viewpoints } = await measureGrowth(garden, {
    recordsDir,
    cacheDir: path.join(cacheDir, "growth"),
    only,
    onProgress: (done, total) => report.progress("Measuring photos", done, total),
  });
  report.end();
  return { ...loaded, garden: { ...garden, growth }, viewpoints };
}
