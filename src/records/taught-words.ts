/**
 * What an answer teaches: the word of a line that no table knows and that stands where the answer has a plant or a bed, and
 * the verb whose kind was open until the answer chose one. Only offered: the person decides what is kept.
 */
import type { Event, OfferedReading } from "../model.ts";
import { type Word, wordsOf } from "./line-words.ts";
import type { Names } from "./names.ts";
import { pickUnitCalled } from "./quantities.ts";
import { verbMentions } from "./reading/find-mentions.ts";
import { beginsVerb } from "./verb-forms.ts";
import { verbTable } from "./verb-table.ts";

/** A line of words.md. */
export interface Taught {
  readonly word: string;
  readonly means: string;
}

export interface AnsweredLine {
  /** The person's own words. */
  readonly text: string;
  readonly chosen: readonly Event[];
  /** All readings that were offered, the chosen one among them. */
  readonly offered: readonly OfferedReading[];
  /** Ids of the beds that its note speaks of anyway. */
  readonly beds: readonly string[];
}

/** `isOrdinary` says of a word in lower case that it is everyday English, and so no garden's own word. */
export function taughtBy(line: AnsweredLine, names: Names, isOrdinary: (lower: string) => boolean): readonly Taught[] {
  const words = wordsOf(line.text);
  const named = namesIn(words, names, new Set(line.chosen.map(({ variety }) => variety)));
  const isFree = (at: number) => named.free[at] === true && words[at]?.kind === "word";
  const bed = taughtBed(line, words, isFree, named, names);
  const unknown = words.filter(
    (word, at) =>
      isFree(at) && !bed?.at.has(at) && !isOrdinary(word.lower) && !beginsVerb(word.lower) && !isTradeWord(word.lower),
  );
  const plant = taughtPlant(line, unknown, named, names);
  const verb = taughtVerb(line, words, plant === undefined ? unknown : [], names);
  return [plant, bed?.taught, verb].filter((taught) => taught !== undefined);
}

interface NamesIn {
  /** By word: whether no name covers it. */
  readonly free: readonly boolean[];
  readonly varieties: ReadonlySet<string>;
  readonly crops: ReadonlySet<string>;
  readonly hasBed: boolean;
}

/** A name that only notes use may be the unknown word itself, taken for a variety elsewhere, unless the answer has it. */
function namesIn(words: readonly Word[], names: Names, chosen: ReadonlySet<string | undefined>): NamesIn {
  const free = words.map(() => true);
  const varieties = new Set<string>();
  const crops = new Set<string>();
  let hasBed = false;
  for (let at = 0; at < words.length; at++) {
    const found = names.plantAt(words, at);
    const isGuess = found?.variety !== undefined && !names.isDescribed("variety", found.variety);
    const plant = isGuess && !chosen.has(found.variety) ? undefined : found;
    const bed = names.at("bed", words, at) ?? names.at("site", words, at);
    const end = Math.max(plant?.end ?? at, bed?.end ?? at, names.at("gear", words, at)?.end ?? at);
    if (end === at) continue;
    if (bed?.end === end) hasBed = true;
    if (plant?.variety !== undefined) varieties.add(plant.variety);
    const crop = plant?.crop ?? (plant?.variety === undefined ? undefined : names.cropOf(plant.variety));
    if (crop !== undefined) crops.add(crop);
    free.fill(false, at, end);
    at = end - 1;
  }
  return { free, varieties, crops, hasBed };
}

const tradeWords = new Set(
  (
    "g kg lb lbs oz l ml cm mm m ft in inch inches metre metres meter meters row rows tray trays pot pots tub tubs packet packets seed seeds seedling " +
    "seedlings plant plants plug plugs today yesterday tonight morning afternoon evening monday tuesday wednesday thursday friday saturday sunday " +
    "january february march april may june july august september october november december spring summer autumn winter"
  ).split(" "),
);

function isTradeWord(lower: string): boolean {
  return tradeWords.has(lower) || pickUnitCalled(lower) !== undefined;
}

function taughtPlant(
  { chosen }: AnsweredLine,
  unknown: readonly Word[],
  named: NamesIn,
  names: Names,
): Taught | undefined {
  for (const { variety, crop } of chosen) {
    if (variety === undefined ? crop === undefined || named.crops.has(crop) : named.varieties.has(variety)) continue;
    const means = variety === undefined ? names.crop(crop)?.plural : names.title("variety", variety);
    if (means === undefined) continue;
    const only = unknown.length === 1 ? unknown[0] : undefined;
    const word = unknown.find(({ lower }) => resembles(lower, means)) ?? only;
    if (word !== undefined) return { word: word.text, means };
  }
  return undefined;
}

/** "FB" for French Breakfast by its first letters, "rasps" for raspberries by how it begins. */
function resembles(lower: string, title: string): boolean {
  const parts = wordsOf(title).filter(({ kind }) => kind === "word");
  const initials = parts.map((part) => part.lower[0]).join("");
  if (lower.length >= 2 && lower === initials) return true;
  return lower.length >= 3 && parts.some((part) => part.lower.startsWith(lower.slice(0, 3)));
}

const beforePlaces = new Set(["in", "into", "from", "at", "to", "on", "onto"]);
const articles = new Set(["the", "my", "our", "a", "an"]);

/** "into the top tunnel", where the answer has a bed and the line names none. */
function taughtBed(
  { chosen, beds }: AnsweredLine,
  words: readonly Word[],
  isFree: (at: number) => boolean,
  named: NamesIn,
  names: Names,
): { readonly taught: Taught; readonly at: ReadonlySet<number> } | undefined {
  const bed = chosen.map((event) => event.toBed ?? event.bed).find((id) => id !== undefined && !beds.includes(id));
  if (bed === undefined || named.hasBed) return undefined;
  for (let before = 0; before < words.length; before++) {
    if (!beforePlaces.has(words[before]?.lower ?? "")) continue;
    const from = articles.has(words[before + 1]?.lower ?? "") ? before + 2 : before + 1;
    let end = from;
    while (isFree(end) && !isTradeWord(words[end]?.lower ?? "") && !beforePlaces.has(words[end]?.lower ?? "")) end += 1;
    const [first, last] = [words[from], words[end - 1]];
    if (first === undefined || last === undefined || end === from || end > from + 3) continue;
    const word = wordsBetween(words, from, end);
    return {
      taught: { word, means: names.title("bed", bed) },
      at: new Set(Array.from({ length: end - from }, (_, index) => from + index)),
    };
  }
  return undefined;
}

function wordsBetween(words: readonly Word[], from: number, end: number): string {
  return words
    .slice(from, end)
    .map(({ text }) => text)
    .join(" ");
}

/**
 * "lifted onions: picked", where other readings took the same verb for another kind; "scrumped apples: picked", where the
 * line begins with a word that nobody knows.
 */
function taughtVerb(
  { chosen, offered }: AnsweredLine,
  words: readonly Word[],
  unknown: readonly Word[],
  names: Names,
): Taught | undefined {
  const [first] = chosen;
  if (first === undefined) return undefined;
  const means = verbTable.find(({ kind }) => kind === first.kind)?.forms[0] ?? first.kind;
  const others = offered.flatMap(({ events }) => events).filter(({ kind }) => kind !== first.kind);
  const verb =
    (others.some((other) => other.verb === first.verb) ? first.verb : undefined) ??
    openVerb(first, others, words) ??
    (offered.some(({ events }) => events.includes(first)) ? newVerb(words, unknown) : undefined);
  const said = ` ${words.map(({ lower }) => lower).join(" ")} `;
  if (verb === undefined || verb === means || !said.includes(` ${verb} `)) return undefined;
  const crop = names.crop(first.crop ?? (first.variety === undefined ? undefined : names.cropOf(first.variety)));
  return { word: crop === undefined ? verb : `${verb} ${crop.plural}`, means };
}

/** A verb of the tables that may mean what was chosen, and what was not. */
function openVerb(first: Event, others: readonly Event[], words: readonly Word[]): string | undefined {
  const open = verbMentions(words).find(
    ({ weak, kinds }) => !weak && kinds.includes(first.kind) && others.some(({ kind }) => kinds.includes(kind)),
  );
  return open && lowerOf(words.slice(open.from, open.end));
}

/** The unknown word that a line begins with, and what goes with it: "hoiked out". */
function newVerb(words: readonly Word[], unknown: readonly Word[]): string | undefined {
  const from = words.findIndex(({ lower }) => !/^(?:i|we|just|finally)$/.test(lower));
  const word = unknown.find((one) => one === words[from]);
  if (word === undefined || verbMentions(words).some(({ weak }) => !weak)) return undefined;
  const end = /^(?:out|up|off|in|down|over)$/.test(words[from + 1]?.lower ?? "") ? from + 2 : from + 1;
  return lowerOf(words.slice(from, end));
}

function lowerOf(words: readonly Word[]): string {
  return words.map(({ lower }) => lower).join(" ");
}
