/**
 * What the notes tell in the person's own words and no fact holds: lines that are still questions, story, and what was noted of plants
 * that no line places. Nothing is concluded from them: they are quoted, so that who wrote them can say them.
 */
import { plainWords, sentencesOf } from "../language/index.ts";
import type { Day, Event, Garden, LineReading, Note, Place } from "../model.ts";
import { compare } from "../order.ts";
import { finderOf } from "./names-found.ts";

export interface OwnLine {
  readonly text: string;
  /** As `plainWords` gives them. */
  readonly plain: string;
  readonly day: Day;
  readonly place: Place;
  /** Facts are read from it, and none of them of a planting in a bed. */
  readonly isFact: boolean;
  /** Still a question to the person. */
  readonly asks: boolean;
  /** Beds it names, or stands below the name of. */
  readonly beds: readonly string[];
  /** Ids of varieties and crops it names. */
  readonly varieties: readonly string[];
  readonly crops: readonly string[];
  /** Ids of gear it names. */
  readonly gear: readonly string[];
  /** What the likeliest way to take it says. */
  readonly events: readonly Event[];
  /** One of the ways to take it is a trouble or a loss. */
  readonly trouble: boolean;
}

const made = new WeakMap<Garden["readings"], readonly OwnLine[]>();

/** Every such line of a garden that is not private, oldest first. */
export function ownLinesOf(garden: Garden): readonly OwnLine[] {
  const cached = made.get(garden.readings) ?? readLines(garden);
  made.set(garden.readings, cached);
  return cached;
}

/** What is no sentence anybody says: links, boxes to tick, tables; and what was paid, which is nobody's business. */
const unsaid = /[[\]<>`|]|https?:|[£$€]/;
/** A longer line is a page of a diary, of which each sentence is looked at by itself. */
const longest = 160;

/** Whether a line of a person's own can be said as it is written. */
export function isQuotable(text: string): boolean {
  return text !== "" && text.length <= longest && !unsaid.test(text) && !/^[\d\W]*$/.test(text);
}

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
      if (!isQuotable(text)) return [];
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
          isFact: reading.as === "facts",
          asks: reading.as === "question",
          events: parts.length === 1 ? (likeliest?.events ?? []) : [],
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

function lineId({ file, line }: Place): string {
  return `${file}:${line}`;
}

function isOfPlants({ variety, crop }: Event): boolean {
  return variety !== undefined || crop !== undefined;
}

function unique(ids: readonly string[]): readonly string[] {
  return [...new Set(ids)];
}
