/**
 * Charts of cover and height: every place worked out here, the component only draws. Points are shown where they were
 * measured and joined by straight lines; where nobody measured for weeks the line breaks off.
 */
import { addDays, daysBetween, inYear, monthDayOf, seasonStart, yearOf } from "../../calendar.ts";
import type { Day, GrowthPoint, GrowthSeries } from "../../model.ts";
import type { ChartLine, GrowthChart } from "./shapes.ts";

/** Units of the drawing; its letters are 16 high, so that a phone shows them as large as its text. */
const WIDTH = 380;
const HEIGHT = 270;
const FIELD = { left: 52, right: 366, top: 14, bottom: 236 };

/** Room that two labels need, one above the other. */
const LABEL_HEIGHT = 17;

/** Names no longer than this, such as years, stand beside the field; longer ones within it. */
const SHORT_NAME = 5;
const SHORT_ROOM = 44;

export interface ChartedSeries {
  readonly name: string;
  readonly isMain: boolean;
  readonly series: GrowthSeries;
  /** Days by which the series is moved, so that earlier years lie over this one. */
  readonly move: number;
}

export interface ChartWords {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  readonly method: string;
  readonly table: GrowthChart["table"];
  /** "Apr", of a month's first day. */
  month(day: Day): string;
  /** "35 %", "1.2 m" */
  say(value: number): string;
}

/** `top` is the value at the upper edge, `steps` the marks between it and nothing. */
export function growthChart(
  all: readonly ChartedSeries[],
  words: ChartWords,
  { top, step }: { readonly top: number; readonly step: number },
): GrowthChart | undefined {
  const days = all.flatMap(({ series, move }) => series.stretches.flat().map(({ day }) => addDays(day, move))).sort();
  const [first, last] = [days[0], days.at(-1)];
  if (first === undefined || last === undefined) return undefined;
  const months = monthStarts(first, last);
  const start = months[0] ?? first;
  const end = months.at(-1) ?? last;
  const areShort = all.every(({ name }) => name.length <= SHORT_NAME);
  const field = areShort ? { ...FIELD, right: FIELD.right - SHORT_ROOM } : FIELD;
  const x = (day: Day) =>
    short(field.left + (daysBetween(start, day) / Math.max(1, daysBetween(start, end))) * (field.right - field.left));
  const y = (value: number) => short(field.bottom - (Math.min(value, top) / top) * (field.bottom - field.top));
  const { month, say, ...told } = words;
  // A year of months is too many names for a phone.
  const every = Math.ceil((months.length - 1) / 6);
  return {
    ...told,
    width: WIDTH,
    height: HEIGHT,
    field,
    across: months.slice(0, -1).map((day, index) => ({
      at: x(day),
      text: index % every === 0 ? month(day) : "",
    })),
    up: Array.from({ length: Math.round(top / step) + 1 }, (_, mark) => ({
      at: y(mark * step),
      text: say(mark * step),
    })),
    lines: apart(all.map((one) => lineOf(one, x, y, areShort ? field.right + 8 : undefined))),
  };
}

/** `beside` is the place of all names to the right of the field; without it a name stands above its line's last point. */
function lineOf(
  { name, isMain, series, move }: ChartedSeries,
  x: (day: Day) => number,
  y: (value: number) => number,
  beside: number | undefined,
): ChartLine {
  const at = (point: GrowthPoint) => ({ x: x(addDays(point.day, move)), y: y(point.value) });
  const points = series.stretches.flat();
  const last = points.at(-1);
  const end = last === undefined ? { x: 0, y: 0 } : at(last);
  const isLeft = beside === undefined && end.x > (FIELD.left + FIELD.right) / 2;
  return {
    name,
    isMain,
    paths: series.stretches
      .filter((stretch) => stretch.length > 1)
      .map((stretch) =>
        stretch.map((point, index) => `${index === 0 ? "M" : "L"}${at(point).x} ${at(point).y}`).join(""),
      ),
    points: points.map((point) => ({
      ...at(point),
      low: point.uncertainty === undefined ? undefined : y(Math.max(0, point.value - point.uncertainty)),
      high: point.uncertainty === undefined ? undefined : y(point.value + point.uncertainty),
      isOpen: series.what === "height" && point.origin === "photo",
    })),
    label:
      beside === undefined && isLeft
        ? { x: end.x, y: short(Math.max(FIELD.top + 10, end.y - 11)), isLeft }
        : { x: beside ?? end.x + 9, y: short(end.y + 5), isLeft },
  };
}

/** Names that would stand on one another are moved up one by one, the lowest staying where it is. */
function apart(lines: readonly ChartLine[]): readonly ChartLine[] {
  const placed: ChartLine[] = [];
  for (const line of [...lines].sort((a, b) => b.label.y - a.label.y)) {
    const near = placed.filter(({ label }) => Math.abs(label.x - line.label.x) < 130);
    const highest = Math.min(...near.map(({ label }) => label.y - LABEL_HEIGHT), line.label.y);
    placed.push({ ...line, label: { ...line.label, y: short(highest) } });
  }
  // Drawn last, the main line lies on top.
  return placed.sort((a, b) => Number(a.isMain) - Number(b.isMain));
}

/** First days of months from the one in which the first day lies to the one after the last day. */
function monthStarts(first: Day, last: Day): readonly Day[] {
  const starts = [`${first.slice(0, 7)}-01`];
  while ((starts.at(-1) ?? last) < last) starts.push(`${addDays(starts.at(-1) ?? first, 32).slice(0, 7)}-01`);
  if (starts.length === 1) starts.push(`${addDays(first, 32).slice(0, 7)}-01`);
  return starts;
}

/** A series cut at the season's borders, with the days by which each season is moved onto that of `today`. */
export function bySeason(
  series: GrowthSeries,
  today: Day,
  seasonStarts: string,
): readonly { readonly year: number; readonly move: number; readonly series: GrowthSeries }[] {
  const now = seasonStart(today, seasonStarts);
  const seasons = new Map<Day, GrowthPoint[][]>();
  for (const stretch of series.stretches) {
    for (const [start, points] of Map.groupBy(stretch, ({ day }) => seasonStart(day, seasonStarts)))
      seasons.set(start, [...(seasons.get(start) ?? []), points]);
  }
  return [...seasons].map(([start, stretches]) => ({
    year: yearOf(start),
    move: daysBetween(start, inYear(monthDayOf(now), yearOf(now))),
    series: { ...series, stretches },
  }));
}

/** A round top and step for heights up to `most`, in centimetres: never more than six marks. */
export function heightScale(most: number): { readonly top: number; readonly step: number } {
  const step = [5, 10, 20, 25, 50, 100, 200].find((each) => Math.ceil(most / each) <= 5) ?? 500;
  return { top: Math.max(1, Math.ceil(most / step)) * step, step };
}

function short(value: number): number {
  return Math.round(value * 10) / 10;
}
