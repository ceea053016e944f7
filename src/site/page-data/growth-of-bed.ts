/** The growth charts of a bed's page and of a variety's. */

import { daysBetween } from "../../calendar.ts";
import { capital, chartUnit } from "../../language/index.ts";
import type { GrowthPoint, GrowthSeries, Planting } from "../../model.ts";
import { type GrowthStep, weeklyGrowth } from "../../photos/index.ts";
import { bySeason, type ChartedSeries, growthChart, heightScale } from "./growth-chart.ts";
import { isToldCover, sayGreen } from "./growth-words.ts";
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
  const { garden, today, locale } = view;
  const { green } = view.words.sentences;
  const series = upTo(measured, today);
  const points = series.stretches.flat();
  if (points.length < FEWEST) return undefined;
  const steps = new Map(weeklyGrowth(series).map((step) => [step.to, step]));
  const hidden = (garden.growth?.photos ?? []).filter(
    ({ bed, viewpoint, covered, cannotTell, day }) =>
      bed === series.bed && viewpoint === series.viewpoint && (covered ?? cannotTell) === true && day <= today,
  );
  const seasons = bySeason(series, today, garden.settings.seasonStarts);
  const main = seasons.at(-1);
  const lines = seasons.map(
    (season): ChartedSeries => ({
      name: String(season.year),
      isMain: season === main,
      series: season.series,
      move: season.move,
    }),
  );
  return growthChart(
    lines,
    {
      id: anchor("cover", series.viewpoint ?? ""),
      title,
      summary: sayCourse(view, main?.series.stretches.flat() ?? [], coverOf),
      method: green.method((series.viewpoint ?? "").replaceAll("-", " "), coverOf),
      table: {
        head: green.heads(coverOf),
        rows: [
          ...points.map((point) => ({
            iso: point.day,
            row: [locale.day(point.day), locale.share(point.value), sayStep(view, steps.get(point), 100, green.points)],
          })),
          ...hidden.map(({ day, covered }) => ({
            iso: day,
            row: [locale.day(day), covered ? green.covered : green.cannotTell, ""],
          })),
        ]
          .sort((a, b) => (a.iso < b.iso ? 1 : a.iso > b.iso ? -1 : 0))
          .map(({ row }) => row),
      },
      month: locale.shortMonth,
      say: locale.share,
    },
    { top: 1, step: 0.25 },
  );
}

/** A series without what was measured after a day. */
function upTo(series: GrowthSeries, day: string): GrowthSeries {
  const stretches = series.stretches.map((stretch) => stretch.filter((point) => point.day <= day));
  return { ...series, stretches: stretches.filter((stretch) => stretch.length > 0) };
}

/** "8 points more, give or take 3" of a week, in whole numbers; empty where nobody knows, or measuring cannot tell. */
function sayStep(
  { words }: View,
  step: GrowthStep | undefined,
  times: number,
  say: (amount: number) => string,
): string {
  if (step === undefined || !step.isTold) return "";
  const { change } = words.sentences;
  const [amount, unsure] = [step.perWeek * times, step.perWeekUncertainty * times].map(Math.round) as [number, number];
  if (amount === 0) return "";
  const give = say(Math.max(1, unsure));
  return amount > 0 ? change.more(say(amount), give) : change.less(say(-amount), give);
}

function sayCourse({ garden, locale, words }: View, points: readonly GrowthPoint[], coverOf: "bed" | "photo"): string {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return "";
  const { green } = words.sentences;
  const day = (of: GrowthPoint) => locale.day(of.day, last.day);
  const most = points.reduce((best, point) => (point.value > best.value ? point : best));
  const isTop = [first, last].every(({ value }) => isToldCover(value, most.value));
  const top = isTop ? green.highest(day(most), locale.share(most.value)) : "";
  const went = sayGreen(garden.settings, first.value, last.value, coverOf);
  const course =
    went === "" ? green.at(locale.share(last.value), day(last), coverOf) : green.between(went, day(first), day(last));
  return `${course} ${top}`.trim();
}

/** Heights of plantings over one another, `name` being how a planting is told from the others. */
export function heightChart(
  view: View,
  measured: readonly { readonly planting: Planting; readonly series: GrowthSeries; readonly name: string }[],
): GrowthChart | undefined {
  const { locale } = view;
  const { heights } = view.words.sentences;
  const points = measured.flatMap(({ series, name }) => series.stretches.flat().map((point) => ({ ...point, name })));
  if (points.length < FEWEST) return undefined;
  const { size: cm } = chartUnit("length", locale.units);
  const scale = heightScale(Math.max(...points.map(({ value }) => value)) / cm);
  const steps = new Map(
    measured.flatMap(({ series }) => weeklyGrowth(series).map((step) => [step.to.source, step] as const)),
  );
  const several = measured.length > 1;
  const inPhotos = points.some(({ origin }) => origin === "photo");
  const byHand = points.some(({ origin }) => origin === "note");
  const newest = points.toSorted((a, b) => (a.day < b.day ? 1 : a.day > b.day ? -1 : 0));
  return growthChart(
    measured.map(({ series, name, planting }) => ({ series, name, isMain: planting.ended === undefined, move: 0 })),
    {
      id: "heights",
      title: heights.title,
      summary: measured.map(({ series, name }) => sayHeights(view, name, series.stretches.flat())).join(" "),
      method: [byHand ? heights.withRule : "", inPhotos ? heights.offPhotos : ""]
        .filter((sentence) => sentence !== "")
        .join(" "),
      table: {
        head: heights.heads(several),
        rows: newest.map(({ day, name, value, uncertainty, source }) => [
          locale.day(day, view.today),
          ...(several ? [name] : []),
          { text: sayHeight(view, value, uncertainty), other: locale.otherUnits.length(value) },
          sayStep(view, steps.get(source), 1, locale.length),
        ]),
      },
      month: locale.shortMonth,
      say: (value) => locale.mark(value / cm, "length"),
    },
    { top: scale.top * cm, step: scale.step * cm },
  );
}

/** "1.1 m", "1.1 m, give or take 3 cm" */
function sayHeight({ locale, words }: View, cm: number, uncertainty: number | undefined): string {
  const length = locale.length(cm);
  if (uncertainty === undefined) return length;
  return words.sentences.heights.giveOrTake(length, locale.length(Math.max(1, Math.round(uncertainty))));
}

function sayHeights({ locale, words }: View, name: string, points: readonly GrowthPoint[]): string {
  const { heights } = words.sentences;
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return "";
  const day = (of: GrowthPoint) => locale.day(of.day, last.day);
  const [what, length] = [capital(name), locale.length(last.value)];
  return daysBetween(first.day, last.day) === 0
    ? heights.on(what, length, day(last))
    : heights.fromTo(what, locale.length(first.value), day(first), length, day(last));
}

function anchor(kind: string, name: string): string {
  return `${kind}-${name}`.replace(/[^\w-]+/gu, "-");
}
