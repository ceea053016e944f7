/** Tulips. */

import type { Vec } from "../../mesh.ts";
import { rays, stalk } from "../blossom.ts";
import type { Subject } from "../close-up.ts";
import { frame, nested } from "../model.ts";
import { bumpy, darken, dye, step, tinge } from "../paint.ts";
import { blade } from "../shapes.ts";
import { garden } from "../stages.ts";

export const queenOfNight: Subject = {
  stage: "air",
  behind: garden,
  view: { target: [0, 0, 0.02], away: 2.6, tilt: 16, sun: -1.9, reach: 1.6, open: 18, nearer: 0.25, exposure: -0.35 },
  build: (model) => {
    const one = (at: Vec, up: Vec, spin: number) => {
      const flower = frame(at, up, spin);
      rays(
        model,
        flower,
        6,
        (i) => ({
          angle: (i / 6) * 6.2832 + (i % 2) * 0.05,
          out: 0.05 + (i % 2) * 0.02,
          up: 0,
          form: {
            length: 0.78,
            half: (t) =>
              0.25 *
              Math.sin(Math.PI * Math.min(1, 0.18 + t * 0.78)) ** 0.6 *
              (t > 0.85 ? 1 - 0.35 * ((t - 0.85) / 0.15) ** 2 : 1),
            rise: 0.62,
            droop: -1.15,
            cup: 0.55,
            wave: [0.05, 1.4, i],
            rows: 40,
            columns: 26,
          },
        }),
        () => (skin, x, y, z, u, v) => {
          const vein = 0.5 + 0.5 * Math.sin((u - 0.5) * 130);
          dye(skin, [0.034, 0.006, 0.016], 0.85 + 0.3 * vein);
          tinge(skin, [0.075, 0.014, 0.04], step(0.6, 1, v) * 0.5 + step(0.7, 1, Math.abs(u * 2 - 1)) * 0.35);
          tinge(skin, [0.06, 0.06, 0.05], step(0.12, 0, v) * 0.6);
          skin.gloss = 0.6;
          skin.rough = 0.42;
          skin.through = 0.25;
          skin.bendX += (vein - 0.5) * 0.1;
          bumpy(skin, x, y, z, 14, 0.08);
        },
      );
      const foot = flower.at;
      stalk(
        model,
        [foot, [foot[0] + 0.02, foot[1] + 0.02, foot[2] - 0.6], [foot[0], foot[1] + 0.05, foot[2] - 2]],
        0.045,
        [0.16, 0.26, 0.1],
      );
    };
    one([-0.3, 0, -0.38], [0.05, -0.08, 1], 0.3);
    one([0.55, 0.55, -0.5], [-0.06, -0.05, 1], 1.1);
    blade(
      model,
      nested(frame([0.1, 0.25, -1.3], [0, 0, 1]), {
        at: [0, 0, 0],
        x: [0.9, 0.3, 0],
        y: [0.1, 0.25, 1],
        z: [-0.3, -0.9, 0.2],
      }),
      {
        length: 1.1,
        half: (t) => 0.2 * Math.sin(Math.PI * Math.min(1, 0.2 + t * 0.79)) ** 0.8,
        rise: 0.05,
        droop: 0.6,
        cup: 0.4,
        rows: 40,
      },
      (skin, x, y, z, u) => {
        dye(skin, [0.15, 0.25, 0.13], 0.9 + 0.12 * Math.sin(u * 90));
        darken(skin, 0.95);
        skin.gloss = 0.25;
        skin.through = 0.2;
        bumpy(skin, x, y, z, 20, 0.1);
      },
    );
  },
};
