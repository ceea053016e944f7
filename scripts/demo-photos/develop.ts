/** From linear light to the phone's picture: exposure, tone, white balance, lens and grain. */

import { randomFrom } from "./random.ts";
import type { Rendered } from "./render.ts";

/** What drifts from photo to photo. */
export interface Taking {
  /** Stops above what the meter chose. */
  readonly exposure: number;
  /** Factor on red and its inverse on blue: above 1 is warmer. */
  readonly warmth: number;
  /** Standard deviation of the grain in 8-bit steps. */
  readonly grain: number;
  /** Radius in pixels of a shake or missed focus; 0 is sharp. */
  readonly blur: number;
  readonly seed: string;
}

/** Meters the middle of the frame, as phones do: a mean of the logarithm. */
function metered(picture: Rendered): number {
  let sum = 0;
  let weights = 0;
  for (let y = 0; y < picture.height; y += 3)
    for (let x = 0; x < picture.width; x += 3) {
      const i = (y * picture.width + x) * 3;
      const light =
        0.2126 * (picture.pixels[i] as number) +
        0.7152 * (picture.pixels[i + 1] as number) +
        0.0722 * (picture.pixels[i + 2] as number);
      const dx = x / picture.width - 0.5;
      const dy = y / picture.height - 0.55;
      const weight = 1.2 - Math.min(1, 2 * Math.hypot(dx, dy));
      sum += weight * Math.log(light + 0.008);
      weights += weight;
    }
  return 0.215 / Math.exp(sum / weights);
}

/** Filmic curve (Narkowicz 2015, "ACES Filmic Tone Mapping Curve"). */
const film = (x: number): number => Math.min(1, (x * (2.51 * x + 0.03)) / (x * (2.43 * x + 0.59) + 0.14));

const toSrgb = (c: number): number => (c <= 0.0031308 ? c * 12.92 : 1.055 * c ** (1 / 2.4) - 0.055);

/** Light spilling around bright parts: a wide, faint blur of what is above middle grey. */
function glow(pixels: Float32Array, width: number, height: number, gain: number): Float32Array {
  const step = 8;
  const w = Math.ceil(width / step);
  const h = Math.ceil(height / step);
  let small = new Float32Array(w * h * 3);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const to = (Math.floor(y / step) * w + Math.floor(x / step)) * 3;
      const from = (y * width + x) * 3;
      for (let k = 0; k < 3; k++)
        small[to + k] =
          (small[to + k] as number) +
          Math.min(3, Math.max(0, (pixels[from + k] as number) * gain - 0.55)) / (step * step);
    }
  for (let pass = 0; pass < 6; pass++) {
    const next = new Float32Array(small.length);
    const stride = pass % 2 === 0 ? 3 : w * 3;
    const reach = 4;
    for (let y = 0; y < h; y++)
      for (let x = 0; x < w; x++)
        for (let k = 0; k < 3; k++) {
          let sum = 0;
          let count = 0;
          const along = pass % 2 === 0 ? x : y;
          const end = pass % 2 === 0 ? w : h;
          for (let d = -reach; d <= reach; d++) {
            if (along + d < 0 || along + d >= end) continue;
            sum += small[(y * w + x) * 3 + k + d * stride] as number;
            count++;
          }
          next[(y * w + x) * 3 + k] = sum / count;
        }
    small = next;
  }
  return small;
}

/** 8-bit sRGB, three bytes a pixel. */
export function develop(picture: Rendered, taking: Taking): Uint8Array {
  const { width, height } = picture;
  const gain = metered(picture) * 2 ** taking.exposure;
  const pixels = lens(taking.blur > 0 ? softened(picture, taking.blur) : picture.pixels, width);
  const spill = glow(pixels, width, height, gain);
  const spillWidth = Math.ceil(width / 8);
  const spillHeight = Math.ceil(height / 8);
  const balance = [taking.warmth, 1, 1 / taking.warmth];
  const random = randomFrom(taking.seed);
  const noise = new Float32Array(width * height);
  for (let i = 0; i < noise.length; i++) noise[i] = (random() + random() + random() + random() - 2) * 1.73;
  const out = new Uint8Array(width * height * 3);
  const tones = new Float64Array(3);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      const dx = (x - width / 2) / width;
      const dy = (y - height / 2) / width;
      const corner = 1 - 0.55 * (dx * dx + dy * dy);
      // Grain is a little wider than a pixel, as after a phone's own smoothing.
      const right = x + 1 < width ? i + 1 : i;
      const below = y + 1 < height ? i + width : i;
      const grain = 0.62 * (noise[i] as number) + 0.28 * (noise[right] as number) + 0.28 * (noise[below] as number);
      const gx = Math.min(spillWidth - 1.001, Math.max(0, x / 8 - 0.5));
      const gy = Math.min(spillHeight - 1.001, Math.max(0, y / 8 - 0.5));
      const at = (Math.floor(gy) * spillWidth + Math.floor(gx)) * 3;
      const fx = gx - Math.floor(gx);
      const fy = gy - Math.floor(gy);
      for (let k = 0; k < 3; k++) {
        const halo =
          ((spill[at + k] as number) * (1 - fx) + (spill[at + 3 + k] as number) * fx) * (1 - fy) +
          ((spill[at + spillWidth * 3 + k] as number) * (1 - fx) +
            (spill[at + spillWidth * 3 + 3 + k] as number) * fx) *
            fy;
        const light = ((pixels[i * 3 + k] as number) * gain + 0.07 * halo - 0.007) * corner * (balance[k] as number);
        tones[k] = film(Math.max(0, light) * 0.76);
      }
      const grey = 0.25 * (tones[0] as number) + 0.65 * (tones[1] as number) + 0.1 * (tones[2] as number);
      for (let k = 0; k < 3; k++) {
        // The film curve pushes colours apart; phones pull them back.
        const tone = toSrgb((tones[k] as number) * 0.89 + grey * 0.11) * 255;
        const loud = taking.grain * (0.65 + 0.9 * (1 - tone / 255));
        out[i * 3 + k] = Math.max(0, Math.min(255, Math.round(tone + grain * loud)));
      }
    }
  return out;
}

/** What every small lens does: each point spreads a little over its neighbours. */
function lens(pixels: Float32Array, width: number): Float32Array {
  let from = pixels;
  for (const stride of [3, width * 3]) {
    const to = new Float32Array(from.length);
    for (let i = 0; i < from.length; i++) {
      const before = i - stride >= 0 ? i - stride : i;
      const after = i + stride < from.length ? i + stride : i;
      to[i] = 0.7 * (from[i] as number) + 0.15 * ((from[before] as number) + (from[after] as number));
    }
    from = to;
  }
  return from;
}

/** Box blur twice over, near enough to a soft lens. */
function softened(picture: Rendered, radius: number): Float32Array {
  const { width, height } = picture;
  let from = picture.pixels;
  const r = Math.round(radius);
  for (const stride of [3, width * 3, 3, width * 3]) {
    const to = new Float32Array(from.length);
    for (let y = 0; y < height; y++)
      for (let x = 0; x < width; x++) {
        const along = stride === 3 ? x : y;
        const end = stride === 3 ? width : height;
        for (let k = 0; k < 3; k++) {
          let sum = 0;
          let count = 0;
          for (let d = -r; d <= r; d++) {
            if (along + d < 0 || along + d >= end) continue;
            sum += from[(y * width + x) * 3 + k + d * stride] as number;
            count++;
          }
          to[(y * width + x) * 3 + k] = sum / count;
        }
      }
    from = to;
  }
  return from;
}
