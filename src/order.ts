/** Texts in order of their code units: the same on every machine, whatever its language. Days and ids are such texts. */
export function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** Of things in order of day those from one day up to and with another, found without going through all of them. */
export function betweenDays<Dated extends { readonly day: string }>(
  ordered: readonly Dated[],
  from: string,
  to: string,
): readonly Dated[] {
  return ordered.slice(
    firstWhere(ordered, ({ day }) => day >= from),
    firstWhere(ordered, ({ day }) => day > to),
  );
}

/** The place of the first that `is`, where all after it are so too. */
function firstWhere<Thing>(ordered: readonly Thing[], is: (one: Thing) => boolean): number {
  let [low, high] = [0, ordered.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (is(ordered[middle] as Thing)) high = middle;
    else low = middle + 1;
  }
  return low;
}
