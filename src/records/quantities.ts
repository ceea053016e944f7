/**
 * Counts, weights, lengths, volumes and temperatures as people write them in a line: "24", "about 10", "8-10", "a dozen",
 * "1 1/2 lb", "½ lb", "2 lb 3 oz", "12 stems", "3 bunches". Everything is given in grams, centimetres, litres and °C.
 */
import type { Count, PickUnit } from "../model.ts";
import type { Word } from "./line-words.ts";
import { measureUnitAt, type UnitRead } from "./measure-units.ts";
import { digitsAt, isArticle, mayBeginNumber, type NumberRead, numberAt } from "./numbers.ts";
import { inBaseUnit, type UnitSystem } from "./units.ts";

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

const aboutWords = new Set(
  "about around roughly approximately approx circa ca nearly almost ~ ≈ over under".split(" "),
);
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
  const unit = measureUnitAt(words, last.end, system);
  if (unit !== undefined) return measured(words, low, high, unit, approx, system);
  const pick = words[last.end];
  if (pick?.text === "%") return undefined;
  const pickUnit = pick === undefined ? undefined : pickUnitByWord.get(pick.lower);
  if (isArticle(first) && pickUnit === undefined && last.end === about + 1 && !Number.isInteger(low.value))
    return undefined;
  if (high === undefined && !Number.isInteger(low.value) && pickUnit === undefined) return undefined;
  return {
    // In "two to three dozen" the dozen counts for both.
    count: { value: low.value * (high?.times ?? 1), ...(high === undefined ? {} : { upTo: high.value }), approx },
    unit: pickUnit,
    end: pickUnit === undefined ? last.end : last.end + 1,
  };
}

/** Words that may say "about" before a number, alone or with the next word. */
const aboutBegins = new Set([...aboutWords, ...[...aboutPairs].map((pair) => pair.split(" ")[0] ?? "")]);

/** A cheap look before the work: most words of a line begin no amount. */
function mayBegin(word: Word): boolean {
  return mayBeginNumber(word) || aboutBegins.has(word.lower);
}

function aboutEnd(words: readonly Word[], from: number): number {
  const first = words[from];
  if (first === undefined) return from;
  const second = words[from + 1];
  if (second !== undefined && aboutPairs.has(`${first.lower} ${second.lower}`)) return from + 2;
  if (!aboutWords.has(first.lower)) return from;
  return second?.text === "." ? from + 2 : from + 1;
}

/** "8-10", "8 to 10", "8 or 10": the upper end, when it is above the lower. */
function rangeEnd(words: readonly Word[], low: NumberRead): NumberRead | undefined {
  const joint = words[low.end];
  if (joint === undefined) return undefined;
  const dash = joint.text === "-" || joint.text === "–" || joint.text === "—";
  if (!dash && joint.lower !== "to" && joint.lower !== "or") return undefined;
  const high = numberAt(words, low.end + 1);
  if (high === undefined || high.value <= low.value) return undefined;
  return low.value * (high.times ?? 1) < high.value ? high : { value: high.value, end: high.end };
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
