/**
 * The cut of a photo that other programs show where a page's address is passed on: 1200 by 630 pixels is what they lay a
 * card out for (common practice); of a smaller photo as much as it has.
 */

/** Part of the file's name, which browsers keep for ever: raise it when cards are cut in another way. */
const CUT = 1;

const WIDTH = 1200;
const HEIGHT = 630;

export interface SharePicture {
  readonly src: string;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
}

/** `src` is the JPEG copy, `width` and `height` those of the largest; undefined for a picture of another kind. The file is made by place-shared-pictures.ts. */
export function shareOf({ src, width, height }: SharePicture): SharePicture | undefined {
  if (!/-\d+\.jpg$/u.test(src)) return undefined;
  const scale = Math.min(1, width / WIDTH, height / HEIGHT);
  return {
    src: src.replace(/-\d+\.jpg$/u, `-card${CUT}.jpg`),
    width: Math.round(WIDTH * scale),
    height: Math.round(HEIGHT * scale),
  };
}
