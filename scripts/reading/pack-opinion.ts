/** Packs the weights of the opinion into the few letters that `src/records/reading/packed-opinion.ts` reads. */
import type { OpinionWeights } from "../../src/records/reading/opinion.ts";
import {
  digits,
  featureOf,
  type PackedOpinion,
  single,
  steps,
  weightOf,
} from "../../src/records/reading/packed-opinion.ts";

export function packedOpinion({ labels, bias, weights }: OpinionWeights): PackedOpinion {
  const features = Object.keys(weights).map((feature) => ({ feature, words: wordsOf(feature) }));
  const vocabulary = [...new Set(features.flatMap(({ words }) => words))].sort();
  const places = new Map(vocabulary.map((word, at) => [word, at]));
  const behind = vocabulary.map((): { at: number; feature: string }[] => []);
  for (const { feature, words } of features) {
    const [first, second] = words;
    if (featureOf(first, second) !== feature) throw new Error(`"${feature}" cannot be packed.`);
    behind[places.get(first) as number]?.push({ at: places.get(second) as number, feature });
  }
  for (const list of behind) list.sort((a, b) => a.at - b.at);
  const rows = behind.flat().map(({ feature }) => weights[feature] as readonly number[]);
  return {
    labels,
    bias,
    words: packedWords(vocabulary),
    pairs: behind.map((list) => gaps(list.map(({ at }) => at))).join(""),
    rows: rows.map((row) => gaps(row.filter((_, at) => at % 2 === 0))).join(""),
    steps: rows.flatMap((row) => row.filter((_, at) => at % 2 === 1).map(step)).join(""),
  };
}

function wordsOf(feature: string): readonly [first: string, second: string] {
  const parts = /^(\d:)(.+)$/.exec(feature) ?? /^([^ ]+) (.+)$/.exec(feature);
  return parts === null ? [feature, ""] : [parts[1] as string, parts[2] as string];
}

/** No half of a letter is shared. */
const plain = /[ -~]/;

function packedWords(vocabulary: readonly string[]): string {
  const quiet = vocabulary.map((word) => {
    if (word.includes("'")) throw new Error(`"${word}" cannot be packed: it has a mark that stands for capitals.`);
    return word.replace(/[A-Z]/g, (capital) => `'${capital.toLowerCase()}`);
  });
  return quiet
    .map((word, index) => {
      const before = quiet[index - 1] ?? "";
      let shared = 0;
      while (
        shared < 25 &&
        shared < before.length &&
        before[shared] === word[shared] &&
        plain.test(before[shared] as string)
      )
        shared += 1;
      return String.fromCharCode(65 + shared) + word.slice(shared);
    })
    .join("");
}

function gaps(list: readonly number[]): string {
  return [...list.map((value, at) => value - (list[at - 1] ?? -1)), 0].map(number).join("");
}

function number(value: number): string {
  if (value < single) return digits.charAt(value);
  const more = digits.length - single;
  const digit = single + ((value - single) % more);
  return digits.charAt(digit) + number((value - digit) / more);
}

/** The nearest step, by ratio; what is beyond the ladder is its last. */
function step(weight: number): string {
  const size = Math.abs(weight);
  let nearest = 0;
  while (nearest + 1 < steps && size * size >= weightOf(nearest) * weightOf(nearest + 1)) nearest += 1;
  return digits.charAt(2 * nearest + (weight < 0 ? 1 : 0));
}
