/**
 * Large photos for the bench: the demo photos blown up, cropped differently each time, with fresh grain and fresh
 * dates.
 */

import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import sharp from "sharp";
import { withExif } from "./exif.ts";
import { between, randomFrom } from "./random.ts";
import { photoPlans } from "./schedule.ts";

const photosFolder = join(import.meta.dirname, "../../demo-content/photos");

/** Writes `count` JPEGs of about `megapixels` million pixels, 4 by 3, into `dir`; the same bytes every time. */
export async function drawBenchPhotos(dir: string, count: number, megapixels: number): Promise<void> {
  const width = Math.round(Math.sqrt((megapixels * 4_000_000) / 3) / 16) * 16;
  const height = (width * 3) / 4;
  const sources = photoPlans().filter((plan) => plan.facts.orientation === 1 && !plan.closeUp);
  const grain = await grainTile("bench grain", 512);
  await mkdir(dir, { recursive: true });
  const start = Date.parse("2026-03-01T08:00:00Z");
  for (let i = 0; i < count; i++) {
    const random = randomFrom(`bench ${i}`);
    const source = sources[i % sources.length]?.path as string;
    const keep = between(random, 0.72, 0.95);
    const crop = { width: Math.round(1200 * keep), height: Math.round(900 * keep) };
    const left = Math.floor(random() * (1200 - crop.width));
    const top = Math.floor(random() * (900 - crop.height));
    const jpeg = await sharp(join(photosFolder, source))
      .extract({ left, top, ...crop })
      .resize(width, height, { kernel: "cubic", fit: "fill" })
      .modulate({ brightness: between(random, 0.92, 1.08), hue: Math.round(between(random, -5, 5)) })
      .composite([{ input: grain.pixels, raw: grain.raw, tile: true, blend: "soft-light" }])
      .jpeg({ quality: 88 })
      .toBuffer();
    const taken = new Date(start + i * 5_400_000 + Math.floor(random() * 3_000_000)).toISOString();
    const stamp = `${taken.slice(0, 10).replaceAll("-", ":")} ${taken.slice(11, 19)}`;
    const name = `IMG_${stamp.replaceAll(":", "").replace(" ", "_")}.jpg`;
    await writeFile(
      join(dir, name),
      withExif(jpeg, {
        taken: stamp,
        offset: i % 5 === 0 ? undefined : "+00:00",
        orientation: i % 7 === 0 ? 6 : 1,
        position: i % 3 === 0 ? { latitude: 54.3, longitude: -5.6, altitude: 20 } : undefined,
      }),
    );
    console.log(`${i + 1} of ${count}  ${name}`);
  }
}

async function grainTile(
  seed: string,
  size: number,
): Promise<{ pixels: Buffer; raw: { width: number; height: number; channels: 4 } }> {
  const random = randomFrom(seed);
  const pixels = Buffer.alloc(size * size * 4);
  for (let i = 0; i < size * size; i++) {
    const grey = Math.round(128 + 46 * (random() + random() + random() - 1.5));
    pixels.fill(grey, i * 4, i * 4 + 3);
    pixels[i * 4 + 3] = 255;
  }
  return { pixels, raw: { width: size, height: size, channels: 4 } };
}
