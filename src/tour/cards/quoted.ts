/** Lines of the notes as they were written, for the dossier and, where nothing on record says why, for the card. */

import { yearBefore } from "../../calendar.ts";
import { countWords, fits, own, toPause, type Way } from "../../films/index.ts";
import { isQuotable, type OwnLine } from "../../garden/index.ts";
import { capital, type Sentence, say, sayDay, sentencesOf } from "../../language/index.ts";
import type { Event } from "../../model.ts";
import type { BedOnTheDay } from "../bed-on-the-day.ts";
import { isPlanning, ownLinesAt } from "../own-lines.ts";
import type { Remembered } from "./remembered.ts";

/** More are no help to somebody who stands in front of a camera. */
const mostOfThisSeason = 12;
const mostOfLast = 6;

/** "13 August: “coon tracks all along the outside of the wire, none inside”", the latest first, then the season before. */
export function quotedAt(here: BedOnTheDay): readonly Sentence[] {
  const { now, before } = ownLinesAt(here);
  const { language } = here.index.garden.settings;
  return [...now.slice(0, mostOfThisSeason), ...before.slice(0, mostOfLast)].map((line) =>
    say(`${capital(sayDay(line.day, { language, near: here.day }))}: “${withoutBed(line, here)}”`, [line]),
  );
}

/** More of them are a diary. */
const mostTold = 6;

/** Lines on record that say more than their fact: "saved seed: Amish Paste, the plant third from the pump". */
export function toldWithMore(here: BedOnTheDay, remembered: readonly Remembered[]): readonly Sentence[] {
  const { language } = here.index.garden.settings;
  const lots = [...here.growing, ...here.ended];
  const varieties = new Set(lots.flatMap(({ planting }) => planting.variety ?? []));
  const seeds = here.index.garden.events.filter(
    ({ kind, variety, day }) =>
      kind === "saved seed" &&
      variety !== undefined &&
      varieties.has(variety) &&
      day < here.season &&
      day >= yearBefore(here.season),
  );
  const telling = lots.flatMap(({ events }) => events).filter(saysMore);
  const stories = remembered.filter(({ lastYear }) => lastYear);
  const trouble = here.index.garden.events.filter(
    (event) =>
      (event.kind === "trouble" || event.kind === "lost") &&
      event.day < here.season &&
      event.day >= yearBefore(here.season) &&
      stories.some(
        (story) => story.event === event || (story.event.bed === event.bed && story.event.day === event.day),
      ),
  );
  // Words are of the day on which they were written, whatever day the fact has that was made of them.
  const noteDays = new Map(here.index.garden.notes.map(({ place, day }) => [place.file, day]));
  const written = ({ place, day }: Event) => noteDays.get(place.file) ?? day;
  return [...new Set([...telling, ...seeds, ...trouble])]
    .filter(({ private: hidden, day }) => !hidden && day <= here.day)
    .filter(({ text }) => fits(text, 24) && isQuotable(text) && !isPlanning(text))
    .toSorted((a, b) => (written(a) < written(b) ? 1 : -1))
    .slice(0, mostTold)
    .map((event) => say(`${capital(sayDay(written(event), { language, near: here.day }))}: “${event.text}”`, [event]));
}

const longSowing = 7;

/** More than a verb, a number and a name: a remark behind the fact, or where and how it was begun. */
function saysMore({ detail, kind, text }: Event): boolean {
  if (detail !== undefined && /\s/.test(detail) && text.includes(detail)) return true;
  return (kind === "sowed" || kind === "planted") && countWords(text) >= longSowing;
}

/** What began a thing is told by its fact or is not worth a card; how it does and what came of it is. */
const beginnings =
  /^(?:sowed|sown|started|planted|set out|put|bought|resowed|picked|cut|dug|lifted|mulched|watered|weeded|hoed|tied|fed|mowed|cleared|thinned|pruned|pinched|staked|trained|potted|netted|covered|sprayed|earthed|sowing|planting)\b/i;

/** What went wrong last year with what grows here again, then what this season's notes say of how it does. */
export function quotedWays(here: BedOnTheDay): readonly (readonly Way[])[] {
  const { now, before } = ownLinesAt(here);
  const varieties = new Set(here.growing.flatMap(({ planting }) => planting.variety ?? []));
  const crops = new Set(here.growing.flatMap(({ crop }) => crop?.id ?? []));
  const ofPlants = (line: OwnLine) =>
    line.varieties.some((id) => varieties.has(id)) ||
    line.crops.some((id) => crops.has(id)) ||
    line.beds.includes(here.bed.id);
  const worse = before
    .filter((line) => line.trouble && ofPlants(line))
    .flatMap((line) => ways(line, here, "Last year: "));
  const news = now
    .filter((line) => line.day > here.newsAfter && !beginnings.test(withoutBed(line, here)))
    .flatMap((line) => ways(line, here, ""));
  return [...worse, ...news];
}

function ways(line: OwnLine, here: BedOnTheDay, before: string): readonly (readonly Way[])[] {
  const text = withoutBed(line, here);
  const short = beginningOf(text, before === "" ? 10 : 8);
  return short === undefined || !(fits(text, 10) || short.split(" ").length > 3)
    ? []
    : [[own(`${before}“${short}”`, [line])]];
}

/** Up to a pause, else the first of its sentences. */
function beginningOf(text: string, words: number): string | undefined {
  const [first = text] = sentencesOf(text);
  return toPause(text, words) ?? toPause(first, words);
}

/** Of a bed of which nothing is on record: what its lines say, in few words, the latest first. */
export function quotedNow(here: BedOnTheDay, words: number): readonly Sentence[] {
  return ownLinesAt(here).now.flatMap((line) => {
    const short = beginningOf(withoutBed(line, here), words);
    return short === undefined || short.split(" ").length < 3 ? [] : [say(`“${short}”`, [line])];
  });
}

/** "Tunnel Left: no blight so far" is said in the tunnel. */
function withoutBed({ text }: OwnLine, { bed }: BedOnTheDay): string {
  const name = [bed.title, ...bed.alsoCalled].find((one) => text.toLowerCase().startsWith(`${one.toLowerCase()}:`));
  return name === undefined ? text : text.slice(name.length + 1).trim();
}
