/**
 * Names set right: what is proposed, what is applied, and the corrected copy of the captions. The copy is the file itself,
 * in which only words of names are others.
 */
import type { FilmHeard } from "./hear-film.ts";
import { moment } from "./moments.ts";
import { APPLY_FROM, type NameHeard } from "./names-heard.ts";
import type { Cue } from "./read-captions.ts";
import type { Shown, Speech, Word } from "./spoken-words.ts";
import type { Correction } from "./wrap.ts";

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
function shares(name: string, places: number): readonly string[] {
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

/**
 * The file with the applied names set in it wherever it shows them, and every other letter, line end and mark as it was.
 */
export function correctedFile(
  original: string,
  cues: readonly Cue[],
  words: readonly Word[],
  names: readonly NameToSet[],
): string {
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
  const lines = fileLines(original);
  const changed = [...edits].flatMap(([cue, all]) => changesOf(cues[cue] as Cue, all));
  changed.sort((a, b) => a.line - b.line || a.from - b.from);
  let result = "";
  let read = 0;
  for (const { line, from, to, text } of changed) {
    const place = lines[line] as FileLine;
    result += original.slice(read, place.from + from) + text;
    read = to === undefined ? place.to : place.from + to;
  }
  return result + original.slice(read);
}

/** Letters of one line of the file, by column; without an end the whole line goes. */
interface Change {
  readonly line: number;
  readonly from: number;
  readonly to: number | undefined;
  readonly text: string;
}

function changesOf({ text, pieces }: Cue, edits: readonly Edit[]): readonly Change[] {
  const sorted = [...edits].sort((a, b) => a.start - b.start);
  const changes: Change[] = [];
  let next = 0;
  for (const [index, { at, line, column }] of pieces.entries()) {
    const following = pieces[index + 1];
    const end = following === undefined ? text.length : following.at - 1;
    const first = next;
    while (next < sorted.length && (sorted[next] as Edit).start < end) next += 1;
    if (next === first) continue;
    const here = sorted.slice(first, next).map((edit) => ({ ...edit, start: edit.start - at, end: edit.end - at }));
    const { edits: made, result } = withBlanks(text.slice(at, end), here);
    // A line that says nothing any more would end its caption.
    if (column === 0 && result.trim() === "") changes.push({ line, from: 0, to: undefined, text: "" });
    else for (const { start, end, text } of made) changes.push({ line, from: column + start, to: column + end, text });
  }
  return changes;
}

interface FileLine {
  readonly from: number;
  /** After its line end. */
  readonly to: number;
}

function fileLines(original: string): readonly FileLine[] {
  const lines: FileLine[] = [];
  let from = original.startsWith("\uFEFF") ? 1 : 0;
  for (const { index, 0: end } of original.matchAll(/\r\n|\r|\n/g)) {
    lines.push({ from, to: index + end.length });
    from = index + end.length;
  }
  return [...lines, { from, to: original.length }];
}

/** The edits with the blanks that go along, and what they make. In one pass: a caption may be a whole film. */
function withBlanks(
  text: string,
  edits: readonly Edit[],
): { readonly edits: readonly Edit[]; readonly result: string } {
  // Where the file writes "&amp;", a name's own sign does too.
  const isEscaped = /&(?:amp|#)/.test(text);
  let result = "";
  let read = 0;
  const made = edits.map(({ start, end, text: name }): Edit => {
    // A word that goes takes the blank before it along; at the beginning, the one after it.
    const from = Math.max(read, name === "" && text[start - 1] === " " ? start - 1 : start);
    const put = (isEscaped ? name.replaceAll("&", "&amp;") : name).replaceAll("-->", "→");
    result += text.slice(read, from) + put;
    read = name === "" && result === "" && text[end] === " " ? end + 1 : end;
    return { start: from, end: read, text: put };
  });
  return { edits: made, result: result + text.slice(read) };
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
