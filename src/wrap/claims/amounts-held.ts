/** Amounts and deeds held against the records: picked, lost, given away. */
import { daysBetween } from "../../calendar.ts";
import { sayNumber, sayWeight } from "../../language/index.ts";
import type { Event } from "../../model.ts";
import type { Check } from "../fact-check.ts";
import type { Subject } from "../spoken-subjects.ts";
import type { AmountUnit } from "./claim.ts";
import { eventsOf, meant, near, saidDay, THIS_SEASON, type Verdict } from "./records-told.ts";

export function gone(check: Check, subject: Subject, said: number, how: "lost" | "gave away"): Verdict {
  const known = eventsOf(check, subject, [how]).filter(
    ({ day: on }) => daysBetween(on, check.film.day.day) <= THIS_SEASON,
  );
  const counts = known.flatMap(({ count: one }) => (one === undefined ? [] : [one]));
  const total = counts.reduce((all, { value }) => all + value, 0);
  const isNone = said === 0;
  // That none is on record is what was said.
  if (counts.length === 0) return isNone && known.length === 0 ? "agrees" : "not told";
  const fits = said === total || counts.flatMap((one) => meant(one)).some(({ from, to }) => said >= from && said <= to);
  if (fits) return "agrees";
  return {
    kind: "count",
    text: `The records have ${sayNumber(total)} ${subject.title} ${how === "lost" ? "lost" : "given away"}.`,
    sources: known.map(({ place }) => place),
  };
}

export function nonePicked(check: Check, subject: Subject): Verdict {
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

export function amount(check: Check, subject: Subject, said: number, unit: AmountUnit): Verdict {
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

export function amountLastYear(check: Check, subject: Subject, said: number, unit: AmountUnit): Verdict {
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
