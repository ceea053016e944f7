/**
 * The plant a stretch of words names: a variety or crop the garden knows, else a variety taken as it is named.
 */
import { monthNumber, weekdayNumber } from "../calendar.ts";
import type { EventKind } from "../model.ts";
import { cropOfCultivar } from "./crops.ts";
import type { Line } from "./line.ts";
import { lineProblem } from "./line-rules.ts";
import { isCapital, type Word } from "./line-words.ts";
import { twoVarieties } from "./names.ts";
import { numberAt } from "./numbers.ts";
import { pickUnitCalled } from "./quantities.ts";
import { isDoer } from "./reading/doers.ts";
import { lemmasFrom } from "./reading/lemmas.ts";

export interface NamedPlant {
  readonly variety?: string | undefined;
  readonly crop?: string | undefined;
  /** The name as written, of a variety that no file describes. */
  readonly title?: string | undefined;
  /** Other varieties of the same name. */
  readonly others?: readonly string[] | undefined;
  readonly from: number;
  readonly end: number;
}

/** Words at which a name ends, unless a known name goes over them ("Lady in Red"). */
const ends = new Set(
  (
    "in into from on onto at to by under between with without near next along behind beside against for because as after before until " +
    "till through indoors outdoors outside inside undercover where which that who when while if since so but and & + plus is are was " +
    "were has have had then than or still now just all there this these those it them they apart today yesterday off over up down not"
  ).split(" "),
);
/** Words that stand before a plant and are no part of its name. */
const describing = new Set(
  (
    "the a an of some more my our your his her their another other few several many most first last final next early late earliest latest " +
    "young small big large huge tiny little good nice decent best better poor leggy sturdy strong weak healthy spare extra old new ripe " +
    "green red white yellow purple black orange pink blue dark pale golden brown baby mixed assorted potted rooted bare bareroot root " +
    "self sown self-sown volunteer overwintered spring summer autumn winter fall fresh dried dead frosted bolted remaining rest whole " +
    "half both every each only main bought given home-grown homegrown grafted module-grown plug main-crop maincrop everything rows row " +
    "tray trays pot pots packet packets pinch patch block bed beds bag bags trug trugs bowl bowlful basket basketful bucket lot lots bit " +
    "load loads colander kilo handful couple dozen female male single double second third sideshoots climbing dwarf bush hardy tender " +
    "organic hybrid heritage heirloom saved cherry sweet seed height"
  ).split(" "),
);
/** Of these, the ones that are no part of any name. */
const articles = new Set(
  "the a an of some more my our your his her their another other few several many most last first rest half both every each only bought given".split(
    " ",
  ),
);
/** A name in lower case that has one of these is no name. */
const neverNames = new Set(
  (
    "ones one it them they everything everyone anything something nothing rest lot lots all both none half most many few some others " +
    "brassicas brassica alliums salads herbs flowers veg vegetables annuals perennials crops crop bed beds grass weeds water compost " +
    "too very well again badly slowly late early soon here there out off away back much bit outside inside seeds plants seedlings today " +
    "hill hills mound mounds station stations gift gifts present swap swaps raining house car time day week month nothing more less enough about something what how me us him her you holes hole stuff things"
  ).split(" "),
);
/** Nouns that follow a plant's name and say nothing new. */
export const plainNouns = new Set(["plants", "plant", "seeds", "seed"]);
/** Nouns that follow a plant's name and say what was handled; they are kept as detail. */
export const plantNouns = new Set(
  (
    "seedlings seedling sets set cloves clove tubers tuber corms corm slips slip crowns crown plugs plug starts bulbs bulb runners runner " +
    "cuttings cutting divisions division roots root canes cane bushes bush trees tree offsets rhizomes vines vine pips"
  ).split(" "),
);

/** No name is longer; without an end, a line of two thousand hyphens is looked through from each of them. */
const LONGEST_PHRASE = 60;

/** The end of the stretch of words that begins at `from` and may be one name. */
export function phraseEnd(line: Line, from: number): number {
  const quote = closingQuote(line, from);
  let at = quote === undefined ? from : quote + 1;
  while (at < line.end && at < from + LONGEST_PHRASE) {
    const word = line.words[at];
    if (word === undefined || word.text === "&" || word.text === "+") break;
    if (word.kind === "mark" && !/^[-/'‘’"“”]$/.test(word.text)) break;
    // "Aquadulce x20"
    if (at > from && /^[x×]$/.test(word.lower) && line.words[at + 1]?.kind === "number") break;
    if (ends.has(word.lower) && (at > from || !isCapital(word))) break;
    // "F1" and "Lola33" go on; a number or hyphen that stands apart begins something else.
    const apart = line.words[at - 1]?.end !== word.start;
    if (at > from && apart && ((word.kind === "number" && line.words[at - 1]?.text !== "-") || word.text === "-"))
      break;
    at += 1;
  }
  return at;
}

function isQuote(word: Word): boolean {
  return /^['‘’"“”]$/.test(word.text);
}

function closingQuote(line: Line, from: number): number | undefined {
  const open = line.words[from];
  if (open === undefined || !/^['‘"“]$/.test(open.text)) return undefined;
  for (let at = from + 1; at < line.end && at < from + 8; at++) {
    const word = line.words[at];
    if (word !== undefined && /^['’"”]$/.test(word.text)) return at;
  }
  return undefined;
}

/** The first plant the garden knows in a stretch of words. */
export function knownPlant(line: Line, from: number, end: number): NamedPlant | undefined {
  for (let at = from; at < end; at++) {
    const found = line.names.plantAt(line.words, at);
    if (found === undefined || found.end > line.end) continue;
    const bed = line.names.at("bed", line.words, at);
    // "Squash Bed" is no squash.
    if (bed === undefined || bed.end <= found.end) return { ...found, from: at };
    at = bed.end - 1;
  }
  return undefined;
}

/**
 * The plant that a stretch of words names. A crop word beside unknown words names a variety of that crop ("Nantes
 * carrots"), unless those words only describe it ("young carrots").
 */
export function plantIn(
  line: Line,
  from: number,
  end: number,
  kind: EventKind,
  counted: boolean,
): NamedPlant | undefined {
  const plant = knownPlant(line, from, end);
  if (plant?.variety !== undefined) return plant;
  if (plant === undefined)
    return unknownPlant(line, skipNouns(line, skipWords(line, from, end, articles), end), end, kind, counted);
  const quoted = quotedPlant(line, from, end, plant, kind);
  if (quoted !== undefined) return quoted;
  const start = skipWords(line, from, plant.from, describing);
  const whole = line.slice(start, plant.end);
  const cultivarOf = cropOfCultivar(whole);
  // "Sugar snap" is the crop, though a cultivar of it has no other name.
  const isCrop = start === plant.from && cultivarOf === plant.crop;
  if (cultivarOf !== undefined && !isCrop) return { title: whole, crop: cultivarOf, from: start, end: plant.end };
  const before = unknownPlant(line, start, plant.from, kind, true);
  if (before !== undefined) return { ...before, crop: plant.crop, end: plant.end };
  const bracketed = inBrackets(line, plant, kind);
  if (bracketed !== undefined) return bracketed;
  const after = line.words[plant.end];
  if (plant.end < end && after !== undefined && (isCapital(after) || isQuote(after)) && !plantNouns.has(after.lower)) {
    const named = unknownPlant(line, plant.end, end, kind, true);
    if (named !== undefined) return { ...named, crop: plant.crop, from: plant.from };
  }
  return plant;
}

/** "“Pink Fir Apple” potatoes": a crop word within quotation marks is part of the name. */
function quotedPlant(
  line: Line,
  from: number,
  end: number,
  within: NamedPlant,
  kind: EventKind,
): NamedPlant | undefined {
  const start = skipWords(line, from, end, articles);
  const close = closingQuote(line, start);
  if (close === undefined || close >= end || within.from > close) return undefined;
  const named = unknownPlant(line, start, close + 1, kind, true);
  if (named === undefined) return undefined;
  const crop = line.names.at("crop", line.words, close + 1);
  return crop === undefined || crop.end > end ? named : { ...named, crop: crop.id, end: crop.end };
}

/** "garlic (Germidour)" */
function inBrackets(line: Line, crop: NamedPlant, kind: EventKind): NamedPlant | undefined {
  if (line.words[crop.end]?.text !== "(") return undefined;
  const close = line.words.findIndex((word, at) => at > crop.end && word.text === ")");
  const first = line.words[crop.end + 1];
  if (close < 0 || close > crop.end + 6 || first === undefined || !isCapital(first)) return undefined;
  if (!allCapitals(line.words.slice(crop.end + 1, close))) return undefined;
  const named = unknownPlant(line, crop.end + 1, close, kind, true);
  return named?.end === close ? { ...named, crop: crop.crop, from: crop.from, end: close + 1 } : undefined;
}

/** "Bleu de Solaise" is a name, "North end" is not. */
export function allCapitals(words: readonly Word[]): boolean {
  return words.every((word) => word.kind !== "word" || isCapital(word) || nameJoints.test(word.lower));
}

/** Small words within a name: "Nero di Toscana", "Black from Tula". */
export const nameJoints = /^(?:di|de|da|du|des|d|of|the|and|von|van|le|la|a|au|aux|in|from)$/;

/** The ids of a plant that a line speaks of; a variety nobody described is taken as it is named. */
export function takePlant(line: Line, plant: NamedPlant): { variety?: string | undefined; crop?: string | undefined } {
  if (plant.title !== undefined) {
    const variety = line.names.takeVariety(plant.title, plant.crop, line.place);
    if (variety !== undefined) warnNearVariety(line, plant.title, variety);
    return variety === undefined ? { crop: plant.crop } : { variety };
  }
  if (plant.variety === undefined) return { crop: plant.crop };
  if (!line.names.isDescribed("variety", plant.variety)) {
    warnNearVariety(line, line.names.title("variety", plant.variety), plant.variety);
  }
  if (plant.others !== undefined && plant.others.length > 0) {
    const ids = [plant.variety, ...plant.others];
    line.problems.push(twoVarieties(ids, line.slice(plant.from, plant.end), line.names, line.place));
  }
  return { variety: plant.variety };
}

function skipWords(line: Line, from: number, end: number, skipped: ReadonlySet<string>): number {
  let at = from;
  while (at < end) {
    const word = line.words[at];
    if (word === undefined || isQuote(word)) break;
    const joined = word.text === "-";
    // "black-seeded" is one word of a name, "bare-root" and "well-grown" only describe.
    const next = line.words[at + 2];
    const compound =
      line.words[at + 1]?.text === "-" &&
      line.words[at + 1]?.start === word.end &&
      next !== undefined &&
      !skipped.has(next.lower);
    if (compound && !joined && skipped.has(word.lower)) break;
    if (
      !joined &&
      !(skipped.has(word.lower) && (!isCapital(word) || word.lower === "the")) &&
      numberAt(line.words, at) === undefined
    )
      break;
    at += 1;
  }
  return at;
}

/** "40 cloves of Germidour" */
function skipNouns(line: Line, from: number, end: number): number {
  return plantNouns.has(line.lower(from)) && line.lower(from + 1) === "of" && from + 2 < end ? from + 2 : from;
}

/** A variety no file describes, when the words look like a name. */
function unknownPlant(
  line: Line,
  from: number,
  end: number,
  kind: EventKind,
  counted: boolean,
): NamedPlant | undefined {
  let [first, last] = [from, end];
  while (last > first + 1 && isNounAfterName(line.lower(last - 1))) last -= 1;
  const close = closingQuote(line, first);
  const quoted = close !== undefined && close < last;
  if (quoted) last = close + 1;
  const nameEnd = last;
  while (first < last && isQuoteAt(line, first)) first += 1;
  while (last > first && isQuoteAt(line, last - 1)) last -= 1;
  const word = line.words[first];
  if (word === undefined || first >= last || word.kind !== "word" || last - first > 6) return undefined;
  if (!quoted && !looksLikeName(line, first, last, kind, counted)) return undefined;
  const title = line.slice(first, last).replace(/\s+/g, " ");
  // A bed's name in the place of a plant's is still a bed.
  return line.names.find("bed", title) === undefined ? { title, from, end: nameEnd } : undefined;
}

function isNounAfterName(lower: string): boolean {
  return plantNouns.has(lower) || plainNouns.has(lower) || pickUnitCalled(lower) !== undefined;
}

function isQuoteAt(line: Line, at: number): boolean {
  const word = line.words[at];
  return word !== undefined && isQuote(word);
}

/** Capitals make a name; in lower case only what is sown or planted by number can be one. */
function looksLikeName(line: Line, from: number, end: number, kind: EventKind, counted: boolean): boolean {
  const first = line.words[from];
  if (first === undefined) return false;
  if (isCapital(first) && end - from > 1) return first.text !== "I";
  // "Picked 2 kg": a word for what was done opens a sentence, and "Marnie ate four" tells who did.
  if (isCapital(first) && (isDeed(first.lower) || isDoer(line.words, from))) return false;
  if (isCapital(first))
    return monthNumber(first.lower) === undefined && weekdayNumber(first.lower) === undefined && first.text !== "I";
  if (!(kind === "sowed" || kind === "planted" || kind === "potted on") && !counted) return false;
  // "the remaining 9 Musselburgh": words before another amount are no name.
  const hyphens = line.words.slice(from, end).filter((word) => word.text === "-").length;
  if (end - from - 2 * hyphens > 3 || line.words[end]?.kind === "number") return false;
  if (line.slice(from, end).length < 3) return false;
  for (let at = from; at < end; at++)
    if (neverNames.has(line.lower(at)) || plantNouns.has(line.lower(at))) return false;
  return kind === "sowed" || kind === "planted" || kind === "potted on";
}

/** "picked", "received": what was done to plants, in one word. */
function isDeed(lower: string): boolean {
  return lower.endsWith("ed") && lemmasFrom(lower).some(({ words }) => words.length === 1);
}

function warnNearVariety(line: Line, title: string, variety: string): void {
  if (line.names.isDescribed("variety", variety)) return;
  const near = line.names.slipFor("variety", title);
  if (near === undefined) return;
  line.problems.push(
    lineProblem(
      "note/unknown-variety",
      line.place,
      `No file describes a variety "${title}", so it is taken as a new one.`,
      `Did you mean "${near}"?`,
    ),
  );
}
