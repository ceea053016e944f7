/**
 * What the pages show, as plain data: every address complete, every sentence finished, nothing left to compute.
 * Pages and components import types from here and from nowhere else.
 */

import type { Amount } from "../../language/index.ts";
import type {
  AgedPicture,
  Comparison,
  GrowthChart,
  Lapse,
  PicturePair,
  ThenAndNowPage,
  WeekStrip,
} from "./comparison-shapes.ts";
import type { EpisodeWrapShown, FilmMoment } from "./film-shapes.ts";
import type { FieldNotePage, FieldNotesPage } from "./note-shapes.ts";
import type { SmallPlate, VarietyPlate } from "./plate-shapes.ts";
import type { RecapPage } from "./recap-shapes.ts";
import type { SeasonRibbon } from "./ribbon/ribbon-shapes.ts";
import type { WalkStop } from "./walk/walk-shapes.ts";

export type { Amount } from "../../language/index.ts";
export type { EpisodeWrapShown, FilmMoment, TranscriptPart } from "./film-shapes.ts";
export type { SmallPlate, VarietyPlate } from "./plate-shapes.ts";
export type { RecapPage } from "./recap-shapes.ts";
export type { RibbonDay, SeasonRibbon } from "./ribbon/ribbon-shapes.ts";
export type { WalkStop, WalkVariety } from "./walk/walk-shapes.ts";

export interface Link {
  readonly href: string;
  readonly text: string;
}

/** A photo in several sizes. */
export interface Picture {
  readonly alt: string;
  /** Pixels of the largest copy. */
  readonly width: number;
  readonly height: number;
  /** So wide that it is shown in full height, to be pushed sideways. */
  readonly isPanorama: boolean;
  readonly src: string;
  readonly sets: readonly { readonly type: string; readonly srcset: string }[];
  /** "17 July 2026" */
  readonly day: string;
  readonly bed?: Link | undefined;
  readonly caption?: string | undefined;
  readonly credit?: string | undefined;
}

export type {
  AgedPicture,
  ChartLine,
  Comparison,
  GrowthChart,
  Lapse,
  PicturePair,
  SpotPicture,
  ThenAndNowPage,
  WeekStrip,
} from "./comparison-shapes.ts";

/** What stands around every page. */
export interface SiteFrame {
  readonly garden: string;
  readonly language: string;
  readonly home: string;
  readonly navigation: readonly Link[];
  /** Of the site, without path, when it has one and its pages may say so. */
  readonly address?: string | undefined;
  /** Addresses of the feeds; undefined when there are none. */
  readonly feeds?: { readonly rss: string; readonly json: string } | undefined;
  /** "18 July 2026" */
  readonly asOf: string;
}

// ------------------------------------------------------------------------------------------------------ public pages

export interface PublicSite {
  readonly frame: SiteFrame;
  readonly home: HomePage;
  readonly varieties: VarietyListPage;
  readonly varietyPages: readonly VarietyPage[];
  readonly beds: BedListPage;
  readonly bedPages: readonly BedPage[];
  readonly thenAndNow: readonly ThenAndNowPage[];
  readonly episodes: EpisodeListPage;
  readonly episodePages: readonly EpisodePage[];
  /** Newest first. */
  readonly recaps: readonly RecapPage[];

  readonly search: SearchPage;
  /** CSS that hides what the choices of the variety list leave out. */
  readonly filterRules: string;
  /** The variety list as CSV. */
  readonly csv: string;
  /** Made for programs: feeds, the variety list as JSON. */
  readonly files: readonly SiteFile[];
}

export interface SearchPage {
  readonly href: string;
  /** The script that looks into the index. */
  readonly indexHref: string;
  readonly namesHref: string;
}

/** A text file beside the pages. */
export interface SiteFile {
  /** Relative to the site, with forward slashes. */
  readonly path: string;
  readonly text: string;
}

export interface HomePage {
  /** The newest photo of all. */
  readonly picture?: Picture | undefined;
  /** The garden's own words about itself, as safe HTML. */
  readonly about: string;
  readonly latest?: EpisodeCard | undefined;
  /** Of the newest film; of what grows now while there is none. */
  readonly plates: readonly { readonly plate: SmallPlate; readonly at?: FilmMoment | undefined }[];
  /** So many of them have photos that they can lead the page. */
  readonly platesLead: boolean;
  /** To those there is no room for. */
  readonly morePlates?: Link | undefined;
  readonly flowering: NamesNow;
  readonly picking: NamesNow;
  readonly pair?: PicturePair | undefined;
  /** More days of the same bed. */
  readonly pairMore?: Link | undefined;
  readonly changed: readonly BedChanges[];
  /** The whole list; undefined while there is none. */
  readonly varieties?: Link | undefined;
}

/** Names of varieties, and a way to those there is no room for. */
export interface NamesNow {
  readonly crops: readonly CropNames[];
  readonly more?: Link | undefined;
}

/** Varieties of one crop, by name. */
export interface CropNames {
  /** "Tomatoes" */
  readonly crop: string;
  readonly varieties: readonly { readonly href: string; readonly name: string; readonly isNew: boolean }[];
}

export interface BedChanges {
  readonly bed: Link;
  readonly changes: readonly DatedLine[];
}

export interface DatedLine {
  /** ISO day for `<time>`. */
  readonly iso: string;
  /** "18 July" */
  readonly day: string;
  readonly text: string;
}

/** A day's own words, as safe HTML. */
export interface NotebookDay {
  readonly iso: string;
  readonly day: string;
  readonly html: string;
}

/** One variety in the list, or a crop of which nobody noted a variety. */
export interface VarietyRow {
  /** Undefined for a crop without a variety. */
  readonly id?: string | undefined;
  readonly plate: SmallPlate;
  /** Where a jump to its first letter ends. */
  readonly anchor?: string | undefined;
  /** Filter values. */
  readonly bedIds: readonly string[];
  readonly sourceId: string;
}

export interface CropGroup {
  /** Anchor. */
  readonly id: string;
  /** Filter value. */
  readonly cropId: string;
  /** "Tomatoes" */
  readonly name: string;
  /** Its first. */
  readonly letter: string;
  readonly rows: readonly VarietyRow[];
  /** First letters of its varieties, in a group too long to look through. */
  readonly letters: readonly Link[];
  /** Filter values of all rows together. */
  readonly bedIds: readonly string[];
  readonly sourceIds: readonly string[];
  readonly someNew: boolean;
}

export interface FilterChoice {
  readonly id: string;
  readonly name: string;
}

export interface VarietyListPage {
  readonly href: string;
  readonly csvHref: string;
  readonly jsonHref: string;
  readonly filterHref: string;
  /** Whether any row has a photo: without one no room is kept for them. */
  readonly pictured: boolean;
  /** "71 varieties of 26 crops." */
  readonly count: string;
  readonly groups: readonly CropGroup[];
  /** First letters, each with the first group under it. */
  readonly letters: readonly Link[];
  readonly families: readonly { readonly name: string; readonly crops: readonly Link[] }[];
  readonly crops: readonly FilterChoice[];
  readonly beds: readonly FilterChoice[];
  readonly sources: readonly FilterChoice[];
  readonly someNew: boolean;
  readonly season: string;
}

export interface SourceLine {
  /** "Drift Lane Seeds" */
  readonly name: string;
  readonly link?: string | undefined;
  /** "bought", "given free", "paid promotion" */
  readonly disclosure?: string | undefined;
  /** True when viewers must be told before they follow the link. */
  readonly mustSay: boolean;
}

export interface GrownHere {
  readonly bed: Link;
  readonly text: string;
  readonly isNew: boolean;
}

export interface SeenIn {
  readonly episode: Link;
  readonly day: string;
  readonly stops: readonly { readonly bed: Link; readonly at?: FilmMoment | undefined }[];
  /** When its name is first said. */
  readonly named?: FilmMoment | undefined;
}

export interface VarietyPage {
  readonly id: string;
  readonly name: string;
  readonly crop: string;
  readonly cropHref?: string | undefined;
  readonly botanical?: string | undefined;
  readonly sayAs?: string | undefined;
  readonly alsoSpelled: string;
  readonly isNew: boolean;
  readonly plate: VarietyPlate;
  readonly caution?: string | undefined;
  /** The plate's first photo, else the nearest that shows it among others. */
  readonly picture?: Picture | undefined;
  readonly result: string;
  readonly source?: SourceLine | undefined;
  /** The same in one piece. */
  readonly cameFrom?: string | undefined;
  readonly now: readonly GrownHere[];
  readonly before: readonly { readonly season: string; readonly plantings: readonly GrownHere[] }[];
  readonly picked: readonly { readonly season: string; readonly amount: Amount; readonly times: string }[];
  readonly seenIn: readonly SeenIn[];
  readonly about: string;
  readonly notes: readonly NotebookDay[];
  /** One spot while it grew there. */
  readonly comparison?: Comparison | undefined;
  readonly heights?: GrowthChart | undefined;
  /** Newest first. */
  readonly photos: readonly AgedPicture[];
}

export interface PlanDrawing {
  readonly site: string;
  /** What the drawing shows, in words. */
  readonly told: string;
  /** Centimetres. */
  readonly width: number;
  readonly height: number;
  /** Height of its numbers, in the same measure. */
  readonly letters: number;
  readonly beds: readonly PlanBed[];
  readonly gates: readonly PlanSpot[];
  /** From spot to spot, where a walk is drawn. */
  readonly route: readonly PlanSpot[];
}

export interface PlanSpot {
  readonly x: number;
  readonly y: number;
}

export interface PlanBed {
  readonly name: string;
  readonly number: number;
  readonly isThis: boolean;
  readonly href?: string | undefined;
  /** As much of number and name as there is room for. */
  readonly label: string;
  /** Number and name. */
  readonly said: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface BedCard {
  readonly href: string;
  readonly name: string;
  readonly number: number;
  /** Where a jump to its first letter ends. */
  readonly anchor?: string | undefined;
  readonly growing: string;
}

export interface BedListPage {
  readonly href: string;
  readonly sites: readonly {
    readonly id: string;
    readonly name: string;
    readonly placeName?: string | undefined;
    readonly plan?: PlanDrawing | undefined;
    readonly beds: readonly BedCard[];
    /** First letters of its beds, where there are too many to look through. */
    readonly letters: readonly Link[];
  }[];
}

export interface GrowingNow {
  /** Undefined when the notes name only the crop. */
  readonly href?: string | undefined;
  readonly name: string;
  readonly crop: string;
  readonly text: string;
  readonly isNew: boolean;
}

export interface DayOfChanges {
  readonly iso: string;
  readonly day: string;
  readonly lines: readonly string[];
  readonly pictures: readonly AgedPicture[];
}

/** How a bed came on, as its photos show and measure it. */
export interface BedGrowth {
  readonly comparisons: readonly Comparison[];
  readonly strips: readonly WeekStrip[];
  readonly lapses: readonly Lapse[];
  readonly charts: readonly GrowthChart[];
  readonly thenAndNow?: Link | undefined;
}

export interface BedPage {
  readonly id: string;
  readonly name: string;
  readonly site?: string | undefined;
  readonly placeName?: string | undefined;
  /** "8 m by 1.2 m, facing south."; undefined when the records tell neither. */
  readonly size?: Amount | undefined;
  readonly facts: readonly string[];
  readonly about: string;
  readonly picture?: Picture | undefined;
  readonly plan?: PlanDrawing | undefined;
  readonly now: readonly GrowingNow[];
  readonly growth: BedGrowth;
  readonly season: string;
  /** This season so far; undefined before anything stood or happened there. */
  readonly ribbon?: SeasonRibbon | undefined;
  /** Earlier ones, newest first. */
  readonly seasons: readonly SeasonRibbon[];
  readonly seenIn: readonly SeenIn[];
}

export interface EpisodeCard {
  readonly href: string;
  readonly title: string;
  /** "Filmed on 13 June 2026. It stops at Long bed, Arch bed and six more beds." */
  readonly text: string;
  readonly link?: string | undefined;
  readonly picture?: Picture | undefined;
}

export interface EpisodeListPage {
  readonly href: string;
  readonly years: readonly { readonly year: number; readonly episodes: readonly EpisodeCard[] }[];
}

export interface EpisodePage {
  readonly id: string;
  readonly title: string;
  readonly day: string;
  readonly link?: string | undefined;
  readonly about: string;
  readonly picture?: Picture | undefined;
  /** In the order of the film. */
  readonly stops: readonly WalkStop[];
  /** Of each site whose beds tell where they lie. */
  readonly plans: readonly PlanDrawing[];
  /** What its captions give; undefined without any. */
  readonly wrap?: EpisodeWrapShown | undefined;
  /** Taken on the filming day, beside those of the stops. */
  readonly photos: readonly Picture[];
  /** JSON-LD. */
  readonly data?: string | undefined;
}

// ------------------------------------------------------------------------------------------------------- field pages

export interface FieldSite {
  readonly frame: SiteFrame;
  readonly home: FieldHomePage;
  readonly bedPages: readonly FieldBedPage[];
  readonly thenAndNow: readonly ThenAndNowPage[];
  readonly viewpoints: readonly ViewpointPage[];
  readonly naming: NamingPage;
  /** Newest first. */
  readonly recaps: readonly RecapPage[];
  readonly notes: FieldNotesPage;
  /** Newest first. */
  readonly notePages: readonly FieldNotePage[];
}

export interface FieldTask {
  readonly what: string;
  readonly bed?: Link | undefined;
  /** "was due on Monday 13 July" */
  readonly due?: string | undefined;
  readonly isLate: boolean;
  readonly from: RecordLine;
}

/** A line of the records, and where a page shows it. */
export interface RecordLine {
  /** "notes/2026-06-30.md:4" */
  readonly text: string;
  readonly href?: string | undefined;
}

/** Today's desk: what is to be done now first, what is only looked up below it, errors last. Each thing stands in one place. */
export interface FieldHomePage {
  /** "Saturday 18 July" */
  readonly day: string;
  /** Only while somebody is there to write what is typed. */
  readonly writing?: WritingBox | undefined;
  readonly outdoors: Link;
  /** The next planned film. */
  readonly film?: DeskFilm | undefined;
  /** What was promised, whatever film keeps it. */
  readonly owed: Folded<FieldTask>;
  /** What is there to be seen this week and not for ever. */
  readonly best: readonly { readonly text: string; readonly bed?: Link | undefined }[];
  /** Those due this week, and all others. */
  readonly tasks: Folded<FieldTask>;
  /** Photos without a name, and how many there are. */
  readonly naming: Link & { readonly summary: string; readonly photos: readonly Picture[] };
  readonly questions: {
    readonly asked: readonly AskedLine[];
    /** How many of them stand open; the others are folded away, and how many these are said. */
    readonly open: number;
    readonly laterSaid: string;
    readonly more: string;
  };
  /** The season so far, a row for each bed. */
  readonly ribbon?: SeasonRibbon | undefined;
  /** What viewers will ask about and no record tells. */
  readonly asks: readonly AskedThing[];
  readonly beds: readonly {
    readonly bed: Link;
    /** Whose photos are taken that are dropped on it, while somebody is there to keep them: "bed=long-bed". */
    readonly drop?: string | undefined;
    readonly site: string;
    readonly growing: string;
    readonly isPrivate: boolean;
  }[];
  /** What else there is: other briefs, all notes, the spots of the cameras, recaps. */
  readonly others: readonly Link[];
  /** What viewers could be shown and are not yet. */
  readonly notYetShown: readonly string[];
  readonly notYetShownSaid: string;
  readonly problems: {
    readonly summary: string;
    readonly lines: readonly FieldProblem[];
    /** As of questions: errors and warnings stand open, hints do not. */
    readonly open: number;
    readonly laterSaid: string;
    readonly more: string;
  };
}

export interface WritingBox {
  /** As fields of forms have it. */
  readonly day: string;
  readonly beds: readonly (Link & { readonly id: string })[];
  /** Address of what runs it. */
  readonly script: string;
}

export interface DeskFilm {
  readonly brief: Link;
  /** "In five days, on Saturday 18 July." */
  readonly when: string;
  readonly fieldList?: string | undefined;
}

/** What is to be seen at once, and what is folded away below it. */
export interface Folded<Thing> {
  readonly now: readonly Thing[];
  readonly later: readonly Thing[];
  /** "Nine more, not due this week." */
  readonly laterSaid: string;
}

/** A question worth asking, answered by a tap or a few words. */
export interface AskedThing {
  readonly id: string;
  readonly text: string;
  readonly why?: string | undefined;
  readonly taps: readonly string[];
  /** An answer in words, such as this one. */
  readonly such: string;
  /** Somebody is there to write the answer. */
  readonly isLive: boolean;
}

/** A line that waits for an answer. */
export interface AskedLine {
  readonly text: string;
  readonly from: RecordLine;
  /** Its readings, each of one or more plain lines; none of them for "holds no fact". */
  readonly offered: readonly (readonly string[])[];
  /** Where an answer by tap goes; undefined where nobody is there to write it. */
  readonly tap?: AskedTap | undefined;
}

export interface AskedTap {
  readonly file: string;
  readonly line: number;
  /** What stands in the file, as a digest. */
  readonly state: string;
}

/** Photos of which nobody knows yet what they are of. */
export interface NamingPage {
  /** Whether somebody is there to write what is tapped. */
  readonly byTap: boolean;
  readonly summary: string;
  readonly photos: readonly {
    readonly path: string;
    readonly picture: Picture;
    readonly title: string;
    /** Where its name would be written. */
    readonly file: string;
    /** What stands there, as a digest. */
    readonly state: string;
    readonly choices: readonly string[];
  }[];
  readonly more: string;
  /** Varieties and beds that can be written. */
  readonly names: readonly string[];
}

export interface FieldProblem {
  readonly severity: string;
  readonly from: RecordLine;
  readonly what: string;
  readonly fix: string;
}

export interface FieldBedPage {
  readonly id: string;
  readonly name: string;
  readonly isPrivate: boolean;
  readonly site?: string | undefined;
  /** While somebody is there to take it: the box to write in, what runs the page, and whose photos are taken. */
  readonly live?:
    | {
        readonly write: string;
        readonly script: string;
        /** "bed=long-bed" */
        readonly drop: string;
        readonly varieties: readonly { readonly drop: string; readonly name: string }[];
      }
    | undefined;
  readonly facts: readonly string[];
  readonly about: string;
  readonly season: string;
  /** This season so far, its days told by the lines of their notes. */
  readonly ribbon?: SeasonRibbon | undefined;
  /** Earlier ones, newest first. */
  readonly seasons: readonly SeasonRibbon[];
  /** The newest of all. */
  readonly picture?: Picture | undefined;
  readonly now: readonly (GrowingNow & {
    readonly sayAs?: string | undefined;
    readonly source: string;
    /** "variety=crown-prince" */
    readonly drop?: string | undefined;
  })[];
  readonly troubles: readonly { readonly text: string; readonly tried: readonly string[] }[];
  readonly tasks: readonly FieldTask[];
  readonly followUps: readonly FieldTask[];
  readonly viewpoints: readonly { readonly href: string; readonly name: string; readonly text: string }[];
  readonly growth: BedGrowth;
  /** Stories of the notes about this bed, newest first. */
  readonly notes: readonly {
    readonly iso: string;
    readonly day: string;
    readonly title?: string | undefined;
    readonly isPrivate: boolean;
    readonly html: string;
    readonly file: string;
  }[];
  /** The latest notes, line by line, newest first. */
  readonly readNotes: readonly Link[];
}

/** The camera page of one viewpoint. */
export interface ViewpointPage {
  /** Parts of its address. */
  readonly bedId: string;
  readonly name: string;
  readonly href: string;
  readonly bed: Link;
  /** "Gate" */
  readonly title: string;
  /** Where to stand, and how long ago the last photo was taken. */
  readonly text: string;
  /** The photo to match, with its own small copy at `src`; undefined when none was taken yet. */
  readonly last?: { readonly picture: Picture; readonly src: string; readonly path: string } | undefined;
  /** Name of a photo's file with places for "{day}" and "{time}". */
  readonly fileName: string;
  readonly isPrivate: boolean;
}
