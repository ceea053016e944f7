/** Parts of lists that are in order of words: a long film has thousands of names, and each stretch of it only a few. */

/** Entries whose first word is from `from` on and before `to`. */
export function inWords<T>(
  inOrder: readonly T[],
  wordOf: (entry: T) => number,
  from: number,
  to: number,
): readonly T[] {
  return inOrder.slice(firstFrom(inOrder, wordOf, from), firstFrom(inOrder, wordOf, to));
}

/** Index of the first entry whose word is `word` or after it. */
export function firstFrom<T>(inOrder: readonly T[], wordOf: (entry: T) => number, word: number): number {
  let low = 0;
  let high = inOrder.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (wordOf(inOrder[middle] as T) < word) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The stretch that a word is in. */
export function stretchAt<S extends { readonly from: number; readonly to: number }>(
  inOrder: readonly S[],
  word: number,
): S | undefined {
  const stretch = inOrder[firstFrom(inOrder, ({ to }) => to, word + 1)];
  return stretch !== undefined && stretch.from <= word ? stretch : undefined;
}
