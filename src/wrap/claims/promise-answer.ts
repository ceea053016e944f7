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
import { type Asked, firstAbout, type PlannedAnswer } from "./planned-answer.ts";
import { stem } from "./telling-words.ts";

/** Words by which an old promise is named. */
const recalled =
  /^(?:(?:i|we) (?:did |do )(?:say|promise)\b|(?:i|we) (?:did |have |had |also )?(?:said|promised|told|swore)\b|(?:ive|weve) (?:said|promised|told)\b|(?:i|we) (?:was|were) (?:also )?going to\b|(?:you|ye|yall) were (?:told|promised)\b|(?:i|we) owe\b)/;
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
    const outcome = outcomeOf(own, recall, here, film);
    return outcome === "not kept"
      ? { is: "shown, not said", word: recall }
      : { is: outcome, word: Math.min(recall, word ?? recall) };
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

function ownWords(what: string): ReadonlySet<string> {
  const words = what.split(/[^\p{L}'’]+/u).map(plainWord);
  return new Set(words.filter((word) => word.length > 2 && !idle.has(word)).map(stem));
}

/** Where the old promise is named by its own words, or by what it is of: "the first one", of the plants last named. */
function recalledAt(
  own: ReadonlySet<string>,
  here: readonly Stretch[],
  mentions: readonly Subject[],
  { film, subjects }: Asked,
): number | undefined {
  const plain = film.speech.words.map((word) => word.plain);
  for (const { from, to } of here) {
    for (let at = from; at < to; at += 1) {
      if (!recalled.test(plain.slice(at, at + 5).join(" "))) continue;
      const near = plain.slice(Math.max(from, at - NAMED_BEFORE), Math.min(to, at + NAMED_AFTER)).map(stem);
      const last = subjects.findLast((one) => one.to <= at && one.from >= from && one.here.length > 0);
      if (near.some((word) => own.has(word)) || (last !== undefined && mentions.includes(last))) return at;
    }
  }
  return undefined;
}

function outcomeOf(
  own: ReadonlySet<string>,
  recall: number,
  here: readonly Stretch[],
  film: FilmHeard,
): "said" | "put off again" | "not kept" {
  const { words } = film.speech;
  const stretch = here.find(({ from, to }) => recall >= from && recall < to);
  const end = Math.min(recall + ANSWERED_WITHIN, stretch?.to ?? words.length);
  const anew = promisesHeard(film, { day: film.day.day, southern: film.day.garden.settings.southern }).find(
    (promise) => promise.from > recall && promise.from < end && isOfIt(promise, own, film),
  );
  const plain = words.slice(recall, Math.min(end, anew?.from ?? end)).map((word) => word.plain);
  const isPutOff = anew !== undefined || later.test(plain.join(" "));
  if (denied.test(plain.slice(0, DENIED_WITHIN).join(" ")) || owned.test(plain.join(" ")))
    return isPutOff ? "put off again" : "not kept";
  const isTold = plain.some((_, at) => (spokenNumber(plain, at)?.value ?? 0) > 1);
  return isTold || !isPutOff ? "said" : "put off again";
}

/** Told with the old one's words, or of "it": no promise of something else. */
function isOfIt({ from, to }: PromiseHeard, own: ReadonlySet<string>, { speech: { words } }: FilmHeard): boolean {
  const said = words.slice(from, to).map((word) => word.plain);
  return (
    said.some((word) => own.has(stem(word))) ||
    /\b(?:ill|well|will|to|doing|do) (?:\w+ )?(?:it|them|those|that|him|her)\b/.test(said.join(" "))
  );
}
