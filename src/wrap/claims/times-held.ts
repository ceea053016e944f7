/** Days and ages held against the records. */
import { addDays, daysBetween, seasonStart } from "../../calendar.ts";
import { bookOf } from "../../garden/index.ts";
import { sayAge, sayDay, sayList } from "../../language/index.ts";
import type { Day, EventKind } from "../../model.ts";
import type { Check } from "../fact-check.ts";
import type { Subject } from "../spoken-subjects.ts";
import type { Milestone } from "./claim.ts";
import { eventsOf, saidDay, THIS_SEASON, type Verdict } from "./records-told.ts";

export function daysToUp(check: Check, subject: Subject, days: number, slack: number): Verdict {
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

const kindsOf: Readonly<Record<Milestone, readonly EventKind[]>> = {
  sown: ["sowed"],
  up: ["up"],
  planted: ["planted", "moved"],
  begun: ["sowed", "planted", "moved"],
  "first picked": ["picked"],
  "first flower": ["flowered"],
  "taken up": ["picked", "cleared"],
};

export function day(
  check: Check,
  subject: Subject,
  of: Milestone,
  period: { readonly from: Day; readonly to: Day },
): Verdict {
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
        ...(of === "sown" || of === "up"
          ? lots.map((lot) => (of === "sown" ? lot.sown : undefined))
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
    up: "up",
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

export function age(check: Check, { here, title }: Subject, days: number, slack: number): Verdict {
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

/** A sort, or a crop, that is said to be new here: what stood in an earlier season tells otherwise. */
export function firstTime(check: Check, { variety, crop, title }: Subject): Verdict {
  const { garden, day: filmed } = check.film.day;
  if (variety === undefined && crop === undefined) return "not told";
  const starts = seasonStart(filmed, garden.settings.seasonStarts);
  const known =
    variety === undefined
      ? eventsOf(check, { variety, crop } as Subject, ["sowed", "planted"]).map(({ day: since, place }) => ({
          since,
          place,
        }))
      : bookOf(garden)
          .plantingsOf(variety, filmed)
          .map(({ since, lastNote }) => ({ since, place: lastNote }));
  if (known.length === 0) return "not told";
  const before = known.filter(({ since }) => since < starts);
  const [oldest] = before;
  if (oldest === undefined) return "agrees";
  return {
    kind: "first time",
    text: `The records have ${title} since ${sayDay(oldest.since, { language: garden.settings.language })}.`,
    sources: before.map(({ place }) => place),
  };
}
