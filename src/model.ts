/**
 * The model: every shape that rooms hand to one another, all readonly.
 *
 * Units are SI throughout: grams, litres, centimetres, metres, degrees Celsius. A day is a calendar day in the garden's
 * own time zone. What a person wrote keeps its own words beside the number.
 */

/** ISO 8601 calendar day, for example "2026-05-16". */
export type Day = string;

/** Where something was read: `file` is relative to the records folder, with forward slashes; both numbers count from 1. */
export interface Place {
  readonly file: string;
  readonly line: number;
  /** Counts characters as an editor shows them, not bytes. */
  readonly column: number;
}

// ---------------------------------------------------------------------------------------------------------- problems

export type Severity = "error" | "warning" | "hint";

/** Something wrong in the records, as a value. Printing it is the command's work. */
export interface Problem extends Place {
  /** Permanent rule name, for example "note/unknown-verb". All rules stand in records/problem-rules.ts. */
  readonly rule: string;
  readonly severity: Severity;
  /** What is wrong, as one sentence. */
  readonly what: string;
  /** What to do about it, as one sentence. */
  readonly fix: string;
  /** What would have been right there, where the rule wants one kind of value: "a number from 0 to 1". */
  readonly expected?: string | undefined;
}

// ----------------------------------------------------------------------------------------------------------- records

/** What every record read from a file has. */
export interface RecordFile {
  /** File name without its ending; for an episode the folder's name. */
  readonly id: string;
  readonly title: string;
  readonly private: boolean;
  /** Markdown below the front matter, as written. */
  readonly body: string;
  /** Where the record stands; line 1 of its file. Undefined when only a note names it. */
  readonly place?: Place | undefined;
  /** False when a note names it but no file describes it. */
  readonly described: boolean;
  /** True when its file says "private: false" and nothing in it is in doubt. */
  readonly openly?: boolean | undefined;
}

export interface Position {
  readonly latitude: number;
  readonly longitude: number;
  /** Metres above sea level. */
  readonly elevation?: number | undefined;
}

/** The settings in garden.md. */
export interface GardenSettings {
  readonly name: string;
  /** Private always. */
  readonly position?: Position | undefined;
  /** Whether the seasons are those of the south: by the position, else by the time zone. */
  readonly southern: boolean;
  /** IANA name, for example "Europe/London". */
  readonly timeZone: string;
  readonly units: "metric" | "us";
  /** BCP 47 tag, for example "en-GB". */
  readonly language: string;
  /** Month and day "04-20", the usual last frost of spring. */
  readonly lastFrost?: string | undefined;
  /** Month and day "11-05", the usual first frost of autumn. */
  readonly firstFrost?: string | undefined;
  /** Month and day on which a season begins; unless the person says otherwise "01-01", south of the equator "07-01". */
  readonly seasonStarts: string;
  /** Words a minute when speaking on camera. */
  readonly narrationRate: number;
  /** Days without a photo of a bed before the brief asks for one. */
  readonly photoGapDays: number;
  readonly kit: readonly string[];
  /** Cameras and whether the clock in their clips is UTC or their own, by the name the clips give. */
  readonly clipClocks?: Readonly<Record<string, "UTC" | "local">> | undefined;
  /** Files that are not wanted of a wrap. */
  readonly wrapWithout?: readonly WrapText[] | undefined;
  /** Whose rules for notices hold, where that is not told by the language. */
  readonly notices?: Notices | undefined;
  /** Whom to call, printed as written; undefined when the person names none. */
  readonly poisonCentre?: string | undefined;
  /** People and places that viewers may read of. */
  readonly mayBeNamed?: readonly string[] | undefined;
  /** Questions worth asking that the person does not want to hear again. */
  readonly doNotAsk?: readonly string[] | undefined;
  /** Animals kept in the garden: "cats", "hens". */
  readonly animals?: readonly string[] | undefined;
  /** Candidate weights that the person changed, by candidate kind. */
  readonly weights: Readonly<Record<string, number>>;
  /** Hours in which the person can film, wall clock "08:00"; past midnight when `to` is the earlier one. */
  readonly filmBetween?: { readonly from: string; readonly to: string } | undefined;
  /** Sun altitudes between which the light counts as low, degrees; undefined for the usual bounds. */
  readonly lowSun?: { readonly from: number; readonly to: number } | undefined;
  readonly goals?: readonly Goal[] | undefined;
  readonly pins?: readonly Pin[] | undefined;
  readonly prices?: readonly Price[] | undefined;
  /** Path below which the public site is served, for example "/garden/". */
  readonly base: string;
  /** True when garden.md keeps the whole garden private, or cannot be read. */
  readonly private?: boolean | undefined;
  /** True when garden.md stands beside an error: its own words are kept back. */
  readonly inDoubt?: boolean | undefined;
  /** True when nothing goes out but what a file describes as public. */
  readonly onlyDescribed?: boolean | undefined;
  /** Address of the public site without path, for example "https://example.org". */
  readonly address?: string | undefined;
  readonly body: string;
}

/** What the person wants to have next year, from garden.md. One of the four measures stands. */
export interface Goal {
  /** As written: "28 quarts of tomato sauce". */
  readonly text: string;
  /** "tomato sauce", "leeks" */
  readonly what: string;
  readonly grams?: number | undefined;
  readonly litres?: number | undefined;
  readonly jars?: { readonly count: number; readonly size: "quart" | "pint" } | undefined;
  /** Without a unit, pieces of the crop's own kind: "60 leeks". */
  readonly pieces?: { readonly count: number; readonly unit?: PickUnit | undefined } | undefined;
}

/** A crop that the person will have in one bed next year whatever a plan says. */
export interface Pin {
  /** As written: "tomatoes in Tomato Pots". */
  readonly text: string;
  readonly crop: string;
  readonly bed: string;
}

/** What produce is worth to the person. Private always. */
export interface Price {
  /** Crop or variety, as written. */
  readonly of: string;
  /** "£", "EUR"; may be empty. */
  readonly sign: string;
  readonly signAfter: boolean;
  readonly perGram?: number | undefined;
  readonly perPiece?: { readonly amount: number; readonly unit: PickUnit } | undefined;
}

export interface Site extends RecordFile {
  /** Public place name: "the east side of town". */
  readonly placeName?: string | undefined;
  /** Private always. */
  readonly position?: Position | undefined;
  /** The person's own walking order among sites, if given. */
  readonly order?: number | undefined;
  /** Where the site is entered and left; a walk without a start or end of its own uses the nearest. */
  readonly gates: readonly PlanPoint[];
  /** Points that every walk through the site takes in, stops or not. */
  readonly mustPass: readonly PlanPoint[];
  /** Where a walk begins and ends: a point of the plan, or a bed id. */
  readonly start?: PlanPoint | string | undefined;
  readonly end?: PlanPoint | string | undefined;
}

/** A point of a site's plan, metres from its south-west corner: x to the east, y to the north. */
export interface PlanPoint {
  readonly x: number;
  readonly y: number;
}

/** A dated remark on what a bed is built of or filled with. */
export interface DatedWork {
  readonly what: string;
  readonly day?: string | undefined;
}

export interface Viewpoint {
  /** Folder name below the bed's photos: "gate". */
  readonly name: string;
  /** How to find the spot: "from the gate post, chest height". */
  readonly spot?: string | undefined;
  /** Compass direction the camera looks in, degrees from north. */
  readonly looking?: number | undefined;
  /** The bed's outline in the frame, as fractions of width and height. */
  readonly outline?: readonly (readonly [number, number])[] | undefined;
  /** A stake of known length that stands in the frame: foot and top as fractions of width and height. */
  readonly stake?: Stake | undefined;
}

export interface Stake {
  readonly foot: readonly [number, number];
  readonly top: readonly [number, number];
  readonly lengthCm: number;
}

export interface Bed extends RecordFile {
  /** Site id. */
  readonly site?: string | undefined;
  /** Former names too. */
  readonly alsoCalled: readonly string[];
  /** What it was called before, and the last day of each name; undefined when it had no other. */
  readonly was?: readonly FormerName[] | undefined;
  /** Metres. */
  readonly size?: { readonly length: number; readonly width: number } | undefined;
  /** Metres from the site's south-west corner: x to the east, y to the north. */
  readonly plan?: PlanPoint | undefined;
  /** Compass direction the bed faces, degrees from north. */
  readonly facing?: number | undefined;
  /** As written: "wall to the east, 3 m high, 2 m away". */
  readonly shade: readonly string[];
  readonly soil?: string | undefined;
  readonly built: readonly DatedWork[];
  readonly filled: readonly DatedWork[];
  readonly inUseSince?: Day | undefined;
  readonly inUseUntil?: Day | undefined;
  readonly viewpoints: readonly Viewpoint[];
}

export interface FormerName {
  readonly name: string;
  /** The last day on which it was called so. */
  readonly until: Day;
}

/** How a thing came to the person; decides what must be said about it. */
export type Obtained =
  | "bought"
  | "swapped"
  | "saved"
  | "gifted"
  | "lent"
  | "paid promotion"
  | "commission link"
  | "own product"
  | "discounted"
  | "family business";

/** Of a gift or a loan: a seller or maker, to whom it is a tie, or a private person. */
export type Giver = "a seller" | "a person";

/** What a wrap makes for platforms, each its own file. */
export type WrapText = "pinned comment" | "shorts" | "post" | "newsletter" | "titles" | "end cards";

/** Whose rules for notices a garden follows; "all" is the strictest of them. */
export type Notices = "us" | "uk" | "au" | "eu" | "all";

export interface Source {
  /** Seed house, swap or person as it may be said in public: "Drift Lane Seeds". */
  readonly name: string;
  readonly link?: string | undefined;
  readonly obtained?: Obtained | undefined;
  /** Undefined where nobody said, and of all that is no gift or loan. */
  readonly giver?: Giver | undefined;
  readonly year?: number | undefined;
}

export interface Maturity {
  readonly days: number;
  readonly from: "sowing" | "planting";
}

export interface Variety extends RecordFile {
  /** Crop id, for example "tomato"; undefined when nothing says it. */
  readonly crop?: string | undefined;
  readonly botanical?: string | undefined;
  readonly sayAs?: string | undefined;
  readonly alsoSpelled: readonly string[];
  readonly source?: Source | undefined;
  readonly maturity?: Maturity | undefined;
  /** Whether it stands from year to year; undefined when neither its file nor the crop table says so. */
  readonly perennial: boolean | undefined;
  /** The private person it came from may be named to viewers. */
  readonly thankByName?: boolean | undefined;
  /** A short caution shown wherever the variety is: "all parts are poisonous". */
  readonly caution?: string | undefined;
  /** Whether the person would grow it again, in their own words where they gave any. */
  readonly growAgain?: { readonly would: boolean; readonly words?: string | undefined } | undefined;
}

/** One row of the crop table in records/crops.ts. */
export interface Crop {
  readonly id: string;
  readonly name: string;
  readonly plural: string;
  readonly alsoCalled: readonly string[];
  /** Botanical family, for example "Solanaceae". */
  readonly family: string;
  /** Undefined for a crop the table does not know. */
  readonly perennial: boolean | undefined;
  readonly use: "vegetable" | "fruit" | "herb" | "flower" | "cover";
}

export interface Gear extends RecordFile {
  readonly alsoCalled: readonly string[];
  readonly obtained?: Obtained | undefined;
  /** Undefined where nobody said, and of all that is no gift or loan. */
  readonly giver?: Giver | undefined;
  readonly from?: string | undefined;
  /** The private person it came from may be named to viewers. */
  readonly thankByName?: boolean | undefined;
  readonly link?: string | undefined;
  readonly since?: string | undefined;
}

export interface TrialArm {
  readonly name: string;
  readonly variety?: string | undefined;
  readonly bed?: string | undefined;
}

export interface Trial extends RecordFile {
  readonly question: string;
  readonly arms: readonly TrialArm[];
  readonly measure: string;
  readonly status: "planned" | "running" | "settled" | "given up";
  readonly verdict?: string | undefined;
  readonly started?: Day | undefined;
  readonly verdictDue?: Day | undefined;
}

export interface EpisodeStop {
  /** Bed id. */
  readonly bed: string;
  /** Seconds into the film at which the stop begins. */
  readonly at?: number | undefined;
}

/** A follow-up written into an episode record. */
export interface EpisodePromise {
  readonly what: string;
  readonly bed?: string | undefined;
  readonly due?: Day | undefined;
  /** Day or episode in which it was kept. */
  readonly kept?: string | undefined;
  /** The words of an earlier promise that this one puts off. */
  readonly putsOff?: string | undefined;
  /** Seconds into the film. */
  readonly at?: number | undefined;
  readonly place: Place;
}

/** How a shot of the field list stands after filming: done, to do again, or left out. */
export type ShotState = "filmed" | "retake" | "skipped";

/** What a take is worth: the one to use, one to fall back on, or none. */
export type TakeMark = "good" | "hold" | "no good";

export interface Take {
  /** Wall clock "09:24:31" at its end; undefined when only its number was brought home. */
  readonly at?: string | undefined;
  /** Undefined when nobody said. */
  readonly mark?: TakeMark | undefined;
  /** "wind" */
  readonly why?: string | undefined;
}

export interface ShotTick {
  /** Number on the list that was filmed by: "S3.1". */
  readonly shot: string;
  /** What the shot is of (`PlannedShot.key`); lists made before 0.2.0 have none. */
  readonly key?: string | undefined;
  /** What it was to show, as it stood on the list. */
  readonly words?: string | undefined;
  readonly state: ShotState;
  /** Why it was skipped. */
  readonly reason?: string | undefined;
  readonly takes: readonly Take[];
  /** Wall clock "09:24:31" of the last change. */
  readonly at: string;
}

/** A shot of a tour as it was planned. */
export interface PlannedShot {
  /** "S3.1": where it stood in that plan. */
  readonly id: string;
  /** What it is of, the same in every plan of the tour: "long-bed/first-flower/crown-prince/2026-05-24". */
  readonly key: string;
  readonly text: string;
  readonly level?: "must" | "should" | "could" | undefined;
}

/** A thing to show, and what it was to be told with. */
export interface PlannedThing {
  /** "S3b" */
  readonly id: string;
  readonly key: string;
  readonly kind: string;
  readonly level: "must" | "should" | "could";
  readonly text: string;
  readonly plantings: readonly string[];
  /** Id of the shot that shows it. */
  readonly shot?: string | undefined;
}

/** What of a tour's brief the wrap asks for. A brief is one; the plan kept beside an episode is another. */
export interface PlannedTour {
  readonly stops: readonly {
    /** Bed id. */
    readonly bed: string;
    readonly show: readonly PlannedThing[];
    readonly shots: readonly PlannedShot[];
    readonly cautions: readonly { readonly text: string; readonly private: boolean }[];
    readonly furtherCautions: readonly { readonly text: string; readonly private: boolean }[];
  }[];
  readonly followUps: readonly { readonly what: string; readonly promisedOn: Day }[];
  readonly closingCaution?: string | undefined;
}

/** What the field list brought back from filming a tour: `field-list.json` beside the episode. */
export interface Filming {
  /** Day on which it was filmed. */
  readonly day: Day;
  readonly stops: readonly {
    /** Bed id. */
    readonly bed: string;
    readonly ticks: readonly ShotTick[];
    /** Quick notes as written in the garden; the log lines made of them stand in a note of their own. */
    readonly note?: string | undefined;
  }[];
  /** The plan its list was made from; undefined from lists made before 0.2.0. */
  readonly plan?: PlannedTour | undefined;
  readonly place: Place;
}

/** Pictures a second, exactly: 30000/1001. */
export interface FrameRate {
  readonly num: number;
  readonly den: number;
}

/** What a film file knows of itself. Where it was made is not among it. */
export interface ClipFacts {
  /** Below the folder it lies in. */
  readonly file: string;
  /** Maker and model. */
  readonly camera?: string | undefined;
  /** ISO 8601 with an offset. */
  readonly written?: string | undefined;
  /** Milliseconds since 1970 by a clock that may be UTC or the camera's own. */
  readonly header?: number | undefined;
  /** Day and perhaps time in the file's name. */
  readonly named?: { readonly day: Day; readonly time?: string | undefined; readonly utc: boolean } | undefined;
  /** Milliseconds. */
  readonly length?: number | undefined;
  readonly rate?: FrameRate | undefined;
  /** Its pictures last unequally, and the rate is the usual one nearest to their average. */
  readonly isVariable: boolean;
  /** Number of its first picture by its own timecode. */
  readonly startFrame?: number | undefined;
  readonly width?: number | undefined;
  readonly height?: number | undefined;
  /** Degrees clockwise by which players turn it. */
  readonly turned?: number | undefined;
  readonly hasSound?: boolean | undefined;
}

export interface Episode extends RecordFile {
  /** Filming day. */
  readonly day: Day;
  readonly published?: Day | undefined;
  readonly status: "planned" | "filmed" | "published";
  /** Seconds the film should last. */
  readonly target?: number | undefined;
  /** Wall clock "09:15". */
  readonly start?: string | undefined;
  readonly link?: string | undefined;
  readonly stops: readonly EpisodeStop[];
  /** Bed ids the walk begins and ends at, where the person lists no stops. */
  readonly firstStop?: string | undefined;
  readonly lastStop?: string | undefined;
  readonly promised: readonly EpisodePromise[];
  readonly must: readonly string[];
  readonly keep: readonly string[];
  readonly skip: readonly string[];
  /** Caption files beside the record, relative to the records folder. */
  readonly captions: readonly string[];
  /** Undefined until a field list's export lies beside the record. */
  readonly filming?: Filming | undefined;
  /** The plan it was to be filmed by, kept beside the record when its brief was made. */
  readonly plan?: PlannedTour | undefined;
}

export interface Note {
  /** Path below notes/ without ending. */
  readonly id: string;
  readonly day: Day;
  readonly title?: string | undefined;
  /** Bed ids that lines without a bed speak of: those of its front matter and of all its headings. */
  readonly beds: readonly string[];
  /** Of which of them lines speak from a heading's line on; undefined where no heading names a bed. */
  readonly bedsFrom?: readonly { readonly line: number; readonly beds: readonly string[] }[] | undefined;
  readonly private: boolean;
  /** Prose and list items that are no log lines, as Markdown, in order. */
  readonly story: readonly StoryPart[];
  /** Photos the note links, relative to the records folder. */
  readonly photos: readonly string[];
  /** Those of them that only its private lines show. */
  readonly privatePhotos?: readonly string[] | undefined;
  /** How the note describes photos it shows, where it does: private as the photo is. */
  readonly photoWords?: readonly { readonly photo: string; readonly words: string }[] | undefined;
  /** The sound file whose words it holds, relative to the records folder; nobody else is told of it. */
  readonly voice?: string | undefined;
  readonly place: Place;
}

export interface StoryPart {
  readonly text: string;
  readonly place: Place;
  /** List items whose lines are questions to the person: nobody knows yet what they say, so viewers are not shown them. */
  readonly asks?: true | undefined;
  /** Its own words say that nobody else is to see it. */
  readonly private?: true | undefined;
}

// ------------------------------------------------------------------------------------------------------------ events

/** What a log line says happened. One kind per row group of the verb table (records/verb-table.ts). */
export type EventKind =
  | "sowed"
  | "up"
  | "potted on"
  | "planted"
  | "thinned"
  | "did"
  | "flowered"
  | "fruited"
  | "picked"
  | "measured"
  | "soil test"
  | "trouble"
  | "cured"
  | "lost"
  | "gave away"
  | "cleared"
  | "moved"
  | "put up"
  | "took down"
  | "to do"
  | "done"
  | "promised"
  | "asked"
  | "saved seed"
  | "acquired"
  | "volunteer"
  | "came back"
  | "doing"
  | "preserved"
  | "sold"
  | "plan";

/** A number of plants, seeds or pieces: "about 10", "8 to 10" (value is the lower end). */
export interface Count {
  readonly value: number;
  readonly upTo?: number | undefined;
  readonly approx: boolean;
}

/** Trade units of picking beside weight. */
export type PickUnit =
  | "stem"
  | "bunch"
  | "head"
  | "fruit"
  | "pod"
  | "punnet"
  | "crate"
  | "root"
  | "bulb"
  | "ear"
  | "handful"
  | "piece";

/** One dated fact of one variety (or crop, bed, gear), read from a log line. A line that lists three varieties gives three events. */
export interface Event {
  /** "notes/2026-05-16-long-bed.md:7", with "/2" after it for the second event of a line. */
  readonly id: string;
  readonly kind: EventKind;
  readonly day: Day;
  /** The verb as written, in lower case: "set out". */
  readonly verb: string;
  /** The line's plain text as written. */
  readonly text: string;
  readonly place: Place;
  readonly private: boolean;
  /** Variety id. */
  readonly variety?: string | undefined;
  /** Crop id, when the line names only a crop ("all tomatoes"). */
  readonly crop?: string | undefined;
  /** Bed id; for `moved` the bed left. */
  readonly bed?: string | undefined;
  /** Bed id a `moved` line goes to. */
  readonly toBed?: string | undefined;
  readonly count?: Count | undefined;
  /** Unit of `count` in a picking; plants or seeds when absent. */
  readonly unit?: PickUnit | undefined;
  readonly grams?: number | undefined;
  readonly litres?: number | undefined;
  /** Height or length in centimetres of a `measured` line. */
  readonly heightCm?: number | undefined;
  /** How far round or across, in centimetres, of a `measured` line. */
  readonly girthCm?: number | undefined;
  readonly celsius?: number | undefined;
  readonly ph?: number | undefined;
  readonly spacingCm?: number | undefined;
  /** A `sowed` line that opens a nursery lot: indoors, in trays, under glass. */
  readonly nursery?: boolean | undefined;
  /** Plants of a `planted` line that were not raised here, or how those of an `acquired` line came: "bought", "given". */
  readonly plantsFrom?: "bought" | "given" | undefined;
  /** Place within the bed, as said: "row 2", "the corner by the gate". */
  readonly spot?: string | undefined;
  /** Gear id. */
  readonly gear?: string | undefined;
  /** Why something was lost, or what the trouble is. */
  readonly cause?: string | undefined;
  /** What was done, promised, asked or is to do, how plants are, what came or was put up, as said. */
  readonly what?: string | undefined;
  /** Why it was done, as said: "because of the moth last year". */
  readonly reason?: string | undefined;
  /** Of `acquired`, and of `planted` when the reader knows it: from whom or where, as said: "a neighbour". */
  readonly from?: string | undefined;
  /** Of `acquired` and `sold`: what was paid, as said. Private always. */
  readonly price?: string | undefined;
  readonly due?: Day | undefined;
  /** The rest of the line, as said. */
  readonly detail?: string | undefined;
  /** Nested list items below the line, as said. */
  readonly more: readonly string[];
}

/**
 * What one line of a note is taken to say. A line is facts, a question to the person, or story that holds no fact; nothing a
 * person wrote ends anywhere else.
 */
export interface LineReading {
  /** Where the line begins. */
  readonly place: Place;
  /** The last line of the file it reaches to. */
  readonly lastLine: number;
  /** Plain text as written, on one line. */
  readonly text: string;
  readonly as: "facts" | "question" | "story";
  /** Of facts: what counts from now on. */
  readonly events: readonly Event[];
  /** Of a question: up to three ways to take it, the likeliest first. */
  readonly readings: readonly OfferedReading[];
  readonly private: boolean;
  /** By the person's own lines below it. */
  readonly settled?: true | undefined;
}

/** One way to take a line: the plain lines that would say it, and what they would give. */
export interface OfferedReading {
  /** One plain line an event, apart by line ends; each read by itself gives its event. Empty for "holds no fact". */
  readonly line: string;
  readonly events: readonly Event[];
}

// ------------------------------------------------------------------------------------------------------------ photos

/** How a photo's day is known, best first. */
export type DateBasis =
  | "exif offset"
  | "gps time"
  | "exif in garden zone"
  /** XMP, IPTC, the texts of a PNG, the directory of a TIFF. */
  | "other metadata"
  /** XMP or a takeout's JSON beside it. */
  | "beside"
  | "file name"
  | "sidecar"
  | "file time"
  | "unknown";

/** One moment: what was taken at once, whatever files it lies in. */
export interface Photo {
  /** Its best picture, relative to the records folder, below photos/. */
  readonly path: string;
  /** Its other files: the HEIC beside the JPEG, what a program made a better one of, a copy of the same bytes, its clip. */
  readonly also?: readonly string[] | undefined;
  /** Local calendar day; undefined when nothing tells it. */
  readonly day?: Day | undefined;
  /** Local wall clock "18:05:09". */
  readonly time?: string | undefined;
  /** ISO 8601 instant, UTC. */
  readonly instant?: string | undefined;
  readonly dateBasis: DateBasis;
  /** Bed id. */
  readonly bed?: string | undefined;
  readonly viewpoint?: string | undefined;
  /** Site id of a photo that no bed is known of, by the photo's GPS position, which itself is kept nowhere. */
  readonly site?: string | undefined;
  readonly varieties: readonly string[];
  readonly caption?: string | undefined;
  readonly credit?: string | undefined;
  /** Degrees clockwise by which it is turned beyond what its file says, where the file says it wrong. */
  readonly turn?: QuarterTurn | undefined;
  /** It is a film: its picture is a still frame, where a program for that is on the machine. */
  readonly isClip?: true | undefined;
  readonly private: boolean;
}

export type QuarterTurn = 90 | 180 | 270;

/** What was spoken into a phone, as it lies among the photos. Always private. */
export interface Sound {
  /** Relative to the records folder. */
  readonly file: string;
  /** A text of its words beside it, likewise. */
  readonly words?: string | undefined;
}

// ----------------------------------------------------------------------------------------------------------- records

/** What the records room gives: everything a person wrote, checked, with all problems found. */
export interface Records {
  readonly settings: GardenSettings;
  readonly sites: ReadonlyMap<string, Site>;
  readonly beds: ReadonlyMap<string, Bed>;
  readonly varieties: ReadonlyMap<string, Variety>;
  /** Crops that the varieties use: table rows, and rows made for crops the table does not know. */
  readonly crops: ReadonlyMap<string, Crop>;
  readonly gear: ReadonlyMap<string, Gear>;
  readonly trials: ReadonlyMap<string, Trial>;
  readonly episodes: ReadonlyMap<string, Episode>;
  /** By day, then file. */
  readonly notes: readonly Note[];
  /** By day, then file, then line. */
  readonly events: readonly Event[];
  /** Every line of every note with what it is taken to say, by file and line. */
  readonly readings: readonly LineReading[];
  readonly words: readonly OwnWord[];
  /** Photo files found below photos/, relative to the records folder, sorted. */
  readonly photoFiles: readonly string[];
  /** Films found there, likewise. */
  readonly clipFiles: readonly string[];
  /** What programs wrote beside them (XMP, a takeout's JSON), likewise. */
  readonly asideFiles: readonly string[];
  /** Sound files found there, likewise. */
  readonly sounds: readonly Sound[];
  readonly photoSidecars: ReadonlyMap<string, PhotoSidecar>;
  readonly weatherFiles: readonly string[];
  /** Sorted by file, line, column, rule. */
  readonly problems: readonly Problem[];
}

export type WordMeaning =
  | { readonly crop: string }
  | { readonly variety: string }
  | { readonly bed: string }
  | { readonly gear: string }
  /** Of this crop only, where one is said. */
  | { readonly kind: EventKind; readonly crop?: string };

/** A word of the garden's own list, words.md. */
export interface OwnWord {
  /** As written, without the crop of a verb. */
  readonly word: string;
  readonly means: WordMeaning;
  readonly place: Place;
}

/** Words and corrections beside a photo: `gate.jpg` has `gate.md`. */
export interface PhotoSidecar {
  readonly photo: string;
  /** Undefined when no file of its own speaks of the photo and it is in doubt all the same. */
  readonly place?: Place | undefined;
  readonly day?: Day | undefined;
  readonly bed?: string | undefined;
  readonly viewpoint?: string | undefined;
  readonly varieties: readonly string[];
  readonly caption?: string | undefined;
  readonly credit?: string | undefined;
  readonly turn?: QuarterTurn | undefined;
  readonly private: boolean;
  /** True when its file says "private: false". */
  readonly openly?: boolean | undefined;
  /** Tops of plants that stand beside the viewpoint's stake, by variety id, as fractions of this photo's width and height. */
  readonly plantTops?: readonly { readonly variety: string; readonly top: readonly [number, number] }[] | undefined;
}

// ---------------------------------------------------------------------------------------------------------- timeline

export type Stage = "sown" | "up" | "growing" | "flowering" | "fruiting" | "picking" | "finished" | "lost";

/** What was picked. Weights, pieces and volumes stand side by side and are never turned into one another. */
export interface Picked {
  readonly grams: number;
  /** Pieces by unit: { stem: 12, bunch: 3 }. */
  readonly counts: Readonly<Partial<Record<PickUnit, number>>>;
  /** Of these the ones that were weighed or measured as well. */
  readonly weighed: Readonly<Partial<Record<PickUnit, number>>>;
  /** Whether some of it was weighed or measured without being counted. */
  readonly weightAlone: boolean;
  /** Litres of what was picked by volume. */
  readonly litres: number;
  readonly times: number;
  readonly first?: Day | undefined;
  readonly last?: Day | undefined;
}

/** One lot of one variety in one bed, as it stands on some day. */
export interface Planting {
  /** "long-bed/crown-prince/2026-05-24", with "-2" for a second lot begun that day. */
  readonly id: string;
  readonly bed: string;
  /** Variety id; undefined when the notes name only the crop. */
  readonly variety?: string | undefined;
  readonly crop?: string | undefined;
  /** Day on which the notes first know it in this bed. */
  readonly since: Day;
  /** Plants alive, or seeds; undefined when nobody counted. */
  readonly count?: Count | undefined;
  /** Its counts are of seeds: it was sown in place and never thinned to a number. */
  readonly seeds?: true | undefined;
  /**
   * Plants at the beginning. While all are counted,
   * began = count + lost + givenAway + movedOut + thinnedOut + pickedWhole.
   */
  readonly began?: Count | undefined;
  readonly lost: number;
  readonly givenAway: number;
  /** Plants that went on to another bed. */
  readonly movedOut: number;
  readonly thinnedOut: number;
  /** Plants taken up whole in a picking: leeks, onions, heads of cabbage. */
  readonly pickedWhole: number;
  readonly sown?: Day | undefined;
  /** Day the plants went into the ground; undefined for a direct sowing. */
  readonly planted?: Day | undefined;
  readonly ended?: Day | undefined;
  readonly stage: Stage;
  /** For a perennial: since when in this season. */
  readonly stageSince: Day;
  readonly heightCm?: number | undefined;
  readonly heightOn?: Day | undefined;
  readonly picked: Picked;
  readonly spot?: string | undefined;
  readonly gear?: string | undefined;
  readonly spacingCm?: number | undefined;
  readonly perennial: boolean;
  readonly plantsFrom?: "bought" | "given" | undefined;
  /** From whom its plants came, as said, where that is certain: "a neighbour". */
  readonly from?: string | undefined;
  /** Nobody sowed it: it came up by itself. */
  readonly selfSown?: true | undefined;
  /** No line ended it: it is an annual, and its season turned. */
  readonly takenToBeOver?: true | undefined;
  /** Planting id it was moved from. */
  readonly movedFrom?: string | undefined;
  /** No line says when it was sown or planted: the notes speak of it as being there. */
  readonly implied: boolean;
  /** Id of the event that began it. */
  readonly firstEvent: string;
  /** Id of the last event that spoke of it. */
  readonly lastEvent: string;
  /** Where that event stands. */
  readonly lastNote: Place;
  /** Begun by a private line, or of a private variety or bed. */
  readonly private: boolean;
}

/** Done against a trouble: as said, or the gear that was put up. */
export type Tried = { readonly what: string } | { readonly gear: string };

/** Something wrong with plants, open until cured. */
export interface Trouble {
  readonly id: string;
  readonly cause: string;
  /** Variety ids; empty when it troubles the bed as a whole. */
  readonly varieties: readonly string[];
  /** Planting ids. */
  readonly plantings: readonly string[];
  readonly opened: Day;
  readonly ended?: Day | undefined;
  readonly tried: readonly Tried[];
  readonly private: boolean;
  readonly place: Place;
}

export interface Task {
  readonly id: string;
  readonly what: string;
  /** Bed id; undefined for what is to do in no bed in particular. */
  readonly bed?: string | undefined;
  readonly due?: Day | undefined;
  readonly opened: Day;
  readonly done?: Day | undefined;
  readonly private: boolean;
  readonly place: Place;
}

/** What the person means to do some day: shown as planned, never as done, and never due. */
export interface Plan {
  readonly id: string;
  /** As said: "move the rhubarb next year". */
  readonly what: string;
  readonly reason?: string | undefined;
  /** Bed id; undefined for what is planned of no bed in particular. */
  readonly bed?: string | undefined;
  readonly variety?: string | undefined;
  readonly crop?: string | undefined;
  /** Day on which it was written down. */
  readonly said: Day;
  readonly private: boolean;
  readonly place: Place;
}

/** Something viewers were told they would see. */
export interface FollowUp {
  readonly id: string;
  readonly what: string;
  readonly bed?: string | undefined;
  /** Variety id, when it speaks of one. */
  readonly variety?: string | undefined;
  readonly promisedOn: Day;
  /** Episode id in which it was said, when one is known. */
  readonly episode?: string | undefined;
  /** Seconds into that film at which it was said. */
  readonly at?: number | undefined;
  readonly due?: Day | undefined;
  readonly kept?: Day | undefined;
  /** Episode id in which it was kept, when one is known. */
  readonly keptIn?: string | undefined;
  /** Day on which viewers were told that it comes later: another promise stands for it from then on. */
  readonly putOff?: Day | undefined;
  readonly private: boolean;
  readonly place: Place;
}

/**
 * "to do", "asked", "moved" go beyond the kinds a brief must know; all that was done, put up or tested is "did". What the
 * calendar ends without a line is "taken to be over", and no news.
 */
export type ChangeKind =
  | "new"
  | "sown"
  | "up"
  | "planted"
  | "moved"
  | "stage"
  | "grew"
  | "picked"
  | "did"
  | "trouble opened"
  | "trouble ended"
  | "lost"
  | "cleared"
  | "taken to be over"
  | "came back"
  | "doing"
  | "acquired"
  | "preserved"
  | "sold"
  | "plan"
  | "to do"
  | "done"
  | "promised"
  | "asked"
  | "overdue";

/** What a change leaves behind, enough to go from the state before it to the state after it. */
export interface ChangeEffect {
  /** Plantings as they become. */
  readonly plantings?: readonly Planting[] | undefined;
  /** Troubles as they become. */
  readonly troubles?: readonly Trouble[] | undefined;
  /** Tasks as they become. */
  readonly tasks?: readonly Task[] | undefined;
  /** Gear ids standing in the bed from now on. */
  readonly gear?: readonly string[] | undefined;
  readonly soilPh?: SoilPh | undefined;
  readonly built?: DatedWork | undefined;
  readonly filled?: DatedWork | undefined;
  /** A picking of a crop whose planting the line does not tell, with the total so far. */
  readonly unassigned?: UnassignedPicking | undefined;
}

/** What one picking line brought in. */
export interface Harvest {
  readonly grams?: number | undefined;
  readonly litres?: number | undefined;
  readonly count?: Count | undefined;
  readonly unit?: PickUnit | undefined;
}

/** A variety, or only a crop, by ids. */
export interface PlantIds {
  readonly variety?: string | undefined;
  readonly crop?: string | undefined;
}

/** Plants as they stood when something happened to them; their ids alone when the line found none of them. */
export type PlantsThen = PlantIds & Partial<Planting>;

/** What happened, with the facts that a sentence about it needs beside those of its change. */
export type Happening =
  | { readonly is: "sown" | "self-sown"; readonly plants: PlantIds }
  /** `raised`: the day of the sowing the plants come from, and the bed if it was a seedbed. */
  | {
      readonly is: "planted";
      readonly plants: PlantsThen;
      readonly raised?: { readonly sown: Day; readonly bed?: string } | undefined;
    }
  | { readonly is: "moved out"; readonly plants: PlantsThen; readonly to: string }
  | { readonly is: "moved in"; readonly plants: PlantsThen; readonly from: string | undefined }
  | { readonly is: "moved within"; readonly plants: PlantsThen }
  | {
      readonly is: "up" | "potted on" | "thinned" | "flowered" | "fruited" | "measured" | "came back" | "doing";
      readonly plantings: readonly PlantsThen[];
    }
  /** `number`: as many as the line says, all of them, or some that nobody counted. */
  | { readonly is: "lost"; readonly plants: PlantsThen; readonly number: "counted" | "all" | "some" }
  /** Without plants that the line names, it is the bed itself that was cleared. */
  | { readonly is: "cleared"; readonly plantings: readonly PlantsThen[] }
  | { readonly is: "given away"; readonly plants: PlantsThen; readonly doing: "given away" | "sold" }
  /** `whole` says that the picking took up the plants, `atOnce` that it is their only one. */
  | { readonly is: "picked"; readonly plants: PlantsThen; readonly whole: boolean; readonly atOnce: boolean }
  /** `known`: it was open already. */
  | { readonly is: "trouble"; readonly plantings: readonly PlantsThen[]; readonly known: boolean }
  /** `days` it lasted, when it is known when it began. */
  | { readonly is: "trouble over"; readonly plantings: readonly PlantsThen[]; readonly days?: number | undefined }
  /** `named`: the events of the line whose plants stand in this bed; none when the work is the bed's own. */
  | { readonly is: "work"; readonly named: readonly Event[]; readonly plantings: readonly PlantsThen[] }
  | {
      readonly is: "gear up" | "gear down" | "soil test" | "seed saved" | "acquired" | "preserved" | "asked";
    };

/** What can be told without a line of a note: by the calendar, a bed's own file, a film's record. */
export type Turn =
  | { readonly is: "first noted" | "taken to be over"; readonly plants: PlantsThen }
  /** `year` of its life, when it is known when it began. */
  | { readonly is: "next year"; readonly plants: PlantsThen; readonly year: number | undefined }
  | { readonly is: "in use" | "trouble forgotten" }
  | { readonly is: "built" | "filled"; readonly what: string }
  /** A bed that has another name from this day on. */
  | { readonly is: "renamed"; readonly before: string; readonly now: string }
  | { readonly is: "to do"; readonly what: string; readonly due: Day | undefined }
  | { readonly is: "done" | "promised" | "kept" | "planned"; readonly what: string }
  | { readonly is: "overdue" | "owed"; readonly what: string; readonly due: Day };

/** `line` is what the person wrote, where a line tells it: its plants, amounts and words. */
export type Told = (Happening & { readonly line: Event }) | (Turn & { readonly line?: Event | undefined });

/** One thing that became different in a bed, as facts: its sentence is made where it is shown (`changeSentence`). */
export interface Change {
  readonly kind: ChangeKind;
  readonly day: Day;
  readonly bed: string;
  /** Planting id; undefined when it touches none, or several (then they stand in the effect). */
  readonly planting?: string | undefined;
  readonly told: Told;
  /**
   * The event it rests on. What follows from the calendar (a season's end, a perennial's new year) rests on the event that
   * began the planting. Undefined for `overdue` and for what a record's front matter says.
   */
  readonly event?: string | undefined;
  readonly note: Place;
  readonly private: boolean;
  readonly effect: ChangeEffect;
  /** Of `picked`. */
  readonly harvest?: Harvest | undefined;
  /** Of `lost` and of troubles: why, or what. */
  readonly cause?: string | undefined;
}

/**
 * Where events and plantings disagree or a line had to be taken one way of several, as facts. `sayDoubt` words it; `day` is
 * that of the line.
 */
export type Doubt = { readonly place: Place; readonly day: Day } & (
  | { readonly rule: "timeline/several-beds"; readonly bed: string }
  /** Without a bed it could not be placed. */
  | { readonly rule: "timeline/nothing-planted"; readonly plants: PlantIds; readonly bed?: string | undefined }
  | {
      readonly rule: "timeline/before-planting";
      readonly plants: PlantIds;
      readonly bed: string;
      readonly begun: Day;
    }
  | {
      readonly rule: "timeline/bed-not-in-use";
      readonly bed: string;
      readonly bound: "since" | "until";
      readonly of: Day;
    }
  | { readonly rule: "timeline/sown-where" | "timeline/no-sowing"; readonly plants: PlantIds }
  | { readonly rule: "timeline/variety-from-nursery"; readonly plants: PlantIds; readonly meant: PlantIds }
  /** Plants that are "planted" came from the seedbed they were sown in. */
  | {
      readonly rule: "timeline/more-than-there";
      readonly plants: PlantIds;
      readonly bed: string;
      readonly number: number;
      readonly left: number;
      readonly doing: Parting | "planted" | "moved";
    }
  | {
      readonly rule: "timeline/more-than-sown";
      readonly plants: PlantIds;
      readonly number: number;
      readonly left: number;
      readonly sowings: readonly Day[];
      readonly doing: Parting | "planted";
    }
  | {
      readonly rule: "timeline/no-bed";
      readonly plants: PlantIds;
      readonly doing: "planted" | "came up";
      readonly one: boolean;
    }
  | {
      readonly rule: "timeline/nothing-there";
      readonly plants: PlantIds;
      readonly beds: readonly string[];
      readonly doing: Parting | "cleared" | "moved";
    }
  | {
      readonly rule: "timeline/picked-of-several";
      readonly plants: PlantIds;
      readonly beds: readonly string[];
      readonly bed: string;
    }
  | {
      readonly rule: "timeline/in-another-bed";
      readonly plants: PlantIds;
      readonly beds: readonly string[];
      readonly otherBeds: readonly string[];
    }
  | {
      readonly rule: "timeline/several-plantings";
      readonly plants: PlantIds;
      readonly beds: readonly string[];
      readonly chosen: readonly { readonly bed: string; readonly since: Day }[];
      /** The beds tell them apart. */
      readonly manyBeds: boolean;
    }
  | {
      readonly rule: "timeline/after-its-end" | "timeline/never-cleared";
      readonly plants: PlantsThen;
      readonly bed: string;
      readonly ended: Day;
    }
  | { readonly rule: "timeline/annual-or-perennial"; readonly plants: PlantsThen; readonly bed: string }
  | { readonly rule: "timeline/gear-not-there"; readonly gear: string }
  | { readonly rule: "timeline/no-such-trouble" | "timeline/trouble-left-open"; readonly cause: string }
  | { readonly rule: "timeline/no-such-promise"; readonly what: string }
);

type Parting = "lost" | "given away" | "sold";

export interface SoilPh {
  readonly ph: number;
  readonly day: Day;
}

/**
 * Picked in a bed and credited to no planting: several of the crop stand there and the line does not tell them apart, or
 * it is dated before they were planted.
 */
export interface UnassignedPicking {
  readonly variety?: string | undefined;
  readonly crop?: string | undefined;
  readonly picked: Picked;
}

/** A bed as it stands on a day. */
export interface BedState {
  readonly bed: string;
  readonly on: Day;
  /** Every planting begun by then, in order of beginning; those that ended carry `ended`. */
  readonly plantings: readonly Planting[];
  /** Gear ids standing in the bed. */
  readonly gear: readonly string[];
  /** Every trouble opened by then; those that are over carry `ended`. */
  readonly troubles: readonly Trouble[];
  /** Every task opened by then; those that are done carry `done`. */
  readonly tasks: readonly Task[];
  readonly soilPh?: SoilPh | undefined;
  /** What it is built of and filled with, oldest first; what carries no day was always so. */
  readonly built: readonly DatedWork[];
  readonly filled: readonly DatedWork[];
  /** Pickings that no planting can be credited with, by crop. */
  readonly unassigned: readonly UnassignedPicking[];
}

/** Plants that left a nursery lot. */
export interface LotTaking {
  readonly day: Day;
  readonly to: "planted" | "lost" | "given away" | "sold";
  /** Undefined when nobody counted. */
  readonly count?: number | undefined;
  /** Planting id they went into. */
  readonly planting?: string | undefined;
  readonly place: Place;
}

/** Plants raised away from their bed: sown indoors, waiting to be planted. */
export interface NurseryLot {
  readonly id: string;
  /** Variety id; undefined when the notes name only the crop. */
  readonly variety?: string | undefined;
  readonly crop?: string | undefined;
  /** Bed id of the staging or frame it stands in, when the line names one. */
  readonly bed?: string | undefined;
  readonly sown: Day;
  readonly count?: Count | undefined;
  readonly up?: Day | undefined;
  readonly pottedOn?: Day | undefined;
  readonly taken: readonly LotTaking[];
  /** Plants not yet planted, lost or given away; undefined when nobody counted. */
  readonly left?: number | undefined;
  readonly closed?: Day | undefined;
  readonly private: boolean;
  readonly place: Place;
}

/** The one immutable model that pages and commands share: the records, the photos and what follows from both. */
export interface Garden extends Records {
  readonly photos: readonly Photo[];
  /**
   * Every change of every bed by bed id, in order of day. It may reach past today (a season's end, a task falling due):
   * read it through `changes(garden, bed, from, to)`.
   */
  readonly changes: ReadonlyMap<string, readonly Change[]>;
  /** In the order in which the events were gone through. */
  readonly doubts: readonly Doubt[];
  readonly nurseryLots: readonly NurseryLot[];
  /** Promises of notes and episodes, by the day they were made. */
  readonly followUps: readonly FollowUp[];
  /** Tasks of no bed in particular; those of a bed stand in its state. */
  readonly tasks: readonly Task[];
  /** What is planned, in the order in which it was written down. */
  readonly plans: readonly Plan[];
  /**
   * Of the garden as viewers see it, where no question is shown: what questions may say was picked. No sum is told over them.
   * Undefined where the questions themselves stand in `readings`.
   */
  readonly openPickings?: readonly OpenPicking[] | undefined;
  /** What earlier films say, by episode id; undefined until a command that needs it has read the captions. */
  readonly spoken?: ReadonlyMap<string, readonly SpokenLine[]> | undefined;
  /** Where photos say they were taken, each place once, to about a hundred metres: what no page may tell. Private always. */
  readonly photosTakenAt?: readonly Position[] | undefined;
  /** What was measured in the photos; undefined until a command that needs it has measured them. */
  readonly growth?: GardenGrowth | undefined;
}

/** The amount that a line may tell of which nobody knows yet what it says. */
export interface OpenPicking extends PlantIds {
  readonly day: Day;
  readonly grams?: number | undefined;
  readonly litres?: number | undefined;
  readonly count?: Count | undefined;
  readonly unit?: PickUnit | undefined;
}

/** One caption of a film as plain text, as it was said. */
export interface SpokenLine {
  readonly text: string;
  /** Seconds into the film. */
  readonly at: number;
  readonly place: Place;
}

// ------------------------------------------------------------------------------------------------------------ growth

/** A plant's height read off a photo against a stake of known length. */
export interface PhotoHeight {
  readonly heightCm: number;
  /** One standard deviation, centimetres. */
  readonly uncertaintyCm: number;
}

/** What was measured in one photo taken from a viewpoint. */
export interface PhotoMeasure {
  /** Photo path. */
  readonly photo: string;
  readonly bed: string;
  readonly viewpoint: string;
  readonly day: Day;
  /** Share that is green, 0 to 1; undefined when the photo cannot be opened, or the outline holds nothing. */
  readonly cover?: number | undefined;
  /** Something white lies over the bed (fleece, net, snow), so that nobody sees how green it is. */
  readonly covered?: true | undefined;
  /** Its colours do not tell leaf from ground (red leaves, grey leaves or boards), so that a number would be a guess. */
  readonly cannotTell?: true | undefined;
  /** What the cover is a share of: the bed's outline in the frame, or the whole photo when nobody drew one. */
  readonly coverOf: "bed" | "photo";
  /** True when it lies over the viewpoint's other photos: only such photos are shown as pairs. */
  readonly aligned: boolean;
  /** By variety id. */
  readonly heights: readonly (PhotoHeight & { readonly variety: string })[];
}

/** Photos taken in one go that show nearly the same. */
export interface Burst {
  /** Path of the photo that stands for the burst: the sharpest of those that are exposed best. */
  readonly best: string;
  /** Paths of all of them, the best too, in order of time. */
  readonly photos: readonly string[];
}

export interface GardenGrowth {
  /** By bed, viewpoint and time. */
  readonly photos: readonly PhotoMeasure[];
  /** In order of time; undefined until a command that shows photos has looked for them. */
  readonly bursts?: readonly Burst[] | undefined;
}

export interface GrowthPoint {
  readonly day: Day;
  /** Share 0 to 1 for cover, centimetres for height. */
  readonly value: number;
  /** One standard deviation in the same unit, where known. */
  readonly uncertainty?: number | undefined;
  /** Measured in a photo, or with a rule and written into a note. */
  readonly origin: "photo" | "note";
  /** Photo path or event id. */
  readonly source: string;
}

/**
 * Points in time as they were measured; nothing is averaged, smoothed or filled in, and where nobody looked for too long the
 * series has a gap.
 */
export interface GrowthSeries {
  readonly what: "cover" | "height";
  /** Bed id. */
  readonly bed: string;
  /** Planting id, for heights of a single planting. */
  readonly planting?: string | undefined;
  /** Viewpoint name, for what was measured in photos of one. */
  readonly viewpoint?: string | undefined;
  /** In order of day; a new stretch begins after each gap. */
  readonly stretches: readonly (readonly GrowthPoint[])[];
}
