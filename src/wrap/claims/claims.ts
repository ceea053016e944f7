/**
 * What a speaker claims of plants: how many, how much, how tall, when, how long, from where, and what stands here. A claim is about the
 * plants named beside it, or about those last named at the stop. What is taken back at once ("April, no, I'm telling you
 * wrong") is no claim, and neither is what is asked, promised or told of another year.
 */
import { centimetresPerFoot, centimetresPerInch } from "../../measures.ts";
import type { Check } from "../fact-check.ts";
import { SURE } from "../fact-check.ts";
import { beginsNumber, type SpokenNumber, spokenNumber } from "../spoken-numbers.ts";
import { amountClaim, doneClaim, lastYearClaim, nonePicked } from "./amounts-claimed.ts";
import type { Claim } from "./claim.ts";
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
      ? (withinSentence(check, at, spokenNumber) ?? oneMetre(plain, at))
      : undefined;
    const ofLastYear = number === undefined ? [] : lastYearClaim(check, at, number, found);
    const claims = [
      ...ofLastYear,
      ...(number === undefined || ofLastYear.length > 0
        ? []
        : numberClaim(check, at, number).filter((claim) => !isSecondAmount(found, claim))),
      ...dayClaim(check, at, film.day.day),
      ...ageClaim(check, at),
      ...sourceClaim(check, at),
      ...nonePicked(check, at),
    ];
    found.push(...claims.filter((claim) => !isTakenBack(check, claim.to) && !isOfAnother(check, claim)));
    const to = Math.max(...claims.map((claim) => claim.to));
    if (claims.length > 0 && to > at + 1) at = to - 1;
  }
  found.push(...standing(check));
  return found.sort((a, b) => a.from - b.from);
}

/** "a metre twenty", "a kilo and fifty grams" */
function oneMetre(plain: readonly string[], at: number): SpokenNumber | undefined {
  return plain[at] === "a" && /^(?:met(?:re|er)|foot|kilo|pound)$/.test(plain[at + 1] ?? "")
    ? { value: 1, end: at + 1 }
    : undefined;
}

/** "Ruby two and a half kilos, and … three": the second amount is of something whose name was not heard. */
function isSecondAmount(before: readonly Claim[], { kind, subject, from }: Claim): boolean {
  return (
    kind === "amount" &&
    before.some(
      (one) => one.kind === "amount" && one.subject.from === subject.from && from - one.to <= 12 && from > subject.to,
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
  return (
    [text, behind].some((said) => year.test(said) || (kind === "source" ? thought : thoughtOrWritten).test(said)) ||
    /\bif\b/.test(text)
  );
}

const otherYear = /\b(?:last (?:year|season|summer|spring|autumn|fall|winter)|the year before|next year)\b/;
const thought =
  /\b(?:used to|would|might|could|should|ill|well need|going to|want|wanted|hope|hoping|supposed|than|every (?:year|week|day))\b/;
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
  if (/\b(?:by|apart|wide|long|deep|between|square|away|from|hole|down|spacing|row|bed|mesh|rain)\b/.test(around))
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
  // A year, a date, a time, a share, a rank, one of a run of numbers.
  if (
    /^(?:week|row|rows|block|tunnel|plot|bay|number|at|nineteen|twenty|the|every|or|point|to|of|than|like|another|first|last|these)$/.test(
      before,
    )
  )
    return [];
  const isRun = words[at - 1]?.mark === "" && spokenNumber(plain, at - 1)?.end === at;
  if (isShare(check, at)) return [];
  // "Fifteen hills, four seeds to a hill": places, and not plants.
  if (
    /^(?:hills?|holes?)$/.test(next) &&
    /\b(?:to|per|in|each) (?:a |the |each )?(?:hill|hole)\b/.test(plain.slice(end, end + 8).join(" "))
  )
    return [];
  if (isRun || spokenNumber(plain, end) !== undefined) return [];
  const subject = (() => {
    const behind = namedBehind(check, at, end);
    if (behind !== undefined) return behind;
    const stops =
      words[end - 1]?.mark !== "" || plantWords.test(next) || /^(?:em|them|those|these)$/.test(plain[end + 1] ?? "");
    if (!stops || (next === "of" && !/^(?:em|them|those|these|it|that)$/.test(plain[end + 1] ?? ""))) return undefined;
    const isPlanted =
      /^(?:in|planted|sown|sowed|put|set|had|got|have|brought)$/.test(before) ||
      (words[end - 1]?.mark !== "" &&
        /\bthere(?: is| are| was| were|s)$/.test(plain.slice(Math.max(0, at - 2), at).join(" ")));
    const own = subjectAt(check, at, end, plantNouns.test(next) ? 30 : isPlanted ? 50 : 14);
    if (own === undefined) return undefined;
    const last = own.to;
    const gap = plain.slice(last, at);
    // Right behind the name, or behind a word of planting: "Coral Charm, twenty"; "I put in two hundred and fifty".
    const isList = gap.length <= 3 && words[last - 1]?.mark !== ".";
    const isOfThem = next === "of" || plantNouns.test(next);
    return isList || isPlanted || isOfThem ? own : undefined;
  })();
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
          isNow: /\b(?:theres|there are|there is|ive got|weve got|are left|still)$/.test(
            plain.slice(Math.max(0, at - 2), at).join(" "),
          ),
        },
      ];
}

/** "I'm giving three of them the tonic and three of them nothing": some, and not how many there are. */
function isShare(check: Check, at: number): boolean {
  return /\b(?:giving|trying|leaving|treating)\b/.test(check.plain.slice(breathBefore(check, at, 12), at).join(" "));
}

const ways: readonly (readonly [RegExp, "bought" | "given" | "saved"])[] = [
  [
    /^(?:i|we) (?:bought|purchased|ordered)\b|^bought (?:with|from|at|in)\b|^(?:got|took) (?:\w+ ){0,2}?(?:from|at) the (?:shop|store|nursery|counter|garden centre|garden center)\b|^from the (?:nursery|shop|garden centre|garden center)\b/,
    "bought",
  ],
  [
    /^(?:was|were) given\b|^(?:gave|given) (?:to )?(?:me|us)\b(?! (?:first|\d|two|three|four|five|six|seven|eight|nine|ten|a lot|about|nearly))|^(?:from|off) (?:my|our|a) (?:uncle|aunt|auntie|sister|brother|cousin|neighbour|neighbor|friend|mother|mum|mom|father|dad|nan|gran|grandmother)\b/,
    "given",
  ],
  [
    /^(?:off )?(?:my|our) own (?:saved )?(?:seed|seeds|tubers|cuttings)\b|^(?:i|we) saved (?:that|it|the seed|seed|them|those)\b/,
    "saved",
  ],
];

/** First words of them: few words of a film are. */
const beginsWay = new Set("i we bought got took from was were gave given off my our".split(" "));

function sourceClaim(check: Check, at: number): readonly Claim[] {
  const { plain } = check;
  if (!beginsWay.has(plain[at] ?? "")) return [];
  const text = plain.slice(at, at + 8).join(" ");
  const row = ways.find(([pattern]) => pattern.test(text));
  if (row === undefined) return [];
  const subject = subjectAt(check, at, at + 3, 60);
  if (subject?.variety === undefined) return [];
  const gear = check.film.names.some(({ name, from }) => name.kind === "gear" && from > subject.to && from < at + 8);
  return gear ? [] : [{ kind: "source", how: row[1], subject, from: at, to: Math.min(plain.length, at + 5) }];
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
