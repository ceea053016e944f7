/** The written form of a note line, verb first, as one more reader: what it makes of a line, and whether it left anything over. */
import type { Event, EventKind } from "../../model.ts";
import { type Word, wordsOf } from "../line-words.ts";
import type { Names } from "../names.ts";
import { type LineContext, type NoteLine, type ReadLine, readNoteLine } from "../note-line.ts";
import { clausesOf } from "./clauses.ts";
import type { Fact } from "./fact.ts";
import type { FormReading } from "./features.ts";
import { type FindContext, findMentions, seenIn } from "./find-mentions.ts";
import { type CueMention, isVerb, type Mention, ownVerbsOf } from "./mention.ts";
import { cultivarAt, gearAt } from "./vocabulary.ts";

export interface FormLine extends FormReading {
  readonly read: ReadLine;
}

/** Kinds whose words are kept whole, so that nothing in them is left over. */
const whole = new Set<EventKind>(["to do", "done", "promised", "asked", "plan"]);

/** Undefined when the line does not begin with a verb of the table. Names that it takes are kept: the caller gives them back. */
export function readForm(line: NoteLine, context: LineContext, find: FindContext): FormLine | undefined {
  const read = readNoteLine(line, context);
  if (read === undefined || read.events.length === 0) return undefined;
  const own = ownVerbsOf(seenIn(line.text, find).mentions);
  const clean =
    own.every(({ kinds }) => read.events.some(({ kind }) => kinds.includes(kind))) &&
    read.events.every((event) => isClean(event, find)) &&
    usesPlaces(line.text, read.events, find) &&
    !saysTwice(read.events) &&
    saysNoMore(line.text, find) &&
    read.events.every((event) => isPlain(event, context));
  return { read, facts: read.events.map((event) => factOf(event, context)), clean };
}

/** "moved, 9 Sungold, from Cold Frame, to Long Bed": parts of one thing, read as two. */
function saysTwice(events: readonly Event[]): boolean {
  const plants = events.map(({ variety, crop }) => variety ?? crop);
  return events.every(({ kind }) => kind === "moved") && new Set(plants).size < plants.length;
}

/** Whether every day and every bed of the line went into what was read: "planted, 6 leeks, on 12 June" has them apart. */
function usesPlaces(text: string, events: readonly Event[], find: FindContext): boolean {
  if (events.some(({ kind }) => whole.has(kind))) return true;
  return seenIn(text, find).mentions.every((one) => {
    if (one.type === "day")
      return one.day === find.noteDay || events.some(({ day, due }) => day === one.day || due === one.day);
    return one.type !== "bed" || events.some(({ bed, toBed }) => bed === one.id || toBed === one.id);
  });
}

const rowWords =
  /^(?:a|an|the|of|in|long|short|half|full|small|big|rows?|drills?|trays?|pots?|modules?|packets?|lines?|blocks?|cells?|punnets?|bought|given|two|three|four|five|six|double|single|more)$/;

/** Whether what stands behind the first sentence or dash tells of nothing more. */
function saysNoMore(text: string, find: FindContext): boolean {
  const first = /[.!?;]\s+|\s[–—+-]\s/.exec(text);
  if (first === null) return true;
  const rest = text.slice(first.index + first[0].length);
  return !seenIn(rest, find).mentions.some(({ type }) => type === "plant" || type === "cause" || type === "gear");
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
  "cut back",
  "trimmed",
  "trained",
  "clipped",
  "pollinated",
  "hand pollinated",
]);

/** Nothing in it is known only by how it is written, and it begins with a verb that says one thing. */
function isPlain(event: Event, { names, beds }: LineContext): boolean {
  if (whole.has(event.kind)) return true;
  const colon = /^[\p{L} -]+:/u.test(event.text);
  if (
    event.variety !== undefined &&
    !names.isDescribed("variety", event.variety) &&
    !isTitle(names.title("variety", event.variety)) &&
    !isCultivar(names.title("variety", event.variety))
  )
    return false;
  const named = event.variety !== undefined || event.crop !== undefined;
  // "weeded" below a bed's heading.
  const alone = wordsOf(event.text).every((word) => word.kind === "mark" || event.verb.split(" ").includes(word.lower));
  if (event.kind === "did" && alone && event.bed !== undefined) return true;
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
        (event.kind === "sowed" && event.nursery === true && /\bindoors|inside|trays?|modules?\b/.test(event.text)) ||
        (event.kind === "cleared" && event.variety !== undefined && /\bfrom\b/.test(event.text)))
    );
  // "Cleared the tank": the whole of a bed.
  if (event.kind === "cleared" && !named) return saysBed(event, names);
  if (event.kind === "put up" || event.kind === "took down")
    return event.gear !== undefined || (event.bed !== undefined && isGear(event.what, names));
  if (event.kind === "sowed" && event.nursery === true && beds.length === 0 && !colon)
    return named && /\bindoors|inside|under (?:glass|cover)|trays?|modules?|pots?\b/.test(event.text);
  return colon || named || event.kind === "soil test" || event.celsius !== undefined;
}

/** Whether the line itself names the bed, and nothing stands between the verb and it. */
function saysBed({ bed, text, detail }: Event, names: Names): boolean {
  const words = wordsOf(text);
  const from = words[1]?.lower === "the" ? 2 : 1;
  const found = names.at("bed", words, 1) ?? names.at("bed", words, from);
  return found !== undefined && found.id === bed && detail === undefined;
}

/** "Mesh tunnel": one thing that is put up, by up to three words, and no plant among them. */
function isGear(what: string | undefined, names: Names): boolean {
  const words = wordsOf(what ?? "");
  return (
    words.length <= 3 &&
    words.some((_, at) => gearAt(words, at)?.end === words.length) &&
    !words.some(({ lower }, at) => /^(?:and|&|with)$/.test(lower) || names.plantAt(words, at) !== undefined)
  );
}

/** A name of the table that is nothing else as well. */
function isCultivar(title: string): boolean {
  const words = wordsOf(title);
  const found = cultivarAt(words, 0);
  return found?.end === words.length && found.options.every(({ weak }) => !weak);
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

/** Words that put something right only where they say what in its place: "actually Sturon", but "too late really". */
/** When it was done, and no cause of anything. */
const weatherOfTheDay = /^(?:after|before|between) (?:the )?(?:rain|frost|storm|wind|gale|snow|heat|hail|showers?)$/;

const mildly = /^(?:really|actually|fact|sorry)$/;

/** What was done as far as it went: "every pupa I could find". */
const asFarAs = /^(?:find|reach|get|see|carry|manage|spare)$/;

/**
 * Whether the line is what its verb says: nothing in its first clause is left over, nothing in it says that it was not so or
 * is still to come, and what is left behind it tells of no other plants by number or by what was done to them.
 */
function isClean(event: Event, find: FindContext): boolean {
  if (whole.has(event.kind)) return true;
  // "trouble on Aquadulce blackfly": what is said first is where.
  if (event.kind === "trouble" && /^(?:on|in|at|with)\b/i.test(event.cause ?? "")) return false;
  const { words, mentions } = seenIn(event.text, find);
  const first = endOfClause(words, 1);
  // "Marketmore 76 cucumber": the written form takes the number for one of another plant.
  if (mentions.some((one) => one.type === "plant" && /\d$/.test(one.title ?? "") && /\s\d+$/.test(one.title ?? "")))
    return false;
  // "cleared peas, sowed phacelia": two things were done, and the verb of the first is not that of both.
  const does = (one: Mention) =>
    one.type === "verb" &&
    !one.weak &&
    !/^(?:bought|given|gifted|saved|swapped|purchased|donated)$/.test(words[one.from]?.lower ?? "");
  const doing = clausesOf(words, mentions).filter(
    (clause) =>
      clause.mentions.some(does) && clause.mentions.some((one) => one.type === "plant" && !isOfPlace(words, one.from)),
  );
  if (doing.length > 1 && event.kind !== "trouble" && event.kind !== "cured") return false;
  for (const mention of mentions) {
    if (mention.type !== "cue" || !/^(?:not|past|may|future|correction)$/.test(mention.is)) continue;
    if (compares.test(words[mention.from - 1]?.lower ?? "") || saysOnlyHow(words, mention, mentions)) continue;
    const closes = mention.end >= words.length - 1 && mention.is !== "not";
    if (mention.from < first || mention.is === "correction") return false;
    if (closes && !isOfPlace(words, mention.from)) return false;
  }
  for (const rest of [event.detail, event.spot]) {
    const [begins] = (rest ?? "").split(", ");
    if (rest === undefined || begins === undefined || begins === "") continue;
    const from = words[first]?.start ?? event.text.length;
    const inFirst = rest === event.detail && event.text.includes(begins) && event.text.indexOf(begins) < from;
    if (
      inFirst &&
      !weatherOfTheDay.test(begins) &&
      event.kind !== "trouble" &&
      event.kind !== "cured" &&
      !wordsOf(begins).every(({ kind, lower }) => kind === "number" || rowWords.test(lower))
    )
      return false;
    if (tellsOfOthers(event, rest, find)) return false;
    if (rest === event.detail && tellsOfTrouble(event.kind, rest, find)) return false;
  }
  return true;
}

/** A word of doubt, a denial or a correction that takes nothing from what was done. */
function saysOnlyHow(words: readonly Word[], cue: CueMention, mentions: readonly Mention[]): boolean {
  const at = words[cue.from];
  if (at === undefined) return false;
  if (at.lower === "may")
    return at.text === "May" && /^(?:next|till|until|by|in|of|this)$/.test(words[cue.from - 1]?.lower ?? "");
  if (at.lower === "could")
    return /^(?:i|we)$/.test(words[cue.from - 1]?.lower ?? "") && asFarAs.test(words[cue.end]?.lower ?? "");
  return (
    mildly.test(words[cue.end - 1]?.lower ?? "") &&
    !mentions.some(({ type, from }) => from >= cue.end && (type === "plant" || type === "amount" || type === "bed"))
  );
}

/** "where the roots should be": a place, not a doubt. */
function isOfPlace(words: readonly Word[], at: number): boolean {
  for (let before = at; before > 0; before--) {
    const word = words[before];
    if (word?.lower === "where") return true;
    if (word?.kind === "mark") return false;
  }
  return false;
}

/** The comma, semicolon, bracket or full stop behind the clause that word `at` stands in. */
function endOfClause(words: readonly Word[], at: number): number {
  let end = at;
  while (
    end < words.length &&
    !(
      /^[,;(.]$/.test(words[end]?.text ?? "") &&
      (words[end]?.text !== "." || words[end + 1] === undefined || words[end + 1]?.start !== words[end]?.end)
    )
  )
    end += 1;
  return end;
}

/** Whether a part of what is left behind a line counts other plants, says what was done to them, or names what the line did not. */
function tellsOfOthers({ variety, crop }: Event, rest: string, find: FindContext): boolean {
  const words = wordsOf(rest);
  for (let from = 0; from < words.length; ) {
    const end = endOfClause(words, from);
    const part = words.slice(from, end);
    from = end + 1;
    const mentions = findMentions(part, find);
    for (const plant of mentions) {
      if (plant.type !== "plant" || isOfPlace(part, plant.from)) continue;
      if (crop !== undefined && variety === undefined && (plant.title ?? plant.variety) !== undefined) return true;
      if (mentions.some((one) => isVerb(one) && !leads.test(part[one.from]?.lower ?? ""))) return true;
      if (
        mentions.some(
          (one) =>
            one.type === "amount" &&
            /^(?:count|mass|pieces|share|volume|vessel)$/.test(one.use) &&
            isBeside(part, one, plant),
        )
      )
        return true;
    }
  }
  return false;
}

/** Words that begin a place or a time, though the tables know them as the beginning of what was done: "from the". */
const leads = /^(?:from|to|into|onto|over|by|up|down|out|in|on|off|before|under)$/;

/** An amount before a plant with no more than small words between them ("2 packets of the best peas"), or right behind it. */
function isBeside(words: readonly Word[], amount: Mention, plant: Mention): boolean {
  if (amount.from >= plant.end) return words.slice(plant.end, amount.from).every(({ kind }) => kind === "mark");
  return words.slice(amount.end, plant.from).every(({ lower }, at) => at < 3 && lower !== "as");
}

/** A pest or a disease in what is left; what was picked may be split or small without being a trouble of its own. */
function tellsOfTrouble(kind: EventKind, rest: string, find: FindContext): boolean {
  if (kind === "trouble" || kind === "lost" || kind === "cured") return false;
  return seenIn(rest, find).mentions.some(
    (one) => one.type === "cause" && one.of !== "weather" && !(kind === "picked" && one.of === "disorder"),
  );
}

function factOf(event: Event, { names, note }: LineContext): Fact {
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
    girthCm: event.girthCm,
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
