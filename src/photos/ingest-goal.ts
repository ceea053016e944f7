/** Where a file of a card belongs in the records: at its bed and viewpoint, else at its day, else beside its photo. */
import type { Bed, Day } from "../model.ts";
import { normaliseName } from "../records/index.ts";
import type { PhotoMoment } from "./photo-date.ts";
import { bedNamed, viewpointName } from "./place-photo.ts";
import { viewpointInName } from "./viewpoint-file-name.ts";

export interface Goal {
  /** Relative to the records folder. */
  readonly folder: string;
  readonly name: string;
  readonly bed?: string | undefined;
  readonly viewpoint?: string | undefined;
  readonly day?: Day | undefined;
}

/** Bed and viewpoint come from the viewpoint page's file name, or from folders that are named after them. */
export function goalOf(path: string, { day, dateBasis }: PhotoMoment, beds: ReadonlyMap<string, Bed>): Goal {
  const folders = path.split("/");
  const name = (folders.pop() ?? "").normalize("NFC");
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

/** A photo or film and where it lies in the records. */
export interface Placed extends Pick<Goal, "bed" | "viewpoint" | "day"> {
  readonly from: string;
  readonly to: string;
}

/** Beside what it belongs to, and under the name which that got. */
export function goalBeside(path: string, { to, bed, viewpoint, day, from }: Placed): Goal {
  const folder = to.slice(0, to.lastIndexOf("/"));
  const name = (path.split("/").pop() ?? "").normalize("NFC");
  const [before, now] = [stem(from), stem(to)];
  const follows = before !== now && name.toLowerCase().startsWith(before.toLowerCase());
  return { folder, name: follows ? now + name.slice(before.length) : name, bed, viewpoint, day };
}

export function stem(path: string): string {
  const name = (path.split("/").pop() ?? "").normalize("NFC");
  const dot = name.lastIndexOf(".");
  return dot > 0 ? name.slice(0, dot) : name;
}
