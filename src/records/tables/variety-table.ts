/**
 * varieties.csv beside garden.md: all varieties in one table. Each row is read as a file of its own would be, so that a
 * problem stands at its cell; a column that is not understood is told, and one that may be meant to keep something private
 * keeps all of it so.
 */
import type { Problem } from "../../model.ts";
import { compare } from "../../order.ts";
import type { RecordPlace } from "../file-names.ts";
import type { FrontMatterPlaces } from "../front-matter.ts";
import { idOfName } from "../names.ts";
import { nearestSpellings } from "../nearest-spelling.ts";
import type { ParsedFile } from "../parsed-files.ts";
import { problem } from "../problem-rules.ts";
import type { RecordPlaces } from "../record-places.ts";
import type { YamlValue } from "../yaml-values.ts";
import { obtainedCalled, saysNothing, yesOrNo } from "./cell-words.ts";
import { type ColumnMeaning, headingRow, matchColumns, type TableColumn } from "./table-columns.ts";
import { type Cell, readTextTable, type TableRow } from "./table-rows.ts";

export const varietiesTable = "varieties.csv";

/** Where a meaning stands in a variety's front matter. */
const keys: Readonly<Partial<Record<ColumnMeaning, readonly string[]>>> = {
  variety: ["title"],
  crop: ["crop"],
  botanical: ["botanical"],
  source: ["source", "name"],
  obtained: ["source", "obtained"],
  year: ["source", "year"],
  link: ["source", "link"],
  "say it as": ["say it as"],
  "also spelled": ["also spelled"],
  "days to maturity": ["days to maturity"],
  perennial: ["perennial"],
  private: ["private"],
};

/** Records with the rows of the table beside the files of varieties. */
export function withTable(
  places: RecordPlaces,
  files: ReadonlyMap<string, ParsedFile>,
  problems: Problem[],
): { readonly places: RecordPlaces; readonly files: ReadonlyMap<string, ParsedFile> } {
  const table = files.get(places.varietiesTable ?? "");
  if (table === undefined) return { places, files };
  const rows = varietyRows(table.file, table.text, new Set(places.varieties.map(({ id }) => id)));
  problems.push(...rows.problems);
  const varieties = [...places.varieties, ...rows.places].sort((a, b) => compare(a.id, b.id));
  return { places: { ...places, varieties }, files: new Map([...files, ...rows.files]) };
}

export interface VarietyRows {
  readonly places: readonly RecordPlace[];
  /** By the file of their places. */
  readonly files: ReadonlyMap<string, ParsedFile>;
  readonly problems: readonly Problem[];
}

/** `known` are the ids of varieties with a file of their own, which counts. */
function varietyRows(file: string, text: string, known: ReadonlySet<string>): VarietyRows {
  const rows = readTextTable(text)?.rows ?? [];
  const heading = headingRow(rows);
  const headings = rows[heading ?? -1]?.cells ?? [];
  const columns = matchColumns(headings.map((cell) => cell.text));
  if (columns.every(({ meaning }) => meaning !== "variety"))
    return { places: [], files: new Map(), problems: [noNames(file)] };
  const problems: Problem[] = columns.flatMap((column) => columnProblem(column, headings[column.at], file));
  const places: RecordPlace[] = [];
  const files = new Map<string, ParsedFile>();
  const lines = new Map<string, number>();
  for (const row of rows.slice((heading ?? 0) + 1)) {
    const parsed = rowAsFile(row, columns, file);
    const title = parsed.data.title;
    const id = typeof title === "string" ? idOfName(title) : "";
    const at = { file, line: row.line, column: 1 };
    if (id === "") {
      problems.push(
        problem(
          "table/no-name",
          at,
          "This row names no variety, so it was left out.",
          "Write the variety's name, or delete the row.",
        ),
      );
      continue;
    }
    const before = lines.get(id);
    if (known.has(id) || before !== undefined) {
      const other =
        before === undefined
          ? `varieties/${id}.md describes it, and that file counts`
          : `line ${before} does so already, and that line counts`;
      problems.push(
        problem(
          "table/same-variety",
          at,
          `This row describes "${String(title)}", and ${other}.`,
          "Keep one of the two; where they are two varieties, give each a name of its own.",
        ),
      );
      continue;
    }
    lines.set(id, row.line);
    places.push({ id, file: parsed.key, at });
    files.set(parsed.key, parsed);
  }
  return { places, files, problems };
}

function rowAsFile({ cells, line }: TableRow, columns: readonly TableColumn[], file: string): ParsedFile {
  const data: Record<string, YamlValue> = {};
  const source: Record<string, YamlValue> = {};
  const at = new Map<string, Cell>();
  for (const { meaning, at: column } of columns) {
    const cell = cells[column];
    const path = meaning === undefined ? undefined : keys[meaning];
    if (path === undefined || cell === undefined || saysNothing(cell.text)) continue;
    at.set(path.join("."), cell);
    const [key = "", inner] = path;
    // "own saved" under "source" says how and not from whom.
    const how = meaning === "source" || meaning === "obtained" ? obtainedCalled(cell.text) : undefined;
    if (meaning === "source" && how !== undefined) source.obtained ??= how;
    else if (inner !== undefined) source[inner] = how ?? cell.text;
    else
      data[key] =
        meaning === "private" || meaning === "perennial" ? String(yesOrNo(cell.text) ?? cell.text) : cell.text;
  }
  if (Object.keys(source).length > 0) data.source = source;
  const notes = columns.flatMap(({ meaning, at: column }) => (meaning === "notes" ? (cells[column]?.text ?? "") : ""));
  const said = notes.filter((text) => text !== "").join("\n");
  return {
    data,
    bodyAt: 0,
    problems: [],
    file,
    // What a list notes of a variety was not written for viewers.
    text: said === "" ? "" : `<!--\n${said.replace(/--+>?/g, "–").replaceAll("%%", "%")}\n-->`,
    key: `${file}:${line}`,
    places: () => placesOf(at, line),
  };
}

function placesOf(cells: ReadonlyMap<string, Cell>, line: number): FrontMatterPlaces {
  const find = (path: readonly PropertyKey[]) => {
    for (let length = path.length; length > 0; length -= 1) {
      const cell = cells.get(path.slice(0, length).join("."));
      if (cell !== undefined) return { line: cell.line, column: cell.column };
    }
    return { line, column: 1 };
  };
  return { key: find, value: find };
}

function columnProblem({ heading, meaning }: TableColumn, cell: Cell | undefined, file: string): readonly Problem[] {
  if (
    cell === undefined ||
    heading === "" ||
    meaning === "notes" ||
    (meaning !== undefined && keys[meaning] !== undefined)
  )
    return [];
  const place = { file, line: cell.line, column: cell.column };
  const [near] = nearestSpellings(heading.toLowerCase(), ["private", "secret", "public", "hidden"]);
  if (near !== undefined)
    return [
      problem(
        "table/like-private",
        place,
        `The column "${heading}" is not read, and may be meant to keep rows private, so all rows are.`,
        'Call it "private", or give it a name that is not near to it.',
      ),
    ];
  const told = meaning === undefined ? "is not read" : "is not read here";
  return [
    problem(
      "table/unknown-column",
      place,
      `The column "${heading}" ${told}.`,
      "Nothing has to be done; docs/bringing-in.md says which columns are.",
    ),
  ];
}

function noNames(file: string): Problem {
  return problem(
    "table/no-headings",
    { file, line: 1, column: 1 },
    "No column of this table is known to hold names of varieties, so nothing was read from it.",
    'Write headings into its first row, among them "Variety".',
  );
}
