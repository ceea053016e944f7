/** What the charts of a recap show, as numbers: pickings by week, heat by week, every planting from sowing to clearing. */

import { addDays } from "../calendar.ts";
import { type Life, lifeOf } from "../facts/index.ts";
import { earlier, type Season, sameDayIn, weekOf } from "../garden/index.ts";
import { cultivar } from "../language/index.ts";
import type { Day } from "../model.ts";
import { compare } from "../order.ts";
import { gardenHeat, gardenScale } from "./comparisons.ts";
import { recapWords } from "./recap-words/words.ts";
import { pickingsBetween } from "./results.ts";
import type { SeasonBook } from "./season-book.ts";

export interface WeekPicked {
  /** First day of the week. */
  readonly week: Day;
  readonly grams: number;
  readonly pickings: number;
  /** Grams of the same week last season; undefined when there was none. */
  readonly lastYear?: number | undefined;
}

export interface HeatLine {
  /** Season's label. */
  readonly label: string;
  readonly isMain: boolean;
  /** Degree days since the season began, at the end of each week, moved onto the days of the season told. */
  readonly points: readonly { readonly day: Day; readonly heat: number }[];
}

export interface CalendarRow {
  readonly planting: string;
  /** "Crown Prince, squash" */
  readonly title: string;
  readonly cultivar: string;
  readonly bed: string;
  readonly bedTitle: string;
  /** Days within the season; what lies before it begins on its first day. */
  readonly sown?: Day | undefined;
  readonly planted?: Day | undefined;
  readonly firstPicked?: Day | undefined;
  readonly lastPicked?: Day | undefined;
  readonly ended?: Day | undefined;
  /** First and last day on which it is drawn. */
  readonly from: Day;
  readonly to: Day;
  /** The first day on which it is drawn in its bed; before it, it is raised. */
  readonly stood: Day;
  /** It goes on after the last day. */
  readonly goesOn: boolean;
  readonly private: boolean;
}

export interface RecapCharts {
  /** First and last day of the charts' time axis. */
  readonly from: Day;
  readonly to: Day;
  readonly weeks: readonly WeekPicked[];
  readonly heat: { readonly base: number; readonly lines: readonly HeatLine[] };
  readonly calendar: readonly CalendarRow[];
}

export function recapCharts(book: SeasonBook, season: Season, from: Day, to: Day): RecapCharts {
  return {
    from,
    to: season.to,
    weeks: weeksPicked(book, season, from, to),
    heat: { base: gardenScale.base, lines: heatLines(book, season, to) },
    calendar: calendarRows(book, from, to),
  };
}

function weeksPicked(book: SeasonBook, season: Season, from: Day, to: Day): readonly WeekPicked[] {
  const before = book.seasons.find(({ year }) => year === season.year - 1);
  const weigh = (picked: ReturnType<typeof pickingsBetween>) =>
    picked.reduce((sum, { harvest }) => sum + (harvest.grams ?? 0), 0);
  const last = before === undefined ? [] : pickingsBetween(book, before.from, before.to);
  const byWeek = Map.groupBy(last, ({ day }) => (before === undefined ? -1 : weekOf(before, day)));
  const weeks: WeekPicked[] = [];
  for (let week = weekOf(season, from); week <= weekOf(season, to); week += 1) {
    const start = addDays(season.from, week * 7);
    const picked = pickingsBetween(book, start < from ? from : start, earlier(addDays(start, 6), to));
    weeks.push({
      week: start,
      grams: weigh(picked),
      pickings: picked.length,
      lastYear: last.length === 0 ? undefined : weigh(byWeek.get(week) ?? []),
    });
  }
  return weeks;
}

/** Seasons shown beside the one told: more lines than that are a tangle. */
const earlierLines = 4;
/** A gap of more days breaks a line off, because a sum that lacks a week is too low for good. */
const mostMissing = 7;

function heatLines(book: SeasonBook, season: Season, to: Day): readonly HeatLine[] {
  const table = gardenHeat(book);
  const seasons = book.seasons.filter(({ year }) => year <= season.year).slice(-earlierLines - 1);
  return seasons.flatMap((one): HeatLine[] => {
    const isMain = one.year === season.year;
    const end = isMain ? to : one.to;
    const points: { day: Day; heat: number }[] = [];
    for (let day = addDays(one.from, 6); ; day = addDays(day, 7)) {
      const until = earlier(day, end);
      const { degreeDays, days, missing } = table.between(addDays(one.from, -1), until);
      if (days === 0 || missing > mostMissing) break;
      points.push({ day: isMain ? until : sameDayIn(season, until, one), heat: degreeDays });
      if (day >= end) break;
    }
    return points.length < 2 ? [] : [{ label: one.label, isMain, points }];
  });
}

function calendarRows(book: SeasonBook, from: Day, to: Day): readonly CalendarRow[] {
  const within = (day: Day | undefined) => (day === undefined || day < from || day > to ? undefined : day);
  return book.lots
    .map((lot) => ({ ...lot, life: lifeOf(book.garden, lot.planting, to).value }))
    .filter(({ planting, life }) => begun(life) <= to && (planting.ended === undefined || planting.ended >= from))
    .map(({ planting, variety, crop, bed, life }): CalendarRow => {
      const { sown, planted, stood, over } = life;
      const picked = life.pickings.filter((day) => day >= from);
      const start = begun(life);
      return {
        planting: planting.id,
        title: recapWords.label({ variety, crop }),
        cultivar: cultivar({ variety, crop }),
        bed: planting.bed,
        bedTitle: bed?.title ?? planting.bed,
        sown: within(sown),
        planted: within(planted),
        firstPicked: picked[0],
        lastPicked: picked.at(-1),
        ended: over?.day,
        from: later(start, from),
        stood: later(stood.from, from),
        to: stood.to,
        goesOn: over === undefined,
        private: planting.private,
      };
    })
    .sort(
      (a, b) =>
        compare(a.bedTitle, b.bedTitle) ||
        compare(a.from, b.from) ||
        compare(a.title, b.title) ||
        compare(a.planting, b.planting),
    );
}

/** A planting is drawn from its sowing; one that was moved, from the day it came to its bed. */
function begun({ raised, stood }: Life): Day {
  return raised?.from ?? stood.from;
}

function later(a: Day, b: Day): Day {
  return compare(a, b) < 0 ? b : a;
}
