/**
 * A note line while it is read: its words, and which of them are understood. What is never claimed is kept as detail,
 * so that no word of a line is lost.
 */
import type { Day, Place, Problem } from "../model.ts";
import type { Word } from "./line-words.ts";
import type { Names } from "./names.ts";
import type { UnitSystem } from "./units.ts";

/** What the line's note and garden say beside the line itself. */
export interface LineContext {
  readonly note: { readonly id: string; readonly day: Day; readonly private: boolean };
  /** Bed ids that lines without a bed speak of. */
  readonly beds: readonly string[];
  readonly names: Names;
  /** How large a pint, quart and gallon are; metric gardens use imperial ones. */
  readonly units?: UnitSystem | undefined;
  /** Whether the garden lies south of the equator, where "this autumn" is March to May. */
  readonly southern?: boolean | undefined;
  /** "7/20" is the 20th of July; else a day in figures that can be two days is asked about. */
  readonly monthFirst?: boolean | undefined;
}

/** Words that mean nothing by themselves when all around them is understood. */
const fillers = new Set(
  "the a an of and & + plus some my our in into on at to from with by for x × all each".split(" "),
);

const joining = new Set(["and", "of", "plus"]);
const articles = new Set(["the", "a", "an"]);

export class Line {
  readonly text: string;
  readonly words: readonly Word[];
  readonly place: Place;
  readonly context: LineContext;
  readonly problems: Problem[] = [];
  /** The word after the last one that is told of; the day at the end of the line is cut off. */
  end: number;
  readonly #claimed: Uint8Array;

  constructor(text: string, words: readonly Word[], place: Place, context: LineContext) {
    this.text = text;
    this.words = words;
    this.place = place;
    this.context = context;
    this.end = words.length;
    this.#claimed = new Uint8Array(words.length);
  }

  get names(): Names {
    return this.context.names;
  }

  get system(): UnitSystem {
    return this.context.units ?? "metric";
  }

  /** The lower form of a word, "" outside the line. */
  lower(at: number): string {
    return at < this.end ? (this.words[at]?.lower ?? "") : "";
  }

  isClaimed(at: number): boolean {
    return this.#claimed[at] === 1;
  }

  claim(from: number, to: number): void {
    this.#claimed.fill(1, from, to);
  }

  /** The text of some words, as written. */
  slice(from: number, to: number): string {
    const [first, last] = [this.words[from], this.words[to - 1]];
    return first === undefined || last === undefined || to <= from ? "" : this.text.slice(first.start, last.end);
  }

  /** Everything in a stretch of words that nobody claimed, in order, its pieces set off by commas; undefined when nothing is left. */
  rest(from: number, to = this.end): string | undefined {
    const pieces: string[] = [];
    for (let left = this.#left(from, to); left !== undefined; left = this.#left(left.next, to)) {
      if (left.end > left.from) pieces.push(this.slice(left.from, left.end));
    }
    return pieces.length === 0 ? undefined : pieces.join(", ");
  }

  /** The first words from there on that nobody claimed, up to a comma. */
  firstLeft(from: number): { readonly from: number; readonly end: number } | undefined {
    let left = this.#left(from, this.end);
    while (left !== undefined && left.end <= left.from) left = this.#left(left.next, this.end);
    if (left === undefined) return undefined;
    const start = left.from;
    const comma = this.words.slice(start, left.end).findIndex((word) => /^[,;]$/.test(word.text));
    return { from: start, end: comma < 0 ? left.end : start + comma };
  }

  /** The next run of unclaimed words, without the separators and fillers that join it to what was understood. */
  #left(from: number, to: number): { readonly from: number; readonly end: number; readonly next: number } | undefined {
    let start = from;
    while (start < to && this.#claimed[start]) start += 1;
    if (start >= to) return undefined;
    let next = start;
    while (next < to && !this.#claimed[next]) next += 1;
    let end = next;
    while (start < end && this.#joins(start)) start += 1;
    while (end > start && (this.#joins(end - 1) || articles.has(this.lower(end - 1)))) end -= 1;
    const empty = this.words.slice(start, end).every((word) => word.kind === "mark" || fillers.has(word.lower));
    return { from: start, end: empty ? start : end, next };
  }

  #joins(at: number): boolean {
    const word = this.words[at];
    if (word === undefined) return true;
    if (word.kind === "mark") return /^[,;:.–—-]$/.test(word.text) || this.#isLoneBracket(at);
    return joining.has(word.lower);
  }

  /** A bracket whose partner was understood. */
  #isLoneBracket(at: number): boolean {
    const text = this.words[at]?.text;
    if (text !== "(" && text !== ")") return false;
    const step = text === "(" ? 1 : -1;
    for (let other = at + step; other >= 0 && other < this.end && !this.#claimed[other]; other += step) {
      if (this.words[other]?.text === (text === "(" ? ")" : "(")) return false;
    }
    return true;
  }
}
