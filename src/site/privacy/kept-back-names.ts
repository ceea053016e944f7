/**
 * What records that are kept back are called, and where a text calls them so. A name that something public has too, or a
 * crop, gives nothing away.
 */
import { distance } from "fastest-levenshtein";
import type { Garden, Records } from "../../model.ts";
import { namesOf, wordsOf } from "./private-phrases.ts";

/** Records that people speak of by name. */
const KINDS = ["sites", "beds", "varieties", "gear", "trials"] as const;

/** By the key of its meaning: what a word of the garden's own list may name. */
const OWN_WORDS = [
  ["bed", "beds"],
  ["variety", "varieties"],
  ["gear", "gear"],
] as const;

export type NamedRecords = Pick<Records, (typeof KINDS)[number]>;

export interface KeptBackNames {
  /** Whether any record is kept back, named like a public one or not. */
  readonly some: boolean;
  /** The name as written, by its letters and digits without spaces: "thiefproofbed". */
  readonly byLetters: ReadonlyMap<string, string>;
  /** By letters: what public records and crops are called, which is no slip for anything. */
  readonly known: ReadonlySet<string>;
}

/** `open` is what viewers may see of the records. */
export function namesKeptBack(
  all: NamedRecords & Pick<Garden, "crops" | "episodes" | "notes" | "words">,
  open: Pick<NamedRecords, (typeof KINDS)[number]>,
): KeptBackNames {
  const secret = new Map<string, string>();
  const known = new Set([...all.crops.values()].flatMap(({ name, plural }) => [lettersOf(name), lettersOf(plural)]));
  for (const kind of KINDS) {
    for (const [id, record] of all[kind]) {
      for (const name of namesOf(record)) {
        const letters = lettersOf(name);
        if (letters === "") continue;
        if (open[kind].has(id)) known.add(letters);
        else secret.set(letters, name);
      }
    }
  }
  // "the hole: Secret Nursery" in the garden's own words.
  for (const { word, means } of all.words) {
    const isSecret = OWN_WORDS.some(([key, kind]) => {
      const id = (means as Partial<Record<typeof key, string>>)[key] ?? "";
      return all[kind].has(id) && !open[kind].has(id);
    });
    if (isSecret) secret.set(lettersOf(word.replace(/^the /i, "")), word);
  }
  for (const { title, private: isPrivate } of all.episodes.values()) if (isPrivate) secret.set(lettersOf(title), title);
  // A note is often called by a word that may be anything.
  for (const { title = "", private: isPrivate } of all.notes)
    if (isPrivate && wordsOf(title).length > 1) secret.set(lettersOf(title), title);
  secret.delete("");
  for (const letters of known) secret.delete(letters);
  return { some: KINDS.some((kind) => open[kind].size < all[kind].size), byLetters: secret, known };
}

export function lettersOf(name: string): string {
  return wordsOf(name).join("");
}

/**
 * The first name in a text, however its words are parted, with an "s" after it or a slip in it, or undefined. A name of one
 * word is taken for it only with a capital letter: "the Shed" is a place, "the shed" may be any.
 */
export function keptBackNameIn(text: string, { byLetters, known }: KeptBackNames): string | undefined {
  if (byLetters.size === 0) return undefined;
  // Parted at each apostrophe too, since words in a row are compared as one: "'Shed'", "Granny's yard".
  const written = text.match(/[\p{L}\p{N}][\p{L}\p{N}\p{M}]*/gu) ?? [];
  const words = written.map(lettersOf);
  const longest = Math.max(...[...byLetters.keys()].map(({ length }) => length)) + MOST_SLIPS;
  for (const [from, first] of words.entries()) {
    let run = first;
    for (let to = from; to < words.length && run.length <= longest; to += 1, run += words[to]) {
      const name = byLetters.get(run) ?? (run.endsWith("s") ? byLetters.get(run.slice(0, -1)) : undefined);
      const meant = name ?? (known.has(run) ? undefined : slipFor(run, byLetters));
      if (meant === undefined) continue;
      if (wordsOf(meant).length > 1 || /^\p{Lu}/u.test(written[from] ?? "")) return meant;
    }
  }
  return undefined;
}

const MOST_SLIPS = 2;

/** Letters of a name from which one may be wrong, and from which two may. */
const ONE_SLIP_FROM = 8;
const TWO_SLIPS_FROM = 13;

function slipFor(run: string, byLetters: ReadonlyMap<string, string>): string | undefined {
  if (run.length < ONE_SLIP_FROM - 1) return undefined;
  for (const [letters, name] of byLetters) {
    const allowed = letters.length < ONE_SLIP_FROM ? 0 : letters.length < TWO_SLIPS_FROM ? 1 : MOST_SLIPS;
    // The first letter is rarely the wrong one, and asking for it spares nearly every comparison.
    if (allowed === 0 || run[0] !== letters[0] || Math.abs(run.length - letters.length) > allowed) continue;
    // "Row 2" is no slip for "Row 1".
    if (run.replace(/\D/g, "") === letters.replace(/\D/g, "") && distance(run, letters) <= allowed) return name;
  }
  return undefined;
}
