/** What notes and sidecars say of any file of a moment, said of its best picture, by which everything else knows it. */
import type { Photo, Records } from "../model.ts";

export function recordsOfMoments<Some extends Records>(records: Some, photos: readonly Photo[]): Some {
  const bestOf = new Map(photos.flatMap(({ path, also = [] }) => also.map((file) => [file, path] as const)));
  if (bestOf.size === 0) return records;
  const best = (file: string) => bestOf.get(file) ?? file;
  const photoSidecars = new Map(records.photoSidecars);
  for (const { path, also = [], ...photo } of photos) {
    const own = photoSidecars.get(path);
    const [beside] = also.flatMap((file) => records.photoSidecars.get(file) ?? []);
    if (own === undefined && beside !== undefined)
      photoSidecars.set(path, { ...beside, photo: path, plantTops: undefined, private: photo.private });
    else if (own !== undefined && photo.private) photoSidecars.set(path, { ...own, private: true });
  }
  const notes = records.notes.map((note) =>
    note.photos.some((file) => bestOf.has(file))
      ? {
          ...note,
          photos: [...new Set(note.photos.map(best))],
          ...(note.privatePhotos && { privatePhotos: [...new Set(note.privatePhotos.map(best))] }),
          ...(note.photoWords && {
            photoWords: note.photoWords.map(({ photo, words }) => ({ photo: best(photo), words })),
          }),
        }
      : note,
  );
  return { ...records, notes, photoSidecars };
}
