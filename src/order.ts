/** Texts in order of their code units: the same on every machine, whatever its language. Days and ids are such texts. */
export function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
