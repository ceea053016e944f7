/** The stops of a film in the order of the walk: a photo of that day, what was named, what grew, what became of it. */
import { addDays, daysBetween, seasonStart } from "../../../calendar.ts";
import { cropOf } from "../../../crop-of.ts";
import { bookOf, earlier, seasonOf } from "../../../garden/index.ts";
import { capital, cropName, sayPicked } from "../../../language/index.ts";
import type { Day, Episode, Planting } from "../../../model.ts";
import type { EpisodeWrap } from "../episode-wrap.ts";
import type { ShownPhoto } from "../pictures.ts";
import type { Shown, ShownStop } from "../shown.ts";
import type { SmallPlates } from "../small-plates.ts";
import { sourceLine } from "../sources.ts";
import type { View } from "../view.ts";
import { sinceFilm } from "./since-film.ts";
import type { WalkStop, WalkVariety } from "./walk-shapes.ts";

/** Days from the filming day within which a photo shows a bed much as viewers saw it; it is told when it is another day. */
const NEAR = 45;

export interface WalkOf {
  readonly shown: Shown;
  readonly plates: SmallPlates;
  readonly wrapped?: EpisodeWrap | undefined;
}

export function walkStops(view: View, episode: Episode, { shown, plates, wrapped }: WalkOf): readonly WalkStop[] {
  const stops = shown.stops.get(episode.id) ?? [];
  const named = namedAt(view, episode, stops, wrapped);
  const used = new Set<string>();
  return stops.map((one, index) => {
    const { stop, at, plantings } = one;
    const photo = photoNear(view, stop.bed, episode.day, used);
    if (photo !== undefined) used.add(photo.path);
    const groups = Map.groupBy(plantings, ({ variety, crop }) => variety ?? crop ?? "");
    const here = named[index] ?? [];
    const varieties = [...groups].flatMap(([id, group]) =>
      varietyOf(view, group, episode).map((told) => ({ id, told })),
    );
    return {
      anchor: `stop-${index + 1}`,
      number: index + 1,
      bed: { href: view.links.bed(stop.bed), text: view.garden.beds.get(stop.bed)?.title ?? stop.bed },
      at,
      said: chapterOf(wrapped, one, stops[index + 1]),
      picture: photo && view.book.picture(photo),
      taken: photo === undefined ? undefined : sayTaken(view, photo.day, episode.day),
      named: here.flatMap(({ variety, seconds }) => {
        const plate = plates.get(variety);
        const told = varieties.find(({ id }) => id === variety)?.told;
        const moment = wrapped?.moment(seconds);
        return plate === undefined || moment === undefined
          ? []
          : [
              {
                at: moment,
                plate: { ...plate, isNew: plate.isNew && episode.day >= view.seasonStart, says: told?.since ?? "" },
              },
            ];
      }),
      others: varieties.flatMap(({ id, told }) => (here.some(({ variety }) => variety === id) ? [] : [told])),
    };
  });
}

interface NamedAt {
  readonly variety: string;
  readonly seconds: number;
}

/** Each variety at the stop during which it is first named; where it did not grow there that season, at the first where it did. */
function namedAt(
  { garden }: View,
  { day }: Episode,
  stops: readonly ShownStop[],
  wrapped: EpisodeWrap | undefined,
): readonly (readonly NamedAt[])[] {
  const from = seasonStart(day, garden.settings.seasonStarts);
  const grown = stops.map(({ stop }) =>
    bookOf(garden)
      .stateOf(stop.bed, day)
      .plantings.filter(({ ended }) => ended === undefined || ended >= from),
  );
  const begins = stops.map(({ stop }) => beginOf(stop, wrapped));
  const found = stops.map((): NamedAt[] => []);
  for (const { variety, at } of wrapped?.wrap.coverage.named ?? []) {
    const grew = grown.flatMap((plantings, index) =>
      plantings.some((planting) => planting.variety === variety) ? [index] : [],
    );
    const during = begins.findLastIndex((begin) => begin !== undefined && begin <= at);
    const index = grew.includes(during) ? during : grew[0];
    if (index !== undefined) found[index]?.push({ variety, seconds: at });
  }
  return found;
}

function beginOf({ at, bed }: ShownStop["stop"], wrapped: EpisodeWrap | undefined): number | undefined {
  return at ?? wrapped?.wrap.chapters.find((chapter) => chapter.bed === bed)?.at;
}

/** The transcript's part in which a stop begins. */
function chapterOf(wrapped: EpisodeWrap | undefined, { stop }: ShownStop, next: ShownStop | undefined) {
  const begin = beginOf(stop, wrapped);
  const end = next === undefined ? undefined : beginOf(next.stop, wrapped);
  if (wrapped === undefined || begin === undefined) return undefined;
  const chapters = wrapped.wrap.chapters.map(({ at, bed }, index) => ({
    at,
    bed,
    shown: wrapped.shown.chapters[index],
  }));
  const own = chapters.find(({ at, bed }) => bed === stop.bed && at >= begin - 1 && (end === undefined || at < end));
  return (own ?? chapters.findLast(({ at }) => at <= begin))?.shown?.anchor;
}

/** Of the bed itself, the nearest day first, each shown once; a close-up of one variety stands for no bed. */
function photoNear({ book }: View, bed: string, day: Day, used: ReadonlySet<string>): ShownPhoto | undefined {
  const away = (photo: ShownPhoto) => Math.abs(daysBetween(photo.day, day));
  return (book.byBed.get(bed) ?? [])
    .filter((photo) => away(photo) <= NEAR && !used.has(photo.path) && photo.varieties.length === 0)
    .reduce<ShownPhoto | undefined>((best, photo) => (best && away(best) <= away(photo) ? best : photo), undefined);
}

function sayTaken({ words }: View, photo: Day, film: Day): string | undefined {
  return photo === film ? undefined : words.walk.taken(daysBetween(film, photo));
}

function varietyOf(view: View, plantings: readonly Planting[], episode: Episode): readonly WalkVariety[] {
  const { garden, links, words } = view;
  const [first] = plantings;
  const variety = garden.varieties.get(first?.variety ?? "");
  const crop = first === undefined ? undefined : cropOf(garden, first);
  const name = variety?.title ?? (crop === undefined ? undefined : capital(cropName(crop)));
  if (name === undefined) return [];
  return [
    {
      href: variety === undefined ? undefined : links.variety(variety.id),
      name,
      crop: variety === undefined || crop === undefined ? "" : cropName(crop, 1),
      source: sourceLine(words, variety?.source),
      isNew: variety !== undefined && view.newVarieties.has(variety.id) && episode.day >= view.seasonStart,
      since: saySince(view, plantings, episode.day),
    },
  ];
}

/** Of the season that was filmed. */
function saySince({ garden, today, locale, words }: View, plantings: readonly Planting[], film: Day): string {
  const { settings } = garden;
  const until = earlier(today, seasonOf(film, settings.seasonStarts).to);
  if (until < addDays(film, 1)) return "";
  const facts = { film, seasonStart: seasonStart(film, settings.seasonStarts), until };
  const { picked, lost, flowered, over } = sinceFilm(garden, plantings, facts);
  const day = (of: Day) => locale.day(of, film);
  return words.walk.since({
    flowered: flowered === undefined ? undefined : day(flowered),
    picked: picked.times === 0 ? undefined : (sayPicked(picked, settings) ?? ""),
    times: picked.times,
    lost,
    over: over === undefined ? undefined : { day: day(over.day), wasLost: over.wasLost },
  });
}
