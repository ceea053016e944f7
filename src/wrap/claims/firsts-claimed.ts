/** What is said to stand here for the first time: "new to me this year", "I've never grown a radish before". */
import type { Check } from "../fact-check.ts";
import type { Claim } from "./claim.ts";
import { breathAfter, breathBefore, namedNext, subjectAt } from "./subjects.ts";

const grown = "(?:grown|had|planted|sown|tried|done|kept)";
/** What is new is the plants, and not a crop of them or a trouble. */
const itself = "(?:it|this|that|them|these|those|one|ones|any|either|a|an|the)";
const firstWords: readonly RegExp[] = [
  new RegExp(`^(?:never|not) (?:(?:ever|have|before|even) )*${grown}\\b(?: \\w+){0,5}? before\\b`),
  new RegExp(`^never (?:ever )?${grown} ${itself}\\b`),
  new RegExp(`^first time (?:ever )?(?:that )?(?:i|we|ive|weve)(?: have| had)? ?(?:ever )?${grown} ?${itself}?\\b`),
  new RegExp(`^first time (?:with|growing|planting|sowing|trying) (?:${itself}|him|her)?`),
  /^first (?:year|season|summer) (?:i|we|ive|weve)(?: have)? (?:ever )?(?:grown|planted|sown|tried|grow|had) (?:it|this|them|these|those)\b/,
  /^first (?:year|season) (?:for|of|with) (?:me|us|this one|these|those|it|them)\b/,
  /^(?:all )?new (?:to|for|with) (?:me|us|this (?:garden|plot|place|bed)|here)\b/,
  /^(?:all )?new this (?:year|season|spring|summer|autumn|fall)\b/,
];

const beginsFirst = new Set(["never", "not", "first", "new", "all"]);

/** Words back to the name of what is new. */
const NEAR = 30;

export function firstTimeClaim(check: Check, at: number): readonly Claim[] {
  const { plain } = check;
  if (!beginsFirst.has(plain[at] ?? "")) return [];
  const text = plain.slice(at, breathAfter(check, at + 1, 12)).join(" ");
  const said = firstWords.map((pattern) => pattern.exec(text)?.[0]).find((one) => one !== undefined);
  if (said === undefined) return [];
  const to = at + said.split(" ").length;
  const before = plain.slice(breathBefore(check, at, 6), at).join(" ");
  if (/\b(?:something|nothing|anything|something thats)$/.test(before)) return [];
  const within = check.subjects.find(({ from }) => from >= at && from < to);
  const subject = within ?? namedNext(check, at, to) ?? subjectAt(check, at, to, NEAR);
  return subject === undefined ? [] : [{ kind: "first time", subject, from: at, to: Math.max(to, at + 1) }];
}
