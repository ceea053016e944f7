/** What viewers were told they would see and have not seen yet. */

import { daysBetween } from "../calendar.ts";
import type { Book } from "../garden/index.ts";
import { finderOf } from "../garden/index.ts";
import { dayOnly, mentions, oneOf, plainWords, say, sayMonth, toYou, type Voice } from "../language/index.ts";
import type { FollowUp } from "../model.ts";
import { openFollowUps } from "../timeline/index.ts";
import type { BedOnTheDay } from "./bed-on-the-day.ts";
import type { OwedLine } from "./candidates/candidate.ts";
import { answerTo, lotsSpokenOf } from "./follow-up-answers.ts";
import { ownLinesAt } from "./own-lines.ts";
import { conditionOf, isConditionMet } from "./promise-conditions.ts";

/** Days within which a promise counts as due: a tour a month is common, and the next one would come too late. */
const dueSoon = 31;

/** Open follow-ups of the whole garden, each with the stop that can keep it: overdue, due, then the others. */
export function followUpLines(index: Book, stops: readonly BedOnTheDay[], voice: Voice): readonly OwedLine[] {
  const lines = openFollowUps(index.garden, voice.day).map((followUp) => followUpLine(followUp, stops, voice));
  const rank = { overdue: 0, due: 1, open: 2 };
  return lines.toSorted((a, b) => rank[a.standing] - rank[b.standing]);
}

function followUpLine(followUp: FollowUp, stops: readonly BedOnTheDay[], voice: Voice): OwedLine {
  const waits = waitsFor(followUp, stops, voice);
  const here = waits === undefined ? stopFor(followUp, stops) : undefined;
  const days = followUp.due === undefined ? undefined : daysBetween(voice.day, followUp.due);
  const standing = days === undefined ? "open" : days < 0 ? "overdue" : days <= dueSoon ? "due" : "open";
  return {
    ...say(owedText(followUp, voice), [followUp]),
    said: say(saidText(followUp, voice), [followUp]),
    id: followUp.id,
    what: followUp.what,
    bed: followUp.bed,
    promisedOn: followUp.promisedOn,
    episode: followUp.episode,
    due: followUp.due,
    standing,
    waits,
    now: here === undefined ? undefined : answerTo(followUp, here),
    keptAt: here?.bed.id,
    lots: here === undefined ? [] : lotsSpokenOf(followUp, here),
  };
}

/** What it hangs on and no note says yet; a day that was given for it goes before. */
function waitsFor(followUp: FollowUp, [first]: readonly BedOnTheDay[], voice: Voice): string | undefined {
  const condition = followUp.due === undefined ? conditionOf(followUp.what) : undefined;
  if (condition === undefined || first === undefined) return undefined;
  return isConditionMet(followUp, condition, first.index.garden, voice.day) ? undefined : condition;
}

/**
 * The stop of the promise's bed; else the first stop whose name it says; else the first that grows what it speaks of, where
 * the gear stands that it speaks of, or of which a note tells that names either.
 */
function stopFor(followUp: FollowUp, stops: readonly BedOnTheDay[]): BedOnTheDay | undefined {
  if (followUp.bed !== undefined) return stops.find((here) => here.bed.id === followUp.bed);
  return (
    stops.find((here) => mentions(followUp.what, [here.bed.title, ...here.bed.alsoCalled])) ??
    stops.find((here) => lotsSpokenOf(followUp, here).length > 0) ??
    stops.find((here) => speaksOfGear(followUp, here)) ??
    stops.find((here) => isInNotes(followUp, here)) ??
    stops.find((here) => mentions(followUp.what, [withoutSide(here.bed.title)]))
  );
}

function speaksOfGear({ what }: FollowUp, { now, index }: BedOnTheDay): boolean {
  const { gear } = index.garden;
  return now.gear.some((id) => {
    const record = gear.get(id);
    return record !== undefined && !record.private && mentions(what, [record.title, ...record.alsoCalled]);
  });
}

/** A line about the bed that names the same plants or gear, whether or not it is read for sure. */
function isInNotes({ what }: FollowUp, here: BedOnTheDay): boolean {
  const find = finderOf(here.index.garden);
  const plain = plainWords(what);
  const [varieties, gear, crops] = [find.varieties(plain), find.gear(plain), find.crops(plain)];
  const ofBed = ownLinesAt(here).now.filter(({ beds }) => beds.includes(here.bed.id));
  return ofBed.some((line) => {
    if (varieties.length > 0) return line.varieties.some((id) => varieties.includes(id));
    if (gear.length > 0) return line.gear.some((id) => gear.includes(id));
    return line.crops.some((id) => crops.includes(id));
  });
}

/** "Tunnel Left" is in "the tunnel". */
function withoutSide(title: string): string {
  return title.replace(/,? (?:left|right|north|south|east|west|one|two|\d)$/i, "");
}

/** "You promised in June to show the leeks again in July. It was due by 10 July." What cannot follow "to" is quoted. */
function owedText(followUp: FollowUp, voice: Voice): string {
  const { promisedOn } = followUp;
  const what = followUp.what.trim().replace(/[.;,\s]+$/, "");
  const since = dayOnly(promisedOn, voice);
  const long = daysBetween(promisedOn, voice.day) > 330;
  const month = sayMonth(promisedOn, { language: voice.settings.language, near: voice.day });
  const due = dueText(followUp, voice);
  const said = lowerFirst(what.replace(/^to\s+/i, ""));
  if (!promiseVerbs.test(said)) return `Owed since ${since}: “${what}${/[!?…]$/.test(what) ? "" : "."}”${due}`;
  const promised = `You promised ${long ? `on ${since}` : `in ${month}`} to ${toYou(said)}.${due}`;
  // "You said you would say" is nobody's English.
  if (/^(?:say|tell)\b/i.test(said)) return promised;
  return oneOf(followUp.id, [promised, `Owed since ${since}: you said you would ${toYou(said)}.${due}`]);
}

/** "In June I promised to show the leeks again in July." What cannot follow "to" is said as it was. */
function saidText(followUp: FollowUp, voice: Voice): string {
  const what = followUp.what.trim().replace(/[.;,\s]+$/, "");
  const month = sayMonth(followUp.promisedOn, { language: voice.settings.language, near: voice.day });
  const said = lowerFirst(what.replace(/^to\s+/i, ""));
  if (!promiseVerbs.test(said)) return `Since ${month} I have owed you this: ${said}${/[!?…]$/.test(what) ? "" : "."}`;
  const promised = `In ${month} I promised to ${said}.`;
  return /^(?:say|tell)\b/i.test(said)
    ? promised
    : oneOf(followUp.id, [promised, `I said in ${month} that I would ${said}.`]);
}

/** Said only when it is past: until then the promise itself says when ("show the leeks again in July"). */
function dueText({ due }: FollowUp, voice: Voice): string {
  return due === undefined || due >= voice.day ? "" : ` It was due by ${dayOnly(due, voice)}.`;
}

/** Verbs a promise begins with. Anything else ("how close I dared to plant them") is quoted as it was said. */
export const promiseVerbs =
  /^(?:answer|bring|check|come back|compare|count|cut|decide|dig|explain|explore|film|find|finish|follow|give|lift|look|make|measure|name|open|pick|plant|prune|pull|put|report|return|save|say|see|share|show|sow|start|take|talk|taste|tell|test|tip|try|turn|update|visit|walk|weigh)\b/i;

function lowerFirst(text: string): string {
  return /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}
