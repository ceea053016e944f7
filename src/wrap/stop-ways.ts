/**
 * The best way through phrases and states (Viterbi, IEEE Transactions on Information Theory 13:260-269, 1967), and from
 * the forward-backward sums over all ways how sure each of its turns is.
 */

export interface Moves {
  /** Score of going from state to state, row by row; 0 for staying. */
  readonly between: Float64Array;
  /** Added to the move to a state that is made at a phrase, row by row. */
  readonly at: Float64Array;
  /** Cost of beginning anywhere but in the first state. */
  readonly start: number;
}

/** State of every phrase on the best of all ways; the first states given win ties. */
export function bestWay(length: number, count: number, scores: Float64Array, moves: Moves): Int32Array {
  let best = Float64Array.from(
    { length: count },
    (_, state) => (scores[state] as number) - (state === 0 ? 0 : moves.start),
  );
  const came = new Int32Array(length * count);
  const costs = byEase(moves.between, count, 0, (between, at) => Math.min(-LEAST, between + at));
  for (let phrase = 1; phrase < length; phrase += 1) {
    const next = new Float64Array(count);
    for (let to = 0; to < count; to += 1) {
      const into = costs(moves.at[phrase * count + to] as number);
      let value = best[to] as number;
      let from = to;
      for (let other = 0; other < count; other += 1) {
        const move = (best[other] as number) + (into[to * count + other] as number);
        if (move > value) {
          value = move;
          from = other;
        }
      }
      next[to] = value + (scores[phrase * count + to] as number);
      came[phrase * count + to] = from;
    }
    best = next;
  }
  const path = new Int32Array(length);
  let state = best.reduce((top, value, at) => (value > (best[top] as number) ? at : top), 0);
  for (let phrase = length - 1; phrase >= 0; phrase -= 1) {
    path[phrase] = state;
    state = came[phrase * count + state] as number;
  }
  return path;
}

/** A move never pays for itself. */
const LEAST = 0.1;
const DEAREST = Math.exp(-LEAST);

/**
 * What it takes to come to a state from each other, in rows of the state come to. A phrase adds one of a few numbers to it, so
 * the table is made once for each and not at every phrase.
 */
function byEase(
  between: Float64Array,
  count: number,
  stays: number,
  both: (between: number, at: number) => number,
): (at: number) => Float64Array {
  const known = new Map<number, Float64Array>();
  return (at) => {
    let table = known.get(at);
    if (table === undefined) {
      table = Float64Array.from({ length: count * count }, (_, index) => {
        const [to, from] = [Math.floor(index / count), index % count];
        return from === to ? stays : both(between[from * count + to] as number, at);
      });
      known.set(at, table);
    }
    return table;
  };
}

/**
 * For each phrase at which the path turns, how much of the weight of all ways turns so within a phrase of it; and for each phrase
 * how much of it is where the path is. Sums are scaled phrase by phrase so that long films neither vanish nor overflow.
 */
export function sureness(
  length: number,
  count: number,
  scores: Float64Array,
  moves: Moves,
  path: Int32Array,
): { readonly turns: Float64Array; readonly there: Float64Array } {
  const weight = new Float64Array(length * count);
  const forward = new Float64Array(length * count);
  const backward = new Float64Array(length * count);
  for (let phrase = 0; phrase < length; phrase += 1) {
    let top = 0;
    for (let s = 0; s < count; s += 1) top = Math.max(top, scores[phrase * count + s] as number);
    for (let s = 0; s < count; s += 1)
      weight[phrase * count + s] = Math.exp((scores[phrase * count + s] as number) - top);
  }
  // exp(a + b) is exp(a) times exp(b).
  const tables = byEase(moves.between.map(Math.exp), count, 1, (between, at) => Math.min(DEAREST, between * at));
  const at = moves.at.map(Math.exp);
  const oddsInto = (to: number, phrase: number) => tables(at[phrase * count + to] as number);
  const scale = (sums: Float64Array, phrase: number) => {
    let total = 0;
    for (let s = 0; s < count; s += 1) total += sums[phrase * count + s] as number;
    for (let s = 0; s < count; s += 1) sums[phrase * count + s] = (sums[phrase * count + s] as number) / total;
  };
  for (let s = 0; s < count; s += 1) forward[s] = (weight[s] as number) * (s === 0 ? 1 : Math.exp(-moves.start));
  scale(forward, 0);
  for (let phrase = 1; phrase < length; phrase += 1) {
    for (let to = 0; to < count; to += 1) {
      const odds = oddsInto(to, phrase);
      let sum = 0;
      for (let from = 0; from < count; from += 1) {
        sum += (forward[(phrase - 1) * count + from] as number) * (odds[to * count + from] as number);
      }
      forward[phrase * count + to] = sum * (weight[phrase * count + to] as number);
    }
    scale(forward, phrase);
  }
  backward.fill(1, (length - 1) * count);
  scale(backward, length - 1);
  for (let phrase = length - 2; phrase >= 0; phrase -= 1) {
    for (let to = 0; to < count; to += 1) {
      const odds = oddsInto(to, phrase + 1);
      const [own, after] = [weight[(phrase + 1) * count + to] as number, backward[(phrase + 1) * count + to] as number];
      for (let from = 0; from < count; from += 1) {
        const here = phrase * count + from;
        backward[here] = (backward[here] as number) + (odds[to * count + from] as number) * own * after;
      }
    }
    scale(backward, phrase);
  }
  const turns = (phrase: number, a: number, b: number): number => {
    let total = 0;
    let these = 0;
    for (let from = 0; from < count; from += 1) {
      for (let to = 0; to < count; to += 1) {
        const here = phrase * count + to;
        const way =
          (forward[(phrase - 1) * count + from] as number) *
          (oddsInto(to, phrase)[to * count + from] as number) *
          (weight[here] as number) *
          (backward[here] as number);
        total += way;
        if (from === a && to === b) these += way;
      }
    }
    return total === 0 ? 0 : these / total;
  };
  const there = Float64Array.from(path, (state, phrase) => {
    let total = 0;
    for (let s = 0; s < count; s += 1)
      total += (forward[phrase * count + s] as number) * (backward[phrase * count + s] as number);
    const own = (forward[phrase * count + state] as number) * (backward[phrase * count + state] as number);
    return total === 0 ? 0 : own / total;
  });
  const sure = new Float64Array(length);
  for (let phrase = 1; phrase < length; phrase += 1) {
    const [a, b] = [path[phrase - 1] as number, path[phrase] as number];
    if (a === b) continue;
    let sum = 0;
    for (let near = Math.max(1, phrase - 1); near <= Math.min(length - 1, phrase + 1); near += 1)
      sum += turns(near, a, b);
    sure[phrase] = Math.min(1, sum);
  }
  return { turns: sure, there };
}
