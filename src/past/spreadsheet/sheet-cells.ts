/** What a sheet's own tags say of its cells before they are read: how far they reach, how each is shown, which have no result. */
import { attributesOf, tagsOf } from "./tags.ts";

/** Counted from one. */
export interface CellPlace {
  readonly row: number;
  readonly column: number;
}

export interface SheetCells {
  /** Rows in which a cell holds anything. */
  readonly filledRows: number;
  /** Style of cells that have one, by `cellKey`. */
  readonly styles: ReadonlyMap<string, number>;
  /** Cells that show nothing which can be read, and why. */
  readonly unread: readonly (CellPlace & { readonly name: string; readonly why: string })[];
}

/** As many as a spreadsheet has room for. */
const lastRow = 1_048_576;
const lastColumn = 16_384;
/** Cells of a table as wide and as long as the sheet says, empty ones too. */
const mostCells = 2_000_000;

export function cellKey(row: number, column: number): string {
  return `${row} ${column}`;
}

/** "too large" where no table of a garden reaches, and "damaged" for what no spreadsheet writes. */
export function cellsOf(xml: string): SheetCells | "too large" | "damaged" {
  const styles = new Map<string, number>();
  const unread: SheetCells["unread"][number][] = [];
  const filled = new Set<number>();
  let [rows, columns, count] = [0, 0, 0];
  let cell: (CellPlace & { readonly name: string; hasFormula: boolean; hasValue: boolean }) | undefined;
  for (const tag of tagsOf(xml)) {
    if (tag.name === "row") {
      const number = attributesOf(tag)?.get("r");
      if (number !== undefined && !(Number(number) <= lastRow)) return "too large";
    } else if (tag.name === "c") {
      const of = attributesOf(tag);
      const place = placeOf(of?.get("r"));
      if (of === undefined || place === undefined) return "damaged";
      if (place.row > lastRow || place.column > lastColumn) return "too large";
      count += 1;
      if (count > mostCells) return "too large";
      const style = Number(of.get("s") ?? "0");
      if (style > 0) styles.set(cellKey(place.row, place.column), style);
      if (tag.isEmpty) continue;
      [rows, columns] = [Math.max(rows, place.row), Math.max(columns, place.column)];
      if (rows * columns > mostCells) return "too large";
      const name = of.get("r") ?? "";
      if (of.get("t") === "e") unread.push({ ...place, name, why: "shows an error" });
      cell = { ...place, name, hasFormula: false, hasValue: of.get("t") === "e" };
    } else if (cell !== undefined) {
      if (tag.name === "f") cell.hasFormula = true;
      if ((tag.name === "/v" || tag.name === "/t") && tag.isBehindText) cell.hasValue = true;
      if (tag.name === "/c") {
        const { row, column, name } = cell;
        if (cell.hasValue) filled.add(row);
        if (cell.hasFormula && !cell.hasValue)
          unread.push({ row, column, name, why: "holds a formula whose result was not saved with it" });
        cell = undefined;
      }
    }
  }
  return { styles, unread, filledRows: filled.size };
}

function placeOf(name: string | undefined): CellPlace | undefined {
  const [, letters, digits] = /^\$?([a-z]{1,4})\$?(\d{1,9})$/i.exec(name ?? "") ?? [];
  if (letters === undefined || digits === undefined || Number(digits) === 0) return undefined;
  let column = 0;
  for (const letter of letters.toUpperCase()) column = column * 26 + letter.charCodeAt(0) - 64;
  return { row: Number(digits), column };
}
