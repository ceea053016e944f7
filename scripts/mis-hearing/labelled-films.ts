/** The demo's labelled films for tests and the bench: captions clean and automatic, what was said, what was promised. */
import { readFileSync } from "node:fs";
import path from "node:path";
import type { Episode, Garden } from "../../src/model.ts";
import { openRecordsFolder, readRecords } from "../../src/records/index.ts";
import { growGarden } from "../../src/timeline/index.ts";
import { type CaptionFile, openCaptions } from "../../src/wrap/index.ts";
import type { NameTruth } from "./automatic-words.ts";

export const demoContent = path.join(import.meta.dirname, "../../demo-content");
export const demoToday = "2026-07-18";

/** Every second film by date. Rules were made and set on the first half only; of the other half only totals were looked at. */
export const tuned: readonly string[] = ["2024-06-tour", "2025-03-opening", "2025-08-tour", "2026-05-tour"];
export const heldBack: readonly string[] = ["2024-09-harvest", "2025-06-tour", "2025-11-bed-down", "2026-06-tour"];

export interface PromiseTruth {
  /** Seconds at which its first and its last word begin. */
  readonly at: number;
  readonly to: number;
  readonly said: string;
  readonly bed: string;
  readonly due: string | null;
}

export interface LabelledFilm {
  /** The record without the times of its stops, so that they have to be heard. */
  readonly episode: Episode;
  /** With them: seconds. */
  readonly stops: readonly { readonly bed: string; readonly at: number }[];
  readonly clean: CaptionFile;
  readonly automatic: CaptionFile;
  readonly names: readonly NameTruth[];
  readonly promises: readonly PromiseTruth[];
}

export async function demoGarden(): Promise<Garden> {
  return growGarden(await readRecords(await openRecordsFolder(demoContent), { today: demoToday }), []);
}

export function labelledFilm(garden: Garden, id: string): LabelledFilm {
  const episode = garden.episodes.get(id) as Episode;
  const read = (file: string) => readFileSync(path.join(demoContent, file));
  const labelled = (name: string) => read(`episodes/${id}/labelled/${name}`);
  const clean = episode.captions.find((file) => file.endsWith(".vtt")) as string;
  return {
    episode: { ...episode, stops: episode.stops.map(({ bed }) => ({ bed })) },
    stops: episode.stops.flatMap(({ bed, at }) => (at === undefined ? [] : [{ bed, at }])),
    clean: openCaptions(clean, read(clean)),
    automatic: openCaptions("automatic.vtt", labelled("automatic.vtt")),
    names: (JSON.parse(labelled("names.json").toString()) as { names: NameTruth[] }).names,
    promises: (JSON.parse(labelled("promises.json").toString()) as { promises: PromiseTruth[] }).promises,
  };
}
