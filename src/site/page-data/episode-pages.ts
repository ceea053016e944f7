/** Published films: what they show and when. */

import { daysBetween, yearOf } from "../../calendar.ts";
import { fullStop } from "../../language/index.ts";
import type { Episode } from "../../model.ts";
import { storyHtml } from "../story-html.ts";
import type { NumberedSite } from "./bed-pages.ts";
import type { EpisodeWrap, EpisodeWraps } from "./episode-wrap.ts";
import { filmData } from "./film-data.ts";
import type { EpisodeWrapShown } from "./film-shapes.ts";
import type { ShownPhoto } from "./pictures.ts";
import type { EpisodeCard, EpisodeListPage, EpisodePage, Picture } from "./shapes.ts";
import type { Shown } from "./shown.ts";
import type { SmallPlates } from "./small-plates.ts";
import { webAddress } from "./sources.ts";
import { episodesInOrder, type View } from "./view.ts";
import { walkPlans } from "./walk/walk-plan.ts";
import type { WalkStop } from "./walk/walk-shapes.ts";
import { walkStops } from "./walk/walk-stops.ts";

/** Of what chapters tell, so much is named. */
const NAMED_SUBJECTS = 3;

/** Beds named before the rest is counted. */
const NAMED_BEDS = 3;

/** Photos of the filming day on one page. */
const PHOTOS = 12;

/** Days from the filming day within which a photo stands for the film itself. */
const SAME_WEEK = 7;

export function episodeList(view: View, wraps: EpisodeWraps): EpisodeListPage {
  const years = new Map<number, EpisodeCard[]>();
  for (const episode of episodesInOrder(view.garden)) {
    const year = yearOf(episode.day);
    years.set(year, [...(years.get(year) ?? []), episodeCard(view, episode, wraps.get(episode.id))]);
  }
  return { href: view.links.episodes, years: [...years].map(([year, episodes]) => ({ year, episodes })) };
}

export function episodeCard(view: View, episode: Episode, wrapped?: EpisodeWrap): EpisodeCard {
  return {
    href: view.links.episode(episode.id),
    title: episode.title,
    text: [
      fullStop(view.words.sentences.film.on(view.locale.day(episode.day))),
      ...sayWhatIsIn(view, episode, wrapped),
    ].join(" "),
    link: webAddress(episode.link),
    picture: pictureOf(view, episode),
  };
}

export interface FilmsOf {
  readonly shown: Shown;
  readonly wraps: EpisodeWraps;
  readonly sites: readonly NumberedSite[];
  readonly plates: SmallPlates;
}

export function episodePages(view: View, { shown, wraps, sites, plates }: FilmsOf): readonly EpisodePage[] {
  return episodesInOrder(view.garden).map((episode) => {
    const wrapped = wraps.get(episode.id);
    const picture = pictureOf(view, episode);
    const stops = walkStops(view, episode, { shown, plates, wrapped });
    const beds = (shown.stops.get(episode.id) ?? []).map(({ stop }) => stop.bed);
    return {
      id: episode.id,
      title: episode.title,
      day: view.locale.day(episode.day),
      link: webAddress(episode.link),
      about: storyHtml(episode.body),
      picture,
      stops,
      plans: walkPlans(view, sites, beds, stops),
      wrap: wrapped && { ...wrapped.shown, varieties: namedElsewhere(wrapped.shown.varieties, stops) },
      photos: photosOfThatDay(
        view,
        episode,
        stops.some((stop) => stop.picture) ? stops.map((stop) => stop.picture) : [picture],
      ),
      data: filmData(view, episode, episodeCard(view, episode).text, picture, wrapped),
    };
  });
}

/** What is named and grew at none of the stops. */
function namedElsewhere(varieties: EpisodeWrapShown["varieties"], stops: readonly WalkStop[]) {
  const shown = new Set(stops.flatMap(({ named }) => named.map(({ plate }) => plate.href)));
  return varieties.filter(({ href }) => !shown.has(href));
}

/** "In it: French beans and courgettes; the butterfly net and kale; lettuces."; else where it stops. */
function sayWhatIsIn(view: View, episode: Episode, wrapped: EpisodeWrap | undefined): readonly string[] {
  const subjects = (wrapped?.wrap.chapters ?? []).flatMap(({ title }) => title.split(": ").slice(1, 2));
  const { film } = view.words.sentences;
  return subjects.length < NAMED_SUBJECTS ? sayWalk(view, episode) : [film.inIt(subjects.slice(0, NAMED_SUBJECTS))];
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
function photosOfThatDay(view: View, episode: Episode, but: readonly (Picture | undefined)[]): readonly Picture[] {
  const order = episode.stops.map(({ bed }) => bed);
  const rank = ({ bed }: ShownPhoto) => {
    const at = bed === undefined ? -1 : order.indexOf(bed);
    return at < 0 ? order.length : at;
  };
  return view.book.all
    .filter(({ day }) => day === episode.day)
    .sort((a, b) => rank(a) - rank(b))
    .map((photo) => view.book.picture(photo))
    .filter(({ src }) => !but.some((one) => one?.src === src))
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
