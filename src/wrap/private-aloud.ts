/** Names said aloud that the records keep back: private beds, plants and things, and private persons who gave something. */
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
    if (person !== undefined && text !== "") add(index, person, "a private person");
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
  return [...personsOf(garden).values()];
}

/** The names in "Wilma two plots up": words with a capital that everyday speech does not have. */
function personsOf(garden: FilmHeard["day"]["garden"]): ReadonlyMap<string, string> {
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
  const persons = new Map<string, string>();
  for (const { from = "" } of givers) {
    for (const word of from.match(/\p{Lu}[\p{L}]+/gu) ?? []) {
      const plain = plainWord(word);
      if (plain.length > 2 && !commonWords.has(plain)) persons.set(plain, word);
    }
  }
  return persons;
}
