/** What films say, from the captions beside their records, so that a brief knows what viewers have been told. */
import type { SpokenLine } from "../model.ts";
import type { FilmTexts } from "../site/index.ts";
import { type CaptionFile, openCaptions } from "../wrap/index.ts";

/** Lines by episode id. */
export function spokenLines(captions: FilmTexts["captions"]): ReadonlyMap<string, readonly SpokenLine[]> {
  return new Map([...captions].map(([episode, { file, bytes }]) => [episode, linesOf(openCaptions(file, bytes))]));
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
