// Takes: a records folder (files that a person wrote) and the day it is.
// Gives: the records, checked and linked, with every problem found; the tables of verbs, units, crops and rules.
// Never: writes, asks the clock, throws on what a person wrote, or lets one bad file hide another.
export { type Added, type AddedContext, bedsOfFront, type LinesToAdd, withAddedLines } from "./added-lines.ts";
export { type Answered, answeredNote, type Block, blockAt } from "./answered-note.ts";
export { crops, pieceOf } from "./crops.ts";
export { decodeText } from "./decode-text.ts";
export { isDoubt } from "./doubts.ts";
export { type DueDay, dueDay } from "./due-day.ts";
export { isOfFeast, lastFeast } from "./feasts.ts";
export {
  asideEnding,
  clipEnding,
  photoEnding,
  rawEnding,
  soundEnding,
  textEnding,
  transcriptEnding,
} from "./file-names.ts";
export { type FrontLine, type FrontWritten, withFrontLine } from "./front-line.ts";
export { type NamedRecords, namesOfGarden } from "./garden-names.ts";
export { kin } from "./giver-in-words.ts";
export { type Word, wordsOf } from "./line-words.ts";
export { chapterOf, ruleChapters } from "./manual.ts";
export { type SidecarKey, sidecarFile, withSidecarKey } from "./named-photo.ts";
export { buildNames, idOfName, type NameRecords, Names, namesOnceHeard, nearestName, normaliseName } from "./names.ts";
export { didYouMean, nearestSpellings } from "./nearest-spelling.ts";
export { deepestNesting } from "./nesting.ts";
export type { NoteBody } from "./note-body.ts";
export { type LineContext, type NoteLine, type ReadLine, readNoteLine } from "./note-line.ts";
export type { NoteReadings } from "./note-readings.ts";
export { type OneNoteContext, readOneNote } from "./one-note.ts";
export { ownWords, withOwnWord, wordsFile, writtenWords } from "./own-words.ts";
export type { NoteCache, ParsedNote } from "./parsed-files.ts";
export { isCalling, peopleNamed } from "./people-named.ts";
export { besideName, isCopyName, isEditedName, momentName } from "./picture-names.ts";
export { type PlainText, readTexts } from "./plain-texts.ts";
export { withoutPrice } from "./prices.ts";
export { printEvent } from "./print-event.ts";
export { problem, problemRules, type RuleName, sortProblems } from "./problem-rules.ts";
export { problemData, problemText } from "./problem-text.ts";
export { questionProblem } from "./question-problem.ts";
export { readFileAt } from "./read-file-at.ts";
export { type ReadOptions, readRecords, readSettings } from "./read-records.ts";
export { type EventData, type ReadingData, readingData } from "./reading-data.ts";
export { recordFolders, recordTexts } from "./record-places.ts";
export { openRecordsFolder, type RecordsFolder } from "./records-folder.ts";
export { withoutRemarks } from "./remarks.ts";
export { ruleMeanings } from "./rule-meanings.ts";
export { writesMonthFirst } from "./slashed-days.ts";
export { obtainedCalled, saysNothing, yesOrNo } from "./tables/cell-words.ts";
export {
  type ColumnMeaning,
  columnMeanings,
  headingRow,
  matchColumns,
  meaningCalled,
  type SaidColumns,
  type TableColumn,
  unknownHeadings,
} from "./tables/table-columns.ts";
export { readTextTable, rowsBy, type Separator, type TableRow, type TextTable } from "./tables/table-rows.ts";
export { type AnsweredLine, type Taught, taughtBy } from "./taught-words.ts";
export { typedGarden } from "./typed-garden.ts";
export {
  readTyped,
  shownReading,
  type TypedContext,
  type TypedGarden,
  type TypedLine,
  typedNames,
  usualVerbs,
} from "./typed-reading.ts";
export { type Unit, type UnitSystem, units } from "./units.ts";
export { type Proof, type Verb, verbTable } from "./verb-table.ts";
