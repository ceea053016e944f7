/** Promises by rule: statements whose words commit the speaker to something at a time or on a condition. */
import type { Day } from "../model.ts";
import { dueDay } from "../records/index.ts";
import { spokenOrdinal } from "./spoken-numbers.ts";
import { afterwards, conditionWords, laterWords, noPromise, type SpokenRule, spokenRules } from "./spoken-rules.ts";
import type { Speech, Word } from "./spoken-words.ts";
import { commitmentsIn, lower, type Statement } from "./statements.ts";

/** The day of the film, on which half of the earth its seasons are, and whether "7/20" is in July. */
export interface Spoken {
  readonly day: Day;
  readonly southern: boolean;
  readonly monthFirst?: boolean | undefined;
}

/** A stretch of the speech that a rule takes for a promise. */
export interface Ruled {
  readonly rule: SpokenRule;
  /** First word, and after the last. */
  readonly from: number;
  readonly to: number;
}

/** Milliseconds between two statements that are one promise: "We'll see. I'll let you know." */
const ONE_BREATH = 4000;
/** Words before a promise in which "when …" or "next time …" may open it. */
const OPENS_WITHIN = 10;

const rules = spokenRules.filter(({ hears }) => hears === "promise");

/** The statements a rule looks at: of captions without marks, cut around each commitment. */
export function committing({ words, punctuated }: Speech, whole: readonly Statement[]): readonly Statement[] {
  return punctuated ? whole : whole.flatMap((one) => commitmentsIn(one, words));
}

export function ruledPromises({ words }: Speech, statements: readonly Statement[], spoken: Spoken): readonly Ruled[] {
  const found: { rule: SpokenRule; from: number; to: number; last: number }[] = [];
  statements.forEach((one, at) => {
    const opened = withOpening(words, statements[at - 1], one);
    const rule = ruleFor(opened, spoken);
    if (rule === undefined) return;
    const before = found.at(-1);
    const follows = before?.last === at - 1 && one.at - (statements[at - 1] as Statement).at < ONE_BREATH;
    if (before !== undefined && follows && afterwards.test(one.text)) {
      before.to = one.to;
      before.last = at;
    } else found.push({ rule, from: opened.from, to: one.to, last: at });
  });
  return found;
}

/** Without one of these no rule holds; most statements have none. */
const mayPromise =
  /(?:'ll| will| shall| going to| yet to| still| remind me| hold me| aim to| mean to| plan to| fixing to| intend to| with you| for you| to you| in front of you| with me| camera)\b| (?:comes|coming|show|tell|film|measure|give|weigh|count|compare|get|have) |(?:'m|'re| am| are) [a-z]+ing\b/;

function ruleFor({ text, asks }: Statement, spoken: Spoken): SpokenRule | undefined {
  if (asks || !mayPromise.test(` ${text}`) || noPromise.test(text)) return undefined;
  const fitting = rules.filter(({ words, unless }) => words.test(text) && unless?.test(text) !== true);
  if (fitting.length === 0) return undefined;
  const due = dueOf(text, spoken);
  // "This week", said on a Sunday, is due that day and still a promise; "today" is none.
  const isTime =
    (due !== undefined && due >= spoken.day && !/\b(?:today|tonight)\b/.test(text)) || laterWords.test(text);
  return fitting.find(
    ({ needs }) => needs === "nothing" || isTime || (needs === "a time or a condition" && conditionWords.test(text)),
  );
}

/** Where the words of commitment begin. */
const commitment =
  /\b(?:i|we|you)(?:'ll| will| shall)\b|\b(?:i'm|i am|we're|we are) going to\b|\b(?:yet|still (?:have|need|want)|have still(?: got)?|remind me) to\b|\b(?:those|these|they) go (?:in|out)\b/;

/**
 * The first time said after the commitment; before it only what opens the statement counts: "come July I'll", not "I want
 * a lot of them this year and I'll".
 */
export function dueOf(said: string, { day, ...meant }: Spoken): Day | undefined {
  const text = inFigures(said);
  const begins = commitment.exec(text)?.index ?? 0;
  const after = dueDay(text.slice(begins), day, meant)?.day;
  if (after !== undefined) return after;
  const before = text.slice(0, begins);
  // "They'll be ripe about the Fourth of July and I'll let you know": what comes then is told of then.
  if (/ and $/.test(before)) return comesThen.test(before) ? dueDay(before, day, meant)?.day : undefined;
  const opening = dueDay(before, day, meant);
  if (opening !== undefined && opening.start <= FIRST_WORDS) return opening.day;
  // Captions without marks run on: "in lovely colours next february | i'll do it again".
  const last = before.trimEnd().split(" ").slice(-LAST_WORDS).join(" ");
  const led = dueDay(last, day, meant);
  return led !== undefined && last.length - led.end <= NEAR ? led.day : undefined;
}

const comesThen = /(?:'ll| will) be\b|\b(?:comes?|goes|go) (?:up|out|in|off|down|back)\b/;

const months = "january|february|march|april|may|june|july|august|september|october|november|december";
const ordinal =
  "(?:(?:twenty|thirty)[ -])?(?:first|second|third|fourth|fifth|sixth|seventh|eighth|ninth)|(?:ten|eleven|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen)th|twelfth|twentieth|thirtieth";
const datesInWords = new RegExp(
  `\\b(?:(${ordinal})( (?:of )?(?:${months}))|((?:${months}) (?:the )?)(${ordinal}))\\b`,
  "g",
);

/** "October twelfth" and "the third of October" as they would be written. */
function inFigures(said: string): string {
  if (!/(?:st|nd|rd|th)\b/.test(said)) return said;
  return said.replace(datesInWords, (whole, first?: string, month?: string, lead?: string, last?: string) => {
    const value = spokenOrdinal((first ?? last ?? "").split(/[ -]/), 0)?.value;
    if (value === undefined) return whole;
    return first === undefined ? `${lead?.replace(" the ", " ")}${value}` : `${value}${month}`;
  });
}

/** Words before the commitment in which a time may lead to it, and the most letters between the two. */
const LAST_WORDS = 6;
const NEAR = 8;

/** Letters from the beginning within which a time opens a statement. */
const FIRST_WORDS = 8;

/** "When I cut the first spear, / I'll do it on camera", "We'll see which is first. / I'll let you know": the words before belong to it. */
function withOpening(words: readonly Word[], before: Statement | undefined, one: Statement): Statement {
  if (before === undefined || one.at - before.at > 2 * ONE_BREATH) return one;
  const texts = words.slice(before.from, one.to).map(lower);
  const join = (from: number) => {
    const text = texts.slice(from).join(" ");
    return { ...one, from: before.from + from, at: (words[before.from + from] as Word).at, text };
  };
  if (
    /^(?:and |so |but )?(?:i|we)(?:'ll| will) (?:let you know|report back)\b/.test(one.text) &&
    /\bwe(?:'ll| will) see\b/.test(before.text)
  ) {
    return join(texts.findIndex((text) => text === "we'll" || text === "we"));
  }
  if (words[one.from - 1]?.mark === "." || !/^(?:i|we|you)(?:'ll| will| shall)\b/.test(one.text)) return one;
  const length = before.to - before.from;
  const opener = texts.findLastIndex(
    (text, at) => at < length && at >= length - OPENS_WITHIN && /^(?:when|if|once|next)$/.test(text),
  );
  return opener < 0 ? one : join(opener);
}
