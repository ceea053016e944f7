/** The opening line of a card: whole, said to the lens, without a figure, the strong word last. */

import { daysBetween } from "../../calendar.ts";
import { askedIn, cardLimits, own, promised, toCircumstance, type Way, type Wording } from "../../films/index.ts";
import { isFirstOfItsCrop } from "../../garden/index.ts";
import {
  capital,
  cultivar,
  type Ground,
  isSingular,
  onDay,
  plantName,
  type Sentence,
  say,
  sayList,
  sayMonth,
  theBed,
} from "../../language/index.ts";
import type { Event } from "../../model.ts";
import { batchOf, isOne, theBatch } from "../batches.ts";
import { type BedOnTheDay, type Lot, voiceOf } from "../bed-on-the-day.ts";
import type { OwedLine, Weighed } from "../candidates/candidate.ts";
import { promiseVerbs } from "../follow-up-lines.ts";
import { lastYears } from "../milestones.ts";
import { isOverAlready } from "../picked-sentences.ts";
import { mayHaveBeenSeen } from "../since.ts";
import { trialsIn } from "../trial-lines.ts";
import { wordsOf } from "./own-words.ts";
import { bareCause, many, type Remembered } from "./remembered.ts";

export interface ToOpen {
  readonly here: BedOnTheDay;
  readonly show: readonly Weighed[];
  readonly owed: readonly OwedLine[];
  readonly remembered: readonly Remembered[];
}

/** Of a bed no film has shown nobody says "since you were last here". */
const speaksOfLastTime: ReadonlySet<string> = new Set([
  "picked since",
  "flower out",
  "new since",
  "gone missing",
  "gone since",
]);

/** The strongest thing that can be opened with; a bed of which nothing is told is named. */
export function openingOf(stop: ToOpen, wording: Wording): Sentence {
  const groups = [
    ...stop.owed.filter(({ private: hidden }) => !hidden).map(owedWays),
    ...stop.remembered
      .filter((one) => one.lastYear)
      .slice(0, 1)
      .map(rememberedWays),
    ...stop.show
      .toSorted((a, b) => rank(b, stop.here) - rank(a, stop.here))
      .map((point) => pointWays(point, stop.here)),
    wordsOf(stop.here.bed).map((words) => own(asSentence(words.text, stop.here), [stop.here.bed])),
  ];
  const seen = stop.here.since.episode !== undefined;
  for (const all of groups) {
    const ways = all.filter(({ frame }) => seen || !speaksOfLastTime.has(frame));
    const found = wording.choose(ways, cardLimits.opening, (text) => !/\d/.test(text));
    if (found !== undefined && !found.private) return found;
  }
  const bed = theBed(stop.here.bed);
  const last: Way[] = [
    { frame: "name", text: `This is ${bed}.`, grounds: [stop.here.bed] },
    { frame: "name of", text: `And now to ${bed}.`, grounds: [stop.here.bed] },
  ];
  return wording.choose(last, 99) ?? say(`${bed}.`, [stop.here.bed]);
}

/** "wine crate on the table by the door" and "The long one by the fence" are no sentences by themselves. */
function asSentence(text: string, { bed }: BedOnTheDay): string {
  if (/^\p{Lu}/u.test(text) && tells.test(text)) return `${text}.`;
  const begins = /^(?:An?|The|My|Our|One|Two|Three)\b/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
  return `This is ${theBed(bed)}: ${begins}.`;
}

/** Verbs that people describe a bed with. */
const tells =
  /\b(?:I|we|you|it|they|is|are|was|were|has|have|had|gets?|got|grows?|grew|holds?|held|stands?|stood|made|built|came|comes?|went|goes|gives?|gave|needs?|lies|lay|keeps?|kept|takes?|took|runs?|ran|began|begins?|used|looks?|catch(?:es)?|dries|drains?|floods?|faces?|sits?|shades?)\b|n['’]t\b/i;

function owedWays(line: OwedLine): readonly Way[] {
  const asked = askedIn(line.what);
  const what = promised(line.what);
  const way = (frame: string, text: string): Way => ({
    frame,
    text,
    grounds: line.sources.map((place) => ({ place })),
  });
  if (asked !== undefined) {
    return [
      way("owed find out", `Today you find out ${asked}.`),
      way("owed hear", `You have been waiting to hear ${asked}.`),
      way("owed still", `I still owe you this: ${asked}.`),
      { ...way("owed question", "I owe you an answer, and it is right here."), last: true },
    ];
  }
  if (!promiseVerbs.test(what)) {
    return [
      way("owed quoted", `I owe you this: ‘${what}’.`),
      { ...way("owed promise", "This is the stop where I keep a promise."), last: true },
    ];
  }
  // What is too long for one breath is cut where a circumstance begins.
  const short = toCircumstance(what, 10);
  const cut =
    short === undefined || short === what
      ? []
      : [way("owed time cut", `Time to ${short}.`), way("owed said cut", `I said I would ${short}.`)];
  const late =
    line.standing === "overdue" ? [way("owed late", `I am late with this one: I said I would ${what}.`)] : [];
  return [
    ...late,
    way("owed said", `I said I would ${what}, so here goes.`),
    way("owed time", `Time to ${what}.`),
    way("owed not forgotten", `I have not forgotten: I was going to ${what}.`),
    ...cut,
    { ...way("owed promise", "This is the stop where I keep a promise."), last: true },
  ];
}

function rememberedWays({ crop, cause, event, again, when }: Remembered): readonly Way[] {
  const crops = many(crop);
  const way = (frame: string, text: string): Way => ({ frame, text: capital(text), grounds: [event] });
  // "Cucumber mosaic on the cucumbers" says it twice.
  if (cause.toLowerCase().includes(crop.name)) {
    return again
      ? [way("again name", `${cause} again, the same as ${when}.`)]
      : [way("last year name", `${when} it was ${cause}. Have a look at these.`)];
  }
  return again
    ? [
        way("again had", `${cause} again: the ${crops} had ${isMany(cause) ? "them" : "it"} ${when}.`),
        way("again same", `The same as ${when} with the ${crops}, I am afraid: ${cause}.`),
      ]
    : [
        way("last year look", `${when} the ${crops} had ${cause}. Have a look at these.`),
        way("last year remember", `${cause} on the ${crops}, that was ${when}. Now look.`),
      ];
}

/** "Slugs" are them, "clubroot" is it, and so is "blackleg virus". */
function isMany(cause: string): boolean {
  return /[^sui]s$/i.test(cause);
}

const order: readonly Weighed["kind"][] = [
  ...([
    "owed",
    "trouble",
    "question",
    "trial",
    "first picking",
    "only picking",
    "first flower",
    "first fruit",
    "going",
    "new",
  ] as const),
  ...([
    "trouble over",
    "lost",
    "ready",
    "finished",
    "first time",
    "in flower",
    "picking",
    "up",
    "grew",
    "due soon",
  ] as const),
];

function rank({ kind, lots }: Weighed, here: BedOnTheDay): number {
  const first = lots.some((lot) => isFirstOfItsCrop(here.index.garden, lot.planting, here.day)) ? 5 : 0;
  const at = order.indexOf(kind);
  return (at < 0 ? 0 : order.length - at) + first;
}

function pointWays(point: Weighed, here: BedOnTheDay): readonly Way[] {
  const [lot, ...more] = point.lots;
  const grounds: readonly Ground[] = point.sentence.sources.map((place) => ({ place }));
  const way = (frame: string, text: string): Way => ({ frame, text, grounds });
  if (point.kind === "trial") {
    return trialsIn(here).map((trial) => own(capital(asQuestion(trial.question)), [trial]));
  }
  if (point.kind === "question") {
    const asked = point.about.slice(point.about.indexOf("“") + 1, point.about.lastIndexOf("”"));
    return asked === ""
      ? []
      : [way("question viewer", `A viewer asks: ${asked}`), way("question you", `You asked me: ${asked}`)];
  }
  if (lot === undefined) return [];
  const batch = batchOf([lot, ...more]);
  const name = theBatch(batch);
  const names = sayList([...new Set(batch.lots.map((one) => plantName(one)))]);
  const one = isOne(batch);
  const crops = sayList([
    ...new Set(batch.lots.map(({ crop, variety }) => (crop === undefined ? (variety?.title ?? "plants") : many(crop)))),
  ]);
  const firsts =
    lot.crop !== undefined && isFirstOfItsCrop(here.index.garden, lot.planting, here.day)
      ? [way("first ever", `I have never grown ${many(lot.crop)} here before.`)]
      : [];
  switch (point.kind) {
    case "trouble": {
      const cause = bareCause(point.keepBy);
      return [
        way("trouble wrong", `Something is wrong with the ${crops}: ${cause}.`),
        way("trouble bad news", `Bad news for the ${crops}: ${cause}.`),
        way("trouble close", `Look closely at the ${crops}, and you see ${cause}.`),
        way("trouble mine", `I have a problem with the ${crops}: ${cause}.`),
        way("trouble found", `The ${crops} have company, and it is ${cause}.`),
      ];
    }
    case "trouble over":
      return [
        way("over gone", `One worry less: no more ${bareCause(point.keepBy)}.`),
        way("over clear", `The ${crops} are clear of ${bareCause(point.keepBy)}.`),
      ];
    case "first picking":
      return [
        ...firsts,
        ...comparedWays(point, lot, here, way),
        ...firstPickedWays(lot, names, here, way),
        ...(isOverAlready(point, here)
          ? []
          : [way("picked since", `Since you were last here I have started on the ${plantName(lot)}.`)]),
      ];
    case "only picking":
      return [
        ...firsts,
        way("all in", `All out of the ground: ${names}.`),
        way("all harvest", `This is what came of ${name}.`),
      ];
    case "first flower":
      return [
        ...openedWays(lot, here, way),
        ...comparedWays(point, lot, here, way),
        way("flower out", `In flower now, and not when you were here: ${names}.`),
        way("flower come", `${capital(name)} ${one ? "has" : "have"} come into flower.`),
      ];
    case "in flower":
      return [
        way("in flower see", `See for yourself what is in flower: ${names}.`),
        way("in flower full", `${capital(name)} ${one ? "is" : "are"} in flower.`),
      ];
    case "first fruit":
      return [
        way("fruit under", `Look under the leaves: ${names}, the first fruit.`),
        way("fruit set", `There is fruit on ${name} now.`),
      ];
    case "new":
    case "first time":
      return [
        ...firsts,
        ...(mayHaveBeenSeen(here.index.garden, here.since, here.day)
          ? [way("new look", `Have a look at ${name}.`), way("new stop", `I stop here for ${name}.`)]
          : [
              way("new met", `You have not met these: ${names}.`),
              way("new crops", `Some of this you have never seen: ${crops}.`),
            ]),
        way("new since", `Since you were last here, in went ${names}.`),
      ];
    case "going":
      return [way("going last", `A last look at ${name}.`), way("going goodbye", `Say goodbye to ${name}.`)];
    case "lost":
    case "finished":
      return [
        way("gone missing", `You will look in vain for ${name}.`),
        way("gone since", `Gone since you were last here: ${names}.`),
      ];
    case "ready":
      return [
        way("ready find", `Ready or not? Let's try ${name}.`),
        way("ready could", `${capital(name)} could be ready.`),
      ];
    case "up":
      return [way("up look", `Get down low with me: ${names}, just up.`)];
    case "picking":
      return [
        way("picking still", `I keep picking here: ${names}.`),
        way("picking more", `There is no end yet to ${name}.`),
      ];
    case "due soon":
      return [
        way("soon", `It will not be long now for ${name}.`),
        way("soon next", `Next in the basket, if all goes well: ${names}.`),
      ];
    case "grew":
      return [way("grew", `Look how far ${name} ${one ? "has" : "have"} come.`)];
    default:
      return point.kind === "standing" ? [way("standing", `Nothing new here, but look at ${name}.`)] : [];
  }
}

/** Days after which a first picking is no sight any more: picking goes on. */
const FRESH = 14;

function firstPickedWays(
  lot: Lot,
  names: string,
  here: BedOnTheDay,
  way: (frame: string, text: string) => Way,
): readonly Way[] {
  const first = lot.events.find(({ kind, day }) => kind === "picked" && day >= here.season)?.day;
  if (first !== undefined && daysBetween(first, here.day) > FRESH) {
    const { language } = here.index.garden.settings;
    const month = sayMonth(first, { language, near: here.day });
    const isOnce = lot.events.filter(({ kind, day }) => kind === "picked" && day >= here.season).length === 1;
    if (isOnce && (lot.planting.implied || isOverAlready({ kind: "first picking", lots: [lot] }, here))) {
      return [way("picked once", `There were ${names} from here in ${month}.`)];
    }
    return [
      way("picked month", `We have had ${names} from here since ${month}.`),
      way("picked on", `I started on the ${plantName(lot)} in ${month}.`),
    ];
  }
  return [
    way("picked here", `Here ${isSingular(lot) ? "it is" : "they are"}, my first ${names} of the year.`),
    way("picked basket", `Out of this bed, for the first time this year: ${names}.`),
  ];
}

/** A flower that opened within the week is told with its day. */
function openedWays(lot: Lot, here: BedOnTheDay, way: (frame: string, text: string) => Way): readonly Way[] {
  const event = lot.events.findLast((each) => each.kind === "flowered" && each.day >= here.season);
  if (event === undefined || daysBetween(event.day, here.day) > 1) return [];
  return [way("flower today", `This one opened ${onDay(event.day, voiceOf(here))}: ${cultivar(lot)}.`)];
}

/** A difference of fewer days is what any year brings. */
const worthComparing = 10;

function comparedWays(
  point: Weighed,
  lot: Lot,
  here: BedOnTheDay,
  way: (frame: string, text: string) => Way,
): readonly Way[] {
  const kind: Event["kind"] = point.kind === "first flower" ? "flowered" : "picked";
  const now = lot.events.find((event) => event.kind === kind && event.day >= here.season);
  const before = lastYears(lot, kind, here);
  if (now === undefined || before === undefined) return [];
  const ahead = daysBetween(now.day, before.day) + 365;
  if (Math.abs(ahead) < worthComparing || Math.abs(ahead) > 60) return [];
  const verb = isSingular(lot) ? "is" : "are";
  return ahead > 0
    ? [way("ahead", `The ${plantName(lot)} ${verb} well ahead of last year.`)]
    : [way("behind", `The ${plantName(lot)} ${verb} well behind last year.`)];
}

function asQuestion(text: string): string {
  const bare = text.trim();
  if (bare.endsWith("?")) return bare;
  return `${bare.endsWith(".") ? bare.slice(0, -1) : bare}?`;
}
