/** Draws one planned photo: the picture's bytes and what is true about it. */

import sharp from "sharp";
import type { Jitter } from "./camera.ts";
import { camera, displace, project } from "./camera.ts";
import type { Taking } from "./develop.ts";
import { develop } from "./develop.ts";
import type { PhoneFacts } from "./exif.ts";
import { withExif } from "./exif.ts";
import { daylight, sunDirection } from "./light.ts";
import type { Vec } from "./mesh.ts";
import { Mesh } from "./mesh.ts";
import { hashText } from "./random.ts";
import type { Rendered } from "./render.ts";
import { render } from "./render.ts";
import type { SceneDesign } from "./scenes/scene-design.ts";
import { dayOfYear, yearAhead } from "./scenes/scene-design.ts";
import type { Fineness } from "./shade.ts";

export interface PhotoPlan {
  /** Below photos/. */
  readonly path: string;
  readonly design: SceneDesign;
  /** ISO day and wall clock "18:15:03". */
  readonly day: string;
  readonly time: string;
  /** 0 blue sky, 1 overcast. */
  readonly cloud: number;
  readonly jitter: Jitter;
  readonly taking: Taking;
  readonly facts: PhoneFacts;
  /** Another place to stand than the viewpoint: a close-up. */
  readonly closeUp?: { readonly eye: Vec; readonly target: Vec; readonly view: number } | undefined;
  readonly quality: number;
}

/** What is true about a drawn photo; pixels are those of the upright frame. */
export interface PhotoTruth {
  readonly width: number;
  readonly height: number;
  /** Share of the bed's outline that shows plant, 0 to 1; undefined for close-ups. */
  readonly cover?: number;
  readonly shiftX: number;
  readonly shiftY: number;
  readonly scale: number;
  readonly rotationDeg: number;
  /** Foot and top of the marked stake. */
  readonly stakeFootPx?: readonly [number, number];
  readonly stakeTopPx?: readonly [number, number];
}

/** The demo garden lies near here; the drawn sun needs no better. */
const latitude = 54.3;
const longitude = -5.6;

export async function drawPhoto(plan: PhotoPlan, fineness: Fineness): Promise<{ jpeg: Uint8Array; truth: PhotoTruth }> {
  const { design } = plan;
  const { width, height } = design;
  const year = Number(plan.day.slice(0, 4));
  const mesh = new Mesh();
  design.build(mesh, {
    day: plan.day,
    year,
    season: dayOfYear(plan.day) + yearAhead(year),
    wet: Math.min(1, plan.cloud * 0.9),
  });
  const [h, m] = plan.time.split(":").map(Number) as [number, number];
  // The garden's clock is an hour ahead of UTC all season.
  const sun = sunDirection(plan.day, h - 1 + m / 60, latitude, longitude, design.heading);
  const stand = plan.closeUp ?? { eye: design.eye, target: design.target, view: design.view };
  const from = camera(stand.eye, stand.target, stand.view, Math.max(width, height));
  const light = daylight(sun, plan.cloud, (hashText(plan.path) % 997) / 31);
  const picture = render(
    { mesh, camera: from, light, centre: design.centre, radius: design.radius, underFilm: design.underFilm },
    plan.jitter,
    width,
    height,
    fineness,
  );
  const pixels = develop(picture, plan.taking);
  const place = (point: Vec): [number, number] | undefined => {
    const at = project(from, point, width, height);
    return at && displace(at[0], at[1], width, height, plan.jitter);
  };
  const round = (p: readonly [number, number]): [number, number] => [
    Math.round(p[0] * 100) / 100,
    Math.round(p[1] * 100) / 100,
  ];
  const outline = frameOutline(design).map(([x, y]) => displace(x * width, y * height, width, height, plan.jitter));
  const stakeFoot = design.stake && place(design.stake.foot);
  const stakeTop = design.stake && place(design.stake.top);
  const truth: PhotoTruth = {
    width,
    height,
    ...(plan.closeUp ? {} : { cover: Math.round(plantShare(picture, outline) * 10000) / 10000 }),
    ...plan.jitter,
    ...(stakeFoot && stakeTop && !plan.closeUp ? { stakeFootPx: round(stakeFoot), stakeTopPx: round(stakeTop) } : {}),
  };
  return { jpeg: await phoneJpeg(pixels, width, height, plan), truth };
}

/**
 * The outline of a viewpoint's bed in fractions of the exact frame, cut to the frame, three decimals as a person would
 * note it.
 */
export function frameOutline(design: SceneDesign): [number, number][] {
  const from = camera(design.eye, design.target, design.view, Math.max(design.width, design.height));
  return design.outline.map((point) => {
    const at = project(from, point, design.width, design.height);
    if (!at) throw new Error(`The outline of ${design.bed} reaches behind the camera.`);
    const fraction = (value: number): number => Math.round(Math.min(1, Math.max(0, value)) * 1000) / 1000;
    return [fraction(at[0] / design.width), fraction(at[1] / design.height)];
  });
}

/** Share of the pixels inside a polygon that are at least half plant. */
function plantShare(picture: Rendered, polygon: readonly (readonly [number, number])[]): number {
  let inside = 0;
  let plant = 0;
  for (let y = 0; y < picture.height; y++)
    for (let x = 0; x < picture.width; x++) {
      let within = false;
      for (let i = 0, j = polygon.length - 1; i < polygon.length; j = i++) {
        const [xi, yi] = polygon[i] as readonly [number, number];
        const [xj, yj] = polygon[j] as readonly [number, number];
        if (yi > y + 0.5 !== yj > y + 0.5 && x + 0.5 < ((xj - xi) * (y + 0.5 - yi)) / (yj - yi) + xi) within = !within;
      }
      if (!within) continue;
      inside++;
      if ((picture.plant[y * picture.width + x] as number) >= 0.5) plant++;
    }
  return inside === 0 ? 0 : plant / inside;
}

/** Turns the upright picture as the phone was held, packs it and writes the EXIF block. */
async function phoneJpeg(pixels: Uint8Array, width: number, height: number, plan: PhotoPlan): Promise<Uint8Array> {
  const held = { 1: 0, 3: 180, 6: 270, 8: 90 }[plan.facts.orientation] ?? 0;
  const jpeg = await sharp(pixels, { raw: { width, height, channels: 3 } })
    .rotate(held)
    .jpeg({ quality: plan.quality, chromaSubsampling: "4:2:0", mozjpeg: true })
    .toBuffer();
  return withExif(jpeg, plan.facts);
}
