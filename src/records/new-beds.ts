/** Beds that notes name where only a bed is named, and that no file describes: a heading, a lead, a place. */
import type { Place } from "../model.ts";
import { articles, bedNouns } from "./bed-words.ts";
import { isCapital, type Word, wordsOf } from "./line-words.ts";
import type { Names } from "./names.ts";
import { verbsAt } from "./verb-forms.ts";

/** A name of more words tells of something. */
const mostWords = 4;

/** What only a heading in capitals is called a bed by: "Tattie Rows", "Kale Yard". In a line "in the second row" is a place in one. */
const headingNouns = new Set("rows row yard rig ridge corner strip".split(" "));
/** "Wicking Bed One", "Raised Bed 2", "Bed A". */
const number = /^(?:\d{1,2}|[a-h]|one|two|three|four|five|six|seven|eight|nine|ten|[ivx]{1,4})$/i;

/** "Greenhouse border", "The old tub:", "Wicking Bed One", and nothing else: taken as a bed. */
export function newBedCalled(title: string, names: Names, place: Place): string | undefined {
  const words = wordsOf(title);
  const name = words.at(-1)?.text === ":" ? words.slice(0, -1) : words;
  const first = articles.has(name[0]?.lower ?? "") ? 1 : 0;
  const [begin, last] = [name[first], name.at(-1)];
  if (begin === undefined || last === undefined || !isHeadingOfBed(name.slice(first))) return undefined;
  return names.takeBed(title.slice(begin.start, last.end), place);
}

/**
 * "in the onion bed", somewhere in a line: taken as a bed, so that the line is read once more with it. The name has two words
 * at least: "in the greenhouse" may be where seed is raised, "in the bed" any.
 */
export function takeBedWithin(words: readonly Word[], text: string, names: Names, place: Place): void {
  for (const [at, word] of words.entries()) {
    if ((word.lower !== "in" && word.lower !== "into") || !articles.has(words[at + 1]?.lower ?? "")) continue;
    const begin = words[at + 2];
    const end = words.findIndex((one, index) => index > at + 2 && bedNouns.has(one.lower));
    const last = words[end];
    if (begin === undefined || last === undefined || !isName(words.slice(at + 2, end + 1))) continue;
    names.takeBed(text.slice(begin.start, last.end), place);
  }
}

function isHeadingOfBed(words: readonly Word[]): boolean {
  if (isName(words)) return true;
  const last = words.at(-1);
  if (last === undefined || !words.every((word) => isCapital(word) || word.kind === "number")) return false;
  const before = words.slice(0, -1);
  if (number.test(last.text) && words.length > 1 && words.length <= mostWords)
    return bedNouns.has(before.at(-1)?.lower ?? "") && (before.length === 1 || isName(before));
  return (
    headingNouns.has(last.lower) && before.length > 0 && isName([...before, { ...last, lower: "bed", kind: "word" }])
  );
}

/** Of a bed, and no work on it. */
const describing = new Set(["wicking", "growing", "hanging", "spring", "cutting", "standing"]);

/** Ends in what beds are called, and tells nothing that was done: not "Weeding the border", nor "beds". */
function isName(words: readonly Word[]): boolean {
  if (words.length < 2 || words.length > mostWords || !bedNouns.has(words.at(-1)?.lower ?? "")) return false;
  return (
    words.every(
      ({ kind, lower }) => kind === "word" && !articles.has(lower) && !(/ing$/.test(lower) && !describing.has(lower)),
    ) && verbsAt([...words]).length === 0
  );
}
