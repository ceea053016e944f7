/**
 * A small garden a person could have written, from its files to its whole timeline.
 *
 * After a wanted change of words: REWRITE=1 npx vitest run tests/timeline/written-gardens, then read the difference.
 */
import { readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { expect, test } from "vitest";
import { timelineView } from "../../src/cli/timeline-view.ts";
import { openRecordsFolder, problemText, readRecords } from "../../src/records/index.ts";
import { growGarden } from "../../src/timeline/index.ts";
import { inWords } from "./small-garden.ts";

const gardens = path.join(import.meta.dirname, "..", "gardens");
const rewrite = process.env.REWRITE === "1" && process.env.CI === undefined;
const today = "2026-07-18";

async function growWritten(name: string) {
  return inWords(growGarden(await readRecords(await openRecordsFolder(path.join(gardens, name)), { today }), []));
}

async function timelineText(name: string): Promise<string> {
  const garden = await growWritten(name);
  const beds = [...garden.beds.keys()].sort().map((bed) => {
    const { changes, plantings } = timelineView(garden, bed, { on: today });
    const told = changes.map(({ date, kind, text }) => `${date}  ${kind.padEnd(14)}  ${text}`);
    const standing = plantings.map(
      ({ id, count, stage, sown, planted, picked }) =>
        `  ${id}: ${count ?? "uncounted"}, ${stage}, sown ${sown ?? "?"}, planted ${planted ?? "-"}, ${picked.grams} g in ${picked.times}`,
    );
    return [`# ${bed}`, ...told, ...standing, ""].join("\n");
  });
  return [...beds, "# problems", ...garden.problems.map(problemText), ""].join("\n");
}

test("two years of an allotment", async () => {
  const found = await timelineText("long-season");
  const file = path.join(gardens, "long-season", "expected-timeline.txt");
  if (rewrite) await writeFile(file, found);
  expect(found).toBe(await readFile(file, "utf8"));
});

test("is the same in every time zone of the machine", async () => {
  const before = process.env.TZ;
  const found: string[] = [];
  for (const zone of ["UTC", "Pacific/Kiritimati", "America/St_Johns"]) {
    process.env.TZ = zone;
    found.push(await timelineText("long-season"));
  }
  if (before === undefined) delete process.env.TZ;
  else process.env.TZ = before;
  expect(new Set(found).size).toBe(1);
});
