/** A page for each note: every line with what it is taken to say beside it; and the list of them. */
import type { LineReading, Note, Problem } from "../../model.ts";
import { type Names, printEvent } from "../../records/index.ts";
import { TAP_SCRIPT } from "../workbench-files.ts";
import type { FieldNotePage, FieldNotesPage, NoteLine } from "./note-shapes.ts";
import { pagesOnDemand } from "./on-demand.ts";
import type { Link, RecordLine } from "./shapes.ts";
import type { View } from "./view.ts";

/** Notes that a bed's page leads to. */
const LATEST = 12;

/** Newest first. `stateOf` says what stands in a file while somebody can write there; without it questions only show. */
export function notePages(view: View, stateOf?: (file: string) => string): readonly FieldNotePage[] {
  const names = view.names();
  const readings = Map.groupBy(view.garden.readings, ({ place }) => place.file);
  const problems = Map.groupBy(
    // A question stands at its line anyway.
    view.garden.problems.filter(({ rule }) => rule !== ASKED),
    ({ file }) => file,
  );
  const pageOf = (note: Note): FieldNotePage => {
    const { file } = note.place;
    const bare = linesOf(note, readings.get(file) ?? [], names, view);
    const state = bare.some(({ as }) => as === "question") ? stateOf?.(file) : undefined;
    const { lines, rest } = withProblems(bare, problems.get(file) ?? []);
    return {
      id: addressOfNote(note.id),
      name: nameOf(note, view),
      day: view.locale.day(note.day),
      file: note.place.file,
      isPrivate: note.private,
      beds: note.beds.flatMap((id) => {
        const bed = view.garden.beds.get(id);
        return bed === undefined ? [] : [{ href: view.links.bed(id), text: bed.title }];
      }),
      read: howRead(lines, view),
      lines: lines.map((line) =>
        state === undefined || line.as !== "question" ? line : { ...line, tap: { file, line: line.number, state } },
      ),
      answering: stateOf === undefined ? undefined : view.links.home + TAP_SCRIPT,
      wrong: rest.map(sayWrong),
    };
  };
  return pagesOnDemand(view.garden.notes.toReversed(), ({ id }) => ({ id: addressOfNote(id) }), pageOf);
}

/** The rule by which a question is a problem too. */
export const ASKED = "note/question";

function withProblems(lines: readonly NoteLine[], problems: readonly Problem[]) {
  const at = Map.groupBy(problems, ({ line }) => lines.findLastIndex(({ number }) => number <= line));
  return {
    lines: lines.map((line, index) => {
      const own = at.get(index);
      return own === undefined ? line : { ...line, wrong: own.map(sayWrong) };
    }),
    rest: at.get(-1) ?? [],
  };
}

function sayWrong({ what, fix }: Problem): string {
  return `${what} ${fix}`;
}

/** Where a page shows a line of the records: notes have pages, line by line. */
export type Jump = (file: string, line: number) => RecordLine;

export function jumpsOf(view: View): Jump {
  const names = view.names();
  const readings = Map.groupBy(view.garden.readings, ({ place }) => place.file);
  const notes = new Map(view.garden.notes.map((note) => [note.place.file, note]));
  const numbers = new Map<string, readonly number[]>();
  return (file, line) => {
    const text = `${file}:${line}`;
    const note = notes.get(file);
    if (note === undefined) return { text };
    const known = numbers.get(file) ?? linesOf(note, readings.get(file) ?? [], names, view).map(({ number }) => number);
    numbers.set(file, known);
    const at = known.findLast((number) => number <= line);
    const page = view.links.note(addressOfNote(note.id));
    return { text, href: at === undefined ? page : `${page}#line-${at}` };
  };
}

export function notesPage(view: View, pages: readonly FieldNotePage[]): FieldNotesPage {
  const { words, links } = view;
  return {
    href: links.notes,
    name: words.field.readNotes,
    summary: howRead(
      pages.flatMap(({ lines }) => lines),
      view,
    ),
    notes: pages.map(({ id, name, day, file, read, isPrivate, lines }) => ({
      note: { href: links.note(id), text: name === day ? day : `${day}, ${name}` },
      file,
      read,
      isPrivate,
      hasQuestions: lines.some(({ as }) => as === "question"),
    })),
  };
}

/** The latest notes that speak of a bed. */
export function notesOfBed(view: View, bed: string): readonly Link[] {
  return view.garden.notes
    .filter(({ beds }) => beds.includes(bed))
    .slice(-LATEST)
    .toReversed()
    .map((note) => {
      const day = view.locale.day(note.day);
      return {
        href: view.links.note(addressOfNote(note.id)),
        text: note.title === undefined ? day : `${day}, ${note.title}`,
      };
    });
}

/** Ids are paths below notes/, and a page has a folder of its own: every id gives another. */
export function addressOfNote(id: string): string {
  return id.replaceAll("~", "~~").replaceAll("/", "~");
}

function nameOf({ title, day }: Note, { locale }: View): string {
  return title ?? locale.day(day);
}

/** Readings, and stories that no reading has, in the order of the file. */
function linesOf(note: Note, readings: readonly LineReading[], names: Names, view: View): readonly NoteLine[] {
  const untold = note.story.filter(({ text, place }) => {
    const last = place.line + text.split("\n").length - 1;
    return !readings.some((reading) => reading.place.line <= last && place.line <= reading.lastLine);
  });
  const stories = untold.map(
    ({ text, place }): NoteLine => ({ number: place.line, text, as: "story", says: [], offered: [] }),
  );
  const read = readings.map(
    ({ place, text, as, events, readings: offers }): NoteLine => ({
      number: place.line,
      text,
      as,
      says: events.map((event) => ({
        line: printEvent({ ...event, more: [] }, names, view.garden.settings.units),
        day: event.day === note.day ? undefined : view.locale.onDay(event.day, note.day),
      })),
      offered: offers.map(({ line }) => line.split("\n").filter((plain) => plain !== "")),
    }),
  );
  return [...read, ...stories].sort((a, b) => a.number - b.number);
}

function howRead(lines: readonly NoteLine[], { words }: View): string {
  const count = (as: NoteLine["as"]) => lines.filter((line) => line.as === as).length;
  return words.field.howRead(count("facts"), count("question"), count("story"));
}
