/** A photo laid into its viewpoint's reference frame and cut to a crop: what comparisons show. */

import type { Crop } from "./common-crop.ts";
import type { RgbImage } from "./raw-image.ts";
import { type Alignment, atWidth, movement } from "./similarity.ts";

/**
 * The crop of the reference frame as the photo shows it, `width` pixels wide, by linear interpolation between the four
 * nearest pixels. Places the photo does not show take its nearest edge.
 */
export function straightened(
  photo: RgbImage,
  alignment: Alignment,
  crop: Crop,
  width: number,
  height = Math.round((width * crop.height * photo.height) / (crop.width * photo.width)),
): RgbImage {
  const { a: along, b: athwart, centreX, centreY, toX, toY } = movement(atWidth(alignment, photo.width));
  const data = new Uint8Array(width * height * 3);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      // toPhoto, without a pair of numbers made for every pixel.
      const dx = (crop.left + ((x + 0.5) / width) * crop.width) * photo.width - centreX;
      const dy = (crop.top + ((y + 0.5) / height) * crop.height) * photo.height - centreY;
      const sx = Math.max(0, Math.min(photo.width - 1, toX + along * dx - athwart * dy - 0.5));
      const sy = Math.max(0, Math.min(photo.height - 1, toY + athwart * dx + along * dy - 0.5));
      const x0 = Math.floor(sx);
      const y0 = Math.floor(sy);
      const fx = sx - x0;
      const fy = sy - y0;
      const a = (y0 * photo.width + x0) * 3;
      const b = x0 + 1 < photo.width ? a + 3 : a;
      const down = y0 + 1 < photo.height ? photo.width * 3 : 0;
      for (let k = 0; k < 3; k++) {
        const upper = (photo.data[a + k] as number) * (1 - fx) + (photo.data[b + k] as number) * fx;
        const lower = (photo.data[a + down + k] as number) * (1 - fx) + (photo.data[b + down + k] as number) * fx;
        data[(y * width + x) * 3 + k] = Math.round(upper * (1 - fy) + lower * fy);
      }
    }
  return { width, height, data };
}
