/** Crops in rows with divided leaves, bushes and climbers: carrots, parsnips, potatoes, peppers, climbing beans. */

import { grown } from "./kitchen-plants.ts";
import { cupFlower, forms, leaf, lobed, roundLeaf } from "./leaves.ts";
import type { Colour, Mesh, Vec } from "./mesh.ts";
import { add, brighter, colour, mix, rod, subtract, times } from "./mesh.ts";
import { between, randomFrom, spread } from "./random.ts";

/** A leaf of many small leaflets on an arching stalk: carrot when fine, parsnip and potato when coarse. */
function divided(
  mesh: Mesh,
  from: Vec,
  yaw: number,
  rise: number,
  droop: number,
  length: number,
  pairs: number,
  leafletShare: number,
  slim: number,
  tint: Colour,
  seed: string,
): void {
  const random = randomFrom(seed);
  let at = from;
  let p = rise;
  const steps = pairs + 2;
  const line: Vec[] = [from];
  for (let i = 0; i < steps; i++) {
    at = add(at, times([Math.cos(yaw) * Math.cos(p), Math.sin(yaw) * Math.cos(p), Math.sin(p)], length / steps));
    p -= droop / steps;
    line.push(at);
  }
  rod(
    mesh,
    [line[0] as Vec, line[Math.floor(steps / 2)] as Vec, line[steps] as Vec],
    (t) => length * 0.012 * (1 - 0.6 * t),
    brighter(tint, 1.15),
    "stem",
    3,
  );
  const small = { ...forms.leaflet, rows: 3, columns: 2, wave: 0.2 } as const;
  for (let k = 2; k <= steps; k++) {
    const size = length * leafletShare * Math.sin(Math.PI * (0.25 + 0.6 * (k / steps))) * between(random, 0.8, 1.2);
    for (const side of [-1, 1])
      leaf(
        mesh,
        small,
        line[k] as Vec,
        yaw + side * between(random, 0.7, 1.2),
        p + 0.5 + 0.3 * spread(random),
        0.4 * spread(random),
        size,
        size * slim,
        () => brighter(tint, between(random, 0.85, 1.18)),
      );
  }
  leaf(mesh, small, at, yaw, p, 0, length * leafletShare, length * leafletShare * slim, () => tint);
}

/** A carrot's top; `size` 0 to 1. */
export function carrot(mesh: Mesh, at: Vec, seed: string, size: number): void {
  if (size <= 0.02) return;
  const random = randomFrom(seed);
  const count = Math.round(3 + 5 * size);
  for (let i = 0; i < count; i++)
    divided(
      mesh,
      at,
      i * 2.4 + random(),
      between(random, 0.8, 1.4),
      0.9,
      (0.04 + 0.28 * size) * between(random, 0.75, 1.1),
      8,
      0.22,
      0.26,
      colour("#64883c"),
      `${seed} ${i}`,
    );
}

/** A parsnip's top: coarser and broader. */
export function parsnip(mesh: Mesh, at: Vec, seed: string, size: number): void {
  if (size <= 0.02) return;
  const random = randomFrom(seed);
  const count = Math.round(3 + 5 * size);
  for (let i = 0; i < count; i++)
    divided(
      mesh,
      at,
      i * 2.4 + random(),
      between(random, 0.7, 1.25),
      0.8,
      (0.05 + 0.36 * size) * between(random, 0.8, 1.1),
      4,
      0.28,
      0.5,
      colour("#5c8436"),
      `${seed} ${i}`,
    );
}

/** A potato plant: a mound of soft divided leaves; `size` 0 to 1. */
export function potato(mesh: Mesh, at: Vec, seed: string, size: number, bloom: boolean): void {
  if (size <= 0.02) return;
  const random = randomFrom(seed);
  const count = Math.round(5 + 17 * size);
  for (let i = 0; i < count; i++) {
    const youth = i / count;
    const from = add(at, [0.07 * spread(random) * size, 0.07 * spread(random) * size, 0.32 * size * youth]);
    divided(
      mesh,
      from,
      i * 2.4 + random(),
      0.35 + 0.7 * youth,
      1.0,
      (0.08 + 0.2 * size) * between(random, 0.8, 1.15),
      3,
      0.36,
      0.55,
      brighter(colour("#52783a"), between(random, 0.85, 1.15)),
      `${seed} ${i}`,
    );
  }
  if (bloom)
    for (let f = 0; f < 5; f++)
      cupFlower(
        mesh,
        add(at, [0.09 * spread(random), 0.09 * spread(random), 0.46 * size]),
        [0.3 * spread(random), -0.3, 0.9],
        0.012,
        0.016,
        5,
        -0.3,
        colour("#e0b840"),
        colour("#ece6f0"),
      );
}

/** A pepper or aubergine: a small bush of plain leaves. */
export function bush(
  mesh: Mesh,
  at: Vec,
  seed: string,
  age: number,
  tall: number,
  leafLength: number,
  tint: Colour,
  fruit?: Colour,
): void {
  if (age < 0) return;
  const random = randomFrom(seed);
  const height = 0.12 + (tall - 0.12) * grown(age, 34, 50);
  rod(
    mesh,
    [at, add(at, [0, 0, height * 0.6]), add(at, [0.02, 0, height])],
    () => 0.007,
    brighter(tint, 1.1),
    "stem",
    5,
  );
  const count = Math.round(8 + 34 * (height / tall));
  for (let i = 0; i < count; i++) {
    const youth = (i + 1) / count;
    const out = 0.12 * (height / tall) * (1 - 0.5 * youth) * random();
    const yaw = i * 2.4 + 0.4 * spread(random);
    const long = leafLength * between(random, 0.75, 1.15) * Math.min(1, 0.5 + age / 40);
    leaf(
      mesh,
      { ...forms.oval, droop: 1.1 },
      add(at, [Math.cos(yaw) * out, Math.sin(yaw) * out, height * (0.25 + 0.75 * youth)]),
      yaw,
      0.5 + 0.4 * youth,
      0.3 * spread(random),
      long,
      long * 0.3,
      () => brighter(tint, between(random, 0.85, 1.15)),
    );
  }
  if (fruit && age > 52)
    for (let i = 0; i < 5; i++) {
      const from = add(at, [0.09 * spread(random), -0.05 - 0.05 * random(), height * between(random, 0.4, 0.7)]);
      rod(
        mesh,
        [from, add(from, [0, -0.01, -0.04]), add(from, [0.005, 0, -0.09])],
        (t) => 0.016 * (1 - t) ** 0.6 + 0.001,
        fruit,
        "fruit",
        8,
      );
    }
}

/**
 * A climbing bean or squash along a way of points: leaves in threes or broad ones, up to the share `climb` of the way.
 */
export function climber(
  mesh: Mesh,
  way: readonly Vec[],
  seed: string,
  climb: number,
  broad: boolean,
  blossom?: Colour,
): void {
  if (climb <= 0) return;
  const random = randomFrom(seed);
  const nodes = broad ? 34 : 46;
  const last = way.length - 1;
  for (let i = 0; i < nodes; i++) {
    const j = [random(), spread(random), spread(random), random(), random(), random()] as const;
    const t = i / nodes;
    if (t > climb) continue;
    const k = Math.min(last - 1, Math.floor(t * last));
    const from = way[k] as Vec;
    const on = add(add(from, times(subtract(way[k + 1] as Vec, from), t * last - k)), [0.04 * j[1], 0.04 * j[2], 0]);
    const young = Math.min(1, 0.35 + (climb - t) * 4);
    const yaw = j[0] * 6.283;
    const shade = 0.8 + 0.4 * j[3];
    if (broad) {
      const stalk = add(on, [Math.cos(yaw) * 0.13, Math.sin(yaw) * 0.13, 0.05]);
      rod(mesh, [on, stalk], () => 0.004, colour("#86a860"), "stem", 3);
      roundLeaf(
        mesh,
        stalk,
        [Math.cos(yaw) * 0.7, Math.sin(yaw) * 0.7 - 0.3, 0.7],
        yaw,
        0.12 * young,
        lobed(0.18),
        -0.05,
        () => brighter(colour("#5f8a38"), shade),
      );
    } else
      for (const turn of [-1.1, 0, 1.1])
        leaf(mesh, forms.leaflet, on, yaw + turn, 0.1 + 0.3 * j[4], 0.3 * j[1], 0.095 * young, 0.038 * young, () =>
          brighter(colour("#4f7a38"), shade),
        );
    if (blossom && j[5] < 0.22 && t < climb - 0.1)
      cupFlower(
        mesh,
        add(on, [Math.cos(yaw) * 0.07, Math.sin(yaw) * 0.07, 0.03]),
        [Math.cos(yaw), Math.sin(yaw) - 0.3, 0.5],
        broad ? 0.07 : 0.02,
        broad ? 0.042 : 0.014,
        5,
        -0.1,
        brighter(blossom, 0.85),
        blossom,
      );
  }
  const reached = way.slice(0, Math.max(2, Math.ceil(climb * last) + 1));
  rod(mesh, reached, () => (broad ? 0.008 : 0.005), mix(colour("#7fa25a"), colour("#6a5a44"), 0.2), "stem", 4);
}
