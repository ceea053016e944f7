/** From a records folder to records: every file read once, all problems of all files in one list. */

import type {
  Bed,
  Day,
  Event,
  GardenSettings,
  LineReading,
  Note,
  OwnWord,
  Problem,
  Records,
  Variety,
} from "../model.ts";
import { compare } from "../order.ts";
import { cropsAsWritten } from "./crop-words.ts";
import { doubtIsPrivate } from "./doubt-is-private.ts";
import { withFieldLists } from "./field-lists.ts";
import { recordEnding } from "./file-names.ts";
import { bodyOf, cropsInUse, describedRecords, type Reading, takenHints } from "./garden-records.ts";
import { withKeptPlans } from "./kept-plans.ts";
import { linkSites, readEpisodes, readSidecars, readTrials } from "./linking-records.ts";
import type { FileKind } from "./misplaced-marks.ts";
import { nameClashes } from "./name-clashes.ts";
import { keysOf, NameTrie } from "./name-trie.ts";
import { buildNames, type NameRecords, type Names, namesOnceHeard, normaliseName } from "./names.ts";
import type { NoteBody } from "./note-body.ts";
import { type NoteReadings, namesKey } from "./note-readings.ts";
import { ownWords, type WrittenWord, writtenWords } from "./own-words.ts";
import { type NoteCache, type ParsedFile, readParsedFile } from "./parsed-files.ts";
import { problem, sortProblems } from "./problem-rules.ts";
import { type FirstReading, type NotesContext, readNote } from "./read-notes.ts";
import { type CheckedRecord, checkRecord } from "./record-fronts.ts";
import { placeRecords, type RecordPlaces } from "./record-places.ts";
import { howToStart, type RecordsFolder } from "./records-folder.ts";
import { gardenSchema, makeSettings, usualSettings } from "./schemas/garden.ts";
import { withTable } from "./tables/variety-table.ts";
import type { Taken } from "./taken-names.ts";
import type { UnreadFile } from "./unread-files.ts";

export interface ReadOptions {
  readonly today: Day;
  /** Keeps parsed files from one run to the next. */
  readonly cache?: NoteCache | undefined;
  /** Keeps what note bodies say from one run to the next. */
  readonly readings?: NoteReadings | undefined;
  /** Called as files are read. */
  readonly onProgress?: ((done: number, total: number) => void) | undefined;
}

/** Reads everything. Never throws on what a person wrote: what is wrong comes as problems beside the rest. */
export async function readRecords(folder: RecordsFolder, options: ReadOptions): Promise<Records> {
  const list = await folder.list();
  const placed = placeRecords(list, folder.problems);
  const problems: Problem[] = [...(folder.problems ?? []), ...placed.problems];
  const { places, files } = withTable(placed, await readFiles(folder, placed, options, problems), problems);
  const unread = [...places.unread, ...withoutText(places, files)];
  const reading: Reading = { files, problems, unread };
  if (list.length === 0 && problems.length === 0) problems.push(emptyFolder);
  if (list.length > 0 && places.settings === undefined) problems.push(noSettings);

  const settings = settingsOf(places, reading);
  const described = describedRecords(places, reading, settings.language);
  problems.push(...nameClashes(described.beds.values(), described.varieties.values(), described.gear.values()));
  const photos = new Set(places.photos);
  const words = wordsOf(places, reading);
  const read = (from: Names, heardBefore: Taken | undefined, own: readonly OwnWord[], first?: FirstReading) =>
    readNotes(places, files, {
      names: from,
      namesKey: options.readings === undefined ? "" : namesKey(nameRecords(described), heardBefore, settings, own),
      readings: options.readings,
      first,
      settings,
      today: options.today,
      photos,
    });
  let names = buildNames(nameRecords(described));
  let own = learnWords(words, names);
  let said = read(names, undefined, own.words);
  const first = names.taken();
  const heard = withoutWords(first, words);
  if (heard.beds.length + heard.varieties.length > 0) {
    // A line may speak of a bed or variety before the line that tells what it is, so notes with such names are read once more.
    names = namesOnceHeard(nameRecords(described), heard);
    const before = own.words;
    own = learnWords(words, names);
    const sameWords = JSON.stringify(own.words) === JSON.stringify(before);
    said = read(names, heard, own.words, sameWords ? { bodies: said.bodies, names: triesOf(first) } : undefined);
  }
  problems.push(...own.problems);
  const { notes, events, readings } = said;
  for (const found of said.problems) problems.push(found);

  names.asOn(undefined);
  problems.push(...takenHints(names));
  const taken = names.taken();
  const beds = withTaken<Bed>(described.beds, taken.beds);
  const varieties = withTaken<Variety>(described.varieties, taken.varieties);
  const directory = { names, beds, varieties };
  const sites = linkSites(described.sites, reading, directory);
  const trials = readTrials(places.trials, reading, directory);
  const planned = readEpisodes(places.episodes, reading, directory, options.today);
  const kept = await withKeptPlans(planned, places.episodes, folder, problems);
  const episodes = await withFieldLists(kept, places.episodes, folder, beds, problems);
  const photoSidecars = readSidecars(places.sidecars, reading, directory);

  const records: Records = {
    settings,
    sites,
    beds,
    varieties,
    crops: cropsAsWritten(
      cropsInUse(described.crops, [
        ...[...varieties.values()].map(({ crop }) => crop),
        ...events.map(({ crop }) => crop),
      ]),
      [
        ...[...described.varieties.values()].map((one) => ({ crop: one.crop, text: cropInFile(files, one) })),
        ...events.map(({ crop, variety, text }) => ({ crop: crop ?? varieties.get(variety ?? "")?.crop, text })),
      ],
      names,
    ),
    gear: described.gear,
    trials,
    episodes,
    notes: notes.sort((a, b) => compare(a.day, b.day) || compare(a.place.file, b.place.file)),
    events: withVarieties(events, varieties).sort(
      (a, b) => compare(a.day, b.day) || compare(a.place.file, b.place.file) || a.place.line - b.place.line,
    ),
    readings: readings.sort((a, b) => compare(a.place.file, b.place.file) || a.place.line - b.place.line),
    words: own.words,
    photoFiles: places.photos,
    clipFiles: places.clips,
    asideFiles: places.asides,
    sounds: places.sounds,
    photoSidecars,
    weatherFiles: places.weather,
    problems: sortProblems(problems),
  };
  return doubtIsPrivate({ records, files, unread, linkedWithoutDay: said.linkedWithoutDay });
}

/** The crop word in a variety's file, as written. */
function cropInFile(files: ReadonlyMap<string, ParsedFile>, { place }: Variety): string {
  const crop =
    place === undefined ? undefined : (files.get(`${place.file}:${place.line}`) ?? files.get(place.file))?.data.crop;
  return typeof crop === "string" ? crop : "";
}

/** Files in their places that gave no text: what stands in them may be anything, and so may their titles. */
function withoutText(places: RecordPlaces, files: ReadonlyMap<string, ParsedFile>): readonly UnreadFile[] {
  const table = places.varietiesTable;
  const unreadTable: readonly UnreadFile[] =
    table === undefined || files.has(table) ? [] : [{ folder: "varieties", file: table, id: undefined }];
  const unread = (["sites", "beds", "varieties", "gear", "notes"] as const).flatMap((folder) =>
    places[folder].flatMap(({ file, id, at }) => {
      const isEmpty = folder !== "notes" && at === undefined && files.get(file)?.text.trim() === "";
      return files.has(file) && !isEmpty ? [] : [{ folder, file, id }];
    }),
  );
  return [...unreadTable, ...unread];
}

/** A slip in a season or a weight says nothing of the garden; one in a key, or in the mark itself, may mean all of it. */
function keepsAllPrivate(
  { data, problems }: ParsedFile,
  checked: CheckedRecord<{ readonly private?: boolean | undefined; readonly public?: string | undefined }>,
): boolean {
  const { front } = checked;
  const mark = ("private" in data && front?.private !== false) || ("public" in data && front?.public === undefined);
  const unclear = problems.length > 0 || checked.problems.some(({ rule }) => rule === "record/unknown-key");
  return checked.private && (mark || unclear);
}

/** Only garden.md: what has to be known before the rest is read, such as the time zone that tells which day is today. */
export async function readSettings(folder: RecordsFolder): Promise<GardenSettings> {
  const places = placeRecords((await folder.list()).filter((file) => !file.includes("/")));
  if (places.settings === undefined) return usualSettings;
  const { parsed } = await readParsedFile(folder, places.settings, "record", undefined);
  const files = new Map(parsed === undefined ? [] : [[places.settings, parsed]]);
  return settingsOf(places, { files, problems: [], unread: [] });
}

function wordsOf(places: RecordPlaces, { files, problems }: Reading): readonly WrittenWord[] {
  const parsed = places.words === undefined ? undefined : files.get(places.words);
  if (parsed === undefined) return [];
  const written = writtenWords(parsed.file, parsed.text, parsed.bodyAt);
  problems.push(...written.problems);
  return written.words;
}

function learnWords(written: readonly WrittenWord[], names: Names): ReturnType<typeof ownWords> {
  const own = ownWords(written, names);
  names.learn(own.words);
  return own;
}

/** All names that were taken, to be found in the texts of notes. */
function triesOf({ beds, varieties }: Taken): NameTrie {
  const names = new NameTrie();
  for (const { id, title } of [...beds, ...varieties]) names.add(keysOf(title), { id, rank: 0 });
  return names;
}

/** A word whose meaning only the notes name was taken for a name itself before that meaning was heard of. */
function withoutWords(heard: Taken, written: readonly WrittenWord[]): Taken {
  const words = new Set(written.map(({ word }) => normaliseName(word)));
  const isName = ({ title }: { readonly title: string }) => !words.has(normaliseName(title));
  return { beds: heard.beds.filter(isName), varieties: heard.varieties.filter(isName) };
}

function nameRecords(described: ReturnType<typeof describedRecords>): NameRecords {
  return {
    sites: described.sites.values(),
    beds: described.beds.values(),
    varieties: described.varieties.values(),
    gear: described.gear.values(),
    crops: described.crops.values(),
  };
}

function readNotes(places: RecordPlaces, files: ReadonlyMap<string, ParsedFile>, context: NotesContext) {
  const notes: Note[] = [];
  const events: Event[] = [];
  const problems: Problem[] = [];
  const readings: LineReading[] = [];
  const linkedWithoutDay: string[] = [];
  const bodies = new Map<string, NoteBody>();
  for (const place of places.notes) {
    const parsed = files.get(place.file);
    if (parsed === undefined) continue;
    const read = readNote(place, parsed, context);
    if (read.note !== undefined) notes.push(read.note);
    else linkedWithoutDay.push(...read.linked);
    if (read.body !== undefined) bodies.set(place.file, read.body);
    for (const event of read.events) events.push(event);
    for (const found of read.problems) problems.push(found);
    for (const reading of read.readings) readings.push(reading);
  }
  return { notes, events, problems, readings, linkedWithoutDay, bodies };
}

/** What is told of a variety that its file keeps back is as private as the file: on a card too, which is said aloud. */
function withVarieties(events: readonly Event[], varieties: ReadonlyMap<string, Variety>): Event[] {
  return events.map((event) =>
    varieties.get(event.variety ?? "")?.private === true ? { ...event, private: true } : event,
  );
}

function settingsOf(places: Pick<RecordPlaces, "settings">, { files, problems }: Reading): GardenSettings {
  const parsed = places.settings === undefined ? undefined : files.get(places.settings);
  if (parsed === undefined) return places.settings === undefined ? usualSettings : { ...usualSettings, private: true };
  const checked = checkRecord(gardenSchema, "garden.md", parsed);
  problems.push(...checked.problems);
  return checked.front === undefined
    ? { ...usualSettings, private: true }
    : { ...makeSettings(checked.front, bodyOf(parsed)), ...(keepsAllPrivate(parsed, checked) && { private: true }) };
}

async function readFiles(
  folder: RecordsFolder,
  places: RecordPlaces,
  { cache, onProgress }: ReadOptions,
  problems: Problem[],
): Promise<ReadonlyMap<string, ParsedFile>> {
  const records = [
    ...[places.settings, places.words, places.varietiesTable].filter((file) => file !== undefined),
    ...[places.sites, places.beds, places.varieties, places.gear, places.trials, places.episodes]
      .flat()
      .map(({ file }) => file),
    ...places.sidecars.map(({ file }) => file).filter((file) => recordEnding.test(file)),
  ];
  const wanted: (readonly [file: string, kind: FileKind])[] = [
    ...records.map((file) => [file, "record"] as const),
    ...places.notes.map(({ file }) => [file, "note"] as const),
  ];
  const files = new Map<string, ParsedFile>();
  for (const [index, [file, kind]] of wanted.entries()) {
    const read = await readParsedFile(folder, file, kind, cache);
    if (read.parsed !== undefined) files.set(file, read.parsed);
    problems.push(...read.problems);
    onProgress?.(index + 1, wanted.length);
  }
  return files;
}

/** Described records and those only notes name, in order of id. */
function withTaken<Kind extends { readonly id: string }>(
  described: ReadonlyMap<string, Kind>,
  taken: readonly Kind[],
): ReadonlyMap<string, Kind> {
  const all = [...described.values(), ...taken.filter(({ id }) => !described.has(id))];
  return new Map(all.sort((a, b) => compare(a.id, b.id)).map((record) => [record.id, record]));
}

const emptyFolder = problem(
  "folder/empty",
  { file: ".", line: 1, column: 1 },
  "There are no records here yet.",
  howToStart,
);

/** Said at once, because every page and every figure with a unit or a day in it rests on these. */
const noSettings = problem(
  "folder/no-settings",
  { file: "garden.md", line: 1, column: 1 },
  `There is no garden.md, so these hold: metric units, the time zone ${usualSettings.timeZone}, language ${usualSettings.language}, seasons from 1 January, and no frost days.`,
  'Write garden.md with "units", "time zone", "language", "last frost" and "first frost" in its front matter.',
);
