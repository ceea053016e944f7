/** Words that gardeners write into the cells of their tables. */

/** Cells that say that there is nothing to say. */
const nothing = /^(?:[-–—?.]+|n\/?a|none|nil|tbc|unknown)$/i;

const yes = /^(?:yes|y|true|x|1|private|perennial|✓|✔)$/i;
const no = /^(?:no|n|false|0|public|annual)$/i;

const obtainedWords: readonly (readonly [RegExp, string])[] = [
  [/^(?:bought|purchased|buy)$/i, "bought"],
  [/^(?:(?:seed )?swap(?:ped)?|swop(?:ped)?|traded?)$/i, "swapped"],
  [/^(?:own|own seeds?|saved|own saved(?: seed)?|saved seed|home ?saved(?: seed)?|self[- ]saved|my own)$/i, "saved"],
  [/^(?:gift|gifted|given|present)$/i, "gifted"],
  [/^(?:lent|loan)$/i, "lent"],
];

export function saysNothing(cell: string): boolean {
  return cell === "" || nothing.test(cell);
}

/** Undefined when it is neither yes nor no. */
export function yesOrNo(cell: string): boolean | undefined {
  return yes.test(cell) ? true : no.test(cell) ? false : undefined;
}

/** How a thing was obtained, in the word of the records: "own saved" is saved. */
export function obtainedCalled(cell: string): string | undefined {
  return obtainedWords.find(([words]) => words.test(cell))?.[1];
}
