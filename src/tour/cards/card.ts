/** The cards of a tour: what stands on paper and phone at each stop, below the cover of the film. */
import type { CardSet, Cover, SpokenCard } from "../../films/index.ts";
import type { Sentence } from "../../language/index.ts";
import type { Brief } from "../brief.ts";

/** Shots of a stop that its card has room for. */
export const mostShots = 7;

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

/** Of one stop. */
export interface Card extends SpokenCard {
  /** Bed id. */
  readonly bed: string;
  readonly shots: readonly CardShot[];
  /** Lines of the notes that no fact holds yet, as written, the latest first. */
  readonly quoted: readonly Sentence[];
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

export interface TourCover extends Cover<Caution> {
  /** "Saturday 18 July 2026" */
  readonly day: string;
  readonly stops: number;
  /** "Be there 9:00, first shot 9:15, done about 10:08." */
  readonly times?: string | undefined;
  /** Only where it is known for most stops. */
  readonly light?: string | undefined;
  /** What the film is about. */
  readonly film?: Sentence | undefined;
  readonly owed: readonly Owed[];
  /** What viewers will ask about the film and no record tells, the most worth first. */
  readonly asks: readonly Sentence[];
  /** Whom to call. */
  readonly poison?: string | undefined;
  readonly kit: readonly string[];
}

/** With the brief that the cards rest on. */
export type TourCards = CardSet<TourCover, Card, Brief>;
