/** What every check of spoken facts starts from, and the shape of what it finds. */
import type { Place, Planting } from "../model.ts";
import type { FilmHeard } from "./hear-film.ts";
import { moment } from "./moments.ts";
import { textOf } from "./phrases.ts";
import type { Subject } from "./spoken-subjects.ts";
import type { Word } from "./spoken-words.ts";
import type { Stretch } from "./stops-heard.ts";
import type { Disagreement } from "./wrap.ts";

/** Less sure than this which plants, or which bed, are meant: nothing is held against the speaker, and nothing is told of them. */
export const SURE = 0.6;

export interface Check {
  readonly film: FilmHeard;
  readonly plain: readonly string[];
  readonly subjects: readonly Subject[];
  readonly stretches: readonly Stretch[];
}

export function disagreement(
  { film }: Check,
  kind: Disagreement["kind"],
  from: number,
  to: number,
  records: string,
  bed: string | undefined,
  lots: readonly Planting[],
): Disagreement {
  const { words } = film.speech;
  return {
    kind,
    ...moment((words[from] as Word).at),
    said: textOf(words, ...sentences(film, Math.max(0, from), to)),
    records,
    bed,
    sources: lots.map(({ lastNote }) => lastNote).filter(once),
  };
}

/** Words by which a quotation may grow at either end. */
const GROWS = 14;

/** A quotation begins and ends where the sentence does, if that is near: not "pear, that, and nobody knows it. Fifty-five". */
function sentences({ speech: { words, punctuated } }: FilmHeard, from: number, to: number): readonly [number, number] {
  if (!punctuated) return [from, to];
  const isEnd = (at: number) => at < 0 || /[.?!]/.test(words[at]?.mark ?? "");
  let first = from;
  while (!isEnd(first - 1) && from - first < GROWS) first -= 1;
  let last = to;
  while (last < words.length && !isEnd(last - 1) && last - to < GROWS) last += 1;
  return [isEnd(first - 1) ? first : from, isEnd(last - 1) ? last : to];
}

function once(place: Place, index: number, all: readonly Place[]): boolean {
  return all.findIndex(({ file, line }) => file === place.file && line === place.line) === index;
}
