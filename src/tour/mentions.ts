/** Whether words name a thing: whole words, without regard to case and accents. */
export function mentions(text: string, names: readonly string[]): boolean {
  const words = plain(text);
  return names.some((name) => words.includes(plain(name)));
}

function plain(text: string): string {
  const letters = text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ");
  return ` ${letters.trim()} `;
}
