/**
 * What was tried and what came of it: done by a plan of an earlier season, for a reason that a line gives, or another way than
 * before. Whether it helped no thread says: what was picked and what the person wrote of it is told, and no more.
 */
import { cropOf } from "../../crop-of.ts";
import { cardLimits, countWords, toPause } from "../../films/index.ts";
import { sentencesOf } from "../../language/index.ts";
import type { Event, EventKind, Garden, Plan, PlantIds } from "../../model.ts";
import { contentWords, type OwnLine, shared, withoutBeds } from "./own-lines.ts";
import { cutsMeaning, isRemark, lamentOf } from "./remarks.ts";
import { harvests, ofCrop, type Telling } from "./telling.ts";
import { type Part, part, type Thread, type Told } from "./thread.ts";

/** Deeds; a promise and a plan are none. */
const deeds: ReadonlySet<EventKind> = new Set([
  "planted",
  "sowed",
  "put up",
  "did",
  "moved",
  "thinned",
  "took down",
  "doing",
]);
const anotherWay =
  /\b(?:this time|instead of|(?:than|unlike|after) last (?:year|time|season)|because of (?:the|last)\b.{0,80}\blast year)\b/i;
const superlative = /\b(?:ever|never|best|earlier|sooner|twice|half the size)\b/i;
const reasons = /\bbecause of\b|\bafter last year\b/i;
const months = "january february march april may june july august september october november december".split(" ");
/** Seasons after which a plan is forgotten. */
const remembered = 2;

interface Trial {
  plans: Plan[];
  deeds: OwnLine[];
}

export function triedThreads(telling: Telling): readonly Thread[] {
  const found = new Map<string, Trial>();
  const of = (key: string) => {
    const one = found.get(key) ?? { plans: [], deeds: [] };
    found.set(key, one);
    return one;
  };
  for (const plan of plansBefore(telling)) {
    const lines = deedsOf(plan, telling);
    const key = cropOf(telling.material.book.garden, plan)?.id;
    if (lines.length === 0 || key === undefined) continue;
    const one = of(key);
    one.plans.push(plan);
    one.deeds.push(...lines);
  }
  for (const line of telling.now) {
    if (line.event === undefined ? !line.asks : !deeds.has(line.event.kind)) continue;
    const another = line.event?.reason !== undefined || anotherWay.test(line.event?.detail ?? line.text);
    const key = another ? cropOfLine(line, telling) : undefined;
    if (key !== undefined) of(key).deeds.push(line);
  }
  for (const [crop, one] of found) {
    if (one.plans.length > 0 || !one.deeds.some(({ text }) => reasons.test(text))) continue;
    one.plans.push(...plansBefore(telling).filter((plan) => cropOf(telling.material.book.garden, plan)?.id === crop));
  }
  return [...found].flatMap(([crop, one]) => threadOf(crop, one, telling));
}

function plansBefore({ material: { book, from, season } }: Telling): readonly Plan[] {
  return book.garden.plans.filter(
    ({ said, private: hidden }) => !hidden && said < from && Number(said.slice(0, 4)) >= season.year - remembered,
  );
}

/** Lines of this season that do what was planned: of the crop, or in a bed of its family, and with a word of the plan. */
function deedsOf(plan: Plan, { now, material: { book, from, to } }: Telling): readonly OwnLine[] {
  const { garden } = book;
  const crop = cropOf(garden, plan);
  const words = withoutWordsOf(contentWords(plan.what), [crop?.name, crop?.plural, ...(crop?.alsoCalled ?? [])]);
  const month = months.findIndex((name) => words.has(name)) + 1;
  const beds = new Set(
    book.lots
      .filter(
        ({ planting, crop: own }) =>
          own?.family === crop?.family && crop !== undefined && planting.since <= to && (planting.ended ?? to) >= from,
      )
      .map(({ planting }) => planting.bed),
  );
  return now.filter((line) => {
    if (line.event !== undefined && !deeds.has(line.event.kind)) return false;
    const names = crop !== undefined && line.crops.has(crop.id);
    if (!names && !(line.crops.size === 0 && line.bed !== undefined && beds.has(line.bed))) return false;
    const then =
      names &&
      month > 0 &&
      Number(line.day.slice(5, 7)) === month &&
      (line.event?.kind === "planted" || (line.event?.kind === "sowed" && line.event.nursery !== true));
    return then || shared(words, line.words) > 0;
  });
}

function withoutWordsOf(words: ReadonlySet<string>, names: readonly (string | undefined)[]): ReadonlySet<string> {
  const own = new Set(names.flatMap((name) => [...contentWords(name ?? "")]));
  return new Set([...words].filter((word) => !own.has(word)));
}

/** The crop a line is of; of a bed's own line, the one crop that stands there; else what had the trouble that is its reason. */
function cropOfLine(line: OwnLine, telling: Telling): string | undefined {
  const { crops, bed, event } = line;
  const { book, from, to } = telling.material;
  if (crops.size === 1) return [...crops][0];
  if (crops.size > 1) return undefined;
  if (bed === undefined) return event?.reason === undefined ? undefined : troubledBy(event.reason, telling);
  const there = new Set(
    book
      .lotsIn(bed)
      .filter(({ planting }) => planting.since <= to && (planting.ended ?? to) >= from)
      .flatMap(({ crop }) => crop?.id ?? []),
  );
  return there.size === 1 ? [...there][0] : undefined;
}

/** The one crop that had what the reason names, the season before. */
function troubledBy(reason: string, { before, material: { book } }: Telling): string | undefined {
  if (before === undefined) return undefined;
  const words = contentWords(reason);
  const crops = new Set(
    book.garden.events
      .filter(
        ({ kind, cause, day, private: hidden }) =>
          !hidden &&
          (kind === "trouble" || kind === "lost") &&
          cause !== undefined &&
          day >= before.season.from &&
          day <= before.season.to &&
          shared(words, contentWords(cause)) > 0,
      )
      .flatMap((event) => cropOf(book.garden, event)?.id ?? []),
  );
  return crops.size === 1 ? [...crops][0] : undefined;
}

const worthOf = { plan: 30, reason: 22, facts: 8, harvest: 12, outcome: 10, before: 8 } as const;

function threadOf(crop: string, { plans, deeds: all }: Trial, telling: Telling): readonly Thread[] {
  const { material, now } = telling;
  const { to } = material;
  const { garden } = material.book;
  const weight = (line: OwnLine) => (reasons.test(line.text) ? 0 : 1);
  const done = [...new Set(all)].toSorted((a, b) => weight(a) - weight(b) || (a.day < b.day ? -1 : 1));
  const [first] = done;
  const plan = plans[0];
  if (first === undefined || (plan === undefined && done.every(({ asks }) => asks))) return [];
  const of: PlantIds = { crop };
  const before = troubleBefore(crop, telling) ?? wordsBefore(crop, telling);
  const reason = done.find(({ event }) => event?.reason !== undefined)?.event;
  const lead: Part<Told> =
    plan !== undefined
      ? part({ is: "planned", what: plan.what, said: plan.said, of }, [plan], to)
      : reason?.reason !== undefined
        ? part({ is: "done because", reason: reason.reason, gear: reason.gear, of }, [reason], to)
        : part({ is: "own words", text: differently(first), of }, [first], to);
  const same = harvests(telling, ofCrop(crop));
  const picked = telling.picked(material.from, to, ofCrop(crop));
  const gave =
    same === undefined && picked.sum.times > 0 && !picked.doubtful
      ? [part<Told>({ is: "gave", of, picked: picked.sum }, picked.lines, to)]
      : [];
  const known = new Set(done);
  const words = withoutNames(
    new Set([
      ...done.flatMap(({ words: own }) => [...own]),
      ...(before?.value.is === "own words" ? contentWords(before.value.text) : []),
    ]),
    crop,
    garden,
  );
  const begun = done.map(({ day }) => day).sort()[0] ?? first.day;
  const outcomes = now.filter(
    (line) =>
      !known.has(line) && line.day >= begun && (isOutcome(line, crop, words) || isOpenPicking(line, crop, telling)),
  );
  const told = outcomes.toSorted((a, b) => Number(superlative.test(b.text)) - Number(superlative.test(a.text)));
  const came = told.flatMap((line) =>
    outcomeWords(line, words).map((text) =>
      part<Told>({ is: "own words", text: withoutBeds(text, garden) }, [line], to, line.asks),
    ),
  );
  const again = troubleAgain(crop, telling);
  const [firstDeed, ...otherDeeds] = done.slice(0, 2);
  const short = came.filter(({ value }) => value.is === "own words" && isShort(value.text));
  return [
    {
      kind: "tried",
      about: of,
      worth:
        40 +
        (plan === undefined ? 0 : worthOf.plan) +
        (reason === undefined ? 0 : worthOf.reason) +
        (done.some(({ asks }) => !asks) ? worthOf.facts : 0) +
        (same === undefined ? 0 : worthOf.harvest) +
        (came.length === 0 ? 0 : worthOf.outcome) +
        (before === undefined ? 0 : worthOf.before),
      lead,
      before,
      now: [
        firstDeed === undefined ? undefined : deed(firstDeed, lead, telling),
        ...again,
        ...short.slice(0, 1),
        ...gave,
        ...short.slice(1),
        ...otherDeeds.map((line) => deed(line, lead, telling)),
      ].filter((one) => one !== undefined),
      figure:
        same === undefined
          ? undefined
          : part(
              { is: "picked", of, now: same.now.sum, before: same.last.sum },
              [...same.now.lines, ...same.last.lines],
              to,
            ),
      notes: [
        ...came.filter((one) => !short.includes(one)),
        ...(plan === undefined || reason?.reason === undefined
          ? []
          : [part<Told>({ is: "own words", text: reason.reason }, [reason], to)]),
      ],
      next: undefined,
      gear: done.flatMap(({ event }) => event?.gear ?? []),
      photos: [],
    },
  ];
}

/** Said in seven words, without a part that only leads up to the rest. */
function isShort(text: string): boolean {
  const short = toPause(text, 7);
  return short !== undefined && !cutsMeaning(text, short);
}

/** The part of the line that says what is another way: "a block this time" of "row 3, a block this time, 4 by 6". */
function differently({ event, text }: OwnLine): string {
  const said = (event?.detail ?? text).trim();
  return said.split(/[,;]\s+/).find((part) => anotherWay.test(part)) ?? said;
}

/** What was done, in the fewest words that a line or its facts give. */
function deed(line: OwnLine, lead: Part<Told>, { material: { book, to } }: Telling): Part<Told> | undefined {
  const { event } = line;
  const said = lead.value.is === "own words" ? lead.value.text : undefined;
  if (event === undefined) {
    const text = withoutBeds(line.text, book.garden);
    const gear = [...book.garden.gear.values()].find(
      ({ title, private: hidden }) => !hidden && line.text.toLowerCase().includes(title.toLowerCase()),
    );
    return toPause(text, 7) === undefined && gear !== undefined
      ? part({ is: "gear on a day", gear: gear.id, on: line.day }, [line, gear], to, line.asks)
      : part({ is: "own words", text }, [line], to, line.asks);
  }
  const words = event.detail?.trim();
  const of = { variety: event.variety, crop: event.crop };
  if (
    words !== undefined &&
    words !== said &&
    isRemark(words) &&
    !words.includes(said ?? "\n") &&
    /[a-z]{3}/i.test(words) &&
    toPause(words, 7) !== undefined
  )
    return part({ is: "own words", text: words, of }, [event], to);
  if (event.kind === "put up" && event.gear !== undefined)
    return part({ is: "put up", gear: event.gear, on: event.day }, [event], to);
  if (event.kind === "planted" || event.kind === "sowed")
    return part({ is: "begun", of, kind: event.kind, on: event.day }, [event], to);
  return toPause(event.text, 7) === undefined ? undefined : part({ is: "own words", text: event.text }, [event], to);
}

/** A word of what was done comes back in it, or it is what the person noted beside a picking. */
function isOutcome(line: OwnLine, crop: string, words: ReadonlySet<string>): boolean {
  const { event } = line;
  if (event !== undefined) return event.kind === "picked" && line.crops.has(crop) && remarkOf(event) !== undefined;
  return (
    (line.crops.size === 0 || line.crops.has(crop)) &&
    (shared(words, line.words) > 0 || (line.crops.has(crop) && superlative.test(line.text)))
  );
}

/** A long sentence by the part of it that tells of more than any year before. */
function mostTelling(sentence: string): string {
  if (countWords(sentence) <= cardLimits.why) return sentence;
  return sentence.split(/[,;]\s+/).find((part) => superlative.test(part) && countWords(part) > 3) ?? sentence;
}

/** A line still in question, of the one bed of the crop, that begins with what was picked. */
function isOpenPicking(line: OwnLine, crop: string, telling: Telling): boolean {
  return (
    line.asks &&
    (line.crops.size === 0 || line.crops.has(crop)) &&
    /^(?:picked|cut|dug|lifted|pulled|harvested)\b/i.test(line.text) &&
    cropOfLine(line, telling) === crop
  );
}

/** Without the words that are names of the crop, its varieties and the beds: they come back in any line. */
function withoutNames(words: ReadonlySet<string>, crop: string, garden: Garden): ReadonlySet<string> {
  const record = garden.crops.get(crop);
  const varieties = [...garden.varieties.values()].filter((variety) => variety.crop === crop);
  return withoutWordsOf(words, [
    record?.name,
    record?.plural,
    ...(record?.alsoCalled ?? []),
    ...varieties.flatMap(({ title, alsoSpelled }) => [title, ...alsoSpelled]),
    ...[...garden.beds.values()].map(({ title }) => title),
  ]);
}

/** Of several sentences those with the word in them come first. */
function outcomeWords({ event, text }: OwnLine, words: ReadonlySet<string>): readonly string[] {
  if (event === undefined) {
    const sentences = sentencesOf(text).map((one) => one.replace(/\.$/, ""));
    const speaks = (one: string) => shared(words, contentWords(one)) > 0 || superlative.test(one);
    const said = sentences.filter((one) => speaks(one) || countWords(one) > 4).map(mostTelling);
    return said.toSorted((a, b) => Number(speaks(b)) - Number(speaks(a)));
  }
  const remark = remarkOf(event);
  return remark === undefined ? [] : [remark];
}

/** What stands beside an amount and is no place and no row: "not one with a black bottom". */
function remarkOf({ detail, more }: Event): string | undefined {
  return [detail, ...more].find((words) => words !== undefined && isRemark(words))?.trim();
}

/** The strongest trouble that the crop had the season before. */
export function troubleBefore(crop: string, { before, material }: Telling): Part<Told> | undefined {
  if (before === undefined) return undefined;
  const { garden } = material.book;
  const events = garden.events.filter(
    (event) =>
      (event.kind === "trouble" || event.kind === "lost") &&
      !event.private &&
      event.cause !== undefined &&
      event.day >= before.season.from &&
      event.day <= before.season.to &&
      cropOf(garden, event)?.id === crop,
  );
  const byCause = [...Map.groupBy(events, ({ cause = "" }) => cause.toLowerCase()).values()];
  const plants = (group: readonly Event[]) =>
    group.reduce((sum, { kind, count }) => sum + (kind === "lost" ? (count?.value ?? 0) : 0), 0);
  const [worst] = byCause.toSorted((a, b) => plants(b) - plants(a) || b.length - a.length);
  const cause = worst?.[0]?.cause;
  return worst === undefined || cause === undefined
    ? undefined
    : part({ is: "trouble then", of: { crop }, cause, plants: plants(worst) }, worst, material.to);
}

/** How the person told of its trouble then, where no fact holds it. */
function wordsBefore(crop: string, { before, lines, material }: Telling): Part<Told> | undefined {
  const then = before?.season;
  return then === undefined
    ? undefined
    : lamentOf(
        crop,
        lines.filter(({ day }) => day >= then.from && day <= then.to),
        material,
      );
}

/** The trouble of last season on the same crop this season too. */
function troubleAgain(crop: string, telling: Telling): readonly Part<Told>[] {
  const then = troubleBefore(crop, telling);
  if (then?.value.is !== "trouble then") return [];
  const { cause } = then.value;
  const now = telling.now.find(
    ({ event, crops }) =>
      event !== undefined &&
      (event.kind === "trouble" || event.kind === "lost") &&
      event.cause?.toLowerCase() === cause.toLowerCase() &&
      crops.has(crop),
  );
  return now === undefined ? [] : [part({ is: "trouble again", of: { crop }, cause }, [now], telling.material.to)];
}
