/** Daylight of one photo: where the sun stands, how much cloud there is, what colour it all has. */

import type { Colour, Vec } from "./mesh.ts";
import { cloudNoise } from "./random.ts";

export interface Light {
  /** Direction to the sun in the scene. */
  readonly sun: Vec;
  readonly sunColour: Colour;
  /** Colour of clear or cloudy sky overhead and at the horizon. */
  readonly zenith: Colour;
  readonly horizon: Colour;
  /** 0 blue sky, 1 overcast. */
  readonly cloud: number;
  readonly seed: number;
}

const rad = Math.PI / 180;

/**
 * Sun direction for a scene whose camera looks towards `heading` degrees from north. Low-precision almanac formulas
 * (about half a degree, Astronomical Almanac section C), which is ample for shadows; `hour` is UTC.
 */
export function sunDirection(day: string, hour: number, latitude: number, longitude: number, heading: number): Vec {
  const n = Date.parse(`${day}T00:00:00Z`) / 86400000 - 10957.5 + hour / 24;
  const meanLongitude = 280.46 + 0.9856474 * n;
  const anomaly = (357.528 + 0.9856003 * n) * rad;
  const ecliptic = (meanLongitude + 1.915 * Math.sin(anomaly) + 0.02 * Math.sin(2 * anomaly)) * rad;
  const declination = Math.asin(Math.sin(23.439 * rad) * Math.sin(ecliptic));
  const ascension = Math.atan2(Math.cos(23.439 * rad) * Math.sin(ecliptic), Math.cos(ecliptic));
  const hourAngle = (280.46062 + 360.98564737 * n + longitude) * rad - ascension;
  const east = -Math.cos(declination) * Math.sin(hourAngle);
  const north =
    Math.sin(declination) * Math.cos(latitude * rad) -
    Math.cos(declination) * Math.cos(hourAngle) * Math.sin(latitude * rad);
  const up =
    Math.sin(declination) * Math.sin(latitude * rad) +
    Math.cos(declination) * Math.cos(hourAngle) * Math.cos(latitude * rad);
  const c = Math.cos(heading * rad);
  const s = Math.sin(heading * rad);
  return [east * c - north * s, east * s + north * c, up];
}

/** Light for a sun direction and a share of cloud. */
export function daylight(sun: Vec, cloud: number, seed: number): Light {
  const height = Math.max(0.03, sun[2]);
  const clear = (1 - cloud) ** 1.4;
  const red = Math.exp(-0.045 / height);
  const green = Math.exp(-0.085 / height);
  const blue = Math.exp(-0.17 / height);
  const power = 3.6 * clear * Math.min(1, height * 3 + 0.25);
  const grey = 0.62 + 0.5 * height;
  const toGrey = (c: Colour): Colour => [
    c[0] + (grey * 0.98 - c[0]) * cloud,
    c[1] + (grey - c[1]) * cloud,
    c[2] + (grey * 1.04 - c[2]) * cloud,
  ];
  return {
    sun,
    sunColour: [power * red, power * green * 0.97, power * blue * 0.92],
    zenith: toGrey([0.17, 0.34, 0.74]),
    horizon: toGrey([0.6 + 0.12 * (1 - height), 0.76, 0.95]),
    cloud,
    seed,
  };
}

/** Sky seen in a direction, in linear light, written into `out`. Clouds drift with the light's seed. */
export function skyColour(light: Light, x: number, y: number, z: number, out: Float64Array): void {
  if (z < -0.004) {
    sea(light, x, y, z, out);
    return;
  }
  const up = Math.max(0, z);
  const t = 1 - (1 - Math.min(1, up)) ** 5;
  for (let k = 0; k < 3; k++) {
    const low = light.horizon[k] as number;
    out[k] = low + ((light.zenith[k] as number) - low) * t;
  }
  const stretch = 1.1 / (up + 0.16);
  const puff = cloudNoise(x * stretch + light.seed * 7.3, y * stretch, light.seed * 1.7, 5);
  const edge = 0.6 - 0.34 * light.cloud;
  const cover = Math.min(1, Math.max(0, (puff - edge) * 6)) * Math.min(1, up * 14);
  const body = cloudNoise(x * stretch * 1.9 + 3 + light.seed * 7.3, y * stretch * 1.9, 4.2, 4);
  const white = (1.25 - 0.75 * body * (0.45 + 0.75 * light.cloud)) * (0.78 + 0.22 * (1 - light.cloud));
  const glow = Math.max(0, x * light.sun[0] + y * light.sun[1] + z * light.sun[2]);
  const halo = (1 - light.cloud) * 0.5 * glow ** 24 + 0.25 * glow ** 4;
  for (let k = 0; k < 3; k++) {
    const here = out[k] as number;
    const tone = white * (k === 2 ? 1.03 : 1);
    out[k] = here + (tone - here) * cover * 0.92 + halo * (k === 2 ? 0.75 : 1);
  }
}

/** Below the horizon lies the sea, paler far out, with wind on it. */
function sea(light: Light, x: number, y: number, z: number, out: Float64Array): void {
  const far = Math.exp(z * 9);
  const wind = cloudNoise((x / -z) * 0.5 + light.seed, (y / -z) * 0.12, light.seed, 3) - 0.5;
  for (let k = 0; k < 3; k++) {
    const mirror = 0.35 * (light.zenith[k] as number) + 0.3 * (light.horizon[k] as number);
    const deep = [0.07, 0.15, 0.17][k] as number;
    out[k] = (deep + (mirror - deep) * (0.45 + 0.35 * far)) * (1 + 0.3 * wind);
  }
}

/** Directions over the upper half, evenly spread, for the soft light of the sky. */
export function skyDirections(count: number): Vec[] {
  return Array.from({ length: count }, (_, i) => {
    const z = (i + 0.5) / count;
    const around = i * 2.399963229728653 + 0.4;
    const flat = Math.sqrt(1 - z * z);
    return [Math.cos(around) * flat, Math.sin(around) * flat, z];
  });
}
