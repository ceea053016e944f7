/** Makes the brief of one tour from the garden: beds in order, each with what it asks to be shown, and all that goes before. */
import type { Day, Episode, Garden } from "../model.ts";
import { openFollowUps, openTasks } from "../timeline/index.ts";
import { type BedOnTheDay, bedOnTheDay } from "./bed-on-the-day.ts";
import type { Brief, FollowUpLine, Stop } from "./brief.ts";
import { cautionsFor } from "./cautions.ts";
import { checksBefore, planChecks } from "./checks.ts";
import { dayOnly, type Speech, speechOf } from "./days-said.ts";
import { factsOf } from "./facts.ts";
import { followUpLines } from "./follow-up-lines.ts";
import { indexGarden } from "./garden-index.ts";
import { lastSeen } from "./last-seen.ts";
import { leftOutLines } from "./left-out.ts";
import { endedSentence, lostSentences } from "./news-sentences.ts";
import { openingLines } from "./opening-lines.ts";
import { showPoints } from "./show-points.ts";
import { publishedTours, sinceFor } from "./since.ts";
import { disclosureLines, gearRow } from "./source-words.ts";
import { type PhotosByBed, photosByBed, spotOf } from "./spot.ts";
import { orderStops } from "./stop-order.ts";
import { openTaskLines } from "./task-lines.ts";
import { openTroubles } from "./trouble-lines.ts";
import { varietyRows } from "./variety-rows.ts";

export interface BriefRequest {
  /** Episode id. */
  readonly episode?: string | undefined;
  /** Filming day of a tour that no episode record plans. */
  readonly day?: Day | undefined;
  readonly today: Day;
}

/**
 * The brief of an episode on its filming day, or of a tour on a day. An episode id that no record has is treated as a
 * day's tour, today's unless `day` is given; the command that asks says so before.
 */
export function makeBrief(garden: Garden, { episode: id, day: asked, today }: BriefRequest): Brief {
  const episode = id === undefined ? undefined : garden.episodes.get(id);
  const day = episode?.day ?? asked ?? today;
  const index = indexGarden(garden);
  const speech: Speech = { settings: garden.settings, day };
  const tours = publishedTours(garden, day, episode?.id);
  const order = orderStops(garden, episode, day);
  const found = order.beds.map((bed) => bedOnTheDay(index, bed, day, sinceFor(garden, bed, day, tours)));
  // A tour whose stops nobody chose passes by what is bare and was bare before.
  const chosen = episode !== undefined && episode.stops.length > 0;
  const owedBeds = new Set(openFollowUps(garden, day).map((followUp) => followUp.bed));
  const beds = found.filter((here) => chosen || !isBare(here) || owedBeds.has(here.bed.id));
  const bare = found.filter((here) => !beds.includes(here)).map(({ bed }) => ({ bed, why: "not listed" as const }));
  const photos = photosByBed(garden.photos);
  const followUps = followUpLines(index, beds, speech);
  const stops = beds.map((here, at) => stopOf(here, at + 1, followUps, photos, episode));
  const lastTour = tours.at(-1);
  const seconds = (levels: readonly string[]) =>
    stops.reduce(
      (sum, stop) =>
        sum + stop.show.reduce((all, point) => all + (levels.includes(point.level) ? point.seconds : 0), 0),
      0,
    );
  const must = seconds(["must"]);
  return {
    tour: episode?.id ?? day,
    title: episode?.title ?? `Tour of ${dayOnly(day, speech)}`,
    date: day,
    dateText: wholeDate(day, garden),
    since: lastTour?.day,
    sinceText: lastTour === undefined ? undefined : `the tour of ${dayOnly(lastTour.day, speech)}`,
    target: episode?.target,
    start: episode?.start,
    opening: openingLines(beds, followUps),
    followUps,
    stops,
    leftOut: leftOutLines(index, [...order.passed, ...bare], tours, speech),
    tasks: openTaskLines(openTasks(garden, day), speech),
    checks: [...planChecks(episode, stops, order.unknown, must), ...checksBefore(index, beds, photos, speech)],
    kit: garden.settings.kit,
    seconds: { must, should: seconds(["must", "should"]) },
  };
}

function isBare({ growing, ended, news }: BedOnTheDay): boolean {
  return growing.length === 0 && ended.length === 0 && news.length === 0;
}

function stopOf(
  here: BedOnTheDay,
  number: number,
  followUps: readonly FollowUpLine[],
  photos: PhotosByBed,
  episode: Episode | undefined,
): Stop {
  const id = `S${number}`;
  const speech = speechOf(here);
  const { garden } = here.index;
  const gear = here.now.gear.flatMap((one) => garden.gear.get(one) ?? []);
  const varieties = here.growing.flatMap((lot) => (lot.variety === undefined ? [] : [lot.variety]));
  const show = showPoints(
    here,
    id,
    followUps.filter((line) => line.stop === id),
    episode,
  );
  return {
    id,
    number,
    bed: here.bed.id,
    title: here.bed.title,
    site: here.site?.id,
    siteTitle: here.site?.title,
    since: here.since,
    spot: spotOf(here, photos),
    show,
    varieties: varietyRows(here),
    gear: gear.map(gearRow),
    facts: factsOf(here),
    changes: here.changes.map(({ text, note, private: isPrivate, kind, day }) => ({
      text,
      sources: [note],
      private: isPrivate,
      kind,
      day,
    })),
    finishedSince: [
      ...here.ended.map((lot) => endedSentence(lot, here)),
      ...lostSentences(here).map(({ sentence }) => sentence),
    ],
    lastSeen: lastSeen(here),
    troubles: openTroubles(here),
    tasks: openTaskLines(here.now.tasks, speech),
    cautions: cautionsFor(here),
    disclosures: disclosureLines([...new Set(varieties)], gear),
    seconds: show.reduce((sum, point) => sum + point.seconds, 0),
  };
}

/** "Saturday 18 July 2026", in the garden's language. */
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
