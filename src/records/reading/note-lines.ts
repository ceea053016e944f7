/** The lines that a paragraph holds, and what a heading says for the lines below it. */
import type { Day } from "../../model.ts";
import { wordsOf } from "../line-words.ts";
import type { StoryPiece } from "../note-tree.ts";
import { sentencesOf } from "./clauses.ts";
import { dayAt } from "./days.ts";
import { lemmasFrom } from "./lemmas.ts";

export interface SaidLine {
  readonly text: string;
  readonly line: number;
  readonly column: number;
  /** A sentence among others. */
  readonly prose: boolean;
  /** What the column heads of a table say was done. */
  readonly head?: string | undefined;
}

/** A line that ends like this goes on in the next one. */
const goesOn =
  /(?:[,;&+×–-]|\b(?:in|into|from|to|of|on|at|and|or|with|by|near|under|the|an?|for|between|that|which|is|was|had|my|i|we))$/i;
const begins = /^(?:\p{Lu}|\d|\[|\||["“‘(*•→]|\p{Extended_Pictographic})/u;

export function linesOf({ paragraph, lines, line, column }: StoryPiece): readonly SaidLine[] {
  if (paragraph === undefined) return [];
  if (lines?.every(({ text }) => text.startsWith("|"))) return rowsOf(lines);
  if (paragraph.startsWith("|")) return [{ text: paragraph, line, column, prose: false }];
  // Lines far shorter than a wrapped paragraph's are a note each, and so are those that all begin anew.
  const mean = lines === undefined ? 0 : paragraph.length / lines.length;
  const ends = (at: number) => !goesOn.test(lines?.[at - 1]?.text ?? "");
  const apart =
    lines?.every(({ text }, at) => at === 0 || (ends(at) && (mean < 50 || (mean < 90 && begins.test(text))))) === true;
  if (apart) return (lines ?? []).filter(({ text }) => text !== "").map((one) => ({ ...one, prose: false }));
  const sentences = sentencesOf(paragraph, wordsOf(paragraph));
  return sentences.map((text) => ({ text, line: lineOf(text, lines) ?? line, column, prose: sentences.length > 1 }));
}

/** The line of the file in which a sentence begins. */
function lineOf(sentence: string, lines: StoryPiece["lines"]): number | undefined {
  const start = sentence.slice(0, 24);
  return lines?.find(({ text }) => text.includes(start))?.line;
}

/** Rows of a table without its head and rule; a head that says what was done says it for every row. */
function rowsOf(lines: NonNullable<StoryPiece["lines"]>): readonly SaidLine[] {
  const isRule = ({ text }: { readonly text: string }) => /^[\s|:-]+$/.test(text) && text.includes("-");
  const [first, second] = lines;
  const headed = first !== undefined && second !== undefined && isRule(second);
  const head = headed
    ? first.text
        .split("|")
        .map(verbOfHeading)
        .find((verb) => verb !== undefined)
    : undefined;
  return lines
    .slice(headed ? 2 : 0)
    .filter((one) => !isRule(one))
    .map((one) => ({ ...one, prose: false, head }));
}

/** "Sown", "Harvest today": a heading of few words that says what was done. */
export function verbOfHeading(title: string): string | undefined {
  const words = wordsOf(title.replace(/:\s*$/, "")).filter(({ kind }) => kind === "word");
  const [first] = words;
  if (first === undefined || words.length > 3) return undefined;
  return words.some(({ lower }) => lemmasFrom(lower).some((lemma) => lemma.words.length === 1))
    ? title.replace(/:\s*$/, "").trim()
    : undefined;
}

/** "14 May", "Saturday", "10.9.": the day that a heading gives the lines below it. */
export function dayOfHeading(title: string, noteDay: Day, monthFirst: boolean): Day | undefined {
  const words = wordsOf(title);
  for (let at = 0; at < Math.min(3, words.length); at++) {
    const found = dayAt(words, at, noteDay, monthFirst);
    if (found === undefined || found.day > noteDay) continue;
    // "Sat 3 May": the date says more than the weekday.
    const more = dayAt(words, found.end, noteDay, monthFirst);
    return more !== undefined && more.day <= noteDay ? more.day : found.day;
  }
  return undefined;
}
