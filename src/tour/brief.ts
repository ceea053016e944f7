/**
 * The brief: the prepared outline of one tour, as plain data. The Markdown, the JSON and the printed page are made from
 * it and from nothing else, so that one fact reads the same in all three.
 *
 * Days are ISO calendar days, durations seconds, lengths centimetres, weights grams. Sentences are English with dates in
 * the garden's own language, and every sentence tells where it rests.
 */
import type { Level } from "../films/index.ts";
import type { Sentence } from "../language/index.ts";
import type { Day, Obtained, Place, Source } from "../model.ts";
import type { PointTo, Shot, SideBySide, Spot } from "./camera.ts";
import type { ExpectedWindows } from "./expected-window.ts";
import type { Plan } from "./plan/plan.ts";

/** What makes a thing worth showing. One row each in show-values.ts, whose keys the garden's `weights` may name. */
export type ShowKind =
  | "owed"
  | "new"
  | "lost"
  | "going"
  | "trouble"
  | "trouble over"
  | "first flower"
  | "first fruit"
  | "first picking"
  | "only picking"
  | "first time"
  | "ready"
  | "picking"
  | "in flower"
  | "up"
  | "finished"
  | "trial"
  | "question"
  | "side by side"
  | "last year"
  | "a year ago"
  | "due soon"
  | "grew"
  | "built"
  | "work"
  | "standing";

/** One thing to show at a stop. */
export interface ShowPoint extends Sentence {
  /** "S3b": the second thing at the third stop. */
  readonly id: string;
  /** What it is of, whatever else the plan holds: "long-bed/trouble/clubroot/greyhound/2026-05-24". */
  readonly key: string;
  readonly level: Level;
  readonly kind: ShowKind;
  /** The reason, as a short phrase after "because": "it is new since the tour of 13 June". */
  readonly why: string;
  /** From the table of values; higher asks more strongly. */
  readonly value: number;
  /** Planting ids it speaks of. */
  readonly plantings: readonly string[];
  /** Time it takes on film: the words at the garden's narration rate, and the handling. Seconds. */
  readonly seconds: number;
  /** Id of the shot that shows it. */
  readonly shot?: string | undefined;
}

/** Words to be said on camera, with the lines of the records they rest on. */
export type OutlineLine = Pick<Sentence, "text" | "sources">;

/** Something ready to be said of one or more plantings. */
export interface Fact extends Sentence {
  readonly kind: "life" | "place" | "height" | "picked" | "expected" | "bed" | "last year" | "growth";
  /** The same with a pronoun, for when the plants have just been named: "They have given 4.2 kg so far." */
  readonly follow?: string | undefined;
  readonly plantings: readonly string[];
}

/** One line of a stop's variety list: one variety, whatever the number of its lots in the bed. */
export interface VarietyRow {
  /** Variety id. */
  readonly variety: string;
  readonly title: string;
  /** "squash"; undefined when nothing says it. */
  readonly crop?: string | undefined;
  /** Title and crop as printed in the list: "Crown Prince, squash". */
  readonly label: string;
  /** Plants alive; undefined when nobody counted. */
  readonly count?: number | undefined;
  readonly lost: number;
  /** "21 (3 lost)", "about 40"; empty where nobody counted. */
  readonly howMany: string;
  readonly sayAs?: string | undefined;
  /** What to print under "say": the `say it as`, else nothing. */
  readonly say: string;
  readonly source?: Source | undefined;
  /** What to print under "from": "seed swap, Saltmarsh Hall". */
  readonly from: string;
  /** Never grown in this garden before this season. */
  readonly newThisYear: boolean;
  /** "in row 2, next to the leeks"; undefined when nothing tells. */
  readonly where?: string | undefined;
  readonly plantings: readonly string[];
  readonly private: boolean;
  readonly sources: readonly Place[];
}

/** Gear standing in the bed: what viewers will ask about. */
export interface GearRow {
  readonly gear: string;
  readonly title: string;
  readonly obtained?: Obtained | undefined;
  readonly from?: string | undefined;
  readonly link?: string | undefined;
  readonly sources: readonly Place[];
}

/** A thing that became different since viewers last saw the bed. */
export interface ChangeLine extends Sentence {
  readonly kind: string;
  readonly day: Day;
}

export interface TroubleLine extends Sentence {
  /** "clubroot on the Greyhound cabbages" */
  readonly what: string;
  readonly cause: string;
  readonly opened: Day;
  readonly tried: readonly string[];
  /** Planting ids it troubles; empty when it troubles the bed as a whole. */
  readonly plantings: readonly string[];
}

export interface TaskLine extends Sentence {
  readonly what: string;
  readonly due?: Day | undefined;
  readonly overdue: boolean;
}

/** When viewers last saw a bed, and what "new" therefore means at its stop. */
export interface Since {
  readonly day: Day;
  /** The published tour that showed it; undefined when no tour did and `day` is the bed's own start. */
  readonly episode?: string | undefined;
  readonly title?: string | undefined;
  /** "since the tour of 13 June", "since it was first planted in March 2023" */
  readonly text: string;
}

export interface Stop {
  /** "S3" */
  readonly id: string;
  readonly number: number;
  readonly bed: string;
  readonly title: string;
  /** Site id. */
  readonly site?: string | undefined;
  readonly siteTitle?: string | undefined;
  readonly since: Since;
  readonly spot: Spot;
  /** Undefined when there are no two such photos, or they do not lie over one another. */
  readonly sideBySide?: SideBySide | undefined;
  readonly show: readonly ShowPoint[];
  readonly varieties: readonly VarietyRow[];
  readonly gear: readonly GearRow[];
  readonly facts: readonly Fact[];
  /** Since viewers last saw the bed; of a bed no tour has shown, this season: its whole history is the timeline's. */
  readonly changes: readonly ChangeLine[];
  /** What ended since viewers last saw the bed: picked out, cleared, lost. */
  readonly finishedSince: readonly Sentence[];
  /** What viewers saw here last time. */
  readonly lastSeen: readonly Sentence[];
  readonly troubles: readonly TroubleLine[];
  readonly tasks: readonly TaskLine[];
  readonly cautions: readonly Sentence[];
  /** Cautions the stop has no room for; they stand in the list at the end. */
  readonly furtherCautions: readonly Sentence[];
  /** What must be said of things given, lent, paid for or linked. */
  readonly disclosures: readonly Sentence[];
  /** Planned length on film, walking there included, seconds. */
  readonly seconds: number;
  /** Seconds into the film at which the stop begins. */
  readonly begins: number;
  /** Clock at which it begins, "9:21"; undefined without a start. Setting up and going from site to site are in it. */
  readonly from?: string | undefined;
  /** How to get there from the stop before: "ten steps north-east from the bean row". */
  readonly way?: string | undefined;
  /** The line that leads here from the stop before, said on the way; the outline begins with it and tells where it rests. */
  readonly link?: string | undefined;
  /** Light at that clock time in a film-maker's words: "sun behind you until 10:40"; undefined when nothing tells. */
  readonly light?: string | undefined;
  /** What to say, in order: the link line first, what is owed or coming last. */
  readonly outline: readonly OutlineLine[];
  /** The outline's last line, when something is owed or coming. */
  readonly close?: string | undefined;
  readonly shots: readonly Shot[];
  /** Earlier films to point to, the most specific and newest first. */
  readonly pointTo: readonly PointTo[];
}

export interface FollowUpLine extends Sentence {
  readonly id: string;
  readonly what: string;
  readonly bed?: string | undefined;
  readonly promisedOn: Day;
  readonly episode?: string | undefined;
  readonly due?: Day | undefined;
  readonly standing: "overdue" | "due" | "open";
  /** The condition it hangs on, "once they fill in", while no note says that it has come. */
  readonly waits?: string | undefined;
  /** How the thing stands now, from the records; undefined when nothing tells. */
  readonly now?: Sentence | undefined;
  /** The same as said to viewers: "In June I promised to show the leeks again." */
  readonly said: Sentence;
  /** Stop id at which to keep it; undefined when no stop of this tour can. */
  readonly stop?: string | undefined;
}

export interface OpeningLine extends Sentence {
  readonly kind: "newest" | "owed" | "biggest change";
}

/** A bed the tour passes by, or a thing at one of its stops that the film has no room for. */
export interface LeftOut extends Sentence {
  readonly what: "bed" | "thing";
  readonly bed: string;
  readonly title: string;
  /** As it is named in the list: "the Chioggia beetroot in the long bed". */
  readonly about: string;
  /** Why it is out: "no room", "you said skip", "nothing new since May". */
  readonly why: string;
  /** What stands behind its name in the list: "up since Thursday"; of a bed, why it is out and what is missed. */
  readonly reason: string;
  /** The strongest thing to show there; undefined when there is nothing new. */
  readonly miss?: string | undefined;
  /** Time it would take on film, seconds. */
  readonly seconds?: number | undefined;
  /** What to write behind `keep:` to have it. */
  readonly keepBy?: string | undefined;
  /** What could go to make room for it: the weakest thing in the plan that is long enough. */
  readonly couldGo?: string | undefined;
}

export interface Check extends Sentence {
  readonly kind:
    | "source"
    | "say it as"
    | "photo"
    | "unnamed"
    | "unread"
    | "task"
    | "doubt"
    | "question"
    | "trial"
    | "must"
    | "stop"
    | "wish"
    | "weight"
    | "target";
  readonly bed?: string | undefined;
}

export interface BriefRequest {
  /** Episode id. */
  readonly episode?: string | undefined;
  /** Filming day of a tour that no episode record plans. */
  readonly day?: Day | undefined;
  /** Wall clock "09:30" at which filming begins, whatever the episode's record says. */
  readonly start?: string | undefined;
  /** Cloud is expected: the light has no direction. */
  readonly overcast?: boolean | undefined;
  /** When what has not come yet should; a planting without a window goes by its variety's days. */
  readonly windows?: ExpectedWindows | undefined;
  readonly today: Day;
}

export interface Brief {
  /** Episode id, or the day when no episode is planned: also the name of the brief's files. */
  readonly tour: string;
  readonly title: string;
  /** Filming day. */
  readonly date: Day;
  /** "Saturday 18 July 2026". */
  readonly dateText: string;
  /** Filming day of the last published tour; undefined when there is none yet. */
  readonly since?: Day | undefined;
  readonly sinceText?: string | undefined;
  /** Whether no film was made before, published or not. */
  readonly isFirst: boolean;
  /** Seconds the film should last. */
  readonly target?: number | undefined;
  /** Wall clock "09:15" at which filming begins: the person's own, else the best by the light. */
  readonly start?: string | undefined;
  readonly plan: Plan;
  readonly opening: readonly OpeningLine[];
  readonly followUps: readonly FollowUpLine[];
  readonly stops: readonly Stop[];
  readonly leftOut: readonly LeftOut[];
  /** Open tasks of no bed in particular; those of a bed stand at its stop. */
  readonly tasks: readonly TaskLine[];
  readonly checks: readonly Check[];
  readonly kit: readonly string[];
  /** Whom to call; undefined when nothing on the walk can poison. */
  readonly closingCaution?: string | undefined;
  /** Time to say everything marked must, and everything marked must or should, seconds. */
  readonly seconds: { readonly must: number; readonly should: number };
}
