/** What is found in a line before anything is made of it: each mention covers some of its words and says what they may be. */
import type { Day, EventKind, PickUnit } from "../../model.ts";

interface Span {
  /** The first of its words, and the one behind its last. */
  readonly from: number;
  readonly end: number;
}

/** How sure it is that words name a plant: the person's own record, a table, a crop word, or only how they are written. */
export type PlantBasis = "own" | "cultivar" | "crop" | "guess";

export interface PlantMention extends Span {
  readonly type: "plant";
  readonly basis: PlantBasis;
  /** Id of a variety that the garden knows. */
  readonly variety?: string | undefined;
  /** Name as written, of a variety that no file describes. */
  readonly title?: string | undefined;
  readonly crop?: string | undefined;
  /** The crop's other name that the line calls it by: "edamame". */
  readonly said?: string | undefined;
}

/**
 * What a number is of.
 * - count: plants, seeds, pieces; pieces: with a trade unit; vessel: jars, trays, rows, bags
 * - share: "7 of 9"; spacing: "30 cm apart"; label: "row 2", "day 9", which counts nothing
 */
export type AmountUse =
  | "count"
  | "pieces"
  | "vessel"
  | "share"
  | "mass"
  | "volume"
  | "length"
  | "spacing"
  | "temperature"
  | "ph"
  | "percent"
  | "time"
  | "price"
  | "label"
  | "year";

export interface AmountMention extends Span {
  readonly type: "amount";
  readonly use: AmountUse;
  /** In pieces, grams, litres, centimetres or degrees Celsius. */
  readonly value: number;
  readonly upTo?: number | undefined;
  readonly approx?: boolean | undefined;
  readonly unit?: PickUnit | undefined;
  /** The thing counted, of a vessel ("jars") or of whole plants ("bushes"); of a length "round" or "across". */
  readonly noun?: string | undefined;
  /** "= 240", "thirty in total": what the numbers before it come to. */
  readonly sum?: boolean | undefined;
  /** "3 each", "of each": said once for several plants. */
  readonly each?: boolean | undefined;
}

export interface VerbMention extends Span {
  readonly type: "verb";
  readonly kinds: readonly EventKind[];
  /** A noun as well, and not where a verb stands. */
  readonly weak: boolean;
  /** As the garden's own word list has it. */
  readonly own?: true | undefined;
}

export interface BedMention extends Span {
  readonly type: "bed";
  readonly id: string;
  readonly role: "in" | "to" | "from";
}

export interface CauseMention extends Span {
  readonly type: "cause";
  readonly text: string;
  readonly of: "pest" | "disease" | "disorder" | "weather";
}

export interface GearMention extends Span {
  readonly type: "gear";
  /** Of gear the garden describes. */
  readonly id?: string | undefined;
  readonly text: string;
}

export interface DayMention extends Span {
  readonly type: "day";
  readonly day: Day;
}

/** Where seed stands before it is planted out ("in trays"), or that it went straight into the ground ("two rows"). */
export interface StandMention extends Span {
  readonly type: "stand";
  readonly nursery: boolean;
}

/**
 * How what is said is meant.
 * - not, past (another year), may, future, habit, other (another person), question, correction
 */
export type CueKind = "not" | "past" | "may" | "future" | "habit" | "other" | "question" | "correction";

export interface CueMention extends Span {
  readonly type: "cue";
  readonly is: CueKind;
}

export type Mention =
  | PlantMention
  | AmountMention
  | VerbMention
  | BedMention
  | CauseMention
  | GearMention
  | DayMention
  | StandMention
  | CueMention;

const measured = new Set<AmountUse>(["pieces", "vessel", "share", "mass", "volume", "length", "temperature", "ph"]);

/** Whether a mention may be of a garden: a bare number, a day or a word of doubt alone is of anything, "next year" too. */
export function isOfGarden(mention: Mention): boolean {
  if (mention.type === "verb") return mention.kinds.some((kind) => kind !== "plan");
  return mention.type === "amount" ? measured.has(mention.use) : mention.type !== "day" && mention.type !== "cue";
}

/** Whether a mention names something a garden has: no fact stands without one. */
export function isGardenThing(mention: Mention): boolean {
  return (
    mention.type === "plant" ||
    mention.type === "bed" ||
    mention.type === "gear" ||
    (mention.type === "cause" && mention.of !== "weather")
  );
}

/** A verb where a verb stands, and no noun that is written alike. */
export function isVerb(mention: Mention): mention is VerbMention {
  return mention.type === "verb" && !mention.weak;
}

/** Verbs that the garden's own word list has. */
export function ownVerbsOf(mentions: readonly Mention[]): readonly VerbMention[] {
  return mentions.filter(isVerb).filter(({ own }) => own === true);
}
