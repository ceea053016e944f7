/** What films say, read from the captions beside their records, so that a brief knows what viewers have been told. */
import type { Episode, SpokenLine } from "../model.ts";
import type { RecordsFolder } from "../records/index.ts";
import { type CaptionFile, openCaptions } from "../wrap/index.ts";

/** Lines by episode id. A caption file that cannot be read tells nothing here; `wrap` says what is wrong with it. */
export async function readSpoken(
  folder: RecordsFolder,
  episodes: Iterable<Episode>,
): Promise<ReadonlyMap<string, readonly SpokenLine[]>> {
  const spoken = new Map<string, readonly SpokenLine[]>();
  for (const { id, captions } of episodes) {
    // The same words in two formats are one film's; WebVTT is the one the sites use.
    const file = captions.find((name) => /\.vtt$/i.test(name)) ?? captions[0];
    if (file === undefined) continue;
    const bytes = await folder.read(file).catch(() => undefined);
    if (bytes !== undefined) spoken.set(id, linesOf(openCaptions(file, bytes)));
  }
  return spoken;
}

/** One line for each caption, with the words that it is the first to show. */
function linesOf({ cues, speech }: CaptionFile): readonly SpokenLine[] {
  const lines: SpokenLine[] = [];
  for (const [cue, words] of Map.groupBy(speech.words, (word) => word.cue)) {
    const [first] = words;
    const place = cues[cue]?.place;
    if (first === undefined || place === undefined) continue;
    lines.push({ text: words.map(({ text, mark }) => `${text}${mark}`).join(" "), at: first.at / 1000, place });
  }
  return lines;
}
