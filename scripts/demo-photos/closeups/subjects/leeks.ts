/** Leeks, just dug. */

import type { Colour, Vec } from "../../mesh.ts";
import { colour } from "../../mesh.ts";
import { cloudNoise } from "../../random.ts";
import type { Subject } from "../close-up.ts";
import type { Model, Paint } from "../model.ts";
import { frame } from "../model.ts";
import { bumpy, dirt, dye, powder, step, streaks, tinge } from "../paint.ts";
import { blade, tube } from "../shapes.ts";
import { roots } from "./bulb-roots.ts";

/** Leeks side by side, roots to the left; their flags fold over at the right. */
function leeks(model: Model, thick: number, green: Colour, cold: Colour, count: number): void {
  for (let i = 0; i < count; i++) {
    const y = (i - (count - 1) / 2) * thick * 2.5 - 0.1;
    const z = thick * 1.02;
    const shift = 0.16 * Math.sin(i * 2.4);
    const shaft: Paint = (skin, px, py, pz, _u, v) => {
      const vein = streaks(py - y, pz - z, px, 60, 0.3, 2);
      dye(skin, [0.74, 0.75, 0.66], 0.86 + 0.2 * vein);
      tinge(skin, [0.42, 0.56, 0.24], step(0.42, 0.8, v) * 0.85);
      tinge(skin, green, step(0.7, 1, v) * 0.9);
      skin.gloss = 0.5;
      skin.rough = 0.35;
      skin.creep = 0.2;
      bumpy(skin, px, py, pz, 10, 0.1);
      dirt(skin, px, py, pz, 0.42 * step(0.16, 0, v), 9);
    };
    tube(
      model,
      frame([0, 0, 0]),
      [
        [-1.9 + shift, y, z],
        [-1, y + 0.02, z],
        [0, y, z],
        [0.75 + shift, y, z + 0.05],
      ],
      (t) => thick * (t < 0.012 ? t / 0.012 : 1.16 - 0.2 * step(0, 0.2, t) - 0.75 * step(0.75, 1, t)),
      shaft,
      44,
      80,
    );
    roots(model, [-1.86 + shift, y, z], [-1, 0, -0.1], 0.42, i * 7 + 3);
    for (let k = 0; k < 8; k++) {
      // Each flag leaves the shaft a little further on, in turn to either side, and wraps it at its foot.
      const turn = (k % 2 === 0 ? 1 : -1) * (1.15 - 0.09 * k) + 1.5708;
      const out: Vec = [0, Math.cos(turn), Math.sin(turn)];
      const lean = Math.cos(turn) * 0.2;
      blade(
        model,
        {
          at: [
            -0.35 + shift + 0.12 * k,
            y + out[1] * thick * (1.04 - 0.03 * k),
            z + out[2] * thick * (1.04 - 0.03 * k),
          ],
          y: [Math.cos(lean), Math.sin(lean), 0],
          x: [0, Math.sin(turn), -Math.cos(turn)],
          z: out,
        },
        {
          length: 3 - 0.14 * k,
          half: (t) =>
            thick * (0.06 + 1.29 * step(-0.1, 0.2, t) + 0.25 * step(0.2, 0.5, t)) * Math.min(1, (1 - t) * 2.2) ** 0.7,
          rise: 0.02,
          droop: -0.25 - 0.03 * k + 0.5 * Math.max(0, Math.sin(k * 2.1)),
          cup: -0.38,
          wave: [0.07, 2, k],
          rows: 60,
          columns: 22,
        },
        (skin, px, py, pz, u, v) => {
          const line = 0.5 + 0.5 * Math.sin(u * 120);
          dye(skin, green, 0.75 + 0.22 * line + 0.3 * (cloudNoise(px * 3 + k, py * 3, pz * 3, 3) - 0.5));
          tinge(skin, cold, 0.75 * step(0.35, 0.7, cloudNoise(px * 2 + k * 3, py * 1.2, v * 3, 3)) * step(0.1, 0.3, v));
          tinge(skin, [0.42, 0.52, 0.28], step(0.22, 0.02, v) * 0.7);
          if (Math.abs(u - 0.5) < 0.03) tinge(skin, [0.4, 0.5, 0.32], 0.4);
          skin.gloss = 0.3;
          skin.rough = 0.5;
          skin.through = 0.15;
          powder(skin, px + k, py, pz, [0.3, 0.39, 0.36], 0.3, 2);
          skin.bendY += (line - 0.5) * 0.12;
          bumpy(skin, px, py, pz, 7, 0.1);
        },
      );
    }
  }
}

export const musselburghs: Subject = {
  stage: "soil",
  view: { target: [-0.45, 0, 0.2], away: 5.4, tilt: 42, sun: -1.8, reach: 4.2, nearer: 0.4 },
  build: (model) => leeks(model, 0.24, colour("#3f7038"), colour("#4c7a48"), 3),
};
