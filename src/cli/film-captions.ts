/** Captions that lie beside episodes, read here so that every room gets their bytes as plain data. */
import path from "node:path";
import type { Episode } from "../model.ts";
import type { RecordsFolder } from "../records/index.ts";
import type { FilmTexts } from "../site/index.ts";
import { type GlossaryWord, readGlossary } from "../wrap/index.ts";
import type { Effects } from "./effects.ts";

/** The same words in two formats are one film's: WebVTT keeps more than SubRip, and of several files the first by name stands. */
export function captionFileOf({ captions }: Pick<Episode, "captions">): string | undefined {
  const [first] = [...captions].sort(
    (a, b) => Number(/\.srt$/i.test(a)) - Number(/\.srt$/i.test(b)) || (a < b ? -1 : 1),
  );
  return first;
}

/** By episode id. A file that cannot be read tells nothing here; `wrap` says what is wrong with it. */
export async function readCaptionFiles(
  folder: RecordsFolder,
  episodes: Iterable<Episode>,
): Promise<FilmTexts["captions"]> {
  const found = new Map<string, { readonly file: string; readonly bytes: Uint8Array }>();
  for (const episode of episodes) {
    const file = captionFileOf(episode);
    const bytes = file === undefined ? undefined : await folder.read(file).catch(() => undefined);
    if (file !== undefined && bytes !== undefined) found.set(episode.id, { file, bytes });
  }
  return found;
}

/** The person's own words and how they are heard; undefined without a list of them. */
export async function ownGlossary(recordsDir: string, effects: Effects): Promise<readonly GlossaryWord[] | undefined> {
  const text = await effects.readText(path.join(recordsDir, "glossary.txt"));
  return text === undefined ? undefined : readGlossary(text);
}
