/** One photo's copies: decoded once, turned upright, in sRGB, without any metadata. */
import sharp, { type Sharp } from "sharp";
import type { QuarterTurn } from "../model.ts";
import {
  avifSettings,
  type CopyFormat,
  type CopyRecipe,
  jpegSettings,
  longestSide,
  panoramaRatio,
  pixelLimit,
  webpSettings,
} from "./copy-recipe.ts";
import { creditXmp } from "./credit-line.ts";

export interface Copy {
  readonly width: number;
  readonly height: number;
  readonly format: CopyFormat;
  readonly bytes: Buffer;
}

export interface Copies {
  /** Pixels of the largest copy. */
  readonly width: number;
  readonly height: number;
  /** "#5d7a4c": what stands in the place until the picture is there. */
  readonly placeholder: string;
  /** Narrowest first. */
  readonly copies: readonly Copy[];
}

/** Pixels of a picture that is already decoded, as 8-bit RGB. */
export interface Raster {
  readonly data: Uint8Array;
  readonly width: number;
  readonly height: number;
}

/** Each copy keeps one core busy and photos run side by side: threads inside a picture and a cache across them only cost memory. */
export function readySharp(): void {
  sharp.concurrency(1);
  sharp.cache(false);
}

/**
 * Copies of a source at the widths given, none wider than the source itself; of pixels, the widest width must be theirs or
 * more. A credit, if any, is the only metadata they carry; `turn` is by how much the file's own orientation is wrong.
 * Throws when the source cannot be decoded.
 */
export async function makeCopies(
  source: Uint8Array | Raster,
  { widths, formats }: CopyRecipe,
  { credit, turn }: { readonly credit?: string | undefined; readonly turn?: QuarterTurn | undefined } = {},
): Promise<Copies> {
  const asked = widthsFor("data" in source ? source : await shapeOf(source, turn), widths);
  const largest = "data" in source ? source : await decode(source, Math.max(...asked), turn);
  const wanted = [...new Set(asked.map((width) => Math.min(width, largest.width)))].sort((a, b) => a - b);
  const copies: Copy[] = [];
  let smallest = largest;
  for (const width of wanted) {
    const raster = width === largest.width ? largest : await narrowed(largest, width);
    if (width === wanted[0]) smallest = raster;
    for (const format of formats) {
      const isFallback = format === "jpeg" && formats.length > 1;
      if (isFallback && width !== wanted[0]) continue;
      copies.push({ width: raster.width, height: raster.height, format, bytes: await encoded(raster, format, credit) });
    }
  }
  return { width: largest.width, height: largest.height, placeholder: await dominantColour(smallest), copies };
}

/** A panorama gets the height of a picture half as high as wide, since pages show it in full height, to be pushed sideways. */
function widthsFor({ width, height }: Pick<Raster, "width" | "height">, widths: readonly number[]): readonly number[] {
  const ratio = width / height;
  return ratio < panoramaRatio ? widths : widths.map((one) => Math.min(longestSide, Math.round((one * ratio) / 2)));
}

async function shapeOf(source: Uint8Array, turn: QuarterTurn | undefined): Promise<Pick<Raster, "width" | "height">> {
  const { autoOrient } = await sharp(source, { limitInputPixels: pixelLimit }).metadata();
  const { width, height } = autoOrient;
  return turn === 90 || turn === 270 ? { width: height, height: width } : { width, height };
}

/**
 * Decodes at the scale nearest above what is wanted (JPEG and WebP shrink while they decode). Colours are taken through
 * the source's profile to sRGB; transparency gets white behind it; of an animation the first frame is taken.
 */
async function decode(source: Uint8Array, width: number, turn: QuarterTurn | undefined): Promise<Raster> {
  // "error" lets pass what decoders only warn of, such as stray bytes between segments, and stops at cut-off pictures.
  const upright = sharp(source, { failOn: "error", limitInputPixels: pixelLimit }).autoOrient();
  const { data, info } = await (turn === undefined ? upright : upright.rotate(turn))
    .resize({ width, height: longestSide, fit: "inside", withoutEnlargement: true })
    .flatten({ background: "#ffffff" })
    .toColourspace("srgb")
    .raw({ depth: "uchar" })
    .toBuffer({ resolveWithObject: true });
  return { data, width: info.width, height: info.height };
}

async function narrowed(raster: Raster, width: number): Promise<Raster> {
  const { data, info } = await fromRaster(raster).resize({ width }).raw().toBuffer({ resolveWithObject: true });
  return { data, width: info.width, height: info.height };
}

function encoded(raster: Raster, format: CopyFormat, credit: string | undefined): Promise<Buffer> {
  const plain = fromRaster(raster);
  const picture = credit === undefined ? plain : plain.withXmp(creditXmp(credit));
  if (format === "avif") return picture.avif(avifSettings).toBuffer();
  return (format === "webp" ? picture.webp(webpSettings) : picture.jpeg(jpegSettings)).toBuffer();
}

async function dominantColour(raster: Raster): Promise<string> {
  const small = await fromRaster(raster).resize({ width: 32, height: 32, fit: "fill" }).png().toBuffer();
  const { dominant } = await sharp(small).stats();
  return `#${[dominant.r, dominant.g, dominant.b].map((part) => part.toString(16).padStart(2, "0")).join("")}`;
}

function fromRaster({ data, width, height }: Raster): Sharp {
  return sharp(data, { raw: { width, height, channels: 3 } });
}
