/** Shift, scale and turn between two photos of one viewpoint, and the plane geometry that goes with them. */

/**
 * How a photo's frame lies against its reference frame: a point p of the reference is shown in the photo at
 * centre + shift + scale * R(rotationDeg) * (p - centre). Pixels of a frame `width` wide, y down, rotation clockwise.
 */
export interface Alignment {
  readonly width: number;
  readonly height: number;
  readonly shiftX: number;
  readonly shiftY: number;
  readonly scale: number;
  readonly rotationDeg: number;
}

export type Point = readonly [x: number, y: number];

export const unmoved = (width: number, height: number): Alignment => ({
  width,
  height,
  shiftX: 0,
  shiftY: 0,
  scale: 1,
  rotationDeg: 0,
});

/** Where the photo shows a point of the reference frame. */
export function toPhoto(alignment: Alignment, [x, y]: Point): Point {
  const { a, b, centreX, centreY, toX, toY } = movement(alignment);
  const dx = x - centreX;
  const dy = y - centreY;
  return [toX + a * dx - b * dy, toY + b * dx + a * dy];
}

/** The numbers of `toPhoto`, for those who ask about every pixel and cannot afford a sine for each. */
export function movement({ width, height, shiftX, shiftY, scale, rotationDeg }: Alignment) {
  const angle = (rotationDeg * Math.PI) / 180;
  const centreX = width / 2;
  const centreY = height / 2;
  return {
    a: Math.cos(angle) * scale,
    b: Math.sin(angle) * scale,
    centreX,
    centreY,
    /** Where the photo shows the centre. */
    toX: centreX + shiftX,
    toY: centreY + shiftY,
  };
}

/** Which point of the reference frame a photo's point shows. */
export function toReference(alignment: Alignment, point: Point): Point {
  return toPhoto(inverse(alignment), point);
}

/** The same movement seen from the photo. */
export function inverse(alignment: Alignment): Alignment {
  const angle = (-alignment.rotationDeg * Math.PI) / 180;
  const a = Math.cos(angle) / alignment.scale;
  const b = Math.sin(angle) / alignment.scale;
  return {
    ...alignment,
    shiftX: -(a * alignment.shiftX - b * alignment.shiftY),
    shiftY: -(b * alignment.shiftX + a * alignment.shiftY),
    scale: 1 / alignment.scale,
    rotationDeg: -alignment.rotationDeg,
  };
}

/** First from reference to a middle photo, then from there to another: the way from the reference to the other. */
export function chained(first: Alignment, second: Alignment): Alignment {
  const centre = toPhoto(second, toPhoto(first, [first.width / 2, first.height / 2]));
  return {
    width: first.width,
    height: first.height,
    shiftX: centre[0] - first.width / 2,
    shiftY: centre[1] - first.height / 2,
    scale: first.scale * second.scale,
    rotationDeg: first.rotationDeg + second.rotationDeg,
  };
}

/** The same movement in pixels of a frame of another width. */
export function atWidth(alignment: Alignment, width: number): Alignment {
  const k = width / alignment.width;
  return {
    ...alignment,
    width,
    height: alignment.height * k,
    shiftX: alignment.shiftX * k,
    shiftY: alignment.shiftY * k,
  };
}

/** Pairs of points: in the reference frame and in the photo. */
export interface Match {
  readonly from: Point;
  readonly to: Point;
}

/**
 * The movement that fits pairs of points best, by least squares: the closed solution for a plane similarity (Umeyama,
 * IEEE Trans. PAMI 13(4):376-380, 1991, in two dimensions). Needs two pairs of different points.
 */
export function fitAlignment(matches: readonly Match[], width: number, height: number): Alignment | undefined {
  const n = matches.length;
  const mean = (pick: (m: Match) => number): number => matches.reduce((sum, m) => sum + pick(m), 0) / n;
  const fx = mean((m) => m.from[0]);
  const fy = mean((m) => m.from[1]);
  const tx = mean((m) => m.to[0]);
  const ty = mean((m) => m.to[1]);
  let along = 0;
  let across = 0;
  let spread = 0;
  for (const { from, to } of matches) {
    const ax = from[0] - fx;
    const ay = from[1] - fy;
    const bx = to[0] - tx;
    const by = to[1] - ty;
    along += ax * bx + ay * by;
    across += ax * by - ay * bx;
    spread += ax * ax + ay * ay;
  }
  if (!(spread > 1e-9)) return undefined;
  const a = along / spread;
  const b = across / spread;
  const scale = Math.hypot(a, b);
  if (!(scale > 1e-6)) return undefined;
  const cx = width / 2 - fx;
  const cy = height / 2 - fy;
  return {
    width,
    height,
    shiftX: tx + a * cx - b * cy - width / 2,
    shiftY: ty + b * cx + a * cy - height / 2,
    scale,
    rotationDeg: (Math.atan2(b, a) * 180) / Math.PI,
  };
}
