/** Flowers for cutting. */

import { grown } from "./kitchen-plants.ts";
import { cupFlower, doubleFlower, forms, leaf } from "./leaves.ts";
import type { Colour, Mesh, Vec } from "./mesh.ts";
import { add, ball, brighter, colour, mix, rod } from "./mesh.ts";
import { between, randomFrom, spread } from "./random.ts";

/** A tulip; `bloom` 0 bud, 0.5 open, 1 falling, above 1.4 only leaves that yellow. */
export function tulip(mesh: Mesh, at: Vec, seed: string, bloom: number, tint: Colour): void {
  const random = randomFrom(seed);
  const fade = Math.min(1, Math.max(0, (bloom - 1.2) / 0.8));
  const green = mix(colour("#6f9a72"), colour("#b3a45c"), fade);
  const height = between(random, 0.36, 0.46) * Math.min(1, 0.6 + bloom * 0.6);
  for (let i = 0; i < 3; i++)
    leaf(
      mesh,
      { ...forms.strap, droop: 0.8 + 0.5 * random() + fade, fold: 0.45, columns: 4 },
      at,
      i * 2.2 + random(),
      1.1 - 0.5 * fade,
      0.3 * spread(random),
      height * between(random, 0.75, 0.95),
      0.028,
      (t) => brighter(green, 0.85 + 0.25 * t),
    );
  if (bloom > 1.4) return;
  const top = add(at, [0.03 * spread(random), 0.03 * spread(random), height]);
  rod(mesh, [at, add(at, [0, 0, height * 0.5]), top], () => 0.004, colour("#7fa568"), "stem", 5);
  if (bloom > 1.15) return;
  const open = Math.min(1, Math.max(0, bloom));
  const tone = mix(mix(green, tint, Math.min(1, 0.25 + bloom * 2)), tint, Math.min(1, bloom * 3));
  for (const inner of [0, 1])
    cupFlower(
      mesh,
      add(top, [0, 0, inner * 0.002]),
      [0.15 * spread(random), -0.1, 1],
      0.062 - 0.006 * inner,
      0.021 + 0.016 * open - 0.003 * inner,
      3,
      0.35 - 0.45 * open,
      brighter(tone, 0.8),
      tone,
    );
}

export interface DahliaKind {
  readonly leafTone: Colour;
  readonly outer: Colour;
  readonly inner: Colour;
  readonly eye: Colour;
  /** Metres. */
  readonly tall: number;
  readonly flower: number;
  readonly rings: number;
  /** Days after its shoots came up. */
  readonly opens: number;
}

const bronze = colour("#465432");

export const bishop: DahliaKind = {
  leafTone: bronze,
  outer: colour("#c8140c"),
  inner: colour("#a00d0c"),
  eye: colour("#d59a1e"),
  tall: 0.92,
  flower: 0.052,
  rings: 2,
  opens: 93,
};
export const davidHoward: DahliaKind = {
  leafTone: bronze,
  outer: colour("#e08a2c"),
  inner: colour("#c8681c"),
  eye: colour("#b85a1c"),
  tall: 0.98,
  flower: 0.055,
  rings: 5,
  opens: 98,
};
export const cafeAuLait: DahliaKind = {
  leafTone: colour("#547a3a"),
  outer: colour("#dcb79a"),
  inner: colour("#c98f74"),
  eye: colour("#b87a5c"),
  tall: 0.9,
  flower: 0.1,
  rings: 7,
  opens: 105,
};

/** A dahlia `age` days after its shoots came up; the first shoots sit low for weeks. */
export function dahlia(mesh: Mesh, at: Vec, seed: string, age: number, kind: DahliaKind): void {
  if (age < 0) return;
  const random = randomFrom(seed);
  const size = grown(age, 70, 60);
  const height = kind.tall * (0.06 + 0.94 * size) * between(random, 0.9, 1.08);
  const stems = 8;
  for (let s = 0; s < stems; s++) {
    const yaw = (s / stems) * 6.283 + random();
    const out = between(random, 0.1, 0.32) * height;
    const own = height * between(random, 0.72, 1);
    const point = (t: number): Vec => add(at, [Math.cos(yaw) * out * t, Math.sin(yaw) * out * t, own * t]);
    rod(
      mesh,
      [point(0), point(0.5), point(1)],
      (t) => 0.008 - 0.004 * t,
      mix(kind.leafTone, colour("#7a5a3c"), 0.3),
      "stem",
      5,
    );
    const nodes = Math.max(2, Math.round(own / 0.07));
    for (let i = 1; i <= nodes; i++)
      for (const side of [0, Math.PI]) {
        const t = (i - 0.3) / nodes;
        const way = yaw + side + i * 1.571 + 0.3 * spread(random);
        const long = 0.19 * Math.min(1, 0.35 + size) * (1 - 0.45 * t ** 2) * between(random, 0.85, 1.15);
        const shade = between(random, 0.8, 1.2);
        const from = point(t);
        leaf(mesh, { ...forms.oval, droop: 0.9 }, from, way, 0.55, 0.3 * spread(random), long, long * 0.32, () =>
          brighter(kind.leafTone, shade),
        );
        for (const turn of [-0.8, 0.8])
          leaf(
            mesh,
            forms.leaflet,
            add(from, [Math.cos(way) * long * 0.3, Math.sin(way) * long * 0.3, long * 0.12]),
            way + turn,
            0.3,
            0.2 * spread(random),
            long * 0.6,
            long * 0.2,
            () => brighter(kind.leafTone, shade * 0.95),
          );
      }
    for (let f = 0; f < 2; f++) {
      const start = kind.opens + between(random, 0, 14) + f * 7;
      const lift = between(random, 0.06, 0.16);
      const lean: Vec = [0.5 * spread(random), -0.55 + 0.4 * spread(random), 0.75];
      if (age < start - 12) continue;
      const tip = add(point(0.9), [0.06 * (f * 2 - 1), 0.04 * spread(random), lift]);
      rod(mesh, [point(0.8), tip], () => 0.0035, mix(kind.leafTone, colour("#7a6a3c"), 0.4), "stem", 4);
      const open = Math.min(1, Math.max(0, (age - start) / 7));
      if (open < 0.12)
        ball(mesh, tip, [0.014, 0.014, 0.013], (up) => mix(kind.leafTone, kind.outer, up * 0.35), "stem", 0, 0, 8);
      else
        doubleFlower(
          mesh,
          tip,
          lean,
          kind.flower * (0.45 + 0.55 * open),
          Math.max(2, Math.round(kind.rings * open)),
          kind.rings > 3 ? 14 : 9,
          kind.outer,
          kind.inner,
          kind.eye,
        );
    }
  }
}

/** Sweet peas up a wigwam of rods; `age` days after planting, flowers from about day 52. */
export function sweetPeas(mesh: Mesh, foot: Vec, top: Vec, seed: string, age: number): void {
  if (age < 0) return;
  const random = randomFrom(seed);
  const climb = 0.1 + 0.9 * grown(age, 42, 48);
  const tints = ["#c43c78", "#8a3c9a", "#e8d8e4", "#d86a8c", "#5a4aa8"].map(colour);
  const nodes = 130;
  for (let i = 0; i < nodes; i++) {
    const j = [random(), spread(random), spread(random), random(), random(), random(), random()] as const;
    const t = i / nodes;
    if (t > climb) continue;
    const on: Vec = [
      foot[0] + (top[0] - foot[0]) * t + 0.05 * j[1],
      foot[1] + (top[1] - foot[1]) * t + 0.05 * j[2],
      foot[2] + (top[2] - foot[2]) * t,
    ];
    const yaw = j[0] * 6.283;
    const small = Math.min(1, 0.4 + (climb - t) * 3);
    for (const turn of [-0.5, 0.5])
      leaf(mesh, forms.leaflet, on, yaw + turn, 0.4 + 0.4 * j[3], 0.4 * j[1], 0.07 * small, 0.021 * small, () =>
        brighter(colour("#6f9f58"), 0.8 + 0.4 * j[4]),
      );
    if (age > 55 && j[5] < 0.22 && t > 0.25 && t < climb - 0.04) {
      const tint = tints[Math.floor(j[6] * tints.length)] as Colour;
      const stem: Vec = add(on, [Math.cos(yaw) * 0.13, Math.sin(yaw) * 0.13, 0.09]);
      rod(mesh, [on, stem], () => 0.002, colour("#86ad62"), "stem", 3);
      for (let f = 0; f < 3; f++) {
        const at = add(stem, [Math.cos(yaw + f * 2) * 0.018, Math.sin(yaw + f * 2) * 0.018, -0.024 * f]);
        for (const side of [-0.7, 0, 0.7])
          leaf(mesh, { ...forms.petal, fold: 0.1 }, at, yaw + side + f, 0.9, 0.4, 0.03, 0.017, (q) =>
            mix(brighter(tint, 1.25), tint, q),
          );
      }
    }
  }
}

/** A cornflower: thin grey-green stems and blue heads; `age` days after it came up. */
export function cornflower(mesh: Mesh, at: Vec, seed: string, age: number): void {
  if (age < 0) return;
  const random = randomFrom(seed);
  const size = grown(age, 32, 40);
  for (let s = 0; s < 4; s++) {
    const yaw = random() * 6.283;
    const height = (0.05 + 0.62 * size) * between(random, 0.75, 1.05);
    const top = add(at, [Math.cos(yaw) * 0.16 * size, Math.sin(yaw) * 0.16 * size, height]);
    rod(
      mesh,
      [at, add(at, [Math.cos(yaw) * 0.04, Math.sin(yaw) * 0.04, height * 0.6]), top],
      () => 0.0025,
      colour("#85a076"),
      "stem",
      3,
    );
    for (let i = 0; i < 9; i++)
      leaf(
        mesh,
        { ...forms.strap, droop: 0.9, fold: 0.2 },
        add(at, [Math.cos(yaw) * 0.05 * (i / 9), Math.sin(yaw) * 0.05 * (i / 9), (height * 0.8 * i) / 9]),
        random() * 6.283,
        1,
        0,
        0.06 + 0.08 * size,
        0.006,
        () => brighter(colour("#7c9c70"), between(random, 0.85, 1.15)),
      );
    if (age > 44 + 10 * random())
      doubleFlower(
        mesh,
        top,
        [0.3 * spread(random), -0.4, 0.85],
        0.026,
        2,
        10,
        colour("#3450c8"),
        colour("#5a50c0"),
        colour("#3a2a70"),
      );
  }
}

/** Low bedding flowers in a pot: violas in spring, marigolds in summer. */
export function bedding(
  mesh: Mesh,
  at: Vec,
  seed: string,
  radius: number,
  size: number,
  blooms: number,
  tint: Colour,
  eye: Colour,
): void {
  const random = randomFrom(seed);
  for (let i = 0; i < 60; i++) {
    const yaw = random() * 6.283;
    const r = radius * Math.sqrt(random());
    const long = 0.05 * (0.4 + 0.6 * size) * between(random, 0.8, 1.3);
    leaf(
      mesh,
      forms.leaflet,
      add(at, [Math.cos(yaw) * r * 0.7, Math.sin(yaw) * r * 0.7, 0.05 * size * random()]),
      yaw,
      0.7 * random() + 0.3,
      0.3 * spread(random),
      long,
      long * 0.34,
      () => brighter(colour("#5c9236"), between(random, 0.8, 1.2)),
    );
  }
  for (let i = 0; i < blooms; i++) {
    const yaw = random() * 6.283;
    const r = radius * Math.sqrt(random());
    doubleFlower(
      mesh,
      add(at, [Math.cos(yaw) * r, Math.sin(yaw) * r, 0.06 * size + 0.03 + 0.02 * random()]),
      [0.5 * spread(random), -0.5 + 0.3 * spread(random), 0.8],
      0.02,
      2,
      6,
      tint,
      brighter(tint, 0.75),
      eye,
    );
  }
}
