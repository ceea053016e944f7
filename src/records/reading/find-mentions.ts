/** All mentions of a line, in any order. Names are found first and nothing reaches into one: "6 January King" is no date. */
import { daysBetween } from "../../calendar.ts";
import type { Day } from "../../model.ts";
import { bedNouns } from "../bed-words.ts";
import { isCapital, type Word, wordsOf } from "../line-words.ts";
import type { Names } from "../names.ts";
import type { UnitSystem } from "../units.ts";
import { amountMention } from "./amounts.ts";
import { cuesAt } from "./cues.ts";
import { dayAt, noDayAt } from "./days.ts";
import { lemmasFrom } from "./lemmas.ts";
import type { BedMention, Mention, VerbMention } from "./mention.ts";
import { joinPlants, ownPlantAt, tablePlantAt } from "./plants.ts";
import type { Pest } from "./tables/pests.ts";
import { beginsName, causeAt, gearAt, isOrdinary, standAt } from "./vocabulary.ts";

export interface FindContext {
  readonly names: Names;
  readonly noteDay: Day;
  readonly system: UnitSystem;
  /** "7/20" is the 20th of July. */
  readonly monthFirst: boolean;
}

/** The words of a text and what is found in them. */
export interface Seen {
  readonly words: readonly Word[];
  readonly mentions: readonly Mention[];
}

/** What was seen of the texts of a line by its context: each reader looks at the whole line, and some of them at parts of it. */
const seenBefore = new WeakMap<FindContext, Map<string, Seen>>();

export function seenIn(text: string, context: FindContext): Seen {
  let known = seenBefore.get(context);
  if (known === undefined) {
    known = new Map();
    seenBefore.set(context, known);
  }
  let seen = known.get(text);
  if (seen === undefined) {
    const words = wordsOf(text);
    seen = { words, mentions: findMentions(words, context) };
    known.set(text, seen);
  }
  return seen;
}

export function findMentions(words: readonly Word[], context: FindContext): readonly Mention[] {
  const taken = new Uint8Array(words.length);
  const found: Mention[] = [];
  const keep = (mention: Mention) => {
    found.push(mention);
    taken.fill(1, mention.from, mention.end);
  };
  const free = (at: number, end: number) => {
    for (let other = at; other < end; other++) if (taken[other] === 1) return false;
    return true;
  };
  for (let at = 0; at < words.length; at++) {
    if (taken[at] === 1 || words[at]?.kind === "mark") continue;
    const name = nameAt(words, at, context);
    if (name !== undefined) {
      keep(name);
      at = name.end - 1;
    }
  }
  const named = taken.slice();
  const days = new Uint8Array(words.length);
  const picks = verbMentions(words, taken).some(({ kinds }) => kinds[0] === "picked" && kinds.length === 1);
  for (let at = 0; at < words.length; at++) {
    if (taken[at] === 1) continue;
    // "Gardener's Delight 9/12" is a share of seeds, not a day; nothing is picked by shares, but on a day of late.
    const isShare =
      at > 0 &&
      taken[at - 1] === 1 &&
      words[at]?.kind === "number" &&
      found.some((one) => one.type === "plant" && one.end === at);
    const day = isShare && !picks ? undefined : dayAt(words, at, context.noteDay, context.monthFirst);
    const noDay = day === undefined && !isShare ? noDayAt(words, at) : undefined;
    if (noDay !== undefined && free(at, noDay)) {
      keep({ type: "amount", use: "label", from: at, end: noDay, value: 0 });
      found.push({ type: "cue", from: at, end: noDay, is: "may" });
    }
    if (isShare && picks && !isOfLate(day?.day, context.noteDay)) {
      if (words[at + 1]?.text === "/" && words[at + 2]?.kind === "number" && free(at, at + 3))
        keep({ type: "amount", use: "label", from: at, end: at + 3, value: 0 });
      continue;
    }
    if (day === undefined || !free(at, day.end)) continue;
    keep({ type: "day", from: at, end: day.end, day: day.day });
    // A day behind the note's own is still to come.
    if (day.day > context.noteDay) found.push({ type: "cue", from: at, end: day.end, is: "future" });
    days.fill(1, at, day.end);
  }
  for (let at = 0; at < words.length; at++) {
    if (taken[at] === 1) continue;
    // "Marketmore 76 cucumber": a number between a name and its crop is the name's.
    const inName =
      words[at]?.kind === "number" &&
      found.some((one) => one.type === "plant" && one.basis !== "crop" && one.end === at) &&
      found.some((one) => one.type === "plant" && one.basis === "crop" && one.from === at + 1);
    const behindBed = found.some((one) => one.type === "bed" && one.end === at);
    const amount = inName || isOfPlaceName(words, at) ? undefined : amountMention(words, at, context.system, behindBed);
    if (amount !== undefined && amount.end > at && free(at, amount.end)) keep(amount);
  }
  for (const verb of ownVerbMentions(words, taken, found, context.names)) keep(verb);
  const verbs = verbMentions(words, taken);
  for (const verb of verbs) keep(verb);
  for (let at = 0; at < words.length; at++) {
    if (taken[at] === 1) continue;
    const gear = gearAt(words, at);
    if (gear !== undefined && free(at, gear.end))
      keep({ type: "gear", from: at, end: gear.end, text: textOf(words, at, gear.end) });
  }
  for (let at = 0; at < words.length; at++) {
    const stand = standAt(words, at);
    if (stand !== undefined) found.push({ type: "stand", from: at, end: stand.end, nursery: stand.nursery });
    // "Kelvedon Wonder" wonders at nothing.
    if (named[at] === 1) continue;
    for (const cue of cuesAt(words, at)) {
      // "On 14 May" doubts nothing.
      if (cue.is === "may" && words[at]?.lower === "may" && days[at] === 1) continue;
      found.push({ type: "cue", from: at, end: cue.end, is: cue.is });
    }
  }
  return joinPlants(words, found, context.names);
}

/** Within two months before the note. */
function isOfLate(day: Day | undefined, noteDay: Day): boolean {
  return day !== undefined && day <= noteDay && daysBetween(day, noteDay) <= 61;
}

/** "Wicking Bed Three: pulled 20 carrots": the number of a bed that no file describes, at the head of its line. */
function isOfPlaceName(words: readonly Word[], at: number): boolean {
  const [noun, number] = [words[at - 1], words[at]];
  if (noun === undefined || number === undefined || !bedNouns.has(noun.lower)) return false;
  if (words[at + 1]?.text !== ":" || words[at + 1]?.start !== number.end) return false;
  return words.slice(0, at).every((word) => word.kind === "word" && (isCapital(word) || word.lower === "the"));
}

/** Most words are everyday ones that begin no name; nothing is looked up for them. */
function beginsNone(word: Word, names: Names): boolean {
  if (names.begins(word.key) || beginsName(word.key)) return false;
  if (word.kind !== "word") return true;
  return !isCapital(word) && !word.lower.endsWith("s") && (word.lower.length < 4 || isOrdinary(word.lower));
}

function nameAt(words: readonly Word[], at: number, { names }: FindContext): Mention | undefined {
  if (beginsNone(words[at] as Word, names)) return undefined;
  const bed = bedAt(words, at, names);
  const own = ownPlantAt(words, at, names);
  const gear = names.at("gear", words, at);
  const cause = causeAt(words, at);
  const table = tablePlantAt(words, at, names);
  const candidates: Mention[] = [];
  if (bed !== undefined) candidates.push(bed);
  if (own !== undefined) candidates.push(own);
  if (cause !== undefined)
    candidates.push({
      type: "cause",
      from: at,
      end: cause.end,
      text: causeSaid(words, at, cause.end, cause.row),
      of: cause.row.kind,
    });
  if (table !== undefined) candidates.push(table);
  if (gear !== undefined)
    candidates.push({ type: "gear", from: at, end: gear.end, id: gear.id, text: textOf(words, at, gear.end) });
  let best: Mention | undefined;
  for (const one of candidates) if (best === undefined || one.end > best.end) best = one;
  return best;
}

/** A pest by the words that name it; of what is told by a verb ("damped off", "bolted") the noun. */
function causeSaid(words: readonly Word[], at: number, end: number, row: Pest): string {
  return row.kind === "pest" || row.kind === "disease"
    ? /^(?:damp|rust|rot|wilt|mildew|blight)/.test(words[at]?.lower ?? "") && end - at <= 2
      ? row.cause
      : textOf(words, at, end)
    : row.cause;
}

/** A bed of one ordinary word ("Fence") is meant by it in small letters only where a place stands. */
function bedAt(words: readonly Word[], at: number, names: Names): BedMention | undefined {
  const bed = names.at("bed", words, at);
  const word = words[at];
  if (bed === undefined || word === undefined) return undefined;
  const before = words[at - 1]?.lower === "the" ? words[at - 2] : words[at - 1];
  const lead = before?.lower ?? "";
  const placed = /^(?:in|into|to|from|at|on|onto|of|under|by|along|and|off|inside|outside|over|→)$/.test(lead);
  if (bed.end === at + 1 && word.kind === "word" && isOrdinary(word.lower) && !isCapital(word) && !placed)
    return undefined;
  const role = /^(?:to|into|onto|→)$/.test(lead)
    ? "to"
    : /^(?:from|off)$/.test(lead) || (lead === "of" && words[at - 2]?.lower === "out")
      ? "from"
      : "in";
  return { type: "bed", from: at, end: bed.end, id: bed.id, role };
}

/** Verbs of the garden's own word list; one that is said so of a crop counts only beside that crop. */
function ownVerbMentions(
  words: readonly Word[],
  taken: Uint8Array,
  found: readonly Mention[],
  names: Names,
): readonly VerbMention[] {
  const crops = new Set(
    found.map((one) =>
      one.type !== "plant" ? undefined : one.variety === undefined ? one.crop : names.cropOf(one.variety),
    ),
  );
  return names.ownVerbs
    .filter(({ crop }) => crop === undefined || crops.has(crop))
    .flatMap(({ words: form, kind }) =>
      words.flatMap((_, at): readonly VerbMention[] => {
        const end = taken[at] === 1 ? undefined : endOf(words, at, form, taken);
        return end === undefined ? [] : [{ type: "verb", from: at, end, kinds: [kind], weak: false, own: true }];
      }),
    );
}

/** Forms of verbs, the longest first; a base form that is a noun as well counts less where no verb stands. */
export function verbMentions(words: readonly Word[], taken = new Uint8Array(words.length)): VerbMention[] {
  const verbs: VerbMention[] = [];
  for (let at = 0; at < words.length; at++) {
    const word = words[at];
    if (word === undefined || word.kind === "mark" || taken[at] === 1) continue;
    for (const lemma of lemmasFrom(word.lower)) {
      const end = endOf(words, at, lemma.words, taken);
      if (end === undefined) continue;
      verbs.push({ type: "verb", from: at, end, kinds: lemma.kinds, weak: lemma.bare && !verbStands(words, at) });
      at = end - 1;
      break;
    }
  }
  return verbs;
}

function endOf(words: readonly Word[], at: number, form: readonly string[], taken: Uint8Array): number | undefined {
  let word = at;
  for (const [index, part] of form.entries()) {
    if (index > 0 && words[word]?.text === "-") word += 1;
    if (words[word]?.lower !== part || taken[word] === 1) return undefined;
    word += 1;
  }
  return word;
}

const beforeVerb =
  /^(?:i|we|they|he|she|you|to|and|then|just|also|&|will|must|should|did|have|has|had|got|been|now|finally|today)$/;

function verbStands(words: readonly Word[], at: number): boolean {
  const before = words[at - 1];
  return before === undefined || /^[.!?;:,\])–—-]$/.test(before.text) || beforeVerb.test(before.lower);
}

export function textOf(words: readonly Word[], from: number, end: number): string {
  let out = "";
  for (let at = from; at < end; at++) {
    const word = words[at];
    if (word === undefined) continue;
    out += at > from && words[at - 1]?.end !== word.start ? ` ${word.text}` : word.text;
  }
  return out;
}
