/** Contrast of two colours as WCAG 2.2 defines it ("contrast ratio", "relative luminance"): 1 to 21. */

/** Both colours as "#rrggbb", in either order. */
export function contrast(one: string, other: string): number {
  const [lighter, darker] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return ((lighter ?? 0) + 0.05) / ((darker ?? 0) + 0.05);
}

/** 0 for black, 1 for white. */
function luminance(colour: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => linear(Number.parseInt(colour.slice(at, at + 2), 16) / 255));
  return 0.2126 * (red ?? 0) + 0.7152 * (green ?? 0) + 0.0722 * (blue ?? 0);
}

/** The sRGB curve. WCAG 2.2 breaks it at 0.04045, 2.0 at 0.03928: no colour of eight bits lies between the two. */
function linear(share: number): number {
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
}
