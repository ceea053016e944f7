/** The way from one stop to the next, for the feet and for the voice. */

import { offFilm } from "../films/index.ts";
import {
  bedVerb,
  capital,
  cropName,
  dayOnly,
  type Ground,
  inTurn,
  say,
  sayList,
  sayPlural,
  sayRoughDistance,
  theBed,
} from "../language/index.ts";
import { type BedOnTheDay, voiceOf } from "./bed-on-the-day.ts";
import type { OutlineLine, ShowKind } from "./brief.ts";
import type { Weighed } from "./candidates/candidate.ts";
import { wasBare } from "./last-seen.ts";
import { foundThere } from "./news-sentences.ts";
import type { Leg } from "./plan/walk.ts";

const compass = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];

/** Fewer steps than this are no way. */
const beside = 3;
/** Metres between two sites below which nobody tells a distance. */
const aMinuteAway = 75;
/** More than this are not "a few". */
const aFew = 15;

export interface OnTheWay {
  readonly here: BedOnTheDay;
  readonly before: BedOnTheDay | undefined;
  readonly leg: Leg;
  /** Place among the stops of the tour, from 0. */
  readonly turn: number;
  readonly last: boolean;
  /** Name of the tour, so that two tours do not use the same words in the same order. */
  readonly tour: string;
  readonly show: readonly Weighed[];
}

/** "ten steps north-east from the bean row"; undefined when the plan does not tell. */
export function wayWords({ here, before, leg }: OnTheWay): string | undefined {
  if (before === undefined) return undefined;
  if (leg.otherSite) {
    return leg.betweenSites === undefined
      ? undefined
      : `${leg.betweenSites < aMinuteAway ? "a minute" : sayRoughDistance(leg.betweenSites, here.index.garden.settings.units)} from the last stop`;
  }
  const steps = stepsOf(leg);
  if (steps === undefined) return undefined;
  if (steps < beside || leg.direction === undefined) return `right beside ${theBed(before.bed)}`;
  const direction = compass[Math.round(leg.direction / 45) % 8];
  return `${sayPlural(steps, "step", "steps")} ${direction} from ${theBed(before.bed)}`;
}

function stepsOf({ metres }: Leg): number | undefined {
  return metres === undefined ? undefined : Math.round(metres / offFilm.step);
}

/** "On to the squash bed, bare when you last saw it." Said on the way, over the walk. */
export function linkLine(way: OnTheWay): OutlineLine {
  const { here, before, turn, last, tour } = way;
  const { bed } = here;
  const found = hook(way);
  const name = `${theBed(bed)}${found === undefined ? "" : `, ${found.words}`}`;
  const { sources } = say("", found?.grounds ?? groundOf(here));
  const text = (() => {
    if (before === undefined)
      return inTurn(tour, turn, [`We begin at ${name}.`, `First, ${name}.`, `The first stop: ${name}.`]);
    if (way.leg.otherSite && here.site !== undefined) {
      const site = theBed(here.site);
      return inTurn(tour, turn, [
        `That was ${before.site === undefined ? "that" : theBed(before.site)}. Now ${site}, and in it ${name}.`,
        `Over to ${site}, and to ${name}.`,
        `Now we are at ${site}: ${name}.`,
      ]);
    }
    if (last) return `Last stop: ${name}.`;
    const steps = stepsOf(way.leg);
    if (steps !== undefined && steps < beside)
      return inTurn(tour, turn, [`Right beside it, ${name}.`, `And next to it, ${name}.`]);
    const ways: [string, ...string[]] = [
      `On to ${name}.`,
      `Next, ${name}.`,
      `And here is ${name}.`,
      `From there we come to ${name}.`,
      ...(steps !== undefined && steps <= aFew ? [`A few steps on, ${name}.`] : []),
    ];
    return inTurn(tour, turn, ways);
  })();
  return { text: capital(text), sources };
}

function groundOf({ bed, growing }: BedOnTheDay): readonly (Ground | undefined)[] {
  return bed.place === undefined ? (growing[0]?.grounds.slice(0, 1) ?? []) : [bed];
}

interface Hook {
  readonly words: string;
  readonly grounds: readonly (Ground | undefined)[];
}

/** Why the stop is worth the walk, when something is on record that says so. */
function hook(way: OnTheWay): Hook | undefined {
  const { here, show } = way;
  const { episode, day } = here.since;
  const them = bedVerb(here.bed, "it", "them");
  const record = episode === undefined ? undefined : here.index.garden.episodes.get(episode);
  if (wasBare(here)) return { words: `bare when you last saw ${them}`, grounds: [record] };
  for (const [kind, words] of hooks) {
    const point = show.find((one) => one.kind === kind);
    if (point === undefined) continue;
    const grounds = point.sentence.sources.map((place) => ({ place }));
    return { words: inTurn(way.tour, way.turn, words(point, them)), grounds };
  }
  if (episode === undefined) return undefined;
  const lastTour = here.since.text === "since the last tour";
  return lastTour ? undefined : { words: `which you last saw on ${dayOnly(day, voiceOf(here))}`, grounds: [record] };
}

/** The first kind that is shown at the stop gives the words, with the crop's name where there is one. */
const hooks: readonly (readonly [ShowKind, (point: Weighed, them: string) => readonly [string, ...string[]]])[] = [
  [
    "owed",
    () => ["where I owe you an answer", "where I have a promise to keep", "and something you have been waiting for"],
  ],
  [
    "new",
    (point, them) =>
      foundThere(point.lots)
        ? [`with ${crops(point, "plants")} in ${them}`]
        : [`with ${newPlants(point)} in ${them}`, `and ${newPlants(point)}`],
  ],
  ["trouble", () => ["where not all is well", "with a trouble I have to show you"]],
  ["going", (point) => [`for a last look at the ${crops(point, "plants")}`]],
  ["first picking", (point) => [`with the first ${crops(point, "fruit")} picked`]],
  ["first flower", (point) => [`where the first ${crops(point, "flowers")} are in flower`]],
  ["trial", () => ["where a trial is running", "with two ways of growing side by side"]],
];

/** "new lettuces", "a new tomato" for one plant. */
function newPlants(point: Weighed): string {
  const [lot, ...more] = point.lots;
  if (lot?.crop === undefined || lot.plants !== 1 || more.length > 0) return `new ${crops(point, "plants")}`;
  return `a new ${cropName(lot.crop, 1)}`;
}

/** "lettuces", "peas and beans"; plants of no known crop go by the word given. */
function crops({ lots }: Weighed, otherwise: string): string {
  const names = [...new Set(lots.flatMap(({ crop }) => (crop === undefined ? [] : [cropName(crop, 2)])))];
  return names.length === 0 ? otherwise : sayList(names);
}
