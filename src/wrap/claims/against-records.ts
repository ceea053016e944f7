/** What is claimed held against what the records tell: whatever any reading of them bears out is let be. */
import { daysBetween } from "../../calendar.ts";
import { sayLength, sayList, sayNumber } from "../../language/index.ts";
import type { Planting } from "../../model.ts";
import { type Check, disagreement } from "../fact-check.ts";
import { moment } from "../moments.ts";
import { textOf } from "../phrases.ts";
import type { Subject } from "../spoken-subjects.ts";
import type { Word } from "../spoken-words.ts";
import type { ClaimsHeard, Disagreement } from "../wrap.ts";
import { amount, amountLastYear, gone, nonePicked } from "./amounts-held.ts";
import type { Claim } from "./claim.ts";
import { eventsOf, meant, near, saidDay, type Verdict } from "./records-told.ts";
import { source } from "./sources-held.ts";
import { isOneBreath } from "./subjects.ts";
import { age, day, daysToUp, firstTime } from "./times-held.ts";

export interface Held {
  readonly differing: readonly Disagreement[];
  readonly agreed: number;
  readonly notCompared: ClaimsHeard["notCompared"];
}

export function heldAgainstRecords(check: Check, claims: readonly Claim[]): Held {
  const { words } = check.film.speech;
  const differing: Disagreement[] = [];
  const notCompared: ClaimsHeard["notCompared"][number][] = [];
  let agreed = 0;
  for (const claim of claims) {
    const { subject, from, to } = claim;
    const told = verdict(check, claim);
    const [begins, ends] = [subject.unnamed === true ? from : Math.min(from, subject.from), Math.max(to, from + 1)];
    const at = moment((words[from] as Word).at);
    if (told === "agrees") agreed += 1;
    else if (told === "not told") notCompared.push({ ...at, said: textOf(words, from, ends), about: subject.title });
    else {
      const found = disagreement(check, told.kind, begins, ends, told.text, subject.bed, subject.here);
      differing.push({ ...found, ...at, ...(told.sources.length > 0 && { sources: told.sources }) });
    }
  }
  return { differing, agreed, notCompared };
}

function verdict(check: Check, claim: Claim): Verdict {
  switch (claim.kind) {
    case "count":
      return count(check, claim);
    case "lost":
      return gone(check, claim.subject, claim.value, "lost");
    case "given away":
      return gone(check, claim.subject, claim.value, "gave away");
    case "none picked":
      return nonePicked(check, claim.subject);
    case "amount last year":
      return amountLastYear(check, claim.subject, claim.value, claim.unit);
    case "amount":
      return amount(check, claim.subject, claim.value, claim.unit);
    case "height":
      return height(check, claim.subject, claim.cm);
    case "day":
      return day(check, claim.subject, claim.of, claim.period);
    case "age":
      return age(check, claim.subject, claim.days, claim.slack);
    case "days to up":
      return daysToUp(check, claim.subject, claim.days, claim.slack);
    case "source":
      return source(check, claim);
    case "first time":
      return firstTime(check, claim.subject);
    case "stands here":
      return claim.subject.here.length > 0 ? "agrees" : standsElsewhere(check, claim.subject);
  }
}

/** Times by which nobody's memory is off: a number as far from all that are known is said of something else. */
const FAR = 3;

/** Words between a name and a number that is said of it for sure. */
const BESIDE = 3;

function count(check: Check, { subject, from, value: said, isNow }: Extract<Claim, { kind: "count" }>): Verdict {
  const lots = subject.here;
  if (lots.length === 0)
    return (
      waiting(check, subject, said) ??
      (subject.variety === undefined || from - subject.to > BESIDE || !isOneBreath(check, subject.to - 1, from)
        ? "not told"
        : standsElsewhere(check, subject))
    );
  const standing = standingNow(lots);
  if (isNow && standing !== undefined && said !== standing && lots.some((one) => one.began?.value === said))
    return {
      kind: "count",
      text: `The records have ${sayNumber(standing)} ${subject.title} left there that day.`,
      sources: [],
    };
  const { day } = check.film.day;
  const begun =
    lots
      .map(({ sown, planted, since }) => [sown, planted, since].filter((one) => one !== undefined).sort()[0] ?? since)
      .sort()[0] ?? day;
  const since = lots.some(({ perennial }) => perennial) ? "0000-01-01" : begun;
  const events = eventsOf(check, subject, [
    "sowed",
    "up",
    "potted on",
    "planted",
    "thinned",
    "lost",
    "gave away",
    "cleared",
    "moved",
    "acquired",
  ]).filter((event) => event.day >= since && event.unit === undefined);
  const known = new Set<number>();
  const rough = events.flatMap(({ count: one }) => meant(one));
  for (const { count: now, began, lost, givenAway, pickedWhole, movedOut, picked } of lots) {
    rough.push(...meant(now), ...meant(began));
    for (const one of [lost, givenAway, pickedWhole, movedOut, (now?.value ?? 0) + pickedWhole]) known.add(one);
    for (const [unit, one] of Object.entries(picked.counts))
      if (!/^(?:stem|bunch|pod|ear)$/.test(unit)) rough.push({ from: 1, to: one });
  }
  const sum = (of: (lot: Planting) => number | undefined) => {
    const all = lots.map(of);
    if (all.every((one) => one !== undefined)) known.add((all as number[]).reduce((total, one) => total + one, 0));
  };
  sum((lot) => lot.count?.value);
  sum((lot) => lot.began?.value);
  sum((lot) => (lot.ended === undefined ? lot.count?.value : 0));
  const counted = lots.filter((lot) => lot.count !== undefined || lot.began !== undefined);
  if (counted.length === 0) return "not told";
  const isFar = [...known, ...rough.map(({ to }) => to)].every((one) => said > one * FAR || said < one / FAR);
  if (isFar) return "not told";
  if (known.has(said) || rough.some(({ from, to }) => said >= from && said <= to)) return "agrees";
  const alive = counted.filter(({ ended }) => ended === undefined);
  const shown = alive.length > 0 ? alive : counted;
  const total = shown.reduce((all, lot) => all + ((lot.count ?? lot.began)?.value ?? 0), 0);
  return { kind: "count", text: `The records have ${sayNumber(total)} ${subject.title} there that day.`, sources: [] };
}

/** How many are left of plants that were counted and some of them lost; undefined where none were, or it is not sure. */
function standingNow(lots: readonly Planting[]): number | undefined {
  const living = lots.filter(({ ended }) => ended === undefined);
  if (!living.some(({ lost }) => lost > 0)) return undefined;
  if (living.some(({ count: now }) => now === undefined || now.approx || now.upTo !== undefined)) return undefined;
  return living.reduce((all, { count: now }) => all + (now?.value ?? 0), 0);
}

/** Plants in trays are counted too before they go out. */
function waiting({ film: { day } }: Check, { variety, title }: Subject, said: number): Verdict | undefined {
  if (variety === undefined) return undefined;
  const lots = day.garden.nurseryLots.filter(
    (lot) => lot.variety === variety && lot.sown <= day.day && (lot.closed === undefined || lot.closed > day.day),
  );
  const counts = lots.flatMap(({ count: sown, left }) => [
    ...meant(sown),
    ...(left === undefined ? [] : [{ from: left, to: left }]),
  ]);
  const [first] = lots;
  if (counts.length === 0 || first?.count === undefined) return undefined;
  if (counts.some(({ from, to }) => said >= from && said <= to)) return "agrees";
  return {
    kind: "count",
    text: `The records have ${sayNumber(first.count.value)} ${title} sown.`,
    sources: [first.place],
  };
}

/** Days for which a height that was measured tells how tall plants are. */
const MEASURED_LATELY = 14;

function height(check: Check, subject: Subject, cm: number): Verdict {
  const { day, garden } = check.film.day;
  const measured = eventsOf(check, subject, ["measured"]).filter((event) => event.heightCm !== undefined);
  const lately = measured.filter((event) => daysBetween(event.day, day) <= MEASURED_LATELY);
  const last = lately.at(-1);
  if (measured.some((event) => near(cm, event.heightCm ?? 0, 0.08))) return "agrees";
  if (last?.heightCm === undefined) return "not told";
  return {
    kind: "size",
    text: `The records have ${subject.title} as ${sayLength(last.heightCm, garden.settings.units)} on ${saidDay(check, last.day)}.`,
    sources: [last.place],
  };
}

function standsElsewhere(check: Check, { variety, anywhere, here, bed, title }: Subject): Verdict {
  const { garden, nursery } = check.film.day;
  const living = anywhere.filter(({ ended }) => ended === undefined);
  if (bed === undefined || here.length > 0 || living.length === 0 || nursery.has(variety ?? "")) return "not told";
  const beds = [...new Set(living.map((lot) => garden.beds.get(lot.bed)?.title ?? lot.bed))];
  return {
    kind: "bed",
    text: `The records have ${title} in ${sayList(beds)}, and none in ${garden.beds.get(bed)?.title ?? bed}.`,
    sources: living.map(({ lastNote }) => lastNote),
  };
}
