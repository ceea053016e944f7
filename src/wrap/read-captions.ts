/**
 * A caption file's text to cues. Written here because the caption parsers to be had drop a cue whose times are wrong without
 * a word, and tell nobody where a word stood; here every cue that was begun is kept, and what was wrong with it is said.
 */
import type { Place, Problem } from "../model.ts";
import { readBlocks, readSbv, sbvTimes, vttHeader } from "./caption-blocks.ts";
import type { CaptionFormat } from "./caption-times.ts";
import { readScript, refused, scriptHead } from "./other-captions.ts";
import { readTimedText } from "./timed-text.ts";

export interface Cue {
  /** Milliseconds into the film. */
  readonly start: number;
  readonly end: number;
  /** Text as the file has it, tags and line breaks included. */
  readonly text: string;
  /** Where each line of it stands in the file. */
  readonly pieces: readonly TextPiece[];
  /** Settings after a WebVTT time line: "align:start line:90%". */
  readonly settings: string;
  readonly place: Place;
}

/** From `at` on, a cue's text stands in the file from this line and column on; both from 0. */
export interface TextPiece {
  readonly at: number;
  readonly line: number;
  readonly column: number;
}

export interface Captions {
  readonly file: string;
  readonly format: CaptionFormat | "sbv" | "ass" | "timed text" | "none";
  /** In order of start; cues that start together keep the file's order. */
  readonly cues: readonly Cue[];
  readonly problems: readonly Problem[];
}

export function readCaptions(file: string, text: string): Captions {
  const lines = text.split("\n");
  if (vttHeader.test(lines[0] ?? "")) return readBlocks(file, lines, "vtt");
  const other = refused(file, text);
  if (other !== undefined) return other;
  if (scriptHead.test(text)) return readScript(file, lines);
  const first = lines.find((line) => line.trim() !== "")?.trim() ?? "";
  if (sbvTimes.test(first)) return readSbv(file, lines);
  const arrow = lines.find((line) => line.includes("-->"));
  if (arrow === undefined) return readTimedText(file, lines);
  return readBlocks(file, lines, /\d[.]\d+\s*-->/.test(arrow) ? "vtt" : "srt");
}
