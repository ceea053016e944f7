/**
 * The second opinion: how likely a line tells of each kind of event, is story, or would have to be asked about, by logistic
 * regression over its masked words. The weights are made by scripts/learn-reading.ts from the labelled lines in tests/corpus.
 */

export interface OpinionWeights {
  readonly labels: readonly string[];
  readonly bias: readonly number[];
  /** By feature: index of a label and a weight, in turn. Weights are hundredths. */
  readonly weights: Readonly<Record<string, readonly number[]>>;
}

export type Opinion = ReadonlyMap<string, number>;

export function opinionOf(features: readonly string[], { labels, bias, weights }: OpinionWeights): Opinion {
  const sums = [...bias];
  const scale = 1 / Math.sqrt(Math.max(1, features.length));
  for (const feature of features) {
    const row = Object.hasOwn(weights, feature) ? weights[feature] : undefined;
    if (row === undefined) continue;
    for (let at = 0; at < row.length; at += 2) {
      const label = row[at] as number;
      sums[label] = (sums[label] ?? 0) + (row[at + 1] as number) * scale;
    }
  }
  return new Map(labels.map((label, index) => [label, 1 / (1 + Math.exp(-(sums[index] ?? 0) / 100))]));
}
