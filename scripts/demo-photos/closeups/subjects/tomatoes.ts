/** Tomatoes, whole, on their truss and cut across. */

import type { Colour, Vec } from "../../mesh.ts";
import { colour, mix } from "../../mesh.ts";
import { cloudNoise, noise, randomFrom, spread } from "../../random.ts";
import type { Subject } from "../close-up.ts";
import type { Frame, Model, Paint } from "../model.ts";
import { frame, inFrame } from "../model.ts";
import { bumpy, darken, dye, specks, step, streaks, tinge } from "../paint.ts";
import type { Body } from "../shapes.ts";
import { blade, body, globe, onBody, tube } from "../shapes.ts";

interface Kind {
  /** Radius in units of ten centimetres. */
  readonly radius: number;
  readonly flat: number;
  readonly ribs: number;
  readonly depth: number;
  readonly ripe: Colour;
  readonly shoulder: Colour;
  /** How far down the shoulder's colour reaches, 0 to 1. */
  readonly shoulders: number;
}

const delight: Kind = {
  radius: 0.17,
  flat: 0.96,
  ribs: 0,
  depth: 0,
  ripe: colour("#cf2012"),
  shoulder: colour("#d84a1c"),
  shoulders: 0.15,
};
const harbinger: Kind = {
  radius: 0.31,
  flat: 0.86,
  ribs: 5,
  depth: 0.03,
  ripe: colour("#cc2a14"),
  shoulder: colour("#c98a2c"),
  shoulders: 0.34,
};
const saintPierre: Kind = {
  radius: 0.44,
  flat: 0.8,
  ribs: 6,
  depth: 0.025,
  ripe: colour("#c41a10"),
  shoulder: colour("#cc3414"),
  shoulders: 0.16,
};
const costoluto: Kind = {
  radius: 0.5,
  flat: 0.6,
  ribs: 10,
  depth: 0.27,
  ripe: colour("#bf1a10"),
  shoulder: colour("#b8501c"),
  shoulders: 0.2,
};
const noire: Kind = {
  radius: 0.42,
  flat: 0.74,
  ribs: 7,
  depth: 0.07,
  ripe: colour("#8fa356"),
  shoulder: colour("#28491c"),
  shoulders: 0.62,
};

function shape(kind: Kind, seed: number): Body {
  const turn = seed * 1.7;
  return {
    outline: globe(kind.radius, kind.flat, 1.12, kind.ribs > 8 ? 0.3 : 0.16, kind.ribs > 8 ? 0.1 : 0.03),
    ribs: (angle, t) => {
      if (kind.depth === 0) return 1;
      const bent = angle + 0.18 * Math.sin(angle * 2 + turn) + 0.09 * Math.sin(angle * 3 + turn * 2);
      const wave = Math.abs(Math.sin((bent * kind.ribs) / 2)) ** 0.75;
      return 1 - kind.depth * (0.35 + 0.65 * step(0.05, 0.75, t)) * (1 - wave);
    },
    uneven: [0.025, 1.6, seed],
    columns: 220,
    rows: 120,
  };
}

function skinOf(kind: Kind, seed: number): Paint {
  return (skin, x, y, z, _u, v) => {
    dye(skin, kind.ripe, 0.92 + 0.16 * noise(x * 6 + seed, y * 6, z * 6));
    const cloud = 0.16 * (cloudNoise(x * 4 + seed, y * 4, z * 4, 3) - 0.5);
    const rays = 0.1 * (streaks(x, y, z, 26, 1.2) - 0.5);
    const top = step(1 - kind.shoulders - 0.14, 1 - kind.shoulders * 0.35, v + cloud + rays);
    tinge(skin, kind.shoulder, top * (kind.shoulders > 0.3 ? 0.95 : 0.7));
    tinge(skin, [0.75, 0.5, 0.2], specks(x, y, z, 26, 0.18, 0.3) * 0.16);
    skin.gloss = 1;
    skin.rough = 0.16 + 0.06 * noise(x * 9, y * 9, z * 9);
    skin.creep = 0.22;
    bumpy(skin, x, y, z, 7, 0.05);
  };
}

/** The green star on top, with the stump of its stalk. */
function star(model: Model, place: Frame, height: number, size: number, seed: number, stalk = 0.25): void {
  const random = randomFrom(`star ${seed}`);
  const green: Paint = (skin, x, y, z, u, v) => {
    dye(skin, [0.12, 0.22, 0.045], 0.8 + 0.5 * noise(x * 20, y * 20, z * 20));
    if (Math.abs(u - 0.5) < 0.12) darken(skin, 1.25);
    tinge(skin, [0.3, 0.3, 0.1], v * 0.25);
    skin.gloss = 0.15;
    skin.through = 0.25;
    bumpy(skin, x, y, z, 60, 0.3);
  };
  for (let i = 0; i < 5; i++) {
    const turn = (i / 5) * 6.283 + 0.25 * spread(random);
    const at = inFrame(place, [0, 0, height]);
    const f = frame(at, place.z, 0, 1);
    const c = Math.cos(turn);
    const s = Math.sin(turn);
    const own: Frame = {
      at,
      x: [f.x[0] * c + f.y[0] * s, f.x[1] * c + f.y[1] * s, f.x[2] * c + f.y[2] * s],
      y: [f.y[0] * c - f.x[0] * s, f.y[1] * c - f.x[1] * s, f.y[2] * c - f.x[2] * s],
      z: f.z,
    };
    blade(
      model,
      own,
      {
        length: size * (0.85 + 0.3 * random()),
        half: (t) => 0.15 * size * Math.sin(Math.PI * Math.min(1, 0.2 + t * 0.8)) ** 0.8,
        rise: 0.55 + 0.25 * spread(random),
        droop: 0.9 + 0.9 * random() * (i % 2 === 0 ? 1 : -0.6),
        cup: 0.35,
        columns: 8,
        rows: 18,
      },
      green,
    );
  }
  if (stalk > 0)
    tube(
      model,
      place,
      [
        [0, 0, height - 0.02],
        [0.01, 0, height + stalk * 0.5],
        [0.04, 0.02, height + stalk],
      ],
      (t) => 0.026 + 0.01 * (1 - t) + (t > 0.95 ? -0.012 : 0),
      green,
    );
}

const dip = (kind: Kind): number => kind.radius * (kind.flat - (kind.ribs > 8 ? 0.3 : 0.16));

function whole(model: Model, kind: Kind, at: Vec, up: Vec, seed: number, stalk?: number): void {
  const place = frame([at[0], at[1], at[2]], up, seed);
  body(model, place, shape(kind, seed), skinOf(kind, seed));
  star(model, place, dip(kind) + 0.01, kind.radius * (kind.radius < 0.2 ? 1.15 : 0.75), seed, stalk);
}

/** Flesh, walls and the wet chambers of a fruit cut across; the face is painted by angle and share of the radius. */
function cutFace(kind: Kind, form: Body, chambers: number, seed: number): Paint {
  const gel = mix(kind.ripe, colour("#d8561e"), 0.5);
  return (skin, x, y, z) => {
    const angle = Math.atan2(y, x);
    const [ex, ey] = onBody(form, angle, 0.5);
    const r = Math.hypot(x, y) / Math.hypot(ex, ey);
    const bent = angle + 0.25 * Math.sin(angle * 2 + seed) + 0.16 * noise(x * 4, y * 4, seed);
    const turn = (bent / 6.283) * chambers;
    const across = Math.abs(turn - Math.floor(turn) - 0.5) * 2;
    dye(skin, [0.62, 0.105, 0.06], 0.85 + 0.3 * cloudNoise(x * 9, y * 9, 3, 3));
    tinge(skin, [0.85, 0.42, 0.26], step(0.16, 0.04, r) * 0.6 + step(0.5, 1, across) * 0.12);
    const wall = 0.79 + 0.05 * noise(x * 6, y * 6, 7);
    const chamber =
      step(0.74, 0.62, across + 0.16 * (noise(x * 9, y * 9, 2) - 0.5)) *
      step(0.3, 0.38, r) *
      step(wall, wall - 0.06, r);
    tinge(skin, gel, chamber * 0.85);
    darken(skin, 1 - 0.3 * chamber);
    const seedAt = specks(x, y, 0.05, 15, 0.62, 0.46) * step(0.35, 0.75, chamber);
    tinge(skin, [0.78, 0.6, 0.3], seedAt * 0.9);
    tinge(skin, kind.ripe, step(0.955, 0.985, r));
    skin.gloss = 0.75 + 0.25 * chamber;
    skin.rough = 0.32 - 0.16 * chamber;
    skin.creep = 0.4;
    bumpy(skin, x, y, z, 22, 0.16 - 0.08 * chamber);
    bumpy(skin, x, y, z, 9, 0.14);
    if (seedAt > 0.1) bumpy(skin, x, y, z, 40, 0.3);
  };
}

function half(model: Model, kind: Kind, at: Vec, up: Vec, spin: number, chambers: number, seed: number): void {
  const place = frame(at, up, spin);
  const form: Body = { ...shape(kind, seed), from: 0, to: 0.5, rows: 60 };
  body(model, place, form, skinOf(kind, seed));
  const face = cutFace(kind, form, chambers, seed);
  model.grid(place, { columns: 220, rows: 60, closed: true }, face, (s, t) => {
    const [x, y, z] = onBody(form, s * 6.2832, 0.5);
    const r = 1 - t;
    return [x * r, y * r, z + 0.012 * (1 - r ** 8)];
  });
}

export const gardenersDelight: Subject = {
  stage: "air",
  view: { target: [0, 0, -0.28], away: 2.1, tilt: 6, sun: -1.7, reach: 1.4, open: 20, nearer: 0.16, exposure: -0.1 },
  build: (model) => {
    const stem: Vec[] = [
      [-0.75, 0.1, 0.42],
      [-0.35, 0.02, 0.4],
      [0, -0.02, 0.18],
      [0.12, 0, -0.25],
      [0.1, 0.02, -0.75],
    ];
    const green: Paint = (skin, x, y, z) => {
      dye(skin, [0.13, 0.23, 0.05], 0.8 + 0.5 * noise(x * 20, y * 20, z * 20));
      skin.gloss = 0.2;
      bumpy(skin, x, y, z, 60, 0.35);
    };
    tube(model, frame([0, 0, 0]), stem, (t) => 0.035 - 0.018 * t, green, 16, 60);
    const hung: readonly (readonly [Vec, number])[] = [
      [[-0.2, -0.12, 0.06], 0],
      [[0.25, -0.06, 0.02], 0.05],
      [[-0.13, -0.17, -0.31], 0.1],
      [[0.36, -0.1, -0.33], 0],
      [[-0.1, -0.12, -0.68], 0.35],
      [[0.3, -0.08, -0.7], 0.7],
      [[0.1, -0.1, -1.0], 1],
    ];
    hung.forEach(([at, unripe], i) => {
      const kind: Kind = {
        ...delight,
        radius: delight.radius * (1 - 0.07 * (i % 3) - 0.12 * unripe),
        ripe: mix(delight.ripe, unripe > 0.8 ? colour("#7f9a3c") : colour("#d8841c"), unripe),
        shoulder: mix(delight.shoulder, colour("#7f9a3c"), unripe),
      };
      const joint: Vec = [0.11, 0, at[2] + 0.24];
      const lean: Vec = [(joint[0] - at[0]) * 0.9, 0.25, 0.42];
      whole(model, kind, at, lean, i * 1.3 + 2, 0);
      const top = inFrame(frame(at, lean), [0, 0, kind.radius * 0.85]);
      tube(
        model,
        frame([0, 0, 0]),
        [top, [(top[0] + joint[0]) / 2, (top[1] + joint[1]) / 2, Math.max(top[2], joint[2]) + 0.02], joint],
        (t) => 0.017 + 0.012 * Math.exp(-(((t - 0.45) / 0.12) ** 2)),
        green,
        12,
        24,
      );
    });
  },
};

export const harbingers: Subject = {
  stage: "table",
  view: { target: [0, 0, 0.2], away: 2.5, tilt: 24, sun: -2.0 },
  build: (model) => {
    whole(model, harbinger, [-0.42, -0.12, 0.265], [-0.25, -0.3, 1], 3);
    whole(model, harbinger, [0.3, -0.24, 0.262], [0.2, -0.45, 0.9], 8);
    whole(model, { ...harbinger, radius: 0.28 }, [0.02, 0.42, 0.24], [0.1, 0.1, 1], 12);
  },
};

export const saintPierres: Subject = {
  stage: "board",
  view: { target: [0, 0, 0.26], away: 3, tilt: 26, sun: -1.8 },
  build: (model) => {
    whole(model, saintPierre, [-0.5, 0, 0.345], [-0.1, -0.25, 1], 3);
    half(model, saintPierre, [0.5, -0.36, 0.36], [0.08, -0.62, 0.75], 0.4, 7, 5);
    whole(model, { ...saintPierre, radius: 0.4 }, [0.38, 0.72, 0.32], [0.4, -0.1, 0.8], 9);
  },
};

export const costolutos: Subject = {
  stage: "board",
  view: { target: [0, 0, 0.24], away: 3.1, tilt: 30, sun: 1.9 },
  build: (model) => {
    whole(model, costoluto, [-0.52, -0.1, 0.29], [-0.1, -0.35, 1], 3, 0.18);
    whole(model, { ...costoluto, radius: 0.46 }, [0.55, 0.1, 0.29], [0.35, -0.5, 0.8], 6, 0.18);
    whole(model, { ...costoluto, radius: 0.42 }, [0.0, 0.85, 0.24], [0, 0.1, 1], 11, 0.18);
  },
};

export const costolutoCut: Subject = {
  stage: "board",
  view: { target: [0, 0, 0.2], away: 2.6, tilt: 38, sun: -1.7 },
  build: (model) => {
    half(model, costoluto, [-0.34, -0.2, 0.3], [0, -0.4, 0.9], 0.3, 11, 3);
    whole(model, costoluto, [0.62, 0.5, 0.29], [0.3, -0.3, 0.9], 6, 0.18);
  },
};

export const noireGreen: Subject = {
  stage: "air",
  view: { target: [0, 0, -0.1], away: 2.6, tilt: 12, sun: -1.5, reach: 1.5, open: 22, nearer: 0.25 },
  build: (model) => {
    const green: Paint = (skin, x, y, z) => {
      dye(skin, [0.11, 0.19, 0.05], 0.8 + 0.5 * noise(x * 20, y * 20, z * 20));
      skin.gloss = 0.2;
      bumpy(skin, x, y, z, 60, 0.35);
    };
    tube(
      model,
      frame([0, 0, 0]),
      [
        [-1.6, 0.25, 0.7],
        [-0.7, 0.1, 0.62],
        [-0.12, -0.02, 0.53],
        [0.25, -0.1, 0.43],
      ],
      () => 0.045,
      green,
      16,
      50,
    );
    whole(model, noire, [-0.28, 0, -0.02], [0.25, -0.12, 1], 4, 0.3);
    whole(model, { ...noire, radius: 0.34 }, [0.5, -0.06, -0.1], [-0.45, -0.1, 1], 9, 0.45);
  },
};
