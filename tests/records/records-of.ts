/** The records room's one check function: files in memory go in, records or printed problems come out. */
import type { Records } from "../../src/model.ts";
import { problemText, type RecordsFolder, readRecords } from "../../src/records/index.ts";

/** By path. A file that is an error is one the system does not let be read. */
export type Files = Readonly<Record<string, string | Uint8Array | Error>>;

export const filmingDay = "2026-07-18";

export function folderOf(files: Files): RecordsFolder {
  return {
    list: async () => Object.keys(files).sort(),
    read: async (file) => {
      const content = files[file];
      if (content === undefined) throw Object.assign(new Error("no such file"), { code: "ENOENT" });
      if (content instanceof Error) throw content;
      return typeof content === "string" ? Buffer.from(content, "utf8") : content;
    },
  };
}

/** Most of these folders are a file or two: that garden.md is missing is told of by a test of its own. */
export async function recordsOf(files: Files, today = filmingDay): Promise<Records> {
  const records = await readRecords(folderOf(files), { today });
  return { ...records, problems: records.problems.filter(({ rule }) => rule !== "folder/no-settings") };
}

/** Every problem as it is printed. Hints for names that no file describes are left out unless they are what is tested. */
export async function problemsOf(files: Files, today = filmingDay): Promise<readonly string[]> {
  const { problems } = await recordsOf(files, today);
  return problems.filter(({ rule }) => rule !== "name/bed-taken" && rule !== "name/variety-taken").map(problemText);
}
