/** Names said aloud that the records keep back: private beds, plants and things, and private persons who gave something. */
import { isCalling } from "../records/index.ts";
import { commonWords } from "./common-words.ts";
import type { FilmHeard } from "./hear-film.ts";
import { moment } from "./moments.ts";
import { APPLY_FROM } from "./names-heard.ts";
import { plainWord } from "./spoken-words.ts";
import type { PrivateAloud } from "./wrap.ts";

export function privateAloud({
  day: { garden },
  speech: { words },
  names,
  stretches,
}: FilmHeard): readonly PrivateAloud[] {
  const found: PrivateAloud[] = [];
  const add = (word: number, name: string, why: PrivateAloud["why"]) =>
    found.push({ ...moment(words[word]?.at ?? 0), name, why });
  const kinds = { variety: garden.varieties, gear: garden.gear, bed: garden.beds } as const;
  for (const { name, from, confidence } of names) {
    if (name.kind === "word" || confidence < APPLY_FROM) continue;
    if (kinds[name.kind].get(name.record)?.private === true) add(from, name.name, "a private record");
  }
  for (const { bed, from } of stretches) {
    const record = bed === undefined ? undefined : garden.beds.get(bed);
    if (record?.private === true) add(from, record.title, "a private bed");
  }
  const persons = personsOf(garden);
  // "Wilma's Red" is a lettuce.
  const inNames = new Set<number>();
  for (const { from, to, confidence } of names) {
    for (let word = from; confidence >= APPLY_FROM && word < to; word += 1) inNames.add(word);
  }
  words.forEach(({ plain, text }, index) => {
    if (inNames.has(index)) return;
    const person = persons.get(plain.replace(/s$/, "")) ?? persons.get(plain);
    if (person?.isName === true && text !== "")
      add(index, person.word, person.isSure ? "a private person" : "perhaps a private person");
  });
  // One place is named once, whichever way it was found.
  const last = new Map<string, number>();
  return found
    .sort((a, b) => a.at - b.at)
    .filter(({ name, at }) => {
      const before = last.get(name);
      last.set(name, at);
      return before === undefined || at - before >= 2;
    });
}

/** Private persons who gave or lent something, by the names that stand in the records. */
export function privatePersons(garden: FilmHeard["day"]["garden"]): readonly string[] {
  return [...personsOf(garden).values()].map(({ word }) => word);
}

interface Person {
  readonly word: string;
  /** No place she lives at, and not what everybody calls an aunt. */
  readonly isName: boolean;
  /** Nobody has said yet of an undecided gift whether a person or a seller gave it. */
  readonly isSure: boolean;
}

/** "Auntie Pearl in St Elizabeth": Pearl is a name, what stands behind "in" is where. */
const where = /\b(?:in|at|from|of|near|by|down|up|over|across)\b.*$/;

/** The names in "Wilma two plots up": words with a capital that everyday speech does not have. */
function personsOf(garden: FilmHeard["day"]["garden"]): ReadonlyMap<string, Person> {
  const givers = [
    ...[...garden.varieties.values()].map(({ source, thankByName }) => ({
      ...source,
      from: source?.name,
      thankByName,
    })),
    ...garden.gear.values(),
  ].filter(
    ({ obtained, giver, thankByName }) =>
      (obtained === "gifted" || obtained === "lent") && giver !== "a seller" && thankByName !== true,
  );
  const persons = new Map<string, Person>();
  for (const { from = "", giver } of givers) {
    const names = new Set(from.replace(where, "").match(/\p{Lu}[\p{L}]+/gu));
    for (const word of from.match(/\p{Lu}[\p{L}]+/gu) ?? []) {
      const plain = plainWord(word);
      if (plain.length <= 2 || commonWords.has(plain)) continue;
      const known = persons.get(plain);
      const isName = names.has(word) && !isCalling(plain);
      persons.set(plain, {
        word,
        isName: isName || known?.isName === true,
        isSure: giver === "a person" || known?.isSure === true,
      });
    }
  }
  return persons;
}
