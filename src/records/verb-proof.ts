/** Whether a verb that is also ordinary English begins a log line, and what its verb means by what follows it. */
import type { Crop, EventKind } from "../model.ts";
import { pieceOf } from "./crops.ts";
import type { Line, LineContext } from "./line.ts";
import { isCapital, type Word } from "./line-words.ts";
import { causeWords } from "./loss-causes.ts";
import type { Names } from "./names.ts";
import { knownPlant } from "./plant-names.ts";
import { amountAt } from "./quantities.ts";
import { type FoundVerb, gearVerbAt, verbsAt } from "./verb-forms.ts";

/** Things put up in beds, known by their word alone. */
const gearNouns = new Set(
  (
    "net nets netting mesh fleece cloche cloches tunnel tunnels cane canes pole poles arch arches trellis cover covers covering hoop hoops cage " +
    "cages collar collars frame frames strings string stakes supports wigwam wigwams obelisk obelisks tarp tarpaulin plastic cardboard shade " +
    "cloth row-cover wire wires fence fencing lid lids bag bags"
  ).split(" "),
);
const articles = /^(?:the|all|my|our|some|more|another|a|an|of|first|last|few|rest|half)$/;

/** Whether a word in small letters is one for things put up in beds. */
export function isGearNoun(lower: string): boolean {
  return gearNouns.has(lower);
}

/** The verb a line begins with, once what follows proves that it is meant as one. */
export function provenVerb(words: readonly Word[], context: LineContext): FoundVerb | undefined {
  return verbsAt(words).find((verb) => isProven(verb, words, context.names)) ?? gearVerbAt(words, context.names);
}

function isProven(verb: FoundVerb, words: readonly Word[], names: Names): boolean {
  if (verb.proof === undefined) return true;
  const next = words[verb.end];
  if (next === undefined) return false;
  if (next.text === ":" && verb.proof !== "gear") return true;
  let at = next.text === ":" ? verb.end + 1 : verb.end;
  while (articles.test(words[at]?.lower ?? "")) at += 1;
  switch (verb.proof) {
    case "colon":
      // "plan by 2027-04-01: …"
      return (
        verb.verb.kind === "plan" &&
        next.lower === "by" &&
        words.slice(verb.end, verb.end + 7).some(({ text }) => text === ":")
      );
    case "question":
      return words.at(-1)?.text === "?" || /^(?:which|what|where|when|why|how|who|whether|if|about)$/.test(next.lower);
    case "number":
      return next.kind === "number" || next.lower === "ph" || names.at("bed", words, at) !== undefined;
    case "trouble":
      return words.slice(verb.end, verb.end + 4).some((word) => causeWords.has(word.lower));
    case "gear":
      return (
        names.at("gear", words, at) !== undefined || words.slice(at, at + 3).some((word) => gearNouns.has(word.lower))
      );
    case "plant":
      return namesPlant(words, verb.end, at, names);
    case "next":
      return names.plantAt(words, at) !== undefined || amountOfPlant(words, verb.end, names);
    case "name":
      return namesPlant(words, verb.end, at, names) || startsName(words[at]);
  }
}

/** An amount or something known right behind the verb, or an amount of something known anywhere. */
function namesPlant(words: readonly Word[], end: number, at: number, names: Names): boolean {
  if (amountAt(words, end, "metric") !== undefined) return true;
  if (names.plantAt(words, at) ?? names.at("bed", words, at)) return true;
  for (let later = at; later < words.length; later++) {
    const word = words[later];
    if (word?.kind !== "word") continue;
    if (names.plantAt(words, later) && (later < at + 3 || words[later - 1]?.kind === "number")) return true;
  }
  return false;
}

/** "3 tomatoes", "6 pints of tomatoes", "2 packets of Nantes", "3 Elsanta strawberry". */
function amountOfPlant(words: readonly Word[], from: number, names: Names): boolean {
  const amount = amountAt(words, from, "metric");
  if (amount === undefined) return false;
  const { end } = amount;
  const of = [end, end + 1].find((at) => words[at]?.lower === "of");
  const named = words[from]?.kind === "number" && startsName(words[end]) ? end + 1 : undefined;
  return [end, of === undefined ? undefined : of + 1, named].some(
    (at) => at !== undefined && names.plantAt(words, at) !== undefined,
  );
}

function startsName(word: Word | undefined): boolean {
  return word !== undefined && isCapital(word) && word.text !== "I";
}

/**
 * "pulled" clears a planting, but what comes by weight or by the bunch, and roots and rhubarb, were picked; "lifted" and
 * "dug" pick, but flowers are lifted to be stored, and what stands for years is lifted to be divided; picking slugs off
 * is work. "transplanted" plants, but from one bed to another it moves.
 */
export function kindOf({ verb, form }: FoundVerb, line: Line, from: number): EventKind {
  if (form === "pulled") {
    const amount = amountAt(line.words, from, line.system);
    if (amount?.grams !== undefined || amount?.litres !== undefined || amount?.unit !== undefined) return "picked";
    const crop = cropIn(line, amount?.end ?? from);
    const piece = pieceOf(crop);
    const last = /^(?:all|last|rest|remaining|everything)$/.test(
      line.lower(line.lower(from) === "the" ? from + 1 : from),
    );
    return !last && (piece === "root" || piece === "bulb" || crop?.id === "rhubarb") ? "picked" : verb.kind;
  }
  if (form === "lifted" || form === "dug" || form === "dug up") {
    const crop = cropIn(line, from);
    if (crop?.use === "flower") return "cleared";
    return crop?.perennial === true ? "did" : verb.kind;
  }
  if (form === "transplanted" && goesFromBedToBed(line, from)) return "moved";
  if (form === "picked" && causeWords.has(line.lower(from))) return "did";
  return verb.kind;
}

/** "transplanted 12 leeks from Cold Frame to Long Bed" tells where they stood, and what stood in a bed moves. */
function goesFromBedToBed(line: Line, from: number): boolean {
  const roles = new Set<string>();
  for (let at = from; at < line.end; at++) {
    const role = line.lower(at);
    if (!/^(?:from|to|into|in)$/.test(role)) continue;
    const bed = line.names.at("bed", line.words, line.lower(at + 1) === "the" ? at + 2 : at + 1);
    if (bed !== undefined) roles.add(role === "from" ? "from" : "to");
  }
  return roles.size === 2;
}

function cropIn(line: Line, from: number): Crop | undefined {
  const plant = knownPlant(line, from, Math.min(line.end, from + 6));
  return line.names.crop(plant?.variety === undefined ? plant?.crop : line.names.cropOf(plant.variety));
}
