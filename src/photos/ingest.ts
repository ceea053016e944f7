/**
 * Brings photos from a phone's or a card's folder into the records: to their bed and viewpoint where these are known,
 * else to their day. Copies only; what is there already is never touched, and nothing is brought in twice.
 */
import type { Bed, Day } from "../model.ts";
import { normaliseName } from "../records/index.ts";
import { photoHead } from "./exif-tags.ts";
import { imageKind } from "./image-kind.ts";
import { openPhotoSource, openPhotoStore, type PhotoSource, type PhotoStore, type SourceFile } from "./ingest-files.ts";
import { photoMoment } from "./photo-date.ts";
import { bedNamed, viewpointName } from "./place-photo.ts";
import { viewpointInName } from "./viewpoint-file-name.ts";

export interface IngestOptions {
  readonly source: PhotoSource;
  readonly store: PhotoStore;
  readonly beds: ReadonlyMap<string, Bed>;
  /** IANA zone of the garden. */
  readonly timeZone: string;
  /** Tells what would be done and does nothing. */
  readonly dryRun: boolean;
  readonly onProgress?: ((done: number, total: number) => void) | undefined;
}

export interface BroughtIn {
  /** Relative to the folder the photos come from. */
  readonly from: string;
  /** Relative to the records folder. */
  readonly to: string;
  readonly bed?: string | undefined;
  readonly viewpoint?: string | undefined;
  readonly day?: Day | undefined;
  /** True when another photo has the name already, so that this one got a number behind it. */
  readonly renamed: boolean;
}

export type LeftReason = "no photo" | "empty" | "no picture in it" | "link" | "unreadable";

export interface IngestSummary {
  /** In order of their source; with `dryRun` what would be brought in. */
  readonly broughtIn: readonly BroughtIn[];
  /** The photo in the records that has the same content. */
  readonly alreadyThere: readonly { readonly from: string; readonly to: string }[];
  readonly leftAlone: readonly { readonly from: string; readonly why: LeftReason }[];
  /** Set when the run had to stop early: "the disk is full". What was brought in until then is complete. */
  readonly stopped?: string | undefined;
}

const photoEnding = /\.(jpe?g|hei[cf]|png|webp|avif)$/i;

/** Ingest between two folders on disk; `from` must exist. */
export async function ingestFolder(
  from: string,
  recordsDir: string,
  options: Omit<IngestOptions, "source" | "store">,
): Promise<IngestSummary> {
  const source = await openPhotoSource(from, recordsDir);
  const store = openPhotoStore(recordsDir);
  try {
    return await ingestPhotos({ ...options, source, store });
  } finally {
    if (!options.dryRun) await store.close();
  }
}

export async function ingestPhotos(options: IngestOptions): Promise<IngestSummary> {
  const { source, store, onProgress } = options;
  const files = await source.list();
  const present = await Present.of(store);
  const broughtIn: BroughtIn[] = [];
  const alreadyThere: { from: string; to: string }[] = [];
  const leftAlone: { from: string; why: LeftReason }[] = [];
  for (const [index, file] of files.entries()) {
    const from = file.path;
    const photo = await photoIn(file, source);
    if ("why" in photo && photo.why === "unreadable" && file.kind === "file" && !(await source.isThere()))
      return { broughtIn, alreadyThere, leftAlone, stopped: "the folder the photos come from is no longer there" };
    if ("why" in photo) leftAlone.push({ from, why: photo.why });
    else {
      const same = await present.sameAs(photo.bytes);
      if (same !== undefined) alreadyThere.push({ from, to: same });
      else {
        try {
          const put = await bring(file, photo.bytes, present, options);
          if (typeof put === "string") alreadyThere.push({ from, to: put });
          else broughtIn.push({ from, ...put });
        } catch (error) {
          return { broughtIn, alreadyThere, leftAlone, stopped: reasonToStop(error) };
        }
      }
    }
    onProgress?.(index + 1, files.length);
  }
  return { broughtIn, alreadyThere, leftAlone };
}

async function photoIn(
  { path, size, kind }: SourceFile,
  source: PhotoSource,
): Promise<{ readonly bytes: Uint8Array } | { readonly why: LeftReason }> {
  if (kind !== "file") return { why: kind };
  if (!photoEnding.test(path)) return { why: "no photo" };
  if (size === 0) return { why: "empty" };
  const bytes = await source.read(path).catch(() => undefined);
  if (bytes === undefined) return { why: "unreadable" };
  return imageKind(bytes) === undefined ? { why: "no picture in it" } : { bytes };
}

interface Goal {
  /** Relative to the records folder. */
  readonly folder: string;
  readonly name: string;
  readonly bed?: string | undefined;
  readonly viewpoint?: string | undefined;
  readonly day?: Day | undefined;
}

/** Bed and viewpoint come from the viewpoint page's file name, or from folders that are named after them. */
async function goalOf(
  { path, modified }: SourceFile,
  bytes: Uint8Array,
  { beds, timeZone }: IngestOptions,
): Promise<Goal> {
  const folders = path.split("/");
  const name = (folders.pop() ?? "").normalize("NFC");
  const { tags } = await photoHead(bytes);
  const { day, dateBasis } = photoMoment({ tags, path, modified, timeZone });
  const said = viewpointInName(name) ?? placeInFolders(folders, beds);
  const bed = said && bedNamed(said.bed, beds);
  if (bed) {
    const viewpoint = said.viewpoint === undefined ? undefined : viewpointName(said.viewpoint, bed);
    const folder = ["photos", bed.id, ...(viewpoint === undefined ? [] : [folderName(viewpoint)])].join("/");
    return { folder, name, bed: bed.id, viewpoint, day };
  }
  // A day folder counts as a witness of the day. The file's own time is none, so such a photo lies beside the folders.
  const folder = day === undefined || dateBasis === "file time" ? "photos" : `photos/${day}`;
  return { folder, name, day };
}

function placeInFolders(folders: readonly string[], beds: ReadonlyMap<string, Bed>) {
  for (const [index, folder] of folders.entries()) {
    const bed = bedNamed(folder, beds);
    if (!bed) continue;
    const inside = folders[index + 1];
    const known = bed.viewpoints.some(
      ({ name }) => inside !== undefined && normaliseName(name) === normaliseName(inside),
    );
    return { bed: bed.id, viewpoint: known ? inside : undefined };
  }
  return undefined;
}

function folderName(viewpoint: string): string {
  return viewpoint.trim().replace(/[\s/\\]+/g, "-");
}

/** Puts a photo under the first free name; the path of the same photo when another run has just brought it in. */
async function bring(
  file: SourceFile,
  bytes: Uint8Array,
  present: Present,
  options: IngestOptions,
): Promise<Omit<BroughtIn, "from"> | string> {
  const { folder, name, bed, viewpoint, day } = await goalOf(file, bytes, options);
  for (let number = 1; ; number++) {
    const to = `${folder}/${number === 1 ? name : numbered(name, number)}`;
    if (present.has(to)) continue;
    if (!options.dryRun && !(await options.store.put(to, bytes, file.modified))) {
      // Between looking and writing somebody else took the name.
      const there = await options.store.read(to);
      await present.add(to, there);
      const same = await present.sameAs(bytes);
      if (same !== undefined) return same;
      continue;
    }
    await present.add(to, bytes);
    return { to, bed, viewpoint, day, renamed: number > 1 };
  }
}

function numbered(name: string, number: number): string {
  const dot = name.lastIndexOf(".");
  return `${name.slice(0, dot)}-${number}${name.slice(dot)}`;
}

/** Failures of the disk or of its rights end the run: the next photo would meet the same. */
function reasonToStop(error: unknown): string {
  const { code, syscall } = error as NodeJS.ErrnoException;
  switch (code) {
    case "ENOSPC":
    case "EDQUOT":
      return "the disk is full";
    case "EACCES":
    case "EPERM":
    case "EROFS":
      return "the records folder does not let itself be written to";
    default:
      if (syscall === undefined) throw error;
      return `the system would not write into the records (${code})`;
  }
}

/** What the records hold already, by name and by content. Content is hashed only where two sizes agree. */
class Present {
  readonly #store: PhotoStore;
  /** Folded to one case, since some disks tell no difference. */
  readonly #names: Set<string> = new Set();
  readonly #bySize: Map<number, string[]> = new Map();
  readonly #hashes: Map<string, string | undefined> = new Map();

  private constructor(store: PhotoStore) {
    this.#store = store;
  }

  static async of(store: PhotoStore): Promise<Present> {
    const present = new Present(store);
    for (const { path, size } of await store.list()) present.#enter(path, size);
    return present;
  }

  has(path: string): boolean {
    return this.#names.has(folded(path));
  }

  async sameAs(bytes: Uint8Array): Promise<string | undefined> {
    const candidates = this.#bySize.get(bytes.length) ?? [];
    if (candidates.length === 0) return undefined;
    const wanted = await hashOf(bytes);
    for (const path of candidates) if ((await this.#hash(path)) === wanted) return path;
    return undefined;
  }

  async add(path: string, bytes: Uint8Array): Promise<void> {
    this.#enter(path, bytes.length);
    this.#hashes.set(path, await hashOf(bytes));
  }

  #enter(path: string, size: number): void {
    this.#names.add(folded(path));
    const known = this.#bySize.get(size);
    if (known) known.push(path);
    else this.#bySize.set(size, [path]);
  }

  async #hash(path: string): Promise<string | undefined> {
    if (!this.#hashes.has(path)) {
      const bytes = await this.#store.read(path).catch(() => undefined);
      this.#hashes.set(path, bytes && (await hashOf(bytes)));
    }
    return this.#hashes.get(path);
  }
}

function folded(path: string): string {
  return path.normalize("NFC").toLowerCase();
}

async function hashOf(bytes: Uint8Array): Promise<string> {
  return Buffer.from(await crypto.subtle.digest("SHA-256", bytes as Uint8Array<ArrayBuffer>)).toString("hex");
}
