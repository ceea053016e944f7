/** What a draft could not keep, bed by bed: the page says it, so that nobody takes the draft for more than it is. */
import { capital, inBed, type Sentence, say, sayList, sayNumber } from "../language/index.ts";
import type { Bed } from "../model.ts";
import type { Assignment, Place, Wish } from "./plan-solver.ts";
import type { Rotation } from "./rotation.ts";
import type { SeasonBook } from "./season-book.ts";

/** Room is reckoned by the handbook's distances, so a tenth over is none. */
const roughly = 1.1;

/** `year`: the season drafted. */
export function compromises(
  book: SeasonBook,
  rotation: Rotation,
  year: number,
  wishes: readonly Wish[],
  places: readonly Place[],
  solved: Assignment,
): readonly Sentence[] {
  const cropName = (id: string) => book.garden.crops.get(id)?.plural ?? id;
  const inPlace = Map.groupBy(wishes, (_, index) => solved.placeOf[index]);
  const told = places.flatMap((place, at) => {
    const bed = book.garden.beds.get(place.bed);
    const here = inPlace.get(at) ?? [];
    if (bed === undefined || here.length === 0) return [];
    return [
      ...tooSoon(bed, here, rotation, year, cropName),
      ...tooFull(bed, here, place),
      ...tooShady(bed, here, place, cropName),
    ];
  });
  const homeless = new Set(inPlace.get(undefined)?.map(({ crop }) => crop));
  return [
    ...told,
    ...[...homeless].map((crop) =>
      say(`No bed is left for the ${cropName(crop)}.`, [{ place: { file: "garden.md", line: 1, column: 1 } }]),
    ),
  ];
}

function tooSoon(
  bed: Bed,
  here: readonly Wish[],
  rotation: Rotation,
  year: number,
  cropName: (id: string) => string,
): readonly Sentence[] {
  const rows = rotation.notYet.get(bed.id) ?? [];
  return [...Map.groupBy(here, ({ family }) => family)].flatMap(([family, all]) => {
    const soon = rows.find((one) => one.family === family && one.from > year);
    if (soon === undefined) return [];
    const crops = sayList([...new Set(all.map(({ crop }) => cropName(crop)))]);
    const reason = soon.disease === undefined ? soon.reason : `${soon.disease} was seen there`;
    const why = all.some(({ pinned }) => pinned !== undefined)
      ? "because they are pinned there"
      : "because no other bed has room for them at less cost";
    return [
      say(`${capital(crops)} would be back ${inBed(bed)} before ${soon.from}: ${reason}. The draft does it ${why}.`, [
        bed,
      ]),
    ];
  });
}

function tooFull(bed: Bed, here: readonly Wish[], place: Place): readonly Sentence[] {
  const taken = here.reduce((sum, { area }) => sum + area, 0);
  if (place.area === undefined || place.area <= 0 || taken <= place.area * roughly) return [];
  return [
    say(
      `What the draft puts ${inBed(bed)} needs ${moreRoom(taken / place.area)} there is: let one crop follow another, or leave some out.`,
      [bed],
    ),
  ];
}

function tooShady(
  bed: Bed,
  here: readonly Wish[],
  place: Place,
  cropName: (id: string) => string,
): readonly Sentence[] {
  const sunny = [...new Set(here.filter(({ sun }) => sun).map(({ crop }) => cropName(crop)))];
  if (!place.shady || place.cover || sunny.length === 0) return [];
  return [say(`${capital(sayList(sunny))} ${inBed(bed)} would have shade for part of the day.`, [bed])];
}

/** "about a quarter more room than", "about six times the room" */
function moreRoom(times: number): string {
  if (times < 1.2) return "a little more room than";
  if (times < 1.4) return "about a quarter more room than";
  if (times < 1.75) return "about half as much room again as";
  return `about ${sayNumber(Math.round(times))} times the room`;
}
