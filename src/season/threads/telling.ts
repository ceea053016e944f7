/** What threads are drawn from: the material of the recap and the person's own lines, each gathered once. */
import { cropOf } from "../../crop-of.ts";
import { type Picking, type Season, sameDayIn } from "../../garden/index.ts";
import type { Day, Event, OpenPicking, Picked, PlantIds } from "../../model.ts";
import { comparable, pickedInAll } from "../../picked.ts";
import type { Material } from "../material.ts";
import { openPickings } from "../open-pickings.ts";
import { type OwnLine, ownLines } from "./own-lines.ts";

export interface Telling {
  readonly material: Material;
  /** The season before, where the notes know it. */
  readonly before?: { readonly season: Season; readonly from: Day; readonly to: Day } | undefined;
  readonly lines: readonly OwnLine[];
  /** Of the days told. */
  readonly now: readonly OwnLine[];
  /** What was picked in a stretch of days, credited to a planting or not. */
  picked(from: Day, to: Day, which?: (of: PlantIds) => boolean): Gathered;
}

export interface Gathered {
  readonly sum: Picked;
  readonly lines: readonly Event[];
  /**
   * A line of these days is a question, and its answer may well be a picking of this: the sum would be too small, and a false
   * total is not told.
   */
  readonly doubtful: boolean;
}

export function telling(material: Material, forViewers: boolean): Telling {
  const { book, season, from, to } = material;
  const { garden } = book;
  const last = book.seasons.find(({ year }) => year === season.year - 1);
  const lines = ownLines(garden, to, forViewers);
  const byEvent = new Map<Event | undefined, Picking>(book.pickings.map((picking) => [picking.event, picking]));
  const all = garden.events
    .filter(({ kind, private: hidden }) => kind === "picked" && !hidden)
    .map((event) => {
      const credited = byEvent.get(event);
      const of = { variety: event.variety ?? credited?.variety, crop: event.crop ?? credited?.crop };
      return { event, of: { ...of, crop: cropOf(garden, of)?.id }, harvest: credited?.harvest ?? event };
    });
  const open = garden.openPickings ?? openPickings(garden);
  /** By stretch of days: each crop and variety is asked for in the same two. */
  const within = new Map<string, typeof all>();
  const allWithin = (first: Day, end: Day) => {
    const key = `${first} ${end}`;
    const known = within.get(key) ?? all.filter(({ event: { day } }) => day >= first && day <= end);
    within.set(key, known);
    return known;
  };
  return {
    material,
    before:
      last === undefined
        ? undefined
        : { season: last, from: sameDayIn(last, from, season), to: sameDayIn(last, to, season) },
    lines,
    now: lines.filter(({ day }) => day >= from && day <= to),
    picked(first, end, which = () => true) {
      const found = allWithin(first, end).filter(({ of }) => which(of));
      const sum = pickedInAll(found.map(({ event: { day }, harvest }) => ({ day, harvest })));
      return {
        sum,
        lines: found.map(({ event }) => event),
        doubtful: inDoubt(
          sum,
          open.filter(
            (one) =>
              one.day >= first &&
              one.day <= end &&
              (one.crop === undefined && one.variety === undefined
                ? true
                : which({ variety: one.variety, crop: cropOf(garden, one)?.id })),
          ),
        ),
      };
    },
  };
}

/** Less than this of a sum changes nothing that is told in two digits and a rough comparison. */
const unfelt = 0.05;

/** In the measures that the sum is told in: five bunches of scapes change nothing in a number of bulbs. */
function inDoubt(sum: Picked, open: readonly OpenPicking[]): boolean {
  const total = (of: (one: OpenPicking) => number | undefined) => open.reduce((all, one) => all + (of(one) ?? 0), 0);
  const pieces = ({ grams, litres, count, unit = "piece" }: OpenPicking) =>
    grams === undefined && litres === undefined && sum.counts[unit] !== undefined ? count?.value : undefined;
  if (sum.times === 0) return open.length > 0;
  return (
    (sum.grams > 0 && total(({ grams }) => grams) > unfelt * sum.grams) ||
    (sum.litres > 0 && total(({ litres }) => litres) > unfelt * sum.litres) ||
    total(pieces) > unfelt * Object.values(sum.counts).reduce((all, n) => all + (n ?? 0), 0)
  );
}

/** The same thing this season and by the same day of the last; undefined where they are not told alike, or one is in doubt. */
export function harvests(
  { picked, before, material: { from, to } }: Telling,
  which: (of: PlantIds) => boolean,
): { readonly now: Gathered; readonly last: Gathered } | undefined {
  if (before === undefined) return undefined;
  const [now, last] = [picked(from, to, which), picked(before.from, before.to, which)];
  if (now.doubtful || last.doubtful || now.sum.times === 0 || last.sum.times === 0) return undefined;
  return comparable(now.sum, last.sum) ? { now, last } : undefined;
}

export const ofCrop =
  (crop: string) =>
  (of: PlantIds): boolean =>
    of.crop === crop;
