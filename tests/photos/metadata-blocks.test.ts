import fc from "fast-check";
import sharp from "sharp";
import { describe, expect, test } from "vitest";
import { imageMetadataBlocks } from "../../src/photos/index.ts";
import { drawn, jpeg, tag, tiff, withExif, withSegment } from "./drawn.ts";

const kinds = (bytes: Uint8Array) => imageMetadataBlocks(bytes).map(({ kind }) => kind);
const exif = tiff({ exif: { [tag.original]: "2026:05:16 10:00:00" } });
const withPlace = tiff({
  gps: {
    [tag.latitudeRef]: "N",
    [tag.latitude]: [
      [54, 1],
      [18, 1],
      [4570, 100],
    ],
  },
});
const xmp = "<x:xmpmeta xmlns:x='adobe:ns:meta/'></x:xmpmeta>";

describe("a clean picture has none", () => {
  test.each(["jpeg", "png", "webp", "avif", "gif"] as const)("%s", async (format) => {
    expect(kinds(await drawn(40, 30)[format]().toBuffer())).toEqual([]);
  });

  test("progressive JPEG, animation, lossless WebP, a colour profile", async () => {
    expect(kinds(await drawn(400, 300).jpeg({ progressive: true }).toBuffer())).toEqual([]);
    expect(kinds(await drawn(40, 30).webp({ lossless: true }).toBuffer())).toEqual([]);
    expect(kinds(await drawn(40, 30).withIccProfile("p3").jpeg().toBuffer())).toEqual([]);
    const frames = await Promise.all(
      ["#f00", "#0f0"].map((background) =>
        sharp({ create: { width: 9, height: 9, channels: 3, background } })
          .png()
          .toBuffer(),
      ),
    );
    expect(
      kinds(
        await sharp(frames, { join: { animated: true } })
          .webp()
          .toBuffer(),
      ),
    ).toEqual([]);
    expect(
      kinds(
        await sharp(frames, { join: { animated: true } })
          .gif()
          .toBuffer(),
      ),
    ).toEqual([]);
  });

  test("no picture has none either", () => expect(kinds(Buffer.from("Exif\0\0II*\0 is only a text here"))).toEqual([]));
});

describe("every kind of picture, every kind of block", () => {
  test.each(["jpeg", "png", "webp", "avif"] as const)("EXIF with a GPS directory in %s", async (format) => {
    const picture = drawn(40, 30).withExif({ IFD3: { GPSLatitudeRef: "N", GPSLatitude: "54/1 18/1 0/1" } });
    expect(kinds(await picture[format]().toBuffer())).toEqual(["EXIF", "GPS"]);
  });

  test.each(["jpeg", "png", "webp", "avif"] as const)("XMP in %s", async (format) => {
    expect(kinds(await drawn(40, 30).withXmp(xmp)[format]().toBuffer())).toContain("XMP");
  });

  test("IPTC, comment, unknown application data and data after the picture in JPEG", async () => {
    const bytes = await jpeg();
    expect(kinds(withExif(bytes, exif))).toEqual(["EXIF"]);
    expect(kinds(withExif(bytes, withPlace))).toEqual(["EXIF", "GPS"]);
    expect(kinds(withSegment(bytes, 0xed, Buffer.from("Photoshop 3.0\x008BIM")))).toEqual(["IPTC"]);
    expect(kinds(withSegment(bytes, 0xfe, Buffer.from("hello")))).toEqual(["comment"]);
    expect(kinds(withSegment(bytes, 0xe5, Buffer.from("maker")))).toEqual(["other data"]);
    // A film behind the photo, as some phones write it, has its own place and time.
    expect(kinds(Buffer.concat([bytes, Buffer.from("\0\0\0\x18ftypmp42")]))).toEqual(["data after the picture"]);
    expect(kinds(Buffer.concat([bytes, Buffer.alloc(16)]))).toEqual([]);
  });

  test("words and times in PNG, data behind its end", async () => {
    const png = await drawn(8, 8).png().toBuffer();
    const chunk = (type: string, content: string) => {
      const bytes = Buffer.alloc(12 + content.length);
      bytes.writeUInt32BE(content.length, 0);
      bytes.write(type + content, 4, "latin1");
      return Buffer.concat([png.subarray(0, 33), bytes, png.subarray(33)]);
    };
    expect(kinds(chunk("tEXt", "Comment\0at home"))).toEqual(["comment"]);
    expect(kinds(chunk("iTXt", "XML:com.adobe.xmp\0\0\0\0\0<x/>"))).toEqual(["XMP"]);
    expect(kinds(chunk("tIME", "1234567"))).toEqual(["other data"]);
    expect(kinds(chunk("prVt", "mine"))).toEqual(["other data"]);
    expect(kinds(Buffer.concat([png, Buffer.from("behind")]))).toEqual(["data after the picture"]);
  });

  test("unknown chunks and data behind the end in WebP", async () => {
    const webp = await drawn(8, 8).webp().toBuffer();
    expect(kinds(Buffer.concat([webp, Buffer.from("behind")]))).toEqual(["data after the picture"]);
    const longer = Buffer.concat([webp, Buffer.from("NOTE\x04\0\0\0home", "latin1")]);
    longer.writeUInt32LE(longer.length - 8, 4);
    expect(kinds(longer)).toEqual(["other data"]);
  });

  test("comments in GIF", async () => {
    const gif = await drawn(8, 8).gif().toBuffer();
    const at = gif.lastIndexOf(0x3b);
    expect(kinds(Buffer.concat([gif.subarray(0, at), Buffer.from("\x21\xfe\x04home\x00\x3b", "latin1")]))).toEqual([
      "comment",
    ]);
  });

  test("bytes that no segment explains", async () => {
    const bytes = await jpeg();
    const afterFirst = 4 + bytes.readUInt16BE(4);
    const between = [bytes.subarray(0, afterFirst), Buffer.from("54.3126, -5.6034"), bytes.subarray(afterFirst)];
    expect(kinds(Buffer.concat(between))).toEqual(["other data"]);
  });

  test("EXIF where no walk of a well-made file looks", async () => {
    const bytes = await jpeg();
    const hidden = Buffer.concat([Buffer.from("Exif\0\0", "latin1"), exif]);
    // The segment claims to be a quantization table.
    expect(kinds(withSegment(bytes, 0xdb, hidden))).toContain("EXIF");
  });
});

test("any bytes behind any signature end in an answer", async () => {
  const seeds = [
    withExif(await jpeg(), withPlace),
    ...(await Promise.all(
      (["png", "webp", "avif", "gif"] as const).map((format) =>
        drawn(16, 16)
          .withExif({ IFD0: { Copyright: "me" } })
          [format]()
          .toBuffer(),
      ),
    )),
  ];
  fc.assert(
    fc.property(
      fc.constantFrom(...seeds),
      fc.array(fc.tuple(fc.nat(2000), fc.nat(255)), { maxLength: 12 }),
      fc.nat(2000),
      (seed, changes, cut) => {
        const bytes = Buffer.from(seed.subarray(0, Math.max(1, seed.length - (cut % seed.length))));
        for (const [at, value] of changes) bytes[at % bytes.length] = value;
        expect(Array.isArray(imageMetadataBlocks(bytes))).toBe(true);
      },
    ),
    { numRuns: 2000 },
  );
});
