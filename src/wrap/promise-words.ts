/**
 * What stands around a word of speech, as named features: whether the word is part of a promise is learned from them
 * (scripts/learn-promises.ts). Numbers, months, days and feasts are one word each, so that one speaker's day teaches another's.
 */

/** A spoken word as the model sees it: small letters, and the mark after it where the captions have marks. */
export interface HeardWord {
  readonly text: string;
  readonly mark: string;
}

const classes: readonly (readonly [RegExp, string])[] = [
  [/^\d/, "#"],
  [
    /^(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|twenty|thirty|forty|fifty|hundred|dozen|first|second|third|fourth|fifth|tenth|\w+teenth|twentieth|thirtieth)$/,
    "#",
  ],
  [/^(?:january|february|march|april|june|july|august|september|october|november|december)$/, "#month"],
  [/^(?:spring|summer|autumn|fall|winter|monsoon|harvest|season)s?$/, "#season"],
  [/^(?:mon|tues|wednes|thurs|fri|satur|sun)days?$/, "#weekday"],
  [
    /^(?:easter|christmas|halloween|thanksgiving|holi|diwali|eid|anzac|whitsun|pentecost|ramadan|lent|pongal|onam|carnival|midsummer)$/,
    "#feast",
  ],
  [/^(?:week|weeks|fortnight|month|months|weekend|days|years|year)$/, "#span"],
];

export function heardAs(text: string): string {
  for (const [pattern, name] of classes) if (pattern.test(text)) return name;
  return text;
}

const BEFORE = 4;
const BEHIND = 6;
const FAR_BEFORE = 10;
const FAR_BEHIND = 16;

/** The features of each word of a speech. */
export function promiseFeatures(words: readonly HeardWord[], at: number): readonly string[] {
  const seen = (index: number) =>
    index < 0 ? "^" : index >= words.length ? "$" : heardAs((words[index] as HeardWord).text);
  const features: string[] = [];
  for (let k = -BEFORE; k <= BEHIND; k += 1) features.push(`${k}:${seen(at + k)}`);
  for (let k = -3; k <= 4; k += 1) features.push(`${k}:${seen(at + k)} ${seen(at + k + 1)}`);
  const near = new Set<string>();
  for (let k = -FAR_BEFORE; k <= -1; k += 1) near.add(`<${seen(at + k)}`);
  for (let k = 1; k <= FAR_BEHIND; k += 1) near.add(`>${seen(at + k)}`);
  for (let k = -FAR_BEFORE; k < FAR_BEHIND; k += 1) near.add(`~${seen(at + k)} ${seen(at + k + 1)}`);
  features.push(...near);
  for (let k = -3; k <= 3; k += 1) {
    const mark = words[at + k]?.mark ?? "";
    if (mark !== "") features.push(`mark ${k}:${mark === "," ? "," : "."}`);
  }
  // How far the sentence's, or the breath's, begin and end are.
  return features;
}
