/** How published copies are made. Everything that changes a byte of them stands here and is part of their key. */
import type { QuarterTurn } from "../model.ts";

/**
 * Widths in CSS pixels times the screen densities that the pages ask for: a photo in a strip, a plain phone across (360 or
 * 375 at 2, 412 at 1.75), a sharp one (390 at 3), a desk. The first photo is what a phone's owner waits for, and a browser
 * takes the next wider copy for want of a single pixel.
 */
export const pageWidths: readonly number[] = [480, 750, 1200, 1600];

export type CopyFormat = "avif" | "webp" | "jpeg";

/**
 * WebP for nearly everybody at every width; JPEG for the rest, and only the narrowest (`makeCopies`): browsers without WebP are from
 * before 2020. AVIF saves a third more and costs 2 to 30 times the time.
 */
export const usualFormats: readonly CopyFormat[] = ["webp", "jpeg"];

/** WebP's effort 2 of 6: a third of the time of 4 for a few per cent more bytes. */
export const avifSettings = { quality: 55, effort: 2 } as const;
export const webpSettings = { quality: 70, effort: 2 } as const;
export const jpegSettings = { quality: 78, progressive: true } as const;

/** The largest picture that is opened, in pixels: phones reach 200 million. */
export const pixelLimit = 250_000_000;

/** Pictures this many times as wide as high, or more, are panoramas. */
export const panoramaRatio = 3;

/** WebP's longest side. */
export const longestSide = 16_383;

/** Raise it when the way of making copies changes in any manner that the settings above do not show. */
const recipeVersion = 3;

/** What is made of each photo. */
export interface CopyRecipe {
  /** Pixels. */
  readonly widths: readonly number[];
  /** In the order in which a page offers them. */
  readonly formats: readonly CopyFormat[];
}

/** What beside the source's own bytes decides the copies' bytes. */
export function recipeKey({ widths, formats }: CopyRecipe, credit: string | undefined, turn?: QuarterTurn): string {
  return JSON.stringify([
    recipeVersion,
    widths,
    formats,
    avifSettings,
    webpSettings,
    jpegSettings,
    longestSide,
    credit ?? "",
    ...(turn === undefined ? [] : [turn]),
  ]);
}
