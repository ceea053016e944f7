/** Sixty words are what a card holds: what goes first when it is too full. */
import type { Sentence } from "../../language/index.ts";
import { cardLimits } from "./card.ts";
import { fits } from "./count-words.ts";

/** The spoken parts of a card while it is put together. */
export interface Spoken<Phrase extends Sentence = Sentence> {
  readonly opening: Sentence;
  before?: Sentence | undefined;
  now: readonly Phrase[];
  figure?: Sentence | undefined;
  why?: Sentence | undefined;
  next?: Sentence | undefined;
}

/** In the order of the card. */
export function spokenParts({ opening, before, now, figure, why, next }: Spoken): readonly Sentence[] {
  return [opening, before, ...now, figure, why, next].filter((part) => part !== undefined);
}

/** What goes first when a card is too full; opening and what comes next stay. */
const leastFirst: readonly ((spoken: Spoken) => readonly Sentence[])[] = [
  (spoken) => drop(spoken, "before"),
  (spoken) => lastOfNow(spoken, 3),
  (spoken) => drop(spoken, "figure"),
  (spoken) => lastOfNow(spoken, 2),
  (spoken) => drop(spoken, "why"),
];

/** Takes out what goes beyond the limit, and gives it back. */
export function toSixty(spoken: Spoken): readonly Sentence[] {
  const dropped: Sentence[] = [];
  for (const take of leastFirst) {
    if (
      fits(
        spokenParts(spoken)
          .map(({ text }) => text)
          .join(" "),
        cardLimits.spoken,
      )
    )
      break;
    dropped.push(...take(spoken));
  }
  return dropped;
}

function drop(spoken: Spoken, part: "before" | "figure" | "why"): readonly Sentence[] {
  const gone = spoken[part];
  spoken[part] = undefined;
  return gone === undefined ? [] : [gone];
}

function lastOfNow(spoken: Spoken, least: number): readonly Sentence[] {
  if (spoken.now.length < least) return [];
  const gone = spoken.now.slice(least - 1);
  spoken.now = spoken.now.slice(0, least - 1);
  return gone;
}
