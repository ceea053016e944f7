/** The sheets of a spreadsheet's own file (XLSX), and one of them as rows of text, each cell as it is shown there. */
import type { TableRow } from "../../records/index.ts";
import type { Told } from "../new-file.ts";
import { type NumberFormat, numberFormats, shownDay, shownNumber } from "./number-formats.ts";
import { cellKey, cellsOf, type SheetCells } from "./sheet-cells.ts";
import { attributesOf, tagsOf } from "./tags.ts";
import { type Parts, partsOf, storedZip, type WhyNot } from "./zip-parts.ts";

export interface Workbook {
  /** In their order, with the number of rows that hold anything. */
  readonly sheets: readonly { readonly name: string; readonly rows: number }[];
  /** One of them. */
  read(name: string): Promise<SheetRead | WhyNot>;
}

export interface SheetRead {
  /** Without rows that hold nothing. */
  readonly rows: readonly TableRow[];
  /** Cells of which nothing can be read. */
  readonly told: readonly Told[];
}

/** Bytes of a file, with its pictures. */
const largestFile = 60_000_000;
/** Bytes of all its sheets when they are unpacked. */
const largestSheets = 60_000_000;

/** A workbook, or why it cannot be read. */
export function openWorkbook(bytes: Uint8Array): Workbook | WhyNot {
  if (bytes.length > largestFile) return "too large";
  // An older file, or one with a password, is a compound file and no archive.
  if (bytes[0] === 0xd0 && bytes[1] === 0xcf) return "locked";
  const parts = partsOf(bytes, (name) => /^xl\/.*\.(?:xml|rels)$/.test(name), largestSheets);
  if (typeof parts === "string") return parts;
  // Every part that may be a sheet to another reader, whatever the workbook calls it.
  const cells = new Map<string, SheetCells>();
  for (const [file, part] of parts) {
    if (!Buffer.from(part.buffer, part.byteOffset, part.length).includes("sheetData")) continue;
    const found = cellsOf(textOf(part));
    if (typeof found === "string") return found;
    cells.set(file, found);
  }
  const files = sheetFiles(parts);
  if (files.size === 0) return "damaged";
  return {
    sheets: [...files].map(([name, file]) => ({ name, rows: cells.get(file)?.filledRows ?? 0 })),
    read: (name) => readSheetOf(parts, name, cells.get(files.get(name) ?? "")),
  };
}

async function readSheetOf(parts: Parts, name: string, cells: SheetCells | undefined): Promise<SheetRead | WhyNot> {
  const formats = numberFormats(textOf(parts.get("xl/styles.xml")));
  const { readSheet } = await import("read-excel-file/node");
  try {
    const data = await readSheet(Buffer.from(storedZip(parts)), name);
    return {
      rows: rowsOf(data, cells, formats),
      told: (cells?.unread ?? []).map(({ row, name: cell, why }) => ({ line: row, what: `${cell} ${why}` })),
    };
  } catch {
    // Whatever it stumbles over: tags that do not close, a cell out of place, a sheet that is not there.
    return "damaged";
  }
}

function rowsOf(
  data: readonly (readonly unknown[])[],
  cells: SheetCells | undefined,
  formats: readonly NumberFormat[],
): readonly TableRow[] {
  return data.flatMap((row, index) => {
    const line = index + 1;
    const texts = row.map((value, at) => {
      const style = cells?.styles.get(cellKey(line, at + 1));
      return { text: shown(value, style === undefined ? undefined : formats[style]), line, column: at + 1 };
    });
    return texts.every(({ text }) => text === "") ? [] : [{ line, cells: texts }];
  });
}

function shown(value: unknown, format: NumberFormat | undefined): string {
  if (value === null || value === undefined) return "";
  if (value instanceof Date) return Number.isNaN(value.getTime()) ? "" : shownDay(value, format);
  if (typeof value === "number") return shownNumber(value, format);
  if (typeof value === "boolean") return value ? "yes" : "no";
  return String(value).trim();
}

/** Names of sheets, and the parts that hold them. */
function sheetFiles(parts: Parts): ReadonlyMap<string, string> {
  const targets = new Map<string, string>();
  for (const tag of tagsOf(textOf(parts.get("xl/_rels/workbook.xml.rels")))) {
    const of = tag.name === "Relationship" ? attributesOf(tag) : undefined;
    const target = of?.get("Target");
    if (target === undefined) continue;
    targets.set(of?.get("Id") ?? "", target.startsWith("/") ? target.slice(1) : `xl/${target}`);
  }
  const found = new Map<string, string>();
  for (const tag of tagsOf(textOf(parts.get("xl/workbook.xml")))) {
    const of = tag.name === "sheet" ? attributesOf(tag) : undefined;
    const name = of?.get("name");
    if (name !== undefined && !found.has(name)) found.set(name, targets.get(of?.get("id") ?? "") ?? "");
  }
  return found;
}

function textOf(part: Uint8Array | undefined): string {
  return part === undefined ? "" : new TextDecoder().decode(part);
}
