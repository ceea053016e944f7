/**
 * Cuts long notes into sections that Markdown reads the same apart as together.
 *
 * The parser's time grows with the square of the text's length: 0.2 ms for a note of 300 bytes, 18 s for one of 1 MB
 * (measured on two cores). Notes of ordinary length are left whole.
 */
interface Section {
  readonly from: number;
  readonly to: number;
  /** False when the section is still too long to be parsed in reasonable time. */
  readonly readable: boolean;
}

/** A section is closed at the first good place after this many characters. */
const wanted = 4096;
/** A section that found no good place for so long is not parsed: about two seconds of work. */
const most = 262_144;

/** `from` is the offset at which the body begins; the sections cover all from there to the end. */
export function splitLongNote(text: string, from: number): readonly Section[] {
  if (text.length - from <= 2 * wanted) return [section(from, text.length)];
  const sections: Section[] = [];
  let start = from;
  let fence: string | undefined;
  let html: RegExp | undefined;
  let blankBefore = true;
  for (let at = from; at < text.length; ) {
    const next = text.indexOf("\n", at) + 1 || text.length;
    const line = text.slice(at, Math.min(next, at + 200));
    if (at - start >= wanted && fence === undefined && html === undefined && beginsBlock(line, blankBefore)) {
      sections.push(section(start, at));
      start = at;
    }
    const opened = /^ {0,3}(`{3,}|~{3,})/.exec(line)?.[1];
    if (fence === undefined && html === undefined) {
      fence = opened;
      html = fence === undefined ? htmlEnd(line) : undefined;
    } else if (fence !== undefined && opened?.startsWith(fence) && line.trim() === opened) {
      fence = undefined;
    }
    if (html?.test(text.slice(at, next))) html = undefined;
    blankBefore = line.trim() === "";
    at = next;
  }
  sections.push(section(start, text.length));
  return sections;
}

function section(from: number, to: number): Section {
  return { from, to, readable: to - from <= most };
}

/**
 * Whether a line begins a block of its own whatever stands before it: any unindented text after a blank line, or an
 * unindented bullet, which also ends a paragraph.
 */
function beginsBlock(line: string, blankBefore: boolean): boolean {
  return blankBefore ? /^[^\s]/.test(line) : /^[-*+] +[^\s]/.test(line);
}

/**
 * What ends a block of HTML that this line begins, by the start conditions of CommonMark 0.31, section 4.6; a blank line
 * for the ordinary tags.
 */
function htmlEnd(line: string): RegExp | undefined {
  if (!/^ {0,3}</.test(line)) return undefined;
  if (/^ {0,3}<(script|pre|style|textarea)\b/i.test(line)) return /<\/(script|pre|style|textarea)>/i;
  if (/^ {0,3}<!--/.test(line)) return /-->/;
  if (/^ {0,3}<\?/.test(line)) return /\?>/;
  if (/^ {0,3}<!\[CDATA\[/.test(line)) return /\]\]>/;
  if (/^ {0,3}<![a-z]/i.test(line)) return />/;
  return /^\s*$/;
}
