/**
 * What a line says, as the facts of its events: one for each variety, with the bed that the line names or else the one
 * its note speaks of.
 */
import type { Event, EventKind, Problem } from "../model.ts";
import { detailsOf } from "./clause-details.ts";
import { pieceOf } from "./crops.ts";
import type { Line } from "./line.ts";
import { lineProblem } from "./line-rules.ts";
import { readGear, readSoil, readTrouble } from "./other-lines.ts";
import { countsPieces } from "./plant-items.ts";
import { readPlants } from "./plant-line.ts";
import type { PlantItem, PlantLine } from "./plant-scan.ts";
import { readTask, type SaidLine } from "./said-line.ts";
import type { FoundVerb } from "./verb-forms.ts";

/** What a line says of one event; the line itself says the rest. */
export type Facts = Partial<Omit<Event, "id" | "verb" | "text" | "place" | "private" | "more">>;

/** The facts of a line, and the kind of event they are: mostly the verb's own. */
export interface ReadFacts {
  readonly kind: EventKind;
  readonly facts: readonly Facts[];
  /** Whether the nested items became events themselves. */
  readonly listed?: boolean | undefined;
}

/** Kinds that a bed without a plant makes sense with: all of its plantings are meant. */
const wholeBed = new Set<EventKind>(["cleared", "lost", "measured", "moved"]);

/** Kinds whose plants may stand in the nursery, so that the note's bed is not theirs unless the line says so. */
const bedOnlyWhenSaid = new Set<EventKind>(["potted on", "gave away", "sold", "acquired"]);

export function plantFacts(line: Line, kind: EventKind, from: number, verb: FoundVerb): Facts[] | undefined {
  const read = readPlants(line, from, kind);
  const saysBed = read.places.some((place) => place.bed !== undefined);
  const whole: Facts = {
    plantsFrom: read.plantsFrom,
    cause: read.cause,
    celsius: read.celsius,
  };
  if (read.items.length === 0) {
    const amount = read.loose ?? read.leftOver;
    if (!saysBed && amount === undefined && read.celsius === undefined && read.heightCm === undefined) {
      const meant = verb.proof === undefined || line.words[from - 1]?.text === ":";
      if (meant && from < line.end) line.problems.push(noPlant(line, verb, "it was kept as story"));
      return undefined;
    }
    if (read.celsius === undefined && !(wholeBed.has(kind) && saysBed))
      line.problems.push(noPlant(line, verb, "it counts for no planting"));
    return inPlace(line, kind, read, { place: 0, amount, crop: undefined }).map((facts) => ({
      ...whole,
      detail: line.rest(from),
      ...facts,
    }));
  }
  const detail = detailsOf(line, from, read.items);
  return read.items.flatMap((item) =>
    inPlace(line, kind, read, item).map((facts) => ({ ...whole, detail: detail(item), ...facts })),
  );
}

/** The facts of one item, with its bed: the line's own, else the note's. */
export function inPlace(line: Line, kind: EventKind, read: PlantLine, item: PlantItem): Facts[] {
  const place = read.places[item.place] ?? {};
  const facts: Facts = {
    variety: item.variety,
    crop: item.crop,
    ...amountFacts(line, kind, read, item),
    spacingCm: item.spacingCm ?? read.spacingCm,
    spot: place.spot,
    gear: place.gear,
    bed: place.bed,
    toBed: place.toBed,
  };
  if (place.bed === undefined && place.toBed !== undefined && kind !== "moved") return [{ ...facts, bed: place.toBed }];
  if (place.bed !== undefined) {
    const nursery = kind === "sowed" && read.nursery ? true : undefined;
    const beds = [place.bed, ...(place.alsoBeds ?? [])];
    return beds.length === 1 ? [{ ...facts, nursery }] : sharedOut(line, facts, beds);
  }
  if (bedOnlyWhenSaid.has(kind)) return [facts];
  const [only, second] = line.context.beds;
  if (kind === "sowed" && (read.nursery || only === undefined)) {
    if (!read.nursery && item === read.items[0]) line.problems.push(sownWhere(line));
    return [{ ...facts, nursery: true }];
  }
  if (only !== undefined && second === undefined) return [{ ...facts, bed: only }];
  if ((kind === "sowed" || kind === "planted") && item === (read.items[0] ?? item))
    line.problems.push(whichBed(line, kind));
  return [facts];
}

/** "planted 12 Musselburgh in Long Bed and Cold Frame": how many went into each is not said, so no bed is given a number. */
function sharedOut(line: Line, facts: Facts, beds: readonly string[]): Facts[] {
  const { count, unit, grams, litres, ...rest } = facts;
  if (count !== undefined || grams !== undefined || litres !== undefined) {
    line.problems.push(
      lineProblem(
        "note/which-bed",
        line.place,
        `This line gives one amount for ${beds.length} beds, so it was counted for none of them.`,
        "Write a line for each bed, with its own amount.",
      ),
    );
  }
  return beds.map((bed) => ({ ...rest, bed }));
}

function amountFacts(line: Line, kind: EventKind, read: PlantLine, item: PlantItem): Facts {
  const amount = kind === "thinned" ? (read.leftOver ?? item.amount) : item.amount;
  const crop = item.crop ?? (item.variety === undefined ? undefined : line.names.cropOf(item.variety));
  const pieces = countsPieces(kind) ? amount?.unit : undefined;
  return {
    count: amount?.count,
    unit: pieces ?? (kind === "picked" && amount?.count !== undefined ? pieceOf(line.names.crop(crop)) : undefined),
    grams: amount?.grams,
    litres: amount?.litres,
    heightCm: amount?.cm ?? (read.items.length === 0 ? read.heightCm : undefined),
  };
}

function noPlant(line: Line, verb: FoundVerb, so: string): Problem {
  return lineProblem(
    "note/no-plant",
    line.place,
    `After "${verb.form}" this line names no plant, so ${so}.`,
    "Name the variety or crop; begin the name with a capital letter if no file describes it yet.",
  );
}

function sownWhere(line: Line): Problem {
  return lineProblem(
    "note/sown-where",
    line.place,
    "This sowing names no bed, so it is taken as indoors.",
    'Add "indoors", or the bed it was sown in.',
  );
}

function whichBed(line: Line, kind: EventKind): Problem {
  const several = line.context.beds.length > 1;
  return lineProblem(
    "note/which-bed",
    line.place,
    several
      ? `This line does not say in which of the note's ${line.context.beds.length} beds it was ${kind === "sowed" ? "sown" : "planted"}.`
      : "This line does not say in which bed it was planted.",
    several ? 'Add "in" and the bed.' : 'Add "in" and the bed, or a "bed" in the note\'s front matter.',
  );
}

export function inBeds(beds: readonly string[]): readonly { readonly bed?: string | undefined }[] {
  return beds.length === 0 ? [{}] : beds.map((bed) => ({ bed }));
}

export function workFacts(line: Line, said: SaidLine): Facts[] | undefined {
  if (said.what === "") return undefined;
  const beds = said.beds.length > 0 ? said.beds : line.context.beds;
  const facts = { what: said.what, gear: said.gear };
  if (said.plants.length === 0) return inBeds(beds).map((where) => ({ ...facts, ...where }));
  // Plants without a bed of their own are looked for in all beds, so several beds of the note are none.
  const theirs = said.beds.length > 0 || beds.length === 1 ? beds : [];
  return said.plants.flatMap((plant) => inBeds(theirs).map((where) => ({ ...facts, ...plant, ...where })));
}

export function taskFacts(line: Line, kind: EventKind, from: number, more: readonly string[]): ReadFacts | undefined {
  const said = readTask(line, from, kind);
  if (said.what !== "") {
    const [plant] = said.plants;
    return { kind, facts: [{ what: said.what, due: said.due, ...plant, bed: said.beds[0] ?? onlyBed(line) }] };
  }
  if (more.length === 0) return undefined;
  // "to do:" over a nested list of things.
  return { kind, facts: more.map((what) => ({ what, bed: onlyBed(line), due: said.due })), listed: true };
}

function onlyBed(line: Line): string | undefined {
  return line.context.beds.length === 1 ? line.context.beds[0] : undefined;
}

export function troubleFacts(line: Line, from: number, kind: "trouble" | "cured"): Facts[] | undefined {
  const read = readTrouble(line, from, kind);
  if (read === undefined) return undefined;
  const { items, places } = read.plants;
  const cause = read.cause?.replace(/(?<![\s.!,;:])[\s.!,;:]+$/, "") ?? (kind === "trouble" ? "trouble" : undefined);
  const facts = { cause, detail: line.rest(from) };
  const bed = places[0]?.bed;
  if (items.length === 0) {
    return inBeds(bed === undefined ? line.context.beds : [bed]).map((where) => ({
      ...facts,
      spot: places[0]?.spot,
      ...where,
    }));
  }
  return items.map((item) => ({
    ...facts,
    variety: item.variety,
    crop: item.crop,
    spot: places[item.place]?.spot,
    bed: places[item.place]?.bed ?? onlyBed(line),
  }));
}

export function gearFacts(line: Line, from: number, kind: "put up" | "took down"): Facts[] | undefined {
  const read = readGear(line, from, kind);
  if (read === undefined) return undefined;
  return [
    { gear: read.gear, what: read.what, spot: read.spot, bed: read.bed ?? onlyBed(line), detail: line.rest(from) },
  ];
}

/** "moved the arch to Squash Bed": it is taken down in one bed and put up in the other. */
export function movedGear(line: Line, from: number): Facts[] | undefined {
  const start = /^(?:the|my|our)$/.test(line.lower(from)) ? from + 1 : from;
  const gear = line.names.at("gear", line.words, start);
  if (gear === undefined) return undefined;
  line.claim(from, gear.end);
  const [place] = readPlants(line, gear.end, "moved").places;
  const facts = { gear: gear.id, detail: line.rest(from) };
  return [
    { ...facts, kind: "took down", bed: place?.bed ?? onlyBed(line) },
    { ...facts, kind: "put up", bed: place?.toBed, spot: place?.spot },
  ];
}

export function soilFacts(line: Line, from: number): Facts[] {
  const tests = readSoil(line, from);
  const detail = line.rest(from);
  return tests.flatMap(({ bed, ...soil }) =>
    inBeds(bed === undefined ? line.context.beds : [bed]).map((where) => ({ ...soil, ...where, detail })),
  );
}
