/** Lights a close-up: sun with soft shadows, sky dimmed in every hollow, light that creeps through juicy bodies, mirroring. */

import type { Camera } from "../camera.ts";
import { steady } from "../camera.ts";
import type { Light } from "../light.ts";
import { type Colour, mixed, type Vec } from "../mesh.ts";
import { hashGrid } from "../random.ts";
import type { ShadowMap } from "../visibility.ts";
import { look, reaches, shadowMap } from "../visibility.ts";
import type { Model } from "./model.ts";
import { Skin } from "./model.ts";
import { everything, skyLight } from "./sky-light.ts";

export interface Shot {
  readonly model: Model;
  readonly camera: Camera;
  readonly light: Light;
  /** Middle and radius, in units, of the part that gets fine shadows. */
  readonly centre: Vec;
  readonly radius: number;
  /** Light thrown up from below, and what is mirrored there. */
  readonly ground: Colour;
}

export interface Lit {
  readonly width: number;
  readonly height: number;
  /** Linear light, three a pixel; black where `distance` is 0. */
  readonly pixels: Float32Array;
  /** Share of each pixel that something stands in. */
  readonly cover: Float32Array;
  /** Distance along the view; 0 where nothing is seen. */
  readonly distance: Float32Array;
}

const SAMPLES = 2;
const SUN_SIZE = 2048;
const HEDGE: Colour = [0.045, 0.075, 0.028];

/** What a glossy skin mirrors: sky, the hedges around the plot, the ground. */
function mirrored(shot: Shot, x: number, y: number, z: number, rough: number, out: Float64Array): void {
  const soft = 0.06 + rough * 0.9;
  const sky = Math.min(1, Math.max(0, (z - 0.16) / soft + 0.5));
  const low = Math.min(1, Math.max(0, (-0.02 - z) / soft + 0.5));
  const cloud = 0.75 + 0.35 * Math.sin(x * 3 + shot.light.seed) * Math.sin(y * 2.3 + 1);
  for (let k = 0; k < 3; k++) {
    const above = ((shot.light.zenith[k] as number) * 0.55 + (shot.light.horizon[k] as number) * 0.75) * cloud;
    const beside = HEDGE[k] as number;
    out[k] = (beside + (above - beside) * sky) * (1 - low) + (shot.ground[k] as number) * low;
  }
}

/** A pixel's first two samples on one thing share their light. */
const sameDepth = 0.02;

export function lightUp(shot: Shot, width: number, height: number): Lit {
  const { model, camera, light } = shot;
  const { mesh } = model;
  const normals = mesh.normals();
  const sky = skyLight(mesh, light, shot.centre, shot.radius, normals);
  const sunMap = shadowMap(mesh, light.sun, shot.centre, shot.radius, SUN_SIZE, everything);
  const seen = look(mesh, camera, steady, width, height, SAMPLES, () => true);
  const pixels = new Float32Array(width * height * 3);
  const cover = new Float32Array(width * height);
  const distance = new Float32Array(width * height);
  const point = pointShader(shot, normals, sky, sunMap);
  const out = new Float64Array(3);
  const weight = 1 / SAMPLES ** 2;
  const ray: [number, number, number] = [0, 0, 0];
  for (let py = 0; py < height; py++)
    for (let px = 0; px < width; px++) {
      const pixel = py * width + px;
      let knownPaint = -1;
      let knownDepth = 0;
      let nearest = 0;
      for (let k = 0; k < SAMPLES ** 2; k++) {
        const sx = px * SAMPLES + (k % SAMPLES);
        const sy = py * SAMPLES + Math.floor(k / SAMPLES);
        const triangle = seen.triangle[sy * seen.width + sx] as number;
        if (triangle < 0) continue;
        const depth = 1 / (seen.nearness[sy * seen.width + sx] as number);
        const paint = model.paintOf[triangle] as number;
        if (paint !== knownPaint || Math.abs(depth - knownDepth) > sameDepth) {
          const u = ((sx + 0.5) / SAMPLES - width / 2) / camera.focal;
          const v = ((sy + 0.5) / SAMPLES - height / 2) / camera.focal;
          for (let i = 0; i < 3; i++)
            ray[i] = (camera.ahead[i] as number) + u * (camera.right[i] as number) + v * (camera.down[i] as number);
          point(triangle, ray, depth, sx, sy, out);
          knownPaint = paint;
          knownDepth = depth;
        }
        for (let i = 0; i < 3; i++)
          pixels[pixel * 3 + i] = (pixels[pixel * 3 + i] as number) + Math.min(5, out[i] as number) * weight;
        cover[pixel] = (cover[pixel] as number) + weight;
        nearest = nearest === 0 ? depth : Math.min(nearest, depth);
      }
      distance[pixel] = nearest;
    }
  return { width, height, pixels, cover, distance };
}

type PointShader = (
  triangle: number,
  ray: Vec,
  depth: number,
  sampleX: number,
  sampleY: number,
  out: Float64Array,
) => void;

function pointShader(shot: Shot, normals: Float32Array, sky: Float32Array, sunMap: ShadowMap): PointShader {
  const { model, light, camera } = shot;
  const { mesh } = model;
  const { eye } = camera;
  const { position: p, tint, uv, triangles } = mesh;
  const skin = new Skin();
  const mirror = new Float64Array(3);
  const place = new Float64Array(5);
  const texel = 1 / sunMap.scale;
  return (triangle, ray, depth, sampleX, sampleY, out) => {
    const i0 = triangles[triangle * 3] as number;
    const i1 = triangles[triangle * 3 + 1] as number;
    const i2 = triangles[triangle * 3 + 2] as number;
    const x = eye[0] + ray[0] * depth;
    const y = eye[1] + ray[1] * depth;
    const z = eye[2] + ray[2] * depth;
    const [b0, b1, b2] = shares(p, i0 * 3, i1 * 3, i2 * 3, x, y, z);
    for (let k = 0; k < 3; k++) place[k] = mixed(tint, i0 * 3 + k, i1 * 3 + k, i2 * 3 + k, b0, b1, b2);
    for (let k = 0; k < 2; k++) place[3 + k] = mixed(uv, i0 * 2 + k, i1 * 2 + k, i2 * 2 + k, b0, b1, b2);
    skin.bendX = skin.bendY = skin.bendZ = skin.through = skin.creep = 0;
    skin.gloss = 0.1;
    skin.rough = 0.5;
    model.paints[model.paintOf[triangle] as number]?.(
      skin,
      place[0] as number,
      place[1] as number,
      place[2] as number,
      place[3] as number,
      place[4] as number,
    );
    // Sheets are seen from both sides.
    const back = seenFromBehind(p, i0 * 3, i1 * 3, i2 * 3, ray);
    const s0 = i0 * 8 + (back ? 4 : 0);
    const s1 = i1 * 8 + (back ? 4 : 0);
    const s2 = i2 * 8 + (back ? 4 : 0);
    let nx = mixed(normals, i0 * 3, i1 * 3, i2 * 3, b0, b1, b2);
    let ny = mixed(normals, i0 * 3 + 1, i1 * 3 + 1, i2 * 3 + 1, b0, b1, b2);
    let nz = mixed(normals, i0 * 3 + 2, i1 * 3 + 2, i2 * 3 + 2, b0, b1, b2);
    const flat = (back ? -1 : 1) / (Math.hypot(nx, ny, nz) || 1);
    nx = nx * flat + skin.bendX;
    ny = ny * flat + skin.bendY;
    nz = nz * flat + skin.bendZ;
    const long = 1 / (Math.hypot(nx, ny, nz) || 1);
    nx *= long;
    ny *= long;
    nz *= long;
    const far = 1 / Math.hypot(ray[0], ray[1], ray[2]);
    const vx = -ray[0] * far;
    const vy = -ray[1] * far;
    const vz = -ray[2] * far;
    const facing = nx * light.sun[0] + ny * light.sun[1] + nz * light.sun[2];
    const off = texel * 4;
    let sun = 0;
    const spin = hashGrid(sampleX, sampleY, 3) * 6.283;
    for (let i = 0; i < 8; i++) {
      const r = 7 * Math.sqrt((i + 0.5) / 8);
      const a = spin + i * 2.39996;
      sun += reaches(
        sunMap,
        x + light.sun[0] * off + nx * off,
        y + light.sun[1] * off + ny * off,
        z + light.sun[2] * off + nz * off,
        off * 1.2,
        Math.cos(a) * r,
        Math.sin(a) * r,
      );
    }
    sun /= 8;
    const crept = Math.max(0, (facing + skin.creep) / (1 + skin.creep));
    const front = Math.max(0, facing) * (1 - 0.3 * skin.through);
    const behind = Math.max(0, -facing) * skin.through;
    const open = Math.min(
      1,
      b0 * (sky[s0 + 3] as number) + b1 * (sky[s1 + 3] as number) + b2 * (sky[s2 + 3] as number),
    );
    const rim = 1 - Math.max(0, nx * vx + ny * vy + nz * vz);
    const fresnel = 0.04 + 0.96 * rim ** 5;
    // Polished skins mirror the sun as a small hard spot, dull ones as a wide sheen.
    const power = 4 + 900 * (1 - Math.min(1, skin.rough)) ** 4;
    const hx = vx + light.sun[0];
    const hy = vy + light.sun[1];
    const hz = vz + light.sun[2];
    const hl = 1 / (Math.hypot(hx, hy, hz) || 1);
    const spot =
      facing > 0
        ? skin.gloss * sun * Math.max(0, (nx * hx + ny * hy + nz * hz) * hl) ** power * (power + 8) * 0.0045
        : 0;
    const turn = 2 * (nx * vx + ny * vy + nz * vz);
    mirrored(shot, turn * nx - vx, turn * ny - vy, turn * nz - vz, skin.rough, mirror);
    const shine = skin.gloss * fresnel * (1 - 0.6 * skin.rough) * (0.25 + 0.75 * open);
    const below = (0.5 - 0.5 * nz) * (0.35 + 0.65 * open);
    for (let k = 0; k < 3; k++) {
      const albedo = k === 0 ? skin.r : k === 1 ? skin.g : skin.b;
      const sunHere = (light.sunColour[k] as number) * sun;
      const skyHere = b0 * (sky[s0 + k] as number) + b1 * (sky[s1 + k] as number) + b2 * (sky[s2 + k] as number);
      const other = skin.through === 0 ? 0 : (sky[i0 * 8 + (back ? 0 : 4) + k] as number);
      // Deep in fruit only red light gets far; through a green leaf yellow and green do, through a petal its own colour.
      const warm = k === 0 ? 1.25 : k === 1 ? 0.75 : 0.55;
      const leafy = skin.g <= skin.r ? 1.15 : k === 0 ? 1.3 : k === 1 ? 1.4 : 0.6;
      const dif = front + Math.max(0, crept - Math.max(0, facing)) * warm + behind * leafy;
      out[k] =
        albedo *
          (sunHere * dif +
            skyHere * 1.15 +
            other * skin.through * 0.6 * leafy +
            (shot.ground[k] as number) * (below + 0.12) +
            0.03) +
        spot * (light.sunColour[k] as number) +
        shine * (mirror[k] as number) * 1.6;
    }
  };
}

function seenFromBehind(p: Float32Array, a: number, b: number, c: number, ray: Vec): boolean {
  const ux = (p[b] as number) - (p[a] as number);
  const uy = (p[b + 1] as number) - (p[a + 1] as number);
  const uz = (p[b + 2] as number) - (p[a + 2] as number);
  const wx = (p[c] as number) - (p[a] as number);
  const wy = (p[c + 1] as number) - (p[a + 1] as number);
  const wz = (p[c + 2] as number) - (p[a + 2] as number);
  return (uy * wz - uz * wy) * ray[0] + (uz * wx - ux * wz) * ray[1] + (ux * wy - uy * wx) * ray[2] > 0;
}

/** Shares of a triangle's corners in a point of it. */
function shares(
  p: Float32Array,
  a: number,
  b: number,
  c: number,
  x: number,
  y: number,
  z: number,
): readonly [number, number, number] {
  const ux = (p[b] as number) - (p[a] as number);
  const uy = (p[b + 1] as number) - (p[a + 1] as number);
  const uz = (p[b + 2] as number) - (p[a + 2] as number);
  const wx = (p[c] as number) - (p[a] as number);
  const wy = (p[c + 1] as number) - (p[a + 1] as number);
  const wz = (p[c + 2] as number) - (p[a + 2] as number);
  const qx = x - (p[a] as number);
  const qy = y - (p[a + 1] as number);
  const qz = z - (p[a + 2] as number);
  const uu = ux * ux + uy * uy + uz * uz;
  const uw = ux * wx + uy * wy + uz * wz;
  const ww = wx * wx + wy * wy + wz * wz;
  const qu = qx * ux + qy * uy + qz * uz;
  const qw = qx * wx + qy * wy + qz * wz;
  const det = uu * ww - uw * uw || 1e-12;
  // Tiny triangles make the division shaky: what falls outside is pulled back.
  let b1 = Math.min(1, Math.max(0, (ww * qu - uw * qw) / det));
  let b2 = Math.min(1, Math.max(0, (uu * qw - uw * qu) / det));
  const sum = b1 + b2;
  if (sum > 1) {
    b1 /= sum;
    b2 /= sum;
  }
  return [1 - b1 - b2, b1, b2];
}
