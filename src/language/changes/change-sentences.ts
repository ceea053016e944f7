/**
 * The sentences of what was sown, grew, left, ailed, was put up and is to be done; those of pickings, of work and of what comes
 * and goes are in the files beside it. Each is made of the person's line and the plants as they stood, and says no more.
 */

import { daysBetween } from "../../calendar.ts";
import type { Day, Event, PlantIds, PlantsThen, Task } from "../../model.ts";
import { sayLength, sayTemperature, sayWeight } from "../amounts.ts";
import { endsPlural, type Names } from "../names.ts";
import { fullStop, sayCount, sayOrdinal } from "../numbers.ts";
import { sayAge } from "../spans.ts";
import { placing, plantsMeant, sayWhere, sentence, someOf, wholePlanting } from "./sentence-parts.ts";

// ------------------------------------------------------------------------------------------------------------ beginnings

export function saySown(names: Names, event: Event, planting: PlantIds): string {
  const { name, were } = someOf(names, planting, event.count);
  return sentence(`${name} ${were} sown`, ...placing(names, event), event.detail);
}

/** `raised`: the day of the sowing the plants come from, and the bed if it was a seedbed. */
export function sayPlanted(
  names: Names,
  event: Event,
  planting: PlantsThen,
  raised: { readonly sown: Day; readonly bed?: string } | undefined,
): string {
  const { plantsFrom, from } = planting;
  const { name } = someOf(names, planting, event.count, plantsFrom === "bought" ? "bought-in" : undefined);
  const source = from === undefined ? "" : `from ${from}`;
  return sentence(
    ...wentIn(name, placing(names, event)),
    raised !== undefined &&
      `raised from the sowing of ${names.day(raised.sown, event.day)}${raised.bed === undefined ? "" : ` in ${names.bed(raised.bed)}`}`,
    plantsFrom === "given" ? `a gift ${source}`.trim() : source,
    event.detail,
  );
}

/** "Six cauliflowers went into row 3" rather than "went in, in row 3". */
function wentIn(name: string, placed: readonly (string | undefined)[]): readonly (string | undefined)[] {
  const [first, ...more] = placed.filter((part) => part !== undefined);
  return first?.startsWith("in ")
    ? [`${name} went into ${first.slice(3)}`, ...more]
    : [`${name} went in`, first, ...more];
}

export function sayMovedOut(names: Names, event: Event, from: PlantsThen, toBed: string): string {
  return sentence(`${movedPlants(names, event, from)} moved to ${names.bed(toBed)}`, event.detail);
}

export function sayMovedIn(names: Names, event: Event, planting: PlantsThen, fromBed: string | undefined): string {
  return sentence(
    `${movedPlants(names, event, planting)} came over${fromBed === undefined ? "" : ` from ${names.bed(fromBed)}`}`,
    ...placing(names, event),
    event.detail,
  );
}

export function sayMovedWithin(names: Names, event: Event, planting: PlantsThen): string {
  return sentence(`${movedPlants(names, event, planting)} moved`, ...placing(names, event), event.detail);
}

function movedPlants(names: Names, event: Event, planting: PlantsThen): string {
  return event.count === undefined ? wholePlanting(names, planting).name : someOf(names, planting, event.count).name;
}

export function sayNew(names: Names, planting: PlantsThen): string {
  const { name, were } = someOf(names, planting, undefined);
  return sentence(`${name} ${were} first noted here`);
}

export function sayInUse(names: Names, bed: string): string {
  return sentence(`${names.bed(bed)} came into use`);
}

export function sayRenamed(before: string, now: string): string {
  return sentence(`${before} is called ${now} from now on`);
}

export function sayBedWork(names: Names, bed: string, part: "built" | "filled", what: string): string {
  const was = `${names.bed(bed)} ${names.bedWas(bed)}`;
  if (/^(top-dressed|edged|lined|rebuilt|raised|widened|extended|repaired|mulched|topped up|emptied)\b/i.test(what))
    return sentence(`${was} ${what}`);
  return sentence(`${was} ${part === "built" ? "built of" : "filled with"} ${what}`);
}

// ---------------------------------------------------------------------------------------------------------------- growth

export function sayUp(names: Names, event: Event, plantings: readonly PlantsThen[]): string {
  const [only, another] = plantings;
  const sown = another === undefined && only?.planted === undefined ? only?.sown : undefined;
  const days = sown === undefined ? 0 : daysBetween(sown, event.day);
  const { name } =
    event.count === undefined ? plantsMeant(names, event, plantings) : someOf(names, only ?? event, event.count);
  return sentence(`${name} came up`, days > 0 && `${sayAge(days)} after sowing`, event.detail);
}

export function sayPottedOn(names: Names, event: Event, plantings: readonly PlantsThen[]): string {
  const { name, were } =
    event.count === undefined
      ? plantsMeant(names, event, plantings)
      : someOf(names, plantings[0] ?? event, event.count);
  return sentence(`${name} ${were} potted on`, event.detail);
}

export function sayThinned(names: Names, event: Event, plantings: readonly PlantsThen[]): string {
  const { count, spacingCm, detail } = event;
  const { name, were } = plantsMeant(names, event, plantings);
  const apart = spacingCm === undefined ? undefined : `${sayLength(spacingCm, names.settings.units)} apart`;
  const left = [sayCount(count), apart].filter((part) => part !== undefined).join(", ");
  return sentence(`${name} ${were} thinned${left === "" ? "" : ` to ${left}`}`, detail);
}

export function sayFlowered(names: Names, event: Event, plantings: readonly PlantsThen[]): string {
  const { name, were, their } = plantsMeant(names, event, plantings);
  const { verb, detail } = event;
  const first = /^first (female |male )?/.exec(verb);
  if (first !== null) return sentence(`${name} showed ${their} first ${first[1] ?? ""}flower`, detail);
  return sentence(`${name} ${verb.includes("into") ? "came into" : `${were} in`} flower`, detail);
}

export function sayFruited(names: Names, event: Event, plantings: readonly PlantsThen[]): string {
  const { name, were, their } = plantsMeant(names, event, plantings);
  const { verb, detail } = event;
  const first = /^first (fruit|pod|cob|truss)/.exec(verb)?.[1];
  if (first !== undefined) return sentence(`${name} set ${their} first ${first}`, detail);
  if (verb.includes("heart")) return sentence(`${name} began to heart up`, detail);
  if (verb.includes("pod")) return sentence(`${name} ${were} in pod`, detail);
  return sentence(`${name} ${/\bset/.test(verb) ? "set fruit" : `${were} in fruit`}`, detail);
}

export function sayMeasured(names: Names, event: Event, plantings: readonly PlantsThen[]): string {
  const { heightCm, girthCm, grams, celsius, detail } = event;
  const { units } = names.settings;
  const named = event.variety !== undefined || event.crop !== undefined;
  const { name, were } = named ? plantsMeant(names, event, plantings) : ({ name: "the soil", were: "was" } as const);
  if (heightCm !== undefined)
    return sentence(`${name} ${sayExtent(names, event, were)}`, sayGrown(names, event, plantings), detail);
  if (girthCm !== undefined) {
    const way = /\bacross\b|\bdiameter\b|\bwide\b/i.test(event.text) ? "across" : "round";
    return sentence(`${name} measured ${sayLength(girthCm, units)} ${way}`, detail);
  }
  if (grams !== undefined) return sentence(`${name} weighed ${sayWeight(grams, units)}`, detail);
  if (celsius !== undefined) return sentence(`${name} ${were} at ${sayTemperature(celsius, units)}`, detail);
  return sentence(`${name} ${were} measured`, detail);
}

/** "stood 42 cm tall", or as long or as far across as the line says. */
function sayExtent(names: Names, { heightCm = 0, text }: Event, were: string): string {
  const extent = sayLength(heightCm, names.settings.units);
  const way = /\b(long|across|wide|round|deep)\b/i.exec(text)?.[1]?.toLowerCase();
  return way === undefined ? `stood ${extent} tall` : `${were} ${extent} ${way}`;
}

function sayGrown(names: Names, { heightCm = 0, day }: Event, plantings: readonly PlantsThen[]): string | undefined {
  const [only, another] = plantings;
  if (only?.heightCm === undefined || only.heightOn === undefined || another !== undefined) return undefined;
  const grown = heightCm - only.heightCm;
  return grown < 1
    ? undefined
    : `${sayLength(grown, names.settings.units)} more than on ${names.day(only.heightOn, day)}`;
}

// --------------------------------------------------------------------------------------------------------------- partings

/** `number`: as many as the line says, all of them, or some that nobody counted. */
export function sayLost(names: Names, event: Event, planting: PlantsThen, number: "counted" | "all" | "some"): string {
  const to = event.cause === undefined ? "" : ` to ${event.cause.replace(/^to\s+/i, "")}`;
  const { name, were } = number === "counted" ? someOf(names, planting, event.count) : wholePlanting(names, planting);
  return sentence(`${number === "some" ? "some of " : ""}${name} ${were} lost${to}`, event.detail);
}

/** Without plants, it is the bed itself that was cleared. */
export function sayCleared(names: Names, event: Event, bed: string, plantings: readonly PlantsThen[]): string {
  const named = event.variety !== undefined || event.crop !== undefined;
  const { name, were } = named
    ? plantsMeant(names, event, plantings)
    : { name: names.bed(bed), were: names.bedWas(bed) };
  return sentence(`${name} ${were} cleared`, event.detail);
}

export function sayEndedWithoutWord(names: Names, planting: PlantsThen, day: Day): string {
  const { name, were, they } = wholePlanting(names, planting);
  const are = were === "were" ? "are" : "is";
  return sentence(
    `${name} ${are} taken to be over since ${names.day(day, day)}; no note says when ${they} ${were} cleared`,
  );
}

/** Why it was done, behind the sentence that says what: "…, because of the moth last year." */
export function sayBecause(text: string, reason: string): string {
  const joint = /^(?:so that|to|in order)\b/i.test(reason) ? " " : ", ";
  return fullStop(`${text.replace(/(?<![.\s])[.\s]+$/, "")}${joint}${reason}`);
}

/** `year` of its life, when it is known when it began. */
export function sayNextYear(names: Names, planting: PlantsThen, year: number | undefined): string {
  const { name, their } = wholePlanting(names, planting);
  return sentence(`${name} went into ${year === undefined ? "another year" : `${their} ${sayOrdinal(year)} year`}`);
}

// --------------------------------------------------------------------------------------------------- troubles, gear, soil

const animals =
  /^(?:the )?(?:deer|rabbits?|hares?|pigeons?|wood ?pigeons?|birds?|blackbirds?|galahs?|cockatoos?|possums?|wallab(?:y|ies)|kangaroos?|squirrels?|groundhogs?|raccoons?|gophers?|badgers?|foxes|fox|hens?|chickens?|goats?|sheep|cows?|cats?|dogs?|rats?|mice|mouse|voles?)$/i;

export function sayTrouble(
  names: Names,
  event: Event,
  cause: string,
  {
    bed,
    plantings,
    known,
  }: { readonly bed: string; readonly plantings: readonly PlantsThen[]; readonly known: boolean },
): string {
  const named = event.variety !== undefined || event.crop !== undefined;
  const where = named ? `on ${plantsMeant(names, event, plantings).name}` : `in ${names.bed(bed)}`;
  // Nobody says that deer "showed up on" the beans.
  if (animals.test(cause)) {
    const what = named ? plantsMeant(names, event, plantings).name : names.bed(bed);
    const got = known ? `${endsPlural(cause) || /^deer$/i.test(cause) ? "were" : "was"} still at` : "got at";
    return sentence(`${cause} ${got} ${what}`, event.spot, event.detail === cause ? undefined : event.detail);
  }
  const showed = known ? `${endsPlural(cause) ? "were" : "was"} still there` : "showed up";
  return sentence(`${cause} ${showed} ${where}`, event.spot, event.detail === cause ? undefined : event.detail);
}

/** `days` it lasted, when it is known when it began. */
export function sayTroubleOver(
  names: Names,
  event: Event,
  trouble: {
    readonly bed: string;
    readonly cause: string;
    readonly plantings: readonly PlantsThen[];
    readonly days: number | undefined;
  },
): string {
  const named = event.variety !== undefined || event.crop !== undefined;
  const { name, were } = named
    ? plantsMeant(names, event, trouble.plantings)
    : { name: names.bed(trouble.bed), were: names.bedWas(trouble.bed) };
  const after = trouble.days === undefined || trouble.days < 1 ? "" : ` after ${sayAge(trouble.days)}`;
  return sentence(`${name} ${were} clear of ${trouble.cause}${after}`, event.detail);
}

export function sayTroubleForgotten(cause: string): string {
  return sentence(`nothing more was noted of the ${cause} by the end of the season`);
}

export function sayGearUp(names: Names, event: Event): string {
  const { spot, detail } = event;
  const where = spot === undefined ? undefined : sayWhere(spot);
  // "Bird netting went up over the figs": what it covers belongs to it.
  const isOver =
    where === undefined && /^(?:over|on|onto|round|around|across|above|against|between)\b/i.test(detail ?? "");
  return isOver
    ? sentence(`${thing(names, event)} went up ${detail}`)
    : sentence(`${thing(names, event)} went up`, where, detail);
}

export function sayGearDown(names: Names, event: Event): string {
  return sentence(`${thing(names, event)} came down`, event.detail);
}

function thing(names: Names, event: Event): string {
  return event.gear === undefined ? (event.what ?? "something") : names.gear(event.gear);
}

export function saySoilTest(names: Names, event: Event): string {
  const { ph, celsius, detail } = event;
  const at = celsius === undefined ? undefined : `at ${sayTemperature(celsius, names.settings.units)}`;
  return sentence(ph === undefined ? "the soil was tested" : `the soil tested at pH ${ph}`, at, detail);
}

// ------------------------------------------------------------------------------------------- tasks, promises, questions

export function sayToDo(names: Names, { what, due }: Pick<Task, "what" | "due">, on: Day): string {
  return fullStop(`To do${due === undefined ? "" : ` by ${names.day(due, on)}`}: ${what}`);
}

export function sayDone(what: string): string {
  return fullStop(`Off the list: ${what}`);
}

export function sayOverdue(names: Names, what: string, due: Day): string {
  return fullStop(`Due on ${names.day(due, due)}: ${what}`);
}

export function sayPromised(what: string): string {
  return fullStop(`Promised to viewers: ${what}`);
}

export function sayKept(what: string): string {
  return fullStop(`Kept as promised: ${what}`);
}

export function sayOwed(names: Names, what: string, due: Day): string {
  return fullStop(`Owed to viewers since ${names.day(due, due)}: ${what}`);
}

export function sayAsked(event: Event): string {
  return fullStop(`A viewer asked: ${event.what ?? event.detail ?? event.text}`);
}
