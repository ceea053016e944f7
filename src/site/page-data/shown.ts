/** What each published film shows: the beds it stops at, and what lived in them on its filming day. */
import type { Episode, EpisodeStop, Planting } from "../../model.ts";
import { living, sayDay, state } from "../../timeline/index.ts";
import { filmTime } from "./film-time.ts";
import type { SeenIn } from "./shapes.ts";
import { episodesInOrder, type View } from "./view.ts";

export interface ShownStop {
  readonly stop: EpisodeStop;
  readonly plantings: readonly Planting[];
}

export interface Shown {
  readonly stops: ReadonlyMap<string, readonly ShownStop[]>;
  /** Newest film first. */
  readonly byVariety: ReadonlyMap<string, readonly SeenIn[]>;
  readonly byBed: ReadonlyMap<string, readonly SeenIn[]>;
}

export function shownIn(view: View): Shown {
  const stops = new Map<string, readonly ShownStop[]>();
  const byVariety = new Map<string, SeenIn[]>();
  const byBed = new Map<string, SeenIn[]>();
  for (const episode of episodesInOrder(view.garden)) {
    const ofEpisode = episode.stops
      .filter(({ bed }) => view.garden.beds.has(bed))
      .map((stop) => ({ stop, plantings: living(state(view.garden, stop.bed, episode.day)) }));
    stops.set(episode.id, ofEpisode);
    const varieties = new Map<string, EpisodeStop[]>();
    const beds = new Map<string, EpisodeStop[]>();
    for (const { stop, plantings } of ofEpisode) {
      beds.set(stop.bed, [...(beds.get(stop.bed) ?? []), stop]);
      for (const variety of new Set(plantings.map((planting) => planting.variety))) {
        if (variety !== undefined) varieties.set(variety, [...(varieties.get(variety) ?? []), stop]);
      }
    }
    collect(byVariety, varieties, episode, view);
    collect(byBed, beds, episode, view);
  }
  return { stops, byVariety, byBed };
}

function collect(
  into: Map<string, SeenIn[]>,
  found: ReadonlyMap<string, readonly EpisodeStop[]>,
  episode: Episode,
  view: View,
): void {
  for (const [id, stops] of found) {
    const seen: SeenIn = {
      episode: { href: view.links.episode(episode.id), text: episode.title },
      day: `Filmed on ${sayDay(episode.day, view.garden.settings)}`,
      stops: stops.map(({ bed, at }) => ({
        bed: { href: view.links.bed(bed), text: view.garden.beds.get(bed)?.title ?? bed },
        at: at === undefined ? undefined : filmTime(at),
      })),
    };
    into.set(id, [...(into.get(id) ?? []), seen]);
  }
}
