/** From a photo's bytes to plain pixels: the one place where measures meet the decoder. */

import sharp from "sharp";
import type { GreyImage, RgbImage } from "./raw-image.ts";

/**
 * The photo upright (EXIF orientation applied), in sRGB, reduced to `width` pixels; a smaller photo keeps its size.
 * Reduced by area-like shrink on load, so that noise and JPEG blocks average out before anything is measured.
 */
export async function loadRgb(bytes: Uint8Array, width: number): Promise<RgbImage> {
  const { data, info } = await sharp(bytes)
    .autoOrient()
    .resize({ width, withoutEnlargement: true })
    .toColourspace("srgb")
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  if (info.channels === 3) return { width: info.width, height: info.height, data };
  // A grey photo has one channel: give it three equal ones.
  const rgb = new Uint8Array(info.width * info.height * 3);
  for (let i = 0; i < info.width * info.height; i++) rgb.fill(data[i * info.channels] as number, i * 3, i * 3 + 3);
  return { width: info.width, height: info.height, data: rgb };
}

/** The same in grey: luminance of the sRGB picture. */
export async function loadGrey(bytes: Uint8Array, width: number): Promise<GreyImage> {
  const { data, info } = await sharp(bytes)
    .autoOrient()
    .resize({ width, withoutEnlargement: true })
    .toColourspace("b-w")
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, data };
}
