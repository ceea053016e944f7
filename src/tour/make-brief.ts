/**
 * Makes the brief of one tour from the garden: what every bed offers, what of it the film has room for, the walk, the clock,
 * the light, and the words for all of it.
 */

import { cautionsFor, closingCaution, namesPoison } from "../almanac/index.ts";
import { bookOf } from "../garden/index.ts";
import { dayOnly, type Voice } from "../language/index.ts";
import type { Day, Garden } from "../model.ts";
import { openFollowUps, openTasks } from "../timeline/index.ts";
import { type BedOnTheDay, bedOnTheDay } from "./bed-on-the-day.ts";
import type { Brief, BriefRequest, FollowUpLine } from "./brief.ts";
import type { OwedLine } from "./candidates/candidate.ts";
import { candidatesAt, type Findings } from "./candidates/find-candidates.ts";
import { questionsByBed } from "./candidates/owed-and-asked.ts";
import { checksBefore } from "./checks.ts";
import { followUpLines } from "./follow-up-lines.ts";
import { fallenToLength, passedBeds } from "./left-out.ts";
import { openingLines } from "./opening-lines.ts";
import { isToldOf } from "./own-lines.ts";
import { chooseWhatFits, type Offer } from "./plan/choose.ts";
import { type PlannedStop, planTour } from "./plan/plan-tour.ts";
import { planChecks } from "./plan-checks.ts";
import { shownBefore } from "./shown-before.ts";
import { filmsBefore, publishedTours, sinceFor } from "./since.ts";
import { photosByBed } from "./spot.ts";
import { orderStops } from "./stop-order.ts";
import { tellStops } from "./stops.ts";
import { openTaskLines } from "./task-lines.ts";
import { wishesOf } from "./wishes.ts";

/**
 * The brief of an episode on its filming day, or of a tour on a day. An episode id that no record has is treated as a
 * day's tour, today's unless `day` is given; the command that asks says so before.
 */
export function makeBrief(garden: Garden, request: BriefRequest): Brief {
  return prepareBrief(garden, request).brief;
}

/** The brief with what it was made from: the cards are made from both. */
export interface PreparedBrief {
  readonly brief: Brief;
  /** In the order of its stops. */
  readonly planned: readonly PlannedStop[];
  readonly owed: readonly OwedLine[];
}

export function prepareBrief(garden: Garden, request: BriefRequest): PreparedBrief {
  const episode = request.episode === undefined ? undefined : garden.episodes.get(request.episode);
  const day = episode?.day ?? request.day ?? request.today;
  const index = bookOf(garden);
  const voice: Voice = { settings: garden.settings, day };
  const tours = publishedTours(garden, day, episode?.id);
  const wishes = wishesOf(garden, episode);
  const order = orderStops(garden, episode, day, wishes);
  const found = order.beds.map((bed) =>
    bedOnTheDay(index, bed, day, sinceFor(garden, bed, day, tours), request.windows),
  );
  // A tour whose stops nobody chose passes by what is bare and was bare before.
  const owedBeds = new Set(openFollowUps(garden, day).map((followUp) => followUp.bed));
  const kept = (here: BedOnTheDay) => order.listed || wishes.keptBeds.has(here.bed.id);
  const beds = found.filter((here) => kept(here) || !isBare(here) || owedBeds.has(here.bed.id) || isToldOf(here));
  const bare = found.filter((here) => !beds.includes(here)).map(({ bed }) => ({ bed, why: "not listed" as const }));
  const owed = followUpLines(index, beds, voice);
  const findings: Findings = {
    owed: byBed(owed),
    questions: questionsByBed(garden.events, beds),
    photos: photosByBed(garden.photos),
    shown: shownBefore(garden, day, episode?.id),
    wishes,
  };
  const worthShowing = (here: BedOnTheDay) => candidatesAt(here, findings);
  const offers = beds.map((here): Offer => ({ here, candidates: worthShowing(here), fixed: kept(here) }));
  const target = episode?.target;
  const choice = chooseWhatFits(offers, target);
  const { stops: planned, plan } = planTour({
    garden,
    day,
    choice,
    episode,
    listed: order.listed,
    target,
    start: request.start ?? episode?.start,
    overcast: request.overcast === true,
  });
  const tour = episode?.id ?? day;
  const here = planned.map((stop) => stop.here);
  const followUps = owed.map((line) => withStop(line, here));
  const stops = tellStops(planned, choice, findings, tour);
  const lastTour = tours.at(-1);
  const brief: Brief = {
    tour,
    title: episode?.title ?? `Tour of ${dayOnly(day, voice)}`,
    date: day,
    dateText: wholeDate(day, garden),
    since: lastTour?.day,
    sinceText: lastTour === undefined ? undefined : `the tour of ${dayOnly(lastTour.day, voice)}`,
    isFirst: filmsBefore(garden, day, episode?.id).length === 0,
    target,
    start: plan.start?.padStart(5, "0"),
    plan,
    opening: openingLines(here, followUps),
    followUps,
    stops,
    leftOut: [...fallenToLength(choice), ...passedBeds(index, [...order.passed, ...bare], tours, voice, worthShowing)],
    tasks: openTaskLines(openTasks(garden, day), voice),
    checks: [
      ...planChecks({ garden, episode, order, offers, choice, plan, wishes, voice }),
      ...checksBefore(index, here, findings.photos, voice),
    ],
    kit: garden.settings.kit,
    closingCaution: here.some((bed) => namesPoison(cautionsFor({ ...bed, garden })))
      ? closingCaution(garden.settings)
      : undefined,
    seconds: secondsByLevel(stops),
  };
  return { brief, planned, owed };
}

function isBare({ growing, ended, news }: BedOnTheDay): boolean {
  return growing.length === 0 && ended.length === 0 && news.length === 0;
}

/** Follow-ups by the bed whose stop can keep them. */
function byBed(lines: readonly OwedLine[]): ReadonlyMap<string, readonly OwedLine[]> {
  return Map.groupBy(
    lines.filter(({ keptAt }) => keptAt !== undefined),
    ({ keptAt }) => keptAt ?? "",
  );
}

function withStop({ keptAt, lots: _, ...line }: OwedLine, stops: readonly BedOnTheDay[]): FollowUpLine {
  const at = stops.findIndex(({ bed }) => bed.id === keptAt);
  return { ...line, stop: at < 0 ? undefined : `S${at + 1}` };
}

function secondsByLevel(stops: Brief["stops"]): Brief["seconds"] {
  const of = (levels: readonly string[]) =>
    stops
      .flatMap(({ show }) => show)
      .reduce((sum, { level, seconds }) => sum + (levels.includes(level) ? seconds : 0), 0);
  return { must: of(["must"]), should: of(["must", "should"]) };
}

/** "Saturday 18 July 2026". */
function wholeDate(day: Day, garden: Garden): string {
  const format = new Intl.DateTimeFormat(garden.settings.language, {
    weekday: "long",
    day: "numeric",
    month: "long",
    year: "numeric",
    timeZone: "UTC",
  });
  return format.format(Date.parse(day));
}
