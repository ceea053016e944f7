/** Names close to what somebody typed, for a jump to a variety whose name was only heard. */
import { soundOf } from "./sound-of.ts";

export interface Named {
  readonly name: string;
  readonly href: string;
  /** How else it is written, and how it is said. */
  readonly also: readonly string[];
}

/** Offered at once; more would be a list to read. */
const AT_MOST = 6;

/** Closest first: names that begin so, then names with a word that begins so, then names a few slips away. */
export function closeNames(typed: string, names: readonly Named[]): readonly Named[] {
  const ranked = names.flatMap((named) => {
    const best = closeness(typed, named);
    return Number.isFinite(best) ? [{ named, best }] : [];
  });
  // Sorting keeps the list's own order among equals.
  return ranked
    .sort((a, b) => a.best - b.best)
    .slice(0, AT_MOST)
    .map(({ named }) => named);
}

/** The highest that is no slip: a word of the name begins as it was typed, or sounds so. */
export const SURE = 2.5;

/** 0 is the name itself; infinity is far from it. */
export function closeness(typed: string, named: Pick<Named, "name" | "also">): number {
  const asked = plain(typed);
  if (asked.length < 2) return Number.POSITIVE_INFINITY;
  const heard = soundOf(asked);
  return Math.min(...spellingsOf(named).map(({ letters, sound }) => rankBoth({ asked, heard }, letters, sound)));
}

/** By its letters; by its sound half a step behind. */
function rankBoth(
  { asked, heard }: { readonly asked: string; readonly heard: string },
  letters: string,
  sound: string,
) {
  const spelled = rank(asked, letters);
  return spelled <= 1 || heard.length < 4 ? spelled : Math.min(spelled, rank(heard, sound) + 0.5);
}

interface Spelling {
  readonly letters: string;
  readonly sound: string;
}

/** Names stay the same while somebody types. */
const spellings = new WeakMap<object, readonly Spelling[]>();

function spellingsOf(named: Pick<Named, "name" | "also">): readonly Spelling[] {
  const known = spellings.get(named);
  if (known !== undefined) return known;
  const made = [named.name, ...named.also].map(plain).map((letters) => ({ letters, sound: soundOf(letters) }));
  spellings.set(named, made);
  return made;
}

function rank(asked: string, name: string): number {
  if (name === asked) return 0;
  if (name.startsWith(asked)) return 1;
  const words = name.split(" ");
  if (words.some((_, index) => words.slice(index).join(" ").startsWith(asked))) return 2;
  const allowed = Math.floor(asked.length / 3);
  if (allowed === 0) return Number.POSITIVE_INFINITY;
  // A few slips in the whole name, in its beginning while it is still being typed, in one word of it, or in its last words.
  const tails = asked.includes(" ") ? words.map((_, index) => words.slice(index).join(" ")) : [];
  const tries = [name, name.slice(0, asked.length), ...words.filter((word) => word.length > 3), ...tails];
  const slips = Math.min(...tries.map((text) => slipsBetween(asked, text, allowed)));
  return slips <= allowed ? 2 + slips : Number.POSITIVE_INFINITY;
}

/** Without case, accents, hyphens and apostrophes; "&" is read as "and". */
export function plain(text: string): string {
  return text
    .normalize("NFD")
    .replace(/[\u0300-\u036f'’]/gu, "")
    .toLowerCase()
    .replaceAll("&", " and ")
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}

/** Letters left out, put in, changed or swapped with their neighbour (optimal string alignment); more than `most` is only more. */
function slipsBetween(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row += 1) {
    const now = [row];
    for (let column = 1; column <= b.length; column += 1) {
      const isSame = a[row - 1] === b[column - 1];
      let slips = Math.min(
        (last[column] as number) + 1,
        (now[column - 1] as number) + 1,
        (last[column - 1] as number) + (isSame ? 0 : 1),
      );
      if (row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1])
        slips = Math.min(slips, (before[column - 2] as number) + 1);
      now.push(slips);
    }
    if (Math.min(...now) > most) return most + 1;
    before = last;
    last = now;
  }
  return last[b.length] as number;
}
