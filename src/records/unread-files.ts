/**
 * Files that may describe something and are not read as records: of another ending, in a folder named with a slip, behind
 * a link that leads nowhere or out. Nobody knows what they say, so what they are called is kept private.
 */
import type { Problem } from "../model.ts";
import { foldersMeant } from "./doubts.ts";
import { baseName, idOfFileName, photoEnding, recordEnding, splitFirst } from "./file-names.ts";
import type { RecordFolderName } from "./record-places.ts";

export interface UnreadFile {
  readonly folder: RecordFolderName;
  /** Relative to the records folder. */
  readonly file: string;
  /** The id it would have; undefined when a whole folder is not read. */
  readonly id: string | undefined;
}

/** `problems` are those of the folder and of placing its files. */
export function unreadFiles(
  files: readonly string[],
  problems: readonly Problem[],
  folders: readonly RecordFolderName[],
): readonly UnreadFile[] {
  const meant = new Map<string, readonly RecordFolderName[]>();
  const foldersOf = (name: string): readonly RecordFolderName[] => {
    const found = meant.get(name) ?? foldersMeant(name, folders);
    meant.set(name, found);
    return found;
  };
  const unread: UnreadFile[] = [];
  const tell = (file: string) => {
    const [first = "", rest] = splitFirst(file);
    for (const folder of foldersOf(first)) unread.push({ folder, file, id: rest && idOf(folder, rest) });
  };
  for (const file of files) {
    const [first = "", rest] = splitFirst(file);
    const isRead = recordEnding.test(file) && folders.some((folder) => folder === first);
    if (rest !== undefined && !isRead && !photoEnding.test(file) && foldersOf(first).some(describes)) tell(file);
  }
  // A file of the same id as another is not read, whatever it says.
  for (const { rule, file } of problems) if (ofWholeFile.test(rule)) tell(file);
  return unread;
}

const ofWholeFile = /^folder\/(?:link-outside|link-broken|unreadable|folder-not-file|file-not-folder|same-id)$/;

/** Beside episodes lie their captions, among photos a camera's own files, and weather is no secret. */
function describes(folder: RecordFolderName): boolean {
  return !["episodes", "photos", "weather"].includes(folder);
}

function idOf(folder: RecordFolderName, below: string): string {
  if (folder === "episodes") return idOfFileName(splitFirst(below)[0]);
  return idOfFileName(baseName(below).replace(/\..*$/s, ""));
}
