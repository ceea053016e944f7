/** Every labelled line with its ways to be taken, as the learner and the bench want them. */

import type { Names } from "../../src/records/names.ts";
import type { LineContext } from "../../src/records/note-line.ts";
import {
  type Candidate,
  type CandidateContext,
  candidatesOf,
  type Weighed,
} from "../../src/records/reading/candidates.ts";
import type { Fact } from "../../src/records/reading/fact.ts";
import { type Add, askFeatures, candidateFeatures, type FormReading } from "../../src/records/reading/features.ts";
import { readForm } from "../../src/records/reading/form.ts";
import type { OpinionWeights } from "../../src/records/reading/opinion.ts";
import { type Corpus, type CorpusGarden, type CorpusLine, namesOfGarden } from "./corpus.ts";
import { judge, type ReadEvent, type Verdict } from "./judge.ts";

export interface LineGarden {
  readonly garden: CorpusGarden;
  readonly names: Names;
}

export function gardensOf(corpus: Corpus): ReadonlyMap<string, LineGarden> {
  return new Map(
    Object.entries(corpus.gardens).map(([name, garden]) => [name, { garden, names: namesOfGarden(garden) }]),
  );
}

export function contextOf(
  line: CorpusLine,
  { garden, names }: LineGarden,
): { find: CandidateContext; line: LineContext } {
  const bed = line.bed === null || line.bed === undefined ? undefined : names.find("bed", line.bed);
  const beds = bed === undefined ? [] : [bed];
  const southern = /^(?:Australia|Pacific\/Auckland|Africa\/Johannesburg)/.test(garden.tz);
  return {
    find: { names, noteDay: line.date, system: garden.units, monthFirst: garden.lang === "en-US", beds, southern },
    line: { note: { id: "n", day: line.date, private: false }, beds, names, units: garden.units, southern },
  };
}

export interface Option {
  readonly facts: readonly Fact[];
  readonly candidate?: Candidate | undefined;
  readonly features: ReadonlyMap<string, number>;
  readonly verdict: Verdict | "asked";
}

export interface LineOptions {
  readonly line: CorpusLine;
  readonly weighed: Weighed;
  readonly form: FormReading | undefined;
  readonly options: readonly Option[];
}

export function eventOf(fact: Fact, names: Names): ReadEvent {
  return {
    kind: fact.kind,
    crop: fact.crop === undefined ? undefined : (fact.said ?? names.crop(fact.crop)?.name ?? fact.crop),
    variety: fact.variety === undefined ? fact.title : names.title("variety", fact.variety),
    count: fact.count?.value,
    grams: fact.grams,
    litres: fact.litres,
    centimetres: fact.heightCm,
    celsius: fact.celsius,
    ph: fact.ph,
    bed: fact.bed === undefined ? undefined : names.title("bed", fact.bed),
    toBed: fact.toBed === undefined ? undefined : names.title("bed", fact.toBed),
    nursery: fact.nursery,
    day: fact.day,
    due: fact.due,
    cause: fact.cause,
  };
}

/** What is right of a line: its label, when it holds no event, as events that are none. */
export function verdictOf(
  line: CorpusLine,
  facts: readonly Fact[],
  where: LineGarden,
  why: string[] = [],
): Verdict | "asked" {
  if (line.expect === "story") return facts.length === 0 ? "right" : "wrong";
  if (typeof line.expect === "string") return facts.length === 0 ? "none" : "wrong";
  const verdict = judge(
    line,
    facts.map((fact) => eventOf(fact, where.names)),
    where.garden,
    why,
  );
  return verdict === "nothing" ? "right" : verdict;
}

export function optionsOf(line: CorpusLine, where: LineGarden, weights: OpinionWeights): LineOptions {
  const context = contextOf(line, where);
  const mark = where.names.mark();
  const form = readForm(
    { text: line.text, more: [], place: { file: "n", line: 1, column: 1 } },
    context.line,
    context.find,
  );
  where.names.backTo(mark);
  const weighed = candidatesOf(line.text, context.find, weights);
  const ways: Candidate[] = [...weighed.candidates];
  if (form !== undefined && !ways.some(({ facts }) => JSON.stringify(facts) === JSON.stringify(form.facts)))
    ways.push({ facts: form.facts, choices: [] });
  const options: Option[] = ways.map((candidate) => ({
    facts: candidate.facts,
    candidate,
    features: gathered((add) => candidateFeatures(candidate, weighed, form, add)),
    verdict: verdictOf(line, candidate.facts, where),
  }));
  options.push({ facts: [], features: gathered((add) => askFeatures(weighed, form, add)), verdict: "asked" });
  return { line, weighed, form, options };
}

function gathered(tell: (add: Add) => void): ReadonlyMap<string, number> {
  const features = new Map<string, number>();
  tell((name, value = 1) => features.set(name, (features.get(name) ?? 0) + value));
  return features;
}
