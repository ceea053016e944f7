/** What trials tell, in German. The arms' names are the person's own and stand before a colon. */
import type { GardenSettings } from "../../model.ts";
import { capital, speechOf } from "../../timeline/index.ts";
import type { ArmFacts, TellsFacts, TrialWords } from "./trials.ts";

const { number, many, list } = speechOf({ language: "de", units: "metric" });

const pieces: Readonly<Record<string, readonly [each: string, one: string, many: string]>> = {
  head: ["je Kopf", "ein Kopf", "Köpfe"],
  bulb: ["je Zwiebel", "eine Zwiebel", "Zwiebeln"],
  root: ["je Rübe", "eine Rübe", "Rüben"],
  fruit: ["je Frucht", "eine Frucht", "Früchte"],
  ear: ["je Kolben", "ein Kolben", "Kolben"],
  stem: ["je Stiel", "ein Stiel", "Stiele"],
  pod: ["je Hülse", "eine Hülse", "Hülsen"],
  bunch: ["je Bund", "ein Bund", "Bund"],
};

/** The words by which a share is read from an English line. */
const qualities: Readonly<Record<string, string>> = {
  clean: "sauber",
  sound: "heil",
  undamaged: "unbeschädigt",
  unmarked: "ohne Flecken",
  damaged: "beschädigt",
  marked: "fleckig",
  split: "geplatzt",
  rotten: "faul",
  holed: "durchlöchert",
  forked: "beinig",
  eaten: "angefressen",
  ripe: "reif",
  good: "gut",
  bad: "schlecht",
};

const of = {
  picking: ["einer Ernte", "Ernten"],
  arm: ["einer Gruppe", "Gruppen"],
  planting: ["einer Pflanzung", "Pflanzungen"],
  measuring: ["einer Messung", "Messungen"],
} as const;

function armSaid({ kind, mean, figures: n, ...arm }: ArmFacts, settings: GardenSettings): string {
  const { weight, length } = speechOf(settings);
  const [each, one, several] = pieces[arm.unit ?? ""] ?? ["je Stück", "ein Stück", "Stück"];
  const average = n > 1 ? ` im Mittel von ${many(n, of[arm.per][0], of[arm.per][1])}` : "";
  switch (kind) {
    case "weight of one":
      return `${arm.name}: im Mittel ${weight(mean)} ${each}, ${many(arm.pieces, one, several)} in ${many(n, ...of.picking)}`;
    case "share":
      return `${arm.name}: ${Math.round(mean * arm.pieces)} von ${arm.pieces} ${several} ${qualities[arm.word ?? "clean"] ?? arm.word}`;
    case "weight": {
      const plants = arm.plants === undefined ? "" : ` von ${many(arm.plants, "einer Pflanze", "Pflanzen")}`;
      const share = arm.plants === undefined || arm.plants < 2 ? "" : `, ${weight(mean / arm.plants)} je Pflanze`;
      return `${arm.name}: ${weight(mean)}${plants}${share}`;
    }
    case "pieces":
      return `${arm.name}: ${many(Math.round(mean), "ein Stück", "Stück")}`;
    case "days":
      return `${arm.name}: ${many(Math.round(mean), "ein Tag", "Tage")}${average}`;
    case "cover":
      return `${arm.name}: auf dem letzten Foto zu ${speechOf(settings).share(mean)} grün`;
    case "height":
      return `${arm.name}: ${length(mean)} hoch${average}`;
  }
}

/** "einmal in zehn Fällen" */
function oneIn(p: number): string {
  if (p >= 0.95) return "fast jedes Mal";
  if (p > 0.4) return "etwa jedes zweite Mal";
  return `einmal in ${number(Math.round(1 / Math.max(p, 1e-6)))} Fällen`;
}

function intervalSaid({ interval }: TellsFacts, settings: GardenSettings): string {
  if (interval === undefined) return "";
  const { weight } = speechOf(settings);
  const [low, high] = interval;
  const said = (grams: number) => weight(Math.abs(grams));
  return low < 0 && high > 0
    ? `; der wahre Abstand kann alles sein von ${said(low)} in der anderen Richtung bis ${said(high)}`
    : `; der wahre Abstand kann irgendwo zwischen ${said(low)} und ${said(high)} liegen`;
}

export const germanTrials: TrialWords = {
  noFigures: "Für keine Seite sind bisher Zahlen notiert.",
  figures: (arms, settings) => `${capital(arms.map((arm) => armSaid(arm, settings)).join("; "))}.`,
  nothingFor: (arms) => `Noch nichts notiert: ${list(arms)}; zu vergleichen gibt es also nichts.`,
  tells(facts, settings) {
    const { n, m, per, p, smallestP } = facts;
    const against = `${n === 1 ? "eine" : number(n)} gegen ${m === 1 ? "eine" : number(m)}`;
    const figures = per === "picking" ? "Ernten" : per === "planting" ? "Pflanzungen" : "Zahlen";
    switch (facts.what) {
      case "one each": {
        const lot =
          facts.kind === "cover"
            ? "Für jede Seite steht ein Beet"
            : per === "arm"
              ? "Jede Seite ist als eins zusammengezählt"
              : "Jede Seite hat eine Zahl";
        return `${lot}, und eins gegen eins lässt sich nicht vom Zufall unterscheiden.`;
      }
      case "no difference":
        return `Zwischen ihnen ist kein Unterschied (${figures}: ${against}).`;
      case "too few": {
        const chance = facts.isClean
          ? `selbst eine saubere Trennung kommt bei so wenigen durch Zufall ${oneIn(smallestP)} vor`
          : `das Beste, was so wenige zeigen können, kommt durch Zufall ${oneIn(smallestP)} vor, und dies ist keine saubere Trennung`;
        return `Das entscheidet noch nichts (${figures}: ${against}): ${chance}. Eine Wiederholung mit ${number(facts.enough)} je Seite lohnt sich.`;
      }
      case "chance":
        return `Der Unterschied hebt sich nicht vom Zufall ab (${figures}: ${against}); ein solcher kommt durch Zufall ${oneIn(p)} vor${intervalSaid(facts, settings)}.`;
      case "stands out":
        return `${per === "planting" ? "Länger brauchte" : "Vorn liegt"}: ${facts.higher} (${figures}: ${against}); ein solcher Unterschied kommt durch Zufall nur ${oneIn(p)} vor${intervalSaid(facts, settings)}. Das gilt für einen Garten und ein Jahr.`;
    }
  },
  besides(arms) {
    const told = arms.map(({ name, losses, troubles }) => {
      const lost = losses.map(
        ({ plants, cause }) => `${many(plants, "eine Pflanze", "Pflanzen")}${cause === undefined ? "" : ` (${cause})`}`,
      );
      const parts = [
        ...(lost.length === 0 ? [] : [`verloren ${list(lost)}`]),
        ...(troubles.length === 0 ? [] : [`Sorgen: ${list(troubles)}`]),
      ];
      return `${name}: ${parts.join(", ")}`;
    });
    return `Dazu kam: ${told.join("; ")}.`;
  },
};
