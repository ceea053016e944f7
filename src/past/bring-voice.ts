/** The words of a voice note as a note of its day, a line for each thing that was said, in the words they were said in. */
import type { Day, Records } from "../model.ts";
import { type RecordsFolder, readRecords, transcriptEnding } from "../records/index.ts";
import { openCaptions } from "../wrap/index.ts";
import { FreeNames, type NewFile, recordOf, slugOf, withFiles } from "./new-file.ts";

export interface VoiceRequest {
  /** Of its words. */
  readonly bytes: Uint8Array;
  readonly text: string;
  /** Their file, below photos/. */
  readonly words: string;
  /** The sound beside them, likewise. */
  readonly sound: string;
  readonly day: Day;
  /** Title of the bed it lies with. */
  readonly bed: string | undefined;
  readonly folder: RecordsFolder;
  readonly today: Day;
  readonly isPublic: boolean;
}

export interface BroughtVoice {
  /** None where nothing was said. */
  readonly notes: readonly NewFile[];
  /** The records as they would be. */
  readonly records: Records;
}

export async function bringVoice(request: VoiceRequest): Promise<BroughtVoice> {
  const { words, sound, day, bed, folder, today, isPublic } = request;
  const lines = linesSaid(request);
  const name = words.slice(words.lastIndexOf("/") + 1);
  const file = new FreeNames(await folder.list()).take(`notes/${day.slice(0, 4)}/${day}-${slugOfWords(name, day)}.md`);
  const front = [
    `date: ${day}`,
    ...(bed === undefined ? [] : [`bed: ${JSON.stringify(bed)}`]),
    ...(isPublic ? [] : ["private: true"]),
    `voice note: ${JSON.stringify(sound)}`,
  ];
  const notes =
    lines.length === 0 ? [] : [{ file, content: recordOf(front, lines.map((line) => `- ${line}\n`).join("")) }];
  return { notes, records: await readRecords(withFiles(folder, notes), { today }) };
}

/** The day stands in front already. */
function slugOfWords(name: string, day: Day): string {
  const slug = slugOf(name.replace(transcriptEnding, ".txt"));
  const words = slug.replace(day, "").split("-");
  return words.filter((word) => word !== "").join("-") || "voice";
}

/** Milliseconds of silence after which another thing is spoken of, where no mark says so. */
const pause = 1_500;

/** What was said, sentence by sentence. */
export function linesSaid({ bytes, text, words }: Pick<VoiceRequest, "bytes" | "text" | "words">): readonly string[] {
  return passages(words, bytes, text)
    .flatMap(sentences)
    .map(asLine)
    .filter((line) => /[\p{L}\d]/u.test(line));
}

function passages(words: string, bytes: Uint8Array, text: string): readonly string[] {
  if (!/\.(?:vtt|srt)$/i.test(words)) return text.split(/\r\n|\n|\r/);
  const found: string[] = [];
  let ended = Number.NEGATIVE_INFINITY;
  let before = "";
  for (const { start, end, text: shown } of openCaptions(words, bytes).cues) {
    const said = shown
      .replace(/<[^<>]*>/g, "")
      .replace(/\s+/g, " ")
      .trim();
    // Captions that keep showing the line before say it once.
    if (said === "" || said === before) continue;
    if (found.length === 0 || start - ended > pause) found.push(said);
    else found.push(`${found.pop()} ${said}`);
    before = said;
    ended = end;
  }
  return found;
}

/** A mark ends a sentence where a capital letter or a number begins the next: "approx. 3 kg" and "1.5 m" go on. */
function sentences(passage: string): readonly string[] {
  return passage.split(/(?<=\p{L}{3}[.!?…]|\d[!?…]|\d{2}\.)\s+(?=["'“‘]?\p{Lu})/u);
}

/** Nothing of it is to be taken for a list, a heading or a settled reading. */
function asLine(sentence: string): string {
  return sentence
    .replace(/\s+/g, " ")
    .trim()
    .replace(/^(?:[-*+=#>–—]+\s*)+/u, "")
    .replace(/(?<=\p{L})\.$/u, "");
}
