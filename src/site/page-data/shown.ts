/** What each published film shows: the beds it stops at, what lived in them on its filming day, and what it names. */
import type { Episode, EpisodeStop, Planting } from "../../model.ts";
import { living, state } from "../../timeline/index.ts";
import type { EpisodeWrap, EpisodeWraps } from "./episode-wrap.ts";
import type { FilmMoment } from "./film-shapes.ts";
import { filmAt, filmTime } from "./film-time.ts";
import type { SeenIn } from "./shapes.ts";
import { webAddress } from "./sources.ts";
import { episodesInOrder, type View } from "./view.ts";

export interface ShownStop {
  readonly stop: EpisodeStop;
  readonly at?: FilmMoment | undefined;
  readonly plantings: readonly Planting[];
}

export interface Shown {
  readonly stops: ReadonlyMap<string, readonly ShownStop[]>;
  /** Newest film first. */
  readonly byVariety: ReadonlyMap<string, readonly SeenIn[]>;
  readonly byBed: ReadonlyMap<string, readonly SeenIn[]>;
}

export function shownIn(view: View, wraps: EpisodeWraps): Shown {
  const stops = new Map<string, readonly ShownStop[]>();
  const byVariety = new Map<string, SeenIn[]>();
  const byBed = new Map<string, SeenIn[]>();
  for (const episode of episodesInOrder(view.garden)) {
    const wrapped = wraps.get(episode.id);
    const ofEpisode = episode.stops
      .filter(({ bed }) => view.garden.beds.has(bed))
      .map((stop) => ({
        stop,
        at: momentOf(episode, stop, wrapped),
        plantings: living(state(view.garden, stop.bed, episode.day)),
      }));
    stops.set(episode.id, ofEpisode);
    const named = new Map(
      (wrapped?.wrap.coverage.named ?? []).map(({ variety, at }) => [variety, wrapped?.moment(at)]),
    );
    const varieties = new Map<string, ShownStop[]>([...named.keys()].map((variety) => [variety, []]));
    const beds = new Map<string, ShownStop[]>();
    for (const one of ofEpisode) {
      beds.set(one.stop.bed, [...(beds.get(one.stop.bed) ?? []), one]);
      for (const variety of new Set(one.plantings.map((planting) => planting.variety))) {
        if (variety !== undefined) varieties.set(variety, [...(varieties.get(variety) ?? []), one]);
      }
    }
    collect(byVariety, varieties, named, episode, view);
    collect(byBed, beds, new Map(), episode, view);
  }
  return { stops, byVariety, byBed };
}

/** As the record times it, else as it was heard. */
function momentOf(
  { link }: Episode,
  { bed, at: recorded }: EpisodeStop,
  wrapped: EpisodeWrap | undefined,
): FilmMoment | undefined {
  const at = recorded ?? wrapped?.wrap.chapters.find((chapter) => chapter.bed === bed)?.at;
  if (at === undefined) return undefined;
  if (wrapped !== undefined) return wrapped.moment(at);
  const film = webAddress(link);
  return { time: filmTime(at), href: film === undefined ? undefined : filmAt(film, at) };
}

function collect(
  into: Map<string, SeenIn[]>,
  found: ReadonlyMap<string, readonly ShownStop[]>,
  named: ReadonlyMap<string, FilmMoment | undefined>,
  episode: Episode,
  view: View,
): void {
  for (const [id, stops] of found) {
    const seen: SeenIn = {
      episode: { href: view.links.episode(episode.id), text: episode.title },
      day: view.words.sentences.film.on(view.locale.day(episode.day)),
      stops: stops.map(({ stop: { bed }, at }) => ({
        bed: { href: view.links.bed(bed), text: view.garden.beds.get(bed)?.title ?? bed },
        at,
      })),
      named: named.get(id),
    };
    into.set(id, [...(into.get(id) ?? []), seen]);
  }
}
