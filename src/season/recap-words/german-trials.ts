/** What trials tell, in German. The arms' names are the person's own and stand before a colon. */
import type { GardenSettings } from "../../model.ts";
import { capital, speechOf } from "../../timeline/index.ts";
import { MOST_PLOTS } from "../trial-statistics.ts";
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

interface PlotWords {
  /** "eine Reihe", "Reihen", "je Reihe", "von vier Reihen" (dative). */
  readonly one: string;
  readonly many: string;
  readonly each: string;
  readonly ofMany: string;
  /** "welcher Reihe" */
  readonly ofWhich: string;
}

const row: PlotWords = {
  one: "eine Reihe",
  many: "Reihen",
  each: "je Reihe",
  ofMany: "Reihen",
  ofWhich: "welcher Reihe",
};
const place: PlotWords = {
  one: "ein Platz",
  many: "Plätze",
  each: "je Platz",
  ofMany: "Plätzen",
  ofWhich: "welchem Platz",
};
const plots: Readonly<Record<string, PlotWords>> = {
  row,
  bed: { one: "ein Beet", many: "Beete", each: "je Beet", ofMany: "Beeten", ofWhich: "welchem Beet" },
  pot: { one: "ein Topf", many: "Töpfe", each: "je Topf", ofMany: "Töpfen", ofWhich: "welchem Topf" },
  tub: { one: "ein Kübel", many: "Kübel", each: "je Kübel", ofMany: "Kübeln", ofWhich: "welchem Kübel" },
  box: { one: "ein Kasten", many: "Kästen", each: "je Kasten", ofMany: "Kästen", ofWhich: "welchem Kasten" },
  plant: { one: "eine Pflanze", many: "Pflanzen", each: "je Pflanze", ofMany: "Pflanzen", ofWhich: "welcher Pflanze" },
  tree: { one: "ein Baum", many: "Bäume", each: "je Baum", ofMany: "Bäumen", ofWhich: "welchem Baum" },
  bush: { one: "ein Strauch", many: "Sträucher", each: "je Strauch", ofMany: "Sträuchern", ofWhich: "welchem Strauch" },
};

function plotWords(kind: string | undefined): PlotWords {
  return plots[kind ?? ""] ?? place;
}

function daysSaid({ span }: ArmFacts, settings: GardenSettings): string {
  if (span === undefined) return "";
  const { day } = speechOf(settings);
  return span.from === span.to
    ? `, am ${day(span.to, span.to)}`
    : `, vom ${day(span.from, span.to)} bis ${day(span.to, span.to)}`;
}

function armSaid(arm: ArmFacts, settings: GardenSettings): string {
  const { weight, length, share, digits } = speechOf(settings);
  const { kind, mean, name, plants } = arm;
  const [each, one, several] = pieces[arm.unit ?? ""] ?? ["je Stück", "ein Stück", "Stück"];
  const words = plotWords(arm.plotKind);
  const isMean = arm.plots > 1;
  const average = isMean ? ` im Mittel von ${number(arm.plots)} ${words.ofMany}` : "";
  const perOne = arm.eachPlant ? "je Pflanze" : words.each;
  const left =
    arm.leftOut === 0 ? "" : `, ${many(arm.leftOut, "eine Ernte", "Ernten")} zu anderer Zeit nicht mitgezählt`;
  switch (kind) {
    case "weight of one":
      return `${name}: im Mittel ${weight(mean)} ${each}${isMean ? ` bei ${number(arm.plots)} ${words.ofMany}` : ""}, ${many(arm.pieces, one, several)} in ${many(arm.figures, "einer Ernte", "Ernten")}${daysSaid(arm, settings)}${left}`;
    case "share": {
      const quality = qualities[arm.word ?? "clean"] ?? arm.word;
      return isMean
        ? `${name}: ${share(mean)} ${quality}${average}, zusammen ${digits(arm.pieces)} ${several}${daysSaid(arm, settings)}${left}`
        : `${name}: ${Math.round(mean * arm.pieces)} von ${arm.pieces} ${several} ${quality}${daysSaid(arm, settings)}${left}`;
    }
    case "weight": {
      if (isMean) return `${name}: ${weight(mean)} ${perOne}${average}, zusammen ${weight(arm.total)}`;
      const from = plants === undefined ? "" : ` von ${many(plants, "einer Pflanze", "Pflanzen")}`;
      const part = plants === undefined || plants < 2 ? "" : `, ${weight(arm.total / plants)} je Pflanze`;
      return `${name}: ${weight(arm.total)}${from}${part}`;
    }
    case "pieces":
      return isMean
        ? `${name}: ${digits(Math.round(mean * 10) / 10)} Stück ${perOne}${average}`
        : `${name}: ${many(Math.round(arm.total), "ein Stück", "Stück")}`;
    case "days": {
      const from = arm.counted === undefined ? "" : arm.counted === "sowing" ? " ab Aussaat" : " ab Pflanzung";
      return `${name}: ${many(Math.round(mean), "ein Tag", "Tage")}${from}${average}`;
    }
    case "cover":
      return `${name}: zu ${share(mean)} grün${average}${daysSaid(arm, settings)}`;
    case "height":
      return `${name}: ${length(mean)} hoch${average}${daysSaid(arm, settings)}`;
  }
}

/** "einmal in zehn Fällen", "in vier von zehn Fällen" */
export function germanOneIn(p: number): string {
  if (p >= 0.95) return "fast jedes Mal";
  if (p < 0.36) return `einmal in ${number(Math.round(1 / Math.max(p, 1e-6)))} Fällen`;
  const tenths = Math.round(p * 10);
  return tenths === 5 ? "jedes zweite Mal" : `in ${number(tenths)} von zehn Fällen`;
}

/** A difference in the measure's own unit. */
function gapSaid(gap: number, { kind }: TellsFacts, settings: GardenSettings): string {
  const { weight, length, share, digits } = speechOf(settings);
  const size = Math.abs(gap);
  switch (kind) {
    case "weight of one":
    case "weight":
      return weight(size);
    case "height":
      return length(size);
    case "days":
      return many(Math.round(size), "einem Tag", "Tagen");
    case "share":
    case "cover":
      return share(size);
    case "pieces":
      return `${digits(Math.round(size * 10) / 10)} Stück`;
  }
}

function intervalSaid(facts: TellsFacts, settings: GardenSettings): string {
  const { interval } = facts.found ?? {};
  if (interval === undefined) return "";
  const [low, high] = interval;
  const said = (gap: number) => gapSaid(gap, facts, settings);
  return low < 0 && high > 0
    ? `; der wahre Abstand kann alles sein von ${said(low)} in der anderen Richtung bis zu ${said(high)}`
    : `; der wahre Abstand kann irgendwo zwischen ${said(low)} und ${said(high)} liegen`;
}

function againstSaid({ n, m, plotKind }: TellsFacts): string {
  const { one, many: several } = plotWords(plotKind);
  const lone = one.split(" ")[0] ?? "eins";
  return `${several}: ${n === 1 ? lone : number(n)} gegen ${m === 1 ? lone : number(m)}`;
}

function aloneSaid(facts: TellsFacts): string {
  const { n, m, often, kind, fewest, plotKind } = facts;
  const { one, many: several } = plotWords(plotKind);
  const measured = kind === "height" || kind === "cover";
  const times = !often ? "" : measured ? ", so oft auch gemessen wurde" : ", so oft auch geerntet wurde";
  const lone =
    n === 1 && m === 1
      ? `${capital(one)} je Seite ist eins gegen eins${times === "" ? "" : `${times},`} und entscheidet nichts.`
      : `Das entscheidet nichts (${againstSaid(facts)})${times}.`;
  return `${lone} Erst ${number(fewest)} ${several} je Seite, im Wechsel, könnten etwas zeigen.`;
}

function neededSaid({ plotKind, found }: TellsFacts): string {
  if (found?.needed === undefined) return "";
  const { many: several } = plotWords(plotKind);
  return found.needed > MOST_PLOTS
    ? ` Einen so kleinen Unterschied kann kein Garten zeigen: so ungleich, wie sie sind, brauchte es etwa ${number(found.needed)} ${several} je Seite.`
    : ` Um einen Unterschied dieser Größe zu zeigen, braucht es, so ungleich, wie sie sind, etwa ${number(found.needed)} ${several} je Seite.`;
}

function aheadSaid({ kind, word }: TellsFacts): string {
  switch (kind) {
    case "days":
      return "Länger brauchte";
    case "height":
      return "Höher stand";
    case "cover":
      return "Grüner war";
    case "share":
      return `Mehr war ${qualities[word ?? "clean"] ?? word} bei`;
    default:
      return "Vorn liegt";
  }
}

function hindranceSaid({ hindrance, kind, plotKind }: TellsFacts): string | undefined {
  switch (hindrance) {
    case undefined:
      return undefined;
    case "days apart":
      return kind === "height" || kind === "cover"
        ? "Gemessen wurde nie zur selben Zeit, und Pflanzen wachsen weiter: diese Zahlen lassen sich nicht vergleichen."
        : "Geerntet wurde zu weit auseinander, als dass es sich vergleichen ließe.";
    case "unlike beginnings":
      return "Teils wurde an Ort und Stelle gesät, teils gepflanzt: die Tage lassen sich nicht vergleichen.";
    case "going on":
      return kind === "days"
        ? "Noch ist nicht jede Pflanzung so weit; zu entscheiden gibt es nichts."
        : "Einiges wächst noch; Summen zum Vergleichen gibt es noch nicht.";
    case "some failed":
      return "Manche Pflanzungen kamen nie so weit; die Tage der anderen sagen nicht, was schneller war.";
    case "plot not named":
      return `Nicht jede Zeile sagt, von ${plotWords(plotKind).ofWhich} sie ist; vergleichen lässt es sich so nicht.`;
  }
}

export const germanTrials: TrialWords = {
  noFigures: "Für keine Seite sind bisher Zahlen notiert.",
  figures(arms, on, settings) {
    const said = arms.map((arm) => armSaid(arm, settings)).join("; ");
    return on === undefined ? `${capital(said)}.` : `Am ${speechOf(settings).day(on, on)}: ${said}.`;
  },
  nothingFor: (arms) => `Noch nichts notiert: ${list(arms)}; zu vergleichen gibt es also nichts.`,
  tells(facts, settings) {
    const { n, m, found } = facts;
    const hindered = hindranceSaid(facts);
    if (hindered !== undefined) return n === 1 || m === 1 ? `${hindered} ${aloneSaid(facts)}` : hindered;
    if (found === undefined) return "";
    const against = againstSaid(facts);
    switch (found.what) {
      case "alone":
        return aloneSaid(facts);
      case "no difference":
        return `Zwischen ihnen ist kein Unterschied (${against}).`;
      case "too few": {
        const chance = found.isClean
          ? `selbst eine saubere Trennung kommt bei so wenigen durch Zufall ${germanOneIn(found.smallestP)} vor`
          : `das Beste, was so wenige zeigen können, kommt durch Zufall ${germanOneIn(found.smallestP)} vor, und dies ist keine saubere Trennung`;
        return `Das entscheidet noch nichts (${against}): ${chance}.${neededSaid(facts)}`;
      }
      case "chance":
        return `Der Unterschied hebt sich nicht vom Zufall ab (${against}); ein solcher kommt durch Zufall ${germanOneIn(found.p)} vor${intervalSaid(facts, settings)}.${neededSaid(facts)}`;
      case "stands out":
        return `${aheadSaid(facts)}: ${found.higher} (${against}); ein solcher Unterschied kommt durch Zufall nur ${germanOneIn(found.p)} vor${intervalSaid(facts, settings)}. Das gilt für einen Garten${facts.seasons > 1 ? "" : " und ein Jahr"}.`;
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
