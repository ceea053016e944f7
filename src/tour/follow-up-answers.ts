/**
 * What the records tell of a promised thing. Nothing is concluded: the person is given the dates, the weights and the
 * troubles on record, and says aloud what they saw.
 */

import { addDays } from "../calendar.ts";
import {
  inBed,
  mentions,
  onDay,
  plantName,
  type Sentence,
  say,
  sayLength,
  sayList,
  sayPickedOf,
  thePlants,
  together,
} from "../language/index.ts";
import type { Event, FollowUp } from "../model.ts";
import { living } from "../timeline/index.ts";
import { batchesOf, batchOf, byVariety, theBatch } from "./batches.ts";
import { type BedOnTheDay, type Lot, lotOf, voiceOf } from "./bed-on-the-day.ts";
import { pickedSince } from "./picked-sentences.ts";
import { standsNow } from "./planting-sentences.ts";
import { troublesSince } from "./trouble-lines.ts";

/** How the thing stands, for the promises whose words say what to look up; undefined for all others. */
export function answerTo(followUp: FollowUp, here: BedOnTheDay): Sentence | undefined {
  const what = followUp.what.toLowerCase();
  const lots = lotsSpokenOf(followUp, here);
  if (/\b(?:which|who|what)\b.*\bfirst\b/.test(what)) return whichWasFirst(what, lots, here);
  if (/\b(?:how close|spacing|how far apart)\b/.test(what)) return spacing(lots, here);
  if (/\b(?:weigh|weight|how much|total|yield)\b/.test(what)) return weight(followUp, here);
  if (/\b(?:clean|pests?|slugs?|moth|fly|disease|blight|eaten|damage|worked?)\b/.test(what)) {
    return troublesSince(here, lots, followUp.promisedOn);
  }
  if (/\b(?:how tall|how high|height|measure)\b/.test(what)) return standing(lots, here);
  return /^(?:to )?(?:show|see|film|come back|look|visit|return)\b/.test(what) && !/\b(?:how|why|what)\b/.test(what)
    ? standing(lots, here)
    : undefined;
}

/** Lots, ended ones too, that a promise speaks of: its variety's, else those whose variety or crop its words name. */
export function lotsSpokenOf(followUp: FollowUp, here: BedOnTheDay): readonly Lot[] {
  const all = [...here.growing, ...here.ended];
  // "The leeks in Onion Bed" speaks of no onions.
  const what = [here.bed.title, ...here.bed.alsoCalled].reduce((words, name) => words.replace(name, ""), followUp.what);
  if (followUp.variety !== undefined) return all.filter((lot) => lot.planting.variety === followUp.variety);
  const named = all.filter(({ variety }) => variety !== undefined && mentions(what, [variety.title]));
  if (named.length > 0) return named;
  return all.filter(({ crop }) => crop !== undefined && mentions(what, [crop.plural, crop.name]));
}

function standing(lots: readonly Lot[], here: BedOnTheDay): Sentence | undefined {
  const batches = batchesOf(lots.filter((lot) => lot.planting.ended === undefined));
  return batches.length === 0 ? undefined : together(batches.slice(0, 2).map((batch) => standsNow(batch, here)));
}

/** "The Crown Prince squash stand 90 cm apart." */
function spacing(lots: readonly Lot[], here: BedOnTheDay): Sentence | undefined {
  const { units } = here.index.garden.settings;
  const spaced = lots.filter((lot) => lot.planting.spacingCm !== undefined);
  const groups = Map.groupBy(spaced, ({ planting, crop }) => `${planting.spacingCm} ${crop?.id ?? planting.variety}`);
  const batches = [...groups.values()].flatMap(([first, ...more]) =>
    first === undefined ? [] : [batchOf([first, ...more])],
  );
  if (batches.length === 0) return undefined;
  const parts = batches.map(
    (batch) => `${sayLength(batch.lots[0].planting.spacingCm ?? 0, units)} apart for ${theBatch(batch)}`,
  );
  return say(
    `On record: ${sayList(parts)}.`,
    spaced.flatMap((lot) => lot.grounds),
  );
}

/** "Since then the Germidour garlic gave 28 bulbs, 1.9 kg." */
function weight(followUp: FollowUp, here: BedOnTheDay): Sentence | undefined {
  const told = byVariety(lotsSpokenOf(followUp, here)).flatMap((batch) => {
    const picked = pickedSince(batch, here, followUp.promisedOn);
    const sum = sayPickedOf(picked.value, plantName(batch.lots[0]), here.index.garden.settings);
    return sum === undefined ? [] : [{ text: sum, picked }];
  });
  if (told.length === 0) return undefined;
  return say(
    `On record since then: ${told.map(({ text }) => text).join("; ")}.`,
    told.map(({ picked }) => picked),
  );
}

/** What "first" asks about, by the word beside it. */
const firstThings: readonly (readonly [words: RegExp, kind: Event["kind"], said: string])[] = [
  [/flower|bloom|open/, "flowered", "to flower were"],
  [/up\b|germinat|emerg/, "up", "up were"],
  [/ripe|pick|fruit|tomato|harvest|eat/, "picked", "picked were"],
];

/** "First was Gardener's Delight in the tomato pots, picked on 14 July; then Saint-Pierre in the tunnel's north side, picked on 15 July." */
function whichWasFirst(what: string, lots: readonly Lot[], here: BedOnTheDay): Sentence | undefined {
  const crop = lots.find((lot) => lot.crop !== undefined)?.crop;
  const [, kind, said] = firstThings.find(([words]) => words.test(what)) ?? [];
  if (crop === undefined || kind === undefined || said === undefined) return undefined;
  const firsts = lotsOfCrop(crop.id, here).flatMap((lot) => {
    const event = lot.events.find((each) => each.kind === kind && each.day >= here.season);
    return event === undefined ? [] : [{ lot, event }];
  });
  firsts.sort((a, b) => (a.event.day < b.event.day ? -1 : 1));
  const [first] = firsts;
  if (first === undefined) return undefined;
  const together = firsts.filter(({ event }) => event.day === first.event.day);
  const next = firsts.find(({ event }) => event.day !== first.event.day);
  const tell = (all: typeof firsts) =>
    sayList(
      [...Map.groupBy(all, ({ lot }) => lot.planting.bed)].map(([id, lots]) => {
        const bed = here.index.garden.beds.get(id);
        const plants = sayList([...new Set(lots.map(({ lot }) => thePlants(lot)))]);
        return bed === undefined ? plants : `${plants} ${inBed(bed)}`;
      }),
    );
  const day = (event: Event) => onDay(event.day, voiceOf(here));
  const then = next === undefined ? "" : `, then ${tell([next])} ${day(next.event)}`;
  const text = `First ${said} ${tell(together)}, ${day(first.event)}${then}.`;
  return say(text, [...together.map(({ event }) => event), next?.event]);
}

/** Every living lot of a crop in the garden, the compared ones may stand in another bed. */
function lotsOfCrop(crop: string, here: BedOnTheDay): readonly Lot[] {
  const { garden } = here.index;
  return [...garden.beds.keys()].flatMap((bed) =>
    living(here.index.stateOf(bed, here.day))
      .filter((planting) => planting.crop === crop && planting.since >= addDays(here.season, -200))
      .map((planting) => lotOf(here.index, planting, here.day)),
  );
}
