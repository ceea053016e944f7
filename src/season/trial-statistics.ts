/**
 * What a small side-by-side trial can and cannot tell: means and spread, the exact permutation test of the difference of means,
 * the interval of the difference from the same test, how small a p-value trials of that size can reach at all, and how many
 * plots would show a difference.
 */

export interface Spread {
  readonly n: number;
  readonly mean: number;
  /** Sample standard deviation (n - 1); undefined for a single value. */
  readonly sd?: number | undefined;
  /** Coefficient of variation, percent; undefined for a single value or a mean of 0. */
  readonly cv?: number | undefined;
}

/** Values of the two arms that are split up among themselves only: of one bed, of one season. */
export interface Block {
  readonly a: readonly number[];
  readonly b: readonly number[];
}

export interface Comparison {
  /** Mean of the first arm less mean of the second; of several blocks, of their differences. Everything below is of this figure. */
  readonly difference: number;
  /** Share of all splits whose difference is at least as large either way; exact when `splits` is the count of all. */
  readonly permutation: {
    readonly p: number;
    readonly asLarge: number;
    readonly splits: number;
    readonly exact: boolean;
  };
  /** Smallest two-sided p so many plots can give. */
  readonly smallestP: number;
  /** Differences that the same test does not reject: 95 %. Undefined where it could reject none. */
  readonly interval?: readonly [low: number, high: number] | undefined;
  /** Standard deviation between plots treated alike; undefined where each block has one a side and there is one block. */
  readonly sd?: number | undefined;
}

/** All splits up to this many are tried; C(20, 10) is 184,756. Above that, a seeded sample. */
const MOST_SPLITS = 300_000;
const SAMPLED_SPLITS = 100_000;
/** Two differences this near, in parts of the largest value, are a tie: sums of decimals differ in the last bits. */
const TIE = 1e-9;
/** Two-sided level of tests and intervals; the usual one. */
export const LEVEL = 0.05;

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
  return compareBlocks([{ a, b }]);
}

/**
 * Blocks without values of both arms tell nothing and are left out. `looks`: how many differences are looked at, for the
 * interval, so that it leaves out nothing exactly where p times the looks is at most the level.
 */
export function compareBlocks(all: readonly Block[], looks = 1): Comparison | undefined {
  const blocks = all.filter(({ a, b }) => a.length > 0 && b.length > 0);
  if (blocks.length === 0) return undefined;
  const splits = blocks.reduce((ways, { a, b }) => ways * choose(a.length + b.length, a.length), 1);
  const tie = TIE * Math.max(1, ...blocks.flatMap(({ a, b }) => [...a, ...b].map(Math.abs)));
  const exact = splits <= MOST_SPLITS;
  const made = exact ? everySplit(blocks) : sampledSplits(blocks);
  const asLarge = countAsLarge(made, made.observed, 0, tie);
  const equal = blocks.every(({ a, b }) => a.length === b.length);
  const smallestP = Math.min(1, (equal ? 2 : 1) / splits);
  return {
    difference: made.observed,
    permutation: { p: asLarge / made.gaps.length, asLarge, splits: made.gaps.length, exact },
    smallestP,
    interval: smallestP > LEVEL / looks ? undefined : intervalOf(made, LEVEL / looks, tie),
    sd: residualSpread(blocks, made.observed),
  };
}

/** Number of ways to pick k of n. */
export function choose(n: number, k: number): number {
  let ways = 1;
  for (let i = 1; i <= Math.min(k, n - k); i += 1) ways = (ways * (n - i + 1)) / i;
  return Math.round(ways);
}

/**
 * Every split's difference of means, and by how much that changes when one is taken off every value of the first arm: so the
 * test of any supposed difference costs one pass.
 */
interface Splits {
  readonly observed: number;
  readonly gaps: Float64Array;
  readonly slopes: Float64Array;
}

/** Weight of each block in the difference: what it has of the information (n m / (n + m)). */
function weightsOf(blocks: readonly Block[]): readonly number[] {
  const raw = blocks.map(({ a, b }) => (a.length * b.length) / (a.length + b.length));
  const total = sum(raw);
  return raw.map((weight) => weight / total);
}

function everySplit(blocks: readonly Block[]): Splits {
  const weights = weightsOf(blocks);
  let gaps = Float64Array.of(0);
  let slopes = Float64Array.of(0);
  blocks.forEach((block, at) => {
    const own = splitsOfBlock(block);
    const weight = weights[at] ?? 0;
    const [allGaps, allSlopes] = [
      new Float64Array(gaps.length * own.gaps.length),
      new Float64Array(gaps.length * own.gaps.length),
    ];
    for (let i = 0, to = 0; i < gaps.length; i += 1) {
      for (let j = 0; j < own.gaps.length; j += 1, to += 1) {
        allGaps[to] = (gaps[i] as number) + weight * (own.gaps[j] as number);
        allSlopes[to] = (slopes[i] as number) + weight * (own.slopes[j] as number);
      }
    }
    [gaps, slopes] = [allGaps, allSlopes];
  });
  return { observed: observedOf(blocks, weights), gaps, slopes };
}

function observedOf(blocks: readonly Block[], weights: readonly number[]): number {
  return sum(blocks.map(({ a, b }, at) => (weights[at] ?? 0) * (sum(a) / a.length - sum(b) / b.length)));
}

function splitsOfBlock({ a, b }: Block): { readonly gaps: readonly number[]; readonly slopes: readonly number[] } {
  const all = [...a, ...b];
  const total = sum(all);
  const gaps: number[] = [];
  const slopes: number[] = [];
  const pick = (from: number, left: number, picked: number, ofA: number): void => {
    if (left === 0) {
      gaps.push(meanGap(picked, a.length, total, all.length));
      slopes.push(meanGap(ofA, a.length, a.length, all.length));
      return;
    }
    for (let i = from; i <= all.length - left; i += 1)
      pick(i + 1, left - 1, picked + (all[i] as number), ofA + (i < a.length ? 1 : 0));
  };
  pick(0, a.length, 0, 0);
  return { gaps, slopes };
}

/** The values are sorted before they are dealt out, so that arms that change their names get the same sample. */
function sampledSplits(blocks: readonly Block[]): Splits {
  const weights = weightsOf(blocks);
  const random = seeded(blocks.reduce((n, { a, b }) => n + a.length + b.length, 0));
  const gaps = new Float64Array(SAMPLED_SPLITS);
  const slopes = new Float64Array(SAMPLED_SPLITS);
  // The split that was observed is one of the splits, so p is never 0.
  gaps[0] = observedOf(blocks, weights);
  slopes[0] = 1;
  blocks.forEach(({ a, b }, at) => {
    const weight = weights[at] ?? 0;
    const all = [...a.map((value) => ({ value, ofA: 1 })), ...b.map((value) => ({ value, ofA: 0 }))].sort(
      (one, other) => one.value - other.value,
    );
    const total = sum(all.map(({ value }) => value));
    for (let run = 1; run < SAMPLED_SPLITS; run += 1) {
      let [picked, ofA] = [0, 0];
      for (let i = 0; i < a.length; i += 1) {
        const j = i + Math.floor(random() * (all.length - i));
        const [one, other] = [all[i], all[j]] as [(typeof all)[number], (typeof all)[number]];
        [all[i], all[j]] = [other, one];
        picked += other.value;
        ofA += other.ofA;
      }
      gaps[run] = (gaps[run] as number) + weight * meanGap(picked, a.length, total, all.length);
      slopes[run] = (slopes[run] as number) + weight * meanGap(ofA, a.length, a.length, all.length);
    }
  });
  return { observed: gaps[0] as number, gaps, slopes };
}

/** Splits that are at least as far apart as what was seen, if the first arm were truly `shift` above the second. */
function countAsLarge({ gaps, slopes }: Splits, observed: number, shift: number, tie: number): number {
  const seen = Math.abs(observed - shift) - tie;
  let count = 0;
  for (let at = 0; at < gaps.length; at += 1)
    if (Math.abs((gaps[at] as number) - shift * (slopes[at] as number)) >= seen) count += 1;
  return count;
}

/** Halvings of the search for an end: to a millionth of the way. */
const HALVINGS = 40;

/** From both sides of the observed difference to where the test begins to reject. */
function intervalOf(splits: Splits, level: number, tie: number): readonly [number, number] {
  const { observed, gaps } = splits;
  const kept = (shift: number) => countAsLarge(splits, observed, shift, tie) > level * gaps.length;
  const widest = gaps.reduce((most, gap) => Math.max(most, Math.abs(gap)), Math.abs(observed)) || 1;
  const end = (sign: 1 | -1): number => {
    let [inside, outside] = [0, widest];
    while (kept(observed + sign * outside)) {
      [inside, outside] = [outside, outside * 2];
      if (outside > widest * 1e6) return sign * Number.POSITIVE_INFINITY;
    }
    for (let step = 0; step < HALVINGS; step += 1) {
      const middle = (inside + outside) / 2;
      if (kept(observed + sign * middle)) inside = middle;
      else outside = middle;
    }
    return observed + sign * inside;
  };
  return [end(-1), end(1)];
}

/** Of what is left when the arms' difference and the blocks' means are taken away. */
function residualSpread(blocks: readonly Block[], difference: number): number | undefined {
  const values = blocks.reduce((n, { a, b }) => n + a.length + b.length, 0);
  const free = values - blocks.length - 1;
  if (free <= 0) return undefined;
  const squares = blocks.map(({ a, b }) => {
    const left = [...a.map((value) => value - difference), ...b];
    const mean = sum(left) / left.length;
    return sum(left.map((value) => (value - mean) ** 2));
  });
  return Math.sqrt(sum(squares) / free);
}

/** More plots a side than this are in no garden. */
export const MOST_PLOTS = 30;
/** Standard normal quantiles for two-sided 0.05 and for power 0.8. */
const [zLevel, zPower] = [1.959964, 0.841621];

/**
 * Plots a side that show a difference four times in five (power 0.8, two-sided 0.05): the normal formula with Guenther's
 * correction for t (Guenther, The American Statistician 35:243-244, 1981; from memory), within one of a published table
 * (tests/season/published-sizes.ts).
 */
export function plotsToShow(difference: number, sd: number): number {
  const steps = Math.abs(difference) / sd;
  return Math.ceil(2 * ((zLevel + zPower) / steps) ** 2 + zLevel ** 2 / 4);
}

/** Fewest plots a side of which a clean split is rarer than the level, when so many differences are looked at. */
export function fewestPlots(looks: number): number {
  let n = 2;
  while ((2 / choose(2 * n, n)) * looks > LEVEL) n += 1;
  return n;
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
