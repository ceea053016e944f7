/**
 * Numbers and days said that the records tell otherwise. Both sides are listed and nothing is changed: a slip of the tongue
 * and a slip of the pen look alike from here. What fits any reading of the records is left alone.
 */
import { daysBetween, seasonStart } from "../calendar.ts";
import type { Count, Day, Place, Planting } from "../model.ts";
import { plantingsOf, sayAge, sayDay, sayLength, sayList, sayNumber, sayWeight } from "../timeline/index.ts";
import type { FilmHeard } from "./hear-film.ts";
import { moment } from "./moments.ts";
import { textOf } from "./phrases.ts";
import { spokenDay, spokenNumber } from "./spoken-numbers.ts";
import { type Subject, subjectsOf } from "./spoken-subjects.ts";
import type { Word } from "./spoken-words.ts";
import type { Stretch } from "./stops-heard.ts";
import type { Disagreement } from "./wrap.ts";

/** Less sure than this which plants, or which bed, are meant: nothing is held against the speaker. */
const SURE = 0.6;
/** Words between a number and the name it counts. */
const between = new Set(
  "of the and more nice fine good big little small young plants more these those my our crowns".split(" "),
);
const notCounted = new Set(
  (
    "kilo kilos kg gram grams g pound pounds lb lbs ounce ounces day days week weeks fortnight month months year years metre metres cm " +
    "centimetres foot feet inch inches litre litres degrees percent times row rows pot pots o'clock stems stem bunches heads half point " +
    "barrows trays barrow minutes hours quarters ago different kinds"
  ).split(" "),
);

interface Check {
  readonly film: FilmHeard;
  readonly plain: readonly string[];
  readonly subjects: readonly Subject[];
}

export function factsChecked(film: FilmHeard, stretches: readonly Stretch[]): readonly Disagreement[] {
  const check: Check = {
    film,
    plain: film.speech.words.map(({ plain }) => plain),
    subjects: subjectsOf(film, stretches),
  };
  return [
    ...counts(check),
    ...days(check),
    ...ages(check),
    ...weights(check),
    ...firstTimes(check),
    ...sizes(check, stretches),
  ].sort((a, b) => a.at - b.at);
}

function disagreement(
  { film }: Check,
  kind: Disagreement["kind"],
  from: number,
  to: number,
  records: string,
  bed: string | undefined,
  lots: readonly Planting[],
): Disagreement {
  const { words } = film.speech;
  return {
    kind,
    ...moment((words[from] as Word).at),
    said: textOf(words, Math.max(0, from), to),
    records,
    bed,
    sources: lots.map(({ lastNote }) => lastNote).filter(once),
  };
}

function once(place: Place, index: number, all: readonly Place[]): boolean {
  return all.findIndex(({ file, line }) => file === place.file && line === place.line) === index;
}

// ------------------------------------------------------------------------------------------------------- how many

/** "Six Crown Prince": against plants alive, planted, sown, lost, in this bed; several lots also added up. */
function counts(check: Check): Disagreement[] {
  const { plain, subjects } = check;
  return subjects.flatMap((subject) => {
    if (subject.confidence < SURE || subject.variety === undefined) return [];
    const said = numberBefore(plain, subject.from);
    if (said === undefined || belongsBefore(check, said.from)) return [];
    // Where fruit hangs, fruit may be what is counted.
    if (mayBeFruit(check, subject)) return [];
    if (subject.here.length === 0) return wrongBed(check, subject, said.from);
    const known = countsKnown(subject.here);
    if (known.length === 0 || known.some((range) => said.value >= range.from && said.value <= range.to)) return [];
    const alive = subject.here.filter(({ ended }) => ended === undefined);
    const lots = alive.length > 0 ? alive : subject.here;
    const number = lots.map(({ count, began }) => count ?? began).filter((one) => one !== undefined);
    const sum = number.reduce((total, { value }) => total + value, 0);
    const there = `The records have ${sayNumber(sum)} ${subject.title} there that day.`;
    return [disagreement(check, "count", said.from, subject.to, there, subject.bed, lots)];
  });
}

/** Days from planting after which squash and tomatoes may carry fruit that no note tells of. */
const FRUIT_AFTER = 70;

function mayBeFruit({ film: { day } }: Check, { here }: Subject): boolean {
  return here.some(({ stage, perennial, variety, crop, planted, since }) => {
    if (!perennial && (stage === "fruiting" || stage === "picking")) return true;
    const id = (variety === undefined ? undefined : day.garden.varieties.get(variety)?.crop) ?? crop ?? "";
    const bearing = /^(?:Cucurbitaceae|Solanaceae)$/.test(day.garden.crops.get(id)?.family ?? "");
    return bearing && daysBetween(planted ?? since, day.day) > FRUIT_AFTER;
  });
}

/** "Gardener's Delight, four, Harbinger, three": a number after a name that has none before it counts that one. */
function belongsBefore({ plain, subjects }: Check, at: number): boolean {
  const before = subjects.find(({ to }) => to === at);
  return before !== undefined && numberBefore(plain, before.from) === undefined;
}

function numberBefore(
  plain: readonly string[],
  at: number,
): { readonly value: number; readonly from: number } | undefined {
  for (let from = Math.max(0, at - 5); from < at; from += 1) {
    const number = spokenNumber(plain, from);
    // "The black one, Noire de Crimée" counts nothing.
    if (number === undefined || number.end > at || !Number.isInteger(number.value) || plain[from] === "one") continue;
    const rest = plain.slice(number.end, at);
    if (rest.every((word) => between.has(word)) && !notCounted.has(plain[number.end] ?? "")) {
      // "One, two, three Crown Prince" counts along; "twenty twenty three" is a year.
      const before = spokenNumber(plain, from - 1);
      return before !== undefined && before.end === from ? undefined : { value: number.value, from };
    }
  }
  return undefined;
}

interface Range {
  readonly from: number;
  readonly to: number;
}

function countsKnown(lots: readonly Planting[]): readonly Range[] {
  const all: Range[] = [];
  const put = (count: Count | undefined) => {
    if (count === undefined) return;
    const to = count.upTo ?? count.value;
    all.push(
      count.approx ? { from: Math.floor(count.value * 0.8), to: Math.ceil(to * 1.2) } : { from: count.value, to },
    );
  };
  const sums = (of: (lot: Planting) => number | undefined) => {
    const values = lots.map(of);
    if (values.every((value) => value !== undefined)) {
      const total = (values as number[]).reduce((sum, value) => sum + value, 0);
      all.push({ from: total, to: total });
    }
  };
  for (const lot of lots) {
    put(lot.count);
    put(lot.began);
    for (const value of [lot.lost, lot.givenAway, lot.pickedWhole, lot.movedOut])
      if (value > 0) all.push({ from: value, to: value });
    for (const value of Object.values(lot.picked.counts)) all.push({ from: 1, to: value });
  }
  sums(({ count }) => count?.value);
  sums(({ began }) => began?.value);
  sums(({ ended, count }) => (ended === undefined ? count?.value : 0));
  return all;
}

/** A variety counted out at a bed where none of it stands, while it stands in another. */
function wrongBed(check: Check, subject: Subject, from: number): Disagreement[] {
  const { garden, nursery } = check.film.day;
  const living = subject.anywhere.filter(({ ended }) => ended === undefined);
  if (subject.bed === undefined || living.length === 0 || nursery.has(subject.variety ?? "")) return [];
  const beds = [...new Set(living.map(({ bed }) => garden.beds.get(bed)?.title ?? bed))];
  const here = garden.beds.get(subject.bed)?.title ?? subject.bed;
  const told = `The records have ${subject.title} in ${sayList(beds)}, and none in ${here}.`;
  return [disagreement(check, "bed", from, subject.to, told, subject.bed, living)];
}

// ----------------------------------------------------------------------------------------------------------- when

/** Words of beginning, by what day of a planting they tell. */
const beginnings: readonly (readonly [RegExp, "sown" | "planted" | "either"])[] = [
  [/^(?:sown|sowed|seeded)$/, "sown"],
  [/^(?:planted|transplanted)$/, "planted"],
  [/^(?:in|went)$/, "either"],
];
/** Words between a beginning and its day: "sown on the sixth", "planted out last Saturday the ninth". */
const BEGIN_NEAR = 4;
/** Words back to what was begun. */
const SUBJECT_NEAR = 14;

function days(check: Check): Disagreement[] {
  const { film, plain } = check;
  const { settings } = film.day.garden;
  const found: Disagreement[] = [];
  for (let at = 0; at < plain.length; at += 1) {
    const said = spokenDay(plain, at, film.day.day);
    if (said === undefined) continue;
    const begun = begunBefore(plain, at);
    const subject = begun === undefined ? undefined : subjectNear(check, begun.at, at);
    if (begun !== undefined && subject !== undefined) {
      const known = beginningsOf(subject, begun.kind);
      if (known.length > 0 && !known.includes(said.day)) {
        const near = { language: settings.language, near: film.day.day };
        const told = `The records have ${sayList(
          [...new Set(known)].map((day) => sayDay(day, near)),
          "or",
        )} for ${subject.title}.`;
        found.push(
          disagreement(check, "day", Math.min(begun.at, subject.from), said.end, told, subject.bed, subject.here),
        );
      }
    }
    at = said.end - 1;
  }
  return found;
}

function begunBefore(
  plain: readonly string[],
  at: number,
): { readonly at: number; readonly kind: "sown" | "planted" | "either" } | undefined {
  for (let word = at - 1; word >= Math.max(0, at - BEGIN_NEAR); word -= 1) {
    const row = beginnings.find(([pattern]) => pattern.test(plain[word] ?? ""));
    if (row === undefined) continue;
    // "In on the nineteenth" begins a planting; "in March" and "came in on the fourth" do not.
    const isIn = plain[word] === "in";
    if (isIn && (plain[word + 1] !== "on" || /^(?:came|brought|got|come|bring|them|it)$/.test(plain[word - 1] ?? "")))
      continue;
    return { at: word, kind: row[1] };
  }
  return undefined;
}

function subjectNear({ subjects }: Check, begun: number, to: number): Subject | undefined {
  const near = subjects.filter(({ from }) => from >= begun - SUBJECT_NEAR && from < to);
  const last = near.filter(({ from }) => from < begun).at(-1) ?? near[0];
  return last === undefined || last.confidence < SURE || last.here.length === 0 ? undefined : last;
}

function beginningsOf({ here }: Subject, kind: "sown" | "planted" | "either"): readonly Day[] {
  return here.flatMap(({ sown, planted, since }) => {
    const sowing = sown === undefined ? [] : [sown];
    const planting = planted === undefined ? [] : [planted];
    if (kind === "sown") return sowing;
    return kind === "planted" ? planting : [...sowing, ...planting, since];
  });
}

// ------------------------------------------------------------------------------------------------------------ ages

const daysIn: Readonly<Record<string, readonly [days: number, slack: number]>> = {
  day: [1, 1],
  days: [1, 1],
  week: [7, 4],
  weeks: [7, 4],
  fortnight: [14, 4],
  month: [30.4, 12],
  months: [30.4, 15],
};

/** "That's three weeks today", "seven weeks in the ground", "six days ago": since sowing, coming up or planting. */
function ages(check: Check): Disagreement[] {
  const { film, plain, subjects } = check;
  return subjects.flatMap((subject) => {
    if (subject.confidence < SURE || subject.here.length === 0) return [];
    for (let at = subject.to; at < Math.min(plain.length, subject.to + 10); at += 1) {
      if (at > subject.to && subjects.some(({ from }) => from === at)) return [];
      const number =
        plain[at] === "a" && plain[at + 1] === "fortnight" ? { value: 1, end: at + 1 } : spokenNumber(plain, at);
      const unit = number === undefined ? undefined : daysIn[plain[number.end] ?? ""];
      if (number === undefined || unit === undefined) continue;
      const after = plain.slice(number.end + 1, number.end + 4).join(" ");
      if (!/^(?:today|ago|in the|to the day|old)/.test(after)) continue;
      const said = number.value * unit[0];
      const known = subject.here.flatMap(({ sown, planted, stageSince, stage }) => [
        ...(sown === undefined ? [] : [sown]),
        ...(planted === undefined ? [] : [planted]),
        ...(stage === "up" || stage === "growing" ? [stageSince] : []),
      ]);
      const old = known.map((day) => daysBetween(day, film.day.day));
      if (old.length === 0 || old.some((age) => Math.abs(age - said) <= unit[1])) return [];
      const told = `By the records ${subject.title} had been there for ${sayAge(Math.min(...old))}.`;
      return [disagreement(check, "age", subject.from, number.end + 2, told, subject.bed, subject.here)];
    }
    return [];
  });
}

// --------------------------------------------------------------------------------------------------------- weights

const grams: Readonly<Record<string, number>> = {
  kilo: 1000,
  kilos: 1000,
  kg: 1000,
  gram: 1,
  grams: 1,
  g: 1,
  pound: 453.6,
  pounds: 453.6,
  lb: 453.6,
};
/** Share by which a spoken weight may differ: people round. */
const ROUNDED = 0.06;

/** "One point eight kilos this morning": against every picking and every sum of pickings the records have of it. */
function weights(check: Check): Disagreement[] {
  const { film, plain, subjects } = check;
  const { garden, day } = film.day;
  const found: Disagreement[] = [];
  for (let at = 0; at < plain.length; at += 1) {
    const number = spokenNumber(plain, at);
    if (number === undefined) continue;
    const unit = grams[plain[number.end] ?? ""];
    const today = plain.slice(number.end + 1, number.end + 3).join(" ");
    const subject = subjects.filter(({ from }) => from < at && from >= at - SUBJECT_NEAR).at(-1);
    if (
      unit !== undefined &&
      /^(?:this morning|today)$/.test(today) &&
      subject !== undefined &&
      subject.confidence >= SURE
    ) {
      const said = number.value * unit;
      const picked = garden.events.filter(
        (event) =>
          event.kind === "picked" && event.day === day && event.grams !== undefined && isOf(film, subject, event),
      );
      const known = [
        ...picked.map((event) => event.grams ?? 0),
        picked.reduce((sum, event) => sum + (event.grams ?? 0), 0),
      ];
      if (picked.length > 0 && !known.some((one) => Math.abs(one - said) <= one * ROUNDED)) {
        const told = `The notes of that day have ${sayWeight(known.at(-1) as number, garden.settings.units)} of ${subject.title}.`;
        found.push({
          ...disagreement(check, "weight", at, number.end + 3, told, subject.bed, []),
          sources: picked.map(({ place }) => place),
        });
      }
    }
    at = number.end - 1;
  }
  return found;
}

function isOf(
  { day }: FilmHeard,
  { variety, crop }: Subject,
  event: { readonly variety?: string | undefined; readonly crop?: string | undefined },
): boolean {
  if (variety !== undefined) return event.variety === variety;
  return (event.variety === undefined ? event.crop : day.garden.varieties.get(event.variety)?.crop) === crop;
}

// ----------------------------------------------------------------------------------------- first times and sizes

const firstWords =
  /\b(?:new to me|new this year|never grown|first time i|first year (?:i|of|for)|not grown (?:it|this|that|them) before)\b/;

function firstTimes(check: Check): Disagreement[] {
  const { film, plain, subjects } = check;
  const { garden, day } = film.day;
  return subjects.flatMap((subject) => {
    if (subject.variety === undefined || subject.confidence < SURE) return [];
    const next = subjects.find(({ from }) => from >= subject.to)?.from ?? plain.length;
    const to = Math.min(next, subject.to + 8);
    if (!firstWords.test(plain.slice(subject.to, to).join(" "))) return [];
    const starts = seasonStart(day, garden.settings.seasonStarts);
    const before = plantingsOf(garden, subject.variety, day).filter(({ since }) => since < starts);
    const [first] = before;
    if (first === undefined) return [];
    const told = `The records have ${subject.title} since ${sayDay(first.since, { language: garden.settings.language })}.`;
    return [disagreement(check, "first time", subject.from, to, told, subject.bed, before)];
  });
}

/** "The long bed. Eight metres": a length said where a bed is first named. */
function sizes(check: Check, stretches: readonly Stretch[]): Disagreement[] {
  const { film, plain } = check;
  const { garden } = film.day;
  return stretches.flatMap(({ bed, from, to }) => {
    const record = bed === undefined ? undefined : garden.beds.get(bed);
    if (record?.size === undefined) return [];
    for (let at = from; at < Math.min(to, from + 12); at += 1) {
      const number = spokenNumber(plain, at);
      if (number === undefined || !/^(?:metres?|meters?|feet|foot)$/.test(plain[number.end] ?? "")) continue;
      const metres = number.value * (/^f/.test(plain[number.end] ?? "") ? 0.3048 : 1);
      const { length, width } = record.size;
      if ([length, width].some((side) => Math.abs(side - metres) <= 0.1 * side)) return [];
      const units = garden.settings.units;
      const told = `The records have ${record.title} as ${sayLength(length * 100, units)} by ${sayLength(width * 100, units)}.`;
      const place = record.place === undefined ? [] : [record.place];
      return [{ ...disagreement(check, "size", from, number.end + 1, told, bed, []), sources: place }];
    }
    return [];
  });
}
