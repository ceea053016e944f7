/** Trials: what each arm gave, and what so few plants can say about the difference. */
import type { GardenSettings, Place, Trial } from "../model.ts";
import { capital, sayLength, sayList, sayNumber, sayPlural, sayWeight } from "../timeline/index.ts";
import { type Sentence, say } from "../tour/index.ts";
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
    besides: besides(arms),
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
  const sources: readonly { readonly place: Place }[] = arms.flatMap(({ figures }) =>
    figures.map(({ source }) => ({ place: source })),
  );
  const grounds = [...sources, ...(sources.length === 0 ? [trial] : [])];
  const withFigures = arms.filter(({ figures }) => figures.length > 0);
  const without = arms.filter(({ figures }) => figures.length === 0);
  if (withFigures.length === 0) return say("No figures are noted for either side yet.", grounds);
  const figures = capital(`${withFigures.map((arm) => armSaid(arm, result, settings)).join("; ")}.`);
  if (compared === undefined) {
    const names = sayList(without.map(({ name }) => `the ${name}`));
    const nothing =
      without.length === 0 ? "" : ` Nothing is noted yet for ${names}, so there is nothing to set against it.`;
    return say(`${figures}${nothing}`, grounds);
  }
  return say(`${figures} ${whatItTells(result, compared, settings)}`, grounds);
}

/** "the netted row averaged 783 g a head, six heads in three pickings" */
function armSaid(arm: ArmResult, { measure, per }: Omit<MeasureResult, "verdict">, settings: GardenSettings): string {
  const name = `the ${arm.name}`;
  const mean = arm.mean ?? 0;
  const n = arm.figures.length;
  switch (measure.kind) {
    case "weight of one": {
      const [one, many] = pieceWords(arm.figures[0]?.unit);
      return `${name} averaged ${sayWeight(mean, settings.units)} a ${one}, ${sayPlural(arm.pieces, one, many)} in ${sayPlural(n, "picking", "pickings")}`;
    }
    case "share": {
      const good = Math.round(mean * arm.pieces);
      const [, many] = pieceWords(arm.figures[0]?.unit);
      return `${good} of ${arm.pieces} ${many} from ${name} were ${measure.word ?? "clean"}`;
    }
    case "weight": {
      const each =
        arm.plants === undefined || arm.plants < 2 ? "" : `, ${sayWeight(mean / arm.plants, settings.units)} a plant`;
      return `${name} gave ${sayWeight(mean, settings.units)}${arm.plants === undefined ? "" : ` from ${sayPlural(arm.plants, "plant", "plants")}`}${each}`;
    }
    case "pieces":
      return `${name} gave ${sayPlural(Math.round(mean), "piece", "pieces")}`;
    case "days":
      return `${name} took ${sayPlural(Math.round(mean), "day", "days")}${n > 1 ? ` on average, ${sayPlural(n, "planting", "plantings")}` : ""}`;
    case "cover":
      return `${name} was ${Math.round(mean * 100)} % green in its last photo`;
    case "height":
      return `${name} stood ${sayLength(mean, settings.units)} tall${n > 1 ? ` on average, ${sayPlural(n, per, `${per}s`)}` : ""}`;
  }
}

/** Two-sided level below which a difference is said to stand out; the usual one. */
const stands = 0.05;

function whatItTells(
  { measure, arms, per }: Omit<MeasureResult, "verdict">,
  { higher, lower, comparison }: NonNullable<MeasureResult["compared"]>,
  settings: GardenSettings,
): string {
  const count = (name: string) => arms.find((arm) => arm.name === name)?.figures.length ?? 0;
  const [n, m] = [count(higher), count(lower)];
  const against = `${sayNumber(n)} against ${sayNumber(m)}`;
  const { permutation, smallestP, difference } = comparison;
  if (n === 1 && m === 1) {
    const lot =
      measure.kind === "cover"
        ? "One bed stands for each side"
        : per === "arm"
          ? "Each side was added up as one lot"
          : "There is one figure a side";
    return `${lot}, and one against one can't tell the arms from chance.`;
  }
  if (Math.abs(difference) < 1e-12) return `There is no difference between them, ${against}.`;
  // Of several arms the two furthest apart were picked afterwards, so chance had more ways to part them.
  const pairs = choose(arms.filter(({ figures }) => figures.length > 0).length, 2);
  const p = Math.min(1, permutation.p * pairs);
  const figuresAre = per === "picking" ? "pickings" : per === "planting" ? "plantings" : "figures";
  if (smallestP * pairs > stands) {
    const clean = permutation.p <= smallestP + 1e-9;
    const chance = clean
      ? `even a clean split of that size happens ${oneIn(smallestP * pairs)} by chance`
      : `the best that size could show happens ${oneIn(smallestP * pairs)} by chance, and this is no clean split`;
    return `${capital(against)} ${figuresAre} can't settle this: ${chance}. Worth repeating with ${sayNumber(enough(arms, comparison))} a side.`;
  }
  const interval = intervalSaid(comparison, arms, settings);
  if (p > stands) {
    return `The difference does not stand out from chance: ${against} ${figuresAre}, and one as large comes up ${oneIn(p)} by chance${interval}.`;
  }
  return `The ${higher} ${per === "planting" ? "took longer" : "came out ahead"}, ${against} ${figuresAre}: a difference as large comes up only ${oneIn(p)} by chance${interval}. That is one garden and one season.`;
}

/** "one time in ten", "every second time". */
export function oneIn(p: number): string {
  if (p >= 0.95) return "nearly every time";
  if (p > 0.4) return "about every second time";
  const times = Math.round(1 / Math.max(p, 1e-6));
  return `one time in ${sayNumber(times)}`;
}

function intervalSaid({ welch }: Comparison, arms: readonly ArmResult[], settings: GardenSettings): string {
  if (welch === undefined) return "";
  const [low, high] = welch.interval;
  if (!Number.isFinite(low) || !Number.isFinite(high)) return "";
  const weighed = arms.some(({ figures }) => figures.some(({ unit }) => unit !== undefined && unit !== "piece"));
  if (!weighed) return "";
  const said = (grams: number) => sayWeight(Math.abs(grams), settings.units);
  if (low < 0 && high > 0) return `; the true gap may be anything from ${said(low)} the other way to ${said(high)}`;
  return `; the true gap may lie anywhere from ${said(low)} to ${said(high)}`;
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

const pieces: Readonly<Record<string, readonly [string, string]>> = {
  head: ["head", "heads"],
  bulb: ["bulb", "bulbs"],
  root: ["root", "roots"],
  fruit: ["fruit", "fruits"],
  ear: ["ear", "ears"],
  stem: ["stem", "stems"],
  pod: ["pod", "pods"],
  bunch: ["bunch", "bunches"],
};

function pieceWords(unit: string | undefined): readonly [string, string] {
  return pieces[unit ?? ""] ?? ["piece", "pieces"];
}

/** "Beside that, the bare row lost one plant to slugs and one to clubroot, and had caterpillars and clubroot." */
function besides(arms: readonly Arm[]): Sentence | undefined {
  const told = arms.flatMap((arm) => {
    const losses = arm.events.filter(({ kind }) => kind === "lost");
    const troubles = arm.events.filter(({ kind, cause }) => kind === "trouble" && cause !== undefined);
    const lost = losses.map(
      ({ count, cause }) =>
        `${sayPlural(count?.value ?? 1, "plant", "plants")}${cause === undefined ? "" : ` to ${cause}`}`,
    );
    const had = [...new Set(troubles.map(({ cause }) => cause ?? ""))];
    const parts = [
      ...(lost.length === 0 ? [] : [`lost ${sayList(lost)}`]),
      ...(had.length === 0 ? [] : [`had ${sayList(had)}`]),
    ];
    return parts.length === 0
      ? []
      : [{ text: `the ${arm.name} ${parts.join(", and ")}`, grounds: [...losses, ...troubles] }];
  });
  if (told.length === 0) return undefined;
  const grounds = told.flatMap((one) => one.grounds);
  return say(`Beside that, ${told.map(({ text }) => text).join("; ")}.`, grounds);
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
