/**
 * No regular expression takes far longer than its text is long. Each has been asked about with `recheck`, a new one is asked
 * about here; `node scripts/trust/judge-regexes.ts` keeps the answers.
 */
import { expect, test } from "vitest";
import { attackOn, judgedRegexes, sumOf, timeOf } from "../../scripts/trust/check-regexes.ts";
import { keyOf, regexesMadeBy, regexLiterals } from "../../scripts/trust/find-regexes.ts";

/** Letters, and milliseconds: with the square of the length that is a second for a line of 20,000. */
const LONG = 5000;
const AT_MOST = 250;

const judged = judgedRegexes();
const safe = new Set(judged.safe);

test("no regular expression is slow that has not been judged", { timeout: 600_000 }, async () => {
  const made = await regexesMadeBy(() => import("../../src/cli/main.ts"));
  const found = new Map([...made, ...regexLiterals()]);
  expect(found.size).toBeGreaterThan(900);
  const unknown = [...found.values()].filter((one) => !safe.has(sumOf(one)) && judged.slow[keyOf(one)] === undefined);
  const slow: string[] = [];
  for (const regex of unknown) {
    const attack = await attackOn(regex);
    if (attack !== undefined) slow.push(`${regex.at} ${keyOf(regex)}: ${JSON.stringify(attack)}`);
  }
  expect(slow).toEqual([]);
});

test.each(Object.entries(judged.slow))("%s stays bearable on the text made against it", (key, attack) => {
  const end = key.lastIndexOf("/");
  const regex = { source: key.slice(1, end), flags: key.slice(end + 1), at: "" };
  expect(timeOf(regex, attack, LONG, 4 * AT_MOST)).toBeLessThan(AT_MOST);
});
