/** Tomatoes and cucumbers, up canes and strings. */

import { grown } from "./kitchen-plants.ts";
import type { LeafForm } from "./leaves.ts";
import { cupFlower, forms, leaf, lobed, roundLeaf } from "./leaves.ts";
import type { Colour, Mesh, Vec } from "./mesh.ts";
import { add, ball, brighter, colour, mix, rod, times } from "./mesh.ts";
import { between, randomFrom, spread } from "./random.ts";

export interface TomatoKind {
  /** Metres across. */
  readonly fruit: number;
  readonly ripe: Colour;
  readonly green: Colour;
  readonly ribs: number;
  readonly perTruss: number;
  /** Days from planting to the first red fruit. */
  readonly ripens: number;
}

export const gardenersDelight: TomatoKind = {
  fruit: 0.034,
  ripe: colour("#c8200e"),
  green: colour("#86a84a"),
  ribs: 0,
  perTruss: 9,
  ripens: 44,
};
export const harbinger: TomatoKind = { ...gardenersDelight, fruit: 0.055, perTruss: 5, ripens: 56 };
export const blackTomato: TomatoKind = {
  ...gardenersDelight,
  fruit: 0.065,
  ripe: colour("#5a2026"),
  green: colour("#6f8a48"),
  perTruss: 4,
  ripens: 60,
};
export const saintPierre: TomatoKind = { ...gardenersDelight, fruit: 0.07, perTruss: 4, ripens: 62 };
export const costoluto: TomatoKind = {
  fruit: 0.08,
  ripe: colour("#c4260f"),
  green: colour("#8fae52"),
  ribs: 6,
  perTruss: 3,
  ripens: 64,
};

const tomatoLeaflet: LeafForm = {
  ...forms.leaflet,
  // Two teeth a side, then a long tip.
  half: (t) =>
    Math.max(
      0.04,
      Math.sin(Math.PI * Math.min(1, t * 0.9 + 0.08)) * (1 - 0.45 * Math.max(0, Math.sin(t * 14.5 - 0.6))),
    ),
  wave: 0.22,
  waves: 2,
  rows: 9,
  columns: 4,
  droop: 1.1,
};

/** A feathered leaf: leaflets in pairs along a hanging stalk, large and small by turns. */
function feather(
  mesh: Mesh,
  from: Vec,
  yaw: number,
  length: number,
  rise: number,
  droop: number,
  tint: Colour,
  seed: number,
): void {
  const random = randomFrom(seed);
  const steps = 7;
  let at = from;
  let p = rise;
  const line: Vec[] = [from];
  for (let i = 0; i < steps; i++) {
    at = add(at, times([Math.cos(yaw) * Math.cos(p), Math.sin(yaw) * Math.cos(p), Math.sin(p)], length / steps));
    p -= droop / steps;
    line.push(at);
  }
  rod(mesh, line, (t) => 0.0035 * (1 - 0.5 * t) + 0.001, brighter(tint, 1.1), "stem", 3);
  for (let k = 2; k <= steps; k++) {
    const large = k % 2 === 0;
    const size = length * (large ? 0.37 : 0.14) * between(random, 0.85, 1.15);
    for (const side of [-1, 1]) {
      const shade = between(random, 0.85, 1.12);
      leaf(
        mesh,
        large ? tomatoLeaflet : forms.leaflet,
        line[k] as Vec,
        yaw + side * between(random, 0.85, 1.2),
        p + 0.5 + 0.2 * spread(random),
        0.3 * spread(random),
        size,
        size * 0.3,
        () => brighter(tint, shade),
      );
    }
  }
  const shade = between(random, 0.85, 1.12);
  leaf(mesh, tomatoLeaflet, at, yaw, p + 0.2, 0.2 * spread(random), length * 0.42, length * 0.13, () =>
    brighter(tint, shade),
  );
}

/** A tomato on its cane, `age` days after planting; `tall` metres at most. */
export function tomato(
  mesh: Mesh,
  at: Vec,
  seed: string,
  age: number,
  kind: TomatoKind,
  tall: number,
  reach = 1,
): void {
  if (age < 0) return;
  const random = randomFrom(seed);
  const height = (0.22 + (tall - 0.22) * grown(age, 34, 46)) * between(random, 0.92, 1.05);
  const point = (t: number): Vec => add(at, [0.025 * Math.sin(t * 9 + at[0] * 5), 0.025 * Math.cos(t * 8), height * t]);
  rod(
    mesh,
    Array.from({ length: 9 }, (_, i) => point(i / 8)),
    (t) => 0.009 - 0.005 * t,
    colour("#6f9a4a"),
    "stem",
    5,
  );
  const turn = random() * 6.283;
  const nodes = Math.round(tall / 0.05);
  for (let i = 1; i <= nodes; i++) {
    const j = [spread(random), random(), random(), spread(random), random()] as const;
    const z = i * 0.05;
    if (z > height) continue;
    const youth = z / height;
    // The lowest leaves are taken off once the fruit hangs.
    const bare = age > 45 && z < 0.28;
    const length =
      reach * 0.33 * Math.min(1, 0.3 + (height - z) / 0.35) * (0.8 + 0.35 * j[1]) * Math.min(1, 0.5 + age / 30);
    if (!bare)
      feather(
        mesh,
        point(youth),
        turn + i * 2.4 + 0.3 * j[0],
        length,
        0.75 - 0.35 * (1 - youth),
        1.5 + 0.4 * j[3],
        brighter(colour("#4a7434"), 0.85 + 0.3 * j[2]),
        i * 7919 + Math.floor(at[0] * 1000) + 99991,
      );
    if (i % 5 === 0) {
      const born = (z / tall) * 52 - 4;
      truss(mesh, point(youth), turn + i * 2.4 + 1.4, age - born, age, z, kind, i + Math.floor(at[0] * 100));
    }
  }
}

function truss(
  mesh: Mesh,
  from: Vec,
  yaw: number,
  since: number,
  age: number,
  z: number,
  kind: TomatoKind,
  seed: number,
): void {
  if (since < 12) return;
  const random = randomFrom(seed * 31337);
  const tip: Vec = add(from, [Math.cos(yaw) * 0.11, Math.sin(yaw) * 0.11, -0.1]);
  rod(
    mesh,
    [from, add(from, [Math.cos(yaw) * 0.07, Math.sin(yaw) * 0.07, 0]), tip],
    () => 0.003,
    colour("#7d9a4a"),
    "stem",
    4,
  );
  for (let f = 0; f < kind.perTruss; f++) {
    const t = 0.35 + (0.65 * f) / kind.perTruss;
    const at = add(from, [
      Math.cos(yaw) * 0.11 * t + 0.02 * spread(random),
      Math.sin(yaw) * 0.11 * t + 0.02 * spread(random),
      -0.03 - 0.15 * t * t,
    ]);
    const own = since - f * 1.6 - 4 * random();
    if (own < 8) continue;
    if (own < 16) {
      cupFlower(
        mesh,
        at,
        [Math.cos(yaw), Math.sin(yaw), -0.2],
        0.011,
        0.008,
        5,
        -0.2,
        colour("#e8c62a"),
        colour("#f0d23c"),
      );
      continue;
    }
    const size = (kind.fruit / 2) * Math.min(1, 0.3 + (own - 16) / 22);
    const ripe = Math.min(1, Math.max(0, (age - kind.ripens - z * 26 - f * 1.5) / 6));
    const half = mix(kind.green, colour("#d98a2c"), Math.min(1, ripe * 2));
    const tone = ripe < 0.5 ? half : mix(colour("#d98a2c"), kind.ripe, ripe * 2 - 1);
    ball(
      mesh,
      at,
      [size, size, size * (kind.ribs > 0 ? 0.75 : 1)],
      (up) => brighter(tone, 0.92 + 0.12 * up),
      "fruit",
      kind.ribs,
      kind.ribs > 0 ? 0.12 : 0,
      12,
    );
  }
}

/** A cucumber up a string, `age` days after planting, to `tall` metres. */
export function cucumber(mesh: Mesh, at: Vec, seed: string, age: number, tall: number): void {
  if (age < 0) return;
  const random = randomFrom(seed);
  const height = Math.min(tall, 0.15 + (tall - 0.1) * grown(age, 30, 38));
  const point = (t: number): Vec => add(at, [0.02 * Math.sin(t * 14), 0.02 * Math.cos(t * 13), height * t]);
  rod(
    mesh,
    Array.from({ length: 12 }, (_, i) => point(i / 11)),
    () => 0.006,
    colour("#7fa84e"),
    "stem",
    5,
  );
  const turn = random() * 6.283;
  for (let i = 1; i * 0.075 < height; i++) {
    const z = i * 0.075;
    const youth = z / height;
    const size = 0.12 * Math.min(1, 0.35 + (height - z) / 0.4) * between(random, 0.85, 1.15);
    const yaw = turn + i * 2.4;
    const stalk = 0.13 * Math.min(1, 0.4 + (height - z) / 0.4);
    const top = add(point(youth), [Math.cos(yaw) * stalk, Math.sin(yaw) * stalk, stalk * 0.35]);
    rod(mesh, [point(youth), top], () => 0.0032, colour("#86ad55"), "stem", 3);
    roundLeaf(mesh, top, [Math.cos(yaw) * 0.75, Math.sin(yaw) * 0.75, 0.75], yaw, size, lobed(0.26), -0.1, () =>
      brighter(colour("#5a8a3a"), between(random, 0.8, 1.15)),
    );
    if (age > 26 && i % 2 === 0)
      cupFlower(
        mesh,
        add(point(youth), [Math.cos(yaw + 0.5) * 0.04, Math.sin(yaw + 0.5) * 0.04, 0.01]),
        [Math.cos(yaw), Math.sin(yaw), 0.3],
        0.016,
        0.014,
        5,
        -0.2,
        colour("#e6b51a"),
        colour("#f2cf3a"),
      );
    if (age > 44 && i % 5 === 1 && z < height - 0.5) {
      const long = 0.06 + 0.16 * Math.min(1, (age - 44) / 16);
      const from = add(point(youth), [Math.cos(yaw + 1) * 0.05, Math.sin(yaw + 1) * 0.05, 0]);
      rod(
        mesh,
        Array.from({ length: 7 }, (_, k) => add(from, [0, 0, (-long * k) / 6])),
        (t) => 0.019 * Math.sin(Math.PI * (0.12 + 0.78 * t)) ** 0.5,
        colour("#3f7030"),
        "fruit",
        9,
      );
    }
  }
}
