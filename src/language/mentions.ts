/** Whether words name a thing: whole words, without regard to case and accents. */
export function mentions(text: string, names: readonly string[]): boolean {
  return mentionsAny(plainWords(text), names.map(plainWords));
}

/** The same of words made plain before, for those who ask often. */
export function mentionsAny(plainText: string, plainNames: readonly string[]): boolean {
  return plainNames.some((name) => name.length > 2 && plainText.includes(name));
}

/** Small letters without accents, one space around each word. */
export function plainWords(text: string): string {
  const letters = text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ");
  return ` ${letters.trim()} `;
}
