/** What is true about the demo garden's drawn photos, as the script that drew them wrote it down. */

import { readFileSync } from "node:fs";
import path from "node:path";
import type { Outline } from "../../src/photos/raw-image.ts";
import type { Alignment } from "../../src/photos/similarity.ts";

export const photosFolder = path.join(import.meta.dirname, "../../demo-content/photos");

/** What a photo's EXIF block holds. */
export interface PhoneFacts {
  /** As EXIF writes it: "2026:05:16 18:15:03". */
  readonly taken: string;
  readonly offset?: string;
  readonly subSeconds?: string;
  readonly orientation: number;
  readonly position?: { readonly latitude: number; readonly longitude: number };
}

interface Truth {
  readonly viewpoints: Record<string, { readonly outline: Outline; readonly stakeCm?: number }>;
  readonly photos: Record<
    string,
    Alignment & {
      readonly cover?: number;
      readonly stakeFootPx?: readonly [number, number];
      readonly stakeTopPx?: readonly [number, number];
      readonly wrote: PhoneFacts;
    }
  >;
}

const truth = JSON.parse(readFileSync(path.join(photosFolder, "truth.json"), "utf8")) as Truth;

/** Of every photo, below photos/. */
export function whatPhonesWrote(): readonly { readonly file: string; readonly facts: PhoneFacts }[] {
  return Object.entries(truth.photos).map(([file, { wrote }]) => ({ file, facts: wrote }));
}

export interface DemoPhoto {
  /** Below photos/. */
  readonly file: string;
  readonly viewpoint: string;
  readonly day: string;
  readonly truth: Truth["photos"][string];
  /** In this photo's own frame: the viewpoint's outline, moved as the camera was. */
  readonly outline: Outline;
  readonly stakeCm: number | undefined;
}

/** All photos taken from viewpoints, in order of viewpoint and time. */
export function demoPhotos(): DemoPhoto[] {
  return Object.entries(truth.photos).flatMap(([file, photo]) => {
    const viewpoint = file.split("/").slice(0, 2).join("/");
    const own = truth.viewpoints[viewpoint];
    if (!own) return [];
    const name = path.basename(file);
    return [
      {
        file,
        viewpoint,
        day: `${name.slice(4, 8)}-${name.slice(8, 10)}-${name.slice(10, 12)}`,
        truth: photo,
        outline: own.outline.map((point) => moved(point, photo)),
        stakeCm: own.stakeCm,
      },
    ];
  });
}

export const viewpointNames = (): string[] => Object.keys(truth.viewpoints);

/** Independent of the code under test: centre + shift + scale * R * (p - centre). */
function moved([fx, fy]: readonly [number, number], photo: Alignment): [number, number] {
  const angle = (photo.rotationDeg * Math.PI) / 180;
  const dx = (fx - 0.5) * photo.width;
  const dy = (fy - 0.5) * photo.height;
  const x = photo.width / 2 + photo.shiftX + photo.scale * (Math.cos(angle) * dx - Math.sin(angle) * dy);
  const y = photo.height / 2 + photo.shiftY + photo.scale * (Math.sin(angle) * dx + Math.cos(angle) * dy);
  return [x / photo.width, y / photo.height];
}
