/** A table of varieties, orders or plantings as varieties' files and note lines, each read back before it counts. */
import type { Day, Records } from "../model.ts";
import {
  headingRow,
  idOfName,
  matchColumns,
  type Names,
  type NoteCache,
  namesOfGarden,
  type ParsedNote,
  type RecordsFolder,
  readRecords,
  type SaidColumns,
  type Separator,
  type TableColumn,
  type TextTable,
  unknownHeadings,
} from "../records/index.ts";
import { type DayOrder, provenOrder } from "./cell-days.ts";
import { FreeNames, type NewFile, type Part, partOf, recordOf, slugOf, type Told, withFiles } from "./new-file.ts";
import { factsOfRow, type RowFacts } from "./row-facts.ts";
import { isMeant, isTold, linesOfRow, type MeantLine, varietyCalled } from "./row-lines.ts";
import { notInFile, spelledOtherwise } from "./there-already.ts";
import { varietyFile } from "./variety-file.ts";

/** The rows of a text, or of a sheet. */
export interface TableToBring extends Pick<TextTable, "rows"> {
  /** Of a text. */
  readonly separator?: Separator | undefined;
  /** Cells of which nothing could be read. */
  readonly told?: readonly Told[] | undefined;
}

export interface TableRequest {
  readonly table: TableToBring;
  /** File name. */
  readonly name: string;
  readonly folder: RecordsFolder;
  readonly records: Records;
  readonly today: Day;
  /** What the person says of headings. */
  readonly said: SaidColumns;
  readonly order: DayOrder | undefined;
  readonly year: number | undefined;
  readonly isPublic: boolean;
  /** Hashes of parts that were brought in before. */
  readonly known: ReadonlySet<string>;
}

export interface ColumnShown extends TableColumn {
  /** Cells of the first three rows. */
  readonly examples: readonly string[];
  /** Cells with something in them. */
  readonly filled: number;
}

export interface BroughtTable {
  readonly separator: Separator | undefined;
  readonly columns: readonly ColumnShown[];
  readonly rows: number;
  /** Headings the person named that are not in the table. */
  readonly noSuchHeading: readonly string[];
  readonly varieties: readonly NewFile[];
  readonly notes: readonly NewFile[];
  /** Lines of these notes. */
  readonly lines: readonly MeantLine[];
  /** Rows brought in before, names and facts that the records have. */
  readonly knownRows: number;
  readonly knownVarieties: readonly string[];
  readonly knownFacts: number;
  readonly told: readonly Told[];
  readonly parts: readonly Part[];
}

export async function bringTable(request: TableRequest): Promise<BroughtTable> {
  const { table, said, records, today } = request;
  const heading = headingRow(table.rows, said);
  const headings = table.rows[heading ?? 0]?.cells.map(({ text }) => text) ?? [];
  const columns = matchColumns(headings, said);
  const told: Told[] = [...(table.told ?? [])];
  const rows = table.rows.slice((heading ?? 0) + 1).filter((row) => {
    const again = row.cells.every(({ text }, at) => text === "" || text === headings[at]);
    if (again) told.push({ line: row.line, what: "the headings again", isLoss: false });
    return !again;
  });
  for (const row of table.rows.slice(0, heading ?? 0))
    told.push({
      line: row.line,
      what: `above the headings: ${wordsOfRow(row)}`,
      isLoss: false,
    });
  const dayCells = columns
    .filter(({ meaning }) => meaning === "sown" || meaning === "planted" || meaning === "ordered")
    .flatMap(({ at }) => rows.map(({ cells }) => cells[at]?.text ?? ""));
  const names = namesOfGarden(records);
  const context = { order: request.order ?? provenOrder(dayCells), today, year: request.year, names };
  const all = heading === undefined ? [] : rows.map((row) => ({ row, facts: factsOfRow(row, columns, context) }));
  const fresh = all.filter(
    ({ row, facts }) =>
      !request.known.has(partOf(keyOfRow(row, columns), "").hash) ||
      (facts.variety === undefined && facts.crop === undefined),
  );
  for (const { row, facts } of fresh) {
    told.push(...facts.told);
    if (facts.variety === undefined && facts.crop === undefined)
      told.push({ line: row.line, what: `names neither a variety nor a crop: ${wordsOfRow(row)}` });
  }
  const numbers = fresh.filter(({ facts }) => isNumberOfWhat(facts));
  if (numbers.length > 0)
    told.push({
      line: numbers[0]?.row.line ?? 1,
      what: `${columns.find(({ meaning }) => meaning === "number")?.heading}: of what was ordered it may count packets or plants, so it was left out in ${numbers.length} ${numbers.length === 1 ? "row" : "rows"}`,
    });

  const described = varietiesOf(
    fresh.map(({ facts }) => facts),
    request,
    names,
    told,
  );
  // Of what may be another name of a variety that is described, no line is written before the person has said so.
  const clear = fresh.map(({ facts }) => facts).filter(({ line }) => !described.asked.has(line));
  // The folder is read twice, and each file taken apart once.
  const cache = new Map<string, ParsedNote>();
  const withVarieties = await readRecords(withFiles(request.folder, described.files), { today, cache });
  const noted = await notesOf(clear, { ...request, cache }, withVarieties, described.files, told);
  // A row of which something was left out may come again, better told: what it said is not written twice all the same.
  const short = new Set(told.filter(({ isLoss }) => isLoss !== false).map(({ line }) => line));
  const parts = fresh.flatMap(({ row, facts }) => {
    const to = described.fileOf.get(facts.line) ?? noted.fileOf.get(facts.line);
    return to === undefined || short.has(facts.line) ? [] : [partOf(keyOfRow(row, columns), to)];
  });
  return {
    separator: table.separator,
    columns: columns.map((column) => {
      const cells = rows.map(({ cells: of }) => of[column.at]?.text ?? "");
      return { ...column, examples: cells.slice(0, 3), filled: cells.filter((text) => text !== "").length };
    }),
    rows: rows.length,
    noSuchHeading: unknownHeadings(headings, said),
    varieties: described.files,
    notes: noted.files,
    lines: noted.lines,
    knownRows: all.length - fresh.length,
    knownVarieties: described.known,
    knownFacts: noted.known,
    told: told.sort((a, b) => a.line - b.line),
    parts,
  };
}

function wordsOfRow({ cells }: TextTable["rows"][number]): string {
  return cells
    .map(({ text }) => text.replace(/\s+/g, " "))
    .filter((text) => text !== "")
    .join(", ");
}

function isNumberOfWhat({ number, ordered, sown, planted }: RowFacts): boolean {
  return number !== undefined && ordered !== undefined && sown === undefined && planted === undefined;
}

/** What a row says, however its file is called and its columns are ordered. */
function keyOfRow({ cells }: TextTable["rows"][number], columns: readonly TableColumn[]): string {
  const said = columns.flatMap(({ meaning, at }) =>
    meaning === undefined ? [] : [`${meaning}: ${cells[at]?.text ?? ""}`],
  );
  return said.sort().join("\n");
}

function varietiesOf(all: readonly RowFacts[], { records, name, isPublic }: TableRequest, names: Names, told: Told[]) {
  const facts = new Map<string, RowFacts>();
  const fileOf = new Map<number, string>();
  const known = new Set<string>();
  const asked = new Set<number>();
  const ids = new Map([...records.varieties.values()].filter(({ described }) => described).map(({ id }) => [id, ""]));
  for (const row of all) {
    if (row.variety === undefined) continue;
    const crop = row.crop === undefined ? undefined : names.find("crop", row.crop);
    const there = varietyCalled(row.variety, crop, names);
    const record = there === undefined ? undefined : records.varieties.get(there);
    if (record?.described === true) {
      known.add(record.title);
      fileOf.set(row.line, record.place?.file ?? record.id);
      const left = notInFile(row, record);
      if (left !== undefined) told.push({ line: row.line, what: left });
      continue;
    }
    const otherwise = spelledOtherwise(row, records, names);
    if (otherwise !== undefined) {
      told.push({ line: row.line, what: otherwise });
      asked.add(row.line);
      continue;
    }
    const plain = idOfName(row.variety);
    if (plain === "") {
      told.push({ line: row.line, what: `"${row.variety}" is no name` });
      continue;
    }
    // The aubergine Black Beauty has a file beside the courgette's.
    const own = crop ?? row.crop ?? "";
    const mayBe = (id: string) => !ids.has(id) || ids.get(id) === own || (own === "" && facts.has(id));
    const id = [plain, `${plain}-${idOfName(own)}`].find(mayBe) ?? plain;
    const before = facts.get(id);
    fileOf.set(row.line, `varieties/${id}.md`);
    ids.set(id, before === undefined ? own : (ids.get(id) ?? own));
    facts.set(id, before === undefined ? row : together(before, row, told));
  }
  const files = [...facts].map(([id, row]) => ({
    file: `varieties/${id}.md`,
    content: varietyFile(row, { from: name, isPublic }),
  }));
  return { files, fileOf, known: [...known], asked };
}

/** Keys of a variety's file that several rows may fill. */
const keysOfFile = [
  "crop",
  "botanical",
  "source",
  "obtained",
  "year",
  "link",
  "sayAs",
  "alsoSpelled",
  "maturity",
  "perennial",
] as const;

/** Two rows of one variety: the first that says a thing counts, and one that keeps it private keeps all of it. */
function together(first: RowFacts, second: RowFacts, told: Told[]): RowFacts {
  const other = keysOfFile.filter(
    (key) => first[key] !== undefined && second[key] !== undefined && first[key] !== second[key],
  );
  if (other.length > 0)
    told.push({
      line: second.line,
      what: `says other of ${first.variety} than line ${first.line}, which counts: ${other.map((key) => second[key]).join(", ")}`,
    });
  const filled = Object.fromEntries(keysOfFile.map((key) => [key, first[key] ?? second[key]]));
  return {
    ...first,
    ...filled,
    private: first.private || second.private,
    notes: [...new Set([...first.notes, ...second.notes])],
  };
}

async function notesOf(
  all: readonly RowFacts[],
  { name, folder, isPublic, records, today, cache }: TableRequest & { readonly cache: NoteCache },
  withVarieties: Records,
  varieties: readonly NewFile[],
  told: Told[],
) {
  const names = namesOfGarden(withVarieties);
  const place = { file: name, line: 1, column: 1 };
  const fileOf = new Map<number, string>();
  const meant: MeantLine[] = [];
  const onDay = Map.groupBy(records.events, ({ day }) => day);
  let known = 0;
  for (const facts of all) {
    const { lines, told: left } = linesOfRow(facts, names, { ...place, line: facts.line });
    told.push(...left);
    for (const line of lines) {
      const there = onDay.get(line.meant.day)?.find((event) => isTold(event, line.meant));
      if (there === undefined) meant.push(line);
      else {
        known += 1;
        fileOf.set(facts.line, there.place.file);
      }
    }
  }
  const taken = await folder.list();
  const notes = noteFiles(meant, { name, isPublic, taken });
  const read = await readRecords(withFiles(folder, [...varieties, ...notes.map(({ note }) => note)]), { today, cache });
  const noteOf = new Map(notes.flatMap(({ note, lines }) => lines.map((line) => [line, note.file] as const)));
  const readingsOf = Map.groupBy(read.readings, ({ place: { file }, text }) => `${file}\n${text}`);
  const right = meant.filter((line) => {
    const readings = readingsOf.get(`${noteOf.get(line)}\n${plainOf(line.line)}`);
    const isRight = readings?.some(
      ({ as, events }) =>
        as === "facts" && events.length === 1 && events[0] !== undefined && isMeant(events[0], line.meant),
    );
    if (isRight !== true)
      told.push({
        line: line.row,
        what: `"${line.line}" on ${line.meant.day} would not be read as it is meant: write it yourself`,
      });
    return isRight === true;
  });
  const kept = noteFiles(right, { name, isPublic, taken });
  for (const { note, lines } of kept) for (const { row } of lines) fileOf.set(row, note.file);
  return { files: kept.map(({ note }) => note), lines: right, fileOf, known };
}

/** The text as a reading tells it. */
function plainOf(line: string): string {
  return line.replace(/\s+/g, " ");
}

/** A note for each day; what the table marks as private stands in a note of its own. */
function noteFiles(
  meant: readonly MeantLine[],
  { name, isPublic, taken }: { readonly name: string; readonly isPublic: boolean; readonly taken: readonly string[] },
): readonly { readonly note: NewFile; readonly lines: readonly MeantLine[] }[] {
  const groups = Map.groupBy(meant, (line) => `${line.meant.day} ${!isPublic || line.private ? "private" : ""}`);
  const free = new FreeNames(taken);
  return [...groups]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, lines]) => {
      const [day = "", mark] = key.split(" ");
      const file = free.take(`notes/${day.slice(0, 4)}/${day}-${slugOf(name)}.md`);
      const front = [`date: ${day}`, ...(mark === "private" ? ["private: true"] : [])];
      return { note: { file, content: recordOf(front, lines.map(({ line }) => `- ${line}\n`).join("")) }, lines };
    });
}
