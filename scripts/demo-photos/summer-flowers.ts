/** Cosmos, sunflowers and pot marigolds. */

import { grown } from "./kitchen-plants.ts";
import { doubleFlower, forms, leaf } from "./leaves.ts";
import type { Colour, Mesh, Vec } from "./mesh.ts";
import { add, brighter, colour, rod } from "./mesh.ts";
import { between, randomFrom, spread } from "./random.ts";

/** A cosmos: airy, with thread leaves; `age` days after planting, `opens` the age of its first flower. */
export function cosmos(mesh: Mesh, at: Vec, seed: string, age: number, opens: number, tint: Colour): void {
  if (age < 0) return;
  const random = randomFrom(seed);
  const height = (0.12 + 0.8 * grown(age, 32, 44)) * between(random, 0.85, 1.1);
  for (let s = 0; s < 5; s++) {
    const yaw = s * 1.257 + random();
    const out = height * between(random, 0.1, 0.3);
    const own = height * between(random, 0.75, 1);
    const top = add(at, [Math.cos(yaw) * out, Math.sin(yaw) * out, own]);
    rod(
      mesh,
      [at, add(at, [Math.cos(yaw) * out * 0.35, Math.sin(yaw) * out * 0.35, own * 0.55]), top],
      () => 0.003,
      colour("#6f9448"),
      "stem",
      4,
    );
    for (let i = 0; i < 26; i++) {
      const t = (i + 0.5) / 26;
      leaf(
        mesh,
        { ...forms.strap, rows: 3, droop: 0.5, fold: 0.1 },
        add(at, [Math.cos(yaw) * out * t, Math.sin(yaw) * out * t, own * t * 0.92]),
        random() * 6.283,
        between(random, 0.2, 1.1),
        0,
        0.05 + 0.07 * height,
        0.0035,
        () => brighter(colour("#6a9444"), between(random, 0.85, 1.15)),
      );
    }
    const start = opens + s * 3 + 3 * random();
    if (age >= start)
      doubleFlower(mesh, top, [0.4 * spread(random), -0.6, 0.7], 0.045, 1, 8, tint, tint, colour("#d9a61e"));
  }
}

/** A sunflower; opens at age `opens`. */
export function sunflower(mesh: Mesh, at: Vec, seed: string, age: number, opens: number, tint: Colour): void {
  if (age < 0) return;
  const random = randomFrom(seed);
  const height = (0.1 + 1.35 * grown(age, 38, 44)) * between(random, 0.85, 1.08);
  const top = add(at, [0.03 * spread(random), 0.03 * spread(random), height]);
  rod(mesh, [at, add(at, [0, 0, height * 0.6]), top], () => 0.009, colour("#7a9450"), "stem", 6);
  for (let i = 0; i < height / 0.085; i++) {
    const z = 0.06 + i * 0.085;
    const size = 0.2 * Math.min(1, 0.3 + (height - z) / 0.5) * Math.min(1, 0.35 + age / 40);
    const shade = between(random, 0.85, 1.15);
    leaf(
      mesh,
      { ...forms.oval, droop: 1.0, half: (t) => Math.sin(Math.PI * Math.min(1, t ** 0.7 * 0.95 + 0.04)) ** 0.8 },
      add(at, [0, 0, Math.min(z, height)]),
      i * 2.4,
      0.5,
      0.2 * spread(random),
      size,
      size * 0.38,
      () => brighter(colour("#56803c"), shade),
    );
  }
  if (age >= opens)
    doubleFlower(
      mesh,
      top,
      [0.2 * spread(random), -0.8, 0.35],
      0.09,
      2,
      18,
      tint,
      brighter(tint, 0.7),
      colour("#241410"),
    );
}

/** A pot marigold in the ground; opens at age `opens`. */
export function marigold(mesh: Mesh, at: Vec, seed: string, age: number, opens: number, tint: Colour): void {
  if (age < 0) return;
  const random = randomFrom(seed);
  const size = grown(age, 40, 56);
  for (let i = 0; i < 8 + 26 * size; i++) {
    const yaw = i * 2.4 + random();
    const long = (0.03 + 0.1 * size) * between(random, 0.75, 1.2);
    leaf(
      mesh,
      { ...forms.oval, rows: 4, columns: 2 },
      add(at, [0.04 * size * spread(random), 0.04 * size * spread(random), 0.24 * size * random()]),
      yaw,
      between(random, 0.2, 0.9),
      0.3 * spread(random),
      long,
      long * 0.2,
      () => brighter(colour("#6f9646"), between(random, 0.85, 1.15)),
    );
  }
  for (let f = 0; f < 6; f++) {
    const start = opens + f * 3.5;
    const top = add(at, [0.09 * spread(random), 0.07 * spread(random), 0.16 + 0.26 * size * between(random, 0.8, 1.1)]);
    if (age < start) continue;
    rod(mesh, [at, top], () => 0.003, colour("#7a9a52"), "stem", 3);
    doubleFlower(
      mesh,
      top,
      [0.3 * spread(random), -0.45, 0.85],
      0.032,
      3,
      14,
      tint,
      brighter(tint, 0.8),
      brighter(tint, 0.45),
    );
  }
}
