/** Words as they are counted on a card. */

/** What stands between spaces; a lone sign is none. */
export function countWords(text: string): number {
  return text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
}

export function fits(text: string, words: number): boolean {
  return countWords(text) <= words;
}

/** The beginning of what somebody wrote, up to the last pause that leaves it short enough; undefined when none does. */
export function toPause(text: string, words: number): string | undefined {
  const bare = text.trim().replace(/[.;,\s]+$/, "");
  if (fits(bare, words)) return bare;
  const pauses = [...bare.matchAll(/[,;:]\s|\s(?:and|but|when|while|once|because|so that)\s/g)].map(
    ({ index }) => index,
  );
  const whole = (part: string) => countWords(part) > 1 && (part.match(/["“”]/g) ?? []).length % 2 === 0;
  const at = pauses.findLast((pause) => fits(bare.slice(0, pause), words) && whole(bare.slice(0, pause)));
  return at === undefined ? undefined : bare.slice(0, at);
}
