/** Page data without the characters that turn the reading direction of all that follows: a name may not disguise itself. */

/** Embeddings, overrides and isolates (Unicode Standard Annex 9, section 2); the two plain marks do no harm and stay. */
export const DIRECTION_CONTROLS = /[\u202a-\u202e\u2066-\u2069]/gu;

/** What has none is given back itself: a site's data is large, and a copy of all of it would cost more than the search. */
export function withoutDirectionControls<T>(data: T): T {
  if (typeof data === "string") return data.replace(DIRECTION_CONTROLS, "") as T;
  if (typeof data !== "object" || data === null) return data;
  if (Array.isArray(data)) {
    const clean = data.map(withoutDirectionControls);
    return clean.every((value, index) => value === data[index]) ? data : (clean as T);
  }
  let clean: Record<string, unknown> | undefined;
  for (const [key, value] of Object.entries(data)) {
    const cleanValue = withoutDirectionControls(value);
    if (cleanValue === value) continue;
    clean ??= { ...data } as Record<string, unknown>;
    clean[key] = cleanValue;
  }
  return (clean ?? data) as T;
}
