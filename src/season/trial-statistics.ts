/**
 * What a small side-by-side trial can and cannot tell: means and spread, the exact permutation test, Welch's test with the
 * interval of the difference, and how small a p-value trials of that size can reach at all.
 */
import ttest2 from "@stdlib/stats-ttest2";

export interface Spread {
  readonly n: number;
  readonly mean: number;
  /** Sample standard deviation (n - 1); undefined for a single value. */
  readonly sd?: number | undefined;
  /** Coefficient of variation, percent; undefined for a single value or a mean of 0. */
  readonly cv?: number | undefined;
}

export interface Comparison {
  /** Mean of the first arm less mean of the second. */
  readonly difference: number;
  /** Share of all splits whose difference is at least as large either way; exact when `splits` is the count of all. */
  readonly permutation: {
    readonly p: number;
    readonly asLarge: number;
    readonly splits: number;
    readonly exact: boolean;
  };
  /** Smallest two-sided p this many plants a side can give. */
  readonly smallestP: number;
  /** Undefined when an arm has a single value or neither varies. */
  readonly welch?:
    | { readonly t: number; readonly df: number; readonly p: number; readonly interval: readonly [number, number] }
    | undefined;
}

/** All splits up to this many are tried; C(20, 10) is 184,756. Above that, a seeded sample. */
const MOST_SPLITS = 300_000;
const SAMPLED_SPLITS = 100_000;
/** Two differences this near are a tie: sums of decimals differ in the last bits. */
const TIE = 1e-9;

export function spread(values: readonly number[]): Spread | undefined {
  const n = values.length;
  if (n === 0) return undefined;
  const mean = values.reduce((total, value) => total + value, 0) / n;
  if (n === 1) return { n, mean };
  const sd = Math.sqrt(values.reduce((total, value) => total + (value - mean) ** 2, 0) / (n - 1));
  return { n, mean, sd, cv: mean === 0 ? undefined : (100 * sd) / Math.abs(mean) };
}

/** Undefined when an arm has no value. */
export function compareArms(a: readonly number[], b: readonly number[]): Comparison | undefined {
  const first = spread(a);
  const second = spread(b);
  if (first === undefined || second === undefined) return undefined;
  const splits = choose(a.length + b.length, a.length);
  return {
    difference: first.mean - second.mean,
    permutation: splits <= MOST_SPLITS ? everySplit(a, b, splits) : sampledSplits(a, b),
    smallestP: Math.min(1, (a.length === b.length ? 2 : 1) / splits),
    welch: a.length < 2 || b.length < 2 || (first.sd === 0 && second.sd === 0) ? undefined : welch(a, b),
  };
}

/** Number of ways to pick k of n. */
export function choose(n: number, k: number): number {
  let ways = 1;
  for (let i = 1; i <= Math.min(k, n - k); i += 1) ways = (ways * (n - i + 1)) / i;
  return Math.round(ways);
}

function welch(a: readonly number[], b: readonly number[]): Comparison["welch"] {
  const { statistic, df, pValue, ci } = ttest2([...a], [...b]);
  return { t: statistic, df, p: pValue, interval: [ci[0] as number, ci[1] as number] };
}

function everySplit(a: readonly number[], b: readonly number[], splits: number): Comparison["permutation"] {
  const all = [...a, ...b];
  const observed = Math.abs(meanGap(sum(a), a.length, sum(all), all.length));
  let asLarge = 0;
  const total = sum(all);
  const pick = (from: number, left: number, picked: number): void => {
    if (left === 0) {
      if (Math.abs(meanGap(picked, a.length, total, all.length)) >= observed - TIE) asLarge += 1;
      return;
    }
    for (let i = from; i <= all.length - left; i += 1) pick(i + 1, left - 1, picked + (all[i] as number));
  };
  pick(0, a.length, 0);
  return { p: asLarge / splits, asLarge, splits, exact: true };
}

function sampledSplits(a: readonly number[], b: readonly number[]): Comparison["permutation"] {
  const all = [...a, ...b];
  const total = sum(all);
  const observed = Math.abs(meanGap(sum(a), a.length, total, all.length));
  const random = seeded(all.length);
  // The split that was observed is one of the splits, so p is never 0.
  let asLarge = 1;
  for (let run = 1; run < SAMPLED_SPLITS; run += 1) {
    let picked = 0;
    for (let i = 0; i < a.length; i += 1) {
      const j = i + Math.floor(random() * (all.length - i));
      [all[i], all[j]] = [all[j] as number, all[i] as number];
      picked += all[i] as number;
    }
    if (Math.abs(meanGap(picked, a.length, total, all.length)) >= observed - TIE) asLarge += 1;
  }
  return { p: asLarge / SAMPLED_SPLITS, asLarge, splits: SAMPLED_SPLITS, exact: false };
}

function meanGap(picked: number, n: number, total: number, all: number): number {
  return picked / n - (total - picked) / (all - n);
}

/** mulberry32, so that the same trial gives the same figure on every machine. */
function seeded(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
