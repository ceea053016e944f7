/**
 * The disk edge of the records: lists and reads files below one folder, and never writes. What is odd about the folder
 * itself (links, things the system does not let be read) comes as problems beside the list.
 */
import type { Dirent } from "node:fs";
import { readdir, realpath, stat } from "node:fs/promises";
import path from "node:path";
import type { Place, Problem } from "../model.ts";
import { problem } from "./problem-rules.ts";
import { readFileAt } from "./read-file-at.ts";

export interface RecordsFolder {
  /** All files, relative to the folder, with forward slashes, sorted by code unit. */
  list(): Promise<readonly string[]>;
  /** Paths as `list` gives them. */
  read(file: string): Promise<Uint8Array>;
  /** What was found wrong while listing. */
  readonly problems?: readonly Problem[] | undefined;
}

/** `dir` may be missing: then the list is empty and a problem says so. The folder is walked once, here. */
export async function openRecordsFolder(dir: string): Promise<RecordsFolder> {
  const walk = await walkFolder(path.resolve(dir));
  return {
    list: async () => walk.files,
    // Many small files: reading them one after another at once takes a quarter of the time of asking for each in turn.
    read: async (file) => readFileAt(path.join(dir, ...file.split("/"))),
    problems: walk.problems,
  };
}

interface Walk {
  readonly files: readonly string[];
  readonly problems: readonly Problem[];
}

async function walkFolder(root: string): Promise<Walk> {
  const files: string[] = [];
  const problems: Problem[] = [];
  const links: string[] = [];
  const away: string[] = [];
  const walked = new Map<string, string>();

  async function walk(folder: string): Promise<void> {
    let entries: Dirent[];
    try {
      walked.set(await realpath(path.join(root, folder)), folder);
      entries = await readdir(path.join(root, folder), { withFileTypes: true });
    } catch (error) {
      problems.push(folder === "" ? noFolder(root, error) : unreadable(folder, error));
      return;
    }
    for (const entry of entries) {
      const name = folder === "" ? entry.name : `${folder}/${entry.name}`;
      // Hidden files belong to editors and version control, but one may stand for a record that is away for the moment.
      if (entry.name.startsWith(".") || entry.name === "node_modules") {
        const record = STANDS_FOR.exec(entry.name)?.[1];
        if (record !== undefined) away.push(folder === "" ? record : `${folder}/${record}`);
        continue;
      }
      if (entry.isSymbolicLink()) links.push(name);
      else if (entry.isDirectory()) {
        if (/\.md$/i.test(entry.name)) problems.push(folderNotFile(name));
        else await walk(name);
      } else if (entry.isFile()) files.push(name);
    }
  }

  await walk("");
  // Links come after everything that stands in its own place, so that a file keeps the name it really has.
  for (let link = links.shift(); link !== undefined; link = links.shift()) {
    const followed = await followLink(root, link, walked, files);
    if ("problem" in followed) problems.push(followed.problem);
    else if (followed.is === "file") files.push(link);
    else await walk(link);
    links.sort();
  }
  // Listed, so that reading it fails, is told, and keeps private what it may say.
  return { files: [...new Set([...files, ...away])].sort(), problems };
}

/** What a cloud folder leaves of a record that it took off this disk. */
const STANDS_FOR = /^\.(.+\.md)\.icloud$/i;

type Followed = { readonly is: "file" | "folder" } | { readonly problem: Problem };

async function followLink(
  root: string,
  link: string,
  walked: ReadonlyMap<string, string>,
  files: readonly string[],
): Promise<Followed> {
  const place = { file: link, line: 1, column: 1 };
  let target: string;
  let isFolder: boolean;
  try {
    target = await realpath(path.join(root, link));
    const found = await stat(target);
    isFolder = found.isDirectory();
    // Reading a pipe would wait for ever for somebody to write into it.
    if (!isFolder && !found.isFile()) return { problem: noFile(place) };
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ELOOP") {
      return {
        problem: problem(
          "folder/link-loop",
          place,
          "This link leads in a circle and never to a file.",
          "Remove the link.",
        ),
      };
    }
    return {
      problem: problem(
        "folder/link-broken",
        place,
        "This link leads to nothing.",
        "Remove the link, or make it again.",
      ),
    };
  }
  const realRoot = await realpath(root);
  const inside = path.relative(realRoot, target).split(path.sep).join("/");
  if (inside === ".." || inside.startsWith("../") || path.isAbsolute(inside)) {
    return {
      problem: problem(
        "folder/link-outside",
        place,
        "This link leads out of the records folder, so it was not followed.",
        "Copy what it leads to into the records folder.",
      ),
    };
  }
  const before = walked.get(target) ?? (files.includes(inside) ? inside : undefined);
  if (before === undefined) return { is: isFolder ? "folder" : "file" };
  const holder = before === "" ? "the records folder itself" : before;
  return {
    problem: problem(
      "folder/link-loop",
      place,
      `This link leads to ${holder}, which is read already, so it was not followed.`,
      "Remove the link.",
    ),
  };
}

function noFile(place: Place): Problem {
  return problem(
    "folder/unreadable",
    place,
    "This link leads to something that is neither a file nor a folder, so it was not read.",
    "Remove the link, or let it lead to a file.",
  );
}

function noFolder(root: string, error: unknown): Problem {
  const code = (error as NodeJS.ErrnoException).code;
  const place = { file: ".", line: 1, column: 1 };
  if (code === "ENOENT") {
    return problem(
      "folder/missing",
      place,
      `There is no records folder at ${root}.`,
      `Make it, or give another with --records. ${howToStart}`,
    );
  }
  if (code === "ENOTDIR") {
    return problem(
      "folder/file-not-folder",
      place,
      `${root} is a file, not a records folder.`,
      "Give the folder that holds your notes with --records.",
    );
  }
  return problem(
    "folder/unreadable",
    place,
    `The records folder ${root} cannot be read: ${reason(error)}.`,
    "Give yourself the right to read it.",
  );
}

/** How a first garden is begun. */
export const howToStart =
  '"plotreel start" in an empty folder begins a garden. One dated note is enough, too: notes/2026-05-16-first.md with a line such as "- sowed Boltardy beetroot in Long Bed".';

function folderNotFile(name: string): Problem {
  return problem(
    "folder/folder-not-file",
    { file: name, line: 1, column: 1 },
    `"${name}" is a folder, and a file is expected where a name ends in .md.`,
    "Take the ending off the folder's name, or put a file in its place.",
  );
}

/** A file or folder that the system does not let be read. */
export function unreadable(name: string, error: unknown): Problem {
  return problem(
    "folder/unreadable",
    { file: name, line: 1, column: 1 },
    `This cannot be read: ${reason(error)}.`,
    "Wait until it is back, give yourself the right to read it, or check the disk; everything else was read.",
  );
}

function reason(error: unknown): string {
  switch ((error as NodeJS.ErrnoException).code) {
    case "EACCES":
    case "EPERM":
      return "the system does not allow it";
    case "EIO":
      return "the disk reports a fault";
    case "ENOENT":
      return "it is not on this disk now";
    case "EISDIR":
      return "it is a folder";
    default:
      return error instanceof Error ? error.message : String(error);
  }
}
