/**
 * How deep Markdown nests, counted on the raw text: a parser takes minutes for a list of ten thousand levels in one line
 * (its time grows with the square), and would already have gone down them by the time its tree could be measured.
 */

/** Marks of links and emphasis in one line below which they cost nothing. */
const FEW = 500;

/** Quotes, lists and brackets that one line opens, at most. */
export function deepestNesting(markdown: string): number {
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
