/** A bed's season as a ribbon: a row for each variety with a bar for each planting, its photos, its days of change. */
import type { Weather } from "../../../almanac/index.ts";
import { yearOf } from "../../../calendar.ts";
import { cropOf } from "../../../crop-of.ts";
import { type Life, lifeOf, type Span } from "../../../facts/index.ts";
import { earlier, type Season } from "../../../garden/index.ts";
import { capital, cropName, sayList, theBed } from "../../../language/index.ts";
import type { Change, Day, Planting } from "../../../model.ts";
import { compare } from "../../../order.ts";
import { bedTimeline } from "../bed-timeline.ts";
import type { DayLines } from "../day-lines.ts";
import type { ShownPhoto } from "../pictures.ts";
import type { View } from "../view.ts";
import { anyStands } from "./any-stands.ts";
import { plantingsInSeason } from "./plantings-in-season.ts";
import { beginningOf, ribbonFrame } from "./ribbon-frame.ts";
import type { RibbonBar, RibbonRow, SeasonRibbon } from "./ribbon-shapes.ts";
import { type SeasonScale, seasonScale } from "./season-scale.ts";
import { weekWeather } from "./week-weather.ts";

/** A variety in a bed through a season; its plantings by beginning. */
export interface RowPlantings {
  readonly plantings: readonly Planting[];
  readonly row: RibbonRow;
}

interface Stretch {
  readonly season: Season;
  /** The last day that is known of it. */
  readonly until: Day;
  readonly scale: SeasonScale;
}

/** `changes` are of the season and oldest first, `photos` newest first. Undefined when nothing stood or happened there. */
export function bedRibbon(
  view: View,
  bed: string,
  season: Season,
  { changes, photos, weather, written }: BedSeason,
): SeasonRibbon | undefined {
  const { today, book, locale, words } = view;
  const stretch = { season, until: earlier(today, season.to), scale: seasonScale(season) };
  const rows = rowsOf(view, bed, stretch);
  const [newest, ...rest] = photos;
  // What a line says is told by the line.
  const untold = written === undefined ? changes : changes.filter((change) => !written.says(change));
  const noted = written?.daysOf(bed).filter((day) => day >= season.from && day <= stretch.until) ?? [];
  const all = withDays(view, bedTimeline(view, untold, rest), [
    ...noted,
    ...(newest === undefined ? [] : [newest.day]),
  ]);
  if (rows.length === 0 && all.length === 0) return undefined;
  const standingOn = (day: Day) =>
    rows.flatMap(({ plantings }, index) => (anyStands(view.garden, plantings, day) ? [index] : []));
  const shown = all.map((day) => ({
    ...day,
    // The bars say how old everything was.
    pictures: day.pictures.map((aged) => ({ ...aged, age: "" })),
    at: stretch.scale.at(day.iso),
    standing: standingOn(day.iso),
    notes: written?.on(day.iso, bed),
    weather: weekWeather(weather, day.iso, locale.units, words.ribbon),
  }));
  const begins = beginningOf(shown, newest);
  return {
    ...ribbonFrame(view, season, stretch.scale, photos),
    rows: rows.map(({ row }) => row),
    days: shown,
    begins,
    stage:
      newest === undefined
        ? undefined
        : {
            iso: newest.day,
            aged: { picture: book.picture(newest), others: book.others(newest), age: "" },
          },
    stands: sayStanding(rows, shown[begins]?.standing ?? []),
  };
}

export interface BedSeason {
  readonly changes: readonly Change[];
  readonly photos: readonly ShownPhoto[];
  readonly weather: Weather;
  /** On private pages, whose days are told by the lines of their notes. */
  readonly written?: DayLines | undefined;
}

/** Also the days on which nothing else happened: those of notes, and that of the photo that stands on the stage. */
function withDays(view: View, days: ReturnType<typeof bedTimeline>, more: readonly Day[]) {
  const missing = [...new Set(more)].filter((day) => !days.some(({ iso }) => iso === day));
  const own = missing.map((day) => ({ iso: day, day: view.locale.day(day, day), lines: [], pictures: [] }));
  return [...days, ...own].sort((a, b) => compare(b.iso, a.iso));
}

/** Names of the rows that stand, as a list. */
function sayStanding(rows: readonly RowPlantings[], standing: readonly number[]): string {
  return sayList(standing.flatMap((index) => rows[index]?.row.name ?? []));
}

/** In order of beginning; what came from earlier years first. */
function rowsOf(view: View, bed: string, stretch: Stretch): readonly RowPlantings[] {
  const { season, until } = stretch;
  const plantings = plantingsInSeason(view.garden, bed, season, until);
  const groups = Map.groupBy(plantings, ({ variety, crop }) => JSON.stringify([variety, variety ?? crop]));
  return [...groups.values()].map((group) => ({ plantings: group, row: rowOf(view, group, stretch) }));
}

function rowOf(view: View, plantings: readonly Planting[], stretch: Stretch): RibbonRow {
  const { garden, links, words } = view;
  const [first] = plantings;
  const variety = garden.varieties.get(first?.variety ?? "");
  const crop = first === undefined ? undefined : cropOf(garden, first);
  const lives = plantings.map((planting) => lifeOf(garden, planting, stretch.until).value);
  return {
    // Private pages have none of varieties.
    href: variety === undefined || view.isPrivate ? undefined : links.variety(variety.id),
    name: variety?.title ?? (crop === undefined ? words.sentences.bed.unnamed : capital(cropName(crop))),
    crop: variety === undefined || crop === undefined ? "" : cropName(crop, 1),
    isNew: variety !== undefined && view.newVarieties.has(variety.id) && stretch.season.from === view.seasonStart,
    told: lives.map((life) => tell(view, life, stretch)).join(" "),
    // What was picked lies over what grew.
    bars: lives
      .flatMap((life) => barsOf(life, stretch))
      .sort((a, b) => Number(a.kind === "picked") - Number(b.kind === "picked")),
  };
}

/** First and last day on which it was picked in the season. */
function pickedIn({ pickings }: Life, { season, until }: Stretch): readonly Day[] {
  const within = pickings.filter((day) => day >= season.from && day <= until);
  return within.length === 0 ? [] : [within[0] ?? until, within.at(-1) ?? until];
}

function barsOf(life: Life, stretch: Stretch): readonly RibbonBar[] {
  const { scale, season } = stretch;
  const bar = (kind: RibbonBar["kind"], { from, to }: Span) => ({ kind, ...scale.span(from, to) });
  const [first, last] = pickedIn(life, stretch);
  const { raised, stood } = life;
  return [
    ...(raised !== undefined && raised.to > season.from ? [bar("raised", raised)] : []),
    bar("grown", stood),
    ...(first === undefined || last === undefined ? [] : [bar("picked", { from: first, to: last })]),
  ];
}

function tell(view: View, life: Life, stretch: Stretch): string {
  const { season, until } = stretch;
  const { garden, locale, words } = view;
  const day = (of: Day | undefined) => (of === undefined ? undefined : locale.day(of, until));
  const bedName = (id: string | undefined) => {
    const bed = garden.beds.get(id ?? "");
    return bed && theBed(bed);
  };
  const { sown, planted, stood, movedFrom, over } = life;
  const [first, last] = pickedIn(life, stretch);
  const isOlder = stood.from < season.from;
  return words.ribbon.life({
    since: isOlder ? String(yearOf(stood.from)) : undefined,
    sown: isOlder ? undefined : day(sown),
    planted: isOlder ? undefined : day(planted),
    // What came out of a seedbed was planted that day.
    moved:
      isOlder || movedFrom === undefined || planted === stood.from
        ? undefined
        : { day: locale.day(stood.from, until), from: bedName(movedFrom.bed) },
    noted: locale.day(stood.from, until),
    first: day(first),
    last: first === last ? undefined : day(last),
    over: over && { day: locale.day(over.day, until), by: over.by, to: bedName(over.into?.bed) },
  });
}
