/** What every target stands on: a small garden in memory, and how a case of it is read. */
import type fc from "fast-check";
import { problemText, type RecordsFolder, readRecords } from "../../../src/records/index.ts";
import { growGarden } from "../../../src/timeline/index.ts";

export interface Target<Case> {
  readonly name: string;
  readonly cases: fc.Arbitrary<Case>;
  /** Throws when the case does not hold. */
  readonly hold: (given: Case) => Promise<void>;
  /** How many of a thousand cases are these: what takes long is tried less often. */
  readonly share: number;
}

export const TODAY = "2026-07-18";

export type Files = Readonly<Record<string, string>>;

export const ground: Files = {
  "garden.md":
    "---\nname: Lower Croft\ntime zone: Europe/London\nunits: metric\nlanguage: en-GB\nlast frost: 8 May\nfirst frost: 20 October\n---\n",
  "beds/long-bed.md": "---\ntitle: Long Bed\nsize: 8 x 1.2 m\n---\n",
  "beds/round-bed.md": "---\ntitle: Round Bed\n---\n",
  "varieties/musselburgh.md": "---\ntitle: Musselburgh\ncrop: leek\n---\n",
  "varieties/crown-prince.md": "---\ntitle: Crown Prince\ncrop: squash\ndays to maturity: 100 from planting\n---\n",
  "notes/2026-04-10.md": "- sowed 24 Musselburgh leek in Long Bed\n- sowed 6 Crown Prince indoors\n",
};

export function folderOf(files: Files): RecordsFolder {
  return {
    list: async () => Object.keys(files).sort(),
    read: async (file) => Buffer.from(files[file] ?? "", "utf8"),
  };
}

export async function grown(files: Files) {
  const records = await readRecords(folderOf(files), { today: TODAY });
  const garden = growGarden(records, []);
  return { garden, told: [garden, records.problems.map(problemText), garden.problems.map(problemText)] };
}
