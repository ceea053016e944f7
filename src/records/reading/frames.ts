/** One clause and one kind of event: the facts that the clause's mentions make when it is taken to tell of that kind. */
import type { Day, EventKind } from "../../model.ts";
import { dueDay } from "../due-day.ts";
import type { Word } from "../line-words.ts";
import type { Clause } from "./clauses.ts";
import type { Fact } from "./fact.ts";
import { textOf } from "./find-mentions.ts";
import { gearSaid } from "./gear-said.ts";
import {
  type AmountMention,
  type AmountUse,
  type BedMention,
  type CauseMention,
  type DayMention,
  isVerb,
  type Mention,
  type PlantMention,
} from "./mention.ts";
import { statesOf } from "./state-said.ts";
import { symptomAt } from "./vocabulary.ts";

export interface FrameContext {
  readonly words: readonly Word[];
  readonly text: string;
  readonly noteDay: Day;
  readonly southern: boolean;
  /** "7/20" is the 20th of July. */
  readonly monthFirst: boolean;
  /** Beds of the note. */
  readonly beds: readonly string[];
  /** Of the whole line. */
  readonly all: readonly Mention[];
}

export interface Framed {
  readonly facts: readonly Fact[];
  /** Plants of another clause were taken. */
  readonly borrowed: boolean;
  /** Mentions that became part of a fact. */
  readonly used: ReadonlySet<Mention>;
}

/** Kinds that make no sense without a plant. */
export const needsPlant = new Set<EventKind>([
  "sowed",
  "planted",
  "potted on",
  "up",
  "flowered",
  "fruited",
  "thinned",
  "came back",
  "volunteer",
  "saved seed",
  "moved",
  "cleared",
]);
/** Kinds told of the clause as a whole, with the plants in it. */
const saidKinds = new Set<EventKind>([
  "did",
  "to do",
  "done",
  "promised",
  "asked",
  "plan",
  "doing",
  "put up",
  "took down",
  "acquired",
]);
const oneFact = new Set<EventKind>(["to do", "done", "promised", "asked", "soil test"]);
const bedOnlyWhenSaid = new Set<EventKind>([
  "potted on",
  "gave away",
  "sold",
  "acquired",
  "preserved",
  "to do",
  "promised",
  "asked",
  "plan",
  "saved seed",
]);

const usable: Readonly<Partial<Record<EventKind, readonly AmountUse[]>>> = {
  picked: ["count", "pieces", "mass", "volume", "share"],
  preserved: ["vessel", "volume", "mass", "pieces", "count"],
  "gave away": ["count", "pieces", "mass", "volume", "vessel"],
  sold: ["count", "pieces", "mass", "volume", "vessel"],
  acquired: ["count", "pieces", "mass", "vessel", "volume"],
  "saved seed": ["mass", "count", "pieces", "vessel", "volume"],
  measured: ["length", "temperature", "mass", "spacing"],
  thinned: ["count"],
  fruited: ["count", "pieces"],
  flowered: ["count"],
  did: ["count"],
  "to do": ["count"],
  promised: ["count", "mass", "vessel", "pieces", "volume"],
  plan: ["count"],
};
const plain: readonly AmountUse[] = ["count", "pieces", "share"];

export function frame(
  kind: EventKind,
  clause: Clause,
  before: readonly PlantMention[],
  context: FrameContext,
): Framed | undefined {
  const named = clause.mentions.filter((one): one is PlantMention => one.type === "plant");
  const told = named.filter((one) => !isAside(one, context.words));
  const own = withoutCropsOf(told.length > 0 ? told : named);
  const borrowed = own.length === 0 && before.length > 0;
  const plants = own.length > 0 ? own : before;
  if (plants.length === 0 && needsPlant.has(kind) && kind !== "cleared" && kind !== "moved") return undefined;
  if ((kind === "put up" || kind === "took down") && !namesGear(clause, context.words)) return undefined;
  // "3 of the 12 leeks died" are not three that came up.
  const verbs = clause.mentions.filter(isVerb);
  if (kind === "up" && verbs.length > 0 && !verbs.some((one) => one.type === "verb" && one.kinds.includes("up")))
    return undefined;
  if (kind === "flowered" && flowersEnd.test(textOf(context.words, Math.max(0, clause.from - 2), clause.end)))
    return undefined;
  if (kind === "cured" && !saysItEnds(textOf(context.words, clause.from, clause.end))) return undefined;
  const used = new Set<Mention>(plants);
  const shared = sharedFacts(kind, clause, context, used);
  if (kind === "soil test") return { facts: soilFacts(clause, shared, used), borrowed: false, used };
  if (kind === "measured" && plants.length === 0) {
    const temperature = clause.mentions.find(
      (one): one is AmountMention => one.type === "amount" && one.use === "temperature",
    );
    if (temperature !== undefined) used.add(temperature);
    return temperature === undefined
      ? undefined
      : { facts: [{ kind, ...shared, celsius: temperature.value }], borrowed: false, used };
  }
  const uses = usable[kind] ?? plain;
  const usableAmounts = clause.mentions.filter(
    (one): one is AmountMention =>
      one.type === "amount" && uses.includes(one.use) && !isBareArticle(one, kind, plants, context.words),
  );
  const sum = usableAmounts.find((one) => one.sum === true);
  const amounts = sum === undefined ? usableAmounts : [sum];
  if (oneFact.has(kind)) {
    const [first] = plants;
    const counted = amounts.length === 1 && kind === "promised" ? amountFacts(kind, amounts) : {};
    return { facts: [{ kind, ...shared, ...nameOf(first), ...counted }], borrowed, used };
  }
  if (plants.length === 0) {
    for (const one of amounts) used.add(one);
    const loose =
      kind === "did" || kind === "put up" || kind === "took down" ? {} : amountFacts(kind, amounts.slice(0, 1));
    // "mum froze 2 kg of them": what was put up is told in the words themselves.
    if (kind === "preserved" && !namesGear(clause, context.words))
      Object.assign(loose, { what: textOf(context.words, clause.from, clause.end) });
    return { facts: [{ kind, ...shared, ...loose }], borrowed: false, used };
  }
  const given = borrowed ? new Map<PlantMention, AmountMention[]>() : shareOut(plants, amounts, context.words);
  if (borrowed && amounts.length > 0 && plants[0] !== undefined) given.set(plants[0], amounts.slice(0, 1));
  for (const list of given.values()) for (const one of list) used.add(one);
  const days = clause.mentions.filter((one): one is DayMention => one.type === "day");
  const [only] = plants;
  if (kind === "picked" && plants.length === 1 && only !== undefined && days.length >= 1) {
    // "600 g today and 450 g on Thursday": each amount has its day.
    const masses = (given.get(only) ?? []).filter(({ use }) => use === "mass" || use === "pieces");
    if (masses.length > 1 && masses.every(({ use }) => use === masses[0]?.use) && days.length === masses.length)
      return {
        facts: masses.map((one, index) => ({
          kind,
          ...shared,
          day: dayOf(days[index], context),
          ...nameOf(only),
          ...amountFacts(kind, [one]),
        })),
        borrowed,
        used,
      };
  }
  const states = kind === "doing" && !borrowed ? statesOf(context.words, clause, plants) : undefined;
  const facts = plants.map((one) => ({
    kind,
    ...shared,
    ...(states === undefined ? {} : { what: states.get(one) }),
    ...nameOf(one),
    ...amountFacts(kind, given.get(one) ?? []),
  }));
  return { facts: withoutHead(facts), borrowed, used };
}

/** "the size of a marble": an article counts only what it stands before. */
function isBareArticle(
  one: AmountMention,
  kind: EventKind,
  plants: readonly PlantMention[],
  words: readonly Word[],
): boolean {
  const article = one.use === "count" && one.end === one.from + 1 && /^an?$/.test(words[one.from]?.lower ?? "");
  if (!article) return false;
  // Nobody sows one seed and says "a turnip".
  if (kind === "sowed") return true;
  const reach = words[one.end + 1]?.text === "-" ? 4 : 2;
  return !plants.some(({ from }) => from >= one.end && from <= one.end + reach);
}

/** "The plum has finished flowering": no first flower. */
const flowersEnd = /\b(?:finished|done|stopped|no longer) (?:flowering|blooming|blossoming)\b/i;

/** A trouble is over only where something says so: "slugs again" and "slugs are back" do not. */
export const troubleEnds =
  /\b(?:gone|cured|clear|cleared|no|not|none|over|finish|finished|beaten|recover\w*|better|free|off|ended|sorted|grown|stopped|stop|vanished|never|nae|nowt|done|zero|without|healthy|clean|closed|fewer|away|seen off)\b/i;

/** "thrips no worse" is not over. */
function saysItEnds(text: string): boolean {
  return troubleEnds.test(text.replace(/\b(?:no|not|any|never) (?:worse|better|less|fewer|different|change)\b/gi, ""));
}

/** "netted", "cages on": a verb that names the gear itself. */
const gearInVerb =
  /^(?:net|nets|netted|netting|mesh|meshed|fleece|fleeced|cover|covers|cloche|cloches|cage|cages|caged|hoops?|canes?|strings?|poles?|tunnel|fence|cloth|sheets?|hurdles?|plastic|staked?|stakes|wigwam|teepee|tepee|wired|panel|tarp|lid)$/;

function namesGear(clause: Clause, words: readonly Word[]): boolean {
  return clause.mentions.some(
    (one) =>
      one.type === "gear" ||
      (one.type === "verb" && words.slice(one.from, one.end).some(({ lower }) => gearInVerb.test(lower))),
  );
}

const asides =
  /^(?:no|nor|where|after|like|than|between|under|beneath|beside|near|by|round|around|among|amongst|behind|along|against|below|above|with|without|not|as|before|following|for|next|instead|alongside)$/;

/** "in where the onions were", "round the beans", "like apple": named to say where or how, and nothing is told of it. */
function isAside(plant: PlantMention, words: readonly Word[]): boolean {
  let at = plant.from - 1;
  for (let steps = 0; steps < 3 && at >= 0; steps++, at--) {
    const word = words[at];
    if (word === undefined || word.kind !== "word") return false;
    if (asides.test(word.lower)) return true;
    if (
      !/^(?:the|a|an|my|our|old|those|these|of|to|last|young|big|his|her|their|mine|all|some|where)$/.test(word.lower)
    )
      return false;
  }
  return false;
}

/** "Crown Prince gave two squashes": the crop word beside a variety of it is no other plant. */
function withoutCropsOf(plants: readonly PlantMention[]): readonly PlantMention[] {
  const varieties = new Set(
    plants.filter((one) => one.variety !== undefined || one.title !== undefined).map(({ crop }) => crop),
  );
  return varieties.size === 0
    ? plants
    : plants.filter((one) => one.variety !== undefined || one.title !== undefined || !varieties.has(one.crop));
}

/** "6 tomatoes: 4 Sungold and 2 Krim" counts the tomatoes once. */
function withoutHead(facts: readonly Fact[]): readonly Fact[] {
  const [first, ...rest] = facts;
  if (first === undefined || first.variety !== undefined || first.title !== undefined || rest.length === 0)
    return facts;
  const ofIt = rest.filter((one) => (one.variety ?? one.title) !== undefined && one.crop === first.crop);
  const sum = ofIt.reduce((total, one) => total + (one.count?.value ?? Number.NaN), 0);
  return ofIt.length === rest.length && (first.count === undefined || first.count.value === sum) ? rest : facts;
}

function nameOf(plant: PlantMention | undefined): Partial<Fact> {
  return plant === undefined
    ? {}
    : {
        variety: plant.variety,
        title: plant.variety === undefined ? plant.title : undefined,
        crop: plant.crop,
        said: plant.said,
      };
}

function dayOf(day: DayMention | undefined, { noteDay }: FrameContext): Day | undefined {
  return day === undefined || day.day === noteDay ? undefined : day.day;
}

/** What holds for every plant of the clause: bed, day, cause, where it stands, what was said. */
function sharedFacts(kind: EventKind, clause: Clause, context: FrameContext, used: Set<Mention>): Partial<Fact> {
  const facts: { -readonly [Key in keyof Fact]?: Fact[Key] } = {};
  const inClause = clause.mentions.filter((one): one is BedMention => one.type === "bed");
  const inLine = context.all.filter((one): one is BedMention => one.type === "bed");
  const beds = inClause.length > 0 ? inClause : inLine.length === 1 ? inLine : [];
  if (kind === "moved") {
    for (const bed of beds) used.add(bed);
    const to =
      beds.find(({ role }) => role === "to") ?? (beds.length === 2 ? beds[1] : beds.find(({ role }) => role === "in"));
    facts.toBed = to?.id;
    facts.bed = beds.find((bed) => bed !== to)?.id ?? context.beds[0];
  } else {
    if (beds[0] !== undefined) used.add(beds[0]);
    facts.bed = beds[0]?.id ?? (bedOnlyWhenSaid.has(kind) || context.beds.length !== 1 ? undefined : context.beds[0]);
  }
  const [day] = clause.mentions.filter((one): one is DayMention => one.type === "day");
  const lineDays = context.all.filter((one): one is DayMention => one.type === "day");
  const told = day ?? (lineDays.length === 1 ? lineDays[0] : undefined);
  if (told !== undefined && kind !== "to do" && kind !== "promised" && kind !== "plan") {
    used.add(told);
    if (told.day <= context.noteDay) facts.day = dayOf(told, context);
  }
  if (kind === "to do" || kind === "promised" || kind === "plan") {
    facts.due =
      dueDay(context.text, context.noteDay, context)?.day ??
      (told !== undefined && told.day > context.noteDay ? told.day : undefined);
    if (told !== undefined) used.add(told);
  }
  if (kind === "sowed") facts.nursery = stands(clause, context, used, beds.length > 0);
  // What stands in trays is in no bed, but for one that the line names.
  if (facts.nursery === true && beds.length === 0) facts.bed = undefined;
  if (kind === "trouble" || kind === "lost" || kind === "cured") {
    const cause =
      clause.mentions.find((one): one is CauseMention => one.type === "cause") ??
      context.all.find((one): one is CauseMention => one.type === "cause");
    if (cause !== undefined) used.add(cause);
    facts.cause = cause?.text ?? symptomOf(kind, clause, context);
  }
  const gear = clause.mentions.find((one) => one.type === "gear");
  if (gear?.type === "gear" && (kind === "put up" || kind === "took down")) {
    facts.gear = gear.id;
    used.add(gear);
  }
  const put = kind === "put up" || kind === "took down" ? gearSaid(context.words, clause) : undefined;
  if (put !== undefined) Object.assign(facts, put);
  else if (saidKinds.has(kind)) facts.what = textOf(context.words, clause.from, clause.end).replace(checkbox, "");
  const spacing = clause.mentions.find((one) => one.type === "amount" && one.use === "spacing");
  if (spacing?.type === "amount" && (kind === "planted" || kind === "sowed" || kind === "thinned")) {
    facts.spacingCm = spacing.value;
    used.add(spacing);
  }
  return facts;
}

/** What a task says is not its box. */
const checkbox = /^\[[ xX✓]?\]\s*/;

/** Trouble without a pest is named by its sign. */
function symptomOf(kind: EventKind, clause: Clause, context: FrameContext): string | undefined {
  if (kind === "cured") return undefined;
  const said = textOf(context.words, clause.from, clause.end).toLowerCase();
  if (kind === "trouble" && /\b(?:bolt(?:ed|ing|s)?|to seed)\b/.test(said)) return "bolting";
  for (let at = clause.from; at < clause.end; at++) {
    const sign = symptomAt(context.words, at);
    if (sign !== undefined && (kind === "trouble" || /^rot/.test(sign.row))) return sign.row;
  }
  return undefined;
}

/** Indoors or in the ground: what the line says, else whether it has a bed. Undefined is "in the bed". */
function stands(clause: Clause, context: FrameContext, used: Set<Mention>, named: boolean): boolean | undefined {
  const cues = [...clause.mentions, ...context.all].filter((one) => one.type === "stand");
  for (const one of cues) used.add(one);
  if (cues.some((one) => one.type === "stand" && one.nursery)) return true;
  if (cues.length > 0 || named) return undefined;
  return context.beds.length === 0 ? true : undefined;
}

function soilFacts(clause: Clause, shared: Partial<Fact>, used: Set<Mention>): Fact[] {
  const values = clause.mentions.filter(
    (one): one is AmountMention =>
      one.type === "amount" &&
      (one.use === "ph" || ((one.use === "label" || one.use === "count") && one.value >= 3.5 && one.value <= 9.5)),
  );
  const beds = clause.mentions.filter((one): one is BedMention => one.type === "bed");
  for (const one of [...values, ...beds]) used.add(one);
  if (values.length > 1 && beds.length === values.length)
    return values.map((one, index) => ({ kind: "soil test", ...shared, bed: beds[index]?.id, ph: one.value }));
  return [{ kind: "soil test", ...shared, ph: values[0]?.value }];
}

const APART: ReadonlySet<string> = new Set([",", "and", "&", "+", ";", "/"]);

/** Which amount is of which plant: numbers stand all before their names or all behind them. */
function shareOut(
  plants: readonly PlantMention[],
  amounts: readonly AmountMention[],
  words: readonly Word[],
): Map<PlantMention, AmountMention[]> {
  const given = new Map<PlantMention, AmountMention[]>(plants.map((one) => [one, []]));
  const [only, second] = plants;
  if (only === undefined) return given;
  const each = amounts.find((one) => one.each === true);
  if (second === undefined) {
    // "into 9 pots, 31 of them": a number behind a preposition counts last.
    const led = (one: AmountMention) =>
      one.use === "count" &&
      /^(?:into|in|at|by|every|with|for|under|per|after|over|plus|another)$/.test(words[one.from - 1]?.lower ?? "")
        ? 1
        : 0;
    given.set(
      only,
      [...amounts].sort((a, b) => led(a) - led(b)),
    );
    return given;
  }
  if (each !== undefined && amounts.length === 1) {
    for (const one of plants) given.set(one, [each]);
    return given;
  }
  const first = amounts[0];
  const leads = first !== undefined && first.from < only.from;
  // A comma or an "and" between a number and a name says that they are not one another's.
  const reached = [0];
  for (const { text } of words) reached.push((reached.at(-1) ?? 0) + (APART.has(text) ? 4 : 1));
  const gap = (from: number, end: number) => (reached[end] ?? 0) - (reached[from] ?? 0);
  for (const amount of amounts) {
    const after = plants.find((one) => one.from >= amount.end);
    const before = plants.findLast((one) => one.end <= amount.from);
    const toAfter = after === undefined ? 99 : gap(amount.end, after.from);
    const toBefore = before === undefined ? 99 : gap(before.end, amount.from);
    const whose = toAfter === toBefore ? (leads ? after : before) : toAfter < toBefore ? after : before;
    if (whose !== undefined) given.get(whose)?.push(amount);
  }
  return given;
}

/** The amounts of one plant as facts; of two of a sort the first counts. */
function amountFacts(kind: EventKind, amounts: readonly AmountMention[]): Partial<Fact> {
  const facts: { -readonly [Key in keyof Fact]?: Fact[Key] } = {};
  const weighed = amounts.some(({ use }) => use === "mass" || use === "volume" || use === "pieces");
  for (const one of amounts) {
    // "850 g off the two plants" counts no fruit.
    if (kind === "picked" && weighed && one.use === "count" && one.noun !== undefined) continue;
    if (one.use === "mass") facts.grams ??= one.value;
    else if (one.use === "volume") facts.litres ??= one.value;
    else if (one.use === "length" && one.noun !== undefined) facts.girthCm ??= one.value;
    else if (one.use === "length" || (one.use === "spacing" && kind === "measured")) facts.heightCm ??= one.value;
    else if (one.use === "temperature") facts.celsius ??= one.value;
    else if (facts.count === undefined || (kind === "preserved" && one.use === "vessel")) {
      facts.count = {
        value: one.value,
        approx: one.approx === true,
        ...(one.upTo === undefined ? {} : { upTo: one.upTo }),
      };
      facts.unit =
        one.use === "pieces" &&
        (kind === "picked" || kind === "gave away" || kind === "sold" || kind === "saved seed" || kind === "preserved")
          ? one.unit
          : undefined;
    }
  }
  if (facts.count !== undefined && !Number.isInteger(facts.count.value) && kind !== "picked") facts.count = undefined;
  return facts;
}
