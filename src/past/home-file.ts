/**
 * The file in which a phone takes home what was kept on it outdoors: a line of JSON for each entry, below a first line that says
 * what it is. A download that was broken off loses its last line and no other.
 */
import { isDay } from "../calendar.ts";
import type { Day } from "../model.ts";
import type { Told } from "./new-file.ts";

interface HomeEntry {
  /** What comes twice is written once. */
  readonly id: string;
  readonly day: Day;
  /** Line of the file. */
  readonly line: number;
}

export interface HomeLine extends HomeEntry {
  readonly kind: "line";
  readonly bed?: string | undefined;
  readonly text: string;
}

export interface HomePhoto extends HomeEntry {
  readonly kind: "photo";
  readonly bed: string;
  readonly viewpoint?: string | undefined;
  readonly name: string;
  /** Milliseconds since 1970 UTC. */
  readonly modified: number;
  readonly bytes: Uint8Array;
}

export interface HomeFile {
  readonly garden: string;
  readonly entries: readonly (HomeLine | HomePhoto)[];
  readonly told: readonly Told[];
}

/** First words of such a file, whatever it is called. */
const begins = '{"plotreel":"outdoors"';

/** Undefined of any other file. */
export function readHomeFile(bytes: Uint8Array): HomeFile | undefined {
  const all = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  // A byte order mark may have been put before it.
  const from = all.subarray(0, 3).equals(Buffer.from([0xef, 0xbb, 0xbf])) ? 3 : 0;
  if (all.toString("utf8", from, from + begins.length) !== begins) return undefined;
  const entries: (HomeLine | HomePhoto)[] = [];
  const told: Told[] = [];
  let garden = "";
  let line = 0;
  // Line by line: the whole may be longer than a string can be.
  for (let at = from; at < all.length; ) {
    const end = all.indexOf(0x0a, at);
    const text = all.toString("utf8", at, end < 0 ? all.length : end).trim();
    at = end < 0 ? all.length : end + 1;
    line += 1;
    if (text === "") continue;
    const said = objectIn(text);
    if (line === 1) garden = typeof said?.garden === "string" ? said.garden : "";
    else {
      const entry = said && entryOf(said, line);
      if (entry === undefined)
        told.push({ line, what: "is no entry that is understood: the file may be cut off here" });
      else entries.push(entry);
    }
  }
  return { garden, entries, told };
}

function objectIn(text: string): Readonly<Record<string, unknown>> | undefined {
  try {
    const found: unknown = JSON.parse(text);
    return typeof found === "object" && found !== null ? (found as Record<string, unknown>) : undefined;
  } catch {
    return undefined;
  }
}

function entryOf(said: Readonly<Record<string, unknown>>, line: number): HomeLine | HomePhoto | undefined {
  const { id, day, bed, text, viewpoint, name, modified, bytes } = said;
  if (typeof id !== "string" || !/^[\w-]{8,64}$/u.test(id) || typeof day !== "string" || !isDay(day)) return undefined;
  if (bed !== undefined && typeof bed !== "string") return undefined;
  const entry = { id, day, line };
  if (said.kind === "line") {
    const isLine = typeof text === "string" && text.trim() !== "" && text.length <= 1000;
    return isLine && !/\p{Cc}|[\u2028\u2029]/u.test(text) ? { kind: "line", ...entry, bed, text } : undefined;
  }
  if (said.kind !== "photo" || bed === undefined || (viewpoint !== undefined && typeof viewpoint !== "string"))
    return undefined;
  if (typeof name !== "string" || !Number.isSafeInteger(modified) || typeof bytes !== "string") return undefined;
  const photo = Buffer.from(bytes, "base64");
  return { kind: "photo", ...entry, bed, viewpoint, name, modified: modified as number, bytes: photo };
}
