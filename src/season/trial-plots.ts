/**
 * What was treated apart in a trial. However often one row is picked, it stays one row: pickings, heads and photos of it are
 * no repeats (Hurlbert, Ecological Monographs 54:187-211, 1984, on pseudo-replication). A plot is a bed that one arm has for
 * itself, or a row, pot or other numbered place in a bed that arms share.
 */
import type { Arm } from "./trial-arms.ts";

export interface Plot {
  /** The same for two lines of the same plot. */
  readonly key: string;
  readonly bed: string;
  /** "row", "pot", "bed"; undefined where no line says what stands apart. */
  readonly kind?: string | undefined;
  /** Season it began in, of plots that lasted one. */
  readonly season?: number | undefined;
}

/** What tells of a place: a line, a picking, a planting. */
export interface Placed {
  readonly bed?: string | undefined;
  readonly spot?: string | undefined;
  readonly text?: string | undefined;
}

export interface ArmPlots {
  readonly plots: readonly Plot[];
  /** The plot a line speaks of; undefined when the arm has several and the line names none. */
  plotOf(line: Placed): Plot | undefined;
}

interface Spot {
  readonly noun: string;
  /** "Rows 1-3" are 1, 2 and 3; "row B" is 2. */
  readonly numbers: readonly number[];
}

interface Place {
  readonly arm: Arm;
  readonly bed: string;
  readonly spot?: Spot | undefined;
  readonly season?: number | undefined;
}

/** The plots of each arm, in the arms' order. */
export function trialPlots(arms: readonly Arm[]): readonly ArmPlots[] {
  const places = arms.map(placesOf);
  return arms.map((arm, at) => {
    const own = places[at] ?? [];
    const others = places.filter((_, other) => other !== at).flat();
    const plotted = own.map((place) => ({ place, plot: plotOf(arm, place, own, others) }));
    const plots = [...new Map(plotted.map(({ plot }) => [plot.key, plot])).values()];
    return {
      plots: plots.map((plot) => withSeason(plot, plotted)),
      plotOf(line) {
        const spot = spotIn(line);
        const here = plotted.filter(({ place }) => line.bed === undefined || place.bed === line.bed);
        const named = here.filter(({ place }) => spot !== undefined && meets(place.spot, spot));
        const meant = new Set((named.length > 0 ? named : here).map(({ plot }) => plot.key));
        return meant.size === 1 ? plots.find(({ key }) => meant.has(key)) : undefined;
      },
    };
  });
}

/** Where an arm stands: its plantings; where these have no numbered place, those that its lines name. */
function placesOf(arm: Arm): readonly Place[] {
  const planted = arm.lots.map(
    ({ planting, season }): Place => ({ arm, bed: planting.bed, spot: spotIn(planting), season }),
  );
  const said = arm.events.flatMap((event): Place[] => {
    const bed = event.bed ?? arm.arm.bed ?? onlyOne(planted.map((place) => place.bed));
    const spot = spotIn(event);
    if (bed === undefined || planted.some((place) => place.bed === bed && place.spot !== undefined)) return [];
    return spot === undefined ? [] : [{ arm, bed, spot }];
  });
  const spotted = new Set(said.map(({ bed }) => bed));
  const places = [...planted.filter(({ bed, spot }) => spot !== undefined || !spotted.has(bed)), ...said];
  if (places.length > 0) return places;
  const beds = new Set([arm.arm.bed, ...arm.pickings.map(({ bed }) => bed), ...arm.photos.map(({ bed }) => bed ?? "")]);
  const known = [...beds].filter((bed) => bed !== undefined);
  return (known.length > 0 ? known : [""]).map((bed) => ({ arm, bed }));
}

function onlyOne(beds: readonly string[]): string | undefined {
  return new Set(beds).size === 1 ? beds[0] : undefined;
}

/**
 * A bed that one arm has for itself is one plot, whatever rows are in it: its soil, light and net are one. Rows of one arm that
 * stand next to one another are one plot too, since whatever favours that side of the bed favours all of them.
 */
function plotOf(arm: Arm, place: Place, own: readonly Place[], others: readonly Place[]): Plot {
  const { bed, spot } = place;
  const shared = others.filter((other) => other.bed === bed);
  if (shared.length === 0) return { key: bed, bed, kind: "bed" };
  if (spot === undefined) return { key: bed, bed, kind: /\brows?\b/i.test(arm.name) ? "row" : undefined };
  const { noun } = spot;
  if (noun !== "row") return { key: `${bed} ${noun} ${spot.numbers.join(" ")}`, bed, kind: noun };
  const numbersOf = (places: readonly Place[]) =>
    places.flatMap((one) => (one.bed === bed && one.spot?.noun === noun ? one.spot.numbers : []));
  const theirs = numbersOf(others);
  const start = Math.min(...spot.numbers);
  /** The first of the rows with none of another arm between. */
  const first = numbersOf(own)
    .filter((row) => row <= start && !theirs.some((other) => other >= row && other <= start))
    .reduce((least, row) => Math.min(least, row), start);
  return { key: `${bed} ${noun} ${first}`, bed, kind: noun };
}

function withSeason(plot: Plot, plotted: readonly { readonly place: Place; readonly plot: Plot }[]): Plot {
  const seasons = plotted.flatMap(({ place, plot: { key } }) => (key === plot.key ? [place.season] : []));
  return new Set(seasons).size === 1 && seasons[0] !== undefined ? { ...plot, season: seasons[0] } : plot;
}

const numbered =
  /\b(row|pot|tub|box|drill|line|bay|station|square|plant|tree|bush)(?:\s+(\d+|[a-z]\b)|s\s+(\d+)(?:\s*(?:-|–|to|and)\s*(\d+))?)/i;

/** "row 2", "rows 1-3", "pot B"; other spots ("by the gate") tell nothing apart. */
function spotIn({ spot, text }: Placed): Spot | undefined {
  const found = numbered.exec(spot ?? "") ?? numbered.exec(text ?? "");
  if (found === null) return undefined;
  const [, noun = "", one = found[3] ?? "", , last] = found;
  const from = /\d/.test(one) ? Number(one) : one.toLowerCase().charCodeAt(0) - "a".charCodeAt(0) + 1;
  const to = last === undefined ? from : Number(last);
  return {
    noun: /^(?:drill|line)$/i.test(noun) ? "row" : noun.toLowerCase(),
    numbers: Array.from({ length: Math.min(100, Math.max(0, to - from)) + 1 }, (_, at) => from + at),
  };
}

function meets(a: Spot | undefined, b: Spot): boolean {
  return a !== undefined && a.noun === b.noun && b.numbers.some((number) => a.numbers.includes(number));
}
