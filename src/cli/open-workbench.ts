/** The workbench of `watch`: what pages of its own may write into the records, all through one door. */
import type { Garden } from "../model.ts";
import type { Workbench } from "../site/index.ts";
import type { Effects } from "./effects.ts";
import { photoNamer } from "./name-photos.ts";
import { writtenFiles } from "./written-files.ts";

export interface OpenWorkbench extends Workbench {
  /** From now on this is the garden that is written about. */
  see(garden: Garden): void;
}

export function openWorkbench(first: Garden, recordsDir: string, effects: Effects): OpenWorkbench {
  const files = writtenFiles(recordsDir, effects);
  const naming = photoNamer(first, files, effects);
  return {
    naming,
    stateBeside: naming.state,
    stateOf: files.state,
    undo: files.undo,
    see(newest) {
      naming.see(newest);
    },
  };
}
