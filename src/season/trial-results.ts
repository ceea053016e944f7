/** Trials: what each arm gave, and what so few plants can say about the difference. */
import type { GardenSettings, Place, Trial } from "../model.ts";
import { capital } from "../timeline/index.ts";
import { type Sentence, say } from "../tour/index.ts";
import { type ArmFacts, type TellsFacts, trialWords } from "./recap-words/trials.ts";
import type { SeasonBook } from "./season-book.ts";
import { type Arm, trialArms } from "./trial-arms.ts";
import { type Figure, figuresOf, type Measure, readMeasures } from "./trial-measures.ts";
import { type Comparison, choose, compareArms, type Spread, spread } from "./trial-statistics.ts";

export interface ArmResult {
  readonly name: string;
  readonly plants?: number | undefined;
  /** Every figure there is, in order of day: charts show each of them. */
  readonly figures: readonly Figure[];
  readonly spread?: Spread | undefined;
  /** Mean over pieces: six heads of three pickings count as six. */
  readonly mean?: number | undefined;
  readonly pieces: number;
}

export interface MeasureResult {
  readonly measure: Measure;
  readonly per: "picking" | "arm" | "planting" | "measuring";
  readonly arms: readonly ArmResult[];
  /** Of the two arms furthest apart; undefined when fewer than two have figures. */
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
  const measures = overlapping.length > 0 || arms.length < 2 ? [] : readMeasures(trial.measure);
  const results = measures.map((measure) => measureResult(measure, arms, trial, settings));
  const told = results.some(({ arms: all }) => all.some(({ figures }) => figures.length > 0))
    ? results.filter(({ arms: all }) => all.some(({ figures }) => figures.length > 0))
    : results.slice(0, 1);
  return {
    trial,
    measures: told,
    besides: besides(arms, settings),
    remarks: remarks(arms),
    own: trial.verdict === undefined ? undefined : say(trial.verdict.trim(), [trial]),
    private: trial.private || arms.every(({ events }) => events.length > 0 && events.every((event) => event.private)),
  };
}

function measureResult(measure: Measure, arms: readonly Arm[], trial: Trial, settings: GardenSettings): MeasureResult {
  const read = arms.map((arm) => ({ arm, found: figuresOf(measure, arm) }));
  const results = read.map(({ arm, found }): ArmResult => {
    const values = found.figures.map(({ value }) => value);
    const pieces = found.figures.reduce((sum, { of }) => sum + of, 0);
    const weighted = found.figures.reduce((sum, { value, of }) => sum + value * of, 0);
    return {
      name: arm.name,
      plants: arm.plants,
      figures: found.figures,
      spread: spread(values),
      mean: pieces === 0 ? undefined : found.per === "picking" ? weighted / pieces : spread(values)?.mean,
      pieces,
    };
  });
  const per = read[0]?.found.per ?? "arm";
  const compared = furthestApart(results);
  return {
    measure,
    per,
    arms: results,
    compared,
    verdict: verdict({ measure, per, arms: results, compared }, trial, settings),
  };
}

function furthestApart(arms: readonly ArmResult[]): MeasureResult["compared"] {
  const known = arms.filter(({ mean }) => mean !== undefined).toSorted((a, b) => (b.mean ?? 0) - (a.mean ?? 0));
  const [higher, lower] = [known[0], known.at(-1)];
  if (higher === undefined || lower === undefined || higher === lower) return undefined;
  const values = ({ figures }: ArmResult) => figures.map(({ value }) => value);
  const comparison = compareArms(values(higher), values(lower));
  return comparison === undefined ? undefined : { higher: higher.name, lower: lower.name, comparison };
}

// ------------------------------------------------------------------------------------------------------------- in words

function verdict(result: Omit<MeasureResult, "verdict">, trial: Trial, settings: GardenSettings): Sentence {
  const { arms, compared } = result;
  const words = trialWords(settings);
  const sources: readonly { readonly place: Place }[] = arms.flatMap(({ figures }) =>
    figures.map(({ source }) => ({ place: source })),
  );
  const grounds = [...sources, ...(sources.length === 0 ? [trial] : [])];
  const withFigures = arms.filter(({ figures }) => figures.length > 0);
  if (withFigures.length === 0) return say(words.noFigures, grounds);
  const figures = words.figures(
    withFigures.map((arm) => armFacts(arm, result)),
    settings,
  );
  const without = arms.filter(({ figures: none }) => none.length === 0).map(({ name }) => name);
  const more =
    compared !== undefined
      ? words.tells(tellsFacts(result, compared), settings)
      : without.length === 0
        ? undefined
        : words.nothingFor(without);
  return say(more === undefined ? figures : `${figures} ${more}`, grounds);
}

function armFacts(arm: ArmResult, { measure, per }: Omit<MeasureResult, "verdict">): ArmFacts {
  return {
    name: arm.name,
    kind: measure.kind,
    word: measure.word,
    per,
    mean: arm.mean ?? 0,
    figures: arm.figures.length,
    pieces: arm.pieces,
    plants: arm.plants,
    unit: arm.figures[0]?.unit,
  };
}

/** Two-sided level below which a difference is said to stand out; the usual one. */
const stands = 0.05;

function tellsFacts(
  { measure, arms, per }: Omit<MeasureResult, "verdict">,
  { higher, lower, comparison }: NonNullable<MeasureResult["compared"]>,
): TellsFacts {
  const count = (name: string) => arms.find((arm) => arm.name === name)?.figures.length ?? 0;
  const { permutation, smallestP, difference, welch } = comparison;
  // Of several arms the two furthest apart were picked afterwards, so chance had more ways to part them.
  const pairs = choose(arms.filter(({ figures }) => figures.length > 0).length, 2);
  const p = Math.min(1, permutation.p * pairs);
  const [n, m] = [count(higher), count(lower)];
  const weighed = arms.some(({ figures }) => figures.some(({ unit }) => unit !== undefined && unit !== "piece"));
  const finite = welch?.interval.every((end) => Number.isFinite(end)) === true;
  return {
    kind: measure.kind,
    higher,
    per,
    n,
    m,
    what:
      n === 1 && m === 1
        ? "one each"
        : Math.abs(difference) < 1e-12
          ? "no difference"
          : smallestP * pairs > stands
            ? "too few"
            : p > stands
              ? "chance"
              : "stands out",
    p,
    smallestP: smallestP * pairs,
    isClean: permutation.p <= smallestP + 1e-9,
    enough: enough(arms, comparison),
    interval: weighed && finite ? welch?.interval : undefined,
  };
}

/** Fewest figures a side that could show anything (two-sided, 0.05), and for a difference of this size about sixteen over its square in standard deviations (Lehr's rule, from memory). */
function enough(arms: readonly ArmResult[], { difference }: Comparison): number {
  const fewest = 4;
  const most = 30;
  const spreads = arms.flatMap(({ spread: one }) => (one?.sd === undefined ? [] : [one.sd]));
  const sd = spreads.length === 0 ? 0 : Math.sqrt(spreads.reduce((sum, one) => sum + one ** 2, 0) / spreads.length);
  const steps = sd === 0 ? Number.POSITIVE_INFINITY : Math.abs(difference) / sd;
  const needed = Number.isFinite(steps) && steps > 0 ? Math.ceil(16 / steps ** 2) : fewest;
  return Math.min(most, Math.max(fewest * 2, needed));
}

/** "Beside that, the bare row lost one plant to slugs and one to clubroot, and had caterpillars and clubroot." */
function besides(arms: readonly Arm[], settings: GardenSettings): Sentence | undefined {
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
  return say(trialWords(settings).besides(told), grounds);
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
