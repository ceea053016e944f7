/** `plotreel ingest FILE`: a table, a diary or an old film's captions as records. Shows first; writes only when asked to. */
import path from "node:path";
import { InvalidArgumentError } from "commander";
import {
  bringDiary,
  bringFilm,
  bringTable,
  type DayOrder,
  type NewFile,
  type Part,
  partOf,
  pastKind,
  readHomeFile,
  type TableRequest,
} from "../past/index.ts";
import {
  type ColumnMeaning,
  columnMeanings,
  decodeText,
  didYouMean,
  meaningCalled,
  openRecordsFolder,
  readFileAt,
  readTextTable,
  type SaidColumns,
} from "../records/index.ts";
import { broughtInFile } from "./brought-in-file.ts";
import { CommandError, EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import { captionFileOf, ownGlossary } from "./film-captions.ts";
import { ingestOutdoors } from "./ingest-outdoors.ts";
import { type SheetOptions, sheetOf } from "./ingest-sheet.ts";
import { voiceBrought, voiceOf } from "./ingest-voice.ts";
import type { Loaded } from "./load-garden.ts";
import { sayDiary, sayFilm, sayHidden, sayTable, type TableOf } from "./past-words.ts";

export interface IngestFileOptions extends SheetOptions {
  /** Relative to the current folder, or absolute. */
  readonly file: string;
  readonly dryRun?: boolean | undefined;
  readonly write?: boolean | undefined;
  readonly columns?: SaidColumns | undefined;
  /** A day, or a year. */
  readonly date?: string | undefined;
  readonly dates?: DayOrder | undefined;
  readonly public?: boolean | undefined;
}

/** What a file brings, ready to be written. */
interface Brought {
  readonly files: readonly NewFile[];
  readonly parts: readonly Part[];
  readonly lines: readonly string[];
  readonly data: unknown;
  /** Something is in no record that a person may miss. */
  readonly isShort: boolean;
}

export async function ingestFile(loaded: Loaded, options: IngestFileOptions, effects: Effects): Promise<number> {
  const { recordsDir } = loaded;
  if (options.write === true && options.dryRun === true)
    throw new CommandError("--dry-run only shows and --write writes: give one of them.");
  const walked = readHomeFile(readFileAt(path.resolve(effects.cwd, options.file)));
  if (walked !== undefined) return ingestOutdoors(loaded, walked, options, effects);
  const { list, save } = await broughtInFile(recordsDir, effects);
  const brought = await bring(loaded, options, list.hashes(), effects);
  if (options.json === true) effects.out(JSON.stringify(brought.data, null, 2));
  else for (const line of brought.lines) effects.out(line);
  const code = brought.isShort ? EXIT.problemsFound : EXIT.done;
  if (options.write === true) await finishBrokenOff(brought, recordsDir, effects);
  if (brought.files.length === 0) {
    // What a run that was broken off wrote is remembered all the same.
    for (const part of options.write === true ? brought.parts : []) await list.remember(part);
    if (options.write === true) await save();
    if (options.json !== true) effects.out("Nothing is to be written.");
    return code;
  }
  if (options.json !== true) for (const line of sayHidden(hiddenBy(brought.files, loaded))) effects.out(line);
  if (!(await isWanted(options, effects))) {
    if (options.json !== true) effects.out("Nothing was written yet. The same command with --write writes it.");
    return code;
  }
  const left = await writeAll(brought.files, recordsDir, effects);
  const gone = new Set(left);
  for (const part of brought.parts) if (!gone.has(part.to)) await list.remember(part);
  await save();
  for (const file of left) effects.err(`${file} came into being in the meantime and was left as it is.`);
  if (options.json !== true)
    effects.out(
      `Written: ${brought.files.length - left.length} ${brought.files.length - left.length === 1 ? "file" : "files"}.`,
    );
  return left.length > 0 ? EXIT.problemsFound : code;
}

/** Varieties that notes alone name, so that viewers see them, and that a new file of these marks as private. */
function hiddenBy(files: readonly NewFile[], { garden }: Loaded): readonly string[] {
  return files.flatMap(({ file, content }) => {
    const id = /^varieties\/(.+)\.md$/.exec(file)?.[1];
    const variety = garden.varieties.get(id ?? "");
    const isHidden = variety !== undefined && !variety.described && /^private: true$/m.test(String(content));
    return isHidden && !variety.private ? [variety.title] : [];
  });
}

/** What only a file can be told. */
export function refuseForFolder(options: Omit<IngestFileOptions, "file">): void {
  const given = (["write", "columns", "sheet", "date", "dates", "public"] as const).find(
    (key) => options[key] !== undefined,
  );
  if (given !== undefined)
    throw new CommandError(`--${given} is for one file; a folder of photos is brought in without it.`);
}

export async function isWanted({ write, dryRun, json }: IngestFileOptions, effects: Effects): Promise<boolean> {
  if (write === true) return true;
  if (dryRun === true || json === true || !effects.canAsk) return false;
  const answer = await effects.askKey("Write this?", [
    { key: "y", means: "yes, write it" },
    { key: "n", means: "no" },
  ]);
  return answer === "y";
}

async function bring(
  { garden, recordsDir, today }: Loaded,
  options: IngestFileOptions,
  known: ReadonlySet<string>,
  effects: Effects,
): Promise<Brought> {
  const name = path.basename(options.file);
  const bytes = readFileAt(path.resolve(effects.cwd, options.file));
  const { text, problems } = decodeText(bytes);
  const kind = pastKind(name, text);
  const folder = await openRecordsFolder(recordsDir);
  const isPublic = options.public === true;
  const year = options.date === undefined ? undefined : Number(options.date.slice(0, 4));
  const shared = { name, folder, today, order: options.dates, year, isPublic, known };
  const encoding = problems.some(({ rule }) => rule === "text/not-utf8")
    ? bytes.includes(0)
      ? "UTF-16"
      : "Windows-1252"
    : undefined;
  if (kind === "other spreadsheet") throw new CommandError(saveAsCsv(name));
  if (options.sheet !== undefined && kind !== "workbook")
    throw new CommandError(`--sheet is for a spreadsheet (.xlsx), and ${name} is none.`);
  if (kind === "workbook") {
    const { sheet, ...table } = await sheetOf(bytes, name, options, effects);
    return tableBrought(
      { ...shared, table, records: garden, said: options.columns ?? new Map() },
      { name, sheet, isPublic },
    );
  }
  if (/\.json$/i.test(name))
    throw new CommandError(
      `${name} holds words with times in a program's own form, which is not read here. Let that program write them as .vtt, .srt or .txt.`,
    );
  if (kind === "unknown" || text === undefined) throw new CommandError(notKnown(name));
  const voice = await voiceOf(options.file, garden, recordsDir, effects);
  if (voice !== undefined)
    return voiceBrought({ bytes, text, voice }, { garden, folder, today, date: options.date, isPublic });
  if (kind === "captions") {
    const day = filmDay(name, options.date);
    const beside = [...garden.episodes.values()].flatMap((episode) => captionFileOf(episode) ?? []);
    const hashes = await Promise.all(beside.map(async (file) => partOf(await folder.read(file), "").hash));
    const film = bringFilm({
      ...{ bytes, name, garden, day, isPublic, files: await folder.list() },
      glossary: await ownGlossary(recordsDir, effects),
      known: new Set([...known, ...hashes]),
    });
    if (film.captions === 0) throw new CommandError(`No caption was found in ${name}.`, EXIT.problemsFound);
    return {
      ...film,
      lines: sayFilm(film, { name, day, isPublic }),
      data: { ...film, files: film.files.map(({ file }) => file) },
      isShort: false,
    };
  }
  if (kind === "diary") {
    const diary = await bringDiary({ ...shared, text, before: garden });
    const { records, ...data } = diary;
    return {
      files: diary.notes,
      parts: diary.parts,
      lines: sayDiary(diary, { name, encoding, isPublic }),
      data: {
        ...data,
        readings: records.readings.filter(({ place }) => diary.notes.some(({ file }) => file === place.file)),
      },
      isShort: diary.told.some(({ isLoss }) => isLoss !== false),
    };
  }
  const read = readTextTable(text) ?? { separator: "," as const, rows: rowsOfOne(text) };
  return tableBrought(
    { ...shared, table: read, records: garden, said: options.columns ?? new Map() },
    { name, encoding, isPublic },
  );
}

async function tableBrought(request: TableRequest, of: TableOf): Promise<Brought> {
  const { name } = of;
  const table = await bringTable(request);
  const [unknown] = table.noSuchHeading;
  if (unknown !== undefined)
    throw new CommandError(
      `No heading of ${name} is "${unknown}". ${
        didYouMean(
          unknown,
          table.columns.map(({ heading }) => heading),
        ) ?? `They are: ${table.columns.map(({ heading }) => heading).join(", ")}.`
      }`,
    );
  if (table.columns.every(({ meaning }) => meaning === undefined))
    throw new CommandError(
      noHeading(
        name,
        table.columns.map(({ heading }) => heading),
      ),
    );
  return {
    files: [...table.varieties, ...table.notes],
    parts: table.parts,
    lines: sayTable(table, of),
    data: table,
    isShort: table.told.some(({ isLoss }) => isLoss !== false),
  };
}

/** A table of one column is a list. */
function rowsOfOne(text: string) {
  return text
    .split(/\r\n|\n|\r/)
    .flatMap((line, index) =>
      line.trim() === "" ? [] : [{ line: index + 1, cells: [{ text: line.trim(), line: index + 1, column: 1 }] }],
    );
}

function filmDay(name: string, date: string | undefined): string {
  if (date !== undefined && date.length === 10) return date;
  const inName = /(?<!\d)(\d{4}-\d\d-\d\d)(?!\d)/.exec(name)?.[1];
  if (inName !== undefined && date === undefined) return inName;
  throw new CommandError(`Captions say no day. Say on which day the film was taken: --date 2019-06-14.`);
}

function saveAsCsv(name: string): string {
  return (
    `${name} is a spreadsheet's file of a kind that is not read here. Open it, choose "Save as" or "Export", and save it as XLSX, ` +
    "or each sheet as CSV (UTF-8 if it asks); then bring that file in."
  );
}

function notKnown(name: string): string {
  return `${name} is no table (.csv, .tsv, .xlsx), no text (.txt, .md) and no captions (.vtt, .srt, .sbv, .ass), and no file of the page to write outdoors (.jsonl). Photos are brought in by their folder.`;
}

function noHeading(name: string, headings: readonly string[]): string {
  const first = headings.find((heading) => heading !== "") ?? "Name";
  return (
    `No heading of ${name} is one that is known: ${headings.join(", ")}. Say what they hold, such as --columns "${first}=variety". ` +
    `A column may hold: ${Object.keys(columnMeanings).join(", ")}.`
  );
}

/** "Name=variety,From=source" */
export function columnsSaid(text: string): SaidColumns {
  return new Map(
    text.split(",").map((part): readonly [string, ColumnMeaning | undefined] => {
      const at = part.lastIndexOf("=");
      const [heading, written] = [part.slice(0, at).trim(), part.slice(at + 1).trim()];
      const meaning = meaningCalled(written);
      if (at < 1 || (meaning === undefined && written !== "-"))
        throw new InvalidArgumentError(
          `Write a heading, "=" and one of: ${Object.keys(columnMeanings).join(", ")}; several with commas between them.`,
        );
      return [heading, meaning];
    }),
  );
}

/** A run that was killed between a note's two names left the second beside it; asking for the note anew is refused and clears that. */
async function finishBrokenOff({ files, parts }: Brought, recordsDir: string, effects: Effects): Promise<void> {
  const fresh = new Set(files.map(({ file }) => file));
  for (const file of new Set(parts.map(({ to }) => to).filter((to) => !fresh.has(to)))) {
    const target = path.join(recordsDir, ...file.split("/"));
    const text = await effects.readText(target);
    if (text !== undefined) await effects.createText(target, text);
  }
}

/** Names that came into being since they were looked for. */
async function writeAll(files: readonly NewFile[], recordsDir: string, effects: Effects): Promise<readonly string[]> {
  const left: string[] = [];
  for (const { file, content } of files) {
    const target = path.join(recordsDir, ...file.split("/"));
    if (typeof content === "string") {
      if (!(await effects.createText(target, content))) left.push(file);
    } else if ((await effects.kindOf(target)) === undefined) await effects.writeBytes(target, content);
    else left.push(file);
  }
  return left;
}
