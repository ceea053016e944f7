/** Which bed and viewpoint a photo belongs to: by its sidecar, by its folder, or by a note that links it. */
import type { Bed, PhotoSidecar, Records } from "../model.ts";

export interface PhotoPlace {
  /** Bed id. */
  readonly bed?: string | undefined;
  readonly viewpoint?: string | undefined;
  /** The folder below photos/ that should name a bed and names none. */
  readonly unknownFolder?: string | undefined;
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
  const unknownFolder = bed === undefined && bedFolder !== undefined && !isDated(bedFolder) ? bedFolder : undefined;
  return { bed, viewpoint: viewpoint === undefined ? undefined : viewpointName(viewpoint, record), unknownFolder };
}

function bedNamed(folder: string, beds: ReadonlyMap<string, Bed>): Bed | undefined {
  const exact = beds.get(folder);
  if (exact) return exact;
  const wanted = plain(folder);
  for (const bed of beds.values()) {
    if ([bed.id, bed.title, ...bed.alsoCalled].some((name) => plain(name) === wanted)) return bed;
  }
  return undefined;
}

/** The viewpoint as the bed record spells it, so that "Gate" and "gate" are one series. */
function viewpointName(folder: string, bed: Bed | undefined): string {
  return bed?.viewpoints.find(({ name }) => plain(name) === plain(folder))?.name ?? folder;
}

/** Folders of days, months and years say when, not where. */
function isDated(folder: string): boolean {
  return /^\d{4}(-\d\d){0,2}$/.test(folder);
}

function plain(name: string): string {
  return name
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[\s_-]+/g, "-");
}
