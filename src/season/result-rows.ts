/** Results as the tables and the data of a recap show them. */

import { type Picking, type Season, sameDayIn } from "../garden/index.ts";
import type { Day, Picked } from "../model.ts";
import { onlyCounted, pickedInAll } from "../picked.ts";
import type { ResultRow, Results } from "./recap.ts";
import { recapWords } from "./recap-words/words.ts";
import { pickingsBetween, type Result, seasonResults } from "./results.ts";
import type { SeasonBook } from "./season-book.ts";

export function resultTables(book: SeasonBook, season: Season, from: Day, to: Day): Results {
  const results = seasonResults(book, season, to, from);
  const before = book.seasons.find(({ year }) => year === season.year - 1);
  const former =
    before === undefined ? [] : pickingsBetween(book, sameDayIn(before, from, season), sameDayIn(before, to, season));
  const rows = (all: readonly Result[], key: (picking: Picking) => string | undefined) => {
    const groups = Map.groupBy(former, (picking) => key(picking) ?? "");
    return all.map((one) => rowOf(book, one, groups.get(one.id)));
  };
  const siteId = ({ bed }: Picking) => book.garden.beds.get(bed)?.site;
  const { total, withoutAmount, unassigned } = results;
  const all: Result = {
    id: "",
    title: "All",
    said: "everything",
    beds: [],
    sum: total,
    withoutAmount,
    private: false,
    value: seasonValue(results.varieties),
  };
  return {
    varieties: rows(results.varieties, ({ variety }) => variety),
    crops: rows(results.crops, ({ crop }) => crop),
    beds: rows(results.beds, ({ bed }) => bed),
    sites: rows(results.sites, siteId),
    total: rowOf(book, all, former.length === 0 ? undefined : former),
    remarks: remarks(withoutAmount, unassigned, results.total),
  };
}

/** Values of one currency add up; of several, none is told. */
function seasonValue(varieties: readonly Result[]): Result["value"] {
  const values = varieties.flatMap(({ value }) => value ?? []);
  const [first] = values;
  if (first === undefined || values.some(({ sign }) => sign !== first.sign)) return undefined;
  return { ...first, amount: values.reduce((sum, { amount }) => sum + amount, 0) };
}

function remarks(withoutAmount: number, unassigned: number, total: Picked): readonly string[] {
  const { remarks: words } = recapWords;
  return [
    ...(withoutAmount === 0 ? [] : [words.noAmount(withoutAmount)]),
    ...(unassigned === 0 ? [] : [words.unassigned(unassigned)]),
    ...(total.grams > 0 && Object.keys(onlyCounted(total)).length > 0 ? [words.countedOnly] : []),
  ];
}

function rowOf(book: SeasonBook, result: Result, former: readonly Picking[] | undefined): ResultRow {
  const { sum, perPlant, firstAfter, value } = result;
  const { settings } = book.garden;
  const words = recapWords;
  const then = former === undefined ? undefined : pickedInAll(former);
  return {
    id: result.id,
    title: result.title,
    picked: words.harvest(sum, settings) ?? (sum.times === 0 ? words.nothingPicked : words.noAmount),
    grams: sum.grams,
    litres: sum.litres,
    pieces: sum.counts,
    pickings: sum.times,
    withoutAmount: result.withoutAmount,
    first: sum.first,
    last: sum.last,
    share: result.share,
    plants: perPlant?.plants,
    gramsPerPlant: perPlant?.grams,
    piecesPerPlant: perPlant?.pieces?.count,
    gramsPerPiece: result.perPiece?.grams,
    gramsPerRowMetre: result.gramsPerRowMetre,
    gramsPerSquareMetre: result.gramsPerSquareMetre,
    daysToFirst: firstAfter?.days,
    daysPromised: firstAfter?.promised,
    value: value === undefined ? undefined : sayValue(value),
    lastYear: then === undefined ? undefined : words.harvest(then, settings),
    private: result.private,
  };
}

function sayValue({ sign, signAfter, amount }: NonNullable<Result["value"]>): string {
  const figure = amount.toFixed(2);
  return signAfter ? `${figure} ${sign}` : `${sign}${figure}`;
}
