/** A bed that becomes a part of another from a day on: it is given up, and what stands in it moves, so that both keep their history. */
import { addDays } from "../calendar.ts";
import type { Bed, Day, Event, Records } from "../model.ts";
import { decodeText, namesOfGarden, printEvent, type RecordsFolder, readRecords } from "../records/index.ts";
import { growGarden, living, state } from "../timeline/index.ts";
import { frontValue, withFrontLine } from "./front-lines.ts";
import { FreeNames, recordOf, withFiles } from "./new-file.ts";

export interface FileChange {
  readonly file: string;
  /** Undefined where there is no such file yet. */
  readonly before: string | undefined;
  readonly after: string;
}

export interface BedsJoined {
  readonly is: "joined";
  readonly files: readonly FileChange[];
  /** Plants that moved, a line each. */
  readonly moved: number;
  /** Lines by which plants would stand in the bed still: nobody but the person knows why. */
  readonly stays: readonly string[];
}

export async function joinBeds(
  bed: Bed,
  other: Bed,
  given: { readonly day: Day; readonly folder: RecordsFolder; readonly records: Records; readonly today: Day },
): Promise<BedsJoined | { readonly refused: string }> {
  const { day, folder, records, today } = given;
  const file = bed.place?.file;
  if (!bed.described || file === undefined)
    return {
      refused: `"${bed.title}" has no file in which its last day could stand. "plotreel new bed" writes one; if it was the same bed all along: plotreel names --join "${bed.title}" "${other.title}".`,
    };
  const before = decodeText(await folder.read(file)).text ?? "";
  if (frontValue(before, "in use until") !== "")
    return { refused: `${file} says already until when "${bed.title}" was in use.` };
  const after = withFrontLine(before, "in use until", addDays(day, -1), "title");
  if (after === undefined)
    return {
      refused: `The front matter of ${file} is written in a way that is not changed here. Write "in use until: ${addDays(day, -1)}" into it.`,
    };
  const lines = linesOfMove(bed, other, day, records);
  const note = new FreeNames(await folder.list()).take(`notes/${day.slice(0, 4)}/${day}-beds.md`);
  const front = [`date: ${day}`, ...(bed.private || other.private ? ["private: true"] : [])];
  const body = recordOf(front, lines.map((line) => `- ${line}\n`).join(""));
  const files = [
    { file, before, after },
    ...(lines.length === 0 ? [] : [{ file: note, before: undefined, after: body }]),
  ];
  const read = await readRecords(
    withFiles(
      folder,
      files.map((one) => ({ file: one.file, content: one.after })),
    ),
    { today },
  );
  const left = living(state(growGarden(read, []), bed.id, day));
  const names = namesOfGarden(read);
  return {
    is: "joined",
    files,
    moved: lines.length,
    stays: left.map(({ variety, crop }) =>
      variety === undefined ? names.title("crop", crop ?? "") : names.title("variety", variety),
    ),
  };
}

/** One for each plant, however many lots of it there are: a line without a number moves them all. */
function linesOfMove(bed: Bed, other: Bed, day: Day, records: Records): readonly string[] {
  const names = namesOfGarden(records);
  const standing = living(state(growGarden(records, []), bed.id, addDays(day, -1)));
  const lines = standing.map(({ variety, crop }) => {
    const plant = variety !== undefined ? { variety } : crop !== undefined ? { crop } : {};
    const event: Event = {
      id: "",
      kind: "moved",
      day,
      ...plant,
      bed: bed.id,
      toBed: other.id,
      verb: "",
      text: "",
      place: { file: "", line: 1, column: 1 },
      private: true,
      more: [],
    };
    return printEvent(event, names);
  });
  return [...new Set(lines)];
}
