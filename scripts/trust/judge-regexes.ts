/**
 * Asks about every regular expression that has not been judged yet, prints those that are slow, and keeps the answers in
 * tests/trust/judged-regexes.json: `node scripts/trust/judge-regexes.ts`. A slow one is measured by tests/trust/regexes.test.ts.
 */
import { attackOn, type Judged, judgedRegexes, keepJudged, sumOf, timeOf } from "./check-regexes.ts";
import { keyOf, regexesMadeBy, regexLiterals } from "./find-regexes.ts";

const made = await regexesMadeBy(() => import("../../src/cli/main.ts"));
const found = new Map([...made, ...regexLiterals()]);
const judged = judgedRegexes();
const known = new Set(judged.safe);
const safe: string[] = [];
const slow: Record<string, Judged["slow"][string]> = {};
for (const regex of found.values()) {
  const key = keyOf(regex);
  const before = judged.slow[key];
  if (known.has(sumOf(regex))) safe.push(sumOf(regex));
  else if (before !== undefined) slow[key] = before;
  else {
    const attack = await attackOn(regex);
    if (attack === undefined) safe.push(sumOf(regex));
    else if (typeof attack === "string") console.log(`${regex.at} ${key}: ${attack}`);
    else {
      slow[key] = attack;
      console.log(`${timeOf(regex, attack, 20_000, 5000).toFixed(0)} ms at 20,000 letters: ${regex.at} ${key}`);
    }
    // Kept at once: the whole takes some minutes.
    keepJudged({ safe: [...known, ...safe], slow: { ...judged.slow, ...slow } });
  }
}
keepJudged({ safe, slow });
process.exit();
