/** What is new in a bed, what was lost, what ended: sentences about plantings that came and went since viewers last saw it. */
import {
  capital,
  cropName,
  type Ground,
  onDay,
  oneOf,
  plantName,
  type Sentence,
  say,
  sayList,
  sayNumber,
  sayPicked,
  sayPickings,
  theBed,
} from "../language/index.ts";
import type { Change } from "../model.ts";
import { agree, type Batch, batchOf, byVariety, groundsOf, numbered, numberedCultivars, theBatch } from "./batches.ts";
import { type BedOnTheDay, type Lot, voiceOf } from "./bed-on-the-day.ts";
import { oncePerStop } from "./once.ts";
import { pickedSince } from "./picked-sentences.ts";
import { whereIn } from "./place-in-bed.ts";
import { beginning } from "./planting-sentences.ts";
import { mayHaveBeenSeen } from "./since.ts";

/** "The squash is all new: 6 Crown Prince and 5 Uchiki Kuri (say oo-CHEE-kee KOO-ree), sown indoors on 21 April, planted out on 24 May, so 26 days in the ground." */
export function newSentence(batch: Batch, here: BedOnTheDay): Sentence {
  const begun = beginning(batch, here);
  const story = begun === undefined ? "" : `, ${begun}`;
  const where = batch.lots.length === 1 ? whereIn(batch.lots[0], here.growing) : undefined;
  const several = batch.plants === undefined ? agree(batch, "one", "many") === "many" : batch.plants !== 1;
  const place = where === undefined ? "" : ` ${several ? "They are" : "It is"} ${where}.`;
  const text = `${openWith(batch, here, story)}.${place}`;
  return say(text, groundsOf(batch));
}

function openWith(batch: Batch, here: BedOnTheDay, story: string): string {
  const { crop, lots } = batch;
  const list = numberedCultivars(batch, (lot) => sayAsCue(lot));
  const since = here.since.episode === undefined ? "this season" : here.since.text;
  const unseen = mayHaveBeenSeen(here.index.garden, here.since, here.day) ? undefined : "Not seen before";
  if (foundThere(lots))
    return `${unseen ?? "Standing here"}: ${list}${lots.length > 1 && crop !== undefined ? ` ${cropName(crop, 2)}` : ""}`;
  if (crop !== undefined && lots.length > 1 && allOfItsCrop(batch, here)) {
    return `The ${cropName(crop, 2)} ${agree(batch, "is", "are")} all new: ${list}${story}`;
  }
  if (lots.length > 1) return `New ${since}: ${crop === undefined ? list : `${list} ${cropName(crop, 2)}`}${story}`;
  const name = `${numbered(batch)}${sayAsCue(lots[0])}`;
  return oneOf(batch.id, [
    `New ${since}: ${name}${story}`,
    `${capital(name)}, new ${since}${story}`,
    ...(unseen === undefined ? [] : [`${unseen}: ${name}${story}`]),
  ]);
}

/** Only found in the notes as being there: nobody knows that these are new, and rhubarb may be older than the notes. */
export function foundThere(lots: readonly Lot[]): boolean {
  return lots.every(({ planting }) => planting.implied);
}

/** " (say oo-CHEE-kee KOO-ree)": a cue for the person speaking, at the first time of saying a name. */
function sayAsCue({ variety }: Lot): string {
  return variety?.sayAs === undefined ? "" : ` (say ${variety.sayAs})`;
}

function allOfItsCrop(batch: Batch, here: BedOnTheDay): boolean {
  return here.growing.filter((lot) => lot.crop?.id === batch.crop?.id).length === batch.lots.length;
}

/** Plants lost since viewers last saw the bed, of varieties that still live: "Three of the leeks were lost to leek moth on 2 June; 21 are left." */
export const lostSentences = oncePerStop(findLosses);

function findLosses(here: BedOnTheDay): readonly { readonly sentence: Sentence; readonly batch: Batch }[] {
  return byVariety(here.growing).flatMap((batch) => {
    const losses = batch.lots.flatMap((lot) =>
      lot.changes.filter(
        ({ kind, day, planting }) => kind === "lost" && day > here.newsAfter && planting === lot.planting.id,
      ),
    );
    return losses.length === 0 ? [] : [{ sentence: lostSentence(batch, losses, here), batch }];
  });
}

function lostSentence(batch: Batch, losses: readonly Change[], here: BedOnTheDay): Sentence {
  const events = losses.map((change) => (change.event === undefined ? undefined : here.index.event(change.event)));
  const counted = events.every((event) => event?.count !== undefined);
  const sum = events.reduce((all, event) => all + (event?.count?.value ?? 0), 0);
  const number = counted ? sayNumber(sum) : "some";
  const causes = [...new Set(losses.map(({ cause }) => cause).filter((cause) => cause !== undefined))];
  const to = causes.length === 0 ? "" : ` to ${sayList(causes)}`;
  const last = losses.at(-1);
  const when = last === undefined || losses.length > 1 ? "" : ` ${onDay(last.day, voiceOf(here))}`;
  const { plants } = batch;
  const left =
    plants === undefined
      ? ""
      : `; ${batch.about ? "about " : ""}${sayNumber(plants)} ${plants === 1 ? "is" : "are"} left`;
  const were = counted && sum === 1 ? "was" : "were";
  return say(`${capital(number)} of the ${plantName(batch.lots[0])} ${were} lost${to}${when}${left}.`, losses);
}

/** What ended since viewers last saw the bed, each with its sentence. */
export const endedSentences = oncePerStop((here): readonly { readonly sentence: Sentence; readonly lot: Lot }[] =>
  here.ended.map((lot) => ({ lot, sentence: endedSentence(lot, here) })),
);

/** "The broad beans are finished: cleared on 10 July after 5.4 kg in seven pickings." */
function endedSentence(lot: Lot, here: BedOnTheDay): Sentence {
  const { planting } = lot;
  const voice = voiceOf(here);
  const batch = batchOf([lot]);
  const last = lot.changes.findLast((change) => change.day === planting.ended);
  const picked = pickedSince(batch, here, "").value;
  const sum = sayPicked(picked, voice.settings);
  const gave = sum === undefined ? "" : ` after ${sum}${picked.times === 1 ? "" : ` ${sayPickings(picked.times)}`}`;
  const when = onDay(planting.ended ?? here.day, voice);
  const who = capital(theBatch(batch));
  const [are, were] = [agree(batch, "is", "are"), agree(batch, "was", "were")];
  const grounds: Ground[] = [...(last === undefined ? lot.events.slice(-1) : [last])];
  if (planting.stage === "lost") {
    const to = last?.cause === undefined ? "" : ` to ${last.cause}`;
    return say(`${who} ${were} all lost${to} ${when}.`, grounds);
  }
  const moved = lot.events.findLast((event) => event.kind === "moved" && event.bed === here.bed.id);
  if (moved !== undefined && moved.day === planting.ended) {
    const to = moved.toBed === undefined ? undefined : here.index.garden.beds.get(moved.toBed);
    return say(`${who} moved on${to === undefined ? "" : ` to ${theBed(to)}`} ${when}.`, [moved]);
  }
  return say(
    oneOf(planting.id, [`${who} ${are} finished: out ${when}${gave}.`, `${who} ${were} done ${when}${gave}.`]),
    grounds,
  );
}
