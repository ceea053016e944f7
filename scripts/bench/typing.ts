/**
 * From a key to its reading in the box to write in, with all names of a garden: what the page's script does for each letter,
 * completion included, without drawing it. Prints { lines, keys, middle, late, slowest, first } as JSON, in milliseconds.
 *
 *   node typing.ts RECORDS
 */
import {
  openRecordsFolder,
  readRecords,
  readTyped,
  type TypedGarden,
  typedGarden,
  typedNames,
} from "../../src/records/index.ts";
import { completionOf } from "../../src/site/writing/complete.ts";

const [records = ""] = process.argv.slice(2);
const today = "2026-11-20";
const read = await readRecords(await openRecordsFolder(records), { today });
const garden = JSON.parse(JSON.stringify(typedGarden(read))) as TypedGarden;
const beds = [...garden.beds, ...garden.heard.beds].map(({ title }) => title);
const varieties = [...garden.varieties, ...garden.heard.varieties].map(({ title }) => title);
const known = [
  ...beds.map((name) => ({ name, kind: "bed" as const })),
  ...varieties.map((name) => ({ name, kind: "variety" as const })),
];
const [bed = "", variety = "", other = ""] = [beds.at(-1), varieties.at(-1), varieties.at(-2)];
const lines = [
  `picked 1.4 kg ${variety} from ${bed} yesterday`,
  `this morning I planted a dozen ${other} between the leeks`,
  "slugs ate three of the lettuces overnight, and the fleece was off",
  "the leeks are up and doing well, might sow a few more next week",
];

const began = performance.now();
const names = typedNames(garden);
const context = { garden, names, day: today, beds: [garden.beds[0]?.id ?? ""] };
readTyped("sowed 3 leeks", context);
const first = performance.now() - began;

const times: number[] = [];
for (let round = 0; round < 3; round += 1) {
  for (const [at, line] of lines.entries()) {
    for (let letters = 1; letters <= line.length; letters += 1) {
      const typed = line.slice(0, letters);
      const pressed = performance.now();
      completionOf(typed, letters, known);
      // Lines above it are read with it, since they may be the first to use a name.
      readTyped([...lines.slice(0, at), typed].join("\n"), context);
      times.push(performance.now() - pressed);
    }
  }
}
times.sort((a, b) => a - b);
const share = (part: number) => times[Math.min(times.length - 1, Math.floor(times.length * part))] ?? 0;
console.log(
  JSON.stringify({
    lines: read.readings.length,
    keys: times.length,
    middle: share(0.5),
    late: share(0.95),
    slowest: share(1),
    first,
  }),
);
