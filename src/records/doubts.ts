/** Which problems mean that something may have been meant as private and was not read as that. */
import type { Problem } from "../model.ts";
import { splitFirst } from "./file-names.ts";
import type { Rule } from "./line-rules.ts";
import { nearestSpellings } from "./nearest-spelling.ts";
import { problemRules, type RuleName } from "./problem-rules.ts";

/** Folders in which a record may keep something private: nothing in a table of weather is anybody's wish. */
const KEEPING = ["sites", "beds", "varieties", "notes", "photos", "episodes", "gear", "trials"];

/** Whether the record a problem stands in is private until it is mended. */
export function isDoubt({ rule, file }: Problem): boolean {
  const { severity, doubt }: Rule = problemRules[rule as RuleName];
  if (!(doubt ?? severity === "error")) return false;
  const [first] = splitFirst(file);
  // What lies beside the records' folders, such as a site made there, is no record.
  return !rule.startsWith("folder/") ||
    first === "." ||
    first === "garden.md" ||
    foldersMeant(first, KEEPING).length > 0
    ? first !== "weather"
    : false;
}

/** The folders that a name stands for, with a slip in it or without. */
export function foldersMeant<Name extends string>(name: string, folders: readonly Name[]): readonly Name[] {
  const plain = name.toLowerCase();
  // Three letters are near to everything: "bed" is told by what it is of.
  const same = folders.filter((folder) => folder === plain || folder === `${plain}s`);
  return same.length > 0 ? same : (nearestSpellings(plain, folders) as readonly Name[]);
}
