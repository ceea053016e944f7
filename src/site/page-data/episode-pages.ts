/** Published films: what they show and when. */

import { daysBetween, yearOf } from "../../calendar.ts";
import { cropOf } from "../../crop-of.ts";
import { capital, cropName, fullStop } from "../../language/index.ts";
import type { Episode } from "../../model.ts";
import { storyHtml } from "../story-html.ts";
import type { EpisodeWraps } from "./episode-wrap.ts";
import { filmData } from "./film-data.ts";
import type { ShownPhoto } from "./pictures.ts";
import type { EpisodeCard, EpisodeListPage, EpisodePage, Picture } from "./shapes.ts";
import type { Shown, ShownStop } from "./shown.ts";
import { sourceLine, webAddress } from "./sources.ts";
import { episodesInOrder, type View } from "./view.ts";

/** Beds named before the rest is counted. */
const NAMED_BEDS = 3;

/** Photos of the filming day on one page. */
const PHOTOS = 12;

/** Days from the filming day within which a photo shows the bed as viewers saw it. */
const SAME_WEEK = 7;

export function episodeList(view: View): EpisodeListPage {
  const years = new Map<number, EpisodeCard[]>();
  for (const episode of episodesInOrder(view.garden)) {
    const year = yearOf(episode.day);
    years.set(year, [...(years.get(year) ?? []), episodeCard(view, episode)]);
  }
  return { href: view.links.episodes, years: [...years].map(([year, episodes]) => ({ year, episodes })) };
}

export function episodeCard(view: View, episode: Episode): EpisodeCard {
  return {
    href: view.links.episode(episode.id),
    title: episode.title,
    text: [fullStop(view.words.sentences.film.on(view.locale.day(episode.day))), ...sayWalk(view, episode)].join(" "),
    link: webAddress(episode.link),
    picture: pictureOf(view, episode),
  };
}

export function episodePages(view: View, shown: Shown, wraps: EpisodeWraps): readonly EpisodePage[] {
  return episodesInOrder(view.garden).map((episode) => {
    const wrapped = wraps.get(episode.id);
    const picture = pictureOf(view, episode);
    return {
      id: episode.id,
      title: episode.title,
      day: view.locale.day(episode.day),
      link: webAddress(episode.link),
      about: storyHtml(episode.body),
      picture,
      stops: (shown.stops.get(episode.id) ?? []).map((stop) => stopShown(view, stop, episode)),
      wrap: wrapped?.shown,
      photos: photosOfThatDay(view, episode, picture),
      data: filmData(view, episode, picture, wrapped),
    };
  });
}

function stopShown(view: View, { stop, at, plantings }: ShownStop, episode: Episode): EpisodePage["stops"][number] {
  const { garden, links } = view;
  const seen = new Set<string>();
  return {
    bed: { href: links.bed(stop.bed), text: garden.beds.get(stop.bed)?.title ?? stop.bed },
    at,
    varieties: plantings.flatMap((planting) => {
      const variety = planting.variety === undefined ? undefined : garden.varieties.get(planting.variety);
      const crop = cropOf(garden, planting);
      const name = variety?.title ?? (crop === undefined ? undefined : capital(cropName(crop)));
      if (name === undefined || seen.has(name)) return [];
      seen.add(name);
      return [
        {
          href: variety === undefined ? undefined : links.variety(variety.id),
          name,
          crop: variety === undefined || crop === undefined ? "" : cropName(crop, 1),
          source: sourceLine(view.words, variety?.source),
          isNew:
            planting.variety !== undefined &&
            view.newVarieties.has(planting.variety) &&
            episode.day >= view.seasonStart,
        },
      ];
    }),
  };
}

/** "It stops at Long bed, Arch bed and six more beds."; nothing without stops. */
function sayWalk(view: View, episode: Episode): readonly string[] {
  const { film } = view.words.sentences;
  const beds = [...new Set(episode.stops.map(({ bed }) => view.garden.beds.get(bed)?.title ?? bed))];
  if (beds.length === 0) return [];
  const named = beds.length <= NAMED_BEDS + 1 ? beds : beds.slice(0, NAMED_BEDS);
  const rest = beds.length - named.length;
  return [film.walk(rest === 0 ? named : [...named, film.moreBeds(rest)])];
}

/** In the order of the stops; those of no bed last. */
function photosOfThatDay(view: View, episode: Episode, but: Picture | undefined): readonly Picture[] {
  const order = episode.stops.map(({ bed }) => bed);
  const rank = ({ bed }: ShownPhoto) => {
    const at = bed === undefined ? -1 : order.indexOf(bed);
    return at < 0 ? order.length : at;
  };
  return view.book.all
    .filter(({ day }) => day === episode.day)
    .sort((a, b) => rank(a) - rank(b))
    .map((photo) => view.book.picture(photo))
    .filter(({ src }) => src !== but?.src)
    .slice(0, PHOTOS);
}

/** A photo of the film's week, the nearest day and the earliest stop first. */
function pictureOf(view: View, episode: Episode): Picture | undefined {
  const stops = episode.stops.map(({ bed }) => bed);
  const away = (photo: ShownPhoto) => Math.abs(daysBetween(photo.day, episode.day));
  const inOrder = view.book.all
    .filter((photo) => photo.bed !== undefined && stops.includes(photo.bed) && away(photo) <= SAME_WEEK)
    .sort((a, b) => away(a) - away(b) || stops.indexOf(a.bed ?? "") - stops.indexOf(b.bed ?? ""));
  const best = inOrder.find((photo) => view.book.isWide(photo)) ?? inOrder[0];
  return best === undefined ? undefined : view.book.picture(best);
}
