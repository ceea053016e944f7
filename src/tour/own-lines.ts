/**
 * What the notes tell of a bed in the person's own words and no fact holds: lines that are still questions, story, and what was
 * noted of plants that no line places. Nothing is concluded from them: they are quoted, so that who wrote them can say them.
 */
import { addDays, seasonStart } from "../calendar.ts";
import { cropOf } from "../crop-of.ts";
import { sentencesOf } from "../language/index.ts";
import type { Crop, Day, Event, Garden, Gear, LineReading, Note, Place, Variety } from "../model.ts";
import { compare } from "../order.ts";
import type { BedOnTheDay } from "./bed-on-the-day.ts";
import { mentionsAny, plainWords } from "./mentions.ts";

export interface OwnLine {
  readonly text: string;
  /** As `plainWords` gives them. */
  readonly plain: string;
  readonly day: Day;
  readonly place: Place;
  /** Still a question to the person. */
  readonly asks: boolean;
  /** Beds it names, or stands below the name of. */
  readonly beds: readonly string[];
  /** Ids of varieties and crops it names. */
  readonly varieties: readonly string[];
  readonly crops: readonly string[];
  /** Ids of gear it names. */
  readonly gear: readonly string[];
  /** One of the ways to take it is a trouble or a loss. */
  readonly trouble: boolean;
}

export interface OwnLinesHere {
  /** Of this season, the latest first. */
  readonly now: readonly OwnLine[];
  /** Of the season before, the latest first. */
  readonly before: readonly OwnLine[];
}

const known = new WeakMap<Garden["readings"], Map<string, OwnLinesHere>>();

/** Lines that name the bed, and of those that name none what speaks of plants that grow or grew in it. */
export function ownLinesAt(here: BedOnTheDay): OwnLinesHere {
  const { readings } = here.index.garden;
  const ofGarden = known.get(readings) ?? new Map<string, OwnLinesHere>();
  known.set(readings, ofGarden);
  // What ended is counted from the film before, so that two tours on one day may differ.
  const key = `${here.bed.id} ${here.day} ${here.newsAfter}`;
  const found = ofGarden.get(key) ?? findLines(here);
  ofGarden.set(key, found);
  return found;
}

function findLines(here: BedOnTheDay): OwnLinesHere {
  const { garden } = here.index;
  const all = linesOf(garden);
  const before = seasonStart(here.seasonEve, garden.settings.seasonStarts);
  const between = (from: Day, to: Day) => all.slice(firstFrom(all, from), firstFrom(all, addDays(to, 1)));
  const lots = [...here.growing, ...here.ended].map(({ planting }) => planting);
  const ofSeason = (from: Day, to: Day) => {
    const lines = between(from, to);
    const placed = lines.filter(({ beds }) => beds.includes(here.bed.id));
    const varieties = new Set([
      ...lots.flatMap(({ variety }) => variety ?? []),
      ...placed.flatMap((line) => line.varieties),
    ]);
    const crops = new Set([
      ...finderOf(garden).crops(plainWords(here.bed.title)),
      ...lots.flatMap((planting) => cropOf(garden, planting)?.id ?? []),
      ...placed.flatMap((line) => line.crops),
    ]);
    const speaksOfPlants = (line: OwnLine) =>
      line.varieties.length > 0
        ? line.varieties.some((id) => varieties.has(id))
        : line.crops.some((id) => crops.has(id));
    return lines
      .filter((line) => line.beds.includes(here.bed.id) || (line.beds.length === 0 && speaksOfPlants(line)))
      .toReversed();
  };
  return { now: ofSeason(here.season, here.day), before: ofSeason(before, here.seasonEve) };
}

/** The place of the first line of that day or a later one, in lines by day. */
function firstFrom(lines: readonly OwnLine[], day: Day): number {
  let [low, high] = [0, lines.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((lines[middle]?.day ?? "") < day) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** "No Black Krim" names what is not there. */
const absent = /^(?:no|none|without|left out)\b/i;

/** Gear and varieties that lines about this bed name, whether or not they are read for sure. */
export function namedInLines(here: BedOnTheDay): {
  readonly gear: readonly Gear[];
  readonly varieties: readonly Variety[];
} {
  const { gear, varieties } = here.index.garden;
  const lines = ownLinesAt(here).now.filter((line) => !absent.test(line.text));
  const placed = lines.filter(({ beds }) => beds.includes(here.bed.id));
  return {
    gear: unique(lines.flatMap((line) => line.gear)).flatMap((id) => gear.get(id) ?? []),
    varieties: unique(placed.flatMap((line) => line.varieties)).flatMap((id) => varieties.get(id) ?? []),
  };
}

/** Whether the notes tell of a bed in this season, though no fact holds it yet. */
export function isToldOf(here: BedOnTheDay): boolean {
  return ownLinesAt(here).now.some(({ asks }) => asks);
}

const made = new WeakMap<Garden["readings"], readonly OwnLine[]>();

/** Every such line of a garden that is not private, oldest first. */
function linesOf(garden: Garden): readonly OwnLine[] {
  const cached = made.get(garden.readings) ?? readLines(garden);
  made.set(garden.readings, cached);
  return cached;
}

/** What is no sentence anybody says: links, boxes to tick, tables; and what was paid, which is nobody's business. */
const unsaid = /[[\]<>`|]|https?:|[£$€]/;
/** A longer line is a page of a diary, of which each sentence is looked at by itself. */
const longest = 160;

/** Told elsewhere: what is owed, asked and to be done. */
const elsewhere: ReadonlySet<Event["kind"]> = new Set(["promised", "asked", "to do", "done", "plan"]);

function readLines(garden: Garden): readonly OwnLine[] {
  const notes = new Map(garden.notes.map((note) => [note.place.file, note]));
  const placed = new Set([...garden.changes.values()].flatMap((changes) => changes.map(({ event }) => event)));
  const setOut = new Set(garden.nurseryLots.filter(({ taken }) => taken.length > 0).map(({ place }) => lineId(place)));
  const find = finderOf(garden);
  const lines = garden.readings.flatMap((reading): OwnLine[] => {
    const note = notes.get(reading.place.file);
    // What the person settled is said in full by its facts, or is none of the record's business.
    if (reading.private || reading.settled === true || note === undefined || note.private) return [];
    const told = reading.events.filter(
      ({ id, kind, place }) => !placed.has(id) && !setOut.has(lineId(place)) && !elsewhere.has(kind),
    );
    if (reading.as === "facts" && !told.some(isOfPlants)) return [];
    const [likeliest] = reading.readings;
    const events = reading.as === "question" ? reading.readings.flatMap((offer) => offer.events) : told;
    const parts = partsOf(reading, note);
    // What a whole paragraph could be taken to say tells nothing of its single sentences.
    const behind = parts.length === 1 ? events : [];
    const fallback = note.beds.length === 1 && reading.as !== "facts" ? note.beds : [];
    let last: Pick<OwnLine, "beds" | "varieties" | "crops"> = { beds: [], varieties: [], crops: [] };
    return parts.flatMap((text): OwnLine[] => {
      if (text === "" || text.length > longest || unsaid.test(text) || /^[\d\W]*$/.test(text)) return [];
      const plain = plainWords(text);
      const bedsNamed = find.beds(plain);
      const below = unique(behind.flatMap(({ bed }) => bed ?? []));
      const varieties = unique([...find.varieties(plain), ...behind.flatMap(({ variety }) => variety ?? [])]);
      const crops = unique([
        ...find.crops(plain),
        ...behind.flatMap(({ crop }) => crop ?? []),
        ...varieties.flatMap((id) => garden.varieties.get(id)?.crop ?? []),
      ]);
      const beds = bedsNamed.length > 0 ? bedsNamed : below.length > 0 ? below : fallback;
      // "Panel 2 something dug them out" goes on about what the sentence before named.
      const goesOn = bedsNamed.length + varieties.length + crops.length === 0 && last.beds.length === 0;
      const about = goesOn && beds.length === 0 ? last : { beds, varieties, crops };
      last = about;
      return [
        {
          ...about,
          text,
          plain,
          day: note.day,
          place: reading.place,
          asks: reading.as === "question",
          gear: find.gear(plain),
          trouble:
            parts.length === 1 && likeliest?.events.some(({ kind }) => kind === "trouble" || kind === "lost") === true,
        },
      ];
    });
  });
  return lines.toSorted((a, b) => compare(a.day, b.day));
}

/** A paragraph whose lines all end near the same edge was wrapped by an editor; shorter lines are each a thing of its own. */
const ragged = 25;

/** The sentences of a reading, or its lines where somebody wrote one thing a line. */
function partsOf({ place, text }: LineReading, note: Note): readonly string[] {
  const part = note.story.find((one) => one.place.line === place.line && one.place.column === place.column);
  const written = part?.text.replace(/\s+/g, " ").trim() === text ? (part?.text.split("\n") ?? []) : [];
  const edge = Math.max(0, ...written.map((line) => line.length));
  const wrapped = edge > 70 && written.slice(0, -1).every((line) => edge - line.length < ragged);
  const lines = written.length > 1 && !wrapped ? written : [text];
  return lines
    .flatMap((line) => (line.length > longest ? sentencesOf(line) : [line]))
    .map((line) => line.trim().replace(/[.\s]+$/, ""));
}

interface Finder {
  readonly beds: (plain: string) => readonly string[];
  readonly varieties: (plain: string) => readonly string[];
  readonly crops: (plain: string) => readonly string[];
  readonly gear: (plain: string) => readonly string[];
}

const finders = new WeakMap<Garden["beds"], Finder>();

/** Finds what of the garden plain words name. */
export function finderOf(garden: Garden): Finder {
  const made = finders.get(garden.beds);
  if (made !== undefined) return made;
  const by = <T extends { readonly id: string }>(records: Iterable<T>, names: (record: T) => readonly string[]) => {
    const all = [...records].map((record, at) => ({ at, id: record.id, plain: names(record).map(plainWords) }));
    // A line can name only what begins with one of its words: there may be thousands of varieties, and of lines.
    const byWord = Map.groupBy(
      all.flatMap((one) => unique(one.plain.map(firstWord)).map((word) => ({ word, one }))),
      ({ word }) => word,
    );
    return (plain: string) => {
      const near = new Set(plain.split(" ").flatMap((word) => (byWord.get(word) ?? []).map(({ one }) => one)));
      const named = [...near].filter((one) => mentionsAny(plain, one.plain));
      return named.sort((a, b) => a.at - b.at).map(({ id }) => id);
    };
  };
  const finder = {
    beds: by(garden.beds.values(), ({ title, alsoCalled }) => [title, ...alsoCalled]),
    varieties: by(garden.varieties.values(), ({ title, alsoSpelled }) => [title, ...alsoSpelled]),
    crops: by([...garden.crops.values(), ...cropsAsked(garden)], ({ name, plural, alsoCalled }) => [
      name,
      plural,
      ...alsoCalled,
    ]),
    gear: by(garden.gear.values(), ({ title, alsoCalled }) => [title, ...alsoCalled]),
  };
  finders.set(garden.beds, finder);
  return finder;
}

function firstWord(plain: string): string {
  return plain.trim().split(" ", 1)[0] ?? "";
}

/** Crops that only questions name: no record tells what many of them are called. */
function cropsAsked(garden: Garden): readonly Pick<Crop, "id" | "name" | "plural" | "alsoCalled">[] {
  const ids = garden.readings.flatMap(({ as, readings }) =>
    as === "question" ? readings.flatMap(({ events }) => events.flatMap(({ crop }) => crop ?? [])) : [],
  );
  return unique(ids)
    .filter((id) => !garden.crops.has(id))
    .map((id) => ({ id, name: id.replaceAll("-", " "), plural: `${id}s`, alsoCalled: [`${id}es`] }));
}

function lineId({ file, line }: Place): string {
  return `${file}:${line}`;
}

function isOfPlants({ variety, crop }: Event): boolean {
  return variety !== undefined || crop !== undefined;
}

function unique(ids: readonly string[]): readonly string[] {
  return [...new Set(ids)];
}
