/** Facts of a bed itself: where things stand in it, its size, what it is built of and filled with. */
import { bedVerb, capital, say, sayList, saySide, theBed, whenDone, withPreposition } from "../language/index.ts";
import type { DatedWork } from "../model.ts";
import { type Batch, batchOf, byVariety, named, theBatch, turnOf } from "./batches.ts";
import { type BedOnTheDay, type Lot, voiceOf } from "./bed-on-the-day.ts";
import type { Fact } from "./brief.ts";

import { whereIn } from "./place-in-bed.ts";
import { factOf } from "./subjects.ts";

/** Where the lots stand: row by row where rows are known, else variety by variety. */
export function placeFacts(here: BedOnTheDay): readonly Fact[] {
  const numbered = here.growing.flatMap((lot) => {
    const { spot } = lot.planting;
    const row = /^(?:rows?|pots?|tubs?|blocks?)\s+(\d+)/i.exec(spot ?? "")?.[1];
    return spot === undefined || row === undefined ? [] : [{ lot, spot, row: Number(row) }];
  });
  const inRows = numbered.length >= 3 ? numbered.toSorted((a, b) => a.row - b.row) : [];
  const others = here.growing.filter((lot) => !inRows.some((each) => each.lot === lot));
  return [...rowByRow(inRows), ...byVariety(others).flatMap((batch) => placeFact(batch, here) ?? [])];
}

function rowByRow(inRows: readonly { readonly lot: Lot; readonly spot: string }[]): readonly Fact[] {
  if (inRows.length === 0) return [];
  const parts = [...Map.groupBy(inRows, ({ spot }) => spot)].map(([spot, lots]) => {
    const crops = [...Map.groupBy(lots, ({ lot }) => lot.crop?.id ?? lot.planting.id).values()];
    const names = crops.flatMap(([first, ...more]) =>
      first === undefined ? [] : [rowName(batchOf([first.lot, ...more.map(({ lot }) => lot)]))],
    );
    return `${sayList(names)} ${withPreposition(spot)}`;
  });
  const grounds = inRows.flatMap(({ lot }) => lot.events.filter((event) => event.spot !== undefined).slice(-1));
  const plantings = inRows.map(({ lot }) => lot.planting.id);
  // A spot such as "row 3, the far half" brings its own comma.
  const plain = parts.every((part) => !/,| and /.test(part));
  const list = plain ? sayList(parts) : parts.join(parts.some((part) => part.includes(",")) ? "; " : ", ");
  const word = /^[a-z]+?(?=s?\b)/i.exec(inRows[0]?.spot ?? "")?.[0].toLowerCase() ?? "row";
  return [{ ...say(`${capital(word)} by ${word}: ${list}.`, grounds), kind: "place", plantings }];
}

/** "Boltardy beetroot", "the second sowing of Early Nantes carrots". */
function rowName(batch: Batch): string {
  return turnOf(batch) === undefined ? named(batch) : theBatch(batch);
}

function placeFact(batch: Batch, here: BedOnTheDay): Fact | undefined {
  const [first, ...more] = batch.lots.filter((lot) => whereIn(lot, here.growing) !== undefined);
  if (first === undefined) return undefined;
  const told = batchOf([first, ...more]);
  const places = [...new Set(told.lots.map((lot) => whereIn(lot, here.growing) ?? ""))];
  const spoke = told.lots.flatMap((lot) =>
    lot.events.filter((event) => event.spot !== undefined || event.gear !== undefined).slice(-1),
  );
  const grounds = spoke.length > 0 ? spoke : told.lots.flatMap((lot) => lot.grounds);
  return factOf("place", told, ({ Who, is }) => `${Who} ${is} ${sayList(places)}.`, grounds);
}

/** Size, filling and building, as the bed's record has them. */
export function bedFacts(here: BedOnTheDay): readonly Fact[] {
  const { bed } = here;
  const { units } = voiceOf(here).settings;
  const facts: Fact[] = [];
  const fact = (text: string) => facts.push({ ...say(text, [bed]), kind: "bed", plantings: [] });
  if (bed.size !== undefined) {
    const [length, width] = [bed.size.length, bed.size.width].map((metres) => saySide(metres, units));
    fact(`${capital(theBed(bed))} ${bedVerb(bed, "is", "are")} ${length} by ${width}.`);
  }
  const worked = (title: string, works: readonly DatedWork[]) => {
    const said = worthTelling(works, here).map((work) => workWords(work, here));
    if (said.length > 0) fact(`${title}: ${said.join("; ")}.`);
  };
  worked("Filled with", here.now.filled);
  worked("Built", here.now.built);
  return facts;
}

/** Works of this season; of a bed that viewers never saw, the last two whenever they were. */
function worthTelling(works: readonly DatedWork[], here: BedOnTheDay): readonly DatedWork[] {
  if (here.since.episode === undefined) return works.slice(-2);
  return works.filter(
    ({ day }) => day !== undefined && day.length >= 7 && day >= here.season.slice(0, day.length) && day <= here.day,
  );
}

function workWords(work: DatedWork, here: BedOnTheDay): string {
  const when = whenDone(work.day, voiceOf(here));
  const what = work.what.trim().replace(/(?<![.;,\s])[.;,\s]+$/, "");
  return when === "" ? what : `${what}, ${when.replace(/^(?:on|in) /, "")}`;
}
