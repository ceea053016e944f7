/** Photos named by tap while `watch` runs: what is written is what a person would write beside the photo, and can be taken back. */
import { isUtf8 } from "node:buffer";
import type { Garden } from "../model.ts";
import { namesOfGarden, type SidecarKey, sidecarFile, withSidecarKey } from "../records/index.ts";
import type { NamingAsk, PhotoNaming, TapAnswer } from "../site/index.ts";
import type { Effects } from "./effects.ts";
import { changedBeneath, digestOf, type WrittenFiles } from "./written-files.ts";

/** A caption longer than this is a note. */
const longest = 300;

export interface PhotoNamer extends PhotoNaming {
  /** From now on this garden is the one whose photos are named. */
  see(garden: Garden): void;
}

export function photoNamer(first: Garden, files: WrittenFiles, effects: Pick<Effects, "err">): PhotoNamer {
  let garden = first;
  return {
    see(newest) {
      garden = newest;
    },
    state: (photo) => files.state(fileFor(photo)),
    async name(ask) {
      if (!garden.photos.some(({ path: known }) => known === ask.photo))
        return { told: "This photo is not in the records any more." };
      const said = keyAndValue(ask, garden);
      if ("told" in said) return said;
      const file = fileFor(ask.photo);
      const before = files.bytes(file);
      if (digestOf(before) !== ask.state) return changedBeneath(file, before);
      const after = withKey(before, said.key, said.value);
      if ("refused" in after) return { told: `${file} was left as it is. ${after.refused}` };
      const undo = await files.write(file, before, after.bytes);
      if (undo === undefined) return changedBeneath(file, files.bytes(file));
      effects.err(`Written by tap: ${file} says ${said.key}: ${said.value}`);
      return { told: `${file} now says “${said.key}: ${said.value}”.`, undo };
    },
  };

  function fileFor(photo: string): string {
    return garden.photoSidecars.get(photo)?.place?.file ?? sidecarFile(photo);
  }
}

/** A name that leads somewhere is written as it is; anything else is no name, but can be a caption. */
function keyAndValue(
  { as, name }: NamingAsk,
  garden: Garden,
): { readonly key: SidecarKey; readonly value: string } | TapAnswer {
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
