/** Which day of a ribbon a slider means, and which photo stands for it. */

/**
 * `places` are those of its days, in order. A hand on the slider means the day nearest to it; a key that moves it by less than
 * the way to the next day means that next day.
 */
export function dayMeant(places: readonly number[], now: number, asked: number, isHeld: boolean): number {
  const away = (index: number) => Math.abs((places[index] ?? 0) - asked);
  const nearest = places.reduce((best, _, index) => (away(index) < away(best) ? index : best), 0);
  const from = places[now] ?? 0;
  // Of two days at one place the way on leads through both.
  if (isHeld || (places[nearest] !== from && nearest !== now)) return nearest;
  const step = Math.sign(asked - from);
  return Math.min(places.length - 1, Math.max(0, now + step));
}

/** The day whose photo is shown on a day: its own, else the last before it, else the next one. */
export function photoFor(hasPhoto: readonly boolean[], day: number): number | undefined {
  const before = hasPhoto.lastIndexOf(true, day);
  if (before >= 0) return before;
  const after = hasPhoto.indexOf(true, day);
  return after < 0 ? undefined : after;
}
