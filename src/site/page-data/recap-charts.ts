/** The charts of a recap: what was picked by week, heat against earlier years, a calendar of every planting. */
import { addDays, daysBetween } from "../../calendar.ts";
import type { Day, GardenSettings } from "../../model.ts";
import { type CalendarRow, type RecapCharts, sayHeat } from "../../season/index.ts";
import { capital, sayDay, sayPlural, sayWeight } from "../../timeline/index.ts";
import { box, chartWidth, field, line, marksTo, path, sayMark, scaleTo, svg, words } from "./chart-drawing.ts";
import type { ChartFigure } from "./recap-shapes.ts";

const gramsPerPound = 453.59237;

/** Days across the drawing, with the first of each month marked. */
function across(from: Day, to: Day, language: string) {
  const days = Math.max(1, daysBetween(from, to));
  const x = (day: Day) =>
    field.left + (Math.min(days, Math.max(0, daysBetween(from, day))) / days) * (field.right - field.left);
  const months: Day[] = [];
  for (let day = `${addDays(from, 31).slice(0, 7)}-01`; day <= to; day = `${addDays(day, 32).slice(0, 7)}-01`)
    months.push(day);
  if (from.endsWith("-01")) months.unshift(from);
  const name = new Intl.DateTimeFormat(language, { month: "short", timeZone: "UTC" });
  const every = Math.max(1, Math.ceil(months.length / 6));
  const axis = (y: number) =>
    months
      .map(
        (day, index) =>
          `${line("mark", x(day), y, x(day), y + 6)}${index % every === 0 ? words(x(day) + 2, y + 21, name.format(Date.parse(day))) : ""}`,
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
  const unit = settings.units === "us" ? { grams: gramsPerPound, name: "lb" } : { grams: 1000, name: "kg" };
  const most = Math.max(0, ...weeks.flatMap(({ grams, lastYear = 0 }) => [grams, lastYear])) / unit.grams;
  const total = weeks.reduce((sum, { grams }) => sum + grams, 0);
  if (total <= 0) return undefined;
  const scale = scaleTo(most);
  const [top, bottom] = [34, 236];
  const y = (value: number) => bottom - (value / scale.top) * (bottom - top);
  const { x, axis } = across(from, to, settings.language);
  const width = Math.max(1.5, ((field.right - field.left) / Math.max(1, daysBetween(from, to) / 7)) * 0.72);
  const levels = marksTo(scale)
    .map(
      (value) =>
        `${line("level", field.left, y(value), field.right, y(value))}${words(field.left - 6, y(value) + 5, sayMark(value), "end")}`,
    )
    .join("");
  const bars = weeks
    .filter(({ grams }) => grams > 0)
    .map(({ week, grams }) => box("bar", x(week), y(grams / unit.grams), width, bottom - y(grams / unit.grams)))
    .join("");
  const before = weeks.some(({ lastYear }) => lastYear !== undefined);
  const ticks = before
    ? weeks
        .filter(({ lastYear = 0 }) => lastYear > 0)
        .map(({ week, lastYear = 0 }) =>
          ["halo", "former"]
            .map((kind) =>
              line(kind, x(week) - 1, y(lastYear / unit.grams), x(week) + width + 1, y(lastYear / unit.grams)),
            )
            .join(""),
        )
        .join("")
    : "";
  const best = weeks.toSorted((a, b) => b.grams - a.grams)[0];
  const day = (of: Day) => sayDay(of, { language: settings.language, near: to });
  const summary = `Picked each week${best === undefined ? "" : `; most in the week of ${day(best.week)}, ${sayWeight(best.grams, settings.units)}`}.${before ? " The short lines are the same weeks of last year." : ""}`;
  return {
    id: "picked-by-week",
    title: "Picked by week",
    summary,
    svg: svg(
      266,
      `Picked by week, ${label}. ${summary}`,
      `${words(4, 12, `${unit.name} a week`)}${levels}${axis(bottom)}${bars}${ticks}${line("ground", field.left, bottom, field.right, bottom)}`,
    ),
    method: `Weights of the note lines, added up in weeks that begin with the season. What was only counted has no part in it.`,
    table: {
      title: "Picked by week",
      head: ["Week of", "Picked", "Pickings", ...(before ? ["Last year"] : [])],
      rows: weeks
        .filter(({ grams, pickings, lastYear = 0 }) => grams > 0 || pickings > 0 || lastYear > 0)
        .map(({ week, grams, pickings, lastYear }) => [
          day(week),
          grams > 0 ? sayWeight(grams, settings.units) : "none weighed",
          String(pickings),
          ...(before ? [lastYear === undefined || lastYear <= 0 ? "none" : sayWeight(lastYear, settings.units)] : []),
        ]),
    },
  };
}

/** Undefined when no season's weather is known. */
export function heatChart({ heat, from, to }: RecapCharts, settings: GardenSettings): ChartFigure | undefined {
  const main = heat.lines.find(({ isMain }) => isMain);
  if (main === undefined) return undefined;
  const factor = settings.units === "us" ? 1.8 : 1;
  const scale = scaleTo(Math.max(...heat.lines.flatMap(({ points }) => points.map((point) => point.heat))) * factor);
  const [top, bottom] = [34, 236];
  const y = (value: number) => bottom - ((value * factor) / scale.top) * (bottom - top);
  const { x, axis } = across(from, to, settings.language);
  const levels = marksTo(scale)
    .map(
      (value) =>
        `${line("level", field.left, bottom - (value / scale.top) * (bottom - top), field.right, bottom - (value / scale.top) * (bottom - top))}${words(field.left - 6, bottom - (value / scale.top) * (bottom - top) + 5, sayMark(value), "end")}`,
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
  const day = (of: Day) => sayDay(of, { language: settings.language, near: to });
  const summary = `Heat since the season began: ${sayHeat(end?.heat ?? 0, settings)} by ${day(end?.day ?? to)}${heat.lines.length > 1 ? "; earlier years are the dashed lines" : ""}.`;
  const base = settings.units === "us" ? "40 °F" : "4.4 °C";
  return {
    id: "heat",
    title: "Heat",
    summary,
    svg: svg(
      266,
      summary,
      `${words(4, 12, "degree days")}${levels}${axis(bottom)}${drawn}${line("ground", field.left, bottom, field.right, bottom)}`,
    ),
    method: `Degree days above ${base} by the simple average: the middle of the day’s highest and lowest temperature less the base, never below nothing. Where a week of temperatures is missing the line ends.`,
    table: {
      title: "Heat by week",
      head: ["By", ...ordered.map(({ label }) => label)],
      rows: (ordered.toSorted((a, b) => b.points.length - a.points.length)[0]?.points ?? []).map((point, index) => [
        day(point.day),
        ...ordered.map(({ points }) => {
          const here = points[index];
          return here === undefined ? "" : sayHeat(here.heat, settings, false);
        }),
      ]),
    },
  };
}

/** One drawing per bed: a row for each planting, its name above it. */
export function calendarCharts(
  { calendar, from, to }: RecapCharts,
  settings: GardenSettings,
  isPrivate: boolean,
): readonly ChartFigure[] {
  const rows = calendar.filter((row) => isPrivate || !row.private);
  return [...Map.groupBy(rows, ({ bed }) => bed)].map(([bed, all]) => calendarOf(bed, all, from, to, settings));
}

const rowHeight = 34;

function calendarOf(
  bed: string,
  rows: readonly CalendarRow[],
  from: Day,
  to: Day,
  settings: GardenSettings,
): ChartFigure {
  const title = rows[0]?.bedTitle ?? bed;
  const wide = { left: 8, right: chartWidth - 8 };
  const days = Math.max(1, daysBetween(from, to));
  const x = (day: Day) =>
    wide.left + (Math.min(days, Math.max(0, daysBetween(from, day))) / days) * (wide.right - wide.left);
  const { months } = across(from, to, settings.language);
  const bottom = 8 + rows.length * rowHeight;
  const name = new Intl.DateTimeFormat(settings.language, { month: "short", timeZone: "UTC" });
  const every = Math.max(1, Math.ceil(months.length / 6));
  const grid = months
    .map(
      (day, index) =>
        `${line("level", x(day), 4, x(day), bottom)}${index % every === 0 ? words(x(day) + 2, bottom + 18, name.format(Date.parse(day))) : ""}`,
    )
    .join("");
  const bars = rows
    .map((row, index) => {
      const y = 8 + index * rowHeight;
      const [start, end] = [x(row.from), Math.max(x(row.to), x(row.from) + 3)];
      const planted = row.planted ?? row.from;
      const raised = row.sown !== undefined && row.planted !== undefined && row.sown < row.planted;
      const late = start > chartWidth * 0.55;
      return [
        words(late ? end : start, y + 12, row.title, late ? "end" : "start", "name"),
        raised ? box("raised", start, y + 18, x(planted) - start, 8) : "",
        box("grown", raised ? x(planted) : start, y + 18, end - (raised ? x(planted) : start), 8),
        row.firstPicked === undefined || row.lastPicked === undefined
          ? ""
          : box("picked", x(row.firstPicked), y + 16, Math.max(4, x(row.lastPicked) - x(row.firstPicked)), 12),
      ].join("");
    })
    .join("");
  const day = (of: Day | undefined) => (of === undefined ? "" : sayDay(of, { language: settings.language, near: to }));
  const summary = `${capital(sayPlural(rows.length, "planting", "plantings"))} in ${title} from sowing to clearing: light where raised, dark where it grew, heavy where it was picked.`;
  return {
    id: `calendar-${bed.replace(/[^\p{L}\p{N}-]+/gu, "-")}`,
    title,
    summary,
    svg: svg(bottom + 26, summary, `${grid}${bars}`),
    method: "From the note lines that sowed, planted, picked and cleared.",
    table: {
      title,
      head: ["Planting", "Sown", "Planted", "First picked", "Last picked", "Over"],
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
