/** Flowers: petals set around an axis, discs of florets, and the blossom of the pea family. */

import type { Colour, Vec } from "../mesh.ts";
import { cross, unit } from "../mesh.ts";
import { noise } from "../random.ts";
import type { Frame, Model, Paint } from "./model.ts";
import { frame, nested } from "./model.ts";
import { bumpy, darken, dye, step, tinge } from "./paint.ts";
import type { Blade } from "./shapes.ts";
import { blade, body, globe, tube } from "./shapes.ts";

/** Where a petal is fixed: at `angle` around the flower's axis, `out` from it and `up` along it; it grows outwards. */
export function petalAt(flower: Frame, angle: number, out: number, up: number): Frame {
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  return nested(flower, { at: [c * out, s * out, up], x: [s, -c, 0], y: [c, s, 0], z: [0, 0, 1] });
}

export interface Ray {
  readonly angle: number;
  readonly out: number;
  readonly up: number;
  readonly form: Blade;
}

export function rays(
  model: Model,
  flower: Frame,
  count: number,
  ray: (i: number) => Ray,
  paint: (i: number) => Paint,
): void {
  for (let i = 0; i < count; i++) {
    const { angle, out, up, form } = ray(i);
    blade(model, petalAt(flower, angle, out, up), form, paint(i));
  }
}

/** A disc of small florets in the order in which plants set them: each a golden angle on. */
export function disc(
  model: Model,
  flower: Frame,
  count: number,
  radius: number,
  height: (r: number) => number,
  size: (r: number) => number,
  tall: number,
  paint: (r: number, i: number) => Paint,
): void {
  for (let i = 0; i < count; i++) {
    const r = Math.sqrt((i + 0.5) / count);
    const a = i * 2.399963;
    const at: Vec = [Math.cos(a) * r * radius, Math.sin(a) * r * radius, height(r)];
    const lean: Vec = [Math.cos(a) * r * 0.5, Math.sin(a) * r * 0.5, 1];
    body(
      model,
      nested(flower, frame(at, lean, a)),
      { outline: globe(size(r), tall, 1.2), columns: 10, rows: 8 },
      paint(r, i),
    );
  }
}

/** A green stalk with fine hairs of light. */
export function stalk(model: Model, points: readonly Vec[], thick: number, tone: Vec): void {
  tube(
    model,
    frame([0, 0, 0]),
    points,
    (t) => thick * (1.1 - 0.2 * t),
    (skin, x, y, z, u) => {
      dye(skin, tone, 0.75 + 0.4 * noise(x * 14, y * 14, z * 14));
      darken(skin, 0.85 + 0.25 * Math.abs(Math.sin(u * 12)));
      skin.gloss = 0.25;
      skin.creep = 0.2;
      bumpy(skin, x, y, z, 50, 0.25);
    },
    18,
    60,
  );
}

export interface PeaBlossom {
  readonly standard: Paint;
  readonly wings: Paint;
  /** Width of the standard as a share of its height. */
  readonly wide: number;
  /** Length of a wing in standards. */
  readonly wing: number;
}

/**
 * A blossom of the pea family, seen from in front: z of its frame is where it looks, y is up. `open` 0 is a bud. The
 * standard is about one unit tall before the frame's scale.
 */
export function peaBlossom(model: Model, place: Frame, kind: PeaBlossom, open: number, seed: number): void {
  const rise = 0.2 + 0.9 * (1 - open);
  const fold = 0.75 * (1 - open) + 0.1;
  blade(
    model,
    nested(place, {
      at: [0, -0.05, -0.04],
      x: [1, 0, 0],
      y: [0, Math.cos(0.12), -Math.sin(0.12)],
      z: [0, Math.sin(0.12), Math.cos(0.12)],
    }),
    {
      length: 0.95,
      half: (t) => kind.wide * 0.52 * Math.sin(Math.PI * Math.min(1, 0.14 + t * 0.84)) ** 0.55 * (1 - 0.6 * fold),
      rise: rise,
      droop: 0.75 * open,
      cup: fold * 1.6 - 0.5 * open,
      wave: [0.12, 1.6, seed],
      lift: (edge, t) => -0.05 * Math.exp(-((edge / 0.12) ** 2)) * step(0, 0.4, t),
      rows: 34,
      columns: 30,
    },
    kind.standard,
  );
  if (open < 0.35) return;
  for (const side of [-1, 1]) {
    const ahead = unit([side * 0.5, -0.34, 0.62]);
    const across = unit(cross(ahead, [side * 0.16, 0.72, 0.62]));
    blade(
      model,
      nested(place, { at: [side * 0.02, 0.06, 0.04], x: across, y: ahead, z: cross(across, ahead) }),
      {
        length: kind.wing,
        half: (t) => kind.wing * 0.44 * Math.sin(Math.PI * Math.min(1, 0.08 + t * 0.86)) ** 0.6,
        rise: 0.35,
        droop: 0.95,
        cup: -0.3,
        wave: [0.16, 1.2, seed + side],
        rows: 26,
        columns: 22,
      },
      kind.wings,
    );
  }
}

/** A petal's paint: veins that fan out, a lighter or darker foot, thin edges that let light through. */
export const petalPaint =
  (tone: Vec, foot: Vec, veins: number, shine = 0.25): Paint =>
  (skin, x, y, z, u, v) => {
    const fan = 0.5 + 0.5 * Math.sin((u - 0.5) * 70 * (0.6 + 0.4 * v) + noise(x * 5, y * 5, z * 5) * 2);
    dye(skin, tone, 0.9 + 0.16 * (noise(x * 8, y * 8, z * 8) - 0.5));
    tinge(skin, foot, step(0.42, 0, v));
    darken(skin, 1 - veins * fan * (1 - 0.5 * v));
    skin.gloss = shine;
    skin.rough = 0.55;
    skin.through = 0.5;
    skin.bendX += (fan - 0.5) * 0.12;
    bumpy(skin, x, y, z, 30, 0.1);
  };

/** A leaf with a midrib and side veins. */
export const leafPaint =
  (tone: Colour, pale: Colour, gloss = 0.3): Paint =>
  (skin, x, y, z, u, v) => {
    const a = Math.abs(u - 0.5) * 2;
    dye(skin, tone, 0.82 + 0.35 * noise(x * 9, y * 9, z * 9));
    const w = v * 9 - a * 2;
    const side = Math.abs(w - Math.floor(w) - 0.5) * 2;
    tinge(skin, pale, Math.max(step(0.07, 0.02, a) * 0.8, step(0.86, 1, side) * 0.4));
    skin.gloss = gloss;
    skin.rough = 0.45;
    skin.through = 0.4;
    skin.bendX += (side - 0.5) * 0.18;
    bumpy(skin, x, y, z, 26, 0.2);
  };
