/**
 * The wrap of one film as plain data: what `plotreel wrap --json` prints and what the files and pages are made from.
 * Times are seconds into the film; `time` says the same as players show it ("6:40"). Days are ISO calendar days.
 */
import type { Day, Giver, Obtained, Place, Problem, Take } from "../model.ts";

export interface Moment {
  readonly at: number;
  readonly time: string;
}

/** A stretch of the film at one bed, as it was heard or as the episode record times it. */
export interface StopHeard extends Moment {
  /** Bed id; undefined before the first bed, after the last, and between. */
  readonly bed?: string | undefined;
  readonly until: number;
  /** From 0 to 1, that the film turns here. */
  readonly confidence: number;
  /** Words it rests on. */
  readonly restsOn: readonly string[];
  readonly planned: boolean;
  /** Too unsure for anything to be made of it. */
  readonly guess?: true | undefined;
}

export interface Chapter extends Moment {
  readonly title: string;
  readonly until: number;
  /** Bed id; undefined for opening and closing words. */
  readonly bed?: string | undefined;
}

/** A name that was heard wrong, or written in small letters. */
export interface Correction extends Moment {
  /** "N3" */
  readonly id: string;
  readonly heard: string;
  readonly name: string;
  readonly kind: "variety" | "gear" | "bed" | "word";
  /** Record id. */
  readonly record: string;
  /** "spelling": other words stood there; "letters": only capitals, accents or apostrophes. */
  readonly sort: "spelling" | "letters";
  /** From 0 to 1; from 0.88 on it is made in the corrected copy. */
  readonly confidence: number;
  readonly applied: boolean;
  /** Why, as one sentence. */
  readonly why: string;
}

/**
 * "said": its own claim was made, not only its plants named; without it "shown, not said". Promises may be "put off again", and a
 * bed "not shown, as told".
 */
export type Covered =
  | "said"
  | "filmed"
  | "said and filmed"
  | "shown, not said"
  | "put off again"
  | "not shown, as told"
  | "missed"
  | "skipped"
  | "to film again";

/** A thing the brief asked to show, or one of its shots. */
export interface PlannedCovered {
  /** "S3b" of a thing to show, "S3.2" of a shot. */
  readonly id: string;
  /** What it is of, the same in every plan of the tour. */
  readonly key: string;
  readonly bed: string;
  readonly level: "must" | "should" | "could";
  readonly text: string;
  readonly covered: Covered;
  /** When it was first said. */
  readonly at?: number | undefined;
  readonly time?: string | undefined;
  /** Why it was skipped, as ticked on the field list. */
  readonly reason?: string | undefined;
  /** Of a shot: every take that was made of it. */
  readonly takes?: readonly Take[] | undefined;
}

/** A shot to go back for. */
export interface Reshoot extends Pick<PlannedCovered, "id" | "key" | "bed" | "level" | "text"> {
  readonly what: "no good take" | "skipped" | "not filmed";
  /** "wind" */
  readonly why?: string | undefined;
}

export interface VarietyNamed extends Moment {
  readonly variety: string;
  readonly title: string;
  /** Bed at which it was first named. */
  readonly bed?: string | undefined;
  readonly times: number;
}

export interface Coverage {
  readonly things: readonly PlannedCovered[];
  readonly shots: readonly PlannedCovered[];
  /** Planned beds the speech never turns to. */
  readonly bedsMissed: readonly string[];
  /** Beds shown that were not planned, and varieties named that grow at no planned stop. */
  readonly unplanned: readonly (Moment & { readonly what: string; readonly bed?: string; readonly variety?: string })[];
  readonly named: readonly VarietyNamed[];
  readonly neverNamed: readonly { readonly variety: string; readonly title: string; readonly bed: string }[];
  /** Bed by bed, what matters most first; empty where nothing was ticked. */
  readonly reshoot: readonly Reshoot[];
  /** Planned beds that may have been shown, where the film is not heard plainly enough. */
  readonly perhapsShown: readonly string[];
  /** What was missed and can still be said or shown, as sentences. */
  readonly toPickUp: readonly string[];
}

/** A promise heard, proposed as a follow-up. */
export interface FollowUpProposed extends Moment {
  /** Its number for `--accept`, stable while the captions are. */
  readonly number: number;
  readonly said: string;
  readonly what: string;
  readonly bed?: string | undefined;
  readonly due?: Day | undefined;
  readonly rule: string;
  readonly confidence: number;
  /** Where in this same film it was kept. */
  readonly kept?: Moment | undefined;
  /** The earlier promise that it puts off. */
  readonly putsOff?: { readonly what: string; readonly promisedOn: Day; readonly place: Place } | undefined;
  /** Already in the episode record. */
  readonly recorded: boolean;
}

export interface QuestionHeard extends Moment {
  readonly kind: "question to viewers" | "doubt";
  readonly said: string;
  readonly bed?: string | undefined;
  readonly rule: string;
}

/** Something said that the records tell otherwise; nobody but the person knows which is right. */
export interface Disagreement extends Moment {
  readonly kind: "count" | "day" | "age" | "size" | "weight" | "first time" | "bed" | "source";
  readonly said: string;
  readonly records: string;
  readonly bed?: string | undefined;
  readonly sources: readonly Place[];
}

/** What was claimed of plants, and how much of it the records can speak to. What they do not tell is not agreed with. */
export interface ClaimsHeard {
  readonly heard: number;
  readonly compared: number;
  readonly agreed: number;
  readonly differed: number;
  readonly notCompared: readonly (Moment & { readonly said: string; readonly about: string })[];
}

export interface Description {
  readonly text: string;
  /** UTF-16 units, as video sites count. */
  readonly length: number;
  readonly limit: number;
  /** Parts left out to keep within the limit. */
  readonly cut: readonly string[];
}

export interface Disclosure {
  /** "Butterfly net" */
  readonly thing: string;
  readonly kind: "variety" | "gear";
  readonly record: string;
  readonly obtained?: Obtained | undefined;
  /** Of a gift or a loan. */
  readonly giver?: Giver | undefined;
  readonly from?: string | undefined;
  /** The same where it may be said: a private person only if the record allows it. */
  readonly named?: string | undefined;
  /** What to say beside the thing. */
  readonly beside?: string | undefined;
  /** Belongs at the top of the description too. */
  readonly atTop: boolean;
  /** What only the person can mend: provenance not recorded. */
  readonly warning?: string | undefined;
}

/** A notice that viewers are owed, and whether the film itself tells it. */
export interface NoticeSpoken {
  readonly thing: string;
  readonly record: string;
  readonly kind: Disclosure["kind"];
  /** When the thing is first named. */
  readonly shown?: Moment | undefined;
  readonly spoken?: Moment | undefined;
  /** A word that was said and that regulators call unclear. */
  readonly unclear?: string | undefined;
}

export interface PrivateAloud extends Moment {
  readonly name: string;
  readonly why: "a private record" | "a private bed" | "a private person" | "perhaps a private person";
}

/** One thing to look at before the film goes up. */
export interface UploadCheck {
  readonly what: string;
  readonly isDone: boolean;
  readonly lines: readonly string[];
}

export interface Answer {
  readonly question: string;
  /** Where it was asked: a note's line, or a line of the file of comments. */
  readonly place: Place;
  /** Undefined when the records do not tell. */
  readonly answer?: string | undefined;
  /** Which of several is meant, where only the person can tell. */
  readonly asks?: string | undefined;
  /** Why the answer may not be one. */
  readonly guess?: string | undefined;
  readonly sources: readonly Place[];
}

export interface Thumbnail {
  readonly bed: string;
  readonly at: number;
  /** Photo path, the best first. */
  readonly photo?: string | undefined;
  readonly day?: Day | undefined;
  readonly others: readonly string[];
  readonly why: string;
}

/** A short clip out of the film, in whole sentences. */
export interface Short {
  readonly kind: "first picking" | "kept promise" | "side by side";
  readonly bed: string;
  /** Seconds. */
  readonly at: number;
  readonly until: number;
  readonly title: string;
}

/** A title to choose, and the moment whose picture goes with it. */
export interface TitleOffered extends Moment {
  readonly title: string;
  readonly bed: string;
  /** A photo of that bed near the filming day. */
  readonly photo?: string | undefined;
}

/** A frame of the film at a variety's moment, for its plate. */
export interface PlateFrame {
  readonly variety: string;
  readonly title: string;
  readonly time: string;
  /** Beside the report. */
  readonly file: string;
}

/** One paragraph of the transcript, names set right. */
export interface Paragraph extends Moment {
  readonly text: string;
  readonly bed?: string | undefined;
}

export interface Wrap {
  readonly episode: string;
  readonly title: string;
  /** Filming day. */
  readonly day: Day;
  /** The caption file, relative to the records folder; undefined without one. */
  readonly captions?: string | undefined;
  /** Seconds. */
  readonly length: number;
  readonly chapters: readonly Chapter[];
  /** Why there are none, when there are none. */
  readonly noChapters?: string | undefined;
  readonly coverage: Coverage;
  readonly corrections: readonly Correction[];
  readonly followUps: readonly FollowUpProposed[];
  readonly questions: readonly QuestionHeard[];
  readonly disagreements: readonly Disagreement[];
  readonly claims: ClaimsHeard;
  readonly description: Description;
  readonly disclosures: readonly Disclosure[];
  readonly shorts: readonly Short[];
  /** A comment to pin under the film; undefined when no variety was named where it grows. */
  readonly pinnedComment?: string | undefined;
  /** At most 280 letters. */
  readonly post?: string | undefined;
  readonly newsletter?: string | undefined;
  /** At most three, the strongest first. */
  readonly titles: readonly TitleOffered[];
  /** Films to lead to at the end; undefined when none is spoken of. */
  readonly endCards?: string | undefined;
  readonly stops: readonly StopHeard[];
  readonly answers: readonly Answer[];
  readonly thumbnails: readonly Thumbnail[];
  readonly transcript: readonly Paragraph[];
  /** Earlier films the speaker mentions. */
  readonly earlier: readonly { readonly episode: string; readonly at: number; readonly time: string }[];
  readonly noticesSpoken: readonly NoticeSpoken[];
  readonly privateAloud: readonly PrivateAloud[];
  readonly beforeUpload: readonly UploadCheck[];
  readonly problems: readonly Problem[];
}
