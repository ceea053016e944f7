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
  | {
      readonly file: string;
      /** Undefined where the bed has no file yet. */
      readonly before: string | undefined;
      readonly after: string;
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
  const other = records.beds.get(names.find("bed", to) ?? "");
  if (other !== undefined && other.id !== bed.id && other.described)
    return {
      refused: `${other.place?.file} describes "${other.title}" already. Where two beds become one, give "${bed.title}" the line "in use until: ${addDays(day, -1)}", and write into the note of ${day} what moved: "- moved 3 leeks from ${bed.title} to ${other.title}".`,
    };
  const file = bed.described ? bed.place?.file : `beds/${id}.md`;
  if (file === undefined) return { refused: `No file of "${bed.title}" is known.` };
  const before = bed.described ? decodeText(await folder.read(file)).text : undefined;
  const former = `${bed.title} until ${addDays(day, -1)}`;
  const after =
    before === undefined ? recordOf([`title: ${yaml(to)}`, `was: ${yaml(former)}`], "") : renamed(before, to, former);
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
    file,
    before,
    after,
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

/** Every other line stays; undefined where the names stand in a form that only a person should change. */
function renamed(text: string, to: string, former: string): string | undefined {
  const lines = text.split(/(\r\n|\n|\r)/);
  const isMark = (at: number) => /^---\s*$/.test(lines[at] ?? "");
  const end = lines[1] ?? "\n";
  if (!isMark(0)) return `---${end}title: ${yaml(to)}${end}was: ${yaml(former)}${end}---${end}${end}${text}`;
  const close = lines.findIndex((_, at) => at > 0 && at % 2 === 0 && isMark(at));
  if (close < 0) return undefined;
  const find = (key: RegExp) => lines.findIndex((line, at) => at > 0 && at < close && at % 2 === 0 && key.test(line));
  const [title, was] = [find(/^title\s*:/), find(/^was\s*:/)];
  // A value that goes on below its key.
  const goesOn = (at: number) => at >= 0 && /^(?:\s+\S|- )/.test(lines[at + 2] ?? "");
  if (goesOn(title) || goesOn(was) || /^(?:title|was)\s*:\s*[|>&*!]/m.test(text)) return undefined;
  const written = was < 0 ? "" : (lines[was] ?? "").replace(/^was\s*:\s*/, "").trim();
  const list = listWith(written, former);
  if (list === undefined) return undefined;
  const next = [...lines];
  if (was >= 0) next[was] = `was: ${list}`;
  const wasLine = was >= 0 ? "" : `${end}was: ${list}`;
  if (title >= 0) next[title] = `title: ${yaml(to)}${wasLine}`;
  else next[0] = `${lines[0]}${end}title: ${yaml(to)}${wasLine}`;
  return next.join("");
}

function listWith(written: string, former: string): string | undefined {
  if (written === "") return yaml(former);
  if (/#/.test(written)) return undefined;
  if (!written.startsWith("[")) return `[${written}, ${yaml(former)}]`;
  return written.endsWith("]") ? `${written.slice(0, -1)}, ${yaml(former)}]` : undefined;
}

/** As plain as YAML lets it stand, in a list too. */
function yaml(text: string): string {
  return /^[\p{L}][\p{L}\d '’.-]*$/u.test(text) && !/^(?:true|false|yes|no|null|on|off)$/i.test(text)
    ? text
    : JSON.stringify(text);
}
