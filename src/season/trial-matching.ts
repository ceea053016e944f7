/**
 * From an arm's figures to one value a plot, and only from what may be set against the other arms: heights of one day, pickings
 * of the same stretch of days, days counted from the same thing, totals of what has ended.
 */
import { addDays, daysBetween } from "../calendar.ts";
import type { Day } from "../model.ts";
import type { Figure, Figures, Measure } from "./trial-measures.ts";
import type { Plot } from "./trial-plots.ts";

export interface PlotValue {
  readonly plot: Plot;
  readonly value: number;
}

/** What keeps arms from being set against one another. */
export type Hindrance = "days apart" | "unlike beginnings" | "going on" | "some failed" | "plot not named";

export interface Matched {
  /** One value for each plot, arm by arm. */
  readonly values: readonly (readonly PlotValue[])[];
  /** The figures they come from. */
  readonly used: readonly (readonly Figure[])[];
  /** The day of heights and photos. */
  readonly on?: Day | undefined;
  /** Totals are of each plant set out. */
  readonly eachPlant: boolean;
  readonly hindrance?: Hindrance | undefined;
}

/** Days between two pickings that count as the same time: a head of cabbage grows on in a week. */
const pickedTogether = 3;
/** Days between the mean days of two arms' pickings above which their time differs more than their treatment. */
const sameTime = 7;
/** Days between two measurings, or two photos, of the same moment. */
const sameMoment = { height: 1, cover: 3 } as const;

export function matched(measure: Measure, arms: readonly Figures[], isOver: boolean): Matched {
  const told = arms.filter(({ figures }) => figures.length > 0);
  switch (measure.kind) {
    case "height":
    case "cover":
      return ofOneDay(arms, sameMoment[measure.kind]);
    case "weight of one":
    case "share":
      return ofSameSpan(arms);
    case "days": {
      const unlike = told.length > 1 && told.some(({ counted }) => counted === undefined);
      const hindrance = unlike
        ? "unlike beginnings"
        : arms.some(({ goingOn }) => goingOn.length > 0)
          ? "going on"
          : arms.some(({ failed }) => failed.length > 0)
            ? "some failed"
            : undefined;
      return { ...plain(arms, mean), hindrance: hindrance ?? unnamed(arms) };
    }
    case "weight":
    case "pieces": {
      const plotted = arms.flatMap(({ figures }) => figures);
      const several = arms.some(({ figures }) => figures.length > 1);
      const eachPlant = several && plotted.every(({ of }) => of > 0);
      const goesOn = !isOver && arms.some(({ goingOn }) => goingOn.length > 0);
      const of = (figures: readonly Figure[]) =>
        sum(figures, ({ value }) => value) / (eachPlant ? sum(figures, ({ of: plants }) => plants) : 1);
      return { ...plain(arms, of), eachPlant, hindrance: goesOn ? "going on" : unnamed(arms) };
    }
  }
}

function plain(arms: readonly Figures[], of: (figures: readonly Figure[]) => number): Matched {
  const used = arms.map(({ figures }) => figures);
  return { values: used.map((figures) => byPlot(figures, of)), used, eachPlant: false };
}

function byPlot(figures: readonly Figure[], of: (figures: readonly Figure[]) => number): readonly PlotValue[] {
  const plotted = figures.filter(({ plot }) => plot !== undefined);
  return [...Map.groupBy(plotted, ({ plot }) => plot?.key).values()].flatMap((own) => {
    const plot = own[0]?.plot;
    return plot === undefined ? [] : [{ plot, value: of(own) }];
  });
}

/** Figures that name none of several plots can't be dealt out among them. */
function unnamed(arms: readonly Figures[]): Hindrance | undefined {
  return arms.some(({ figures }) => figures.some(({ plot }) => plot === undefined)) ? "plot not named" : undefined;
}

const mean = (figures: readonly Figure[]) => sum(figures, ({ value }) => value) / figures.length;
/** Six heads of three pickings count as six. */
const ofPieces = (figures: readonly Figure[]) =>
  sum(figures, ({ value, of }) => value * of) / sum(figures, ({ of }) => of);

/** The last of the days on which most plots of each arm were measured. */
function ofOneDay(arms: readonly Figures[], apart: number): Matched {
  const near = (day: Day) => (one: Figure) => Math.abs(daysBetween(one.day, day)) <= apart;
  const told = arms.filter(({ figures }) => figures.length > 0);
  const days = [...new Set(told.flatMap(({ figures }) => figures.map(({ day }) => day)))].sort();
  let [best, most] = [undefined as Day | undefined, 0];
  for (const day of days) {
    const plots = Math.min(
      ...told.map(({ figures }) => new Set(figures.filter(near(day)).map(({ plot }) => plot?.key ?? "")).size),
    );
    if (plots > 0 && plots >= most) [best, most] = [day, plots];
  }
  if (best === undefined) {
    // Never measured together: of each arm what was measured last.
    const used = arms.map(({ figures }) => {
      const last = figures
        .map(({ day }) => day)
        .sort()
        .at(-1);
      return figures.filter(({ day }) => day === last);
    });
    return {
      values: used.map((figures) => byPlot(figures, mean)),
      used,
      eachPlant: false,
      hindrance: told.length > 1 ? "days apart" : undefined,
    };
  }
  // Of two days of the same moment the nearer one, so that no plot is taken twice.
  const used = arms.map(({ figures }) => nearest(figures.filter(near(best)), best));
  return {
    values: used.map((figures) => byPlot(figures, mean)),
    used,
    on: best,
    eachPlant: false,
    hindrance: unnamed(used.map((figures) => ({ figures, goingOn: [], failed: [] }))),
  };
}

function nearest(figures: readonly Figure[], day: Day): readonly Figure[] {
  return [...Map.groupBy(figures, ({ plot }) => plot?.key).values()].flatMap((own) => {
    const away = (one: Figure) => Math.abs(daysBetween(one.day, day));
    const least = Math.min(...own.map(away));
    const at = own.find((one) => away(one) === least)?.day;
    return own.filter((one) => one.day === at);
  });
}

/** Pickings of the days in which every arm was picked, give or take three. */
function ofSameSpan(arms: readonly Figures[]): Matched {
  const told = arms.filter(({ figures }) => figures.length > 0);
  const all = arms.map(({ figures }) => figures);
  const apart: Matched = {
    values: all.map((figures) => byPlot(figures, ofPieces)),
    used: all,
    eachPlant: false,
    hindrance: "days apart",
  };
  if (told.length < 2) return { ...apart, hindrance: undefined };
  const spans = told.map(({ figures }) => figures.map(({ day }) => day).sort());
  const from = addDays(
    spans
      .map((days) => days[0] ?? "")
      .sort()
      .at(-1) ?? "",
    -pickedTogether,
  );
  const to = addDays(spans.map((days) => days.at(-1) ?? "").sort()[0] ?? "", pickedTogether);
  const used = all.map((figures) => figures.filter(({ day }) => day >= from && day <= to));
  if (used.some((figures, at) => figures.length === 0 && (all[at]?.length ?? 0) > 0)) return apart;
  const days = used.filter((figures) => figures.length > 0).map((figures) => meanDay(figures, from));
  if (Math.max(...days) - Math.min(...days) > sameTime) return apart;
  return {
    values: used.map((figures) => byPlot(figures, ofPieces)),
    used,
    eachPlant: false,
    hindrance: unnamed(used.map((figures) => ({ figures, goingOn: [], failed: [] }))),
  };
}

function meanDay(figures: readonly Figure[], from: Day): number {
  return sum(figures, ({ day, of }) => daysBetween(from, day) * of) / sum(figures, ({ of }) => of);
}

function sum(figures: readonly Figure[], of: (figure: Figure) => number): number {
  return figures.reduce((total, one) => total + of(one), 0);
}
