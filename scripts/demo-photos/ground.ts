/** What lies and grows around every bed: dug soil, wood chips, grass, hedges, the slope down to the sea. */

import { forms, leaf } from "./leaves.ts";
import type { Colour, Mesh, Vec } from "./mesh.ts";
import { add, brighter, colour, mix, quad, sheet, subtract, times } from "./mesh.ts";
import { between, cloudNoise, noise, randomFrom, spread } from "./random.ts";

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
