/** Where in its bed a lot stands, and what stands next to it. */
import { cropName, sayList, theCrop, theGear, thePlants, withPreposition } from "../language/index.ts";
import type { Lot } from "./bed-on-the-day.ts";

/** "in row 2, next to the leeks and up the arch"; undefined when nothing tells. */
export function whereIn(lot: Lot, growing: readonly Lot[]): string | undefined {
  const spot = lot.planting.spot === undefined ? undefined : withPreposition(lot.planting.spot);
  const beside = neighboursOf(lot, growing);
  const gear = lot.gear === undefined ? undefined : `on ${theGear(lot.gear.title)}`;
  const besideText =
    beside === undefined ? undefined : spot === undefined || gear === undefined ? beside : `${beside},`;
  const parts = [spot === undefined || (beside ?? gear) === undefined ? spot : `${spot},`, besideText, gear];
  const text = parts.filter((part) => part !== undefined).join(" ");
  return text === "" ? undefined : text.replace(/,$/, "");
}

/** "row 2" and "rows 2 and 3" are numbered as gardeners number them; neighbours are one apart. */
function rowsOf(lot: Lot): readonly number[] {
  const found = /\brows?\s+(\d+)(?:\s*(?:and|,|&|-|to)\s*(\d+))?/i.exec(lot.planting.spot ?? "");
  return [found?.[1], found?.[2]].filter((row) => row !== undefined).map(Number);
}

function neighboursOf(lot: Lot, growing: readonly Lot[]): string | undefined {
  const others = growing.filter(
    (other) => other !== lot && (other.variety === undefined || other.variety.id !== lot.variety?.id),
  );
  const rows = rowsOf(lot);
  if (rows.length > 0) return besideRows(lot, others, rows);
  const same = others.filter((other) => other.planting.spot !== undefined && other.planting.spot === lot.planting.spot);
  if (same.length > 0) return `with ${namesBeside(lot, same)}`;
  const only = others[0];
  const alone = lot.planting.spot === undefined && others.length === 1 && only?.planting.spot === undefined;
  return alone && only !== undefined ? `beside ${namesBeside(lot, [only])}` : undefined;
}

function besideRows(lot: Lot, others: readonly Lot[], rows: readonly number[]): string | undefined {
  const first = Math.min(...rows);
  const last = Math.max(...rows);
  const inRow = (row: number) => others.filter((other) => rowsOf(other).includes(row));
  const name = (lots: readonly Lot[]) => namesBeside(lot, lots);
  const [before, after] = [inRow(first - 1), inRow(last + 1)];
  const sharing = rows.flatMap(inRow);
  if (before.length > 0 && after.length > 0) return `between ${name(before)} and ${name(after)}`;
  const next = before.length > 0 ? before : after;
  if (next.length > 0) return `next to ${name(next)}`;
  return sharing.length > 0 ? `with ${name(sharing)}` : undefined;
}

/** Neighbours of another crop are known by their crop; of the same crop, by their variety, or as the others. */
function namesBeside(lot: Lot, others: readonly Lot[]): string {
  const { crop } = lot;
  const same = crop === undefined ? [] : others.filter((other) => other.crop?.id === crop.id);
  const several = new Set(same.map(({ variety }) => variety?.id)).size > 1;
  const names = others.map((other) => {
    if (crop !== undefined && same.includes(other)) {
      return several ? `the other ${cropName(crop, 2)}` : thePlants(other);
    }
    return other.crop === undefined ? thePlants(other) : theCrop(other.crop);
  });
  return sayList([...new Set(names)]);
}
