/**
 * Captions to spoken words: each once, however often a rolling caption shows it, with the time it is said and every place
 * where it stands in the file, so that whatever is found in the speech can be pointed to and corrected there.
 */

import { placeInFile, shownText } from "./caption-text.ts";
import { readTime } from "./caption-times.ts";
import type { Cue } from "./read-captions.ts";

/** Where a word stands: the index of its cue and the offsets in the cue's own text. */
export interface Shown {
  readonly cue: number;
  readonly start: number;
  readonly end: number;
}

export interface Word extends Shown {
  /** As written, without the marks around it. */
  readonly text: string;
  /** Small letters and digits without accents, apostrophes and hyphens: "detampes". */
  readonly plain: string;
  /** Milliseconds into the film. */
  readonly at: number;
  /** The mark after it that ends a sentence or a part of one. */
  readonly mark: "" | "," | "." | "?" | "!";
  /** Other places that show the same spoken word again. */
  readonly again: readonly Shown[];
}

export interface Speech {
  readonly words: readonly Word[];
  /** Sounds that captions describe. */
  readonly sounds: readonly { readonly cue: number; readonly text: string }[];
  /** Captions that keep showing the line before: automatic ones. */
  readonly rolling: boolean;
  /** Sentences end in marks. */
  readonly punctuated: boolean;
  /** Names have capital letters. */
  readonly cased: boolean;
  /** Milliseconds: when the last caption ends. */
  readonly end: number;
}

const wordPattern = /[\p{L}\p{N}]+(?:['’.,\-‐‑/][\p{L}\p{N}]+)*%?/gu;
/** The same for plain English letters, which take a third of the time. */
const plainPattern = /[A-Za-z0-9]+(?:['.,\-/][A-Za-z0-9]+)*%?/g;
const isPlain = /^[\x20-\x7e\n]*$/;

/** Milliseconds between two captions within which the second may still show the first one's words. */
const ROLLS_ON = 1500;

/** Share of captions beginning with words of the one before, from which a file is taken as rolling. */
const ROLLING_SHARE = 0.25;

/** One sentence in about so many words ends in a mark when a file has them at all. */
const WORDS_A_SENTENCE = 40;

export function spokenWords(cues: readonly Cue[]): Speech {
  const sounds: { cue: number; text: string }[] = [];
  const clocks: Clock[] = [];
  const shown = cues.map((cue, index) => {
    const { words, sounds: heard, clock } = wordsOfCue(cue, index);
    for (const text of heard) sounds.push({ cue: index, text });
    clocks.push(clock);
    return words;
  });
  const overlaps = shown.map((words, index) => {
    const [cue, before] = [cues[index] as Cue, cues[index - 1]];
    if (before === undefined || cue.start - before.end > ROLLS_ON) return 0;
    return repeatedWords(shown[index - 1] ?? [], words);
  });
  const repeating = overlaps.filter((count, index) => count > 1 || (count === 1 && shown[index]?.length === 1)).length;
  const rolling = shown.length > 3 && repeating / shown.length >= ROLLING_SHARE;
  const words = rolling ? onceEach(shown, overlaps, clocks) : shown.flat();
  const sentences = words.filter(({ mark }) => mark !== "" && mark !== ",").length;
  const capitals = words.filter(({ text }) => /^\p{Lu}/u.test(text) && text !== text.toUpperCase()).length;
  return {
    words,
    sounds,
    rolling,
    punctuated: sentences * WORDS_A_SENTENCE >= words.length && sentences > 0,
    cased: capitals * 30 >= words.length && capitals > 0,
    end: cues.reduce((end, cue) => Math.max(end, cue.end), 0),
  };
}

interface CueWord extends Word {
  at: number;
  again: Shown[];
  /** Where it begins in what is shown. */
  readonly index: number;
  /** Whether it is the last word of its line. */
  readonly endsLine: boolean;
}

/** One for all words that are shown once; nothing is ever put in. */
const nowhere: Shown[] = [];

type Written = Pick<Word, "text" | "plain">;

const known = new Map<string, Written>();

/** A film has few words, each said again and again: they share their letters. */
function writtenOnce(text: string): Written {
  let written = known.get(text);
  if (written === undefined) {
    written = { text, plain: plainWord(text) };
    if (known.size > 100_000) known.clear();
    known.set(text, written);
  }
  return written;
}

/** Milliseconds at which something shown is said; `begins` is where the caption's own words begin. */
type Clock = (index: number, begins: number) => number;

function wordsOfCue(
  cue: Cue,
  index: number,
): { readonly words: CueWord[]; readonly sounds: readonly string[]; readonly clock: Clock } {
  const shown = shownText(cue.text);
  const { text, times, sounds } = shown;
  // Of the matches only where they stand is kept: a caption may be a whole film.
  const begins: number[] = [];
  const ends: number[] = [];
  for (const { index: at, 0: match } of text.matchAll(isPlain.test(text) ? plainPattern : wordPattern)) {
    begins.push(at);
    ends.push(at + match.length);
  }
  const marks = times.flatMap(({ index: at, stamp }) => {
    const ms = readTime(stamp, "vtt")?.ms;
    // A time stands before the space of its word.
    let word = at;
    while (word < text.length && /\s/.test(text[word] as string)) word += 1;
    return ms === undefined || ms < cue.start || ms > cue.end ? [] : [{ at: word, ms }];
  });
  const clock: Clock = (at, begins) => timeOf(cue, text.length, begins, marks, at);
  const words = begins.map((start, position): CueWord => {
    const end = ends[position] as number;
    const between = text.slice(end, begins[position + 1] ?? text.length);
    return {
      ...writtenOnce(text.slice(start, end)),
      at: clock(start, begins[0] as number),
      index: start,
      cue: index,
      start: placeInFile(shown, start).start,
      end: placeInFile(shown, end - 1).end,
      mark: markIn(between),
      again: nowhere,
      endsLine: position === begins.length - 1 || between.includes("\n"),
    };
  });
  return { words, sounds, clock };
}

function timeOf(
  cue: Cue,
  length: number,
  begins: number,
  marks: readonly { readonly at: number; readonly ms: number }[],
  index: number,
): number {
  const isBefore = begins > index;
  let from = isBefore ? 0 : begins;
  let fromMs = cue.start;
  let to = isBefore ? begins : length;
  let toMs = isBefore ? cue.start : cue.end;
  for (const mark of isBefore ? [] : marks) {
    if (mark.at > index) {
      to = mark.at;
      toMs = mark.ms;
      break;
    }
    from = mark.at;
    fromMs = mark.ms;
  }
  return Math.round(fromMs + ((toMs - fromMs) * (index - from)) / Math.max(1, to - from));
}

function markIn(between: string): Word["mark"] {
  if (between === " " || between === "") return "";
  const mark = /[.?!…,;:–—]/.exec(between)?.[0];
  if (mark === undefined) return "";
  if (mark === "?" || mark === "!") return mark;
  return mark === "." || mark === "…" ? (/\?/.test(between) ? "?" : ".") : ",";
}

export function endsSentence({ mark }: Word): boolean {
  return mark === "." || mark === "?" || mark === "!";
}

/** Small letters and digits only, without accents: how two spellings of a word are compared. */
export function plainWord(text: string): string {
  const lower = text.toLowerCase();
  const bare = /^[a-z0-9]*$/.test(lower) ? lower : lower.normalize("NFD").replace(/[^\p{L}\p{N}.]/gu, "");
  return bare.includes(".") && !/^\d+\.\d+$/.test(bare) ? bare.replaceAll(".", "") : bare;
}

/**
 * How many words at the beginning of a caption stood at the end of the one before. Whole lines roll up, or the whole
 * caption before is kept and goes on; a word said twice across a line break is neither.
 */
function repeatedWords(before: readonly CueWord[], words: readonly CueWord[]): number {
  for (let count = Math.min(before.length, words.length); count > 0; count -= 1) {
    if (count !== before.length && words[count - 1]?.endsLine !== true) continue;
    const skip = before.length - count;
    let same = true;
    for (let i = 0; i < count && same; i += 1) same = before[skip + i]?.plain === words[i]?.plain;
    if (same) return count;
  }
  return 0;
}

function onceEach(shown: readonly CueWord[][], overlaps: readonly number[], clocks: readonly Clock[]): CueWord[] {
  const words: CueWord[] = [];
  /** The spoken words that the caption before shows, in its order. */
  let before: CueWord[] = [];
  shown.forEach((ofCue, index) => {
    const count = overlaps[index] ?? 0;
    const kept = count === 0 ? [] : before.slice(before.length - count);
    kept.forEach((word, at) => {
      const { cue, start, end } = ofCue[at] as CueWord;
      const place = { cue, start, end };
      if (word.again === nowhere) word.again = [place];
      else word.again.push(place);
    });
    const fresh = ofCue.slice(kept.length);
    if (kept.length > 0)
      for (const word of fresh) word.at = (clocks[index] as Clock)(word.index, (fresh[0] as CueWord).index);
    words.push(...fresh);
    before = [...kept, ...fresh];
  });
  return words;
}

const numberWords = new Set(
  (
    "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty " +
    "thirty forty fifty sixty seventy eighty ninety hundred dozen couple few"
  ).split(" "),
);

/** Whether a plain word counts: "40", "six", "dozen". */
export function isNumberWord(plain: string): boolean {
  const first = plain.charCodeAt(0);
  return (first >= 48 && first <= 57) || numberWords.has(plain);
}
