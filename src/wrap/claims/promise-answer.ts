/**
 * What became of a promise that was due in this film: kept before the viewers' eyes, named and not kept, or put off with a new
 * promise. "In May I said I'd measure them. Yesterday I did: a metre fifteen" keeps it, "the scale's in the house, so I'll
 * weigh him next time" puts it off.
 */
import type { FollowUp, PlannedThing } from "../../model.ts";
import { openFollowUps } from "../../timeline/index.ts";
import { keeps } from "../../tour/index.ts";
import type { FilmHeard } from "../hear-film.ts";
import { type PromiseHeard, promisesHeard } from "../promises-heard.ts";
import { spokenNumber } from "../spoken-numbers.ts";
import type { Subject } from "../spoken-subjects.ts";
import type { Word } from "../spoken-words.ts";
import type { Stretch } from "../stops-heard.ts";
import { inWords } from "../word-ranges.ts";
import { type Asked, firstAbout, type PlannedAnswer, type Span } from "./planned-answer.ts";
import { intended, NAMED_BEFORE, ownWords, recalledAt, recallsIn, sharedBy } from "./promise-recalled.ts";
import { denies, putsOffAnything, putsOffFilming, putsOffPerhaps, showsIt, showsThem } from "./putting-off.ts";
import { stem } from "./telling-words.ts";

/** Owned up to, however far on. */
const owned = /\b(?:i|we|ive|weve) (?:cant|couldnt|havent|have not|didnt|did not|not)\b/;
const isShown = /^(?:show|film)\b/;
/** Promises to answer something: the answer may be "no". */
const asksWhat = /^(?:tell |say )?(?:whether|which|what|how|if|why)\b/;
/** Promises that a number keeps: of counting, weighing, or of what came of a thing. */
const wantsNumber =
  /\b(?:weigh|count|measur|total|tally|whether|which|score|add up|how (?:many|much|high|tall|long|far|deep|heavy|big))/;

/** Words after those that name it in which a promise is kept or put off. */
const DENIED_WITHIN = 26;
const PERHAPS_WITHIN = 30;
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
    const { is } = outcomeOf(what, recall, here, film);
    return is === "not kept" ? { is: "shown, not said", word: recall } : { is, word: Math.min(recall, word ?? recall) };
  }
  const only = onlyOwedHere(what, promise, here, film);
  if (only !== undefined) return only;
  const later = putOffUnnamed(own, here, mentions, film);
  if (later !== undefined) return { is: "put off again", word: later };
  if (isShown.test(what) && first !== undefined && isOfPlants(promise, first)) return { is: "said", word: first.from };
  if (word !== undefined && (!wantsNumber.test(what) || isNumbered(own, word, here, film))) return { is: "said", word };
  return first === undefined ? { is: "missed" } : { is: "shown, not said", word: first.from };
}

/** Where nothing else is owed at a bed, "I said I'd weigh it" is said of what is: taken so where it is answered, by a number or later. */
function onlyOwedHere(
  what: string,
  promise: FollowUp | undefined,
  here: readonly Stretch[],
  film: FilmHeard,
): PlannedAnswer | undefined {
  const { garden, day } = film.day;
  const owed = openFollowUps(garden, day).filter(({ bed, promisedOn }) => bed === here[0]?.bed && promisedOn < day);
  if (promise === undefined || owed.length !== 1) return undefined;
  for (const { from, to } of here) {
    for (const { at } of inWords(recallsIn(film), (one) => one.at, from, to)) {
      const { is, isNumber } = outcomeOf(what, at, here, film);
      if (is === "put off again" || (is === "said" && isNumber)) return { is, word: at };
    }
  }
  return undefined;
}

/** A number that was promised is not given by naming what it is of. */
function isNumbered(own: ReadonlySet<string>, word: number, here: readonly Span[], film: FilmHeard): boolean {
  const stretch = here.find(({ from, to }) => word >= from && word < to);
  const plain = film.speech.words
    .slice(Math.max(stretch?.from ?? 0, word - NAMED_BEFORE), Math.min(stretch?.to ?? word, word + NUMBERED_WITHIN))
    .map((one) => one.plain);
  return doneAt(plain, 0, own, true) !== undefined;
}

/** Words after a promise's own in which its number is given. */
const NUMBERED_WITHIN = 40;

/** A promise of one sort is not kept by another. */
function isOfPlants(promise: FollowUp | undefined, { variety }: Subject): boolean {
  return promise?.variety === undefined || promise.variety === variety;
}

/** What became of it where it is named, and the new promise that puts it off. */
export interface Outcome {
  readonly is: "said" | "put off again" | "not kept";
  readonly anew?: PromiseHeard | undefined;
  /** A number was wanted, and given. */
  readonly isNumber?: boolean | undefined;
}

const never = Number.POSITIVE_INFINITY;

/** What comes first decides: that it is done, that it is not, or that it will be. */
export function outcomeOf(what: string, recall: number, here: readonly Span[], film: FilmHeard): Outcome {
  const { words } = film.speech;
  const own = ownWords(what);
  const stretch = here.find(({ from, to }) => recall >= from && recall < to);
  const end = Math.min(recall + ANSWERED_WITHIN, stretch?.to ?? words.length);
  const told = toldAgain(words, recall, end);
  const anew = promisesHeard(film).find(
    (one) => one.from > recall && one.from < end && one.to >= told + NEW && isOfIt(one, own, film),
  );
  const plain = words.slice(recall, end).map((word) => word.plain);
  const first = (pattern: RegExp, from: number) => {
    const lead = plain.slice(0, from).join(" ").length;
    const at = plain.slice(from).join(" ").search(pattern);
    return at < 0 ? never : lead + at;
  };
  const behind = told - recall;
  const done = doneAt(plain, behind, own, wantsNumber.test(what));
  const kept = Math.min(
    first(isShown.test(what) ? showsThem : showsIt, 0),
    done === undefined ? never : plain.slice(0, done).join(" ").length,
  );
  const perhaps = kept < never ? never : first(putsOffPerhaps, behind);
  const putOff = Math.min(
    perhaps <= plain.slice(0, behind + PERHAPS_WITHIN).join(" ").length ? perhaps : never,
    first(putsOffFilming, behind),
    first(putsOffAnything, behind),
    anew === undefined ? never : plain.slice(0, anew.from - recall).join(" ").length,
  );
  const isPutOff = putOff < never;
  const near = plain.slice(0, DENIED_WITHIN).join(" ").length;
  const denied = asksWhat.test(what) ? never : first(denies, 0);
  const not = Math.min(
    denied <= near ? denied : never,
    first(owned, 0),
    intended.test(plain.slice(0, 5).join(" ")) ? plain.slice(0, behind).join(" ").length : never,
  );
  if (not < kept) return isPutOff ? { is: "put off again", anew } : { is: "not kept" };
  return isPutOff && putOff < kept
    ? { is: "put off again", anew }
    : { is: "said", isNumber: wantsNumber.test(what) && done !== undefined };
}

/** Words that a new promise has beyond the old one told again. */
const NEW = 4;
/** Words in which an old promise is told again, and the fewest of them before a new clause. */
const TOLD_AGAIN = 12;
const TOLD_LEAST = 4;

/** After the last word of the old promise's own content: "I said I'd weigh it next time, | but …". */
function toldAgain(words: readonly Word[], recall: number, end: number): number {
  let isCommitted = false;
  for (let at = recall + 2; at < Math.min(end, recall + TOLD_AGAIN); at += 1) {
    const [before, word] = [words[at - 1]?.mark ?? "", words[at]?.plain ?? ""];
    if (/[.?!]/.test(before)) return at;
    // "I told you, the leeks, you'll see them": the comma comes before what was promised.
    if (at >= recall + TOLD_LEAST && ((before === "," && isCommitted) || clause.test(word))) return at;
    isCommitted ||= committing.test(word);
  }
  return Math.min(end, recall + TOLD_AGAIN);
}

const clause = /^(?:but|so|well|only|now|because)$/;
const committing = /^(?:id|wed|youd|would|ill|youll|will|to|going)$/;

/** Where what was promised is told as done: "so I weighed it", and of a number wanted, the number. */
function doneAt(
  plain: readonly string[],
  from: number,
  own: ReadonlySet<string>,
  isNumber: boolean,
): number | undefined {
  const at = plain.findIndex((word, index) => {
    if (index < from) return false;
    if (isNumber && (spokenNumber(plain, index)?.value ?? 0) > 1) return true;
    return (
      /ed$/.test(word) && own.has(stem(word)) && !denies.test(plain.slice(Math.max(0, index - 4), index).join(" "))
    );
  });
  return at < 0 ? undefined : at;
}

/** Words of a clause that names plants, and puts them off. */
const CLAUSE = 14;

/** Put off without a word of the old promise: "the leeks, well, that's a story for another day". */
function putOffUnnamed(
  own: ReadonlySet<string>,
  here: readonly Span[],
  mentions: readonly Subject[],
  { speech: { words } }: FilmHeard,
): number | undefined {
  if (own.size === 0) return undefined;
  for (const { from, to } of here) {
    const plain = words.slice(from, to).map((word) => word.plain);
    for (const { index } of plain.join(" ").matchAll(everyPutOff)) {
      const at = from + plain.join(" ").slice(0, index).split(" ").length - 1;
      const clause = clauseAround(words, at, from, to);
      const said = new Set(words.slice(clause.from, clause.to).map((word) => stem(word.plain)));
      const isNamed = mentions.some((one) => one.from >= clause.from && one.from < clause.to);
      if (sharedBy(own, said) >= (isNamed ? 1 : Math.min(2, own.size))) return at;
    }
  }
  return undefined;
}

const everyPutOff = new RegExp(putsOffFilming, "g");

function clauseAround(words: readonly Word[], at: number, least: number, most: number): Span {
  const isEnd = (word: number) => /[.?!]/.test(words[word]?.mark ?? "");
  let from = at;
  while (from > Math.max(least, at - CLAUSE) && !isEnd(from - 1)) from -= 1;
  let to = at + 1;
  while (to < Math.min(most, at + CLAUSE) && !isEnd(to - 1)) to += 1;
  return { from, to };
}

/** Told with the old one's words, or of "it": no promise of something else. */
function isOfIt({ from, to }: PromiseHeard, own: ReadonlySet<string>, { speech: { words } }: FilmHeard): boolean {
  const said = words.slice(from, to).map((word) => word.plain);
  return (
    said.some((word) => own.has(stem(word))) ||
    /\b(?:ill|well|will|to|doing|do) (?:\w+ )?(?:it|them|those|that|him|her)\b/.test(said.join(" "))
  );
}
