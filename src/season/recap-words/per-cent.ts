/** How far one amount is from another, as people say it. */

/** "nearly 70 per cent more than", "about 20 per cent less than"; undefined where a word says it better. */
export function percentMore(ratio: number): string | undefined {
  const percent = Math.abs(ratio - 1) * 100;
  const tens = Math.round(percent / 10) * 10;
  if (tens < 10 || tens > 90) return undefined;
  const about = percent < tens - 1 ? "nearly" : percent > tens + 1 ? "some" : "about";
  return `${about} ${tens} per cent ${ratio > 1 ? "more" : "less"} than`;
}

/** "most" of them: a share (0 to 1) as a word; "some" where it is not known. */
export function partWords(share: number | undefined): string {
  if (share === undefined) return "some";
  if (share > 0.99) return "all";
  if (share > 0.9) return "nearly all";
  if (share > 0.56) return "most";
  if (share > 0.44) return "half";
  if (share > 0.29) return "a third";
  if (share > 0.2) return "a quarter";
  return "a few";
}

/** The same where nothing smaller than a fifth is told: "a third" of it. */
export function partOf(share: number): string {
  return partWords(share) === "a few" ? "a fifth" : partWords(share);
}
