/** Draws one planned close-up of a variety. */

import sharp from "sharp";
import { camera } from "../camera.ts";
import { develop } from "../develop.ts";
import { withExif } from "../exif.ts";
import { daylight, sunDirection } from "../light.ts";
import type { Vec } from "../mesh.ts";
import { hashText } from "../random.ts";
import type { CloseUp } from "./close-up.ts";
import { focused, softGarden } from "./focus.ts";
import { Model } from "./model.ts";
import { lightUp } from "./shade.ts";
import { garden, layStage, stageGlow } from "./stages.ts";

const latitude = 54.3;
const longitude = -5.6;

/** The sun as high as it stood at that hour; whoever takes a picture close up turns until the light comes from the side. */
function sunBeside(day: string, time: string, side: number): Vec {
  const [h, m] = time.split(":").map(Number) as [number, number];
  const up = Math.min(0.86, Math.max(0.3, sunDirection(day, h - 1 + m / 60, latitude, longitude, 0)[2]));
  const flat = Math.sqrt(1 - up * up);
  return [Math.sin(side) * flat, Math.cos(side) * flat, up];
}

export async function drawCloseUp(plan: CloseUp, width = 1200, height = 900): Promise<Uint8Array> {
  const { view } = plan;
  const model = new Model();
  layStage(model, plan.stage, plan.path);
  plan.build(model);
  const side = view.sun ?? -1.9;
  const light = daylight(sunBeside(plan.day, plan.time, side), view.cloud ?? 0.3, (hashText(plan.path) % 97) / 9);
  const rise = (view.tilt * Math.PI) / 180;
  const eye: Vec = [
    view.target[0],
    view.target[1] - Math.cos(rise) * view.away,
    view.target[2] + Math.sin(rise) * view.away,
  ];
  const from = camera(eye, view.target, 40, Math.max(width, height));
  const lit = lightUp(
    { model, camera: from, light, centre: view.target, radius: view.reach ?? 3.4, ground: stageGlow[plan.stage] },
    width,
    height,
  );
  const behind = softGarden(width, height, plan.behind ?? garden, plan.path);
  const picture = focused(lit, behind, view.away - (view.nearer ?? 0.3), view.open ?? 26);
  const pixels = develop(picture, {
    exposure: (view.exposure ?? 0) - 0.3,
    warmth: view.warmth ?? 1.01,
    grain: 1.1,
    blur: 0,
    seed: plan.path,
  });
  const jpeg = await sharp(pixels, { raw: { width, height, channels: 3 } })
    .jpeg({ quality: 74, chromaSubsampling: "4:2:0", mozjpeg: true })
    .toBuffer();
  return withExif(jpeg, plan.facts);
}
