/** Facts of a bed itself: where things stand in it, its size, what it is built of and filled with. */
import type { DatedWork } from "../model.ts";
import { capital, sayLength, sayList } from "../timeline/index.ts";
import { batchOf, isOne, theBatch } from "./batches.ts";
import { bedVerb, theBed } from "./bed-names.ts";
import type { BedOnTheDay, Lot } from "./bed-on-the-day.ts";
import type { Fact } from "./brief.ts";
import { speechOf, whenDone } from "./days-said.ts";
import { whereIn } from "./place-in-bed.ts";
import { plantName } from "./plant-names.ts";
import { type Ground, say } from "./sentence.ts";

/** Where the lots stand: row by row where rows are known, else lot by lot. */
export function placeFacts(here: BedOnTheDay): readonly Fact[] {
  const numbered = here.growing.flatMap((lot) => {
    const spot = /^(rows?|pots?|tubs?|blocks?)\s+(\d+)/i.exec(lot.planting.spot ?? "");
    return spot === null ? [] : [{ lot, spot: lot.planting.spot ?? "", row: Number(spot[2]) }];
  });
  const inRows = numbered.length >= 3 ? numbered.toSorted((a, b) => a.row - b.row) : [];
  const others = here.growing.filter((lot) => !inRows.some((each) => each.lot === lot));
  const rows = rowByRow(inRows);
  const singles = others.flatMap((lot) => {
    const where = whereIn(lot, here.growing);
    if (where === undefined) return [];
    const batch = batchOf([lot]);
    const spoke = lot.events.filter((event) => event.spot !== undefined || event.gear !== undefined);
    const text = `${capital(theBatch(batch))} ${isOne(batch) ? "is" : "are"} ${where}.`;
    return [
      {
        ...say(text, spoke.length > 0 ? spoke.slice(-1) : lot.grounds),
        kind: "place" as const,
        plantings: [lot.planting.id],
      },
    ];
  });
  return [...(rows === undefined ? [] : [rows]), ...singles];
}

function rowByRow(inRows: readonly { readonly lot: Lot; readonly spot: string }[]): Fact | undefined {
  if (inRows.length === 0) return undefined;
  const bySpot = [...Map.groupBy(inRows, ({ spot }) => spot)];
  const parts = bySpot.map(
    ([spot, lots]) => `${spot} ${sayList([...new Set(lots.map(({ lot }) => plantName(lot, lot.plants)))])}`,
  );
  const grounds: Ground[] = inRows.flatMap(({ lot }) =>
    lot.events.filter((event) => event.spot !== undefined).slice(-1),
  );
  return {
    ...say(`In order: ${parts.join("; ")}.`, grounds),
    kind: "place",
    plantings: inRows.map(({ lot }) => lot.planting.id),
  };
}

/** Size, building and filling: "The long bed is 8 m by 1.2 m." "Into it went …". */
export function bedFacts(here: BedOnTheDay): readonly Fact[] {
  const { bed } = here;
  const speech = speechOf(here);
  const { units } = speech.settings;
  const facts: Fact[] = [];
  const fact = (text: string) => facts.push({ ...say(text, [bed]), kind: "bed", plantings: [] });
  if (bed.size !== undefined) {
    const { length, width } = bed.size;
    fact(
      `${capital(theBed(bed))} ${bedVerb(bed, "is", "are")} ${sayLength(length * 100, units)} by ${sayLength(width * 100, units)}.`,
    );
  }
  const filled = recent(here.now.filled, here).map((work) => workWords(work, here));
  if (filled.length > 0) fact(`Into ${bedVerb(bed, "it", "them")} went ${sayList(filled)}.`);
  const built = recent(here.now.built, here).map((work) => workWords(work, here));
  if (built.length > 0) fact(`How ${bedVerb(bed, "it is", "they are")} built: ${built.join("; ")}.`);
  return facts;
}

/** Works of this season, and those without a day only for a bed that viewers never saw. */
function recent(works: readonly DatedWork[], here: BedOnTheDay): readonly DatedWork[] {
  if (here.since.episode === undefined) return works.slice(-2);
  return works.filter(
    ({ day }) => day !== undefined && day.length >= 7 && day >= here.season.slice(0, day.length) && day <= here.day,
  );
}

function workWords(work: DatedWork, here: BedOnTheDay): string {
  const when = whenDone(work.day, speechOf(here));
  const what = work.what.trim().replace(/[.;,\s]+$/, "");
  return when === "" ? what : what.includes(",") ? `${what}, ${when}` : `${what} ${when}`;
}
