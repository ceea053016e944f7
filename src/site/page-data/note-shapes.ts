/** What the pages of notes show, as plain data. */
import type { AskedTap, Link } from "./shapes.ts";

export interface FieldNotesPage {
  readonly href: string;
  readonly name: string;
  /** How all lines are read, in one sentence. */
  readonly summary: string;
  /** Newest first. */
  readonly notes: readonly {
    readonly note: Link;
    readonly file: string;
    readonly read: string;
    readonly isPrivate: boolean;
    readonly hasQuestions: boolean;
  }[];
}

export interface FieldNotePage {
  /** Part of its address. */
  readonly id: string;
  readonly name: string;
  readonly day: string;
  readonly file: string;
  readonly isPrivate: boolean;
  readonly beds: readonly Link[];
  readonly read: string;
  readonly lines: readonly NoteLine[];
  /** Address of what takes answers by tap, while somebody is there to write them. */
  readonly answering?: string | undefined;
  /** What is wrong with the note, and with no line of it. */
  readonly wrong: readonly string[];
}

/** A line as written, and beside it what it is taken to say. */
export interface NoteLine {
  readonly number: number;
  readonly text: string;
  readonly as: "facts" | "question" | "story";
  /** Of facts: plain lines. */
  readonly says: readonly { readonly line: string; readonly day?: string | undefined }[];
  /** Of a question: its readings, each of one or more plain lines; none of them for "holds no fact". */
  readonly offered: readonly (readonly string[])[];
  /** Of a question, where an answer by tap goes. */
  readonly tap?: AskedTap | undefined;
  /** What is wrong with it. */
  readonly wrong?: readonly string[] | undefined;
}
