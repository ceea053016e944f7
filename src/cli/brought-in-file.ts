/** brought-in.txt beside garden.md: what a person throws away or rewrites is not brought in again, by whatever way it comes. */
import path from "node:path";
import { BroughtInList } from "../photos/index.ts";
import type { Effects } from "./effects.ts";

const listFile = "brought-in.txt";
const listOpening =
  "# Rows of tables, days of diaries, captions and lines from the phone that were brought in, so that nothing comes twice.\n" +
  "# Delete a line, and the next ingest brings that part in again.\n";

export interface BroughtInFile {
  readonly list: BroughtInList;
  /** Writes what was remembered since. */
  save(): Promise<void>;
}

export async function broughtInFile(recordsDir: string, effects: Effects): Promise<BroughtInFile> {
  const file = path.join(recordsDir, listFile);
  const listed = (await effects.readText(file)) ?? "";
  let added = "";
  const remember = async (text: string) => {
    added += text;
  };
  return {
    list: new BroughtInList(listed, remember, listOpening),
    async save() {
      const text = added;
      added = "";
      if (text === "" && listed === "") return;
      // Refused where the list is there; what a killed run left beside it is cleared on the way.
      if ((await effects.createText(file, text === "" ? listed : text)) || text === "") return;
      const { refused } = await effects.editText(file, (now) => ({ text: now + text }));
      if (refused !== undefined) effects.err(`${listFile} was left as it is: ${refused}`);
    },
  };
}
