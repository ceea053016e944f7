/**
 * A set of captions to upload, made from captions that roll: every word once, two lines, read without haste, no break inside
 * a name. Words are nobody's but the speaker's: capitals and marks are set only where they are certain.
 * Lines, lengths and speeds follow published guides for captions: 42 letters a line, 5/6 to 7 seconds, 20 letters a second.
 */
import { shownText } from "./caption-text.ts";
import type { NameToSet } from "./corrections.ts";
import type { FilmHeard } from "./hear-film.ts";
import { moment } from "./moments.ts";
import type { Cue } from "./read-captions.ts";
import type { Word } from "./spoken-words.ts";
import type { Moment } from "./wrap.ts";
import type { CueToWrite } from "./write-captions.ts";

export const captionLimits = {
  /** Letters. */
  line: 42,
  lines: 2,
  /** Letters and words a second. */
  letters: 20,
  words: 3.3,
  /** Milliseconds. */
  shortest: 833,
  longest: 7000,
  /** Captions may stay so long after what they say, and as long a silence parts two. */
  after: 1500,
  /** Two pictures of 25 a second. */
  gap: 80,
} as const;

export interface CleanCaptions {
  readonly cues: readonly CueToWrite[];
  /** Where somebody speaks faster than most can read: nothing was left out of it. */
  readonly fast: readonly Moment[];
}

/** A word, or a name as a whole: nothing breaks inside it. */
interface Unit {
  readonly text: string;
  readonly words: number;
  /** Milliseconds. */
  readonly at: number;
  /** When it has been said, as far as that can be told. */
  readonly until: number;
  readonly plain: string;
}

/** `right` are the words of the film with the applied names in them. */
export function cleanCaptions(
  film: FilmHeard,
  right: readonly Word[],
  names: readonly NameToSet[],
  cues: readonly Cue[],
): CleanCaptions {
  const units = unitsOf(film, right, names, cues);
  const groups = grouped(units);
  const spoken = groups.map((group, index): CueToWrite & { readonly isFast: boolean } => {
    const [first, last, next] = [group[0] as Unit, group.at(-1) as Unit, groups[index + 1]?.[0]?.at];
    const letters = written(group).length;
    const words = group.reduce((sum, unit) => sum + unit.words, 0);
    const wanted = Math.max(
      captionLimits.shortest,
      (letters * 1000) / captionLimits.letters,
      (words * 1000) / captionLimits.words,
    );
    const latest = Math.min((next ?? Number.POSITIVE_INFINITY) - captionLimits.gap, last.until + captionLimits.after);
    const end = Math.max(first.at + 1, Math.min(Math.max(last.until, first.at + wanted), latest));
    return { start: first.at, end: Math.round(end), text: inLines(group), isFast: end - first.at < wanted - 1 };
  });
  const all = [...spoken.map(({ start, end, text }) => ({ start, end, text })), ...soundsAlone(film, cues, spoken)];
  return {
    cues: all.sort((a, b) => a.start - b.start),
    fast: spoken.filter(({ isFast }) => isFast).map(({ start }) => moment(start)),
  };
}

// -------------------------------------------------------------------------------------------------------------- words

function unitsOf(
  { speech: { words, cased }, names: heard }: FilmHeard,
  right: readonly Word[],
  names: readonly NameToSet[],
  cues: readonly Cue[],
): readonly Unit[] {
  const ends = new Map<number, number>();
  for (const { from, to, right: isRight } of heard) if (isRight) ends.set(from, to);
  for (const { from, to, correction } of names) if (correction.applied) ends.set(from, to);
  const units: Unit[] = [];
  let begins = true;
  for (let at = 0; at < words.length; ) {
    const to = Math.max(at + 1, ends.get(at) ?? 0);
    const [first, last, next] = [words[at] as Word, words[to - 1] as Word, words[to]];
    const texts = right.slice(at, to).flatMap(({ text }) => (text === "" ? [] : [text]));
    const said = texts.join(" ");
    const capital = !cased && (begins || alwaysCapital.test(said));
    const text = signsBefore(first, cues) + (capital ? said.replace(/^\p{Ll}/u, (one) => one.toUpperCase()) : said);
    const signs = signsAfter(last, next, cues);
    const spoken = last.at + 250 + 60 * last.text.length;
    if (said !== "")
      units.push({
        text: `${text}${signs}`,
        words: texts.length,
        at: first.at,
        until: Math.max(first.at + 1, next === undefined ? spoken : Math.min(spoken, next.at)),
        plain: to - at === 1 ? first.plain : "",
      });
    begins = /[.?!]["”’)]?$/.test(signs);
    at = to;
  }
  return units;
}

/** Words that nobody writes small, whatever stands before them. "May" and "march" are not among them. */
const alwaysCapital =
  /^(?:i(?:['’](?:m|ll|ve|d))?|(?:mon|tues|wednes|thurs|fri|satur|sun)days?|january|february|april|june|july|august|september|october|november|december)$/;

const openingSigns = '£$€"“‘(#';

/** At most three. */
function signsBefore({ cue, start }: Word, cues: readonly Cue[]): string {
  const text = cues[cue]?.text ?? "";
  let from = start;
  while (from > 0 && from > start - 3 && openingSigns.includes(text[from - 1] as string)) from -= 1;
  return text.slice(from, start);
}

const onlyTags = /^(?:\s|<(?:\/?c|\d[\d:.]*)>)*$/;

/** Marks and signs up to the next word of the same caption: ",", " &", "%". */
function signsAfter(word: Word, next: Word | undefined, cues: readonly Cue[]): string {
  const raw = cues[word.cue]?.text ?? "";
  const to = next?.cue === word.cue ? next.start : raw.length;
  if (to - word.end <= 1) return raw.slice(word.end, to).trim();
  // Times and tags between two words, as rolling captions have them, show nothing.
  const between = raw.slice(word.end, to);
  if (onlyTags.test(between)) return "";
  const before = next?.cue === word.cue ? signsBefore(next, cues).length : 0;
  const signs = shownText(raw.slice(word.end, to - before))
    .text.replace(/\s+/g, " ")
    .trimEnd();
  return signs.replaceAll(">>", "").trimEnd();
}

// ------------------------------------------------------------------------------------------------------------- breaks

/** Words that lead on: no line ends with one. */
const leading = new Set(
  (
    "a an the my your our their his her its this that these those some any every each no to of in on at for from with by into onto " +
    "over under and or but so because if when while as than is are was were be been have has had do does did will would can could " +
    "should i i'm im i'll ill i've ive you we they he she it not very really quite two three four five six seven eight nine ten"
  )
    .split(" ")
    .map((word) => word.replace("'", "")),
);
/** Words before which a line breaks well. */
const opening = new Set(
  "and or but so because if when while which who where with from into for then although until".split(" "),
);

/** How well a caption or a line may end after a unit; higher is better. */
function breakAfter(unit: Unit, next: Unit | undefined): number {
  if (next === undefined || /[.?!]["”’)]?$/.test(unit.text)) return 60;
  if (/[,;:–]$/.test(unit.text)) return 40;
  return (
    (opening.has(next.plain) ? 20 : 0) - (leading.has(unit.plain) ? 30 : 0) + Math.min(20, (next.at - unit.at) / 50)
  );
}

const room = captionLimits.line * captionLimits.lines - 4;

function grouped(units: readonly Unit[]): readonly (readonly Unit[])[] {
  const groups: (readonly Unit[])[] = [];
  for (let from = 0; from < units.length; ) {
    let to = from + 1;
    const first = units[from] as Unit;
    while (to < units.length) {
      const [before, unit] = [units[to - 1] as Unit, units[to] as Unit];
      const isFull = !fits(units, from, to + 1) || unit.until - first.at > captionLimits.longest;
      if (isFull || unit.at - before.until > captionLimits.after || endsWell(units, from, to)) break;
      to += 1;
    }
    const rest = units[to];
    const isForced = rest !== undefined && rest.at - (units[to - 1] as Unit).until <= captionLimits.after;
    if (isForced && !endsWell(units, from, to)) to = bestBreak(units, from, to);
    groups.push(units.slice(from, to));
    from = to;
  }
  return groups;
}

/** A sentence has ended, and the caption is long enough to stand. */
function endsWell(units: readonly Unit[], from: number, to: number): boolean {
  const [first, last, next] = [units[from] as Unit, units[to - 1] as Unit, units[to]];
  return breakAfter(last, next) >= 60 && (next?.at ?? last.until) - first.at >= captionLimits.shortest * 2;
}

/** Within the last half of what fits. */
function bestBreak(units: readonly Unit[], from: number, to: number): number {
  let best = to;
  let value = Number.NEGATIVE_INFINITY;
  for (let at = from + Math.max(1, Math.ceil((to - from) / 2)); at <= to; at += 1) {
    const worth = breakAfter(units[at - 1] as Unit, units[at]) + (20 * (at - from)) / (to - from);
    if (worth >= value) [best, value] = [at, worth];
  }
  return best;
}

function written(units: readonly Unit[]): string {
  return units.map(({ text }) => text).join(" ");
}

/** Letters of `written` of units `from` to `to`, without writing it: a film has as many words as tries. */
function lengthOf(units: readonly Unit[], from: number, to: number): number {
  let length = to - from - 1;
  for (let at = from; at < to; at += 1) length += (units[at] as Unit).text.length;
  return length;
}

function fits(units: readonly Unit[], from: number, to: number): boolean {
  const length = lengthOf(units, from, to);
  return length <= captionLimits.line || (length <= room && lineBreak(units, from, to) !== undefined);
}

/** The unit before which the second line begins: `from` when one line is enough, undefined when two are not. */
function lineBreak(units: readonly Unit[], from: number, to: number): number | undefined {
  const whole = lengthOf(units, from, to);
  if (whole <= captionLimits.line) return from;
  let best: number | undefined;
  let value = Number.NEGATIVE_INFINITY;
  let above = -1;
  for (let at = from + 1; at < to; at += 1) {
    above += (units[at - 1] as Unit).text.length + 1;
    const below = whole - above - 1;
    if (above > captionLimits.line || below > captionLimits.line) continue;
    const worth = breakAfter(units[at - 1] as Unit, units[at]) - Math.abs(above - below);
    if (worth > value) [best, value] = [at, worth];
  }
  return best;
}

function inLines(units: readonly Unit[]): string {
  const at = lineBreak(units, 0, units.length) ?? 0;
  return at === 0 ? written(units) : `${written(units.slice(0, at))}\n${written(units.slice(at))}`;
}

// ------------------------------------------------------------------------------------------------------------- sounds

/** Sounds while nobody speaks, each once. */
function soundsAlone({ speech }: FilmHeard, cues: readonly Cue[], spoken: readonly CueToWrite[]): CueToWrite[] {
  const withWords = new Set<number>();
  for (const { cue, again } of speech.words) {
    withWords.add(cue);
    for (const one of again) withWords.add(one.cue);
  }
  const found: { start: number; end: number; text: string }[] = [];
  let next = 0;
  for (const { cue, text } of speech.sounds) {
    const { start, end } = cues[cue] as Cue;
    const before = found.at(-1);
    while ((spoken[next]?.end ?? Number.POSITIVE_INFINITY) <= start) next += 1;
    if (withWords.has(cue) || (spoken[next]?.start ?? Number.POSITIVE_INFINITY) < end) continue;
    if (before?.text === text && start - before.end <= captionLimits.after) before.end = Math.max(before.end, end);
    else found.push({ start, end, text });
  }
  return found;
}
