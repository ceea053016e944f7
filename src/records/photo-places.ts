/** Photos, the sidecars beside them, and what else lies among them. */
import type { Problem, Sound } from "../model.ts";
import {
  baseName,
  head,
  mediaEnding,
  photoEnding,
  rawEnding,
  recordEnding,
  soundEnding,
  textEnding,
  transcriptEnding,
} from "./file-names.ts";
import { didYouMean, nearestSpellings } from "./nearest-spelling.ts";
import { momentName } from "./picture-names.ts";
import { problem } from "./problem-rules.ts";

export interface SidecarPlace {
  readonly file: string;
  /** Every photo it speaks of: one picture may lie there as HEIC and as JPEG. */
  readonly photos: readonly string[];
  /** Named like one file, ending and all: gate.jpg.md. */
  readonly own: boolean;
  /** A text that is not read as a sidecar, or one that lies beside no photo: those it may speak of are kept private. */
  readonly inDoubt: boolean;
}

export function placeSidecars(
  files: readonly string[],
  photos: readonly string[],
  problems: Problem[],
): readonly SidecarPlace[] {
  const byName = new Map(photos.map((photo) => [photo.toLowerCase(), photo]));
  const byStem = Map.groupBy(photos, (photo) => stemOf(photo));
  const byMoment = Map.groupBy(photos, (photo) => momentName(photo));
  const sidecars: SidecarPlace[] = [];
  for (const file of files.filter((name) => textEnding.test(name))) {
    // Both gate.md and gate.jpg.md stand beside gate.jpg, whatever letters the camera takes.
    const beside = file.replace(textEnding, "");
    const named = byName.get(beside.toLowerCase());
    const own = named !== undefined;
    const found = own ? [named] : (byStem.get(beside.toLowerCase()) ?? byMoment.get(momentName(beside)) ?? []);
    if (!recordEnding.test(file)) {
      if (found.length === 0) continue;
      problems.push(notReadBeside(file, beside));
      sidecars.push({ file, photos: found, own, inDoubt: true });
    } else if (found.length > 0) sidecars.push({ file, photos: found, own, inDoubt: false });
    else {
      const near = nearestSpellings(beside.toLowerCase(), byStem.keys()).flatMap((stem) => byStem.get(stem) ?? []);
      problems.push(withoutPhoto(file, beside, near));
      sidecars.push({ file, photos: near, own, inDoubt: true });
    }
  }
  return sidecars;
}

/** Sounds, each with the words that lie beside it under its name: "memo.txt" or "memo.m4a.txt". */
export function placeSounds(files: readonly string[]): readonly Sound[] {
  const words = new Map(
    files
      .filter((file) => transcriptEnding.test(file))
      .map((file) => [stemOf(file.replace(transcriptEnding, "")), file]),
  );
  return files.filter((file) => soundEnding.test(file)).map((file) => ({ file, words: words.get(stemOf(file)) }));
}

function stemOf(photo: string): string {
  return photo.replace(mediaEnding, "").toLowerCase();
}

function notReadBeside(file: string, beside: string): Problem {
  return problem(
    "folder/not-read",
    head(file),
    "This text beside a photo is not read, because words for a photo have the ending .md; the photo is kept private.",
    `Name it ${baseName(beside)}.md, or move it out of the photos.`,
  );
}

function withoutPhoto(file: string, beside: string, near: readonly string[]): Problem {
  const what = "There is no photo beside this file that it could speak of.";
  const fix = "Name it like its photo, with the ending .md.";
  if (near.length === 0) return problem("link/unknown-photo", head(file), what, fix);
  const named = didYouMean(
    beside,
    near.map((photo) => photo.replace(photoEnding, "")),
  );
  return problem(
    "privacy/photo",
    head(file),
    `There is no photo beside this file that it could speak of; ${near.join(" and ")} may be meant and is kept private.`,
    named ?? fix,
  );
}

/** Pictures and films of kinds that are not read; a camera's or a program's own files among the photos are nobody's mistake. */
const otherPictures = /\.(gif|tiff?|bmp|jxl|svg|avi|mkv)$/i;

/** One hint for each ending, at the first file that has it. A raw file beside its photo is of the same moment, and fine. */
export function notPhotos(files: readonly string[], photos: readonly string[]): Problem[] {
  const byEnding = new Map<string, string[]>();
  const moments = new Set(photos.map((photo) => momentName(photo)));
  for (const file of files) {
    const ending = (otherPictures.exec(file) ?? rawEnding.exec(file))?.[0].toLowerCase();
    if (ending === undefined || (rawEnding.test(file) && moments.has(momentName(file)))) continue;
    byEnding.set(ending, [...(byEnding.get(ending) ?? []), file]);
  }
  return [...byEnding].map(([ending, [first = "", ...more]]) =>
    problem(
      "folder/not-a-photo",
      head(first),
      more.length === 0
        ? `This file has the ending ${ending} and is not read as a photo.`
        : `This file and ${more.length} more have the ending ${ending} and are not read as photos.`,
      "Photos are JPEG, HEIC, AVIF, PNG or WebP files.",
    ),
  );
}
