/** Trials: what each arm gave, and what so few plots can say about the difference. */
import { capital, type Sentence, say } from "../language/index.ts";
import type { GardenSettings, Place, Trial } from "../model.ts";
import type { ArmFacts, TellsFacts } from "./recap-words/trial-facts.ts";
import { trialWords } from "./recap-words/trial-words.ts";
import type { SeasonBook } from "./season-book.ts";
import { type Arm, trialArms } from "./trial-arms.ts";
import { type Matched, matched, type PlotValue } from "./trial-matching.ts";
import { countedFrom, type Figure, figuresOf, type Measure, type PlottedArm, readMeasures } from "./trial-measures.ts";
import { trialPlots } from "./trial-plots.ts";
import {
  type Block,
  type Comparison,
  compareBlocks,
  fewestPlots,
  LEVEL,
  plotsToShow,
  type Spread,
  spread,
} from "./trial-statistics.ts";

export interface ArmResult {
  readonly name: string;
  readonly plants?: number | undefined;
  /** Every figure there is, in order of day. */
  readonly figures: readonly Figure[];
  /** Their values as charts show them: totals of several plots by the plant, as their mean is. */
  readonly shown: readonly number[];
  /** Those that may be set against the other arms. */
  readonly used: readonly Figure[];
  /** One value a plot: what is compared. */
  readonly plots: readonly PlotValue[];
  /** Of the plots' values. */
  readonly spread?: Spread | undefined;
  /** Mean of the plots' values; of lines that name no plot, of these. */
  readonly mean?: number | undefined;
  readonly pieces: number;
}

export interface MeasureResult {
  readonly measure: Measure;
  readonly arms: readonly ArmResult[];
  /** Whether totals are of each plant. */
  readonly eachPlant: boolean;
  /** Of the two arms furthest apart; undefined when fewer than two have figures that may be compared. */
  readonly compared?: { readonly higher: string; readonly lower: string; readonly comparison: Comparison } | undefined;
  /** Plain words, ready to be said. */
  readonly verdict: Sentence;
}

export interface TrialResult {
  readonly trial: Trial;
  readonly measures: readonly MeasureResult[];
  /** Losses and troubles of the arms, which are not what was asked and weigh in all the same. */
  readonly besides?: Sentence | undefined;
  /** What the lines say beside their figures: "netted row: one with frass in it". */
  readonly remarks: readonly Sentence[];
  /** The person's own verdict, from the record. */
  readonly own?: Sentence | undefined;
  readonly private: boolean;
}

export function trialResult(book: SeasonBook, trial: Trial): TrialResult {
  const { arms, overlapping } = trialArms(book, trial);
  const { settings } = book.garden;
  const plots = trialPlots(arms);
  const plotted = arms.map((arm, at): PlottedArm => ({ arm, plots: plots[at] as PlottedArm["plots"] }));
  const measures = overlapping.length > 0 || arms.length < 2 ? [] : readMeasures(trial.measure);
  const isOver = trial.status !== "running" || (trial.verdictDue !== undefined && trial.verdictDue <= book.until);
  const drafts = measures.map((measure) => measured(measure, plotted, isOver));
  const withFigures = drafts.filter(({ arms: all }) => all.some(({ figures }) => figures.length > 0));
  const told = withFigures.length > 0 ? withFigures : drafts.slice(0, 1);
  // Of several pairs and measures the furthest apart is told, so chance had more ways to part them.
  const looks = Math.max(
    1,
    told.reduce((sum, draft) => sum + pairsOf(draft).length, 0),
  );
  return {
    trial,
    measures: told.map((draft) => {
      const compared = furthestApart(draft, looks);
      return {
        measure: draft.measure,
        arms: draft.arms,
        eachPlant: draft.matched.eachPlant,
        compared,
        verdict: verdict({ ...draft, compared }, looks, trial, settings),
      };
    }),
    besides: besides(arms),
    remarks: remarks(arms),
    own: trial.verdict === undefined ? undefined : say(trial.verdict.trim(), [trial]),
    private: trial.private || arms.every(({ events }) => events.length > 0 && events.every((event) => event.private)),
  };
}

interface Draft {
  readonly measure: Measure;
  readonly arms: readonly ArmResult[];
  readonly matched: Matched;
}

function measured(measure: Measure, plotted: readonly PlottedArm[], isOver: boolean): Draft {
  const counted = measure.kind === "days" ? countedFrom(plotted.map(({ arm }) => arm)) : undefined;
  const found = plotted.map((one) => figuresOf(measure, one, counted));
  const match = matched(measure, found, isOver);
  const arms = plotted.map(({ arm }, at): ArmResult => {
    const [values, used, figures] = [match.values[at] ?? [], match.used[at] ?? [], found[at]?.figures ?? []];
    const plotsMean = spread(values.map(({ value }) => value));
    return {
      name: arm.name,
      plants: arm.plants,
      figures,
      shown: figures.map(({ value, of }) => (match.eachPlant ? value / of : value)),
      used,
      plots: values,
      spread: plotsMean,
      mean: plotsMean?.mean ?? spread(used.map(({ value }) => value))?.mean,
      pieces: used.reduce((sum, { of }) => sum + of, 0),
    };
  });
  return { measure, arms, matched: match };
}

/** Pairs of arms that may be set against one another. */
function pairsOf({ arms, matched: { hindrance } }: Draft): readonly (readonly [ArmResult, ArmResult])[] {
  if (hindrance !== undefined) return [];
  const known = arms.filter(({ plots }) => plots.length > 0);
  return known.flatMap((one, at) => known.slice(at + 1).map((other) => [one, other] as const));
}

/** Of all pairs the one whose tested difference is largest; the higher arm is that of the tested difference's sign. */
function furthestApart(draft: Draft, looks: number): MeasureResult["compared"] {
  const compare = (one: ArmResult, other: ArmResult) => {
    const comparison = compareBlocks(blocksOf(one.plots, other.plots), looks);
    return comparison === undefined ? [] : [{ higher: one.name, lower: other.name, comparison }];
  };
  const both = pairsOf(draft).flatMap(([one, other]) => [...compare(one, other), ...compare(other, one)]);
  return both.toSorted((a, b) => b.comparison.difference - a.comparison.difference)[0];
}

/**
 * Plots are dealt out anew within their bed and season, where each of these has as many of either arm as the others; else all
 * together. So a good year or a poor bed is no difference between arms.
 */
function blocksOf(a: readonly PlotValue[], b: readonly PlotValue[]): readonly Block[] {
  const keys: readonly ((plot: PlotValue) => string)[] = [
    ({ plot }) => `${plot.bed} ${plot.season ?? "?"}`,
    ({ plot }) => String(plot.season ?? "?"),
    ({ plot }) => plot.bed,
  ];
  for (const key of keys) {
    const [ofA, ofB] = [Map.groupBy(a, key), Map.groupBy(b, key)];
    const names = [...new Set([...ofA.keys(), ...ofB.keys()])].sort();
    const sizes = new Set(names.map((name) => `${ofA.get(name)?.length ?? 0} ${ofB.get(name)?.length ?? 0}`));
    if (names.length < 2 || sizes.size !== 1 || /\b0\b/.test([...sizes][0] ?? "")) continue;
    return names.map((name) => ({ a: numbers(ofA.get(name)), b: numbers(ofB.get(name)) }));
  }
  return [{ a: numbers(a), b: numbers(b) }];
}

function numbers(values: readonly PlotValue[] = []): readonly number[] {
  return values.map(({ value }) => value);
}

// ------------------------------------------------------------------------------------------------------------- in words

interface Compared extends Draft {
  readonly compared: MeasureResult["compared"];
}

function verdict(draft: Compared, looks: number, trial: Trial, settings: GardenSettings): Sentence {
  const { arms } = draft;
  const words = trialWords;
  const sources: readonly { readonly place: Place }[] = arms.flatMap(({ figures }) =>
    figures.map(({ source }) => ({ place: source })),
  );
  const grounds = [...sources, ...(sources.length === 0 ? [trial] : [])];
  const told = arms.filter(({ figures }) => figures.length > 0);
  if (told.length === 0) return say(words.noFigures, grounds);
  const without = arms.filter(({ figures }) => figures.length === 0).map(({ name }) => name);
  const figures = told.map((arm) => armFacts(arm, draft));
  const parts = [
    words.figures(figures, draft.matched.on, settings),
    ...(without.length === 0 ? [] : [words.nothingFor(without)]),
    ...(told.length < 2 ? [] : [words.tells(tellsFacts(draft, looks), settings)]),
  ];
  return say(parts.join(" "), grounds);
}

function armFacts(arm: ArmResult, { measure, matched: { eachPlant, on }, arms }: Draft): ArmFacts {
  const spanOf = ({ used }: ArmResult) => {
    const days = used.map(({ day }) => day).sort();
    const [from, to] = [days[0], days.at(-1)];
    return from === undefined || to === undefined ? undefined : { from, to };
  };
  const spans = arms.flatMap((one) => spanOf(one) ?? []);
  const same = spans.every(({ from, to }) => from === spans[0]?.from && to === spans[0]?.to);
  const counted = new Set(arm.used.map((figure) => figure.counted));
  return {
    name: arm.name,
    kind: measure.kind,
    word: measure.word,
    mean: arm.mean ?? 0,
    eachPlant,
    total: arm.used.reduce((sum, { value }) => sum + value, 0),
    figures: arm.used.length,
    leftOut: arm.figures.length - arm.used.length,
    pieces: arm.pieces,
    plots: arm.plots.length,
    plotKind: kindOfPlots(arms),
    plants: arm.plants,
    unit: arm.used[0]?.unit,
    counted: counted.size === 1 ? [...counted][0] : undefined,
    span: same || on !== undefined ? undefined : spanOf(arm),
  };
}

/** What every plot is: rows, pots, beds; undefined when they are of several kinds or nobody says. */
function kindOfPlots(arms: readonly ArmResult[]): string | undefined {
  const kinds = new Set(arms.flatMap(({ plots }) => plots.map(({ plot }) => plot.kind)));
  return kinds.size === 1 ? [...kinds][0] : undefined;
}

function tellsFacts({ measure, arms, matched: { hindrance }, compared }: Compared, looks: number): TellsFacts {
  const known = arms.filter(({ plots }) => plots.length > 0);
  const armOf = (name: string | undefined) => known.find((arm) => arm.name === name);
  const higher = armOf(compared?.higher) ?? known[0];
  const lower = armOf(compared?.lower) ?? known[1];
  const [n, m] = [higher?.plots.length ?? 0, lower?.plots.length ?? 0];
  const seasons = new Set(known.flatMap(({ plots }) => plots.map(({ plot }) => plot.season)));
  return {
    kind: measure.kind,
    word: measure.word,
    hindrance,
    plotKind: kindOfPlots(arms),
    n,
    m,
    often: known.some(({ used, plots }) => used.length > plots.length),
    seasons: seasons.size,
    fewest: fewestPlots(looks),
    found: compared === undefined ? undefined : foundFacts(compared, n === 1 || m === 1, looks),
  };
}

function foundFacts(
  { higher, comparison }: NonNullable<MeasureResult["compared"]>,
  alone: boolean,
  looks: number,
): NonNullable<TellsFacts["found"]> {
  const { permutation, smallestP, difference, interval, sd } = comparison;
  const p = Math.min(1, permutation.p * looks);
  return {
    what: alone
      ? "alone"
      : difference < 1e-12
        ? "no difference"
        : smallestP * looks > LEVEL
          ? "too few"
          : p > LEVEL
            ? "chance"
            : "stands out",
    higher,
    p,
    smallestP: Math.min(1, smallestP * looks),
    isClean: permutation.p <= smallestP + 1e-9,
    needed:
      sd === undefined || difference < 1e-12
        ? undefined
        : rough(Math.max(fewestPlots(looks), plotsToShow(difference, sd))),
    interval: interval?.every((end) => Number.isFinite(end)) === true ? interval : undefined,
  };
}

/** Two figures are enough of a number that rests on a guess: 58,742 is about 59,000. */
function rough(n: number): number {
  const unit = 10 ** Math.max(0, Math.floor(Math.log10(n)) - 1);
  return Math.round(n / unit) * unit;
}

/** "Beside that, the bare row lost one plant to slugs and one to clubroot, and had caterpillars and clubroot." */
function besides(arms: readonly Arm[]): Sentence | undefined {
  const told = arms.flatMap((arm) => {
    const losses = arm.events.filter(({ kind }) => kind === "lost");
    const troubles = arm.events.filter(({ kind, cause }) => kind === "trouble" && cause !== undefined);
    if (losses.length + troubles.length === 0) return [];
    return [
      {
        name: arm.name,
        losses: losses.map(({ count, cause }) => ({ plants: count?.value ?? 1, cause })),
        troubles: [...new Set(troubles.map(({ cause }) => cause ?? ""))],
        grounds: [...losses, ...troubles],
      },
    ];
  });
  if (told.length === 0) return undefined;
  const grounds = told.flatMap((one) => one.grounds);
  return say(trialWords.besides(told), grounds);
}

function remarks(arms: readonly Arm[]): readonly Sentence[] {
  return arms.flatMap((arm) =>
    arm.events.flatMap((event) => {
      const said = event.kind === "picked" ? event.detail?.trim() : undefined;
      const own = said
        ?.split(",")
        .map((part) => part.trim())
        .filter((part) => part !== "" && part.toLowerCase() !== arm.name.toLowerCase() && !/^\d|^row \d/.test(part));
      return own === undefined || own.length === 0 ? [] : [say(`${capital(arm.name)}: ${own.join(", ")}.`, [event])];
    }),
  );
}
