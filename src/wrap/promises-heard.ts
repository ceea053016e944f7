/** Promises in the speech: what the speaker commits to show or do later, with the bed it is about and the day it is due. */
import type { Day } from "../model.ts";
import { dueDay } from "../records/index.ts";
import type { FilmHeard } from "./hear-film.ts";
import { textOf } from "./phrases.ts";
import { afterwards, conditionWords, laterWords, noPromise, type SpokenRule, spokenRules } from "./spoken-rules.ts";
import type { Word } from "./spoken-words.ts";
import { commitmentsIn, lower, type Statement, statement } from "./statements.ts";
import { inWords } from "./word-ranges.ts";

export interface PromiseHeard {
  /** First word, and after the last. */
  readonly from: number;
  readonly to: number;
  /** Milliseconds. */
  readonly at: number;
  /** As said. */
  readonly text: string;
  /** As it goes into the record: "show this bed again in September". */
  readonly what: string;
  readonly bed: string | undefined;
  readonly due: Day | undefined;
  /** The rule of spoken-rules.ts. */
  readonly rule: string;
  readonly confidence: number;
}

/** The day of the film, and on which half of the earth its seasons are. */
export interface Spoken {
  readonly day: Day;
  readonly southern: boolean;
}

/** Milliseconds between two statements that are one promise: "We'll see. I'll let you know." */
const ONE_BREATH = 4000;
/** Words before a promise in which "when …" or "next time …" may open it. */
const OPENS_WITHIN = 10;

const rules = spokenRules.filter(({ hears }) => hears === "promise");

export function promisesHeard(film: FilmHeard, spoken: Spoken): readonly PromiseHeard[] {
  const { words } = film.speech;
  const whole = film.statements;
  const statements = film.speech.punctuated ? whole : whole.flatMap((one) => commitmentsIn(one, words));
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
  return found.map(({ rule, from, to }) => {
    const { text, at } = statement(words, from, to);
    return {
      from,
      to,
      at,
      text: textOf(words, from, to),
      what: whatIsPromised(
        words
          .slice(from, to)
          .map((word) => asSaid(word))
          .join(" "),
      ),
      bed: bedOf(film, from, to),
      due: dueOf(text, spoken),
      rule: rule.id,
      confidence: rule.confidence,
    };
  });
}

/** Without one of these no rule holds; most statements have none. */
const mayPromise =
  /(?:'ll| will| shall| going to| yet to| still | remind me| hold me)\b| (?:show|tell|film|measure|give) |(?:'m|'re| am| are) [a-z]+ing\b/;

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
  /\b(?:i|we|you)(?:'ll| will| shall)\b|\b(?:i'm|i am|we're|we are) going to\b|\b(?:yet|still (?:have|need|want)|have still(?: got)?|remind me) to\b/;

/**
 * The first time said after the commitment; before it only what opens the statement counts: "come July I'll", not "I want
 * a lot of them this year and I'll".
 */
function dueOf(text: string, { day, southern }: Spoken): Day | undefined {
  const begins = commitment.exec(text)?.index ?? 0;
  const after = dueDay(text.slice(begins), day, southern)?.day;
  if (after !== undefined) return after;
  const opening = dueDay(text.slice(0, begins), day, southern);
  const opens = opening !== undefined && opening.start <= FIRST_WORDS && !/ and $/.test(text.slice(0, begins));
  return opens ? opening.day : undefined;
}

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

/**
 * The promise as a thing to do: "I'll show you the leeks again in July, and then you can laugh" becomes "show the leeks
 * again in July", "We'll see which is first. I'll let you know" becomes "say which is first". Takes words without marks.
 */
export function whatIsPromised(text: string): string {
  const told = /\bwe(?:'ll| will) see (.+?) (?:and )?i(?:'ll| will) let you know/i.exec(text)?.[1];
  if (told !== undefined) return withMonths(`say ${told}`);
  const done =
    /\b(?:i|we)(?:'ll| will| shall|'m going to| am going to|'re going to| are going to) (?:also |definitely |then |all )?(.+)$/i.exec(
      text,
    ) ?? /\b(?:yet to|still have to|still need to|still want to|still to|remind me to) (.+)$/i.exec(text);
  const seen = /\byou(?:'ll| will) (?:all )?(?:see|have|get|hear) (.+)$/i.exec(text);
  const rest = done?.[1] ?? (seen === null ? text : `show ${seen[1]}`);
  const what = rest
    .replace(/^(show|tell|give|bring|make) (?:you|them) (?:all )?/i, (_, verb: string) =>
      verb === "tell" ? "say " : `${verb} `,
    )
    .replace(/^let you (?:all )?know\b/i, "say")
    .replace(/ and (?:then )?(?:i|we)(?:'ll| will) (?=see|say|find|count|know|tell|weigh|show)/i, " and ")
    .replace(/ (?:and|but|so) (?:then |there |you |i'll |we'll |we |i |that ).*$/i, "")
    .replace(/ (?:for you|with you|you know|of course|i promise|that's a promise|i will)\b.*$/i, "")
    .trim();
  return withMonths(what);
}

/** The word as written, unless rules read it as others: "gonna" is taken down as "going to". */
function asSaid(word: Word): string {
  const written = word.text.replaceAll("’", "'");
  const read = lower(word);
  return read === written.toLowerCase() ? written : read;
}

/** Captions without capitals write "in july"; a record does not. */
function withMonths(text: string): string {
  const named =
    /\b(in|by|until|till|before|come|next|last|of|early|late) (january|february|march|april|may|june|july|august|september|october|november|december)\b/g;
  return text.replace(named, (_, lead: string, month: string) => `${lead} ${month[0]?.toUpperCase()}${month.slice(1)}`);
}

/** Words before a promise that may say what it is about. */
const BEFORE = 10;
/** How plainly another bed must be named, in the promise itself and just before it. */
const NAMED = 1.5;
const NAMED_BEFORE = 2.5;

/** The bed the sentence names; else the one it is said at, unless what was just said turns to another. */
function bedOf({ places, stretches }: FilmHeard, from: number, to: number): string | undefined {
  const here = stretches.find((stretch) => from >= stretch.from && from < stretch.to)?.bed;
  const named = (begins: number, ends: number, plainly: number): string | undefined => {
    const elsewhere = new Map<string, number>();
    for (const { beds } of inWords(places, (place) => place.word, begins, ends)) {
      if (here !== undefined && beds.has(here)) return here;
      for (const [bed, weight] of beds) elsewhere.set(bed, (elsewhere.get(bed) ?? 0) + weight);
    }
    const [best] = [...elsewhere].sort((a, b) => b[1] - a[1]);
    return best !== undefined && best[1] >= plainly ? best[0] : undefined;
  };
  return named(from, to, NAMED) ?? named(from - BEFORE, from, NAMED_BEFORE) ?? here;
}
