/** The cards of a film that looks back: one for each thread of the year, below a cover of their own. */
import type { CardSet, CardTitles, Cover, SpokenCard } from "../../films/index.ts";
import type { Sentence } from "../../language/index.ts";
import type { Recap, RecapPhoto } from "../recap.ts";
import type { ThreadKind } from "../threads/thread.ts";

/** Looking back, what was noted says more than a reason. */
export const recapTitles: CardTitles = { before: "Then", now: "What", why: "Note" };

export interface ThreadCard extends SpokenCard {
  readonly kind: ThreadKind;
  /** Bed id, of a card that is of one bed. */
  readonly bed?: string | undefined;
  /** Variety id, of a card that is of one variety. */
  readonly variety?: string | undefined;
  /** To show while it is told, first to last. */
  readonly photos: readonly RecapPhoto[];
}

export interface RecapCover extends Cover {
  /** "1 January to 31 December 2025" */
  readonly span: string;
  readonly cards: number;
  /** The year in a sentence. */
  readonly year?: Sentence | undefined;
}

/** With the report that the cards rest on. */
export type RecapCards = CardSet<RecapCover, ThreadCard, Recap>;
