/** Which plants a number, a time or a word is about: those named right behind it in the same breath, else those last named at the stop. */
import { cropOf } from "../../crop-of.ts";
import { type Check, SURE } from "../fact-check.ts";
import { spokenNumber } from "../spoken-numbers.ts";
import { isCompared, type Subject } from "../spoken-subjects.ts";
import { firstFrom, stretchAt } from "../word-ranges.ts";

/** Words a claim may stand behind the name of what it is about, at the same stop. */
const REACH = 60;
/** Whoever looks no further back than this for a name wants one. */
const UNNAMED_FROM = 40;
/** Words a name may stand behind the number or the verb in one breath: "I put in ten of the Cherokee Purple". */
const AHEAD = 7;

/** The plants that words are about: named right behind them in the same breath, else last named at this stop. */
export function subjectAt(check: Check, from: number, to: number, reach = REACH): Subject | undefined {
  const { subjects } = check;
  const ahead = namedAhead(check, from, to);
  const isJoined = /\b(?:and|but|so)\b/.test(check.plain.slice(to, ahead?.from ?? to).join(" "));
  if (ahead !== undefined && !isJoined && /^(?:of|the|my|our|these|those)$/.test(check.plain[ahead.from - 1] ?? ""))
    return sure(ahead);
  const before = lastMeant(check, firstFrom(subjects, (subject) => subject.from, from) - 1);
  if (before === undefined || from - before.to > reach || bedAt(check, from) !== before.bed)
    return reach >= UNNAMED_FROM ? onlyOneHere(check, from) : undefined;
  const between = check.plain.slice(before.to, from);
  // "The other two", "the rest of the block"
  if (
    /\bthe (?:others?|rest)\b/.test(
      check.plain.slice(Math.max(before.to, breathBefore(check, from, 6)), from).join(" "),
    )
  )
    return undefined;
  // "And that other row, with the red on the stems": turned to since.
  if (/\b(?:that|this|the) other (?:row|one|lot|bed|side|end|kind|sort)\b/.test(between.join(" "))) return undefined;
  // "Rakshak, three kilos. Total, five and a half. First one I plucked in December": of both.
  if (between.some((word) => word === "total" || word === "altogether")) return undefined;
  return sure(before);
}

/** The plants that the very next words name: "bought the Rutgers", "a present, that Smyrna". */
export function namedNext(check: Check, from: number, to: number): Subject | undefined {
  const ahead = namedAhead(check, from, to);
  return ahead !== undefined && ahead.from - to <= 2 && !/^(?:and|but|so|with|than)$/.test(check.plain[to] ?? "")
    ? ahead
    : undefined;
}

/** The plants named a little behind words in the same breath, no number between. */
function namedAhead(check: Check, from: number, to: number): Subject | undefined {
  const ahead = check.subjects[firstFrom(check.subjects, (subject) => subject.from, to)];
  return ahead !== undefined &&
    ahead.from - to <= AHEAD &&
    isOneBreath(check, from, ahead.from) &&
    !check.plain.slice(to, ahead.from).some((_, at, all) => spokenNumber(all, at) !== undefined)
    ? ahead
    : undefined;
}

/** At a bed where one crop stands, what is said without a name is said of it. */
function onlyOneHere({ film, stretches }: Check, word: number): Subject | undefined {
  const stretch = stretchAt(stretches, word);
  const there = film.day.beds.get(stretch?.bed ?? "");
  if (stretch?.bed === undefined || there === undefined || stretch.confidence < SURE) return undefined;
  const lots = [...there.living, ...there.ended];
  const [first] = lots;
  const crops = new Set(lots.map((lot) => cropOf(film.day.garden, lot)?.id));
  const [crop] = crops;
  const { variety } = first ?? {};
  if (crops.size !== 1 || crop === undefined || lots.some((lot) => lot.variety !== variety)) return undefined;
  const title =
    variety === undefined ? film.day.garden.crops.get(crop)?.plural : film.day.garden.varieties.get(variety)?.title;
  return {
    from: word,
    to: word,
    unnamed: true,
    crop,
    ...(variety !== undefined && { variety }),
    title: title ?? crop,
    bed: stretch.bed,
    confidence: stretch.confidence,
    here: lots,
    anywhere: lots,
  };
}

/** "Same as Mollie" leaves the talk where it was; "she's a little apple" and "Musselburgh leeks" are said of the variety just named. */
function lastMeant({ subjects, film, plain }: Check, last: number): Subject | undefined {
  for (let at = last; at >= Math.max(0, last - 3); at -= 1) {
    const subject = subjects[at] as Subject;
    if (isCompared(film, subject)) continue;
    const [one, before] = [plain[subject.from - 1] ?? "", subjects[at - 1]];
    const isSaidOf =
      subject.variety === undefined &&
      (/^(?:a|an|little|old|big|small)$/.test(one) || before?.to === subject.from) &&
      before?.variety !== undefined &&
      before.bed === subject.bed &&
      subject.from - before.to <= REACH &&
      film.day.garden.varieties.get(before.variety)?.crop === subject.crop;
    return isSaidOf ? before : subject;
  }
  return subjects[last];
}

/** Of plants that stand at the bed the film is taken to be at, less is enough: each guess bears the other out. */
export function sure(subject: Subject): Subject | undefined {
  return subject.confidence >= (subject.here.length > 0 ? SURE_OF_WHAT_IS_HERE : SURE) ? subject : undefined;
}

const SURE_OF_WHAT_IS_HERE = 0.35;

function bedAt({ stretches }: Check, word: number): string | undefined {
  return stretchAt(stretches, word)?.bed;
}

function endsSentence({ film }: Check, word: number): boolean {
  return /[.?!]/.test(film.speech.words[word]?.mark ?? "");
}

/** No full stop between two words. */
export function isOneBreath(check: Check, from: number, to: number): boolean {
  for (let word = from; word < to; word += 1) if (endsSentence(check, word)) return false;
  return true;
}

/** What is read at a word, none of it beyond the end of its sentence: "in October. The first" is no first of October. */
export function withinSentence<Found extends { readonly end: number }>(
  check: Check,
  at: number,
  read: (words: readonly string[], at: number) => Found | undefined,
): Found | undefined {
  if (!check.film.speech.punctuated) return read(check.plain, at);
  const from = Math.max(0, at - 2);
  const found = read(check.plain.slice(from, breathAfter(check, at + 1, LONGEST_READ)), at - from);
  return found === undefined ? undefined : { ...found, end: found.end + from };
}

/** Words of the longest number or time. */
const LONGEST_READ = 14;

/** The first word of the breath that ends before a word, at most so many words back. */
export function breathBefore(check: Check, at: number, most: number): number {
  let from = at;
  while (from > 0 && from > at - most && !endsSentence(check, from - 1)) from -= 1;
  return from;
}

/** After the last word of the breath that a word before this one begins, at most so many words on. */
export function breathAfter(check: Check, at: number, most: number): number {
  let to = at;
  while (to < check.plain.length && to < at + most && !endsSentence(check, to - 1)) to += 1;
  return to;
}

/** The plants named right behind a number in the same breath: "two of the nice Shishitos". */
export function namedBehind(check: Check, at: number, end: number): Subject | undefined {
  const { plain, film, subjects } = check;
  const { words } = film.speech;
  const behind = subjects[firstFrom(subjects, ({ from }) => from, end)];
  const between = behind === undefined ? [] : plain.slice(end, behind.from);
  const isOfTheOneBefore =
    !film.speech.punctuated &&
    between[0] === "and" &&
    (subjects[firstFrom(subjects, ({ from }) => from, at) - 1]?.to ?? 0) >= at - 8;
  return behind !== undefined &&
    !isOfTheOneBefore &&
    between.length <= 4 &&
    isOneBreath(check, at, behind.from) &&
    between.every((word) => beside.test(word)) &&
    !words.slice(at, behind.from).some(({ mark }) => mark === ",")
    ? sure(behind)
    : undefined;
}

export const plantNouns =
  /^(?:plants?|trees?|bushes|bulbs|corms|tubers|crowns|canes|slips|plugs|seed|seeds|seedlings|cloves|sets|hills|pieces|runners|suckers|hives|rhizomes|vines|cuttings|starts)$/;
const beside =
  /^(?:of|the|and|more|nice|fine|good|big|little|small|young|plants|these|those|my|our|crowns|trees|bushes|bulbs|corms|tubers|bags|seeds|cloves|sets|slips|plugs|seedlings)$/;
