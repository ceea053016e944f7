/** Learning the two models of the reader from labelled lines: the opinion on a line, and the choice among its ways. */

import { wordsOf } from "../../src/records/line-words.ts";
import { clausesOf } from "../../src/records/reading/clauses.ts";
import { findMentions } from "../../src/records/reading/find-mentions.ts";
import type { OpinionWeights } from "../../src/records/reading/opinion.ts";
import { maskedWords, opinionFeatures } from "../../src/records/reading/opinion-words.ts";
import { type CorpusLine, kindsOf } from "./corpus.ts";
import { contextOf, type LineGarden, type LineOptions } from "./examples.ts";
import { type Choice, chooser, type Example, manyLabels } from "./regression.ts";

export const opinionLabels = [
  "story",
  "ask",
  "correction",
  "renamed",
  "sowed",
  "up",
  "potted on",
  "planted",
  "thinned",
  "did",
  "flowered",
  "fruited",
  "picked",
  "measured",
  "soil test",
  "trouble",
  "cured",
  "lost",
  "gave away",
  "cleared",
  "moved",
  "put up",
  "took down",
  "to do",
  "done",
  "promised",
  "asked",
  "saved seed",
  "acquired",
  "volunteer",
  "came back",
  "doing",
  "preserved",
  "sold",
  "plan",
  "fact",
  "several",
] as const;

/** 1 what the label says, -1 where careful readers may differ, 0 all else. */
function targetsOf(line: CorpusLine): Int8Array {
  const targets = new Int8Array(opinionLabels.length);
  const at = (label: string) => (opinionLabels as readonly string[]).indexOf(label);
  if (typeof line.expect === "string") {
    targets[at(line.expect)] = 1;
    return targets;
  }
  targets[at("fact")] = 1;
  if (at("several") >= 0 && line.expect.filter(({ kind }) => !kindsOf(kind).includes("story")).length > 1)
    targets[at("several")] = 1;
  let optional = line.expect.length > 0;
  for (const { kind } of line.expect) {
    const kinds = kindsOf(kind);
    if (!kinds.includes("story")) optional = false;
    for (const [index, one] of kinds.filter((name) => name !== "story").entries()) {
      const label = at(one);
      if (label >= 0 && targets[label] !== 1) targets[label] = index === 0 ? 1 : -1;
    }
  }
  if (optional) targets[at("story")] = targets[at("fact")] = -1;
  return targets;
}

export interface Lined {
  readonly line: CorpusLine;
  readonly where: LineGarden;
}

/** Weights of the opinion: features that come at least `seen` times; weights under `least` hundredths are dropped. */
export function learnOpinion(
  lines: readonly Lined[],
  { epochs = 12, l1 = 3.2, l2 = 0.1, least = 150, seen = 3, rate = 3 } = {},
): OpinionWeights {
  const texts = lines.flatMap(({ line, where }) => {
    const { find } = contextOf(line, where);
    const words = wordsOf(line.text);
    const mentions = findMentions(words, find);
    const masked = maskedWords(words, mentions, 0, words.length);
    const targets = targetsOf(line);
    const whole = { features: opinionFeatures(masked, mentions, where.names, true), targets };
    const one = clausesOf(words, mentions).length === 1;
    return one ? [whole, { features: opinionFeatures(masked, mentions, where.names, false), targets }] : [whole];
  });
  const counts = new Map<string, number>();
  for (const { features } of texts) for (const feature of features) counts.set(feature, (counts.get(feature) ?? 0) + 1);
  const names = [...counts]
    .filter(([, count]) => count >= seen)
    .map(([name]) => name)
    .sort();
  const index = new Map(names.map((name, at) => [name, at]));
  const examples: Example[] = texts.map(({ features, targets }) => ({
    features: features.map((feature) => index.get(feature)).filter((at) => at !== undefined),
    targets,
  }));
  const learned = manyLabels(examples, opinionLabels.length, names.length, { epochs, l1, l2, rate });
  const weights: Record<string, number[]> = {};
  for (const [at, name] of names.entries()) {
    const row: number[] = [];
    for (let label = 0; label < opinionLabels.length; label++) {
      const weight = Math.round((learned.weights[label]?.[at] ?? 0) * 100);
      if (Math.abs(weight) >= least) row.push(label, weight);
    }
    if (row.length > 0) weights[name] = row;
  }
  return { labels: [...opinionLabels], bias: [...learned.bias].map((value) => Math.round(value * 100)), weights };
}

/** Weights of the choice. Where no way is right, asking is. */
export function learnChoice(
  lines: readonly LineOptions[],
  { epochs = 14, l2 = 0.0004 } = {},
): ReadonlyMap<string, number> {
  const choices: Choice[] = lines.map(({ options }) => {
    const any = options.some(({ verdict }) => verdict === "right");
    return {
      options: options.map(({ features, verdict }) => ({
        features,
        right: any ? verdict === "right" : verdict === "asked",
      })),
    };
  });
  return chooser(choices, epochs, l2);
}

/** Writers shared out over folds, so that no writer is learned from and judged at once. */
export function foldsOf(writers: readonly string[], count: number): ReadonlyMap<string, number> {
  return new Map([...new Set(writers)].sort().map((writer, index) => [writer, index % count]));
}
