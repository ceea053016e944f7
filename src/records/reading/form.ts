/** The written form of a note line, verb first, as one more reader: what it makes of a line, and whether it left anything over. */
import type { Event, EventKind } from "../../model.ts";
import { wordsOf } from "../line-words.ts";
import type { Names } from "../names.ts";
import { type LineContext, type NoteLine, type ReadLine, readNoteLine } from "../note-line.ts";
import type { Fact } from "./fact.ts";
import type { FormReading } from "./features.ts";
import { type FindContext, findMentions } from "./find-mentions.ts";
import type { Mention } from "./mention.ts";

export interface FormLine extends FormReading {
  readonly read: ReadLine;
}

/** Kinds whose words are kept whole, so that nothing in them is left over. */
const whole = new Set<EventKind>(["to do", "done", "promised", "asked", "plan"]);

/** Undefined when the line does not begin with a verb of the table. Names it takes are given back when `keep` is false. */
export function readForm(line: NoteLine, context: LineContext, find: FindContext): FormLine | undefined {
  const read = readNoteLine(line, context);
  if (read === undefined || read.events.length === 0) return undefined;
  const clean =
    read.events.every((event) => isClean(event, find)) &&
    saysNoMore(line.text, find) &&
    read.events.every((event) => isPlain(event, context));
  return { read, facts: read.events.map((event) => factOf(event, context)), clean };
}

const rowWords =
  /^(?:a|an|the|of|in|long|short|half|full|small|big|rows?|drills?|trays?|pots?|modules?|packets?|lines?|blocks?|cells?|punnets?|bought|given|two|three|four|five|six|double|single|more)$/;

/** Whether what stands behind the first sentence or dash tells of nothing more. */
function saysNoMore(text: string, find: FindContext): boolean {
  const first = /[.!?;]\s+|\s[–—+-]\s/.exec(text);
  if (first === null) return true;
  const rest = text.slice(first.index + first[0].length);
  return !findMentions(wordsOf(rest), find).some(({ type }) => type === "plant" || type === "cause" || type === "gear");
}

/** Work of every kind is said with the same verbs as other things: it is plain only behind "did:" or of known plants and beds. */
const plainWork = new Set([
  "watered",
  "mulched",
  "weeded",
  "pruned",
  "fed",
  "staked",
  "netted",
  "hoed",
  "tied in",
  "earthed up",
  "tied",
  "deadheaded",
  "hardened off",
  "pinched out",
]);

/** Nothing in it is known only by how it is written, and it begins with a verb that says one thing. */
function isPlain(event: Event, { names, beds }: LineContext): boolean {
  if (whole.has(event.kind)) return true;
  const colon = /^[\p{L} -]+:/u.test(event.text);
  if (
    event.variety !== undefined &&
    !names.isDescribed("variety", event.variety) &&
    !isTitle(names.title("variety", event.variety))
  )
    return false;
  const named = event.variety !== undefined || event.crop !== undefined;
  if (event.kind === "did")
    return (
      colon ||
      (plainWork.has(event.verb) &&
        (named || saysBed(event, names) || /^(?:watered|weeded|mulched|fed) everything\b/i.test(event.text)))
    );
  if (
    /^(?:started|cut|pulled|pulled out|took out|put in|lifted|got|in|out|swapped|saved|collected|found|saw|seen|spotted|noticed)/.test(
      event.verb,
    ) &&
    !colon
  )
    return (
      named &&
      ((event.kind === "picked" && (event.grams !== undefined || event.unit !== undefined)) ||
        (event.kind === "cleared" && event.variety !== undefined && /\bfrom\b/.test(event.text)))
    );
  if (event.kind === "put up" || event.kind === "took down") return event.gear !== undefined;
  if (event.kind === "sowed" && event.nursery === true && beds.length === 0)
    return named && /\bindoors|inside|under (?:glass|cover)|trays?|modules?|pots?\b/.test(event.text);
  return colon || named || event.kind === "soil test" || event.celsius !== undefined;
}

function saysBed({ bed, text }: Event, names: Names): boolean {
  const words = wordsOf(text);
  return bed !== undefined && words.some((_, at) => names.at("bed", words, at)?.id === bed);
}

/** A name written as one: "Kelvedon Wonder". */
function isTitle(title: string): boolean {
  return (
    title.split(/[ -]/).every((word) => /^(?:\p{Lu}|\d|of$|de$|di$|the$|and$|la$|le$)/u.test(word)) &&
    /^\p{Lu}\p{L}{2}/u.test(title)
  );
}

/** Words behind which another time is only compared with: "earlier than last year". */
const compares = /^(?:than|like|as|from|since|unlike|after|before|of)$/;

/**
 * Whether the line is what its verb says: nothing in its first clause is left over, nothing in it says that it was not so or
 * is still to come, and what is left behind it tells of no other plants by number or by what was done to them.
 */
function isClean(event: Event, find: FindContext): boolean {
  if (whole.has(event.kind)) return true;
  const words = wordsOf(event.text);
  const stop = words.findIndex(
    (word, at) =>
      /^[,;(.]$/.test(word.text) &&
      at > 0 &&
      (word.text !== "." || words[at + 1] === undefined || words[at + 1]?.start !== word.end),
  );
  const first = stop < 0 ? words.length : stop;
  const mentions = findMentions(words, find);
  // "Marketmore 76 cucumber": the written form takes the number for one of another plant.
  if (mentions.some((one) => one.type === "plant" && /\d$/.test(one.title ?? "") && /\s\d+$/.test(one.title ?? "")))
    return false;
  for (const mention of mentions) {
    if (mention.type !== "cue" || !/^(?:not|past|may|future|correction)$/.test(mention.is)) continue;
    if (compares.test(words[mention.from - 1]?.lower ?? "")) continue;
    const closes = mention.end >= words.length - 1 && mention.is !== "not";
    if (mention.from < first || closes || mention.is === "correction") return false;
  }
  for (const rest of [event.detail, event.spot]) {
    const [begins] = (rest ?? "").split(", ");
    if (begins === undefined || begins === "") continue;
    const from = words[first]?.start ?? event.text.length;
    const inFirst = rest === event.detail && event.text.includes(begins) && event.text.indexOf(begins) < from;
    if (
      inFirst &&
      event.kind !== "trouble" &&
      event.kind !== "cured" &&
      !wordsOf(begins).every(({ kind, lower }) => kind === "number" || rowWords.test(lower))
    )
      return false;
    const left = findMentions(wordsOf(rest ?? ""), find);
    const has = (type: Mention["type"]) =>
      left.some(
        (one) =>
          one.type === type &&
          !(one.type === "verb" && one.weak) &&
          !(one.type === "amount" && !/^(?:count|mass|pieces|share|volume)$/.test(one.use)),
      );
    if (has("plant") && (has("amount") || has("verb"))) return false;
    if (
      rest === event.detail &&
      left.some((one) => one.type === "cause" && one.of !== "weather") &&
      event.kind !== "trouble" &&
      event.kind !== "lost" &&
      event.kind !== "cured"
    )
      return false;
  }
  return true;
}

export function factOf(event: Event, { names, note }: LineContext): Fact {
  const described = event.variety !== undefined && names.isDescribed("variety", event.variety);
  return {
    kind: event.kind,
    variety: described ? event.variety : undefined,
    title: event.variety === undefined || described ? undefined : names.title("variety", event.variety),
    crop: event.crop ?? (event.variety === undefined ? undefined : names.cropOf(event.variety)),
    count: event.count,
    unit: event.unit,
    grams: event.grams,
    litres: event.litres,
    heightCm: event.heightCm,
    spacingCm: event.spacingCm,
    celsius: event.celsius,
    ph: event.ph,
    bed: event.bed,
    toBed: event.toBed,
    nursery: event.nursery,
    day: event.day === note.day ? undefined : event.day,
    due: event.due,
    cause: event.cause,
    reason: event.reason,
    from: event.from,
    price: event.price,
    gear: event.gear,
    what: event.what,
  };
}
