/** When things are said to have been, and how long ago: "sown on the twelfth of April", "first picked in May", "going on ten years". */
import type { Day } from "../../model.ts";
import type { Check } from "../fact-check.ts";
import type { Claim, Milestone } from "./claim.ts";
import { spokenLength, spokenPeriod } from "./periods.ts";
import { breathAfter, breathBefore, subjectAt, withinSentence } from "./subjects.ts";

/** Verbs and nouns by what they say of a planting's course; the first that fits. */
const milestones: readonly (readonly [RegExp, Milestone])[] = [
  [
    /\bfirst (?:\w+ ){0,3}?(?:flower|bloom|spike|bud|one opened|opened)|\bopened (?:up|first|yesterday|on|last|a week)|\b(?:in|into) flower\b|\b(?:flowered|bloomed|blossomed)\b|\bcame into (?:flower|bloom|blossom)\b/,
    "first flower",
  ],
  [
    /\bfirst (?:\w+ ){0,4}?(?:ate|picked|pick|picking|picks|plucked|cut|bunch|harvest|harvested|eaten|ripe|berr(?:y|ies)|fruits?|pods?|beans|peas|leaves|spears?|heads?|ones? off|mess|feed|basket|bowl|kilo|tomato(?:es)?|pounds?|kilos|couple|lot|handful|bucket|punnet|jar|meal|proper \w+)\b|\b(?:ate|picked|plucked|cut|took|had|got) the first\b|\b(?:started|began|begun) (?:to )?(?:cut(?:ting)?|pick(?:ing)?|eat(?:ing)?|harvest(?:ing)?|pull(?:ing)?)\b/,
    "first picked",
  ],
  [
    /\b(?:dug|lifted|harvested|pulled) (?:\w+ ){0,3}?(?:them|it|those|up|out|lot|all|rest|crop)\b|\b(?:i|we) (?:dug|lifted|harvested)\b|\b(?:dug|lifted|harvested|cleared)(?: (?:on|in|at|last|it|them|out))*$/,
    "taken up",
  ],
  [
    /\b(?:been|its|is|theyre|are|was|were|came|come|popped|poked|germinated|sprouted)(?: \w+)? up\b|\b(?:germinated|sprouted|emerged)\b/,
    "up",
  ],
  [/\b(?:sowed|sown|seeded|sowing)\b/, "sown"],
  [/\b(?:planted|transplanted|set out|planted out)\b/, "planted"],
  [
    /\b(?:went in|put (?:\w+ ){0,3}?(?:in|there|here)|set (?:\w+ ){0,3}?in|put them|have put|stuck|been in|in the ground|(?:in|here|there|out) since)\b/,
    "begun",
  ],
];

/** Words back to the verb of a time that is given anew. */
const SAID_ANEW = 26;
/** Words before a time within which it is said of what. */
const VERB_NEAR = 13;

export function dayClaim(check: Check, at: number, filmed: Day): readonly Claim[] {
  const { plain } = check;
  const period = withinSentence(check, at, (words, word) => spokenPeriod(words, word, filmed));
  if (period === undefined) return [];
  const start = clauseBefore(check, at);
  // "I sowed it after the okra, no, it was Easter weekend"
  const isSaidAnew = /^(?:it was|that was|it were)$/.test(plain.slice(at - 2, at).join(" "));
  const before = plain.slice(isSaidAnew ? Math.max(0, at - SAID_ANEW) : start, at).join(" ");
  const after = plain.slice(period.end, breathAfter(check, period.end, 5)).join(" ");
  const of =
    lastOf(before) ??
    (/^(?:i|we) /.test(after) ? lastOf(after) : undefined) ??
    (breathBefore(check, at, 1) === at ? ofTheLast(check, at) : undefined);
  if (of === undefined) return [];
  const subject = subjectAt(check, at, period.end);
  return subject === undefined ? [] : [{ kind: "day", of, period, subject, from: at, to: period.end }];
}

const who = /^(?:i|we|it|its|they|theyre|he|she|one|then|now|the|that|thats|this|these|those)$/;

/** The first word of the clause, or of the breath, before a word: what ", and" joins on is another thing. */
function clauseBefore(check: Check, at: number): number {
  const from = breathBefore(check, at, VERB_NEAR);
  const { words, punctuated } = check.film.speech;
  for (let word = at - 2; word > from; word -= 1) {
    const isJoin = /^(?:and|but|so)$/.test(check.plain[word] ?? "");
    // Where nobody set commas, a joining word and who did it begin a clause.
    const begins = punctuated ? words[word - 1]?.mark === "," : who.test(check.plain[word + 1] ?? "");
    if (isJoin && begins) return word;
  }
  return from;
}

/** "We began to eat on Labour Day. First of May": a time that is a sentence of its own goes with the one before. */
function ofTheLast(check: Check, at: number): Milestone | undefined {
  if (at === 0) return undefined;
  return lastOf(check.plain.slice(breathBefore(check, at - 1, VERB_NEAR), at).join(" "));
}

/** The milestone whose words stand nearest to the end. */
function lastOf(text: string): Milestone | undefined {
  const found = milestones.flatMap(([pattern, of]) => {
    const all = [...text.matchAll(new RegExp(pattern, "g"))];
    const last = all.at(-1);
    return last === undefined ? [] : [{ of, at: last.index + last[0].length }];
  });
  return found.sort((a, b) => b.at - a.at)[0]?.of;
}

/** Days: sixty years. */
const OLDEST = 22_000;

/** "I planted these when I was carrying him, twenty years now"; what was picked two weeks ago today is as old as no plant. */
const standing = /\b(?:in|been|planted|planting|sown|sowed|ground|stand|standing|here|there|old)\b/;

/** What a length of time is told of besides. */
const done = /\b(?:pick|cut|ate|eat|dug|dig|lift|harvest|pull|flower|bloom)/;

/** One word after a length of time, and the clause ends. */
function isEndOf({ film }: Check, end: number): boolean {
  return film.speech.words[end]?.mark !== "";
}

/** "three years old", "going on ten years", "seven weeks in the ground", "they've been in five years", "twelve weeks today". */
export function ageClaim(check: Check, at: number): readonly Claim[] {
  const { plain } = check;
  const length = withinSentence(check, at, spokenLength);
  // What is older is a sort's age, not a plant's.
  if (length === undefined || length.days > OLDEST || /^(?:hundred|and)$/.test(plain[at - 1] ?? "")) return [];
  const after = plain.slice(length.end, length.end + 3).join(" ");
  const behind = plain.slice(length.end, breathAfter(check, length.end + 1, 5)).join(" ");
  const before = plain.slice(Math.max(0, at - 4), at).join(" ");
  const isUp =
    /\b(?:came|come|was|were|popped|poked) (?:right )?up (?:\w+ ){0,2}?(?:in|after|within)$/.test(before) ||
    (/\b(?:after|in|took|and)$/.test(before) &&
      /^(?:later )?(?:up|it was up|they were up|it came up|they came up|to come up|to (?:sprout|germinate)|to show)\b/.test(
        behind,
      )) ||
    /^later (?:\w+ ){0,2}?up\b/.test(behind);
  if (isUp) {
    const subject = subjectAt(check, at, length.end);
    return subject === undefined
      ? []
      : [{ kind: "days to up", subject, from: at, to: length.end, days: length.days, slack: length.slack }];
  }
  const said = plain.slice(breathBefore(check, at, 12), at).join(" ");
  const isAge =
    /^(?:old|in the ground)\b/.test(after) ||
    (isEndOf(check, length.end) &&
      /\b(?:she|he|it|they|these|those|this|that)(?: is|s|re|ve been| are| have been)?(?: \w+)?$/.test(before) &&
      /^(?:in|here|there|out|old)$/.test(plain[length.end] ?? "")) ||
    (/^(?:now|today|to the day)\b/.test(after) && standing.test(said)) ||
    (/^to(?:day| the day)\b/.test(after) && !done.test(said)) ||
    /\b(?:they are|theyre|its|it is|were|only) (?:only )?in$/.test(before) ||
    /\b(?:going on|been in|been there|been growing|been here|been a good|been about|stand here|stood here|standing here|in here|there since|here since|in the ground(?: since| for)?|had (?:her|him|it|them)(?: going on| for)?)$/.test(
      before,
    );
  if (!isAge) return [];
  const subject = subjectAt(check, at, length.end);
  return subject === undefined
    ? []
    : [{ kind: "age", subject, from: at, to: length.end, days: length.days, slack: length.slack }];
}
