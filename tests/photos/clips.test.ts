import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { filmTimes } from "../../src/photos/film-times.ts";
import { ingestFolder, publishPhotos, readPhotos } from "../../src/photos/index.ts";
import { NoFilmProgram } from "../../src/photos/still-frame.ts";
import { bed, jpeg, photosInMemory, records, settings, sidecar } from "./drawn.ts";

const box = (type: string, ...content: Uint8Array[]): Buffer => {
  const inside = Buffer.concat(content);
  const head = Buffer.alloc(8);
  head.writeUInt32BE(8 + inside.length);
  head.write(type, 4, "latin1");
  return Buffer.concat([head, inside]);
};
const u32 = (...values: number[]) => {
  const bytes = Buffer.alloc(4 * values.length);
  for (const [at, value] of values.entries()) bytes.writeUInt32BE(value, at * 4);
  return bytes;
};
/** Seconds from the first of January 1904 (QuickTime File Format, "Movie header atom"). */
const since1904 = (iso: string) => Date.parse(iso) / 1000 + 2_082_844_800;
const header = (iso: string) => box("mvhd", u32(0, since1904(iso), since1904(iso), 600, 600));
const userData = (tag: string, value: string) =>
  box(tag, Buffer.from([0, value.length, 0x55, 0xc4]), Buffer.from(value));
const keys = (pairs: Readonly<Record<string, string>>) =>
  box(
    "meta",
    box("hdlr", u32(0, 0)),
    box("keys", u32(0, Object.keys(pairs).length), ...Object.keys(pairs).map((key) => box("mdta", Buffer.from(key)))),
    box(
      "ilst",
      ...Object.values(pairs).map((value, at) =>
        box(String.fromCharCode(0, 0, 0, at + 1), box("data", u32(1, 0), Buffer.from(value))),
      ),
    ),
  );
/** As cameras write it: the pictures first, what tells of them behind. */
const film = (...moov: Uint8Array[]) =>
  Buffer.concat([box("ftyp", Buffer.from("qt  ")), box("mdat", Buffer.alloc(100_000)), box("moov", ...moov)]);
const timesOf = (bytes: Uint8Array) => filmTimes(async (from, length) => bytes.subarray(from, from + length));

const beds = [bed("long-bed", { viewpoints: [{ name: "gate" }] })];
async function clip(
  bytes: Uint8Array,
  { name = "photos/long-bed/gate/a.mov", ...more }: Parameters<typeof records>[1] & { name?: string } = {},
) {
  const read = await readPhotos(records([], { beds, clipFiles: [name], ...more }), photosInMemory({ [name]: bytes }));
  return { ...read, clip: read.photos[0] };
}

describe("when a clip was filmed", () => {
  test("the phone's own word with its offset, its camera and its place", async () => {
    const bytes = film(
      header("2026-06-13T21:30:00Z"),
      keys({
        "com.apple.quicktime.creationdate": "2026-06-13T23:30:00+0200",
        "com.apple.quicktime.make": "Maker",
        "com.apple.quicktime.model": "Model 3",
        "com.apple.quicktime.location.ISO6709": "+54.3123-001.5732+012.500/",
      }),
    );
    expect(await timesOf(bytes)).toEqual({
      written: "2026-06-13T23:30:00+0200",
      header: Date.UTC(2026, 5, 13, 21, 30),
      camera: "Maker Model 3",
      position: { latitude: 54.3123, longitude: -1.5732 },
    });
    const { clip: one, takenAt } = await clip(bytes);
    expect(one).toMatchObject({ day: "2026-06-13", time: "23:30:00", instant: "2026-06-13T21:30:00.000Z" });
    expect(takenAt).toEqual([{ latitude: 54.312, longitude: -1.573 }]);
  });

  test("the movie header is UTC", async () => {
    // Half past eleven in the evening in London's summer.
    expect((await clip(film(header("2026-06-13T22:30:00Z")))).clip).toMatchObject({
      day: "2026-06-13",
      time: "23:30:00",
      instant: "2026-06-13T22:30:00.000Z",
      dateBasis: "other metadata",
    });
  });

  test("where the day hangs on it, the camera's clock is asked about once, and the answer holds", async () => {
    const late = film(header("2026-06-13T23:30:00Z"), box("udta", userData("©mod", "Lens 4")));
    const files = { "photos/long-bed/a.mov": late, "photos/long-bed/b.mov": late };
    const read = (clipClocks?: Record<string, "UTC" | "local">) =>
      readPhotos(
        records([], {
          beds,
          clipFiles: Object.keys(files),
          settings: { ...settings, ...(clipClocks && { clipClocks }) },
        }),
        photosInMemory(files),
      );
    const { photos, problems } = await read();
    expect(photos.map(({ day }) => day)).toEqual(["2026-06-14", "2026-06-14"]);
    expect(problems.map(({ rule, file, what, fix }) => [rule, file, `${what} ${fix}`])).toEqual([
      [
        "photo/clip-clock",
        "photos/long-bed/a.mov",
        'The clips of Lens 4 say a time that is 2026-06-14 00:30:00 here if it is UTC, as the standard has it, and 2026-06-13 23:30:00 if it is the camera\'s own clock. Write which it is into garden.md, once for this camera: clip clocks: {"Lens 4": local}, or UTC.',
      ],
    ]);
    const local = await read({ "lens 4": "local" });
    expect(local.photos.map(({ day, instant }) => [day, instant])[0]).toEqual([
      "2026-06-13",
      "2026-06-13T22:30:00.000Z",
    ]);
    expect(local.problems).toEqual([]);
    expect((await read({ "Lens 4": "UTC" })).problems).toEqual([]);
  });

  test("a name with a date asks nothing; nonsense tells nothing", async () => {
    const late = film(header("2026-06-13T23:30:00Z"));
    const named = await clip(late, { name: "photos/long-bed/VID_20260613_233000.mp4" });
    expect([named.clip?.day, named.problems]).toEqual(["2026-06-13", []]);
    for (const bytes of [
      Buffer.alloc(0),
      Buffer.from("film"),
      film(box("mvhd", u32(0, 0, 0))),
      film(box("mvhd")),
      Buffer.concat([u32(7), Buffer.from("ftyp")]),
      Buffer.concat([u32(1), Buffer.from("ftyp"), Buffer.alloc(8)]),
    ])
      expect((await clip(bytes)).clip?.dateBasis).toBe("unknown");
  });
});

describe("what a clip is in the records", () => {
  const bytes = film(header("2026-06-13T12:00:00Z"));

  test("of its bed, never one of a spot's photos, private until a file beside it says otherwise", async () => {
    const name = "photos/long-bed/gate/a.mov";
    const { clip: one } = await clip(bytes);
    expect(one).toMatchObject({ bed: "long-bed", isClip: true, private: true });
    expect(one?.viewpoint).toBeUndefined();
    expect((await clip(bytes, { sidecars: [sidecar(name, { openly: true })] })).clip?.private).toBe(false);
    expect((await clip(bytes, { sidecars: [sidecar(name, { openly: true, private: true })] })).clip?.private).toBe(
      true,
    );
  });

  test("a photo's own clip is no record of its own", async () => {
    const name = "photos/long-bed/gate/a.mov";
    const photo = "photos/long-bed/gate/a.jpg";
    const { photos } = await readPhotos(
      records([photo], { beds, clipFiles: [name] }),
      photosInMemory({ [name]: bytes, [photo]: await jpeg() }),
    );
    expect(photos.map(({ path: of, also }) => [of, also])).toEqual([[photo, [name]]]);
  });
});

describe("on disk", () => {
  const inFolder = async (work: (dir: string) => Promise<void>) => {
    const dir = await mkdtemp(path.join(tmpdir(), "plotreel-clips-"));
    await work(dir).finally(() => rm(dir, { recursive: true, force: true }));
  };
  const one = { path: "photos/a.mov", dateBasis: "unknown", varieties: [], isClip: true, private: true } as const;

  test("a still stands for the clip; without a program for it that is told once", () =>
    inFolder(async (dir) => {
      await mkdir(path.join(dir, "photos"));
      for (const name of ["a.mov", "b.mov"]) await writeFile(path.join(dir, "photos", name), film(Buffer.from(name)));
      const options = { recordsDir: dir, cacheDir: path.join(dir, "cache") };
      const photos = [one, { ...one, path: "photos/b.mov" }];
      const without = await publishPhotos(photos, {
        ...options,
        still: () => Promise.reject(new NoFilmProgram()),
      });
      expect(without.copies.size).toBe(0);
      expect(without.problems.map(({ rule, what }) => [rule, what])).toEqual([
        [
          "photo/no-film-program",
          "This clip and 1 more have no still picture, because the program ffmpeg is not on this machine; day and place still count.",
        ],
      ]);
      const asked: string[] = [];
      const still = async (file: string) => {
        asked.push(path.basename(file));
        return jpeg(600, 400);
      };
      const { copies, problems } = await publishPhotos([one], { ...options, still });
      expect([copies.get("photos/a.mov")?.width, problems, asked]).toEqual([600, [], ["a.mov"]]);
    }));

  test("ingest files it by its day, and under none while that hangs on the camera's clock", () =>
    inFolder(async (dir) => {
      await mkdir(path.join(dir, "card"));
      await writeFile(path.join(dir, "card/noon.mov"), film(header("2026-06-13T12:00:00Z")));
      await writeFile(path.join(dir, "card/late.mov"), film(header("2026-06-13T23:30:00Z")));
      const options = { beds: new Map(), timeZone: "Europe/London", dryRun: false };
      const summary = await ingestFolder(path.join(dir, "card"), path.join(dir, "records"), options);
      expect(summary.broughtIn.map(({ to }) => to)).toEqual(["photos/late.mov", "photos/2026-06-13/noon.mov"]);
      expect(summary.safeToClear).toBe(true);
    }));
});
