/** The growth charts of a bed's page and of a variety's. */
import { daysBetween } from "../../calendar.ts";
import type { Garden, GrowthPoint, GrowthSeries, Planting } from "../../model.ts";
import { weeklyGrowth } from "../../photos/index.ts";
import { capital, sayDay, sayLength, sayPlural } from "../../timeline/index.ts";
import { bySeason, type ChartedSeries, growthChart, heightScale } from "./growth-chart.ts";
import { sayGreen, sayShare } from "./growth-words.ts";
import type { GrowthChart } from "./shapes.ts";
import type { View } from "./view.ts";

/** Points without which a chart says less than a sentence. */
const FEWEST = 3;

/** Cover of one spot, this season over the ones before. `said` names the spot: "from the gate". */
export function coverChart(
  view: View,
  measured: GrowthSeries,
  coverOf: "bed" | "photo",
  title: string,
): GrowthChart | undefined {
  const { garden, today } = view;
  const series = upTo(measured, today);
  const points = series.stretches.flat();
  if (points.length < FEWEST) return undefined;
  const steps = new Map(weeklyGrowth(series).map((step) => [step.to, step.perWeek]));
  const { language, seasonStarts } = garden.settings;
  const seasons = bySeason(series, today, seasonStarts);
  const main = seasons.at(-1);
  const lines = seasons.map(
    (season): ChartedSeries => ({
      name: String(season.year),
      isMain: season === main,
      series: season.series,
      move: season.move,
    }),
  );
  const from = `from the ${(series.viewpoint ?? "").replaceAll("-", " ")}`;
  return growthChart(
    lines,
    {
      id: anchor("cover", series.viewpoint ?? ""),
      title,
      summary: sayCourse(garden, main?.series.stretches.flat() ?? [], coverOf),
      method:
        coverOf === "bed"
          ? `Measured in the photos ${from}: how much of the bed is covered by green leaves. Flowers, ripe fruit and red leaves do not count.`
          : `Measured in the photos ${from}: how much of the photo is green.`,
      table: {
        head: ["Day", coverOf === "bed" ? "Cover" : "Green", "Change a week"],
        rows: points
          .toReversed()
          .map((point) => [
            sayDay(point.day, { language }),
            sayShare(point.value),
            sayStep(steps.get(point), (perWeek) => sayPlural(Math.round(Math.abs(perWeek) * 100), "point", "points")),
          ]),
      },
      language,
      say: sayShare,
    },
    { top: 1, step: 0.25 },
  );
}

/** A series without what was measured after a day. */
function upTo(series: GrowthSeries, day: string): GrowthSeries {
  const stretches = series.stretches.map((stretch) => stretch.filter((point) => point.day <= day));
  return { ...series, stretches: stretches.filter((stretch) => stretch.length > 0) };
}

/** "8 points more", "2 cm less"; empty for the first after a gap, where nobody knows how fast it went. */
function sayStep(perWeek: number | undefined, say: (perWeek: number) => string): string {
  if (perWeek === undefined) return "";
  const amount = say(perWeek);
  return /^(?:no|0)\b/u.test(amount) ? "no change" : `${amount} ${perWeek > 0 ? "more" : "less"}`;
}

function sayCourse(garden: Garden, points: readonly GrowthPoint[], coverOf: "bed" | "photo"): string {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return "";
  const day = (of: GrowthPoint) => sayDay(of.day, { language: garden.settings.language, near: last.day });
  const most = points.reduce((best, point) => (point.value > best.value ? point : best));
  const top = most === last || most === first ? "" : ` It was highest on ${day(most)}, ${sayShare(most.value)}.`;
  return `${sayGreen(first.value, last.value, coverOf).replace(/\.$/u, "")} between ${day(first)} and ${day(last)}.${top}`;
}

/** Heights of plantings over one another, `name` being how a planting is told from the others. */
export function heightChart(
  view: View,
  measured: readonly { readonly planting: Planting; readonly series: GrowthSeries; readonly name: string }[],
): GrowthChart | undefined {
  const { language, units } = view.garden.settings;
  const points = measured.flatMap(({ series, name }) => series.stretches.flat().map((point) => ({ ...point, name })));
  if (points.length < FEWEST) return undefined;
  const unit = units === "us" ? { cm: 2.54, name: "in" } : { cm: 1, name: "cm" };
  const scale = heightScale(Math.max(...points.map(({ value }) => value)) / unit.cm);
  const steps = new Map(
    measured.flatMap(({ series }) => weeklyGrowth(series).map((step) => [step.to.source, step.perWeek])),
  );
  const several = measured.length > 1;
  const inPhotos = points.some(({ origin }) => origin === "photo");
  const byHand = points.some(({ origin }) => origin === "note");
  const newest = points.toSorted((a, b) => (a.day < b.day ? 1 : a.day > b.day ? -1 : 0));
  return growthChart(
    measured.map(({ series, name, planting }) => ({ series, name, isMain: planting.ended === undefined, move: 0 })),
    {
      id: "heights",
      title: "Measured height or length",
      summary: measured.map(({ series, name }) => sayHeights(view.garden, name, series.stretches.flat())).join(" "),
      method: [
        byHand ? "Measured with a rule." : "",
        inPhotos
          ? "Open points were read off photos, against a stake of known length, with a line for how sure they are."
          : "",
      ]
        .filter((sentence) => sentence !== "")
        .join(" "),
      table: {
        head: ["Day", ...(several ? ["What"] : []), "Height or length", "Change a week"],
        rows: newest.map(({ day, name, value, uncertainty, source }) => [
          sayDay(day, { language, near: view.today }),
          ...(several ? [name] : []),
          `${sayLength(value, units)}${uncertainty === undefined ? "" : `, give or take ${sayLength(Math.max(1, Math.round(uncertainty)), units)}`}`,
          sayStep(steps.get(source), (perWeek) => sayLength(Math.round(Math.abs(perWeek)), units)),
        ]),
      },
      language,
      say: (value) => `${Math.round(value / unit.cm)}\u00a0${unit.name}`,
    },
    { top: scale.top * unit.cm, step: scale.step * unit.cm },
  );
}

function sayHeights(garden: Garden, name: string, points: readonly GrowthPoint[]): string {
  const { language, units } = garden.settings;
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return "";
  const day = (of: GrowthPoint) => sayDay(of.day, { language, near: last.day });
  if (daysBetween(first.day, last.day) === 0)
    return `${capital(name)}: ${sayLength(last.value, units)} on ${day(last)}.`;
  return `${capital(name)}: ${sayLength(first.value, units)} on ${day(first)}, ${sayLength(last.value, units)} on ${day(last)}.`;
}

function anchor(kind: string, name: string): string {
  return `${kind}-${name}`.replace(/[^\w-]+/gu, "-");
}
