/** Logistic regression, by stochastic gradient with a step for each weight (AdaGrad; Duchi, Hazan and Singer 2011). The order is seeded: the same weights each time. */

/** A small generator of numbers from 0 to 1 (mulberry32). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export function shuffled<Item>(items: readonly Item[], random: () => number): Item[] {
  const out = [...items];
  for (let at = out.length - 1; at > 0; at--) {
    const other = Math.floor(random() * (at + 1));
    [out[at], out[other]] = [out[other] as Item, out[at] as Item];
  }
  return out;
}

export interface Example {
  readonly features: readonly number[];
  /** 1, 0, or -1 for "says nothing about it", by label. */
  readonly targets: Int8Array;
}

/**
 * One model for each label, most of its weights nought: follow the regularised leader with a step for each weight
 * (FTRL-Proximal; McMahan et al. 2013, "Ad click prediction: a view from the trenches", algorithm 1).
 */
export function manyLabels(
  examples: readonly Example[],
  labels: number,
  features: number,
  {
    epochs,
    l1,
    l2,
    rate = 0.5,
    seed = 7,
    scale: fixed,
  }: { epochs: number; l1: number; l2: number; rate?: number; seed?: number; scale?: number },
): { weights: Float64Array[]; bias: Float64Array } {
  const z = Array.from({ length: labels }, () => new Float64Array(features + 1));
  const n = Array.from({ length: labels }, () => new Float64Array(features + 1));
  const weight = (label: number, feature: number): number => {
    const sum = (z[label] as Float64Array)[feature] as number;
    const shrink = feature === features ? 0 : l1;
    if (Math.abs(sum) <= shrink) return 0;
    return (
      -(sum - Math.sign(sum) * shrink) /
      ((1 + Math.sqrt((n[label] as Float64Array)[feature] as number)) / rate + (feature === features ? 0 : l2))
    );
  };
  const random = seeded(seed);
  const now = new Float64Array(512);
  for (let epoch = 0; epoch < epochs; epoch++) {
    for (const example of shuffled(examples, random)) {
      const ids = [...example.features, features];
      const scale = fixed ?? 1 / Math.sqrt(Math.max(1, example.features.length));
      for (let label = 0; label < labels; label++) {
        const target = example.targets[label] as number;
        if (target < 0) continue;
        let sum = 0;
        for (let at = 0; at < ids.length && at < 512; at++) {
          const feature = ids[at] as number;
          now[at] = weight(label, feature);
          sum += (now[at] as number) * (feature === features ? 1 : scale);
        }
        const error = 1 / (1 + Math.exp(-sum)) - target;
        if (Math.abs(error) < 0.001) continue;
        const zs = z[label] as Float64Array;
        const ns = n[label] as Float64Array;
        for (let at = 0; at < ids.length && at < 512; at++) {
          const feature = ids[at] as number;
          const g = error * (feature === features ? 1 : scale);
          const before = ns[feature] as number;
          const step = (Math.sqrt(before + g * g) - Math.sqrt(before)) / rate;
          zs[feature] = (zs[feature] as number) + g - step * (now[at] as number);
          ns[feature] = before + g * g;
        }
      }
    }
  }
  const weights = Array.from({ length: labels }, (_, label) =>
    Float64Array.from({ length: features }, (__, feature) => weight(label, feature)),
  );
  return { weights, bias: Float64Array.from({ length: labels }, (_, label) => weight(label, features)) };
}

export interface Choice {
  /** Options with their features; `right` says which are. */
  readonly options: readonly { readonly features: ReadonlyMap<string, number>; readonly right: boolean }[];
}

/** A log-linear model over the options of each choice: the share of probability on the right ones is made large. */
export function chooser(choices: readonly Choice[], epochs: number, l2: number, seed = 11): Map<string, number> {
  const weights = new Map<string, number>();
  const steps = new Map<string, number>();
  const random = seeded(seed);
  const rate = 0.12;
  for (let epoch = 0; epoch < epochs; epoch++) {
    for (const { options } of shuffled(choices, random)) {
      if (!options.some(({ right }) => right)) continue;
      const scores = options.map(({ features }) => score(features, weights));
      const top = Math.max(...scores);
      const powers = scores.map((value) => Math.exp(value - top));
      const all = powers.reduce((sum, value) => sum + value, 0);
      const good = powers.reduce((sum, value, index) => sum + (options[index]?.right === true ? value : 0), 0);
      const gradient = new Map<string, number>();
      for (const [index, { features, right }] of options.entries()) {
        const p = (powers[index] as number) / all;
        const pull = p - (right ? (powers[index] as number) / good : 0);
        if (Math.abs(pull) < 1e-4) continue;
        for (const [name, value] of features) gradient.set(name, (gradient.get(name) ?? 0) + pull * value);
      }
      for (const [name, slope] of gradient) {
        const weight = weights.get(name) ?? 0;
        const g = slope + l2 * weight;
        const step = (steps.get(name) ?? 1e-4) + g * g;
        steps.set(name, step);
        weights.set(name, weight - (rate * g) / Math.sqrt(step));
      }
    }
  }
  return weights;
}

export function score(features: ReadonlyMap<string, number>, weights: ReadonlyMap<string, number>): number {
  let sum = 0;
  for (const [name, value] of features) sum += value * (weights.get(name) ?? 0);
  return sum;
}
