// Takes: the garden as the timeline grew it.
// Gives: its book, the one index that every output looks things up in; its seasons; what is new to it; where its notes leave a doubt.
// Never does: touch the disk or the clock; word anything.
export { type Book, bookOf, eventsBehind, type PastLot } from "./book.ts";
export { type Finder, finderOf } from "./names-found.ts";
export { isFirstOfItsCrop, isNewToGarden } from "./newness.ts";
export { isQuotable, type OwnLine, ownLinesOf } from "./own-lines.ts";
export type { Picking } from "./pickings.ts";
export { earlier, type Season, sameDayIn, seasonAsked, seasonBeginning, seasonOf, weekOf } from "./seasons.ts";
export { timelineProblems } from "./timeline-problems.ts";
