/** Promises in the speech: what the speaker commits to show or do later, with the bed it is about and the day it is due. */
import type { Day } from "../model.ts";
import { dueDay, writesMonthFirst } from "../records/index.ts";
import type { FilmHeard } from "./hear-film.ts";
import { APPLY_FROM } from "./names-heard.ts";
import { textOf } from "./phrases.ts";
import { whatIsPromised } from "./promise-as-record.ts";
import { type IsLater, likelyPromises, type PromiseWeights, type Run } from "./promise-model.ts";
import { committing, dueOf, type Ruled, ruledPromises, type Spoken } from "./promise-rules.ts";
import { type HeardWord, wordsBetween } from "./promise-words.ts";
import { conditionWords, laterWords, noPromise } from "./spoken-rules.ts";
import type { Speech, Word } from "./spoken-words.ts";
import { lower, type Statement, statement } from "./statements.ts";
import { inWords, stretchAt } from "./word-ranges.ts";

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
  /** The rule of spoken-rules.ts, or that it is like what others promise. */
  readonly rule: string;
  readonly confidence: number;
}

const heardIn = new WeakMap<FilmHeard, readonly PromiseHeard[]>();

/** What was owed asks for them again and again; a film is of one day. */
export function promisesHeard(film: FilmHeard): readonly PromiseHeard[] {
  const known = heardIn.get(film) ?? hearPromises(film, spokenOn(film));
  heardIn.set(film, known);
  return known;
}

function spokenOn({ day: { day, garden } }: FilmHeard): Spoken {
  return { day, southern: garden.settings.southern, monthFirst: writesMonthFirst(garden.settings) };
}

function hearPromises(film: FilmHeard, spoken: Spoken): readonly PromiseHeard[] {
  const { words } = film.speech;
  return promisesIn(film.speech, film.statements, spoken).map(({ rule, from, to, confidence, clauses }) => {
    const { at } = statement(words, from, to);
    const sentence = committingSentence(words, from, to);
    return {
      from,
      to,
      at,
      text: textOf(words, from, to),
      what: whatIsPromised(
        words
          .slice(sentence.from, sentence.to)
          .map((word) => `${asSaid(word)}${word.mark}`)
          .join(" "),
        namedBefore(film, sentence.from),
      ),
      bed: bedOf(film, from, to),
      due:
        [...clauses, sentence, { from, to }, ...partsOf(words, { from, to }, /[.?!]/)]
          .map((part) => dueIn(words, part, spoken))
          .find((due) => due !== undefined) ?? dueBefore(words, from, spoken),
      rule,
      confidence,
    };
  });
}

function dueIn(words: readonly Word[], { from, to }: Run, spoken: Spoken): Day | undefined {
  return dueOf(statement(words, from, to).text, spoken);
}

/** Words before a promise at whose end a time may open it: "In March, | before the buds break, I'll show you". */
const LED = 8;

function dueBefore(words: readonly Word[], from: number, { day, ...meant }: Spoken): Day | undefined {
  let begins = from;
  while (begins > Math.max(0, from - LED) && !/[.?!]/.test(words[begins - 1]?.mark ?? "")) begins -= 1;
  const text = words.slice(begins, from).map(lower).join(" ");
  const found = dueDay(text, day, meant);
  return found !== undefined && found.day > day && found.end === text.length ? found.day : undefined;
}

/** Words of a promise that a record has room for. */
const ROOM = 24;

/** Of what was said in several sentences the last that commits; of a very long one the clauses from the one that does. */
function committingSentence(words: readonly Word[], from: number, to: number): Run {
  if (to - from <= ROOM) return { from, to };
  const sentence = lastCommitting(words, partsOf(words, { from, to }, /[.?!]/));
  if (sentence.to - sentence.from <= ROOM) return sentence;
  const clauses = partsOf(words, sentence, /./);
  const clause = lastCommitting(words, clauses);
  const last = clauses.findLast((one) => one.from >= clause.from && one.to - clause.from <= ROOM) ?? clause;
  return { from: clause.from, to: last.to };
}

function partsOf(words: readonly Word[], { from, to }: Run, mark: RegExp): readonly Run[] {
  const parts: Run[] = [];
  let begins = from;
  for (let at = from; at < to; at += 1) {
    if (at + 1 < to && !mark.test(words[at]?.mark ?? "")) continue;
    parts.push({ from: begins, to: at + 1 });
    begins = at + 1;
  }
  return parts;
}

function lastCommitting(words: readonly Word[], parts: readonly Run[]): Run {
  const said = (one: Run) => words.slice(one.from, one.to).map(lower).join(" ");
  const committing = parts.filter((one) => commits.test(said(one)) && !leads.test(said(one)));
  return committing.findLast((one) => isDue.test(said(one))) ?? committing.at(-1) ?? (parts[0] as Run);
}

const isDue = new RegExp(`${laterWords.source}|${conditionWords.source}`, "i");

/** A promise in the speech before it is put into words. */
interface Found {
  readonly from: number;
  readonly to: number;
  readonly rule: string;
  readonly confidence: number;
  /** Where rules find it. */
  readonly clauses: readonly Run[];
}

/** The rule of a promise that no rule finds: it is like what people promise. */
const ALIKE = "promise/like-others";

/** Likelihood from which a run of words is told as a promise; the person decides about each. */
const TOLD_FROM = 0.87;
/** The same of the words in which only a rule finds one. */
const RULED_FROM = 0.4;
/** Words on either side by which it is judged. */
const AROUND = 10;

export function promisesIn(
  speech: Speech,
  whole: readonly Statement[],
  spoken: Spoken,
  weights?: PromiseWeights,
): readonly Found[] {
  const { words, ruled } = heardWords(speech, whole, spoken);
  const { runs, judged } = likelyPromises(words, isLaterIn(speech, spoken), weights);
  const found: Found[] = runs
    .filter((run) => run.likelihood >= TOLD_FROM)
    .filter(
      (run) => !noPromise.test(wordsBetween(words, run.from, run.to)) || ruled.some((rule) => shared(run, rule) > 0),
    )
    .map((run) => {
      const rules = ruled.filter((rule) => shared(run, rule) >= SHARED);
      const [first] = rules;
      return {
        // A rule knows where its clause begins.
        from: first?.from ?? statementBegins(words, run.from),
        to: Math.max(clauseEnds(speech.words, run.to), ...rules.map(({ to }) => to)),
        rule: first?.rule.id ?? ALIKE,
        confidence: run.likelihood,
        clauses: rules,
      };
    });
  // Its rule is enough where what is said around it does not speak against it, or is too little to judge by.
  for (const { rule, from, to } of ruled) {
    if (found.some((one) => shared(one, { from, to }) > 0)) continue;
    const { likelihood } = judged({ from, to });
    const isAlone = from < AROUND || words.length - to < AROUND;
    if (isAlone || likelihood >= RULED_FROM)
      found.push({ rule: rule.id, from, to, confidence: rule.confidence, clauses: [{ from, to }] });
  }
  return apart(found.sort((one, other) => one.from - other.from));
}

/** Each promise begins where the one before it ended. */
function apart(found: readonly Found[]): readonly Found[] {
  return found.map((one, at) => ({ ...one, from: Math.max(one.from, Math.min(found[at - 1]?.to ?? 0, one.to - 1)) }));
}

export function shared(one: Run, other: Run): number {
  return Math.min(one.to, other.to) - Math.max(one.from, other.from);
}

const commits =
  /\b(?:i|we|you)(?:'ll| will| shall)\b|\b(?:i'm|we're|i am|we are) [a-z]+ing\b|\bremind me\b|\bi owe\b|\b(?:i|we) (?:show|tell|film|measure|give)\b/;

/** Beginnings that lead to what the next statement promises. */
const leads =
  /^(?:and |so |but )?(?:when|once|if|as soon|next|by|in|on|at|after|before|come|until|the (?:minute|day|moment))\b/;

/** Words that a run and a rule's clause must share to be of one promise. */
const SHARED = 3;

/** Whether words of the speech name a time after the day of the film. */
export function isLaterIn({ words }: Speech, spoken: Spoken): IsLater {
  return ({ from, to }) => {
    const due = dueOf(words.slice(from, to).map(lower).join(" "), spoken);
    return due !== undefined && due > spoken.day;
  };
}

/** The words as the model sees them, and what the rules take for promises. */
export function heardWords(
  speech: Speech,
  whole: readonly Statement[],
  spoken: Spoken,
): { readonly words: readonly HeardWord[]; readonly ruled: readonly Ruled[] } {
  const statements = committing(speech, whole);
  const ruled = ruledPromises(speech, statements, spoken);
  const rules = new Array<string | undefined>(speech.words.length).fill(undefined);
  for (const { rule, from, to } of ruled) rules.fill(rule.id, from, to);
  const begins = new Set(statements.map(({ from }) => from));
  const words = speech.words.map(
    (word, at): HeardWord => ({
      text: lower(word),
      mark: !speech.punctuated || word.mark === "" ? "" : word.mark === "," ? "," : ".",
      begins: begins.has(at),
      rule: rules[at],
    }),
  );
  return { words, ruled };
}

/** Words before a run that may open its statement: "By the May holiday | I'll know and tell you". */
const OPENS = 10;
/** Words by which a run may end early in its clause. */
const BESIDE = 6;

function statementBegins(words: readonly HeardWord[], from: number): number {
  for (let at = from; at >= Math.max(0, from - OPENS); at -= 1) if (words[at]?.begins === true) return at;
  return from;
}

function clauseEnds(words: readonly Word[], to: number): number {
  for (let at = to; at < Math.min(words.length, to + BESIDE); at += 1) if (words[at - 1]?.mark !== "") return at;
  return to;
}

/** The word as written, unless rules read it as others: "gonna" is taken down as "going to". */
function asSaid(word: Word): string {
  const written = word.text.replaceAll("’", "'");
  const read = lower(word);
  return read === written.toLowerCase() ? written : read;
}

/** Words before a promise in which what it points at was named. */
const POINTED_AT = 24;

/** The plants and things named last before a promise, at its stop: one, or two named together; none that is private. */
function namedBefore({ names, stretches, day: { garden } }: FilmHeard, at: number): readonly string[] {
  const begins = Math.max(at - POINTED_AT, stretchAt(stretches, at)?.from ?? at);
  const near = inWords(names, ({ to }) => to, begins + 1, at + 1).filter(
    ({ name, confidence }) =>
      (garden.varieties.get(name.record) ?? garden.gear.get(name.record))?.private === false &&
      confidence >= APPLY_FROM,
  );
  const titles = new Map(near.map(({ name }) => [name.record, name.name]));
  return titles.size > 2 ? [] : [...titles.values()];
}

/** Words before a promise that may say what it is about. */
const BEFORE = 10;
/** How plainly another bed must be named, in the promise itself and just before it. */
const NAMED = 1.5;
const NAMED_BEFORE = 2.5;

/** The bed the sentence names; else the one it is said at, unless what was just said turns to another. */
function bedOf({ places, stretches }: FilmHeard, from: number, to: number): string | undefined {
  const here = stretchAt(stretches, from)?.bed;
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
