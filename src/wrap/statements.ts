/**
 * The speech in statements: sentences where the captions have marks. Automatic captions have none, so there a statement
 * ends where the speaker is silent, or begins anew ("it's", "there's", "they went") without a word before it on which the
 * new clause hangs ("and", "when", "which").
 */
import { endsSentence, type Speech, type Word } from "./spoken-words.ts";

export interface Statement {
  /** First word, and after the last, in the speech. */
  readonly from: number;
  readonly to: number;
  /** Milliseconds. */
  readonly at: number;
  /** Small letters, straight apostrophes, single spaces. */
  readonly text: string;
  /** Ends in a question mark. */
  readonly asks: boolean;
}

/** Milliseconds from one word to the next that end a statement. */
const SILENCE = 1800;
/** Fewest words of a statement before another begins, and most. */
const SHORTEST = 3;
const LONGEST = 40;
/** Words for which "when", "next time" and the like, at the beginning, keep a statement together with what follows. */
const OPENED = 10;

/** Words that begin a main clause by themselves. */
const anew = new Set(
  (
    "i'll i've i'm i'd it's that's there's here's he's she's they're they've they'll you've you'll you're we're we've we'll we'd what's now " +
    "right well anyway um uh"
  ).split(" "),
);
/** Words that begin one with what follows them. */
const anewWith: ReadonlyMap<string, RegExp> = new Map(
  Object.entries({
    i: /^(?:was|had|have|want|know|can|can't|do|don't|did|didn't|think|picked|put|said|cut|kept|never|took|got|grew|sowed|planted|weighed|looked|saw|still|always|lost|dug|need|will|shall)$/,
    we: /^(?:had|have|can|could|were|are|got|lost|put|will|shall|still|never)$/,
    you: /^(?:can|can't|could|grow|sow|know|leave|move|have|want|don't|won't|will|need|eat|see)$/,
    they: /^(?:were|are|went|go|had|have|want|came|come|don't|didn't|can|stay|sulk|get|got)$/,
    it: /^(?:was|is|had|has|took|went|came|doesn't|didn't|won't|can|had)$/,
    this: /^(?:is|was|one)$/,
    these: /^(?:are|were|ones)$/,
    those: /^(?:are|were|went)$/,
    so: /^(?:i|i'll|i've|it's|that's|there's|they|this|we|we'll)$/,
    come: /^(?:january|february|march|april|may|june|july|august|september|october|november|december|spring|summer|autumn|winter)$/,
    next: /^time$/,
  }),
);
/** Beginnings that carry over to the clause after them: "come july i'll", "when i cut the first spear i'll". */
const opensTime = /^(?:and |so |but )?(?:in|come|next|by|when|if|once)$/;
/** Words on which the next clause hangs. */
const hangsOn = new Set(
  (
    "and or when if which whether that because how what while until till as than where why who but so then before after once said think " +
    "thought know see tell you like though although believe say says hope the a in is was me since for now right well um uh there of"
  ).split(" "),
);

export function statementsOf({ words, punctuated }: Speech): readonly Statement[] {
  const texts = words.map(lower);
  const found: Statement[] = [];
  let from = 0;
  for (let at = 1; at <= words.length; at += 1) {
    const [before, word] = [words[at - 1] as Word, words[at]];
    const ends =
      word === undefined ||
      endsSentence(before) ||
      (!punctuated && (isSilent(before, word) || at - from >= LONGEST || isNew(texts, from, at)));
    if (!ends) continue;
    const cut = word !== undefined && at - from >= LONGEST ? clauseBefore(texts, from, at) : at;
    found.push(statementOf(words, from, cut, texts.slice(from, cut)));
    from = cut;
  }
  return found;
}

/** Where a statement that grew too long is cut: at the last word that may open a clause, and not in the middle of "i'll / tell". */
function clauseBefore(texts: readonly string[], from: number, at: number): number {
  for (let cut = at; cut > at - LONGEST / 2; cut -= 1) {
    if (cut - from >= SHORTEST && opensClause.test(texts[cut] ?? "") && !hangsOn.has(texts[cut - 1] ?? "")) return cut;
  }
  return at;
}

const opensClause = /^(?:next|when|if|once|come|so|but|and|now|then|let|over)$/;

/** Nobody stops after "in" or "and", whatever the times of automatic captions say. */
function isSilent(before: Word, word: Word): boolean {
  return word.at - before.at > SILENCE && !hangsOn.has(lower(before));
}

/** Beginnings that no clause before them runs into, whatever its last word: "…taller than me / now over here". */
const turns = /^(?:now (?:over|here|we're)|let me know|next (?:week|month|year|time) (?:i'll|we'll|i'm|we're))\b/;

function isNew(texts: readonly string[], from: number, at: number): boolean {
  const [before = "", word = "", next = ""] = texts.slice(at - 1, at + 2);
  if (at - from < SHORTEST) return false;
  if (turns.test(texts.slice(at, at + 3).join(" "))) return !/^(?:and|the|you|they|to|please)$/.test(before);
  if (hangsOn.has(before)) return false;
  if (!anew.has(word) && anewWith.get(word)?.test(next) !== true) return false;
  const opening = texts.slice(from, from + 2);
  const carried = opensTime.test(opening[0] ?? "") || opensTime.test(opening.join(" "));
  return !(carried && at - from < OPENED);
}

/** Words of commitment: "i'll", "we will", "you'll", "i'm going to". */
const commits = /^(?:i'll|we'll|you'll|i'm going to)$/;
const commitsWith: ReadonlyMap<string, RegExp> = new Map(
  Object.entries({
    i: /^(?:will|shall)$/,
    we: /^(?:will|shall)$/,
    you: /^(?:will|shall)$/,
    "i'm": /^going(?: to)?$/,
    "we're": /^going(?: to)?$/,
  }),
);

/** Words after a commitment within which it must have said what and when, and words before it that may open it. */
const SAID_WITHIN = 18;
const OPENS = 12;

/**
 * A run-on statement of automatic captions, cut around each commitment in it: two that are joined by "and" are one, and
 * nothing said long after one belongs to it.
 */
export function commitmentsIn(one: Statement, words: readonly Word[]): readonly Statement[] {
  if (one.to - one.from <= SAID_WITHIN) return [one];
  const texts = words.slice(one.from, one.to).map(lower);
  const at = texts.flatMap((text, index) =>
    commits.test(text) || commitsWith.get(text)?.test(texts[index + 1] ?? "") === true ? [index] : [],
  );
  const first = at.filter(
    (index, nth) => nth === 0 || !(texts[index - 1] === "and" && index - (at[nth - 1] as number) < 12),
  );
  if (first.length === 0) return [one];
  return first.map((index, nth) => {
    const next = first[nth + 1];
    const from = Math.max(index - OPENS, nth === 0 ? 0 : (first[nth - 1] as number) + SHORTEST);
    const begins = nth === 0 && index <= OPENS ? 0 : opening(texts, from, index);
    const to = Math.min(
      next === undefined ? texts.length : opening(texts, index + SHORTEST, next),
      index + SAID_WITHIN,
    );
    const text = texts.slice(begins, to).join(" ");
    return { ...one, from: one.from + begins, to: one.from + to, at: (words[one.from + begins] as Word).at, text };
  });
}

/** Where the clause that ends in a commitment begins: at "when", "if", "next time", "come July", else at the commitment. */
function opening(texts: readonly string[], from: number, index: number): number {
  const found = texts.slice(from, index).findLastIndex((text) => /^(?:when|if|once|next|come)$/.test(text));
  return found < 0 ? index : from + found;
}

function statementOf(words: readonly Word[], from: number, to: number, texts: readonly string[]): Statement {
  return { from, to, at: (words[from] as Word).at, text: texts.join(" "), asks: words[to - 1]?.mark === "?" };
}

/** Words of the speech as a statement. */
export function statement(words: readonly Word[], from: number, to: number): Statement {
  return statementOf(words, from, to, words.slice(from, to).map(lower));
}

/** A word as rules look at it: "gonna" is "going to", "y'all" is "you". */
export function lower({ text }: Word): string {
  let word = known.get(text);
  if (word === undefined) {
    const small = text.toLowerCase().replaceAll("’", "'");
    word = plainly.get(small) ?? small;
    if (known.size > 100_000) known.clear();
    known.set(text, word);
  }
  return word;
}

/** A film has few words, and each is asked for again and again. */
const known = new Map<string, string>();

/** Spoken forms that captions write as they sound. */
const plainly: ReadonlyMap<string, string> = new Map(
  Object.entries({
    gonna: "going to",
    gunna: "going to",
    imma: "i'm going to",
    wanna: "want to",
    gotta: "have got to",
    lemme: "let me",
    "y'all": "you",
    yall: "you",
    ya: "you",
    ye: "you",
    yous: "you",
    youse: "you",
    yiz: "you",
    "ye'll": "you'll",
    "yous'll": "you'll",
    "y'all'll": "you'll",
  }),
);
