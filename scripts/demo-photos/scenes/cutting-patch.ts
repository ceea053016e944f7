/**
 * The cutting patch, seen from its corner, upright: tulips, then sweet peas on obelisks, marigolds, cosmos, sunflowers
 * and dahlias.
 */

import { bishop, cafeAuLait, cornflower, dahlia, davidHoward, sweetPeas, tulip } from "../flowers.ts";
import { farGround, grass, hedge, soilBed } from "../ground.ts";
import type { Mesh, Vec } from "../mesh.ts";
import { box, brighter, colour } from "../mesh.ts";
import { between, hashGrid, randomFrom, spread } from "../random.ts";
import { cosmos, marigold, sunflower } from "../summer-flowers.ts";
import { cane, label } from "../surroundings.ts";
import type { Moment, SceneDesign } from "./scene-design.ts";

const eye: Vec = [-0.35, -1.45, 1.6];
const [x0, x1, y0, y1, soil] = [-1.15, 1.15, 0, 3.2, 0.05];

function build(mesh: Mesh, moment: Moment): void {
  grass(mesh, -4, -1.3, 4, 0.04, "cutting grass front", 0.07, eye, 900);
  grass(mesh, -5, -0.02, -1.12, 5.6, "cutting grass left", 0.09, eye, 600);
  grass(mesh, 1.12, -0.02, 5, 5.6, "cutting grass right", 0.09, eye, 600);
  grass(mesh, -1.17, 3.16, 1.17, 5.6, "cutting grass back", 0.1, eye, 500);
  farGround(mesh, 5.2, 0.05);
  hedge(
    mesh,
    [-7, 6.4, 0],
    [7, 6.4, 0],
    1.85,
    0.9,
    "cutting hedge",
    Math.min(1, Math.max(0.1, (moment.season - 95) / 30)),
    26000,
  );
  soilBed(mesh, x0, y0, x1, y1, soil, moment.wet);
  paling(mesh);
  compostPost(mesh);
  label(mesh, [-0.95, 0.3, soil], 0.15);
  label(mesh, [0.7, 0.42, soil], -0.1);
  for (const [i, x] of [
    [0, -0.5],
    [1, 0.55],
  ] as const)
    obelisk(mesh, moment, i, [x, 2.35, 0]);
  tulips(mesh, moment);
  const s = moment.season;
  const seedSown = moment.year === 2024 ? 117 : 101;
  for (let i = 0; i < 13; i++) {
    const random = randomFrom(`marigold ${i}`);
    const at: Vec = [-1.0 + i * 0.165 + 0.02 * spread(random), 0.14 + 0.03 * spread(random), soil];
    if (moment.year === 2025) cornflower(mesh, at, `blue boy ${i}`, s - 110);
    else marigold(mesh, at, `marigold ${moment.year} ${i}`, s - seedSown - 8, 68 + 6 * random(), colour("#e2781a"));
  }
  for (let i = 0; i < 9; i++) {
    const random = randomFrom(`mist ${i}`);
    if (moment.year === 2026)
      cornflower(
        mesh,
        [-1.05 + 0.25 * random(), 0.45 + 0.9 * random(), soil],
        `love in a mist ${i}`,
        s - 92 - 8 * random(),
      );
  }
  if (moment.year !== 2024)
    for (let i = 0; i < 12; i++) {
      const random = randomFrom(`cosmos ${i}`);
      cosmos(
        mesh,
        [-0.75 + (i % 4) * 0.3 + 0.03 * spread(random), 0.85 + Math.floor(i / 4) * 0.34, soil],
        `cosmos ${moment.year} ${i}`,
        s - 143,
        43,
        colour("#efeeea"),
      );
    }
  for (let i = 0; i < 8; i++) {
    const random = randomFrom(`sunflower ${i}`);
    if (moment.year === 2026 && i % 2 === 1 && s > 150) continue;
    sunflower(
      mesh,
      [-1.0 + i * 0.28 + 0.03 * spread(random), 3.05, soil],
      `sunflower ${moment.year} ${i}`,
      s - 138,
      59 + i * 1.5,
      colour("#8a2f1c"),
    );
  }
  const dahlias: readonly (readonly [number, number, typeof bishop])[] = [
    [0.4, 0.62, bishop],
    [0.88, 0.78, cafeAuLait],
    [0.5, 1.18, davidHoward],
    [0.95, 1.35, bishop],
    [0.62, 1.72, cafeAuLait],
    [-0.95, 1.95, bishop],
    [0.98, 1.95, davidHoward],
  ];
  dahlias.forEach(([x, y, kind], i) => {
    dahlia(mesh, [x, y, soil], `dahlia ${moment.year} ${i}`, s - (moment.year === 2024 ? 118 : 94), kind);
  });
}

/** Four rods tied at the top, two sweet peas to a leg. */
function obelisk(mesh: Mesh, moment: Moment, number: number, at: Vec): void {
  if (moment.year === 2024) return;
  const top: Vec = [at[0], at[1], 1.95];
  for (let leg = 0; leg < 4; leg++) {
    const a = leg * 1.571 + 0.6;
    const foot: Vec = [at[0] + Math.cos(a) * 0.34, at[1] + Math.sin(a) * 0.34, soil];
    cane(mesh, foot, [top[0] - Math.cos(a) * 0.05, top[1] - Math.sin(a) * 0.05, top[2] + 0.12], 0.01);
    for (let k = 0; k < 2; k++) {
      const late = leg === 3 && moment.year === 2026;
      sweetPeas(
        mesh,
        foot,
        [top[0], top[1], top[2] - 0.08],
        `sweet pea ${moment.year} ${number} ${leg} ${k}`,
        moment.season - (late ? 115 : 98),
      );
    }
  }
  for (const z of [0.55, 1.05, 1.5]) {
    const r = 0.34 * (1 - z / 2.1);
    for (let leg = 0; leg < 4; leg++) {
      const a = leg * 1.571 + 0.6;
      cane(
        mesh,
        [at[0] + Math.cos(a) * r, at[1] + Math.sin(a) * r, z],
        [at[0] + Math.cos(a + 1.571) * r, at[1] + Math.sin(a + 1.571) * r, z],
        0.006,
      );
    }
  }
}

function tulips(mesh: Mesh, moment: Moment): void {
  if (moment.year === 2024 || moment.season > 143) return;
  for (let i = 0; i < 40; i++) {
    const random = randomFrom(`tulip ${moment.year} ${i}`);
    const at: Vec = [between(random, -0.9, 0.2), between(random, 0.35, 1.9), soil];
    tulip(
      mesh,
      at,
      `tulip ${moment.year} ${i}`,
      Math.max(0.05, (moment.season - 100 - 8 * random()) / 24),
      colour(random() < 0.8 ? "#4a1632" : "#6a2148"),
    );
  }
}

/** A paling fence before the hedge on one side. */
function paling(mesh: Mesh): void {
  for (let i = 0; i < 26; i++)
    box(
      mesh,
      [1.5 + i * 0.135, 5.3, 0],
      [0.09, 0.02, 1.05 + 0.05 * hashGrid(i, 4, 4)],
      0,
      brighter(colour("#9a9388"), 0.75 + 0.4 * hashGrid(i, 1, 2)),
      "timber",
    );
  for (const z of [0.3, 0.8]) box(mesh, [3.2, 5.33, z], [3.6, 0.03, 0.07], 0, colour("#847c70"), "timber");
}

/** The near corner of the compost heap: two boards and a post at the left edge of the frame. */
function compostPost(mesh: Mesh): void {
  box(mesh, [-1.55, 0.35, 0], [0.09, 0.09, 0.95], 0.1, colour("#7a6a54"), "timber");
  for (const z of [0.08, 0.32, 0.56])
    box(mesh, [-2.2, 0.36, z], [1.3, 0.03, 0.19], 0, brighter(colour("#8a7a62"), 0.85 + z * 0.3), "timber");
}

export const cuttingPatch: SceneDesign = {
  bed: "cutting-patch",
  viewpoint: "corner",
  width: 900,
  height: 1200,
  eye,
  target: [-0.02, 1.5, 0.5],
  view: 64,
  heading: 315,
  centre: [0, 2, 0.5],
  radius: 4.2,
  underFilm: false,
  outline: [
    [x0, y0, soil],
    [x1, y0, soil],
    [x1, y1, soil],
    [x0, y1, soil],
  ],
  build,
};
