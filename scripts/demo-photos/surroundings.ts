/** What people have put up and left standing: boards, a shed, pots, canes, a watering can. It is what photos are aligned by. */

import type { Colour, Mesh, Vec } from "./mesh.ts";
import { add, ball, box, brighter, colour, quad, rod, sheet, subtract, times, turned } from "./mesh.ts";
import { hashGrid, noise } from "./random.ts";

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
