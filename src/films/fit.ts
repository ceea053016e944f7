/**
 * What fits into the film: the 0/1 knapsack over whole seconds, with an overhead for every stop that is visited at all.
 * Candidates marked `must` are in whatever the target says.
 */

/** How strongly a thing asks to be shown. */
export type Level = "must" | "should" | "could";

export interface Fitting {
  readonly id: string;
  /** Stop it is said at. */
  readonly stop: string;
  /** Spoken length with handling, whole seconds. */
  readonly seconds: number;
  readonly value: number;
  readonly must: boolean;
}

export interface Fit {
  /** Ids that are in, in the order given. */
  readonly chosen: readonly string[];
  readonly seconds: number;
  readonly value: number;
  /** Seconds by which the must-shows alone are over the target; 0 when they fit. */
  readonly over: number;
}

/**
 * Chooses the candidates of greatest value that fit `target` seconds. Of equal values the one given first wins, so the
 * answer is the same on every machine.
 *
 * A stop costs its overhead once, when anything of it is in. Stops with a must-show are paid for beforehand; each other
 * stop is a group of its own, so a table over seconds is kept for "stop not visited" and "stop visited".
 */
export function fitToTarget(candidates: readonly Fitting[], target: number, overhead: (stop: string) => number): Fit {
  const musts = candidates.filter((candidate) => candidate.must);
  const paid = new Set(musts.map((candidate) => candidate.stop));
  const mustSeconds = sum(musts.map((candidate) => candidate.seconds)) + sum([...paid].map(overhead));
  const room = Math.max(0, Math.floor(target - mustSeconds));
  const groups = groupByStop(candidates.filter((candidate) => !candidate.must && candidate.value > 0));

  // best[s]: greatest value within s seconds; picks keeps, per candidate, in which cells it was taken.
  let best = new Float64Array(room + 1);
  const steps: { candidate: Fitting; taken: Uint8Array }[] = [];
  const entries: { at: number; visited: Uint8Array; overhead: number }[] = [];
  for (const [stop, members] of groups) {
    const entrance = paid.has(stop) ? 0 : overhead(stop);
    let inside = shifted(best, entrance);
    const at = steps.length;
    for (const candidate of members) {
      const { next, taken } = withCandidate(inside, candidate);
      inside = next;
      steps.push({ candidate, taken });
    }
    const visited = new Uint8Array(room + 1);
    const merged = new Float64Array(room + 1);
    for (let s = 0; s <= room; s += 1) {
      const gain = inside[s] as number;
      const without = best[s] as number;
      visited[s] = gain > without ? 1 : 0;
      merged[s] = Math.max(gain, without);
    }
    best = merged;
    entries.push({ at, visited, overhead: entrance });
  }

  const chosen = new Set(musts.map((candidate) => candidate.id));
  let left = room;
  for (let group = entries.length - 1, end = steps.length; group >= 0; group -= 1) {
    const { at, visited, overhead: entrance } = entries[group] as (typeof entries)[number];
    if (visited[left] === 1) {
      for (let i = end - 1; i >= at; i -= 1) {
        const { candidate, taken } = steps[i] as (typeof steps)[number];
        if (taken[left] === 1) {
          chosen.add(candidate.id);
          left -= candidate.seconds;
        }
      }
      left -= entrance;
    }
    end = at;
  }

  const taken = candidates.filter((candidate) => chosen.has(candidate.id));
  const stops = new Set(taken.map((candidate) => candidate.stop));
  return {
    chosen: taken.map((candidate) => candidate.id),
    seconds: sum(taken.map((candidate) => candidate.seconds)) + sum([...stops].map(overhead)),
    value: sum(taken.map((candidate) => candidate.value)),
    over: Math.max(0, mustSeconds - target),
  };
}

function withCandidate(
  table: Float64Array,
  { seconds, value }: Fitting,
): { next: Float64Array<ArrayBuffer>; taken: Uint8Array } {
  const next = new Float64Array(table);
  const taken = new Uint8Array(table.length);
  for (let s = table.length - 1; s >= seconds; s -= 1) {
    const gain = (table[s - seconds] as number) + value;
    if (gain > (next[s] as number)) {
      next[s] = gain;
      taken[s] = 1;
    }
  }
  return { next, taken };
}

/** The table after `seconds` are spent; cells that cannot pay are out of reach. */
function shifted(table: Float64Array, seconds: number): Float64Array {
  const next = new Float64Array(table.length).fill(Number.NEGATIVE_INFINITY);
  if (seconds < table.length) next.set(table.subarray(0, table.length - seconds), seconds);
  return next;
}

function groupByStop(candidates: readonly Fitting[]): ReadonlyMap<string, readonly Fitting[]> {
  const groups = new Map<string, Fitting[]>();
  for (const candidate of candidates) {
    const members = groups.get(candidate.stop);
    if (members === undefined) groups.set(candidate.stop, [candidate]);
    else members.push(candidate);
  }
  return groups;
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
