/** The speech as claims are read in it: without "um" and "like" between commas, which stand in the middle of what is said. */
import type { FilmHeard } from "../hear-film.ts";
import type { Word } from "../spoken-words.ts";
import type { Stretch } from "../stops-heard.ts";

const sounds = new Set("um uh em er erm ah hmm mm".split(" "));

export function withoutFillers(
  film: FilmHeard,
  stretches: readonly Stretch[],
): { readonly film: FilmHeard; readonly stretches: readonly Stretch[] } {
  const { words } = film.speech;
  const kept: Word[] = [];
  /** Where each word, or the next that is kept, stands in what is kept. */
  const now: number[] = [];
  let left = 0;
  words.forEach((word, at) => {
    now.push(kept.length);
    if (left === 0) left = fillerAt(words, at);
    if (left === 0) {
      kept.push(word);
      return;
    }
    left -= 1;
    const before = kept.at(-1);
    if (before !== undefined && /[.?!]/.test(word.mark)) kept[kept.length - 1] = { ...before, mark: word.mark };
  });
  now.push(kept.length);
  if (kept.length === words.length) return { film, stretches };
  const moved = <Run extends { readonly from: number; readonly to: number }>(run: Run): Run => ({
    ...run,
    from: now[run.from] ?? kept.length,
    to: now[run.to] ?? kept.length,
  });
  return {
    film: { ...film, speech: { ...film.speech, words: kept }, names: film.names.map(moved) },
    stretches: stretches.map(moved),
  };
}

/** Words from here on that say nothing. */
function fillerAt(words: readonly Word[], at: number): number {
  const [word, next] = [words[at] as Word, words[at + 1]];
  if (sounds.has(word.plain)) return 1;
  if (at === 0 || words[at - 1]?.mark !== ",") return 0;
  if (word.plain === "like" && word.mark === ",") return 1;
  const isPair = (word.plain === "you" && next?.plain === "know") || (word.plain === "i" && next?.plain === "mean");
  return isPair && next?.mark === "," ? 2 : 0;
}
