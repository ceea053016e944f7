/** Names and verbs that may be meant by the letters before the caret. */

export interface Completing {
  readonly name: string;
  readonly kind: "verb" | "bed" | "variety";
}

export interface Completion {
  /** What they would stand in the place of. */
  readonly from: number;
  readonly to: number;
  readonly options: readonly Completing[];
}

/** What fits below a line on a phone. */
const MOST = 6;
/** Letters from which it is worth asking, and words of which a name is begun. */
const LEAST = 2;
const WORDS = 3;

/** Undefined where nothing is to be offered. The longest words before the caret that begin a name count. */
export function completionOf(text: string, caret: number, known: readonly Completing[]): Completion | undefined {
  const before = text.slice(0, caret);
  const starts = [...before.matchAll(/[\p{L}\p{N}][^\s,;:]*/gu)].map(({ index }) => index).slice(-WORDS);
  for (const from of starts) {
    const begun = folded(before.slice(from));
    if (begun.length < LEAST) continue;
    // Said to its end already.
    if (known.some(({ name, kind }) => kind !== "verb" && folded(name) === begun)) return undefined;
    const fits = known.filter(({ name, kind }) => {
      const whole = folded(name);
      if (kind === "verb" && from !== 0) return false;
      return whole !== begun && (whole.startsWith(begun) || (kind !== "verb" && whole.includes(` ${begun}`)));
    });
    const first = fits.filter(({ name }) => folded(name).startsWith(begun));
    const options = [...first, ...fits.filter((one) => !first.includes(one))].slice(0, MOST);
    if (options.length > 0) return { from, to: caret, options };
  }
  return undefined;
}

/** The line with a name in the place of what began it, and where the caret goes. */
export function completed(text: string, { from, to }: Completion, { name }: Completing) {
  const after = text.slice(to).trimStart();
  const front = `${text.slice(0, from)}${name} `;
  return { text: front + after, caret: front.length };
}

/** Without case, accents and apostrophes, as names are found in lines. */
function folded(text: string): string {
  return text
    .normalize("NFD")
    .replace(/\p{M}|['’]/gu, "")
    .toLowerCase();
}
