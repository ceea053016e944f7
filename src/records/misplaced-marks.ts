/**
 * Wishes to keep a file private that stand where nobody reads them: front matter that does not begin at the first byte,
 * and lines such as "private: true" below it or without any. What they mean is not guessed; the file is in doubt.
 */
import type { FileProblem } from "./file-problem.ts";

/** Lines from the top among which front matter may have slipped down. */
const HEAD_LINES = 12;

/** Hyphens as editors turn them into dashes, and the fences of other formats. */
const fence =
  /^(?:[-\u2010-\u2015\u2212\ufe58\ufe63\uff0d]{2,}|\+{3,}|;{3,}|```+\s?(?:ya?ml|toml)|~~~+\s?(?:ya?ml|toml))$/i;
const keyLine = /^["']?\p{L}[\p{L}\p{N}_-]*(?: [\p{L}\p{N}_-]+){0,3}["']?\s?[:=](?:\s|$)/u;

export type FileKind = "note" | "record";

/** Undefined when nothing stands out. `bodyAt` is the offset below the front matter that was read. */
export function misplacedMark(text: string, bodyAt: number, kind: FileKind): FileProblem | undefined {
  if (bodyAt === 0) {
    const line = slippedFrontMatter(text);
    if (line !== undefined) return notFirst(line);
  }
  const before = text.slice(0, bodyAt).split(/\r\n?|\n/).length - 1;
  let isFirst = true;
  for (const [index, line] of text
    .slice(bodyAt)
    .split(/\r\n?|\n/)
    .entries()) {
    const isHead = kind === "note" && beginsPart(line, isFirst);
    if (bare(line) !== "") isFirst = false;
    if (isHead) continue;
    if (line.length < LONGEST_MARK && looksLikeMark(line)) return unclear(line.trim(), before + index + 1);
  }
  return undefined;
}

/** A heading in a note keeps back what stands below it. One of the highest level that comes first may mean the whole note. */
function beginsPart(line: string, isFirst: boolean): boolean {
  return isFirst ? /^ {0,3}#{2,6}[ \t]/.test(line) : /^ {0,3}#{1,6}[ \t]/.test(line);
}

/** Number of the line on which front matter begins that is not at the head of the file. */
function slippedFrontMatter(text: string): number | undefined {
  const lines = text
    .slice(0, 8000)
    .split(/\r\n?|\n/, HEAD_LINES)
    .map(bare);
  const open = lines.findIndex((line) => fence.test(line));
  if (open < 0) return undefined;
  // Prose may hold a line across the page, and under it anything.
  if (lines.slice(0, open).some((line) => line !== "" && !line.startsWith("#"))) return undefined;
  return keyLine.test(lines.slice(open + 1).find((line) => line !== "") ?? "") ? open + 1 : undefined;
}

function bare(line: string): string {
  return line.replaceAll("\ufeff", "").trim();
}

/** Characters; a longer line is prose. */
const LONGEST_MARK = 80;

const YES =
  "(?:private?(?: note)?|privat|privée?|privado|keep private|is private|privacy|secret|hidden|draft|confidential|unlisted|geheim|vertraulich|versteckt)";
const NO = "(?:public|publi[sc]h(?:ed|able)?|show(?:n)?|öffentlich)";
const KIND = "(?:visibility|status|access|audience|tags?|categor(?:y|ies)|state)";
const WORD = "(?:private?|privat|secret|hidden|confidential|unlisted|geheim|vertraulich)";
const marks = [
  // "private: true", "secret = yes", "private:" but neither "private: no" nor "Secret: add lime every other year".
  new RegExp(`^${YES} ?[:=] ?(?!(?:false|no|off|0|nein)\\.?$)\\S*$`, "u"),
  new RegExp(`^(?:not )${NO}(?: ?[:=] ?\\S*)?$`, "u"),
  new RegExp(`^${NO} ?[:=] ?(?:false|no|off|0|never|nein|nie)$`, "u"),
  new RegExp(`^${KIND} ?[:=].*(?<!\\p{L})${WORD}(?!\\p{L})`, "u"),
  // A line that is nothing but the word: "#private", "[private]", "## Private".
  new RegExp(`^(?:${WORD}|not for publication|do not publish|nicht veröffentlichen)$`, "u"),
];

function looksLikeMark(line: string): boolean {
  const plain = bare(line)
    .toLowerCase()
    .replace(/["'*_`[\](){}#>!|]/g, "")
    .replace(/^\s*[-+]\s+/, "")
    .replace(/\s+/g, " ")
    .trim();
  return marks.some((mark) => mark.test(plain));
}

function notFirst(line: number): FileProblem {
  return {
    rule: "front-matter/not-first",
    line,
    column: 1,
    what: "This looks like front matter and is not read, so the file is kept private.",
    fix: "Let the very first line of the file be three plain hyphens (---), with nothing before them.",
  };
}

function unclear(words: string, line: number): FileProblem {
  return {
    rule: "privacy/mark-unclear",
    line,
    column: 1,
    what: `"${words}" looks like a wish to keep this private and is not read as one, so the file is kept private.`,
    fix: 'Write "private: true" or "private: false" between two lines of three hyphens at the head of the file, or say it in other words.',
  };
}
