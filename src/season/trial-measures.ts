/** What a trial measures, read from its own words, and the figures each arm's lines give for it. */
import { daysBetween } from "../calendar.ts";
import type { Event, PickUnit, Place } from "../model.ts";
import type { Arm } from "./trial-arms.ts";

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

export interface Figure {
  /** Grams, share 0 to 1, pieces, days, centimetres or share of green, by the measure's kind. */
  readonly value: number;
  /** Pieces the figure is of; 1 when it is of one thing. */
  readonly of: number;
  readonly unit?: PickUnit | undefined;
  readonly source: Place;
}

export interface Figures {
  readonly measure: Measure;
  /** What one figure is of: a picking whose pieces were weighed together, a whole arm added up, a planting, a measuring. */
  readonly per: "picking" | "arm" | "planting" | "measuring";
  readonly figures: readonly Figure[];
}

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
    .split(/,\s*(?:and\s+)?|;\s*|\s+and\s+(?=heads?|days?|kilograms?|weight|height|number)/)
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

/** The figures one arm gives; none when its lines say nothing of the measure. */
export function figuresOf(measure: Measure, arm: Arm): Figures {
  switch (measure.kind) {
    case "weight of one":
      return { measure, per: "picking", figures: weightsOfOne(arm) };
    case "share":
      return { measure, per: "picking", figures: shares(arm.events, measure.word ?? "clean") };
    case "weight":
      return { measure, per: "arm", figures: total(arm, ({ harvest }) => harvest.grams) };
    case "pieces":
      return { measure, per: "arm", figures: total(arm, ({ harvest }) => harvest.count?.value) };
    case "days":
      return { measure, per: "planting", figures: daysTo(arm, measure.goal ?? "picked") };
    case "height":
      return { measure, per: "measuring", figures: heights(arm) };
    case "cover":
      return { measure, per: "arm", figures: lastCover(arm) };
  }
}

function weightsOfOne({ pickings }: Arm): readonly Figure[] {
  return pickings.flatMap(({ harvest, note }) => {
    const { grams, count, unit } = harvest;
    if (grams === undefined || count === undefined || count.value <= 0) return [];
    return [{ value: grams / count.value, of: count.value, unit, source: note }];
  });
}

/** "20 roots, 12 clean": the number before the word, of the pieces of the line. */
function shares(events: readonly Event[], word: string): readonly Figure[] {
  return events.flatMap((event) => {
    const found = new RegExp(`(\\d+)\\s+(?:were\\s+|was\\s+)?${word}\\b`, "i").exec(event.text)?.[1];
    const of = event.count?.value;
    const part = Number(found);
    if (found === undefined || of === undefined || of <= 0 || part > of) return [];
    return [{ value: part / of, of, unit: event.unit, source: event.place }];
  });
}

function total(arm: Arm, amount: (picking: Arm["pickings"][number]) => number | undefined): readonly Figure[] {
  const amounts = arm.pickings.flatMap((picking) => amount(picking) ?? []);
  const [first] = arm.pickings;
  if (amounts.length === 0 || first === undefined) return [];
  return [{ value: amounts.reduce((sum, one) => sum + one, 0), of: arm.plants ?? 1, source: first.note }];
}

/** Days from the beginning of each planting of the arm to the first line of a kind. */
function daysTo({ lots, events }: Arm, goal: NonNullable<Measure["goal"]>): readonly Figure[] {
  const own = new Set(events);
  return lots.flatMap(({ planting, events: history }) => {
    const begun = planting.planted ?? planting.sown;
    const reached = history.find((event) => event.kind === goal && own.has(event));
    if (begun === undefined || reached === undefined || reached.day < begun) return [];
    return [{ value: daysBetween(begun, reached.day), of: 1, source: reached.place }];
  });
}

/** Measured with a rule and noted, or against a stake in a photo. */
function heights({ arm, events, photos }: Arm): readonly Figure[] {
  return [
    ...events.flatMap((event) =>
      event.kind === "measured" && event.heightCm !== undefined
        ? [{ value: event.heightCm, of: 1, source: event.place }]
        : [],
    ),
    ...photos.flatMap(({ photo, heights: seen }) =>
      seen
        .filter(({ variety }) => variety === arm.variety)
        .map(({ heightCm }) => ({ value: heightCm, of: 1, source: { file: photo, line: 1, column: 1 } })),
    ),
  ];
}

/** Photos of one bed follow one another and are no repeats, so the last of them is the arm's one figure. */
function lastCover({ photos, bedAlone }: Arm): readonly Figure[] {
  const last = bedAlone ? photos.findLast(({ cover }) => cover !== undefined) : undefined;
  if (last?.cover === undefined) return [];
  return [{ value: last.cover, of: 1, source: { file: last.photo, line: 1, column: 1 } }];
}
