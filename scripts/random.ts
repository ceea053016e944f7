/** Seeded chance: the same words always give the same numbers, on every machine. */

export type Random = () => number;

/** 32-bit FNV-1a hash of a text. */
export function hashText(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}

/** Numbers in [0, 1) from a seed (mulberry32, public domain). */
export function randomFrom(seed: string | number): Random {
  let state = typeof seed === "number" ? seed >>> 0 : hashText(seed);
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
