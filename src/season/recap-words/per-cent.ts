/** How far one amount is from another, as people say it. */

/** "nearly 70 per cent more than", "about 20 per cent less than"; undefined where a word says it better. */
export function percentMore(ratio: number): string | undefined {
  const percent = Math.abs(ratio - 1) * 100;
  const tens = Math.round(percent / 10) * 10;
  if (tens < 10 || tens > 90) return undefined;
  const about = percent < tens - 1 ? "nearly" : percent > tens + 1 ? "some" : "about";
  return `${about} ${tens} per cent ${ratio > 1 ? "more" : "less"} than`;
}
