/** Photos dropped on a page while `watch` runs: to their bed or variety, as `ingest` brings them in, and over no other file. */
import type { Garden } from "../model.ts";
import { imageKind, ingestPhotos, openPhotoStore, type PhotoSource } from "../photos/index.ts";
import type { PhotoAsk, PhotoTaking, TapAnswer } from "../site/index.ts";
import type { Effects } from "./effects.ts";

/** What cameras and phones give, and how their files end. */
const ENDINGS: Readonly<Record<string, readonly [string, ...string[]]>> = {
  jpeg: [".jpg", ".jpeg"],
  png: [".png"],
  heic: [".heic", ".heif"],
  webp: [".webp"],
};

/** Letters of a name that every disk takes. */
const LONGEST_NAME = 100;

export interface PhotoTaker extends PhotoTaking {
  /** What taking it would do. */
  look(ask: PhotoAsk): Promise<TapAnswer>;
  see(garden: Garden): void;
}

export function photoTaker(first: Garden, recordsDir: string, effects: Pick<Effects, "err">): PhotoTaker {
  let garden = first;
  let last: Promise<unknown> = Promise.resolve();

  async function take({ of, name, modified, bytes }: PhotoAsk, dryRun: boolean): Promise<TapAnswer> {
    const into = folderOf(of);
    if (into === undefined) return { told: "That bed or variety is not in the records any more." };
    const ending = ENDINGS[imageKind(bytes) ?? ""];
    if (ending === undefined)
      return { told: `${safeName(name, [""])} is no photo that can be kept here: JPEG, PNG, HEIC or WebP.` };
    const file = `${into.slice("photos/".length)}/${safeName(name, ending)}`;
    const store = openPhotoStore(recordsDir);
    const { broughtIn, alreadyThere, stopped } = await ingestPhotos({
      source: inMemory(file, bytes, modified),
      // Not on the list of what cards brought: a photo that was dropped on the wrong bed may be dropped again.
      store: { ...store, listed: async () => "", addToList: async () => undefined },
      beds: garden.beds,
      timeZone: garden.settings.timeZone,
      into,
      dryRun,
    });
    if (!dryRun) await store.close();
    const [put, there] = [broughtIn[0]?.to, alreadyThere[0]?.to];
    if (put !== undefined && dryRun) return { told: `It would lie in ${put}.`, done: true };
    if (put !== undefined) effects.err(`Brought in: ${put}`);
    if (put !== undefined) return { told: `It lies in ${put}.`, done: true };
    if (there !== undefined) return { told: `It is in the records already: ${there}.`, done: true };
    return { told: stopped === undefined ? "It could not be kept." : `It could not be kept: ${stopped}.` };
  }

  function folderOf(of: PhotoAsk["of"]): string | undefined {
    if ("bed" in of) {
      const { bed, viewpoint } = of;
      if (!garden.beds.has(bed) || !isPlain(bed)) return undefined;
      if (viewpoint === undefined) return `photos/${bed}`;
      return isPlain(viewpoint) && viewpoint !== "" && viewpoint.length <= LONGEST_NAME
        ? `photos/${bed}/${viewpoint}`
        : undefined;
    }
    return garden.varieties.has(of.variety) && isPlain(of.variety) ? `photos/varieties/${of.variety}` : undefined;
  }

  return {
    see(newest) {
      garden = newest;
    },
    look: (ask) => take(ask, true),
    take(ask) {
      // One after the other: each looks at what is there before it takes a name.
      const answer = last.then(() => take(ask, false));
      last = answer.catch(() => undefined);
      return answer;
    },
  };
}

/** An id that is one folder's name and leads nowhere else. */
function isPlain(id: string): boolean {
  return !/^\.|[\\/:\p{Cc}]/u.test(id);
}

/** The last part of a name, without what a disk or a terminal would take for more than a name. */
function safeName(name: string, [ending, ...others]: readonly [string, ...string[]]): string {
  const bare = (name.split(/[\\/]/u).at(-1) ?? "")
    .normalize("NFC")
    .replace(/[\p{Cc}\p{Cf}<>:"|?*]/gu, "")
    .replace(/^[. ]+/u, "");
  const [stem, own] = splitEnding(bare);
  const kept = [ending, ...others].includes(own.toLowerCase()) ? own : ending;
  return `${Array.from(stem).slice(0, LONGEST_NAME).join("") || "photo"}${kept}`;
}

function splitEnding(name: string): readonly [stem: string, ending: string] {
  const dot = name.lastIndexOf(".");
  return dot > 0 ? [name.slice(0, dot), name.slice(dot)] : [name, ""];
}

function inMemory(path: string, bytes: Uint8Array, modified: number): PhotoSource {
  return {
    list: async () => [{ path, size: bytes.length, modified, kind: "file" }],
    read: async () => bytes,
    async *chunks() {
      yield bytes;
    },
    isThere: async () => true,
  };
}
