/**
 * Every rule by which something in the records is called wrong. Names are permanent: people silence hints by them and
 * look them up in docs/messages.md, which is printed from this table.
 */

import type { Place, Problem, Severity } from "../model.ts";
import { compare } from "../order.ts";

export interface Rule {
  readonly severity: Severity;
  /**
   * Whether what it is said of counts as private until it is mended, because a wish to keep it back may stand where nobody
   * reads it. Errors do unless the rule says otherwise.
   */
  readonly doubt?: boolean;
  /** One sentence for the page of messages: what the rule says about the records. */
  readonly meaning: string;
}

export const problemRules = {
  "folder/missing": { severity: "error", meaning: "The records folder does not exist." },
  "folder/empty": { severity: "hint", meaning: "The records folder has no records yet." },
  "folder/no-settings": {
    severity: "hint",
    meaning: "The folder has no garden.md, so the usual units, time zone and language hold.",
  },
  "folder/link-loop": {
    severity: "warning",
    meaning: "A link leads back to a folder that holds it or was read already.",
  },
  "folder/link-outside": {
    severity: "warning",
    doubt: true,
    meaning: "A link leads out of the records folder and is not followed.",
  },
  "folder/link-broken": { severity: "warning", doubt: true, meaning: "A link leads to nothing." },
  "folder/unreadable": { severity: "error", meaning: "The system does not let a file or folder be read." },
  "folder/folder-not-file": { severity: "error", meaning: "A folder stands where a file is expected." },
  "folder/file-not-folder": { severity: "error", meaning: "A file stands where a folder is expected." },
  "folder/same-id": { severity: "error", meaning: "Two files give the same id, so only the first is read." },
  "folder/file-name": {
    severity: "hint",
    meaning: "A file name is not in small letters and hyphens, so its id differs from it.",
  },
  "folder/not-read": {
    severity: "warning",
    doubt: true,
    meaning: "A file lies where a record would be and is not read as one.",
  },
  "folder/misspelt": {
    severity: "warning",
    doubt: true,
    meaning: "A file or folder is not read, and its name is close to one that is.",
  },
  "folder/not-a-photo": { severity: "hint", meaning: "Files among the photos are of a kind that is not read." },

  "table/no-headings": { severity: "error", meaning: "A table of varieties has no column of names." },
  "table/unknown-column": { severity: "hint", meaning: "A column of a table of varieties is not read." },
  "table/like-private": {
    severity: "warning",
    doubt: true,
    meaning: "A column of a table of varieties may be meant to keep rows private and is not read.",
  },
  "table/no-name": { severity: "warning", meaning: "A row of a table of varieties names no variety." },
  "table/same-variety": {
    severity: "error",
    meaning: "A variety is described by a row of the table and a second time elsewhere.",
  },

  "text/not-utf8": { severity: "error", meaning: "A file is not written in UTF-8." },
  "text/not-text": { severity: "error", meaning: "A file that should be text holds something else." },
  "text/empty": { severity: "error", meaning: "A record is an empty file, so nobody can tell what it should say." },
  "text/very-long": { severity: "warning", meaning: "A note is so long that it slows every run." },

  "front-matter/unclosed": { severity: "error", meaning: "The front matter has no closing line of three hyphens." },
  "front-matter/not-a-mapping": { severity: "error", meaning: "The front matter is not a list of keys with values." },
  "front-matter/yaml": { severity: "error", meaning: "The front matter is not valid YAML." },
  "front-matter/duplicate-key": {
    severity: "error",
    meaning: "A key stands twice in one front matter; the first counts.",
  },
  "front-matter/expands": { severity: "error", meaning: "The front matter repeats itself by anchors without end." },
  "front-matter/not-first": {
    severity: "error",
    meaning: "The front matter does not begin at the very first line with three plain hyphens, so it is not read.",
  },
  "front-matter/language": { severity: "error", meaning: "The front matter is opened as something other than YAML." },

  "record/unknown-key": { severity: "error", meaning: "A key is none that this kind of record has." },
  "record/missing-key": { severity: "error", meaning: "A key is missing that this kind of record needs." },
  "record/wrong-value": { severity: "error", meaning: "A value is not of the kind its key needs." },

  "date/no-such-day": { severity: "error", meaning: "A date does not exist in the calendar." },
  "date/two-digit-year": { severity: "error", meaning: "A date gives its year with two digits." },
  "date/no-year": { severity: "error", meaning: "A date lacks the year it needs." },
  "date/order-unclear": { severity: "error", meaning: "A date in numbers can be read in more than one order." },
  "date/not-a-date": { severity: "error", meaning: "A text is no date where one is needed." },

  "link/unknown-bed": { severity: "warning", meaning: "A record names a bed that no file describes." },
  "link/unknown-variety": { severity: "warning", meaning: "A record names a variety that no file describes." },
  "link/unknown-crop": { severity: "warning", meaning: "A variety names a crop that looks like a misspelt one." },
  "link/unknown-site": { severity: "warning", doubt: true, meaning: "A bed names a site that no file describes." },
  "link/unknown-episode": { severity: "warning", meaning: "A record names an episode that no file describes." },
  "link/unknown-photo": { severity: "warning", meaning: "A note or sidecar names a photo that is not there." },

  "name/ambiguous": { severity: "warning", meaning: "Two records answer to the same name." },
  "name/crop-taken": { severity: "hint", meaning: "A variety names a crop that the table of crops does not have." },
  "name/bed-taken": { severity: "hint", meaning: "A note names a bed that no file describes; it is taken as named." },
  "name/variety-taken": {
    severity: "hint",
    meaning: "A note names a variety that no file describes; it is taken as named.",
  },

  "episode/not-known-what-was-shown": {
    severity: "hint",
    meaning: "The day of a film is past, and its record does not tell that it is out, or which beds it shows.",
  },

  "note/no-date": { severity: "error", meaning: "A note has no date, so it has no place in the season." },
  "note/two-dates": { severity: "warning", meaning: "A note's date differs from the date in its file name." },
  "note/future": { severity: "warning", meaning: "A note is dated after today." },
  "note/unknown-verb": {
    severity: "warning",
    meaning: "A list item names a bed or variety and begins with a word that is no verb of the note format.",
  },
  "note/unknown-variety": {
    severity: "warning",
    meaning: "A line names a variety that no file describes and that is spelled nearly like one.",
  },
  "note/unknown-bed": {
    severity: "warning",
    meaning: "A line names a bed that no file describes and that is spelled nearly like one.",
  },
  "note/two-varieties": { severity: "warning", meaning: "A line gives a name that two varieties have." },
  "note/no-plant": {
    severity: "warning",
    meaning: "A line says that something was done with a plant and does not say which.",
  },
  "note/settled-no-dash": {
    severity: "hint",
    meaning: 'A line that begins with "=" is no list item, so it settles nothing.',
  },
  "note/heading-not-bed": {
    severity: "hint",
    meaning: "Lines that plant or sow stand below a heading that may be a bed's name, and no file describes that bed.",
  },
  "note/which-bed": { severity: "warning", meaning: "A line that sows or plants does not say in which one bed." },
  "note/sown-where": {
    severity: "hint",
    meaning: "A sowing says neither a bed nor that it is indoors, so it is taken as indoors.",
  },
  "note/unclear-day": {
    severity: "warning",
    meaning: "A line ends in a date that does not exist or can be read in two ways.",
  },
  "note/day-after-note": { severity: "warning", meaning: "A line tells of a day after the day of its note." },
  "note/question": {
    severity: "hint",
    meaning: "A line can be read in more than one way, so nothing is taken from it until the person has settled it.",
  },
  "note/settled-unread": {
    severity: "warning",
    meaning: 'A plain line that settles the line above it, marked by "=", cannot be read.',
  },
  "note/not-parsed": { severity: "warning", meaning: "Part of a note could not be taken apart and was kept as story." },

  "words/not-read": {
    severity: "warning",
    meaning: "A list item of words.md is no word with a colon and a meaning.",
  },
  "words/unknown-meaning": {
    severity: "warning",
    meaning: "A word of words.md is to mean something that nothing in the garden is called.",
  },
  "words/twice": { severity: "warning", meaning: "A word stands in words.md twice with different meanings." },
  "words/name-of-another": {
    severity: "hint",
    meaning: "A word of words.md is the name of something else of the same kind.",
  },

  "field-list/not-whole": {
    severity: "error",
    doubt: false,
    meaning: "The export of a field list is cut short or no valid JSON.",
  },
  "field-list/not-one": {
    severity: "error",
    doubt: false,
    meaning: "A file named as the export of a field list is none, or one of a version that is not read.",
  },
  "field-list/another-tour": {
    severity: "warning",
    meaning: "The export of a field list lies beside another episode than the one it was made for.",
  },
  "field-list/file-name": {
    severity: "warning",
    meaning: "The export of a field list is not named field-list.json, so it is not read.",
  },
  "plan/not-read": {
    severity: "warning",
    meaning: "The plan kept beside an episode cannot be read or is another tour's, so the tour is planned anew.",
  },

  "photo/unreadable": { severity: "warning", meaning: "The system does not let a photo be read." },
  "photo/empty": { severity: "warning", meaning: "A photo file has no bytes in it." },
  "photo/not-a-picture": { severity: "warning", meaning: "A file is named like a photo and holds none." },
  "photo/wrong-ending": { severity: "hint", meaning: "A photo is of another kind than its file name says." },
  "photo/damaged": { severity: "warning", meaning: "A photo cannot be opened, so no page shows it." },
  "photo/too-large": { severity: "warning", meaning: "A photo has more pixels than are opened." },
  "photo/no-heic-decoder": { severity: "warning", meaning: "A photo is HEIC and no decoder for it is installed." },
  "photo/no-day": { severity: "hint", meaning: "Only the file's own time tells the day of a photo, or nothing does." },
  "photo/day-disagrees": { severity: "hint", meaning: "A sidecar gives another day than the photo itself." },
  "photo/clock-disagrees": { severity: "hint", meaning: "The camera's clock and GPS cannot both be right." },
  "photo/clip-clock": {
    severity: "hint",
    meaning: "A camera's clips may say UTC or the camera's own clock, and their day depends on it.",
  },
  "photo/no-film-program": {
    severity: "hint",
    meaning: "No program is on the machine that takes still pictures out of clips.",
  },
  "photo/unknown-bed": { severity: "warning", meaning: "A folder of photos is named after no bed." },
  "photo/unknown-variety": { severity: "warning", meaning: "A folder of photos is named after no variety." },
  "photo/unknown-viewpoint": {
    severity: "hint",
    meaning: "Photos come from a viewpoint that their bed does not describe.",
  },
  "voice/waits": { severity: "hint", meaning: "No note says what was spoken in a sound file." },
  "photo/unplaced": { severity: "hint", meaning: "Photos belong to no bed yet." },

  "timeline/more-than-sown": {
    severity: "warning",
    meaning: "More plants were planted, lost or given away than were sown.",
  },
  "timeline/more-than-there": { severity: "warning", meaning: "More plants left a bed than stood in it." },
  "timeline/no-sowing": { severity: "hint", meaning: "Plants were planted and no line says where they came from." },
  "timeline/sown-where": {
    severity: "hint",
    meaning: "A sowing names neither a bed nor that it was indoors; it is taken as indoors.",
  },
  "timeline/no-bed": { severity: "warning", meaning: "A planting names no bed, so it stands in none." },
  "timeline/variety-from-nursery": {
    severity: "hint",
    meaning: "A planting names only a crop; the one variety of it in the nursery was meant.",
  },
  "timeline/before-planting": {
    severity: "warning",
    meaning: "Something is noted of plants before they were sown or planted.",
  },
  "timeline/nothing-planted": { severity: "hint", meaning: "A line speaks of plants that no line sowed or planted." },
  "timeline/nothing-there": {
    severity: "warning",
    meaning: "Plants were lost, given away, moved or cleared that do not grow there.",
  },
  "timeline/in-another-bed": {
    severity: "hint",
    meaning: "A line's plants do not grow in its bed; those in another bed were meant.",
  },
  "timeline/several-plantings": {
    severity: "hint",
    meaning: "A line can mean several plantings, and one way was chosen.",
  },
  "timeline/several-beds": {
    severity: "hint",
    meaning: "A line can be of one bed only and names none; the first bed of its note was meant.",
  },
  "timeline/after-its-end": { severity: "hint", meaning: "A line speaks of a planting that has ended." },
  "timeline/picked-of-several": {
    severity: "hint",
    meaning: "A picking names a crop of which several plantings stand in the bed.",
  },
  "timeline/never-cleared": {
    severity: "hint",
    meaning: "An annual planting was never cleared and ended with its season.",
  },
  "timeline/annual-or-perennial": {
    severity: "hint",
    meaning: "A season turned, and nothing says whether a plant stands for years or for one season.",
  },
  "timeline/no-such-trouble": { severity: "hint", meaning: "A trouble is noted as over that was not open." },
  "timeline/trouble-left-open": {
    severity: "hint",
    meaning: "A trouble was never noted as over and ended with its season.",
  },
  "timeline/gear-not-there": { severity: "hint", meaning: "Gear was taken down where none was put up." },
  "timeline/bed-not-in-use": {
    severity: "warning",
    meaning: "Something was sown or planted in a bed when it was not in use.",
  },

  "trial/one-arm": { severity: "warning", meaning: "A trial has fewer than two arms, so nothing can be compared." },
  "trial/arms-overlap": {
    severity: "warning",
    meaning: "Two arms of a trial have the same variety, bed and name, so no line can tell which is meant.",
  },

  "goal/unknown-crop": {
    severity: "warning",
    meaning:
      "A goal in garden.md names no crop or product that is known, or not how much of it, so nothing is reckoned for it.",
  },
  "goal/unknown-pin": { severity: "warning", meaning: "A pin in garden.md names no crop or no bed there is." },

  "weather/no-columns": {
    severity: "warning",
    meaning: "A weather file's first line names no date and no temperature or rain.",
  },
  "weather/no-date": { severity: "warning", meaning: "A line of a weather file has no day that exists." },
  "weather/impossible-value": {
    severity: "warning",
    meaning: "A weather file has values that no place on Earth has had; they are left out.",
  },
  "weather/wrong-unit": {
    severity: "warning",
    meaning: "So many values of a weather column are impossible that it must be in another unit; none is used.",
  },
  "weather/min-above-max": {
    severity: "warning",
    meaning: "A day's lowest temperature is above its highest; both are left out.",
  },
  "weather/day-twice": { severity: "warning", meaning: "A day stands in a weather file more than once." },
  "weather/units-converted": {
    severity: "hint",
    meaning: "A weather file was delivered in other units than the archive's own.",
  },
  "weather/station-moved": { severity: "hint", meaning: "A weather station of a file moved to another place." },
  "weather/gap": { severity: "hint", meaning: "The weather files leave out a stretch of days." },

  "captions/none": { severity: "error", doubt: false, meaning: "A caption file holds no caption." },
  "captions/not-read": { severity: "error", doubt: false, meaning: "A caption file is of a kind that is not read." },
  "captions/encoding": { severity: "hint", meaning: "A caption file is not written in UTF-8." },
  "captions/no-header": { severity: "warning", meaning: "A WebVTT file does not begin with WEBVTT." },
  "captions/time": { severity: "warning", meaning: "A caption's time breaks the rules of its format." },
  "captions/arrow": { severity: "warning", meaning: "The arrow between two times has no space on each side." },
  "captions/no-empty-line": { severity: "warning", meaning: "No empty line parts a caption from the one before it." },
  "captions/stray-text": { severity: "warning", meaning: "Words of a caption file stand in no caption." },
  "captions/frames": { severity: "hint", meaning: "A time counts frames of an unknown rate." },
  "captions/end-before-start": { severity: "warning", meaning: "A caption ends before it begins." },
  "captions/out-of-order": { severity: "warning", meaning: "A caption begins before the one above it." },
  "captions/overlap": { severity: "hint", meaning: "A caption begins while the one before it is still shown." },
  "captions/past-end": { severity: "warning", meaning: "A caption is timed after the end of the film." },
  "captions/another-film": {
    severity: "warning",
    meaning: "Captions speak of hardly anything that the episode's beds hold.",
  },
  "bed/shade-unread": {
    severity: "warning",
    meaning: "A line of shade cannot be reckoned with, so the light is told as if nothing stood there.",
  },
  "variety/two-plants": {
    severity: "warning",
    meaning: "A name is that of two plants, of which one is poisonous, so no caution can be shown for it.",
  },
  "privacy/mark-unclear": {
    severity: "error",
    meaning: "Something that looks like a wish to keep a record private stands where it is not read.",
  },
  "privacy/like-private": {
    severity: "error",
    meaning:
      "A name that no file describes is spelled nearly like a private one, or may be that of a file that is not read.",
  },
  "privacy/described-no-more": {
    severity: "error",
    meaning: "Something was kept back when the garden was last published, and the file that kept it so is gone.",
  },
  "privacy/named-in-title": {
    severity: "error",
    meaning: "What a record is called holds the name of a private one.",
  },
  "privacy/position": {
    severity: "hint",
    meaning: "Public words hold what looks like a position on Earth, so viewers are not shown them.",
  },
  "privacy/photo": { severity: "error", meaning: "A file that may keep a photo private could not be read or matched." },
  "privacy/named": {
    severity: "hint",
    meaning: "Public words name a private record, so viewers are not shown them.",
  },
} as const satisfies Record<string, Rule>;

export type RuleName = keyof typeof problemRules;

/** A problem by its rule; the severity is the table's. `what` and `fix` are whole sentences. */
export function problem(rule: RuleName, place: Place, what: string, fix: string, expected?: string): Problem {
  const { file, line, column } = place;
  const found: Problem = { rule, severity: problemRules[rule].severity, file, line, column, what, fix };
  return expected === undefined ? found : { ...found, expected };
}

/** Order in which problems are shown: by file, line, column, rule. Files compare by code unit, the same everywhere. */
export function sortProblems(problems: readonly Problem[]): readonly Problem[] {
  return problems.toSorted(
    (a, b) =>
      compare(a.file, b.file) ||
      a.line - b.line ||
      a.column - b.column ||
      compare(a.rule, b.rule) ||
      compare(a.what, b.what),
  );
}
