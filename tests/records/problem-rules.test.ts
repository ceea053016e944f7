/** The table of rules and the code that tells problems speak of the same rules, in whole sentences. */
import { readFileSync } from "node:fs";
import { glob } from "tinyglobby";
import { expect, test } from "vitest";
import { problemRules, ruleMeanings } from "../../src/records/index.ts";

test("every rule is told somewhere", async () => {
  const files = (await glob("src/**/*.ts")).filter(
    (file) => !/records\/(?:problem-rules|rule-meanings)\.ts$/.test(file),
  );
  const code = files.map((file) => readFileSync(file, "utf8")).join("\n");
  const untold = Object.keys(problemRules).filter((rule) => {
    // Dates and links make their rule names from a reason or a kind of record.
    const made = rule.startsWith("date/") || rule === "link/unknown-bed" || rule === "link/unknown-variety";
    return !made && !code.includes(`"${rule}"`) && !code.includes(`'${rule}'`);
  });
  expect(untold).toEqual([]);
});

test("every meaning is one sentence", () => {
  for (const [rule, meaning] of Object.entries(ruleMeanings)) {
    expect([rule, /^[A-Z].*[^.]\.$/.test(meaning)]).toEqual([rule, true]);
  }
});
