/** Which of a viewpoint's aligned photos are shown over one another, and the piece of the frame that all of them show. */
import { type Crop, commonCrop } from "./common-crop.ts";
import type { Alignment } from "./similarity.ts";
import type { SeriesPhoto } from "./viewpoint-series.ts";

export interface AlignedPhoto {
  readonly photo: SeriesPhoto;
  /** Against the viewpoint's reference photo. */
  readonly alignment: Alignment;
}

export interface SharedView {
  /** In order of time. */
  readonly photos: readonly AlignedPhoto[];
  readonly crop: Crop;
}

/** A crop narrower than this share of the frame loses what the photos were taken for. */
const narrowest = 0.7;

/** Photos that may be left out for the sake of the others: one of so many. */
const leftOut = 5;

/**
 * A photo taken a step to the side would cut away a piece of all the others; the few that stand farthest off are left out
 * while the common piece is too narrow. Undefined when fewer than two photos remain, or they have nothing in common.
 */
export function sharedView(aligned: readonly AlignedPhoto[]): SharedView | undefined {
  let photos = aligned;
  let crop = cropOf(photos);
  if ((crop?.width ?? 0) < narrowest) {
    for (const one of farthestOf(aligned)) {
      photos = photos.filter((photo) => photo !== one);
      crop = cropOf(photos);
      if ((crop?.width ?? 0) >= narrowest) break;
    }
  }
  return crop && photos.length > 1 ? { photos, crop } : undefined;
}

/** Those that show least of the frame, the least first: no more of them than may be left out. */
function farthestOf(aligned: readonly AlignedPhoto[]): readonly AlignedPhoto[] {
  return aligned
    .map((photo) => ({ photo, width: commonCrop([photo.alignment])?.width ?? 0 }))
    .sort((a, b) => a.width - b.width)
    .slice(0, Math.floor(aligned.length / leftOut))
    .map(({ photo }) => photo);
}

/** Steps of the frame in which a crop is given: most new photos then leave the old comparison copies as they are. */
const steps = 100;

function cropOf(photos: readonly AlignedPhoto[]): Crop | undefined {
  const exact = commonCrop(photos.map(({ alignment }) => alignment));
  if (!exact) return undefined;
  const inward = (from: number) => Math.ceil(from * steps - 1e-6) / steps;
  const [left, top] = [inward(exact.left), inward(exact.top)];
  const size =
    Math.floor(Math.min(exact.left + exact.width - left, exact.top + exact.height - top) * steps + 1e-6) / steps;
  return size > 0 ? { left, top, width: size, height: size } : undefined;
}
