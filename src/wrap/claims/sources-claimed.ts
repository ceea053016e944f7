/** Where plants are said to come from: "I got those off my sister", "they're from the exchange day", "it's seed we saved ourselves". */
import { kin } from "../../records/index.ts";
import type { Check } from "../fact-check.ts";
import type { Subject } from "../spoken-subjects.ts";
import type { Claim, Obtaining } from "./claim.ts";
import { sharesWords } from "./sources-held.ts";
import { breathAfter, breathBefore, namedNext, plantNouns, subjectAt } from "./subjects.ts";

/** How things come from whoever or wherever it is; the first that fits. */
const givers: readonly (readonly [RegExp, Obtaining])[] = [
  [/\b(?:swap|swaps|swapped|swop|exchange|exchanged|seed library|traded?)\b/, "swapped"],
  [
    /\b(?:shop|shops|store|nursery|nurseries|market|supermarket|catalogu?e|counter|kiosk|stall|co ?op|garden (?:centre|center)|dealer|seedsman|company|online|internet|sale|auction|merchant|grower)\b/,
    "bought",
  ],
  [/\b(?:(?:my|our|her|his|its|their) own|own (?:saved )?seeds?|saved)\b/, "saved"],
  [
    new RegExp(
      `\\b(?:${kin}|mama|daddy|colleague|boss|teacher|students?|in ?laws?|mother ?in ?law|father ?in ?law)s?\\b`,
    ),
    "given",
  ],
];

/** What stands for plants, in the place of a name. */
const them =
  "(?:it|its|them|em|that|this|those|these|this one|that one|these ones|those ones|both|all of (?:it|them)|one|some|(?:the |that |this |these |those )?(?:seeds?|plants?|tubers?|bulbs?|cuttings?|slips|sets|starts|corms|suckers?|roots?|canes|crowns|seedlings|plugs)(?: (?:of|for) (?:it|them|this|that|these|those))?)";
const got = "(?:got|get|had|have|bought|purchased|ordered|took|brought|came by|swapped|traded|exchanged)";

interface Way {
  readonly pattern: RegExp;
  /** Where no word behind says it. */
  readonly how?: Obtaining;
}

/** From the first word on; what stands behind says from whom. */
const ways: readonly Way[] = [
  { pattern: new RegExp(`^${got} (?:${them} )?(?:also )?(?:from|off|at|out of|in)\\b`) },
  { pattern: /^off (?:my|our|the|a|an|her|his|that)\b/ },
  { pattern: /^from\b/ },
  { pattern: new RegExp(`^(?:i|we) (?:bought|purchased|ordered)(?: ${them})?\\b`), how: "bought" },
  { pattern: /^bought (?:with|as|from|at|in|the|last|this)\b/, how: "bought" },
  { pattern: /^(?:was|were|been) given\b/, how: "given" },
  { pattern: /^(?:a|an) (?:\w+ )?(?:present|gift) from\b/, how: "given" },
  {
    pattern: new RegExp(
      `^(?:sent (?:to )?(?:me|us) ${them}|(?:gave|given|handed|passed) (?:to )?(?:me|us)(?: ${them})?)\\b(?! (?:first|\\d|two|three|four|five|six|seven|eight|nine|ten|a lot|about|nearly))`,
    ),
    how: "given",
  },
  { pattern: new RegExp(`^who (?:gave|sent) (?:me |us )?${them}\\b`), how: "given" },
  { pattern: /^(?:i|we) (?:swapped|exchanged|traded) (?:for |with |it |them |that |those |these )/, how: "swapped" },
  {
    pattern:
      /^(?:off |from )?(?:my|our|its|their) own (?:saved )?(?:seeds?|tubers|cuttings|stock|plants|bulbs)\b|^own seeds?\b/,
    how: "saved",
  },
  {
    pattern: /^(?:i|we) (?:have )?saved (?:that|it|the seeds?|seeds?|them|those|these|this|ourselves|myself)\b/,
    how: "saved",
  },
];

/** First words of them: few words of a film are. */
const beginsWay = new Set(
  "a an i we own got get had have bought purchased ordered took brought came swapped traded exchanged from off was were been gave sent given handed passed who my our its their".split(
    " ",
  ),
);

/** Words that say from whom. */
const FROM_WHOM = 7;

export function sourceClaim(check: Check, at: number): readonly Claim[] {
  const { plain } = check;
  if (!beginsWay.has(plain[at] ?? "")) return [];
  const text = plain.slice(at, breathAfter(check, at + 1, 10)).join(" ");
  const found = ways.flatMap((way) => {
    const match = way.pattern.exec(text);
    return match === null ? [] : [{ ...way, length: match[0].split(" ").length }];
  })[0];
  if (found === undefined) return [];
  const to = at + found.length;
  const from = /^(?:from|off) /.test(`${text} `) ? at + 1 : to;
  const whom = plain.slice(from, Math.min(breathAfter(check, from + 1, FROM_WHOM), from + FROM_WHOM)).join(" ");
  const how = found.how === "bought" || found.how === undefined ? (howOf(whom) ?? found.how) : found.how;
  if (how === undefined && !namesSource(check, whom)) return [];
  const subject = namedNext(check, at, to) ?? subjectAt(check, at, to, 60);
  if (subject?.variety === undefined || isOfThing(check, at, subject)) return [];
  const isGear = check.film.names.some(
    ({ name, from: begins }) => name.kind === "gear" && begins > subject.to && begins < at + 8,
  );
  return isGear
    ? []
    : [{ kind: "source", how, whom, isSaid: found.how === how, subject, from: at, to: Math.max(to, from + 1) }];
}

/** "I got the net off my sister": a thing, and not the plants. */
function isOfThing(check: Check, at: number, subject: Subject): boolean {
  const before = check.plain.slice(breathBefore(check, at, 6), at).join(" ");
  const thing =
    /\b(?:got|get|had|have|bought|took|borrowed|lent|is|are) (?:the|a|an|my|our|some|that|this|these|those) (\w+)$/.exec(
      before,
    )?.[1];
  return (
    thing !== undefined && subject.to !== at && !plantNouns.test(thing) && !/^(?:ones?|lot|two|three|row)$/.test(thing)
  );
}

/** Whether words name one of the sources on record: "they're both from Windmill Seeds". */
function namesSource({ film }: Check, whom: string): boolean {
  for (const { source } of film.day.garden.varieties.values())
    if (source !== undefined && sharesWords(source.name, whom)) return true;
  return false;
}

function howOf(whom: string): Obtaining | undefined {
  const found = givers.flatMap(([pattern, how]) => {
    const at = pattern.exec(whom)?.index;
    return at === undefined ? [] : [{ how, at }];
  });
  // "my aunt's shop" is a shop, and "the seed swap at the library" a swap.
  return (
    found.find(({ how }) => how === "swapped")?.how ?? found.find(({ how }) => how === "bought")?.how ?? found[0]?.how
  );
}
