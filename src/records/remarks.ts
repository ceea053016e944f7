/**
 * Remarks to oneself: what stands between <!-- and -->, or between two pairs of per cent signs as some editors have it. A
 * remark goes on until it is closed, over paragraphs and list items, whatever Markdown makes of it.
 */

const remark = /<!--[\s\S]*?(?:-->|$)|%%[\s\S]*?%%/g;

/** The text without its remarks; one that is never closed takes the rest. */
export function withoutRemarks(text: string): string {
  return text.includes("<!--") || text.includes("%%") ? text.replace(remark, "") : text;
}

/** Says of a line, counted from 1, whether it begins within a remark that an earlier line opened. */
export function linesWithinRemarks(text: string, from: number): (line: number) => boolean {
  const spans = [...text.slice(from).matchAll(remark)]
    .map((found) => [lineAt(text, from + found.index), lineAt(text, from + found.index + found[0].length)] as const)
    .filter(([open, close]) => close > open);
  return (line) => spans.some(([open, close]) => line > open && line <= close);
}

function lineAt(text: string, offset: number): number {
  return text.slice(0, offset).split(/\r\n?|\n/).length;
}
