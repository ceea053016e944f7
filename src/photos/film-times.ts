/**
 * When a clip was filmed and by which camera: the movie header and user data of MP4 and QuickTime files (ISO/IEC 14496-12, 8.2.2;
 * QuickTime File Format, "Metadata Atoms and Types"). Only the boxes that tell are read, wherever they lie in the file.
 */
import type { Position } from "../model.ts";
import { text } from "./image-kind.ts";
import { boxesIn, movieBox, type ReadAt } from "./movie-boxes.ts";

export interface FilmTimes {
  /** ISO 8601 with an offset, as phones write it beside the header. */
  readonly written?: string | undefined;
  /** Of the movie header, milliseconds since 1970: by the standard UTC, and some cameras write their local clock. */
  readonly header?: number | undefined;
  /** Maker and model, as written. */
  readonly camera?: string | undefined;
  /** Never leaves this room but rounded, for those who see to it that nobody is told. */
  readonly position?: Position | undefined;
}

/** Seconds from 1904, where these clocks begin, to 1970. */
const since1904 = 2_082_844_800;

export async function filmTimes(readAt: ReadAt): Promise<FilmTimes> {
  const moov = await movieBox(readAt);
  return moov === undefined ? {} : timesIn(moov);
}

export function timesIn(moov: Uint8Array): FilmTimes {
  const told: Record<string, string> = {};
  let header: number | undefined;
  for (const box of boxesIn(moov)) {
    if (box.type === "mvhd") header = headerTime(box.content);
    else if (box.type === "meta") Object.assign(told, keyed(box.content));
    else if (box.type === "udta") Object.assign(told, userData(box.content));
  }
  const camera = [told.make, told.model].filter((part) => part !== undefined && part !== "").join(" ");
  const written = /(?:Z|[+-]\d\d:?\d\d)$/.test(told.creationdate ?? "") ? told.creationdate : undefined;
  return { written, header, camera: camera === "" ? undefined : camera, position: positionIn(told.position) };
}

/** ISO 6709: "+54.3123-001.5732+012.5/", in degrees. */
function positionIn(written: string | undefined): Position | undefined {
  const parts = /^([+-]\d{1,2}(?:\.\d+)?)([+-]\d{1,3}(?:\.\d+)?)/.exec(written ?? "");
  const [latitude, longitude] = [Number(parts?.[1]), Number(parts?.[2])];
  return Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180 && (latitude !== 0 || longitude !== 0)
    ? { latitude, longitude }
    : undefined;
}

function headerTime(content: Uint8Array): number | undefined {
  if (content.length < 12) return undefined;
  const view = new DataView(content.buffer, content.byteOffset, content.byteLength);
  const seconds = content[0] === 1 ? Number(view.getBigUint64(4)) : view.getUint32(4);
  // Cameras that were never set write nought; some write seconds since 1970 all the same.
  return seconds > since1904 ? (seconds - since1904) * 1000 : undefined;
}

const keyNames: Readonly<Record<string, string>> = {
  "com.apple.quicktime.creationdate": "creationdate",
  "com.apple.quicktime.location.ISO6709": "position",
  "com.apple.quicktime.make": "make",
  "com.apple.quicktime.model": "model",
  "com.android.manufacturer": "make",
  "com.android.model": "model",
};

/** Names in "keys", values in "ilst" under the number of their name. */
function keyed(meta: Uint8Array): Record<string, string> {
  // As a full box (ISO) four bytes stand before the first child, in QuickTime none.
  const children = [...boxesIn(text(meta, 4, 4) === "hdlr" ? meta : meta.subarray(4))];
  const keys = children.find(({ type }) => type === "keys")?.content;
  const values = children.find(({ type }) => type === "ilst")?.content;
  if (!keys || !values) return {};
  const names = [...boxesIn(keys.subarray(8))].map(({ content }) => decoded(content));
  const found: Record<string, string> = {};
  for (const { type, content } of boxesIn(values)) {
    const number = [...type].reduce((sum, letter) => sum * 256 + letter.charCodeAt(0), 0);
    const name = keyNames[names[number - 1] ?? ""];
    const data = [...boxesIn(content)].find((box) => box.type === "data")?.content;
    if (name !== undefined && data) found[name] = decoded(data.subarray(8));
  }
  return found;
}

const userNames: Readonly<Record<string, string>> = {
  "©xyz": "position",
  "©day": "creationdate",
  "©mak": "make",
  "©mod": "model",
};

/** Length and language in two bytes each, then the text. */
function userData(content: Uint8Array): Record<string, string> {
  const found: Record<string, string> = {};
  for (const { type, content: value } of boxesIn(content)) {
    const name = userNames[type];
    if (name !== undefined && value.length > 4) found[name] = decoded(value.subarray(4));
    else if (type === "meta") Object.assign(found, keyed(value));
  }
  return found;
}

function decoded(bytes: Uint8Array): string {
  return new TextDecoder().decode(bytes.subarray(0, 200)).replace(/\0.*$/s, "").trim();
}
