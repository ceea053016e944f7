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
import { plainWord, type Word } from "../spoken-words.ts";
import type { Stretch } from "../stops-heard.ts";
import { inWords } from "../word-ranges.ts";
import { type Asked, firstAbout, type PlannedAnswer, type Span } from "./planned-answer.ts";
import { denies, putsOffAnything, putsOffFilming, showsIt, showsThem } from "./putting-off.ts";
import { stem } from "./telling-words.ts";

/** Words by which an old promise is named. */
const recalled =
  /^(?:(?:i|we) (?:did |do )(?:say|promise)\b|(?:i|we)(?: (?:did|have|had|also|already|even|know what i))* (?:said|promised|told|swore|mentioned)\b|(?:ive|weve|id|wed)(?: also)? (?:said|promised|told)\b|(?:i|we) (?:was|were)(?: also| all)? (?:going|supposed|meant|due|hoping|planning|fixing) to\b|(?:i|we)(?: had| did)? (?:meant|intended|mean|hoped|planned) to\b|(?:i|we) had every intention\b|(?:you|ye|yall) (?:were|was|have been|had been) (?:told|promised|waiting)\b|(?:you|ye|yall) (?:wanted|asked) to (?:see|know|hear)\b|(?:i|we) owed?\b|fixing to\b)/;
/** First words of them. */
const begins = new Set("i we ive weve id wed you ye yall fixing".split(" "));
/** Owned up to, however far on. */
const owned = /\b(?:i|we|ive|weve) (?:cant|couldnt|havent|have not|didnt|did not|not)\b/;
const isShown = /^(?:show|film)\b/;
/** Named as what was meant and came to nothing: "I was going to show you". */
const intended =
  /^(?:i|we|fixing)(?: had| did| was| were| also| all)* (?:going|supposed|meant|due|hoping|planning|fixing|every|to|intended|hoped|planned)\b/;
/** Words in which it is said what was meant. */
const INTENDED = 9;
/** Promises to answer something: the answer may be "no". */
const asksWhat = /^(?:tell |say )?(?:whether|which|what|how|if|why)\b/;
/** Promises that a number keeps: of counting, weighing, or of what came of a thing. */
const wantsNumber =
  /\b(?:weigh|count|measur|total|tally|whether|which|score|add up|how (?:many|much|high|tall|long|far|deep|heavy|big))/;

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
      const meant = words.slice(at, at + INTENDED).map(({ plain }) => plain);
      // "I was going to water these" is no promise of a film.
      if (intended.test(meant.join(" ")) && !meant.some((word) => /^(?:show|film|tell|do|give)$/.test(word))) continue;
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
  const putOff = Math.min(
    first(putsOffFilming, behind),
    first(putsOffAnything, behind),
    anew === undefined ? never : plain.slice(0, anew.from - recall).join(" ").length,
  );
  const isPutOff = putOff < never;
  const done = doneAt(plain, behind, own, wantsNumber.test(what));
  const kept = Math.min(
    first(isShown.test(what) ? showsThem : showsIt, 0),
    done === undefined ? never : plain.slice(0, done).join(" ").length,
  );
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
  for (let at = recall + 2; at < Math.min(end, recall + TOLD_AGAIN); at += 1) {
    const before = words[at - 1]?.mark ?? "";
    if (/[.?!]/.test(before)) return at;
    if (at < recall + TOLD_LEAST) continue;
    if (before === "," || /^(?:but|so|well|only|now|because)$/.test(words[at]?.plain ?? "")) return at;
  }
  return Math.min(end, recall + TOLD_AGAIN);
}

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
