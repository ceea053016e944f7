/** Looks ahead: stage dates, days worth filming, deadlines. What is not noted yet cannot be counted, and is not guessed. */

import { addDays, daysBetween } from "../../calendar.ts";
import { usualMaturityOf } from "../../facts/index.ts";
import { type Book, bookOf } from "../../garden/index.ts";
import {
  capital,
  cropName,
  dayOnly,
  inBed,
  isSingular,
  type Sentence,
  say,
  toYou,
  type Voice,
} from "../../language/index.ts";
import type { Bed, Day, Garden } from "../../model.ts";
import { openFollowUps, openTasks } from "../../timeline/index.ts";
import { type Batch, bySowing, theBatch } from "../batches.ts";
import { type BedOnTheDay, bedOnTheDay } from "../bed-on-the-day.ts";
import type { OwedLine, Weighed } from "../candidates/candidate.ts";
import { candidatesAt, type Findings } from "../candidates/find-candidates.ts";
import { questionsByBed } from "../candidates/owed-and-asked.ts";
import { expectedDay, reasonToExpect } from "../expected-picking.ts";
import { basisSaid, type ExpectedWindow, type ExpectedWindows, isUseful, spanSaid } from "../expected-window.ts";
import { followUpLines, promiseVerbs } from "../follow-up-lines.ts";
import { shownBefore } from "../shown-before.ts";
import { publishedTours, sinceFor } from "../since.ts";
import { photosByBed } from "../spot.ts";
import { orderStops } from "../stop-order.ts";
import { taskLine } from "../task-lines.ts";
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
  const dated = [...promises(garden, today, to, voice), ...dueTasks(garden, now, today, to, voice)];
  const shown = shownBefore(garden, today, undefined);
  const photos = photosByBed(garden.photos);
  const gone = new Map<string, Deadline>();
  const planned = new Map(
    [...garden.episodes.values()].filter(({ status }) => status === "planned").map(({ day, title }) => [day, title]),
  );
  const days = Array.from({ length: weeks * 7 + 1 }, (_, ahead): RankedDay => {
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
    const worth = all.reduce((sum, { value }) => sum + value, 0);
    const things = all.filter(({ level }) => level !== "could").length;
    return {
      day,
      film: planned.get(day),
      things,
      worth,
      reasons: reasonsFor(day, { expected, gone: [...gone.values()], dated, voice }),
    };
  });
  return {
    from: today,
    to,
    weeks,
    expected,
    deadlines: inOrderOfDay([...gone.values(), ...dated]),
    owed: owedWithoutDay(index, now, voice),
    days: days.map(bare),
    best: bestByWeek(days).map(bare),
  };
}

/** A day with what decides between days of as many reasons. */
interface RankedDay extends FilmingDay {
  readonly worth: number;
}

function bare({ day, things, reasons, film }: RankedDay): FilmingDay {
  return { day, things, reasons, ...(film !== undefined && { film }) };
}

interface Known {
  readonly expected: readonly Expected[];
  readonly gone: readonly Deadline[];
  readonly dated: readonly Deadline[];
  readonly voice: Voice;
}

/** What cannot be filmed later, what is owed, what is there to be seen at last. */
function reasonsFor(day: Day, { expected, gone, dated, voice }: Known): readonly string[] {
  const soon = (one: Deadline) => one.day >= day && daysBetween(day, one.day) < fresh;
  const open = inOrderOfDay(expected.filter((one) => one.day <= day && daysBetween(one.day, day) < fresh));
  return [
    ...inOrderOfDay(gone.filter(soon)).map((one) => `a last look at ${one.about}, until ${dayOnly(one.day, voice)}`),
    ...inOrderOfDay(dated.filter((one) => soon(one) && one.kind === "promise" && !one.private)).map(
      (one) => `promised by ${dayOnly(one.day, voice)}: ${one.about}`,
    ),
    ...open.map(({ about, kind, day: on, byCrop }) => {
      if (kind === "verdict") return `${about} is due`;
      return `${about} ${kind} ${byCrop === true ? "as a rule from" : "from"} about ${dayOnly(on, voice)}`;
    }),
  ];
}

/** Sowings that should be ready or in flower within the span, by the garden's own window where there is one. */
function expectedHere(here: BedOnTheDay, from: Day, to: Day): readonly Expected[] {
  return bySowing(here.growing).flatMap((batch) => {
    const [lot] = batch.lots;
    const window = here.windows?.get(lot.planting.id);
    const day = expectedDay(lot, here);
    const reason = reasonToExpect(batch, here);
    if (day === undefined) return usuallyReady(batch, here, from, to);
    if (day < from || day > to || reason === undefined) return [];
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

/** By what is known of the crop, where its variety's file gives no days; what could have come already is told by its end. */
function usuallyReady(batch: Batch, here: BedOnTheDay, from: Day, to: Day): readonly Expected[] {
  const [lot] = batch.lots;
  const { garden } = here.index;
  const usual = usualMaturityOf(garden, lot.planting);
  if (usual === undefined || lot.crop === undefined) return [];
  const { goal, counted, ready, latest, takes } = usual.value;
  const reached = batch.lots.some(({ events }) =>
    events.some(({ kind }) => kind === "picked" || (goal === "flower" && kind === "flowered")),
  );
  if (reached || latest < from || ready > to) return [];
  const kind = goal === "flower" ? ("in flower" as const) : ("ready" as const);
  const about = `${theBatch(batch)} ${inBed(here.bed)}`;
  const when = ready < from ? "any day now" : `about ${dayOnly(ready, { settings: garden.settings, day: from })}`;
  const text = `${capital(about)} should be ${kind} ${when}: ${cropName(lot.crop, 2)} as a rule ${isSingular(lot) ? "takes" : "take"} ${takes.from} to ${takes.to} days from ${counted}, and the notes give no days of their own.`;
  return [
    {
      ...say(text, [...usual.sources.map((place) => ({ place })), { private: usual.private }]),
      id: `${kind} ${lot.planting.id}`,
      kind,
      day: ready < from ? from : ready,
      about,
      bed: here.bed.id,
      byCrop: true,
    },
  ];
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

/** Tasks with a day in the span, and those whose day has passed: they are due today. */
function dueTasks(garden: Garden, beds: readonly BedOnTheDay[], from: Day, to: Day, voice: Voice): readonly Deadline[] {
  const all = [...beds.flatMap(({ now }) => now.tasks), ...openTasks(garden, from)];
  const open = new Map(all.filter(({ done }) => done === undefined || done > from).map((task) => [task.id, task]));
  return [...open.values()].flatMap((task) => {
    const { due, id, bed } = task;
    if (due === undefined || due > to) return [];
    const line = taskLine(task, voice);
    return [{ ...line, id: `task ${id}`, kind: "task" as const, day: due < from ? from : due, about: line.what, bed }];
  });
}

function owedWithoutDay(index: Book, stops: readonly BedOnTheDay[], voice: Voice): readonly Sentence[] {
  return followUpLines(index, stops, voice)
    .filter(({ due }) => due === undefined)
    .map(({ what, waits, sources, private: hidden }) => {
      const bare = what
        .trim()
        .replace(/[.;,\s]+$/, "")
        .replace(/^to /i, "");
      const words = promiseVerbs.test(bare) ? toYou(bare) : `“${bare}”`;
      const waiting = waits === undefined ? "" : " (waits until the notes say so)";
      return { text: `${capital(words)}${waiting}.`, sources, private: hidden };
    });
}

function bestByWeek(days: readonly RankedDay[]): readonly RankedDay[] {
  const weeks = Map.groupBy(days.slice(1), (_, at) => Math.floor(at / 7));
  const better = (one: RankedDay, best: RankedDay) =>
    one.reasons.length - best.reasons.length || one.worth - best.worth;
  const isPlanned = ({ film }: RankedDay) => film !== undefined;
  return [
    ...days.slice(0, 1).filter(isPlanned),
    ...[...weeks.values()].flatMap((week) =>
      week.some(isPlanned)
        ? week.filter(isPlanned)
        : [week.reduce((best, one) => (better(one, best) > 0 ? one : best))],
    ),
  ];
}

function inOrderOfDay<T extends { readonly day: Day; readonly id: string }>(all: readonly T[]): readonly T[] {
  return all.toSorted((a, b) => (a.day === b.day ? (a.id < b.id ? -1 : 1) : a.day < b.day ? -1 : 1));
}
