/** Captions that lie beside episodes, read here so that every room gets their bytes as plain data. */
import path from "node:path";
import type { Episode } from "../model.ts";
import type { RecordsFolder } from "../records/index.ts";
import type { FilmTexts } from "../site/index.ts";
import { type GlossaryWord, readGlossary } from "../wrap/index.ts";
import type { Effects } from "./effects.ts";

/** From the form that keeps most of what captions say down to those that are only refused in words. */
const forms = ["vtt", "srt", "sbv", "ass", "ssa", "txt", "md"];

/** The same words in several formats are one film's, and of several files of one form the first by name stands. */
export function captionFileOf({ captions }: Pick<Episode, "captions">): string | undefined {
  const rank = (file: string) => {
    const at = forms.indexOf(path.extname(file).slice(1).toLowerCase());
    return at < 0 ? forms.length : at;
  };
  const [first] = [...captions].sort((a, b) => rank(a) - rank(b) || (a < b ? -1 : 1));
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
