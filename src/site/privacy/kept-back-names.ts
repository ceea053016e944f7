/**
 * What records that are kept back are called, and where a text calls them so. A name that something public has too, or a
 * crop, gives nothing away.
 */
import type { Garden, Records } from "../../model.ts";
import { namesOf, wordsOf } from "./private-phrases.ts";

/** Records that people speak of by name. */
const KINDS = ["sites", "beds", "varieties", "gear", "trials"] as const;

export type NamedRecords = Pick<Records, (typeof KINDS)[number]>;

export interface KeptBackNames {
  /** Whether any record is kept back, named like a public one or not. */
  readonly some: boolean;
  /** The name as written, by its letters and digits without spaces: "thiefproofbed". */
  readonly byLetters: ReadonlyMap<string, string>;
}

/** `open` is what viewers may see of the records. */
export function namesKeptBack(
  all: NamedRecords & Pick<Garden, "crops">,
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
  for (const letters of known) secret.delete(letters);
  return { some: KINDS.some((kind) => open[kind].size < all[kind].size), byLetters: secret };
}

export function lettersOf(name: string): string {
  return wordsOf(name).join("");
}

/**
 * The first name in a text, however its words are parted and with an "s" after it, or undefined. A name of one word is
 * taken for it only with a capital letter: "the Shed" is a place, "the shed" may be any.
 */
export function keptBackNameIn(text: string, { byLetters }: KeptBackNames): string | undefined {
  if (byLetters.size === 0) return undefined;
  const written = text.match(/[\p{L}\p{N}\p{M}'’]+/gu) ?? [];
  const words = written.map(lettersOf);
  const longest = Math.max(...[...byLetters.keys()].map(({ length }) => length));
  for (const [from, first] of words.entries()) {
    let run = first;
    for (let to = from; to < words.length && run.length <= longest + 1; to += 1, run += words[to]) {
      const name = byLetters.get(run) ?? (run.endsWith("s") ? byLetters.get(run.slice(0, -1)) : undefined);
      if (name === undefined) continue;
      if (wordsOf(name).length > 1 || /^\p{Lu}/u.test(written[from] ?? "")) return name;
    }
  }
  return undefined;
}
