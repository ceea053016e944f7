/** The bed that changed most, by its photos from one spot: measured where they were measured, else by what stood there. */
import { daysBetween } from "../../calendar.ts";
import { cropOf } from "../../crop-of.ts";
import { bookOf } from "../../garden/index.ts";
import type { Day } from "../../model.ts";
import { toldCover } from "../../photos/index.ts";
import type { PhotoSet } from "../recap.ts";
import type { Telling } from "./telling.ts";
import { type Part, part, type Thread, type Told } from "./thread.ts";

export function changedBedThread(telling: Telling): readonly Thread[] {
  const { material } = telling;
  const sets = material.photos.filter((one) => !one.private);
  const change = (one: PhotoSet) => {
    const green = greenOf(one, telling);
    return green === undefined ? daysBetween(one.first.day, one.last.day) / 1000 : Math.abs(green.to - green.from);
  };
  const [most] = sets.toSorted((a, b) => change(b) - change(a));
  if (most === undefined) return [];
  const { to, book } = material;
  const bed = book.garden.beds.get(most.bed);
  const green = greenOf(most, telling);
  const grounds = [bed];
  const fullest = most.peak ?? most.last;
  // Hardly anything green, and nothing that stands by the notes.
  const isBare = (day: Day) =>
    day === most.first.day && green !== undefined && green.from < 0.05 && standing(most.bed, day, telling).length === 0;
  const stood = (day: Day): Part<Told> =>
    part({ is: "stood", on: day, crops: standing(most.bed, day, telling), bare: isBare(day) }, grounds, to);
  const photos = most.peak === undefined ? [most.first, most.last] : [most.first, most.peak, most.last];
  return [
    {
      kind: "bed",
      about: { bed: most.bed },
      worth: 44 + (green === undefined ? 0 : 8 * Math.abs(green.to - green.from)),
      lead: part({ is: "seen from one spot", bed: most.bed }, grounds, to),
      before: stood(most.first.day),
      now: [fullest, ...(most.peak === undefined ? [] : [most.last])].map(({ day }) => stood(day)),
      figure:
        green === undefined
          ? undefined
          : part(
              { is: "green", ...green },
              [most.first, fullest].map(({ path }) => ({ place: { file: path, line: 1, column: 1 } })),
              to,
            ),
      notes: [],
      gear: [],
      photos,
    },
  ];
}

/** Crops that stood in the bed, by name of the crop. */
function standing(bed: string, day: Day, { material: { book } }: Telling): readonly string[] {
  const { plantings } = bookOf(book.garden).stateOf(bed, day);
  const crops = plantings
    .filter(({ private: hidden, ended }) => !hidden && (ended === undefined || ended > day))
    .flatMap((planting) => cropOf(book.garden, planting)?.id ?? []);
  return [...new Set(crops)];
}

function greenOf({ first, peak, last }: PhotoSet, { material }: Telling): { from: number; to: number } | undefined {
  const measured = material.book.garden.growth?.photos;
  const cover = (path: string) => measured?.find(({ photo }) => photo === path)?.cover;
  const [from, to] = [cover(first.path), cover((peak ?? last).path)];
  return from === undefined || to === undefined || Math.abs(to - from) < toldCover ? undefined : { from, to };
}
