/** Which photo of a viewpoint the others are laid over. */
import { expect, it } from "vitest";
import { type MeasuringTools, type SeriesPhoto, ViewpointSeries } from "../../src/photos/viewpoint-series.ts";

type Shape = readonly [width: number, height: number] | undefined;

/** Photos of these shapes of which any two agree, so that the shape alone decides. */
function seriesOf(shapes: readonly Shape[]): ViewpointSeries {
  const paths = shapes.map((_, index) => `photos/${index}.jpg`);
  const photos = paths.map(
    (path, index): SeriesPhoto => ({
      path,
      day: `2026-05-0${index + 1}`,
      bed: "long-bed",
      viewpoint: "gate",
      dateBasis: "file name",
      varieties: [],
      private: false,
    }),
  );
  const tools = {
    pixels: {
      shape: async (path: string) => {
        const shape = shapes[paths.indexOf(path)];
        return shape && { width: shape[0], height: shape[1] };
      },
      hash: async (path: string) => path,
      grey: async () => ({}),
    },
    cache: { of: (_: string, make: () => unknown) => Promise.resolve(make()) },
    threads: {
      run: async () => ({ width: 100, height: 75, shiftX: 0, shiftY: 0, scale: 1, rotationDeg: 0 }),
    },
  } as unknown as MeasuringTools;
  return new ViewpointSeries(photos, tools);
}

const lying: Shape = [4000, 3000];
const upright: Shape = [3000, 4000];

it("is the earliest of the shape most have", async () => {
  expect(await seriesOf([lying, lying, lying]).reference()).toBe(0);
  expect(await seriesOf([upright, upright, lying, lying, lying]).reference()).toBe(2);
  expect(await seriesOf([lying, upright, lying]).reference()).toBe(0);
});

it("is none that cannot be opened", async () => {
  expect(await seriesOf([undefined, undefined, lying, lying]).reference()).toBe(2);
  expect(await seriesOf([undefined, lying]).reference()).toBeUndefined();
});
