/**
 * Names set right: what is proposed, what is applied, and the corrected copy of the captions. The copy has every cue of
 * the file, in its place and with its tags; only words of names are others.
 */
import type { FilmHeard } from "./hear-film.ts";
import { moment } from "./moments.ts";
import { APPLY_FROM, type NameHeard } from "./names-heard.ts";
import type { Cue } from "./read-captions.ts";
import type { Shown, Speech, Word } from "./spoken-words.ts";
import type { Correction } from "./wrap.ts";
import type { CueToWrite } from "./write-captions.ts";

/** A correction with the words it is about. */
export interface NameToSet {
  readonly correction: Correction;
  readonly from: number;
  readonly to: number;
}

export function namesToSet(film: FilmHeard, cues: readonly Cue[]): readonly NameToSet[] {
  const { words } = film.speech;
  const found: NameToSet[] = [];
  for (const one of film.names) {
    const heard = words
      .slice(one.from, one.to)
      .map(({ text }) => text)
      .join(" ");
    const name = one.name.name + one.ending;
    if (one.right && !needsLetters(one, heard, name, film.speech)) continue;
    const emptied = !one.right && leavesNothing(one, name, cues, words);
    const applied = one.confidence >= APPLY_FROM && !emptied;
    found.push({
      from: one.from,
      to: one.to,
      correction: {
        id: `N${found.length + 1}`,
        ...moment((words[one.from] as Word).at),
        heard,
        name,
        kind: one.name.kind,
        record: one.name.record,
        sort: one.right ? "letters" : "spelling",
        confidence: Math.round(one.confidence * 100) / 100,
        applied,
        why: reason(one, film, emptied),
      },
    });
  }
  return found;
}

/** In captions without capitals a variety's name gets its own letters; what a person typed with capitals stays. */
function needsLetters({ name }: NameHeard, heard: string, written: string, { cased }: Speech): boolean {
  return !cased && (name.kind === "variety" || name.kind === "word") && heard !== written;
}

function reason({ name, right }: NameHeard, { day }: FilmHeard, emptied: boolean): string {
  const where = [...name.beds].map((bed) => day.garden.beds.get(bed)?.title ?? bed)[0];
  const grows =
    name.kind === "word"
      ? "one of your own words"
      : name.kind === "gear"
        ? "a thing of yours"
        : name.kind === "bed"
          ? "one of your beds"
          : where === undefined
            ? "a variety in your records"
            : `which grew in ${where}`;
  if (right) return `It is ${name.name}, ${grows}, in its own letters.`;
  return `It sounds like ${name.name}, ${grows}.${emptied ? " It was not applied, because a caption would be left empty." : ""}`;
}

/** Whether a cue would lose its last word. */
function leavesNothing(
  { from, to }: Pick<NameHeard, "from" | "to">,
  name: string,
  cues: readonly Cue[],
  words: readonly Word[],
): boolean {
  const window = words.slice(from, to);
  if (new Set(window.map(({ cue }) => cue)).size < 2) return false;
  const texts = shares(name, window.length);
  const around = [...words.slice(Math.max(0, from - 20), from), ...words.slice(to, to + 20)];
  const isWholeCue = (cue: number) => cues[cue] !== undefined && !around.some((word) => word.cue === cue);
  return window.some((word, index) => {
    if (texts[index] !== "") return false;
    const alone = window.filter(({ cue }, other) => cue === word.cue && texts[other] !== "").length === 0;
    return alone && isWholeCue(word.cue);
  });
}

/** The words of a name spread over as many places as were heard for it; early places first. */
export function shares(name: string, places: number): readonly string[] {
  const parts = name.split(" ");
  return Array.from({ length: places }, (_, place) =>
    parts.slice(Math.ceil((place * parts.length) / places), Math.ceil(((place + 1) * parts.length) / places)).join(" "),
  );
}

interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Every cue of the file with the applied names set in it, wherever it shows them. */
export function correctedCues(
  cues: readonly Cue[],
  words: readonly Word[],
  names: readonly NameToSet[],
): readonly CueToWrite[] {
  const edits = new Map<number, Edit[]>();
  const put = ({ cue, start, end }: Shown, text: string) => {
    const known = edits.get(cue);
    if (known === undefined) edits.set(cue, [{ start, end, text }]);
    else known.push({ start, end, text });
  };
  for (const { correction, from, to } of names) {
    if (!correction.applied) continue;
    const texts = shares(correction.name, to - from);
    words.slice(from, to).forEach((word, index) => {
      for (const place of [word, ...word.again]) put(place, texts[index] as string);
    });
  }
  return cues.map((cue, index) => ({ ...cue, text: edited(cue.text, edits.get(index) ?? []) }));
}

/** In one pass: a caption may be a whole film, with thousands of names to set. */
function edited(text: string, edits: readonly Edit[]): string {
  if (edits.length === 0) return text;
  // Where the file writes "&amp;", a name's own sign does too.
  const isEscaped = /&(?:amp|#)/.test(text);
  let result = "";
  let read = 0;
  for (const { start, end, text: name } of [...edits].sort((a, b) => a.start - b.start)) {
    // A word that goes takes the blank before it along; at the beginning, the one after it.
    const from = name === "" && text[start - 1] === " " ? start - 1 : start;
    result += text.slice(read, Math.max(read, from)) + (isEscaped ? name.replaceAll("&", "&amp;") : name);
    read = name === "" && result === "" && text[end] === " " ? end + 1 : end;
  }
  return result + text.slice(read);
}

/** The speech with the applied names in it, for everything that quotes it: words that fell away are empty. */
export function wordsSetRight(words: readonly Word[], names: readonly NameToSet[]): readonly Word[] {
  const right = [...words];
  for (const { correction, from, to } of names) {
    if (!correction.applied) continue;
    const texts = shares(correction.name, to - from);
    for (let at = from; at < to; at += 1) right[at] = { ...(words[at] as Word), text: texts[at - from] as string };
  }
  return right;
}
