/** Which bed and viewpoint a photo belongs to: by its sidecar, by its folder, or by a note that links it. */
import type { Bed, PhotoSidecar, Records } from "../model.ts";
import { normaliseName } from "../records/index.ts";
import { isDated } from "./file-name-date.ts";

export interface PhotoPlace {
  /** Bed id. */
  readonly bed?: string | undefined;
  readonly viewpoint?: string | undefined;
}

/** Bed of each photo that a note links and the note is about one bed only. */
export type LinkedBeds = ReadonlyMap<string, string>;

export function linkedBeds(records: Records): LinkedBeds {
  const beds = new Map<string, string>();
  for (const note of records.notes) {
    const [bed, ...others] = note.beds;
    if (bed === undefined || others.length > 0) continue;
    for (const photo of note.photos) if (!beds.has(photo)) beds.set(photo, bed);
  }
  return beds;
}

export function placePhoto(
  path: string,
  sidecar: PhotoSidecar | undefined,
  beds: ReadonlyMap<string, Bed>,
  links: LinkedBeds,
): PhotoPlace {
  const [bedFolder, viewpointFolder] = path.split("/").slice(1, -1);
  const byFolder = bedFolder === undefined ? undefined : bedNamed(bedFolder, beds);
  const bed = sidecar?.bed ?? byFolder?.id ?? links.get(path);
  const record = bed === undefined ? undefined : beds.get(bed);
  const folderCounts = byFolder !== undefined && byFolder.id === bed;
  const viewpoint =
    sidecar?.viewpoint ??
    (folderCounts && viewpointFolder !== undefined && !isDated(viewpointFolder) ? viewpointFolder : undefined);
  return { bed, viewpoint: viewpoint === undefined ? undefined : viewpointName(viewpoint, record) };
}

/** The bed that a folder is named after: by id, title or another name. */
export function bedNamed(folder: string, beds: ReadonlyMap<string, Bed>): Bed | undefined {
  const exact = beds.get(folder);
  if (exact) return exact;
  const wanted = normaliseName(folder);
  for (const bed of beds.values()) {
    if ([bed.id, bed.title, ...bed.alsoCalled].some((name) => normaliseName(name) === wanted)) return bed;
  }
  return undefined;
}

/** The viewpoint as the bed record spells it, so that "Gate" and "gate" are one series. */
export function viewpointName(folder: string, bed: Bed | undefined): string {
  if (bed?.viewpoints.some(({ name }) => name === folder)) return folder;
  return bed?.viewpoints.find(({ name }) => normaliseName(name) === normaliseName(folder))?.name ?? folder;
}
