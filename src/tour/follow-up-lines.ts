/** What viewers were told they would see and have not seen yet. */
import { daysBetween } from "../calendar.ts";
import type { FollowUp } from "../model.ts";
import { openFollowUps, sayMonth } from "../timeline/index.ts";
import { batchesOf } from "./batches.ts";
import type { BedOnTheDay, Lot } from "./bed-on-the-day.ts";
import type { FollowUpLine, Sentence } from "./brief.ts";
import { dayOnly, type Speech } from "./days-said.ts";
import type { GardenIndex } from "./garden-index.ts";
import { oneOf } from "./phrasing.ts";
import { pickedFact, pickedTogether } from "./picked-sentences.ts";
import { standsNow } from "./planting-sentences.ts";
import { say, together } from "./sentence.ts";

/** Days within which a promise counts as due: a tour a month is common, and the next one would come too late. */
const dueSoon = 31;

/** Open follow-ups of the whole garden, each with the stop that can keep it. */
export function followUpLines(
  index: GardenIndex,
  stops: readonly BedOnTheDay[],
  speech: Speech,
): readonly FollowUpLine[] {
  const lines = openFollowUps(index.garden, speech.day).map((followUp) => followUpLine(followUp, stops, speech));
  const rank = { overdue: 0, due: 1, open: 2 };
  return lines.toSorted((a, b) => rank[a.standing] - rank[b.standing]);
}

function followUpLine(followUp: FollowUp, stops: readonly BedOnTheDay[], speech: Speech): FollowUpLine {
  const at = stops.findIndex((here) => here === stopFor(followUp, stops));
  const here = stops[at];
  const days = followUp.due === undefined ? undefined : daysBetween(speech.day, followUp.due);
  const standing = days === undefined ? "open" : days < 0 ? "overdue" : days <= dueSoon ? "due" : "open";
  return {
    ...say(owedText(followUp, speech), [followUp]),
    id: followUp.id,
    what: followUp.what,
    bed: followUp.bed,
    promisedOn: followUp.promisedOn,
    episode: followUp.episode,
    due: followUp.due,
    standing,
    now: here === undefined ? undefined : howItStands(followUp, here),
    stop: here === undefined ? undefined : `S${at + 1}`,
  };
}

/** The stop of the promise's bed; else the first stop that grows what it speaks of; else the first it names. */
function stopFor(followUp: FollowUp, stops: readonly BedOnTheDay[]): BedOnTheDay | undefined {
  if (followUp.bed !== undefined) return stops.find((here) => here.bed.id === followUp.bed);
  const { variety } = followUp;
  if (variety !== undefined) return stops.find((here) => here.growing.some((lot) => lot.planting.variety === variety));
  return (
    stops.find((here) => mentions(followUp.what, [here.bed.title, ...here.bed.alsoCalled])) ??
    stops.find((here) => lotsSpokenOf(followUp, here).length > 0)
  );
}

/** "You promised on 13 June to show the leeks again in July." What cannot follow "to" is quoted. */
function owedText(followUp: FollowUp, speech: Speech): string {
  const what = followUp.what.trim().replace(/[.;,\s]+$/, "");
  const near = daysBetween(followUp.promisedOn, speech.day) < 330;
  const when = near
    ? `in ${sayMonth(followUp.promisedOn, { language: speech.settings.language, near: speech.day })}`
    : `on ${dayOnly(followUp.promisedOn, speech)}`;
  const since = dayOnly(followUp.promisedOn, speech);
  const due = dueText(followUp, speech);
  if (/^to\s/i.test(what) || promiseVerbs.test(what)) {
    const said = lowerFirst(what.replace(/^to\s+/i, ""));
    return oneOf(followUp.id, [
      `You promised ${when} to ${said}${due}.`,
      `Owed since ${since}: you said you would ${said}${due}.`,
    ]);
  }
  return `Owed since ${since}: “${what}${/[!?…]$/.test(what) ? "" : "."}”${due === "" ? "" : ` It was${due.slice(1)}.`}`;
}

function dueText(followUp: FollowUp, speech: Speech): string {
  const { due } = followUp;
  if (due === undefined) return "";
  const month = sayMonth(due, { language: speech.settings.language, near: speech.day });
  // The promise often names its own month or season: "show the leeks again in July".
  if (followUp.what.toLowerCase().includes(month.toLowerCase().split(" ")[0] ?? month)) return "";
  return due < speech.day ? `, due by ${dayOnly(due, speech)}` : "";
}

/** Verbs a promise begins with. Anything else ("how close I dared to plant them") is quoted as it was said. */
const promiseVerbs =
  /^(?:show|tell|weigh|measure|compare|film|report|taste|cut|come back|look|count|bring|open|dig|lift|try|see|check|say|name|explain|explore|pick|plant|sow|let|give|find|answer|decide|keep|make|go|get|have|put|take|do|talk|visit|test|share|update|walk|return|follow)\b(?!.*\b(?:I|my|we|our|me|us)\b)/i;

/** What the records tell of the thing today: how its plants stand, and what they gave. */
function howItStands(followUp: FollowUp, here: BedOnTheDay): Sentence | undefined {
  const lots = lotsSpokenOf(followUp, here);
  const [batch] = batchesOf(lots);
  if (batch === undefined) return undefined;
  const picked = pickedTogether(batch.lots)
    .map((each) => pickedFact(each, here))
    .filter((fact) => fact !== undefined);
  return together([standsNow(batch, here), ...picked.slice(0, 1)]);
}

/** Lots of the bed that a promise speaks of: its variety's, else those whose variety or crop its words name. */
function lotsSpokenOf(followUp: FollowUp, here: BedOnTheDay): readonly Lot[] {
  if (followUp.variety !== undefined) return here.growing.filter((lot) => lot.planting.variety === followUp.variety);
  const byVariety = here.growing.filter(
    ({ variety }) => variety !== undefined && mentions(followUp.what, [variety.title]),
  );
  if (byVariety.length > 0) return byVariety;
  return here.growing.filter(({ crop }) => crop !== undefined && mentions(followUp.what, [crop.plural, crop.name]));
}

/** Whether a text names one of these, as whole words. */
export function mentions(text: string, names: readonly string[]): boolean {
  const words = plain(text);
  return names.some((name) => words.includes(plain(name)));
}

function plain(text: string): string {
  const letters = text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ");
  return ` ${letters.trim()} `;
}

function lowerFirst(text: string): string {
  return /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}
