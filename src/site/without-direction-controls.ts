/** Page data without the characters that turn the reading direction of all that follows: a name may not disguise itself. */

/** Embeddings, overrides and isolates (Unicode Standard Annex 9, section 2); the two plain marks do no harm and stay. */
export const DIRECTION_CONTROLS = /[\u202a-\u202e\u2066-\u2069]/gu;

/** The same, to look whether there is one: hardly any text has, and to look takes a fraction of the time. */
const ANY = /[\u202a-\u202e\u2066-\u2069]/;

/** What has none is given back itself: a site's data is large, and a copy of all of it would cost more than the search. */
export function withoutDirectionControls<T>(data: T): T {
  if (typeof data === "string") return ANY.test(data) ? (data.replace(DIRECTION_CONTROLS, "") as T) : data;
  if (typeof data !== "object" || data === null) return data;
  if (Array.isArray(data)) {
    let clean: unknown[] | undefined;
    for (let at = 0; at < data.length; at += 1) {
      const value = withoutDirectionControls(data[at]);
      if (value === data[at]) continue;
      clean ??= [...data];
      clean[at] = value;
    }
    return (clean ?? data) as T;
  }
  let clean: Record<string, unknown> | undefined;
  for (const key of Object.keys(data)) {
    const value = (data as Record<string, unknown>)[key];
    const cleanValue = withoutDirectionControls(value);
    if (cleanValue === value) continue;
    clean ??= { ...data } as Record<string, unknown>;
    clean[key] = cleanValue;
  }
  return (clean ?? data) as T;
}
