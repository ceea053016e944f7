// Takes: tables, diaries and captions that a person kept before, the records folder, the garden read from it.
// Gives: the records that a person would write of them, what of them was not understood; the names that notes use, and what joining two changes.
// Never does: write, reword what a person wrote, change a file that is there, or take a doubtful day or number for a fact.
export { type BroughtDiary, bringDiary } from "./bring-diary.ts";
export { type BroughtFilm, bringFilm, type NamedInFilm } from "./bring-film.ts";
export { type BroughtTable, bringTable, type ColumnShown, type TableRequest } from "./bring-table.ts";
export { type BroughtVoice, bringVoice } from "./bring-voice.ts";
export { type DayOrder, dayOrders } from "./cell-days.ts";
export { type HomeFile, type HomeLine, type HomePhoto, readHomeFile } from "./home-file.ts";
export type { BedsJoined, FileChange } from "./join-beds.ts";
export { type JoinedFile, joinNames, type NamesJoined } from "./join-names.ts";
export { type NamesUsed, namesUsed, type UsedKind, type UsedName } from "./names-used.ts";
export { type NewFile, type Part, partOf, type Told } from "./new-file.ts";
export { type PastKind, pastKind } from "./past-kind.ts";
export { type BedRenamed, renameBed } from "./rename-bed.ts";
export { openWorkbook, type SheetRead, type Workbook } from "./spreadsheet/read-workbook.ts";
export type { WhyNot } from "./spreadsheet/zip-parts.ts";
