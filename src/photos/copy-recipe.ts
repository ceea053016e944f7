/** How published copies are made. Everything that changes a byte of them stands here and is part of their key. */

/** Widths in CSS pixels times the screen densities that the pages ask for. */
export const pageWidths: readonly number[] = [480, 960, 1600];

export type CopyFormat = "webp" | "jpeg";

/** WebP for nearly everybody, JPEG for the rest. */
export const copyFormats: readonly CopyFormat[] = ["webp", "jpeg"];

/** Effort 2 of 6: a third of the time of 4 for a few per cent more bytes. */
export const webpSettings = { quality: 76, effort: 2 } as const;
export const jpegSettings = { quality: 78, progressive: true } as const;

/** The largest picture that is opened, in pixels: phones reach 200 million. */
export const pixelLimit = 250_000_000;

/** WebP's longest side. */
export const longestSide = 16_383;

/** Raise it when the way of making copies changes in any manner that the settings above do not show. */
const recipeVersion = 1;

/** What beside the source's own bytes decides the copies' bytes. */
export function recipeKey(widths: readonly number[]): string {
  return JSON.stringify([recipeVersion, widths, copyFormats, webpSettings, jpegSettings, longestSide]);
}
