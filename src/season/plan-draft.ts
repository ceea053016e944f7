/**
 * A draft of who goes where next season: what was grown this season, put into beds under rotation, room, light, and the
 * person's own pins. A draft: it explains what it could not keep.
 */
import { areaPerPlant, cropFacts, fullSun, sunHours } from "../almanac/index.ts";
import { seasonBeginning } from "../garden/index.ts";
import { isGround, type Sentence, say } from "../language/index.ts";
import type { Bed, Crop } from "../model.ts";
import { bedMeant, meantBy } from "./crop-words.ts";
import type { Need } from "./needs.ts";
import { compromises } from "./plan-compromises.ts";
import { type Assignment, assignBeds, type Place, type Wish } from "./plan-solver.ts";
import { recapWords } from "./recap-words/words.ts";
import { isStaging, type Rotation, rotated } from "./rotation.ts";
import type { Lot, SeasonBook } from "./season-book.ts";

export interface PlanRow {
  readonly bed: string;
  /** The bed as it is called. */
  readonly title: string;
  readonly crops: readonly {
    readonly crop: string;
    readonly name: string;
    readonly plants?: number | undefined;
    readonly pinned: boolean;
  }[];
  /** Square metres taken of those there are; undefined where the bed has no size. */
  readonly room?: { readonly taken: number; readonly there: number } | undefined;
}

export interface PlanDraft {
  /** The year of the season it is for. */
  readonly year: number;
  /** What that season is called: "2027", "2026/27". */
  readonly label: string;
  readonly rows: readonly PlanRow[];
  /** Whether no better draft exists under the same weights, or only none was found. */
  readonly exact: boolean;
  /** What could not be kept, and why. */
  readonly compromises: readonly Sentence[];
  /** Pins that name no bed or crop there is. */
  readonly unread: readonly Sentence[];
}

/** Costs of breaking what a plan should keep: common practice, in the order of what growers give up first. */
const costs = { tooFull: 40, tooSoon: 30, disease: 60, shade: 12, outOfCover: 20, moved: 1 } as const;

/** Share of a bed's ground that plants can have; the rest is the edge and the way between them. */
const usable = 0.9;

export function planDraft(book: SeasonBook, year: number, rotation: Rotation, needs: readonly Need[]): PlanDraft {
  const season = book.seasons.find((one) => one.year === year);
  const lots = season === undefined ? [] : book.lots.filter((lot) => isWished(lot, season.from, season.to));
  const pins = readPins(book);
  const wishes = wishesFrom(book, lots, needs, pins.beds);
  const beds = [...book.garden.beds.values()].filter(
    (bed) => bed.inUseUntil === undefined || bed.inUseUntil > book.until,
  );
  const places = beds.filter((bed) => !isStaging(bed)).map((bed) => placeOf(book, bed, season?.from));
  const pots = new Set(beds.filter((bed) => !isGround(bed)).map(({ id }) => id));
  const cost = (wish: Wish, place: Place) => costOf(book, rotation, year + 1, wish, place, pots);
  const solved = assignBeds(wishes, places, cost, costs.tooFull);
  return {
    year: year + 1,
    label: seasonBeginning(year + 1, book.garden.settings.seasonStarts).label,
    rows: rowsOf(book, wishes, places, solved, pins.beds),
    exact: solved.exact,
    compromises: compromises(book, rotation, year + 1, wishes, places, solved),
    unread: pins.unread,
  };
}

/** Where nobody is shown a draft; `year` as for `planDraft`. */
export function noPlan(year: number): PlanDraft {
  return { year: year + 1, label: String(year + 1), rows: [], exact: true, compromises: [], unread: [] };
}

/** Annual crops that stood in the ground or in pots in the season; a nursery's trays are none. */
function isWished({ planting, crop }: Lot, from: string, to: string): boolean {
  const begun = planting.planted ?? planting.sown ?? planting.since;
  return (
    crop !== undefined &&
    !planting.perennial &&
    !crop.perennial &&
    crop.use !== "cover" &&
    begun >= from &&
    begun <= to &&
    planting.movedFrom === undefined
  );
}

function readPins(book: SeasonBook) {
  const beds = new Map<string, string>();
  const unread: Sentence[] = [];
  for (const pin of book.garden.settings.pins ?? []) {
    const { crop } = meantBy(book, pin.crop);
    const bed = bedMeant(book, pin.bed);
    if (crop !== undefined && bed !== undefined) beds.set(crop.id, bed.id);
    else {
      const missing = crop === undefined ? `no crop is called "${pin.crop}"` : `no bed is called "${pin.bed}"`;
      unread.push(
        say(`The pin "${pin.text}" was left out: ${missing}.`, [{ place: { file: "garden.md", line: 1, column: 1 } }]),
      );
    }
  }
  return { beds, unread };
}

/** One wish per crop and bed it grew in, so that a crop of three beds may go into three again. */
function wishesFrom(
  book: SeasonBook,
  lots: readonly Lot[],
  needs: readonly Need[],
  pins: ReadonlyMap<string, string>,
): readonly Wish[] {
  const wanted = new Map(
    needs.flatMap((need) =>
      need.crop !== undefined && need.plants !== undefined ? [[need.crop.id, need.plants.usual] as const] : [],
    ),
  );
  const groups = Map.groupBy(
    lots,
    ({ crop, planting }) => `${crop?.id} ${pins.has(crop?.id ?? "") ? "" : planting.bed}`,
  );
  const fitted = fitting(lots);
  const grownOf = new Map<string, number>();
  for (const { crop, plants } of lots)
    if (crop !== undefined) grownOf.set(crop.id, (grownOf.get(crop.id) ?? 0) + (plants ?? 0));
  return [...groups.values()].flatMap((group): Wish[] => {
    const [first] = group;
    const crop = first?.crop;
    if (first === undefined || crop === undefined) return [];
    const grown = group.reduce((sum, { plants }) => sum + (plants ?? 0), 0);
    const all = grownOf.get(crop.id) ?? 0;
    const goal = wanted.get(crop.id);
    const plants = goal === undefined || all === 0 ? grown : Math.ceil((goal * grown) / all);
    const area = group.reduce((sum, lot) => sum + areaOf(lot) * fitted(lot), 0) * (grown > 0 ? plants / grown : 1);
    const where = first.bed;
    return [
      {
        crop: crop.id,
        family: rotated(first),
        plants: plants > 0 ? plants : undefined,
        area,
        sun: needsSun(crop),
        cover: where !== undefined && isCovered(book, where),
        pinned: pins.get(crop.id),
        from: first.planting.bed,
      },
    ];
  });
}

/** What stood in a bed this season had room there, whatever the handbook's distances make of it: those are scaled down to the bed. */
function fitting(lots: readonly Lot[]): (lot: Lot) => number {
  const taken = new Map<string, number>();
  for (const lot of lots) taken.set(lot.planting.bed, (taken.get(lot.planting.bed) ?? 0) + areaOf(lot));
  return ({ planting, bed }) => {
    const there = bed?.size === undefined ? undefined : bed.size.length * bed.size.width * usable;
    const all = taken.get(planting.bed) ?? 0;
    return there === undefined || all <= there || all <= 0 ? 1 : there / all;
  };
}

/** Square metres; a row sown along a bed and never counted takes a seventh of it (rows a foot and more apart in a bed of four feet). */
function areaOf({ crop, plants, planting, bed }: Lot): number {
  const each = areaPerPlant(crop?.id, planting.spacingCm);
  if (plants !== undefined && each !== undefined) return plants * each;
  return bed?.size === undefined ? 0.5 : (bed.size.length * bed.size.width) / 7;
}

/** Leaves and roots make do with half a day's sun, fruit does not (common practice). */
function needsSun(crop: Crop): boolean {
  const hardiness = cropFacts(crop.id)?.hardiness?.value;
  return hardiness === "tender" || hardiness === "very tender";
}

function isCovered(book: SeasonBook, bed: Bed): boolean {
  const site = book.siteOf(bed.id);
  return /\b(?:tunnel|polytunnel|greenhouse|glasshouse|conservatory|frame)\b/i.test(
    `${bed.title} ${site?.title ?? ""}`,
  );
}

/** Fewer hours of sun on the longest day than fruit wants. */
function isShady(book: SeasonBook, bed: Bed): boolean {
  const position = book.siteOf(bed.id)?.position ?? book.garden.settings.position;
  if (position === undefined) return false;
  const longest = `${book.until.slice(0, 4)}-${position.latitude >= 0 ? "06" : "12"}-21`;
  const hours = sunHours(bed, position, longest);
  return hours !== undefined && hours < fullSun;
}

/** `from`: the first day of the season whose plants are set out again. */
function placeOf(book: SeasonBook, bed: Bed, from = book.until): Place {
  const area = bed.size === undefined ? undefined : bed.size.length * bed.size.width * usable;
  const grown = book.lotsIn(bed.id).filter(({ planting: { ended } }) => ended === undefined || ended >= from);
  const lasting = grown.filter(({ planting }) => planting.perennial && planting.ended === undefined);
  const standing = lasting.reduce((sum, lot) => sum + areaOf(lot), 0);
  // Where nobody wrote how much room they take, a bed that grew nothing else is theirs.
  const theirs = lasting.length > 0 && lasting.length === grown.length;
  const unmeasured = area === undefined || lasting.some(({ plants }) => plants === undefined);
  return {
    bed: bed.id,
    area: area === undefined ? undefined : Math.max(0, area - standing),
    shady: isShady(book, bed),
    cover: isCovered(book, bed),
    onlyPerennials: (theirs && unmeasured) || (area !== undefined && standing >= area * 0.6),
    pots: !isGround(bed),
  };
}

function costOf(
  book: SeasonBook,
  rotation: Rotation,
  year: number,
  wish: Wish,
  place: Place,
  pots: ReadonlySet<string>,
): number {
  if (wish.pinned !== undefined) return wish.pinned === place.bed ? 0 : Number.POSITIVE_INFINITY;
  if (place.onlyPerennials) return Number.POSITIVE_INFINITY;
  const soon = rotation.notYet.get(place.bed)?.find(({ family, from }) => family === wish.family && from > year);
  const site = (bed: string) => book.garden.beds.get(bed)?.site;
  return (
    (soon === undefined ? 0 : soon.disease === undefined ? costs.tooSoon : costs.disease) +
    (wish.sun && place.shady && !place.cover ? costs.shade : 0) +
    (wish.cover && !place.cover ? costs.outOfCover : 0) +
    (!wish.cover && place.cover ? costs.outOfCover : 0) +
    (place.bed === wish.from ? 0 : site(place.bed) === site(wish.from) ? costs.moved : 3 * costs.moved) +
    (place.pots === pots.has(wish.from) ? 0 : costs.outOfCover)
  );
}

function rowsOf(
  book: SeasonBook,
  wishes: readonly Wish[],
  places: readonly Place[],
  solved: Assignment,
  pins: ReadonlyMap<string, string>,
): readonly PlanRow[] {
  const { crops: grown } = book.garden;
  const { plants } = recapWords;
  return places.flatMap((place, at): PlanRow[] => {
    const here = wishes.filter((_, index) => solved.placeOf[index] === at);
    if (here.length === 0) return [];
    const crops = [...Map.groupBy(here, ({ crop }) => crop)].map(([crop, all]) => {
      const needed = all.reduce((sum, one) => sum + (one.plants ?? 0), 0);
      return {
        crop,
        name: grown.has(crop) ? plants({ crop: grown.get(crop) }) : crop,
        plants: needed > 0 ? needed : undefined,
        pinned: pins.get(crop) === place.bed,
      };
    });
    const taken = here.reduce((sum, { area }) => sum + area, 0);
    return [
      {
        bed: place.bed,
        title: book.garden.beds.get(place.bed)?.title ?? place.bed,
        crops: crops.sort((a, b) => (a.name < b.name ? -1 : 1)),
        room: place.area === undefined ? undefined : { taken, there: place.area },
      },
    ];
  });
}
