import { describe, expect, test } from "vitest";
import { readPhotos } from "../../src/photos/index.ts";
import { metresBetween, siteAround } from "../../src/photos/site-around.ts";
import { bed, jpeg, photosInMemory, records, site, tag, tiff, withExif } from "./drawn.ts";

/** A degree of latitude is 111.2 km: 0.001 of it is 111 m. */
const plot = site("plot", { position: { latitude: 54.3101, longitude: -5.6001 } });
const yard = site("yard", { position: { latitude: 54.3201, longitude: -5.6001 } });
const at = (north: number, errorMetres?: number) => ({
  latitude: 54.3101 + north / 111_195,
  longitude: -5.6001,
  errorMetres,
});

test("distances on the sphere: a minute of latitude, and a quarter of the way round", () => {
  expect(metresBetween({ latitude: 0, longitude: 0 }, { latitude: 1 / 60, longitude: 0 })).toBeCloseTo(1853.2, 0);
  expect(metresBetween({ latitude: 0, longitude: 0 }, { latitude: 0, longitude: 90 })).toBeCloseTo(
    (6_371_008.8 * Math.PI) / 2,
    0,
  );
});

describe("the radius is honest", () => {
  test.each([
    ["at the point", at(0), "plot"],
    ["at the far end of a plot", at(70, 5), "plot"],
    ["too far for a sure phone", at(100, 5), undefined],
    ["not too far for an unsure one", at(100, 40), "plot"],
    ["a phone that knows only the town", at(0, 800), undefined],
    ["the other site", at(1112), "yard"],
    ["between them", at(556), undefined],
  ])("%s", (_, position, expected) => expect(siteAround(position, [plot, yard])).toBe(expected));

  test("two sites that may both be meant: neither", () => {
    const next = site("next", { position: { latitude: 54.3105, longitude: -5.6001 } });
    expect(siteAround(at(22, 5), [plot, next])).toBeUndefined();
    expect(siteAround(at(0, 5), [plot, next])).toBe("plot");
  });

  test("a record that gives only the village places nothing", () => {
    expect(siteAround(at(0), [site("village", { position: { latitude: 54.31, longitude: -5.6 } })])).toBeUndefined();
  });
});

describe("a photo without a bed", () => {
  const degrees = (value: number) => [[Math.round(value * 1e6), 1_000_000] as const, [0, 1] as const, [0, 1] as const];
  const taken = (latitude: number) =>
    tiff({
      gps: {
        [tag.latitudeRef]: "N",
        [tag.latitude]: degrees(latitude),
        [tag.longitudeRef]: "W",
        [tag.longitude]: degrees(5.6001),
      },
    });

  test("gets its site, and is private with it; its position goes nowhere", async () => {
    const path = "photos/2026-05-16/a.jpg";
    const folder = photosInMemory({ [path]: withExif(await jpeg(), taken(54.3101)) });
    const { photos } = await readPhotos(records([path], { sites: [{ ...plot, private: true }] }), folder);
    expect(photos[0]).toMatchObject({ site: "plot", private: true });
    expect(JSON.stringify(photos)).not.toMatch(/54\.31|5\.60/);
  });

  test("with a bed needs no guess", async () => {
    const path = "photos/pots/2026-05-16.jpg";
    const folder = photosInMemory({ [path]: withExif(await jpeg(), taken(54.3101)) });
    const { photos } = await readPhotos(
      records([path], { sites: [plot], beds: [bed("pots", { site: "yard" })] }),
      folder,
    );
    expect(photos[0]).toMatchObject({ bed: "pots", site: undefined });
  });

  test.each([
    ["zeros of a receiver without a fix", degrees(0)],
    [
      "zero denominators",
      [
        [54, 0],
        [18, 0],
        [0, 0],
      ] as const,
    ],
    ["no such latitude", degrees(154)],
  ])("%s", async (_, latitude) => {
    const path = "photos/2026-05-16/a.jpg";
    const gps = {
      [tag.latitudeRef]: "N",
      [tag.latitude]: latitude,
      [tag.longitudeRef]: "W",
      [tag.longitude]: degrees(0),
    };
    const folder = photosInMemory({ [path]: withExif(await jpeg(), tiff({ gps })) });
    expect((await readPhotos(records([path], { sites: [plot] }), folder)).photos[0]?.site).toBeUndefined();
  });
});
