/** A thread as a card: what is said in at most sixty words, and what did not fit. */

import { cropOf } from "../../crop-of.ts";
import {
  cardLimits,
  countWords,
  howItCame,
  type NameToSay,
  type Spoken,
  secondsToSay,
  spokenParts,
  toSixty,
  type Way,
  type Wording,
} from "../../films/index.ts";
import { cultivar, isUnnamed, type Sentence, say, theGear } from "../../language/index.ts";
import type { Garden, Gear, Variety } from "../../model.ts";
import {
  figureText,
  groundsOf,
  openingWays,
  phrase,
  type ThreadVoice,
  titleOfThread,
  wholePhrase,
} from "../recap-words/thread-words.ts";
import type { Part, Thread, Told } from "../threads/thread.ts";
import type { ThreadCard } from "./recap-card.ts";

export interface TellingCards {
  readonly voice: ThreadVoice;
  readonly wording: Wording;
  /** Gear and varieties of which the film has said how they came. */
  readonly disclosed: Set<string>;
}

/** Title and cut (common practice), beside the words. */
const cutSeconds = 6;

/** Undefined when there is no way to begin it. */
export function cardOfThread(
  thread: Thread,
  number: number,
  begins: number,
  telling: TellingCards,
): ThreadCard | undefined {
  const { voice, wording } = telling;
  const opening = choose(openingWays(thread, voice), wording);
  if (opening === undefined) return undefined;
  const sayable = (told: readonly Part<Told>[], words: number) =>
    onceEach(
      told.flatMap((one) => {
        const text = phrase(one, voice, words);
        return text === undefined ? [] : [said(text, one)];
      }),
      opening.text,
    );
  const now = sayable(thread.now, cardLimits.now);
  const notes = sayable(
    [...thread.now.filter((one) => phrase(one, voice, cardLimits.now) === undefined), ...thread.notes],
    cardLimits.why,
  ).filter(({ text }) => !now.some((one) => one.text === text));
  const figure = thread.figure === undefined ? undefined : figureText(thread.figure.value, voice);
  const spoken: Spoken = {
    opening,
    before: thread.before === undefined ? undefined : sayable([thread.before], cardLimits.before)[0],
    now: now.slice(0, cardLimits.nowPhrases),
    figure:
      thread.figure === undefined || figure === undefined || countWords(figure) > cardLimits.figure
        ? undefined
        : said(figure, thread.figure),
    why: notes[0],
    next: thread.next === undefined ? undefined : sayable([thread.next], cardLimits.next)[0],
  };
  // A beginning that tells nothing by itself needs something after it.
  if (spokenParts(spoken).length === 1 && tellsNothing(thread, opening.text)) return undefined;
  const dropped = toSixty(spoken);
  const parts = spokenParts(spoken);
  const text = parts.map((one) => one.text).join(" ");
  const things = thingsIn(thread, text, voice);
  const aloud = things.flatMap((one) => disclosure(one, telling));
  const all = [text, ...aloud.map((one) => one.text)].join(" ");
  return {
    id: `R${number}`,
    number,
    kind: thread.kind,
    bed: thread.about.bed,
    variety: thread.about.variety,
    title: titleOfThread(thread, voice),
    seconds: cutSeconds + secondsToSay(all, voice.garden.settings.narrationRate),
    begins,
    opening,
    before: spoken.before,
    now: spoken.now,
    figure: spoken.figure,
    why: spoken.why,
    names: names(things, text, voice),
    aloud,
    next: spoken.next,
    words: countWords(text),
    further: onceEach(
      [
        ...dropped,
        ...now.slice(cardLimits.nowPhrases),
        ...notes.slice(1),
        ...[...thread.now, ...thread.notes].flatMap((one) => {
          const whole = wholePhrase(one, voice);
          return whole === "" ? [] : [said(whole, one)];
        }),
      ],
      text,
    ),
    photos: thread.photos,
  };
}

function tellsNothing({ kind, lead }: Thread, opening: string): boolean {
  return kind !== "next" || lead.value.is !== "planned" ? kind !== "next" : /begins with a plan/.test(opening);
}

function choose(groups: readonly (readonly Way[])[], wording: Wording): Sentence | undefined {
  for (const ways of groups) {
    const found = wording.choose(ways, cardLimits.opening, (text) => !/\d/.test(text));
    if (found !== undefined && !found.private) return found;
  }
  return undefined;
}

function said(text: string, told: Part<unknown>): Sentence {
  return say(text, groundsOf(told));
}

/** What was said already is not said again. */
function onceEach(lines: readonly Sentence[], already: string): readonly Sentence[] {
  const bare = (text: string) =>
    text
      .toLowerCase()
      .replace(/[“”.:]/g, "")
      .trim();
  const heard = [bare(already)];
  return lines.filter(({ text }) => {
    const words = bare(text);
    if (heard.some((one) => one.includes(words))) return false;
    heard.push(words);
    return true;
  });
}

type Thing = { readonly variety: Variety } | { readonly gear: Gear };

/** Varieties and gear that the card is of or names. */
function thingsIn({ about, gear: own }: Thread, text: string, { garden }: ThreadVoice): readonly Thing[] {
  const crop = cropOf(garden, about)?.id;
  const varieties = [...garden.varieties.values()].filter(
    (variety) =>
      !variety.private &&
      (variety.id === about.variety ||
        ((crop === undefined || variety.crop === crop) && isNamed(text, variety, garden))),
  );
  const gear = [...garden.gear.values()].filter(
    (one) => !one.private && (own.includes(one.id) || hasName(text, one.title)),
  );
  return [...varieties.map((variety) => ({ variety })), ...gear.map((one) => ({ gear: one }))];
}

/** By its own name; one that is called as its crop is cannot be told from it. */
function isNamed(text: string, variety: Variety, garden: Garden): boolean {
  const named = { variety, crop: cropOf(garden, variety) };
  return hasName(text, isUnnamed(named) ? variety.title : cultivar(named));
}

function hasName(text: string, name: string): boolean {
  return ` ${text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, " ")} `.includes(
    ` ${name
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, " ")
      .trim()} `,
  );
}

function disclosure(thing: Thing, { disclosed, wording }: TellingCards): readonly Sentence[] {
  const [id, name, obtained, from, record, giver] =
    "variety" in thing
      ? ([
          thing.variety.id,
          `the ${thing.variety.title}`,
          thing.variety.source?.obtained,
          thing.variety.source?.name,
          thing.variety,
          thing.variety.source?.giver,
        ] as const)
      : ([
          thing.gear.id,
          theGear(thing.gear.title),
          thing.gear.obtained,
          thing.gear.from,
          thing.gear,
          thing.gear.giver,
        ] as const);
  const ways = howItCame({ obtained, giver, from }, name).map((text, at) => ({
    frame: `${obtained} ${at}`,
    text,
    grounds: [record],
  }));
  const [first] = ways;
  if (first === undefined || disclosed.has(id)) return [];
  disclosed.add(id);
  return [wording.choose(ways, Number.POSITIVE_INFINITY) ?? say(first.text, [record])];
}

/** How to say what the card names; what is new has a card of its own. */
function names(things: readonly Thing[], text: string, { garden }: ThreadVoice): readonly NameToSay[] {
  return things
    .flatMap((thing): NameToSay[] => {
      if (!("variety" in thing) || thing.variety.sayAs === undefined) return [];
      const { variety } = thing;
      const named = { variety, crop: cropOf(garden, variety) };
      const name = isUnnamed(named) ? variety.title : cultivar(named);
      return hasName(text, name) ? [{ ...say(`${name}: ${variety.sayAs}`, [variety]), name, say: variety.sayAs }] : [];
    })
    .slice(0, cardLimits.names);
}
