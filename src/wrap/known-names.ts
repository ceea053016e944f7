/** The names a speaker may say in one film, in every form they may take, with how each sounds and where it stands that day. */
import { cropOf } from "../crop-of.ts";
import type { Crop, Garden, Variety } from "../model.ts";
import { commonWords } from "./common-words.ts";
import type { FilmingDay } from "./filming-day.ts";
import { type Sound, soundOf } from "./sound.ts";
import { plainWord } from "./spoken-words.ts";

export type NameKind = "variety" | "gear" | "bed" | "word";

/** Where a name's thing was that day: at a stop of the film, elsewhere in the garden, or only in the records. */
export type Standing = "in the film" | "in the garden" | "in the records";

export interface KnownName {
  readonly kind: NameKind;
  /** Id of the record; for a person's own word the word itself. */
  readonly record: string;
  /** As it is to be written: "Rouge Vif". */
  readonly name: string;
  readonly standing: Standing;
  /** Beds it stands in, or has lately stood in. */
  readonly beds: ReadonlySet<string>;
  /** Crop words that speak for it when they are near: "squash". */
  readonly crops: ReadonlySet<string>;
  /** Only the beginning of a title, as people may say it for short. */
  readonly short: boolean;
  /** Every word of it is one that people say all day long. */
  readonly ordinary: boolean;
  /** Nobody says it but of these plants, so that it needs no capitals: no crop's word, and none that is said of many things. */
  readonly unmistakable: boolean;
  /** Letters without spaces: how it is looked up as written. */
  readonly key: string;
  /** By its spelling, and by its "say it as". */
  readonly sounds: readonly Sound[];
  /** Letters of its "say it as", for captions that spell out how a name is said. */
  readonly spelledOut: readonly string[];
}

/** A person's own words for names: how it is to be written, and how it has been heard. */
export interface GlossaryWord {
  readonly name: string;
  readonly heardAs: readonly string[];
}

export function knownNames(
  day: FilmingDay,
  stops: ReadonlySet<string>,
  glossary: readonly GlossaryWord[] = [],
): readonly KnownName[] {
  const { garden } = day;
  const standing = (beds: ReadonlySet<string>, here: boolean): Standing =>
    [...beds].some((bed) => stops.has(bed)) ? "in the film" : here ? "in the garden" : "in the records";
  const { shorts, nameOf } = everyFilmOf(garden);
  const bedsOf = bedsByVariety(day);
  const names = [...garden.varieties.values()].flatMap((variety) => {
    const beds = bedsOf.get(variety.id) ?? new Set();
    const here = day.growing.has(variety.id) || day.nursery.has(variety.id);
    const common = { kind: "variety" as const, record: variety.id, standing: standing(beds, here), beds };
    const crops = cropWords(day, variety);
    const sayAs = variety.sayAs?.split(",")[0];
    return [
      nameOf({ ...common, name: variety.title, crops }, sayAs === undefined ? [] : [sayAs]),
      ...variety.alsoSpelled
        .filter((form) => keyOf(form) !== keyOf(variety.title))
        .map((form) => nameOf({ ...common, name: form, crops }, partOf(sayAs, variety.title, form))),
      ...(shorts.get(variety.id) ?? [])
        .filter((form) => !variety.alsoSpelled.some((other) => keyOf(other) === keyOf(form)))
        .map((form) => nameOf({ ...common, name: form, crops, short: true }, partOf(sayAs, variety.title, form))),
    ];
  });
  for (const gear of garden.gear.values()) {
    const beds = new Set(
      [...day.beds.values()].flatMap(({ bed, state }) => (state.gear.includes(gear.id) ? [bed.id] : [])),
    );
    for (const form of [gear.title, ...gear.alsoCalled]) {
      names.push(
        nameOf({
          kind: "gear",
          record: gear.id,
          name: form,
          standing: standing(beds, beds.size > 0),
          beds,
          crops: new Set(),
        }),
      );
    }
  }
  for (const bed of garden.beds.values()) {
    const beds = new Set([bed.id]);
    for (const form of [bed.title, ...bed.alsoCalled]) {
      names.push(
        nameOf({ kind: "bed", record: bed.id, name: form, standing: standing(beds, true), beds, crops: new Set() }),
      );
    }
  }
  for (const { name, heardAs } of glossary) {
    names.push(
      nameOf({ kind: "word", record: name, name, standing: "in the film", beds: new Set(), crops: new Set() }, heardAs),
    );
  }
  return names.filter(({ key }) => key !== "");
}

type NameParts = Omit<KnownName, "short" | "ordinary" | "unmistakable" | "key" | "sounds" | "spelledOut"> & {
  readonly short?: boolean | undefined;
};

type Spelling = Pick<KnownName, "ordinary" | "unmistakable" | "key" | "sounds" | "spelledOut">;

function spellingOf(name: string, sayAs: readonly string[], cropWords: ReadonlySet<string>): Spelling {
  const words = nameWords(name);
  return {
    ordinary: words.every((word) => commonWords.has(word)),
    unmistakable: words.some((word) => !isEveryday(word) && !cropWords.has(word)),
    key: words.join(""),
    sounds: [words, ...sayAs.map(nameWords)].map(soundOf).filter(({ full }) => full !== ""),
    spelledOut: sayAs.map(keyOf),
  };
}

/** What is the same for every film of a garden. */
interface EveryFilm {
  readonly shorts: ReadonlyMap<string, readonly string[]>;
  /** How often each word stands in the notes. */
  readonly noted: ReadonlyMap<string, number>;
  nameOf(parts: NameParts, sayAs?: readonly string[]): KnownName;
}

/** Worked out once for a garden: its films are heard one after the other, and it has thousands of names and notes. */
const heard = new WeakMap<Garden, EveryFilm>();

function everyFilmOf(garden: Garden): EveryFilm {
  const known = heard.get(garden);
  if (known !== undefined) return known;
  const spellings = new Map<string, Spelling>();
  const cropWords = allCropWords(garden);
  const made: EveryFilm = {
    shorts: shortForms([...garden.varieties.values()], people(garden), cropWords),
    noted: wordsNoted(garden),
    nameOf(parts, sayAs = []) {
      const key = [parts.name, ...sayAs].join("\n");
      const spelling = spellings.get(key) ?? spellingOf(parts.name, sayAs, cropWords);
      spellings.set(key, spelling);
      return { ...parts, short: parts.short === true, ...spelling };
    },
  };
  heard.set(garden, made);
  return made;
}

/** "Sharpe's Express" is heard as "sharpe", "s", "express"; hyphens part words. */
function nameWords(name: string): readonly string[] {
  return name
    .replace(/^(?:the|our|my) (?=.)/i, "")
    .replace(/['’](?=s\b)/gi, " ")
    .split(/[\s\-‐‑/]+/)
    .map(plainWord)
    .filter((word) => word !== "");
}

function keyOf(name: string): string {
  return nameWords(name).join("");
}

/** The words of "say it as" that belong to the beginning or the end of a title, when it has one for each. */
function partOf(sayAs: string | undefined, title: string, form: string): readonly string[] {
  const parts = sayAs?.split(/\s+/) ?? [];
  const [all, asked] = [title.split(/\s+/).length, form.split(/\s+/).length];
  if (parts.length !== all) return [];
  if (title.startsWith(form)) return [parts.slice(0, asked).join(" ")];
  return title.endsWith(form) ? [parts.slice(-asked).join(" ")] : [];
}

const particles = new Set("de di du des da del la le of and the au den der".split(" "));

/**
 * What people say for short: the beginning of a title ("Rouge Vif", "Kelvedon", "Kerr's") or its last word ("Jwala" of Pusa Jwala),
 * unless another variety has the same, it begins or ends in "de" and the like, has a crop's word in it, or is one word that
 * everybody says ("Early"), or that says whose a thing is: where Wilma lends her cloches, "the cloches are Wilma's" names no
 * lettuce.
 */
function shortForms(
  varieties: readonly Variety[],
  people: ReadonlySet<string>,
  cropWords: ReadonlySet<string>,
): ReadonlyMap<string, readonly string[]> {
  const owners = new Map<string, Set<string>>();
  const forms = varieties.map((variety) => {
    const words = variety.title.split(/\s+/);
    const beginnings = words.slice(0, -1).map((_, index) => words.slice(0, index + 1).join(" "));
    const ends = words.slice(1).slice(-1);
    for (const form of [...beginnings, ...ends, variety.title, ...variety.alsoSpelled]) {
      owners.set(keyOf(form), (owners.get(keyOf(form)) ?? new Set()).add(variety.id));
    }
    const plain = ends.filter((end) => !nameWords(end).some((word) => cropWords.has(word)));
    return { id: variety.id, forms: [...beginnings, ...plain] };
  });
  return new Map(
    forms.map(({ id, forms: own }) => [
      id,
      own.filter((form) => {
        const words = form.split(/\s+/).map(plainWord);
        const last = words.at(-1) ?? "";
        return (
          owners.get(keyOf(form))?.size === 1 &&
          !particles.has(last) &&
          !particles.has(words[0] ?? "") &&
          !(words.length === 1 && isEveryday(last)) &&
          !people.has(owner(form))
        );
      }),
    ]),
  );
}

/** "Wilma" of "Wilma's"; "" of anything else. */
function owner(form: string): string {
  return /^(\p{Lu}[\p{L}]+)['’]s$/u.exec(form)?.[1] ?? "";
}

/** Words in capitals by which the records tell where things came from, and of whom the notes speak. */
function people({ varieties, gear, notes }: Garden): ReadonlySet<string> {
  const told = [
    ...[...varieties.values()].map(({ source }) => source?.name ?? ""),
    ...[...gear.values()].map(({ from }) => from ?? ""),
    ...notes.flatMap(({ story }) => story.map(({ text }) => text)),
  ];
  return new Set(told.flatMap((text) => text.match(/\p{Lu}\p{L}+(?!\p{L}|['’]s)/gu) ?? []));
}

/** First words of titles that are said of many things. */
const everyday = new Set(
  (
    "giant purple crimson golden royal scarlet common sugar autumn winter spring summer velvet silver crown painted dwarf moss indian " +
    "crystal queen empress bishop miss tender pink french italian chinese spanish english japanese black white blue yellow green double " +
    "january february march april may june july august september october november december monday tuesday wednesday thursday friday saturday sunday"
  ).split(" "),
);

function isEveryday(word: string): boolean {
  return word.length < 4 || commonWords.has(word) || everyday.has(word);
}

/** Beds in which a variety lives, lived or will soon. */
function bedsByVariety({ beds }: FilmingDay): ReadonlyMap<string, ReadonlySet<string>> {
  const found = new Map<string, Set<string>>();
  for (const { bed, living, ended, coming } of beds.values()) {
    for (const { variety } of [...living, ...ended, ...coming]) {
      if (variety !== undefined) found.set(variety, (found.get(variety) ?? new Set()).add(bed.id));
    }
  }
  return found;
}

const none: ReadonlySet<string> = new Set();
/** Thousands of varieties are of a few crops. */
const wordsOfCrops = new WeakMap<Crop, ReadonlySet<string>>();

function cropWords({ garden }: FilmingDay, variety: Variety): ReadonlySet<string> {
  const crop = cropOf(garden, variety);
  if (crop === undefined) return none;
  const words = wordsOfCrops.get(crop) ?? new Set(lastWords(crop));
  wordsOfCrops.set(crop, words);
  return words;
}

function lastWords({ name, plural, alsoCalled }: Crop): readonly string[] {
  return [name, plural, ...alsoCalled].map((form) => plainWord(form.split(" ").at(-1) ?? ""));
}

function allCropWords({ crops }: Garden): ReadonlySet<string> {
  return new Set([...crops.values()].flatMap(lastWords));
}

/** Times a word must stand in the notes to be one the person uses. */
const USED = 2;

/** Words that stand in the person's own notes, apart from names: what they are likely to say. */
export function ownWords({ garden }: FilmingDay, names: readonly KnownName[]): ReadonlySet<string> {
  const ofNames = new Set(names.flatMap(({ name }) => nameWords(name)));
  const { noted } = everyFilmOf(garden);
  return new Set([...noted].flatMap(([word, times]) => (times >= USED && !ofNames.has(word) ? [word] : [])));
}

function wordsNoted({ notes, events }: Garden): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  const count = (text: string) => {
    for (const [found] of text.matchAll(/[\p{L}]+(?:['’][\p{L}]+)?/gu)) {
      const word = plainWord(found);
      counts.set(word, (counts.get(word) ?? 0) + 1);
    }
  };
  for (const { story } of notes) for (const { text } of story) count(text);
  for (const { text } of events) count(text);
  return counts;
}
