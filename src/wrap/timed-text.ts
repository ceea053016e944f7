/**
 * Text with a time at the start of each paragraph, as people paste it: "1:05 and this is the bean row", "[00:01:05] …",
 * "0:38 - 1:02 …", "**0:38** …", a line "Ann 0:38" above what she says. A second time is when it ends, and is no speech.
 */
import { type Draft, Faults, inOrder, SHORT_CUE } from "./caption-faults.ts";
import type { Captions, TextPiece } from "./read-captions.ts";

/** A time without a name for its parts: hours may be missing, and frames of some rate may follow the seconds. */
const clock = /(?:\d{1,9}:\d{1,2}:\d{2}[:;]\d{2,3}|(?:\d{1,9}:)?\d{1,2}:\d{2}(?:[.,]\d{1,9})?)(?!:?\d)/y;
/** What stands around times: bullets, brackets, marks for bold. */
const before = /(?:[-*>•][ \t]+)?[[(*_]*/y;
const after = /[\])*_]*/y;
const between = /[ \t]*(?:-->|[-–—→,/]|to\b)[ \t]*[[(*_]*/y;
const blanks = /[ \t]*/y;
/** Between times and text. */
const gap = /[ \t]*[-–—:|]{0,3}[*_]*[ \t]*/y;
/** Who speaks, alone on a line with the time: "Ann 0:38", "Speaker 2 (0:38)". */
const speaker =
  /^\p{Lu}[\p{L}'’.-]{0,30}(?: (?:\p{L}[\p{L}'’.-]{0,30}|\d{1,2}(?=[,:]?[ \t]))){0,2}[ \t]{0,3}[,:]?[ \t]{0,3}(?=[[(]?\d)/u;

interface Opening {
  readonly start: number;
  readonly end?: number | undefined;
  /** Where the text begins. */
  readonly text: number;
  readonly frames: boolean;
}

export function readTimedText(file: string, lines: readonly string[]): Captions {
  const faults = new Faults(file);
  const plain = lines.map((line) => opening(line, 0));
  const openings = plain.some((one) => one !== undefined) ? plain : lines.map(spokenBy);
  const drafts: (Omit<Draft, "text" | "pieces"> & { text: string; pieces: TextPiece[] })[] = [];
  lines.forEach((line, index) => {
    const opened = openings[index];
    if (opened !== undefined) {
      const { start, end, frames } = opened;
      drafts.push({
        start: { ms: start },
        end: end === undefined ? undefined : { ms: end },
        text: "",
        pieces: [],
        settings: "",
        place: { file, line: index + 1, column: 1 },
      });
      if (frames)
        faults.add(
          "captions/frames",
          index + 1,
          1,
          "This time counts frames, and nothing says how many make a second.",
          "It was read to the second; give captions with thousandths to have it nearer.",
        );
    }
    const from = Math.max(opened?.text ?? 0, /\S|$/.exec(line)?.index ?? 0);
    const text = line.slice(from).trimEnd();
    const draft = drafts.at(-1);
    if (draft === undefined || text === "") return;
    draft.pieces.push({ at: draft.text === "" ? 0 : draft.text.length + 1, line: index, column: from });
    draft.text += `${draft.text === "" ? "" : "\n"}${text}`;
  });
  const ended = drafts.map(({ end, ...draft }, index) => ({
    ...draft,
    end: end ?? {
      ms: drafts[index + 1]?.start?.ms ?? (draft.start?.ms ?? 0) + Math.max(SHORT_CUE, draft.text.length * 60),
    },
  }));
  return { file, format: "timed text", ...inOrder(ended, faults, lines.length) };
}

function opening(line: string, from: number): Opening | undefined {
  const start = timeAt(line, skip(blanks, line, from));
  if (start === undefined) return undefined;
  const second = skip(between, line, start.to);
  const end = second === start.to ? undefined : timeAt(line, second);
  return {
    start: start.ms,
    end: end?.ms,
    frames: start.frames,
    text: skip(gap, line, (end ?? start).to),
  };
}

/** Text after the time would be a sentence that names a time of day. */
function spokenBy(line: string): Opening | undefined {
  const who = speaker.exec(line.trimStart());
  const found = who === null ? undefined : opening(line.trimStart(), who[0].length);
  return found === undefined || found.text < line.trim().length ? undefined : { ...found, text: line.length };
}

function timeAt(line: string, from: number): { ms: number; to: number; frames: boolean } | undefined {
  const at = skip(before, line, from);
  const to = skip(clock, line, at);
  if (to === at) return undefined;
  const parts = line
    .slice(at, to)
    .split(/[:;]/)
    .map((part) => Number(part.replace(",", ".")));
  const frames = parts.length === 4;
  const [seconds = 0, minutes = 0, hours = 0] = (frames ? parts.slice(0, 3) : parts).toReversed();
  if (seconds >= 60) return undefined;
  return { ms: Math.round(((hours * 60 + minutes) * 60 + seconds) * 1000), to: skip(after, line, to), frames };
}

/** Where a sticky pattern ends that begins here; the same place when it does not. */
function skip(pattern: RegExp, line: string, from: number): number {
  pattern.lastIndex = from;
  return pattern.test(line) ? pattern.lastIndex : from;
}
