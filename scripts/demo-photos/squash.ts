/** Squash that run over the ground, and courgettes that stay in their place. */

import { grown } from "./kitchen-plants.ts";
import { cupFlower, lobed, roundLeaf } from "./leaves.ts";
import type { Colour, Mesh, Vec } from "./mesh.ts";
import { add, ball, brighter, colour, mix, rod, times } from "./mesh.ts";
import { between, noise, randomFrom, spread } from "./random.ts";

export interface SquashKind {
  readonly leafTone: Colour;
  readonly fruit: Colour;
  /** Height of a fruit as a share of its width. */
  readonly tall: number;
}

export const crownPrince: SquashKind = { leafTone: colour("#557f3c"), fruit: colour("#8fa09a"), tall: 0.62 };
export const marina: SquashKind = { leafTone: colour("#58823e"), fruit: colour("#5f7a68"), tall: 0.7 };
export const uchikiKuri: SquashKind = { leafTone: colour("#5f8a38"), fruit: colour("#d9541e"), tall: 1.05 };

/**
 * A squash plant `age` days after planting, running towards `yaw` over the ground. Stays within `bound` metres along
 * the run.
 */
export function squash(
  mesh: Mesh,
  at: Vec,
  seed: string,
  age: number,
  yaw: number,
  bound: number,
  kind: SquashKind,
): void {
  if (age < 0) return;
  const random = randomFrom(seed);
  const vigour = between(random, 0.85, 1.15);
  const vines = 4;
  for (let v = 0; v < vines; v++) {
    const run = Math.min(bound, 0.2 + vigour * (0.08 + 2.5 * grown(age - v * 4, 42, 40)));
    const heading = yaw + (v - 1.5) * 0.95 + 0.2 * spread(random);
    const bend = 0.5 * spread(random);
    const path = (d: number): Vec => {
      const turn = heading + bend * d * 0.6 + 0.25 * (noise(d * 1.6, v * 7, at[0] * 3 + at[1]) - 0.5);
      return [at[0] + Math.cos(turn) * d, at[1] + Math.sin(turn) * d, 0.035];
    };
    const points = Array.from({ length: 12 }, (_, i) => path((i / 11) * run));
    rod(mesh, points, (t) => 0.011 * (1 - 0.6 * t) * Math.min(1, 0.4 + run), brighter(kind.leafTone, 1.05), "stem", 5);
    const step = 0.1;
    for (let i = 0; i < 26; i++) {
      const j = [random(), spread(random), spread(random), random(), random(), random(), random(), random()] as const;
      const d = 0.03 + i * step;
      if (d > run) continue;
      const since = Math.min(1, (run - d) / 0.45);
      const small = 0.3 + 0.7 * since;
      const size = (0.115 + 0.07 * j[0]) * small * Math.min(1, 0.4 + age / 36) * (v === 0 && i < 3 ? 1.05 : 1);
      const stalk = (0.12 + 0.2 * j[3]) * small * Math.min(1, 0.3 + age / 36);
      const away = (i % 2 === 0 ? 1 : -1) * (0.6 + 0.6 * j[4]) + heading;
      const foot = path(d);
      const top: Vec = [foot[0] + Math.cos(away) * stalk * 0.55, foot[1] + Math.sin(away) * stalk * 0.55, 0.03 + stalk];
      rod(
        mesh,
        [foot, add(times(add(foot, top), 0.5), [0, 0, 0.02]), top],
        () => 0.0055,
        brighter(kind.leafTone, 1.25),
        "stem",
        4,
      );
      const shade = 0.75 + 0.4 * j[5] + 0.1 * (1 - since);
      roundLeaf(
        mesh,
        top,
        [0.42 * j[1] + 0.12, 0.42 * j[2] - 0.25, 1],
        away + 0.4 * j[1],
        size,
        lobed(0.2),
        0.16,
        (t) => brighter(mix(kind.leafTone, colour("#86a860"), 0.15 + 0.2 * (1 - t)), shade),
      );
      if (age > 27 && j[6] < 0.11 && since > 0.25 && since < 1.01) {
        const bloom: Vec = add(foot, [0.06 * j[1], 0.06 * j[2], 0.12 + stalk * 0.75]);
        rod(mesh, [foot, bloom], () => 0.004, kind.leafTone, "stem", 4);
        cupFlower(mesh, bloom, [0.3 * j[1], -0.5, 0.8], 0.075, 0.046, 5, -0.2, colour("#d98412"), colour("#eea61a"));
      }
      if (age > 38 && j[7] < 0.12 && d < run - 0.6) {
        const r = 0.02 + 0.085 * Math.min(1, (age - 38) / 24);
        ball(
          mesh,
          add(foot, [0.1 * j[1], -0.08, r * kind.tall * 0.9]),
          [r, r, r * kind.tall],
          (up) => mix(mix(kind.fruit, colour("#9cae5c"), 0.35), kind.fruit, up),
          "fruit",
          9,
          0.09,
          16,
        );
      }
    }
  }
}

/** A courgette: big dark leaves on stout stalks around a crown, yellow flowers, dark fruit. */
export function courgette(mesh: Mesh, at: Vec, seed: string, age: number): void {
  if (age < 0) return;
  const random = randomFrom(seed);
  const size = grown(age + 6, 26, 36);
  const count = Math.round(4 + 13 * size);
  for (let i = 0; i < count; i++) {
    const youth = i / count;
    const yaw = i * 2.399963 + 0.3 * spread(random);
    const stalk = (0.1 + 0.36 * size) * (1 - 0.4 * youth) * between(random, 0.85, 1.1);
    const lean = 0.45 + 0.75 * youth;
    const top = add(at, [
      Math.cos(yaw) * Math.cos(lean) * stalk,
      Math.sin(yaw) * Math.cos(lean) * stalk,
      Math.sin(lean) * stalk + 0.05,
    ]);
    rod(mesh, [at, top], () => 0.011 * (0.5 + 0.5 * size), colour("#86a45c"), "stem", 5);
    const shade = between(random, 0.8, 1.15);
    roundLeaf(
      mesh,
      top,
      [Math.cos(yaw) * 0.45, Math.sin(yaw) * 0.45 - 0.15, 1],
      yaw,
      (0.07 + 0.13 * size) * (1 - 0.35 * youth),
      lobed(0.34),
      0.12,
      () => brighter(colour("#46703a"), shade),
    );
  }
  if (age > 18)
    for (let i = 0; i < 4; i++) {
      const yaw = i * 1.7 + random();
      const from = add(at, [Math.cos(yaw) * 0.09, Math.sin(yaw) * 0.09, 0.09]);
      if (age > 24)
        rod(
          mesh,
          [
            from,
            add(from, [Math.cos(yaw) * 0.07, Math.sin(yaw) * 0.07, 0.03]),
            add(from, [Math.cos(yaw) * 0.15, Math.sin(yaw) * 0.15, 0.05]),
          ],
          () => 0.019,
          colour("#26401f"),
          "fruit",
          9,
        );
      cupFlower(
        mesh,
        add(from, [Math.cos(yaw) * 0.14, Math.sin(yaw) * 0.14, 0.12]),
        [Math.cos(yaw) * 0.4, -0.4, 0.8],
        0.075,
        0.046,
        5,
        -0.2,
        colour("#d98412"),
        colour("#eea61a"),
      );
    }
}
