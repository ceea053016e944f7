/** Names of plants as keys: whole words in lower case and in the singular, so that "Sweet Peas" and "sweet pea" are one. */

/** Compounds that say what a plant is like and name another one: "narcissus-flowered", "laburnum-leaf". */
const likeness = /-(?:flowered|flowering|leaf|leafed|leaved|scented|shaped|like|root|fruited)$/;

/** Words of a name without cultivar names in quotation marks, without brackets. */
export function plantWords(name: string): readonly string[] {
  return name
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .replace(/\([^)]{0,200}\)/g, " ")
    .replace(/(?<!\p{L})['‘’"“„«].{0,200}?['’"”“»](?!\p{L})/gu, " ")
    .toLowerCase()
    .split(/\s+/)
    .flatMap((word) => (likeness.test(word) ? [word] : word.split("-")))
    .map((word) => singular(word.replace(/[^\p{L}\p{N}-]/gu, "")))
    .filter((word) => word !== "");
}

export function plantKey(name: string): string {
  return plantWords(name).join(" ");
}

function singular(word: string): string {
  if (/(?:ss|us|is)$/.test(word) || word.length < 4) return word;
  if (word.endsWith("ies")) return `${word.slice(0, -3)}y`;
  if (/(?:oes|shes|ches|xes|sses)$/.test(word)) return word.slice(0, -2);
  return word.endsWith("s") ? word.slice(0, -1) : word;
}
