/** Learning which words of a speech are a promise, and how well that is known of a speaker not learned from. */
import { logOdds, type PromiseWeights, type Run, runFeatures, runsOf } from "../../src/wrap/promise-model.ts";
import { eachFeature, PARTS } from "../../src/wrap/promise-words.ts";
import { promisesIn, shared } from "../../src/wrap/promises-heard.ts";
import { statementsOf } from "../../src/wrap/statements.ts";
import { nothing, type Score, sum } from "../mis-hearing/hearing-scores.ts";
import { type Example, manyLabels, seeded } from "../reading/regression.ts";
import type { Span, Talk } from "./talks.ts";

/** Share of the words outside any mark that is learned from. */
const PLAIN_SHARE = 0.35;
/** Times a feature must come, and the least weight that is kept. */
const SEEN = 3;
const LEAST = 4;

type WordWeights = Pick<PromiseWeights, "bias" | "words">;

function learnWords(talks: readonly Talk[]): WordWeights {
  const random = seeded(5);
  const rows: { readonly features: readonly string[]; readonly isPromise: boolean }[] = [];
  for (const { words, spans } of talks) {
    for (let at = 0; at < words.length; at += 1) {
      const kind = spans.find(({ from, to }) => at >= from && at < to)?.kind;
      if (kind === "either" || (kind === undefined && random() > PLAIN_SHARE)) continue;
      const features: string[] = [];
      eachFeature(words, at, (name) => features.push(name));
      rows.push({ features, isPromise: kind === "promise" });
    }
  }
  const counts = new Map<string, number>();
  for (const { features } of rows) for (const name of features) counts.set(name, (counts.get(name) ?? 0) + 1);
  const names = [...counts].flatMap(([name, count]) => (count >= SEEN ? [name] : [])).sort();
  const index = new Map(names.map((name, at) => [name, at]));
  const examples: Example[] = rows.map(({ features, isPromise }) => ({
    features: features.flatMap((name) => index.get(name) ?? []),
    targets: Int8Array.of(isPromise ? 1 : 0),
  }));
  const scale = 1 / Math.sqrt(PARTS);
  const { weights, bias } = manyLabels(examples, 1, names.length, { epochs: 6, l1: 0.5, l2: 0.5, rate: 0.6, scale });
  const kept = names.flatMap((name, at) => {
    const weight = Math.round((weights[0]?.[at] ?? 0) * 100);
    return Math.abs(weight) < LEAST ? [] : [[name, weight] as const];
  });
  return { bias: Math.round((bias[0] ?? 0) * 100), words: Object.fromEntries(kept) };
}

/** Speakers are shared out so that no talk's runs are judged by words learned from it. */
const FOLDS = 6;

export function learnPromises(talks: readonly Talk[]): PromiseWeights {
  const speakers = [...new Set(talks.map(({ speaker }) => speaker))].sort();
  const fold = (talk: Talk) => speakers.indexOf(talk.speaker) % FOLDS;
  const rows: { readonly features: ReadonlyMap<string, number>; readonly isPromise: boolean }[] = [];
  for (let out = 0; out < FOLDS; out += 1) {
    const weights = { ...learnWords(talks.filter((talk) => fold(talk) !== out)), runs: {} };
    for (const talk of talks.filter((one) => fold(one) === out)) {
      const odds = logOdds(talk.words, weights);
      for (const run of runsOf(talk.words, odds)) {
        const on = spansOf(run, talk.spans);
        const isPromise = on.some(({ kind }) => kind === "promise");
        if (!isPromise && on.some(({ kind }) => kind === "either")) continue;
        rows.push({ features: runFeatures(run, talk.words, odds, talk.isLater), isPromise });
      }
    }
  }
  return { ...learnWords(talks), runs: learnRuns(rows) };
}

/** Logistic regression by plain gradient descent: some hundred runs, some fourteen features. */
function learnRuns(
  rows: readonly { readonly features: ReadonlyMap<string, number>; readonly isPromise: boolean }[],
  { steps = 300, rate = 0.002, shrink = 0.2 } = {},
): Readonly<Record<string, number>> {
  const weights = new Map<string, number>();
  for (let step = 0; step < steps; step += 1) {
    const slopes = new Map<string, number>();
    for (const { features, isPromise } of rows) {
      let score = 0;
      for (const [name, value] of features) score += value * (weights.get(name) ?? 0);
      const error = 1 / (1 + Math.exp(-score)) - (isPromise ? 1 : 0);
      for (const [name, value] of features) slopes.set(name, (slopes.get(name) ?? 0) + error * value);
    }
    for (const [name, slope] of slopes) {
      const weight = weights.get(name) ?? 0;
      weights.set(name, weight - rate * (slope + shrink * weight));
    }
  }
  return Object.fromEntries([...weights].sort().map(([name, weight]) => [name, Math.round(weight * 100)]));
}

/** Words that a run and a mark must share to be of one thing. */
const SHARED = 3;

function spansOf(run: Run, spans: readonly Span[]): readonly Span[] {
  return spans.filter((span) => shared(span, run) >= Math.min(SHARED, span.to - span.from, run.to - run.from));
}

/** Runs against marks: a promise is heard when a run lies on it; a run on nothing marked, or on what is none, is wrong. */
function scoredRuns(runs: readonly Run[], spans: readonly Span[]): Score {
  const found = new Set<Span>();
  let wrong = 0;
  for (const run of runs) {
    const on = spansOf(run, spans);
    for (const span of on) if (span.kind === "promise") found.add(span);
    if (!on.some(({ kind }) => kind !== "none")) wrong += 1;
  }
  const promises = spans.filter(({ kind }) => kind === "promise").length;
  return { right: found.size, wrong, missed: promises - found.size };
}

/** Talks heard by weights learned from others, as a wrap tells them. */
export function scoreTalks(talks: readonly Talk[], weights: PromiseWeights): Score {
  return talks
    .map(({ speech, spoken, spans }) => scoredRuns(promisesIn(speech, statementsOf(speech), spoken, weights), spans))
    .reduce(sum, nothing);
}

/** The same of talks that are learned from: each speaker by weights from the others. */
export function scoreLeftOut(talks: readonly Talk[], of: (talk: Talk) => boolean): Score {
  const speakers = [...new Set(talks.map(({ speaker }) => speaker))].sort();
  const fold = (talk: Talk) => speakers.indexOf(talk.speaker) % FOLDS;
  let score = nothing;
  for (let out = 0; out < FOLDS; out += 1) {
    const weights = learnPromises(talks.filter((talk) => fold(talk) !== out));
    score = sum(
      score,
      scoreTalks(
        talks.filter((talk) => fold(talk) === out && of(talk)),
        weights,
      ),
    );
  }
  return score;
}
