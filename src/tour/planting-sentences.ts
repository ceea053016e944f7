/** How plantings are told: how they began, how old they are, how they stand today. */

import { ageOf, lifeOf } from "../facts/index.ts";
import {
  capital,
  inTurn,
  isGround,
  onDay,
  roughly,
  type Sentence,
  say,
  sayAge,
  sayLength,
  sayOrdinal,
  sinceDay,
  theBed,
  type Voice,
} from "../language/index.ts";
import type { Day, Planting } from "../model.ts";
import { comesAsPlants, isBeingPicked } from "../timeline/index.ts";
import { agree, type Batch, batchesOf, batchOf, groundsOf, numbered } from "./batches.ts";
import { type BedOnTheDay, type Lot, voiceOf } from "./bed-on-the-day.ts";
import type { Fact } from "./brief.ts";
import { oncePerPlants } from "./once.ts";
import { factOf, type Subject } from "./subjects.ts";

/** Days after which a planting is told by its month and its year of life rather than by its age. */
const longStanding = 330;

/**
 * The beginning as a phrase after a name: "sown indoors on 21 April, planted out on 24 May, so 26 days in the ground".
 * Undefined when no line tells how it began.
 */
export function beginning(batch: Batch, here: BedOnTheDay): string | undefined {
  const voice = voiceOf(here);
  const { planting } = batch.lots[0];
  const { sown, planted } = planting;
  if (planting.movedFrom !== undefined) {
    return `moved here from ${bedLeft(planting, here)} ${onDay(planting.since, voice)}`;
  }
  if (planting.implied) return undefined;
  if (planting.selfSown === true) return `self-sown, up ${onDay(planting.since, voice)}`;
  if (planted === undefined) return sown === undefined ? undefined : sownHere(batch, sown, here);
  const { days: age, year } = ageOf(here.index.garden, planting, here.day).value;
  const its = agree(batch, "its", "their");
  if (age > longStanding) return `planted ${roughly(planted, voice)}, so in ${its} ${sayOrdinal(year)} year`;
  const since = age === 0 ? "" : isGround(here.bed) ? `, so ${sayAge(age)} in the ground` : `, ${sayAge(age)} ago`;
  const raised = raisedHere(planting, here)
    ? `sown indoors ${roughly(sown ?? planted, voice)}, planted out`
    : cameAs(batch.lots[0]);
  return `${raised} ${onDay(planted, voice)}${since}`;
}

function sownHere(batch: Batch, sown: Day, here: BedOnTheDay): string {
  const voice = voiceOf(here);
  const up = firstDayOf(batch.lots[0], "up");
  const { days: age } = ageOf(here.index.garden, batch.lots[0].planting, here.day).value;
  if (age === 0) return "sown here today";
  const upSaid = up === undefined ? "" : `, up ${onDay(up, voice)}`;
  return `sown here ${roughly(sown, voice)}${upSaid}, so ${sayAge(age)} from seed`;
}

/** "The Musselburgh leeks were sown indoors on 3 March and planted out on 24 May, so they have had eight weeks in the ground." */
export function lifeFact(batch: Batch, here: BedOnTheDay): Fact | undefined {
  const { planting } = batch.lots[0];
  const begun = beginning(batch, here);
  if (begun === undefined) return undefined;
  const { planted, movedFrom } = planting;
  if (movedFrom === undefined && planting.selfSown === true)
    return factOf("life", batch, ({ Who, was }) => `${Who} ${was} ${begun.replace(", up ", " and came up ")}.`);
  if (movedFrom !== undefined) return factOf("life", batch, ({ Who, was }) => `${Who} ${was} ${begun}.`);
  return factOf("life", batch, (subject) =>
    planted === undefined ? sownHereSentence(batch, here, subject) : plantedSentence(batch, planted, here, subject),
  );
}

function plantedSentence(batch: Batch, planted: Day, here: BedOnTheDay, { Who, was, has, it, its }: Subject): string {
  const voice = voiceOf(here);
  const { planting } = batch.lots[0];
  const { days: age, year } = ageOf(here.index.garden, planting, here.day).value;
  if (age > longStanding) {
    const month = roughly(planted, voice);
    return inTurn(here.bed.id, turnOf(batch, here), [
      `${Who} ${was} planted ${month}, so this is ${its} ${sayOrdinal(year)} year here.`,
      `${Who} ${has} stood here since ${month.replace(/^(?:in|on) /, "")}; this is the ${sayOrdinal(year)} year.`,
    ]);
  }
  const raised = raisedHere(planting, here)
    ? `sown indoors ${roughly(planting.sown ?? planted, voice)} and planted out`
    : cameAs(batch.lots[0]);
  if (age === 0) return `${Who} ${was} ${raised} today.`;
  const held = isGround(here.bed) ? `${it} ${has} had ${sayAge(age)} in the ground` : `that is ${sayAge(age)} ago`;
  return inTurn(here.bed.id, turnOf(batch, here), [
    isGround(here.bed)
      ? `${Who} ${was} ${raised} ${onDay(planted, voice)}, so ${held}.`
      : `${Who} ${was} ${raised} ${onDay(planted, voice)}, ${sayAge(age)} ago.`,
    `${Who} ${was} ${raised} ${onDay(planted, voice)}; ${held}.`,
  ]);
}

function sownHereSentence(batch: Batch, here: BedOnTheDay, { Who, was, who, is }: Subject): string {
  const voice = voiceOf(here);
  const [lot] = batch.lots;
  const sown = lot.planting.sown ?? lot.planting.since;
  const up = firstDayOf(lot, "up");
  const { days: age } = ageOf(here.index.garden, lot.planting, here.day).value;
  if (age === 0) return `${Who} ${was} sown here today.`;
  const upSaid = (joint: string) => (up === undefined ? "" : `${joint} up ${onDay(up, voice)}`);
  return inTurn(here.bed.id, turnOf(batch, here), [
    `${Who} ${was} sown here ${roughly(sown, voice)}${upSaid(" and came")}: ${sayAge(age)} from seed to today.`,
    `Sown straight into the bed ${roughly(sown, voice)}${upSaid(",")}, ${who} ${is} ${sayAge(age)} old.`,
  ]);
}

/** Place of a batch among those told in the bed. */
function turnOf(batch: Batch, here: BedOnTheDay): number {
  return batchesOf(here.growing).findIndex((other) => other.id === batch.id);
}

function raisedHere(planting: Planting, { index, day }: BedOnTheDay): boolean {
  return lifeOf(index.garden, planting, day).value.raised !== undefined;
}

function cameAs({ planting: { plantsFrom }, crop }: Lot): string {
  if (plantsFrom !== undefined && !comesAsPlants(crop?.id)) return `${plantsFrom} and planted`;
  if (plantsFrom === "bought") return "bought as plants and set out";
  return plantsFrom === "given" ? "given as plants and set out" : "planted";
}

function bedLeft(planting: Planting, here: BedOnTheDay): string {
  const bed = here.index.garden.beds.get(planting.movedFrom?.split("/")[0] ?? "");
  return bed === undefined ? "another bed" : theBed(bed);
}

/** First day on which an event of a kind spoke of a lot, from a day on. */
export function firstDayOf(
  lot: Pick<Lot, "events">,
  kind: "up" | "flowered" | "fruited" | "picked",
  from = "",
): Day | undefined {
  return lot.events.find((event) => event.kind === kind && event.day >= from)?.day;
}

/** How a batch stands today: "21 Musselburgh leeks stand here, 42 cm tall on 10 July." */
export function standsNow(batch: Batch, here: BedOnTheDay): Sentence {
  const voice = voiceOf(here);
  const { planting } = batch.lots[0];
  const one = batch.plants === 1 || (batch.plants === undefined && agree(batch, "one", "many") === "one");
  const who = capital(numbered(batch));
  const state = [heightNow(batch, voice), stageNow(batch, voice)].filter((part) => part !== undefined);
  const text =
    planting.stage === "sown"
      ? batch.lots.some(isTroubledAbove)
        ? `${who} ${one ? "was" : "were"} sown here.`
        : `${who} ${one ? "is" : "are"} sown and not up yet.`
      : `${who} ${one ? "stands" : "stand"} here${state.length === 0 ? "" : `, ${state.join(" and ")}`}.`;
  return say(text, [...batch.lots.flatMap((lot) => lot.events.slice(-1)), ...groundsOf(batch)]);
}

/** What only plants above the ground have: nobody wrote that they came up, and they have. */
function isTroubledAbove({ events }: Lot): boolean {
  return events.some(({ kind, cause = "" }) => kind === "trouble" && !robsSeed.test(cause));
}

/** What takes or spoils seed before it is up. */
const robsSeed =
  /\b(?:mouse|mice|voles?|rats?|birds?|pigeons?|crows?|rooks?|pheasants?|squirrels?|ants?|cats?|hens?|chickens?|dogs?|fox|badgers?|rain|flood\w*|cold|heat|drought|dry|crust\w*|rot\w*|damping|wireworms?|maggots?|germination)\b/i;

/** Said of one lot only: what was measured on one of several says nothing of the others. */
function heightNow({ lots }: Batch, voice: Voice): string | undefined {
  const { heightCm, heightOn } = lots[0].planting;
  if (heightCm === undefined || heightOn === undefined || lots.length > 1) return undefined;
  return `${sayLength(heightCm, voice.settings.units)} tall ${onDay(heightOn, voice)}`;
}

/** The stage as words after a name, when all lots share it; undefined when it is plain growing. */
function stageNow({ lots }: Batch, voice: Voice): string | undefined {
  const { stage, stageSince } = lots[0].planting;
  if (lots.some(({ planting }) => planting.stage !== stage || planting.stageSince !== stageSince)) return undefined;
  const words = { up: "up", flowering: "in flower", fruiting: "in fruit", picking: "being picked" } as const;
  const { last } = lots[0].planting.picked;
  if (stage === "picking" && last !== undefined && !lots.some(({ planting }) => isBeingPicked(planting, voice.day)))
    return `last picked ${onDay(last, voice)}`;
  return stage in words ? `${words[stage as keyof typeof words]} ${sinceDay(stageSince, voice)}` : undefined;
}

/** "The Musselburgh leeks were 42 cm tall on 10 July, up from 12 cm on 10 June." */
export const heightFact = oncePerPlants(findHeightFact);

function findHeightFact(lot: Lot, here: BedOnTheDay): Fact | undefined {
  const { heightCm, heightOn } = lot.planting;
  if (heightCm === undefined || heightOn === undefined || heightOn < here.season) return undefined;
  const voice = voiceOf(here);
  const { units } = voice.settings;
  const measured = lot.events.filter((event) => event.kind === "measured" && event.heightCm !== undefined);
  // From what viewers saw if it was measured by then, else from the first measure of the season.
  const seen = measured.findLast((event) => event.day <= here.newsAfter && event.day >= here.season);
  const earlier = seen ?? measured.find((event) => event.day >= here.season);
  const grew =
    earlier?.heightCm === undefined || earlier.day >= heightOn || earlier.heightCm >= heightCm
      ? ""
      : `, up from ${sayLength(earlier.heightCm, units)} ${onDay(earlier.day, voice)}`;
  return factOf(
    "height",
    batchOf([lot]),
    ({ Who, was }) => `${Who} ${was} ${sayLength(heightCm, units)} tall ${onDay(heightOn, voice)}${grew}.`,
    [...measured.slice(-1), ...(grew === "" ? [] : [earlier])],
  );
}
