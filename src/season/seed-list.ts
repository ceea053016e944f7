/** What to get before next season, by where it comes from, and what there is of saved seed. */

import { stringify } from "csv-stringify/sync";
import { capital, dayOnly, sayList, sayPlural, sayWeight } from "../language/index.ts";
import type { Event, Obtained } from "../model.ts";
import { compare } from "../order.ts";
import { comesAsPlants } from "../timeline/index.ts";
import { recapWords } from "./recap-words/words.ts";
import type { Lot, SeasonBook } from "./season-book.ts";

export interface SeedRow {
  readonly variety: string;
  /** "Crown Prince, squash" */
  readonly title: string;
  readonly crop: string;
  readonly source: string;
  readonly link: string;
  readonly obtained: Obtained | "";
  /** Year in which it was got, as the record says. */
  readonly year: string;
  /** "own seed", "buy", "swap", or "ask" when no source is recorded. */
  readonly how: "own seed" | "buy" | "swap or ask" | "look up";
  /** What there is of own seed: "180 g saved on 5 July". */
  readonly saved: string;
  /** Why, or what to think of: "seed keeps for one year". */
  readonly remark: string;
}

/** Crops whose seed is best bought or saved each year (common practice). */
const freshEachYear: ReadonlySet<string> = new Set(
  "parsnip onion leek spring-onion shallot parsley chive salsify".split(" "),
);
/** Begun from bulbs, sets, tubers or plants: nothing for the seed tin. */
const noSeed: ReadonlySet<string> = new Set(
  "garlic shallot potato sweet-potato oca jerusalem-artichoke dahlia tulip daffodil strawberry rhubarb asparagus".split(
    " ",
  ),
);
/** Years for which other seed usually keeps in a tin (common practice: three to five). */
const keepsYears = 4;

/** Every annual variety grown in a season, by source. */
export function seedList(book: SeasonBook, year: number): readonly SeedRow[] {
  const season = book.seasons.find((one) => one.year === year);
  if (season === undefined) return [];
  const grown = new Map<string, Lot[]>();
  for (const lot of book.lots) {
    const { planting, variety } = lot;
    const inSeason = planting.since <= season.to && (planting.ended ?? season.to) >= season.from;
    if (variety === undefined || !inSeason || planting.perennial || variety.perennial) continue;
    grown.set(variety.id, [...(grown.get(variety.id) ?? []), lot]);
  }
  const saved = Map.groupBy(
    book.events.filter(({ kind }) => kind === "saved seed"),
    ({ variety }) => variety ?? "",
  );
  return [...grown]
    .map(([id, lots]) => seedRow(book, lots, saved.get(id) ?? [], year))
    .filter((row) => row !== undefined)
    .sort(
      (a, b) =>
        compare(a.source || "\uffff", b.source || "\uffff") || compare(a.crop, b.crop) || compare(a.title, b.title),
    );
}

function seedRow(book: SeasonBook, lots: readonly Lot[], saved: readonly Event[], year: number): SeedRow | undefined {
  const [first] = lots;
  const variety = first?.variety;
  if (first === undefined || variety === undefined) return undefined;
  const { source } = variety;
  const last = saved.at(-1);
  const own = source?.obtained === "saved" || last !== undefined;
  const crop = first.crop?.id ?? "";
  const remarks = [
    first.planting.plantsFrom === undefined || !comesAsPlants(crop) ? "" : "came as plants",
    noSeed.has(crop) ? "bulbs, sets or tubers rather than seed" : "",
    freshEachYear.has(crop) && !noSeed.has(crop) ? "its seed keeps for a year or two only" : "",
    tooOld(source?.year, year) && !own ? "the packet is old" : "",
    failed(lots) ? "look at how it did before getting it again" : "",
  ].filter((remark) => remark !== "");
  return {
    variety: variety.id,
    title: recapWords.label({ variety, crop: first.crop }),
    crop: first.crop?.name ?? "",
    source: source?.name ?? "",
    link: source?.link ?? "",
    obtained: source?.obtained ?? "",
    year: source?.year === undefined ? "" : String(source.year),
    how: own
      ? "own seed"
      : source === undefined
        ? "look up"
        : source.obtained === "swapped" || source.obtained === "gifted"
          ? "swap or ask"
          : "buy",
    saved: last === undefined ? (own ? "own seed, no amount noted" : "") : savedSaid(book, last),
    remark: capital(sayList(remarks)),
  };
}

function savedSaid({ garden, until }: SeasonBook, event: Event): string {
  const amount =
    event.grams !== undefined
      ? sayWeight(event.grams, garden.settings.units)
      : event.count !== undefined
        ? `${event.count.approx ? "about " : ""}${sayPlural(event.count.value, ...pieceWords(event.unit ?? "seed"))}`
        : "some";
  return `${amount} saved on ${dayOnly(event.day, { settings: garden.settings, day: until })}`;
}

/** "two fruits", "60 seeds", "one bunch" */
function pieceWords(unit: string): readonly [one: string, many: string] {
  return [unit, unit === "bunch" ? "bunches" : `${unit}s`];
}

function tooOld(bought: number | undefined, year: number): boolean {
  return bought !== undefined && year + 1 - bought > keepsYears;
}

function failed(lots: readonly Lot[]): boolean {
  return lots.every(({ planting, pickings }) => pickings.length === 0 && planting.stage === "lost");
}

/** RFC 4180, with a byte-order mark for spreadsheets, and formulas made harmless. */
export function seedListCsv(rows: readonly SeedRow[]): string {
  return stringify([...rows], {
    header: true,
    bom: true,
    escape_formulas: true,
    record_delimiter: "windows",
    columns: [
      { key: "source", header: "source" },
      { key: "title", header: "variety" },
      { key: "crop", header: "crop" },
      { key: "how", header: "how" },
      { key: "saved", header: "own seed" },
      { key: "obtained", header: "obtained" },
      { key: "year", header: "year" },
      { key: "remark", header: "remark" },
      { key: "link", header: "link" },
    ],
  });
}

/** "Drift Lane Seeds for twelve varieties, a swap for three; own seed of five." */
export function seedListSaid(rows: readonly SeedRow[]): string | undefined {
  const toBuy = rows.filter(({ how }) => how === "buy");
  if (rows.length === 0) return undefined;
  const bySource = [...Map.groupBy(toBuy, ({ source }) => source)]
    .map(([source, all]) => ({ source, count: all.length }))
    .sort((a, b) => b.count - a.count || compare(a.source, b.source));
  const named = bySource
    .slice(0, 4)
    .map(({ source, count }) => `${sayPlural(count, "variety", "varieties")} from ${source}`);
  const own = rows.filter(({ how }) => how === "own seed").length;
  const unknown = rows.filter(({ how }) => how === "look up").length;
  const parts = [
    named.length === 0 ? "" : `To buy again: ${sayList(named)}`,
    own === 0
      ? ""
      : own === rows.length
        ? "there is own seed or stock of every variety"
        : `own seed or stock of ${sayPlural(own, "variety", "varieties")}`,
    unknown === 0 ? "" : `no source noted for ${sayPlural(unknown, "variety", "varieties")}`,
  ].filter((part) => part !== "");
  return `${capital(parts.join("; "))}.`;
}
