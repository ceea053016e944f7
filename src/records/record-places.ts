/** Which file of a records folder is which kind of record, and the id its name gives it. */
import type { Problem, Sound } from "../model.ts";
import { foldersMeant } from "./doubts.ts";
import { type EpisodePlace, placeEpisodes } from "./episode-places.ts";
import {
  asideEnding,
  baseName,
  clipEnding,
  head,
  idOfFileName,
  idOfNoteFile,
  photoEnding,
  type RecordPlace,
  recordEnding,
  splitFirst,
} from "./file-names.ts";
import { didYouMean } from "./nearest-spelling.ts";
import { wordsFile } from "./own-words.ts";
import { notPhotos, placeSidecars, placeSounds, type SidecarPlace } from "./photo-places.ts";
import { problem } from "./problem-rules.ts";
import { varietiesTable } from "./tables/variety-table.ts";
import { type UnreadFile, unreadFiles } from "./unread-files.ts";

export interface RecordPlaces {
  readonly settings: string | undefined;
  /** The garden's own words. */
  readonly words: string | undefined;
  /** All varieties in one table. */
  readonly varietiesTable: string | undefined;
  readonly sites: readonly RecordPlace[];
  readonly beds: readonly RecordPlace[];
  readonly varieties: readonly RecordPlace[];
  /** Ids are paths below notes/ without ending. */
  readonly notes: readonly RecordPlace[];
  readonly episodes: readonly EpisodePlace[];
  readonly gear: readonly RecordPlace[];
  readonly trials: readonly RecordPlace[];
  readonly photos: readonly string[];
  readonly clips: readonly string[];
  readonly asides: readonly string[];
  readonly sounds: readonly Sound[];
  readonly sidecars: readonly SidecarPlace[];
  readonly weather: readonly string[];
  /** What may describe something and is not read as a record. */
  readonly unread: readonly UnreadFile[];
  readonly problems: readonly Problem[];
}

export const recordFolders = [
  "sites",
  "beds",
  "varieties",
  "notes",
  "photos",
  "episodes",
  "gear",
  "trials",
  "weather",
] as const;
export type RecordFolderName = (typeof recordFolders)[number];

/** `folderProblems` are what was found wrong with the folder itself. */
export function placeRecords(files: readonly string[], folderProblems: readonly Problem[] = []): RecordPlaces {
  const problems: Problem[] = [];
  const byFolder = new Map<RecordFolderName, string[]>(recordFolders.map((folder) => [folder, []]));
  let settings: string | undefined;
  let words: string | undefined;
  let table: string | undefined;
  for (const file of files) {
    const [folder = "", rest] = splitFirst(file);
    if (rest === undefined) {
      if (/^garden\.md$/i.test(file)) settings ??= file;
      else if (file.toLowerCase() === wordsFile) words ??= file;
      else if (file.toLowerCase() === varietiesTable) table ??= file;
      else problems.push(...atTheTop(file));
      continue;
    }
    const inside = byFolder.get(folder as RecordFolderName);
    if (inside) inside.push(file);
    else problems.push(...unknownFolder(folder, file, problems));
  }

  const inFolder = (folder: RecordFolderName) => byFolder.get(folder) ?? [];
  const records = (folder: RecordFolderName) => uniqueIds(recordsIn(inFolder(folder), problems), problems);
  const photos = inFolder("photos").filter((file) => photoEnding.test(file));
  const clips = inFolder("photos").filter((file) => clipEnding.test(file));
  problems.push(...notPhotos(inFolder("photos"), photos));
  const placed = {
    settings,
    words,
    varietiesTable: table,
    sites: records("sites"),
    beds: records("beds"),
    varieties: records("varieties"),
    gear: records("gear"),
    trials: records("trials"),
    notes: recordsIn(inFolder("notes"), problems).map((file) => ({
      file,
      id: idOfNoteFile(file),
    })),
    episodes: placeEpisodes(inFolder("episodes"), problems),
    photos,
    clips,
    asides: inFolder("photos").filter((file) => asideEnding.test(file)),
    sounds: placeSounds(inFolder("photos")),
    sidecars: placeSidecars(inFolder("photos"), [...photos, ...clips], problems),
    weather: inFolder("weather").filter((file) => /\.(csv|dly)$/i.test(file)),
  };
  return { ...placed, unread: unreadFiles(files, [...folderProblems, ...problems], recordFolders), problems };
}

/** The texts that are read as records: what else lies in the folder, or in others beside, is nobody's words. */
export function recordTexts(files: readonly string[]): readonly string[] {
  const { settings, words, varietiesTable: table, sidecars, ...places } = placeRecords(files);
  const { sites, beds, varieties, gear, trials, episodes, notes } = places;
  return [
    ...[settings, words, table].filter((file) => file !== undefined),
    ...[sites, beds, varieties, gear, trials, episodes, notes].flat().map(({ file }) => file),
    ...sidecars.map(({ file }) => file).filter((file) => recordEnding.test(file)),
  ].sort();
}

function recordsIn(files: readonly string[], problems: Problem[]): string[] {
  const [records, others] = [
    files.filter((file) => recordEnding.test(file)),
    files.filter((file) => !recordEnding.test(file)),
  ];
  for (const file of others) {
    problems.push(
      problem(
        "folder/not-read",
        head(file),
        "This file is not read, because records have the ending .md.",
        `If it is a record, name it ${baseName(file).replace(/\.[^.]*$/, "")}.md; else move it out of this folder.`,
      ),
    );
  }
  return records;
}

function uniqueIds(files: readonly string[], problems: Problem[]): RecordPlace[] {
  const places = files.map((file) => ({ file, id: idOfFileName(baseName(file).replace(recordEnding, "")) }));
  // A file named exactly as its id comes before one that only leads to the same id.
  places.sort((a, b) => Number(isNamedAsId(b)) - Number(isNamedAsId(a)) || (a.file < b.file ? -1 : 1));
  const byId = new Map<string, RecordPlace>();
  for (const place of places) {
    const first = byId.get(place.id);
    if (first !== undefined) {
      problems.push(
        problem(
          "folder/same-id",
          head(place.file),
          `This file has the same id as ${first.file}, "${place.id}", so it was not read.`,
          "Give one of the two another name; small and capital letters make no difference.",
        ),
      );
      continue;
    }
    byId.set(place.id, place);
    if (isNamedAsId(place)) continue;
    problems.push(
      problem(
        "folder/file-name",
        head(place.file),
        `The id of this record is "${place.id}", which is not how the file is named.`,
        `Rename the file to ${place.id}.md.`,
      ),
    );
  }
  return [...byId.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
}

function atTheTop(file: string): Problem[] {
  const folder = recordFolders.find((name) => name === file.toLowerCase());
  if (folder !== undefined) {
    return [
      problem(
        "folder/file-not-folder",
        head(file),
        `"${file}" is a file, and a folder of that name is expected here.`,
        `Move it away, and make a folder ${folder} for the records.`,
      ),
    ];
  }
  const meant = recordEnding.test(file) ? didYouMean(file.toLowerCase(), ["garden.md", wordsFile]) : undefined;
  return meant === undefined ? [] : [problem("folder/misspelt", head(file), `"${file}" is not read.`, meant)];
}

/** Folders that hold no records (drafts, an editor's own) are nobody's mistake; one slip away from a known name is. */
function unknownFolder(folder: string, file: string, known: readonly Problem[]): Problem[] {
  const [one, other] = foldersMeant(folder, recordFolders);
  const meant = one === undefined ? undefined : `Did you mean "${one}"${other === undefined ? "" : ` or "${other}"`}?`;
  const what = `The folder "${folder}" is not read.`;
  if (meant === undefined || known.some((other) => other.what === what)) return [];
  return [problem("folder/misspelt", head(file), what, meant)];
}

function isNamedAsId({ file, id }: RecordPlace): boolean {
  return baseName(file) === `${id}.md`;
}
