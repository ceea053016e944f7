/** What private pages ask of whoever keeps the records, while somebody is there to write: addresses, asks and answers. */
import { isDay } from "../calendar.ts";
import { type NoteWriting, writingAsk } from "./note-writing.ts";
import { type OutdoorTaking, outdoorLine, outdoorPhoto } from "./outdoors-taking.ts";
import type { WorkbenchStates } from "./page-data/field-site.ts";
import { namingAsk, type PhotoNaming } from "./photo-naming.ts";
import { type PhotoTaking, photoAsk } from "./photo-taking.ts";
import { answeringAsk, type QuestionAnswering } from "./question-answering.ts";
import { type ThingAsking, thingAsk } from "./thing-asking.ts";

export interface Workbench extends WorkbenchStates {
  readonly naming: PhotoNaming;
  readonly notes: NoteWriting;
  readonly questions: QuestionAnswering;
  readonly things: ThingAsking;
  readonly photos: PhotoTaking;
  readonly outdoors: OutdoorTaking;
  /** Takes back what was written by that number. */
  undo(id: number): Promise<TapAnswer>;
}

export interface TapAnswer {
  /** One sentence for the person. */
  readonly told: string;
  /** Number by which it can be taken back; only when it was written. */
  readonly undo?: number | undefined;
  /** The file is another by now: what it says, and the state to agree to. */
  readonly asks?: { readonly state: string; readonly text: string } | undefined;
  /** It was taken back, or a photo is in the records. */
  readonly done?: true | undefined;
}

/** What came as JSON, of which nothing is known yet. */
export type Sent = Readonly<Record<string, unknown>>;

/** Addresses that take what is tapped, below the field pages. No record makes a page of such a name. */
export function asked(workbench: Workbench, at: string, sent: unknown): Promise<unknown> | undefined {
  if (typeof sent !== "object" || sent === null) return undefined;
  const said = sent as Sent;
  switch (at) {
    case "@name": {
      const ask = namingAsk(said);
      return ask && workbench.naming.name(ask);
    }
    case "@day":
      return typeof said.day === "string" && isDay(said.day) ? workbench.notes.notesOf(said.day) : undefined;
    case "@write": {
      const ask = writingAsk(said);
      return ask && workbench.notes.write(ask);
    }
    case "@settle": {
      const ask = answeringAsk(said);
      return ask && workbench.questions.answer(ask);
    }
    case "@outdoors": {
      const ask = outdoorLine(said);
      return ask && workbench.outdoors.line(ask);
    }
    case "@ask": {
      const ask = thingAsk(said);
      return ask && workbench.things.answerThing(ask);
    }
    case "@undo":
      return Number.isSafeInteger(said.id) ? workbench.undo(said.id as number) : undefined;
    default:
      return undefined;
  }
}

/** The same for a file, with what the address says of it. */
export function sentFile(
  workbench: Workbench,
  at: string,
  said: URLSearchParams,
  bytes: Uint8Array,
): Promise<unknown> | undefined {
  if (at === "@outdoors-photo") {
    const ask = outdoorPhoto(said, bytes);
    return ask && workbench.outdoors.photo(ask);
  }
  const ask = at === "@photo" ? photoAsk(said, bytes) : undefined;
  return ask && workbench.photos.take(ask);
}
