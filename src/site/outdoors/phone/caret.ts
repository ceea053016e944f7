/** Words put into a line where the caret stands, apart from what stands before and after. */

export function putAtCaret(line: HTMLInputElement, words: string): void {
  const { text, caret } = withWords(line.value, line.selectionStart ?? line.value.length, words);
  line.value = text;
  line.setSelectionRange(caret, caret);
}

export function withWords(
  text: string,
  caret: number,
  words: string,
): { readonly text: string; readonly caret: number } {
  const [before, after] = [text.slice(0, caret), text.slice(caret).trimStart()];
  const front = `${before}${before === "" || /\s$/u.test(before) ? "" : " "}${words} `;
  return { text: front + after, caret: front.length };
}
