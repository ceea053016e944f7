/** Numbers in digits, fractions and words: "24", "1,400", "1 1/2", "½", "a dozen", "twenty-four", "3 x 12". */
import type { Word } from "./line-words.ts";
import { measureUnitAt } from "./measure-units.ts";

const ones =
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );
const tens = "twenty thirty forty fifty sixty seventy eighty ninety".split(" ");

const numberWords = new Map<string, number>([
  ...ones.map((word, value) => [word, value] as const).slice(1),
  ...tens.map((word, i) => [word, (i + 2) * 10] as const),
]);
/** Words that stand for several, after "a", a number or nothing. */
const groups = new Map<string, number>([
  ["dozen", 12],
  ["couple", 2],
  ["pair", 2],
  ["pairs", 2],
  ["score", 20],
  ["hundred", 100],
  ["thousand", 1000],
]);

const fractionSigns: Readonly<Record<string, number>> = {
  "½": 1 / 2,
  "¼": 1 / 4,
  "¾": 3 / 4,
  "⅐": 1 / 7,
  "⅑": 1 / 9,
  "⅒": 1 / 10,
  "⅓": 1 / 3,
  "⅔": 2 / 3,
  "⅕": 1 / 5,
  "⅖": 2 / 5,
  "⅗": 3 / 5,
  "⅘": 4 / 5,
  "⅙": 1 / 6,
  "⅚": 5 / 6,
  "⅛": 1 / 8,
  "⅜": 3 / 8,
  "⅝": 5 / 8,
  "⅞": 7 / 8,
};

const fractionWords: ReadonlyMap<string, number> = new Map(
  Object.entries({ half: 1 / 2, quarter: 1 / 4, third: 1 / 3 }),
);

/** After "a" these words count nothing: "a few", "a row of". */
const notCounted = new Set(
  "few lot little bit row rows line patch block drill tray packet pinch pot good load handsome large small big huge second third further".split(
    " ",
  ),
);

export interface NumberRead {
  readonly value: number;
  readonly end: number;
  /** 12 in "three dozen". */
  readonly times?: number | undefined;
}

/** Whether a word can begin a number: a cheap look, for most words of a line do not. */
export function mayBeginNumber(word: Word): boolean {
  if (word.kind === "number" || word.kind === "fraction") return true;
  if (word.kind === "mark") return word.text === "-" || word.text === "−";
  const lower = word.lower;
  return (
    isArticle(word) || lower === "minus" || numberWords.has(lower) || groups.has(lower) || fractionWords.has(lower)
  );
}

/** A number in digits, fractions or words, below zero only with its sign. */
export function numberAt(words: readonly Word[], from: number): NumberRead | undefined {
  const word = words[from];
  if (word === undefined) return undefined;
  if (word.lower === "minus" || word.text === "-" || word.text === "−") {
    const below = words[from + 1]?.kind === "number" ? digitsAt(words, from + 1) : undefined;
    return below === undefined ? undefined : { value: -below.value, end: below.end };
  }
  if (isOrdinal(words, from)) return undefined;
  if (word.kind === "number" || word.kind === "fraction") return multiplied(words, digitsAt(words, from));
  return multiplied(words, spokenAt(words, from));
}

/** "1st" of "picked the 1st courgettes" counts nothing. */
function isOrdinal(words: readonly Word[], at: number): boolean {
  const [word, ending] = [words[at], words[at + 1]];
  return word?.kind === "number" && ending?.start === word.end && /^(?:st|nd|rd|th)$/.test(ending.lower);
}

/** "1", "1.5", "1,400", "1 1/2", "1½", "3/4". */
export function digitsAt(words: readonly Word[], from: number): NumberRead | undefined {
  const word = words[from];
  if (word === undefined) return undefined;
  if (word.kind === "fraction") return { value: fractionSigns[word.text] ?? 0, end: from + 1 };
  const fraction = fractionAt(words, from);
  if (fraction !== undefined) return fraction;
  const whole = decimal(word.text);
  if (whole === undefined) return undefined;
  const next = words[from + 1];
  if (next?.kind === "fraction") return { value: whole + (fractionSigns[next.text] ?? 0), end: from + 2 };
  const partFrom = next?.text === "-" && words[from + 3]?.text === "/" ? from + 2 : from + 1;
  const part = Number.isInteger(whole) ? fractionAt(words, partFrom) : undefined;
  if (part !== undefined && part.value < 1) return { value: whole + part.value, end: part.end };
  return { value: whole, end: from + 1 };
}

function fractionAt(words: readonly Word[], from: number): NumberRead | undefined {
  const [top, slash, bottom] = [words[from], words[from + 1], words[from + 2]];
  if (top?.kind !== "number" || bottom?.kind !== "number" || (slash?.text !== "/" && slash?.text !== "⁄"))
    return undefined;
  const [over, under] = [Number(top.text), Number(bottom.text)];
  if (!Number.isInteger(over) || !(under >= 2 && under <= 64) || words[from + 3]?.text === "/") return undefined;
  return { value: over / under, end: from + 3 };
}

/** "1,400" is fourteen hundred and "1,4" one and two fifths, as on the Continent. */
function decimal(text: string): number | undefined {
  const plain = /^\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(text) ? text.replaceAll(",", "") : text.replace(",", ".");
  const value = Number(plain);
  return Number.isFinite(value) ? value : undefined;
}

/** "twelve", "twenty-four", "a dozen", "half a dozen", "one and a half", "a", "half a". */
function spokenAt(words: readonly Word[], from: number): NumberRead | undefined {
  const word = words[from];
  if (word === undefined) return undefined;
  const fraction = fractionWords.get(word.lower);
  if (fraction !== undefined) {
    const article = words[from + 1];
    const end = article !== undefined && (isArticle(article) || article.lower === "of") ? from + 2 : from + 1;
    const group = groups.get(words[end]?.lower ?? "");
    return group === undefined ? { value: fraction, end } : { value: fraction * group, end: end + 1 };
  }
  if (groups.has(word.lower)) return { value: 1, end: from };
  if (isArticle(word)) {
    const next = words[from + 1]?.lower ?? "";
    if (notCounted.has(next)) return undefined;
    const part = fractionWords.get(next);
    if (part !== undefined) {
      const of = words[from + 2]?.lower === "of" ? from + 3 : from + 2;
      const article = words[of];
      return { value: part, end: article !== undefined && isArticle(article) ? of + 1 : of };
    }
    return { value: 1, end: from + 1 };
  }
  const value = numberWords.get(word.lower);
  if (value === undefined) return undefined;
  // Dictation leaves the hyphen out: "forty-two", "forty two".
  const unitAt = words[from + 1]?.text === "-" ? from + 2 : from + 1;
  const unit = numberWords.get(words[unitAt]?.lower ?? "");
  if (value >= 20 && unit !== undefined && unit < 10) return { value: value + unit, end: unitAt + 1 };
  const tenth = numberWords.get(words[from + 2]?.lower ?? "");
  if (words[from + 1]?.lower === "point" && tenth !== undefined && tenth < 10)
    return { value: value + tenth / 10, end: from + 3 };
  const [and, a, half] = [words[from + 1], words[from + 2], words[from + 3]];
  if (and?.lower === "and" && a?.lower === "a" && half?.lower === "half")
    return { value: value + 1 / 2, end: from + 4 };
  return { value, end: from + 1 };
}

/** "two dozen", "3 x 12", "a couple of". */
function multiplied(words: readonly Word[], number: NumberRead | undefined): NumberRead | undefined {
  if (number === undefined) return undefined;
  const next = words[number.end];
  const group = next === undefined ? undefined : groups.get(next.lower);
  if (group !== undefined) {
    const of = words[number.end + 1];
    const more = group >= 100 ? belowHundred(words, number.end + 1) : undefined;
    if (more !== undefined) return { value: number.value * group + more.value, end: more.end, times: group };
    return { value: number.value * group, end: of?.lower === "of" ? number.end + 2 : number.end + 1, times: group };
  }
  const times = words[number.end + 1];
  if ((next?.lower === "x" || next?.text === "×") && times?.kind === "number" && Number.isInteger(number.value)) {
    const each = decimal(times.text);
    if (each !== undefined && Number.isInteger(each) && measureUnitAt(words, number.end + 2) === undefined) {
      return { value: number.value * each, end: number.end + 2 };
    }
  }
  return number;
}

/** "ten" of "a hundred and ten", "sixty four" of "a hundred sixty four". */
function belowHundred(words: readonly Word[], from: number): NumberRead | undefined {
  const at = words[from]?.lower === "and" ? from + 1 : from;
  const word = words[at];
  if (word?.kind !== "word" || !numberWords.has(word.lower)) return undefined;
  const more = spokenAt(words, at);
  return more !== undefined && Number.isInteger(more.value) && more.value < 100 ? more : undefined;
}

export function isArticle(word: Word): boolean {
  return word.lower === "a" || word.lower === "an";
}
