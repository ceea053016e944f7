/** What plantings gave: so far this season, since viewers last saw the bed, and against last year by the same day. */

import { addDays, daysBetween, lastSeasonStart, yearBefore } from "../calendar.ts";
import { type Fact, pickedOf } from "../facts/index.ts";
import {
  capital,
  inBed,
  onDay,
  oneOf,
  type Sentence,
  say,
  sayPicked,
  sayPickings,
  sinceDay,
  thePlants,
} from "../language/index.ts";
import type { Day, Event, Picked } from "../model.ts";
import { comparable, pickedInAll } from "../picked.ts";
import { changes, habitOf, isBeingPicked, takingVerb } from "../timeline/index.ts";
import type { Batch } from "./batches.ts";
import { type BedOnTheDay, type Lot, voiceOf } from "./bed-on-the-day.ts";
import type { Fact as ToldFact } from "./brief.ts";
import type { Candidate } from "./candidates/candidate.ts";
import { oncePerPlants } from "./once.ts";
import { factOf } from "./subjects.ts";

export function pickedSince(batch: Batch, here: BedOnTheDay, after: Day) {
  const plantings = batch.lots.map(({ planting }) => planting);
  return pickedOf(here.index.garden, plantings, { after, to: here.day });
}

/** "So far the Black Beauty aubergines have given 4.2 kg in five pickings since 3 July; by this day last year it was 3.1 kg." */
export const pickedFact = oncePerPlants(findPickedFact);

function findPickedFact(batch: Batch, here: BedOnTheDay): ToldFact | undefined {
  const season = pickedSince(batch, here, here.seasonEve);
  const picked = season.value;
  const { first } = picked;
  if (first === undefined) return undefined;
  const voice = voiceOf(here);
  const sum = sayPicked(picked, voice.settings);
  const last = lastYearByNow(batch, here);
  const against = last === undefined || !comparable(picked, last.value) ? undefined : last;
  const compared = against === undefined ? "" : `; ${against.text}`;
  return factOf(
    "picked",
    batch,
    ({ who, Who, has }) => {
      if (sum === undefined)
        return picked.times === 1
          ? `${Who} ${has} been ${pickVerbOn(batch, first)} once, ${onDay(first, voice)}, not weighed.`
          : `${Who} ${has} been ${pickVerbOn(batch, first)} ${sinceDay(first, voice)}, not weighed.`;
      if (picked.times === 1)
        return `${Who} ${has} given ${sum} so far, ${pickVerbOn(batch, first)} ${onDay(first, voice)}${compared}.`;
      const often = `${sayPickings(picked.times)} ${sinceDay(first, voice)}`;
      return oneOf(`${batch.id} picked`, [
        `So far ${who} ${has} given ${sum} ${often}${compared}.`,
        `${Who} ${has} given ${sum} so far, ${often}${compared}.`,
      ]);
    },
    [season, against],
  );
}

/** Verbs of picking whose written form is also what was done to the crop: "the first carrots were dug". */
const pickVerbs: ReadonlySet<string> = new Set(["harvested", "cut", "dug", "lifted"]);

/** The word the person used for having it, "cut" of flowers, "dug" of carrots; else the crop's own, since nobody picks potatoes. */
export function pickVerb(event: Pick<Event, "verb"> | undefined, { crop }: Pick<Lot, "crop">): string {
  return event !== undefined && pickVerbs.has(event.verb) ? event.verb : takingVerb(crop);
}

function pickVerbOn(batch: Batch, day: Day): string {
  const event = batch.lots.flatMap(({ events }) => events).find((each) => each.kind === "picked" && each.day === day);
  return pickVerb(event, batch.lots[0]);
}

export interface LastYear extends Fact<Picked> {
  /** "by this day last year it was 3.1 kg" */
  readonly text: string;
}

/** What the variety had given by the same day of last year: in this bed, or in the one other bed it grew in. */
export function lastYearByNow(batch: Batch, here: BedOnTheDay): LastYear | undefined {
  const variety = batch.lots[0].planting.variety;
  if (variety === undefined) return undefined;
  const { settings } = here.index.garden;
  const day = yearBefore(here.day);
  const from = addDays(lastSeasonStart(here.day, settings.seasonStarts), -1);
  const before = here.index.everyLotOf(variety).filter(({ planting }) => planting.since <= day);
  const found = [...Map.groupBy(before, ({ planting }) => planting.bed)].flatMap(([bed, lots]) => {
    const plantings = lots.map(({ planting }) => planting);
    const fact = pickedOf(here.index.garden, plantings, { after: from, to: day });
    return fact.value.times === 0 ? [] : [{ bed, fact }];
  });
  const own = found.find(({ bed }) => bed === here.bed.id) ?? (found.length === 1 ? found[0] : undefined);
  const sum = own === undefined ? undefined : sayPicked(own.fact.value, settings);
  if (own === undefined || sum === undefined) return undefined;
  const bed = here.index.garden.beds.get(own.bed);
  const where = own.bed === here.bed.id || bed === undefined ? "" : ` ${inBed(bed)}`;
  return { ...own.fact, text: `by this day last year it was ${sum}${where}` };
}

/** "2.1 kg of tomatoes came from this bed this season without a word on which." One for each crop picked that way. */
export function pickedUnassigned(here: BedOnTheDay): readonly ToldFact[] {
  const { garden } = here.index;
  const season = changes(garden, here.bed.id, here.seasonEve, here.day);
  const whole = season.filter((change) => change.effect.unassigned !== undefined);
  const byCrop = Map.groupBy(whole, (change) => change.effect.unassigned?.crop ?? "");
  return [...byCrop].flatMap(([id, all]) => {
    const crop = garden.crops.get(id);
    const sum = sayPicked(pickedInAll(all), garden.settings);
    if (crop === undefined || sum === undefined) return [];
    const text = `${capital(sum)} of ${crop.plural} came from this bed this season without a word on which.`;
    return [{ ...say(text, all), kind: "picked", plantings: [] }];
  });
}

/** "The Black Beauty aubergines gave 4.2 kg since the last tour, 6.1 kg so far this season." */
export function pickedSinceSentence(batch: Batch, here: BedOnTheDay): Sentence | undefined {
  const { settings } = here.index.garden;
  const since = pickedSince(batch, here, here.newsAfter);
  const season = pickedSince(batch, here, here.seasonEve).value;
  const sum = sayPicked(since.value, settings);
  if (sum === undefined) return undefined;
  const all = sayPicked(season, settings);
  const total = season.times === since.value.times || all === undefined ? "" : `, ${all} so far this season`;
  const who = thePlants(batch.lots[0], batch.plants);
  const when = here.since.episode === undefined ? "this season" : here.since.text;
  return say(
    oneOf(`${batch.id} since`, [
      `${capital(who)} gave ${sum} ${when}${total}.`,
      `${capital(sum)} from ${who} ${when}${total}.`,
    ]),
    [since],
  );
}

/** Days after which nobody knows whether anything is left of what the notes only tell was lifted. */
const longAgo = 45;

export function isTakenLongAgo(lot: Lot, { day }: BedOnTheDay): boolean {
  const last = lot.events.at(-1);
  const whole = ["lifted", "dug", "pulled"].includes(pickVerb(last, lot));
  return lot.planting.implied && whole && last?.kind === "picked" && daysBetween(last.day, day) > longAgo;
}

/**
 * Picked some time ago, and nothing says that it still bears: of July's currants there are none to hold up in September. Roots, heads
 * and what stands the winter wait for whoever takes them.
 */
export function isOverAlready({ kind, lots }: Pick<Candidate, "kind" | "lots">, { day }: BedOnTheDay): boolean {
  if (kind !== "picking" && kind !== "first picking") return false;
  return lots.every(({ planting, crop }) => {
    const { takenWhole, winter } = habitOf(crop);
    return takenWhole === undefined && winter !== "stands" && !isBeingPicked(planting, day);
  });
}
