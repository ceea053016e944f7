/** A caption file's bytes to captions, with what is to be said about the file as a whole. */
import type { Problem } from "../model.ts";
import { problem, sortProblems } from "../records/index.ts";
import { decodeCaptions, type Encoding } from "./caption-encoding.ts";
import { sayTime } from "./caption-times.ts";
import { type Captions, type Cue, readCaptions } from "./read-captions.ts";
import { type Speech, spokenWords } from "./spoken-words.ts";

export interface CaptionFile extends Captions {
  readonly encoding: Encoding;
  /** The file's text as it is, with its line ends. */
  readonly original: string;
  readonly speech: Speech;
}

const encodingNames: Readonly<Record<Exclude<Encoding, "utf-8">, string>> = {
  "utf-16le": "UTF-16",
  "utf-16be": "UTF-16",
  "windows-1252": "Windows-1252",
};

/**
 * Reads a caption file. `length` is how long the film lasts in milliseconds, when that is known; nothing is cut off for
 * being past it.
 */
export function openCaptions(file: string, bytes: Uint8Array, length?: number): CaptionFile {
  const { text, encoding, original } = decodeCaptions(bytes);
  const captions = readCaptions(file, text);
  const speech = spokenWords(captions.cues);
  const problems = [
    ...captions.problems,
    ...(encoding === "utf-8" ? [] : [otherEncoding(file, encoding)]),
    ...(speech.rolling ? [] : overlapping(captions.cues)),
    ...(length === undefined ? [] : pastTheEnd(captions.cues, length)),
  ];
  return { ...captions, problems: sortProblems(problems), encoding, original, speech };
}

function otherEncoding(file: string, encoding: Exclude<Encoding, "utf-8">): Problem {
  return problem(
    "captions/encoding",
    { file, line: 1, column: 1 },
    `This file was read as ${encodingNames[encoding]}, because it is not UTF-8.`,
    "Nothing has to be done unless letters look wrong; corrected captions are written in UTF-8.",
  );
}

/** Captions that overlap are allowed (two people speaking), so the first is told with how many there are. */
function overlapping(cues: readonly Cue[]): Problem[] {
  const found = cues.filter((cue, index) => index > 0 && cue.start < (cues[index - 1] as Cue).end);
  const [first] = found;
  if (first === undefined) return [];
  const rest = found.length === 1 ? "" : ` So do ${found.length - 1} more.`;
  return [
    problem(
      "captions/overlap",
      first.place,
      `This caption begins at ${sayTime(first.start)}, while the one before it is still shown.${rest}`,
      "Leave it when two people speak at once; else end the earlier one sooner.",
    ),
  ];
}

function pastTheEnd(cues: readonly Cue[], length: number): Problem[] {
  const late = cues.filter(({ start }) => start >= length);
  const [first] = late;
  if (first === undefined) return [];
  return [
    problem(
      "captions/past-end",
      first.place,
      `The film ends at ${sayTime(length)}, and ${late.length === 1 ? "a caption begins" : `${late.length} captions begin`} after that, the first at ${sayTime(first.start)}.`,
      "Check that these captions belong to this cut of the film; they were read all the same.",
    ),
  ];
}
