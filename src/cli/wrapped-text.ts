/** Text on lines no wider than a terminal: later lines begin below the words of the first. */

/** Characters of a line, the narrowest terminal people have. */
const WIDTH = 80;

/** `before` stands in front of the first line, as much room in front of the others. A word longer than a line stays whole. */
export function wrapped(before: string, text: string): readonly string[] {
  const room = " ".repeat(widthOf(before));
  const lines: string[] = [];
  let line = before;
  let isBare = true;
  for (const word of text.split(/\s+/u).filter((part) => part !== "")) {
    if (!isBare && widthOf(line) + 1 + widthOf(word) > WIDTH) {
      lines.push(line);
      line = room;
      isBare = true;
    }
    line += isBare ? word : ` ${word}`;
    isBare = false;
  }
  return [...lines, line.trimEnd()];
}

function widthOf(text: string): number {
  return Array.from(text).length;
}
