/** What every scene of the demo garden tells: its camera, what stands in it, and how it looks on a day. */

import type { Mesh, Vec } from "../mesh.ts";

/** The day a scene is drawn for. */
export interface Moment {
  /** ISO day. */
  readonly day: string;
  readonly year: number;
  /** Day of the year, counted so that 1 January is 1; warm years run ahead by a few days. */
  readonly season: number;
  /** 0 dry to 1 wet soil. */
  readonly wet: number;
}

export interface SceneDesign {
  readonly bed: string;
  readonly viewpoint: string;
  /** Pixels of the upright frame. */
  readonly width: number;
  readonly height: number;
  readonly eye: Vec;
  readonly target: Vec;
  /** Degrees across the longer side. */
  readonly view: number;
  /** Compass degrees the camera looks towards. */
  readonly heading: number;
  readonly centre: Vec;
  readonly radius: number;
  readonly underFilm: boolean;
  /** The bed's outline, points in the scene. */
  readonly outline: readonly Vec[];
  /** Foot and top of the marked stake, and its length in centimetres. */
  readonly stake?: { readonly foot: Vec; readonly top: Vec; readonly lengthCm: number } | undefined;
  readonly build: (mesh: Mesh, moment: Moment) => void;
}

/** Day of the year of an ISO day, 1 to 366. */
export const dayOfYear = (day: string): number =>
  (Date.parse(`${day}T00:00:00Z`) - Date.parse(`${day.slice(0, 4)}-01-01T00:00:00Z`)) / 86400000 + 1;

/** How many days a year's growth runs ahead of 2026. */
export const yearAhead = (year: number): number => (year === 2025 ? 4 : year === 2024 ? -5 : 0);
