import { describe, expect, test } from "vitest";
import { readPhotos, recordsOfMoments } from "../../src/photos/index.ts";
import { isEditedName, momentName } from "../../src/records/index.ts";
import { bed, drawn, note, photosInMemory, records, sidecar, tag, tiff, withExif } from "./drawn.ts";

const beds = [bed("long-bed", { viewpoints: [{ name: "gate" }] }), bed("bean-row")];

/** Pictures that differ in their bytes. */
const picture = (seed: number) =>
  drawn(40 + seed, 30, `#${(0x102030 + seed * 4099).toString(16).padStart(6, "0")}`)
    .jpeg()
    .toBuffer();
const taken = async (when: string, seed: number, offset?: string) =>
  withExif(
    await picture(seed),
    tiff({ exif: { [tag.original]: when, ...(offset !== undefined && { [tag.offsetOriginal]: offset }) } }),
  );
const heicHead = Buffer.from("\0\0\0\x18ftypheic\0\0\0\0mif1heic", "latin1");

async function moments(files: Readonly<Record<string, Uint8Array>>, more: Parameters<typeof records>[1] = {}) {
  const paths = Object.keys(files).sort();
  const clipFiles = paths.filter((path) => /\.(mov|mp4)$/i.test(path));
  const photoFiles = paths.filter((path) => !clipFiles.includes(path));
  return readPhotos(records(photoFiles, { beds, clipFiles, ...more }), photosInMemory(files));
}

describe("one moment is one photo", () => {
  test("HEIC, its JPEG, what a phone made of it and its clip: the edited one is shown, with the camera's day", async () => {
    const { photos, problems } = await moments({
      "photos/long-bed/gate/IMG_0007.HEIC": heicHead,
      "photos/long-bed/gate/IMG_0007.JPG": await taken("2026:05:16 10:00:00", 1),
      "photos/long-bed/gate/IMG_E0007.JPG": await picture(2),
      "photos/long-bed/gate/IMG_0007.MOV": Buffer.from("film"),
      "photos/long-bed/gate/IMG_0008.JPG": await taken("2026:05:16 10:05:00", 3),
    });
    expect(
      photos.map(({ path, also, day, time, bed, viewpoint }) => ({ path, also, day, time, bed, viewpoint })),
    ).toEqual([
      {
        path: "photos/long-bed/gate/IMG_0008.JPG",
        also: undefined,
        day: "2026-05-16",
        time: "10:05:00",
        bed: "long-bed",
        viewpoint: "gate",
      },
      {
        path: "photos/long-bed/gate/IMG_E0007.JPG",
        also: [
          "photos/long-bed/gate/IMG_0007.HEIC",
          "photos/long-bed/gate/IMG_0007.JPG",
          "photos/long-bed/gate/IMG_0007.MOV",
        ],
        day: "2026-05-16",
        time: "10:00:00",
        bed: "long-bed",
        viewpoint: "gate",
      },
    ]);
    // Of the parts without a day nobody is asked.
    expect(problems).toEqual([]);
  });

  test("a JPEG is shown before its HEIC", async () => {
    const { photos } = await moments({
      "photos/2026-05-16/a.heic": heicHead,
      "photos/2026-05-16/a.jpg": await picture(1),
    });
    expect(photos.map(({ path }) => path)).toEqual(["photos/2026-05-16/a.jpg"]);
  });

  test("an edited copy that lost its offset is of the same moment, told by the wall clock", async () => {
    const { photos } = await moments({
      "photos/IMG_1.jpg": await taken("2026:05:16 10:00:00", 1, "-05:00"),
      "photos/IMG_1 edited.jpg": await taken("2026:05:16 10:00:00", 2),
    });
    expect(photos).toMatchObject([
      { path: "photos/IMG_1 edited.jpg", also: ["photos/IMG_1.jpg"], instant: "2026-05-16T15:00:00.000Z" },
    ]);
  });

  test("numbers come round again: files of one name that the clock tells apart are two moments", async () => {
    const { photos } = await moments({
      "photos/IMG_0001.jpeg": await taken("2025:05:16 10:00:00", 1),
      "photos/IMG_0001.jpg": await taken("2026:05:16 10:00:00", 2),
    });
    expect(photos.map(({ day, also }) => [day, also])).toEqual([
      ["2025-05-16", undefined],
      ["2026-05-16", undefined],
    ]);
  });

  test("a number behind the name is no copy unless clock or bytes say so", async () => {
    const same = await picture(3);
    const { photos } = await moments({
      "photos/a.jpg": await picture(1),
      "photos/a (1).jpg": await picture(2),
      "photos/b.jpg": same,
      "photos/b (1).jpg": same,
      "photos/c.jpg": await taken("2026:05:16 10:00:00", 4),
      "photos/c copy.jpg": await taken("2026:05:16 10:00:00", 5),
    });
    expect(photos.map(({ path }) => path)).toEqual([
      "photos/a (1).jpg",
      "photos/a.jpg",
      "photos/b.jpg",
      "photos/c.jpg",
    ]);
  });

  test("a copy of the same bytes is the same moment, and lies where a person filed it", async () => {
    const bytes = await taken("2026:05:16 10:00:00", 1);
    const { photos, problems } = await moments({
      "photos/2026-05-16/IMG_1.jpg": bytes,
      "photos/long-bed/gate/first-leeks.jpg": bytes,
    });
    expect(photos).toMatchObject([
      {
        path: "photos/long-bed/gate/first-leeks.jpg",
        also: ["photos/2026-05-16/IMG_1.jpg"],
        bed: "long-bed",
        viewpoint: "gate",
      },
    ]);
    expect(problems).toEqual([]);
  });

  test("the same bytes at two beds stay two photos: nobody knows which is right", async () => {
    const bytes = await taken("2026:05:16 10:00:00", 1);
    const { photos } = await moments({ "photos/long-bed/a.jpg": bytes, "photos/bean-row/a.jpg": bytes });
    expect(photos.map(({ bed }) => bed)).toEqual(["bean-row", "long-bed"]);
  });

  test("pictures that only begin alike are no copies", async () => {
    const start = Buffer.concat([await taken("2026:05:16 10:00:00", 1), Buffer.alloc(70_000)]);
    const { photos } = await moments({
      "photos/long-bed/a.jpg": Buffer.concat([start, Buffer.from("1")]),
      "photos/long-bed/b.jpg": Buffer.concat([start, Buffer.from("2")]),
    });
    expect(photos).toHaveLength(2);
  });

  test("what sidecars and notes say of any file holds for the moment", async () => {
    const jpg = "photos/2026-05-16/IMG_1.jpg";
    const heic = "photos/2026-05-16/IMG_1.heic";
    const more = {
      sidecars: [sidecar(heic, { caption: "Mist", varieties: ["boltardy"] }), sidecar(jpg, { varieties: ["sungold"] })],
      notes: [
        note("2026-05-16", { beds: ["bean-row"], photos: [heic, jpg], photoWords: [{ photo: heic, words: "fog" }] }),
      ],
    };
    const files = { [jpg]: await picture(1), [heic]: heicHead };
    const { photos } = await moments(files, more);
    expect(photos).toMatchObject([
      { path: jpg, bed: "bean-row", caption: "Mist", varieties: ["sungold", "boltardy"], private: false },
    ]);
    const { notes } = recordsOfMoments(records([heic, jpg], more), photos);
    expect(notes[0]).toMatchObject({ photos: [jpg], photoWords: [{ photo: jpg, words: "fog" }] });
  });
});

describe("the strictest word of any part holds for all", () => {
  const paths = async (files: Readonly<Record<string, Uint8Array>>, sidecars: ReturnType<typeof sidecar>[]) =>
    (await moments(files, { sidecars })).photos.flatMap((photo) => (photo.private ? [] : [photo.path]));

  test("of a part that is not shown", async () => {
    const heic = "photos/IMG_1.heic";
    const files = { [heic]: heicHead, "photos/IMG_1.jpg": await picture(1), "photos/IMG_2.jpg": await picture(2) };
    expect(await paths(files, [sidecar(heic, { private: true })])).toEqual(["photos/IMG_2.jpg"]);
  });

  test("of a copy of the same bytes, also one filed at another bed", async () => {
    const bytes = await picture(1);
    const files = { "photos/long-bed/a.jpg": bytes, "photos/bean-row/b.jpg": bytes };
    expect(await paths(files, [sidecar("photos/bean-row/b.jpg", { private: true })])).toEqual([]);
  });

  test("of a burst's frame, from frame to frame, until a frame's own file says otherwise", async () => {
    const at = (second: number) => taken(`2026:05:16 10:00:0${second}`, second);
    const files = {
      "photos/a.jpg": await at(0),
      "photos/b.jpg": await at(2),
      "photos/c.jpg": await at(5),
      "photos/d.jpg": await at(9),
    };
    const secret = sidecar("photos/b.jpg", { private: true });
    expect(await paths(files, [secret])).toEqual(["photos/d.jpg"]);
    expect(await paths(files, [secret, sidecar("photos/a.jpg", { openly: true })])).toEqual([
      "photos/a.jpg",
      "photos/d.jpg",
    ]);
  });

  test("times of the files themselves make no burst", async () => {
    const files = { "photos/a.jpg": await picture(1), "photos/b.jpg": await picture(2) };
    const { photos } = await readPhotos(
      records(Object.keys(files), { sidecars: [sidecar("photos/a.jpg", { private: true })] }),
      photosInMemory(files, { "photos/a.jpg": 1e12, "photos/b.jpg": 1e12 }),
    );
    expect(photos.map((photo) => photo.private)).toEqual([true, false]);
  });
});

test.each([
  ["photos/IMG_0001.HEIC", "photos/img_0001", false],
  ["photos/IMG_E0001.JPG", "photos/img_0001", true],
  ["photos/IMG_0001.NEF", "photos/img_0001", false],
  ["photos/IMG_0001 edited (2).jpg", "photos/img_0001", true],
  ["photos/IMG_0001-HDR.jpg", "photos/img_0001", true],
  ["photos/PXL_20260516_100000123.MP.jpg", "photos/pxl_20260516_100000123", false],
  ["photos/MVIMG_20260516_100000.jpg", "photos/img_20260516_100000", false],
  ["photos/2026-06-13-2.jpg", "photos/2026-06-13-2", false],
])("%s is of the moment %s", (path, moment, edited) => {
  expect(momentName(path)).toBe(moment);
  expect(isEditedName(path)).toBe(edited);
});
