/** How much was picked, and how many were picked, lost or given away, as speakers say it. */
import { gramsPerOunce, gramsPerPound } from "../../measures.ts";
import type { Check } from "../fact-check.ts";
import { type SpokenNumber, spokenNumber } from "../spoken-numbers.ts";
import type { Subject } from "../spoken-subjects.ts";
import type { AmountUnit, Claim } from "./claim.ts";
import { breathAfter, breathBefore, namedBehind, plantNouns, subjectAt } from "./subjects.ts";

const lastYear = /\blast (?:year|season|summer)\b/;
/** Words back to "last year" and to the amount that one without a unit is set against. */
const YEAR_NEAR = 12;
const AMOUNT_NEAR = 40;

/** "Last year, the same place, I got thirty kilos"; of "eighty stems this year, last year a hundred and fifty" the second. */
export function lastYearClaim(
  check: Check,
  at: number,
  number: SpokenNumber,
  found: readonly Claim[],
): readonly Claim[] {
  const { plain } = check;
  const before = plain.slice(breathBefore(check, at, YEAR_NEAR), at).join(" ");
  const begins = before.lastIndexOf("last year");
  if (!lastYear.test(before) || /\bthis (?:year|season|june|july)\b/.test(before.slice(Math.max(0, begins)))) return [];
  const own = units.get(plain[number.end] ?? "");
  const set = found.findLast((one) => one.kind === "amount" && at - one.to <= AMOUNT_NEAR);
  const isBare = own === undefined && number.end >= breathAfter(check, at + 1, 8);
  if (own === undefined && (!isBare || set?.kind !== "amount")) return [];
  const to = own === undefined ? number.end : number.end + 1;
  const subject = subjectAt(check, at, to) ?? (isBare ? set?.subject : undefined);
  if (subject === undefined) return [];
  if (own !== undefined) {
    const more = andGrams(plain, number.end + 1, ...own);
    const value = number.value * own[1] + (more?.value ?? 0);
    return [{ kind: "amount last year", subject, from: at, to: more?.end ?? to, value, unit: own[0] }];
  }
  if (set?.kind !== "amount") return [];
  const worth = units.get(plain.slice(set.from, set.to).find((word) => units.has(word)) ?? "")?.[1] ?? 1;
  return [{ kind: "amount last year", subject, from: at, to, value: number.value * worth, unit: set.unit }];
}

/** What is picked is told in: the unit, and how many of it one is. */
const units: ReadonlyMap<string, readonly [AmountUnit, number]> = new Map(
  (
    [
      ["kilo kilos kg kilogram kilograms", "g", 1000],
      ["gram grams g", "g", 1],
      ["pound pounds lb lbs", "g", gramsPerPound],
      ["ounce ounces oz", "g", gramsPerOunce],
      ["stem stems", "stem", 1],
      ["bunches", "bunch", 1],
      ["heads", "head", 1],
    ] as const
  ).flatMap(([words, unit, worth]) => words.split(" ").map((word) => [word, [unit, worth]] as const)),
);

/** "a kilo and fifty grams" is one amount. */
function andGrams(plain: readonly string[], end: number, unit: AmountUnit, worth: number): SpokenNumber | undefined {
  if (unit !== "g" || worth !== 1000 || plain[end] !== "and") return undefined;
  const more = spokenNumber(plain, end + 1);
  return more !== undefined && /^(?:g|grams?)$/.test(plain[more.end] ?? "")
    ? { value: more.value, end: more.end + 1 }
    : undefined;
}

/** "Fifteen pounds": undefined where the number is of no weight, stems, bunches or heads. */
export function amountClaim(check: Check, at: number, number: SpokenNumber): readonly Claim[] | undefined {
  const { plain } = check;
  const amount = units.get(plain[number.end] ?? "");
  if (amount === undefined) return undefined;
  if (/^(?:a|an|each|per)$/.test(plain[number.end + 1] ?? "")) return [];
  const more = andGrams(plain, number.end + 1, ...amount);
  // "Up fifteen pounds", "another two kilos": more than something, and not all.
  const isDug = plain[at - 1] === "up" && /^(?:took|taken|dug|lifted|picked|pulled)$/.test(plain[at - 2] ?? "");
  if (!isDug && /^(?:up|down|another|extra|over|under|by|more|nearly|almost)$/.test(plain[at - 1] ?? "")) return [];
  // "Call it seventeen kilos": an amount told again in another unit.
  if (plain[at - 2] === "call" && plain[at - 1] === "it") return [];
  // "A kilo", "a kilo and a bit": nobody weighed it.
  if (plain[at] === "a" && number.end === at + 1 && more === undefined) return [];
  const to = more?.end ?? number.end + 1;
  const subject = subjectAt(check, at, to);
  if (subject === undefined) return [];
  const value = number.value * amount[1] + (more?.value ?? 0);
  return [{ kind: "amount", subject, from: at, to, value, unit: amount[0] }];
}

/** What was done with so many: lost, given away, picked; undefined where the number is said of no deed. */
export function doneClaim(check: Check, at: number, number: SpokenNumber): readonly Claim[] | undefined {
  const { plain } = check;
  const about = /^(?:about|around|maybe|roughly|nearly|some|like)$/.test(plain[at - 1] ?? "") ? 1 : 0;
  const verb = plain[at - 1 - about] ?? "";
  const actor = plain[at - 2 - about] ?? "";
  if (/^(?:ate|eaten|lost|killed)$/.test(verb)) return lostClaim(check, at, number);
  if (
    /^(?:took|got|had|killed)$/.test(verb) &&
    (takers.test(actor) || (verb === "took" && /^(?:it|they|that|which)$/.test(actor)))
  )
    return lengthsOfTime.test(plain[number.end] ?? "") ? [] : lostClaim(check, at, number);
  if (/^(?:died|carked|rotted|perished|drowned|gone)$/.test(plain[number.end] ?? ""))
    return lostClaim(check, at, number);
  if (verb === "gave" || (/^(?:i|we)$/.test(plain[number.end] ?? "") && plain[number.end + 1] === "gave"))
    return givenClaim(check, at, number);
  if (/^(?:picked|harvested|gathered)$/.test(verb)) return pickedClaim(check, at, number);
  return undefined;
}

/** "They ate five", "we lost nine of them", "I lost two Shishitos": what went, and never what stands there. */
function lostClaim(check: Check, at: number, { value, end }: SpokenNumber): readonly Claim[] {
  const subject = Number.isInteger(value) ? subjectOfVerb(check, at, end) : undefined;
  return subject === undefined ? [] : [{ kind: "lost", subject, from: at - 1, to: Math.max(end, subject.to), value }];
}

const noneLost: readonly RegExp[] = [
  /^(?:havent|hasnt|not|never|didnt|dont|aint) (?:even |yet |think (?:we|i) |one of (?:them|those|these|em) (?:has |have |was |were )?(?:been )?)?(?:lost|lose|died|die|gone)(?: (?:a |even )?(?:single )?(?:one|any|plant|thing))?\b/,
  /^lost (?:none|not (?:a|one)|nothing)\b/,
  /^none (?:of (?:them|those|these|em) )?(?:(?:has|have|was|were|been|got) )*(?:lost|died|failed|gone)\b/,
  /^not (?:a single one|one|a one)(?: of (?:them|those|these|em))?(?: (?:has|have|was|were|been))* (?:lost|died|failed|gone)\b/,
  /^(?:every|each) (?:single |last )?one (?:of (?:them|those|these|em) )?(?:made it|came through|took|lived|survived|pulled through)\b/,
  /^(?:they|all of (?:them|those|these|em)) all (?:made it|came through|lived|survived|pulled through)\b/,
];
const beginsNone = new Set("havent hasnt not never didnt dont aint lost none every each they all".split(" "));

/** "I haven't lost a one", "not one of them has been lost", "they all came through" */
export function noneLostClaim(check: Check, at: number): readonly Claim[] {
  const { plain } = check;
  if (!beginsNone.has(plain[at] ?? "")) return [];
  const text = plain.slice(at, breathAfter(check, at + 1, 9)).join(" ");
  const said = noneLost.map((pattern) => pattern.exec(text)?.[0]).find((one) => one !== undefined);
  if (said === undefined || /\b(?:last|other) (?:year|season|winter)\b/.test(text)) return [];
  const to = at + said.split(" ").length;
  const subject = subjectAt(check, at, to);
  return subject === undefined ? [] : [{ kind: "lost", subject, from: at, to, value: 0 }];
}

/** What takes plants: "the blight got one", "the mice took twenty-seven". */
const takers =
  /^(?:blight|slugs?|snails?|mouse|mice|voles?|rats?|birds?|pigeons?|deer|roos?|wallab(?:y|ies)|possums?|rabbits?|hares?|squirrels?|badgers?|moles?|gophers?|groundhogs?|raccoons?|cutworms?|borers?|grubs?|beetles?|fly|flies|moths?|caterpillars?|worms?|frost|wind|storm|hail|heat|rot|fusarium|wilt|fungus|canker|rust|mildew|virus|drought|flood|ants?|termites?|aphids?|chickens?|hens?|goats?|monkeys?|crows?|parrots?|cockatoos?)$/;
const lengthsOfTime = /^(?:minutes?|hours?|days?|weeks?|months?|years?|goes|tries)$/;

/** "Sixteen I gave to the school", "I gave four to my sister" */
function givenClaim(check: Check, at: number, { value, end }: SpokenNumber): readonly Claim[] {
  const subject = Number.isInteger(value) ? subjectOfVerb(check, at, end, true) : undefined;
  return subject === undefined ? [] : [{ kind: "given away", subject, from: at, to: end, value }];
}

/** "I picked fifty Jalapeño peppers" */
function pickedClaim(check: Check, at: number, { value, end }: SpokenNumber): readonly Claim[] {
  const subject = Number.isInteger(value) ? subjectOfVerb(check, at, end) : undefined;
  if (subject === undefined) return [];
  return [{ kind: "amount", subject, from: at - 1, to: Math.max(end, subject.to), value, unit: "fruit" }];
}

/** What so many of were lost or picked: named right behind the number, or last named. */
function subjectOfVerb(check: Check, at: number, end: number, isOfAll = false): Subject | undefined {
  const next = check.plain[end] ?? "";
  const behind = namedBehind(check, at, end);
  if (behind !== undefined) return behind;
  const isOfThem =
    isOfAll ||
    check.film.speech.words[end - 1]?.mark !== "" ||
    /^(?:of|from|to|in|out|last)$/.test(next) ||
    plantNouns.test(next);
  return isOfThem ? subjectAt(check, at, end) : undefined;
}

/** "I have not pulled even one" */
export function nonePicked(check: Check, at: number): readonly Claim[] {
  const { plain } = check;
  if (!/^(?:not|havent|never|hasnt)$/.test(plain[at] ?? "")) return [];
  const text = plain.slice(at, at + 7).join(" ");
  const said =
    /^\w+ (?:yet )?(?:picked|pulled|cut|dug|lifted|plucked|eaten) (?:even |yet )?(?:one|any|a single (?:one|\w+))\b/.exec(
      text,
    );
  const subject = said === null ? undefined : subjectAt(check, at, at);
  if (said === null || subject === undefined) return [];
  return [{ kind: "none picked", subject, from: at, to: at + said[0].split(" ").length }];
}
