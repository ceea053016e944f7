/**
 * The words of a note line, each with where it stands, so that what is not understood can be kept as it was written.
 */

export interface Word {
  /** As written: "Musselburgh", "1.4", ",". */
  readonly text: string;
  /** Lower case without accents and apostrophes: what grammar words are compared by. */
  readonly lower: string;
  /** The lower form without its plural ending: what names are compared by. */
  readonly key: string;
  readonly kind: "word" | "number" | "fraction" | "mark";
  /** Offsets in the line. */
  readonly start: number;
  readonly end: number;
}

/** A word with inner apostrophes, a number with inner points or commas, a fraction sign, or any one other character. */
const wordPattern = /([\p{L}\p{M}]+(?:['’ʼ][\p{L}\p{M}]+)*)|(\d+(?:[.,]\d+)*)|([¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])|[^\s]/gu;
const marks = /[\u0300-\u036f'’ʼ]/g;
const plain = /^[a-z]*$/;

export function wordsOf(line: string): Word[] {
  const words: Word[] = [];
  for (const match of line.matchAll(wordPattern)) {
    const text = match[0];
    const lower = match[1] === undefined ? text : lowerForm(text);
    words.push({
      text,
      lower,
      key: match[1] === undefined ? text : singular(lower),
      kind:
        match[1] !== undefined
          ? "word"
          : match[2] !== undefined
            ? "number"
            : match[3] !== undefined
              ? "fraction"
              : "mark",
      start: match.index,
      end: match.index + text.length,
    });
  }
  return words;
}

/** Lower case, without accents and apostrophes: "Gardener’s" is "gardeners", "Café" is "cafe". */
export function lowerForm(text: string): string {
  const lower = text.toLowerCase();
  return plain.test(lower)
    ? lower
    : lower
        .normalize("NFD")
        .replace(marks, "")
        .replace(/[œæßøłđð]/g, (letter) => ligatures[letter] ?? letter);
}

/** Letters that have no accent to take away and are typed as others by who lacks them. */
const ligatures: Readonly<Record<string, string>> = { œ: "oe", æ: "ae", ß: "ss", ø: "o", ł: "l", đ: "d", ð: "d" };

/**
 * One form for a word and its plural. It is made for comparing, not for reading: "cherry" and "cherries" are "cherri",
 * "cloche" and "cloches" are "cloch", but "canes" are "cane" and "cans" are "can". Short words and words in -ss, -us and
 * -is stand as they are.
 */
export function singular(lower: string): string {
  let length = lower.length;
  if (length > 3 && lower[length - 1] === "s" && !"sui".includes(lower[length - 2] ?? "")) length -= 1;
  if (length > 3 && lower[length - 1] === "e" && losesE(lower, length - 2)) length -= 1;
  if (length > 3 && lower[length - 1] === "y") return `${lower.slice(0, length - 1)}i`;
  return length === lower.length ? lower : lower.slice(0, length);
}

/** Where a plural may have put its e: "boxes", "tomatoes", "peaches", "cherries". */
function losesE(lower: string, before: number): boolean {
  const letter = lower[before] ?? "";
  return "sxzoi".includes(letter) || (letter === "h" && "cs".includes(lower[before - 1] ?? ""));
}

/** Short words that are written with a point and go on behind it: "Mr. Whiskers", "St. Fiacre". */
const shortened = /^(?:mrs?|ms|dr|st|mt|prof|rev|fr|sr)$/;

/** Whether the mark at `at` is the point of such a word, so that the name goes on behind it. */
export function isPointOfName(words: readonly Word[], at: number): boolean {
  const [before, point, after] = [words[at - 1], words[at], words[at + 1]];
  if (point?.text !== "." || before?.kind !== "word" || after?.kind !== "word") return false;
  return before.end === point.start && shortened.test(before.lower) && isCapital(before) && isCapital(after);
}

/** Whether a word begins with a capital letter, as names do. */
export function isCapital(word: Word): boolean {
  const first = word.text.charCodeAt(0);
  if (first < 128) return first >= 65 && first <= 90;
  return word.kind === "word" && word.text[0] !== word.text[0]?.toLowerCase();
}
