/**
 * How well note lines are read: `npm run bench:reading [FILE]`. Without a file the models are learned anew for each fourth of
 * the writers from the other three, so that no figure rests on a writer's own lines; the tables were tuned on the lines in
 * tests/corpus/learn alone. With a file of labelled lines the weights that are checked in are used.
 */

import type { Event } from "../src/model.ts";
import { ownWords, taughtBy } from "../src/records/index.ts";
import { type ReaderModels, readLine, thresholds } from "../src/records/reading/read-line.ts";
import { isOrdinary } from "../src/records/reading/vocabulary.ts";
import { type CorpusLine, kindsOf, namesOfGarden, readCorpora, readCorpus } from "./reading/corpus.ts";
import { contextOf, eventOf, gardensOf, type LineGarden, optionsOf } from "./reading/examples.ts";
import { judge, type ReadEvent, type Verdict } from "./reading/judge.ts";
import { foldsOf, type Lined, learnChoice, learnOpinion } from "./reading/learn.ts";

type Outcome = "right" | "first" | "offered" | "asked" | "part" | "silent" | "wrong";
const outcomes: readonly Outcome[] = ["right", "first", "offered", "asked", "part", "silent", "wrong"];

interface Read {
  readonly line: CorpusLine;
  readonly set: string;
  readonly outcome: Outcome;
}

const [file] = process.argv.slice(2);
if (file !== undefined) {
  const corpus = readCorpus(file);
  const gardens = gardensOf(corpus);
  print(
    corpus.lines.map((line) => ({
      line,
      set: file,
      outcome: outcomeOf(line, gardens.get(line.gardener) as LineGarden, undefined),
    })),
  );
} else {
  const lined: (Lined & { readonly set: string })[] = ["learn", "put-away"].flatMap((set) => {
    const corpus = readCorpora(`tests/corpus/${set}`);
    const gardens = gardensOf(corpus);
    return corpus.lines.map((line) => ({ line, set, where: gardens.get(line.gardener) as LineGarden }));
  });
  const folds = foldsOf(
    lined.map(({ line }) => line.gardener),
    4,
  );
  const within = (fold: number, one: Lined) => folds.get(one.line.gardener) === fold;
  const opinions = [0, 1, 2, 3].map((fold) => learnOpinion(lined.filter((one) => !within(fold, one))));
  const options = lined.map((one) => ({
    one,
    options: optionsOf(one.line, one.where, opinions[folds.get(one.line.gardener) ?? 0] as (typeof opinions)[number]),
  }));
  const choices = [0, 1, 2, 3].map((fold) =>
    Object.fromEntries(
      [...learnChoice(options.filter(({ one }) => !within(fold, one)).map((each) => each.options))].map(
        ([name, weight]) => [name, weight * 1000],
      ),
    ),
  );
  const modelsOf = (one: Lined, limits = thresholds): ReaderModels => {
    const fold = folds.get(one.line.gardener) ?? 0;
    return {
      opinion: opinions[fold] as (typeof opinions)[number],
      choice: choices[fold] as Record<string, number>,
      limits,
    };
  };
  print(lined.map((one) => ({ line: one.line, set: one.set, outcome: outcomeOf(one.line, one.where, modelsOf(one)) })));
  console.log("\nAsked against wrong, by the least probability of a fact:");
  for (const facts of [0.3, 0.4, 0.5, 0.62, 0.7, 0.8, 0.9]) {
    const reads = lined.map((one) => ({
      line: one.line,
      set: one.set,
      outcome: outcomeOf(one.line, one.where, modelsOf(one, { ...thresholds, facts })),
    }));
    console.log(`  ${facts.toFixed(2)}  ${row(reads)}`);
  }
  opinionFigures(lined, (one) => modelsOf(one).opinion);
  console.log(
    "\nWhat answers teach, kept as words (the first half of a writer's lines is answered, the second half read):",
  );
  for (const [name, taught] of [
    ["before", false],
    ["after", true],
  ] as const) {
    const reads = taughtReads(lined, modelsOf, taught);
    console.log(`  ${name.padEnd(6)} ${row(reads.reads)}   words ${reads.words}`);
  }
}

/** The second half of each writer's lines, read without and with what the questions of the first half taught. */
function taughtReads(
  lined: readonly (Lined & { readonly set: string })[],
  modelsOf: (one: Lined) => ReaderModels,
  taught: boolean,
): { readonly reads: readonly Read[]; readonly words: number } {
  let kept = 0;
  const reads = [...Map.groupBy(lined, ({ line }) => line.gardener).values()].flatMap((own) => {
    const half = Math.ceil(own.length / 2);
    const [first] = own as [(typeof own)[number]];
    const names = namesOfGarden(first.where.garden);
    const where = { ...first.where, names };
    for (const one of taught ? own.slice(0, half) : []) {
      const words = taughtByAnswer(one.line, where, modelsOf(one));
      kept += words.length;
      names.learn(words);
    }
    return own
      .slice(half)
      .map((one) => ({ line: one.line, set: one.set, outcome: outcomeOf(one.line, where, modelsOf(one)) }));
  });
  return { reads, words: kept };
}

/** Of a question that offers the right way: the words its answer teaches. */
function taughtByAnswer(line: CorpusLine, where: LineGarden, models: ReaderModels) {
  const { names } = where;
  const context = contextOf(line, where);
  const mark = names.mark();
  const { reading } = readLine(
    { text: line.text, more: [], place: { file: "n", line: 1, column: 1 } },
    { ...context.line, monthFirst: context.find.monthFirst },
    { prose: false, lastLine: 1 },
    models,
  );
  const isFactual = typeof line.expect !== "string";
  const right = reading.readings.find(
    ({ events }) =>
      isFactual &&
      judge(
        line,
        events.map((event) => readEvent(event, where)),
        where.garden,
      ) === "right",
  );
  const answer = { text: line.text, chosen: right?.events ?? [], offered: reading.readings, beds: context.line.beds };
  const taught = right === undefined ? [] : taughtBy(answer, names, isOrdinary);
  const written = taught.map((word) => ({ ...word, place: { file: "words.md", line: 1, column: 1 } }));
  names.backTo(mark);
  return ownWords(written, names).words;
}

function outcomeOf(line: CorpusLine, where: LineGarden, models: ReaderModels | undefined): Outcome {
  const context = contextOf(line, where);
  const mark = where.names.mark();
  const { reading } = readLine(
    { text: line.text, more: [], place: { file: "n", line: 1, column: 1 } },
    { ...context.line, monthFirst: context.find.monthFirst },
    { prose: false, lastLine: 1 },
    models,
  );
  const events = reading.events.map((event) => readEvent(event, where));
  const offered = reading.readings.map(({ events: those }) => those.map((event) => readEvent(event, where)));
  const outcome = judged(line, where, reading.as, events, offered);
  where.names.backTo(mark);
  return outcome;
}

function judged(
  line: CorpusLine,
  { garden }: LineGarden,
  as: string,
  events: readonly ReadEvent[],
  offered: readonly (readonly ReadEvent[])[],
): Outcome {
  if (typeof line.expect === "string") {
    const open = line.expect !== "story";
    if (events.length > 0) return line.expect === "ask" ? "part" : "wrong";
    return as === "question" ? (open ? "right" : "asked") : open ? "silent" : "right";
  }
  const verdict: Verdict = judge(line, events, garden);
  if (verdict === "nothing") return as === "question" ? "asked" : "right";
  if (verdict !== "none") return verdict;
  if (as !== "question") return "silent";
  const at = offered.findIndex((those) => judge(line, those, garden) === "right");
  return at === 0 ? "first" : at > 0 ? "offered" : "asked";
}

function readEvent(event: Event, { names }: LineGarden): ReadEvent {
  const crop = event.crop ?? (event.variety === undefined ? undefined : names.cropOf(event.variety));
  return eventOf({ ...event, crop }, names);
}

function row(reads: readonly Read[]): string {
  const share = (outcome: Outcome) =>
    ((100 * reads.filter((one) => one.outcome === outcome).length) / Math.max(1, reads.length)).toFixed(1).padStart(5);
  const story = reads.filter(({ line }) => line.expect === "story");
  const of = (outcome: Outcome) =>
    ((100 * story.filter((one) => one.outcome === outcome).length) / Math.max(1, story.length)).toFixed(0).padStart(3);
  return `${outcomes.map((outcome) => `${outcome} ${share(outcome)}`).join("  ")}   story asked ${of("asked")}, made facts ${of("wrong")}`;
}

function print(reads: readonly Read[]): void {
  const by = (name: string, keyOf: (read: Read) => string) => {
    console.log(`\nBy ${name}, in percent:`);
    for (const key of [...new Set(reads.map(keyOf))].sort()) {
      const those = reads.filter((read) => keyOf(read) === key);
      console.log(`  ${key.padEnd(34)} ${String(those.length).padStart(4)}  ${row(those)}`);
    }
  };
  by("writer", ({ line }) => line.gardener);
  by("category", ({ line }) =>
    typeof line.expect === "string" ? line.expect : (kindsOf(line.expect[0]?.kind ?? "story")[0] ?? "story"),
  );
  by("set", ({ set }) => set);
  console.log(`\nAll ${reads.length} lines: ${row(reads)}`);
  console.log("Goals: right 70, right or first 90, silent 2, wrong 2, story asked under 15, story made facts 2");
}

/** The learned opinion alone: story, fact or ask, and the kind of what is told, each with the writer left out. */
function opinionFigures(lined: readonly Lined[], weightsOf: (one: Lined) => ReaderModels["opinion"]): void {
  let whole = 0;
  let kind = 0;
  for (const one of lined) {
    const { weighed } = optionsOf(one.line, one.where, weightsOf(one));
    const p = (label: string) => weighed.opinion.get(label) ?? 0;
    const ask = Math.max(p("ask"), p("correction"), p("renamed"));
    const says = p("story") > p("fact") && p("story") > ask ? "story" : ask > p("fact") ? "ask" : "fact";
    const expected =
      typeof one.line.expect === "string"
        ? [one.line.expect]
        : one.line.expect.flatMap(({ kind: label }) => kindsOf(label));
    const is = (label: string) =>
      label === "story" ? "story" : /^(?:ask|correction|renamed)$/.test(label) ? "ask" : "fact";
    if (expected.some((label) => is(label) === says)) whole += 1;
    const [top] = [...weighed.opinion].filter(([label]) => label !== "fact").sort((a, b) => b[1] - a[1]);
    if (top !== undefined && expected.includes(top[0])) kind += 1;
  }
  console.log(
    `\nThe opinion alone, writers left out: story, fact or ask ${((100 * whole) / lined.length).toFixed(1)} %, kind ${((100 * kind) / lined.length).toFixed(1)} %`,
  );
}
