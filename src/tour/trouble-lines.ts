/** Troubles: what is wrong, since when, what was tried; and which ended. */
import {
  capital,
  dayOnly,
  onDay,
  oneOf,
  plantName,
  type Sentence,
  say,
  sayList,
  sayTried,
  sinceDay,
} from "../language/index.ts";
import type { Day, Trouble } from "../model.ts";
import { type BedOnTheDay, type Lot, voiceOf } from "./bed-on-the-day.ts";
import type { TroubleLine } from "./brief.ts";
import { oncePerStop } from "./once.ts";

/** Open troubles of a bed, the newest first. */
export const openTroubles = oncePerStop(findOpen);

function findOpen(here: BedOnTheDay): readonly TroubleLine[] {
  return here.now.troubles
    .filter((trouble) => trouble.ended === undefined && stillThere(trouble, here))
    .toSorted((a, b) => (a.opened < b.opened ? 1 : -1))
    .map((trouble) => ({
      ...troubleSentence(trouble, here),
      what: `${trouble.cause}${onPlants(trouble, here)}`,
      cause: trouble.cause,
      opened: trouble.opened,
      tried: sayTried(trouble.tried, here.index.garden),
      plantings: trouble.plantings,
    }));
}

/** A trouble nobody noted as over ends with its plants, or, of a whole bed, with its season. */
function stillThere(trouble: Trouble, here: BedOnTheDay): boolean {
  if (trouble.plantings.length === 0) return trouble.opened >= here.season;
  return here.growing.some((lot) => trouble.plantings.includes(lot.planting.id));
}

/** Troubles that ended since viewers last saw the bed. */
export function endedTroubles(
  here: BedOnTheDay,
): readonly (Sentence & { readonly what: string; readonly cause: string; readonly plantings: readonly string[] })[] {
  return here.now.troubles
    .filter(({ ended }) => ended !== undefined && ended > here.newsAfter)
    .map((trouble) => ({
      ...endedSentence(trouble, here),
      what: `${trouble.cause}${onPlants(trouble, here)}`,
      cause: trouble.cause,
      plantings: trouble.plantings,
    }));
}

function troubleSentence(trouble: Trouble, here: BedOnTheDay): Sentence {
  const what = `${capital(trouble.cause)}${onPlants(trouble, here)}`;
  const since = sinceDay(trouble.opened, voiceOf(here));
  const done = triedOf(trouble, here);
  const tried = done === "" ? "" : ` Tried so far: ${done}.`;
  const text = oneOf(trouble.id, [
    `${what}, ${since}.`,
    `${what}, first seen ${onDay(trouble.opened, voiceOf(here))}.`,
  ]);
  return say(`${text}${tried}`, [trouble]);
}

function endedSentence(trouble: Trouble, here: BedOnTheDay): Sentence {
  const voice = voiceOf(here);
  const what = `${trouble.cause}${onPlants(trouble, here)}`;
  const done = triedOf(trouble, here);
  const tried = done === "" ? "" : ` What was done: ${done}.`;
  const ended = onDay(trouble.ended ?? here.day, voice);
  const text = oneOf(trouble.id, [
    `The ${what} that began on ${dayOnly(trouble.opened, voice)} was over ${ended}.`,
    `${capital(what)}, first seen on ${dayOnly(trouble.opened, voice)}: over ${ended}.`,
  ]);
  return say(`${text}${tried}`, [trouble]);
}

/** " on the broad beans"; nothing when it troubles the bed as a whole or the words say it already. */
function onPlants(trouble: Trouble, here: BedOnTheDay): string {
  const { varieties, crops } = here.index.garden;
  const names = trouble.varieties.map((id) => {
    const variety = varieties.get(id);
    return plantName({ variety, crop: variety?.crop === undefined ? undefined : crops.get(variety.crop) });
  });
  const distinct = [...new Set(names)].filter((name) => !trouble.cause.toLowerCase().includes(name.toLowerCase()));
  return distinct.length === 0 ? "" : ` on the ${sayList(distinct)}`;
}

function triedOf({ tried }: Trouble, here: BedOnTheDay): string {
  return sayList(sayTried(tried, here.index.garden).map(bare));
}

function bare(said: string): string {
  return said.trim().replace(/[.;,\s]+$/, "");
}

/** Troubles of some plants that opened after a day, as one sentence; undefined when there were none on record. */
export function troublesSince(here: BedOnTheDay, lots: readonly Lot[], after: Day): Sentence | undefined {
  const plantings = new Set(lots.map((lot) => lot.planting.id));
  const varieties = new Set(lots.map((lot) => lot.planting.variety));
  const found = here.now.troubles.filter(
    (trouble) =>
      trouble.opened > after &&
      (trouble.plantings.some((id) => plantings.has(id)) || trouble.varieties.some((id) => varieties.has(id))),
  );
  if (found.length === 0) return undefined;
  const voice = voiceOf(here);
  const parts = found.map((trouble) => {
    const noted = here.index.event(trouble.id)?.text.replace(/^trouble:?\s*/i, "") ?? trouble.cause;
    const ended = trouble.ended === undefined ? "" : `, over ${onDay(trouble.ended, voice)}`;
    return `“${bare(noted)}”, ${onDay(trouble.opened, voice)}${ended}`;
  });
  return say(`In your notes since then: ${parts.join("; ")}.`, found);
}
