/** The charts of a recap: what was picked by week, heat against earlier years, a calendar of every planting. */

import { addDays, daysBetween } from "../../calendar.ts";
import { chartUnit, digits, type Locale, localeOf } from "../../language/index.ts";
import { fahrenheitPerCelsius } from "../../measures.ts";
import type { Day, GardenSettings } from "../../model.ts";
import type { CalendarRow, RecapCharts } from "../../season/index.ts";
import { siteWords } from "../words/index.ts";
import { box, chartWidth, field, line, marksTo, path, scaleTo, svg, words } from "./chart-drawing.ts";
import type { ChartFigure } from "./recap-shapes.ts";

/** Degrees Celsius above which warmth is added up, as the season room has it. */
const HEAT_BASE = 40 / 9;

/** Days across the drawing, with the first of each month marked. */
function across(from: Day, to: Day, { shortMonth }: Locale) {
  const days = Math.max(1, daysBetween(from, to));
  const x = (day: Day) =>
    field.left + (Math.min(days, Math.max(0, daysBetween(from, day))) / days) * (field.right - field.left);
  const months: Day[] = [];
  for (let day = `${addDays(from, 31).slice(0, 7)}-01`; day <= to; day = `${addDays(day, 32).slice(0, 7)}-01`)
    months.push(day);
  if (from.endsWith("-01")) months.unshift(from);
  const every = Math.max(1, Math.ceil(months.length / 6));
  const axis = (y: number) =>
    months
      .map(
        (day, index) =>
          `${line("mark", x(day), y, x(day), y + 6)}${index % every === 0 ? words(x(day) + 2, y + 21, shortMonth(day)) : ""}`,
      )
      .join("");
  return { x, axis, months };
}

/** Undefined when nothing was weighed. */
export function weekChart(
  { weeks, from, to }: RecapCharts,
  settings: GardenSettings,
  label: string,
): ChartFigure | undefined {
  const locale = localeOf(settings);
  const said = siteWords.recap.week;
  const unit = chartUnit("weight", settings.units);
  const most = Math.max(0, ...weeks.flatMap(({ grams, lastYear = 0 }) => [grams, lastYear])) / unit.size;
  const total = weeks.reduce((sum, { grams }) => sum + grams, 0);
  if (total <= 0) return undefined;
  const scale = scaleTo(most);
  const [top, bottom] = [34, 236];
  const y = (value: number) => bottom - (value / scale.top) * (bottom - top);
  const { x, axis } = across(from, to, locale);
  const width = Math.max(1.5, ((field.right - field.left) / Math.max(1, daysBetween(from, to) / 7)) * 0.72);
  const levels = marksTo(scale)
    .map(
      (value) =>
        `${line("level", field.left, y(value), field.right, y(value))}${words(field.left - 6, y(value) + 5, digits(value), "end")}`,
    )
    .join("");
  const bars = weeks
    .filter(({ grams }) => grams > 0)
    .map(({ week, grams }) => box("bar", x(week), y(grams / unit.size), width, bottom - y(grams / unit.size)))
    .join("");
  const before = weeks.some(({ lastYear }) => lastYear !== undefined);
  const ticks = before
    ? weeks
        .filter(({ lastYear = 0 }) => lastYear > 0)
        .map(({ week, lastYear = 0 }) =>
          ["halo", "former"]
            .map((kind) =>
              line(kind, x(week) - 1, y(lastYear / unit.size), x(week) + width + 1, y(lastYear / unit.size)),
            )
            .join(""),
        )
        .join("")
    : "";
  const best = weeks.toSorted((a, b) => b.grams - a.grams)[0];
  const day = (of: Day) => locale.day(of, to);
  const told = said.summary(day(best?.week ?? from), locale.weight(best?.grams ?? 0));
  const summary = before ? `${told}${said.before}` : told;
  return {
    id: "picked-by-week",
    title: said.title,
    summary,
    svg: svg(
      266,
      said.label(label, summary),
      `${words(4, 12, said.axis(unit.sign))}${levels}${axis(bottom)}${bars}${ticks}${line("ground", field.left, bottom, field.right, bottom)}`,
    ),
    method: said.method,
    table: {
      title: said.title,
      head: said.heads(before),
      rows: weeks
        .filter(({ grams, pickings, lastYear = 0 }) => grams > 0 || pickings > 0 || lastYear > 0)
        .map(({ week, grams, pickings, lastYear }) => [
          day(week),
          grams > 0 ? locale.weight(grams) : said.noneWeighed,
          digits(pickings),
          ...(before ? [lastYear === undefined || lastYear <= 0 ? said.none : locale.weight(lastYear)] : []),
        ]),
    },
  };
}

/** Undefined when no season's weather is known. */
export function heatChart({ heat, from, to }: RecapCharts, settings: GardenSettings): ChartFigure | undefined {
  const main = heat.lines.find(({ isMain }) => isMain);
  if (main === undefined) return undefined;
  const locale = localeOf(settings);
  const said = siteWords.recap.heat;
  const factor = settings.units === "us" ? fahrenheitPerCelsius : 1;
  const sum = (heat: number) => Math.round(heat * factor);
  const scale = scaleTo(Math.max(...heat.lines.flatMap(({ points }) => points.map((point) => point.heat))) * factor);
  const [top, bottom] = [34, 236];
  const y = (value: number) => bottom - ((value * factor) / scale.top) * (bottom - top);
  const { x, axis } = across(from, to, locale);
  const levels = marksTo(scale)
    .map(
      (value) =>
        `${line("level", field.left, bottom - (value / scale.top) * (bottom - top), field.right, bottom - (value / scale.top) * (bottom - top))}${words(field.left - 6, bottom - (value / scale.top) * (bottom - top) + 5, digits(value), "end")}`,
    )
    .join("");
  const ordered = [...heat.lines].sort((a, b) => Number(a.isMain) - Number(b.isMain));
  const drawn = ordered
    .map(({ label, isMain, points }) => {
      const places = points.map((point) => ({ x: x(point.day), y: y(point.heat) }));
      const last = places.at(-1) ?? { x: field.left, y: bottom };
      return `<g class="${isMain ? "line main" : "line"}">${path("way", places)}${words(Math.min(last.x + 4, field.right), Math.max(12, last.y - 6), label, last.x > 300 ? "end" : "start")}</g>`;
    })
    .join("");
  const end = main.points.at(-1);
  const day = (of: Day) => locale.day(of, to);
  const summary = said.summary(sum(end?.heat ?? 0), day(end?.day ?? to), heat.lines.length > 1);
  return {
    id: "heat",
    title: said.title,
    summary,
    svg: svg(
      266,
      summary,
      `${words(4, 12, said.axis)}${levels}${axis(bottom)}${drawn}${line("ground", field.left, bottom, field.right, bottom)}`,
    ),
    method: said.method(locale.temperature(HEAT_BASE)),
    table: {
      title: said.table,
      head: [said.by, ...ordered.map(({ label }) => label)],
      rows: (ordered.toSorted((a, b) => b.points.length - a.points.length)[0]?.points ?? []).map((point, index) => [
        day(point.day),
        ...ordered.map(({ points }) => {
          const here = points[index];
          return here === undefined ? "" : digits(sum(here.heat));
        }),
      ]),
    },
  };
}

/** One drawing per bed: a row for each planting, its name above it. */
export function calendarCharts({ calendar, from, to }: RecapCharts, settings: GardenSettings): readonly ChartFigure[] {
  return [...Map.groupBy(calendar, ({ bed }) => bed)].map(([bed, all]) => calendarOf(bed, all, from, to, settings));
}

const rowHeight = 34;

function calendarOf(
  bed: string,
  rows: readonly CalendarRow[],
  from: Day,
  to: Day,
  settings: GardenSettings,
): ChartFigure {
  const locale = localeOf(settings);
  const said = siteWords.recap.lives;
  const title = rows[0]?.bedTitle ?? bed;
  const wide = { left: 8, right: chartWidth - 8 };
  const days = Math.max(1, daysBetween(from, to));
  const x = (day: Day) =>
    wide.left + (Math.min(days, Math.max(0, daysBetween(from, day))) / days) * (wide.right - wide.left);
  const { months } = across(from, to, locale);
  const bottom = 8 + rows.length * rowHeight;
  const every = Math.max(1, Math.ceil(months.length / 6));
  const grid = months
    .map(
      (day, index) =>
        `${line("level", x(day), 4, x(day), bottom)}${index % every === 0 ? words(x(day) + 2, bottom + 18, locale.shortMonth(day)) : ""}`,
    )
    .join("");
  const bars = rows
    .map((row, index) => {
      const y = 8 + index * rowHeight;
      const [start, end] = [x(row.from), Math.max(x(row.to), x(row.from) + 3)];
      const stood = x(row.stood);
      const late = start > chartWidth * 0.55;
      return [
        words(late ? end : start, y + 12, row.title, late ? "end" : "start", "name"),
        row.from < row.stood ? box("raised", start, y + 18, stood - start, 8) : "",
        box("grown", stood, y + 18, end - stood, 8),
        row.firstPicked === undefined || row.lastPicked === undefined
          ? ""
          : box("picked", x(row.firstPicked), y + 16, Math.max(4, x(row.lastPicked) - x(row.firstPicked)), 12),
      ].join("");
    })
    .join("");
  const day = (of: Day | undefined) => (of === undefined ? "" : locale.day(of, to));
  const summary = said.summary(rows.length, title);
  return {
    id: `calendar-${bed.replace(/[^\p{L}\p{N}-]+/gu, "-")}`,
    title,
    summary,
    svg: svg(bottom + 26, summary, `${grid}${bars}`),
    method: said.method,
    table: {
      title,
      head: said.heads,
      rows: rows.map((row) => [
        row.title,
        day(row.sown),
        day(row.planted),
        day(row.firstPicked),
        day(row.lastPicked),
        row.goesOn ? "" : day(row.ended),
      ]),
    },
  };
}
