/** The workbench of `watch`: what pages of its own may write into the records, all through one door. */
import type { Day, Garden } from "../model.ts";
import type { Workbench } from "../site/index.ts";
import { thingAnswerer } from "./answer-by-tap.ts";
import type { Effects } from "./effects.ts";
import { photoNamer } from "./name-photos.ts";
import { sentBefore } from "./sent-before.ts";
import { tapSettler } from "./settle-by-tap.ts";
import { outdoorTaker } from "./take-outdoors.ts";
import { photoTaker } from "./take-photos.ts";
import { noteWriter } from "./write-notes.ts";
import { writtenFiles } from "./written-files.ts";

export interface OpenWorkbench extends Workbench {
  /** From now on this is the garden that is written about, and the day it is. */
  see(garden: Garden, today: Day): void;
}

export function openWorkbench(garden: Garden, today: Day, recordsDir: string, effects: Effects): OpenWorkbench {
  const files = writtenFiles(recordsDir, effects);
  const naming = photoNamer(garden, files, effects);
  const notes = noteWriter({ garden, today }, recordsDir, files, effects);
  const questions = tapSettler({ garden, today }, recordsDir, files, effects);
  const things = thingAnswerer({ garden, today, recordsDir, files, effects });
  const photos = photoTaker(garden, recordsDir, effects);
  return {
    naming,
    notes,
    questions,
    things,
    photos,
    outdoors: outdoorTaker(notes, photos, sentBefore(recordsDir, effects), effects),
    stateBeside: naming.state,
    stateOf: files.state,
    undo: files.undo,
    see(newest, on) {
      naming.see(newest);
      notes.see(newest, on);
      questions.see(newest, on);
      things.see(newest, on);
      photos.see(newest);
    },
  };
}
