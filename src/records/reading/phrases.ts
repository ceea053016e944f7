/** Looking up phrases of a table in a line: the longest one that begins at a word, by the words' forms for comparing. */
import type { Word } from "../line-words.ts";

export interface FoundPhrase<Row> {
  readonly row: Row;
  readonly end: number;
}

export class Phrases<Row> {
  readonly #table: ReadonlyMap<string, Row>;
  /** Words of the longest phrase by its first word. */
  readonly #longest = new Map<string, number>();

  constructor(table: ReadonlyMap<string, Row>) {
    this.#table = table;
    for (const key of table.keys()) {
      const space = key.indexOf(" ");
      const first = space < 0 ? key : key.slice(0, space);
      const length = key.split(" ").length;
      if (length > (this.#longest.get(first) ?? 0)) this.#longest.set(first, length);
    }
  }

  begins(key: string): boolean {
    return this.#longest.has(key);
  }

  /** `fits` says of a row whether it may be meant by those words; a shorter phrase is tried when it does not. */
  at(words: readonly Word[], at: number, fits?: (row: Row, end: number) => boolean): FoundPhrase<Row> | undefined {
    const first = words[at];
    if (first === undefined || first.kind === "mark") return undefined;
    const most = this.#longest.get(first.key);
    if (most === undefined) return undefined;
    const ends: number[] = [];
    let key = "";
    const keys: string[] = [];
    for (let end = at; keys.length < most && end < words.length; end++) {
      const word = words[end] as Word;
      if (word.kind === "mark") {
        // "red-spider mite", but not "potatoes - Charlotte".
        if (
          (word.text === "-" || word.text === "‑") &&
          words[end - 1]?.end === word.start &&
          words[end + 1]?.start === word.end
        )
          continue;
        break;
      }
      key = key === "" ? word.key : `${key} ${word.key}`;
      keys.push(key);
      ends.push(end + 1);
    }
    for (let length = keys.length; length > 0; length--) {
      const row = this.#table.get(keys[length - 1] as string);
      const end = ends[length - 1] as number;
      if (row !== undefined && (fits === undefined || fits(row, end))) return { row, end };
    }
    return undefined;
  }
}
