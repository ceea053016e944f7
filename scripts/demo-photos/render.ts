/** From a scene's triangles to linear light per pixel, and to the mask of what is plant. */

import type { Jitter } from "./camera.ts";
import type { Vec } from "./mesh.ts";
import type { Fineness, Scene } from "./shade.ts";
import { shader } from "./shade.ts";
import { surfaceIndex, surfaces } from "./surfaces.ts";
import { look } from "./visibility.ts";

export interface Rendered {
  readonly width: number;
  readonly height: number;
  /** Linear light, three a pixel. */
  readonly pixels: Float32Array;
  /** Share of plant in each pixel, 0 to 1; netting is looked through. */
  readonly plant: Float32Array;
}

const netIndex = surfaceIndex("net");

export function render(scene: Scene, jitter: Jitter, width: number, height: number, fineness: Fineness): Rendered {
  const { mesh, camera } = scene;
  const seen = look(mesh, camera, jitter, width, height, fineness.samples, (surface) => surface !== netIndex);
  const netted = look(mesh, camera, jitter, width, height, fineness.samples, (surface) => surface === netIndex);
  const shade = shader(scene, fineness);
  const angle = (-jitter.rotationDeg * Math.PI) / 180;
  const c = Math.cos(angle) / jitter.scale;
  const s = Math.sin(angle) / jitter.scale;
  const pixels = new Float32Array(width * height * 3);
  const plant = new Float32Array(width * height);
  const out = new Float64Array(3);
  const ray: [number, number, number] = [0, 0, 0];
  const weight = 1 / fineness.samples ** 2;
  const n = fineness.samples;
  // Samples of one pixel that see the same triangle share their light: half the work, and no eye sees it.
  const shared = new Map<number, readonly [number, number, number]>();
  for (let py = 0; py < height; py++)
    for (let px = 0; px < width; px++) {
      shared.clear();
      const pixel = py * width + px;
      for (let k = 0; k < n * n; k++) {
        const x = px * n + (k % n);
        const y = py * n + Math.floor(k / n);
        const sample = y * seen.width + x;
        const triangle = seen.triangle[sample] as number;
        const dx = (x + 0.5) / n - width / 2 - jitter.shiftX;
        const dy = (y + 0.5) / n - height / 2 - jitter.shiftY;
        const u = (c * dx - s * dy) / camera.focal;
        const v = (s * dx + c * dy) / camera.focal;
        for (let i = 0; i < 3; i++)
          ray[i] = (camera.ahead[i] as number) + u * (camera.right[i] as number) + v * (camera.down[i] as number);
        const known = shared.get(triangle);
        if (known) out.set(known);
        else {
          shade(triangle, ray, x, y, out);
          shared.set(triangle, [out[0] as number, out[1] as number, out[2] as number]);
        }
        const net = netted.triangle[sample] as number;
        if (net >= 0 && (netted.nearness[sample] as number) > (seen.nearness[sample] as number))
          throughNet(scene, net, ray, netted.nearness[sample] as number, out);
        for (let i = 0; i < 3; i++)
          pixels[pixel * 3 + i] = (pixels[pixel * 3 + i] as number) + Math.min(6, out[i] as number) * weight;
        if (triangle >= 0 && surfaces[mesh.surface[triangle] as number]?.plant)
          plant[pixel] = (plant[pixel] as number) + weight;
      }
    }
  return { width, height, pixels, plant };
}

/** Fine netting lays a veil over what is behind it, and shows as threads where it is near. */
function throughNet(scene: Scene, triangle: number, ray: Vec, nearness: number, out: Float64Array): void {
  const { mesh, camera, light } = scene;
  const a = (mesh.triangles[triangle * 3] as number) * 3;
  const x = camera.eye[0] + ray[0] / nearness;
  const y = camera.eye[1] + ray[1] / nearness;
  const z = camera.eye[2] + ray[2] / nearness;
  const footprint = 1 / nearness / camera.focal;
  const cell = 0.03;
  const thread = (p: number): number => {
    const q = Math.abs(p / cell - Math.round(p / cell)) * cell;
    return Math.max(0, 1 - q / Math.max(footprint, 0.0012)) * Math.min(1, 0.0012 / footprint);
  };
  const cover = Math.min(0.55, 0.05 + 0.55 * Math.max(thread(y * 1.1 + z * 0.4), thread(x + z * 0.85)));
  const sky = (light.zenith[1] + light.horizon[1]) * 0.3 + light.sunColour[1] * 0.13;
  for (let k = 0; k < 3; k++) out[k] = (out[k] as number) * (1 - cover) + sky * (mesh.tint[a + k] as number) * cover;
}
