/** How much sky each point of a close-up sees, and in which colour. */

import type { Light } from "../light.ts";
import { skyDirections } from "../light.ts";
import type { Mesh, Vec } from "../mesh.ts";
import { surfaces } from "../surfaces.ts";
import { reaches, shadowMap } from "../visibility.ts";

const SKY_LIGHTS = 30;
const SKY_SIZE = 300;

/** Shadow maps ask which surfaces throw shadows; close up, all do. */
export const everything = surfaces.map(() => true);

/** Sky light at each vertex, in three colours, and how open it stands: first of its front, then of its back. */
export function skyLight(mesh: Mesh, light: Light, centre: Vec, radius: number, normals: Float32Array): Float32Array {
  const directions = skyDirections(SKY_LIGHTS);
  const p = mesh.position;
  const out = new Float32Array(mesh.vertexCount * 8);
  for (const d of directions) {
    const map = shadowMap(mesh, d, centre, radius * 1.15, SKY_SIZE, everything);
    const low = (1 - d[2]) ** 3;
    const tone = [0, 1, 2].map((k) => {
      const zenith = light.zenith[k] as number;
      return zenith + ((light.horizon[k] as number) - zenith) * low;
    });
    const slack = 3.2 / map.scale;
    for (let i = 0; i < mesh.vertexCount; i++) {
      const nx = normals[i * 3] as number;
      const ny = normals[i * 3 + 1] as number;
      const nz = normals[i * 3 + 2] as number;
      const cosine = nx * d[0] + ny * d[1] + nz * d[2];
      if (Math.abs(cosine) <= 0.02) continue;
      const away = cosine > 0 ? slack * 0.5 : -slack * 0.5;
      const x = (p[i * 3] as number) + nx * away;
      const y = (p[i * 3 + 1] as number) + ny * away;
      const z = (p[i * 3 + 2] as number) + nz * away;
      if (reaches(map, x, y, z, slack * 0.6, 0, 0) === 0) continue;
      const at = cosine > 0 ? i * 8 : i * 8 + 4;
      const share = (2 * Math.abs(cosine)) / SKY_LIGHTS;
      for (let k = 0; k < 3; k++) out[at + k] = (out[at + k] as number) + share * (tone[k] as number);
      out[at + 3] = (out[at + 3] as number) + share;
    }
  }
  return out;
}
