/** Soil tests over time, against what the crops of each bed like. */

import { meanPh, phQuarrels, phRange, phStanding } from "../almanac/index.ts";
import { capital, dayOnly, inBed, type Sentence, say, sayList, theBed } from "../language/index.ts";
import type { Bed, Day } from "../model.ts";
import type { SeasonBook } from "./season-book.ts";

export interface BedSoil {
  readonly bed: string;
  readonly tests: readonly { readonly day: Day; readonly ph: number }[];
  /** Of the tests of one season: hydrogen ions averaged. */
  readonly mean?: number | undefined;
  readonly sentences: readonly Sentence[];
}

/** pH as it is said: one decimal. */
function sayPh(ph: number): string {
  return (Math.round(ph * 10) / 10).toFixed(1);
}

export function soilOf(book: SeasonBook, year: number): readonly BedSoil[] {
  const tests = Map.groupBy(
    book.events.filter(({ kind, ph, bed }) => kind === "soil test" && ph !== undefined && bed !== undefined),
    ({ bed }) => bed ?? "",
  );
  return [...book.garden.beds.values()].flatMap((bed): BedSoil[] => {
    const own = tests.get(bed.id) ?? [];
    const growing = [
      ...new Set(
        book
          .lotsIn(bed.id)
          .filter((lot) => standsIn(book, lot, year))
          .flatMap((lot) => lot.crop?.id ?? []),
      ),
    ];
    const sentences = [...testSentences(book, bed, own, growing), ...quarrels(book, bed, growing, year)];
    if (own.length === 0 && sentences.length === 0) return [];
    const lastSeason = own.at(-1)?.day;
    const recent = own.filter(({ day }) => lastSeason !== undefined && day.slice(0, 4) === lastSeason.slice(0, 4));
    return [
      {
        bed: bed.id,
        tests: own.map(({ day, ph }) => ({ day, ph: ph ?? 0 })),
        mean: meanPh(recent.flatMap(({ ph }) => ph ?? [])),
        sentences,
      },
    ];
  });
}

function standsIn(book: SeasonBook, { planting }: SeasonBook["lots"][number], year: number): boolean {
  const season = book.seasons.find((one) => one.year === year);
  return season !== undefined && planting.since <= season.to && (planting.ended ?? season.to) >= season.from;
}

function testSentences(
  book: SeasonBook,
  bed: Bed,
  tests: readonly SeasonBook["events"][number][],
  crops: readonly string[],
): readonly Sentence[] {
  const last = tests.at(-1);
  if (last?.ph === undefined) return [];
  const voice = { settings: book.garden.settings, day: book.until };
  const before = tests.at(-2);
  const was = before?.ph === undefined ? "" : `, after ${sayPh(before.ph)} on ${dayOnly(before.day, voice)}`;
  const unhappy = Map.groupBy(
    crops.flatMap((crop) => {
      const range = phRange(crop);
      const standing = range === undefined ? "right" : phStanding(last.ph ?? 7, range.value);
      return standing === "right" ? [] : [{ crop, standing }];
    }),
    ({ standing }) => standing,
  );
  const told = [...unhappy].map(
    ([standing, all]) =>
      `${standing} for ${sayList(all.map(({ crop }) => book.garden.crops.get(crop)?.plural ?? crop))}`,
  );
  const judged =
    told.length === 0
      ? crops.some((crop) => phRange(crop) !== undefined)
        ? "; right for all that grows there"
        : ""
      : `; ${sayList(told)}`;
  return [
    say(`${capital(theBed(bed))} tested at pH ${sayPh(last.ph)} on ${dayOnly(last.day, voice)}${was}${judged}.`, [
      last,
      ...(before === undefined ? [] : [before]),
    ]),
  ];
}

/** Tubs side by side may each have soil of their own, so the sentence asks for a look rather than calling it wrong. */
function quarrels(book: SeasonBook, bed: Bed, crops: readonly string[], year: number): readonly Sentence[] {
  const pairs = phQuarrels(crops);
  if (pairs.length === 0) return [];
  const name = (id: string) => book.garden.crops.get(id)?.plural ?? id;
  const acid = [...new Set(pairs.map(([one]) => one))];
  const limy = [...new Set(pairs.map(([, other]) => other))];
  const lots = book
    .lotsIn(bed.id)
    .filter((lot) => standsIn(book, lot, year) && [...acid, ...limy].includes(lot.crop?.id ?? ""));
  return [
    say(
      `${capital(sayList(acid.map(name)))} stand together with ${sayList(limy.map(name))} ${inBed(bed)}, and no soil suits both: look that each has its own.`,
      lots.flatMap(({ events }) => events.slice(0, 1)),
    ),
  ];
}
