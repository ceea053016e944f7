/** What is claimed held against what the records tell: whatever any reading of them bears out is let be. */
import { addDays, daysBetween } from "../../calendar.ts";
import { cropOf } from "../../crop-of.ts";
import { sayAge, sayDay, sayLength, sayList, sayNumber, sayWeight } from "../../language/index.ts";
import type { Count, Day, Event, EventKind, Garden, Place, Planting } from "../../model.ts";
import { type Check, disagreement } from "../fact-check.ts";
import { moment } from "../moments.ts";
import { textOf } from "../phrases.ts";
import type { Subject } from "../spoken-subjects.ts";
import type { Word } from "../spoken-words.ts";
import type { ClaimsHeard, Disagreement } from "../wrap.ts";
import type { AmountUnit, Claim, Milestone } from "./claims.ts";

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
    const [begins, ends] = [Math.min(from, subject.from), Math.max(to, from + 1)];
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

interface Told {
  readonly kind: Disagreement["kind"];
  readonly text: string;
  readonly sources: readonly Place[];
}

/** "not told": the records hold nothing of the kind, which is no agreement. */
type Verdict = Told | "agrees" | "not told";

function verdict(check: Check, claim: Claim): Verdict {
  switch (claim.kind) {
    case "count":
      return count(check, claim.subject, claim.value, claim.isNow);
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
      return source(check, claim.subject, claim.how);
    case "stands here":
      return claim.subject.here.length > 0 ? "agrees" : standsElsewhere(check, claim.subject);
  }
}

/** Share by which a spoken weight or height may differ: people round. */
const ROUNDED = 0.07;
const near = (said: number, known: number, share = ROUNDED) => Math.abs(said - known) <= Math.max(known * share, 0.01);

function eventsOf({ film: { day } }: Check, { variety, crop }: Subject, kinds: readonly EventKind[]): readonly Event[] {
  const { garden } = day;
  const own = variety === undefined ? crop : garden.varieties.get(variety)?.crop;
  return (eventsByCrop(garden).get(own) ?? []).filter(
    (event) =>
      kinds.includes(event.kind) &&
      event.day <= day.day &&
      (variety === undefined || event.variety === variety || (event.variety === undefined && own !== undefined)),
  );
}

const made = new WeakMap<Garden, ReadonlyMap<string | undefined, readonly Event[]>>();

/** A long film claims a thousand things of a garden of many thousand lines. */
function eventsByCrop(garden: Garden): ReadonlyMap<string | undefined, readonly Event[]> {
  const known = made.get(garden) ?? Map.groupBy(garden.events, (event) => cropOf(garden, event)?.id);
  made.set(garden, known);
  return known;
}

/** Days of a season that is told of as this one. */
const THIS_SEASON = 330;

function count(check: Check, subject: Subject, said: number, isNow: boolean): Verdict {
  const lots = subject.here;
  if (lots.length === 0) return waiting(check, subject, said) ?? standsElsewhere(check, subject);
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

function gone(check: Check, subject: Subject, said: number, how: "lost" | "gave away"): Verdict {
  const known = eventsOf(check, subject, [how]).filter(
    ({ day: on }) => daysBetween(on, check.film.day.day) <= THIS_SEASON,
  );
  const counts = known.flatMap(({ count: one }) => (one === undefined ? [] : [one]));
  const total = counts.reduce((all, { value }) => all + value, 0);
  if (counts.length === 0) return "not told";
  const fits = said === total || counts.flatMap((one) => meant(one)).some(({ from, to }) => said >= from && said <= to);
  if (fits) return "agrees";
  return {
    kind: "count",
    text: `The records have ${sayNumber(total)} ${subject.title} ${how === "lost" ? "lost" : "given away"}.`,
    sources: known.map(({ place }) => place),
  };
}

function nonePicked(check: Check, subject: Subject): Verdict {
  const since = subject.here.map((lot) => lot.since).sort()[0];
  if (since === undefined) return "not told";
  const [first] = eventsOf(check, subject, ["picked"]).filter(({ day: on }) => on >= since);
  // That nothing is on record is what was said.
  if (first === undefined) return "agrees";
  return {
    kind: "day",
    text: `The records have ${subject.title} picked on ${saidDay(check, first.day)}.`,
    sources: [first.place],
  };
}

function daysToUp(check: Check, subject: Subject, days: number, slack: number): Verdict {
  const up = eventsOf(check, subject, ["up"]).at(-1);
  const sown = eventsOf(check, subject, ["sowed"]).findLast(({ day: on }) => up !== undefined && on <= up.day);
  if (up === undefined || sown === undefined) return "not told";
  const took = daysBetween(sown.day, up.day);
  if (Math.abs(took - days) <= slack) return "agrees";
  return {
    kind: "age",
    text: `By the records ${subject.title} came up after ${sayAge(took)}.`,
    sources: [sown.place, up.place],
  };
}

/** The numbers a count may stand for; "about ten" a fifth either way. */
function meant(count: Count | undefined): readonly { readonly from: number; readonly to: number }[] {
  if (count === undefined) return [];
  const to = count.upTo ?? count.value;
  return [count.approx ? { from: count.value * 0.8, to: to * 1.2 } : { from: count.value, to }];
}

function amount(check: Check, subject: Subject, said: number, unit: AmountUnit): Verdict {
  const { garden, day } = check.film.day;
  const picked = eventsOf(check, subject, ["picked"]);
  const amountOf = (event: Event) =>
    unit === "g"
      ? event.grams
      : event.unit === unit || (event.unit === undefined && unit !== "bunch")
        ? event.count?.value
        : undefined;
  const known = picked.flatMap((event) => {
    const value = amountOf(event);
    return value === undefined ? [] : [{ value, day: event.day, place: event.place }];
  });
  if (known.length === 0) return "not told";
  const last = known.filter((one) => daysBetween(one.day, day) <= THIS_SEASON);
  const sums = [
    ...Map.groupBy(known, (one) => one.day).values(),
    ...Map.groupBy(known, (one) => one.day.slice(0, 4)).values(),
    last,
    known,
  ];
  const totals = sums.map((all) => all.reduce((sum, { value }) => sum + value, 0));
  if ([...known.map(({ value }) => value), ...totals].some((one) => near(said, one))) return "agrees";
  // Beside what was weighed, a number of fruits that does not fit tells of no mistake.
  if (unit === "fruit" && known.length < picked.length) return "not told";
  const shown = last.length > 0 ? last : known;
  const total = shown.reduce((sum, { value }) => sum + value, 0);
  const words =
    unit === "g"
      ? sayWeight(total, garden.settings.units)
      : unit === "fruit"
        ? sayNumber(total)
        : `${sayNumber(total)} ${unit === "bunch" ? "bunches" : `${unit}s`}`;
  return {
    kind: unit === "fruit" ? "count" : "weight",
    text: `The records have ${words} ${unit === "fruit" ? "" : "of "}${subject.title} picked${shown.length > 1 ? `, in ${sayNumber(shown.length)} pickings` : ` on ${saidDay(check, shown[0]?.day ?? day)}`}.`,
    sources: shown.map(({ place }) => place),
  };
}

function amountLastYear(check: Check, subject: Subject, said: number, unit: AmountUnit): Verdict {
  const year = String(Number(check.film.day.day.slice(0, 4)) - 1);
  const known = eventsOf(check, subject, ["picked"]).flatMap((event) => {
    const value = unit === "g" ? event.grams : event.unit === unit ? event.count?.value : undefined;
    return value !== undefined && event.day.startsWith(year) ? [{ value, place: event.place }] : [];
  });
  if (known.length === 0) return "not told";
  const total = known.reduce((sum, { value }) => sum + value, 0);
  if ([total, ...known.map(({ value }) => value)].some((one) => near(said, one))) return "agrees";
  const words =
    unit === "g"
      ? sayWeight(total, check.film.day.garden.settings.units)
      : `${sayNumber(total)} ${unit === "bunch" ? "bunches" : `${unit}s`}`;
  return {
    kind: "weight",
    text: `The records have ${words} of ${subject.title} picked in ${year}.`,
    sources: known.map(({ place }) => place),
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

const kindsOf: Readonly<Record<Milestone, readonly EventKind[]>> = {
  sown: ["sowed"],
  planted: ["planted", "moved"],
  begun: ["sowed", "planted", "moved"],
  "first picked": ["picked"],
  "first flower": ["flowered"],
  "taken up": ["picked", "cleared"],
};

function day(check: Check, subject: Subject, of: Milestone, period: { readonly from: Day; readonly to: Day }): Verdict {
  const events = eventsOf(check, subject, kindsOf[of]);
  const perennial = subject.anywhere.some((lot) => lot.perennial);
  const firsts = of === "first picked" || of === "first flower";
  const { day: filmed } = check.film.day;
  const lots = subject.here.length > 0 ? subject.here : subject.anywhere;
  const since = lots.map((lot) => lot.sown ?? lot.since).sort()[0];
  const days = firsts
    ? [...Map.groupBy(events, ({ day: one }) => one.slice(0, 4)).values()].map((all) => all[0]?.day as Day)
    : [
        ...events.map((event) => event.day),
        ...(of === "sown"
          ? lots.map((lot) => lot.sown)
          : lots.flatMap((lot) => [
              lot.planted,
              of === "begun" ? lot.sown : undefined,
              of === "begun" ? lot.since : undefined,
            ])),
      ].filter((one) => one !== undefined);
  // Sown in place is planted too, as people say it.
  const also = of === "planted" && days.length === 0 ? lots.map((lot) => lot.sown ?? lot.since) : [];
  const known = [...new Set([...days, ...also])].sort();
  const told = known.filter((one) => perennial || since === undefined || one >= since || firsts);
  if (told.length === 0) return "not told";
  if (known.some((one) => one >= addDays(period.from, -1) && one <= addDays(period.to, 1))) return "agrees";
  const recent = told.filter((one) => perennial || daysBetween(one, filmed) <= THIS_SEASON);
  if (recent.length === 0) return "not told";
  const verb = {
    sown: "sown",
    planted: "planted",
    begun: "in",
    "first picked": "first picked",
    "first flower": "first in flower",
    "taken up": "taken up",
  }[of];
  return {
    kind: "day",
    text: `The records have ${subject.title} ${verb} on ${sayList(
      recent.map((one) => saidDay(check, one)),
      "or",
    )}.`,
    sources: events.filter((event) => recent.includes(event.day)).map(({ place }) => place),
  };
}

function age(check: Check, { here, title }: Subject, days: number, slack: number): Verdict {
  // What the notes only found there ("came back") is as old as nobody noted.
  const known = here
    .filter(({ sown, planted, implied }) => !implied || sown !== undefined || planted !== undefined)
    .flatMap(({ sown, planted, since, implied, stage, stageSince }) => [
      sown,
      planted,
      implied ? undefined : since,
      stage === "up" || stage === "growing" ? stageSince : undefined,
    ])
    .filter((one) => one !== undefined);
  const old = known.map((one) => daysBetween(one, check.film.day.day)).filter((one) => one >= 0);
  // "It was in the ground eight months": of what has been taken up since.
  const lived = here.flatMap(({ sown, planted, since, ended }) =>
    ended === undefined ? [] : [daysBetween(planted ?? sown ?? since, ended)],
  );
  if (lived.some((one) => Math.abs(one - days) <= slack)) return "agrees";
  if (old.length === 0) return "not told";
  if (old.some((one) => Math.abs(one - days) <= slack)) return "agrees";
  return { kind: "age", text: `By the records ${title} had been there for ${sayAge(Math.min(...old))}.`, sources: [] };
}

const fits: Readonly<Record<"bought" | "given" | "saved", readonly string[]>> = {
  bought: ["bought", "commission link", "paid promotion"],
  given: ["gifted", "swapped", "lent"],
  saved: ["saved", "own product"],
};

function source(check: Check, subject: Subject, how: "bought" | "given" | "saved"): Verdict {
  const variety = check.film.day.garden.varieties.get(subject.variety ?? "");
  // "planted 1 given Smyrna" tells it of the plants, where no file does of the variety.
  const lots = subject.here.length > 0 ? subject.here : subject.anywhere;
  const came = lots.flatMap(({ plantsFrom }) => plantsFrom ?? []);
  const obtained = variety?.source?.obtained ?? came[0];
  if (variety === undefined || obtained === undefined) return "not told";
  if (fits[how].includes(obtained) || came.some((one) => one === how)) return "agrees";
  const from = variety.source?.name;
  return {
    kind: "source",
    text: `The records have ${subject.title} as ${obtained}${from === undefined || from === obtained ? "" : `: ${from}`}.`,
    sources: variety.place === undefined ? [] : [variety.place],
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

function saidDay({ film: { day } }: Check, of: Day): string {
  return sayDay(of, { language: day.garden.settings.language, near: day.day });
}
