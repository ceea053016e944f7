/** Aligns all photos of a viewpoint to one reference, by way of a neighbour where the direct way fails. */

import type { Alignment } from "./similarity.ts";
import { chained } from "./similarity.ts";

/** How photo `to` lies against photo `from`; undefined when they cannot be laid over one another. */
export type PairAlignment = (from: number, to: number) => Promise<Alignment | undefined>;

/**
 * Alignments of photos 0 to `count` - 1, given in order of time, to the one numbered `reference`. A photo that shows
 * too little of what the reference shows (a bare bed against a jungle) is tried against its two nearest aligned
 * neighbours in time, and the two movements are joined. Undefined stands for "not aligned".
 */
export async function alignSeries(
  count: number,
  reference: number,
  pair: PairAlignment,
): Promise<(Alignment | undefined)[]> {
  const others = Array.from({ length: count }, (_, i) => i).filter((i) => i !== reference);
  const direct = new Map<number, Alignment>();
  for (const i of others) {
    const found = await pair(reference, i);
    if (found) direct.set(i, found);
  }
  const joined = new Map(direct);
  for (const i of others) {
    if (direct.has(i)) continue;
    const neighbours = [...direct.keys()].sort((a, b) => Math.abs(a - i) - Math.abs(b - i)).slice(0, 2);
    for (const k of neighbours) {
      const step = await pair(k, i);
      if (!step) continue;
      joined.set(i, chained(direct.get(k) as Alignment, step));
      break;
    }
  }
  return Array.from({ length: count }, (_, i) => joined.get(i));
}
