/** Sizes of beds and first times said aloud against the records. */

import { seasonStart } from "../calendar.ts";
import { bookOf } from "../garden/index.ts";
import { sayDay, saySide } from "../language/index.ts";
import { metresPerFoot } from "../measures.ts";
import { type Check, disagreement, SURE } from "./fact-check.ts";
import { spokenNumber } from "./spoken-numbers.ts";
import type { Stretch } from "./stops-heard.ts";
import { firstFrom } from "./word-ranges.ts";
import type { Disagreement } from "./wrap.ts";

/** Names after a variety among which the next variety stands. */
const LOOKED_AT = 4;

const firstWords =
  /\b(?:new to me|new this year|never grown|first time i|first year (?:i|of|for)|not grown (?:it|this|that|them) before)\b/;

export function firstTimes(check: Check): Disagreement[] {
  const { film, plain, subjects } = check;
  const { garden, day } = film.day;
  return subjects.flatMap((subject) => {
    if (subject.variety === undefined || subject.confidence < SURE) return [];
    const first = firstFrom(subjects, ({ from }) => from, subject.to);
    const next =
      subjects.slice(first, first + LOOKED_AT).find(({ variety }) => variety !== undefined)?.from ?? plain.length;
    const to = Math.min(next, subject.to + 8);
    if (!firstWords.test(plain.slice(subject.to, to).join(" "))) return [];
    const starts = seasonStart(day, garden.settings.seasonStarts);
    const before = bookOf(garden)
      .plantingsOf(subject.variety, day)
      .filter(({ since }) => since < starts);
    const [oldest] = before;
    if (oldest === undefined) return [];
    const told = `The records have ${subject.title} since ${sayDay(oldest.since, { language: garden.settings.language })}.`;
    return [disagreement(check, "first time", subject.from, to, told, subject.bed, before)];
  });
}

/** "The long bed. Eight metres": a length said where a bed is first named. */
export function sizes(check: Check, stretches: readonly Stretch[]): Disagreement[] {
  const { film, plain } = check;
  const { garden } = film.day;
  return stretches.flatMap(({ bed, from, to }) => {
    const record = bed === undefined ? undefined : garden.beds.get(bed);
    if (record?.size === undefined) return [];
    for (let at = from; at < Math.min(to, from + 12); at += 1) {
      const number = spokenNumber(plain, at);
      if (number === undefined || !/^(?:metres?|meters?|feet|foot)$/.test(plain[number.end] ?? "")) continue;
      const metres = number.value * (/^f/.test(plain[number.end] ?? "") ? metresPerFoot : 1);
      const { length, width } = record.size;
      if ([length, width].some((side) => Math.abs(side - metres) <= 0.1 * side)) return [];
      const units = garden.settings.units;
      const told = `The records have ${record.title} as ${saySide(length, units)} by ${saySide(width, units)}.`;
      const place = record.place === undefined ? [] : [record.place];
      return [{ ...disagreement(check, "size", from, number.end + 1, told, bed, []), sources: place }];
    }
    return [];
  });
}
