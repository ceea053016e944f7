/** How things look close up: one row per kind of surface, its pattern, its gloss and what light passes through it. */

import { cloudNoise, hashGrid, noise } from "./random.ts";

/**
 * What a pattern changes at one point: `paint[0..2]` colour in linear light (comes in as the vertex tint),
 * `paint[3..5]` a bend of the surface normal, `paint[6]` a factor on the gloss.
 */
type Pattern = (paint: Float64Array, u: number, v: number, x: number, y: number, z: number) => void;

interface Surface {
  readonly name: string;
  /** Counts as plant in the true canopy cover: leaves and stems; open flowers and fruit are no canopy. */
  readonly plant: boolean;
  /** Share of light that shines through from behind. */
  readonly through: number;
  readonly gloss: number;
  /** Glows by itself with the sky's light, as tunnel film does, and throws no shadow. */
  readonly film: boolean;
  readonly pattern: Pattern;
}

function scale(paint: Float64Array, k: number): void {
  paint[0] = (paint[0] as number) * k;
  paint[1] = (paint[1] as number) * k;
  paint[2] = (paint[2] as number) * k;
}

function blend(paint: Float64Array, r: number, g: number, b: number, t: number): void {
  paint[0] = (paint[0] as number) + (r - (paint[0] as number)) * t;
  paint[1] = (paint[1] as number) + (g - (paint[1] as number)) * t;
  paint[2] = (paint[2] as number) + (b - (paint[2] as number)) * t;
}

function roughen(paint: Float64Array, x: number, y: number, z: number, cells: number, depth: number): void {
  paint[3] = (paint[3] as number) + (noise(x * cells, y * cells, z * cells) - 0.5) * depth;
  paint[4] = (paint[4] as number) + (noise(x * cells + 31, y * cells, z * cells) - 0.5) * depth;
  paint[5] = (paint[5] as number) + (noise(x * cells, y * cells + 57, z * cells) - 0.5) * depth;
}

/** Leaves are never as purely green as their paint: some red and a little blue come back from every one. */
function leafy(paint: Float64Array): void {
  const green = paint[1] as number;
  paint[0] = (paint[0] as number) + 0.13 * green;
  paint[1] = green * 0.97;
  paint[2] = (paint[2] as number) + 0.02 * green;
}

/** Leaf with a midrib at u = 0.5 and side veins that run forward. */
const ribbed: Pattern = (paint, u, v, x, y, z) => {
  const a = Math.abs(u - 0.5) * 2;
  leafy(paint);
  scale(paint, 0.8 + 0.4 * noise(x * 28, y * 28, z * 28));
  const w = v * 8 - a * 1.6;
  const side = Math.abs(w - Math.floor(w) - 0.5) * 2;
  const vein = side > 0.86 ? (side - 0.86) * 2.2 : 0;
  const rib = a < 0.09 ? 1 - a / 0.09 : 0;
  const pale = Math.max(rib * 0.45, vein);
  blend(
    paint,
    (paint[0] as number) * 1.5 + 0.02,
    (paint[1] as number) * 1.35 + 0.02,
    (paint[2] as number) * 1.4 + 0.01,
    pale,
  );
  roughen(paint, x, y, z, 70, 0.3);
};

/** Broad leaf with veins that leave the stalk like fingers; u goes around, v from the stalk out. */
const fingered: Pattern = (paint, u, v, x, y, z) => {
  leafy(paint);
  scale(paint, 0.78 + 0.44 * noise(x * 22, y * 22, z * 22));
  const finger = u * 7;
  const across = Math.abs(finger - Math.floor(finger) - 0.5) * v;
  const main = across < 0.05 ? 1 - across / 0.05 : 0;
  const w = v * 6 - Math.abs(finger - Math.floor(finger) - 0.5) * 3;
  const side = Math.abs(w - Math.floor(w) - 0.5) * 2;
  // Silver blotches between the veins, as squash leaves have them.
  const blotch = Math.max(0, noise(x * 48, y * 48, z * 48) - 0.72) * 1.6 * (1 - main);
  const pale = Math.max(main * 0.85, side > 0.86 ? (side - 0.86) * 3.2 : 0, blotch);
  blend(
    paint,
    (paint[0] as number) * 1.6 + 0.02,
    (paint[1] as number) * 1.35 + 0.025,
    (paint[2] as number) * 1.5 + 0.015,
    pale,
  );
  roughen(paint, x, y, z, 55, 0.4);
};

/** Blistered leaf of a kale or savoy. */
const blistered: Pattern = (paint, u, v, x, y, z) => {
  ribbed(paint, u, v, x, y, z);
  scale(paint, 0.75 + 0.5 * noise(x * 130, y * 130, z * 130));
  roughen(paint, x, y, z, 130, 0.9);
};

/** Leaf with long even lines and a grey bloom, such as leek and onion. */
const lined: Pattern = (paint, u, _v, x, y, z) => {
  scale(paint, 0.88 + 0.12 * Math.sin(u * 60) + 0.2 * (noise(x * 15, y * 15, z * 15) - 0.5));
  roughen(paint, x, y, z, 25, 0.15);
};

const petal: Pattern = (paint, u, v, x, y, z) => {
  scale(paint, 0.72 + 0.34 * v + 0.05 * Math.sin(u * 40) + 0.12 * (noise(x * 60, y * 60, z * 60) - 0.5));
};

const plain: Pattern = (paint, _u, _v, x, y, z) => {
  scale(paint, 0.85 + 0.3 * noise(x * 45, y * 45, z * 45));
};

const fruit: Pattern = (paint, _u, _v, x, y, z) => {
  scale(paint, 0.93 + 0.14 * noise(x * 60, y * 60, z * 60));
};

const soil: Pattern = (paint, _u, _v, x, y, z) => {
  const wide = cloudNoise(x * 2.2, y * 2.2, z * 2, 3);
  const crumbs = cloudNoise(x * 38, y * 38, z * 38, 3);
  scale(paint, 0.42 + 0.5 * wide + 0.75 * crumbs);
  const speck = hashGrid(Math.floor(x * 130), Math.floor(y * 130), Math.floor(z * 130));
  if (speck > 0.985) blend(paint, 0.3, 0.25, 0.19, 0.6);
  roughen(paint, x, y, z, 60, 1.0);
  roughen(paint, x, y, z, 24, 0.8);
};

/** Weathered board; u runs along the grain in metres. */
const timber: Pattern = (paint, u, v, x, y, z) => {
  const streak = cloudNoise(u * 2.2, v * 42, 3.1, 3);
  const stain = cloudNoise(x * 1.7, y * 1.7, z * 3.1, 3);
  scale(paint, 0.5 + 0.75 * streak + 0.35 * (stain - 0.5));
  const knot = hashGrid(Math.floor(u * 2.1), Math.floor(v * 5), 7);
  const du = u * 2.1 - Math.floor(u * 2.1) - 0.5;
  const dv = v * 5 - Math.floor(v * 5) - 0.5;
  if (knot > 0.8 && du * du * 9 + dv * dv < 0.03) scale(paint, 0.45);
  roughen(paint, u * 0.3, v * 4, z * 0.1, 22, 0.35);
};

const brick: Pattern = (paint, u, v, x, y, z) => {
  const row = Math.floor(v / 0.075);
  const along = u / 0.225 + (row % 2 === 0 ? 0 : 0.5);
  const cell = Math.floor(along);
  const du = (along - cell) * 0.225;
  const dv = v - row * 0.075;
  const edge = 0.006 + 0.005 * noise(u * 40, v * 40, 2);
  if (du < edge || du > 0.225 - edge || dv < edge || dv > 0.075 - edge) {
    blend(paint, 0.34, 0.31, 0.27, 0.85);
    scale(paint, 0.7 + 0.4 * noise(u * 70, v * 70, 5));
    paint[5] = (paint[5] as number) - 0.2;
    return;
  }
  const tone = hashGrid(cell, row, 11);
  scale(paint, 0.55 + 0.75 * tone);
  if (hashGrid(cell, row, 19) > 0.82) blend(paint, 0.1, 0.07, 0.075, 0.55);
  if (hashGrid(cell, row, 23) > 0.86) blend(paint, 0.5, 0.36, 0.26, 0.4);
  scale(paint, 0.65 + 0.6 * cloudNoise(x * 18, y * 18, z * 18, 3));
  blend(paint, 0.62, 0.6, 0.55, Math.max(0, cloudNoise(x * 1.3, y * 1.3, z * 1.3, 3) - 0.62) * 1.6);
  roughen(paint, x, y, z, 60, 0.5);
};

const paving: Pattern = (paint, u, v, x, y, z) => {
  const row = Math.floor(v / 0.45);
  const along = u / 0.6 + (row % 2 === 0 ? 0.15 : 0.6);
  const cell = Math.floor(along);
  const du = (along - cell) * 0.6;
  const dv = v - row * 0.45;
  const edge = 0.008 + 0.008 * noise(u * 20, v * 20, 2);
  if (du < edge || du > 0.6 - edge || dv < edge || dv > 0.45 - edge) {
    blend(paint, 0.035, 0.035, 0.03, 0.85);
    return;
  }
  scale(paint, 0.65 + 0.5 * hashGrid(cell, row, 3));
  scale(paint, 0.62 + 0.7 * cloudNoise(x * 9, y * 9, z * 9, 4));
  blend(paint, 0.26, 0.27, 0.2, Math.max(0, cloudNoise(x * 2.2, y * 2.2, 8, 3) - 0.55) * 1.5);
  roughen(paint, x, y, z, 45, 0.35);
};

/** Dry-stone wall: flat stones of uneven height, dark joints, lichen. */
const dryStone: Pattern = (paint, u, v, x, y, z) => {
  const course = v / 0.13 + 0.35 * (noise(u * 1.1, 3, 1) - 0.5);
  const row = Math.floor(course);
  const length = 0.26 + 0.14 * hashGrid(row, 5, 8);
  const along = u / length + hashGrid(row, 1, 3) * 7 + 0.22 * (noise(u * 3, row, 2) - 0.5);
  const cell = Math.floor(along);
  const du = Math.min(along - cell, cell + 1 - along) * length;
  const dv = Math.min(course - row, row + 1 - course) * 0.13;
  const edge = 0.007 + 0.012 * noise(u * 18, v * 18, 4);
  const joint = Math.min(du, dv) / edge;
  scale(paint, 0.5 + 0.6 * hashGrid(cell, row, 3));
  blend(paint, 0.28, 0.23, 0.17, 0.5 * hashGrid(cell, row, 13));
  scale(paint, 0.6 + 0.75 * cloudNoise(x * 11, y * 11, z * 11, 4));
  blend(paint, 0.5, 0.5, 0.42, Math.max(0, cloudNoise(x * 5, y * 5, z * 5 + 3, 3) - 0.56) * 2.2);
  if (joint < 1) scale(paint, 0.12 + 0.5 * joint * joint);
  roughen(paint, x, y, z, 40, 0.6);
  roughen(paint, x, y, z, 12, 0.35);
};

const terracotta: Pattern = (paint, _u, v, x, y, z) => {
  scale(paint, 0.72 + 0.5 * cloudNoise(x * 14, y * 14, z * 14, 3));
  blend(paint, 0.62, 0.56, 0.5, Math.max(0, cloudNoise(x * 5, y * 5, z * 7, 3) - 0.5) * 1.5);
  scale(paint, 0.95 + 0.05 * Math.sin(v * 900));
};

const metal: Pattern = (paint, _u, _v, x, y, z) => {
  const flake = noise(x * 70, y * 70, z * 70);
  scale(paint, 0.7 + 0.5 * flake + 0.2 * cloudNoise(x * 6, y * 6, z * 6, 2));
};

const cloth: Pattern = (paint, _u, _v, x, y, z) => {
  scale(paint, 0.9 + 0.14 * cloudNoise(x * 12, y * 12, z * 12, 2));
};

const film: Pattern = (paint, u, v, x, y, z) => {
  scale(
    paint,
    1.06 + 0.12 * cloudNoise(x * 0.7, y * 0.7, z * 0.7, 2) + 0.04 * Math.sin(u * 9 + 3 * noise(v * 2, u, 1)),
  );
};

const band: Pattern = (paint, _u, v, x, y, z) => {
  if (Math.floor(v * 10 + 1e-6) % 2 === 1) blend(paint, 0.72, 0.7, 0.66, 1);
  scale(paint, 0.88 + 0.2 * noise(x * 60, y * 60, z * 60));
};

const table = [
  { name: "leaf", plant: true, through: 0.55, gloss: 0.16, film: false, pattern: ribbed },
  { name: "waxy leaf", plant: true, through: 0.3, gloss: 0.3, film: false, pattern: ribbed },
  { name: "broad leaf", plant: true, through: 0.5, gloss: 0.1, film: false, pattern: fingered },
  { name: "blistered leaf", plant: true, through: 0.25, gloss: 0.12, film: false, pattern: blistered },
  { name: "strap leaf", plant: true, through: 0.35, gloss: 0.22, film: false, pattern: lined },
  { name: "stem", plant: true, through: 0.1, gloss: 0.12, film: false, pattern: plain },
  { name: "petal", plant: false, through: 0.5, gloss: 0.06, film: false, pattern: petal },
  { name: "fruit", plant: false, through: 0, gloss: 0.75, film: false, pattern: fruit },
  { name: "hedge", plant: true, through: 0.35, gloss: 0.15, film: false, pattern: plain },
  { name: "grass", plant: true, through: 0.45, gloss: 0.12, film: false, pattern: plain },
  { name: "soil", plant: false, through: 0, gloss: 0.03, film: false, pattern: soil },
  { name: "chips", plant: false, through: 0, gloss: 0.05, film: false, pattern: plain },
  { name: "timber", plant: false, through: 0, gloss: 0.06, film: false, pattern: timber },
  { name: "brick", plant: false, through: 0, gloss: 0.02, film: false, pattern: brick },
  { name: "dry stone", plant: false, through: 0, gloss: 0.03, film: false, pattern: dryStone },
  { name: "paving", plant: false, through: 0, gloss: 0.06, film: false, pattern: paving },
  { name: "terracotta", plant: false, through: 0, gloss: 0.06, film: false, pattern: terracotta },
  { name: "metal", plant: false, through: 0, gloss: 0.6, film: false, pattern: metal },
  { name: "glass", plant: false, through: 0, gloss: 1.4, film: false, pattern: plain },
  { name: "paint", plant: false, through: 0, gloss: 0.15, film: false, pattern: plain },
  { name: "banded stake", plant: false, through: 0, gloss: 0.1, film: false, pattern: band },
  { name: "cloth", plant: false, through: 0.6, gloss: 0, film: false, pattern: cloth },
  { name: "film", plant: false, through: 0, gloss: 0, film: true, pattern: film },
  { name: "net", plant: false, through: 0, gloss: 0, film: false, pattern: plain },
] as const satisfies readonly Surface[];

export type SurfaceName = (typeof table)[number]["name"];
export const surfaces: readonly Surface[] = table;

const indexes = new Map<string, number>(table.map((row, index) => [row.name, index]));
export const surfaceIndex = (name: SurfaceName): number => indexes.get(name) as number;
