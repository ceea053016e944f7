/**
 * What viewers have been shown and told already: stops of published films, and what their captions say. A film without
 * captions has shown its stops and told nothing that anybody can look up.
 */
import { daysBetween } from "../calendar.ts";
import type { Day, Episode, Garden, Place, SpokenLine, Variety } from "../model.ts";

/** Where a film says a thing. */
export interface Named {
  readonly episode: Episode;
  /** Seconds into the film. */
  readonly at: number;
  readonly text: string;
  readonly place: Place;
}

export interface ShownBefore {
  /** Published films filmed before the day, oldest first, tours or not. */
  readonly films: readonly Episode[];
  /** The last of them that has captions. */
  readonly lastTold?: Episode | undefined;
  /** The newest film that names a variety, and where it first does so. */
  readonly lastNamed: (variety: Variety) => Named | undefined;
  /** Where a film first says one of these words or phrases. */
  readonly firstSaid: (episode: Episode, words: readonly string[]) => Named | undefined;
}

interface Film {
  readonly episode: Episode;
  readonly lines: readonly SpokenLine[];
  /** All lines as plain words, one space between. */
  readonly words: string;
  /** Where each line begins in `words`. */
  readonly begins: readonly number[];
}

/** Films older than this are not counted as seen: nobody remembers them, and new viewers never saw them. */
const remembered = 3 * 366;

export function shownBefore(garden: Garden, day: Day, but: string | undefined): ShownBefore {
  const films = [...garden.episodes.values()]
    .filter(
      (episode) =>
        episode.status === "published" &&
        !episode.private &&
        episode.id !== but &&
        episode.day < day &&
        (episode.published ?? episode.day) <= day &&
        daysBetween(episode.day, day) <= remembered,
    )
    .sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : a.id < b.id ? -1 : 1));
  const told = films.flatMap((episode) => {
    const lines = garden.spoken?.get(episode.id);
    return lines === undefined || lines.length === 0 ? [] : [asFilm(episode, lines)];
  });
  const named = new Map<string, Named | undefined>();
  const byEpisode = new Map(told.map((film) => [film.episode.id, film]));
  return {
    films,
    lastTold: told.at(-1)?.episode,
    lastNamed: (variety) => {
      if (!named.has(variety.id)) named.set(variety.id, newestNaming(told, [variety.title, ...variety.alsoSpelled]));
      return named.get(variety.id);
    },
    firstSaid: (episode, words) => {
      const film = byEpisode.get(episode.id);
      return film === undefined ? undefined : firstIn(film, words);
    },
  };
}

function newestNaming(films: readonly Film[], names: readonly string[]): Named | undefined {
  for (let at = films.length - 1; at >= 0; at -= 1) {
    const found = firstIn(films[at] as Film, names);
    if (found !== undefined) return found;
  }
  return undefined;
}

function firstIn({ episode, lines, words, begins }: Film, names: readonly string[]): Named | undefined {
  let first = -1;
  for (const name of names) {
    const wanted = plainWords(name);
    const at = wanted.trim() === "" ? -1 : words.indexOf(wanted);
    if (at >= 0 && (first < 0 || at < first)) first = at;
  }
  if (first < 0) return undefined;
  // The name begins after the space it was found with.
  const line = lines[begins.findLastIndex((begin) => begin <= first)];
  return line === undefined ? undefined : { episode, at: line.at, text: line.text, place: line.place };
}

function asFilm(episode: Episode, lines: readonly SpokenLine[]): Film {
  let words = " ";
  const begins = lines.map((line) => {
    const begin = words.length - 1;
    words += plainWords(line.text).trimStart();
    return begin;
  });
  return { episode, lines, words, begins };
}

/** " crown prince ": lower case, no accents, no punctuation, a space at each end. */
function plainWords(text: string): string {
  const letters = text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/['’]/g, "")
    .replace(/[^\p{L}\p{N}]+/gu, " ");
  return ` ${letters.trim()} `;
}
