/**
 * Which product of the guide's table a person means. The whole words decide, and the last of them most: apple sauce is no
 * tomato sauce, tomato soup no tomatoes, sweet peas no peas. What is not in the table is not guessed at, because the acid and
 * the time of a jar hang on it.
 */
import { type CanningFact, canningFacts } from "./canning-facts.ts";

/** Say nothing of what is in the jar. */
const empty = new Set(
  "a an the of our my own some good fresh home homemade homegrown grown made canned bottled jarred in jars".split(" "),
);

/** `what`: the words after the amount, without names of varieties; undefined for what the table does not have. */
export function canningFactFor(what: string): CanningFact | undefined {
  const said = plain(what);
  return said === "" ? undefined : canningFacts.find(({ names }) => names.some((name) => plain(name) === said));
}

function plain(text: string): string {
  const words =
    text
      .toLowerCase()
      .normalize("NFD")
      .replace(/\p{M}/gu, "")
      .match(/[\p{L}\p{N}]+/gu) ?? [];
  return words
    .filter((word) => !empty.has(word))
    .map((word) => word.replace(/(?<=o|ch)es$/, "").replace(/(?<=[^s])s$/, ""))
    .join(" ");
}
