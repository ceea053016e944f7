/** Photos, the sidecars beside them, and what else lies among them. */
import type { Problem } from "../model.ts";
import { head, photoEnding, type RecordPlace, recordEnding } from "./file-names.ts";
import { didYouMean } from "./nearest-spelling.ts";
import { problem } from "./problem-rules.ts";

/** Ids of sidecars are the paths of their photos. */
export function placeSidecars(files: readonly string[], photos: readonly string[], problems: Problem[]): RecordPlace[] {
  const photoOf = new Map(photos.map((photo) => [photo.replace(photoEnding, ""), photo]));
  const sidecars: RecordPlace[] = [];
  for (const file of files.filter((name) => recordEnding.test(name))) {
    // Both gate.md and gate.jpg.md stand beside gate.jpg.
    const beside = file.replace(recordEnding, "");
    const photo = photoOf.get(beside) ?? (photos.includes(beside) ? beside : undefined);
    if (photo !== undefined) sidecars.push({ file, id: photo });
    else {
      problems.push(
        problem(
          "link/unknown-photo",
          head(file),
          "There is no photo beside this file that it could speak of.",
          didYouMean(beside, photoOf.keys()) ?? "Name it like its photo, with the ending .md.",
        ),
      );
    }
  }
  return sidecars;
}

/** Pictures and films of kinds that are not read; a camera's or a program's own files among the photos are nobody's mistake. */
const otherPictures = /\.(gif|tiff?|bmp|jxl|svg|mov|mp4|m4v|avi|mkv|dng|cr[23]|nef|arw|raf|orf|rw2)$/i;

/** One hint for each ending, at the first file that has it. */
export function notPhotos(files: readonly string[]): Problem[] {
  const byEnding = new Map<string, string[]>();
  for (const file of files) {
    const ending = otherPictures.exec(file)?.[0].toLowerCase();
    if (ending !== undefined) byEnding.set(ending, [...(byEnding.get(ending) ?? []), file]);
  }
  return [...byEnding].map(([ending, [first = "", ...more]]) =>
    problem(
      "folder/not-a-photo",
      head(first),
      more.length === 0
        ? `This file has the ending ${ending} and is not read as a photo.`
        : `This file and ${more.length} more have the ending ${ending} and are not read as photos.`,
      "Photos are JPEG, HEIC, PNG or WebP files.",
    ),
  );
}
