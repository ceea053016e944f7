/**
 * Draws the demo garden's photos, the same bytes every time; README.md beside this file says what they show.
 *
 *   node draw-demo-photos.ts                                    all, into demo-content/photos, with truth.json beside them
 *   node draw-demo-photos.ts --close-ups [WORD]                 the close-ups of varieties alone, or those with a word in their path
 *   node draw-demo-photos.ts --photo PATH FILE                  one of them, named as it is below photos/, into a file
 *   node draw-demo-photos.ts --megapixels 12 --count 200 DIR    large photos for the bench, into DIR
 */

import { mkdir, readdir, rm, writeFile } from "node:fs/promises";
import { availableParallelism } from "node:os";
import { dirname, join } from "node:path";
import { parseArgs } from "node:util";
import { isMainThread, parentPort, Worker } from "node:worker_threads";
import { drawBenchPhotos } from "./bench-photos.ts";
import type { CloseUp } from "./closeups/close-up.ts";
import { drawCloseUp } from "./closeups/draw-close-up.ts";
import { closeUps } from "./closeups/list.ts";
import type { PhotoTruth } from "./draw.ts";
import { drawPhoto, frameOutline } from "./draw.ts";
import { photoPlans, series } from "./schedule.ts";
import { fine } from "./shade.ts";

const photosFolder = join(import.meta.dirname, "../../demo-content/photos");

/** A worker draws the plan whose number it is sent, writes it and answers with its truth. */
function work(): void {
  const plans = photoPlans();
  parentPort?.on("message", async (index: number) => {
    const plan = plans[index];
    if (!plan) throw new Error(`There is no photo number ${index}.`);
    const { jpeg, truth } = await drawPhoto(plan, fine);
    const path = join(photosFolder, plan.path);
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, jpeg);
    parentPort?.postMessage({ index, truth, bytes: jpeg.length });
  });
}

async function drawAll(): Promise<void> {
  const plans = photoPlans();
  const wanted = new Set([...plans, ...closeUps].map((plan) => plan.path));
  await mkdir(photosFolder, { recursive: true });
  for (const file of await readdir(photosFolder, { recursive: true }))
    if (file.endsWith(".jpg") && !wanted.has(file)) await rm(join(photosFolder, file));
  const truths = new Map<string, PhotoTruth>();
  let next = 0;
  let bytes = 0;
  await Promise.all(
    Array.from({ length: Math.min(plans.length, availableParallelism()) }, () => {
      const worker = new Worker(new URL(import.meta.url));
      return new Promise<void>((resolve, reject) => {
        const give = (): void => {
          if (next < plans.length) worker.postMessage(next++);
          else void worker.terminate().then(() => resolve());
        };
        worker.on("error", reject);
        worker.on("message", (done: { index: number; truth: PhotoTruth; bytes: number }) => {
          const path = plans[done.index]?.path as string;
          truths.set(path, done.truth);
          bytes += done.bytes;
          console.log(`${truths.size} of ${plans.length}  ${path}  ${Math.round(done.bytes / 1024)} KiB`);
          give();
        });
        give();
      });
    }),
  );
  const truth = {
    about:
      "What is true about the drawn photos, in pixels of the upright frame. A point p of the viewpoint's own frame is shown at centre + shift + scale * R(rotationDeg, clockwise) * (p - centre). " +
      "cover is the share of the bed's outline that shows plant. wrote is what the phone put into the file. Written by scripts/demo-photos/draw-demo-photos.ts.",
    viewpoints: Object.fromEntries(
      series.map(({ design }) => [
        `${design.bed}/${design.viewpoint}`,
        {
          width: design.width,
          height: design.height,
          looking: design.heading,
          outline: frameOutline(design),
          ...(design.stake ? { stakeCm: design.stake.lengthCm } : {}),
        },
      ]),
    ),
    photos: Object.fromEntries(plans.map((plan) => [plan.path, { ...truths.get(plan.path), wrote: plan.facts }])),
  };
  await writeFile(join(photosFolder, "truth.json"), `${JSON.stringify(truth, undefined, 1)}\n`);
  console.log(`${plans.length} photos, ${(bytes / 1024 / 1024).toFixed(2)} MiB`);
}

/** Draws close-ups one after the other, with the words beside them. */
async function drawCloseUps(plans: readonly CloseUp[]): Promise<void> {
  let bytes = 0;
  for (const [index, plan] of plans.entries()) {
    const jpeg = await drawCloseUp(plan);
    const path = join(photosFolder, plan.path);
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, jpeg);
    await writeFile(path.replace(/\.jpg$/, ".md"), plan.sidecar);
    bytes += jpeg.length;
    console.log(`${index + 1} of ${plans.length}  ${plan.path}  ${Math.round(jpeg.length / 1024)} KiB`);
  }
  console.log(`${plans.length} close-ups, ${(bytes / 1024 / 1024).toFixed(2)} MiB`);
}

async function drawOne(photo: string, file: string): Promise<void> {
  const close = closeUps.find(({ path }) => path === photo);
  if (close !== undefined) {
    await writeFile(file, await drawCloseUp(close));
    return;
  }
  const plan = photoPlans().find(({ path }) => path === photo);
  if (plan === undefined)
    throw new Error(`No photo is called ${photo}; truth.json and closeups/list.ts name them all.`);
  await writeFile(file, (await drawPhoto(plan, fine)).jpeg);
}

if (!isMainThread) work();
else {
  const { values, positionals } = parseArgs({
    options: {
      megapixels: { type: "string" },
      count: { type: "string" },
      photo: { type: "string" },
      "close-ups": { type: "boolean" },
    },
    allowPositionals: true,
  });
  const [dir] = positionals;
  if (values["close-ups"]) await drawCloseUps(closeUps.filter(({ path }) => path.includes(dir ?? "")));
  else if (values.photo !== undefined) await drawOne(values.photo, dir ?? "photo.jpg");
  else if (dir) await drawBenchPhotos(dir, Number(values.count ?? 200), Number(values.megapixels ?? 12));
  else {
    await drawAll();
    await drawCloseUps(closeUps);
  }
}
