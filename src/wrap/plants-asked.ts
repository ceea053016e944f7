/** Plants that a viewer's question speaks of, and what the records tell of them: which, from where, since when, how much, how said. */
import { cropOf } from "../crop-of.ts";
import { sayDay, sayList, sayNumber, sayWeight } from "../language/index.ts";
import type { Garden, Place, Planting } from "../model.ts";
import { commonWords } from "./common-words.ts";
import { varietyDisclosure } from "./disclosures.ts";
import type { FilmingDay } from "./filming-day.ts";
import { whichIsMeant } from "./gear-asked.ts";
import { plainWord } from "./spoken-words.ts";
import { openSource } from "./variety-lines.ts";

export interface AnswerFound {
  /** Undefined where the records do not tell, or would have to tell of too many. */
  readonly text: string | undefined;
  readonly sources: readonly Place[];
  /** What the person has to decide first: which of several is meant. */
  readonly asks?: string | undefined;
  /** Why it may not be the answer. */
  readonly guess?: string | undefined;
}

export interface About extends Plants {
  readonly question: string;
  readonly words: ReadonlySet<string>;
  readonly day: FilmingDay;
}

interface Plants {
  readonly lots: readonly Planting[];
  /** The question names the variety itself, and not only its crop. */
  readonly named: boolean;
  readonly bed: string | undefined;
}

type Tell = (about: About) => (AnswerFound & { readonly lots?: readonly Planting[] }) | undefined;

/** What a question asks, in the order tried. */
const asks: readonly (readonly [RegExp, Tell])[] = [
  [/\bpronounce|\bhow (?:do|would|d'you) (?:you|i|we|one) (?:say|spell)\b/i, howToSay],
  [
    /\bwhere\b|\bsource\b|\b(?:get|got|buy|bought|from|as)\b.{0,60}\b(?:seeds?|sets?|plugs?|starts?|slips?|cuttings?)\b|\bsaved\b/i,
    whereFrom,
  ],
  [/\bwhen\b.*\b(?:sow|sown|plant|planted|started?)\b/i, when],
  [/\bhow (?:much|many|heavy)\b/i, howMuch],
  [/\bname of\b|\b(?:variety|varieties|called)\b|\b(?:which|what) (?:kind|sort|type|one)\b/i, which],
  [/\b(?:which|what)(?:['’]s|,?\s+(?:is|are|was|were|r))\s+(?:the|that|those|this|these)\b|\bwhich is\b/i, which],
];

/** "Which okra", "what lovely red tomato": before the plant itself. */
const namesPlant = /\b(?:which|what)\s+(?:[\p{L}'’-]+\s+){0,2}$/iu;
/** What no record tells, whatever plant it is asked of. */
const asksOther =
  /\b(?:best|better|time|month|way|distance|depth|spacing|apart|deep|far|soil|feed|fed|food|compost|water|often|cost|pay|money|trick|secret|wrong|problem|cook|eat|recipe|need|use)\b/i;

/** Varieties that an answer may tell of at once. */
const MOST_TOLD = 3;

export function plantsAsked(about: About): AnswerFound | undefined {
  if (about.lots.length === 0) return undefined;
  for (const [pattern, tell] of [...asks, [namesPlant, which] as const]) {
    const text = pattern === namesPlant ? beforePlant(about) : about.question;
    const isOther = (tell === which || tell === howMuch) && asksOther.test(about.question);
    const found = !isOther && pattern.test(text) ? tell(about) : undefined;
    if (found === undefined) continue;
    const { lots = about.lots, ...told } = found;
    return { ...withCandidates(told, { ...about, lots }), guess: told.guess ?? guessIn(lots) };
  }
  return undefined;
}

/** The question up to the plant it names. */
function beforePlant(about: About): string {
  const words = about.question.split(/(?<=[^\p{L}\p{N}'’])(?=[\p{L}\p{N}])/u);
  const at = plantWordAt(
    words.map((word) => plainWord(word.trim())),
    about,
  );
  return at === undefined ? "" : words.slice(0, at).join("");
}

/** Of plants that are named, and asked something of which no record tells, what is known of them. */
export function plantsKnown(about: About): AnswerFound | undefined {
  const { lots, named } = about;
  if (!named) return undefined;
  const told = lots.length === 0 ? undefined : whereFrom(about);
  const guess = "This is what the records tell of it; whether it answers the question is for you to say.";
  return told === undefined ? undefined : { ...told, guess };
}

/** Words of its own that plants must share with a question that names none of them. */
const DESCRIBED_BY = 2;

/** "The red flowers with black leaves": the one variety whose words say most of it, where it is one. */
export function plantsDescribed({ words, day, question, lots }: About): AnswerFound | undefined {
  if (lots.length > 0 || !/\b(?:which|what|name|called|variety)\b/i.test(question)) return undefined;
  const all = [...day.beds.values()].flatMap(({ living }) => living.filter((lot) => isOpen(lot, day.garden)));
  const shared = describedBy(all, words, day.garden);
  const most = Math.max(0, ...shared.map(({ count }) => count));
  const names = titles(
    day,
    shared.filter(({ count }) => count === most).map(({ lot }) => lot),
  );
  const [name] = names;
  if (most < DESCRIBED_BY || name === undefined || names.length > 1) return undefined;
  const meant = all.filter(({ variety }) => day.garden.varieties.get(variety ?? "")?.title === name);
  const guess = "The question names no plant; its words are like those of this one's file.";
  return { text: `${name}.`, sources: sources(meant, day.garden), guess };
}

/** Where the question first names one of the plants it speaks of. */
export function plantWordAt(words: readonly string[], { lots, day: { garden } }: About): number | undefined {
  const names = new Set(
    lots.flatMap((lot) => {
      const crop = cropOf(garden, lot);
      const variety = garden.varieties.get(lot.variety ?? "");
      return [crop?.name, crop?.plural, variety?.title, ...(variety?.alsoSpelled ?? [])].flatMap((name) =>
        (name ?? "").split(/[^\p{L}\p{N}'’]+/u).map(plainWord),
      );
    }),
  );
  const at = words.findIndex((word) => word.length > 2 && names.has(word));
  return at < 0 ? undefined : at;
}

/** A crop of which several varieties stand there: which is meant only the person who was asked can tell. */
function withCandidates(found: AnswerFound, { lots, named, day }: About): AnswerFound {
  const all = titles(day, lots);
  if (named || all.length < 2) return found;
  return { ...found, text: all.length > MOST_TOLD ? undefined : found.text, asks: whichIsMeant(all) };
}

function guessIn(lots: readonly Planting[]): string | undefined {
  if (lots.some(({ takenToBeOver }) => takenToBeOver === true))
    return "It is taken to be over, because its season turned and no line says so.";
  if (lots.some(({ count }) => count?.approx === true)) return "Its number is an estimate.";
  return undefined;
}

/** Plants a question speaks of: a variety by name, else a crop, in the bed it names if it names one. */
export function plantsMeant(question: string, words: ReadonlySet<string>, { garden, beds }: FilmingDay): Plants {
  const lower = question.toLowerCase();
  const bed = [...garden.beds.values()].find(({ title, alsoCalled }) =>
    [title, ...alsoCalled].some((name) => lower.includes(name.toLowerCase())),
  )?.id;
  const all = [...beds.values()]
    .filter((one) => bed === undefined || one.bed.id === bed)
    .flatMap(({ living, ended }) => [...living, ...ended]);
  const open = all.filter((lot) => isOpen(lot, garden));
  const named = open.filter((lot) => {
    const variety = garden.varieties.get(lot.variety ?? "");
    return (
      variety !== undefined &&
      [variety.title, ...variety.alsoSpelled].some((name) => lower.includes(name.toLowerCase()))
    );
  });
  if (named.length > 0) return { lots: aliveOf(named), bed, named: true };
  const ofCrop = open.filter((lot) => {
    const crop = cropOf(garden, lot);
    return (
      crop !== undefined && [crop.name, crop.plural].some((name) => words.has(plainWord(name.split(" ").at(-1) ?? "")))
    );
  });
  return { lots: aliveOf(ofCrop), bed, named: false };
}

function isOpen({ private: isPrivate, variety }: Planting, garden: Garden): boolean {
  return !isPrivate && variety !== undefined && garden.varieties.get(variety)?.private !== true;
}

/** What stood there that day; else what had stood there. */
function aliveOf(lots: readonly Planting[]): readonly Planting[] {
  const alive = lots.filter(({ ended }) => ended === undefined);
  return alive.length > 0 ? alive : lots;
}

function titles({ garden }: FilmingDay, lots: readonly Planting[]): readonly string[] {
  return [...new Set(lots.flatMap(({ variety }) => garden.varieties.get(variety ?? "")?.title ?? []))];
}

function sources(lots: readonly Planting[], garden: Garden): readonly Place[] {
  const places = lots.flatMap(({ variety }) => garden.varieties.get(variety ?? "")?.place ?? []);
  return places.filter((place, index) => places.findIndex(({ file }) => file === place.file) === index);
}

/** "Which is the red lettuce by the gate?": of several, those whose own words share the question's. */
function which({ lots, words, day, named }: About): ReturnType<Tell> {
  const shared = describedBy(lots, words, day.garden);
  const most = Math.max(...shared.map(({ count }) => count));
  const meant = named || most === 0 ? lots : shared.filter(({ count }) => count === most).map(({ lot }) => lot);
  const names = titles(day, meant);
  if (names.length === 0) return undefined;
  const text = names.length === 1 ? `${names[0]}.` : `That day there were ${sayList(names)}.`;
  const [own] = most > 0 || named ? [] : describing(words, lots, day.garden);
  // "The knobbly one" may be one that did not stand there.
  const guess = own === undefined ? undefined : `It stood there, but nothing in its file says "${own}".`;
  return { text, sources: sources(meant, day.garden), lots: meant, guess };
}

/** Words of a question that tell one plant from another, and are not its crop. */
function describing(words: ReadonlySet<string>, lots: readonly Planting[], garden: Garden): readonly string[] {
  const crops = new Set(
    lots.flatMap((lot) => {
      const crop = cropOf(garden, lot);
      return [crop?.name, crop?.plural].flatMap((name) => (name ?? "").split(/[\s-]+/).map(plainWord));
    }),
  );
  return [...words].filter((word) => word.length > 2 && !asking.has(word) && !crops.has(word));
}

/** How many of a question's words stand in a variety's name, its file's text or its spot. */
function describedBy(
  lots: readonly Planting[],
  words: ReadonlySet<string>,
  garden: Garden,
): readonly { readonly lot: Planting; readonly count: number }[] {
  const told = [...words].filter((word) => word.length > 2 && !asking.has(word));
  return lots.map((lot) => {
    const variety = garden.varieties.get(lot.variety ?? "");
    const own = `${variety?.title ?? ""} ${variety?.body ?? ""} ${lot.spot ?? ""}`.split(/[^\p{L}]+/u).map(plainWord);
    return { lot, count: told.filter((word) => own.includes(word)).length };
  });
}

/** Words that tell no plant from another. */
export const asking: ReadonlySet<string> = new Set([
  ...[...commonWords].filter((word) => !/^(?:black|blue|gold|green|red|white|dark|small|big|long|sweet)$/.test(word)),
  ...(
    "which what variety varieties kind sort type the are there that this for and your you does did was were how where when who why " +
    "seed seeds plant plants grow grown growing year bed garden video film love please called"
  ).split(" "),
]);

function howToSay({ lots, day }: About): AnswerFound | undefined {
  const varieties = [...new Set(lots.flatMap(({ variety }) => day.garden.varieties.get(variety ?? "") ?? []))];
  const told = varieties.flatMap(({ title, sayAs }) => (sayAs === undefined ? [] : [`${title}: ${sayAs}`]));
  return told.length === 0 ? undefined : { text: `${told.join("; ")}.`, sources: sources(lots, day.garden) };
}

function whereFrom({ lots, day }: About): AnswerFound | undefined {
  const told = [...new Set(lots.map(({ variety }) => variety ?? ""))].flatMap((id) => {
    const variety = day.garden.varieties.get(id);
    const from =
      variety?.source === undefined
        ? undefined
        : (varietyDisclosure(variety).beside ?? openSource(variety.source, day.garden));
    return from === undefined ? [] : [`${variety?.title}: ${from}`];
  });
  return told.length === 0 ? undefined : { text: `${told.join("; ")}.`, sources: sources(lots, day.garden) };
}

function when({ lots, day }: About): AnswerFound | undefined {
  const near = { language: day.garden.settings.language, near: day.day };
  const told = lots.flatMap(({ variety, sown, planted }) => {
    const title = day.garden.varieties.get(variety ?? "")?.title;
    const parts = [
      ...(sown === undefined ? [] : [`sown on ${sayDay(sown, near)}`]),
      ...(planted === undefined ? [] : [`planted out on ${sayDay(planted, near)}`]),
    ];
    return title === undefined || parts.length === 0 ? [] : [`${title}: ${parts.join(", ")}`];
  });
  return told.length === 0 ? undefined : { text: `${told.join("; ")}.`, sources: lots.map(({ lastNote }) => lastNote) };
}

function howMuch({ lots, day }: About): AnswerFound | undefined {
  const { garden } = day;
  const told = lots.flatMap(({ variety, crop, picked, count }) => {
    const title = garden.varieties.get(variety ?? "")?.title ?? crop ?? "Plants";
    if (picked.grams > 0) return [`${title}: ${sayWeight(picked.grams, garden.settings.units)} by then`];
    return count === undefined ? [] : [`${title}: ${sayNumber(count.value)}`];
  });
  return told.length === 0 ? undefined : { text: `${told.join("; ")}.`, sources: lots.map(({ lastNote }) => lastNote) };
}
