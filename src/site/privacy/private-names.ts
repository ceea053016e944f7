/**
 * Ids, files and photos of private records, as they would stand in a file's path or in a link. An id that a public
 * record has too gives nothing away, and neither does one of a single word, which may be anything.
 */
import type { Records } from "../../model.ts";

export interface PrivateNames {
  /** Record file by id. */
  readonly ids: ReadonlyMap<string, string>;
  /** Paths of private photos. */
  readonly photos: readonly string[];
}

export function privateNames(records: Records): PrivateNames {
  const secret = new Map<string, string>();
  const open = new Set<string>();
  const tell = (isPrivate: boolean, id: string, file: string) => {
    if (isPrivate) secret.set(id, file);
    else open.add(id);
  };
  for (const bed of records.beds.values()) {
    const inPrivateSite = bed.site !== undefined && records.sites.get(bed.site)?.private === true;
    tell(bed.private || inPrivateSite, bed.id, bed.place?.file ?? bed.id);
  }
  for (const kind of [records.sites, records.varieties, records.gear, records.trials, records.episodes]) {
    for (const record of kind.values()) tell(record.private, record.id, record.place?.file ?? record.id);
  }
  for (const note of records.notes) tell(note.private, note.id.split("/").at(-1) ?? note.id, note.place.file);
  const ids = new Map([...secret].filter(([id]) => !open.has(id) && id.includes("-")));
  const photos = [...records.photoSidecars.values()].filter((photo) => photo.private).map(({ photo }) => photo);
  return { ids, photos };
}

/** Says which private record a path or an address in a text names, as a sentence, or undefined. */
export function findPrivateName(text: string, { ids, photos }: PrivateNames): string | undefined {
  for (const [segment] of text.matchAll(/(?<=^|[/"'=(#])(?=\w*-)[\w-]+(?=$|[/"')#?.&])/g)) {
    const file = ids.get(segment.toLowerCase());
    if (file !== undefined) return `It names "${segment}", which ${file} keeps private.`;
  }
  const photo = photos.find((one) => text.includes(one));
  return photo === undefined ? undefined : `It names the private photo ${photo}.`;
}
