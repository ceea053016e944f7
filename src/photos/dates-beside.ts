/**
 * Dates that programs lay beside a photo: an XMP file (XMP specification part 1, ISO 16684-1), and the JSON of a takeout. Only
 * the date is taken: what stands there besides was written for somebody else's pages.
 */
import { besideName, momentName } from "../records/index.ts";

export interface DatesBeside {
  /** As XMP writes it: ISO 8601. */
  readonly xmp?: string | undefined;
  /** Milliseconds since 1970 UTC. */
  readonly takeout?: number | undefined;
}

/** More is no file of a date. */
const longest = 1_000_000;

/** `asides`: the files that may speak of the photo. Those of its very name speak before those of its moment. */
export async function datesBeside(
  photo: string,
  asides: readonly string[],
  read: (file: string) => Promise<Uint8Array>,
): Promise<DatesBeside> {
  const named = (file: string) => (besideName(file).toLowerCase() === photo.toLowerCase() ? 0 : 1);
  let found: DatesBeside = {};
  for (const file of asides
    .filter((one) => momentName(besideName(one)) === momentName(photo))
    .sort((a, b) => named(a) - named(b))) {
    if (/\.aae$/i.test(file)) continue;
    const bytes = await read(file).catch(() => undefined);
    if (bytes === undefined || bytes.length > longest) continue;
    const text = new TextDecoder().decode(bytes);
    found = /\.json$/i.test(file)
      ? { ...found, takeout: found.takeout ?? takeoutDate(text) }
      : { ...found, xmp: found.xmp ?? xmpDate(text) };
  }
  return found;
}

/** When the picture was taken comes before when its file was made. */
const dateKeys = ["exif:DateTimeOriginal", "photoshop:DateCreated", "xmp:CreateDate", "exif:DateTimeDigitized"];

/** XMP writes a value as an attribute or as an element. */
export function xmpDate(text: string): string | undefined {
  for (const key of dateKeys) {
    const found = new RegExp(`${key}\\s*(?:=\\s*["']|>)\\s*([^"'<]{4,40})`).exec(text);
    if (found) return found[1];
  }
  return undefined;
}

function takeoutDate(text: string): number | undefined {
  try {
    const { photoTakenTime } = JSON.parse(text) as { photoTakenTime?: { timestamp?: unknown } };
    const seconds = Number(photoTakenTime?.timestamp);
    return Number.isFinite(seconds) && seconds > 0 && seconds < 1e11 ? seconds * 1000 : undefined;
  } catch {
    return undefined;
  }
}
