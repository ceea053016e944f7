/** What the season came to in all. */
import { cropOf } from "../../crop-of.ts";
import type { Telling } from "./telling.ts";
import { type Part, part, type Thread, type Told } from "./thread.ts";

/** Share of the weight from which on one crop made the year. */
const largePart = 0.2;

/** Only of a season that is told whole and weighed as the last one was, and only when no line leaves the sum in doubt. */
export function yearThread(telling: Telling): readonly Thread[] {
  const { book, kind, from, to, season } = telling.material;
  const same = kind === "season" && from === season.from ? weighed(telling) : undefined;
  if (same === undefined) return [];
  const ratio = same.now.sum.grams / same.last.sum.grams;
  const crops = Map.groupBy(
    same.now.lines.filter(({ grams }) => grams !== undefined),
    (event) => cropOf(book.garden, event)?.id ?? "",
  );
  const weight = (id: string) => crops.get(id)?.reduce((sum, { grams = 0 }) => sum + grams, 0) ?? 0;
  const [most] = [...crops.keys()].filter((id) => id !== "").toSorted((a, b) => weight(b) - weight(a));
  const share = most === undefined ? 0 : weight(most) / same.now.sum.grams;
  const flowers = same.now.lines.filter(
    (event) => event.unit === "stem" && cropOf(book.garden, event)?.use === "flower",
  );
  const stems = flowers.reduce((sum, { count }) => sum + (count?.value ?? 0), 0);
  const facts: Part<Told>[] = [
    ...(most !== undefined && share >= largePart
      ? [part<Told>({ is: "mostly", of: { crop: most }, share }, crops.get(most) ?? [], to)]
      : []),
    ...(stems > 0 ? [part<Told>({ is: "stems", count: stems }, flowers, to)] : []),
  ];
  const heavier = Math.abs(Math.log2(ratio));
  return [
    {
      kind: "year",
      about: {},
      worth: 70 + Math.min(10, 8 * heavier),
      lead: part({ is: "season", ratio }, same.now.lines, to),
      now: facts,
      figure: part(
        { is: "season", grams: same.now.sum.grams, before: same.last.sum.grams, year: season.year - 1 },
        [...same.now.lines, ...same.last.lines],
        to,
      ),
      notes: [],
      gear: [],
      photos: [],
    },
  ];
}

function weighed({ picked, before, material: { from, to } }: Telling) {
  if (before === undefined) return undefined;
  const [now, last] = [picked(from, to), picked(before.from, before.to)];
  if (now.doubtful || last.doubtful || now.sum.grams <= 0 || last.sum.grams <= 0) return undefined;
  return { now, last };
}
