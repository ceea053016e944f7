/** The story of a note, sentence by sentence. */

/** Sentences of a Markdown paragraph, without the marks of emphasis and links. */
export function sentencesOf(markdown: string): readonly string[] {
  const plain = markdown
    .replace(/\[([^\]]{0,1000})\]\([^)]{0,1000}\)/g, "$1")
    .replace(/[*_`]/g, "")
    .replace(/\s+/g, " ")
    .trim();
  // "1.2 m" and "9.15" are one word: a sentence ends at a mark with a gap behind it.
  return plain
    .split(/(?<=[.!?]["”’)]?)\s+/)
    .map((sentence) => endOf(sentence.trim()))
    .filter((sentence) => sentence !== "");
}

/** With the mark that ends a sentence. */
export function endOf(text: string): string {
  const said = text.trim();
  return said === "" || /[.!?…]$/.test(said) ? said : `${said}.`;
}
