/** What a trial measures, read from its own words, and the figures each arm's lines give for it. */
import { daysBetween } from "../calendar.ts";
import type { Day, PickUnit, Place } from "../model.ts";
import type { Arm } from "./trial-arms.ts";
import type { ArmPlots, Plot } from "./trial-plots.ts";

export type MeasureKind = "weight of one" | "share" | "weight" | "pieces" | "days" | "height" | "cover";

export interface Measure {
  readonly kind: MeasureKind;
  /** As the record says it: "kilograms a head at picking". */
  readonly text: string;
  /** Of `share`: what is counted among the pieces: "clean". */
  readonly word?: string | undefined;
  /** Of `days`: the stage that ends them. */
  readonly goal?: "up" | "flowered" | "fruited" | "picked" | undefined;
}

/** What one line, or one plot added up, says of a measure. */
export interface Figure {
  /** Grams, share 0 to 1, pieces, days, centimetres or share of green, by the measure's kind. */
  readonly value: number;
  /** Pieces the figure is of; plants, of what a plot gave in all; 1 when it is of one thing. */
  readonly of: number;
  readonly unit?: PickUnit | undefined;
  readonly day: Day;
  /** What days are counted from. */
  readonly counted?: Counted | undefined;
  /** The plot it tells of; undefined when the arm has several and the line names none. */
  readonly plot?: Plot | undefined;
  readonly source: Place;
}

export interface Figures {
  readonly figures: readonly Figure[];
  /** Of `days`: what they count from, where plots of all arms have it. */
  readonly counted?: Counted | undefined;
  /** Plots whose figure is not there yet, because its plants still grow. */
  readonly goingOn: readonly Plot[];
  /** Plots that ended without a figure. */
  readonly failed: readonly Plot[];
}

export type Counted = "sowing" | "planting";

const adjectives = "clean|sound|undamaged|unmarked|damaged|marked|split|rotten|holed|forked|eaten|ripe|good|bad";

const kinds: readonly (readonly [MeasureKind, RegExp])[] = [
  ["share", new RegExp(`\\b(${adjectives})\\b`, "i")],
  ["days", /\bdays?\b|\bearlie(?:r|st)\b|\bfirst (?:ripe|flower|fruit|picking|up)\b|\bhow (?:soon|long)\b/i],
  ["cover", /\b(?:cover|green)\b/i],
  ["height", /\bheight|\btall|\bcm\b|\blength\b/i],
  [
    "weight of one",
    /\b(?:kilograms?|kg|grams?|g|weight|pounds?|lb|ounces?)\b.*\b(?:a|per|each|of a|one)\s+(?:head|bulb|root|fruit|ear)/i,
  ],
  ["weight", /\b(?:kilograms?|kg|grams?|weight|pounds?|lb|yield|crop)\b/i],
  ["pieces", /\b(?:number|count|how many)\b/i],
];

/** The measures of a trial, in its order; words that say none are left to the eye. */
export function readMeasures(text: string): readonly Measure[] {
  return text
    .split(/,\s*(?:and\s+)?|;\s*|(?<!\s)\s+and\s+(?=heads?|days?|kilograms?|weight|height|number)/)
    .map((part) => part.trim())
    .flatMap((part): Measure[] => {
      const [kind] = kinds.find(([, words]) => words.test(part)) ?? [];
      if (kind === undefined) return [];
      return [
        {
          kind,
          text: part,
          word: kind === "share" ? new RegExp(`\\b(${adjectives})\\b`, "i").exec(part)?.[1]?.toLowerCase() : undefined,
          goal: kind === "days" ? goalOf(part) : undefined,
        },
      ];
    });
}

function goalOf(text: string): Measure["goal"] {
  if (/flower/i.test(text)) return "flowered";
  if (/\bup\b|germinat|emerg/i.test(text)) return "up";
  return /fruit set|set fruit/i.test(text) ? "fruited" : "picked";
}

/** An arm with its plots, as it is measured. */
export interface PlottedArm {
  readonly arm: Arm;
  readonly plots: ArmPlots;
}

/** The figures one arm gives; none when its lines say nothing of the measure. */
export function figuresOf(measure: Measure, plotted: PlottedArm, counted: Counted | undefined): Figures {
  const whole = { goingOn: [], failed: [] };
  switch (measure.kind) {
    case "weight of one":
      return { ...whole, figures: weightsOfOne(plotted) };
    case "share":
      return { ...whole, figures: shares(plotted, measure.word ?? "clean") };
    case "weight":
      return totals(plotted, ({ harvest }) => harvest.grams);
    case "pieces":
      return totals(plotted, ({ harvest }) => harvest.count?.value);
    case "days":
      return daysTo(plotted, measure.goal ?? "picked", counted);
    case "height":
      return { ...whole, figures: heights(plotted) };
    case "cover":
      return { ...whole, figures: covers(plotted) };
  }
}

function weightsOfOne({ arm, plots }: PlottedArm): readonly Figure[] {
  return arm.pickings.flatMap((picking) => {
    const { grams, count, unit } = picking.harvest;
    if (grams === undefined || count === undefined || count.value <= 0) return [];
    const plot = plots.plotOf(placed(picking));
    return [{ value: grams / count.value, of: count.value, unit, day: picking.day, plot, source: picking.note }];
  });
}

function placed({ bed, event }: Arm["pickings"][number]) {
  return { bed, spot: event?.spot, text: event?.text };
}

/** "20 roots, 12 clean": the number before the word, of the pieces of the line. */
function shares({ arm, plots }: PlottedArm, word: string): readonly Figure[] {
  return arm.events.flatMap((event) => {
    const found = new RegExp(`(\\d+)\\s+(?:were\\s+|was\\s+)?${word}\\b`, "i").exec(event.text)?.[1];
    const of = event.count?.value;
    const part = Number(found);
    if (found === undefined || of === undefined || of <= 0 || part > of) return [];
    return [{ value: part / of, of, unit: event.unit, day: event.day, plot: plots.plotOf(event), source: event.place }];
  });
}

/**
 * What each plot gave in all. A plot that ended without a picking gave nothing, and that counts; one that is still picked has
 * no total yet. Pickings that name no plot of several are one figure more, of no plot.
 */
function totals({ arm, plots }: PlottedArm, amount: (picking: Arm["pickings"][number]) => number | undefined): Figures {
  const measured = arm.pickings.flatMap((picking) => {
    const value = amount(picking);
    return value === undefined ? [] : [{ value, picking, plot: plots.plotOf(placed(picking)) }];
  });
  const lotsOf = (plot: Plot | undefined) =>
    plot === undefined ? arm.lots : arm.lots.filter(({ planting }) => plots.plotOf(planting)?.key === plot.key);
  const ended = (plot: Plot) => {
    const lots = lotsOf(plot);
    return lots.length > 0 && lots.every(({ planting }) => planting.ended !== undefined);
  };
  const byPlot = Map.groupBy(measured, ({ plot }) => plot?.key);
  const figures = [...byPlot.values()].map((all): Figure => {
    const last = all.at(-1) as (typeof all)[number];
    return {
      value: all.reduce((sum, { value }) => sum + value, 0),
      of:
        plantsIn(last.plot === undefined ? [] : lotsOf(last.plot)) ?? (plots.plots.length === 1 ? arm.plants : 0) ?? 0,
      day: last.picking.day,
      plot: last.plot,
      source: last.picking.note,
    };
  });
  const empty = plots.plots.filter(({ key }) => !byPlot.has(key) && measured.length > 0 && !byPlot.has(undefined));
  const failed = empty.filter(ended);
  return {
    figures: [
      ...figures,
      ...failed.flatMap((plot): Figure[] => {
        const lots = lotsOf(plot);
        const [first] = lots;
        const end = lots
          .map(({ planting }) => planting.ended ?? "")
          .sort()
          .at(-1);
        if (first === undefined || end === undefined) return [];
        return [{ value: 0, of: plantsIn(lots) ?? 0, day: end, plot, source: first.planting.lastNote }];
      }),
    ],
    goingOn: plots.plots.filter((plot) => lotsOf(plot).length > 0 && !ended(plot)),
    failed,
  };
}

/** Plants set out, the lost ones with them; undefined when some were not counted. */
function plantsIn(lots: Arm["lots"]): number | undefined {
  if (lots.length === 0 || lots.some(({ plants }) => plants === undefined)) return undefined;
  return lots.reduce((sum, { plants }) => sum + (plants ?? 0), 0);
}

/** Days from the beginning of each planting of the arm to the first line of a kind. */
function daysTo(
  { arm: { lots, events }, plots }: PlottedArm,
  goal: NonNullable<Measure["goal"]>,
  counted: Counted | undefined,
): Figures {
  const own = new Set(events);
  const basis = ({ planting }: Arm["lots"][number]): Counted =>
    counted ?? (planting.planted === undefined ? "sowing" : "planting");
  const begun = (lot: Arm["lots"][number]) => (basis(lot) === "sowing" ? lot.planting.sown : lot.planting.planted);
  const reached = lots.map((lot) => lot.events.find((event) => event.kind === goal && own.has(event)));
  const without = (ended: boolean) =>
    lots.flatMap((lot, at) => {
      const plot = plots.plotOf(lot.planting);
      const is = reached[at] === undefined && begun(lot) !== undefined && (lot.planting.ended !== undefined) === ended;
      return is && plot !== undefined ? [plot] : [];
    });
  return {
    figures: lots.flatMap((lot, at) => {
      const [from, to] = [begun(lot), reached[at]];
      if (from === undefined || to === undefined || to.day < from) return [];
      return [
        {
          value: daysBetween(from, to.day),
          of: 1,
          day: to.day,
          counted: basis(lot),
          plot: plots.plotOf(lot.planting),
          source: to.place,
        },
      ];
    }),
    counted,
    goingOn: without(false),
    failed: without(true),
  };
}

/** What days can be counted from in every planting of every arm: those that were planted out, else sowings. */
export function countedFrom(arms: readonly Arm[]): Counted | undefined {
  const plantings = arms.flatMap(({ lots }) => lots.map(({ planting }) => planting));
  if (plantings.every(({ planted }) => planted !== undefined)) return "planting";
  return plantings.every(({ sown }) => sown !== undefined) ? "sowing" : undefined;
}

/** Measured with a rule and noted, or against a stake in a photo. */
function heights({ arm: { arm, events, photos }, plots }: PlottedArm): readonly Figure[] {
  return [
    ...events.flatMap((event) =>
      event.kind === "measured" && event.heightCm !== undefined
        ? [{ value: event.heightCm, of: 1, day: event.day, plot: plots.plotOf(event), source: event.place }]
        : [],
    ),
    ...photos.flatMap(({ photo, day, bed, heights: seen }) =>
      seen
        .filter(({ variety }) => variety === arm.variety)
        .map(({ heightCm }) => ({
          value: heightCm,
          of: 1,
          day,
          plot: plots.plotOf({ bed }),
          source: { file: photo, line: 1, column: 1 },
        })),
    ),
  ];
}

/** Each photo's green, of beds that no other arm stands in. */
function covers({ arm: { photos, bedAlone }, plots }: PlottedArm): readonly Figure[] {
  return (bedAlone ? photos : []).flatMap(({ photo, bed, day, cover }) =>
    cover === undefined
      ? []
      : [{ value: cover, of: 1, day, plot: plots.plotOf({ bed }), source: { file: photo, line: 1, column: 1 } }],
  );
}
