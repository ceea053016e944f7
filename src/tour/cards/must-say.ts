/** What must be said aloud at a stop, in the first person: gifts, loans, links, what is one's own, debts that are late. */
import { cardLimits, howItCame, type NameToSay, type Wording } from "../../films/index.ts";
import { isNewToGarden } from "../../garden/index.ts";
import { cultivar, isUnnamed, type Sentence, say, sayList, sayMonth, theGear } from "../../language/index.ts";
import type { BedOnTheDay, Lot } from "../bed-on-the-day.ts";
import type { OwedLine } from "../candidates/candidate.ts";
import { namedInLines } from "../own-lines.ts";
import { gearHere } from "./own-words.ts";
import { seasonsGrown } from "./remembered.ts";

export interface Said {
  /** Gear and varieties of which earlier stops have told how they came: each is said once a brief. */
  readonly told: Set<string>;
  readonly wording: Wording;
}

export function mustSay(here: BedOnTheDay, owed: readonly OwedLine[], { told, wording }: Said): readonly Sentence[] {
  const gear = gearHere(here).filter((one) => !one.private);
  const growing = here.growing.flatMap(({ variety }) => variety ?? []);
  const varieties = [...new Set([...growing, ...namedInLines(here).varieties])].filter((one) => !one.private);
  const things = [
    ...gear.map((one) => ({
      id: one.id,
      thing: theGear(one.title),
      came: { obtained: one.obtained, giver: one.giver, from: one.from },
      record: one,
    })),
    ...varieties.map((one) => ({
      id: one.id,
      thing: `the ${one.title}`,
      came: { obtained: one.source?.obtained, giver: one.source?.giver, from: one.source?.name },
      record: one,
    })),
  ];
  const disclosed = things.flatMap(({ id, thing, came, record }) => {
    const said = howItCame(came, thing);
    if (said.length === 0 || told.has(id)) return [];
    told.add(id);
    const ways = said.map((text, at) => ({ frame: `${came.obtained} ${at}`, text, grounds: [record] }));
    // What must be said is said, however often its words were heard.
    return [wording.choose(ways, Number.POSITIVE_INFINITY) ?? say(said[0] ?? thing, [record])];
  });
  return [...disclosed, ...lateLines(here, owed, wording)];
}

/** "I promised this for June, and I am late." */
function lateLines(here: BedOnTheDay, owed: readonly OwedLine[], wording: Wording): readonly Sentence[] {
  const late = owed.filter(
    ({ standing, due, private: hidden }) => standing === "overdue" && due !== undefined && !hidden,
  );
  if (late.length === 0) return [];
  const { language } = here.index.garden.settings;
  const months = sayList([...new Set(late.map(({ due = "" }) => sayMonth(due, { language, near: here.day })))]);
  const grounds = late.flatMap(({ sources }) => sources).map((place) => ({ place }));
  const ways = [
    { frame: "late promised", text: `I promised this for ${months}, and I am late.`, grounds },
    { frame: "late should", text: `You should have had this in ${months}.`, grounds },
    { frame: "late overdue", text: `This one was due in ${months}: sorry for the wait.`, grounds },
  ];
  const found = wording.choose(ways, 14);
  return found === undefined ? [] : [found];
}

/** Names that the card says: how to say them, and which of the three kinds of new they are. In the order of the card. */
export function namesToSay(here: BedOnTheDay, said: string): readonly NameToSay[] {
  const found = new Map<string, NameToSay>();
  for (const lot of here.growing) {
    const { variety, crop } = lot;
    if (variety === undefined || variety.private || lot.planting.private || isUnnamed(lot)) continue;
    const name = cultivar({ variety, crop });
    const standing = standingOf(lot, here);
    if (!said.includes(name) || found.has(name) || (variety.sayAs === undefined && standing === undefined)) continue;
    const text = [`${name}`, [variety.sayAs, standing].filter((part) => part !== undefined).join(", ")].join(": ");
    found.set(name, { ...say(text, [variety]), name, say: variety.sayAs, standing });
  }
  return [...found.values()].toSorted((a, b) => said.indexOf(a.name) - said.indexOf(b.name)).slice(0, cardLimits.names);
}

/** Seasons from which on a variety is the one that is grown every year. */
const everyYear = 3;

/** Never grown here, or never in this bed, or the one of every year; what viewers have not seen yet the card tells itself. */
function standingOf(lot: Lot, here: BedOnTheDay): NameToSay["standing"] {
  const { variety } = lot.planting;
  if (variety === undefined || lot.planting.perennial) return undefined;
  if (isNewToGarden(here.index.garden, variety, here.day)) return "new to this garden";
  const seasons = seasonsGrown(lot, here);
  if (seasons >= everyYear) return "grown every year";
  const earlier = here.index.plantingsOf(variety, here.day).filter(({ since }) => since < here.season);
  return earlier.length > 0 && earlier.every(({ bed }) => bed !== here.bed.id) ? "new in this bed" : undefined;
}
