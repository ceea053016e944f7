/** What became of a variety in each year: when it was raised, stood in a bed and was picked, lot by lot. */
import { addDays } from "../../calendar.ts";
import { type Life, lifeOf, type Span } from "../../facts/index.ts";
import { type Season, seasonBeginning } from "../../garden/index.ts";
import type { Day, Variety } from "../../model.ts";
import { seasonYear, type View } from "./view.ts";

/** One lot, as far as it falls into the year. */
export interface LotLife {
  /** In pots or trays, before it was planted. */
  readonly raised?: Span | undefined;
  readonly grown?: Span | undefined;
  /** From the first picking of the year to the last. */
  readonly picked?: Span | undefined;
  /** Days of this year on which it happened. */
  readonly sown?: Day | undefined;
  readonly planted?: Day | undefined;
  readonly pickings: readonly Day[];
}

export interface YearLife {
  readonly season: Season;
  /** In order of beginning. */
  readonly lots: readonly LotLife[];
}

/** Newest year first; years in which nothing of it lived are left out. */
export function yearLives(view: View, variety: Variety): readonly YearLife[] {
  const whole = [...lotsOf(view, variety), ...waiting(view, variety)];
  const years = whole.flatMap(({ from, to }) => [seasonYear(view, from), seasonYear(view, to)]);
  if (years.length === 0) return [];
  const [first, last] = [Math.min(...years), Math.max(...years)];
  return Array.from({ length: last - first + 1 }, (_, back) => last - back)
    .map((year): YearLife => {
      const season = seasonBeginning(year, view.garden.settings.seasonStarts);
      return { season, lots: whole.flatMap((life) => within(life, season)) };
    })
    .filter(({ lots }) => lots.length > 0);
}

interface WholeLife extends Span {
  readonly raised?: Span | undefined;
  readonly grown?: Span | undefined;
  readonly sown?: Day | undefined;
  readonly planted?: Day | undefined;
  readonly pickings: readonly Day[];
}

/** Plants that went on together to another bed are one lot, in whatever beds they stood. */
function lotsOf(view: View, variety: Variety): readonly WholeLife[] {
  const lives = new Map(
    (view.plantings.get(variety.id) ?? []).map((planting) => [
      planting.id,
      lifeOf(view.garden, planting, view.today).value,
    ]),
  );
  const goOn = new Set([...lives.values()].flatMap(({ over }) => over?.into?.id ?? []));
  return [...lives].flatMap(([id, life]) => {
    if (goOn.has(id)) return [];
    const line = [life];
    for (
      let next = lives.get(life.over?.into?.id ?? "");
      next !== undefined;
      next = lives.get(next.over?.into?.id ?? "")
    )
      line.push(next);
    return [asOneLot(life, line)];
  });
}

function asOneLot(first: Life, line: readonly Life[]): WholeLife {
  // What was moved from a seedbed was raised there, and grows in a bed only from then on.
  const begun = line.findLast(({ raised }) => raised !== undefined) ?? first;
  const { raised, before, sown, planted, stood } = begun;
  const grown = { from: stood.from, to: (line.at(-1) ?? first).stood.to };
  return {
    from: raised?.from ?? grown.from,
    to: grown.to,
    raised,
    grown,
    // Of plants that left others behind, the lot they left tells it.
    ...(before.length === 0 && { sown, planted }),
    pickings: line.flatMap(({ pickings }) => pickings),
  };
}

/** A lot sown this season of which nothing is in a bed yet: what is left over in pots is no life of its own. */
function waiting(view: View, variety: Variety): readonly WholeLife[] {
  const lot = view.waitingLots.get(variety.id);
  if (lot === undefined || view.plantings.get(variety.id)?.some(({ sown }) => sown === lot.sown)) return [];
  const span = { from: lot.sown, to: view.today };
  return [{ ...span, raised: span, sown: lot.sown, pickings: [] }];
}

function within(life: WholeLife, { from, to }: Season): readonly LotLife[] {
  if (life.to < from || life.from > to) return [];
  const cut = (span: Span | undefined): Span | undefined => {
    if (span === undefined || span.to < from || span.from > to) return undefined;
    return { from: span.from < from ? from : span.from, to: span.to > to ? to : span.to };
  };
  const inYear = (day: Day | undefined) => (day !== undefined && day >= from && day <= to ? day : undefined);
  const pickings = life.pickings.filter((day) => inYear(day) !== undefined);
  const [first, last] = [pickings[0], pickings.at(-1)];
  return [
    {
      raised: cut(life.raised),
      grown: cut(life.grown),
      picked: first === undefined || last === undefined ? undefined : { from: first, to: last },
      sown: inYear(life.sown),
      planted: inYear(life.planted),
      pickings,
    },
  ];
}

/** Lots that stand after one another share a row; rows in order of their first lot. */
export function inRows(lots: readonly LotLife[]): readonly (readonly LotLife[])[] {
  const rows: LotLife[][] = [];
  for (const lot of lots.toSorted((a, b) => (begin(a) < begin(b) ? -1 : 1))) {
    const free = rows.find((row) => row.every((one) => end(one) < begin(lot)));
    if (free === undefined) rows.push([lot]);
    else free.push(lot);
  }
  return rows;
}

function begin({ raised, grown }: LotLife): Day {
  return raised?.from ?? grown?.from ?? "";
}

/** A day of air stands between two lots of one row. */
function end({ raised, grown }: LotLife): Day {
  return addDays(grown?.to ?? raised?.to ?? "", 1);
}
