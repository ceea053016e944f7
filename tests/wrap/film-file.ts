/** Film files as cameras write them, in a few hundred bytes: boxes of ISO/IEC 14496-12 without pictures. */

export const box = (type: string, ...content: Uint8Array[]): Buffer => {
  const inside = Buffer.concat(content);
  const head = Buffer.alloc(8);
  head.writeUInt32BE(8 + inside.length);
  head.write(type, 4, "latin1");
  return Buffer.concat([head, inside]);
};

export const u32 = (...values: number[]): Buffer => {
  const bytes = Buffer.alloc(4 * values.length);
  for (const [at, value] of values.entries()) bytes.writeUInt32BE(value >>> 0, at * 4);
  return bytes;
};

export interface FilmFile {
  /** What its header says, read as UTC: "2026-06-14T08:20:00". */
  readonly header?: string | undefined;
  /** Seconds. */
  readonly length: number;
  /** Pictures last so many ticks of so many a second; several for a varying rate. */
  readonly pictures?: { readonly scale: number; readonly lasts: readonly number[] };
  readonly model?: string;
  readonly position?: string;
  /** 9 numbers, 16.16 as the file has them. */
  readonly matrix?: readonly number[];
  readonly startFrame?: number;
  /** Version 1 headers, with times of 64 bits. */
  readonly isLong?: boolean;
}

const since1904 = 2_082_844_800;

export function filmFile(film: FilmFile): Buffer {
  const { header, length, pictures = { scale: 30_000, lasts: [1001] }, model, position, startFrame, isLong } = film;
  const created = header === undefined ? 0 : Date.parse(`${header}Z`) / 1000 + since1904;
  const times = (scale: number) => {
    const ticks = Math.round(length * scale);
    return isLong === true
      ? u32(0x0100_0000, 0, created, 0, created, scale, 0, ticks)
      : u32(0, created, created, scale, ticks);
  };
  const count = Math.round((length * pictures.scale * pictures.lasts.length) / pictures.lasts.reduce((a, b) => a + b));
  const stts = pictures.lasts.flatMap((lasts) => [Math.round(count / pictures.lasts.length), lasts]);
  const tkhd = [
    ...(isLong === true ? [0x0100_0000, 0, created, 0, created, 1, 0, 0, 0] : [0, created, created, 1, 0, 0]),
    ...[0, 0, 0, 0],
    ...(film.matrix ?? [0x1_0000, 0, 0, 0, 0x1_0000, 0, 0, 0, 0x4000_0000]),
    ...[1920 * 65536, 1080 * 65536],
  ];
  const handler = (type: string) => box("hdlr", u32(0, 0), Buffer.from(type), u32(0, 0, 0));
  const video = box(
    "trak",
    box("tkhd", u32(...tkhd)),
    box(
      "mdia",
      box("mdhd", times(pictures.scale)),
      handler("vide"),
      box("minf", box("stbl", box("stts", u32(0, stts.length / 2, ...stts)))),
    ),
  );
  const text = (tag: string, value: string) =>
    box(tag, Buffer.from([0, Buffer.byteLength(value), 0x55, 0xc4]), Buffer.from(value));
  const user = [
    ...(model === undefined ? [] : [text("©mod", model)]),
    ...(position === undefined ? [] : [text("©xyz", position)]),
  ];
  const ftyp = box("ftyp", Buffer.from("qt  "));
  // QuickTime File Format, "Timecode sample description": flags, timescale, frame duration, frames a second.
  const [lasts = 1001] = pictures.lasts;
  const description = box("stsd", u32(0, 1), box("tmcd", u32(0, 1, 0, 0, pictures.scale, lasts), Buffer.from([30, 0])));
  const clock = box(
    "trak",
    box("mdia", handler("tmcd"), box("minf", box("stbl", description, box("stco", u32(0, 1, ftyp.length + 8))))),
  );
  return Buffer.concat([
    ftyp,
    box("mdat", u32(startFrame ?? 0), Buffer.alloc(5000)),
    box(
      "moov",
      box("mvhd", times(600)),
      video,
      ...(startFrame === undefined ? [] : [clock]),
      ...(user.length === 0 ? [] : [box("udta", ...user)]),
    ),
  ]);
}
