/**
 * Brings photos, films and what lies beside them from a phone's or a card's folder into the records: to their bed and viewpoint
 * where these are known, else to their day. Copies only; what is there already is never touched, nothing is brought in twice,
 * and what the person threw away stays away. Ends with one answer: whether the card may be cleared.
 */
import type { Bed, Day } from "../model.ts";
import { besideName, momentName } from "../records/index.ts";
import { BroughtInList } from "./brought-in-list.ts";
import { datesBeside } from "./dates-beside.ts";
import { photoHead } from "./exif-tags.ts";
import { filmTimes } from "./film-times.ts";
import { imageKind } from "./image-kind.ts";
import { type Content, contentInMemory, contentOnCard, Present, UnreadSource } from "./ingest-content.ts";
import { openPhotoSource, openPhotoStore, type PhotoSource, type PhotoStore, type SourceFile } from "./ingest-files.ts";
import { type Goal, goalBeside, goalOf, type Placed, stem } from "./ingest-goal.ts";
import { type CardFile, cardFile, isFilm, isLoss, isSound, type LeftReason } from "./ingest-kinds.ts";
import { type PhotoMoment, photoMoment } from "./photo-date.ts";

export interface IngestOptions {
  readonly source: PhotoSource;
  readonly store: PhotoStore;
  readonly beds: ReadonlyMap<string, Bed>;
  /** IANA zone of the garden. */
  readonly timeZone: string;
  /** The folder they are meant for, below the records, where somebody said so: "photos/long-bed". */
  readonly into?: string | undefined;
  /** Tells what would be done and does nothing. */
  readonly dryRun: boolean;
  readonly onProgress?: ((done: number, total: number) => void) | undefined;
}

export interface BroughtIn {
  /** Relative to the folder the photos come from. */
  readonly from: string;
  /** Relative to the records folder. */
  readonly to: string;
  readonly is: Exclude<CardFile, "litter" | "other">;
  readonly bed?: string | undefined;
  readonly viewpoint?: string | undefined;
  readonly day?: Day | undefined;
  /** True when another file has the name already, so that this one got a number behind it. */
  readonly renamed: boolean;
}

export interface IngestSummary {
  /** In order of their source; with `dryRun` what would be brought in. */
  readonly broughtIn: readonly BroughtIn[];
  /** The file in the records that has the same content. */
  readonly alreadyThere: readonly { readonly from: string; readonly to: string }[];
  readonly leftAlone: readonly { readonly from: string; readonly why: LeftReason }[];
  /** All that a person may miss is in the records, or was thrown away by them. */
  readonly safeToClear: boolean;
  /** Set when the run had to stop early: "the disk is full". What was brought in until then is complete. */
  readonly stopped?: string | undefined;
}

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
  const files = await options.source.list();
  const list = new BroughtInList(await options.store.listed(), options.store.addToList);
  const run = new Run(options, files, await Present.of(options.store), list);
  let done = 0;
  for (const file of inTurn(files)) {
    try {
      await run.take(file);
    } catch (error) {
      if (!(error instanceof UnreadSource)) return run.summary(reasonToStop(error));
      if (!(await options.source.isThere())) return run.summary("the folder the photos come from is no longer there");
      run.leave(file.path, "unreadable");
    }
    done += 1;
    options.onProgress?.(done, files.length);
  }
  return run.summary();
}

/** Photos first, then what goes where they went. */
function inTurn(files: readonly SourceFile[]): readonly SourceFile[] {
  const order: readonly CardFile[] = ["photo", "raw", "film", "sound", "words", "aside", "litter", "other"];
  const groups = Map.groupBy(files, ({ path }) => cardFile(path));
  return order.flatMap((kind) => groups.get(kind) ?? []);
}

class Run {
  readonly #options: IngestOptions;
  readonly #present: Present;
  readonly #list: BroughtInList;
  /** What programs laid beside photos, by the moment. */
  readonly #asides: ReadonlyMap<string, readonly string[]>;
  readonly #placed: Map<string, Placed[]> = new Map();
  readonly #broughtIn: BroughtIn[] = [];
  readonly #alreadyThere: { from: string; to: string }[] = [];
  readonly #leftAlone: { from: string; why: LeftReason }[] = [];

  constructor(options: IngestOptions, files: readonly SourceFile[], present: Present, list: BroughtInList) {
    this.#options = options;
    this.#present = present;
    this.#list = list;
    const asides = files.filter(({ path, kind }) => kind === "file" && cardFile(path) === "aside");
    this.#asides = Map.groupBy(
      asides.map(({ path }) => path),
      (path) => momentName(besideName(path)),
    );
  }

  leave(from: string, why: LeftReason): void {
    this.#leftAlone.push({ from, why });
  }

  summary(stopped?: string): IngestSummary {
    const bySource = (a: { from: string }, b: { from: string }) => (a.from < b.from ? -1 : 1);
    const leftAlone = this.#leftAlone.sort(bySource);
    const isThere = this.#broughtIn.length + this.#alreadyThere.length > 0;
    return {
      broughtIn: this.#broughtIn.sort(bySource),
      alreadyThere: this.#alreadyThere.sort(bySource),
      leftAlone,
      safeToClear: stopped === undefined && isThere && !leftAlone.some(({ why }) => isLoss[why]),
      ...(stopped !== undefined && { stopped }),
    };
  }

  async take(file: SourceFile): Promise<void> {
    const kind = cardFile(file.path);
    if (file.kind !== "file") this.leave(file.path, file.kind);
    else if (kind === "litter") this.leave(file.path, "camera's own");
    else if (kind === "other") this.leave(file.path, "no photo");
    else if (file.size === 0) this.leave(file.path, "empty");
    else if (kind === "words" || kind === "aside") await this.#takeBeside(file, kind);
    else await this.#takePicture(file, kind);
  }

  async #takePicture(file: SourceFile, is: "photo" | "raw" | "film" | "sound"): Promise<void> {
    const isLong = is === "film" || is === "sound";
    const content = isLong ? contentOnCard(file, this.#options.source) : contentInMemory(await this.#read(file));
    const why = await this.#notWhatItSays(file, content, is);
    if (why !== undefined) {
      this.leave(file.path, why);
      return;
    }
    const beside = is === "photo" ? undefined : this.#besideWhat(file.path);
    const goal = beside ? goalBeside(file.path, beside) : await this.#ownGoal(file, content);
    const to = await this.#settle(file, content, goal, is);
    if (to === undefined) return;
    const name = momentName(file.path);
    const { bed, viewpoint, day } = goal;
    this.#placed.set(name, [...(this.#placed.get(name) ?? []), { from: file.path, to, bed, viewpoint, day }]);
  }

  async #notWhatItSays(
    file: SourceFile,
    content: Content,
    is: "photo" | "raw" | "film" | "sound",
  ): Promise<LeftReason | undefined> {
    if (is === "film") return isFilm(await this.#head(file)) ? undefined : "no film in it";
    if (is === "sound") return isSound(await this.#head(file)) ? undefined : "no sound in it";
    return is === "photo" && !isPicture(content) ? "no picture in it" : undefined;
  }

  async #takeBeside(file: SourceFile, is: "words" | "aside"): Promise<void> {
    const beside = this.#besideWhat(besideName(file.path));
    const content = contentInMemory(await this.#read(file));
    if (beside) await this.#settle(file, content, goalBeside(file.path, beside), is);
    else if (await this.#wasThere(content)) this.leave(file.path, "thrown away");
    else this.leave(file.path, is === "words" ? "words of no photo" : "aside of no photo");
  }

  /** The file of the same name before others of the moment. */
  #besideWhat(path: string): Placed | undefined {
    const placed = this.#placed.get(momentName(path)) ?? [];
    const [own, bare] = [path.split("/").pop() ?? "", stem(path)].map((name) => name.toLowerCase());
    return (
      placed.find(({ from }) => from.toLowerCase().endsWith(`/${own}`) || from.toLowerCase() === own) ??
      placed.find(({ from }) => [own, bare].includes(stem(from).toLowerCase())) ??
      placed[0]
    );
  }

  async #ownGoal({ path, modified }: SourceFile, content: Content): Promise<Goal> {
    const { source, beds, timeZone, into } = this.#options;
    const bytes = content.data();
    const { tags } = bytes instanceof Uint8Array ? await photoHead(bytes) : {};
    const asides = this.#asides.get(momentName(path)) ?? [];
    const beside = await datesBeside(path, asides, (aside) => source.read(aside));
    const readAt = source.readAt;
    const film =
      bytes instanceof Uint8Array || !readAt
        ? undefined
        : await filmTimes((from, length) => readAt(path, from, length)).catch(() => undefined);
    const [moment, ifLocal] = [false, true].map((isLocal) =>
      photoMoment({ tags, path, beside, modified, timeZone, film: film && { ...film, isLocal } }),
    ) as [PhotoMoment, PhotoMoment];
    // A day folder would settle what nobody knows yet.
    const goal = goalOf(path, moment.day === ifLocal.day ? moment : { dateBasis: "unknown" }, beds);
    if (into === undefined || `${goal.folder}/`.startsWith(`${into}/`)) return goal;
    return { folder: into, name: goal.name, day: goal.day };
  }

  /** Where the content lies in the records now; undefined when it was left. */
  async #settle(file: SourceFile, content: Content, goal: Goal, is: BroughtIn["is"]): Promise<string | undefined> {
    const from = file.path;
    const same = await this.#present.sameAs(content);
    if (same !== undefined) {
      this.#alreadyThere.push({ from, to: same });
      await this.#remember(content, same);
      return same;
    }
    if (await this.#wasThere(content)) {
      this.leave(from, "thrown away");
      return undefined;
    }
    const mayBeNumbered = is !== "words" && is !== "aside";
    const { folder, name, bed, viewpoint, day } = goal;
    for (let number = 1; ; number++) {
      const to = `${folder}/${number === 1 ? name : numbered(name, number)}`;
      const isTaken = this.#present.has(to);
      if (isTaken && !mayBeNumbered) {
        this.leave(from, "other words there");
        return undefined;
      }
      if (isTaken) continue;
      if (!this.#options.dryRun && !(await this.#options.store.put(to, content.data(), file.modified))) {
        // Between looking and writing somebody else took the name.
        await this.#present.lookAt(to, content.size);
        const now = await this.#present.sameAs(content);
        if (now === undefined) continue;
        this.#alreadyThere.push({ from, to: now });
        return now;
      }
      this.#present.add(to, content.size, await content.hash());
      await this.#remember(content, to);
      this.#broughtIn.push({ from, to, is, bed, viewpoint, day, renamed: number > 1 });
      return to;
    }
  }

  /** Whether the records had it once; asked when they do not have it now. */
  async #wasThere(content: Content): Promise<boolean> {
    return this.#list.hasSize(content.size) && this.#list.placeOf(await content.hash()) !== undefined;
  }

  async #remember(content: Content, to: string): Promise<void> {
    if (!this.#options.dryRun) await this.#list.remember({ hash: await content.hash(), size: content.size, to });
  }

  async #read({ path }: SourceFile): Promise<Uint8Array> {
    return this.#options.source.read(path).catch((error) => {
      throw new UnreadSource(path, { cause: error });
    });
  }

  async #head({ path }: SourceFile): Promise<Uint8Array> {
    try {
      for await (const piece of this.#options.source.chunks(path)) return piece;
    } catch (error) {
      throw new UnreadSource(path, { cause: error });
    }
    return new Uint8Array();
  }
}

function isPicture(content: Content): boolean {
  const bytes = content.data();
  return bytes instanceof Uint8Array && imageKind(bytes) !== undefined;
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
