/** What was kept outdoors as one file to take home, and such a file taken in again by the page that reaches the computer. */
import { instantOf } from "../../field-list/phone/plan-clock.ts";
import type { QueueStore } from "./queue.ts";
import type { Queued } from "./shapes.ts";

const BEGINS = { plotreel: "outdoors", version: 1 } as const;

/** A line for each entry; what is in it counts as gone home, and is not changed any more. */
export async function homeFile(store: QueueStore, garden: string, now: Date): Promise<Blob> {
  const parts = [`${JSON.stringify({ ...BEGINS, garden, exported: instantOf(now) })}\n`];
  for (const entry of await store.all()) {
    const { sent: _sent, inFile: _inFile, refused: _refused, ...told } = entry;
    const bytes = await store.bytesOf(entry.id);
    const bare = entry.kind === "photo" ? { ...told, bytes: base64(bytes ?? new ArrayBuffer(0)) } : told;
    parts.push(`${JSON.stringify(bare)}\n`);
    await store.put({ ...entry, inFile: true });
  }
  return new Blob(parts, { type: "application/octet-stream" });
}

/** How many entries were new here; undefined when it is no such file. */
export async function takeIn(file: Blob, store: QueueStore): Promise<number | undefined> {
  const [first, ...lines] = (await file.text()).split("\n");
  if ((objectIn(first ?? "") as { plotreel?: unknown } | undefined)?.plotreel !== BEGINS.plotreel) return undefined;
  const known = new Set((await store.all()).map(({ id }) => id));
  let taken = 0;
  for (const line of lines) {
    const entry = objectIn(line) as (Queued & { bytes?: string }) | undefined;
    if (typeof entry?.id !== "string" || known.has(entry.id)) continue;
    const { bytes, ...bare } = entry;
    await store.put({ ...bare, inFile: true } as Queued, bytes === undefined ? undefined : bytesIn(bytes));
    taken += 1;
  }
  return taken;
}

function objectIn(line: string): object | undefined {
  try {
    const found: unknown = JSON.parse(line);
    return typeof found === "object" && found !== null ? found : undefined;
  } catch {
    return undefined;
  }
}

/** Letters of a call: more at once than this, and some browsers give up. */
const AT_ONCE = 0x8000;

function base64(bytes: ArrayBuffer): string {
  const all = new Uint8Array(bytes);
  let text = "";
  for (let at = 0; at < all.length; at += AT_ONCE) text += String.fromCharCode(...all.subarray(at, at + AT_ONCE));
  return btoa(text);
}

function bytesIn(text: string): ArrayBuffer {
  return Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0)).buffer;
}
