import { expect, test } from "vitest";
import { readPhotos } from "../../src/photos/index.ts";
import { bed, jpeg, note, photosInMemory, records, sidecar } from "./drawn.ts";

const beds = [bed("long-bed", { viewpoints: [{ name: "gate" }], alsoCalled: ["the long one"] }), bed("bean-row")];

async function placed(path: string, more: Parameters<typeof records>[1] = {}) {
  const { photos, problems } = await readPhotos(
    records([path], { beds, ...more }),
    photosInMemory({ [path]: await jpeg() }),
  );
  return { photo: photos[0], rules: problems.map(({ rule }) => rule) };
}

test.each([
  ["photos/long-bed/gate/2026-05-16.jpg", "long-bed", "gate"],
  ["photos/Long Bed/Gate/2026-05-16.jpg", "long-bed", "gate"],
  ["photos/the long one/2026-05-16.jpg", "long-bed", undefined],
  ["photos/long-bed/tripod/2026-05-16.jpg", "long-bed", "tripod"],
  ["photos/long-bed/2026/2026-05-16.jpg", "long-bed", undefined],
  ["photos/long-bed/2026-05-16.jpg", "long-bed", undefined],
])("%s", async (path, bedId, viewpoint) => {
  expect((await placed(path)).photo).toMatchObject({ path, bed: bedId, viewpoint, day: "2026-05-16" });
});

test("a sidecar says bed, viewpoint and words, and outranks the folder", async () => {
  const path = "photos/long-bed/gate/2026-05-16.jpg";
  const words = sidecar(path, {
    bed: "bean-row",
    viewpoint: "stile",
    caption: "Beans at last",
    credit: "A friend",
    private: true,
    varieties: ["aquadulce"],
  });
  expect((await placed(path, { sidecars: [words] })).photo).toMatchObject({
    bed: "bean-row",
    viewpoint: "stile",
    caption: "Beans at last",
    credit: "A friend",
    private: true,
    varieties: ["aquadulce"],
  });
});

test("a note about one bed places the photos it links; a note about two does not", async () => {
  const path = "photos/2026-05-16/dsc01.jpg";
  const one = note("2026-05-16", { beds: ["bean-row"], photos: [path] });
  expect((await placed(path, { notes: [one] })).photo?.bed).toBe("bean-row");
  const two = note("2026-05-16", { beds: ["bean-row", "long-bed"], photos: [path] });
  const { photo, rules } = await placed(path, { notes: [two] });
  expect(photo?.bed).toBeUndefined();
  expect(rules).toEqual(["photo/unplaced"]);
});

test("unplaced photos stay, and are reported once for their folder", async () => {
  const files = {
    "photos/2026-05-16/a.jpg": await jpeg(60),
    "photos/2026-05-16/b.jpg": await jpeg(61),
    "photos/lang-bed/2026-05-16.jpg": await jpeg(62),
    "photos/2026-05-17.jpg": await jpeg(63),
  };
  const { photos, problems } = await readPhotos(records(Object.keys(files), { beds }), photosInMemory(files));
  expect(photos).toHaveLength(4);
  expect(problems.map(({ rule, file, what, fix }) => [rule, file, `${what} ${fix}`])).toEqual([
    [
      "photo/unplaced",
      "photos/2026-05-16/a.jpg",
      "2 photos in this folder belong to no bed yet. A photo gets its bed from its folder (photos/BED/VIEWPOINT), from a note about one bed that links it, or from a sidecar.",
    ],
    [
      "photo/unplaced",
      "photos/2026-05-17.jpg",
      "One photo in this folder belongs to no bed yet. A photo gets its bed from its folder (photos/BED/VIEWPOINT), from a note about one bed that links it, or from a sidecar.",
    ],
    [
      "photo/unknown-bed",
      "photos/lang-bed/2026-05-16.jpg",
      'No bed is called "lang-bed", so one photo in this folder has no bed. Did you mean "long-bed"? Rename the folder.',
    ],
  ]);
});

test("files that are no photos are reported and leave the others in peace", async () => {
  const files = {
    "photos/long-bed/2026-05-14.jpg": Buffer.alloc(0),
    "photos/long-bed/2026-05-15.jpg": Buffer.from("not a picture at all, only a text"),
    "photos/long-bed/2026-05-16.jpg": await jpeg(),
  };
  const paths = [...Object.keys(files), "photos/long-bed/gone.jpg"];
  const { photos, problems } = await readPhotos(records(paths, { beds }), photosInMemory(files));
  expect(photos.map(({ path }) => path)).toEqual(["photos/long-bed/2026-05-16.jpg"]);
  expect(problems.map(({ rule }) => rule)).toEqual(["photo/empty", "photo/not-a-picture", "photo/unreadable"]);
});

test("a photo whose day rests on the file's own time says so", async () => {
  const path = "photos/long-bed/dsc01.jpg";
  const folder = photosInMemory({ [path]: await jpeg() }, { [path]: Date.UTC(2026, 4, 16, 12) });
  const { photos, problems } = await readPhotos(records([path], { beds }), folder);
  expect(photos[0]).toMatchObject({ day: "2026-05-16", dateBasis: "file time" });
  expect(problems.map(({ rule }) => rule)).toEqual(["photo/no-day"]);
});

test("photos without a day are reported once for their folder", async () => {
  const files = {
    "photos/long-bed/a.jpg": await jpeg(60),
    "photos/long-bed/b.jpg": await jpeg(61),
    "photos/bean-row/c.jpg": await jpeg(62),
  };
  const { photos, problems } = await readPhotos(records(Object.keys(files), { beds }), photosInMemory(files));
  expect(photos.map(({ dateBasis }) => dateBasis)).toEqual(["unknown", "unknown", "unknown"]);
  expect(problems.map(({ rule, file, what }) => [rule, file, what])).toEqual([
    [
      "photo/no-day",
      "photos/bean-row/c.jpg",
      "Nothing in this photo or its name tells the day, so at best the day of the file itself was taken.",
    ],
    [
      "photo/no-day",
      "photos/long-bed/a.jpg",
      "Nothing in 2 photos of this folder or in their names tells the day, so at best the day of the file itself was taken.",
    ],
  ]);
});

test("a sidecar whose day differs from the camera's is pointed out", async () => {
  const path = "photos/long-bed/2026-05-16.jpg";
  const { photo, rules } = await placed(path, { sidecars: [sidecar(path, { day: "2026-05-17" })] });
  expect(photo?.day).toBe("2026-05-16");
  expect(rules).toEqual(["photo/day-disagrees"]);
});

test("a photo of another kind than its name says is read, and pointed out", async () => {
  const path = "photos/long-bed/2026-05-16.heic";
  const { photo, rules } = await placed(path);
  expect(photo?.bed).toBe("long-bed");
  expect(rules).toEqual(["photo/wrong-ending"]);
});

test("a viewpoint that its bed does not describe is pointed out once, unless the bed describes none", async () => {
  const bytes = await jpeg();
  const files = {
    "photos/long-bed/gaite/2026-05-16.jpg": bytes,
    "photos/long-bed/gaite/2026-05-17.jpg": bytes,
    "photos/long-bed/tripod/2026-05-17.jpg": bytes,
    "photos/bean-row/stile/2026-05-17.jpg": bytes,
  };
  const { problems } = await readPhotos(records(Object.keys(files), { beds }), photosInMemory(files));
  expect(problems.map(({ rule, what, fix }) => [rule, `${what} ${fix}`])).toEqual([
    [
      "photo/unknown-viewpoint",
      'long bed has other viewpoints than "gaite", from which 2 photos come. Did you mean "gate"? Rename the folder.',
    ],
    [
      "photo/unknown-viewpoint",
      'long bed has other viewpoints than "tripod", from which one photo comes. Describe it under viewpoints in its file, so that the next photo can be taken from the same spot.',
    ],
  ]);
});
