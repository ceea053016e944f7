/**
 * The long bed, seen from the gate: nine strips across it in 2026, squash in 2025, roots in 2024; a measuring stake at
 * the corner.
 */

import { chipPath, farGround, grass, hedge, soilBed } from "../ground.ts";
import { broadBean, grown, kale, rosette, seedling } from "../kitchen-plants.ts";
import type { Mesh, Vec } from "../mesh.ts";
import { box, brighter, colour, rod, sheet } from "../mesh.ts";
import type { Random } from "../random.ts";
import { cloudNoise, randomFrom, spread } from "../random.ts";
import { carrot, parsnip } from "../row-crops.ts";
import { crownPrince, squash, uchikiKuri } from "../squash.ts";
import { boards, label, shed, stake, wateringCan } from "../surroundings.ts";
import type { Moment, SceneDesign } from "./scene-design.ts";

const eye: Vec = [-0.95, -1.75, 1.62];
const foot: Vec = [0.66, 0.16, 0.19];
const [x0, x1, y0, y1, soil] = [-0.5, 0.8, 0, 7.4, 0.18];
const strip = (y1 - y0) / 9;

function build(mesh: Mesh, moment: Moment): void {
  chipPath(mesh, -1.75, -1.2, -0.5, 8.2, "long-bed path left", 420);
  chipPath(mesh, 0.85, -1.2, 1.75, 8.2, "long-bed path right", 420);
  chipPath(mesh, -0.5, -1.2, 0.85, 0, "long-bed path front", 420);
  grass(mesh, -7, -0.5, -1.75, 11, "long-bed grass left", 0.1, eye, 420);
  grass(mesh, 1.75, 0, 8, 11, "long-bed grass right", 0.1, eye, 420);
  grass(mesh, -1.75, 8.2, 1.75, 11, "long-bed grass back", 0.12, eye, 300);
  farGround(mesh, 10.5, 0.09);
  boards(mesh, x0, y0, x1, y1, 0.24, colour(moment.year === 2024 ? "#7f7468" : "#8a7a64"));
  soilBed(mesh, x0, y0, x1, y1, soil, moment.wet);
  hedge(
    mesh,
    [-12, 11.4, -0.6],
    [16, 11.4, -0.6],
    1.35,
    0.9,
    "long-bed hedge",
    Math.min(1, Math.max(0.1, (moment.season - 95) / 30)),
    26000,
  );
  shed(mesh, [-3.3, 8.3, 0], 2.0, 1.7, 1.95, colour("#7d6a52"));
  headland(mesh);
  box(mesh, [2.6, 7.4, 0], [0.75, 0.75, 0.95], 0.1, colour("#2f4238"), "paint");
  box(mesh, [2.6, 7.4, 0.95], [0.8, 0.8, 0.05], 0.1, colour("#27362f"), "paint");
  beanRow(mesh, moment);
  wateringCan(mesh, [1.22, 1.35, 0.02], 2.4);
  stake(mesh, foot, 1.2);
  if (moment.year === 2025) squashes(mesh, moment);
  else if (moment.year === 2024) roots(mesh, moment);
  else {
    for (let row = 0; row < 9; row++) label(mesh, [x0 + 0.1, y0 + row * strip + 0.12, soil], 0.25);
    strips(mesh, moment);
  }
}

/** Places along lines that run across the bed; `draw` gets a place, a seed and chance of its own. */
function across(
  row: number,
  year: number,
  lines: number,
  perLine: number,
  draw: (at: Vec, seed: string, random: Random) => void,
): void {
  for (let line = 0; line < lines; line++)
    for (let i = 0; i < perLine; i++) {
      const seed = `strip ${row} ${year} ${line} ${i}`;
      const random = randomFrom(seed);
      const at: Vec = [
        x0 + 0.1 + ((x1 - x0 - 0.2) * (i + 0.5)) / perLine + 0.012 * spread(random),
        y0 + strip * (row - 1 + (line + 0.7) / (lines + 0.4)) + 0.012 * spread(random),
        soil + 0.005,
      ];
      draw(at, seed, random);
    }
}

function carrots(mesh: Mesh, moment: Moment, row: number, up: number, kept: number): void {
  const age = moment.season - up;
  if (age < 0) return;
  across(row, moment.year, 3, 17, (at, seed, random) => {
    if (random() > kept || random() < 0.08) return;
    if (age < 10) seedling(mesh, at, seed, 0.012 + age * 0.001, colour("#6f9a4a"));
    else carrot(mesh, at, seed, Math.min(1, 0.05 + grown(age, 44, 56)));
  });
}

function beets(mesh: Mesh, moment: Moment, row: number, up: number, kept: number): void {
  const age = moment.season - up;
  if (age < 0) return;
  across(row, moment.year, 3, 9, (at, seed, random) => {
    if (random() > kept) return;
    rosette(mesh, "beetroot", at, seed, Math.min(1, 0.12 + grown(age, 38, 46)));
  });
}

/** What grew in 2026, strip by strip from the gate. */
function strips(mesh: Mesh, moment: Moment): void {
  const s = moment.season;
  const dug = (from: number, perDay: number): number => (s < from ? 1 : Math.max(0.12, 1 - (s - from) * perDay));
  carrots(mesh, moment, 1, 101, s >= 192 ? 0.3 : s >= 178 ? 0.62 : 1);
  if (s >= 164)
    for (let i = 0; i < 6; i++)
      rosette(
        mesh,
        "red lettuce",
        [x0 + 0.16 + i * 0.17, 0.09, soil],
        `red by the gate ${i}`,
        Math.min(1, 0.14 + grown(s - 164, 30, 36)),
      );
  if (s >= 101 && s < 129)
    across(2, 2026, 4, 22, (at, seed) => rosette(mesh, "spinach", at, seed, Math.min(0.3, 0.06 + (s - 101) / 90)));
  if (s >= 193) across(2, 2026, 2, 5, (at, seed) => rosette(mesh, "green lettuce", at, seed, 0.16 + (s - 193) * 0.012));
  if (s >= 115)
    across(3, 2026, 3, 7, (at, seed, random) => {
      const gone = 158 + random() * 60;
      if (s > gone) return;
      rosette(mesh, at[0] < 0.15 ? "cos lettuce" : "red lettuce", at, seed, Math.min(1, 0.16 + grown(s - 115, 34, 40)));
    });
  carrots(mesh, moment, 4, 125, 1);
  if (s >= 108) beets(mesh, moment, 5, 104, dug(171, 0.032));
  if (s >= 108)
    across(6, 2026, 3, 9, (at, seed, random) => {
      if (random() < 0.08) return;
      if (s < 120) seedling(mesh, at, seed, 0.016, colour("#6f9a4a"));
      else parsnip(mesh, at, seed, Math.min(1, 0.04 + grown(s - 108, 56, 70)));
    });
  beets(mesh, moment, 7, 135, 1);
  if (s >= 140)
    across(8, 2026, 2, 7, (at, seed) => rosette(mesh, "chard", at, seed, Math.min(1, 0.06 + grown(s - 140, 34, 42))));
  carrots(mesh, moment, 9, 161, 1);
  if (s < 129) fleece(mesh);
}

/** A low tunnel of fleece over the first two strips. */
function fleece(mesh: Mesh): void {
  const middle = (x0 + x1) / 2;
  sheet(mesh, 26, 24, "cloth", (u, v) => {
    const a = u * Math.PI;
    const fold = 0.012 * Math.sin(v * 40 + u * 9) + 0.02 * (cloudNoise(u * 5, v * 7, 3, 2) - 0.5);
    const end = Math.min(1, Math.min(v, 1 - v) * 14);
    return {
      at: [
        middle - Math.cos(a) * (0.6 + fold),
        0.28 + v * 1.42,
        soil + Math.sin(a) * (0.36 + fold) * (0.25 + 0.75 * end),
      ],
      colour: colour("#dfe0da"),
    };
  });
  for (let i = 0; i < 4; i++)
    rod(
      mesh,
      Array.from({ length: 13 }, (_, k): Vec => {
        const a = (k / 12) * Math.PI;
        return [middle - Math.cos(a) * 0.62, 0.34 + i * 0.43, soil + Math.sin(a) * 0.385];
      }),
      () => 0.006,
      colour("#5a6a70"),
      "paint",
      5,
    );
}

function squashes(mesh: Mesh, moment: Moment): void {
  const places = [
    [0.1, 0.5],
    [0.2, 1.25],
    [0.05, 2.0],
    [0.2, 2.75],
    [0.1, 3.6],
    [0.2, 4.5],
    [0.1, 5.3],
    [0.2, 6.1],
    [0.1, 6.9],
  ] as const;
  places.forEach(([x, y], i) => {
    squash(
      mesh,
      [x, y, soil + 0.03],
      `long squash ${i}`,
      moment.season - 155,
      (i % 2) * Math.PI + Math.PI / 2,
      0.7,
      i < 4 ? uchikiKuri : crownPrince,
    );
  });
}

function roots(mesh: Mesh, moment: Moment): void {
  const s = moment.season;
  across(1, 2024, 2, 3, (at, seed) => kale(mesh, at, seed, Math.min(1, 0.14 + 0.86 * grown(s - 147, 46, 60))));
  for (const row of [3, 4]) carrots(mesh, moment, row, 112, s > 180 ? 0.6 : 1);
  for (const row of [5, 6]) beets(mesh, moment, row, 118, s > 180 ? 0.6 : 1);
  carrots(mesh, moment, 7, 152, 1);
  for (const row of [8, 9])
    across(row, 2024, 3, 9, (at, seed) => parsnip(mesh, at, seed, Math.min(1, 0.04 + grown(s - 125, 56, 70))));
}

/** Land across the water: low hills that end in the sea. */
function headland(mesh: Mesh): void {
  sheet(mesh, 90, 3, "hedge", (s, t) => {
    const x = -420 + 470 * s;
    const rise = 30 * (1 - s) ** 0.7 * (0.65 + 0.7 * cloudNoise(s * 7, 2, 5, 3)) * Math.min(1, (1 - s) * 8);
    return {
      at: [x, 430 - 40 * t, -16 + (rise + 16) * t],
      colour: brighter(colour("#46604a"), 0.8 + 0.4 * cloudNoise(s * 40, t * 3, 1, 3)),
    };
  });
}

/** The bean row beyond the left path: broad beans until early July. */
function beanRow(mesh: Mesh, moment: Moment): void {
  soilBed(mesh, -4.6, 2.2, -2.5, 6.8, 0.02, moment.wet);
  if (moment.season > 185) return;
  for (let row = 0; row < 2; row++)
    for (let i = 0; i < 20; i++)
      broadBean(
        mesh,
        [-3.9 + row * 0.5, 2.5 + i * 0.2, 0.03],
        `bean row ${moment.year} ${row} ${i}`,
        moment.season - 60,
      );
}

export const longBed: SceneDesign = {
  bed: "long-bed",
  viewpoint: "gate",
  width: 1200,
  height: 900,
  eye,
  target: [0.22, 2.1, 0.42],
  view: 64,
  heading: 315,
  centre: [0, 3.5, 0.3],
  radius: 6.2,
  underFilm: false,
  outline: [
    [x0, y0, soil],
    [x1, y0, soil],
    [x1, y1, soil],
    [x0, y1, soil],
  ],
  stake: { foot, top: [foot[0], foot[1], foot[2] + 1.2], lengthCm: 120 },
  build,
};
