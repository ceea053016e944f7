/** Looks ahead: stage dates, days worth filming, deadlines. What is not noted yet cannot be counted, and is not guessed. */

import { addDays, daysBetween } from "../../calendar.ts";
import { type Book, bookOf } from "../../garden/index.ts";
import { capital, dayOnly, inBed, say, toYou, type Voice } from "../../language/index.ts";
import type { Bed, Day, Garden } from "../../model.ts";
import { openFollowUps } from "../../timeline/index.ts";
import { bySowing, theBatch } from "../batches.ts";
import { type BedOnTheDay, bedOnTheDay } from "../bed-on-the-day.ts";
import type { OwedLine, Weighed } from "../candidates/candidate.ts";
import { candidatesAt, type Findings } from "../candidates/find-candidates.ts";
import { questionsByBed } from "../candidates/owed-and-asked.ts";
import { expectedDay, reasonToExpect } from "../expected-picking.ts";
import { basisSaid, type ExpectedWindow, type ExpectedWindows, isUseful, spanSaid } from "../expected-window.ts";
import { followUpLines } from "../follow-up-lines.ts";
import { shownBefore } from "../shown-before.ts";
import { publishedTours, sinceFor } from "../since.ts";
import { photosByBed } from "../spot.ts";
import { orderStops } from "../stop-order.ts";
import { trialSentence, trialsIn } from "../trial-lines.ts";
import { wishesOf } from "../wishes.ts";
import type { Ahead, Deadline, Expected, FilmingDay } from "./ahead.ts";

export interface AheadRequest {
  readonly today: Day;
  readonly weeks: number;
  /** By planting id; a planting without one goes by its variety's days to maturity. */
  readonly windows?: ExpectedWindows | undefined;
}

/** What came within this many days is news to a film. */
const fresh = 7;

export function lookAhead(garden: Garden, { today, weeks, windows }: AheadRequest): Ahead {
  const index = bookOf(garden);
  const to = addDays(today, weeks * 7);
  const voice: Voice = { settings: garden.settings, day: today };
  const wishes = wishesOf(garden, undefined);
  const beds = orderStops(garden, undefined, today, wishes).beds;
  const tours = publishedTours(garden, today, undefined);
  const stand = (bed: Bed, day: Day) => bedOnTheDay(index, bed, day, sinceFor(garden, bed, day, tours), windows);
  const now = beds.map((bed) => stand(bed, today));
  const expected = inOrderOfDay([...now.flatMap((here) => expectedHere(here, today, to)), ...verdicts(now, today, to)]);
  const shown = shownBefore(garden, today, undefined);
  const photos = photosByBed(garden.photos);
  const gone = new Map<string, Deadline>();
  const days = Array.from({ length: weeks * 7 + 1 }, (_, ahead): FilmingDay => {
    const day = addDays(today, ahead);
    const stops = ahead === 0 ? now : beds.map((bed) => stand(bed, day));
    const findings: Findings = {
      owed: owedByBed(index, stops, { ...voice, day }),
      questions: questionsByBed(garden.events, stops),
      photos,
      shown,
      wishes,
    };
    const offers = stops.map((here) => ({ here, candidates: candidatesAt(here, findings) }));
    for (const { here, candidates } of offers) {
      for (const candidate of candidates) keepDeadline(gone, candidate, here, today, to);
    }
    const all = offers.flatMap(({ candidates }) => candidates);
    const came = expected.filter((one) => one.day <= day && daysBetween(one.day, day) < fresh);
    const goes = [...gone.values()].filter((one) => one.day >= day && daysBetween(day, one.day) < fresh);
    return {
      day,
      things: all.filter(({ level }) => level !== "could").length,
      value: Math.round(all.reduce((sum, { value }) => sum + value, 0)),
      news: [
        ...came.map(({ about, kind }) => `${about} ${stateOf(kind)}`),
        ...goes.map(({ about }) => `${about} soon gone`),
      ],
    };
  });
  return {
    from: today,
    to,
    weeks,
    expected,
    deadlines: inOrderOfDay([...gone.values(), ...promises(garden, today, to, voice)]),
    days,
    best: richestByWeek(days),
  };
}

function stateOf(kind: Expected["kind"]): string {
  return kind === "verdict" ? "due" : kind;
}

/** Sowings that should be ready or in flower within the span, by the garden's own window where there is one. */
function expectedHere(here: BedOnTheDay, from: Day, to: Day): readonly Expected[] {
  return bySowing(here.growing).flatMap((batch) => {
    const [lot] = batch.lots;
    const window = here.windows?.get(lot.planting.id);
    const day = expectedDay(lot, here);
    const reason = reasonToExpect(batch, here);
    if (day === undefined || day < from || day > to || reason === undefined) return [];
    const kind = lot.crop?.use === "flower" ? ("in flower" as const) : ("ready" as const);
    const about = `${theBatch(batch)} ${inBed(here.bed)}`;
    const voice: Voice = { settings: here.index.garden.settings, day: from };
    const said = `${capital(about)} should be ${kind} about ${dayOnly(day, voice)}${spread(window, voice)}: ${reason.count}${reason.before}.`;
    const own = { private: lot.planting.private };
    return [
      {
        ...say(said, [...reason.counted, ...reason.told, own]),
        id: `${kind} ${lot.planting.id}`,
        kind,
        day,
        about,
        bed: here.bed.id,
        window: window === undefined ? undefined : { from: window.from, to: window.to },
      },
    ];
  });
}

/** ", by this garden's own records between 24 July and 3 August" */
function spread(window: ExpectedWindow | undefined, voice: Voice): string {
  return window === undefined || !isUseful(window) ? "" : `,${basisSaid(window)} ${spanSaid(window, voice)}`;
}

function verdicts(now: readonly BedOnTheDay[], from: Day, to: Day): readonly Expected[] {
  const found = new Map<string, Expected>();
  for (const here of now) {
    for (const trial of trialsIn(here)) {
      const day = trial.verdictDue;
      if (day === undefined || day < from || day > to || found.has(trial.id)) continue;
      found.set(trial.id, {
        ...trialSentence(trial, here),
        id: `verdict ${trial.id}`,
        kind: "verdict",
        day,
        about: `the verdict of “${trial.title}”`,
        bed: here.bed.id,
      });
    }
  }
  return [...found.values()];
}

function owedByBed(index: Book, stops: readonly BedOnTheDay[], voice: Voice): ReadonlyMap<string, readonly OwedLine[]> {
  return Map.groupBy(
    followUpLines(index, stops, voice).filter(({ keptAt }) => keptAt !== undefined),
    ({ keptAt }) => keptAt ?? "",
  );
}

/** Said as of the first day that knows of it, once for each thing. */
function keepDeadline(
  gone: Map<string, Deadline>,
  { kind, until, about, keepBy, sentence }: Weighed,
  here: BedOnTheDay,
  from: Day,
  to: Day,
): void {
  if (kind !== "going" || until === undefined || until > to) return;
  const id = `soon gone ${here.bed.id} ${keepBy} ${until}`;
  if (gone.has(id)) return;
  gone.set(id, {
    ...sentence,
    id,
    kind: "soon gone",
    // What was due to go already may be gone tomorrow.
    day: until < from ? from : until,
    about: `${about} ${inBed(here.bed)}`,
    bed: here.bed.id,
  });
}

function promises(garden: Garden, from: Day, to: Day, voice: Voice): readonly Deadline[] {
  return openFollowUps(garden, from).flatMap((followUp) => {
    const { due, what, bed, id } = followUp;
    if (due === undefined || due < from || due > to) return [];
    const words = what.trim().replace(/[.;,\s]+$/, "");
    const said = toYou(words.endsWith(` by ${dayOnly(due, voice)}`) ? words.replace(/ by [^ ]+ [^ ]+$/, "") : words);
    const text = `Promised for ${dayOnly(due, voice)} at the latest: ${said}.`;
    return [{ ...say(text, [followUp]), id: `promise ${id}`, kind: "promise" as const, day: due, about: said, bed }];
  });
}

function richestByWeek(days: readonly FilmingDay[]): readonly FilmingDay[] {
  const weeks = Map.groupBy(days.slice(1), (_, at) => Math.floor(at / 7));
  return [...weeks.values()].map((week) => week.reduce((best, one) => (one.value > best.value ? one : best)));
}

function inOrderOfDay<T extends { readonly day: Day; readonly id: string }>(all: readonly T[]): readonly T[] {
  return all.toSorted((a, b) => (a.day === b.day ? (a.id < b.id ? -1 : 1) : a.day < b.day ? -1 : 1));
}
