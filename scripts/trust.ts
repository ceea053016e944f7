/**
 * `npm run trust`: what must never happen, tried again and again with chance that can be repeated, and one table at the end.
 *
 *   npm run trust -- [PART …] [--long] [--seed N]
 *
 * Ends with 1 when anything did not hold. Each part is a maker of rows in scripts/trust/.
 */
import { parseArgs } from "node:util";
import { faultRows } from "./trust/faults.ts";
import { fuzzRows } from "./trust/fuzz.ts";
import { killRows } from "./trust/kills.ts";
import { licenceRows } from "./trust/licences.ts";
import { printTable, type TrustRow } from "./trust/table.ts";
import { type Chance, chance } from "./truth/chance.ts";

interface Given {
  readonly long: boolean;
  readonly random: Chance;
  readonly seed: number;
}

const parts: Readonly<Record<string, (given: Given) => Promise<readonly TrustRow[]>>> = {
  licences: () => licenceRows(),
  fuzz: ({ long, seed }) => fuzzRows(long ? 1_000_000 : 10_000, seed),
  kills: ({ long, random }) => killRows(long ? 500 : 24, random),
  faults: ({ long, random }) => faultRows(long ? 20 : 3, random),
};

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { long: { type: "boolean", default: false }, seed: { type: "string" } },
});
const unknown = positionals.filter((part) => parts[part] === undefined);
if (unknown.length > 0) {
  console.error(`There is no part ${unknown.join(", ")}; there are ${Object.keys(parts).join(", ")}.`);
  process.exit(2);
}
const seed = values.seed === undefined ? Math.floor(Math.random() * 2 ** 31) : Number(values.seed);
console.log(`Seed ${seed}: "--seed ${seed}" repeats this.`);
const rows: TrustRow[] = [];
for (const [part, make] of Object.entries(parts)) {
  if (positionals.length === 0 || positionals.includes(part))
    rows.push(...(await make({ long: values.long, seed, random: chance(seed) })));
}
process.exitCode = printTable(rows) ? 0 : 1;
