/** The varieties a viewer marked as grown, kept in their own browser and told to nobody. */

/** One store for each site, so that two sites at one address do not share marks. */
function keyOf(site: string): string {
  return `plotreel:grown:${site}`;
}

/** Ids; none when the browser keeps nothing. */
export function grownAt(site: string): ReadonlySet<string> {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(keyOf(site)) ?? "[]");
    return new Set(Array.isArray(kept) ? kept.filter((id) => typeof id === "string") : []);
  } catch {
    return new Set();
  }
}

/** False when the browser refuses to keep it. */
export function markGrown(site: string, id: string, isGrown: boolean): boolean {
  const ids = new Set(grownAt(site));
  if (isGrown) ids.add(id);
  else ids.delete(id);
  try {
    localStorage.setItem(keyOf(site), JSON.stringify([...ids].sort()));
    return true;
  } catch {
    return false;
  }
}
