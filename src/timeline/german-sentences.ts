/**
 * What happened in a bed, in German: the twin of change-sentences.ts and its neighbours. Sentences are set as a garden diary
 * sets them, without verb forms and articles that would have to agree: "Zwölf Lauch Musselburgh gepflanzt, 20 cm Abstand."
 * What a person wrote stands after a colon or in brackets and is never put into a case.
 */
import { daysBetween } from "../calendar.ts";
import type { Event, Harvest, PickUnit, Planting } from "../model.ts";
import { comesAsPlants } from "./crop-habits.ts";
import { germanComingAndGoing, sayGermanGivenAway } from "./german-coming-and-going.ts";
import { countedOr, meant, placing, sayPieces, some, spotIn, whole } from "./german-parts.ts";
import { sayGermanWork } from "./german-work.ts";
import type { Names, PlantIds } from "./names.ts";
import { sentence } from "./sentence-parts.ts";
import type { ChangeSentences } from "./sentences.ts";
import { fullStop } from "./words.ts";

function gearOf(names: Names, event: Event): string {
  return event.gear === undefined ? (event.what ?? "etwas") : names.gearTitle(event.gear);
}

/** Pieces that the crop's own name counts: 20 roots of carrots are 20 carrots. */
const plantLike: ReadonlySet<PickUnit> = new Set(["piece", "root", "bulb", "head", "fruit"]);

/** "im dritten Jahr", "im 21. Jahr". */
function inYear(names: Names, year: number): string {
  const ordinal = names.speech.ordinal(year);
  return `im ${ordinal.endsWith(".") ? ordinal : `${ordinal}n`} Jahr`;
}

function sayHarvest(
  names: Names,
  event: Event,
  planting: PlantIds & Partial<Planting>,
  { harvest, whole, atOnce }: { readonly harvest: Harvest; readonly whole: boolean; readonly atOnce: boolean },
) {
  const { speech } = names;
  const { grams, litres, count, unit } = harvest;
  const plants = names.plants(planting);
  const isFirst = !atOnce && planting.implied === false && planting.picked?.times === 0;
  const taken = /\bcut\b/.test(event.verb) ? "geschnitten" : "geerntet";
  const amounts = [
    ...(grams === undefined ? [] : [speech.weight(grams)]),
    ...(litres === undefined ? [] : [speech.volume(litres)]),
  ];
  const amount = amounts.length === 0 ? undefined : speech.list(amounts);
  const told = (what: string) => (isFirst ? `erste Ernte: ${what}` : `${what} ${taken}`);
  if (count === undefined || unit === undefined)
    return sentence(told(amount === undefined ? plants : `${amount} ${plants}`), event.detail);
  const asPlants = whole || event.unit === undefined || plantLike.has(unit);
  const number = asPlants ? some(names, planting, count) : `${sayPieces(names, count, unit)} ${plants}`;
  return sentence(told(number), amount, event.detail);
}

const ways: Readonly<Record<string, string>> = {
  long: "lang",
  across: "breit",
  wide: "breit",
  round: "Umfang",
  deep: "tief",
};

const firstFruits: Readonly<Record<string, string>> = {
  fruit: "erste Frucht",
  pod: "erste Hülse",
  cob: "erster Kolben",
  truss: "erste Rispe",
};

export const germanSentences: ChangeSentences = {
  sown: (names, event, planting) =>
    sentence(`${some(names, planting, event.count)} gesät`, ...placing(names, event), event.detail),
  planted: (names, event, planting, raised) =>
    sentence(
      `${some(names, planting, event.count)} ${raised === undefined ? "gepflanzt" : "ausgepflanzt"}`,
      ...placing(names, event),
      raised !== undefined &&
        `aus der Aussaat vom ${names.day(raised.sown, event.day)}${raised.bed === undefined ? "" : ` (${names.bed(raised.bed)})`}`,
      event.plantsFrom === "bought" && (comesAsPlants(planting.crop) ? "als Pflanzen gekauft" : "gekauft"),
      event.plantsFrom === "given" && "geschenkt",
      planting.from !== undefined && `Herkunft: ${planting.from}`,
      event.detail,
    ),
  movedOut: (names, event, from, toBed) =>
    sentence(`${countedOr(names, event, [from])} umgesetzt, neuer Platz: ${names.bed(toBed)}`, event.detail),
  movedIn: (names, event, planting, fromBed) =>
    sentence(
      `${countedOr(names, event, [planting])} dazugekommen`,
      fromBed !== undefined && `bisheriger Platz: ${names.bed(fromBed)}`,
      ...placing(names, event),
      event.detail,
    ),
  movedWithin: (names, event, planting) =>
    sentence(`${countedOr(names, event, [planting])} umgesetzt`, ...placing(names, event), event.detail),
  first: (names, planting) => sentence(`${names.plants(planting)} hier zuerst notiert`),
  inUse: (names, bed) => sentence(`${names.bed(bed)} in Gebrauch genommen`),
  bedWork: (names, bed, part, what) =>
    sentence(`${names.bed(bed)} ${part === "built" ? "gebaut" : "gefüllt"}: ${what}`),

  up(names, event, plantings) {
    const [only, another] = plantings;
    const sown = another === undefined && only?.planted === undefined ? only?.sown : undefined;
    const days = sown === undefined ? 0 : daysBetween(sown, event.day);
    return sentence(
      `${countedOr(names, event, plantings)} aufgelaufen`,
      days > 0 && `${names.speech.ageLong(days)} nach der Aussaat`,
      event.detail,
    );
  },
  pottedOn: (names, event, plantings) =>
    sentence(
      `${countedOr(names, event, plantings)} ${/\bprick/.test(event.verb) ? "pikiert" : "umgetopft"}`,
      event.detail,
    ),
  thinned(names, event, plantings) {
    const { count, spacingCm, detail } = event;
    return sentence(
      `${meant(names, event, plantings)} ausgedünnt${count === undefined ? "" : ` auf ${count.value === 1 && count.upTo === undefined ? "eine Pflanze" : `${names.speech.count(count)} Pflanzen`}`}`,
      spacingCm !== undefined && `${names.speech.length(spacingCm)} Abstand`,
      detail,
    );
  },
  flowered(names, event, plantings) {
    const first = /^first (female |male )?/.exec(event.verb);
    const sex = first?.[1] === undefined ? "" : first[1] === "male " ? "männliche " : "weibliche ";
    const stage = first !== null ? `erste ${sex}Blüte` : event.verb.includes("into") ? "Blühbeginn" : "in Blüte";
    return sentence(`${stage}: ${meant(names, event, plantings)}`, event.detail);
  },
  fruited(names, event, plantings) {
    const { verb } = event;
    const first = firstFruits[/^first (fruit|pod|cob|truss)/.exec(verb)?.[1] ?? ""];
    const stage =
      first ??
      (verb.includes("heart")
        ? "beginnende Kopfbildung"
        : verb.includes("pod")
          ? "mit Hülsen"
          : /\bset/.test(verb)
            ? "Fruchtansatz"
            : "mit Früchten");
    return sentence(`${stage}: ${meant(names, event, plantings)}`, event.detail);
  },
  measured(names, event, plantings) {
    const { heightCm, grams, celsius, detail, text, day } = event;
    const { speech } = names;
    const named = event.variety !== undefined || event.crop !== undefined;
    const what = named ? meant(names, event, plantings) : "Boden";
    if (heightCm !== undefined) {
      const way = /\b(long|across|wide|round|deep)\b/i.exec(text)?.[1]?.toLowerCase() ?? "";
      const [only, another] = plantings;
      const before = another === undefined ? only?.heightCm : undefined;
      const on = another === undefined ? only?.heightOn : undefined;
      const grown = before === undefined ? 0 : heightCm - before;
      return sentence(
        `${what}: ${speech.length(heightCm)} ${ways[way] ?? "hoch"}`,
        grown >= 1 && on !== undefined && `${speech.length(grown)} mehr als am ${names.day(on, day)}`,
        detail,
      );
    }
    if (grams !== undefined) return sentence(`${what}: ${speech.weight(grams)} schwer`, detail);
    if (celsius !== undefined) return sentence(`${what}: ${speech.temperature(celsius)}`, detail);
    return sentence(`${what} gemessen`, detail);
  },

  lost(names, event, planting, number) {
    const plants = number === "counted" ? some(names, planting, event.count) : whole(names, planting);
    return sentence(
      number === "some" ? `ein Teil verloren: ${plants}` : `${plants} verloren`,
      event.cause !== undefined && `Ursache: ${event.cause.replace(/^to\s+/i, "")}`,
      event.detail,
    );
  },
  givenAway: sayGermanGivenAway,
  cleared(names, event, bed, plantings) {
    const named = event.variety !== undefined || event.crop !== undefined;
    return sentence(`${named ? meant(names, event, plantings) : names.bed(bed)} geräumt`, event.detail);
  },
  endedWithoutWord: (names, planting, day) =>
    sentence(`${whole(names, planting)}: seit ${names.day(day, day)} als vorbei angenommen, Ende nicht notiert`),
  nextYear: (names, planting, year) =>
    sentence(`${whole(names, planting)}: ${year === undefined ? "ein weiteres Jahr" : `jetzt ${inYear(names, year)}`}`),

  trouble(names, event, cause, { bed, plantings, known }) {
    const named = event.variety !== undefined || event.crop !== undefined;
    return sentence(
      `${cause}${known ? ", weiterhin" : ""}: ${named ? meant(names, event, plantings) : names.bed(bed)}`,
      event.spot !== undefined && spotIn(event.spot),
      event.detail === cause ? undefined : event.detail,
    );
  },
  troubleOver(names, event, { bed, cause, plantings, days }) {
    const named = event.variety !== undefined || event.crop !== undefined;
    return sentence(
      `${cause} vorbei: ${named ? meant(names, event, plantings) : names.bed(bed)}`,
      days !== undefined && days >= 1 && `nach ${names.speech.ageAfter(days)}`,
      event.detail,
    );
  },
  troubleForgotten: (cause) => sentence(`${cause}: bis zum Ende des Gartenjahrs nichts mehr notiert`),
  gearUp: (names, event) =>
    sentence(`${gearOf(names, event)} aufgebaut`, event.spot !== undefined && spotIn(event.spot), event.detail),
  gearDown: (names, event) => sentence(`${gearOf(names, event)} abgebaut`, event.detail),
  soilTest: (names, { ph, celsius, detail }) =>
    sentence(
      ph === undefined ? "Boden untersucht" : `Bodenprobe: pH ${names.speech.digits(ph)}`,
      celsius !== undefined && `bei ${names.speech.temperature(celsius)}`,
      detail,
    ),

  toDo: (names, { what, due }, on) =>
    fullStop(`Zu tun${due === undefined ? "" : ` bis ${names.day(due, on)}`}: ${what}`),
  done: (what) => fullStop(`Erledigt: ${what}`),
  overdue: (names, what, due) => fullStop(`Fällig am ${names.day(due, due)}: ${what}`),
  promised: (what) => fullStop(`Dem Publikum versprochen: ${what}`),
  kept: (what) => fullStop(`Wie versprochen: ${what}`),
  owed: (names, what, due) => fullStop(`Dem Publikum seit dem ${names.day(due, due)} versprochen: ${what}`),
  asked: (event) => fullStop(`Gefragt wurde: ${event.what ?? event.detail ?? event.text}`),

  picked: sayHarvest,
  savedSeed(names, event) {
    const { grams, count, detail } = event;
    const plants = names.plants(event);
    if (grams !== undefined) return sentence(`${names.speech.weight(grams)} Saatgut gewonnen: ${plants}`, detail);
    if (count === undefined) return sentence(`Saatgut gewonnen: ${plants}`, detail);
    if (!/\bseeds\b/i.test(event.text.replace(/^\W*(saved|collected|gathered) seeds?\b/i, "")))
      return sentence(`Saatgut gewonnen: ${some(names, event, count)}`, detail);
    return sentence(`${names.speech.count(count)} Samen gewonnen: ${plants}`, detail);
  },
  work: sayGermanWork,
  ...germanComingAndGoing,
};
