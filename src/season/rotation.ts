/** What families stood in each bed, season by season, and what may follow them. */

import { airborne, rotationRule, soilDiseases } from "../almanac/index.ts";
import { seasonOf } from "../garden/index.ts";
import { isGround, type Sentence, say } from "../language/index.ts";
import type { Bed, Place } from "../model.ts";
import { compare } from "../order.ts";
import { recapWords } from "./recap-words/words.ts";
import type { Lot, SeasonBook } from "./season-book.ts";

/** One family in one bed in one season. */
export interface BedFamily {
  readonly bed: string;
  /** Season's year. */
  readonly year: number;
  readonly family: string;
  /** Crop ids. */
  readonly crops: readonly string[];
  /** Where the lines stand that began them. */
  readonly sources: readonly Place[];
}

export interface Conflict {
  readonly bed: string;
  readonly family: string;
  readonly crops: readonly string[];
  /** Season it is grown in, and the last one it was grown in before. */
  readonly year: number;
  readonly last: number;
  /** Seasons that should lie between: `year - last` should be this. */
  readonly years: number;
  /** Something that lives in the soil was seen there. */
  readonly disease?: string | undefined;
  readonly sentence: Sentence;
}

export interface Rotation {
  readonly history: readonly BedFamily[];
  /** Broken in the season asked for. */
  readonly conflicts: readonly Conflict[];
  /** Per bed: families that should not come back next season, with the season they may. */
  readonly notYet: ReadonlyMap<string, readonly NotYet[]>;
  /** Reminders that another bed is no cure. */
  readonly noCure: readonly Sentence[];
}

export interface NotYet {
  readonly family: string;
  readonly name: string;
  readonly reason: string;
  /** The first season in which it may come back. */
  readonly from: number;
  readonly last: number;
  readonly disease?: string | undefined;
}

export function rotation(book: SeasonBook, year: number): Rotation {
  const history = bedFamilies(book);
  const inBed = Map.groupBy(history, ({ bed }) => bed);
  const diseases = Map.groupBy(bedDiseases(book), ({ bed }) => bed);
  const conflicts = history
    .filter((one) => one.year === year)
    .flatMap((one) => conflictOf(book, inBed.get(one.bed) ?? [], diseases.get(one.bed) ?? [], one) ?? []);
  const notYet = new Map<string, readonly NotYet[]>();
  for (const bed of book.garden.beds.values()) {
    const rows = notYetIn(book, inBed.get(bed.id) ?? [], diseases.get(bed.id) ?? [], bed, year + 1);
    if (rows.length > 0) notYet.set(bed.id, rows);
  }
  return { history, conflicts, notYet, noCure: noCure(book, year) };
}

/** Annual crops only: what stands for years is not rotated. */
function bedFamilies(book: SeasonBook): readonly BedFamily[] {
  const rows = new Map<string, { bed: string; year: number; family: string; crops: Set<string>; sources: Place[] }>();
  for (const lot of book.lots) {
    const family = rotated(lot);
    if (family === undefined || lot.bed === undefined || isStaging(lot.bed)) continue;
    const key = `${lot.planting.bed} ${lot.season} ${family}`;
    const row = rows.get(key) ?? { bed: lot.planting.bed, year: lot.season, family, crops: new Set(), sources: [] };
    rows.set(key, row);
    row.crops.add(lot.crop?.id ?? "");
    const begun = lot.events.find(({ kind }) => kind === "planted" || kind === "sowed");
    row.sources.push(begun?.place ?? lot.planting.lastNote);
  }
  return [...rows.values()]
    .map((row) => ({ ...row, crops: [...row.crops].sort() }))
    .sort((a, b) => a.year - b.year || compare(a.bed, b.bed) || compare(a.family, b.family));
}

/** Trays on a staging take their soil along when they go. */
export function isStaging({ title }: Pick<Bed, "title">): boolean {
  return /\b(?:staging|shelf|shelves|windowsill|sill|trays?)\b/i.test(title);
}

/** The family a planting counts for; undefined for perennials and for families nobody rotates. */
export function rotated({ crop, planting }: Pick<Lot, "crop" | "planting">): string | undefined {
  if (crop === undefined || planting.perennial || crop.perennial || crop.use === "flower") return undefined;
  return rotationRule(crop.family) === undefined ? undefined : crop.family;
}

/** Whether the soil of a bed was made new in or after a season: pots filled afresh every spring carry nothing over. */
function renewedSince(book: SeasonBook, bed: Bed, year: number): boolean {
  if (isGround(bed)) return false;
  const from = book.seasons.find((season) => season.year === year)?.to ?? `${year}-12-31`;
  return bed.filled.some(
    ({ what, day }) =>
      /\b(?:new|fresh)\b/i.test(what) && day !== undefined && day > from.slice(0, day.length) && day <= book.until,
  );
}

/** `history` and `diseases` of its bed. */
function conflictOf(
  book: SeasonBook,
  history: readonly BedFamily[],
  diseases: readonly BedDisease[],
  now: BedFamily,
): Conflict | undefined {
  const rule = rotationRule(now.family);
  const bed = book.garden.beds.get(now.bed);
  const before = history.findLast((one) => one.family === now.family && one.year < now.year);
  if (rule === undefined || bed === undefined || before === undefined) return undefined;
  const disease = diseaseOf(diseases, now.family, now.year);
  const years = disease?.years ?? rule.years;
  if (now.year - before.year >= years || renewedSince(book, bed, before.year)) return undefined;
  const text = recapWords.rotation({
    bed,
    crops: now.crops.flatMap((id) => book.garden.crops.get(id) ?? []),
    family: now.family,
    gap: now.year - before.year,
    years,
    disease: disease?.name,
  });
  return {
    bed: now.bed,
    family: now.family,
    crops: now.crops,
    year: now.year,
    last: before.year,
    years,
    disease: disease?.name,
    sentence: say(
      text,
      [...now.sources, ...before.sources].map((place) => ({ place })),
    ),
  };
}

/** `history` and `diseases` of the bed. */
function notYetIn(
  book: SeasonBook,
  history: readonly BedFamily[],
  diseases: readonly BedDisease[],
  bed: Bed,
  next: number,
): readonly NotYet[] {
  const families = [...new Set(history.map(({ family }) => family))];
  return families.flatMap((family): NotYet[] => {
    const rule = rotationRule(family);
    const last = history.findLast((one) => one.family === family)?.year;
    if (rule === undefined || last === undefined || renewedSince(book, bed, last - 1)) return [];
    const disease = diseaseOf(diseases, family, next - 1);
    const from = Math.max(last + rule.years, disease === undefined ? 0 : disease.seen + disease.years);
    if (from <= next) return [];
    return [
      {
        family,
        name: recapWords.family(family),
        reason: rule.reason,
        from,
        last,
        disease: disease?.name,
      },
    ];
  });
}

/** A disease of the soil noted in a bed, with the season it was seen in. */
interface BedDisease {
  readonly bed: string;
  readonly family: string;
  readonly name: string;
  readonly years: number;
  readonly seen: number;
}

function bedDiseases(book: SeasonBook): readonly BedDisease[] {
  const seasonStarts = book.garden.settings.seasonStarts;
  return book.troubles.flatMap(({ trouble, bed }): BedDisease[] => {
    const row = soilDiseases.find(({ cause }) => cause.test(trouble.cause.toLowerCase()));
    if (row === undefined) return [];
    const { family, name, years } = row;
    return [{ bed, family, name, years, seen: seasonOf(trouble.opened, seasonStarts).year }];
  });
}

/** The last one that was seen up to a season. */
function diseaseOf(diseases: readonly BedDisease[], family: string, year: number): BedDisease | undefined {
  return diseases.findLast((one) => one.family === family && one.seen <= year);
}

/** Advice on each disease of the soil seen in a season, once. */
export function diseaseAdvice(book: SeasonBook, year: number): readonly Sentence[] {
  const season = book.seasons.find((one) => one.year === year);
  if (season === undefined) return [];
  return soilDiseases.flatMap((row) => {
    const seen = book.troubles.filter(
      ({ trouble }) =>
        trouble.opened >= season.from && trouble.opened <= season.to && row.cause.test(trouble.cause.toLowerCase()),
    );
    if (seen.length === 0) return [];
    const beds = [...new Set(seen.map(({ bed }) => bed))].flatMap((id) => book.garden.beds.get(id) ?? []);
    return [
      say(
        recapWords.diseaseSeen(row.name, beds),
        seen.map(({ trouble }) => trouble),
      ),
    ];
  });
}

function noCure(book: SeasonBook, year: number): readonly Sentence[] {
  const season = book.seasons.find((one) => one.year === year);
  if (season === undefined) return [];
  return airborne.flatMap(({ cause }, row) => {
    const seen = book.troubles.filter(
      ({ trouble }) =>
        trouble.opened >= season.from && trouble.opened <= season.to && cause.test(trouble.cause.toLowerCase()),
    );
    const causes = [...new Set(seen.map(({ trouble }) => trouble.cause.toLowerCase()))];
    if (causes.length === 0) return [];
    return [
      say(
        recapWords.noCure(row, causes),
        seen.map(({ trouble }) => trouble),
      ),
    ];
  });
}
