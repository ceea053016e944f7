/**
 * The cells of a table that a spreadsheet wrote as text, each with the line and column where it stands, so that whoever reads
 * a cell can say where it is wrong. Which sign sets cells off is found by trying: the one that gives most rows alike.
 */

export interface Cell {
  readonly text: string;
  readonly line: number;
  readonly column: number;
}

export interface TableRow {
  /** Where the row begins. */
  readonly line: number;
  readonly cells: readonly Cell[];
}

export type Separator = "," | ";" | "\t";

export interface TextTable {
  readonly separator: Separator;
  /** Without rows that hold nothing. */
  readonly rows: readonly TableRow[];
}

const separators: readonly Separator[] = ["\t", ";", ","];

/** Undefined when the text is no table: no sign sets its lines apart into cells alike. */
export function readTextTable(text: string): TextTable | undefined {
  const tried = separators.map((separator) => ({ separator, rows: rowsBy(text, separator) }));
  const [best] = tried.map((table) => ({ ...table, alike: rowsAlike(table.rows) })).sort((a, b) => b.alike - a.alike);
  return best === undefined || best.alike === 0 ? undefined : { separator: best.separator, rows: best.rows };
}

/** How many rows have the number of cells that most have, where that is more than one. */
function rowsAlike(rows: readonly TableRow[]): number {
  const counts = new Map<number, number>();
  for (const { cells } of rows) if (cells.length > 1) counts.set(cells.length, (counts.get(cells.length) ?? 0) + 1);
  return Math.max(0, ...counts.values());
}

/** The rows of a text whose cells are set off by this sign; a cell in quotation marks may hold the sign, and lines (RFC 4180). */
export function rowsBy(text: string, separator: Separator): readonly TableRow[] {
  const rows: TableRow[] = [];
  let cells: Cell[] = [];
  let at = 0;
  let line = 1;
  let lineStart = 0;
  const place = (from: number) => ({ line, column: Array.from(text.slice(lineStart, from)).length + 1 });
  const endRow = () => {
    if (cells.some((cell) => cell.text !== "")) rows.push({ line: cells[0]?.line ?? line, cells });
    cells = [];
  };
  while (at < text.length) {
    const quoted = text[at] === '"' ? closing(text, at, separator) : undefined;
    const end = quoted ?? plainEnd(text, at, separator);
    const written = text.slice(at, end);
    const cell = quoted === undefined ? written : written.slice(1, -1).replaceAll('""', '"');
    cells.push({ text: cell.trim(), ...place(at) });
    for (const { index, 0: mark } of written.matchAll(/\r\n|\n|\r/g)) {
      line += 1;
      lineStart = at + index + mark.length;
    }
    at = end;
    if (text[at] === separator) {
      at += 1;
      if (at === text.length) cells.push({ text: "", ...place(at) });
      continue;
    }
    endRow();
    at += text.startsWith("\r\n", at) ? 2 : 1;
    line += 1;
    lineStart = at;
  }
  endRow();
  return rows;
}

/** Behind the mark that closes a cell in quotation marks; undefined when what opens with one is no such cell. */
function closing(text: string, from: number, separator: Separator): number | undefined {
  for (let at = text.indexOf('"', from + 1); at >= 0; at = text.indexOf('"', at + 2)) {
    const next = text[at + 1];
    if (next === '"') continue;
    return next === undefined || next === separator || next === "\n" || next === "\r" ? at + 1 : undefined;
  }
  return undefined;
}

function plainEnd(text: string, from: number, separator: Separator): number {
  for (let at = from; at < text.length; at += 1) {
    const sign = text[at];
    if (sign === separator || sign === "\n" || sign === "\r") return at;
  }
  return text.length;
}
