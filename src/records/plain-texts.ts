/** Files that are read as plain text, such as weather: what they say is for another room to understand. */
import type { Problem } from "../model.ts";
import { decodeText } from "./decode-text.ts";
import { inFile } from "./file-problem.ts";
import { type RecordsFolder, unreadable } from "./records-folder.ts";

export interface PlainText {
  /** Relative to the records folder. */
  readonly file: string;
  readonly text: string;
}

/** The texts of files; one that cannot be read or is no text is a problem and hides no other. */
export async function readTexts(
  folder: RecordsFolder,
  files: readonly string[],
): Promise<{ readonly texts: readonly PlainText[]; readonly problems: readonly Problem[] }> {
  const texts: PlainText[] = [];
  const problems: Problem[] = [];
  for (const file of files) {
    try {
      const decoded = decodeText(await folder.read(file));
      problems.push(...decoded.problems.map((found) => inFile(file, found)));
      if (decoded.text !== undefined) texts.push({ file, text: decoded.text });
    } catch (error) {
      problems.push(unreadable(file, error));
    }
  }
  return { texts, problems };
}
