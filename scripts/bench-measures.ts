/**
 * `node scripts/bench-measures.ts`: cover and alignment in the demo's photos against the truth that the script which
 * drew them wrote down. No times: the same figures on any machine. The tests hold the same goals.
 */
import { readFile } from "node:fs/promises";
import path from "node:path";
import { alignerTo, alignmentWidth } from "../src/photos/align.ts";
import { canopyCover, coverWidth } from "../src/photos/canopy-cover.ts";
import { loadGrey, loadRgb } from "../src/photos/picture-loader.ts";
import { type Alignment, chained, inverse } from "../src/photos/similarity.ts";
import { demoPhotos, photosFolder, viewpointNames } from "../tests/photo-measures/demo-truth.ts";

const photos = demoPhotos();
await covers();
await alignments();

async function covers(): Promise<void> {
  const errors: number[] = [];
  for (const { file, outline, truth } of photos) {
    const found = canopyCover(await loadRgb(await readFile(path.join(photosFolder, file)), coverWidth), outline);
    errors.push(100 * Math.abs((found?.cover ?? 1) - (truth.cover ?? 0)));
  }
  row("cover, photos compared", String(errors.length));
  row("cover, mean error", `${mean(errors).toFixed(2)} points`, "≤ 3");
  row("cover, worst error", `${Math.max(...errors).toFixed(2)} points`, "≤ 8");
}

async function alignments(): Promise<void> {
  const apart: number[] = [];
  let notAligned = 0;
  for (const viewpoint of viewpointNames()) {
    const [reference, ...others] = photos.filter((photo) => photo.viewpoint === viewpoint);
    if (reference === undefined) continue;
    const grey = async (file: string) => loadGrey(await readFile(path.join(photosFolder, file)), alignmentWidth);
    const align = alignerTo(await grey(reference.file));
    for (const photo of others) {
      const found = align(await grey(photo.file));
      if (found === undefined) notAligned += 1;
      else apart.push(farthest(found, chained(inverse(reference.truth), photo.truth)));
    }
  }
  const frames = apart.length + notAligned;
  const good = apart.filter((pixels) => pixels <= 2).length;
  row(
    "alignment, frames within 2 pixels at 1000 across",
    `${good} of ${frames}: ${((100 * good) / frames).toFixed(1)} %`,
    "≥ 95 %",
  );
  row(
    "alignment, mean and worst of those aligned",
    `${mean(apart).toFixed(2)} and ${Math.max(...apart).toFixed(2)} pixels`,
  );
  row("alignment, said to be not aligned", String(notAligned));
}

/** How far apart two movements put the corners and the middle of a frame 1000 pixels wide. */
function farthest(found: Alignment, truth: Alignment): number {
  const corners = [0, 0.5, 1].flatMap((x) => [0, 0.5, 1].map((y) => [x, y] as const));
  return Math.max(
    ...corners.map(([x, y]) => {
      const [a, b] = [found, truth].map((movement) => moved(movement, x, y));
      return 1000 * Math.hypot((a?.[0] ?? 0) - (b?.[0] ?? 0), (a?.[1] ?? 0) - (b?.[1] ?? 0));
    }),
  );
}

/** In widths of the frame. */
function moved(
  { width, height, shiftX, shiftY, scale, rotationDeg }: Alignment,
  x: number,
  y: number,
): readonly number[] {
  const angle = (rotationDeg * Math.PI) / 180;
  const [dx, dy] = [(x - 0.5) * width, (y - 0.5) * height];
  return [
    (width / 2 + shiftX + scale * (Math.cos(angle) * dx - Math.sin(angle) * dy)) / width,
    (height / 2 + shiftY + scale * (Math.sin(angle) * dx + Math.cos(angle) * dy)) / width,
  ];
}

function mean(numbers: readonly number[]): number {
  return numbers.reduce((sum, one) => sum + one, 0) / Math.max(1, numbers.length);
}

function row(what: string, figure: string, goal?: string): void {
  console.log(`${what.padEnd(60)} ${figure}${goal === undefined ? "" : `   (goal ${goal})`}`);
}
