/** The lens close up: what lies before and behind the focus is spread into discs, and far behind stands a soft garden. */

import type { Colour } from "../mesh.ts";
import { between, randomFrom } from "../random.ts";
import type { Rendered } from "../render.ts";
import type { Lit } from "./shade.ts";

export interface Behind {
  /** Colours from the top of the frame to its foot. */
  readonly tones: readonly Colour[];
  /** Colours of blurred lights: leaves in the sun, flowers, gaps of sky. */
  readonly lights: readonly Colour[];
}

/** A garden far out of focus. */
export function softGarden(width: number, height: number, behind: Behind, seed: string): Float32Array {
  const random = randomFrom(seed);
  const out = new Float32Array(width * height * 3);
  const last = behind.tones.length - 1;
  for (let y = 0; y < height; y++) {
    const at = (y / height) * last;
    const i = Math.min(last - 1, Math.floor(at));
    const f = at - i;
    const t = f * f * (3 - 2 * f);
    const a = behind.tones[i] as Colour;
    const b = behind.tones[i + 1] as Colour;
    for (let x = 0; x < width; x++)
      for (let k = 0; k < 3; k++)
        out[(y * width + x) * 3 + k] = (a[k] as number) + ((b[k] as number) - (a[k] as number)) * t;
  }
  const discs = 130;
  for (let n = 0; n < discs; n++) {
    const size = width * between(random, 0.03, 0.1) * (n < 30 ? 2.4 : 1);
    const cx = random() * width;
    const cy = random() ** 0.8 * height;
    const dark = random() < 0.45;
    const light = behind.lights[Math.floor(random() * behind.lights.length)] as Colour;
    const strength = n < 30 ? 0.4 : between(random, 0.1, 0.42);
    const edge = n < 30 ? 0.9 : between(random, 0.1, 0.5);
    const tone: Colour = dark ? [light[0] * 0.18, light[1] * 0.22, light[2] * 0.18] : light;
    for (let y = Math.max(0, Math.floor(cy - size)); y < Math.min(height, cy + size); y++)
      for (let x = Math.max(0, Math.floor(cx - size)); x < Math.min(width, cx + size); x++) {
        const r = Math.hypot(x - cx, y - cy) / size;
        if (r >= 1) continue;
        const share = strength * Math.min(1, (1 - r) / edge);
        const i = (y * width + x) * 3;
        for (let k = 0; k < 3; k++)
          out[i + k] = (out[i + k] as number) + ((tone[k] as number) - (out[i + k] as number)) * share;
      }
  }
  return out;
}

const TAPS = 40;

/** `sharp` is the distance in focus; `open` the blur, in pixels, of what is infinitely far. Blurs at half the size. */
export function focused(lit: Lit, behind: Float32Array, sharp: number, open: number): Rendered {
  const { width, height, cover } = lit;
  const whole = new Float32Array(width * height * 3);
  for (let i = 0; i < width * height; i++) {
    const rest = 1 - (cover[i] as number);
    for (let k = 0; k < 3; k++)
      whole[i * 3 + k] = (lit.pixels[i * 3 + k] as number) + rest * (behind[i * 3 + k] as number);
  }
  const spreadAt = (d: number): number =>
    d === 0 ? 0 : Math.min(46, Math.max(0, Math.abs(1 - sharp / d) - 0.035) * open);
  const w = width >> 1;
  const h = height >> 1;
  const small = new Float32Array(w * h * 3);
  const far = new Float32Array(w * h);
  const spread = new Float32Array(w * h);
  for (let y = 0; y < h; y++)
    for (let x = 0; x < w; x++) {
      const i = y * w + x;
      const j = 2 * y * width + 2 * x;
      for (let k = 0; k < 3; k++)
        small[i * 3 + k] =
          0.25 *
          ((whole[j * 3 + k] as number) +
            (whole[j * 3 + 3 + k] as number) +
            (whole[(j + width) * 3 + k] as number) +
            (whole[(j + width) * 3 + 3 + k] as number));
      far[i] = lit.distance[j] as number;
      spread[i] = 0.5 * spreadAt(far[i] as number);
    }
  const soft = blurred(small, spread, far, w, h);
  const pixels = new Float32Array(whole.length);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      const t = Math.min(1, Math.max(0, (spreadAt(lit.distance[i] as number) - 0.5) / 1.6));
      const fx = Math.min(w - 1.001, Math.max(0, x / 2 - 0.25));
      const fy = Math.min(h - 1.001, Math.max(0, y / 2 - 0.25));
      const at = (Math.floor(fy) * w + Math.floor(fx)) * 3;
      const u = fx - Math.floor(fx);
      const v = fy - Math.floor(fy);
      for (let k = 0; k < 3; k++) {
        const sharpHere = whole[i * 3 + k] as number;
        if (t === 0) {
          pixels[i * 3 + k] = sharpHere;
          continue;
        }
        const softHere =
          ((soft[at + k] as number) * (1 - u) + (soft[at + 3 + k] as number) * u) * (1 - v) +
          ((soft[at + w * 3 + k] as number) * (1 - u) + (soft[at + w * 3 + 3 + k] as number) * u) * v;
        pixels[i * 3 + k] = sharpHere + (softHere - sharpHere) * t;
      }
    }
  return { width, height, pixels, plant: cover };
}

/** Spreads each point over its disc; what lies behind never spreads over what lies before it. */
function blurred(
  picture: Float32Array,
  spread: Float32Array,
  far: Float32Array,
  width: number,
  height: number,
): Float32Array {
  const widest = widestNear(spread, width, height);
  const out = new Float32Array(picture);
  const sum = new Float64Array(3);
  const dx = new Float64Array(TAPS * 5);
  const dy = new Float64Array(TAPS * 5);
  for (let n = 0; n < TAPS * 5; n++) {
    const r = Math.sqrt(((n % TAPS) + 0.3) / TAPS);
    const a = (n % TAPS) * 2.39996 + Math.floor(n / TAPS) * 1.2566;
    dx[n] = Math.cos(a) * r;
    dy[n] = Math.sin(a) * r;
  }
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      const own = spread[i] as number;
      const reach = widest[Math.floor(y / STEP) * Math.ceil(width / STEP) + Math.floor(x / STEP)] as number;
      if (own < 0.2) continue;
      const here = (far[i] as number) || 1e9;
      sum.fill(0);
      let weights = 0;
      const first = ((x * 7 + y * 13) % 5) * TAPS;
      for (let n = first; n < first + TAPS; n++) {
        const tx = Math.min(width - 1, Math.max(0, Math.round(x + (dx[n] as number) * reach)));
        const ty = Math.min(height - 1, Math.max(0, Math.round(y + (dy[n] as number) * reach)));
        const r = reach * Math.sqrt((n - first + 0.3) / TAPS);
        const j = ty * width + tx;
        const there = (far[j] as number) || 1e9;
        const disc = there > here + 0.05 ? Math.min(own, spread[j] as number) : (spread[j] as number);
        if (disc + 0.75 < r) continue;
        const w = 1 / (1 + disc * disc * 0.6);
        weights += w;
        for (let k = 0; k < 3; k++) sum[k] = (sum[k] as number) + w * (picture[j * 3 + k] as number);
      }
      const w = 1 / (1 + own * own * 0.6);
      weights += w;
      for (let k = 0; k < 3; k++) out[i * 3 + k] = ((sum[k] as number) + w * (picture[i * 3 + k] as number)) / weights;
    }
  return out;
}

const STEP = 16;

/** The widest blur that can reach each tile. */
function widestNear(spread: Float32Array, width: number, height: number): Float32Array {
  const w = Math.ceil(width / STEP);
  const h = Math.ceil(height / STEP);
  const own = new Float32Array(w * h);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const tile = Math.floor(y / STEP) * w + Math.floor(x / STEP);
      own[tile] = Math.max(own[tile] as number, spread[y * width + x] as number);
    }
  const out = new Float32Array(w * h);
  for (let y = 0; y < h; y++)
    for (let x = 0; x < w; x++) {
      let most = 0;
      for (let j = Math.max(0, y - 2); j <= Math.min(h - 1, y + 2); j++)
        for (let i = Math.max(0, x - 2); i <= Math.min(w - 1, x + 2); i++) {
          const gap = Math.max(0, Math.max(Math.abs(i - x), Math.abs(j - y)) - 1) * STEP;
          const reach = own[j * w + i] as number;
          if (reach > gap) most = Math.max(most, reach);
        }
      out[y * w + x] = most;
    }
  return out;
}
