/** A bed's season as a ribbon: a row for each variety with a bar for each planting, its photos, its days of change. */
import type { Weather } from "../../../almanac/index.ts";
import { yearOf } from "../../../calendar.ts";
import { cropOf } from "../../../crop-of.ts";
import { bookOf, earlier, type Season } from "../../../garden/index.ts";
import { capital, cropName, sayList } from "../../../language/index.ts";
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
export function rowsOf(view: View, bed: string, stretch: Stretch): readonly RowPlantings[] {
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
  return {
    // Private pages have none of varieties.
    href: variety === undefined || view.isPrivate ? undefined : links.variety(variety.id),
    name: variety?.title ?? (crop === undefined ? words.sentences.bed.unnamed : capital(cropName(crop))),
    crop: variety === undefined || crop === undefined ? "" : cropName(crop, 1),
    isNew: variety !== undefined && view.newVarieties.has(variety.id) && stretch.season.from === view.seasonStart,
    told: plantings.map((planting) => tell(view, planting, stretch)).join(" "),
    // What was picked lies over what grew.
    bars: plantings
      .flatMap((planting) => barsOf(view, planting, stretch))
      .sort((a, b) => Number(a.kind === "picked") - Number(b.kind === "picked")),
  };
}

/** First and last day on which it was picked in the season. */
function pickedIn({ garden }: View, planting: Planting, { season, until }: Stretch): readonly Day[] {
  const days = bookOf(garden)
    .pickingsOf(planting)
    .map(({ day }) => day);
  const within = days.filter((day) => day >= season.from && day <= until);
  return within.length === 0 ? [] : [within[0] ?? until, within.at(-1) ?? until];
}

function barsOf(view: View, planting: Planting, stretch: Stretch): readonly RibbonBar[] {
  const { scale, until } = stretch;
  const bar = (kind: RibbonBar["kind"], from: Day, to: Day) => ({ kind, ...scale.span(from, to) });
  const [first, last] = pickedIn(view, planting, stretch);
  const { season } = stretch;
  const raised = raisedFrom(planting);
  return [
    ...(raised !== undefined && planting.since > season.from ? [bar("raised", raised, planting.since)] : []),
    bar("grown", planting.since, planting.ended ?? until),
    ...(first === undefined || last === undefined ? [] : [bar("picked", first, last)]),
  ];
}

/** The day on which it was sown away from its bed. */
function raisedFrom({ sown, planted, since }: Planting): Day | undefined {
  return sown !== undefined && planted !== undefined && sown < since ? sown : undefined;
}

function tell(view: View, planting: Planting, stretch: Stretch): string {
  const { season, until } = stretch;
  const { locale, words } = view;
  const day = (of: Day | undefined) => (of === undefined ? undefined : locale.day(of, until));
  const [first, last] = pickedIn(view, planting, stretch);
  const isOlder = planting.since < season.from;
  return words.ribbon.life({
    since: isOlder ? String(yearOf(planting.since)) : undefined,
    sown: isOlder ? undefined : day(planting.sown),
    planted: isOlder || planting.planted === planting.sown ? undefined : day(planting.planted),
    noted: day(planting.since) ?? "",
    first: day(first),
    last: first === last ? undefined : day(last),
    over: day(planting.ended),
    wasLost: planting.stage === "lost",
  });
}
