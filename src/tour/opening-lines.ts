/** Candidates for the first sentence of the film: the newest thing, the promise owed, the biggest change. */

import { daysBetween } from "../calendar.ts";
import {
  bedVerb,
  capital,
  cropName,
  type Ground,
  inBed,
  plantName,
  type Sentence,
  say,
  sayNumber,
  sayPickedOf,
  sayPlural,
  theBed,
  together,
} from "../language/index.ts";
import { pickedSize } from "../picked.ts";
import { batchesOf, batchOf, byVariety } from "./batches.ts";
import { type BedOnTheDay, isNews, type Lot } from "./bed-on-the-day.ts";
import type { FollowUpLine, OpeningLine } from "./brief.ts";
import { wasBare } from "./last-seen.ts";
import { type Milestone, milestonesSince } from "./milestones.ts";
import { newSentence } from "./news-sentences.ts";
import { pickedSince } from "./picked-sentences.ts";

/** At most three, each of another kind and about another thing; a garden with no news has fewer. */
export function openingLines(stops: readonly BedOnTheDay[], owed: readonly FollowUpLine[]): readonly OpeningLine[] {
  const lines: OpeningLine[] = [];
  const newest = newestLine(stops);
  if (newest !== undefined) lines.push({ ...newest.sentence, kind: "newest" });
  const promise = promiseToOpenWith(owed);
  if (promise !== undefined) {
    lines.push({
      ...(promise.now === undefined || promise.now.private ? promise : together([promise, promise.now])),
      kind: "owed",
    });
  }
  const change = biggestChange(stops, newest?.planting);
  if (change !== undefined) lines.push({ ...change, kind: "biggest change" });
  return lines.map(({ text, sources, private: isPrivate, kind }) => ({ text, sources, private: isPrivate, kind }));
}

/** One that this tour can keep, best with an answer on record, best a fresh one: nobody waits for two years. */
function promiseToOpenWith(owed: readonly FollowUpLine[]): FollowUpLine | undefined {
  const worth = (line: FollowUpLine) =>
    (line.stop === undefined ? 0 : 4) + (line.now === undefined ? 0 : 2) + (line.standing === "open" ? 0 : 1);
  return owed
    .filter((line) => !line.private)
    .toSorted((a, b) => worth(b) - worth(a) || (a.promisedOn < b.promisedOn ? 1 : -1))[0];
}

interface Newest {
  readonly sentence: Sentence;
  readonly planting: string;
}

/** The latest first time of the tour; where there is none, the latest planting. */
function newestLine(stops: readonly BedOnTheDay[]): Newest | undefined {
  const strength: Readonly<Record<Milestone["kind"], number>> = {
    "first flower": 3,
    "first picking": 3,
    "only picking": 3,
    "first fruit": 2,
    up: 1,
  };
  const firsts = stops.flatMap((here) => milestonesSince(here)).filter((milestone) => !milestone.private);
  // The newest, but a first flower or picking of the same week says more than a row that came up.
  const latest = firsts.reduce<Milestone | undefined>((best, one) => {
    if (best === undefined) return one;
    const younger = daysBetween(best.day, one.day);
    return younger + 3 * (strength[one.kind] - strength[best.kind]) > 0 ? one : best;
  }, undefined);
  const planted = stops
    .flatMap((here) => here.growing.filter((lot) => isNews(lot, here)).map((lot) => ({ here, lot })))
    .toSorted((a, b) => (a.lot.planting.since < b.lot.planting.since ? 1 : -1))[0];
  const stale =
    latest !== undefined && planted !== undefined && daysBetween(latest.day, planted.lot.planting.since) > 14;
  if (latest !== undefined && !stale) return { sentence: latest, planting: latest.lot.planting.id };
  if (planted === undefined) return undefined;
  const sentence = newSentence(batchOf([planted.lot]), planted.here);
  return sentence.private ? undefined : { sentence, planting: planted.lot.planting.id };
}

interface Sized {
  readonly sentence: Sentence;
  readonly size: number;
}

/** The largest thing that came or went in one bed: plants put in, crops brought in, or a bed emptied. */
function biggestChange(stops: readonly BedOnTheDay[], but: string | undefined): Sentence | undefined {
  const found = stops.flatMap((here) => [...plantedWhole(here, but), ...pickedMost(here, but), ...emptied(here)]);
  return found
    .filter(({ sentence }) => !sentence.private)
    .reduce<Sized | undefined>((best, one) => (best === undefined || one.size > best.size ? one : best), undefined)
    ?.sentence;
}

/** "Eleven squash went in since the last tour. The long bed was bare when viewers last saw it." */
function plantedWhole(here: BedOnTheDay, but: string | undefined): Sized[] {
  const fresh = here.growing.filter(
    (lot) => isNews(lot, here) && lot.planting.planted !== undefined && lot.planting.began !== undefined,
  );
  const byCrop = Map.groupBy(fresh, ({ crop, planting }) => crop?.id ?? planting.id);
  return [...byCrop.values()].flatMap(([first, ...more]) => {
    if (first === undefined || (more.length === 0 && first.planting.id === but)) return [];
    const batch = batchOf([first, ...more]);
    const plants = batch.lots.reduce((sum, { planting }) => sum + (planting.began?.value ?? 0), 0);
    const name =
      batch.crop === undefined || more.length === 0 ? plantName(first, plants) : cropName(batch.crop, plants);
    const when = here.since.episode === undefined ? "this season" : here.since.text;
    const bed = theBed(here.bed);
    const tail = wasBare(here)
      ? ` ${capital(bed)} ${bedVerb(here.bed, "was", "were")} bare when viewers last saw ${bedVerb(here.bed, "it", "them")}.`
      : ` ${plants === 1 ? "It is" : "They are"} ${inBed(here.bed)}.`;
    const text = `${capital(sayNumber(plants))} ${name} went in ${when}.${tail}`;
    const grounds: Ground[] = batch.lots.flatMap((lot) => [...lot.grounds, { private: lot.planting.private }]);
    return [{ sentence: say(text, grounds), size: Math.min(plants, 30) + (wasBare(here) ? 20 : 0) }];
  });
}

/** "14.2 kg of tomatoes came out of the tomato pots since the last tour." */
function pickedMost(here: BedOnTheDay, but: string | undefined): Sized[] {
  const lots: readonly Lot[] = [...here.growing, ...here.ended];
  return byVariety(lots)
    .filter((batch) => batch.lots.every((lot) => lot.planting.id !== but))
    .flatMap((batch) => {
      // What was picked before this season is history, even where no tour came by for a year.
      const after = here.newsAfter < here.season ? here.seasonEve : here.newsAfter;
      const picked = pickedSince(batch, here, after);
      const sum = sayPickedOf(picked.value, plantName(batch.lots[0]), here.index.garden.settings);
      if (sum === undefined) return [];
      const when = here.since.episode === undefined || after > here.newsAfter ? "this season" : here.since.text;
      const text = `${capital(sum)}${sum.endsWith("in all") ? "," : ""} came out of ${theBed(here.bed)} ${when}.`;
      return [{ sentence: say(text, [picked]), size: 3 * pickedSize(picked.value) }];
    });
}

/** "The onion bed is empty. On 13 June it was full of garlic." */
function emptied(here: BedOnTheDay): Sized[] {
  if (here.growing.length > 0 || here.ended.length === 0 || here.past.length === 0) return [];
  const [batch] = batchesOf(here.ended);
  if (batch === undefined || here.since.episode === undefined) return [];
  const others = here.ended.length - 1;
  const held =
    others === 0 ? plantName(batch.lots[0]) : `${plantName(batch.lots[0])} and ${sayPlural(others, "other", "others")}`;
  const bed = theBed(here.bed);
  const text = `${capital(bed)} ${bedVerb(here.bed, "is", "are")} empty now; viewers last saw ${held} in ${bedVerb(here.bed, "it", "them")}.`;
  const grounds = here.ended.flatMap((lot) => lot.changes.slice(-1));
  return [{ sentence: say(text, grounds), size: 25 }];
}
