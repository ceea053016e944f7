/** What trials tell, in English. */
import type { GardenSettings } from "../../model.ts";
import { capital, sayLength, sayList, sayNumber, sayPlural, sayWeight } from "../../timeline/index.ts";
import type { ArmFacts, TellsFacts, TrialWords } from "./trials.ts";

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

/** "the netted row averaged 783 g a head, six heads in three pickings" */
function armSaid({ kind, mean, figures: n, ...arm }: ArmFacts, { units }: GardenSettings): string {
  const name = `the ${arm.name}`;
  switch (kind) {
    case "weight of one": {
      const [one, many] = pieceWords(arm.unit);
      return `${name} averaged ${sayWeight(mean, units)} a ${one}, ${sayPlural(arm.pieces, one, many)} in ${sayPlural(n, "picking", "pickings")}`;
    }
    case "share": {
      const good = Math.round(mean * arm.pieces);
      const [, many] = pieceWords(arm.unit);
      return `${good} of ${arm.pieces} ${many} from ${name} were ${arm.word ?? "clean"}`;
    }
    case "weight": {
      const each = arm.plants === undefined || arm.plants < 2 ? "" : `, ${sayWeight(mean / arm.plants, units)} a plant`;
      return `${name} gave ${sayWeight(mean, units)}${arm.plants === undefined ? "" : ` from ${sayPlural(arm.plants, "plant", "plants")}`}${each}`;
    }
    case "pieces":
      return `${name} gave ${sayPlural(Math.round(mean), "piece", "pieces")}`;
    case "days":
      return `${name} took ${sayPlural(Math.round(mean), "day", "days")}${n > 1 ? ` on average, ${sayPlural(n, "planting", "plantings")}` : ""}`;
    case "cover":
      return `${name} was ${Math.round(mean * 100)} % green in its last photo`;
    case "height":
      return `${name} stood ${sayLength(mean, units)} tall${n > 1 ? ` on average, ${sayPlural(n, arm.per, `${arm.per}s`)}` : ""}`;
  }
}

/** "one time in ten", "every second time". */
export function oneIn(p: number): string {
  if (p >= 0.95) return "nearly every time";
  if (p > 0.4) return "about every second time";
  const times = Math.round(1 / Math.max(p, 1e-6));
  return `one time in ${sayNumber(times)}`;
}

function intervalSaid({ interval }: TellsFacts, { units }: GardenSettings): string {
  if (interval === undefined) return "";
  const [low, high] = interval;
  const said = (grams: number) => sayWeight(Math.abs(grams), units);
  if (low < 0 && high > 0) return `; the true gap may be anything from ${said(low)} the other way to ${said(high)}`;
  return `; the true gap may lie anywhere from ${said(low)} to ${said(high)}`;
}

export const englishTrials: TrialWords = {
  noFigures: "No figures are noted for either side yet.",
  figures: (arms, settings) => capital(`${arms.map((arm) => armSaid(arm, settings)).join("; ")}.`),
  nothingFor: (arms) =>
    `Nothing is noted yet for ${sayList(arms.map((name) => `the ${name}`))}, so there is nothing to set against it.`,
  tells(facts, settings) {
    const { n, m, per, p, smallestP } = facts;
    const against = `${sayNumber(n)} against ${sayNumber(m)}`;
    const figuresAre = per === "picking" ? "pickings" : per === "planting" ? "plantings" : "figures";
    switch (facts.what) {
      case "one each": {
        const lot =
          facts.kind === "cover"
            ? "One bed stands for each side"
            : per === "arm"
              ? "Each side was added up as one lot"
              : "There is one figure a side";
        return `${lot}, and one against one can't tell the arms from chance.`;
      }
      case "no difference":
        return `There is no difference between them, ${against}.`;
      case "too few": {
        const chance = facts.isClean
          ? `even a clean split of that size happens ${oneIn(smallestP)} by chance`
          : `the best that size could show happens ${oneIn(smallestP)} by chance, and this is no clean split`;
        return `${capital(against)} ${figuresAre} can't settle this: ${chance}. Worth repeating with ${sayNumber(facts.enough)} a side.`;
      }
      case "chance":
        return `The difference does not stand out from chance: ${against} ${figuresAre}, and one as large comes up ${oneIn(p)} by chance${intervalSaid(facts, settings)}.`;
      case "stands out":
        return `The ${facts.higher} ${per === "planting" ? "took longer" : "came out ahead"}, ${against} ${figuresAre}: a difference as large comes up only ${oneIn(p)} by chance${intervalSaid(facts, settings)}. That is one garden and one season.`;
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
