/** Files that would be written, and what of a brought file would not be in them. */
import { hash } from "node:crypto";
import type { RecordsFolder } from "../records/index.ts";

export interface NewFile {
  /** Relative to the records folder; no file of that name is there. */
  readonly file: string;
  readonly content: string | Uint8Array;
}

/** A part of a brought file that is in no record, and why. */
export interface Told {
  readonly line: number;
  readonly what: string;
  /** False where it is no more than a heading. */
  readonly isLoss?: false | undefined;
}

/** A part that is written, as it is remembered: whoever brings it again gets nothing twice. */
export interface Part {
  readonly hash: string;
  readonly size: number;
  readonly to: string;
}

export function partOf(text: string | Uint8Array, to: string): Part {
  return { hash: hash("sha256", text), size: Buffer.byteLength(text), to };
}

/** The folder as it would be with these files in it. */
export function withFiles(folder: RecordsFolder, files: readonly NewFile[]): RecordsFolder {
  const added = new Map(files.map(({ file, content }) => [file, content]));
  return {
    list: async () => [...new Set([...(await folder.list()), ...added.keys()])].sort(),
    async read(file) {
      const content = added.get(file);
      if (content === undefined) return folder.read(file);
      return typeof content === "string" ? new TextEncoder().encode(content) : content;
    },
    problems: folder.problems,
  };
}

/** Names of files that are free, however many are asked for. */
export class FreeNames {
  /** Folded to one case, since some disks tell no difference. */
  readonly #taken: Set<string>;

  constructor(taken: Iterable<string>) {
    this.#taken = new Set(Array.from(taken, (name) => name.toLowerCase()));
  }

  /** The name itself, or with a number behind it where it is taken; it is taken from now on. */
  take(file: string): string {
    const ending = /\.[a-z]+$/.exec(file)?.[0] ?? "";
    const stem = file.slice(0, file.length - ending.length);
    for (let number = 1; ; number += 1) {
      const name = number === 1 ? file : `${stem}-${number}${ending}`;
      if (this.#taken.has(name.toLowerCase())) continue;
      this.#taken.add(name.toLowerCase());
      return name;
    }
  }
}

/** "Seeds 2025 (old).csv" as a part of file names: "seeds-2025-old". */
export function slugOf(fileName: string): string {
  const stem = fileName.replace(/(?:\.[a-z]{2,3})?\.[a-z]{2,4}$/i, "");
  const words = stem
    .normalize("NFD")
    .replace(/[\p{M}'’]/gu, "")
    .toLowerCase()
    .match(/[\p{L}\p{N}]+/gu);
  return words?.join("-") ?? "brought-in";
}

/** Front matter and text of a new record. */
export function recordOf(front: readonly string[], body: string): string {
  return `${["---", ...front, "---"].join("\n")}\n\n${body}`;
}
