/**
 * Clean captions to what an automatic captioner would have heard: small letters, no marks, some numbers in digits, some
 * words taken for others, and most names taken for words it knows. Everything by one seed.
 */
import type { Variety } from "../../src/model.ts";
import type { Word } from "../../src/wrap/spoken-words.ts";
import { type Random, randomFrom } from "../random.ts";
import { type Ear, hear } from "./mis-hear.ts";
import { type NameSaid, namesSaid } from "./names-said.ts";
import { plain, pronounce, pronounceName } from "./pronounce.ts";

export interface HeardWord {
  readonly text: string;
  /** Milliseconds. */
  readonly at: number;
  readonly end: number;
}

/** One name in the automatic captions. `word` and `words` count in the automatic words. */
export interface NameTruth {
  readonly at: number;
  readonly variety: string;
  readonly said: string;
  readonly heard: string;
  readonly kind: "right" | "mangled";
  readonly word: number;
  readonly words: number;
}

/** Share of names the captioner knows after all, and of other words it takes for another. */
const KNOWN_NAME = 0.2;
const OTHER_WORD = 0.015;
const FILLER = 0.06;
const DIGITS = 0.6;
/** Milliseconds a letter is spoken at most. */
const LETTER = 110;

export function automaticWords(
  words: readonly Word[],
  varieties: Iterable<Variety>,
  ear: Ear,
  seed: string,
): { readonly words: readonly HeardWord[]; readonly names: readonly NameTruth[] } {
  const random = randomFrom(seed);
  const said = new Map(namesSaid(words, varieties).map((name) => [name.word, name]));
  const heard: HeardWord[] = [];
  const names: NameTruth[] = [];
  for (let at = 0; at < words.length; at += 1) {
    const name = said.get(at);
    const span = words.slice(at, at + (name?.words ?? 1));
    const from = (span[0] as Word).at;
    // A word before a silence is not drawn out until the next one.
    const length = span.reduce((sum, { plain }) => sum + plain.length, 0);
    const to = Math.max(
      from + 120,
      Math.min(words[at + span.length]?.at ?? Number.POSITIVE_INFINITY, from + LETTER * length),
    );
    const texts =
      name === undefined ? ordinary(span[0] as Word, words[at - 1], ear, random) : nameHeard(name, ear, random);
    if (name !== undefined) {
      const inRecords = span.map(({ text }) => bare(text)).join(" ");
      const sounds = texts.join(" ");
      names.push({
        at: from,
        variety: name.variety,
        said: name.said,
        heard: sounds,
        kind: letters(sounds) === letters(inRecords) ? "right" : "mangled",
        word: heard.length,
        words: texts.length,
      });
      at += span.length - 1;
    }
    texts.forEach((text, index) => {
      const step = (to - from) / texts.length;
      heard.push({ text, at: Math.round(from + step * index), end: Math.round(from + step * (index + 1)) });
    });
  }
  return { words: heard, names };
}

function nameHeard({ said, sayAs }: NameSaid, ear: Ear, random: Random): readonly string[] {
  const known = said.split(/[\s-]+/).map(bare);
  if (random() < KNOWN_NAME) return known;
  const owner = /['’]s$/.test(said) && sayAs !== undefined;
  return hear(ear, [...pronounceName(said, sayAs), ...(owner ? ["Z"] : [])], random);
}

function ordinary(word: Word, before: Word | undefined, ear: Ear, random: Random): readonly string[] {
  const filler = /[.?!]/.test(before?.mark ?? "") && random() < FILLER ? [random() < 0.5 ? "um" : "uh"] : [];
  const text = plain(word.text);
  const number = random() < DIGITS ? digits(text) : undefined;
  const sounds = text.length > 3 && random() < OTHER_WORD ? pronounce(text) : undefined;
  const heard = number !== undefined ? [number] : sounds !== undefined ? hear(ear, sounds, random) : text.split("-");
  return [...filler, ...heard];
}

/** As the captioner writes a word it knows: small letters, apostrophes kept. */
function bare(text: string): string {
  return plain(text).replace(/[^a-z0-9' -]/g, "");
}

/** Letters and the spaces between words: an apostrophe or an owner's s more or less is no mis-hearing of a name. */
function letters(text: string): string {
  return text.replace(/'s$/, "").replaceAll("'", "").replaceAll("-", " ");
}

const tens = ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];
const ones = "one two three four five six seven eight nine".split(" ");
const ordinals = "first second third fourth fifth sixth seventh eighth ninth".split(" ");
const teens = "eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(" ");

/** "thirty-six" becomes "36", "twenty-second" "22nd"; smaller numbers stay words, as captioners leave them. */
function digits(text: string): string | undefined {
  const teen = teens.indexOf(text.replace(/th$/, ""));
  if (teen >= 0) return `${teen + 11}${text.endsWith("th") ? "th" : ""}`;
  if (tens.includes(text)) return String((tens.indexOf(text) + 2) * 10);
  const [ten = "", one = ""] = text.split("-");
  const value = (tens.indexOf(ten) + 2) * 10;
  if (value < 20 || one === "") return undefined;
  if (ones.includes(one)) return String(value + ones.indexOf(one) + 1);
  const ordinal = ordinals.indexOf(one) + 1;
  return ordinal === 0 ? undefined : `${value + ordinal}${["th", "st", "nd", "rd"][ordinal] ?? "th"}`;
}
