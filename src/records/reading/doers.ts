/** A word in capitals that somebody is called who does something: "Marnie ate four". */
import type { Word } from "../line-words.ts";

/** What people do and plants do not. */
const deeds =
  /^(?:ate|eats|said|says|asked|asks|thinks?|thought|reckons?|reckoned|told|tells|came|comes|brought|helped|helps|took|takes|gave|gives|made|makes|wants?|wanted|dug|digs|held|holds|cut|weighed|picked|planted|sowed|watered|weeded|pruned|counted|measured|spotted|found|fell|rang|left|loves?|loved|hates?|fixed|mended|built|carried|dropped|filmed|laughed|cried|sang|wrote|cooked|swapped)$/;

export function isDoer(words: readonly Word[], at: number): boolean {
  const next = words[at + 1];
  return next !== undefined && next.kind === "word" && deeds.test(next.lower);
}
