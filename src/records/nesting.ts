/**
 * How deep Markdown nests, counted on the raw text: a parser takes minutes for a list of ten thousand levels in one line
 * (its time grows with the square), and would already have gone down them by the time its tree could be measured.
 */

/** Marks of links and emphasis in one line below which they cost nothing. */
const FEW = 500;

/** Lengths of runs of backticks in one text; the parser looks through all the rest of it for the end of each. */
const LENGTHS_OF_TICKS = 50;

/** Quotes, lists and brackets that one line opens, at most; no end of it where backticks come in too many lengths. */
export function deepestNesting(markdown: string): number {
  const ticks = new Set(markdown.match(/`+/gu)?.map(({ length }) => length));
  if (ticks.size > LENGTHS_OF_TICKS) return Number.POSITIVE_INFINITY;
  let deepest = 0;
  for (const line of markdown.split("\n")) {
    const opening = /^[\s>*+\-\d.)]*/u.exec(line)?.[0] ?? "";
    const marks = opening.match(/[>*+-]|\d[.)]/gu)?.length ?? 0;
    const brackets = line.match(/[[*_]/gu)?.length ?? 0;
    deepest = Math.max(
      deepest,
      /^\s*([-*_])(\s*\1)+\s*$/u.test(line) ? 0 : marks,
      opening.length / 4,
      brackets > FEW ? brackets : 0,
    );
  }
  return deepest;
}
