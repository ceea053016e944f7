/** What the tour leaves out, with the reason, the length and how to have it: whole beds, and things at its stops. */

import { stopOverhead } from "../films/index.ts";
import type { Book } from "../garden/index.ts";
import { dayOnly, type Ground, inBed, say, theBed, type Voice } from "../language/index.ts";
import type { Episode } from "../model.ts";
import { changes } from "../timeline/index.ts";
import { type BedOnTheDay, bedOnTheDay } from "./bed-on-the-day.ts";
import type { LeftOut } from "./brief.ts";
import type { Weighed } from "./candidates/candidate.ts";
import type { Choice, Offer, Passed } from "./plan/choose.ts";
import { quietChanges } from "./show-values.ts";
import { newsAfter, sinceFor } from "./since.ts";
import type { StopOrder } from "./stop-order.ts";

type PassedBed = StopOrder["passed"][number];

/** Beds that were no stop to begin with: not listed, not in use, private, skipped, or bare. */
export function passedBeds(
  index: Book,
  passed: readonly PassedBed[],
  tours: readonly Episode[],
  voice: Voice,
  candidatesAt: (here: BedOnTheDay) => readonly Weighed[],
): readonly LeftOut[] {
  return passed.map((one) => {
    const { bed } = one;
    const { why, miss } = whyPassed(index, one, tours, voice, candidatesAt);
    return bedLine({ bed, why, miss });
  });
}

/** Beds whose every thing fell to the film's length, and things at the stops that did. */
export function fallenToLength(choice: Choice): readonly LeftOut[] {
  const spare = spareThings(choice);
  return [
    ...choice.unvisited.map((offer) => unvisitedLine(offer, spare)),
    ...choice.passed.map((passed) => thingLine(passed, spare)),
  ];
}

function bedLine({
  bed,
  why,
  miss,
  couldGo,
}: {
  readonly bed: Offer["here"]["bed"];
  readonly why: string;
  readonly miss?: Weighed | undefined;
  readonly couldGo?: string | undefined;
}): LeftOut {
  const about = theBed(bed);
  const grounds: Ground[] = miss === undefined ? [bed] : miss.sentence.sources.map((place) => ({ place }));
  const text = miss === undefined ? `${about} (${why})` : `${about} (${why}): ${miss.sentence.text}`;
  const missed = miss === undefined ? why : `${why}: ${miss.about}, ${miss.gist}`;
  return {
    ...say(text, grounds),
    what: "bed",
    bed: bed.id,
    title: bed.title,
    about,
    why,
    reason: missed,
    miss: miss?.sentence.text,
    seconds: miss === undefined ? undefined : miss.seconds + stopOverhead,
    keepBy: miss === undefined ? undefined : bed.title,
    couldGo,
  };
}

function unvisitedLine({ here, candidates }: Offer, spare: Spare): LeftOut {
  const [strongest] = candidates.filter(({ wish }) => wish !== "skip");
  const seconds = (strongest?.seconds ?? 0) + stopOverhead;
  return bedLine({
    bed: here.bed,
    why: strongest === undefined ? "you said skip" : "no room for it",
    miss: strongest,
    couldGo: couldGoFor(seconds, spare),
  });
}

function thingLine({ here, candidate, why }: Passed, spare: Spare): LeftOut {
  const { about, gist, seconds, sentence, keepBy } = candidate;
  const where = aboutIn(about, here);
  return {
    text: `${where} (${why === "skip" ? "you said skip" : gist})`,
    sources: sentence.sources,
    private: sentence.private,
    what: "thing",
    bed: here.bed.id,
    title: here.bed.title,
    about: where,
    why: why === "skip" ? "you said skip" : "no room",
    reason: why === "skip" ? "you said skip" : gist,
    miss: sentence.text,
    seconds,
    keepBy,
    couldGo: why === "no room" ? couldGoFor(seconds, spare) : undefined,
  };
}

/** What is in the film by its worth alone, the weakest first, and the room that is left over. */
interface Spare {
  readonly things: readonly { readonly about: string; readonly seconds: number }[];
  readonly room: number;
}

function spareThings({ stops, room, held }: Choice): Spare {
  const things = stops
    .flatMap(({ here, show }) =>
      show
        .filter(({ key }) => !held.has(key))
        .map(({ about, seconds, value }) => ({ about: aboutIn(about, here), seconds, value })),
    )
    .toSorted((a, b) => a.value - b.value);
  return { things, room };
}

function aboutIn(about: string, { bed }: Offer["here"]): string {
  return about.includes(theBed(bed)) ? about : `${about} ${inBed(bed)}`;
}

/** The weakest thing that is long enough. */
function couldGoFor(seconds: number, { things, room }: Spare): string | undefined {
  return things.find((thing) => thing.seconds + room >= seconds)?.about;
}

function whyPassed(
  index: Book,
  { bed, why }: PassedBed,
  tours: readonly Episode[],
  voice: Voice,
  candidatesAt: (here: BedOnTheDay) => readonly Weighed[],
): { readonly why: string; readonly miss?: Weighed | undefined } {
  const { garden } = index;
  if (why === "private") return { why: "private" };
  if (why === "not in use") {
    const until = bed.inUseUntil !== undefined && bed.inUseUntil < voice.day;
    return { why: until ? `not in use since ${dayOnly(bed.inUseUntil ?? voice.day, voice)}` : "not in use yet" };
  }
  const since = sinceFor(garden, bed, voice.day, tours);
  const from = newsAfter(since, voice.day, garden.settings.seasonStarts);
  const news = changes(garden, bed.id, from, voice.day).some(
    (change) => !change.private && !quietChanges.has(change.kind),
  );
  const seen = since.episode === undefined ? "this season" : `since ${dayOnly(since.day, voice)}`;
  const skipped = why === "skip" ? "you said skip" : undefined;
  if (!news) return { why: skipped ?? `nothing new ${seen}` };
  const [strongest] = candidatesAt(bedOnTheDay(index, bed, voice.day, since));
  const never = since.episode === undefined ? "never shown yet" : `last shown on ${dayOnly(since.day, voice)}`;
  return { why: skipped ?? never, miss: strongest };
}
