/** Pictures as plain numbers: what every measure works on. Loading them from a file is picture-loader.ts. */

/** Three bytes a pixel (sRGB red, green, blue), row by row from the top. */
export interface RgbImage {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}

/** One byte a pixel, row by row from the top. */
export interface GreyImage {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}

/** Corners of an outline as fractions of the frame's width and height, as a bed record gives them. */
export type Outline = readonly (readonly [number, number])[];

/** Grey of an sRGB picture by the luma weights of ITU-R BT.601, rounded. */
export function greyOf(image: RgbImage): GreyImage {
  const data = new Uint8Array(image.width * image.height);
  for (let i = 0; i < data.length; i++) {
    const at = i * 3;
    data[i] = Math.round(
      0.299 * (image.data[at] as number) +
        0.587 * (image.data[at + 1] as number) +
        0.114 * (image.data[at + 2] as number),
    );
  }
  return { width: image.width, height: image.height, data };
}

/** Picture made smaller by averaging whole areas; `width` and `height` must not be larger than the picture's. */
export function shrunk(image: GreyImage, width: number, height: number): GreyImage {
  if (width > image.width || height > image.height)
    throw new RangeError(`A picture of ${image.width} x ${image.height} cannot be shrunk to ${width} x ${height}.`);
  // Rows first, then columns: each source pixel counts by the share of it that falls into the target.
  const across = spans(image.width, width);
  const narrow = new Float64Array(width * image.height);
  for (let y = 0; y < image.height; y++)
    for (let x = 0; x < width; x++) narrow[y * width + x] = spanMean(image.data, y * image.width, 1, across, x);
  const down = spans(image.height, height);
  const data = new Uint8Array(width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) data[y * width + x] = Math.round(spanMean(narrow, x, width, down, y));
  return { width, height, data };
}

/** Which stretch of `from` pixels each of `to` pixels stands for. */
interface Spans {
  readonly step: number;
  readonly first: Int32Array;
  readonly last: Int32Array;
}

function spans(from: number, to: number): Spans {
  const step = from / to;
  return {
    step,
    first: Int32Array.from({ length: to }, (_, i) => Math.floor(i * step)),
    last: Int32Array.from({ length: to }, (_, i) => Math.min(from, Math.ceil((i + 1) * step - 1e-9)) - 1),
  };
}

function spanMean(
  values: Uint8Array | Float64Array,
  at: number,
  stride: number,
  { step, first, last }: Spans,
  i: number,
): number {
  const from = i * step;
  const to = from + step;
  let sum = 0;
  for (let k = first[i] as number; k <= (last[i] as number); k++)
    sum += (values[at + k * stride] as number) * (Math.min(k + 1, to) - Math.max(k, from));
  return sum / step;
}

/** For every pixel 1 if its middle lies inside the outline (even-odd rule), else 0. */
export function insideOutline(width: number, height: number, outline: Outline): Uint8Array {
  const inside = new Uint8Array(width * height);
  const corners = outline.map(([x, y]) => [x * width, y * height] as const);
  for (let y = 0; y < height; y++) {
    const middle = y + 0.5;
    const crossings: number[] = [];
    corners.forEach(([xa, ya], i) => {
      const [xb, yb] = corners[(i + 1) % corners.length] as readonly [number, number];
      if (ya > middle !== yb > middle) crossings.push(xa + ((middle - ya) / (yb - ya)) * (xb - xa));
    });
    crossings.sort((a, b) => a - b);
    for (let k = 0; k + 1 < crossings.length; k += 2) {
      const first = Math.max(0, Math.ceil((crossings[k] as number) - 0.5));
      const last = Math.min(width - 1, Math.ceil((crossings[k + 1] as number) - 0.5) - 1);
      if (last >= first) inside.fill(1, y * width + first, y * width + last + 1);
    }
  }
  return inside;
}
