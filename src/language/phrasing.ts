/**
 * Several ways to say one thing, chosen by the id of what is spoken of: the same records always give the same words, and
 * ten stops in a row do not begin alike.
 */

/** 32-bit FNV-1a (Fowler, Noll, Vo; public domain), over UTF-16 units: small, stable everywhere, well spread for short ids. */
function hash(text: string): number {
  let value = 0x811c9dc5;
  for (let index = 0; index < text.length; index++) {
    value = Math.imul(value ^ text.charCodeAt(index), 0x01000193);
  }
  // The low bits of FNV follow the last letter too closely when only two or three choices are drawn from them.
  return (value ^ (value >>> 15)) >>> 0;
}

/** One of the ways for things told one after the other: each turn takes the next way, the first by the id of the whole. */
export function inTurn<T>(id: string, turn: number, ways: readonly [T, ...T[]]): T {
  return ways[(hash(id) + turn) % ways.length] ?? ways[0];
}

/** One of the ways, always the same one for the same id. */
export function oneOf<T>(id: string, ways: readonly [T, ...T[]]): T {
  return ways[hash(id) % ways.length] ?? ways[0];
}
