/**
 * A card: what is said and done while the camera runs, of a stop of a tour or of a thread of a year. A phrase carries the lines
 * it rests on; what is private is never a phrase of a card. What has no room on a card stands in its dossier.
 */
import type { Sentence } from "../../language/index.ts";

/** Published limits of spoken cards, in words; a layout holds exactly what they allow (docs/planning.md has the sources). */
export const cardLimits = {
  opening: 14,
  before: 8,
  now: 7,
  nowPhrases: 3,
  figure: 8,
  why: 10,
  names: 4,
  next: 10,
  /** Opening to next together, without names and what must be said. */
  spoken: 60,
} as const;

/** What the parts are headed with. */
export interface CardTitles {
  readonly before: string;
  readonly now: string;
  readonly why: string;
}

export const tourTitles: CardTitles = { before: "Then", now: "Now", why: "Why" };

export interface NowPhrase extends Sentence {
  /** What the hand does, the beginning of the text: "lift the net". */
  readonly hand?: string | undefined;
}

export interface NameToSay extends Sentence {
  readonly name: string;
  readonly say?: string | undefined;
  readonly standing?: "new to this garden" | "new in this bed" | "grown every year" | undefined;
}

export interface SpokenCard {
  /** "S3" */
  readonly id: string;
  readonly number: number;
  readonly title: string;
  /** Planned length on film. */
  readonly seconds: number;
  /** Film that is gone when it begins. */
  readonly begins: number;
  readonly light?: string | undefined;
  /** Said to the lens, whole. */
  readonly opening: Sentence;
  readonly before?: Sentence | undefined;
  /** Left to right, or along the walk through the bed; of a thread in the order in which it went. */
  readonly now: readonly NowPhrase[];
  readonly figure?: Sentence | undefined;
  readonly why?: Sentence | undefined;
  readonly names: readonly NameToSay[];
  /** Gifts, loans, links and debts, in the first person. */
  readonly aloud: readonly Sentence[];
  readonly next?: Sentence | undefined;
  /** Opening, then, now, figure, why and next, counted. */
  readonly words: number;
  /** What the card had no room for, the most worth first. */
  readonly further: readonly Sentence[];
}

/** A film's cards below their cover, and the report they rest on. */
export interface CardSet<Front extends Cover, Card extends SpokenCard, Dossier> {
  readonly cover: Front;
  readonly cards: readonly Card[];
  readonly dossier: Dossier;
}

/** What every cover has; `Care` is a caution with what it is of. */
export interface Cover<Care extends Sentence = Sentence> {
  readonly title: string;
  /** "six minutes" */
  readonly length: string;
  /** Two other ways to begin. */
  readonly openers: readonly Sentence[];
  readonly rows: readonly CoverRow[];
  /** What the length has no room for; of a tour, the least worth first. */
  readonly fallsOut: readonly Sentence[];
  /** Questions and work that can be settled before the camera runs. */
  readonly settle: readonly Sentence[];
  readonly cautions: readonly Care[];
}

/** A card's line on the cover. */
export interface CoverRow {
  readonly number: number;
  readonly title: string;
  readonly seconds: number;
  readonly begins: number;
  readonly must: boolean;
  /** Goes first when time runs short. */
  readonly mayGo: boolean;
}
