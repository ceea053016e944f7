/**
 * Whom a text names. Nobody asked a child, a volunteer or an aunt whether viewers may know of them, so doubt means that somebody
 * is named: a given name, a title or kin before a name, and a word with a capital that no record, table or calendar knows where
 * people are spoken of.
 */
import { monthNumber, weekdayNumber } from "../calendar.ts";
import { isOfFeast } from "./feasts.ts";
import { givenNames, personWords } from "./reading/tables/people.ts";
import { beginsName, isOrdinary } from "./reading/vocabulary.ts";

/** Words before a name that make it somebody's. */
const TITLES = new Set(
  "mr mrs ms miss dr mx sir auntie aunty aunt uncle nan nana nanna gran granny grandma grandad cousin".split(" "),
);
/** What stands between a doer and somebody else. */
const TOWARDS = new Set(
  "from by to with for and gave give asked ask told thank thanks helped met see swap swapped".split(" "),
);
/** What people do, and plants do not. */
const DEEDS = new Set(
  `gave gives brought brings says said asked asks told tells helped helps planted plants sowed raised raises dug weeded watered picked
  mowed built fixed holds held filmed films ate rang wants wanted thinks thought reckons reckoned promised popped visited lent`.split(
    /\s+/,
  ),
);

/** What stands before somebody's name and before many another: "old Col", "St Brigid's". */
const BEFORE_NAMES = new Set(["old", "st"]);

/** What everybody calls somebody, in small letters: no name by itself, whoever is meant. */
export function isCalling(word: string): boolean {
  return TITLES.has(word) || BEFORE_NAMES.has(word) || personWords().has(word);
}

/** Given names that begin a sentence as other words. */
const ALSO_WORDS = new Set(
  "will mark grant rich dawn june may frank joy grace art bill pat rob sue ray don max robin jay skip jack".split(" "),
);

interface Spoken {
  readonly word: string;
  /** Lower case, without the s of what belongs to somebody. */
  readonly key: string;
  readonly isCapital: boolean;
  readonly isOwner: boolean;
  /** Nothing of its sentence stands before it. */
  readonly isFirst: boolean;
}

/** `isKnown` says of a word in lower case whether records name something else by it. In the order of the text, each once. */
export function peopleNamed(text: string, isKnown: (word: string) => boolean): readonly string[] {
  if (!/\p{Lu}/u.test(text)) return [];
  const words = spokenIn(text);
  const people = words.filter((spoken, at) => {
    const { key, isCapital, isOwner, isFirst } = spoken;
    if (!isCapital || key.length < 2 || /^i['’]/.test(key)) return false;
    const before = words[at - 1];
    const next = words[at + 1];
    // "Mr. Doolan" is one sentence.
    if (before?.isCapital === true && TITLES.has(before.key)) return !(isKnown(key) && isKnown(before.key));
    if (isKnown(key) || beginsName(key)) return false;
    const isBeside = before !== undefined && !isFirst;
    if (isBeside && (TITLES.has(before.key) || personWords().has(before.key))) return true;
    const isDay = monthNumber(key) !== undefined || weekdayNumber(key) !== undefined || isOfFeast(key);
    if (isDay || personWords().has(key) || TITLES.has(key)) return false;
    if (givenNames().has(key) && (isBeside || !ALSO_WORDS.has(key))) return true;
    if (isOrdinary(key)) return false;
    if (isOwner && next !== undefined) return true;
    if (isBeside && TOWARDS.has(before.key)) return true;
    // "Galahs ate the plums": many of them are animals.
    return next !== undefined && !key.endsWith("s") && DEEDS.has(next.word);
  });
  return [...new Set(people.map(({ word }) => word.replace(/['’]s$/u, "")))];
}

function spokenIn(text: string): readonly Spoken[] {
  let end = 0;
  return Array.from(text.matchAll(/\p{L}[\p{L}\p{M}'’-]*/gu), (found) => {
    const [word] = found;
    const between = text.slice(end, found.index);
    const isFirst = end === 0 || /[.!?:;\n“"(]/u.test(between);
    end = found.index + word.length;
    const isOwner = word.endsWith("'s") || word.endsWith("’s");
    return {
      word,
      key: (isOwner ? word.slice(0, -2) : word).toLowerCase(),
      // Not "EC 1.85". Most words begin with a small letter, and every line of a garden is looked through.
      isCapital: !/^[a-z]/.test(word) && /^\p{Lu}['’]?\p{L}*\p{Ll}/u.test(word),
      isOwner,
      isFirst,
    };
  });
}
