/** What the brief says of growth: the two photos by their days, and how far the bed came between them. */

import { rm } from "node:fs/promises";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Garden, PhotoMeasure } from "../../src/model.ts";
import { makeBrief, photosCompared } from "../../src/tour/index.ts";
import { dossierOf } from "../tour/garden-of.ts";
import { pathOf, readPhotographedGarden, shots, today, writePhotographedGarden } from "./photographed-garden.ts";

let dir: string;
let garden: Garden;

beforeAll(async () => {
  dir = await writePhotographedGarden();
  garden = await readPhotographedGarden(dir);
});

afterAll(() => rm(dir, { recursive: true, force: true }));

const paths = ["2026-05-16", "2026-06-19"].map((day) => pathOf({ day, cover: 0 }));

function measured(changed: Partial<PhotoMeasure> = {}): Garden {
  const photos = shots.map(
    (shot): PhotoMeasure => ({
      photo: pathOf(shot),
      bed: "long-bed",
      viewpoint: "gate",
      day: shot.day,
      cover: shot.cover,
      coverOf: "bed",
      aligned: true,
      heights: [],
      ...(shot.day === "2026-05-16" ? changed : {}),
    }),
  );
  return { ...garden, growth: { photos } };
}

const stopOf = (of: Garden) => makeBrief(of, { day: today, today }).stops.find(({ bed }) => bed === "long-bed");
const factOf = (of: Garden) => stopOf(of)?.facts.find(({ kind }) => kind === "growth");
const shownIn = (of: Garden) => stopOf(of)?.show.find(({ kind }) => kind === "side by side")?.text;

describe("a stop of the brief", () => {
  it("names the photo of the day viewers saw the bed, and the newest one", () => {
    expect(stopOf(measured())?.sideBySide).toEqual({
      viewpoint: "gate",
      before: { path: paths[0], day: "2026-05-16" },
      after: { path: paths[1], day: "2026-06-19" },
      cover: { from: 0.2, to: 0.8 },
    });
    expect(stopOf(measured())?.spot.photo?.path).toBe(paths[0]);
  });

  it("says how far the bed came, once", () => {
    const markdown = dossierOf(makeBrief(measured(), { day: today, today }), garden);
    expect(markdown.match(/Cover went/gu)).toHaveLength(1);
    expect(shownIn(measured())).toBe(
      "Cover went from 20 % to 80 % since the last tour: the two photos from the gate show it.",
    );
    expect(factOf(measured())?.text).toBe("Side by side: the photos of 16 May and 19 June from the gate.");
    expect(factOf(measured())?.sources.map(({ file }) => file)).toEqual(paths);
  });

  it("names the photos alone when cover hardly changed or nothing was measured", () => {
    for (const of of [garden, measured({ cover: 0.75 }), measured({ cover: undefined })])
      expect([shownIn(of), factOf(of)]).toEqual([
        "Side by side: the long bed from the gate on 16 May and 19 June.",
        undefined,
      ]);
  });

  it("sets no two photos side by side that do not lie over one another", () => {
    expect(stopOf(measured({ aligned: false }))?.sideBySide).toBeUndefined();
    expect(factOf(measured({ aligned: false }))).toBeUndefined();
  });
});

it("only the photos that are held against one another have to be measured for a brief", () => {
  expect(photosCompared(garden, { day: today, today })).toEqual(new Set(paths));
  expect(photosCompared(garden, { day: "2026-05-10", today })).toEqual(new Set());
});
