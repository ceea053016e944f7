/** The variety list of a stop: what viewers ask for, one row for each variety in the bed. */

import { isNewToGarden } from "../garden/index.ts";
import { fromWords, label, say } from "../language/index.ts";
import { comesAsPlants } from "../timeline/index.ts";
import type { BedOnTheDay, Lot } from "./bed-on-the-day.ts";
import type { VarietyRow } from "./brief.ts";
import { whereIn } from "./place-in-bed.ts";

/** In the order in which the varieties stand in the bed's own notes: row by row where rows are known, else by age. */
export function varietyRows(here: BedOnTheDay): readonly VarietyRow[] {
  const groups = Map.groupBy(here.growing, ({ planting, crop }) => planting.variety ?? crop?.id ?? planting.id);
  const rows = [...groups.values()].flatMap(([first, ...more]) =>
    first === undefined ? [] : [rowOf([first, ...more], here)],
  );
  return rows.toSorted((a, b) => a.row - b.row).map(({ row: _, ...rest }) => rest);
}

function rowOf(lots: readonly [Lot, ...Lot[]], here: BedOnTheDay): VarietyRow & { readonly row: number } {
  const [{ variety, crop, planting }] = lots;
  const counted = lots.every((lot) => lot.plants !== undefined);
  const count = counted ? lots.reduce((sum, lot) => sum + (lot.plants ?? 0), 0) : undefined;
  const lost = lots.reduce((sum, lot) => sum + lot.planting.lost, 0);
  const about = lots.some((lot) => lot.about) ? "about " : "";
  const number =
    count === undefined
      ? lots.every((lot) => lot.planting.planted === undefined && lot.planting.sown !== undefined)
        ? "sown here"
        : ""
      : `${about}${count}`;
  const gone = lost === 0 ? undefined : `${lost} lost`;
  const { sources, private: isPrivate } = say("", [...lots.flatMap((lot) => lot.grounds), variety]);
  const places = [...new Set(lots.map((lot) => whereIn(lot, here.growing)).filter((where) => where !== undefined))];
  const rowNumber = /\b(?:rows?|pots?)\s+(\d+)/i.exec(planting.spot ?? "")?.[1];
  return {
    variety: planting.variety ?? planting.crop ?? planting.id,
    title: variety?.title ?? crop?.name ?? "plants",
    crop: crop?.name,
    label: label({ variety, crop }),
    count,
    lost,
    howMany: gone === undefined ? number : number === "" ? gone : `${number} (${gone})`,
    sayAs: variety?.sayAs,
    say: variety?.sayAs ?? "",
    source: variety?.source,
    from:
      variety?.source === undefined && planting.plantsFrom === undefined
        ? ""
        : fromWords(variety?.source, planting.plantsFrom, comesAsPlants(variety?.crop ?? planting.crop)),
    newThisYear: planting.variety !== undefined && isNewToGarden(here.index.garden, planting.variety, here.day),
    where: places.length === 0 ? undefined : places.join("; "),
    plantings: lots.map((lot) => lot.planting.id),
    private: isPrivate || lots.some((lot) => lot.planting.private),
    sources,
    row: rowNumber === undefined ? Number.MAX_SAFE_INTEGER : Number(rowNumber),
  };
}
