/**
 * What a speaker claims of plants: how many, how much, how tall, when, how long, from where, and what stands here. A claim is about the
 * plants named beside it, or about those last named at the stop. What is taken back at once ("April, no, I'm telling you
 * wrong") is no claim, and neither is what is asked, promised or told of another year.
 */
import { centimetresPerFoot, centimetresPerInch } from "../../measures.ts";
import type { Check } from "../fact-check.ts";
import { SURE } from "../fact-check.ts";
import { beginsNumber, type SpokenNumber, spokenNumber } from "../spoken-numbers.ts";
import type { Subject } from "../spoken-subjects.ts";
import { amountClaim, doneClaim, lastYearClaim, noneLostClaim, nonePicked } from "./amounts-claimed.ts";
import type { Claim } from "./claim.ts";
import { firstTimeClaim } from "./firsts-claimed.ts";
import { sourceClaim } from "./sources-claimed.ts";
import {
  breathAfter,
  breathBefore,
  isOneBreath,
  namedBehind,
  plantNouns,
  subjectAt,
  withinSentence,
} from "./subjects.ts";
import { ageClaim, dayClaim } from "./times-claimed.ts";

export function claimsOf(check: Check): readonly Claim[] {
  const found: Claim[] = [];
  const { plain, film } = check;
  for (let at = 0; at < plain.length; at += 1) {
    const number = beginsNumber(plain[at] ?? "")
      ? (aMeasure(plain, at) ?? withinSentence(check, at, spokenNumber))
      : undefined;
    const ofLastYear = number === undefined ? [] : lastYearClaim(check, at, number, found);
    const claims = [
      ...ofLastYear,
      ...(number === undefined || ofLastYear.length > 0
        ? []
        : numberClaim(check, at, number).filter((claim) => !isSecondAmount(check, found, claim))),
      ...dayClaim(check, at, film.day.day),
      ...ageClaim(check, at),
      ...sourceClaim(check, at),
      ...firstTimeClaim(check, at),
      ...nonePicked(check, at),
      ...noneLostClaim(check, at),
    ];
    found.push(...claims.filter((claim) => !isTakenBack(check, claim.to) && !isOfAnother(check, claim)));
    const to = Math.max(...claims.map((claim) => claim.to));
    if (claims.length > 0 && to > at + 1) at = to - 1;
  }
  found.push(...standing(check));
  return found.sort((a, b) => a.from - b.from);
}

/** "a metre twenty", "a kilo and fifty grams", "half a kilo" */
function aMeasure(plain: readonly string[], at: number): SpokenNumber | undefined {
  const isHalf = plain[at] === "half";
  const article = isHalf ? at + 1 : at;
  return plain[article] === "a" && /^(?:met(?:re|er)|foot|kilo|pound)$/.test(plain[article + 1] ?? "")
    ? { value: isHalf ? 0.5 : 1, end: article + 1 }
    : undefined;
}

/** "Ruby two and a half kilos, and … three": the second amount is of something whose name was not heard. */
function isSecondAmount(check: Check, before: readonly Claim[], { kind, subject, from }: Claim): boolean {
  return (
    kind === "amount" &&
    before.some(
      (one) =>
        one.kind === "amount" &&
        one.subject.from === subject.from &&
        from - one.to <= 12 &&
        from > subject.to &&
        isOneBreath(check, one.to - 1, from),
    )
  );
}

/** Words at which somebody takes back what was just said. */
function isTakenBack(check: Check, to: number): boolean {
  const after = check.plain.slice(to, to + 4);
  const at = after.findIndex((word) => /^(?:no|sorry|shoot|wait|correction|rather|nope)$/.test(word));
  if (at < 0) return false;
  // "Two of those. No mesh this year": another sentence.
  return isOneBreath(check, to - 1, to + at) || /^(?:sorry|shoot|wait|correction)$/.test(after[at] ?? "");
}

/** Told of another year, thought of, or asked: held against nothing. */
function isOfAnother(check: Check, { kind, from, to }: Claim): boolean {
  const { plain } = check;
  // "Eighty stems this June, and last year a hundred and forty": what is joined on is told of its own year.
  const behind = plain.slice(to, clauseAfter(check, to, 8)).join(" ");
  const text = plain
    .slice(breathBefore(check, from, 12), to)
    .join(" ")
    .replace(/\b(?:was|were) (?:i|we) going to\b/, "");
  // When things began, and where they came from, is told of years gone by too.
  const isOfYears = kind === "source" || kind === "day" || kind === "amount last year";
  const year = isOfYears ? /\bnext year\b/ : otherYear;
  const ofThought = kind === "source" || kind === "first time" ? thought : thoughtOrWritten;
  return (
    year.test(text) || year.test(behind) || ofThought.test(text) || thought.test(behind) || /\b(?:if|than)\b/.test(text)
  );
}

const otherYear = /\b(?:last (?:year|season|summer|spring|autumn|fall|winter)|the year before|next year)\b/;
const thought =
  /\b(?:used to|would|might|could|should|ill|well need|going to|want|wanted|hope|hoping|supposed|every (?:year|week|day)|(?:those|these|they|it|that) (?:go|goes) (?:in|out))\b/;
const thoughtOrWritten = new RegExp(`${thought.source}|\\b(?:packet|catalogue|catalog|says on|neighbours?)\\b`);

/** After the last word of the clause that goes on at a word. */
function clauseAfter(check: Check, at: number, most: number): number {
  const { words } = check.film.speech;
  const ends = breathAfter(check, at, most);
  for (let word = at; word < ends; word += 1) {
    if (words[word - 1]?.mark === "," && word > at) return word;
    if (/^(?:and|but|so|which)$/.test(check.plain[word] ?? "")) return word;
  }
  return words[at - 1]?.mark === "," ? at : ends;
}

const lengths: ReadonlyMap<string, number> = new Map([
  ...["metre", "metres", "meter", "meters"].map((word) => [word, 100] as const),
  ...["centimetre", "centimetres", "centimeter", "centimeters", "cm", "centi", "cents"].map(
    (word) => [word, 1] as const,
  ),
  ...["foot", "feet"].map((word) => [word, centimetresPerFoot] as const),
  ...["inch", "inches"].map((word) => [word, centimetresPerInch] as const),
]);

/** What a number of plants may be followed by. */
const plantWords =
  /^(?:plants?|trees?|bushes|bulbs?|corms?|tubers?|crowns?|canes|slips|plugs|seeds?|seedlings|cloves|sets|of|in|that|there|here|this|left|went|planted|sown|standing|up|and|all|along)$/;

function numberClaim(check: Check, at: number, number: SpokenNumber): readonly Claim[] {
  const long = lengths.get(check.plain[number.end] ?? "");
  return (
    amountClaim(check, at, number) ??
    (long === undefined ? undefined : heightClaim(check, at, number, long)) ??
    doneClaim(check, at, number) ??
    countClaim(check, at, number)
  );
}

function heightClaim(check: Check, at: number, number: SpokenNumber, unit: number): readonly Claim[] {
  const { plain } = check;
  // "a metre twenty", "five foot two"
  const more = spokenNumber(plain, number.end + 1);
  const extra =
    more === undefined
      ? 0
      : unit === 100 && more.value < 100
        ? more.value
        : unit === centimetresPerFoot && more.value < 12
          ? more.value * centimetresPerInch
          : 0;
  const to = extra > 0 ? (more?.end ?? number.end + 1) : number.end + 1;
  const around = [...plain.slice(Math.max(0, at - 8), at), ...plain.slice(to, to + 4)].join(" ");
  if (plain[at - 1] === "by" || plain[to] === "by") return [];
  if (/\b(?:apart|wide|long|deep|between|square|away|from|hole|down|spacing|row|bed|mesh|rain)\b/.test(around))
    return [];
  if (!/\b(?:tall|taller|tallest|high|higher|highest|height|up|over|grown|growing|now|already|had)\b/.test(around))
    return [];
  const subject = subjectAt(check, at, to);
  return subject === undefined ? [] : [{ kind: "height", subject, from: at, to, cm: number.value * unit + extra }];
}

function countClaim(check: Check, at: number, number: SpokenNumber): readonly Claim[] {
  const { plain, film } = check;
  if (!Number.isInteger(number.value) || plain[at] === "one" || number.value < 2) return [];
  const { end } = number;
  const { words } = film.speech;
  const before = plain[at - 1] ?? "";
  const next = plain[end] ?? "";
  if (thinnedTo.test(plain.slice(breathBefore(check, at, 9), at).join(" "))) {
    const thinned = subjectAt(check, at, end);
    return thinned === undefined
      ? []
      : [{ kind: "count", subject: thinned, from: at, to: end, value: number.value, isNow: true }];
  }
  // A year, a date, a time, a share, a rank, one of a run of numbers.
  if (
    /^(?:week|row|rows|block|tunnel|plot|bay|number|at|nineteen|twenty|the|every|or|point|to|of|than|like|another|first|last|these)$/.test(
      before,
    )
  )
    return [];
  const isRun = words[at - 1]?.mark === "" && spokenNumber(plain, at - 1)?.end === at;
  if (isShare(check, at) || /\b(?:each|every)\b/.test(plain.slice(breathBefore(check, at, 3), at).join(" "))) return [];
  // "Fifteen hills, four seeds to a hill": places, and how many to each.
  const toEach = plain.slice(end, end + 8).join(" ");
  if (/^(?:hills?|holes?)$/.test(next) && /\b(?:to|per|in|each) (?:a |the |each )?(?:hill|hole)\b/.test(toEach))
    return [];
  if (
    /^(?:\w+ )?(?:(?:to|in) (?:a|each|every|one) \w+|per|each|apiece|a (?:hill|hole|pot|bag|sack|row|bed|plant|bunch))\b/.test(
      toEach,
    )
  )
    return [];
  if (isRun || (words[end - 1]?.mark === "" && spokenNumber(plain, end) !== undefined)) return [];
  const remain = plain.slice(breathBefore(check, at, 8), at).join(" ");
  const isLeft =
    /\b(?:left|leaves|remain|remaining)(?: (?:is|are|us|me|with|now|of them|here))*$/.test(remain) || next === "left";
  const subject = namedBehind(check, at, end) ?? (isLeft ? subjectAt(check, at, end) : countedAt(check, at, end));
  // "Marketmore seventy-six": part of a name.
  return subject === undefined ||
    (subject.variety === undefined && subject.here.length > 2) ||
    subject.title.split(/\W+/).includes(String(number.value))
    ? []
    : [
        {
          kind: "count",
          subject,
          from: at,
          to: Math.max(end, subject.from > at ? subject.to : end),
          value: number.value,
          isNow:
            isLeft ||
            /\b(?:theres|there are|there is|ive got|weve got|are left|still)$/.test(
              plain.slice(Math.max(0, at - 2), at).join(" "),
            ),
        },
      ];
}

/** Words that only say how sure a number is, or join it on. */
const hedges =
  /^(?:about|around|maybe|roughly|some|like|only|just|exactly|another|good|a|also|and|all|total|altogether|think|there|here|say|well|yes|yeah|so)$/;

/** Ends what is said of putting plants in, or of their standing there, right before how many. */
const putIn =
  /\b(?:in|planted|sown|sowed|put|set|had|got|have|has|ive|weve|brought|bought|stuck|transplanted|raised|started|grew|growing|plus)(?: (?:here|there|out|in|down|across))?$/;
const thereAre =
  /\b(?:there|they|we) ?(?:is|are|was|were|s|re|stand|stands|stood)$|\b(?:theres|theyre|its|it is|it was|thats|that is|that was)$/;
/** Begins what is said of them right behind how many: "Six of them I set". */
const putAfter =
  /^(?:(?:of (?:them|those|these|em|it)|plants?|pieces|all told|in all) )?(?:(?:i|we)(?: have|ve| had| did)?(?: all)? (?:set|put|planted|sowed|sown|stuck|did|started|grew|got|have)|i (?:set|put|planted)|went in|were planted|planted|sown|standing|stand|left)\b/;

/** What plants a number counts that are named before it. */
function countedAt(check: Check, at: number, end: number): Subject | undefined {
  const { plain, film } = check;
  const { words, punctuated } = film.speech;
  const next = plain[end] ?? "";
  const isEnd = words[end - 1]?.mark !== "";
  const isOfThem = next === "of" && /^(?:em|them|those|these|it|that)$/.test(plain[end + 1] ?? "");
  if (!isEnd && !isOfThem && (next === "of" || !(plantWords.test(next) || plantNouns.test(next) || goesOn.test(next))))
    return undefined;
  let from = at;
  while (from > 0 && at - from < 3 && hedges.test(plain[from - 1] ?? "") && isOneBreath(check, from - 1, at)) from -= 1;
  const before = plain.slice(breathBefore(check, from, 4), from).join(" ");
  const after = plain.slice(end, breathAfter(check, end + 1, 6)).join(" ");
  const own = subjectAt(check, at, end, 50);
  if (own === undefined) return undefined;
  const gap = own.unnamed === true ? UNNAMED : from - own.to;
  // Of "Two David Howard. Six." the second is of what comes next.
  const isCounted = spokenNumber(plain, own.from - 1) !== undefined;
  // Right behind the name: "Coral Charm, twenty", "Apeldoorn. Also two hundred and fifty."
  const isApart = punctuated && isEnd && words[at - 1]?.mark === ",";
  if (gap <= (isApart ? 5 : 3) && gap >= 0 && (words[own.to - 1]?.mark !== "." || (gap === 0 && !isCounted)))
    return own;
  if (putIn.test(before) || (putAfter.test(after) && (!isEnd || (!isOfThem && gap <= 30)))) return own;
  if (own.unnamed === true) return undefined;
  if (thereAre.test(before) && (isEnd || plantNouns.test(next) || isOfThem) && gap <= 40) return own;
  if (plantNouns.test(next) && gap <= 40) return own;
  const isOnlyThem = isOfThem && (words[end + 1]?.mark ?? "") !== "";
  if (isOnlyThem && gap <= 40) return own;
  // "Thirty, along the boundary." begins a sentence.
  const begins = punctuated && /[.?!]/.test(words[at - 1]?.mark ?? ".");
  return begins && isEnd && !isCounted && gap <= 14 ? own : undefined;
}

/** As far from a name as what stands at a bed and is not named. */
const UNNAMED = 20;

/** What may follow a number that stands for itself, and is no noun that it counts. */
const goesOn =
  /^(?:i|we|on|at|for|because|since|with|but|from|out|came|come|along|now|last|this|by|are|is|was|were|did|have|which|who|when)$/;

const thinnedTo = /\bthinned (?:\w+ ){0,4}?(?:down )?to(?: about)?$/;

/** "I'm giving three of them the tonic and three of them nothing": some, and not how many there are. */
function isShare(check: Check, at: number): boolean {
  return /\b(?:giving|trying|leaving|treating)\b/.test(check.plain.slice(breathBefore(check, at, 12), at).join(" "));
}

/** "That's Beauregard", "here is Chantilly Bronze": said of where the speaker stands. */
function standing(check: Check): readonly Claim[] {
  const { plain, subjects } = check;
  return subjects.flatMap((subject): readonly Claim[] => {
    if (subject.variety === undefined || subject.confidence < SURE) return [];
    const before = plain.slice(Math.max(0, subject.from - 7), subject.from).join(" ");
    if (
      !/\b(?:thats|that is|this is|this ones|(?:these|those) ones(?: here)?(?: \w+){0,2} (?:is|are)|here is|heres|these are|in here|here are|these ones are|and here the)(?: the| a| my| our)?$/.test(
        before,
      )
    )
      return [];
    return isTakenBack(check, subject.to)
      ? []
      : [{ kind: "stands here", subject, from: Math.max(0, subject.from - 2), to: subject.to }];
  });
}
