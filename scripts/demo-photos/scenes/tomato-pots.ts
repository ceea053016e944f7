/** The nine tomato pots in the harbour yard, seen from above through the kitchen window, pot 1 nearest. */

import { bedding } from "../flowers.ts";
import { blackTomato, gardenersDelight, harbinger, tomato } from "../fruiting-plants.ts";
import type { Mesh, Vec } from "../mesh.ts";
import { add, ball, box, brighter, colour, quad, rod, turned } from "../mesh.ts";
import { hashGrid } from "../random.ts";
import { cane, pot, wateringCan } from "../surroundings.ts";
import type { Moment, SceneDesign } from "./scene-design.ts";

const eye: Vec = [-2.75, -0.7, 2.35];
const wallY = 2.4;
const places = Array.from({ length: 9 }, (_, i): Vec => [-2.0 + i * 0.5, 2.02 + 0.03 * (hashGrid(i, 1, 1) - 0.5), 0]);

function build(mesh: Mesh, moment: Moment): void {
  quad(mesh, [-4.2, -1.5, 0], [9.4, 0, 0], [0, 3.9, 0], colour("#8f8d86"), "paving", 0.25);
  quad(mesh, [-4.2, wallY, 0], [9.4, 0, 0], [0, 0, 2.45], colour("#9a5f46"), "brick", 0.25);
  quad(mesh, [-4.2, wallY - 0.06, 2.45], [9.4, 0, 0], [0, 0.36, 0.02], colour("#8d8a82"), "paving", 0.25);
  quad(mesh, [-4.2, wallY - 0.06, 2.38], [9.4, 0, 0], [0, 0, 0.08], colour("#8d8a82"), "paving", 0.25);
  gate(mesh);
  wallThings(mesh);
  wateringCan(mesh, [-0.1, 1.25, 0], 0.4);
  rod(
    mesh,
    [
      [-2.3, 2.3, 0.4],
      [2.4, 2.3, 0.42],
    ],
    () => 0.008,
    colour("#26282a"),
    "paint",
    5,
  );
  const kinds = [
    gardenersDelight,
    gardenersDelight,
    gardenersDelight,
    gardenersDelight,
    harbinger,
    harbinger,
    harbinger,
    blackTomato,
    blackTomato,
  ];
  const planted = moment.year === 2024 ? 127 : 137;
  places.forEach((at, i) => {
    const high = 0.36;
    const radius = 0.19 + 0.012 * hashGrid(i, 4, 4);
    pot(mesh, at, radius, high, brighter(colour(i % 3 === 1 ? "#a86a4c" : "#b07252"), 0.88 + 0.22 * hashGrid(i, 2, 3)));
    const top = add(at, [0, 0, high * 0.92]);
    if (moment.season >= planted) cane(mesh, add(top, [0.04, 0.03, -0.1]), add(top, [0.05, 0.08, 1.45]));
    tomato(
      mesh,
      top,
      `tomato ${moment.year} ${i}`,
      moment.season - planted,
      kinds[i] as (typeof kinds)[number],
      1.35,
      0.82,
    );
  });
  pot(mesh, [-1.25, 1.0, 0], 0.15, 0.24, colour("#a86644"));
  pot(mesh, [-0.78, 1.18, 0], 0.12, 0.2, colour("#b27350"));
  const s = moment.season;
  bedding(
    mesh,
    [-1.25, 1.0, 0.22],
    `pansies ${moment.year}`,
    0.14,
    Math.min(1, 0.4 + (s - 90) / 40),
    s < 165 ? 14 : 5,
    colour("#5a3c9c"),
    colour("#e8c040"),
  );
  bedding(
    mesh,
    [-0.78, 1.18, 0.18],
    `nasturtium ${moment.year}`,
    0.14,
    Math.min(1, 0.3 + (s - 90) / 60),
    s > 152 ? 9 : 0,
    colour("#d8451a"),
    colour("#9a2a12"),
  );
}

/** The yard's plank gate beyond pot 9. */
function gate(mesh: Mesh): void {
  for (let i = 0; i < 9; i++)
    box(
      mesh,
      [3.1, 2.28 - i * 0.15, 0.05],
      [0.04, 0.14, 1.85],
      0,
      brighter(colour("#4f7a80"), 0.85 + 0.3 * hashGrid(i, 6, 1)),
      "timber",
    );
  for (const z of [0.35, 1.5]) box(mesh, [3.06, 1.68, z], [0.05, 1.3, 0.12], 0, colour("#426a70"), "timber");
  quad(mesh, [3.15, -1.5, 0], [0, 2.55, 0], [0, 0, 2.2], colour("#9a5f46"), "brick", 0.25);
}

/** Two old net floats and a coil of rope on the wall: it is a harbour yard. */
function wallThings(mesh: Mesh): void {
  ball(
    mesh,
    [0.95, 2.28, 2.0],
    [0.12, 0.12, 0.12],
    (up) => brighter(colour("#b8602a"), 0.85 + 0.3 * up),
    "paint",
    0,
    0,
    18,
  );
  ball(
    mesh,
    [1.2, 2.3, 1.86],
    [0.09, 0.09, 0.09],
    (up) => brighter(colour("#3f6a78"), 0.85 + 0.3 * up),
    "paint",
    0,
    0,
    18,
  );
  for (let k = 0; k < 5; k++)
    rod(
      mesh,
      Array.from({ length: 25 }, (_, i): Vec => {
        const a = (i / 24) * 6.283;
        return [-1.1 + Math.cos(a) * (0.19 - 0.014 * k), 2.34 - 0.012 * k, 1.95 + Math.sin(a) * (0.24 - 0.012 * k)];
      }),
      () => 0.013,
      brighter(colour("#b8a67e"), 0.8 + 0.06 * k),
      "timber",
      6,
    );
  rod(
    mesh,
    [
      [-1.1, 2.4, 2.2],
      [-1.1, 2.25, 2.2],
    ],
    () => 0.012,
    colour("#4a4a48"),
    "metal",
    6,
  );
  turned(
    mesh,
    [1.75, 1.15, 0],
    [
      [0.14, 0],
      [0.2, 0.1],
      [0.22, 0.3],
      [0.23, 0.33],
      [0.2, 0.33],
      [0.19, 0.26],
    ],
    colour("#7f868a"),
    "metal",
    28,
  );
}

export const tomatoPots: SceneDesign = {
  bed: "tomato-pots",
  viewpoint: "window",
  width: 900,
  height: 1200,
  eye,
  target: [-0.82, 1.95, 0.76],
  view: 59,
  heading: 0,
  centre: [0, 1.6, 0.8],
  radius: 3.2,
  underFilm: false,
  outline: [
    [-2.2, 1.8, 0.3],
    [2.25, 1.8, 0.3],
    [2.25, 2.1, 1.75],
    [-2.2, 2.1, 1.75],
  ],
  build,
};
