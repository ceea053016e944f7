/**
 * An event as a note line: what reading that line gives again. Amounts come out in grams, litres, centimetres and °C,
 * or in pounds, ounces, inches, gallons and °F where they are round in these; the day not at all, for the note has it.
 */
import { celsiusOf, centimetresPerInch, fahrenheitOf, gramsPerOunce, gramsPerPound } from "../measures.ts";
import type { Event } from "../model.ts";
import { pieceOf } from "./crops.ts";
import { Line } from "./line.ts";
import { wordsOf } from "./line-words.ts";
import type { Names } from "./names.ts";
import { writeCount, writePickUnit } from "./quantities.ts";
import { readSaid } from "./said-line.ts";
import { inBaseUnit, type Unit as UnitRow, type UnitSystem, unitCalled } from "./units.ts";
import { verbTable } from "./verb-table.ts";

const shapes = new Map(verbTable.map((verb) => [verb.kind, verb.shape]));
const mainForms = new Map(verbTable.map((verb) => [verb.kind, verb.forms[0] ?? verb.kind]));
/** Written with a colon, as people write them. */
const withColon = new Set([
  "up",
  "flowered",
  "fruited",
  "saved seed",
  "trouble",
  "cured",
  "did",
  "to do",
  "done",
  "promised",
  "asked",
  "acquired",
  "volunteer",
  "came back",
  "doing",
  "preserved",
  "sold",
  "plan",
]);
/** Kinds that speak of where something was taken from. */
const fromBed = new Set(["picked", "cleared", "moved", "sold"]);

/** The line without its list mark; nested items follow on lines of their own. */
export function printEvent(event: Event, names: Names, system: UnitSystem = "metric"): string {
  const form = printedForm(event);
  const said = [
    ...saidOf(event, names, system),
    clause(event.price === undefined ? undefined : `for ${event.price}`),
    // Whatever stands behind it would be read as part of the reason.
    clause(event.reason),
  ].filter((part) => part !== undefined && part !== "");
  const due = event.due === undefined ? "" : ` by ${event.due}`;
  const head = `${form}${due}${withColon.has(event.kind) ? ":" : ""}`;
  const line = said.reduce<string>((text, part) => joined(text, part ?? "", text === head), head);
  return [line, ...event.more.map((more) => `  - ${more}`)].join("\n");
}

/** A clause stands behind a comma, but not right behind the verb's colon. */
function joined(text: string, part: string, opens: boolean): string {
  if (!part.startsWith(",")) return `${text} ${part}`;
  return opens && text.endsWith(":") ? `${text}${part.slice(1)}` : text + part;
}

/** The first form of the table that needs no proof; "lost" and "asked" are proven by what follows. */
function printedForm({ kind, variety, crop }: Event): string {
  if (kind === "lost" && variety === undefined && crop === undefined) return "lost everything";
  if (kind === "lost" || kind === "asked" || kind === "done") return kind;
  return mainForms.get(kind) ?? kind;
}

function saidOf(event: Event, names: Names, system: UnitSystem): (string | undefined)[] {
  const bed = event.bed === undefined ? undefined : placeName(names, event.bed);
  const inBed = bed === undefined ? undefined : `${fromBed.has(event.kind) ? "from" : "in"} ${bed}`;
  const plant = plantName(event, names);
  const spot = clause(event.spot);
  const detail = clause(event.detail);
  switch (shapes.get(event.kind)) {
    case "work":
    case "words":
      return wordsSaid(event, names, plant, inBed);
    case "stores":
      return wordsSaid(event, names, stored(event, names, system) ?? plant, inBed);
    case "goods":
      return event.gear === undefined && plant === undefined
        ? [event.what, giver(event), inBed, detail]
        : plantParts(
            { ...event, gear: undefined },
            names,
            system,
            plant ?? gearName(event, names),
            inBed,
            spot,
            detail,
          );
    case "state":
      return plantParts(event, names, system, plant, inBed, spot, clause(event.what));
    case "trouble":
      // Of a trouble that has no name only the plants are said.
      return [
        plant !== undefined && event.cause === "trouble" ? undefined : event.cause,
        plant === undefined || event.cause === undefined || event.cause === "trouble" ? plant : `on ${plant}`,
        inBed,
        spot,
        detail,
      ];
    case "gear":
      return [gearName(event, names) ?? event.what, inBed, spot, detail];
    case "soil":
      return [bed, event.ph === undefined ? undefined : `pH ${event.ph}`, temperature(event, system), spot, detail];
    default:
      return plantParts(event, names, system, plant, inBed, spot, detail);
  }
}

/** The words themselves, and which plant and bed are meant where the words alone do not tell. */
function wordsSaid(
  { what = "", variety, crop, place, bed }: Event,
  names: Names,
  plant: string | undefined,
  inBed: string | undefined,
): (string | undefined)[] {
  if (what === "") return [plant, inBed];
  const line = new Line(what, wordsOf(what), place, { note: { id: "", day: "", private: false }, beds: [], names });
  const said = readSaid(line, 0);
  const [only, another] = said.plants;
  const tellsPlant = another === undefined && only?.variety === variety && only?.crop === crop;
  const tellsBed = said.what === what && said.beds.length === 1 && said.beds[0] === bed;
  return [
    what,
    plant === undefined || tellsPlant ? undefined : `, only ${plant}`,
    inBed === undefined || tellsBed ? undefined : `, ${inBed}`,
  ];
}

/** "4 pints of spinach", where nothing was said of it but how much. */
function stored(event: Event, names: Names, system: UnitSystem): string | undefined {
  if (event.what !== undefined) return undefined;
  const { grams, litres, text, count, unit } = event;
  const much =
    grams !== undefined
      ? mass(grams, system)
      : litres !== undefined
        ? volume(litres, text, system)
        : count !== undefined && unit !== undefined
          ? `${writeCount(count)} ${writePickUnit(unit, count)}`
          : undefined;
  const plant = plantName({ ...event, count: undefined }, names);
  return much === undefined || plant === undefined ? undefined : `${much} of ${plant}`;
}

function gearName({ gear }: Event, names: Names): string | undefined {
  return gear === undefined ? undefined : nameOf(names, "gear", gear);
}

function giver({ from }: Event): string | undefined {
  return from === undefined ? undefined : `from ${from}`;
}

function plantParts(
  event: Event,
  names: Names,
  system: UnitSystem,
  plant: string | undefined,
  inBed: string | undefined,
  spot: string | undefined,
  detail: string | undefined,
): (string | undefined)[] {
  const { kind, count } = event;
  // Nobody says "30 pieces leeks".
  const crop = event.variety === undefined ? event.crop : names.cropOf(event.variety);
  const isPlainPiece = event.unit === "piece" && crop !== undefined && pieceOf(names.crop(crop)) === "piece";
  const counted =
    count === undefined
      ? undefined
      : `${writeCount(count)}${event.unit === undefined || isPlainPiece ? "" : ` ${writePickUnit(event.unit, count)}`}`;
  const grams = event.grams === undefined ? undefined : mass(event.grams, system);
  const litres = event.litres === undefined ? undefined : volume(event.litres, event.text, system);
  // The first amount stands before the name, others behind the place.
  const [first, ...more] = [counted, grams, litres].filter((amount) => amount !== undefined);
  return [
    kind === "thinned" ? undefined : first,
    event.plantsFrom,
    plant,
    kind === "thinned" && counted !== undefined ? `to ${counted}` : undefined,
    event.heightCm === undefined ? undefined : `${length(event.heightCm, system)} tall`,
    event.girthCm === undefined ? undefined : `${length(event.girthCm, system)} ${girthWord(event.text)}`,
    temperature(event, system),
    giver(event),
    event.nursery === true ? "indoors" : undefined,
    inBed,
    event.toBed === undefined ? undefined : `to ${placeName(names, event.toBed)}`,
    event.gear === undefined ? undefined : `on ${nameOf(names, "gear", event.gear)}`,
    event.cause === undefined ? undefined : `to ${event.cause}`,
    ...more.map(clause),
    event.spacingCm === undefined ? undefined : `, ${length(event.spacingCm, system)} apart`,
    spot,
    detail,
  ];
}

/** Said as the person said it: a pumpkin is measured round, a cabbage across. */
function girthWord(text: string): "across" | "round" {
  return /\bacross\b|\bdiameter\b|\bwide\b/i.test(text) ? "across" : "round";
}

/** In the unit in which it is a round number, the garden's own first: what was noted in pounds is said in pounds. */
function mass(grams: number, system: UnitSystem): string {
  const american: readonly Unit[] = [
    [gramsPerPound, "lb"],
    [gramsPerOunce, "oz"],
  ];
  return inUnits(grams, [1, "g"], american, system);
}

function length(centimetres: number, system: UnitSystem): string {
  return inUnits(centimetres, [1, "cm"], [[centimetresPerInch, "inches"]], system);
}

function inUnits(value: number, metric: Unit, american: readonly Unit[], system: UnitSystem): string {
  const units = system === "us" ? [...american, metric] : [metric, ...american];
  const [worth, unit] = units.find((one) => isRoundIn(value, one)) ?? metric;
  return `${Number((value / worth).toFixed(worth === 1 ? 9 : 2))} ${unit}`;
}

function isRoundIn(value: number, [worth]: Unit): boolean {
  return Math.abs(Number((value / worth).toFixed(2)) * worth - value) < 1e-9 * value;
}

type Unit = readonly [worth: number, name: string];

function clause(text: string | undefined): string | undefined {
  return text === undefined ? undefined : `, ${text}`;
}

/** On the scale on which it is a round number, the person's own first, then the garden's. */
function temperature({ celsius, text }: Event, system: UnitSystem): string | undefined {
  if (celsius === undefined) return undefined;
  const fahrenheit = Number(fahrenheitOf(celsius).toFixed(2));
  const isExact = Math.abs(celsiusOf(fahrenheit) - celsius) < 1e-9;
  const isRound = Math.abs(Number(celsius.toFixed(2)) - celsius) < 1e-9;
  const own = namesUnit(text, (unit) => unit.dimension === "temperature");
  const american = own === undefined ? system === "us" : own.factor !== 1;
  return isExact && (american || !isRound) ? `${fahrenheit} °F` : `${Number(celsius.toFixed(9))} °C`;
}

/** In the unit in which it is a round number: the person's own first, then those of the garden, the large ones before. */
function volume(litres: number, text: string, system: UnitSystem): string {
  const sizes = ["gallon", "quart", "pint", "bushel", "peck", "cup"];
  const said = namesUnit(text, (unit) => sizes.some((name) => unit.names.includes(name)));
  const one = (name: string) => inBaseUnit(1, unitCalled(name) as UnitRow, system);
  const customary = sizes.map((name): Unit => [one(name), name]);
  const own = customary.filter(([, name]) => said?.names.includes(name));
  const litre: Unit = [1, "l"];
  const inOrder = system === "us" ? [...own, ...customary, litre] : [...own, litre, ...customary];
  const [worth, unit] =
    inOrder.find((size) => isRoundIn(litres, size) && (litres >= size[0] || own.includes(size))) ?? litre;
  const count = worth === 1 ? Number(litres.toFixed(9)) : Number((litres / worth).toFixed(2));
  return `${count} ${unit}${worth === 1 || count === 1 ? "" : "s"}`;
}

/** The first unit of the kind in question that a line names. */
function namesUnit(text: string, fits: (unit: UnitRow) => boolean): UnitRow | undefined {
  for (const { lower } of wordsOf(text)) {
    const unit = unitCalled(lower);
    if (unit !== undefined && fits(unit)) return unit;
  }
  return undefined;
}

/** The variety's title, with its crop when no file describes it; else the crop. */
function plantName(event: Event, names: Names): string | undefined {
  if (event.variety === undefined) {
    const crop = names.crop(event.crop);
    return crop === undefined || event.count?.value === 1 ? crop?.name : crop.plural;
  }
  if (names.isDescribed("variety", event.variety)) return nameOf(names, "variety", event.variety);
  // In quotation marks a name is taken as it stands, in capitals or not.
  const crop = names.crop(names.cropOf(event.variety));
  return `"${names.title("variety", event.variety)}"${crop === undefined ? "" : ` ${crop.name}`}`;
}

function placeName(names: Names, bed: string): string {
  if (names.isDescribed("bed", bed)) return nameOf(names, "bed", bed);
  const title = names.title("bed", bed);
  return title[0] === title[0]?.toUpperCase() ? title : `the ${title}`;
}

/** The title, or the id where the title would not be found again in a line: it has marks in it, or a namesake. */
function nameOf(names: Names, kind: "bed" | "variety" | "gear", id: string): string {
  const title = names.title(kind, id);
  const words = wordsOf(title);
  const found = names.at(kind, words, 0);
  return found?.id === id && found.end === words.length && found.others.length === 0 ? title : id;
}
