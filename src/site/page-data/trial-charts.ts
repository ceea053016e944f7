/** The chart of a trial: every figure of every arm, and the means. */
import { capital, chartUnit, digits, type Locale, localeOf } from "../../language/index.ts";
import type { GardenSettings } from "../../model.ts";
import type { MeasureResult, TrialResult } from "../../season/index.ts";
import { siteWords, type Words } from "../words/index.ts";
import { chartWidth, dot, line, marksTo, scaleTo, svg, words } from "./chart-drawing.ts";
import type { ChartFigure } from "./recap-shapes.ts";

/** Every figure of every arm as a point; the mean as an upright stroke. */
export function trialCharts({ trial, measures }: TrialResult, settings: GardenSettings): readonly ChartFigure[] {
  return measures.flatMap((measure, index) => {
    const figure = trialChart(trial.title, `trial-${trial.id}-${index + 1}`, measure, settings);
    return figure === undefined ? [] : [figure];
  });
}

function trialChart(
  title: string,
  id: string,
  { measure, arms, eachPlant }: MeasureResult,
  settings: GardenSettings,
): ChartFigure | undefined {
  const values = arms.flatMap(({ shown }) => shown);
  if (values.length === 0) return undefined;
  const locale = localeOf(settings);
  const said = siteWords.recap.trial;
  const unit = unitOf(measure.kind, locale, said);
  const scale = scaleTo(Math.max(...values) * unit.factor, 3);
  const top = 10;
  const height = 40;
  const bottom = top + arms.length * height + 4;
  const [left, right] = [12, chartWidth - 14];
  const x = (value: number) => left + ((value * unit.factor) / scale.top) * (right - left);
  const levels = marksTo(scale)
    .map((value) => {
      const at = left + (value / scale.top) * (right - left);
      // The last mark carries the unit: there is room for one of the two only.
      const [mark, anchor] =
        value === scale.top
          ? ([`${digits(value)} ${unit.name}`, "end"] as const)
          : ([digits(value), value === 0 ? "start" : "middle"] as const);
      return `${line("level", at, top, at, bottom)}${words(at, bottom + 18, mark, anchor)}`;
    })
    .join("");
  const rows = arms
    .map(({ name, shown, mean }, index) => {
      const y = top + index * height;
      const dots = shown.map((value) => dot("figure", x(value), y + 28, 5)).join("");
      const stroke = mean === undefined ? "" : line("mean", x(mean), y + 19, x(mean), y + 37);
      return `${words(left, y + 13, name, "start", "name")}${dots}${stroke}`;
    })
    .join("");
  const told = arms
    .map(({ name, shown, mean }) =>
      mean === undefined ? said.noFigure(name) : said.mean(name, unit.say(mean), shown.length),
    )
    .join("; ");
  const summary = `${measure.text}${eachPlant ? said.eachPlant : ""}. ${capital(told)}.`;
  return {
    id,
    title,
    summary,
    svg: svg(bottom + 26, `${title}. ${summary}`, `${levels}${rows}`),
    method: said.method,
    table: {
      title,
      head: said.heads,
      rows: arms.map(({ name, shown, mean, spread }) => [
        name,
        shown.map(unit.say).join(", "),
        mean === undefined ? "" : unit.say(mean),
        spread?.sd === undefined ? "" : unit.say(spread.sd),
      ]),
    },
  };
}

function unitOf(kind: MeasureResult["measure"]["kind"], locale: Locale, said: Words["recap"]["trial"]) {
  const isUs = locale.units === "us";
  const [weight, length] = [chartUnit("weight", locale.units), chartUnit("length", locale.units)];
  switch (kind) {
    case "weight of one":
    case "weight":
      return { factor: 1 / weight.size, name: weight.sign, say: locale.weight };
    case "share":
    case "cover":
      return { factor: 100, name: "%", say: locale.share };
    case "height":
      return { factor: 1 / length.size, name: isUs ? said.inches : length.sign, say: locale.length };
    case "days":
      return { factor: 1, name: said.daysAxis, say: (days: number) => said.days(Math.round(days * 10) / 10) };
    case "pieces":
      return { factor: 1, name: said.piecesAxis, say: (pieces: number) => digits(Math.round(pieces * 10) / 10) };
  }
}
