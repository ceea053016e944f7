/**
 * What a film file knows of itself, for an editor: when, by which camera, how long, how many pictures a second, from which
 * timecode on (ISO/IEC 14496-12, 8.2.2 "mvhd", 8.3.2 "tkhd", 8.4.2 "mdhd", 8.6.1.2 "stts"; QuickTime File Format, "Timecode
 * media"). Where it was made is read by nobody here, so that it can reach no list.
 */
import type { ClipFacts, FrameRate } from "../model.ts";
import { dateInName } from "./file-name-date.ts";
import { timesIn } from "./film-times.ts";
import { text } from "./image-kind.ts";
import { boxAt, boxesIn, movieBox, type ReadAt } from "./movie-boxes.ts";
import type { PhotoFolder } from "./photo-folder.ts";

/** A file that is no film, or is cut off before its movie box, has only its name. */
export async function clipFacts(file: string, folder: PhotoFolder): Promise<ClipFacts> {
  const readAt: ReadAt = async (from, length) =>
    folder.readAt ? folder.readAt(file, from, length) : (await folder.read(file)).subarray(from, from + length);
  const moov = await movieBox(readAt).catch(() => undefined);
  const named = dateInName(file);
  if (moov === undefined) return { file, named, isVariable: false };
  const { written, header, camera } = timesIn(moov);
  const tracks = [...boxesIn(moov)].flatMap(({ type, content }) => (type === "trak" ? [content] : []));
  const kind = (track: Uint8Array) => text(boxAt(track, ["mdia", "hdlr"]) ?? new Uint8Array(12), 8, 4);
  const pictures = tracks.find((track) => kind(track) === "vide");
  const clock = tracks.find((track) => kind(track) === "tmcd");
  const rate = pictures === undefined ? { isVariable: false } : rateOf(pictures);
  return {
    file,
    named,
    written,
    header,
    camera,
    length: lengthOf(boxAt(moov, ["mvhd"])),
    ...rate,
    ...(pictures === undefined ? {} : frameOf(pictures)),
    startFrame: clock === undefined || rate.rate === undefined ? undefined : await startFrame(clock, rate.rate, readAt),
    hasSound: tracks.some((track) => kind(track) === "soun"),
  };
}

/** Fields of a header whose version says how long its times are: timescale and length. */
function scaleOf(header: Uint8Array | undefined): { readonly scale: number; readonly length: number } | undefined {
  const isLong = header?.[0] === 1;
  if (header === undefined || header.length < (isLong ? 32 : 20)) return undefined;
  const view = viewOf(header);
  const scale = view.getUint32(isLong ? 20 : 12);
  const length = isLong ? Number(view.getBigUint64(24)) : view.getUint32(16);
  return scale === 0 ? undefined : { scale, length };
}

/** Milliseconds. */
function lengthOf(header: Uint8Array | undefined): number | undefined {
  const found = scaleOf(header);
  return found === undefined || found.length >= 0xffffffff
    ? undefined
    : Math.round((found.length * 1000) / found.scale);
}

const usualRates: readonly FrameRate[] = [
  { num: 24000, den: 1001 },
  { num: 24, den: 1 },
  { num: 25, den: 1 },
  { num: 30000, den: 1001 },
  { num: 30, den: 1 },
  { num: 48, den: 1 },
  { num: 50, den: 1 },
  { num: 60000, den: 1001 },
  { num: 60, den: 1 },
  { num: 120000, den: 1001 },
  { num: 120, den: 1 },
];

/** Phones make pictures of unequal lengths: then the usual rate nearest to the average stands, and that is said. */
function rateOf(track: Uint8Array): Pick<ClipFacts, "rate" | "isVariable"> {
  const scale = scaleOf(boxAt(track, ["mdia", "mdhd"]))?.scale;
  const times = boxAt(track, ["mdia", "minf", "stbl", "stts"]);
  if (scale === undefined || times === undefined || times.length < 8) return { isVariable: false };
  const view = viewOf(times);
  const entries = Math.min(view.getUint32(4), Math.floor((times.length - 8) / 8));
  let [pictures, ticks] = [0, 0];
  const lengths = new Set<number>();
  for (let entry = 0; entry < entries; entry += 1) {
    const [count, length] = [view.getUint32(8 + entry * 8), view.getUint32(12 + entry * 8)];
    pictures += count;
    ticks += count * length;
    // The last picture may be cut short.
    if (entry < entries - 1 || count > 1 || entries === 1) lengths.add(length);
  }
  if (pictures === 0 || ticks === 0) return { isVariable: false };
  const average = (pictures * scale) / ticks;
  const nearest = usualRates.reduce((best, rate) => (off(rate, average) < off(best, average) ? rate : best));
  const isVariable = lengths.size > 1;
  if (off(nearest, average) < (isVariable ? 0.02 : 0.0004)) return { rate: nearest, isVariable };
  const [length = 0] = lengths;
  return isVariable || lengths.size === 0 ? { isVariable } : { rate: reduced(scale, length), isVariable };
}

function off({ num, den }: FrameRate, rate: number): number {
  return Math.abs(num / den / rate - 1);
}

function reduced(num: number, den: number): FrameRate {
  let [a, b] = [num, den];
  while (b !== 0) [a, b] = [b, a % b];
  return { num: num / a, den: den / a };
}

/** Width and height as shown, and the turn that the camera wrote for players (9 numbers, 16.16). */
function frameOf(track: Uint8Array): Pick<ClipFacts, "width" | "height" | "turned"> {
  const header = boxAt(track, ["tkhd"]);
  const at = header?.[0] === 1 ? 52 : 40;
  if (header === undefined || header.length < at + 44) return {};
  const view = viewOf(header);
  const [a, b] = [Math.sign(view.getInt32(at)), Math.sign(view.getInt32(at + 4))] as const;
  const turned = a === 1 ? 0 : a === -1 ? 180 : b === 1 ? 90 : 270;
  const [width, height] = [view.getUint32(at + 36) / 65536, view.getUint32(at + 40) / 65536];
  return turned % 180 === 0 ? { width, height, turned } : { width: height, height: width, turned };
}

/**
 * The number of the first picture by the camera's timecode: one sample of four bytes somewhere in the file. Fast films count
 * theirs at half their rate; a timecode of any other rate is left.
 */
async function startFrame(track: Uint8Array, { num, den }: FrameRate, readAt: ReadAt): Promise<number | undefined> {
  const table = boxAt(track, ["mdia", "minf", "stbl"]);
  const [description, short, long] = ["stsd", "stco", "co64"].map((type) => table && boxAt(table, [type]));
  if (description === undefined || description.length < 40) return undefined;
  const [scale, lasts] = [viewOf(description).getUint32(32), viewOf(description).getUint32(36)];
  const times = Math.round((num * lasts * 100) / (den * scale)) / 100;
  if ((short?.length ?? 0) < 12 && (long?.length ?? 0) < 16) return undefined;
  const place = short === undefined ? Number(viewOf(long as Uint8Array).getBigUint64(8)) : viewOf(short).getUint32(8);
  const sample = await readAt(place, 4);
  return sample.length < 4 || (times !== 1 && times !== 2 && times !== 4)
    ? undefined
    : viewOf(sample).getUint32(0) * times;
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}
