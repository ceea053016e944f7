/**
 * What stays: ground, paths, boards, hedges, sheds, pots and the things left standing about. It is what photos are
 * aligned by.
 */

import { forms, leaf } from "./leaves.ts";
import type { Colour, Mesh, Vec } from "./mesh.ts";
import { add, ball, box, brighter, colour, mix, quad, rod, sheet, subtract, times, turned } from "./mesh.ts";
import { between, cloudNoise, hashGrid, noise, randomFrom, spread } from "./random.ts";

/** Height of dug soil above its level, metres. */
const clods = (x: number, y: number): number =>
  0.055 * (cloudNoise(x * 3.1, y * 3.1, 1.7, 2) - 0.5) +
  0.05 * (cloudNoise(x * 14, y * 14, 9.2, 2) - 0.5) +
  0.02 * (noise(x * 45, y * 45, 3) - 0.5);

/** A bed of soil between two corners at a level; `wet` darkens it. */
export function soilBed(
  mesh: Mesh,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  level: number,
  wet: number,
  mounds: readonly (readonly [number, number, number])[] = [],
): void {
  const dry = mix(colour("#7d6852"), colour("#4c3d30"), wet);
  sheet(mesh, Math.round((x1 - x0) / 0.022), Math.round((y1 - y0) / 0.022), "soil", (s, t) => {
    const x = x0 + (x1 - x0) * s;
    const y = y0 + (y1 - y0) * t;
    let z = level + clods(x, y);
    let dark = 0;
    for (const [mx, my, r] of mounds) {
      const d = Math.hypot(x - mx, y - my) / r;
      if (d < 1.4) {
        z += 0.16 * r * Math.max(0, 1 - d * d) ** 0.8;
        dark = Math.max(dark, Math.min(1, (1.25 - d) * 2));
      }
    }
    return { at: [x, y, z], colour: mix(dry, colour("#3d2f26"), Math.max(0, dark) * 0.7) };
  });
}

/** A strip of wood chips: a rough brown ground with single chips thrown over it. */
export function chipPath(
  mesh: Mesh,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  seed: string,
  perMetre = 300,
): void {
  const random = randomFrom(seed);
  sheet(mesh, Math.ceil((x1 - x0) / 0.06), Math.ceil((y1 - y0) / 0.06), "soil", (s, t) => {
    const x = x0 + (x1 - x0) * s;
    const y = y0 + (y1 - y0) * t;
    return { at: [x, y, 0.03 * (cloudNoise(x * 2, y * 2, 5, 3) - 0.5)], colour: colour("#84725a") };
  });
  const tones = ["#9c8768", "#8a7354", "#b09c7c", "#766450", "#968a78"].map(colour);
  const count = Math.round((x1 - x0) * (y1 - y0) * perMetre * 2);
  for (let i = 0; i < count; i++) {
    const at: Vec = [between(random, x0, x1), between(random, y0, y1), 0.015 + 0.02 * random()];
    const yaw = random() * 6.283;
    const long = between(random, 0.02, 0.055);
    const wide = between(random, 0.006, 0.017);
    const along: Vec = [Math.cos(yaw) * long, Math.sin(yaw) * long, 0.018 * spread(random)];
    quad(
      mesh,
      at,
      along,
      [-Math.sin(yaw) * wide, Math.cos(yaw) * wide, 0.012 * spread(random)],
      brighter(tones[Math.floor(random() * tones.length)] as Colour, between(random, 0.7, 1.15)),
      "chips",
    );
  }
}

/** Mown or rough grass; blades thin out with distance from the camera so that their number stays small. */
export function grass(
  mesh: Mesh,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  seed: string,
  tall: number,
  eye: Vec,
  perMetre: number,
): void {
  const random = randomFrom(seed);
  sheet(mesh, Math.ceil((x1 - x0) / 0.15), Math.ceil((y1 - y0) / 0.15), "grass", (s, t) => {
    const x = x0 + (x1 - x0) * s;
    const y = y0 + (y1 - y0) * t;
    const patch = cloudNoise(x * 0.9, y * 0.9, 2, 3);
    return {
      at: [x, y, 0.04 * (patch - 0.5) - 0.01],
      colour: brighter(mix(colour("#55772f"), colour("#7d8a45"), patch), 0.72 + 0.4 * noise(x * 7, y * 7, 1)),
    };
  });
  const count = Math.round((x1 - x0) * (y1 - y0) * perMetre);
  for (let i = 0; i < count; i++) {
    const x = between(random, x0, x1);
    const y = between(random, y0, y1);
    const yaw = random() * 6.283;
    const k = random();
    const j = spread(random);
    const distance = Math.hypot(x - eye[0], y - eye[1]);
    const bigger = Math.max(1, distance / 4);
    if (k > 1.6 / (bigger * bigger)) continue;
    const patch = cloudNoise(x * 0.9, y * 0.9, 2, 3);
    const length = tall * between(random, 0.5, 1.2) * (0.7 + 0.6 * patch) * Math.min(2, bigger ** 0.5);
    const tone = brighter(mix(colour("#5f8a34"), colour("#93a552"), patch * 0.8), 0.8 + 0.4 * k);
    const w = 0.004 * bigger;
    const lean = 0.5 * length * j;
    const first = mesh.vertex([x - Math.sin(yaw) * w, y + Math.cos(yaw) * w, 0], 0, 0, brighter(tone, 0.7));
    mesh.vertex([x + Math.sin(yaw) * w, y - Math.cos(yaw) * w, 0], 1, 0, brighter(tone, 0.7));
    mesh.vertex([x + Math.cos(yaw) * lean * 0.4, y + Math.sin(yaw) * lean * 0.4, length * 0.6], 0.5, 0.6, tone);
    mesh.vertex([x + Math.cos(yaw) * lean, y + Math.sin(yaw) * lean, length], 0.5, 1, brighter(tone, 1.15));
    mesh.triangle(first, first + 1, first + 2, "grass");
    mesh.triangle(first + 1, first + 3, first + 2, "grass");
  }
}

/** A hedge from one foot to another: a dark body and thousands of leaves on it. `spring` 0 to 1 brings fresh green. */
export function hedge(
  mesh: Mesh,
  from: Vec,
  to: Vec,
  height: number,
  depth: number,
  seed: string,
  spring: number,
  leaves: number,
): void {
  const random = randomFrom(seed);
  const along = subtract(to, from);
  const length = Math.hypot(...along);
  const back: Vec = [-along[1] / length, along[0] / length, 0];
  // The face leans back and bulges; the top is uneven.
  const face = (s: number, t: number): Vec => {
    const bulge = cloudNoise(s * length * 1.3, t * height * 1.3, 6.1, 3) - 0.5;
    const top = height * (0.92 + 0.16 * cloudNoise(s * length * 0.7, 3.3, 1, 3));
    const over = Math.max(0, t - 0.85) / 0.15;
    return add(
      add(from, times(along, s)),
      add(times(back, depth * (0.16 * t - 0.45 * bulge + 0.7 * over)), [
        0,
        0,
        top * Math.min(1, t / 0.85) + 0.06 * over,
      ]),
    );
  };
  sheet(mesh, Math.ceil(length / 0.16), 12, "hedge", (s, t) => {
    const at = face(s, t);
    return {
      at: add(at, times(back, 0.1)),
      colour: brighter(colour("#3a4f25"), 0.55 + 0.6 * noise(at[0] * 6, at[2] * 6, 1)),
    };
  });
  for (let i = 0; i < leaves; i++) {
    const s = random();
    const t = random();
    const bulge = cloudNoise(s * length * 1.3, t * height * 1.3, 6.1, 3);
    const at = add(face(s, t), times(back, 0.09 - 0.12 * random()));
    const size = between(random, 0.05, 0.1);
    const fresh = spring * random() ** 2 * 0.8;
    const tone = mix(mix(colour("#3f5c2c"), colour("#557a38"), bulge), colour("#8aac4e"), fresh);
    leaf(
      mesh,
      { ...forms.leaflet, rows: 2, columns: 1, surface: "hedge" },
      at,
      random() * 6.283,
      0.9 * spread(random),
      spread(random),
      size,
      size * 0.42,
      () => brighter(tone, 0.75 + 0.45 * random()),
    );
  }
}

/** Rough ground under and behind everything; from `y0` on it falls away to the sea. */
export function farGround(mesh: Mesh, y0: number, fall: number): void {
  for (const [from, to, rows] of [
    [-3, y0, 16],
    [y0, y0 + 50, 24],
  ] as const)
    sheet(mesh, 80, rows, "grass", (s, t) => {
      const x = -45 + 90 * s;
      const y = from + (to - from) * (to > y0 ? t * t : t);
      return {
        at: [x, y, -0.06 - fall * Math.max(0, y - y0)],
        colour: mix(colour("#5d7a38"), colour("#8a9150"), cloudNoise(x * 0.4, y * 0.4, 7, 3)),
      };
    });
}

/** Boards on edge around a bed, with posts at the corners. */
export function boards(mesh: Mesh, x0: number, y0: number, x1: number, y1: number, height: number, tone: Colour): void {
  const t = 0.045;
  const pieces = Math.max(1, Math.round((y1 - y0) / 2.4));
  for (let i = 0; i < pieces; i++) {
    const a = y0 + ((y1 - y0) * i) / pieces;
    const b = y0 + ((y1 - y0) * (i + 1)) / pieces;
    const shade = 0.85 + 0.3 * hashGrid(i, 3, 1);
    for (const x of [x0 - t / 2, x1 + t / 2]) {
      timberBoard(mesh, [x - t / 2, a + 0.004, 0], [0, b - a - 0.008, 0], t, height, brighter(tone, shade));
    }
  }
  timberBoard(mesh, [x0 - t, y0 - t, 0], [x1 - x0 + 2 * t, 0, 0], t, height, tone);
  timberBoard(mesh, [x0 - t, y1, 0], [x1 - x0 + 2 * t, 0, 0], t, height, brighter(tone, 0.9));
  for (const x of [x0 + 0.03, x1 - 0.03])
    for (const y of [y0 + 0.03, y1 - 0.03])
      box(mesh, [x, y, 0], [0.06, 0.06, height + 0.05], 0, brighter(tone, 0.8), "timber");
}

/** One board on edge from a corner along a level direction. */
export function timberBoard(mesh: Mesh, corner: Vec, along: Vec, thick: number, height: number, tone: Colour): void {
  const length = Math.hypot(...along);
  const side: Vec = [(-along[1] / length) * -thick, (along[0] / length) * -thick, 0];
  const flip: Vec = along[0] !== 0 ? [0, thick, 0] : [thick, 0, 0];
  const depth = along[0] !== 0 || along[1] !== 0 ? flip : side;
  const up: Vec = [0, 0, height];
  quad(mesh, corner, along, up, tone, "timber", 0.5);
  quad(mesh, add(corner, depth), along, up, tone, "timber", 0.5);
  quad(mesh, add(corner, up), along, depth, brighter(tone, 1.1), "timber", 0.5);
  quad(mesh, corner, depth, up, brighter(tone, 0.8), "timber", 0.5);
  quad(mesh, add(corner, along), depth, up, brighter(tone, 0.8), "timber", 0.5);
}

/** A small shed of upright boards with a window and a felt roof; the front faces the camera. */
export function shed(mesh: Mesh, at: Vec, wide: number, deep: number, high: number, tone: Colour): void {
  const planks = Math.round(wide / 0.14);
  for (let i = 0; i < planks; i++)
    box(
      mesh,
      [at[0] - wide / 2 + (i + 0.5) * (wide / planks), at[1] + 0.02 * hashGrid(i, 1, 5), 0],
      [wide / planks - 0.008, 0.03, high],
      0,
      brighter(tone, 0.75 + 0.45 * hashGrid(i, 7, 2)),
      "timber",
    );
  const sides = Math.round(deep / 0.14);
  for (const x of [at[0] - wide / 2, at[0] + wide / 2])
    for (let i = 0; i < sides; i++)
      box(
        mesh,
        [x, at[1] + (i + 0.5) * (deep / sides), 0],
        [0.03, deep / sides - 0.008, high],
        0,
        brighter(tone, 0.7 + 0.4 * hashGrid(i, 9, 2)),
        "timber",
      );
  const lap = 0.18;
  const roof = colour("#4a4d4c");
  quad(
    mesh,
    [at[0] - wide / 2 - lap, at[1] - lap, high - 0.04],
    [wide + 2 * lap, 0, 0],
    [0, deep / 2 + lap, 0.55],
    roof,
    "paint",
    0.3,
  );
  quad(
    mesh,
    [at[0] - wide / 2 - lap, at[1] + deep + lap, high - 0.04],
    [wide + 2 * lap, 0, 0],
    [0, -deep / 2 - lap, 0.55],
    roof,
    "paint",
    0.3,
  );
  box(mesh, [at[0], at[1] - lap + 0.01, high - 0.14], [wide + 2 * lap, 0.02, 0.13], 0, brighter(tone, 0.6), "timber");
  const wx = at[0] + wide * 0.2;
  box(mesh, [wx, at[1] - 0.03, high * 0.5], [0.62, 0.03, 0.56], 0, colour("#d8d4c6"), "paint");
  box(mesh, [wx, at[1] - 0.045, high * 0.5 + 0.05], [0.52, 0.02, 0.46], 0, colour("#20282c"), "glass");
  box(mesh, [wx, at[1] - 0.06, high * 0.5 + 0.03], [0.03, 0.02, 0.5], 0, colour("#d8d4c6"), "paint");
  box(
    mesh,
    [at[0] - wide * 0.22, at[1] - 0.03, 0.03],
    [0.72, 0.03, high * 0.84],
    0,
    brighter(colour("#56756e"), 1),
    "paint",
  );
}

/** A galvanised watering can. */
export function wateringCan(mesh: Mesh, at: Vec, yaw: number): void {
  const tone = colour("#8f979a");
  turned(
    mesh,
    at,
    [
      [0.11, 0],
      [0.12, 0.02],
      [0.115, 0.14],
      [0.11, 0.26],
      [0.1, 0.27],
      [0.03, 0.26],
    ],
    tone,
    "metal",
  );
  const way: Vec = [Math.cos(yaw), Math.sin(yaw), 0];
  const spout = [0.11, 0.22, 0.33, 0.42].map((d, i) => add(at, add(times(way, d), [0, 0, 0.07 + 0.075 * i])));
  rod(mesh, spout, (t) => 0.022 - 0.008 * t, tone, "metal", 10);
  ball(mesh, spout[3] as Vec, [0.045, 0.045, 0.03], () => brighter(tone, 0.9), "metal");
  const bow = Array.from({ length: 9 }, (_, i) => {
    const a = (i / 8) * Math.PI;
    return add(at, add(times(way, 0.1 * Math.cos(a) - 0.03), [0, 0, 0.25 + 0.14 * Math.sin(a)]));
  });
  rod(mesh, bow, () => 0.009, tone, "metal", 6);
}

/** A plant label pushed into the soil. */
export function label(mesh: Mesh, at: Vec, yaw: number): void {
  box(mesh, at, [0.05, 0.006, 0.17], yaw, colour("#d9d3bf"), "paint");
  box(mesh, add(at, [0, -0.004, 0.09]), [0.034, 0.004, 0.006], yaw, colour("#3a3a3a"), "paint");
  box(mesh, add(at, [0, -0.004, 0.12]), [0.028, 0.004, 0.006], yaw, colour("#3a3a3a"), "paint");
}

/** The measuring stake: black and white bands of a tenth of its height; z of `at` is the soil. */
export function stake(mesh: Mesh, at: Vec, height: number): void {
  const w = 0.045;
  for (const [dx, dy] of [
    [1, 0],
    [0, 1],
  ] as const)
    for (const side of [-1, 1])
      sheet(mesh, 1, 24, "banded stake", (s, t) => ({
        at: [
          at[0] + (dx === 1 ? (s - 0.5) * w : (side * w) / 2),
          at[1] + (dy === 1 ? (s - 0.5) * w : (side * w) / 2),
          at[2] + height * t,
        ],
        colour: colour("#1d1d1f"),
        u: s,
        v: t * 0.9999,
      }));
  quad(mesh, [at[0] - w / 2, at[1] - w / 2, at[2] + height], [w, 0, 0], [0, w, 0], colour("#1d1d1f"), "paint");
}

/** A bamboo cane with its knots. */
export function cane(mesh: Mesh, foot: Vec, top: Vec, thick = 0.007): void {
  const points = Array.from({ length: 9 }, (_, i) => add(foot, times(subtract(top, foot), i / 8)));
  rod(
    mesh,
    points,
    (t) => thick * (1 + 0.25 * (Math.abs(Math.sin(t * 25)) < 0.15 ? 1 : 0)),
    colour("#b09a62"),
    "chips",
    6,
  );
}

/** A terracotta pot filled with compost. */
export function pot(mesh: Mesh, at: Vec, radius: number, high: number, tone: Colour): void {
  const r = radius;
  turned(
    mesh,
    at,
    [
      [r * 0.72, 0],
      [r * 0.8, high * 0.3],
      [r * 0.9, high * 0.75],
      [r * 0.93, high * 0.8],
      [r * 1.04, high * 0.81],
      [r * 1.05, high * 0.99],
      [r * 0.98, high],
      [r * 0.92, high * 0.93],
    ],
    tone,
    "terracotta",
    36,
  );
  sheet(mesh, 24, 8, "soil", (s, t) => {
    const a = s * Math.PI * 2;
    const d = r * 0.95 * t;
    const x = at[0] + Math.cos(a) * d;
    const y = at[1] + Math.sin(a) * d;
    return { at: [x, y, at[2] + high * 0.9 + 0.02 * (noise(x * 30, y * 30, 1) - 0.5)], colour: colour("#5a4636") };
  });
}
