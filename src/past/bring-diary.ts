/** A diary as a note for each day, in the person's own words, with what its lines are taken to say. */
import type { Day, Event, Records } from "../model.ts";
import { type RecordsFolder, readRecords } from "../records/index.ts";
import type { DayOrder } from "./cell-days.ts";
import { FreeNames, type NewFile, type Part, partOf, recordOf, slugOf, type Told, withFiles } from "./new-file.ts";
import { readDiary } from "./read-diary.ts";
import { sameFact } from "./row-lines.ts";

export interface DiaryRequest {
  readonly text: string;
  /** File name. */
  readonly name: string;
  readonly folder: RecordsFolder;
  /** As they are. */
  readonly before: Records;
  readonly today: Day;
  readonly order: DayOrder | undefined;
  readonly year: number | undefined;
  readonly isPublic: boolean;
  /** Hashes of parts that were brought in before. */
  readonly known: ReadonlySet<string>;
}

export interface BroughtDiary {
  readonly notes: readonly NewFile[];
  /** The records as they would be. */
  readonly records: Records;
  readonly days: number;
  readonly knownDays: number;
  /** Facts that a note of the same day tells already. */
  readonly twice: readonly { readonly event: Event; readonly there: Event }[];
  readonly told: readonly Told[];
  readonly parts: readonly Part[];
}

export async function bringDiary(request: DiaryRequest): Promise<BroughtDiary> {
  const { text, name, folder, today, known, isPublic } = request;
  const { days, told } = readDiary(text, request);
  const there = new Set(await folder.list());
  const free = new FreeNames(there);
  const notes: NewFile[] = [];
  const parts: Part[] = [];
  let knownDays = 0;
  for (const [day, entries] of Map.groupBy(days, (entry) => entry.day)) {
    const isKnown = (line: string) => line !== "" && known.has(lineOf(day, line, "").hash);
    // A diary that goes on brings what was added to a day.
    const fresh = entries.map(({ lines }) =>
      lines
        .filter((line) => !isKnown(line))
        .join("\n")
        .trim(),
    );
    const body = fresh.filter((text) => text !== "").join("\n\n");
    if (body === "") {
      knownDays += 1;
      continue;
    }
    const content = recordOf([`date: ${day}`, ...(isPublic ? [] : ["private: true"])], `${body}\n`);
    const plain = `notes/${day.slice(0, 4)}/${day}-${slugOf(name)}.md`;
    // A run that was broken off has written it, and not yet remembered that it did.
    const isThere = there.has(plain) && Buffer.from(await folder.read(plain)).equals(Buffer.from(content));
    const file = isThere ? plain : free.take(plain);
    if (isThere) knownDays += 1;
    else notes.push({ file, content });
    for (const line of body.split("\n")) if (line !== "") parts.push(lineOf(day, line, file));
  }
  const records = await readRecords(withFiles(folder, notes), { today });
  const added = new Set(notes.map(({ file }) => file));
  const onDay = Map.groupBy(request.before.events, (event) => event.day);
  const twice = records.events.flatMap((event) => {
    const there = added.has(event.place.file) ? onDay.get(event.day)?.find((one) => isSame(one, event)) : undefined;
    return there === undefined ? [] : [{ event, there }];
  });
  return { notes, records, twice, days: notes.length + knownDays, knownDays, told, parts };
}

function lineOf(day: Day, line: string, to: string): Part {
  return partOf(`${day}\n${line}`, to);
}

function isSame(a: Event, b: Event): boolean {
  return (
    sameFact(a, b) &&
    a.count?.value === b.count?.value &&
    a.grams === b.grams &&
    a.what === b.what &&
    a.cause === b.cause
  );
}
