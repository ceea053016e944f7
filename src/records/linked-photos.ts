/** Photos that a note's links and images lead to. */
import { posix } from "node:path";
import type { Problem } from "../model.ts";
import { photoEnding } from "./file-names.ts";
import { didYouMean } from "./nearest-spelling.ts";
import type { ParsedFile } from "./parsed-files.ts";
import { problem } from "./problem-rules.ts";

export interface LinkedPhoto {
  readonly photo: string;
  /** Its description in the note. */
  readonly words?: string | undefined;
  /** Where in the note's text. */
  readonly from: number;
}

/** Paths relative to the records folder. An address may start from the note's own folder or from the records folder. */
export function linkedPhotos(
  parsed: ParsedFile,
  photos: ReadonlySet<string>,
  problems: Problem[],
): readonly LinkedPhoto[] {
  const found: LinkedPhoto[] = [];
  for (const link of parsed.tree?.linked ?? []) {
    const address = decode(link.address.replace(/[?#].*$/s, ""));
    if (!photoEnding.test(address)) continue;
    const candidates = [posix.join(posix.dirname(parsed.file), address), posix.normalize(address.replace(/^\/+/, ""))];
    const photo = candidates.find((candidate) => photos.has(candidate));
    if (photo !== undefined) {
      found.push({ photo, words: link.words, from: link.from });
      continue;
    }
    problems.push(
      problem(
        "link/unknown-photo",
        { file: parsed.file, line: link.line, column: link.column },
        `There is no photo at "${link.address}".`,
        didYouMean(candidates[1] ?? address, photos) ??
          "Write its path from the records folder, for example photos/long-bed/gate/2026-05-16.jpg.",
      ),
    );
  }
  return found;
}

/** Spaces in addresses are written %20; an address that is not well formed stands as it is. */
function decode(address: string): string {
  try {
    return decodeURIComponent(address);
  } catch {
    return address;
  }
}
