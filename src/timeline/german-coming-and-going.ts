/** The German twin of coming-and-going-sentences.ts. */
import type { Event, Planting } from "../model.ts";
import { countedOr, meant, placing, sayPieces, some, whole } from "./german-parts.ts";
import type { Names, PlantIds } from "./names.ts";
import { sentence } from "./sentence-parts.ts";
import type { ChangeSentences } from "./sentences.ts";
import { fullStop } from "./words.ts";

type ComingAndGoing = Pick<
  ChangeSentences,
  "acquired" | "selfSown" | "cameBack" | "doing" | "preserved" | "planned" | "because"
>;

const howItCame = { bought: "gekauft", given: "geschenkt bekommen" } as const;

export const germanComingAndGoing: ComingAndGoing = {
  acquired(names, event) {
    const isPlant = event.variety !== undefined || event.crop !== undefined;
    const thing = isPlant
      ? some(names, event, event.count)
      : event.gear === undefined
        ? (event.what ?? "etwas")
        : names.gearTitle(event.gear);
    const came = event.plantsFrom === undefined ? "bekommen" : howItCame[event.plantsFrom];
    return sentence(`${thing} ${came}`, event.from !== undefined && `Herkunft: ${event.from}`, event.detail);
  },
  selfSown: (names, event, planting) =>
    sentence(`${some(names, planting, event.count)} von selbst aufgegangen`, ...placing(names, event), event.detail),
  cameBack: (names, event, plantings) =>
    sentence(
      `${countedOr(names, event, plantings)} ${/winter/.test(event.verb) ? "durch den Winter gekommen" : "wieder da"}`,
      ...placing(names, event),
      event.detail,
    ),
  doing(names, event, bed, plantings) {
    const named = event.variety !== undefined || event.crop !== undefined;
    const of = named ? meant(names, event, plantings) : names.bed(bed);
    return sentence(`${of}: ${event.what ?? event.detail ?? event.text}`);
  },
  preserved: ({ what, detail, text }) => fullStop(`Haltbar gemacht: ${what ?? detail ?? text}`),
  planned: (what) => fullStop(`Geplant: ${what}`),
  because: (text, reason) => fullStop(`${text.replace(/(?<![.\s])[.\s]+$/, "")} (${reason})`),
};

export function sayGermanGivenAway(
  names: Names,
  event: Event,
  planting: PlantIds & Partial<Pick<Planting, "count">>,
  doing: "given away" | "sold",
): string {
  const gone = doing === "sold" ? "verkauft" : "verschenkt";
  const { count, unit, grams, litres } = event;
  const { speech } = names;
  const nameless = planting.variety === undefined && planting.crop === undefined;
  const plants = nameless ? "" : ` ${names.plants(planting)}`;
  const amounts = [
    ...(count === undefined || unit === undefined || unit === "piece" ? [] : [sayPieces(names, count, unit)]),
    ...(grams === undefined ? [] : [speech.weight(grams)]),
    ...(litres === undefined ? [] : [speech.volume(litres)]),
  ];
  if (amounts.length > 0) return sentence(`${speech.list(amounts.slice(0, 1))}${plants} ${gone}`, event.detail);
  if (nameless) return sentence(`${event.what ?? event.detail ?? "etwas"} ${gone}`);
  return sentence(
    count === undefined ? `ein Teil ${gone}: ${whole(names, planting)}` : `${some(names, planting, count)} ${gone}`,
    event.detail,
  );
}
