/** A bed that has another name from a day on: what its file says then, and which notes mean it by which name. */
import { addDays } from "../calendar.ts";
import type { Bed, Day, Records } from "../model.ts";
import {
  decodeText,
  namesOfGarden,
  nearestName,
  normaliseName,
  type RecordsFolder,
  readRecords,
  wordsOf,
} from "../records/index.ts";
import { frontValue, plainYaml, withFrontLine } from "./front-lines.ts";
import { type BedsJoined, type FileChange, joinBeds } from "./join-beds.ts";
import { recordOf, withFiles } from "./new-file.ts";

export interface RenameRequest {
  readonly from: string;
  readonly to: string;
  /** The first day of the new name. */
  readonly day: Day;
  readonly folder: RecordsFolder;
  readonly records: Records;
  readonly today: Day;
}

export type BedRenamed =
  | BedsJoined
  | {
      readonly is: "renamed";
      readonly files: readonly FileChange[];
      /** Lines of notes that speak of this bed, before and after. */
      readonly lines: readonly [number, number];
      readonly questions: readonly [number, number];
      /** Notes of days before, which go on to say the old name. */
      readonly earlier: number;
      /** Places from that day on that say the old name still. */
      readonly stillOld: readonly string[];
      /** Places of earlier days that say the new name. */
      readonly tooEarly: readonly string[];
    }
  | { readonly refused: string };

export async function renameBed(request: RenameRequest): Promise<BedRenamed> {
  const { from, to, day, folder, records, today } = request;
  if (normaliseName(to) === "" || /[\r\n]/.test(to)) return { refused: `"${to}" is no name.` };
  if (normaliseName(from) === normaliseName(to))
    return {
      refused: "These are the same name but for capitals and hyphens: write it into the bed's file as you like it.",
    };
  if (day > today) return { refused: `${day} is still to come. Rename the bed when its day is there.` };
  const names = namesOfGarden(records);
  const id = names.find("bed", from);
  const bed = id === undefined ? undefined : records.beds.get(id);
  if (id === undefined || bed === undefined) return { refused: noSuchBed(from, records) };
  const sameName = [...records.beds.values()].filter(({ title }) => normaliseName(title) === normaliseName(from));
  if (sameName.length > 1)
    return {
      refused: `${sameName.length} beds are called "${from}": ${sameName.map(({ place }) => place?.file).join(", ")}. Write "title: ${to}" and "was: ${from} until ${addDays(day, -1)}" into the file of the one that is meant.`,
    };
  const other = records.beds.get(names.find("bed", to) ?? "");
  if (other !== undefined && other.id !== bed.id && other.described) return joinBeds(bed, other, request);
  const file = bed.described ? bed.place?.file : `beds/${id}.md`;
  if (file === undefined) return { refused: `No file of "${bed.title}" is known.` };
  const before = bed.described ? decodeText(await folder.read(file)).text : undefined;
  const former = `${bed.title} until ${addDays(day, -1)}`;
  const after =
    before === undefined
      ? recordOf([`title: ${plainYaml(to)}`, `was: ${plainYaml(former)}`], "")
      : renamed(before, to, former);
  if (after === undefined)
    return {
      refused: `The front matter of ${file} is written in a way that is not changed here. Write "title: ${to}" and "was: ${former}" into it.`,
    };
  const read = await readRecords(withFiles(folder, [{ file, content: after }]), { today });
  const errors = (of: Records) => of.problems.filter(({ severity }) => severity === "error").length;
  if (errors(read) > errors(records))
    return {
      refused: `With this, ${file} could not be read any more. Write "title: ${to}" and "was: ${former}" into it by hand.`,
    };
  const questions = (of: Records) => of.readings.filter(({ as }) => as === "question").length;
  const said = placesThatSay(read);
  return {
    is: "renamed",
    files: [{ file, before, after }],
    lines: [linesOf(records, bed), linesOf(read, bed)],
    questions: [questions(records), questions(read)],
    earlier: said(bed.title, (on) => on < day).length,
    stillOld: said(bed.title, (on) => on >= day),
    tooEarly: said(to, (on) => on < day),
  };
}

function noSuchBed(from: string, { beds }: Records): string {
  const near = nearestName(
    from,
    [...beds.values()].flatMap(({ title, alsoCalled }) => [title, ...alsoCalled]),
  );
  return `No bed is called "${from}".${near === undefined ? "" : ` Did you mean "${near}"?`}`;
}

function linesOf({ events }: Records, { id }: Bed): number {
  return events.filter(({ bed, toBed }) => bed === id || toBed === id).length;
}

/** Lines of notes with these words in them, whatever they are taken to say. */
function placesThatSay({ notes, readings }: Records) {
  const days = new Map(notes.map(({ place, day }) => [place.file, day]));
  const lines = readings.map(({ place, text }) => ({ place, words: ` ${normal(text)} ` }));
  return (name: string, isMeant: (day: Day) => boolean): readonly string[] =>
    lines
      .filter(({ place, words }) => isMeant(days.get(place.file) ?? "") && words.includes(` ${normal(name)} `))
      .map(({ place: { file, line } }) => `${file}:${line}`);
}

function normal(text: string): string {
  return wordsOf(text)
    .filter(({ kind }) => kind !== "mark")
    .map(({ key }) => key)
    .join(" ");
}

function renamed(text: string, to: string, former: string): string | undefined {
  const list = listWith(frontValue(text, "was"), former);
  const titled = withFrontLine(text, "title", plainYaml(to));
  return titled === undefined || list === undefined ? undefined : withFrontLine(titled, "was", list, "title");
}

function listWith(written: string, former: string): string | undefined {
  if (written === "") return plainYaml(former);
  if (/#/.test(written)) return undefined;
  if (!written.startsWith("[")) return `[${written}, ${plainYaml(former)}]`;
  return written.endsWith("]") ? `${written.slice(0, -1)}, ${plainYaml(former)}]` : undefined;
}
