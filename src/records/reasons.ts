/** Why something was done, at the end of a line: "because of the moth last year", "so that it dries", "to keep the fly off". */
import type { EventKind } from "../model.ts";
import { wordsOf } from "./line-words.ts";
import type { Names } from "./names.ts";

/** What people do on purpose; why plants were lost is a cause, and what ails them needs no reason. */
const done: ReadonlySet<EventKind> = new Set([
  ...(["sowed", "planted", "potted on", "thinned", "did", "moved", "cleared", "put up", "took down"] as const),
  ...(["gave away", "sold", "acquired", "preserved", "plan"] as const),
]);

const reason =
  /[\s,;]+(?:[-–—]\s*|\()?(because\b.+|so\sthat\b.+|in\sorder\sto\b.+|to\skeep\b[^,;]+\b(?:off|out|away|at\sbay|in|down|warm|cool|dry|moist|shaded|from\s[^,;]+))\)?[\s.]*$/iu;

/** A line's text without its reason, and the reason as said. What names a bed behind it is no end of a line. */
export function withoutReason(
  text: string,
  kind: EventKind,
  names: Names,
): { readonly text: string; readonly reason?: string | undefined } {
  if (!done.has(kind)) return { text };
  const found = reason.exec(text);
  const why = found?.[1];
  if (found === null || why === undefined || namesBedBehind(why, names)) return { text };
  return { text: text.slice(0, found.index), reason: why.replace(/(?<![\s.])[\s.]+$/u, "") };
}

function namesBedBehind(why: string, names: Names): boolean {
  const words = wordsOf(why);
  return words.some((word, at) => {
    if (word.text !== ",") return false;
    const noun = /^(?:in|into|from|at|on|to)$/u.test(words[at + 1]?.lower ?? "") ? at + 2 : at + 1;
    const bed = words[noun]?.lower === "the" ? noun + 1 : noun;
    return names.at("bed", words, bed) !== undefined;
  });
}
