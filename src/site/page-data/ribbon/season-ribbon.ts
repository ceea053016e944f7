/** A whole season as a ribbon: a row for each bed, a photo a week, the films of the year. */
import type { Weather } from "../../../almanac/index.ts";
import { addDays, daysBetween, weekday } from "../../../calendar.ts";
import { bookOf, earlier, type Season } from "../../../garden/index.ts";
import { changeSentence } from "../../../language/index.ts";
import type { Bed, Day, Planting } from "../../../model.ts";
import { compare } from "../../../order.ts";
import type { DayLines } from "../day-lines.ts";
import type { ShownPhoto } from "../pictures.ts";
import { bedsInOrder, type View } from "../view.ts";
import { anyStands } from "./any-stands.ts";
import { plantingsInSeason } from "./plantings-in-season.ts";
import { beginningOf, ribbonFrame } from "./ribbon-frame.ts";
import type { RibbonBar, RibbonDay, RibbonRow, SeasonRibbon } from "./ribbon-shapes.ts";
import { type SeasonScale, seasonScale } from "./season-scale.ts";
import { weekWeather } from "./week-weather.ts";

/** Pickings that lie no more days apart are one bar. */
const TOGETHER = 14;

/** Changes told of a photo's day, those of its bed first. */
const TOLD = 3;

interface BedRow {
  readonly bed: Bed;
  readonly plantings: readonly Planting[];
  readonly row: RibbonRow;
}

/** Undefined when nothing grew and nothing was photographed in it. With `written`, days are told by the lines of their notes. */
export function seasonRibbon(
  view: View,
  season: Season,
  weather: Weather,
  written?: DayLines,
): SeasonRibbon | undefined {
  const { today, book, locale, words } = view;
  const until = earlier(today, season.to);
  const scale = seasonScale(season);
  const rows = bedsInOrder(view).flatMap((bed) => rowOf(view, bed, season, until, scale));
  const photos = photoOfEachWeek(book.all.filter(({ day }) => day >= season.from && day <= until));
  const newest = photos[0];
  const days = daysOf(view, season, photos, written).map((day) => ({
    ...day,
    at: scale.at(day.iso),
    standing: rows.flatMap(({ plantings }, index) => (anyStands(view.garden, plantings, day.iso) ? [index] : [])),
    weather: weekWeather(weather, day.iso, locale.units, words.ribbon),
  }));
  if (rows.length === 0 && photos.length === 0) return undefined;
  return {
    ...ribbonFrame(view, season, scale, photos),
    rows: rows.map(({ row }) => row),
    days,
    begins: beginningOf(days, newest),
    stage: newest && {
      iso: newest.day,
      aged: { picture: book.picture(newest), others: [], age: bedTitle(view, newest) },
    },
  };
}

/** Newest first: of the photos of a week the one whose bed was shown least, upright ones last. */
function photoOfEachWeek(photos: readonly ShownPhoto[]): readonly ShownPhoto[] {
  const weeks = Map.groupBy(
    photos.filter(({ bed, varieties }) => bed !== undefined && varieties.length === 0),
    ({ day }) => addDays(day, 1 - weekday(day)),
  );
  const shown = new Map<string, number>();
  const times = ({ bed = "" }: ShownPhoto) => shown.get(bed) ?? 0;
  return [...weeks.values()].flatMap((week) => {
    const best = week.toSorted((a, b) => times(a) - times(b) || compare(b.day, a.day) || compare(a.path, b.path))[0];
    if (best === undefined) return [];
    shown.set(best.bed ?? "", times(best) + 1);
    return [best];
  });
}

/** Newest first: the days of the photos, with what changed on them, and those of films. */
function daysOf(
  view: View,
  { from, to }: Season,
  photos: readonly ShownPhoto[],
  written: DayLines | undefined,
): readonly Omit<RibbonDay, "at" | "standing">[] {
  const { garden, book, locale, words } = view;
  const days = new Map<Day, { lines: string[]; photos: ShownPhoto[] }>();
  const on = (day: Day) => {
    const known = days.get(day) ?? { lines: [], photos: [] };
    days.set(day, known);
    return known;
  };
  for (const { day, title, status } of garden.episodes.values())
    if (status !== "planned" && day >= from && day <= to && day <= view.today)
      on(day).lines.push(words.ribbon.filmed(title));
  for (const photo of photos) {
    const own = garden.changes.get(photo.bed ?? "") ?? [];
    const changes = [...own, ...[...garden.changes.values()].flat()].filter(
      ({ day, kind }) => day === photo.day && kind !== "taken to be over",
    );
    const lines = new Set(changes.map((change) => changeSentence(change, garden)));
    const told = on(photo.day);
    if (written === undefined) told.lines.push(...[...lines].slice(0, TOLD));
    if (photo !== photos[0]) told.photos.push(photo);
  }
  return [...days]
    .sort(([a], [b]) => compare(b, a))
    .map(([iso, { lines, photos: taken }]) => ({
      iso,
      day: locale.day(iso, iso),
      lines,
      notes: written?.on(iso),
      pictures: taken.map((photo) => ({ picture: book.picture(photo), others: [], age: bedTitle(view, photo) })),
    }));
}

function bedTitle({ garden }: View, { bed = "" }: ShownPhoto): string {
  return garden.beds.get(bed)?.title ?? "";
}

function rowOf(view: View, bed: Bed, season: Season, until: Day, scale: SeasonScale): readonly BedRow[] {
  const { garden, links, locale, words } = view;
  const book = bookOf(garden);
  const plantings = plantingsInSeason(garden, bed.id, season, until);
  if (plantings.length === 0) return [];
  const pickings = plantings
    .flatMap((planting) => book.pickingsOf(planting).map(({ day }) => day))
    .filter((day) => day >= season.from && day <= until)
    .sort(compare);
  const grown = joined(
    plantings.map(({ since, ended }) => [later(season.from, since), ended ?? until] as const),
    1,
  );
  const picked = joined(
    pickings.map((day) => [day, day] as const),
    TOGETHER,
  );
  const bar = (kind: RibbonBar["kind"], [from, to]: Span) => ({ kind, ...scale.span(from, to) });
  const day = (of: Day | undefined) => (of === undefined ? undefined : locale.day(of, until));
  return [
    {
      bed,
      plantings,
      row: {
        href: links.bed(bed.id),
        name: bed.title,
        crop: "",
        isNew: false,
        told: words.ribbon.bed({
          from: day(grown[0]?.[0]) ?? "",
          to: day(grown.at(-1)?.[1]) ?? "",
          first: day(pickings[0]),
          last: pickings[0] === pickings.at(-1) ? undefined : day(pickings.at(-1)),
        }),
        bars: [...grown.map((span) => bar("grown", span)), ...picked.map((span) => bar("picked", span))],
      },
    },
  ];
}

type Span = readonly [from: Day, to: Day];

/** Spans that overlap, or lie no more than so many days apart, as one. */
export function joined(spans: readonly Span[], apart: number): readonly Span[] {
  const found: [Day, Day][] = [];
  for (const [from, to] of spans.toSorted(([a], [b]) => compare(a, b))) {
    const last = found.at(-1);
    if (last !== undefined && daysBetween(last[1], from) <= apart) last[1] = later(to, last[1]);
    else found.push([from, to]);
  }
  return found;
}

function later(a: Day, b: Day): Day {
  return compare(a, b) < 0 ? b : a;
}
