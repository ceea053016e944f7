/** The one way in to the word tables: what begins at a word of a line. Tables are made ready when first asked for. */
import { type Word, wordsOf } from "../line-words.ts";
import { type FoundPhrase, Phrases } from "./phrases.ts";
import { type Container, containerTable } from "./tables/containers.ts";
import { type Cultivar, cultivarTable } from "./tables/cultivars.ts";
import { type GearWord, gearTable } from "./tables/gear.ts";
import { type Material, materialTable } from "./tables/materials.ts";
import { ordinaryWords } from "./tables/ordinary-words.ts";
import { givenNames, personWords } from "./tables/people.ts";
import { type Pest, pestTable } from "./tables/pests.ts";
import { type Slang, slangTable } from "./tables/slang.ts";
import { symptomTable } from "./tables/symptoms.ts";

/** A word of everyday English: never a misspelt crop, and no plant's name by its writing alone. */
export function isOrdinary(lower: string): boolean {
  return ordinaryWords().has(lower);
}

function ready<Row>(make: () => ReadonlyMap<string, Row>): () => Phrases<Row> {
  let phrases: Phrases<Row> | undefined;
  return () => {
    phrases ??= new Phrases(make());
    return phrases;
  };
}

const pests = ready(pestTable);
const symptoms = ready(symptomTable);
const gear = ready(gearTable);
const materials = ready(materialTable);
const containers = ready(containerTable);
const cultivars = ready(cultivarTable);
const slang = ready(slangTable);

/** Whether a trouble, a cultivar or a short form of a crop begins with a word of this key. */
export function beginsName(key: string): boolean {
  return pests().begins(key) || cultivars().begins(key) || slang().begins(key);
}

export function causeAt(words: readonly Word[], at: number): FoundPhrase<Pest> | undefined {
  return pests().at(words, at);
}

/** A sign of trouble without its cause: "yellow leaves". */
export function symptomAt(words: readonly Word[], at: number): FoundPhrase<string> | undefined {
  return symptoms().at(words, at);
}

export function gearAt(words: readonly Word[], at: number): FoundPhrase<GearWord> | undefined {
  return gear().at(words, at);
}

export function materialAt(words: readonly Word[], at: number): FoundPhrase<Material> | undefined {
  return materials().at(words, at);
}

const ground = new Set(
  "row rows direct directly drill drills outside outdoors ft feet broadcast ridge ridges furrow hill hills patch plot ground strip block trench bed border".split(
    " ",
  ),
);
const raised = new Set(
  "indoors inside sill windowsill basement greenhouse undercover mat 72s 128s 50s heated bench shelf cups jugs sixpacks".split(
    " ",
  ),
);

/** "in trays", "on the windowsill": to be planted out later; "two rows", "direct": in the ground. */
export function standAt(
  words: readonly Word[],
  at: number,
): { readonly end: number; readonly nursery: boolean } | undefined {
  const lower = words[at]?.lower ?? "";
  if (raised.has(lower)) return { end: at + 1, nursery: true };
  if (ground.has(lower)) return { end: at + 1, nursery: false };
  const found: FoundPhrase<Container> | undefined = containers().at(words, at);
  return found === undefined ? undefined : { end: found.end, nursery: found.row.nursery };
}

/** Cultivars of a name; keys make one of "July" and "Julie", so the words themselves must be the name's, but for a plural. */
export function cultivarAt(
  words: readonly Word[],
  at: number,
): { readonly end: number; readonly options: readonly Cultivar[] } | undefined {
  const meant = (row: readonly Cultivar[], end: number) => row.filter(({ title }) => sameWords(words, at, end, title));
  const found = cultivars().at(words, at, (row, end) => meant(row, end).length > 0);
  return found === undefined ? undefined : { end: found.end, options: meant(found.row, found.end) };
}

function sameWords(words: readonly Word[], from: number, end: number, title: string): boolean {
  const said = words.slice(from, end).filter(({ kind }) => kind !== "mark");
  const named = wordsOf(title).filter(({ kind }) => kind !== "mark");
  return (
    named.length === said.length &&
    named.every(({ lower }, index) => {
      const word = said[index]?.lower ?? "";
      return (
        word === lower ||
        word === `${lower}s` ||
        word === `${lower}es` ||
        lower === `${word}s` ||
        word.replace(/ies$/, "y") === lower
      );
    })
  );
}

export function slangAt(words: readonly Word[], at: number): FoundPhrase<Slang> | undefined {
  return slang().at(words, at);
}

export function isPerson(lower: string): boolean {
  return givenNames().has(lower) || personWords().has(lower);
}
