/**
 * The squash bed, seen from the path corner: manure on bare soil, then squash, courgettes and the hazel arch; potatoes
 * in 2025.
 */

import { chipPath, farGround, grass, soilBed } from "../ground.ts";
import { grown, rosette } from "../kitchen-plants.ts";
import type { Mesh, Vec } from "../mesh.ts";
import { box, brighter, colour, quad, rod } from "../mesh.ts";
import { cloudNoise, hashGrid, randomFrom, spread } from "../random.ts";
import { carrot, climber, potato } from "../row-crops.ts";
import { courgette, crownPrince, marina, squash, uchikiKuri } from "../squash.ts";
import { boards, label, wateringCan } from "../surroundings.ts";
import type { Moment, SceneDesign } from "./scene-design.ts";

const eye: Vec = [-0.3, -1.95, 2.25];
const [x0, x1, y0, y1, soil] = [-2.15, 2.15, 0, 3.1, 0.12];

function build(mesh: Mesh, moment: Moment): void {
  chipPath(mesh, -3.2, -1.4, 3.2, 0, "squash path", 420);
  chipPath(mesh, -2.9, 0, -2.15, 3.4, "squash path left", 380);
  chipPath(mesh, 2.15, 0, 2.9, 3.4, "squash path right", 380);
  grass(mesh, -6.5, 3.3, 6.5, 6.2, "squash grass", 0.12, eye, 420);
  grass(mesh, -6.5, -0.5, -2.9, 3.3, "squash grass left", 0.1, eye, 420);
  grass(mesh, 2.9, -0.5, 6.5, 3.3, "squash grass right", 0.1, eye, 420);
  farGround(mesh, 6, 0.05);
  wall(mesh);
  boards(mesh, x0, y0, x1, y1, 0.16, colour("#9a9080"));
  // Fresh manure lies dark on the bed in spring and sinks in by summer.
  soilBed(
    mesh,
    x0,
    y0,
    x1,
    y1,
    soil,
    Math.min(1, moment.wet + (moment.season < 150 ? 0.45 : 0.15)),
    moment.year === 2026 && moment.season < 150 ? heaps.map(([x, y, r]) => [x, y, r] as const) : [],
  );
  compostBin(mesh, [-2.9, 5.1, 0]);
  compostBin(mesh, [-1.7, 5.15, 0]);
  wateringCan(mesh, [-1.75, -0.42, 0.02], 0.5);
  label(mesh, [-2.0, 0.12, soil], 0.1);
  label(mesh, [0.75, 0.1, soil], -0.15);
  if (moment.year === 2025) potatoes(mesh, moment);
  else plants(mesh, moment);
}

/** Where the barrows were tipped and the plants stand: x, y, radius of the heap, direction the runners take. */
const heaps = [
  [-1.6, 2.4, 0.34, -0.6],
  [-0.5, 2.55, 0.32, -1.2],
  [-1.55, 1.35, 0.34, -1.0],
  [0.6, 2.5, 0.33, -0.9],
  [0.0, 1.45, 0.32, -0.35],
  [1.75, 2.55, 0.32, -2.2],
  [-1.0, 0.5, 0.3, 0],
  [0.3, 0.48, 0.3, 0],
] as const;

function plants(mesh: Mesh, moment: Moment): void {
  const age = moment.season - 149;
  const kinds = [crownPrince, crownPrince, crownPrince, crownPrince, uchikiKuri, marina];
  kinds.forEach((kind, i) => {
    const [x, y, , way] = heaps[i] as (typeof heaps)[number];
    squash(mesh, [x, y, soil + 0.04], `squash ${moment.year} ${i}`, age, way, 1.7, kind);
  });
  for (const i of [6, 7]) {
    const [x, y] = heaps[i] as (typeof heaps)[number];
    courgette(mesh, [x, y, soil + 0.02], `courgette ${moment.year} ${i}`, age);
  }
  if (moment.year === 2026 && age >= 0) arch(mesh, age);
}

/** The hazel arch across the end of the bed, beans up one leg and squash up the other. */
function arch(mesh: Mesh, age: number): void {
  const leg = (dx: number, over: number): Vec[] =>
    Array.from({ length: 21 }, (_, i): Vec => {
      const t = i / 20;
      const a = t * Math.PI;
      return [1.5 + dx, 1.25 - Math.cos(a) * (0.8 + over), soil + 1.75 * Math.sin(a) ** 0.7 + 0.02];
    });
  for (const dx of [-0.16, 0.16]) rod(mesh, leg(dx, 0), () => 0.015, colour("#74583c"), "timber", 6);
  for (let i = 2; i < 19; i += 2) {
    const p = leg(0, 0)[i] as Vec;
    rod(
      mesh,
      [
        [p[0] - 0.2, p[1], p[2]],
        [p[0] + 0.2, p[1] + 0.02 * hashGrid(i, 1, 1), p[2] + 0.02],
      ],
      () => 0.009,
      colour("#7d6244"),
      "timber",
      5,
    );
  }
  const up = (dx: number, back: boolean): Vec[] => {
    const way = leg(dx, 0.02);
    return back ? way.reverse() : way;
  };
  for (const dx of [-0.16, 0.16])
    climber(
      mesh,
      up(dx, true),
      `arch squash ${dx}`,
      0.05 + 0.62 * grown(age, 38, 36),
      true,
      age > 30 ? colour("#eea61a") : undefined,
    );
  for (const dx of [-0.18, -0.06, 0.06, 0.18])
    climber(
      mesh,
      up(dx, false),
      `arch bean ${dx}`,
      0.03 + 0.62 * grown(age, 32, 34),
      false,
      age > 38 ? colour("#8a5aa8") : undefined,
    );
}

/** 2025: carrots and beetroot by the path, three kinds of potato behind them. */
function potatoes(mesh: Mesh, moment: Moment): void {
  const s = moment.season;
  for (let line = 0; line < 5; line++)
    for (let i = 0; i < 42; i++) {
      const seed = `2025 root ${line} ${i}`;
      const at: Vec = [x0 + 0.12 + i * 0.098, 0.2 + line * 0.19, soil + 0.01];
      if (line < 3) carrot(mesh, at, seed, Math.min(1, grown(s - 135, 40, 56)));
      else if (i % 2 === 0) rosette(mesh, "beetroot", at, seed, Math.min(1, 0.08 + grown(s - 135, 40, 46)));
    }
  for (let line = 0; line < 5; line++)
    for (let i = 0; i < 11; i++) {
      const seed = `2025 potato ${line} ${i}`;
      const random = randomFrom(seed);
      if (line < 2 && s > 186) continue;
      potato(
        mesh,
        [x0 + 0.25 + i * 0.38 + 0.03 * spread(random), 1.3 + line * 0.4, soil + 0.06],
        seed,
        Math.min(1, grown(s - (line < 2 ? 112 : 120), 38, 46)),
        s > 168,
      );
    }
}

/** The dry-stone wall to the east. */
function wall(mesh: Mesh): void {
  quad(mesh, [-9, 6.3, -0.1], [20, 0, 0], [0, 0, 1.55], colour("#8f8a80"), "dry stone", 0.4);
  for (let i = 0; i < 70; i++) {
    const wide = 0.24 + 0.1 * hashGrid(i, 3, 3);
    box(
      mesh,
      [-8.9 + i * 0.285, 6.42, 1.4],
      [wide, 0.34, 0.12 + 0.12 * hashGrid(i, 1, 7)],
      0.12 * (hashGrid(i, 2, 2) - 0.5),
      brighter(colour("#8d887e"), 0.75 + 0.4 * cloudNoise(i * 0.7, 1, 1, 2)),
      "paving",
    );
  }
}

/** A bin of pallet boards. */
function compostBin(mesh: Mesh, at: Vec): void {
  const tone = colour("#85745c");
  for (let i = 0; i < 6; i++) {
    box(
      mesh,
      [at[0], at[1] - 0.5, 0.05 + i * 0.16],
      [1.0, 0.025, 0.12],
      0,
      brighter(tone, 0.8 + 0.4 * hashGrid(i, 1, Math.round(at[0] * 10))),
      "timber",
    );
    for (const side of [-0.5, 0.5])
      box(
        mesh,
        [at[0] + side, at[1], 0.05 + i * 0.16],
        [0.025, 1.0, 0.12],
        0,
        brighter(tone, 0.75 + 0.3 * hashGrid(i, 2, Math.round(at[0] * 10))),
        "timber",
      );
  }
  for (const side of [-0.46, 0.46])
    box(mesh, [at[0] + side, at[1] - 0.46, 0], [0.07, 0.07, 1.05], 0, brighter(tone, 0.7), "timber");
  box(mesh, [at[0], at[1], 0], [0.94, 0.94, 0.7], 0, colour("#4a3b2c"), "soil");
}

export const squashBed: SceneDesign = {
  bed: "squash-bed",
  viewpoint: "path",
  width: 1200,
  height: 900,
  eye,
  target: [0.1, 1.75, 0.22],
  view: 70,
  heading: 45,
  centre: [0, 2, 0.4],
  radius: 4.6,
  underFilm: false,
  outline: [
    [x0, y0, soil],
    [x1, y0, soil],
    [x1, y1, soil],
    [x0, y1, soil],
  ],
  build,
};
