/**
 * Files read and taken apart, by way of a cache keyed by content. What is kept is only what follows from one file's own
 * text, so a kept parse can never be wrong, whatever else in the garden changes.
 */
import { hash } from "node:crypto";
import type { Problem } from "../model.ts";
import { decodeText } from "./decode-text.ts";
import { type FileProblem, inFile } from "./file-problem.ts";
import { type FrontMatterPlaces, frontMatterPlaces, readFrontMatter } from "./front-matter.ts";
import { type FileKind, misplacedMark } from "./misplaced-marks.ts";
import { type NoteTree, readNoteTree } from "./note-tree.ts";
import { type RecordsFolder, unreadable } from "./records-folder.ts";
import type { YamlValue } from "./yaml-values.ts";

/** The parse of one file; plain data that survives JSON. */
export interface ParsedNote {
  readonly data: { readonly [key: string]: YamlValue };
  /** Offset at which the body begins. */
  readonly bodyAt: number;
  readonly problems: readonly FileProblem[];
  /** Only of notes. */
  readonly tree?: NoteTree | undefined;
}

export interface NoteCache {
  get(hash: string): ParsedNote | undefined;
  set(hash: string, parsed: ParsedNote): void;
}

export interface ParsedFile extends ParsedNote {
  readonly file: string;
  readonly text: string;
  /** Stands for the file's content and how it is parsed. */
  readonly key: string;
  /** Places of front matter keys in this file. */
  places(): FrontMatterPlaces;
}

/** Part of every key; raised whenever the parse or its shape changes. */
const parseVersion = 6;

/** Length in characters from which a note is called very long. */
const veryLong = 1_000_000;

/** Undefined when the file gives no text; then `problems` says why. */
export async function readParsedFile(
  folder: RecordsFolder,
  file: string,
  kind: FileKind,
  cache: NoteCache | undefined,
): Promise<{ readonly parsed: ParsedFile | undefined; readonly problems: readonly Problem[] }> {
  let bytes: Uint8Array;
  try {
    bytes = await folder.read(file);
  } catch (error) {
    return { parsed: undefined, problems: [unreadable(file, error)] };
  }
  const decoded = decodeText(bytes);
  const decodingProblems = decoded.problems.map((found) => inFile(file, found));
  const { text } = decoded;
  if (text === undefined) return { parsed: undefined, problems: decodingProblems };
  const key = `${parseVersion}-${kind}-${hash("sha256", bytes, "base64url")}`;
  let parse = cache?.get(key);
  if (parse === undefined) {
    parse = parseText(text, kind);
    cache?.set(key, parse);
  }
  let places: FrontMatterPlaces | undefined;
  return {
    parsed: {
      ...parse,
      file,
      text,
      key,
      places() {
        places ??= frontMatterPlaces(text);
        return places;
      },
    },
    problems: [...decodingProblems, ...parse.problems.map((found) => inFile(file, found))],
  };
}

export function parseText(text: string, kind: FileKind): ParsedNote {
  const { data, bodyAt, problems: found } = readFrontMatter(text);
  const misplaced = found.length > 0 ? undefined : misplacedMark(text, bodyAt, kind);
  const problems = misplaced === undefined ? found : [...found, misplaced];
  if (kind === "record") return { data, bodyAt, problems: text.trim() === "" ? [...problems, empty] : problems };
  const tree = readNoteTree(text, bodyAt);
  return { data, bodyAt, problems: [...problems, ...treeProblems(text, tree)], tree };
}

const empty: FileProblem = {
  rule: "text/empty",
  line: 1,
  column: 1,
  what: "This file is empty, so nobody can tell what it should say, and it is kept private.",
  fix: "Write a title between two lines of three hyphens, or bring the file back from a copy.",
};

function treeProblems(text: string, tree: NoteTree): FileProblem[] {
  const problems: FileProblem[] = tree.unparsed.map((place) => ({
    rule: "note/not-parsed",
    ...place,
    what: "The text from here on is too long or too deeply nested to be taken apart, so it was kept as story.",
    fix: "Put an empty line between paragraphs and lists, or move it out of the notes.",
  }));
  if (text.length > veryLong) {
    const size = (text.length / 1_000_000).toFixed(1);
    problems.push({
      rule: "text/very-long",
      line: 1,
      column: 1,
      what: `This note is ${size} million characters long; it was read, but it slows every first run.`,
      fix: "Make a note of each day, or move what is no note out of the notes folder.",
    });
  }
  return problems;
}
