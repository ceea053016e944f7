/** A share of what `npm run trust -- fuzz --long` tries, and every case that ever failed. */
import { readFileSync } from "node:fs";
import path from "node:path";
import { expect, test } from "vitest";
import { targets } from "../../scripts/trust/fuzz/targets.ts";
import { fuzzRows } from "../../scripts/trust/fuzz.ts";

const failedOnce = JSON.parse(readFileSync(path.join(import.meta.dirname, "failed-cases.json"), "utf8")) as {
  readonly target: string;
  readonly case: unknown;
}[];

test.each(failedOnce.map((one, number) => [number, one.target, one.case] as const))(
  "case %i that failed once, %s, holds",
  async (_, name, given) => {
    const target = targets.find((one) => one.name === name);
    expect(target).toBeDefined();
    await target?.hold(given);
  },
);

test("cases by chance hold", async () => {
  const rows = await fuzzRows(120, 20261130);
  expect(rows.flatMap(({ what, failed }) => failed.map((why) => `${what}: ${why}`))).toEqual([]);
  expect(rows.map(({ cases }) => cases > 0)).not.toContain(false);
});
