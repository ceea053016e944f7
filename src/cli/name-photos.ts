/** Photos named by tap while `watch` runs: what is written is what a person would write beside the photo, and can be taken back. */
import { isUtf8 } from "node:buffer";
import { createHash } from "node:crypto";
import path from "node:path";
import type { Garden } from "../model.ts";
import { namesOfGarden, readFileAt, type SidecarKey, sidecarFile, withSidecarKey } from "../records/index.ts";
import type { NamingAnswer, NamingAsk, PhotoNaming } from "../site/index.ts";
import type { Effects } from "./effects.ts";

/** A caption longer than this is a note. */
const longest = 300;

interface Written {
  readonly file: string;
  /** Undefined when there was no such file. */
  readonly before: Uint8Array | undefined;
  readonly after: Uint8Array;
}

export interface PhotoNamer extends PhotoNaming {
  /** From now on this garden is the one whose photos are named. */
  see(garden: Garden): void;
}

export function photoNamer(first: Garden, recordsDir: string, effects: Effects): PhotoNamer {
  let garden = first;
  const written: Written[] = [];

  return {
    see(newest) {
      garden = newest;
    },
    state: (photo) => digestOf(bytesOf(fileFor(photo))),
    async name(ask) {
      if (!garden.photos.some(({ path: known }) => known === ask.photo))
        return { told: "This photo is not in the records any more." };
      const said = keyAndValue(ask, garden);
      if ("told" in said) return said;
      const file = fileFor(ask.photo);
      const before = bytesOf(file);
      if (digestOf(before) !== ask.state) return changedBeneath(file, before);
      const after = withKey(before, said.key, said.value);
      if ("refused" in after) return { told: `${file} was left as it is. ${after.refused}` };
      const target = absolute(file);
      const text = Buffer.from(after.bytes).toString("utf8");
      const isDone =
        before === undefined
          ? await effects.createText(target, text)
          : await effects.editBytes(target, before, after.bytes);
      if (!isDone) return changedBeneath(file, bytesOf(file));
      effects.err(`Written by tap: ${file} says ${said.key}: ${said.value}`);
      return {
        told: `${file} now says “${said.key}: ${said.value}”.`,
        undo: written.push({ file, before, after: after.bytes }) - 1,
      };
    },
    async undo(id) {
      const last = written[id];
      if (last === undefined) return { told: "Nothing of that is known any more." };
      const target = absolute(last.file);
      const isAsWritten = bytesOf(last.file)?.equals(last.after) === true;
      const isDone =
        isAsWritten &&
        (last.before === undefined
          ? await effects.removeBytes(target, last.after)
          : await effects.editBytes(target, last.after, last.before));
      if (!isDone) return { told: `${last.file} was changed since, so it was left as it is.` };
      effects.err(`Taken back: ${last.file}`);
      return {
        told: last.before === undefined ? `${last.file} is gone again.` : `${last.file} is as it was.`,
        done: true,
      };
    },
  };

  function fileFor(photo: string): string {
    return garden.photoSidecars.get(photo)?.place?.file ?? sidecarFile(photo);
  }

  function absolute(file: string): string {
    return path.join(recordsDir, ...file.split("/"));
  }

  function bytesOf(file: string): Buffer | undefined {
    try {
      return readFileAt(absolute(file));
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === "ENOENT") return undefined;
      throw error;
    }
  }
}

function changedBeneath(file: string, now: Uint8Array | undefined): NamingAnswer {
  const text = now === undefined ? "" : Buffer.from(now).toString("utf8");
  return {
    told:
      now === undefined ? `${file} is gone since this page was made.` : `${file} was changed since this page was made.`,
    asks: { state: digestOf(now), text },
  };
}

function digestOf(bytes: Uint8Array | undefined): string {
  return bytes === undefined ? "" : createHash("sha256").update(bytes).digest("hex").slice(0, 24);
}

/** A name that leads somewhere is written as it is; anything else is no name, but can be a caption. */
function keyAndValue(
  { as, name }: NamingAsk,
  garden: Garden,
): { readonly key: SidecarKey; readonly value: string } | NamingAnswer {
  const value = name.replace(/\s+/gu, " ").trim();
  if (value === "") return { told: "Write a name first." };
  if (value.length > longest) return { told: "That is too long to stand below a photo. A note has room for it." };
  if (as === "caption") return { key: "caption", value };
  const names = namesOfGarden(garden);
  if (names.find("variety", value) !== undefined) return { key: "varieties", value };
  if (names.find("bed", value) !== undefined) return { key: "bed", value };
  return { told: `No variety or bed is called “${value}”. It can stand below the photo as its caption.` };
}

function withKey(before: Uint8Array | undefined, key: SidecarKey, value: string) {
  if (before !== undefined && !isUtf8(before)) return { refused: "Save it as UTF-8 first." };
  const text = before === undefined ? undefined : Buffer.from(before).toString("utf8");
  const changed = withSidecarKey(text, key, value);
  return "refused" in changed ? changed : { bytes: Buffer.from(changed.text, "utf8") };
}
