/** A small garden as it was written for 0.1.0, when nothing said in which form records are: it opens, and says the same. */
import path from "node:path";
import { expect, test } from "vitest";
import { openRecordsFolder, problemText, readRecords } from "../../src/records/index.ts";
import { publicGarden } from "../../src/site/index.ts";
import { growGarden } from "../../src/timeline/index.ts";

const folder = path.join(import.meta.dirname, "written-by-0.1.0");

test("a garden written for 0.1.0 opens without a word said against it", async () => {
  const records = await readRecords(await openRecordsFolder(folder), { today: "2026-07-18" });
  expect(records.problems.filter(({ severity }) => severity !== "hint").map(problemText)).toEqual([]);
  expect(records.settings).toMatchObject({ name: "Lower Croft", units: "metric", language: "en-GB" });
  expect(records.events.map(({ kind, day, variety, bed }) => [kind, day, variety ?? "", bed ?? ""].join(" "))).toEqual([
    // Sown indoors: of no bed yet.
    "sowed 2026-04-02 musselburgh ",
    "planted 2026-04-02 sturon long-bed",
    "planted 2026-05-24 musselburgh long-bed",
    "trouble 2026-05-24  long-bed",
    "promised 2026-05-24  long-bed",
    "lost 2026-05-24 musselburgh long-bed",
    "picked 2026-05-24 sturon long-bed",
    "to do 2026-05-24  long-bed",
  ]);
  const open = publicGarden(growGarden(records, []));
  expect([...open.beds.keys()]).toEqual(["long-bed"]);
  expect(open.notes.map(({ id }) => id)).toEqual(["2026-04-02", "2026-05-24"]);
});

test("records that say no form are of form 1", async () => {
  const files = await openRecordsFolder(folder);
  const named = { ...files, read: async (file: string) => withForm(file, await files.read(file)) };
  const [silent, said] = await Promise.all([files, named].map((one) => readRecords(one, { today: "2026-07-18" })));
  expect(said?.problems).toEqual(silent?.problems);
  expect(said?.settings).toEqual(silent?.settings);
  expect(said?.events).toEqual(silent?.events);
});

function withForm(file: string, bytes: Uint8Array): Uint8Array {
  if (file !== "garden.md") return bytes;
  // Below the last key, so that no other line moves.
  return Buffer.from(Buffer.from(bytes).toString().replace("\n---\n\n", "\nplotreel: 1\n---\n"));
}
