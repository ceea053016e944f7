/** From offsets in a text to the lines and columns an editor shows: both from 1, columns in characters, not bytes or halves. */

export interface LineColumn {
  readonly line: number;
  readonly column: number;
}

/** Lines end with LF, CRLF or a lone CR. */
export function textPlaces(text: string): (offset: number) => LineColumn {
  const starts = [0];
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === 10 || (code === 13 && text.charCodeAt(at + 1) !== 10)) starts.push(at + 1);
  }
  return (offset) => {
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((starts[middle] as number) <= offset) low = middle;
      else high = middle - 1;
    }
    let column = 1;
    for (let at = starts[low] as number; at < offset; at++) {
      // The second half of a surrogate pair belongs to the character before it.
      if ((text.charCodeAt(at) & 0xfc00) !== 0xdc00) column += 1;
    }
    return { line: low + 1, column };
  };
}
