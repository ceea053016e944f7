/**
 * Which words of a speech are a promise, as learned from what people who had not seen the rules said in their gardens
 * (tests/talks, tests/films/learn; `npm run learn:promises`). First each word's log-odds; then the runs of words in which they
 * outweigh what beginning and ending a promise costs (Viterbi over two states); then whether a run is one, by what it says.
 */

import { asLearned, far, type HeardWord, PARTS, places, ruleFeature, wordsBetween } from "./promise-words.ts";
import learned from "./promises.weights.json" with { type: "json" };
import { conditionWords, laterWords, noPromise } from "./spoken-rules.ts";

/** All in hundredths. */
export interface PromiseWeights {
  readonly bias: number;
  /** By feature of a word. */
  readonly words: Readonly<Record<string, number>>;
  /** By feature of a run. */
  readonly runs: Readonly<Record<string, number>>;
}

/** Words `from` to `to` (after the last) that may be a promise. */
export interface Run {
  readonly from: number;
  readonly to: number;
}

export interface LikelyRun extends Run {
  /** From 0 to 1. */
  readonly likelihood: number;
}

/** What beginning or ending a run costs, and what every word is given: runs are to be too many, the second look takes some away. */
const COST = 5;
const GIVEN = 2;

/** Whether a time to come stands in words of the speech. */
export type IsLater = (run: Run) => boolean;

export interface Heard {
  readonly runs: readonly LikelyRun[];
  /** How likely any other run is one. */
  readonly judged: (run: Run) => LikelyRun;
}

export function likelyPromises(
  words: readonly HeardWord[],
  isLater: IsLater,
  weights: PromiseWeights = learned,
): Heard {
  const odds = logOdds(words, weights);
  const judged = (run: Run): LikelyRun => ({
    ...run,
    likelihood: likelihoodOf(runFeatures(run, words, odds, isLater), weights),
  });
  return { runs: runsOf(words, odds).flatMap((run) => onePromiseEach(judged(run), words, judged)), judged };
}

/** Likelihood of both sides from which a run is cut in two, and fewest words of a side. */
const CUT_FROM = 0.7;
const SHORTEST = 4;
/** Words of a side that are looked through. */
const LONGEST = 80;

/** "I'll eat it on camera. And in October I'll count them" is two promises: a run is cut where a statement begins if both sides are one. */
function onePromiseEach(
  run: LikelyRun,
  words: readonly HeardWord[],
  judged: (run: Run) => LikelyRun,
): readonly LikelyRun[] {
  const pieces: LikelyRun[] = [];
  let rest = run;
  for (let at = run.from + SHORTEST; at <= run.to - SHORTEST; at += 1) {
    if (words[at]?.begins !== true || at - rest.from < SHORTEST) continue;
    const before = judged({ from: Math.max(rest.from, at - LONGEST), to: at });
    if (before.likelihood < CUT_FROM) continue;
    const behind = judged({ from: at, to: Math.min(run.to, at + LONGEST) });
    if (behind.likelihood < CUT_FROM) continue;
    pieces.push({ ...before, from: rest.from });
    rest = { ...behind, to: run.to };
  }
  return [...pieces, rest];
}

export function logOdds(words: readonly HeardWord[], weights: PromiseWeights): Float64Array {
  const table = tableOf(weights);
  const scale = 1 / (100 * Math.sqrt(PARTS));
  const texts = words.map(({ text }) => asLearned(text));
  // Beyond either end stands the empty word, as often as a feature looks that far.
  const edge = far.behind + 1;
  const padded = [...Array<string>(edge).fill(""), ...texts, ...Array<string>(edge).fill("")];
  const singles = padded.map((text) => table.singles.get(text) ?? nothing);
  const pairs = padded.map((text, index) => table.pairs.get(text)?.get(padded[index + 1] ?? "") ?? nothing);
  const placed = (rows: readonly Float64Array[], from: number, to: number) => {
    let total = 0;
    for (let k = from; k <= to; k += 1) total += (rows[k] as Float64Array)[k - from] as number;
    return total;
  };
  const anywhere = (rows: readonly Float64Array[], from: number, to: number, side: number) => {
    let total = 0;
    for (let k = from; k <= to; k += 1) total += (rows[k] as Float64Array)[side] as number;
    return total;
  };
  return Float64Array.from(words, ({ rule }, index) => {
    const here = index + edge;
    let total = table.others.get(ruleFeature(rule)) ?? 0;
    total += placed(singles, here + places.word[0], here + places.word[1]);
    total += placed(pairs, here + places.pair[0], here + places.pair[1]);
    total += anywhere(singles, here - far.before, here - 1, BEFORE);
    total += anywhere(singles, here + 1, here + far.behind, BEHIND);
    total += anywhere(pairs, here - far.before, here + far.behind - 1, BEFORE);
    for (let k = places.mark[0]; k <= places.mark[1]; k += 1) {
      const mark = words[index + k]?.mark ?? "";
      if (mark !== "") total += table.others.get(`mark ${k}${mark}`) ?? 0;
    }
    return weights.bias / 100 + total * scale;
  });
}

/** Of a word or two: a weight for each place it may stand at, then what it counts anywhere before and anywhere behind. */
const PLACES = places.word[1] - places.word[0] + 1;
const BEFORE = PLACES;
const BEHIND = PLACES + 1;
const nothing = new Float64Array(PLACES + 2);

interface Table {
  readonly singles: ReadonlyMap<string, Float64Array>;
  /** By their first word, then by what follows it. */
  readonly pairs: ReadonlyMap<string, ReadonlyMap<string, Float64Array>>;
  readonly others: ReadonlyMap<string, number>;
}

const tables = new WeakMap<PromiseWeights, Table>();

function tableOf(weights: PromiseWeights): Table {
  const known = tables.get(weights);
  if (known !== undefined) return known;
  const singles = new Map<string, Float64Array>();
  const pairs = new Map<string, Float64Array>();
  const others = new Map<string, number>();
  const put = (rows: Map<string, Float64Array>, text: string, place: number, weight: number) => {
    const row = rows.get(text) ?? new Float64Array(PLACES + 2);
    row[place] = weight;
    rows.set(text, row);
  };
  for (const [name, weight] of Object.entries(weights.words)) {
    const placed = /^(-?\d+):(.*)$/s.exec(name);
    if (placed !== null) {
      const [, place = "", text = ""] = placed;
      const at = Number(place);
      put(singles, text, at - places.word[0], weight);
      // One word may be heard as two ("gonna"), and has the name of a pair then.
      if (text.includes(" ") && at >= places.pair[0] && at <= places.pair[1])
        put(pairs, text, at - places.pair[0], weight);
    } else if (name.startsWith("<")) put(singles, name.slice(1), BEFORE, weight);
    else if (name.startsWith(">")) put(singles, name.slice(1), BEHIND, weight);
    else if (name.startsWith("~")) put(pairs, name.slice(1), BEFORE, weight);
    else others.set(name, weight);
  }
  const table = { singles, pairs: byFirst(pairs), others };
  tables.set(weights, table);
  return table;
}

/** A word may be two itself ("going to"), so a pair is found by each way to part it. No pair of a film has to be written out. */
function byFirst(pairs: ReadonlyMap<string, Float64Array>): Map<string, Map<string, Float64Array>> {
  const nested = new Map<string, Map<string, Float64Array>>();
  for (const [text, row] of pairs) {
    for (let space = text.indexOf(" "); space >= 0; space = text.indexOf(" ", space + 1)) {
      const [first, next] = [text.slice(0, space), text.slice(space + 1)];
      const rows = nested.get(first);
      if (rows === undefined) nested.set(first, new Map([[next, row]]));
      else rows.set(next, row);
    }
  }
  return nested;
}

export function runsOf(words: readonly HeardWord[], odds: Float64Array): readonly Run[] {
  let inside = Number.NEGATIVE_INFINITY;
  let outside = 0;
  const begins = new Uint8Array(odds.length);
  const ends = new Uint8Array(odds.length);
  odds.forEach((odd, at) => {
    // A promise rather begins and ends where a sentence does.
    const cost = words[at - 1]?.mark === "." ? COST / 2 : COST;
    const [stays, out] = [inside, outside];
    begins[at] = out - cost > stays ? 1 : 0;
    ends[at] = stays - cost > out ? 1 : 0;
    inside = Math.max(stays, out - cost) + odd + GIVEN;
    outside = Math.max(out, stays - cost);
  });
  const runs: Run[] = [];
  let isInside = inside > outside;
  let to = odds.length;
  for (let at = odds.length - 1; at >= 0; at -= 1) {
    if (isInside && begins[at] === 1) {
      runs.push({ from: at, to });
      isInside = false;
    } else if (!isInside && ends[at] === 1) {
      isInside = true;
      to = at;
    }
  }
  return runs.reverse();
}

/** Words around a run that are looked at too. */
const AROUND = [2, 3] as const;

const says: readonly (readonly [string, RegExp])[] = [
  ["later", laterWords],
  ["condition", conditionWords],
  ["no promise", noPromise],
  ["commits", /\b(?:i|we)(?:'ll| will| shall)\b|\b(?:i'm|we're) going to\b|\bi owe\b/],
  ["to you", /\byou(?:'ll)?\b/],
  ["they will", /\b(?:they|it|he|she)(?:'ll| will)\b/],
  ["shows", /\b(?:show|tell|weigh|count|film|measure|taste|video|camera|see|report|answer|next)\b/],
  ["told or usual", /\b(?:said|told|promised|would|always|usually|every)\b/],
  ["goodbye", /\b(?:bye|cheers|take care|thanks?|watching|subscribe|comments?|below|see you|hope)\b/],
];

export function runFeatures(
  run: Run,
  words: readonly HeardWord[],
  odds: Float64Array,
  isLater: IsLater,
): ReadonlyMap<string, number> {
  const own = [...odds.subarray(run.from, run.to)].sort((a, b) => b - a);
  // What leads to a promise says less than its verb.
  const surest = own.slice(0, Math.ceil(own.length / 2));
  const mean = surest.reduce((sum, odd) => sum + odd, 0) / surest.length;
  const features = new Map([
    ["always", 1],
    ["surest half", mean],
    ["surest", own[0] ?? 0],
    ["all", own.reduce((sum, odd) => sum + Math.max(-1, odd), 0) / 10],
    ["length", Math.min(3, own.length / 10)],
  ]);
  if (isLater(run)) features.set("time", 1);
  if (words.slice(run.from, run.to).some(({ rule }) => rule !== undefined)) features.set("rule", 1);
  const text = wordsBetween(words, run.from - AROUND[0], run.to + AROUND[1]);
  for (const [name, pattern] of says) if (pattern.test(text)) features.set(name, 1);
  return features;
}

function likelihoodOf(features: ReadonlyMap<string, number>, { runs }: PromiseWeights): number {
  let sum = 0;
  for (const [name, value] of features) sum += (value * (runs[name] ?? 0)) / 100;
  return 1 / (1 + Math.exp(-sum));
}
