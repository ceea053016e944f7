/** Promises with a condition, "once they fill in": they wait until the notes say that it has come. */

import { daysBetween } from "../calendar.ts";
import { cropOf } from "../crop-of.ts";
import { finderOf } from "../garden/index.ts";
import { plainWords } from "../language/index.ts";
import type { Day, Event, EventKind, FollowUp, Garden } from "../model.ts";

/** "when it is cured", "once they fill in": the last such clause of a promise. "Say when they ripen" asks, and hangs on nothing. */
export function conditionOf(what: string): string | undefined {
  const words = what
    .trim()
    .replace(/[.;,\s]+$/, "")
    .split(/\s+/);
  const at = words.findLastIndex((word, index) => {
    if (index < 2) return false;
    const before = words[index - 1]?.toLowerCase() ?? "";
    if (asking.has(before)) return false;
    return word === "when" || word === "once" || (word === "as" && words[index + 1] === "soon");
  });
  return at < 0 || at === words.length - 1 ? undefined : words.slice(at).join(" ");
}

const asking: ReadonlySet<string> = new Set("say tell ask see know and or of about".split(" "));

/** What is noted when a thing has come, by the words that promise it. */
const signs: readonly (readonly [words: RegExp, kinds: readonly EventKind[]])[] = [
  [/\b(?:pods?|fruits?|ripe|ripen|ready|berries|heads?|picked|picking|harvest)\b/i, ["picked", "fruited"]],
  [/\b(?:flowers?|flowering|blooms?|blooming|opens?|out)\b/i, ["flowered"]],
  [/\b(?:up|sprout|sprouts|growing|germinated?|planted|plants)\b/i, ["up", "planted", "sowed", "came back"]],
];

/** Curing takes two to four weeks after lifting; common practice for garlic and onions. */
const cures = /\b(?:cured|dry|dried)\b/i;
const curing = 21;

/** Whether the notes up to a day say that what the promise waits for is there. */
export function isConditionMet(followUp: FollowUp, condition: string, garden: Garden, day: Day): boolean {
  const find = finderOf(garden);
  const what = plainWords(followUp.what);
  const varieties = new Set([...find.varieties(what), ...(followUp.variety === undefined ? [] : [followUp.variety])]);
  const crops = new Set([...find.crops(what)]);
  const beds = new Set([...find.beds(what), ...(followUp.bed === undefined ? [] : [followUp.bed])]);
  const named = varieties.size + crops.size > 0;
  const isOf = (event: Event) =>
    named
      ? (event.variety !== undefined && varieties.has(event.variety)) || crops.has(cropOf(garden, event)?.id ?? "")
      : event.bed !== undefined && beds.has(event.bed);
  const later = garden.events.filter((event) => event.day > followUp.promisedOn && event.day <= day && isOf(event));
  if (cures.test(condition)) {
    if (later.some((event) => event.kind === "picked" && daysBetween(event.day, day) >= curing)) return true;
  }
  const [, kinds] = signs.find(([words]) => words.test(condition)) ?? [];
  if (kinds !== undefined && later.some(({ kind }) => kinds.includes(kind))) return true;
  return wordsMet(followUp, condition, garden, day, { varieties, crops, beds });
}

const small = new Set(
  "when once as soon they them it is are has have the a an on in of to and there something i we".split(" "),
);
/** A line with one of these says that it has not come, or may. */
const notYet = /\b(?:not|no|never|yet|until|till|when|once|if|should|will|hope)\b|n't\b|'ll\b/i;

/** A later line, read or not, of the same plants or bed that uses the condition's own words. */
function wordsMet(
  { promisedOn }: FollowUp,
  condition: string,
  garden: Garden,
  day: Day,
  about: Readonly<Record<"varieties" | "crops" | "beds", ReadonlySet<string>>>,
): boolean {
  const find = finderOf(garden);
  const telling = stems(condition).filter((stem) => !small.has(stem));
  if (telling.length === 0) return false;
  const days = new Map(garden.notes.map((note) => [note.place.file, note]));
  return garden.readings.some((reading) => {
    const note = days.get(reading.place.file);
    if (note === undefined || note.day <= promisedOn || note.day > day || notYet.test(reading.text)) return false;
    const words = stems(reading.text);
    if (!telling.every((stem) => words.includes(stem))) return false;
    const plain = plainWords(reading.text);
    return (
      find.varieties(plain).some((id) => about.varieties.has(id)) ||
      find.crops(plain).some((id) => about.crops.has(id)) ||
      [...find.beds(plain), ...note.beds].some((id) => about.beds.has(id))
    );
  });
}

/** Without its ending, five letters at most: "filled" is "fill". */
function stems(text: string): readonly string[] {
  return plainWords(text)
    .trim()
    .split(" ")
    .map((word) => (word.length > 4 ? word.replace(/(?:ing|ed|es|s)$/, "") : word).slice(0, 5))
    .filter((word) => word !== "" && !small.has(word));
}
