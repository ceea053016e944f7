/** Vegetables of the open ground. Every plant is drawn from its own seed, so that it keeps its shape as it grows. */

import type { LeafForm } from "./leaves.ts";
import { cupFlower, forms, leaf } from "./leaves.ts";
import type { Colour, Mesh, Vec } from "./mesh.ts";
import { add, ball, brighter, colour, mix, rod } from "./mesh.ts";
import { between, randomFrom, spread } from "./random.ts";

/** Growth from 0 to 1 over `span` days around day `middle`, slow, fast, slow. */
export const grown = (age: number, middle: number, span: number): number =>
  age <= 0 ? 0 : 1 / (1 + Math.exp((-4.4 * (age - middle)) / span));

interface Rosette {
  readonly form: LeafForm;
  readonly leaves: number;
  /** Metres when full-grown. */
  readonly length: number;
  readonly half: number;
  /** Rise of the oldest and the youngest leaf in radians. */
  readonly oldest: number;
  readonly youngest: number;
  readonly stalk: Colour;
  readonly low: Colour;
  readonly high: Colour;
}

const rosettes = {
  "green lettuce": {
    form: forms.lettuce,
    leaves: 26,
    length: 0.2,
    half: 0.075,
    oldest: 0.5,
    youngest: 1.5,
    stalk: colour("#c9d98c"),
    low: colour("#86a844"),
    high: colour("#9cba52"),
  },
  "red lettuce": {
    form: forms.lettuce,
    leaves: 24,
    length: 0.18,
    half: 0.08,
    oldest: 0.45,
    youngest: 1.45,
    stalk: colour("#b9c97c"),
    low: colour("#6f9a38"),
    high: colour("#7d5a34"),
  },
  "cos lettuce": {
    form: { ...forms.lettuce, wave: 0.12, droop: 0.1, fold: 0.55 },
    leaves: 22,
    length: 0.26,
    half: 0.06,
    oldest: 0.85,
    youngest: 1.52,
    stalk: colour("#c3d694"),
    low: colour("#6f9a3e"),
    high: colour("#7fa648"),
  },
  chard: {
    form: { ...forms.beet, wave: 0.3 },
    leaves: 15,
    length: 0.46,
    half: 0.1,
    oldest: 0.8,
    youngest: 1.45,
    stalk: colour("#e3e6cf"),
    low: colour("#4a7a30"),
    high: colour("#568838"),
  },
  beetroot: {
    form: forms.beet,
    leaves: 14,
    length: 0.36,
    half: 0.06,
    oldest: 0.75,
    youngest: 1.45,
    stalk: colour("#a02a52"),
    low: colour("#44692e"),
    high: colour("#507a38"),
  },
  spinach: {
    form: forms.beet,
    leaves: 16,
    length: 0.26,
    half: 0.062,
    oldest: 0.5,
    youngest: 1.4,
    stalk: colour("#7fae4a"),
    low: colour("#3f6a2e"),
    high: colour("#4a7836"),
  },
  basil: {
    form: forms.oval,
    leaves: 44,
    length: 0.17,
    half: 0.05,
    oldest: 0.5,
    youngest: 1.35,
    stalk: colour("#7fb53f"),
    low: colour("#5a8e34"),
    high: colour("#76a444"),
  },
} as const satisfies Record<string, Rosette>;

export type RosetteKind = keyof typeof rosettes;

export function rosette(mesh: Mesh, kind: RosetteKind, at: Vec, seed: string, size: number): void {
  if (size <= 0.02) return;
  const row = rosettes[kind];
  const random = randomFrom(seed);
  const turn = random() * 6.283;
  const own = between(random, 0.85, 1.15);
  const count = Math.max(3, Math.round(row.leaves * (0.25 + 0.75 * size)));
  for (let i = 0; i < row.leaves; i++) {
    const jitter = [spread(random), spread(random), spread(random), random(), spread(random)] as const;
    if (i >= count) continue;
    const youth = i / (count - 1);
    const length = row.length * own * (0.22 + 0.78 * size) * (1 - 0.55 * youth ** 1.5) * (1 + 0.12 * jitter[0]);
    const shade = 0.82 + 0.2 * youth + 0.09 * jitter[4];
    leaf(
      mesh,
      row.form,
      add(at, [0, 0, 0.005 + 0.02 * size * youth]),
      turn + i * 2.399963 + 0.25 * jitter[1],
      row.oldest + (row.youngest - row.oldest) * youth ** 0.8 + 0.12 * jitter[2],
      0.25 * jitter[0],
      length,
      row.half * (length / row.length) * 1.05,
      (t, edge) =>
        brighter(
          t < 0.28 || (edge < 0.08 && t < 0.7)
            ? mix(row.stalk, row.low, t)
            : mix(row.low, row.high, t * (0.5 + 0.5 * edge)),
          shade,
        ),
      jitter[3] * 6.283,
    );
  }
}

/**
 * A broad bean: square stems with paired leaflets, white flowers with a dark eye, then pods. `age` in days since 1
 * March.
 */
export function broadBean(mesh: Mesh, at: Vec, seed: string, age: number): void {
  const random = randomFrom(seed);
  const stems = 2 + Math.floor(random() * 2);
  for (let k = 0; k < stems; k++) {
    const height = (0.12 + 1.08 * grown(age, 62, 75)) * between(random, 0.82, 1.08);
    const lean = random() * 6.283;
    const tilt = between(random, 0.02, 0.12);
    const foot = add(at, [0.05 * spread(random), 0.05 * spread(random), 0]);
    const top: Vec = [foot[0] + Math.cos(lean) * tilt * height, foot[1] + Math.sin(lean) * tilt * height, height];
    const point = (t: number): Vec => [
      foot[0] + (top[0] - foot[0]) * t * t,
      foot[1] + (top[1] - foot[1]) * t * t,
      height * t,
    ];
    rod(mesh, [point(0), point(0.33), point(0.66), point(1)], (t) => 0.008 - 0.004 * t, colour("#7fa257"), "stem", 4);
    const nodes = Math.max(3, Math.round(height / 0.065));
    for (let i = 1; i <= nodes; i++) {
      const t = i / nodes;
      const yaw = (i % 2) * Math.PI + lean + 0.5 * spread(random) + i * 0.5;
      const size = 0.085 * (1 - 0.5 * t ** 3) * Math.min(1, 0.45 + height);
      const from = point(t);
      const shade = 0.85 + 0.25 * random();
      for (const turn of [-0.55, 0.45, 0.05]) {
        leaf(
          mesh,
          forms.leaflet,
          add(from, [Math.cos(yaw) * 0.02, Math.sin(yaw) * 0.02, 0]),
          yaw + turn,
          0.55 - 0.5 * (1 - t),
          0.3 * spread(random),
          size,
          size * 0.36,
          () => brighter(colour("#6f9a5e"), shade),
        );
      }
      const bloom = t * nodes > 4 && t < 0.85 && age > 62 && age < 105;
      if (bloom && random() < 0.7) {
        for (let f = 0; f < 3; f++)
          cupFlower(
            mesh,
            add(from, [0.015 * spread(random), 0.015 * spread(random), -0.005 * f]),
            [Math.cos(yaw + f), Math.sin(yaw + f), 0.3],
            0.03,
            0.013,
            3,
            0.2,
            f === 1 ? colour("#4a3a44") : colour("#e9e4dc"),
            colour("#f4f2ec"),
          );
      }
      if (age > 95 && t > 0.2 && t < 0.7 && random() < 0.6)
        rod(
          mesh,
          [
            from,
            add(from, [Math.cos(yaw) * 0.03, Math.sin(yaw) * 0.03, 0.05]),
            add(from, [Math.cos(yaw) * 0.05, Math.sin(yaw) * 0.05, 0.14]),
          ],
          (q) => 0.011 * Math.sin(Math.PI * (0.1 + 0.8 * q)),
          colour("#6f9f48"),
          "stem",
          5,
        );
    }
  }
}

/** A cabbage: wide outer leaves around a tightening heart; `pointed` for the early kinds. */
export function cabbage(mesh: Mesh, at: Vec, seed: string, size: number, pointed: boolean, tone: Colour): void {
  if (size <= 0.02) return;
  const random = randomFrom(seed);
  const turn = random() * 6.283;
  const own = between(random, 0.88, 1.12);
  const count = Math.round(5 + 15 * size);
  for (let i = 0; i < count; i++) {
    const youth = i / Math.max(1, count - 1);
    const length = own * (0.08 + 0.25 * size) * (1 - 0.45 * youth);
    const shade = 0.8 + 0.3 * youth + 0.1 * random();
    const pale = mix(tone, colour("#9dbf7a"), 0.55 * youth * size);
    leaf(
      mesh,
      { ...forms.cabbage, droop: 0.25 - 0.9 * youth * size, fold: 0.3 + 0.35 * youth },
      add(at, [0, 0, 0.02 + 0.05 * size]),
      turn + i * 2.399963,
      0.25 + 1.0 * youth + 0.12 * spread(random),
      0.12 * spread(random),
      length,
      length * (pointed ? 0.42 : 0.52),
      (t, edge) => brighter(edge < 0.1 ? mix(pale, colour("#cfdcb4"), 0.55 * (1 - t)) : pale, shade),
      random() * 6.283,
    );
  }
  if (size > 0.45) {
    const heart = own * 0.095 * ((size - 0.3) / 0.7);
    ball(
      mesh,
      add(at, [0, 0, 0.05 + heart * 0.9]),
      [heart, heart, heart * (pointed ? 1.6 : 1.0)],
      (up) => mix(tone, colour("#a9c887"), 0.35 + 0.4 * up),
      "waxy leaf",
      0,
      0,
      14,
    );
  }
}

/** Nero di Toscana: a palm of long blistered leaves on a stalk. */
export function kale(mesh: Mesh, at: Vec, seed: string, size: number): void {
  if (size <= 0.02) return;
  const random = randomFrom(seed);
  const turn = random() * 6.283;
  const stalk = 0.03 + 0.32 * size;
  rod(mesh, [at, add(at, [0.01, 0, stalk])], () => 0.008 + 0.006 * size, colour("#8aa07a"), "stem", 6);
  const count = Math.round(5 + 17 * size);
  for (let i = 0; i < count; i++) {
    const youth = i / Math.max(1, count - 1);
    const length = (0.1 + 0.3 * size) * (1 - 0.5 * youth ** 2) * between(random, 0.85, 1.12);
    const shade = 0.75 + 0.45 * youth + 0.1 * random();
    leaf(
      mesh,
      { ...forms.kale, droop: 1.7 - 0.9 * youth },
      add(at, [0, 0, stalk * (0.35 + 0.65 * youth)]),
      turn + i * 2.399963,
      0.55 + 0.9 * youth,
      0.15 * spread(random),
      length,
      length * 0.16,
      (t, edge) =>
        brighter(
          edge < 0.12 ? mix(colour("#7f9a78"), colour("#4a6a44"), t) : mix(colour("#3c5638"), colour("#4a6a48"), t),
          shade,
        ),
    );
  }
}

/** Seedlings in a row: two seed leaves and the first true ones. */
export function seedling(mesh: Mesh, at: Vec, seed: string, size: number, tint: Colour): void {
  const random = randomFrom(seed);
  const yaw = random() * 6.283;
  for (let i = 0; i < 4; i++)
    leaf(
      mesh,
      forms.leaflet,
      at,
      yaw + i * 1.57,
      0.7 + (i > 1 ? 0.4 : 0),
      0,
      size * (i > 1 ? 0.8 : 1),
      size * 0.3,
      () => brighter(tint, 0.9 + 0.2 * random()),
    );
}
