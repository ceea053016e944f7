/** Published films: what they show and when. */
import { daysBetween, yearOf } from "../../calendar.ts";
import type { Episode } from "../../model.ts";
import { capital, cropName, sayDay, sayList, sayPlural } from "../../timeline/index.ts";
import { storyHtml } from "../story-html.ts";
import { filmData } from "./film-data.ts";
import { filmTime } from "./film-time.ts";
import type { ShownPhoto } from "./pictures.ts";
import type { EpisodeCard, EpisodeListPage, EpisodePage, Picture } from "./shapes.ts";
import type { Shown, ShownStop } from "./shown.ts";
import { sourceLine, webAddress } from "./sources.ts";
import { cropOf, episodesInOrder, type View } from "./view.ts";

/** Beds named before the rest is counted. */
const NAMED_BEDS = 3;

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
    text: `Filmed on ${sayDay(episode.day, view.garden.settings)}.${sayWalk(view, episode)}`,
    link: webAddress(episode.link),
    picture: pictureOf(view, episode),
  };
}

export function episodePages(view: View, shown: Shown): readonly EpisodePage[] {
  return episodesInOrder(view.garden).map((episode) => {
    const picture = pictureOf(view, episode);
    return {
      id: episode.id,
      title: episode.title,
      day: sayDay(episode.day, view.garden.settings),
      link: webAddress(episode.link),
      about: storyHtml(episode.body),
      picture,
      stops: (shown.stops.get(episode.id) ?? []).map((stop) => stopShown(view, stop, episode)),
      data: filmData(view, episode, picture),
    };
  });
}

function stopShown(view: View, { stop, plantings }: ShownStop, episode: Episode): EpisodePage["stops"][number] {
  const { garden, links } = view;
  const seen = new Set<string>();
  return {
    bed: { href: links.bed(stop.bed), text: garden.beds.get(stop.bed)?.title ?? stop.bed },
    at: stop.at === undefined ? undefined : filmTime(stop.at),
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
          crop: variety === undefined ? "" : (crop?.name ?? ""),
          source: sourceLine(variety?.source),
          isNew:
            planting.variety !== undefined &&
            view.newVarieties.has(planting.variety) &&
            episode.day >= view.seasonStart,
        },
      ];
    }),
  };
}

/** " It walks past the Long bed, the Arch bed and six more." */
function sayWalk(view: View, episode: Episode): string {
  const beds = [...new Set(episode.stops.map(({ bed }) => view.garden.beds.get(bed)?.title ?? bed))];
  if (beds.length === 0) return "";
  const named = beds.length <= NAMED_BEDS + 1 ? beds : beds.slice(0, NAMED_BEDS);
  const rest = beds.length - named.length;
  return ` It stops at ${sayList(rest === 0 ? named : [...named, sayPlural(rest, "more bed", "more beds")])}.`;
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
