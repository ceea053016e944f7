/** Which garden a watched page was made from, and where the page hears of newer ones. */

/** Below the site's base. */
export const FOLLOW_PATH = "@newest";

const KEY = Symbol.for("plotreel:newest");
const store = globalThis as Record<symbol, unknown>;

/**
 * Number of the newest garden, 0 where nobody watches: in a published site. Pages and server share it through the global
 * object, as they share the garden's data.
 */
export function newest(): number {
  return Number(store[KEY] ?? 0);
}

export function countNewest(): number {
  store[KEY] = newest() + 1;
  return newest();
}
