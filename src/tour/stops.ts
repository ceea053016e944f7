/** The planned stops in full: where to stand, what to show and say, the names, what changed, what to film. */

import { cautionsFor, saidOnce } from "../almanac/index.ts";
import { changeSentence, disclosureLines, type Sentence, theBed, withWordsOnce } from "../language/index.ts";
import { type BedOnTheDay, voiceOf } from "./bed-on-the-day.ts";
import type { ShowPoint, Stop } from "./brief.ts";
import type { Weighed } from "./candidates/candidate.ts";
import type { Findings } from "./candidates/find-candidates.ts";
import { pointersAt } from "./earlier-films.ts";
import { factsOf } from "./facts.ts";
import { gearRow } from "./gear-row.ts";
import { sideBySide, sideBySideFact } from "./growth-lines.ts";
import { thingKey } from "./keys.ts";
import { lastSeen } from "./last-seen.ts";
import { linkLine, wayWords } from "./links.ts";
import { endedSentences, lostSentences } from "./news-sentences.ts";
import { closingLine, outlineOf } from "./outline.ts";
import type { Choice } from "./plan/choose.ts";
import type { PlannedStop } from "./plan/plan-tour.ts";
import { type Cutaway, type ShotList, shotsOf } from "./shots.ts";
import { spotOf } from "./spot.ts";
import { atStop } from "./stop-cautions.ts";
import { openTaskLines } from "./task-lines.ts";
import { openTroubles } from "./trouble-lines.ts";
import { varietyRows } from "./variety-rows.ts";

export function tellStops(
  planned: readonly PlannedStop[],
  choice: Choice,
  findings: Findings,
  tour: string,
): readonly Stop[] {
  const cutaways = cutawaysBy(planned, choice);
  const cautioned = new Set<string>();
  return planned.map((stop, turn) =>
    tellStop(stop, {
      before: planned[turn - 1]?.here,
      turn,
      last: turn > 0 && turn === planned.length - 1,
      findings,
      tour,
      leftOut: cutaways.get(stop.here) ?? [],
      cautioned,
    }),
  );
}

interface Telling {
  readonly before: BedOnTheDay | undefined;
  readonly turn: number;
  readonly last: boolean;
  readonly findings: Findings;
  readonly tour: string;
  /** What to pick up in passing though the film leaves it out. */
  readonly leftOut: readonly Cutaway[];
  /** What an earlier stop has said for all. */
  readonly cautioned: Set<string>;
}

function tellStop(
  { here, show, seconds, leg, begins, from, light }: PlannedStop,
  { before, turn, last, findings, tour, leftOut, cautioned }: Telling,
): Stop {
  const id = `S${turn + 1}`;
  const { garden } = here.index;
  const gear = here.now.gear.flatMap((one) => garden.gear.get(one) ?? []);
  const varieties = here.growing.flatMap((lot) => (lot.variety === undefined ? [] : [lot.variety]));
  const rows = varietyRows(here);
  const spot = spotOf(here, findings.photos);
  const way = { here, before, leg, turn, last, tour, show };
  const pair = sideBySide(garden, here, findings.photos);
  const besides =
    pair &&
    sideBySideFact(
      here,
      pair,
      show.some(({ kind }) => kind === "side by side"),
    );
  const cautions = atStop(cautionsFor({ ...here, garden }));
  const isNewHere = (line: Sentence) => !(saidOnce(line, garden.settings) && cautioned.has(line.text));
  const cautionsHere = cautions.here.filter(isNewHere);
  for (const { text } of cautionsHere) cautioned.add(text);
  const link = linkLine(way);
  const close = closingLine(here, show, tour, turn);
  const { shots, things } = shotsOf(id, here, spot, show, { varieties: rows, leftOut });
  return {
    id,
    number: turn + 1,
    bed: here.bed.id,
    title: here.bed.title,
    site: here.site?.id,
    siteTitle: here.site?.title,
    since: here.since,
    spot,
    sideBySide: pair,
    show: show.map((weighed, at) => pointOf(weighed, `${id}${letters(at)}`, things[at])),
    varieties: rows,
    gear: gear.map(gearRow),
    facts: [...factsOf(here), ...(besides === undefined ? [] : [besides])],
    // That a shrub went into another year is the calendar's doing and no news.
    changes: withWordsOnce(here.changes.filter(({ told }) => told?.is !== "next year")).map((change) => ({
      text: changeSentence(change, here.index.garden),
      sources: [change.note],
      private: change.private,
      kind: change.kind,
      day: change.day,
    })),
    finishedSince: [
      ...endedSentences(here).map(({ sentence }) => sentence),
      ...lostSentences(here).map(({ sentence }) => sentence),
    ],
    lastSeen: lastSeen(here),
    troubles: openTroubles(here),
    tasks: openTaskLines(here.now.tasks, voiceOf(here)),
    cautions: cautionsHere,
    furtherCautions: cautions.further,
    disclosures: disclosureLines([...new Set(varieties)], gear),
    seconds,
    begins,
    from,
    way: wayWords(way),
    link: link.text,
    light,
    outline: outlineOf(here, link, show, close),
    close: close?.text,
    shots,
    pointTo: pointersAt(here, show, findings.shown),
  };
}

function pointOf(
  { sentence, kind, level, why, value, lots, seconds }: Weighed,
  id: string,
  { key, shot }: Partial<ShotList["things"][number]> = {},
): ShowPoint {
  const { text, sources, private: isPrivate } = sentence;
  return {
    id,
    key: key ?? id,
    text,
    sources,
    private: isPrivate,
    kind,
    level,
    why,
    value,
    plantings: lots.map((lot) => lot.planting.id),
    seconds,
    shot,
  };
}

/** "a" to "z", then "aa". */
function letters(at: number): string {
  const letter = String.fromCharCode(97 + (at % 26));
  return at < 26 ? letter : `${letters(Math.floor(at / 26) - 1)}${letter}`;
}

/**
 * Pictures to pick up of what the film leaves out: of things at a stop there, of whole beds at the stop nearest to them in
 * the same site, else at the last.
 */
function cutawaysBy(
  planned: readonly PlannedStop[],
  { passed, unvisited }: Choice,
): ReadonlyMap<BedOnTheDay, readonly Cutaway[]> {
  const cutaways = new Map<BedOnTheDay, Cutaway[]>();
  const seen = new Set(planned.flatMap(({ show }) => show.flatMap(({ lots }) => lots)));
  const put = (here: BedOnTheDay | undefined, cutaway: Cutaway) => {
    if (here !== undefined) cutaways.set(here, [...(cutaways.get(here) ?? []), cutaway]);
  };
  for (const { here, candidate, why } of passed) {
    if (why !== "no room" || candidate.lots.every((lot) => seen.has(lot))) continue;
    for (const lot of candidate.lots) seen.add(lot);
    put(here, { text: candidate.about, of: thingKey(here.bed.id, candidate) });
  }
  for (const { here } of unvisited) put(nearestStop(here, planned), { text: theBed(here.bed), of: here.bed.id });
  return cutaways;
}

function nearestStop({ bed }: BedOnTheDay, planned: readonly PlannedStop[]): BedOnTheDay | undefined {
  const near = planned.filter(({ here }) => here.bed.site === bed.site);
  const away = (stop: PlannedStop) => {
    const [a, b] = [stop.here.bed.plan, bed.plan];
    return a === undefined || b === undefined ? Number.MAX_VALUE : Math.hypot(a.x - b.x, a.y - b.y);
  };
  const nearest = near.reduce<PlannedStop | undefined>(
    (best, one) => (best === undefined || away(one) < away(best) ? one : best),
    undefined,
  );
  return (nearest ?? planned.at(-1))?.here;
}
