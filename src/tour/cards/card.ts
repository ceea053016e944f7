/**
 * The cards of a tour: what stands on paper and phone while the camera runs. A phrase is what is said or done, with the
 * lines it rests on; what is private is never a phrase of a card. What has no room on a card stands in its dossier.
 */
import type { Sentence } from "../../language/index.ts";
import type { Brief } from "../brief.ts";

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
  shots: 7,
} as const;

export interface NowPhrase extends Sentence {
  /** What the hand does, the beginning of the text: "lift the net". */
  readonly hand?: string | undefined;
}

export interface NameToSay extends Sentence {
  readonly name: string;
  readonly say?: string | undefined;
  readonly standing?: "new to this garden" | "new in this bed" | "grown every year" | undefined;
}

export interface CardShot {
  /** Shot id of the brief. */
  readonly id: string;
  readonly text: string;
  /** Held for ten seconds: what the edit cuts four from. */
  readonly hold: boolean;
  readonly cutaway: boolean;
  /** Path of the photo to match. */
  readonly match?: string | undefined;
}

export interface Card {
  /** "S3" */
  readonly id: string;
  readonly number: number;
  /** Bed id. */
  readonly bed: string;
  readonly title: string;
  /** Planned length on film. */
  readonly seconds: number;
  /** Film that is gone when the stop begins. */
  readonly begins: number;
  readonly light?: string | undefined;
  /** Said to the lens, whole. */
  readonly opening: Sentence;
  readonly before?: Sentence | undefined;
  /** Left to right, or along the walk through the bed. */
  readonly now: readonly NowPhrase[];
  readonly figure?: Sentence | undefined;
  readonly why?: Sentence | undefined;
  readonly names: readonly NameToSay[];
  /** Gifts, loans, links and debts, in the first person. */
  readonly aloud: readonly Sentence[];
  readonly next?: Sentence | undefined;
  /** Opening, then, now, figure, why and next, counted. */
  readonly words: number;
  readonly shots: readonly CardShot[];
  /** What the card had no room for, the most worth first. */
  readonly further: readonly Sentence[];
  /** Lines of the notes that no fact holds yet, as written, the latest first. */
  readonly quoted: readonly Sentence[];
}

export interface CoverRow {
  readonly number: number;
  readonly title: string;
  readonly seconds: number;
  readonly begins: number;
  readonly must: boolean;
  /** Goes first when time runs short. */
  readonly mayGo: boolean;
}

export interface Owed extends Sentence {
  readonly standing: "overdue" | "due" | "open" | "waiting";
  /** Undefined when no stop of this tour can keep it. */
  readonly stop?: number | undefined;
  /** Id of the shot that keeps it. */
  readonly shot?: string | undefined;
}

export interface Caution extends Sentence {
  readonly stops: readonly number[];
}

export interface Cover {
  readonly title: string;
  /** "Saturday 18 July 2026" */
  readonly day: string;
  readonly length: string;
  readonly stops: number;
  /** "Be there 9:00, first shot 9:15, done about 10:08." */
  readonly times?: string | undefined;
  /** Only where it is known for most stops. */
  readonly light?: string | undefined;
  /** What the film is about. */
  readonly film?: Sentence | undefined;
  /** Two other ways to begin. */
  readonly openers: readonly Sentence[];
  readonly rows: readonly CoverRow[];
  /** What falls out first, the least worth first. */
  readonly fallsOut: readonly Sentence[];
  readonly owed: readonly Owed[];
  /** Questions and work that can be settled on the spot before the camera runs. */
  readonly settle: readonly Sentence[];
  readonly cautions: readonly Caution[];
  /** Whom to call. */
  readonly poison?: string | undefined;
  readonly kit: readonly string[];
}

export interface CardSet {
  readonly cover: Cover;
  readonly cards: readonly Card[];
  readonly dossier: Brief;
}
