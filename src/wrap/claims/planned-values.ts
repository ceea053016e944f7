/**
 * The figures of a planned thing, said where it is due: who says at a bed that fourteen were lost, as the plan has it, has told it,
 * whichever name was said last. A thing's figures are read from its text as they are read from speech.
 */
import type { Day, PlannedThing } from "../../model.ts";
import type { FilmHeard } from "../hear-film.ts";
import { beginsNumber, spokenNumber } from "../spoken-numbers.ts";
import { plainWord } from "../spoken-words.ts";
import { spokenPeriod } from "./periods.ts";
import type { Span } from "./planned-answer.ts";

interface Figures {
  readonly count?: number | undefined;
  readonly amount?: number | undefined;
  readonly day?: Day | undefined;
}

const unit = /^(?:kg|kilos?|g|grams?|lbs?|pounds?|oz|ounces?|stems?|bunch(?:es)?|heads?|fruits?|ears?)$/;
const time = /^(?:days?|weeks?|months?|years?|cm|feet|foot|inches|m)$/;
/** A smaller count is said of many things. */
const LEAST = 3;
/** So many are said of nothing else, wherever they stand in the text. */
const MANY = 10;
/** Words before and after a figure among which it is said of what. */
const BEFORE = 12;
const AFTER = 8;

/** The first figure of the thing that is said at the bed beside words of its kind. */
export function figureTold(
  { text }: PlannedThing,
  here: readonly Span[],
  claim: { readonly test: (said: string) => boolean },
  { day: { day }, speech: { words } }: FilmHeard,
): number | undefined {
  const figures = figuresOf(text, day);
  for (const { from, to } of here) {
    const plain = words.slice(from, to).map((word) => word.plain);
    for (let at = 0; at < plain.length; at += 1) {
      const end = saidAt(figures, plain, at, day);
      if (end === undefined) continue;
      if (claim.test(plain.slice(Math.max(0, at - BEFORE), end + AFTER).join(" "))) return from + at;
    }
  }
  return undefined;
}

/** The index after a figure of the thing that begins at a word. */
function saidAt(
  { count, amount, day }: Figures,
  plain: readonly string[],
  at: number,
  filmed: Day,
): number | undefined {
  const period = day === undefined ? undefined : spokenPeriod(plain, at, filmed);
  if (period !== undefined && period.from === day && period.to === day) return period.end;
  const number = beginsNumber(plain[at] ?? "") ? spokenNumber(plain, at) : undefined;
  if (number === undefined) return undefined;
  const isMeasured = unit.test(plain[number.end] ?? "");
  return number.value === (isMeasured ? amount : count) ? number.end : undefined;
}

function figuresOf(text: string, filmed: Day): Figures {
  const words = text.split(/[^\p{L}\p{N}.'’-]+/u).map((word) => plainWord(word.replace(/\.$/, "")));
  const numbers = words.flatMap((_, at) => {
    const number = spokenNumber(words, at);
    return number === undefined ? [] : [{ ...number, at, isMeasured: unit.test(words[number.end] ?? "") }];
  });
  const counts = numbers.filter(
    ({ at, end, isMeasured }) => !isMeasured && words[at - 1] !== "on" && !time.test(words[end] ?? ""),
  );
  // "Two of the tomatoes", "new since the last tour: 36 Alleppey".
  const first = counts.find(({ at }) => at === 0) ?? counts.find(({ value }) => value >= MANY);
  const days = words.flatMap((word, at) => (word === "on" ? (spokenPeriod(words, at + 1, filmed) ?? []) : []));
  const day = days.find(({ from, to }) => from === to);
  return {
    count: first !== undefined && first.value >= LEAST ? first.value : undefined,
    amount: numbers.find(({ isMeasured }) => isMeasured)?.value,
    day: day?.from,
  };
}
