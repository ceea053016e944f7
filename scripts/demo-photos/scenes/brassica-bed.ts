/** The brassica bed, seen from the path: one row of cabbages under a net, one in the open, kale at the far end. */

import { chipPath, farGround, grass, hedge, soilBed } from "../ground.ts";
import { cabbage, grown, kale } from "../kitchen-plants.ts";
import type { Mesh, Vec } from "../mesh.ts";
import { box, brighter, colour, rod, sheet } from "../mesh.ts";
import { hashGrid, randomFrom, spread } from "../random.ts";
import { boards, label } from "../surroundings.ts";
import type { Moment, SceneDesign } from "./scene-design.ts";

const eye: Vec = [-1.75, -1.5, 1.5];
const [x0, x1, y0, y1, soil] = [-1.75, 2.95, 0, 1.5, 0.16];
const [openRow, nettedRow] = [0.38, 1.05];
const reach = 0.36;
const netEnd = 1.2;

function build(mesh: Mesh, moment: Moment): void {
  chipPath(mesh, -2.9, -1.3, 3.6, 0, "brassica path", 420);
  chipPath(mesh, -2.6, 0, -1.75, 2.2, "brassica path left", 380);
  grass(mesh, -5, 1.55, 8, 5.2, "brassica grass", 0.1, eye, 420);
  grass(mesh, -5, -0.4, -2.6, 1.55, "brassica grass left", 0.1, eye, 420);
  grass(mesh, 3.0, -0.4, 8, 1.55, "brassica grass right", 0.1, eye, 300);
  farGround(mesh, 5, 0.07);
  hedge(
    mesh,
    [-7, 6.2, -0.2],
    [16, 6.2, -0.2],
    1.45,
    0.8,
    "brassica hedge",
    Math.min(1, Math.max(0.1, (moment.season - 95) / 30)),
    26000,
  );
  hurdle(mesh);
  boards(mesh, x0, y0, x1, y1, 0.22, colour("#8f806a"));
  soilBed(mesh, x0, y0, x1, y1, soil, moment.wet);
  for (const x of [-1.62, 1.35]) label(mesh, [x, 0.13, soil], 0.1);
  box(mesh, [-2.25, 1.1, 0], [0.5, 0.36, 0.28], 0.3, colour("#9a7a4c"), "timber");
  if (moment.year === 2025) thatYear(mesh, moment);
  else cabbages(mesh, moment);
}

function cabbages(mesh: Mesh, moment: Moment): void {
  const s = moment.season;
  const age = s - 115;
  if (age < 0) return;
  // Heads cut by then, of eight: 20 June, 27 June, 11 July.
  const cut = (netted: boolean): number =>
    s >= 192 ? (netted ? 6 : 5) : s >= 178 ? (netted ? 5 : 4) : s >= 171 ? (netted ? 3 : 2) : 0;
  const order = [3, 6, 1, 4, 7, 2, 0, 5];
  for (const netted of [false, true])
    for (let i = 0; i < 8; i++) {
      const seed = `cabbage ${netted} ${i}`;
      const random = randomFrom(seed);
      const at: Vec = [-1.5 + i * 0.35 + 0.02 * spread(random), netted ? nettedRow : openRow, soil];
      const lost = !netted && i === 0 && s >= 130;
      if (lost || order.indexOf(i) < cut(netted)) {
        if (s >= 171 && !netted && !lost)
          cabbage(mesh, at, `sprouting ${i}`, Math.min(0.5, 0.1 + (s - 171) / 90), true, colour("#7f9a80"));
        continue;
      }
      cabbage(
        mesh,
        at,
        seed,
        Math.min(1, 0.14 + 0.86 * grown(age, 36, 46)) * (netted ? 1.02 : 0.94),
        true,
        netted ? colour("#7fa86c") : colour("#86a468"),
      );
    }
  hoops(mesh);
  net(mesh);
  if (s >= 157)
    for (let i = 0; i < 8; i++) {
      if (i === 5 && s >= 171) continue;
      const random = randomFrom(`nero ${i}`);
      kale(
        mesh,
        [1.55 + (i % 4) * 0.4 + 0.02 * spread(random), i < 4 ? openRow : nettedRow, soil],
        `nero ${i}`,
        0.14 + 0.86 * grown(s - 157, 40, 56),
      );
    }
}

/** 2025: sprouts, kale and young winter cabbages. */
function thatYear(mesh: Mesh, moment: Moment): void {
  const s = moment.season;
  for (let i = 0; i < 6; i++) {
    kale(mesh, [-1.5 + i * 0.36, openRow, soil], `nero 2025 ${i}`, 0.14 + 0.86 * grown(s - 162, 40, 56));
    cabbage(
      mesh,
      [-1.5 + i * 0.36, nettedRow, soil],
      `greyhound 2025 ${i}`,
      Math.min(1, 0.14 + 0.86 * grown(s - 116, 36, 46)),
      true,
      colour("#7fa86c"),
    );
    cabbage(
      mesh,
      [0.85 + (i % 3) * 0.6, i < 3 ? openRow : nettedRow, soil],
      `sprout 2025 ${i}`,
      Math.min(0.8, 0.16 + 0.84 * grown(s - 144, 40, 56)),
      false,
      colour("#7a9a70"),
    );
  }
  hoops(mesh);
  net(mesh);
}

const archAt = (x: number, share: number, over: number): Vec => {
  const a = share * Math.PI;
  return [x, nettedRow - Math.cos(a) * (reach + over), soil + (0.6 + over) * Math.sin(a)];
};

function hoops(mesh: Mesh): void {
  for (let i = 0; i < 6; i++)
    rod(
      mesh,
      Array.from({ length: 15 }, (_, k) => archAt(x0 + 0.1 + i * 0.565, k / 14, 0)),
      () => 0.01,
      colour("#3f5a6a"),
      "paint",
      6,
    );
}

function net(mesh: Mesh): void {
  const tint = colour("#e6ebe6");
  const from = x0 + 0.1;
  sheet(mesh, 40, 24, "net", (s, t) => {
    const sag = -0.03 * Math.sin(s * Math.PI * 5) ** 2;
    return { at: archAt(from + (netEnd - from) * s, t, 0.014 + sag), colour: tint };
  });
  for (const x of [from, netEnd])
    sheet(mesh, 12, 6, "net", (s, t) => {
      const rim = archAt(x, s, 0);
      return { at: [x, nettedRow + (rim[1] - nettedRow) * t, soil + (rim[2] - soil) * t], colour: tint };
    });
}

/** A woven hazel hurdle behind the grass. */
function hurdle(mesh: Mesh): void {
  const start = -3.6;
  for (let i = 0; i <= 12; i++)
    box(
      mesh,
      [start + i * 0.3, 5.2, 0],
      [0.035, 0.035, 1.0 + 0.1 * hashGrid(i, 2, 9)],
      0.4,
      colour("#6a5640"),
      "timber",
    );
  for (let k = 0; k < 30; k++) {
    const points = Array.from(
      { length: 25 },
      (_, i): Vec => [
        start + i * 0.15,
        5.2 + 0.025 * Math.cos(i * Math.PI * 0.5 + k * Math.PI),
        0.05 + k * 0.03 + 0.008 * hashGrid(i, k, 5),
      ],
    );
    rod(mesh, points, () => 0.012, brighter(colour("#86704f"), 0.65 + 0.6 * hashGrid(k, 6, 6)), "timber", 4);
  }
}

export const brassicaBed: SceneDesign = {
  bed: "brassica-bed",
  viewpoint: "path",
  width: 1200,
  height: 900,
  eye,
  target: [0.0, 1.05, 0.3],
  view: 64,
  heading: 0,
  centre: [0.4, 1.6, 0.3],
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
