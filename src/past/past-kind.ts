/** What a file that is brought in holds, by its name and, where the name does not tell, by its text. */
import { headingRow, readTextTable } from "../records/index.ts";

export type PastKind = "table" | "diary" | "captions" | "workbook" | "other spreadsheet" | "unknown";

const byEnding: Readonly<Record<string, PastKind>> = {
  ...{ csv: "table", tsv: "table", tab: "table" },
  ...{ vtt: "captions", srt: "captions", sbv: "captions", ass: "captions", ssa: "captions" },
  ...{ txt: "diary", text: "diary", md: "diary", markdown: "diary" },
  ...{ xlsx: "workbook", xlsm: "workbook" },
  ...{ xls: "other spreadsheet", xlsb: "other spreadsheet", ods: "other spreadsheet", numbers: "other spreadsheet" },
};

const timed = /^(?:\d{1,2}:)?\d{1,2}:\d{2}[.,]\d{1,3} ?-->/m;

/** `text` is undefined where the bytes are no text. */
export function pastKind(name: string, text: string | undefined): PastKind {
  const kind = byEnding[/\.([a-z]+)$/i.exec(name)?.[1]?.toLowerCase() ?? ""] ?? "unknown";
  if (kind === "workbook" || kind === "other spreadsheet") return kind;
  if (text === undefined) return "unknown";
  if (kind !== "diary") return kind;
  if (timed.test(text)) return "captions";
  return isTable(text) ? "table" : kind;
}

/** A text with tabs or semicolons whose first row names two columns at least is a table whatever its ending. */
function isTable(text: string): boolean {
  const table = readTextTable(text);
  if (table === undefined || table.separator === ",") return false;
  const heading = headingRow(table.rows);
  return heading !== undefined && table.rows[heading]?.cells.filter(({ text: cell }) => isHeading(cell)).length !== 0;
}

function isHeading(cell: string): boolean {
  return headingRow([{ cells: [{ text: cell }] }]) !== undefined;
}
