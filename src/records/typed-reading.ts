/**
 * Lines of a note while they are typed, with what they are taken to say: what the phone runs in the garden, without a signal.
 * Everything it needs comes as plain data; nothing here, or in what it imports, touches a disk or Node.
 */
import type { Bed, Crop, Day, Gear, Site, Variety } from "../model.ts";
import { cropsIn } from "./american-crops.ts";
import { buildNames, type Names } from "./names.ts";
import { readNoteLine } from "./note-line.ts";
import { printEvent } from "./print-event.ts";
import type { UnitSystem } from "./units.ts";

/** The names of a garden as the page carries them. */
export interface TypedGarden {
  readonly language: string;
  readonly units: UnitSystem;
  readonly southern: boolean;
  readonly sites: readonly Pick<Site, "id" | "title">[];
  readonly beds: readonly Pick<Bed, "id" | "title" | "alsoCalled" | "site">[];
  readonly varieties: readonly Pick<Variety, "id" | "title" | "alsoSpelled" | "crop">[];
  readonly gear: readonly Pick<Gear, "id" | "title" | "alsoCalled">[];
  /** Those that no table has. */
  readonly crops: readonly Crop[];
}

export interface TypedContext {
  readonly garden: TypedGarden;
  readonly names: Names;
  readonly day: Day;
  /** Id of the bed that is spoken of anyway. */
  readonly bed?: string | undefined;
}

export interface TypedLine {
  readonly text: string;
  readonly as: "facts" | "question" | "story";
  /** Facts as plain lines, one each; else what is to be said about the line. */
  readonly says: readonly string[];
}

/** What `readTyped` looks names up in; made once. */
export function typedNames({ language, sites, beds, varieties, gear, crops }: TypedGarden): Names {
  return buildNames({
    sites: sites as readonly Site[],
    beds: beds as readonly Bed[],
    varieties: varieties as readonly Variety[],
    gear: gear as readonly Gear[],
    crops: [...cropsIn(language), ...crops],
  });
}

export function readTyped(text: string, context: TypedContext): readonly TypedLine[] {
  return text.split(/\r\n?|\n/).flatMap((line) => {
    const words = line.replace(/^\s*(?:[-*+]\s+)?/, "").trim();
    return words === "" ? [] : [typedLine(words, context)];
  });
}

function typedLine(text: string, { garden, names, day, bed }: TypedContext): TypedLine {
  const { units, southern } = garden;
  const read = readNoteLine(
    { text, more: [], place: { file: "", line: 1, column: 1 } },
    { note: { id: "", day, private: true }, beds: bed === undefined ? [] : [bed], names, units, southern },
  );
  const problems = (read?.problems ?? []).map(({ what, fix }) => `${what} ${fix}`);
  const events = read?.events ?? [];
  if (events.length > 0)
    return { text, as: "facts", says: [...events.map((event) => printEvent(event, names)), ...problems] };
  return { text, as: problems.length > 0 ? "question" : "story", says: problems };
}
