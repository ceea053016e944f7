/** Facts of lines about what came, how plants are, and what was put up. */
import { detailsOf } from "./clause-details.ts";
import { type Facts, inBeds, inPlace } from "./event-facts.ts";
import type { Line } from "./line.ts";
import { causeEnd } from "./loss-causes.ts";
import { bareBedAt, placeAt } from "./place-words.ts";
import { readPlants } from "./plant-line.ts";
import { knownPlant } from "./plant-names.ts";
import type { PlantItem } from "./plant-scan.ts";
import { amountAt } from "./quantities.ts";
import { readSaid } from "./said-line.ts";
import type { FoundVerb } from "./verb-forms.ts";
import { isGearNoun } from "./verb-proof.ts";

const howItCame: Readonly<Record<string, "bought" | "given">> = {
  bought: "bought",
  purchased: "bought",
  "was given": "given",
  "were given": "given",
};

/**
 * Plants that came, or else a thing. Without its colon the verb is ordinary English ("bought 2 coffees"), so a plant the
 * garden or the crop table knows must follow.
 */
export function goodsFacts(line: Line, from: number, verb: FoundVerb): Facts[] | undefined {
  const sure = line.words[from - 1]?.text === ":";
  if (!sure && knownPlant(line, from, line.end) === undefined) return undefined;
  const start = /^(?:the|an?|some|my|our)$/.test(line.lower(from)) ? from + 1 : from;
  const gear = line.names.at("gear", line.words, start);
  if (gear !== undefined || isThing(line, from)) return [thingFacts(line, start, gear)];
  const read = readPlants(line, from, "acquired");
  const plantsFrom = read.plantsFrom ?? howItCame[verb.form];
  const detail = detailsOf(line, from, read.items);
  return read.items.flatMap((item) =>
    inPlace(line, "acquired", read, item).map((facts) => ({
      plantsFrom,
      from: read.from,
      detail: detail(item),
      ...facts,
    })),
  );
}

/** What is no plant: a word for gear within the first words, or no name of a plant at all. */
function isThing(line: Line, from: number): boolean {
  const end = causeEnd(line, from);
  const plant = knownPlant(line, from, end);
  const noun = line.words
    .slice(from, Math.min(end, from + 5))
    // The cane of "sugar cane" is the crop's.
    .some(
      ({ lower }, at) => isGearNoun(lower) && (plant === undefined || plant.from > from + at || plant.end <= from + at),
    );
  if (noun) return true;
  const amount = amountAt(line.words, from, line.system);
  const name = line.words[amount?.end ?? from];
  const named = name?.kind === "word" && name.text[0] !== name.text[0]?.toLowerCase();
  const quoted = name !== undefined && /^['"‘“]$/.test(name.text);
  return !named && !quoted && plant === undefined;
}

function thingFacts(line: Line, from: number, gear: { readonly id: string; readonly end: number } | undefined): Facts {
  let end = gear?.end ?? from;
  if (gear === undefined) while (end < line.end && !endsThing(line, end)) end += 1;
  const what = line.slice(from, end);
  line.claim(0, end);
  const facts: { from?: string; bed?: string } = {};
  for (let at = end; at < line.end; ) {
    const place = placeAt(line, at, "acquired") ?? bareBedAt(line, at);
    const source = /^(?:from|off|by)$/.test(line.lower(at)) && facts.from === undefined ? causeEnd(line, at + 1) : at;
    if (source > at) facts.from = line.slice(at + 1, source);
    else if (place?.is === "bed" && facts.bed === undefined) facts.bed = place.bed;
    else {
      at += 1;
      continue;
    }
    const next = source > at ? source : (place?.end ?? at + 1);
    line.claim(at, next);
    at = next;
  }
  return { ...(gear === undefined ? { what } : { gear: gear.id }), ...facts, detail: line.rest(end) };
}

function endsThing(line: Line, at: number): boolean {
  const word = line.words[at];
  if (word === undefined || /^[,;:(.–—]$/.test(word.text) || /^(?:from|off|by)$/.test(word.lower)) return true;
  return placeAt(line, at, "acquired")?.is === "bed";
}

/** "leeks, thriving": how each plant is, or the bed as a whole. */
export function stateFacts(line: Line, from: number): Facts[] | undefined {
  const read = readPlants(line, from, "doing");
  const [first, ...others] = read.items;
  const again = first === undefined ? undefined : namedAgain(line, first, others);
  if (first !== undefined && again !== undefined)
    return inPlace(line, "doing", read, first).map((facts) => ({ ...facts, what: again }));
  if (read.items.length > 0) {
    const detail = detailsOf(line, from, read.items);
    return read.items.flatMap((item) =>
      inPlace(line, "doing", read, item).map((facts) => ({ ...facts, what: detail(item) })),
    );
  }
  const what = line.rest(from);
  if (what === undefined) return undefined;
  const [place] = read.places;
  return inBeds(place?.bed === undefined ? line.context.beds : [place.bed]).map((where) => ({
    ...where,
    spot: place?.spot,
    what,
  }));
}

/** "5 peppers, the other five peppers are fine": words behind the name that name it again are its own, whole. */
function namedAgain(line: Line, first: PlantItem, others: readonly PlantItem[]): string | undefined {
  const comma = line.words.findIndex(({ text }, at) => at > (first.at ?? line.end) && text === ",");
  const isSame = ({ at, variety, crop }: PlantItem) =>
    at !== undefined && at > comma && variety === first.variety && crop === first.crop;
  if (comma < 0 || others.length === 0 || !others.every(isSame)) return undefined;
  return line.slice(comma + 1, line.end);
}

/** "9 jars of blackcurrant jam": the words as said, and in them the first amount and plant. */
export function storesFacts(line: Line, from: number): Facts[] | undefined {
  const sure = line.words[from - 1]?.text === ":";
  if (!sure && knownPlant(line, from, line.end) === undefined) return undefined;
  const said = readSaid(line, from);
  if (said.what === "") return undefined;
  return [{ ...said.plants[0], ...amountSaid(line, from), what: said.what, bed: said.beds[0] }];
}

function amountSaid(line: Line, from: number): Facts {
  for (let at = from; at < line.end; at++) {
    const amount = amountAt(line.words, at, line.system);
    if (amount?.grams !== undefined) return { grams: amount.grams };
    if (amount?.litres !== undefined) return { litres: amount.litres };
    if (amount?.count !== undefined) return { count: amount.count, unit: amount.unit };
  }
  return {};
}

/** "put up 32 quarts of tomatoes" tells of jars, "put up 3 cloches" of gear. */
export function putsUpStores(line: Line, from: number): boolean {
  const amount = amountAt(line.words, from, line.system);
  if (amount === undefined) return false;
  const jars = /^(?:jars?|bottles?|tins?|cans?)$/.test(line.lower(amount.end));
  return amount.litres !== undefined || amount.grams !== undefined || jars;
}
