/** Which time-lapses a site shows: none with a photo in it that the site keeps back, and the film only where nobody else looks. */
import { expect, it } from "vitest";
import { localeOf } from "../../src/language/index.ts";
import type { Garden, GardenSettings } from "../../src/model.ts";
import type { PublishedFile, TimeLapse } from "../../src/photos/index.ts";
import type { Spot } from "../../src/site/page-data/comparison-book.ts";
import { lapseOf } from "../../src/site/page-data/lapse.ts";
import { linksBelow } from "../../src/site/page-data/links.ts";
import type { View } from "../../src/site/page-data/view.ts";
import { lapseFilms, lapsePictures, lapsesOf } from "../../src/site/time-lapses.ts";
import { siteWords } from "../../src/site/words/index.ts";

const file = (name: string): PublishedFile => ({
  name,
  width: 640,
  height: 540,
  format: "webp",
  cachePath: `/cache/${name}`,
});

function lapse(name: string, photos: readonly string[]): TimeLapse {
  return {
    bed: "long-bed",
    viewpoint: "gate",
    photos,
    from: "2026-04-04",
    to: "2026-06-20",
    moving: file(`${name}-moving.webp`),
    still: file(`${name}-still.webp`),
    film: `/cache/${name}.mp4`,
  };
}

const all = lapse("all", ["a.jpg", "own.jpg", "b.jpg"]);
const open = lapse("open", ["a.jpg", "b.jpg"]);
const photos = (...paths: readonly string[]) => ({ photos: paths.map((path) => ({ path })) }) as unknown as Garden;

it("shows none in which a photo has a part that is kept back", () => {
  expect(lapsesOf(photos("a.jpg", "b.jpg"), [all, open])).toEqual([open]);
  expect(lapsesOf(photos("a.jpg", "b.jpg", "own.jpg"), [all, open])).toEqual([all, open]);
  expect(lapsesOf(photos("a.jpg"), [all, open])).toEqual([]);
  expect([...lapsePictures([open]).keys()]).toEqual(["open-moving.webp", "open-still.webp"]);
});

it("has of each spot one film, the fullest", () => {
  expect(lapseFilms([all, open])).toEqual(new Map([["time-lapses/long-bed-gate.mp4", "/cache/all.mp4"]]));
});

it("shows the fullest of a spot in words that tell its days, and its film on private pages only", () => {
  const settings = { language: "en-GB", units: "metric" } as GardenSettings;
  const view = (isPrivate: boolean, lapses: readonly TimeLapse[]) =>
    ({
      garden: { beds: new Map([["long-bed", { title: "Long Bed" }]]) },
      links: linksBelow("/garden/"),
      locale: localeOf(settings),
      words: siteWords,
      lapses,
      isPrivate,
    }) as unknown as View;
  const spot = { bed: "long-bed", viewpoint: "gate" } as Spot;
  const shown = lapseOf(view(false, [open]), spot);
  expect(shown).toMatchObject({
    caption: "From the gate, 4 April to 20 June 2026: two photos, one a week.",
    moving: "/garden/photos/open-moving.webp",
    film: undefined,
  });
  expect(lapseOf(view(true, [open, all]), spot)).toMatchObject({
    moving: "/garden/photos/all-moving.webp",
    film: "/garden/time-lapses/long-bed-gate.mp4",
  });
  expect(lapseOf(view(true, []), spot)).toBeUndefined();
});
