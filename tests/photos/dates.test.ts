import { deflateSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import { readPhotoHead } from "../../src/photos/exif-tags.ts";
import { dateInName } from "../../src/photos/file-name-date.ts";
import { readPhotos } from "../../src/photos/index.ts";
import { photoMoment } from "../../src/photos/photo-date.ts";
import { drawn, jpeg, photosInMemory, records, tag, tiff, withExif, withSegment } from "./drawn.ts";

/** What a photo with this EXIF says, in a garden of this zone. */
async function momentOf(
  block: Parameters<typeof tiff>[0],
  timeZone = "Europe/London",
  witnesses: { path?: string; sidecarDay?: string; modified?: number } = {},
) {
  const folder = photosInMemory({ "photos/a.jpg": withExif(await jpeg(), tiff(block)) });
  const { tags } = await readPhotoHead(folder, "photos/a.jpg");
  return photoMoment({ tags, path: "photos/a.jpg", timeZone, ...witnesses });
}

const rational = (...values: number[]) => values.map((value) => [value, 1] as const);
const gpsAt = (day: string, ...time: number[]) => ({ [tag.gpsDay]: day, [tag.gpsTime]: rational(...time) });

describe("the order of trust, checked against instants worked out by hand from EXIF 2.32 (CIPA DC-008-2019)", () => {
  test("original time with its own offset and sub-seconds", async () => {
    const exif = { [tag.original]: "2024:07:04 18:05:09", [tag.offsetOriginal]: "-05:00" };
    expect(await momentOf({ exif: { ...exif, [tag.subSecOriginal]: "5" } })).toEqual({
      day: "2024-07-04",
      time: "18:05:09",
      instant: "2024-07-04T23:05:09.500Z",
      dateBasis: "exif offset",
    });
    expect((await momentOf({ exif: { ...exif, [tag.subSecOriginal]: "05" } })).instant).toBe(
      "2024-07-04T23:05:09.050Z",
    );
  });

  test("the day is the local one, whatever day it is in UTC", async () => {
    const moment = await momentOf({ exif: { [tag.original]: "2024:07:04 00:30:00", [tag.offsetOriginal]: "+05:30" } });
    expect(moment).toMatchObject({ day: "2024-07-04", instant: "2024-07-03T19:00:00.000Z" });
  });

  test("GPS time tells the offset that the camera left out, to the quarter of an hour", async () => {
    const moment = await momentOf({
      exif: { [tag.original]: "2024:07:04 18:05:09" },
      gps: gpsAt("2024:07:04", 23, 5, 7),
    });
    expect(moment).toEqual({
      day: "2024-07-04",
      time: "18:05:09",
      instant: "2024-07-04T23:05:09.000Z",
      dateBasis: "gps time",
    });
  });

  test("GPS time alone, read in the garden's zone", async () => {
    const moment = await momentOf({ gps: gpsAt("2024:07:03", 23, 30, 0) }, "Europe/London");
    expect(moment).toEqual({
      day: "2024-07-04",
      time: "00:30:00",
      instant: "2024-07-03T23:30:00.000Z",
      dateBasis: "gps time",
    });
  });

  test("original time without offset, read in the garden's zone", async () => {
    const moment = await momentOf({ exif: { [tag.original]: "2026:07:04 09:15:00" } }, "Europe/London");
    expect(moment).toMatchObject({
      day: "2026-07-04",
      instant: "2026-07-04T08:15:00.000Z",
      dateBasis: "exif in garden zone",
    });
  });

  test("then a date in the name, then the sidecar, then the file's own time, marked", async () => {
    const nothing = { ifd0: { [tag.orientation]: 1 } };
    const modified = Date.UTC(2026, 4, 16, 23, 30);
    const sidecarDay = "2026-05-15";
    const path = "photos/IMG_20260514_080000.jpg";
    expect(await momentOf(nothing, "Europe/London", { path, sidecarDay, modified })).toMatchObject({
      day: "2026-05-14",
      time: "08:00:00",
      instant: "2026-05-14T07:00:00.000Z",
      dateBasis: "file name",
    });
    expect(await momentOf(nothing, "Europe/London", { sidecarDay, modified })).toEqual({
      day: sidecarDay,
      dateBasis: "sidecar",
    });
    expect(await momentOf(nothing, "Europe/London", { modified })).toMatchObject({
      day: "2026-05-17",
      dateBasis: "file time",
    });
    expect(await momentOf(nothing)).toEqual({ dateBasis: "unknown" });
  });

  test("the time of the last change is no surer than the file's own time, and better than it", async () => {
    const ifd0 = { [tag.modified]: "2026:05:20 12:00:00" };
    const modified = Date.UTC(2026, 6, 1);
    expect(await momentOf({ ifd0 }, "Europe/London", { modified })).toMatchObject({
      day: "2026-05-20",
      dateBasis: "file time",
    });
    const path = "photos/2026-05-16/a.jpg";
    expect(await momentOf({ ifd0 }, "Europe/London", { path })).toEqual({ day: "2026-05-16", dateBasis: "file name" });
  });

  test("the time of digitizing stands in for a missing original time, with its own offset", async () => {
    const exif = {
      [tag.original]: "    :  :     :  :  ",
      [tag.digitized]: "2026:05:16 10:00:00",
      [tag.offsetDigitized]: "+02:00",
    };
    expect(await momentOf({ exif })).toMatchObject({ instant: "2026-05-16T08:00:00.000Z", dateBasis: "exif offset" });
  });
});

describe("clocks that change", () => {
  const at = (written: string) => momentOf({ exif: { [tag.original]: written } }, "America/New_York");

  test("a time that the spring change skips keeps its day and its clock", async () => {
    expect(await at("2024:03:10 02:30:00")).toMatchObject({
      day: "2024-03-10",
      time: "02:30:00",
      instant: "2024-03-10T07:30:00.000Z",
    });
  });

  test("a time that the autumn change repeats is taken the first time", async () => {
    expect(await at("2024:11:03 01:30:00")).toMatchObject({ day: "2024-11-03", instant: "2024-11-03T05:30:00.000Z" });
  });

  test("a zone that skips a whole day", async () => {
    // Samoa left out 30 December 2011 when it moved across the date line (IANA time zone database).
    expect(await momentOf({ exif: { [tag.original]: "2011:12:30 10:00:00" } }, "Pacific/Apia")).toMatchObject({
      day: "2011-12-30",
      instant: "2011-12-30T20:00:00.000Z",
    });
  });
});

describe("nonsense is unknown, never a date", () => {
  test.each([
    "0000:00:00 00:00:00",
    "    :  :     :  :  ",
    "",
    "2026:02:30 10:00:00",
    "2026:13:01 10:00:00",
    "2026:05:16 25:00:00",
    "2026:05:16 10:61:00",
    "1970:01:01 00:00:00",
    "1980:01:01 00:00:12",
    "9999:99:99 99:99:99",
    "yesterday",
  ])("original time %j", async (written) => {
    expect(await momentOf({ exif: { [tag.original]: written } })).toEqual({ dateBasis: "unknown" });
  });

  test.each(["   :  ", "", "+25:00", "+05:75", "-13:00", "abc"])("offset %j counts as none", async (offset) => {
    const exif = { [tag.original]: "2026:07:04 09:15:00", [tag.offsetOriginal]: offset };
    expect((await momentOf({ exif })).dateBasis).toBe("exif in garden zone");
  });

  test("GPS times with zero denominators, without a date, or out of range", async () => {
    const exif = { [tag.original]: "2026:07:04 09:15:00" };
    const time = {
      [tag.gpsTime]: [
        [23, 0],
        [5, 0],
        [7, 0],
      ] as const,
    };
    expect((await momentOf({ exif, gps: { ...time, [tag.gpsDay]: "2026:07:04" } })).dateBasis).toBe(
      "exif in garden zone",
    );
    expect((await momentOf({ exif, gps: { [tag.gpsTime]: rational(8, 15, 0) } })).dateBasis).toBe(
      "exif in garden zone",
    );
    expect((await momentOf({ exif, gps: gpsAt("2026:07:04", 29, 0, 0) })).dateBasis).toBe("exif in garden zone");
    expect((await momentOf({ exif, gps: gpsAt("0000:00:00", 8, 15, 0) })).dateBasis).toBe("exif in garden zone");
  });

  /** A camera on 11 June 2026 at 10:15:02 in London, and what its GPS says. */
  const exif = { [tag.original]: "2026:06:11 10:15:02" };
  const there = {
    [tag.latitudeRef]: "N",
    [tag.latitude]: rational(54, 18, 0),
    [tag.longitudeRef]: "W",
    [tag.longitude]: rational(1, 34, 0),
  };
  const camera = { day: "2026-06-11", time: "10:15:02", instant: "2026-06-11T09:15:02.000Z" };
  test.each([
    ["a day old", gpsAt("2026:06:10", 9, 12, 40), "2026-06-10 10:12:40"],
    ["five hours old to the minute", { ...there, ...gpsAt("2026:06:11", 4, 15, 2) }, "2026-06-11 05:15:02"],
    ["five hours and four minutes old", gpsAt("2026:06:11", 4, 11, 0), "2026-06-11 05:11:00"],
    ["back by 1,024 weeks", gpsAt("2006:10:26", 9, 15, 0), "2006-10-26 10:15:00"],
    ["reset to a first of January", gpsAt("2017:01:01", 0, 0, 0), "2017-01-01 00:00:00"],
    ["a few minutes old", gpsAt("2026:06:11", 9, 4, 0), undefined],
    ["damaged", gpsAt("2026:06:259", 9, 15, 0), undefined],
  ])("the camera stands against GPS %s", async (_, gps, gpsSays) => {
    expect(await momentOf({ exif, gps })).toEqual({
      ...camera,
      dateBasis: "exif in garden zone",
      ...(gpsSays !== undefined && { gpsSays }),
    });
  });

  test("on a journey GPS tells the camera's zone, also beyond the date line", async () => {
    const auckland = {
      [tag.latitudeRef]: "S",
      [tag.latitude]: rational(36, 0, 0),
      [tag.longitudeRef]: "E",
      [tag.longitude]: rational(174, 0, 0),
    };
    expect(await momentOf({ exif, gps: { ...auckland, ...gpsAt("2026:06:10", 22, 15, 0) } })).toEqual({
      ...camera,
      instant: "2026-06-10T22:15:02.000Z",
      dateBasis: "gps time",
    });
    const apia = {
      [tag.latitudeRef]: "S",
      [tag.latitude]: rational(13, 0, 0),
      [tag.longitudeRef]: "W",
      [tag.longitude]: rational(171, 0, 0),
    };
    expect((await momentOf({ exif, gps: { ...apia, ...gpsAt("2026:06:10", 21, 15, 0) } })).dateBasis).toBe("gps time");
  });

  test("a disagreement is told once for its folder", async () => {
    const bytes = async (minute: string) =>
      withExif(
        await jpeg(),
        tiff({ exif: { [tag.original]: `2026:06:11 10:${minute}:02` }, gps: gpsAt("2026:06:10", 9, 12, 40) }),
      );
    const files = { "photos/2026-06-11/a.jpg": await bytes("15"), "photos/2026-06-11/b.jpg": await bytes("16") };
    const { problems } = await readPhotos(records(Object.keys(files)), photosInMemory(files));
    expect(
      problems.filter(({ rule }) => rule === "photo/clock-disagrees").map(({ file, what }) => [file, what]),
    ).toEqual([
      [
        "photos/2026-06-11/a.jpg",
        "The camera says 2026-06-11 10:15:02, GPS says 2026-06-10 10:12:40; in 2 photos of this folder the two disagree, and the day is the one that stands in each photo.",
      ],
    ]);
  });

  test("a camera clock that was never set gives way to GPS", async () => {
    const exif = { [tag.original]: "2000:01:01 00:10:00" };
    expect(await momentOf({ exif, gps: gpsAt("2026:07:04", 8, 15, 0) })).toMatchObject({
      day: "2026-07-04",
      time: "09:15:00",
      dateBasis: "gps time",
    });
  });
});

describe("dates in names", () => {
  test.each([
    ["IMG_20260516_180509.jpg", "2026-05-16", "18:05:09"],
    ["20260516_180509123.jpg", "2026-05-16", "18:05:09"],
    ["20260516180509.jpg", "2026-05-16", "18:05:09"],
    ["2026-05-16 18.05.09.jpg", "2026-05-16", "18:05:09"],
    ["gate-2026-05-16T18-05-09.jpg", "2026-05-16", "18:05:09"],
    ["Photo 2026-05-16 at 18.05.09.png", "2026-05-16", "18:05:09"],
    ["signal-2026-05-16-180509_002.jpg", "2026-05-16", "18:05:09"],
    ["IMG-20260516-WA0003.jpg", "2026-05-16", undefined],
    ["2026_05_16.jpg", "2026-05-16", undefined],
    ["leeks 2026.05.16 evening.heic", "2026-05-16", undefined],
  ])("%s", (name, day, time) => {
    expect(dateInName(`photos/long-bed/gate/${name}`)).toEqual({ day, time, utc: false });
  });

  test.each([
    "DSC01234.jpg",
    "1715875509123.jpg",
    "IMG_20261340.jpg",
    "120260516.jpg",
    "202605161.jpg",
    "2026-0516.jpg",
    "leeks.jpg",
    "20260230.jpg",
  ])("%s has none", (name) => expect(dateInName(`photos/long-bed/${name}`)).toBeUndefined());

  test("a name in UTC is read in UTC", () => {
    const moment = photoMoment({ path: "photos/PXL_20260516_233000123.jpg", timeZone: "Europe/London" });
    expect(moment).toEqual({
      day: "2026-05-17",
      time: "00:30:00",
      instant: "2026-05-16T23:30:00.000Z",
      dateBasis: "file name",
    });
  });

  test("the day folder counts when the name says nothing", () => {
    expect(dateInName("photos/2026-05-16/DSC01234.jpg")).toEqual({ day: "2026-05-16", utc: false });
    expect(dateInName("photos/2026-02-30/DSC01234.jpg")).toBeUndefined();
  });
});

describe("where EXIF says nothing", () => {
  const when = async (bytes: Uint8Array, path = "photos/a.jpg") => {
    const { tags } = await readPhotoHead(photosInMemory({ [path]: bytes }), path);
    const { day, time, instant, dateBasis } = photoMoment({ tags, path, timeZone: "Europe/London" });
    return [day, time, instant, dateBasis];
  };
  const xmp = (inner: string) => Buffer.from(`http://ns.adobe.com/xap/1.0/\0<x:xmpmeta>${inner}</x:xmpmeta>`, "latin1");

  test.each([
    ['<rdf:Description exif:DateTimeOriginal="2026-05-16T10:00:00+02:00"/>', "10:00:00", "2026-05-16T08:00:00.000Z"],
    ["<photoshop:DateCreated>2026-05-16T10:00</photoshop:DateCreated>", "10:00:00", "2026-05-16T09:00:00.000Z"],
    ["<xmp:CreateDate>2026-05-16</xmp:CreateDate>", undefined, undefined],
  ])("XMP %s", async (inner, time, instant) => {
    const bytes = withSegment(await jpeg(), 0xe1, xmp(inner));
    expect(await when(bytes)).toEqual(["2026-05-16", time, instant, "other metadata"]);
  });

  test.each(["2026-13-16", "0000-00-00T00:00:00", "soon", "1970-01-01T00:00:00"])(
    "XMP %s is no day",
    async (written) => {
      const bytes = withSegment(await jpeg(), 0xe1, xmp(`<xmp:CreateDate>${written}</xmp:CreateDate>`));
      expect(await when(bytes)).toEqual([undefined, undefined, undefined, "unknown"]);
    },
  );

  test("IPTC's date and time", async () => {
    const dataSet = (number: number, value: string) =>
      Buffer.concat([Buffer.from([0x1c, 2, number, 0, value.length]), Buffer.from(value)]);
    const iim = Buffer.concat([dataSet(55, "20260516"), dataSet(60, "233000-0500")]);
    const block = Buffer.concat([
      Buffer.from("Photoshop 3.0\0" + "8BIM\x04\x04\0\0\0\0\0", "latin1"),
      Buffer.from([iim.length]),
      iim,
    ]);
    expect(await when(withSegment(await jpeg(), 0xed, block))).toEqual([
      "2026-05-16",
      "23:30:00",
      "2026-05-17T04:30:00.000Z",
      "other metadata",
    ]);
  });

  test.each([
    ["tEXt", "Creation Time\0Sat, 16 May 2026 10:00:00 +0000", "2026-05-16T10:00:00.000Z"],
    ["tEXt", "Creation Time\x002026:05:16 10:00:00", "2026-05-16T09:00:00.000Z"],
    [
      "zTXt",
      Buffer.concat([Buffer.from("Creation Time\0\0"), deflateSync("16 May 2026 10:00:00 GMT")]),
      "2026-05-16T10:00:00.000Z",
    ],
    ["iTXt", 'XML:com.adobe.xmp\0\0\0\0\0<a xmp:CreateDate="2026-05-16T10:00:00Z"/>', "2026-05-16T10:00:00.000Z"],
    [
      "tEXt",
      `Raw profile type iptc\0\niptc\n      26\n${Buffer.from("\x1c\x02\x37\0\x0820260516\x1c\x02\x3c\0\x06100000", "latin1").toString("hex")}\n`,
      "2026-05-16T09:00:00.000Z",
    ],
    ["tEXt", "date:create\x002026-05-16T10:00:00+00:00", undefined],
  ])("a PNG's %s", async (type, content, instant) => {
    const png = await drawn(8, 8).png().toBuffer();
    const data = Buffer.from(content as string);
    const chunk = Buffer.concat([Buffer.alloc(4), Buffer.from(type), data, Buffer.alloc(4)]);
    chunk.writeUInt32BE(data.length, 0);
    expect((await when(Buffer.concat([png.subarray(0, 33), chunk, png.subarray(33)]), "photos/a.png"))[2]).toBe(
      instant,
    );
  });

  test("EXIF's own date comes first", async () => {
    const bytes = withExif(
      withSegment(await jpeg(), 0xe1, xmp('<a xmp:CreateDate="2020-01-02T10:00:00Z"/>')),
      tiff({ exif: { [tag.original]: "2026:05:16 10:00:00" } }),
    );
    expect((await when(bytes))[0]).toBe("2026-05-16");
  });
});

describe("where the metadata lies", () => {
  const block = tiff({ exif: { [tag.original]: "2026:05:16 10:00:00" } });

  test.each(["png", "webp", "avif"] as const)("%s carries its EXIF too", async (format) => {
    const bytes = await drawn(64, 48)
      .withExif({ IFD2: { DateTimeOriginal: "2026:05:16 10:00:00" } })
      [format]()
      .toBuffer();
    const { tags, kind } = await readPhotoHead(photosInMemory({ "photos/a": bytes }), "photos/a");
    expect(kind).toBe(format);
    expect(tags?.original).toBe("2026:05:16 10:00:00");
  });

  test("EXIF further in than the head is found all the same", async () => {
    // Two segments of other data push the EXIF past 64 KiB.
    let bytes = withExif(await jpeg(), block);
    for (let i = 0; i < 2; i++) {
      const filler = Buffer.alloc(50_000, 0x20);
      bytes = Buffer.concat([
        bytes.subarray(0, 2),
        Buffer.from([0xff, 0xed, (50_002 >> 8) & 0xff, 50_002 & 0xff]),
        filler,
        bytes.subarray(2),
      ]);
    }
    const { tags } = await readPhotoHead(photosInMemory({ "photos/a.jpg": bytes }), "photos/a.jpg");
    expect(tags?.original).toBe("2026:05:16 10:00:00");
  });

  test("only the head of an ordinary JPEG is read", async () => {
    const bytes = Buffer.concat([withExif(await jpeg(), block), Buffer.alloc(200_000)]);
    const folder = {
      ...photosInMemory({ "photos/a.jpg": bytes }),
      read: () => Promise.reject(new Error("read whole")),
    };
    expect((await readPhotoHead(folder, "photos/a.jpg")).tags?.original).toBe("2026:05:16 10:00:00");
  });
});
