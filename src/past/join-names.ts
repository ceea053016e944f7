/** Two names of one thing joined: which lines say the one, how they read with the other, and what the records then are. */
import type { Records } from "../model.ts";
import {
  decodeText,
  idOfName,
  type Names,
  namesOfGarden,
  nearestName,
  normaliseName,
  type RecordsFolder,
  readRecords,
  recordTexts,
  type Word,
  wordsOf,
} from "../records/index.ts";
import { askedEvents, namesUsed, type UsedKind } from "./names-used.ts";
import { withFiles } from "./new-file.ts";

export interface JoinedLine {
  readonly line: number;
  readonly before: string;
  readonly after: string;
}

export interface JoinedFile {
  readonly file: string;
  /** Without a byte-order mark, as it was read. */
  readonly before: string;
  readonly after: string;
  readonly lines: readonly JoinedLine[];
}

export type NamesJoined =
  | {
      readonly kind: UsedKind;
      readonly files: readonly JoinedFile[];
      /** Facts and open questions before and after. */
      readonly facts: readonly [number, number];
      readonly questions: readonly [number, number];
      /** Whether anything is called so already. */
      readonly isKnown: boolean;
      /** Lines that name it in other letters, and stay as they are. */
      readonly left: readonly string[];
      /** A folder of photos that is still called by the old name. */
      readonly photos: string | undefined;
    }
  | { readonly refused: string };

export interface JoinRequest {
  readonly from: string;
  readonly to: string;
  readonly folder: RecordsFolder;
  readonly records: Records;
  readonly today: string;
}

export async function joinNames({ from, to, folder, records, today }: JoinRequest): Promise<NamesJoined> {
  if (from === to) return { refused: "These are the same letters: there is nothing to join." };
  if (normaliseName(to) === "" || /[\r\n]/.test(to)) return { refused: `"${to}" is no name.` };
  const names = namesOfGarden(records);
  const kind = kindOf(from, records, names);
  if (typeof kind !== "string") return kind;
  const id = kind === "source" ? undefined : (names.find(kind, from) ?? idOfName(from));
  const own = new Set(
    // "The sunny corner was dry" may speak of a corner that is sunny, as long as nobody says which.
    [...records.events, ...(/^\p{Lu}/u.test(from) ? [] : askedEvents(records))]
      .filter((event) =>
        kind === "bed"
          ? event.bed === id || event.toBed === id
          : kind === "variety"
            ? event.variety === id
            : event.from === from,
      )
      .map(({ place }) => `${place.file}:${place.line}`),
  );
  const all = await folder.list();
  const files: JoinedFile[] = [];
  for (const file of recordTexts(all)) {
    const { text } = decodeText(await folder.read(file));
    if (text === undefined) continue;
    const said = (line: number) => own.has(`${file}:${line}`);
    const joined = joinedText(text, {
      from,
      to,
      said,
      isName: (words, at, end) => isThisName(words, at, end, kind, id, names),
    });
    if (joined.lines.length > 0 && /\.csv$/i.test(file) && /[,;\t"]/.test(to))
      return {
        refused: `${file} says "${from}" too, and a sign of "${to}" would part its cells. Put it right by hand.`,
      };
    if (joined.lines.length > 0) files.push({ file, before: text, ...joined });
  }
  if (files.length === 0) return { refused: `No line says "${from}" in these letters.` };
  const after = await readRecords(
    withFiles(
      folder,
      files.map((one) => ({ file: one.file, content: one.after })),
    ),
    { today },
  );
  const errors = (of: Records) => of.problems.filter(({ severity }) => severity === "error").length;
  if (errors(after) > errors(records))
    return { refused: `With "${to}" in its place a file could not be read any more. Put it right by hand.` };
  const questions = (of: Records) => of.readings.filter(({ as }) => as === "question").length;
  const isKnown = kind === "source" ? sourceNames(records).includes(to) : names.find(kind, to) !== undefined;
  return {
    kind,
    files,
    facts: [records.events.length, after.events.length],
    questions: [questions(records), questions(after)],
    isKnown,
    left: linesWith(after, kind, from),
    photos: kind !== "source" && id !== undefined ? photoFolder(kind, id, all) : undefined,
  };
}

function kindOf(from: string, records: Records, names: Names): UsedKind | { readonly refused: string } {
  for (const kind of ["bed", "variety"] as const) {
    const id = names.find(kind, from);
    const record = id === undefined ? undefined : (kind === "bed" ? records.beds : records.varieties).get(id);
    if (record === undefined) continue;
    if (record.described)
      return {
        refused: `${record.place?.file} describes "${record.title}". Join the other name to this one, or put both into one file by hand and delete the other.`,
      };
    return kind;
  }
  const sources = sourceNames(records);
  if (sources.includes(from)) return "source";
  const asked = namesUsed(records).names.find(({ name }) => name === from);
  if (asked !== undefined) return asked.kind;
  const used = [...records.beds.values(), ...records.varieties.values()].map(({ title }) => title);
  const near = nearestName(from, [...used, ...sources]);
  return {
    refused: `Nothing in the notes is called "${from}".${near === undefined ? ' "plotreel names" lists what is.' : ` Did you mean "${near}"?`}`,
  };
}

/** "Sungolds", where Sungold was joined to another name. */
function linesWith(records: Records, kind: UsedKind, from: string): readonly string[] {
  const name = normaliseName(from);
  const is = (title: string | undefined) => title !== undefined && normaliseName(title) === name;
  return records.events
    .filter(({ bed, toBed, variety, from: source }) => {
      if (kind === "source") return is(source);
      if (kind === "variety") return is(records.varieties.get(variety ?? "")?.title);
      return is(records.beds.get(bed ?? "")?.title) || is(records.beds.get(toBed ?? "")?.title);
    })
    .map(({ place: { file, line } }) => `${file}:${line}`);
}

function sourceNames({ events, varieties, gear }: Records): readonly string[] {
  return [
    ...events.map(({ from }) => from),
    ...[...varieties.values()].map(({ source }) => source?.name),
    ...[...gear.values()].map(({ from }) => from),
  ].filter((name) => name !== undefined);
}

/** A bed "Back" stands in "Back Garden" too, and is not meant there. */
function isThisName(
  words: readonly Word[],
  at: number,
  end: number,
  kind: UsedKind,
  id: string | undefined,
  names: Names,
): boolean {
  if (kind === "source") return true;
  for (let from = Math.max(0, at - longestName); from <= at; from += 1) {
    for (const other of ["bed", "variety"] as const) {
      const found = names.at(other, words, from);
      if (found !== undefined && found.end > at && found.end - from > end - at && found.id !== id) return false;
    }
  }
  return true;
}

/** Words before a name in which a longer one may begin. */
const longestName = 6;

interface Joining {
  readonly from: string;
  readonly to: string;
  /** Whether a line is known to speak of the thing. */
  said(line: number): boolean;
  isName(words: readonly Word[], at: number, end: number): boolean;
}

/** The text with the one name in the place of the other; every other letter stays. */
function joinedText(text: string, { from, to, said, isName }: Joining): Pick<JoinedFile, "after" | "lines"> {
  const wanted = wordsOf(from).filter(({ kind }) => kind !== "mark");
  const isCapital = /^\p{Lu}/u.test(from);
  const changed: JoinedLine[] = [];
  let front: "before" | "in" | "behind" = "before";
  const parts = text.split(/(\r\n|\n|\r)/);
  const after = parts.map((part, index) => {
    if (index % 2 === 1) return part;
    const line = index / 2 + 1;
    const isMark = /^---\s*$/.test(part);
    if (front === "before") front = isMark ? "in" : "behind";
    else if (front === "in" && isMark) front = "behind";
    const words = wordsOf(part);
    const places = occurrences(part, words, wanted).filter(
      ({ at, end, start }) =>
        (front === "in" || said(line) || !isCapital || /^\p{Lu}/u.test(part.slice(start))) &&
        (isCapital || front === "in" || said(line)) &&
        isName(words, at, end),
    );
    let joined = part;
    for (const { start, stop } of places.toReversed()) joined = joined.slice(0, start) + to + joined.slice(stop);
    if (joined !== part) changed.push({ line, before: part, after: joined });
    return joined;
  });
  return { after: after.join(""), lines: changed };
}

/** Where the words of the name follow one another, hyphens between them or not; not within a path. */
function occurrences(line: string, words: readonly Word[], wanted: readonly Word[]) {
  const found: { readonly at: number; readonly end: number; readonly start: number; readonly stop: number }[] = [];
  for (let at = 0; at < words.length; at += 1) {
    let next = at;
    const matches = wanted.every((word, index) => {
      if (index > 0 && words[next]?.text === "-") next += 1;
      const isSame = words[next]?.lower === word.lower;
      next += 1;
      return isSame;
    });
    const [first, last] = [words[at], words[next - 1]];
    if (!matches || first === undefined || last === undefined) continue;
    if (/[/\\_]$/.test(line.slice(0, first.start)) || /^(?:[/\\_]|\.\p{L})/u.test(line.slice(last.end))) continue;
    found.push({ at, end: next, start: first.start, stop: last.end });
    at = next - 1;
  }
  return found;
}

function photoFolder(kind: "bed" | "variety", id: string, files: readonly string[]): string | undefined {
  const folder = kind === "bed" ? `photos/${id}/` : `photos/varieties/${id}/`;
  return files.some((file) => file.startsWith(folder)) ? folder : undefined;
}
