/** The photos of a plate: of the variety itself, by what they show of it. */
import type { Variety } from "../../model.ts";
import { SUBJECTS, type Subject, subjectOf } from "./photo-subjects.ts";
import type { ShownPhoto } from "./pictures.ts";
import type { View } from "./view.ts";

export interface PlatePhoto {
  readonly photo: ShownPhoto;
  readonly subject?: Subject | undefined;
}

/**
 * The newest of each subject, in the order of a plate; those that no word tells of stand behind the close-up, and lead where
 * there is none. A photo of several varieties tells none apart.
 */
export function platePhotos({ book }: Pick<View, "book">, variety: Variety): readonly PlatePhoto[] {
  const own = (book.byVariety.get(variety.id) ?? []).filter(({ varieties }) => varieties.length === 1);
  const found = own.map((photo): PlatePhoto => ({ photo, subject: subjectOf(photo, variety) }));
  const newest = [undefined, ...SUBJECTS].flatMap((subject) => found.find((one) => one.subject === subject) ?? []);
  return newest.toSorted((a, b) => rank(a) - rank(b));
}

function rank({ subject }: PlatePhoto): number {
  return subject === undefined ? 0.5 : SUBJECTS.indexOf(subject);
}
