/**
 * What stands around a word of speech, as named features: whether the word belongs to a promise is learned from them
 * (scripts/learn-promises.ts). Numbers, months, days and feasts are one word each, so that one speaker's day teaches
 * another's.
 */

/** A spoken word as the model sees it. */
export interface HeardWord {
  /** Small letters, straight apostrophes. */
  readonly text: string;
  /** What ends after it, in captions that have marks. */
  readonly mark: "" | "," | ".";
  /** It is the first of a statement. */
  readonly begins: boolean;
  /** The rule of spoken-rules.ts that takes it for part of a promise. */
  readonly rule: string | undefined;
}

/** Words `from` to `to` (after the last) as rules look at them. */
export function wordsBetween(words: readonly HeardWord[], from: number, to: number): string {
  return words
    .slice(Math.max(0, from), to)
    .map(({ text }) => text)
    .join(" ");
}

const classes: readonly (readonly [RegExp, string])[] = [
  [/^\d/, "#"],
  [
    /^(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|twenty|thirty|forty|fifty|hundred|dozen|first|second|third|fourth|fifth|[a-z]+teenth|[a-z]+ieth)$/,
    "#",
  ],
  [/^(?:january|february|march|april|june|july|august|september|october|november|december)$/, "#month"],
  [/^(?:springs?|summers?|autumns?|fall|winters?|monsoons?|rains|harvest)$/, "#season"],
  [/^(?:mon|tues|wednes|thurs|fri|satur|sun)days?$/, "#weekday"],
  [
    /^(?:easter|christmas|halloween|thanksgiving|holi|diwali|eid|anzac|whitsun|pentecost|ramadan|lent|pongal|carnival|midsummer)$/,
    "#feast",
  ],
  [/^(?:weeks?|fortnight|months?|weekend|days)$/, "#span"],
  [/^(?:show|film|weigh|count|measure|report|compare|share|post|upload|explain|reveal|record)$/, "#show"],
];

const known = new Map<string, string>();

/** The word itself, or the sort of time or number it is. */
export function asLearned(text: string): string {
  let learned = known.get(text);
  if (learned === undefined) {
    learned = classes.find(([pattern]) => pattern.test(text))?.[1] ?? text;
    if (known.size > 100_000) known.clear();
    known.set(text, learned);
  }
  return learned;
}

/** Places around a word at which a word, or two, stand for themselves. */
export const places = { word: [-4, 6], pair: [-3, 4], mark: [-3, 3] } as const;
/** How far around it words count wherever they stand. */
export const far = { before: 10, behind: 16 } as const;

/** Features of every word have this many parts, near enough; their sum is scaled by its root. */
export const PARTS =
  places.word[1] - places.word[0] + (places.pair[1] - places.pair[0]) + 2 * (far.before + far.behind);

/**
 * Calls back with the name of each feature of a word: "0:show", "1:you in", "<scales", "~next time", "rule
 * promise/show-later". `promise-model.ts` adds up their weights without making the names.
 */
export function eachFeature(words: readonly HeardWord[], at: number, tell: (name: string) => void): void {
  const word = (index: number) => {
    const one = words[index];
    return one === undefined ? "" : asLearned(one.text);
  };
  for (let k = places.word[0]; k <= places.word[1]; k += 1) tell(`${k}:${word(at + k)}`);
  for (let k = places.pair[0]; k <= places.pair[1]; k += 1) tell(`${k}:${word(at + k)} ${word(at + k + 1)}`);
  for (let k = -far.before; k < 0; k += 1) tell(`<${word(at + k)}`);
  for (let k = 1; k <= far.behind; k += 1) tell(`>${word(at + k)}`);
  for (let k = -far.before; k < far.behind; k += 1) tell(`~${word(at + k)} ${word(at + k + 1)}`);
  for (let k = places.mark[0]; k <= places.mark[1]; k += 1) {
    const mark = words[at + k]?.mark ?? "";
    if (mark !== "") tell(`mark ${k}${mark}`);
  }
  tell(ruleFeature(words[at]?.rule));
}

export function ruleFeature(rule: string | undefined): string {
  return rule === undefined ? "no rule" : `rule ${rule}`;
}
