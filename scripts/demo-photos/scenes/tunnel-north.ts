/**
 * The shared polytunnel from its door: the north bed on the left, boards down the middle, the south bed at the right
 * edge.
 */

import { costoluto, cucumber, saintPierre, tomato } from "../fruiting-plants.ts";
import { chipPath, soilBed } from "../ground.ts";
import { grown, rosette } from "../kitchen-plants.ts";
import type { Mesh, Vec } from "../mesh.ts";
import { box, brighter, colour, quad, rod, sheet } from "../mesh.ts";
import { hashGrid, randomFrom, spread } from "../random.ts";
import { bush, climber } from "../row-crops.ts";
import { label, timberBoard } from "../surroundings.ts";
import type { Moment, SceneDesign } from "./scene-design.ts";

const eye: Vec = [0.25, -1.15, 1.62];
const half = 2.55;
const high = 2.55;
const length = 9.5;
const [x0, x1, y0, y1, soil] = [-2.15, -0.72, 0.3, 8.8, 0.2];

const archAt = (t: number, y: number): Vec => {
  const a = t * Math.PI;
  const side = Math.cos(a);
  return [Math.sign(side) * Math.abs(side) ** 0.75 * half, y, Math.sin(a) ** 0.75 * high];
};

function build(mesh: Mesh, moment: Moment): void {
  chipPath(mesh, -0.72, -1, 0.75, length, "tunnel path", 200);
  for (let i = 0; i < 21; i++)
    box(
      mesh,
      [0.02 + 0.01 * hashGrid(i, 2, 2), -0.85 + i * 0.49, 0.02],
      [0.62, 0.4, 0.035],
      0.02 * (hashGrid(i, 3, 3) - 0.5),
      brighter(colour("#9a8a70"), 0.75 + 0.4 * hashGrid(i, 1, 1)),
      "timber",
    );
  soilBed(mesh, x0 - 0.3, y0, x1, y1, soil, 0.6 * moment.wet + 0.2);
  soilBed(mesh, 0.75, y0, 2.4, y1, soil, 0.6 * moment.wet + 0.2);
  for (const x of [x1, 0.72])
    for (let i = 0; i < 4; i++)
      timberBoard(
        mesh,
        [x, y0 + i * 2.12, 0],
        [0, 2.11, 0],
        0.04,
        0.26,
        brighter(colour("#8d7c62"), 0.85 + 0.3 * hashGrid(i, Math.round(x * 10), 1)),
      );
  timberBoard(mesh, [-2.45, y0 - 0.04, 0], [1.75, 0, 0], 0.04, 0.26, colour("#8d7c62"));
  timberBoard(mesh, [0.72, y0 - 0.04, 0], [1.7, 0, 0], 0.04, 0.26, colour("#8d7c62"));
  sheet(mesh, 48, 40, "film", (s, t) => {
    const p = archAt(s, -0.6 + (length + 0.6) * t);
    const low = Math.max(0, 1 - p[2] / 1.1);
    return { at: p, colour: [0.98 - 0.3 * low, 1.0 - 0.2 * low, 0.97 - 0.36 * low], u: s * 6, v: t * 10 };
  });
  endWall(mesh);
  for (let i = 0; i <= 6; i++) {
    const y = i * 1.55;
    rod(
      mesh,
      Array.from({ length: 29 }, (_, k) => archAt(k / 28, y)),
      () => 0.02,
      colour("#8c9294"),
      "metal",
      8,
    );
  }
  rod(
    mesh,
    [
      [0, -0.4, high - 0.03],
      [0, length, high - 0.03],
    ],
    () => 0.016,
    colour("#8c9294"),
    "metal",
    6,
  );
  for (const x of [-1.5, 1.3])
    rod(
      mesh,
      [
        [x, 0, 2.02],
        [x, length, 2.02],
      ],
      () => 0.007,
      colour("#6f7678"),
      "metal",
      5,
    );
  for (const y of [0.5, 4.2]) label(mesh, [-0.85, y, soil], 0.1);
  bed(mesh, moment);
}

function bed(mesh: Mesh, moment: Moment): void {
  const s = moment.season;
  if (s < 129 && moment.year === 2026)
    for (let row = 0; row < 3; row++)
      for (let i = 0; i < 22; i++) {
        const seed = `winter lettuce ${row} ${i}`;
        const random = randomFrom(seed);
        // The gale took some in January, the kitchen takes the rest by and by.
        if (random() < Math.max(0.16, (s - 85) / 62)) continue;
        rosette(
          mesh,
          "green lettuce",
          [-1.85 + row * 0.42 + 0.02 * spread(random), 0.6 + i * 0.36, soil],
          seed,
          Math.min(1, 0.5 + (s - 90) / 60),
        );
      }
  string(mesh, -1.5);
  string(mesh, 1.3);
  const planted = moment.year === 2025 ? 144 : moment.year === 2024 ? 127 : 129;
  const age = s - planted;
  if (age >= 0) {
    if (moment.year === 2025) lastYear(mesh, age);
    else {
      for (let i = 0; i < 9; i++) {
        const at: Vec = [-1.5, 1.5 + i * 0.62, soil];
        if (i === 4 || (i === 8 && s < 152)) bush(mesh, at, `aubergine ${i}`, age, 0.75, 0.17, colour("#6f8a62"));
        else if (i !== 8)
          tomato(mesh, at, `tunnel tomato ${moment.year} ${i}`, age + 3, i < 4 ? saintPierre : costoluto, 1.8, 1.05);
      }
      for (const [i, y] of [
        [0, 0.7],
        [1, 1.1],
      ] as const)
        bush(mesh, [-1.25, y, soil], `hot wax ${i}`, age, 0.62, 0.11, colour("#5f8c3c"), colour("#c9c04a"));
      for (let i = 0; i < 3; i++)
        bush(mesh, [-1.4, 7.3 + i * 0.5, soil], `marconi ${i}`, age, 0.7, 0.12, colour("#5a8638"), colour("#5a8a34"));
    }
  }
  southBed(mesh, moment);
}

/** Strings hang from the wires all season. */
function string(mesh: Mesh, x: number): void {
  for (let i = 0; i < 9; i++)
    rod(
      mesh,
      [
        [x, 1.5 + i * 0.62, soil],
        [x, 1.5 + i * 0.62, 2.02],
      ],
      () => 0.0025,
      colour("#c9bfa0"),
      "chips",
      3,
    );
}

function lastYear(mesh: Mesh, age: number): void {
  for (let i = 0; i < 3; i++) cucumber(mesh, [-1.5, 1.5 + i * 0.62, soil], `telegraph 2025 ${i}`, age, 1.75);
  for (let i = 0; i < 8; i++) {
    const y = 3.8 + i * 0.55;
    climber(
      mesh,
      [
        [-1.5, y, soil],
        [-1.5, y, 0.9],
        [-1.5, y, 2.0],
      ],
      `blauhilde 2025 ${i}`,
      0.05 + 0.95 * grown(age, 30, 32),
      false,
    );
  }
}

/** The border on the other side is another chapter: greens in spring, then three cucumbers and low rows. */
function southBed(mesh: Mesh, moment: Moment): void {
  const s = moment.season;
  for (let row = 0; row < 2; row++)
    for (let i = 0; i < 16; i++)
      rosette(
        mesh,
        row === 0 ? "spinach" : "basil",
        [1.0 + row * 0.55, 0.7 + i * 0.5, soil],
        `south ${moment.year} ${row} ${i}`,
        row === 0 ? (s < 120 ? 0.8 : 0) : s < 145 ? 0 : Math.min(1, 0.2 + grown(s - 145, 30, 36)),
      );
  if (s >= 143)
    for (let i = 0; i < 3; i++)
      cucumber(mesh, [1.3, 1.5 + i * 0.62, soil], `telegraph ${moment.year} ${i}`, s - 140, 1.75);
}

/** The far end: film on a timber frame with its door. */
function endWall(mesh: Mesh): void {
  sheet(mesh, 24, 10, "film", (s, t) => {
    const p = archAt(s, length);
    const low = Math.max(0, 1 - (p[2] * t) / 1.1);
    return {
      at: [p[0], length, p[2] * t],
      colour: [0.95 - 0.34 * low, 0.99 - 0.22 * low, 0.93 - 0.4 * low],
      u: s * 5,
      v: t * 3,
    };
  });
  const tone = colour("#a8997c");
  for (const x of [-0.55, 0.55]) box(mesh, [x, length - 0.03, 0], [0.07, 0.05, 2.45], 0, tone, "timber");
  for (const z of [0.02, 1.0, 2.0]) box(mesh, [0, length - 0.03, z], [1.1, 0.05, 0.08], 0, tone, "timber");
  quad(mesh, [-0.5, length - 0.02, 0.1], [1.0, 0, 0], [0, 0, 0.9], colour("#9fae8f"), "film", 0.3);
}

export const tunnelNorth: SceneDesign = {
  bed: "tunnel-north",
  viewpoint: "door",
  width: 1200,
  height: 900,
  eye,
  target: [-0.42, 2.6, 0.92],
  view: 68,
  heading: 90,
  centre: [0, 3.6, 0.9],
  radius: 5.6,
  underFilm: true,
  outline: [
    [x0, 0.5, soil],
    [x1, 0.5, soil],
    [x1, y1, soil],
    [x1 - 0.5, y1, 1.9],
    [x0 + 0.25, y1, 1.9],
    [x0 + 0.3, 1.2, 1.85],
  ],
  build,
};
