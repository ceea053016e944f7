/** The words of a sentence that say what it is about: no names of plants, no numbers, nothing that everybody says. */
import { commonWords } from "../common-words.ts";
import type { FilmHeard } from "../hear-film.ts";
import { plainWord } from "../spoken-words.ts";

/** Words of briefs themselves. */
const briefWords = new Set(
  (
    "promised owed since tour planted sown indoors outdoors viewers camera january february march april june july august september october " +
    "november december monday tuesday wednesday thursday friday saturday sunday days weeks months ground expected picking"
  ).split(" "),
);

export function tellingWords(text: string, { known }: FilmHeard): ReadonlySet<string> {
  const ofNames = new Set(
    known.flatMap(({ kind, name }) => (kind === "variety" ? name.split(/\s+/).map(plainWord) : [])),
  );
  const words = text.split(/[^\p{L}'’]+/u).map(plainWord);
  return new Set(
    words
      .filter((word) => word.length > 3 && !commonWords.has(word) && !ofNames.has(word) && !briefWords.has(word))
      .map(stem),
  );
}

export function stem(word: string): string {
  return word.replace(/(?:ies|ing|ed|es|s|y)$/, "");
}

/** Whether all wanted words are said within so many of each other. */
export function isAbout(wanted: ReadonlySet<string>, said: readonly string[], within: number): boolean {
  if (wanted.size === 0) return false;
  const stems = said.map(stem);
  return stems.some((_, at) => [...wanted].every((one) => stems.slice(at, at + within).includes(one)));
}
