/** How measured growth is said on a page. */

/** "35 %", of a share 0 to 1; the space does not break. */
export function sayShare(share: number): string {
  return `${Math.round(share * 100)}\u00a0%`;
}

/** Points of a hundred below which two covers are the same: what measuring itself may be off by. */
const SAME = 3;

/**
 * "Cover went from 35 % to 80 %." Shares 0 to 1, or words that stand for them; empty when one of them is not known. Of a photo
 * without the bed's outline only the photo is spoken of.
 */
export function sayGreen(
  from: number | string | undefined,
  to: number | string | undefined,
  of: "bed" | "photo",
): string {
  if (from === undefined || to === undefined) return "";
  const what = of === "bed" ? "Cover" : "The green in the photo";
  const [first, last] = [from, to].map((value) => (typeof value === "number" ? sayShare(value) : value));
  const still =
    typeof from === "number" &&
    typeof to === "number" &&
    Math.abs(Math.round(to * 100) - Math.round(from * 100)) < SAME;
  return still ? `${what} stayed at about ${last}.` : `${what} went from ${first} to ${last}.`;
}
