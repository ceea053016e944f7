/** Times in a film: as players show them, and as addresses that open the film there. */

/** "6:40", "1:02:05": seconds into a film as players show them. */
export function filmTime(seconds: number): string {
  const whole = Math.max(0, Math.floor(seconds));
  const two = (n: number) => String(n).padStart(2, "0");
  const minutes = Math.floor(whole / 60) % 60;
  const hours = Math.floor(whole / 3600);
  return hours > 0 ? `${hours}:${two(minutes)}:${two(whole % 60)}` : `${minutes}:${two(whole % 60)}`;
}

/**
 * A film's address with a moment of it, in both common spellings: "?t=400" as video sites read it, "#t=400" as players of a
 * file do (W3C Media Fragments URI 1.0). A fragment that the address has already is left alone.
 */
export function filmAt(film: string, seconds: number): string {
  const address = new URL(film);
  const t = String(Math.max(0, Math.floor(seconds)));
  address.searchParams.set("t", t);
  if (address.hash === "") address.hash = `t=${t}`;
  return address.href;
}
