/** Jumps by first letter into a list that is too long to look through. */
import type { Link } from "./shapes.ts";

/** Entries from which on letters lead into them: about three screens of a phone. */
const LONG = 24;

export interface LetterJumps {
  readonly links: readonly Link[];
  /** The anchor of an entry's name: only the first one under a letter has one. */
  anchorOf(index: number): string | undefined;
}

/** `names` stand in the list's order; `prefix` is what the anchors begin with. */
export function letterJumps(names: readonly string[], prefix: string): LetterJumps {
  const first = new Map<string, number>();
  if (names.length >= LONG)
    for (const [index, name] of names.entries()) {
      const letter = firstLetter(name);
      if (!first.has(letter)) first.set(letter, index);
    }
  const anchors = new Map([...first].map(([letter, index]) => [index, `${prefix}-${letter.toLowerCase()}`]));
  return {
    links: [...first].map(([text, index]) => ({ text, href: `#${encodeURIComponent(anchors.get(index) ?? "")}` })),
    anchorOf: (index) => anchors.get(index),
  };
}

/** Without its accent, as lists in books have it. */
export function firstLetter(name: string): string {
  return [...name.normalize("NFD")][0]?.toUpperCase() ?? "";
}
