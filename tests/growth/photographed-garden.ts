/** A small garden on disk whose one bed is photographed from a gate: drawn photos with a known shift and a known cover. */
import { mkdir, mkdtemp, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import sharp from "sharp";
import type { Garden } from "../../src/model.ts";
import { openPhotoFolder, readPhotos } from "../../src/photos/index.ts";
import { openRecordsFolder, readRecords } from "../../src/records/index.ts";
import { growGarden } from "../../src/timeline/index.ts";

export const today = "2026-06-20";

/** The bed in the frame, as fractions. */
export const outline = [
  [0.2, 0.4],
  [0.8, 0.4],
  [0.8, 0.9],
  [0.2, 0.9],
] as const;

export interface Shot {
  /** "2026-05-16" */
  readonly day: string;
  /** Share of the bed that is green. */
  readonly cover: number;
  /** Pixels by which the picture is shifted. */
  readonly shift?: readonly [number, number];
  /** Degrees clockwise. */
  readonly turn?: number;
  /** Share by which all light is dimmed or raised. */
  readonly light?: number;
  /** Top of the plants as somebody marked it, fractions of the photo. */
  readonly top?: readonly [number, number];
  readonly isPrivate?: boolean;
  /** Shows something else: cannot be laid over the others. */
  readonly elsewhere?: boolean;
}

export const width = 800;
export const height = 600;

export const shots: readonly Shot[] = [
  { day: "2025-06-21", cover: 0.5, shift: [4, -3] },
  { day: "2026-04-18", cover: 0, shift: [0, 0] },
  { day: "2026-05-02", cover: 0.1, shift: [9, 5], light: 0.8 },
  { day: "2026-05-16", cover: 0.2, shift: [-7, 6], turn: 0.8 },
  { day: "2026-05-23", cover: 0.3, shift: [2, 2], isPrivate: true },
  { day: "2026-06-06", cover: 0.4, elsewhere: true },
  { day: "2026-06-13", cover: 0.6, shift: [6, -8], turn: -0.6, light: 1.15 },
  // Half the stake's length above its foot, a pixel higher since the picture lies a pixel above the earliest one.
  { day: "2026-06-19", cover: 0.8, shift: [-5, -4], top: [0.7, 0.65 - 1 / 600] },
];

export function pathOf({ day }: Shot): string {
  return `photos/long-bed/gate/IMG_${day.replaceAll("-", "")}_101500.jpg`;
}

/** The same numbers every time (a linear congruential generator, Numerical Recipes' constants). */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

/** Stones and boards in greys and browns around a bed of soil, with rows of leaf from the left as far as the cover goes. */
export async function drawShot({ cover, shift = [0, 0], turn = 0, light = 1, elsewhere }: Shot): Promise<Buffer> {
  const next = numbers(elsewhere === true ? 77 : 5);
  const tone = (low: number, high: number) => Math.round(Math.min(255, (low + next() * (high - low)) * light));
  const stones = Array.from({ length: 900 }, () => {
    const grey = tone(70, 210);
    const colour = `rgb(${grey},${Math.round(grey * 0.9)},${Math.round(grey * 0.8)})`;
    const [x, y] = [next() * (width + 200) - 100, next() * (height + 200) - 100];
    return `<rect x="${x.toFixed(1)}" y="${y.toFixed(1)}" width="${(8 + next() * 40).toFixed(1)}" height="${(8 + next() * 40).toFixed(1)}" fill="${colour}"/>`;
  });
  const [left, top, right, bottom] = [0.2 * width, 0.4 * height, 0.8 * width, 0.9 * height];
  const soil = `rgb(${Math.round(110 * light)},${Math.round(84 * light)},${Math.round(60 * light)})`;
  const leaf = `rgb(${Math.round(60 * light)},${Math.round(130 * light)},${Math.round(45 * light)})`;
  const green = left + (right - left) * cover;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">
<rect width="100%" height="100%" fill="rgb(150,140,125)"/>
<g transform="translate(${shift[0]} ${shift[1]}) rotate(${turn} ${width / 2} ${height / 2})">${stones.join("")}
<rect x="${left}" y="${top}" width="${right - left}" height="${bottom - top}" fill="${soil}"/>
<rect x="${left}" y="${top}" width="${green - left}" height="${bottom - top}" fill="${leaf}"/></g></svg>`;
  return sharp(Buffer.from(svg)).jpeg({ quality: 92 }).toBuffer();
}

/** Writes it into a new folder and gives that. */
export async function writePhotographedGarden(taken: readonly Shot[] = shots): Promise<string> {
  const dir = await mkdtemp(path.join(tmpdir(), "plotreel-growth-"));
  const write = async (file: string, content: string | Uint8Array) => {
    await mkdir(path.dirname(path.join(dir, file)), { recursive: true });
    await writeFile(path.join(dir, file), content);
  };
  await write("garden.md", "---\nname: Gate Garden\ntime zone: Europe/London\nlanguage: en-GB\n---\n");
  await write(
    "beds/long-bed.md",
    `---\ntitle: Long Bed\nviewpoints:\n  - name: gate\n    spot: from the gate post\n    outline: ${JSON.stringify(outline)}\n    stake: {foot: [0.85, 0.9], top: [0.85, 0.4], length: 1.5 m}\n---\n`,
  );
  await write("varieties/crown-prince.md", "---\ntitle: Crown Prince\ncrop: squash\n---\n");
  await write(
    "episodes/2026-05-tour/index.md",
    "---\ntitle: May tour\ndate: 2026-05-16\npublished: 2026-05-20\nstatus: published\nstops: [long-bed]\n---\n",
  );
  await write("notes/2026-05-01.md", "- planted 6 Crown Prince in Long Bed\n");
  for (const [day, cm] of [
    ["2026-05-16", 20],
    ["2026-05-30", 45],
    ["2026-06-13", 110],
  ])
    await write(`notes/${day}-rule.md`, `- measured Crown Prince ${cm} cm tall in Long Bed\n`);
  for (const shot of taken) {
    await write(pathOf(shot), await drawShot(shot));
    if (shot.top !== undefined)
      await write(
        pathOf(shot).replace(/jpg$/, "md"),
        `---\nheights:\n  - {variety: Crown Prince, top: ${JSON.stringify(shot.top)}}\n---\n`,
      );
    if (shot.isPrivate === true) await write(pathOf(shot).replace(/jpg$/, "md"), "---\nprivate: true\n---\n");
  }
  return dir;
}

export async function readPhotographedGarden(dir: string): Promise<Garden> {
  const records = await readRecords(await openRecordsFolder(dir), { today });
  const { photos } = await readPhotos(records, openPhotoFolder(dir));
  return growGarden(records, photos);
}
