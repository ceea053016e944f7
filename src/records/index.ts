// Takes: a records folder (files that a person wrote) and the day it is.
// Gives: the records, checked and linked, with every problem found; the tables of verbs, units, crops and rules.
// Never: writes, asks the clock, throws on what a person wrote, or lets one bad file hide another.
export { crops, pieceOf } from "./crops.ts";
export { idOfName, nearestName, normaliseName } from "./names.ts";
export { didYouMean, nearestSpellings } from "./nearest-spelling.ts";
export type { NoteCache, ParsedNote } from "./parsed-files.ts";
export { problem, problemRules, type RuleName, sortProblems } from "./problem-rules.ts";
export { problemText } from "./problem-text.ts";
export { type ReadOptions, readRecords, readSettings } from "./read-records.ts";
export { openRecordsFolder, type RecordsFolder } from "./records-folder.ts";
