/**
 * What private records say, as runs of words that would give it away on a page. A long sentence is kept as every seven
 * words in a row, so that half of it cut off by "read more" is found as well; a line of four to six words is kept whole.
 * What public records say too is no secret, and neither is a short line made of names, numbers and trade verbs alone:
 * the same line may follow from public facts.
 */
import type { Records } from "../../model.ts";

export interface PrivatePhrase {
  readonly words: readonly string[];
  /** Record file in which it stands. */
  readonly file: string;
}

/** Phrases by their first two words. */
export type PrivatePhrases = ReadonlyMap<string, readonly PrivatePhrase[]>;

const windowLength = 7;
const shortest = 4;

export function privatePhrases(records: Records): PrivatePhrases {
  const { secret, open } = textsOf(records);
  const plain = commonWords(records);
  const phrases = new Map<string, PrivatePhrase>();
  for (const { text, file } of secret) {
    for (const words of sentencesOf(text)) {
      for (const run of runsOf(words)) {
        if (run.length < windowLength && run.filter((word) => !plain.has(word) && !/^\d/.test(word)).length < 2)
          continue;
        const key = run.join(" ");
        if (!phrases.has(key)) phrases.set(key, { words: run, file });
      }
    }
  }
  const byStart = byFirstWords(phrases.values());
  for (const text of open) {
    for (const known of allPhrasesIn(wordsOf(text), byStart)) phrases.delete(known.words.join(" "));
  }
  // Unlike a sentence, a name stays secret where public prose lets it slip.
  for (const name of secretNames(records, plain)) phrases.set(name.words.join(" "), name);
  return byFirstWords(phrases.values());
}

/** Names of two words and more. One word may be anything, and so may names, verbs and small words in a row. */
function* secretNames(records: Records, plain: ReadonlySet<string>): Generator<PrivatePhrase> {
  const names = recordsOf(records).flatMap(({ record, isPrivate }) =>
    namesOf(record).map((name) => ({ words: wordsOf(name), isPrivate, file: fileOf(record) })),
  );
  for (const { title, private: isPrivate, place } of [...records.episodes.values(), ...records.notes])
    if (isPrivate && title !== undefined) names.push({ words: wordsOf(title), isPrivate, file: place?.file ?? title });
  const open = names.filter(({ isPrivate }) => !isPrivate).map(({ words }) => ` ${words.join(" ")} `);
  open.push(` ${wordsOf(records.settings.name).join(" ")} `);
  for (const { words, isPrivate, file } of names) {
    const isNamed = words.length > 1 && words.some((word) => !plain.has(word) && !/^\d/.test(word));
    if (isPrivate && isNamed && !open.some((name) => name.includes(` ${words.join(" ")} `))) yield { words, file };
  }
}

/** The title of a record and what else it is called. */
export function namesOf(record: {
  readonly title: string;
  readonly alsoCalled?: readonly string[];
  readonly alsoSpelled?: readonly string[];
}): readonly string[] {
  return [record.title, ...(record.alsoCalled ?? []), ...(record.alsoSpelled ?? [])];
}

/** The first private phrase in a text, or undefined. */
export function findPrivatePhrase(text: string, phrases: PrivatePhrases): PrivatePhrase | undefined {
  if (phrases.size === 0) return undefined;
  for (const phrase of allPhrasesIn(wordsOf(text), phrases)) return phrase;
  return undefined;
}

/** Words in small letters without accents and marks: how a phrase is compared whatever dress it wears. */
export function wordsOf(text: string): string[] {
  return (
    text
      .normalize("NFKD")
      .replace(/[\p{M}'’]/gu, "")
      .toLowerCase()
      .match(/[\p{L}\p{N}]+/gu) ?? []
  );
}

// --------------------------------------------------------------------------------------------------- what the records say

interface Said {
  readonly text: string;
  readonly file: string;
}

/** Everything records say, private and public apart. Ids and file places are no text. */
function textsOf(records: Records): { secret: Said[]; open: string[] } {
  const secret: Said[] = [];
  const open: string[] = [];
  const tell = (isPrivate: boolean, file: string, texts: Iterable<string>) => {
    for (const text of texts) {
      if (isPrivate) secret.push({ text, file });
      else open.push(text);
    }
  };
  for (const { record, isPrivate } of [...recordsOf(records), ...[...records.episodes.values()].map(withPrivacy)])
    tell(isPrivate, fileOf(record), stringsIn(record));
  for (const note of records.notes) {
    tell(note.private, note.place.file, stringsIn([note.title]));
    for (const part of note.story) tell(note.private || part.private === true, note.place.file, stringsIn([part]));
  }
  for (const { private: isPrivate, place, text, what, cause, detail, reason, from, more } of records.events)
    tell(isPrivate, place.file, stringsIn([text, what, cause, detail, reason, from, more]));
  for (const photo of records.photoSidecars.values()) tell(photo.private, photo.photo, stringsIn([photo.caption]));
  tell(false, "garden.md", stringsIn(records.settings));
  for (const crop of records.crops.values()) tell(false, "", stringsIn(crop));
  return { secret, open };
}

/** Records that people speak of by name. */
function recordsOf({ sites, beds, varieties, gear, trials }: Records) {
  const inPrivateSite = (site: string | undefined) => site !== undefined && sites.get(site)?.private === true;
  return [
    ...[...beds.values()].map((bed) => ({ record: bed, isPrivate: bed.private || inPrivateSite(bed.site) })),
    ...[sites, varieties, gear, trials].flatMap((kind) => [...kind.values()].map(withPrivacy)),
  ];
}

function withPrivacy<T extends { readonly private: boolean }>(record: T) {
  return { record, isPrivate: record.private };
}

function fileOf(record: { readonly id: string; readonly place?: { readonly file: string } | undefined }): string {
  return record.place?.file ?? record.id;
}

function* stringsIn(value: unknown): Generator<string> {
  if (typeof value === "string") yield value;
  else if (Array.isArray(value)) for (const one of value) yield* stringsIn(one);
  else if (typeof value === "object" && value !== null) {
    for (const [key, one] of Object.entries(value)) if (key !== "place" && key !== "id") yield* stringsIn(one);
  }
}

/** Names, trade verbs and the small words between them. */
function commonWords(records: Records): ReadonlySet<string> {
  const names = recordsOf(records).flatMap(({ record, isPrivate }) => (isPrivate ? [] : wordsOf(record.title)));
  const crops = [...records.crops.values()].flatMap((crop) =>
    [crop.name, crop.plural, ...crop.alsoCalled].flatMap(wordsOf),
  );
  const verbs = records.events.flatMap(({ verb }) => wordsOf(verb));
  const small =
    "a an and the of in on at to from for with by off up out into over under next last this that was were is are it its all some more first row rows tray trays plants seeds cm mm m kg g lb oz ft l ml apart indoors today yesterday about";
  return new Set([...names, ...crops, ...verbs, ...small.split(" ")]);
}

function sentencesOf(text: string): string[][] {
  return text
    .replace(/\]\([^)]*\)/g, "]")
    .split(/[\n\r]+|(?<=[.!?;:])\s+/)
    .map(wordsOf)
    .filter((words) => words.length >= shortest);
}

function* runsOf(words: readonly string[]): Generator<readonly string[]> {
  if (words.length <= windowLength) yield words;
  else for (let at = 0; at + windowLength <= words.length; at++) yield words.slice(at, at + windowLength);
}

// ----------------------------------------------------------------------------------------------------------- searching

function byFirstWords(phrases: Iterable<PrivatePhrase>): PrivatePhrases {
  const found = new Map<string, PrivatePhrase[]>();
  for (const phrase of phrases) {
    const start = `${phrase.words[0]} ${phrase.words[1]}`;
    const known = found.get(start);
    if (known) known.push(phrase);
    else found.set(start, [phrase]);
  }
  return found;
}

function* allPhrasesIn(words: readonly string[], phrases: PrivatePhrases): Generator<PrivatePhrase> {
  for (let at = 0; at + 1 < words.length; at++) {
    for (const phrase of phrases.get(`${words[at]} ${words[at + 1]}`) ?? []) {
      if (phrase.words.every((word, index) => words[at + index] === word)) yield phrase;
    }
  }
}
