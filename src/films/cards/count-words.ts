/** Words as they are counted on a card. */

/** What stands between spaces; a lone sign is none. */
export function countWords(text: string): number {
  return text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
}

export function fits(text: string, words: number): boolean {
  return countWords(text) <= words;
}

/** A place, a time or a circumstance can go; what denies or limits cannot be told by its half. */
const circumstances =
  /\s(?:in|on|at|with|for|since|by|under|behind|during|before|after|about|round|of the|of each|from each|when|so)\s/g;
const limits = /\b(?:not|no|never|only|until|till|unless|but|than|none|nothing|without)\b|n't\b/i;

/** As `toPause`, else up to the last circumstance that leaves three words or more: "pull a cabbage from each half". */
export function toCircumstance(text: string, words: number): string | undefined {
  const paused = toPause(text, words);
  if (paused !== undefined || limits.test(text)) return paused;
  const bare = text.trim().replace(/[.;,\s]+$/, "");
  const at = [...bare.matchAll(circumstances)].map(({ index }) => index);
  const end = at.findLast((index) => fits(bare.slice(0, index), words) && countWords(bare.slice(0, index)) > 2);
  const part = end === undefined ? undefined : bare.slice(0, end);
  return part === undefined || (part.match(/["“”]/g) ?? []).length % 2 !== 0 ? undefined : part;
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
