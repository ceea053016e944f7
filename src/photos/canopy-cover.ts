/**
 * Canopy cover: which share of a bed's outline in a photo is green plant, by Excess Green and Otsu's threshold.
 *
 * It sees green canopy only: open flowers, ripe fruit and red leaves do not count, and a grey bloom (leeks, cabbages)
 * counts less surely than lettuce. The threshold drifts with the light and with what grows: on bare or overgrown beds
 * Otsu's method still splits the picture, somewhere inside the soil or inside the leaves. So its threshold is only
 * taken within the limits between which soil ends and leaves begin, and beyond them where what lies below is redder than it is
 * green (Excess Red), as ground is that a camera sees too green. `npm run truth -- cover` prints the errors kind by kind.
 */

import { excessGreenLevels, excessGreenMinusRed, greenAt, levels } from "./excess-green.ts";
import { otsu } from "./otsu.ts";
import type { Outline, RgbImage } from "./raw-image.ts";
import { insideOutline } from "./raw-image.ts";

export interface Cover {
  /** 0 to 1. */
  readonly cover: number;
  /** Excess Green above which a pixel counts as plant. */
  readonly threshold: number;
  /**
   * Where the threshold comes from: the photo itself; a limit, because the photo's own lay beyond it, as it does among nothing
   * but leaves; or fixed, because the frame shows nothing but soil or one even colour.
   */
  readonly basis: "otsu" | "limit" | "fixed";
  /** Share that is white, 0 to 1: fleece, fine net, snow. */
  readonly white: number;
}

/** Cover below which, and white from which, plants lie under something white and nobody sees how many (common practice). */
const underWhite = { cover: 0.1, white: 0.5 } as const;

/** Whether fleece, net or snow lies over the outline, so that its little green says nothing. */
export function isCovered({ cover, white }: Cover): boolean {
  return cover < underWhite.cover && white >= underWhite.white;
}

/**
 * Width in pixels at which photos should be loaded to be measured: grain and JPEG colour blocks average out, leaves
 * stay.
 */
export const coverWidth = 600;

/** Threshold where a photo cannot give its own. */
export const fixedThreshold = 0.1;

/**
 * Limits for the photo's own threshold, as Excess Green: grey boards, soil and straw stay below 0.06 in nearly all
 * light, and all but the greyest and the reddest leaves are above 0.12 (common practice; the demo garden's drawn truth
 * agrees).
 */
export const thresholdLimits = [0.06, 0.12] as const;

/** Excess Green minus Excess Red below which a pixel is straw, yellow flower or warm soil, however green (the demo's drawn truth agrees). */
const leastLead = -0.06;

/** Pixels with less light than this (red, green and blue added up) have no colour that can be told from noise. */
const tooDark = 30;

/**
 * Cover over an outline (fractions of the frame) or, without one, over the whole frame. Undefined when the outline
 * holds no pixel.
 */
export function canopyCover(image: RgbImage, outline?: Outline): Cover | undefined {
  const { data } = image;
  const steps = excessGreenLevels(image);
  const inside = outline && insideOutline(image.width, image.height, outline);
  const histogram = new Float64Array(levels);
  /** Of these the pixels that may be leaf, and those that surely are greener than red. */
  const leafy = new Float64Array(levels);
  const green = new Float64Array(levels);
  let pixels = 0;
  let whitePixels = 0;
  steps.forEach((level, i) => {
    if (inside && inside[i] === 0) return;
    pixels++;
    const [red, middle, blue] = [data[i * 3] as number, data[i * 3 + 1] as number, data[i * 3 + 2] as number];
    const light = red + middle + blue;
    if (isWhite(Math.max(red, middle, blue), Math.min(red, middle, blue))) whitePixels++;
    if (light < tooDark) return;
    histogram[level] = (histogram[level] as number) + 1;
    const lead = excessGreenMinusRed(red, middle, blue);
    if (lead > leastLead) leafy[level] = (leafy[level] as number) + 1;
    if (lead > 0) green[level] = (green[level] as number) + 1;
  });
  if (pixels === 0) return undefined;
  const { threshold, basis } = thresholdOf(histogram, green);
  let plant = 0;
  leafy.forEach((count, level) => {
    if (greenAt(level) > threshold) plant += count;
  });
  return { cover: plant / pixels, threshold, basis, white: whitePixels / pixels };
}

/** Bright and without colour. Pale soil and straw have a tenth of their light more in red than in blue. */
function isWhite(most: number, least: number): boolean {
  return most >= 150 && most - least < 0.1 * most;
}

function thresholdOf(histogram: Float64Array, green: Float64Array): Pick<Cover, "threshold" | "basis"> {
  const [low, high] = thresholdLimits;
  const split = otsu(histogram);
  if (!split || greenAt(split.upperMean) < low) return { threshold: fixedThreshold, basis: "fixed" };
  const own = greenAt(split.threshold);
  // Beyond the limit Otsu splits leaves from leaves, or ground that looks green from leaves: then what lies below is no leaf.
  const beyond = (counts: Float64Array) =>
    counts.reduce((sum, count, level) => (greenAt(level) > high && level <= split.threshold ? sum + count : sum), 0);
  if (own > high && beyond(green) < beyond(histogram) / 5) return { threshold: own, basis: "otsu" };
  const threshold = Math.min(high, Math.max(low, own));
  return { threshold, basis: threshold === own ? "otsu" : "limit" };
}
