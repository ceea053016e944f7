/** Page data without the characters that turn the reading direction of all that follows: a name may not disguise itself. */

/** Embeddings, overrides and isolates (Unicode Standard Annex 9, section 2); the two plain marks do no harm and stay. */
const DIRECTION_CONTROLS = /[\u202a-\u202e\u2066-\u2069]/gu;

export function withoutDirectionControls<T>(data: T): T {
  if (typeof data === "string") return data.replace(DIRECTION_CONTROLS, "") as T;
  if (Array.isArray(data)) return data.map(withoutDirectionControls) as T;
  if (typeof data !== "object" || data === null) return data;
  return Object.fromEntries(Object.entries(data).map(([key, value]) => [key, withoutDirectionControls(value)])) as T;
}
