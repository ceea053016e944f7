/**
 * Where an old promise is named as one ("in May I said I'd measure them", "I was going to show you", "you were told"), by its own
 * words, by its plants, or by nothing else that is owed at the bed.
 */
import type { FilmHeard } from "../hear-film.ts";
import type { Subject } from "../spoken-subjects.ts";
import { plainWord, type Word } from "../spoken-words.ts";
import { inWords } from "../word-ranges.ts";
import type { Asked, Span } from "./planned-answer.ts";
import { stem } from "./telling-words.ts";

/** Words by which an old promise is named. */
const recalled =
  /^(?:(?:i|we) (?:did |do )(?:say|promise)\b|(?:i|we)(?: (?:did|have|had|also|already|even|know what i))* (?:said|promised|told|swore|mentioned)\b|(?:ive|weve|id|wed)(?: also)? (?:said|promised|told)\b|(?:i|we) (?:was|were)(?: also| all)? (?:going|supposed|meant|due|hoping|planning|fixing) to\b|(?:i|we)(?: had| did)? (?:meant|intended|mean|hoped|planned) to\b|(?:i|we) had every intention\b|(?:you|ye|yall) (?:were|was|have been|had been) (?:told|promised|waiting)\b|(?:you|ye|yall) (?:wanted|asked) to (?:see|know|hear)\b|(?:i|we) owed?\b|fixing to\b)/;
/** First words of them. */
const begins = new Set("i we ive weve id wed you ye yall fixing".split(" "));
/** Named as what was meant and came to nothing: "I was going to show you". */
export const intended =
  /^(?:i|we|fixing)(?: had| did| was| were| also| all)* (?:going|supposed|meant|due|hoping|planning|fixing|every|to|intended|hoped|planned)\b/;
/** Words in which it is said what was meant. */
const INTENDED = 9;
/** Words around the recalling ones in which the promise's own stand. */
export const NAMED_BEFORE = 15;
const NAMED_AFTER = 22;

const idle = new Set(
  (
    "the and for with that this what which whether when how from each again next time show tell told say said see film camera first have has done made " +
    "will came come they them then into onto out off all one two you your our all january february march april may june july august september october " +
    "november december spring summer autumn winter video"
  ).split(" "),
);

/** A promise's own words: what it is of and what is to be done, by their stems. */
export function ownWords(what: string): ReadonlySet<string> {
  const words = what.split(/[^\p{L}'’]+/u).map(plainWord);
  return new Set(words.filter((word) => word.length > 2 && !idle.has(word)).map(stem));
}

/** Where the old promise is named by its own words, or by what it is of: "the first one", of the plants last named. */
export function recalledAt(
  own: ReadonlySet<string>,
  here: readonly Span[],
  mentions: readonly Subject[],
  { film, subjects }: Asked,
  least = 1,
): number | undefined {
  const { words } = film.speech;
  let best: { readonly at: number; readonly shared: number } | undefined;
  for (const { from, to } of here) {
    for (const { at, near } of inWords(recallsIn(film), (one) => one.at, from, to)) {
      if (!isOfFilm(words.slice(at, at + INTENDED), own)) continue;
      let shared = 0;
      if (sharedBy(own, near) >= least) {
        const begins = Math.max(from, at - NAMED_BEFORE);
        const said = words.slice(begins, Math.min(to, at + NAMED_AFTER)).map(({ plain }) => stem(plain));
        const there = sharedBy(own, new Set(said));
        if (there >= least) shared = there;
      }
      if (shared === 0 && mentions.length > 0) {
        const last = subjects.findLast((one) => one.to <= at && one.from >= from && one.here.length > 0);
        if (last !== undefined && mentions.includes(last)) shared = BY_PLANTS;
      }
      // "I said, brother, …" names no promise where another says more of it.
      if (shared > (best?.shared ?? 0)) best = { at, shared };
    }
  }
  return best?.at;
}

/** Named by its plants alone: less than by a word of its own. */
const BY_PLANTS = 0.5;

/** "I was going to water these" is no promise of a film: what was meant is to show, or what was promised. */
function isOfFilm(said: readonly Word[], own: ReadonlySet<string>): boolean {
  const plain = said.map((word) => word.plain);
  if (!intended.test(plain.join(" "))) return true;
  const deed = plain[plain.findIndex((word) => word === "to" || word === "of") + 1] ?? "";
  return /^(?:show|film|tell|do|give|let)(?:ing)?$/.test(deed) || own.has(stem(deed));
}

export function sharedBy(own: ReadonlySet<string>, said: ReadonlySet<string>): number {
  let count = 0;
  for (const word of own) if (said.has(word)) count += 1;
  return count;
}

interface Recall {
  readonly at: number;
  /** Stems of the words around it. */
  readonly near: ReadonlySet<string>;
}

const recallsOf = new WeakMap<FilmHeard, readonly Recall[]>();

/** Where any promise is named as an old one: few places, and looked through for each promise there is. */
export function recallsIn(film: FilmHeard): readonly Recall[] {
  let known = recallsOf.get(film);
  if (known === undefined) {
    const plain = film.speech.words.map((word) => word.plain);
    known = plain.flatMap((word, at): Recall[] => {
      if (!begins.has(word) || !recalled.test(plain.slice(at, at + 5).join(" "))) return [];
      const around = plain.slice(Math.max(0, at - NAMED_BEFORE), at + NAMED_AFTER);
      return [{ at, near: new Set(around.map(stem)) }];
    });
    recallsOf.set(film, known);
  }
  return known;
}
