/** What trials tell, in sentences. */
import { capital, dayOnly, sayLength, sayList, sayNumber, sayPlural, sayWeight } from "../../language/index.ts";
import type { GardenSettings } from "../../model.ts";
import { MOST_PLOTS } from "../trial-statistics.ts";
import type { ArmFacts, TellsFacts, TrialWords } from "./trial-facts.ts";

const pieces: Readonly<Record<string, readonly [string, string]>> = {
  head: ["head", "heads"],
  bulb: ["bulb", "bulbs"],
  root: ["root", "roots"],
  fruit: ["fruit", "fruits"],
  ear: ["ear", "ears"],
  stem: ["stem", "stems"],
  pod: ["pod", "pods"],
  bunch: ["bunch", "bunches"],
};

function pieceWords(unit: string | undefined): readonly [string, string] {
  return pieces[unit ?? ""] ?? ["piece", "pieces"];
}

/** "row", "rows"; "lot" where nobody says what stands apart. */
function plotWords(kind: string | undefined): readonly [string, string] {
  const one = kind ?? "lot";
  return [one, one === "box" || one === "bush" ? `${one}es` : `${one}s`];
}

function plotsSaid(n: number, kind: string | undefined): string {
  const [one, many] = plotWords(kind);
  return sayPlural(n, one, many);
}

function daysSaid({ span }: ArmFacts, settings: GardenSettings): string {
  if (span === undefined) return "";
  const day = (of: string) => dayOnly(of, { settings, day: span.to });
  return span.from === span.to ? ` on ${day(span.to)}` : ` from ${day(span.from)} to ${day(span.to)}`;
}

/** "the netted row averaged 783 g a head, six heads in three pickings" */
function armSaid(arm: ArmFacts, settings: GardenSettings): string {
  const { kind, mean, plots, plants } = arm;
  const { units } = settings;
  const name = `the ${arm.name}`;
  const several = plots > 1;
  const over = several ? ` over ${plotsSaid(plots, arm.plotKind)}` : "";
  const onAverage = several ? ` on average of ${plotsSaid(plots, arm.plotKind)}` : "";
  const left =
    arm.leftOut === 0 ? "" : `, with ${sayPlural(arm.leftOut, "picking", "pickings")} at another time left out`;
  switch (kind) {
    case "weight of one": {
      const [one, many] = pieceWords(arm.unit);
      return `${name} averaged ${sayWeight(mean, units)} a ${one}${over}, ${sayPlural(arm.pieces, one, many)} in ${sayPlural(arm.figures, "picking", "pickings")}${daysSaid(arm, settings)}${left}`;
    }
    case "share": {
      const [, many] = pieceWords(arm.unit);
      const word = arm.word ?? "clean";
      return several
        ? `${Math.round(mean * 100)} % of the ${many} from ${name} were ${word}${onAverage}, ${sayNumber(arm.pieces)} ${many} in all${daysSaid(arm, settings)}${left}`
        : `${Math.round(mean * arm.pieces)} of ${arm.pieces} ${many} from ${name} were ${word}${daysSaid(arm, settings)}${left}`;
    }
    case "weight": {
      if (several) {
        const [one] = plotWords(arm.plotKind);
        return `${name} averaged ${sayWeight(mean, units)} a ${arm.eachPlant ? "plant" : one}${over}, ${sayWeight(arm.total, units)} in all`;
      }
      const each = plants === undefined || plants < 2 ? "" : `, ${sayWeight(arm.total / plants, units)} a plant`;
      return `${name} gave ${sayWeight(arm.total, units)}${plants === undefined ? "" : ` from ${sayPlural(plants, "plant", "plants")}`}${each}`;
    }
    case "pieces":
      return several
        ? `${name} averaged ${sayOneDecimal(mean)} pieces a ${arm.eachPlant ? "plant" : plotWords(arm.plotKind)[0]}${over}`
        : `${name} gave ${sayPlural(Math.round(arm.total), "piece", "pieces")}`;
    case "days":
      return `${name} took ${sayPlural(Math.round(mean), "day", "days")}${arm.counted === undefined ? "" : ` from ${arm.counted}`}${onAverage}`;
    case "cover":
      return `${name} was ${Math.round(mean * 100)} % green${onAverage}${daysSaid(arm, settings)}`;
    case "height":
      return `${name} stood ${sayLength(mean, units)} tall${onAverage}${daysSaid(arm, settings)}`;
  }
}

function sayOneDecimal(value: number): string {
  return sayNumber(Math.round(value * 10) / 10);
}

/** "one time in ten", "four times in ten", "every second time". */
export function oneIn(p: number): string {
  if (p >= 0.95) return "nearly every time";
  if (p < 0.36) return `one time in ${sayNumber(Math.round(1 / Math.max(p, 1e-6)))}`;
  const tenths = Math.round(p * 10);
  return tenths === 5 ? "every second time" : `${sayNumber(tenths)} times in ten`;
}

/** A difference in the measure's own unit. */
function gapSaid(gap: number, { kind }: TellsFacts, { units }: GardenSettings): string {
  const size = Math.abs(gap);
  switch (kind) {
    case "weight of one":
    case "weight":
      return sayWeight(size, units);
    case "height":
      return sayLength(size, units);
    case "days":
      return sayPlural(Math.round(size), "day", "days");
    case "share":
    case "cover":
      return `${Math.round(size * 100)} in a hundred`;
    case "pieces":
      return `${sayOneDecimal(size)} pieces`;
  }
}

function intervalSaid(facts: TellsFacts, settings: GardenSettings): string {
  const { interval } = facts.found ?? {};
  if (interval === undefined) return "";
  const [low, high] = interval;
  const said = (gap: number) => gapSaid(gap, facts, settings);
  if (low < 0 && high > 0) return `; the true gap may be anything from ${said(low)} the other way to ${said(high)}`;
  return `; the true gap may lie anywhere from ${said(low)} to ${said(high)}`;
}

/** "One row a side is one against one, however often it was picked, and settles nothing. Four rows a side …" */
function aloneSaid({ n, m, plotKind, often, fewest, kind }: TellsFacts): string {
  const [one, many] = plotWords(plotKind);
  const times = !often
    ? ""
    : kind === "height" || kind === "cover"
      ? ", however often it was measured"
      : ", however often it was picked";
  const lone =
    n === 1 && m === 1
      ? `One ${one} a side is one against one${times === "" ? "" : `${times},`} and settles nothing.`
      : `${capital(plotsSaid(n, plotKind))} against ${sayNumber(m)} settles nothing${times}.`;
  return `${lone} ${capital(sayNumber(fewest))} ${many} a side, the arms in turn, would begin to tell.`;
}

/** How many plots would show a difference of the size seen. */
function neededSaid({ plotKind, found }: TellsFacts): string {
  if (found?.needed === undefined) return "";
  const [, many] = plotWords(plotKind);
  const uneven = `with ${many} as uneven as these`;
  return found.needed > MOST_PLOTS
    ? ` No garden can show a difference this small: ${uneven} it would take about ${sayNumber(found.needed)} a side.`
    : ` A difference of this size, ${uneven}, takes about ${sayNumber(found.needed)} a side to show.`;
}

function aheadSaid({ kind, word }: TellsFacts): string {
  switch (kind) {
    case "days":
      return "took longer";
    case "height":
      return "stood taller";
    case "cover":
      return "was greener";
    case "share":
      return `had the larger share of ${word ?? "clean"} ones`;
    default:
      return "came out ahead";
  }
}

function hindranceSaid({ hindrance, kind, plotKind }: TellsFacts): string | undefined {
  switch (hindrance) {
    case undefined:
      return undefined;
    case "days apart":
      return kind === "height" || kind === "cover"
        ? "They were never measured at the same time, and plants grow on, so these figures can't be set against each other."
        : "They were picked too far apart in time to be set against each other.";
    case "unlike beginnings":
      return "One was sown in its place and another planted out, so their days can't be set against each other.";
    case "going on":
      return kind === "days"
        ? "Not every planting has come to it yet, so there is nothing to decide."
        : "Some are still growing, so there are no totals to set against each other yet.";
    case "some failed":
      return "Some plantings never came to it, so the days of the others don't tell which was sooner.";
    case "plot not named":
      return `Not every line says which ${plotWords(plotKind)[0]} it is of, so they can't be set against each other.`;
  }
}

export const trialWords: TrialWords = {
  noFigures: "No figures are noted for either side yet.",
  figures(arms, on, settings) {
    const said = arms.map((arm) => armSaid(arm, settings)).join("; ");
    return on === undefined ? capital(`${said}.`) : `On ${dayOnly(on, { settings, day: on })} ${said}.`;
  },
  nothingFor: (arms) =>
    `Nothing is noted yet for ${sayList(arms.map((name) => `the ${name}`))}, so there is nothing to set against it.`,
  tells(facts, settings) {
    const { n, m, found, plotKind } = facts;
    const hindered = hindranceSaid(facts);
    if (hindered !== undefined) return n === 1 || m === 1 ? `${hindered} ${aloneSaid(facts)}` : hindered;
    if (found === undefined) return "";
    const against = `${plotsSaid(n, plotKind)} against ${sayNumber(m)}`;
    switch (found.what) {
      case "alone":
        return aloneSaid(facts);
      case "no difference":
        return `There is no difference between them, ${against}.`;
      case "too few": {
        const chance = found.isClean
          ? `even a clean split of that size happens ${oneIn(found.smallestP)} by chance`
          : `the best that size could show happens ${oneIn(found.smallestP)} by chance, and this is no clean split`;
        return `${capital(against)} can't settle this: ${chance}.${neededSaid(facts)}`;
      }
      case "chance":
        return `The difference does not stand out from chance: ${against}, and one as large comes up ${oneIn(found.p)} by chance${intervalSaid(facts, settings)}.${neededSaid(facts)}`;
      case "stands out":
        return `The ${found.higher} ${aheadSaid(facts)}, ${against}: a difference as large comes up only ${oneIn(found.p)} by chance${intervalSaid(facts, settings)}. That is one garden${facts.seasons > 1 ? "" : " and one season"}.`;
    }
  },
  besides(arms) {
    const told = arms.map(({ name, losses, troubles }) => {
      const lost = losses.map(
        ({ plants, cause }) => `${sayPlural(plants, "plant", "plants")}${cause === undefined ? "" : ` to ${cause}`}`,
      );
      const parts = [
        ...(lost.length === 0 ? [] : [`lost ${sayList(lost)}`]),
        ...(troubles.length === 0 ? [] : [`had ${sayList(troubles)}`]),
      ];
      return `the ${name} ${parts.join(", and ")}`;
    });
    return `Beside that, ${told.join("; ")}.`;
  },
};
