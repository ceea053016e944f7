/**
 * Lines of a note while they are typed, with what they are taken to say: what the phone runs in the garden, without a signal.
 * Everything it needs comes as plain data; nothing here, or in what it imports, touches a disk or Node.
 */
import type { Bed, Crop, Day, Gear, LineReading, OwnWord, Place, Site, Variety } from "../model.ts";
import { crops as table } from "./crops.ts";
import { type Names, namesOnceHeard } from "./names.ts";
import { printEvent } from "./print-event.ts";
import { readLine } from "./reading/read-line.ts";
import { writesMonthFirst } from "./slashed-days.ts";
import type { UnitSystem } from "./units.ts";
import { verbTable } from "./verb-table.ts";

/** The names of a garden as the page carries them. */
export interface TypedGarden {
  readonly language: string;
  readonly units: UnitSystem;
  readonly southern: boolean;
  readonly sites: readonly Pick<Site, "id" | "title">[];
  readonly beds: readonly Pick<Bed, "id" | "title" | "alsoCalled" | "site" | "was">[];
  readonly varieties: readonly Pick<Variety, "id" | "title" | "alsoSpelled" | "crop">[];
  /** Those that only notes name. */
  readonly heard: {
    readonly beds: readonly Pick<Bed, "id" | "title">[];
    readonly varieties: readonly Pick<Variety, "id" | "title" | "crop">[];
  };
  readonly gear: readonly Pick<Gear, "id" | "title" | "alsoCalled">[];
  /** Those that no table has. */
  readonly crops: readonly Crop[];
  readonly words: readonly Pick<OwnWord, "word" | "means">[];
}

export interface TypedContext {
  readonly garden: TypedGarden;
  readonly names: Names;
  readonly day: Day;
  /** Ids of the beds that are spoken of anyway. */
  readonly beds: readonly string[];
}

export interface TypedLine {
  readonly text: string;
  readonly as: "facts" | "question" | "story";
  /** Facts as plain lines, one each, and what is wrong with them; of a question its readings, the likeliest first. */
  readonly says: readonly string[];
}

/** Where a line stands that is still being typed. */
const nowhere: Place = { file: "", line: 1, column: 1 };

/** What `readTyped` looks names up in; made once. */
export function typedNames({ sites, beds, varieties, heard, gear, crops, words }: TypedGarden): Names {
  const described = {
    sites: sites as readonly Site[],
    beds: beds as readonly Bed[],
    varieties: varieties as readonly Variety[],
    gear: gear as readonly Gear[],
    crops: new Map([...table, ...crops].map((crop) => [crop.id, crop] as const)).values(),
  };
  const names = namesOnceHeard(described, {
    beds: heard.beds.map((bed) => ({ ...bed, place: nowhere })),
    varieties: heard.varieties.map((variety) => ({ ...variety, place: nowhere })),
  });
  names.learn(words);
  return names;
}

/** A name that a line is the first to use is known to those below it, and forgotten again: it may be half typed. */
export function readTyped(text: string, context: TypedContext): readonly TypedLine[] {
  const before = context.names.mark();
  context.names.asOn(context.day);
  const lines = text.split(/\r\n?|\n/).flatMap((line) => {
    const words = line.replace(/^\s*(?:[-*+]\s+)?/, "").trim();
    return words === "" ? [] : [typedLine(words, context)];
  });
  context.names.backTo(before);
  return lines;
}

function typedLine(text: string, { garden, names, day, beds }: TypedContext): TypedLine {
  const { units, southern } = garden;
  const { reading, problems } = readLine(
    { text, more: [], place: nowhere },
    {
      note: { id: "", day, private: true },
      beds,
      names,
      units,
      southern,
      monthFirst: writesMonthFirst(garden),
    },
    { prose: false, lastLine: nowhere.line },
  );
  const { as, says } = shownReading(reading, names, units);
  return { text, as, says: [...says, ...problems.map(({ what, fix }) => `${what} ${fix}`)] };
}

/** What a line is taken to say, as it is shown where it was typed. */
export function shownReading(
  { as, events, readings }: Pick<LineReading, "as" | "events" | "readings">,
  names: Names,
  units: UnitSystem = "metric",
): Pick<TypedLine, "as" | "says"> {
  if (as === "question") return { as, says: readings.map(({ line }) => line.replaceAll("\n", "; ")) };
  return { as, says: events.map((event) => printEvent({ ...event, more: [] }, names, units)) };
}

/** The words that lines begin with, the usual one of each kind first. */
export function usualVerbs(): readonly string[] {
  return [...new Set(verbTable.flatMap(({ forms }) => forms.slice(0, 1)))];
}
