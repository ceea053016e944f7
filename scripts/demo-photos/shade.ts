/** Lights one point of a scene: sun with its shadows, soft sky from all sides, light through leaves, gloss, haze. */

import type { Camera } from "./camera.ts";
import type { Light } from "./light.ts";
import { skyColour, skyDirections } from "./light.ts";
import { type Mesh, mixed, type Vec } from "./mesh.ts";
import { hashGrid } from "./random.ts";
import { surfaces } from "./surfaces.ts";
import type { ShadowMap } from "./visibility.ts";
import { reaches, shadowMap } from "./visibility.ts";

export interface Scene {
  readonly mesh: Mesh;
  readonly camera: Camera;
  readonly light: Light;
  /** Middle and radius in metres of the part that gets fine shadows. */
  readonly centre: Vec;
  readonly radius: number;
  /** Under tunnel film: the sun is spread and the sky is white. */
  readonly underFilm: boolean;
}

/** How finely to draw: samples along a pixel's side, sky directions, shadow map side. */
export interface Fineness {
  readonly samples: number;
  readonly sky: number;
  readonly sunMap: number;
  readonly skyMap: number;
}

export const fine: Fineness = { samples: 2, sky: 18, sunMap: 2600, skyMap: 640 };
export const rough: Fineness = { samples: 1, sky: 10, sunMap: 1400, skyMap: 400 };

/** What throws a shadow; and what is large enough to take sky from its surroundings. */
const hidesSun = surfaces.map((surface) => !surface.film && surface.name !== "net");
const hidesSky = surfaces.map(
  (surface, i) => hidesSun[i] === true && !["soil", "chips", "grass"].includes(surface.name),
);

/** Linear light of a triangle (-1: the sky) seen along a ray, written into `out`. */
export type Shade = (triangle: number, ray: Vec, sampleX: number, sampleY: number, out: Float64Array) => void;

export function shader(scene: Scene, fineness: Fineness): Shade {
  const { mesh, camera, light, underFilm } = scene;
  const normals = mesh.normals();
  const directions = skyDirections(fineness.sky);
  const skyMaps = directions.map((d) => shadowMap(mesh, d, scene.centre, scene.radius, fineness.skyMap, hidesSky));
  const sunMap: ShadowMap = shadowMap(mesh, light.sun, scene.centre, scene.radius, fineness.sunMap, hidesSun);
  const skyLight = directions.map((d) => {
    const colour = new Float64Array(3);
    if (underFilm) {
      const side =
        0.75 +
        0.35 * d[2] +
        0.35 * light.sunColour[1] * Math.max(0, d[0] * light.sun[0] + d[1] * light.sun[1] + d[2] * light.sun[2]) ** 2;
      for (let k = 0; k < 3; k++)
        colour[k] = side * (0.55 * (light.zenith[k] as number) + 0.4 + 0.05 * (light.horizon[k] as number)) * 0.9;
    } else {
      // Soft sky without single clouds, so that ten directions are enough.
      const t = 1 - (1 - d[2]) ** 3;
      for (let k = 0; k < 3; k++)
        colour[k] =
          (light.horizon[k] as number) +
          ((light.zenith[k] as number) - (light.horizon[k] as number)) * t +
          0.2 * (1 - light.cloud);
    }
    return colour;
  });
  const sunShare = underFilm ? 0.22 : 1;
  const share = 2 / fineness.sky;
  const paint = new Float64Array(7);
  const { position: p, tint, uv, triangles } = mesh;
  const { eye } = camera;

  return (triangle, ray, sampleX, sampleY, out) => {
    const length = Math.hypot(ray[0], ray[1], ray[2]);
    if (triangle < 0) {
      skyColour(light, ray[0] / length, ray[1] / length, ray[2] / length, out);
      return;
    }
    const i0 = triangles[triangle * 3] as number;
    const i1 = triangles[triangle * 3 + 1] as number;
    const i2 = triangles[triangle * 3 + 2] as number;
    const ax = p[i0 * 3] as number;
    const ay = p[i0 * 3 + 1] as number;
    const az = p[i0 * 3 + 2] as number;
    const e1x = (p[i1 * 3] as number) - ax;
    const e1y = (p[i1 * 3 + 1] as number) - ay;
    const e1z = (p[i1 * 3 + 2] as number) - az;
    const e2x = (p[i2 * 3] as number) - ax;
    const e2y = (p[i2 * 3 + 1] as number) - ay;
    const e2z = (p[i2 * 3 + 2] as number) - az;
    // Ray meets plane of the triangle (Möller and Trumbore 1997).
    const hx = ray[1] * e2z - ray[2] * e2y;
    const hy = ray[2] * e2x - ray[0] * e2z;
    const hz = ray[0] * e2y - ray[1] * e2x;
    const det = e1x * hx + e1y * hy + e1z * hz || 1e-12;
    const sx = eye[0] - ax;
    const sy = eye[1] - ay;
    const sz = eye[2] - az;
    const b1 = (sx * hx + sy * hy + sz * hz) / det;
    const qx = sy * e1z - sz * e1y;
    const qy = sz * e1x - sx * e1z;
    const qz = sx * e1y - sy * e1x;
    const b2 = (ray[0] * qx + ray[1] * qy + ray[2] * qz) / det;
    const distance = (e2x * qx + e2y * qy + e2z * qz) / det;
    const b0 = 1 - b1 - b2;
    const x = eye[0] + ray[0] * distance;
    const y = eye[1] + ray[1] * distance;
    const z = eye[2] + ray[2] * distance;
    const surface = surfaces[mesh.surface[triangle] as number] as (typeof surfaces)[number];
    for (let k = 0; k < 3; k++) {
      paint[k] = mixed(tint, i0 * 3 + k, i1 * 3 + k, i2 * 3 + k, b0, b1, b2);
      paint[3 + k] = 0;
    }
    paint[6] = 1;
    surface.pattern(
      paint,
      mixed(uv, i0 * 2, i1 * 2, i2 * 2, b0, b1, b2),
      mixed(uv, i0 * 2 + 1, i1 * 2 + 1, i2 * 2 + 1, b0, b1, b2),
      x,
      y,
      z,
    );
    let nx = mixed(normals, i0 * 3, i1 * 3, i2 * 3, b0, b1, b2);
    let ny = mixed(normals, i0 * 3 + 1, i1 * 3 + 1, i2 * 3 + 1, b0, b1, b2);
    let nz = mixed(normals, i0 * 3 + 2, i1 * 3 + 2, i2 * 3 + 2, b0, b1, b2);
    const flip = nx * ray[0] + ny * ray[1] + nz * ray[2] > 0 ? -1 : 1;
    nx = nx * flip + (paint[3] as number);
    ny = ny * flip + (paint[4] as number);
    nz = nz * flip + (paint[5] as number);
    const n = 1 / (Math.hypot(nx, ny, nz) || 1);
    nx *= n;
    ny *= n;
    nz *= n;
    if (surface.film) {
      const glow =
        0.62 +
        0.5 * Math.max(0, nx * light.sun[0] + ny * light.sun[1] + nz * light.sun[2]) ** 2 * (1 - light.cloud) +
        0.1 * nz;
      for (let k = 0; k < 3; k++)
        out[k] =
          (paint[k] as number) *
          glow *
          (0.6 * (light.horizon[k] as number) + 0.4 + 0.1 * (light.sunColour[k] as number));
      return;
    }
    // The lookups start a little off the surface, or every leaf would shade itself.
    const off = 0.006 + distance * 0.0012;
    const ox = x + nx * off;
    const oy = y + ny * off;
    const oz = z + nz * off;
    const jx = hashGrid(sampleX, sampleY, 1) - 0.5;
    const jy = hashGrid(sampleX, sampleY, 2) - 0.5;
    const facing = nx * light.sun[0] + ny * light.sun[1] + nz * light.sun[2];
    let sun = 0;
    if (facing > 0 || surface.through > 0) {
      const reach = underFilm ? 9 : 2.2;
      sun =
        0.25 *
        sunShare *
        (reaches(sunMap, ox, oy, oz, off, jx * reach, jy * reach) +
          reaches(sunMap, ox, oy, oz, off, -jy * reach, jx * reach) +
          reaches(sunMap, ox, oy, oz, off, -jx * reach * 0.5, -jy * reach * 0.5) +
          reaches(sunMap, ox, oy, oz, off, jy * reach * 0.5, -jx * reach * 0.5));
    }
    const front = Math.max(0, facing) * (1 - 0.25 * surface.through);
    const back = Math.max(0, -facing) * surface.through;
    let skyR = 0;
    let skyG = 0;
    let skyB = 0;
    let open = 0;
    for (let i = 0; i < skyMaps.length; i++) {
      const d = directions[i] as Vec;
      const cosine = nx * d[0] + ny * d[1] + nz * d[2];
      const amount = cosine > 0 ? cosine : -cosine * surface.through * 0.6;
      if (amount <= 0) continue;
      const clear = reaches(skyMaps[i] as ShadowMap, ox, oy, oz, 0.02 + off, jx * 2.4, jy * 2.4);
      if (clear === 0) continue;
      const colour = skyLight[i] as Float64Array;
      skyR += amount * (colour[0] as number);
      skyG += amount * (colour[1] as number);
      skyB += amount * (colour[2] as number);
      open += amount;
    }
    skyR *= share;
    skyG *= share;
    skyB *= share;
    // Light thrown back by ground and leaves around: dim, warm, stronger from below and where the sky is open.
    const around =
      (0.05 + 0.1 * open * share) *
      (1.15 - 0.5 * nz) *
      (0.4 * light.zenith[1] + 0.35 * light.sunColour[1] * sunShare + 0.25);
    const shine = surface.gloss * (paint[6] as number);
    const vx = -ray[0] / length;
    const vy = -ray[1] / length;
    const vz = -ray[2] / length;
    let spark = 0;
    let mirror = 0;
    if (shine > 0.02) {
      const hx2 = vx + light.sun[0];
      const hy2 = vy + light.sun[1];
      const hz2 = vz + light.sun[2];
      const hn = 1 / (Math.hypot(hx2, hy2, hz2) || 1);
      spark = facing > 0 ? sun * shine * 0.55 * Math.max(0, (nx * hx2 + ny * hy2 + nz * hz2) * hn) ** 34 : 0;
      const rim = 1 - Math.max(0, nx * vx + ny * vy + nz * vz);
      mirror = shine * (0.05 + 0.5 * rim ** 4) * open * share * Math.max(0, nz + 0.35);
    }
    for (let k = 0; k < 3; k++) {
      const albedo = paint[k] as number;
      const sunHere = (light.sunColour[k] as number) * sun;
      // Light through a leaf comes out greener and yellower than light off it.
      const tinge = k === 0 ? 1.35 : k === 1 ? 1.5 : 0.55;
      const sky = k === 0 ? skyR : k === 1 ? skyG : skyB;
      const warm = k === 0 ? 1.08 : k === 1 ? 1 : 0.72;
      out[k] =
        albedo * (sunHere * (front + back * tinge) + sky + around * warm) +
        spark * (light.sunColour[k] as number) +
        mirror * (light.horizon[k] as number);
    }
    // Haze of the sea air.
    const haze = Math.min(0.6, 1 - Math.exp(-Math.max(0, distance * length - 6) * 0.005));
    if (haze > 0 && !underFilm)
      for (let k = 0; k < 3; k++)
        out[k] = (out[k] as number) + ((light.horizon[k] as number) * 0.62 - (out[k] as number)) * haze;
  };
}
