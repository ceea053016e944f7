/**
 * Counts, weights, lengths, volumes and temperatures as people write them in a line: "24", "about 10", "8-10", "a dozen",
 * "1 1/2 lb", "½ lb", "2 lb 3 oz", "12 stems", "3 bunches". Everything is given in grams, centimetres, litres and °C.
 */
import type { Count, PickUnit } from "../model.ts";
import { isCapital, type Word } from "./line-words.ts";
import { inBaseUnit, type Unit, type UnitSystem, unitCalled } from "./units.ts";

/** What a line says of how much; `end` is the word after it. */
export interface Amount {
  readonly end: number;
  readonly count?: Count | undefined;
  readonly unit?: PickUnit | undefined;
  readonly grams?: number | undefined;
  readonly cm?: number | undefined;
  readonly litres?: number | undefined;
  readonly celsius?: number | undefined;
  /** A measure that is only about right or a range: its words are worth keeping, for the number alone says too much. */
  readonly loose?: boolean | undefined;
}

/** Words for one of the trade units of picking. */
const pickUnits: Readonly<Record<PickUnit, readonly string[]>> = {
  stem: ["stem", "stalk", "stick", "spear", "spike", "sprig"],
  bunch: ["bunch", "bundle", "posy"],
  head: ["head", "heart"],
  fruit: ["fruit"],
  pod: ["pod"],
  punnet: ["punnet"],
  crate: ["crate", "box"],
  root: ["root"],
  bulb: ["bulb"],
  ear: ["ear", "cob"],
  handful: ["handful"],
  piece: ["piece"],
};
const plurals: Readonly<Record<string, string>> = { bunch: "bunches", box: "boxes", posy: "posies" };

const pickUnitByWord = new Map(
  Object.entries(pickUnits).flatMap(([unit, names]) =>
    names.flatMap((name) => [
      [name, unit as PickUnit] as const,
      [plurals[name] ?? `${name}s`, unit as PickUnit] as const,
    ]),
  ),
);

/** The trade unit of picking a word stands for: "stems", "cobs". */
export function pickUnitCalled(lower: string): PickUnit | undefined {
  return pickUnitByWord.get(lower);
}

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
const fractionWords: Readonly<Record<string, number>> = { half: 1 / 2, quarter: 1 / 4, third: 1 / 3 };

const aboutWords = new Set([
  "about",
  "around",
  "roughly",
  "approximately",
  "approx",
  "circa",
  "ca",
  "nearly",
  "almost",
  "~",
  "≈",
  "over",
  "under",
]);
/** Two words that say the same: "at least", "more than", "up to". */
const aboutPairs = new Set([
  "at least",
  "more than",
  "less than",
  "up to",
  "just over",
  "just under",
  "well over",
  "a good",
]);

/** After an inch written "in", which is also a preposition. */
const afterInches = new Set([
  "apart",
  "tall",
  "high",
  "long",
  "wide",
  "deep",
  "across",
  "spacing",
  "between",
  "round",
  "from",
  "diameter",
  "girth",
  "stems",
]);

interface NumberRead {
  readonly value: number;
  readonly end: number;
}

/** Reads the amount that begins at word `from`, with its unit when it has one. */
export function amountAt(words: readonly Word[], from: number, system: UnitSystem): Amount | undefined {
  const first = words[from];
  if (first === undefined || !mayBegin(first)) return undefined;
  const about = aboutEnd(words, from);
  const approx = about > from;
  const low = numberAt(words, about);
  if (low === undefined) return undefined;
  const high = rangeEnd(words, low);
  const last = high ?? low;
  const unit = measureUnitAt(words, last.end);
  if (unit !== undefined) return measured(words, low, high, unit, approx, system);
  const pick = words[last.end];
  const pickUnit = pick === undefined ? undefined : pickUnitByWord.get(pick.lower);
  if (isArticle(first) && pickUnit === undefined && last.end === about + 1 && !Number.isInteger(low.value))
    return undefined;
  if (high === undefined && !Number.isInteger(low.value) && pickUnit === undefined) return undefined;
  return {
    count: { value: low.value, ...(high === undefined ? {} : { upTo: high.value }), approx },
    unit: pickUnit,
    end: pickUnit === undefined ? last.end : last.end + 1,
  };
}

/** A cheap look before the work: most words of a line begin no amount. */
function mayBegin(word: Word): boolean {
  if (word.kind === "number" || word.kind === "fraction") return true;
  const lower = word.lower;
  return (
    lower === "a" ||
    lower === "an" ||
    lower === "minus" ||
    lower === "-" ||
    lower === "−" ||
    lower === "at" ||
    lower === "more" ||
    lower === "less" ||
    lower === "up" ||
    lower === "just" ||
    lower === "well" ||
    numberWords.has(lower) ||
    groups.has(lower) ||
    aboutWords.has(lower) ||
    fractionWords[lower] !== undefined
  );
}

function aboutEnd(words: readonly Word[], from: number): number {
  const first = words[from];
  if (first === undefined) return from;
  const second = words[from + 1];
  if (second !== undefined && aboutPairs.has(`${first.lower} ${second.lower}`)) return from + 2;
  if (!aboutWords.has(first.lower)) return from;
  return second?.text === "." ? from + 2 : from + 1;
}

/** A number in digits, fractions or words, below zero only with its sign. */
export function numberAt(words: readonly Word[], from: number): NumberRead | undefined {
  const word = words[from];
  if (word === undefined) return undefined;
  if (word.lower === "minus" || word.text === "-" || word.text === "−") {
    const below = words[from + 1]?.kind === "number" ? digitsAt(words, from + 1) : undefined;
    return below === undefined ? undefined : { value: -below.value, end: below.end };
  }
  if (word.kind === "number" || word.kind === "fraction") return multiplied(words, digitsAt(words, from));
  return multiplied(words, spokenAt(words, from));
}

/** "1", "1.5", "1,400", "1 1/2", "1½", "3/4". */
function digitsAt(words: readonly Word[], from: number): NumberRead | undefined {
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
  const fraction = fractionWords[word.lower];
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
    const part = fractionWords[next];
    if (part !== undefined) return { value: part, end: words[from + 2]?.lower === "of" ? from + 3 : from + 2 };
    return { value: 1, end: from + 1 };
  }
  const value = numberWords.get(word.lower);
  if (value === undefined) return undefined;
  const unit = numberWords.get(words[from + 2]?.lower ?? "");
  if (value >= 20 && words[from + 1]?.text === "-" && unit !== undefined && unit < 10)
    return { value: value + unit, end: from + 3 };
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
    return { value: number.value * group, end: of?.lower === "of" ? number.end + 2 : number.end + 1 };
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

/** After "a" these words count nothing: "a few", "a row of". */
const notCounted = new Set(
  "few lot little bit row rows line patch block drill tray packet pinch pot good load handsome large small big huge second third further".split(
    " ",
  ),
);

function isArticle(word: Word): boolean {
  return word.lower === "a" || word.lower === "an";
}

/** "8-10", "8 to 10", "8 or 10": the upper end, when it is above the lower. */
function rangeEnd(words: readonly Word[], low: NumberRead): NumberRead | undefined {
  const joint = words[low.end];
  if (joint === undefined) return undefined;
  const dash = joint.text === "-" || joint.text === "–" || joint.text === "—";
  if (!dash && joint.lower !== "to" && joint.lower !== "or") return undefined;
  const high = numberAt(words, low.end + 1);
  return high !== undefined && high.value > low.value ? high : undefined;
}

interface UnitRead {
  readonly unit: Unit;
  readonly end: number;
}

export function measureUnitAt(words: readonly Word[], at: number): UnitRead | undefined {
  const word = words[at];
  if (word === undefined) return undefined;
  if (word.text === "°" || word.lower === "degree" || word.lower === "degrees" || word.lower === "deg") {
    const scale = words[at + 1];
    const unit = scale === undefined ? undefined : unitCalled(scale.lower);
    if (unit?.dimension === "temperature") return { unit, end: at + 2 };
    return word.text === "°" ? { unit: unitCalled("c") as Unit, end: at + 1 } : undefined;
  }
  const unit = unitCalled(word.lower);
  if (unit === undefined) return undefined;
  // "12 C" is a temperature only in capitals; "6 in Long Bed" is no length.
  if (unit.dimension === "temperature")
    return word.text === word.text.toUpperCase() ? { unit, end: at + 1 } : undefined;
  if (word.lower === "in" && !isInch(words, at)) return undefined;
  if (word.text === "'" || word.text === "’" || word.text === '"' || word.text === "”") {
    if (words[at - 1]?.end !== word.start) return undefined;
  }
  const point = words[at + 1];
  const pointed =
    point?.text === "." &&
    point.start === word.end &&
    (word.lower === "in" || word.lower === "lb" || word.lower === "oz" || word.lower === "ft");
  return { unit, end: pointed && words[at + 2] !== undefined ? at + 2 : at + 1 };
}

/** "6 in apart" is a length and "6 in Long Bed" none: what follows decides, and capitals begin a name. */
function isInch(words: readonly Word[], at: number): boolean {
  const [before, word, after] = [words[at - 1], words[at], words[at + 1]];
  if (before !== undefined && word !== undefined && before.end === word.start) return true;
  if (after === undefined) return true;
  if (after.kind === "mark") return !/^['‘"“(]$/.test(after.text);
  return !isCapital(after) && (afterInches.has(after.lower) || after.lower === "x");
}

/** One measure, or two that add up: "2 lb 3 oz", "6 ft 2 in". */
function measured(
  words: readonly Word[],
  low: NumberRead,
  high: NumberRead | undefined,
  first: UnitRead,
  approx: boolean,
  system: UnitSystem,
): Amount {
  const { dimension } = first.unit;
  let value = inBaseUnit(low.value, first.unit, system);
  let end = first.end;
  const more =
    high === undefined && dimension !== "temperature" && words[end]?.kind === "number"
      ? digitsAt(words, end)
      : undefined;
  const second = more === undefined ? undefined : measureUnitAt(words, more.end);
  if (
    more !== undefined &&
    second !== undefined &&
    second.unit.dimension === dimension &&
    second.unit.factor < first.unit.factor
  ) {
    value += inBaseUnit(more.value, second.unit, system);
    end = second.end;
  }
  const loose = approx || high !== undefined;
  if (dimension === "mass") return { grams: value, end, loose };
  if (dimension === "length") return { cm: value, end, loose };
  if (dimension === "volume") return { litres: value, end, loose };
  return { celsius: value, end, loose };
}

// ------------------------------------------------------------------------------------------------------------ writing

/** A count as a line gives it: "24", "about 10", "8-10". */
export function writeCount(count: Count): string {
  const range = count.upTo === undefined ? String(count.value) : `${count.value}-${count.upTo}`;
  return count.approx ? `about ${range}` : range;
}

/** The trade unit as written after a count: "stems", "1 bunch". */
export function writePickUnit(unit: PickUnit, count: Count): string {
  if (count.value === 1 && count.upTo === undefined) return unit;
  return plurals[unit] ?? `${unit}s`;
}
