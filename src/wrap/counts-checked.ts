/** Plants counted aloud against the records: how many, and in which bed. */

import { daysBetween } from "../calendar.ts";
import { cropOf } from "../crop-of.ts";
import { sayList, sayNumber } from "../language/index.ts";
import type { Count, Planting } from "../model.ts";
import { type Check, disagreement, SURE } from "./fact-check.ts";
import { LONGEST_RUN } from "./sounds-like.ts";
import { spokenNumber } from "./spoken-numbers.ts";
import type { Subject } from "./spoken-subjects.ts";
import { inWords } from "./word-ranges.ts";
import type { Disagreement } from "./wrap.ts";

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

/** "Six Crown Prince": against plants alive, planted, sown, lost, in this bed; several lots also added up. */
export function counts(check: Check): Disagreement[] {
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
  return here.some((planting) => {
    const { stage, perennial, planted, since } = planting;
    if (!perennial && (stage === "fruiting" || stage === "picking")) return true;
    const bearing = /^(?:Cucurbitaceae|Solanaceae)$/.test(cropOf(day.garden, planting)?.family ?? "");
    return bearing && daysBetween(planted ?? since, day.day) > FRUIT_AFTER;
  });
}

/** "Gardener's Delight, four, Harbinger, three": a number after a name that has none before it counts that one. */
function belongsBefore({ film, plain, subjects }: Check, at: number): boolean {
  if (/[.?!]/.test(film.speech.words[at - 1]?.mark ?? "")) return false;
  const before = inWords(subjects, ({ from }) => from, at - LONGEST_RUN, at).find(({ to }) => to === at);
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
