/** What a brought table, diary or film would become, for the terminal. */

import { sayList } from "../language/index.ts";
import type {
  BroughtDiary,
  BroughtFilm,
  BroughtTable,
  BroughtVoice,
  ColumnShown,
  NewFile,
  Told,
} from "../past/index.ts";
import { namesOfGarden } from "../records/index.ts";
import { sayTime } from "../wrap/index.ts";
import { sayHowRead, sayOpen, sayReadings } from "./reading-words.ts";
import { wrapped } from "./wrapped-text.ts";

interface Of {
  readonly name: string;
  readonly isPublic: boolean;
  /** Of a file that is not UTF-8. */
  readonly encoding?: string | undefined;
}

export interface TableOf extends Of {
  /** Of a spreadsheet. */
  readonly sheet?: string | undefined;
}

/** Files and notes said by name; the others are counted, and stand in --json. */
const said = 60;

const signs = { ",": "commas", ";": "semicolons", "\t": "tabs" } as const;

export function sayTable(table: BroughtTable, of: TableOf): readonly string[] {
  const { varieties, notes, lines, told } = table;
  const taken = [
    ...(table.knownRows > 0 ? [`${count(table.knownRows, "row")} brought in before`] : []),
    ...(table.knownVarieties.length > 0
      ? [
          `${count(table.knownVarieties.length, "variety", "varieties")} described already: ${table.knownVarieties.join(", ")}`,
        ]
      : []),
    ...(table.knownFacts > 0 ? [`${count(table.knownFacts, "fact")} on record already`] : []),
  ];
  return [
    `${of.name}${of.sheet === undefined ? "" : `, sheet "${of.sheet}"`}: a table of ${count(table.rows, "row")}${table.separator === undefined ? "" : `, its cells set off by ${signs[table.separator]}`}${readAs(of)}.`,
    "",
    ...columnLines(table.columns),
    ...listed(varieties.map(({ file }) => file)),
    ...noteLines(notes),
    ...(taken.length > 0
      ? ["", "There already, and left as it is:", ...taken.flatMap((one) => wrapped("  ", one))]
      : []),
    ...toldLines(told),
    "",
    ...toBeWritten([
      ...(varieties.length > 0 ? [count(varieties.length, "variety", "varieties")] : []),
      ...(lines.length > 0 ? [`${count(lines.length, "line")} in ${count(notes.length, "note")}`] : []),
    ]),
    ...privacy(of, varieties.length + notes.length),
  ];
}

export function sayDiary(diary: BroughtDiary, of: Of): readonly string[] {
  const { notes, records, told, twice, knownDays } = diary;
  const files = new Set(notes.map(({ file }) => file));
  const readings = records.readings.filter(({ place }) => files.has(place.file));
  const open = sayOpen(readings);
  const doubled = twice.map(
    ({ event, there }) => `"${event.text}" of ${event.day} stands in ${there.place.file}:${there.place.line} too`,
  );
  return [
    `${of.name}: a diary of ${count(diary.days, "day")}${readAs(of)}.`,
    "",
    ...sayReadings(readings, records, namesOfGarden(records)),
    ...(doubled.length > 0
      ? [
          "",
          "On record already, and written a second time unless you take one of them out:",
          ...doubled.flatMap((one) => wrapped("  ", one)),
        ]
      : []),
    ...toldLines(told),
    "",
    ...(knownDays > 0 ? [`${count(knownDays, "day")} brought in before.`] : []),
    `${count(notes.length, "note")} to be written. ${sayHowRead(readings)}`,
    ...(open === undefined ? [] : [open]),
    ...privacy(of, notes.length),
  ];
}

export function sayVoice(
  { notes, records }: BroughtVoice,
  of: Of & { readonly sound: string; readonly day: string; readonly bed: string | undefined },
): readonly string[] {
  const files = new Set(notes.map(({ file }) => file));
  const readings = records.readings.filter(({ place }) => files.has(place.file));
  const open = sayOpen(readings);
  return [
    `${of.name}: the words of ${of.sound}, of ${of.day}${of.bed === undefined ? "" : `, at ${of.bed}`}.`,
    ...(notes.length === 0
      ? ["Nothing is said in it."]
      : ["", ...sayReadings(readings, records, namesOfGarden(records))]),
    ...(notes.length === 0 ? [] : ["", `1 note to be written. ${sayHowRead(readings)}`]),
    ...(open === undefined ? [] : [open]),
    ...privacy(of, notes.length),
  ];
}

export function sayFilm(film: BroughtFilm, of: Of & { readonly day: string }): readonly string[] {
  const [record] = film.files;
  const right = film.named.filter((one) => one.right);
  const maybe = film.named.filter((one) => !one.right);
  const beds = right.filter(({ kind }) => kind === "bed").map(({ name }) => name);
  const names = (all: BroughtFilm["named"]) =>
    all.map(({ name, at, times }) => `${name} (${sayTime(at)}${times > 1 ? `, ${times} times` : ""})`).join(", ");
  return [
    `${of.name}: ${count(film.captions, "caption")} of a film of ${of.day}.`,
    ...(right.length > 0 ? wrapped("Named in it: ", names(right)) : ["No name of your records is said in it."]),
    ...(maybe.length > 0 ? wrapped("Perhaps, by their sound: ", names(maybe)) : []),
    ...(record === undefined ? ["", "These captions are in your records already."] : []),
    ...listed(film.files.map(({ file }) => file)),
    ...film.sameDay.flatMap((file) =>
      wrapped(
        "",
        `${file} is of that day and has no captions: if this is its film, copy the captions beside it instead.`,
      ),
    ),
    ...(record === undefined
      ? []
      : [
          "",
          ...wrapped(
            "",
            `When it came out, write "published:" and the day into ${record.file}${beds.length > 0 ? `, and what it shows: "stops: [${beds.join(", ")}]"` : ', and "stops:" with the beds it shows'}.`,
          ),
          ...privacy(of, 1),
        ]),
  ];
}

function toBeWritten(parts: readonly string[]): readonly string[] {
  return parts.length === 0 ? [] : [`${parts.join(" and ")} to be written.`];
}

function readAs({ encoding }: Of): string {
  return encoding === undefined ? "" : `, read as ${encoding}`;
}

/** Each heading, what it is taken to hold, and three rows of it. */
function columnLines(columns: readonly ColumnShown[]): readonly string[] {
  const width = Math.min(24, Math.max(...columns.map(({ heading }) => heading.length)));
  return columns
    .filter(({ heading, filled }) => heading !== "" || filled > 0)
    .map(({ heading, meaning, again, examples, filled }) => {
      const is =
        meaning !== undefined ? `= ${meaning}` : again === true ? "not taken: another column holds it" : "not taken";
      const shown = examples.map((text) => (text === "" ? "–" : text.replace(/\s+/g, " ").slice(0, 24))).join(" | ");
      const lost = meaning === undefined && filled > 0 ? `   (${count(filled, "cell")} left out)` : "";
      return `  ${(heading === "" ? "(no heading)" : heading).padEnd(width)}  ${is.padEnd(20)}  ${shown}${lost}`;
    });
}

function listed(files: readonly string[]): readonly string[] {
  if (files.length === 0) return [];
  const more = files.length > said ? [`  and ${files.length - said} more, named by --json`] : [];
  return ["", ...files.slice(0, said).map((file) => `  ${file}`), ...more];
}

function noteLines(notes: readonly NewFile[]): readonly string[] {
  const shown = notes.slice(0, said).flatMap(({ file, content }) => [
    `  ${file}`,
    ...String(content)
      .split("\n")
      .flatMap((line) => (line.startsWith("- ") ? wrapped("    ", line) : [])),
  ]);
  const more = notes.length > said ? [`  and ${notes.length - said} more, named by --json`] : [];
  return notes.length === 0 ? [] : ["", ...shown, ...more];
}

function toldLines(told: readonly Told[]): readonly string[] {
  const lines = (of: readonly Told[], head: string) =>
    of.length === 0 ? [] : ["", head, ...of.flatMap(({ line, what }) => wrapped(`  line ${line}: `, what))];
  return [
    ...lines(
      told.filter(({ isLoss }) => isLoss === false),
      "Worth a look:",
    ),
    ...lines(
      told.filter(({ isLoss }) => isLoss !== false),
      "In no record yet:",
    ),
  ];
}

function privacy({ isPublic }: Of, files: number): readonly string[] {
  if (isPublic || files === 0) return [];
  return ['Private, until you take the line "private: true" out of a file, or bring it in with --public.'];
}

function count(number: number, one: string, many = `${one}s`): string {
  return `${number} ${number === 1 ? one : many}`;
}

/** Viewers lose what they could see: said before anything is written. */
export function sayHidden(titles: readonly string[]): readonly string[] {
  if (titles.length === 0) return [];
  return [
    `Viewers see ${sayList(titles)} now, and would not any more, nor your lines about ${titles.length === 1 ? "it" : "them"}: bring the file in with --public, or take "private: true" out of ${titles.length === 1 ? "its file" : "their files"}.`,
  ];
}
