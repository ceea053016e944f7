/** The spelling a person may have meant. It is offered only when it is close: a wrong guess is worse than none. */
import { distance } from "fastest-levenshtein";

/** The closest of the known words, at most two of them when they are equally close; none when nothing is close. */
export function nearestSpellings(word: string, known: Iterable<string>): readonly string[] {
  const wanted = word.toLowerCase();
  const limit = Math.max(1, Math.floor(wanted.length / 3));
  let best = limit + 1;
  let found: string[] = [];
  const digits = digitsOf(wanted);
  for (const candidate of known) {
    // "Row 2" is no slip for "Row 1".
    if (digitsOf(candidate) !== digits) continue;
    const steps = slips(wanted, candidate.toLowerCase());
    if (steps > best || steps > limit) continue;
    if (steps < best) {
      best = steps;
      found = [];
    }
    if (!found.includes(candidate)) found.push(candidate);
  }
  // Words of up to three letters are near to everything, and three equal guesses are no guess.
  return wanted.length <= 3 || found.length > 2 ? [] : found;
}

/** `Did you mean "shade"?`, or undefined when no spelling is close. */
export function didYouMean(word: string, known: Iterable<string>): string | undefined {
  const near = nearestSpellings(word, known);
  return near.length === 0 ? undefined : `Did you mean ${near.map((name) => `"${name}"`).join(" or ")}?`;
}

function digitsOf(word: string): string {
  return word.replace(/\D+/g, "");
}

/** Edit distance in which two neighbouring letters in the wrong order count as one slip, as the fingers make it. */
function slips(a: string, b: string): number {
  const steps = distance(a, b);
  if (steps !== 2 || a.length !== b.length) return steps;
  const at = [...a].findIndex((letter, index) => letter !== b[index]);
  return a[at] === b[at + 1] && a[at + 1] === b[at] ? 1 : steps;
}
