/**
 * Lines typed on a page while `watch` runs, written into the note of their day as a person would write them. What is written
 * says there what was shown, or it is asked about first; what is sent twice is written once.
 */
import type { Day, Garden, LineReading } from "../model.ts";
import { bedsOfFront, namesOfGarden, readOneNote, shownReading, withAddedLines } from "../records/index.ts";
import type { NoteWriting, ShownLine, WritingAnswer, WritingAsk } from "../site/index.ts";
import type { Effects } from "./effects.ts";
import { fileOfWords } from "./settle-words.ts";
import { changedBeneath, digestOf, type WrittenFiles } from "./written-files.ts";

/** Saves that are remembered: a page that never heard its answer asks again within minutes. */
const REMEMBERED = 1000;

export interface NoteWriter extends NoteWriting {
  /** What a line would say in a note as it is now, and how often the same stands there, where it would be written, already. */
  preview(ask: LineOfNote): Promise<{ readonly refused: string } | Preview>;
  see(garden: Garden, today: Day): void;
}

export type LineOfNote = Pick<WritingAsk, "day" | "file" | "bed"> & { readonly text: string };

export interface Preview {
  readonly reads: ShownLine;
  readonly standing: number;
}

export function noteWriter(
  first: { readonly garden: Garden; readonly today: Day },
  recordsDir: string,
  files: WrittenFiles,
  effects: Pick<Effects, "openRecords" | "readText" | "err">,
): NoteWriter {
  let { garden, today } = first;
  const saves = new Map<string, Promise<WritingAnswer>>();
  let last: Promise<unknown> = Promise.resolve();

  async function write(ask: WritingAsk): Promise<WritingAnswer> {
    const { file, day, lines } = ask;
    if (!notesOf(day).some((note) => note.file === file)) return { told: `${file} is no note of that day.` };
    const bed = ask.bed === undefined ? undefined : garden.beds.get(ask.bed);
    if (ask.bed !== undefined && bed === undefined) return { told: "That bed is not in the records any more." };
    const before = files.bytes(file);
    if (digestOf(before) !== ask.state) return changedBeneath(file, before);
    const { settings } = garden;
    const added = withAddedLines(before, { lines, bed }, { names: namesOfGarden(garden), day, settings });
    if ("refused" in added) return { told: `${file} was left as it is. ${added.refused}` };
    const reads = await readingsAt(file, added);
    if (!isSame(reads, ask.shown)) return { told: `In ${file} these lines say something else than was shown.`, reads };
    const undo = await files.write(file, before, added.bytes);
    if (undo === undefined) return changedBeneath(file, files.bytes(file));
    effects.err(`Written: ${file}, ${lines.length === 1 ? "one line" : `${lines.length} lines`}`);
    return { told: before === undefined ? `${file} begins with it.` : `It stands in ${file}.`, undo };
  }

  async function preview({ day, file, bed: id, text }: LineOfNote): Promise<{ readonly refused: string } | Preview> {
    const bed = id === undefined ? undefined : garden.beds.get(id);
    if (id !== undefined && bed === undefined) return { refused: "That bed is not in the records any more." };
    const { settings } = garden;
    const names = namesOfGarden(garden);
    const added = withAddedLines(files.bytes(file), { lines: [text], bed }, { names, day, settings });
    if ("refused" in added) return { refused: `${file} was left as it is. ${added.refused}` };
    const [reads = { as: "story", says: [] } as const] = await readingsAt(file, added);
    return { reads, standing: standingAbove(added) };
  }

  async function readingsAt(
    file: string,
    { text, at }: { readonly text: string; readonly at: readonly number[] },
  ): Promise<readonly ShownLine[]> {
    const words = await effects.readText(await fileOfWords(recordsDir, effects));
    const { readings, names } = readOneNote(file, text, { records: garden, words, today });
    const byLine = new Map<number, LineReading>(readings.map((reading) => [reading.place.line, reading]));
    return at.map((line) => {
      const reading = byLine.get(line);
      return reading === undefined ? { as: "story", says: [] } : shownReading(reading, names, garden.settings.units);
    });
  }

  function notesOf(day: Day) {
    return notesOfDay(day, garden).map((file) => {
      const bytes = files.bytes(file);
      return { file, state: digestOf(bytes), beds: bedsOfFront(bytes, namesOfGarden(garden)) };
    });
  }

  return {
    see(newest, on) {
      garden = newest;
      today = on;
    },
    notesOf: async (day) => ({ notes: notesOf(day) }),
    preview,
    write(ask) {
      const known = saves.get(ask.id);
      if (known !== undefined) return known;
      // One after the other: each goes by what the one before left.
      const answer = last.then(() => write(ask));
      last = answer.catch(() => undefined);
      saves.set(ask.id, answer);
      const forget = () => void saves.delete(ask.id);
      answer.then(({ undo }) => undo === undefined && forget(), forget);
      const [oldest] = saves.keys();
      if (saves.size > REMEMBERED && oldest !== undefined) saves.delete(oldest);
      return answer;
    },
  };
}

/** The note of the whole day before those that are called after something; a new one only where there is none. */
export function notesOfDay(day: Day, garden: Garden): readonly string[] {
  const known = garden.notes.filter((note) => note.day === day).map(({ place }) => place.file);
  const usual = usualFile(day, garden);
  return known.includes(usual) || known.length === 0 ? [usual, ...known.filter((file) => file !== usual)] : known;
}

/** Where this person's notes lie: in the folder of the newest one, and where that is called after a year, in that of this year. */
function usualFile(day: Day, { notes }: Garden): string {
  const folders = (notes.at(-1)?.place.file ?? "notes/").split("/").slice(0, -1);
  const year = day.slice(0, 4);
  return [...folders.map((folder) => (/^\d{4}$/u.test(folder) ? year : folder)), `${day}.md`].join("/");
}

/** Problems that were shown below a reading are no part of what it says. */
function isSame(reads: readonly ShownLine[], shown: readonly ShownLine[]): boolean {
  return reads.every(({ as, says }, at) => {
    const before = shown[at];
    return before?.as === as && says.every((said, index) => before.says[index] === said);
  });
}

/** How often the line that was added stands above it already, up to the next heading. */
function standingAbove({ text, at }: { readonly text: string; readonly at: readonly number[] }): number {
  const lines = text.split(/\r\n?|\n/u);
  const place = (at[0] ?? 1) - 1;
  const words = (line: string | undefined) => line?.replace(/^\s*[-*+]\s+/u, "").trim();
  const above = lines.slice(0, place);
  const heading = above.findLastIndex((line) => line.startsWith("#"));
  return above.slice(heading + 1).filter((line) => words(line) === words(lines[place])).length;
}
