/**
 * What became of a promise that was due in this film: kept before the viewers' eyes, named and not kept, or put off with a new
 * promise. "In May I said I'd measure them. Yesterday I did: a metre fifteen" keeps it, "the scale's in the house, so I'll
 * weigh him next time" puts it off.
 */
import type { FollowUp, PlannedThing } from "../../model.ts";
import { keeps } from "../../tour/index.ts";
import type { FilmHeard } from "../hear-film.ts";
import { type PromiseHeard, promisesHeard } from "../promises-heard.ts";
import { spokenNumber } from "../spoken-numbers.ts";
import type { Subject } from "../spoken-subjects.ts";
import { plainWord } from "../spoken-words.ts";
import type { Stretch } from "../stops-heard.ts";
import { inWords } from "../word-ranges.ts";
import { type Asked, firstAbout, type PlannedAnswer, type Span } from "./planned-answer.ts";
import { stem } from "./telling-words.ts";

/** Words by which an old promise is named. */
const recalled =
  /^(?:(?:i|we) (?:did |do )(?:say|promise)\b|(?:i|we) (?:did |have |had |also )?(?:said|promised|told|swore)\b|(?:ive|weve) (?:said|promised|told)\b|(?:i|we) (?:was|were) (?:also )?going to\b|(?:you|ye|yall) were (?:told|promised)\b|(?:i|we) owe\b)/;
/** First words of them. */
const begins = new Set("i we ive weve you ye yall".split(" "));
/** Put off in words that no promise is heard in. */
const later =
  /\b(?:ill|well|will)\b(?: \w+){0,6} (?:next (?:time|video|film|one|week|month|year)|another (?:day|time))\b|\bnot today\b/;
/** Owned up to, however far on. */
const owned = /\b(?:i|we) (?:cant|couldnt|havent|have not|didnt|did not)\b/;
const denied = /\b(?:not|never|no|didnt|havent|hasnt|cant|couldnt|wasnt|isnt|wont|dont)\b/;

/** Words around the recalling ones in which the promise's own stand, and after them in which it is kept or put off. */
const NAMED_BEFORE = 15;
const NAMED_AFTER = 22;
const DENIED_WITHIN = 26;
const ANSWERED_WITHIN = 75;
/** Share of a promise's own words that tell of it without any that recall it. */
const SHARE = 0.6;

export function promiseAnswer(
  point: PlannedThing,
  here: readonly Stretch[],
  mentions: readonly Subject[],
  asked: Asked,
): PlannedAnswer {
  const { film } = asked;
  const promise = film.day.garden.followUps.find((one) => keeps(point.key, one));
  const what = promise?.what ?? point.text;
  const own = ownWords(what);
  const [first] = mentions;
  const least = Math.max(Math.min(2, own.size), Math.ceil(own.size * SHARE));
  const word = own.size === 0 ? undefined : firstAbout(own, here, film, least, 40);
  const recall = recalledAt(own, here, mentions, asked);
  if (recall !== undefined) {
    const { is } = outcomeOf(own, recall, here, film);
    return is === "not kept" ? { is: "shown, not said", word: recall } : { is, word: Math.min(recall, word ?? recall) };
  }
  if (/^(?:show|film)\b/.test(what) && first !== undefined && isOfPlants(promise, first))
    return { is: "said", word: first.from };
  if (word !== undefined) return { is: "said", word };
  return first === undefined ? { is: "missed" } : { is: "shown, not said", word: first.from };
}

/** A promise of one sort is not kept by another. */
function isOfPlants(promise: FollowUp | undefined, { variety }: Subject): boolean {
  return promise?.variety === undefined || promise.variety === variety;
}

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
  for (const { from, to } of here) {
    for (const { at, near } of inWords(recallsIn(film), (one) => one.at, from, to)) {
      if (sharedBy(own, near) >= least) {
        const begins = Math.max(from, at - NAMED_BEFORE);
        const said = words.slice(begins, Math.min(to, at + NAMED_AFTER)).map(({ plain }) => stem(plain));
        if (sharedBy(own, new Set(said)) >= least) return at;
      }
      if (mentions.length === 0) continue;
      const last = subjects.findLast((one) => one.to <= at && one.from >= from && one.here.length > 0);
      if (last !== undefined && mentions.includes(last)) return at;
    }
  }
  return undefined;
}

function sharedBy(own: ReadonlySet<string>, said: ReadonlySet<string>): number {
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
function recallsIn(film: FilmHeard): readonly Recall[] {
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

/** What became of it where it is named, and the new promise that puts it off. */
export interface Outcome {
  readonly is: "said" | "put off again" | "not kept";
  readonly anew?: PromiseHeard | undefined;
}

export function outcomeOf(own: ReadonlySet<string>, recall: number, here: readonly Span[], film: FilmHeard): Outcome {
  const { words } = film.speech;
  const stretch = here.find(({ from, to }) => recall >= from && recall < to);
  const end = Math.min(recall + ANSWERED_WITHIN, stretch?.to ?? words.length);
  const anew = promisesHeard(film).find(
    (promise) => promise.from > recall && promise.from < end && isOfIt(promise, own, film),
  );
  const plain = words.slice(recall, Math.min(end, anew?.from ?? end)).map((word) => word.plain);
  const isPutOff = anew !== undefined || later.test(plain.join(" "));
  if (denied.test(plain.slice(0, DENIED_WITHIN).join(" ")) || owned.test(plain.join(" ")))
    return isPutOff ? { is: "put off again", anew } : { is: "not kept" };
  const isTold = plain.some((_, at) => (spokenNumber(plain, at)?.value ?? 0) > 1);
  return isTold || !isPutOff ? { is: "said" } : { is: "put off again", anew };
}

/** Told with the old one's words, or of "it": no promise of something else. */
function isOfIt({ from, to }: PromiseHeard, own: ReadonlySet<string>, { speech: { words } }: FilmHeard): boolean {
  const said = words.slice(from, to).map((word) => word.plain);
  return (
    said.some((word) => own.has(stem(word))) ||
    /\b(?:ill|well|will|to|doing|do) (?:\w+ )?(?:it|them|those|that|him|her)\b/.test(said.join(" "))
  );
}
