/**
 * Files that the tool itself wrote as JSON and that lie among the records: a phone or a person may have carried, cut or
 * mended them, so they are checked like any record.
 */
import type { Problem } from "../model.ts";
import { decodeText } from "./decode-text.ts";
import { inFile } from "./file-problem.ts";
import { type RecordsFolder, unreadable } from "./records-folder.ts";
import { text } from "./schemas/fields.ts";
import type { YamlValue } from "./yaml-values.ts";

/** Words of one line: they stand in lists and tables. */
export const line = text.transform((written) => written.replace(/\s+/gu, " "));

export type JsonData = { readonly [key: string]: YamlValue };

/** Undefined when the system does not let it be read, which is then told. */
export async function readJsonText(
  folder: RecordsFolder,
  file: string,
  problems: Problem[],
): Promise<string | undefined> {
  try {
    const decoded = decodeText(await folder.read(file));
    problems.push(...decoded.problems.map((found) => inFile(file, found)));
    return decoded.text;
  } catch (error) {
    problems.push(unreadable(file, error));
    return undefined;
  }
}

/** A byte-order mark is taken off before. Gives the offset of the fault where the text is no JSON. */
export function parseJson(written: string): { readonly data: JsonData } | { readonly brokenAt: number } {
  try {
    const value = asWritten(JSON.parse(written), 0);
    return { data: typeof value === "object" && !Array.isArray(value) ? (value as JsonData) : {} };
  } catch (error) {
    const { message } = error as SyntaxError;
    const offset = /position (\d+)/.exec(message)?.[1];
    if (offset !== undefined) return { brokenAt: Number(offset) };
    return { brokenAt: /end of JSON/.test(message) ? written.trimEnd().length : 0 };
  }
}

/** None of these files has lists deeper than this. */
const deepest = 8;

/** Every scalar as its text, nothing where a value is empty: the shape in which all records are checked. */
function asWritten(value: unknown, depth: number): YamlValue | undefined {
  if (value === null || value === undefined || value === "") return undefined;
  if (typeof value !== "object") return String(value);
  if (depth > deepest) return "…";
  if (Array.isArray(value)) return value.map((entry) => asWritten(entry, depth + 1) ?? "");
  const map: Record<string, YamlValue> = Object.create(null);
  for (const [key, inner] of Object.entries(value)) {
    const text = asWritten(inner, depth + 1);
    if (text !== undefined) map[key] = text;
  }
  return map;
}
