/** What a close-up lies on: soil, boards, straw; or nothing but air with the garden behind. */

import type { Colour, Vec } from "../mesh.ts";
import { colour } from "../mesh.ts";
import { between, cloudNoise, hashGrid, noise, randomFrom, spread } from "../random.ts";
import type { Behind } from "./focus.ts";
import type { Frame, Model, Paint } from "./model.ts";
import { frame } from "./model.ts";
import { bumpy, darken, dye, specks, step, tinge } from "./paint.ts";
import { body, globe, tube } from "./shapes.ts";

export type StageName = "soil" | "board" | "table" | "straw" | "air";

const origin: Frame = frame([0, 0, 0]);

/** A plane from near the lens to far behind, finest where things lie. */
function ground(model: Model, paint: Paint, height: (x: number, y: number) => number): void {
  const across = 260;
  const deep = 300;
  model.grid(origin, { columns: across, rows: deep }, paint, (s, t) => {
    const e = s * 2 - 1;
    const d = t * 2 - 1;
    const x = e * 4 + 14 * e ** 5;
    const y = d * 3.6 + (d > 0 ? 26 : 5) * Math.abs(d) ** 5 * Math.sign(d);
    return [x, y, height(x, y)];
  });
}

const clods = (x: number, y: number): number =>
  0.34 * (cloudNoise(x * 1.6, y * 1.6, 1, 3) - 0.5) + 0.2 * (cloudNoise(x * 6, y * 6, 4, 3) - 0.5) - 0.04;

/** Height of the soil at a place, on which things lie. */
export const soilHeight = (x: number, y: number): number => clods(x, y) * step(0.25, 1.5, Math.hypot(x, y)) - 0.02;

function earth(skin: Parameters<Paint>[0], x: number, y: number, z: number): void {
  const wide = cloudNoise(x * 1.1, y * 1.1, 2, 3);
  const fine = cloudNoise(x * 14, y * 14, z * 14, 3);
  dye(skin, [0.1, 0.067, 0.042], 0.45 + 0.55 * wide + 0.75 * (fine - 0.35));
  const pale = specks(x, y, z, 9, 0.12, 0.32);
  tinge(skin, [0.26, 0.22, 0.16], pale * 0.8);
  tinge(skin, [0.02, 0.014, 0.01], specks(x + 5, y, z, 13, 0.2, 0.4) * 0.7);
  skin.gloss = 0.12;
  skin.rough = 0.85;
  bumpy(skin, x, y, z, 18, 0.9);
  bumpy(skin, x, y, z, 46, 0.7);
}

function soil(model: Model, seed: string): void {
  ground(model, (skin, x, y, z) => earth(skin, x, y, z), soilHeight);
  const random = randomFrom(`soil ${seed}`);
  for (let i = 0; i < 150; i++) {
    const a = random() * 6.283;
    const r = between(random, 1.3, 5);
    const x = Math.cos(a) * r;
    const y = Math.sin(a) * r;
    const size = 0.018 + 0.075 * random() ** 3;
    body(
      model,
      frame([x, y, soilHeight(x, y) + size * 0.3], [spread(random) * 0.4, spread(random) * 0.4, 1], random() * 6),
      { outline: globe(size, between(random, 0.6, 0.95)), uneven: [0.35, 2.2, i * 3.1], columns: 16, rows: 10 },
      i % 6 === 0
        ? (skin, px, py, pz) => {
            dye(skin, [0.24, 0.21, 0.17], 0.7 + 0.6 * noise(px * 30, py * 30, pz * 30 + i));
            skin.rough = 0.7;
          }
        : (skin, px, py, pz) => earth(skin, px + i, py, pz),
    );
  }
}

/** Planks that run across the frame; `tone` old grey wood or paint. */
function planks(model: Model, seed: string, painted: Colour | undefined): void {
  const wide = 1.05;
  const start = randomFrom(`planks ${seed}`)() * 10;
  const across = (y: number): number => {
    const at = y / wide + start;
    return at - Math.floor(at);
  };
  ground(
    model,
    (skin, x, y) => {
      const plank = Math.floor(y / wide + start);
      const at = across(y);
      const shift = hashGrid(plank, 3, 7) * 40;
      const warp = 0.16 * (cloudNoise(x * 0.5 + shift, y * 1.5, plank, 3) - 0.5);
      const grain = cloudNoise(x * 0.55 + shift, (y + warp) * 17, plank * 5.3, 4);
      const hair = noise(x * 2.4 + shift, (y + warp) * 75, plank);
      if (painted) {
        dye(skin, painted, 0.82 + 0.25 * grain + 0.08 * (hair - 0.5));
        const worn = cloudNoise(x * 1.1 + shift, y * 5, plank, 5);
        tinge(skin, [0.2, 0.15, 0.1], step(0.63, 0.7, worn + 0.12 * (hair - 0.5)) * 0.85);
        skin.gloss = 0.35;
        skin.rough = 0.62;
      } else {
        dye(skin, [0.25, 0.195, 0.145], 0.5 + 0.75 * grain + 0.35 * (hair - 0.5));
        tinge(skin, [0.27, 0.26, 0.25], 0.5 * cloudNoise(x * 0.7 + shift, y * 0.9, 5, 3));
        const ring = Math.abs(Math.sin((y + warp * 1.6) * 23 + 2 * cloudNoise(x * 0.35 + shift, y, plank, 2)));
        darken(skin, 0.78 + 0.3 * ring);
        skin.gloss = 0.18;
        skin.rough = 0.7;
      }
      skin.bendY += (hair - 0.5) * 0.28 + (grain - 0.5) * 0.2;
      const edge = Math.min(at, 1 - at) * wide;
      if (edge < 0.035) darken(skin, 0.12 + 0.88 * step(0.008, 0.035, edge));
    },
    (_x, y) => -0.05 * (1 - step(0.004, 0.04, Math.min(across(y), 1 - across(y)) * wide)),
  );
}

function straw(model: Model, seed: string): void {
  ground(
    model,
    (skin, x, y, z) => {
      earth(skin, x, y, z);
      darken(skin, 0.8);
    },
    (x, y) => clods(x, y) * 0.5 - 0.25,
  );
  const random = randomFrom(`straw ${seed}`);
  for (let i = 0; i < 620; i++) {
    const r = 0.2 + 4.6 * Math.sqrt(random());
    const a = random() * 6.283;
    const at: Vec = [Math.cos(a) * r, Math.sin(a) * r, -0.2 + 0.17 * random()];
    const yaw = random() * 6.283;
    const long = between(random, 0.5, 1.5);
    const rise = 0.07 * spread(random);
    const bow = 0.1 * spread(random);
    const shade = between(random, 0.55, 1.15);
    const c = Math.cos(yaw) * long;
    const s = Math.sin(yaw) * long;
    tube(
      model,
      origin,
      [
        [at[0] - c / 2, at[1] - s / 2, at[2] - rise],
        [at[0] - s * bow, at[1] + c * bow, at[2] + 0.02],
        [at[0] + c / 2, at[1] + s / 2, at[2] + rise],
      ],
      () => [0.022, 0.014],
      (skin, x, y, z, u) => {
        dye(skin, [0.56, 0.42, 0.18], shade * (0.8 + 0.3 * noise(u * 30, x * 3, y * 3 + z)));
        skin.gloss = 0.4;
        skin.rough = 0.45;
      },
      7,
      6,
    );
  }
}

export function layStage(model: Model, stage: StageName, seed: string): void {
  if (stage === "soil") soil(model, seed);
  if (stage === "board") planks(model, seed, undefined);
  if (stage === "table") planks(model, seed, colour("#6f8791"));
  if (stage === "straw") straw(model, seed);
}

/** Light thrown up from below. */
export const stageGlow: Readonly<Record<StageName, Colour>> = {
  soil: [0.12, 0.085, 0.055],
  board: [0.26, 0.21, 0.16],
  table: [0.2, 0.24, 0.26],
  straw: [0.34, 0.26, 0.13],
  air: [0.1, 0.14, 0.06],
};

export const garden: Behind = {
  tones: [
    [0.3, 0.4, 0.26],
    [0.12, 0.2, 0.07],
    [0.07, 0.13, 0.04],
    [0.06, 0.08, 0.035],
  ],
  lights: [
    [0.42, 0.55, 0.16],
    [0.2, 0.36, 0.09],
    [0.55, 0.6, 0.36],
    [0.16, 0.26, 0.1],
    [0.1, 0.19, 0.06],
  ],
};
