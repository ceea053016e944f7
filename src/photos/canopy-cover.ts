/**
 * Canopy cover: which share of a bed's outline in a photo is green plant, by Excess Green and Otsu's threshold.
 *
 * It sees green canopy only: open flowers and ripe fruit do not count. The threshold drifts with the light and with what grows: on
 * bare or overgrown beds Otsu's method still splits the picture, somewhere inside the soil or inside the leaves. So its threshold is
 * only taken within the limits between which soil ends and leaves begin, and beyond them where what lies below is redder than it is
 * green (Excess Red) or a heap of its own in the histogram, as ground is that a camera sees too green. Where colour cannot tell leaf
 * from ground, that is said instead. `npm run truth -- cover` prints the errors kind by kind.
 */

import { type Mode, modesOf } from "./cover-modes.ts";
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
  /** Share that is light and nearly without colour, and of all the share that is so and a little green. */
  readonly pale: number;
  readonly palelyGreen: number;
  /** Colour alone does not tell leaf from ground here: red leaves or flowers, grey leaves or painted boards. */
  readonly isUnsure: boolean;
}

/** Cover below which, and white from which, plants lie under something white and nobody sees how many (common practice). */
const underWhite = { cover: 0.1, white: 0.5 } as const;

/** Shares from which all of the picture is pale, and a part of that a little green: leaves seen through fleece or net. */
const throughWhite = { pale: 0.9, palelyGreen: 0.05 } as const;

/** Whether fleece, net or snow lies over the outline, so that its green says nothing. */
export function isCovered({ cover, white, pale, palelyGreen }: Cover): boolean {
  const isThrough = pale >= throughWhite.pale && palelyGreen >= throughWhite.palelyGreen;
  return isThrough || (cover < underWhite.cover && white >= underWhite.white);
}

/**
 * Width in pixels at which photos should be loaded to be measured: grain and JPEG colour blocks average out, leaves
 * stay.
 */
export const coverWidth = 600;

/** Threshold where a photo cannot give its own. */
const fixedThreshold = 0.1;

/**
 * Limits for the photo's own threshold, as Excess Green: grey boards, soil and straw stay below 0.06 in nearly all
 * light, and all but the greyest and the reddest leaves are above 0.12 (common practice; the demo garden's drawn truth
 * agrees).
 */
const thresholdLimits = [0.06, 0.12] as const;

/** Excess Green minus Excess Red below which a pixel is straw, yellow flower or warm soil, however green (the demo's drawn truth agrees). */
const leastLead = -0.06;

/**
 * Of pale green heaps, by eye like the colours of the truth's pictures: the greenest that ground becomes under a green light, how
 * little one kind of thing spreads, how much of the picture ground is at least, and the lead below which it is no grey leaf and
 * above which it is surely one.
 */
const mostGround = 0.3;
const oneKind = 0.05;
const leastGround = 0.15;
const leastLeafLead = 0.03;
const surelyLeaf = 0.12;

/** Share of purple from which it may be leaves and the green is not all that grows: what may be told is half of a told change. */
const mostPurple = 0.05;

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
  /** Of these the pixels that may be leaf, those that surely are greener than red, and by how much all of them are together. */
  const leafy = new Float64Array(levels);
  const green = new Float64Array(levels);
  const leads = new Float64Array(levels);
  let pixels = 0;
  let whitePixels = 0;
  let palePixels = 0;
  let palelyGreenPixels = 0;
  let purplePixels = 0;
  steps.forEach((level, i) => {
    if (inside && inside[i] === 0) return;
    pixels++;
    const [red, middle, blue] = [data[i * 3] as number, data[i * 3 + 1] as number, data[i * 3 + 2] as number];
    const light = red + middle + blue;
    const [most, least] = [Math.max(red, middle, blue), Math.min(red, middle, blue)];
    if (isWhite(most, least)) whitePixels++;
    if (isPale(most, least)) {
      palePixels++;
      if (greenAt(level) > leastPaleGreen) palelyGreenPixels++;
    }
    if (light < tooDark) return;
    if (isPurple(red, middle, blue)) purplePixels++;
    histogram[level] = (histogram[level] as number) + 1;
    const lead = excessGreenMinusRed(red, middle, blue);
    if (lead > leastLead) leafy[level] = (leafy[level] as number) + 1;
    if (lead > 0) green[level] = (green[level] as number) + 1;
    leads[level] = (leads[level] as number) + lead;
  });
  if (pixels === 0) return undefined;
  const modes = modesOf(histogram, leads);
  const { threshold, basis } = thresholdOf(histogram, green, modes);
  let plant = 0;
  leafy.forEach((count, level) => {
    if (greenAt(level) > threshold) plant += count;
  });
  return {
    cover: plant / pixels,
    threshold,
    basis,
    white: whitePixels / pixels,
    pale: palePixels / pixels,
    palelyGreen: palelyGreenPixels / pixels,
    isUnsure: purplePixels / pixels >= mostPurple || isLeafOrBoard(modes),
  };
}

/** Bright and without colour. Pale soil and straw have a tenth of their light more in red than in blue. */
function isWhite(most: number, least: number): boolean {
  return most >= 150 && most - least < 0.1 * most;
}

/** As leaves and soil look through a white net: lighter than a leaf is by itself. */
function isPale(most: number, least: number): boolean {
  return most >= 160 && most - least < 0.18 * most;
}

/** Excess Green from which something pale is leaf behind white, and no pale soil or snow. */
const leastPaleGreen = 0.04;

/** Red as beet, red lettuce and purple flowers are: no soil, brick or straw has as much blue as green. */
function isPurple(red: number, green: number, blue: number): boolean {
  return blue > 0.95 * green && red - green > 0.12 * (red + green + blue);
}

/** Pale green of one kind: ground under a green light, a painted board, or grey leaves. Soil without a cast beside it settles which. */
function paleGreen(modes: readonly Mode[]): readonly Mode[] {
  const [low] = thresholdLimits;
  if (modes.some(({ green }) => green < low)) return [];
  return modes.filter(({ green, spread, share }) => green < mostGround && spread < oneKind && share >= leastGround);
}

/** Such a heap whose pixels are as red as green is ground; alone in the picture, it has to be redder to be sure. */
function tintedGround(modes: readonly Mode[]): Mode | undefined {
  return paleGreen(modes).findLast((mode) => mode.lead < (mode === modes.at(-1) ? 0 : leastLeafLead));
}

function isLeafOrBoard(modes: readonly Mode[]): boolean {
  return tintedGround(modes) === undefined && paleGreen(modes).some(({ lead }) => lead < surelyLeaf);
}

function thresholdOf(
  histogram: Float64Array,
  green: Float64Array,
  modes: readonly Mode[],
): Pick<Cover, "threshold" | "basis"> {
  const [low, high] = thresholdLimits;
  const split = otsu(histogram);
  if (!split || greenAt(split.upperMean) < low) return { threshold: fixedThreshold, basis: "fixed" };
  const own = greenAt(split.threshold);
  const ground = tintedGround(modes);
  if (ground !== undefined) {
    // The limits are made for soil in white light; ground that is green itself takes them along.
    const within = ground !== modes.at(-1) && own > ground.green + low;
    return within ? { threshold: own, basis: "otsu" } : { threshold: ground.green + high, basis: "limit" };
  }
  // Beyond the limit Otsu splits leaves from leaves, or ground that looks green from leaves: then what lies below is no leaf.
  const beyond = (counts: Float64Array) =>
    counts.reduce((sum, count, level) => (greenAt(level) > high && level <= split.threshold ? sum + count : sum), 0);
  if (own > high && beyond(green) < beyond(histogram) / 5) return { threshold: own, basis: "otsu" };
  // Grey leaves beside green ones lie just above the soil: where a valley parts them from it, it does so better than the limit.
  const soil = modes.findLast((mode) => mode.green < low && mode.spread < oneKind && mode.share >= leastGround);
  if (own > high && soil !== undefined && soil !== modes.at(-1) && greenAt(soil.end) < high)
    return { threshold: Math.max(low, greenAt(soil.end)), basis: "otsu" };
  const threshold = Math.min(high, Math.max(low, own));
  return { threshold, basis: threshold === own ? "otsu" : "limit" };
}
