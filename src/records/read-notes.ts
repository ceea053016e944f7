/** Parsed notes to notes and events. */
import type { Day, Event, GardenSettings, LineReading, Note, Place, Problem } from "../model.ts";
import type { RecordPlace } from "./file-names.ts";
import { wordsOf } from "./line-words.ts";
import { linkedPhotos } from "./linked-photos.ts";
import type { NameTrie } from "./name-trie.ts";
import type { Names } from "./names.ts";
import { type NoteBody, readNoteBody } from "./note-body.ts";
import { dayOfNote } from "./note-day.ts";
import { keptReading, type NoteReadings } from "./note-readings.ts";
import type { NoteTree } from "./note-tree.ts";
import type { ParsedFile } from "./parsed-files.ts";
import { problem } from "./problem-rules.ts";
import { checkRecord } from "./record-fronts.ts";
import { linesWithinRemarks } from "./remarks.ts";
import { noteSchema } from "./schemas/note.ts";

export interface NotesContext {
  readonly names: Names;
  /** Stands for the names, words and settings; see note-readings.ts. */
  readonly namesKey: string;
  readonly readings?: NoteReadings | undefined;
  readonly first?: FirstReading | undefined;
  readonly settings: Pick<GardenSettings, "units" | "southern" | "language">;
  readonly today: Day;
  /** Paths of all photos. */
  readonly photos: ReadonlySet<string>;
}

/** What a first reading made of the notes, before the names that it took were known: it stands where none of them occurs. */
export interface FirstReading {
  /** By file. */
  readonly bodies: ReadonlyMap<string, NoteBody>;
  readonly names: NameTrie;
}

export interface ReadNote {
  /** Undefined when the note has no day. */
  readonly note: Note | undefined;
  readonly events: readonly Event[];
  readonly problems: readonly Problem[];
  readonly readings: readonly LineReading[];
  /** Photos it links, with a day or without. */
  readonly linked: readonly string[];
  readonly body?: NoteBody | undefined;
}

export function readNote(place: RecordPlace, parsed: ParsedFile, context: NotesContext): ReadNote {
  const { names, settings, today } = context;
  const checked = checkRecord(noteSchema, "a note", parsed);
  const problems = [...checked.problems];
  const day = dayOfNote(parsed, checked.front?.date, today, problems);
  const linked = linkedPhotos(parsed, context.photos, problems);
  if (day === undefined)
    return { note: undefined, events: [], problems, readings: [], linked: linked.map(({ photo }) => photo) };
  const said = { id: place.id, day, private: checked.private };
  names.asOn(day);
  const beds = bedsOfNote(checked.front ?? {}, parsed, names, problems);
  const bodyContext = { note: said, beds, names, settings };
  const body = keptReading(
    context.readings,
    context.namesKey,
    parsed,
    bodyContext,
    () =>
      readAlready(parsed, context.first) ??
      readNoteBody(parsed.file, parsed.text, parsed.tree as NoteTree, bodyContext),
  );
  problems.push(...body.problems);
  const isRemark = linesWithinRemarks(parsed.text, parsed.bodyAt);
  const photos = [...new Set(linked.map(({ photo }) => photo))];
  const { privateSpans = [] } = body;
  const isHidden = ({ from }: { readonly from: number }) =>
    privateSpans.some((span) => from >= span.from && from < span.to);
  const inOpen = new Set(linked.filter((one) => !isHidden(one)).map(({ photo }) => photo));
  const privatePhotos = photos.filter((photo) => !inOpen.has(photo));
  const described = linked.flatMap(({ photo, words }) => (words === undefined ? [] : [{ photo, words }]));
  const note: Note = {
    ...said,
    title: checked.front?.title,
    beds: [...new Set([...beds, ...(body.bedsFrom ?? []).flatMap((part) => part.beds)])],
    ...(body.bedsFrom !== undefined && { bedsFrom: body.bedsFrom }),
    story: body.story.filter(({ place: { line } }) => !isRemark(line)),
    photos,
    ...(privatePhotos.length > 0 && { privatePhotos }),
    ...(described.length > 0 && { photoWords: described }),
    ...(checked.front?.["voice note"] !== undefined && { voice: checked.front["voice note"] }),
    place: { file: parsed.file, line: 1, column: 1 },
  };
  const events = body.events.map((event) => (isRemark(event.place.line) ? { ...event, private: true } : event));
  return { note, events, problems, readings: body.readings, linked: photos, body };
}

function readAlready({ file, text }: ParsedFile, first: FirstReading | undefined): NoteBody | undefined {
  const body = first?.bodies.get(file);
  if (first === undefined || body === undefined) return undefined;
  const words = wordsOf(text);
  return words.some((_, at) => first.names.at(words, at) !== undefined) ? undefined : body;
}

/** Ids of the beds in the front matter. A name no file knows and none is close to is taken as a bed of that name. */
function bedsOfNote(
  front: { readonly bed?: string | undefined; readonly beds?: readonly string[] | undefined },
  parsed: ParsedFile,
  names: Names,
  problems: Problem[],
): readonly string[] {
  const named: [string, readonly PropertyKey[]][] = (front.beds ?? []).map((bed, index) => [bed, ["beds", index]]);
  if (front.bed !== undefined) named.unshift([front.bed, ["bed"]]);
  const ids = named.map(([name, path]) => {
    const known = names.find("bed", name);
    if (known !== undefined) return known;
    const place: Place = { file: parsed.file, ...parsed.places().value(path) };
    const near = names.nearest("bed", name);
    if (near === undefined) return names.takeBed(name, place);
    problems.push(
      problem(
        "link/unknown-bed",
        place,
        `No bed is called "${name}", so this note was read without it.`,
        `Did you mean "${near}"?`,
      ),
    );
    return undefined;
  });
  return [...new Set(ids)].filter((id) => id !== undefined);
}
