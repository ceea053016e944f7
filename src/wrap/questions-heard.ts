/** Questions to viewers and doubts spoken aloud: what is open after a film. */
import type { FilmHeard } from "./hear-film.ts";
import { moment } from "./moments.ts";
import { textOf } from "./phrases.ts";
import { spokenRules } from "./spoken-rules.ts";
import type { Word } from "./spoken-words.ts";
import type { Statement } from "./statements.ts";
import type { Stretch } from "./stops-heard.ts";
import { stretchAt } from "./word-ranges.ts";
import type { QuestionHeard } from "./wrap.ts";

const rules = spokenRules.filter(({ hears }) => hears !== "promise");

/** Questions that ask nobody: "is there?", "isn't it?", "would you believe it?", and what the speaker answers at once. */
const rhetorical =
  /\b(?:is|isn't|are|aren't|was|wasn't|does|doesn't|do|don't|has|hasn't|would|wouldn't) (?:there|it|they|he|she|you|we|i)$|^(?:right |ok |well )?(?:is it|are we|shall we|you know|what else)\b/;
/** A question to viewers speaks to them or of them. */
const asksViewers = /\b(?:you|your|anybody|anyone|somebody|someone)\b/;

/** Words before and after what a rule heard that are quoted where a statement of automatic captions runs on. */
const QUOTED_BEFORE = 8;
const QUOTED_AFTER = 12;

export function questionsHeard(film: FilmHeard, stretches: readonly Stretch[]): readonly QuestionHeard[] {
  const { words, punctuated } = film.speech;
  return film.statements.flatMap((statement) => {
    const rule = ruleOf(statement);
    if (rule === undefined) return [];
    const before = statement.text.slice(0, rule.index).split(" ").length - 1;
    const from = punctuated ? statement.from : Math.max(statement.from, statement.from + before - QUOTED_BEFORE);
    const to = punctuated ? statement.to : Math.min(statement.to, statement.from + before + QUOTED_AFTER);
    const bed = stretchAt(stretches, from)?.bed;
    return [
      { kind: rule.kind, ...moment((words[from] as Word).at), said: textOf(words, from, to), bed, rule: rule.id },
    ];
  });
}

interface RuleMet {
  readonly id: string;
  readonly kind: QuestionHeard["kind"];
  /** Letters into the statement. */
  readonly index: number;
}

function ruleOf({ text, asks }: Statement): RuleMet | undefined {
  for (const { id, words, unless, hears } of rules) {
    const met = words.exec(text);
    if (met !== null && unless?.test(text) !== true) {
      return { id, kind: hears === "doubt" ? "doubt" : "question to viewers", index: met.index };
    }
  }
  if (!asks || !asksViewers.test(text) || rhetorical.test(text)) return undefined;
  return { id: "question/asked", kind: "question to viewers", index: 0 };
}
