/** Which file of a records folder is which kind of record, and the id its name gives it. */
import type { Problem } from "../model.ts";
import { idOfName } from "./names.ts";
import { didYouMean } from "./nearest-spelling.ts";
import { problem } from "./problem-rules.ts";

export interface RecordPlace {
  readonly id: string;
  /** Relative to the records folder. */
  readonly file: string;
}

export interface EpisodePlace extends RecordPlace {
  readonly captions: readonly string[];
}

export interface RecordPlaces {
  readonly settings: string | undefined;
  readonly sites: readonly RecordPlace[];
  readonly beds: readonly RecordPlace[];
  readonly varieties: readonly RecordPlace[];
  /** Ids are paths below notes/ without ending. */
  readonly notes: readonly RecordPlace[];
  readonly episodes: readonly EpisodePlace[];
  readonly gear: readonly RecordPlace[];
  readonly trials: readonly RecordPlace[];
  readonly photos: readonly string[];
  /** Ids are paths of the photos they stand beside. */
  readonly sidecars: readonly RecordPlace[];
  readonly weather: readonly string[];
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
type RecordFolderName = (typeof recordFolders)[number];

const photoEnding = /\.(jpe?g|hei[cf]|png|webp|avif)$/i;
const captionEnding = /\.(vtt|srt)$/i;
const recordEnding = /\.md$/i;

export function placeRecords(files: readonly string[]): RecordPlaces {
  const problems: Problem[] = [];
  const byFolder = new Map<RecordFolderName, string[]>(recordFolders.map((folder) => [folder, []]));
  let settings: string | undefined;
  for (const file of files) {
    const [folder = "", rest] = splitFirst(file);
    if (rest === undefined) {
      if (/^garden\.md$/i.test(file)) settings ??= file;
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
  problems.push(...notPhotos(inFolder("photos")));
  return {
    settings,
    sites: records("sites"),
    beds: records("beds"),
    varieties: records("varieties"),
    gear: records("gear"),
    trials: records("trials"),
    notes: recordsIn(inFolder("notes"), problems).map((file) => ({
      file,
      id: file.slice("notes/".length, -".md".length),
    })),
    episodes: episodesIn(inFolder("episodes"), problems),
    photos,
    sidecars: sidecarsIn(inFolder("photos"), photos, problems),
    weather: inFolder("weather").filter((file) => /\.(csv|dly)$/i.test(file)),
    problems,
  };
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
  const places = files.map((file) => ({ file, id: idOfFile(file) }));
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

function episodesIn(files: readonly string[], problems: Problem[]): EpisodePlace[] {
  const byFolder = new Map<string, string[]>();
  for (const file of files) {
    const [folder, inside] = splitFirst(file.slice("episodes/".length));
    if (inside === undefined) {
      const name = baseName(file).replace(/\.[^.]*$/, "");
      problems.push(
        problem(
          "folder/not-read",
          head(file),
          "This file is not read, because each episode has a folder of its own.",
          `Move it to episodes/${name}/${recordEnding.test(file) ? "index.md" : baseName(file)}.`,
        ),
      );
    } else byFolder.set(folder, [...(byFolder.get(folder) ?? []), file]);
  }
  const episodes: (RecordPlace & { captions: string[] })[] = [];
  for (const [folder, inside] of byFolder) {
    const captions = inside.filter((file) => captionEnding.test(file));
    const index = inside.find((file) => /\/index\.md$/i.test(file));
    if (index !== undefined) episodes.push({ file: index, id: idOfFolder(folder), captions });
    else if (inside[0] !== undefined) {
      problems.push(
        problem(
          "folder/not-read",
          head(inside[0]),
          `The folder episodes/${folder} has no index.md, so it is not read as an episode.`,
          `Write episodes/${folder}/index.md with the filming day, for example "date: 2026-05-16".`,
        ),
      );
    }
  }
  const captionsOf = new Map(episodes.map((episode) => [episode.file, episode.captions]));
  return uniqueEpisodes(episodes, problems).map((place) => ({ ...place, captions: captionsOf.get(place.file) ?? [] }));
}

function uniqueEpisodes(episodes: readonly RecordPlace[], problems: Problem[]): RecordPlace[] {
  const byId = new Map<string, RecordPlace>();
  for (const place of episodes) {
    const first = byId.get(place.id);
    if (first === undefined) byId.set(place.id, place);
    else {
      problems.push(
        problem(
          "folder/same-id",
          head(place.file),
          `This episode has the same id as ${first.file}, "${place.id}", so it was not read.`,
          "Give one of the two folders another name; small and capital letters make no difference.",
        ),
      );
    }
  }
  return [...byId.values()];
}

function sidecarsIn(files: readonly string[], photos: readonly string[], problems: Problem[]): RecordPlace[] {
  const photoOf = new Map(photos.map((photo) => [photo.replace(photoEnding, ""), photo]));
  const sidecars: RecordPlace[] = [];
  for (const file of files.filter((name) => recordEnding.test(name))) {
    // Both gate.md and gate.jpg.md stand beside gate.jpg.
    const beside = file.replace(recordEnding, "");
    const photo = photoOf.get(beside) ?? (photos.includes(beside) ? beside : undefined);
    if (photo !== undefined) sidecars.push({ file, id: photo });
    else {
      problems.push(
        problem(
          "link/unknown-photo",
          head(file),
          "There is no photo beside this file that it could speak of.",
          didYouMean(beside, photoOf.keys()) ?? "Name it like its photo, with the ending .md.",
        ),
      );
    }
  }
  return sidecars;
}

/** One hint for each ending, at the first file that has it. */
function notPhotos(files: readonly string[]): Problem[] {
  const byEnding = new Map<string, string[]>();
  for (const file of files) {
    if (photoEnding.test(file) || recordEnding.test(file)) continue;
    const ending = /\.[^./]+$/.exec(file)?.[0].toLowerCase() ?? "";
    byEnding.set(ending, [...(byEnding.get(ending) ?? []), file]);
  }
  return [...byEnding].map(([ending, [first = "", ...more]]) => {
    const has = ending === "" ? "no ending" : `the ending ${ending}`;
    return problem(
      "folder/not-a-photo",
      head(first),
      more.length === 0
        ? `This file has ${has} and is not read as a photo.`
        : `This file and ${more.length} more have ${has} and are not read as photos.`,
      "Photos are JPEG, HEIC, PNG or WebP files.",
    );
  });
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
  const meant = recordEnding.test(file) ? didYouMean(file.toLowerCase(), ["garden.md"]) : undefined;
  return meant === undefined ? [] : [problem("folder/misspelt", head(file), `"${file}" is not read.`, meant)];
}

/** Folders that hold no records (drafts, an editor's own) are nobody's mistake; one slip away from a known name is. */
function unknownFolder(folder: string, file: string, known: readonly Problem[]): Problem[] {
  const meant = didYouMean(folder, recordFolders);
  const what = `The folder "${folder}" is not read.`;
  if (meant === undefined || known.some((other) => other.what === what)) return [];
  return [problem("folder/misspelt", head(file), what, meant)];
}

function idOfFile(file: string): string {
  const name = baseName(file).replace(recordEnding, "");
  return idOfFolder(name);
}

/** Names in small letters, digits and hyphens are ids as they stand; others give one. */
function idOfFolder(name: string): string {
  return /^[\p{Ll}\p{Lo}\d]+(-[\p{Ll}\p{Lo}\d]+)*$/u.test(name) ? name : idOfName(name) || name;
}

function isNamedAsId({ file, id }: RecordPlace): boolean {
  return baseName(file) === `${id}.md`;
}

function baseName(file: string): string {
  return file.slice(file.lastIndexOf("/") + 1);
}

function splitFirst(path: string): [string, string | undefined] {
  const slash = path.indexOf("/");
  return slash < 0 ? [path, undefined] : [path.slice(0, slash), path.slice(slash + 1)];
}

/** A problem of a whole file points at its head. */
function head(file: string) {
  return { file, line: 1, column: 1 };
}
