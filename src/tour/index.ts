// Takes: the garden, and an episode or a day.
// Gives: the cover, the cards and the dossier of that tour as plain data, each phrase with its source, and their Markdown.
// Never does: touch the disk, ask a clock, invent anything no record tells.

export type { Ahead, Deadline, Expected } from "./ahead/ahead.ts";
export { aheadMarkdown } from "./ahead/ahead-markdown.ts";
export { lookAhead } from "./ahead/look-ahead.ts";
export { type AnswerKept, answerKept } from "./answer-kept.ts";
export type { Brief, BriefRequest, FollowUpLine, ShowKind, ShowPoint, Stop, VarietyRow } from "./brief.ts";
export type { Shot } from "./camera.ts";
export type { Card, CardShot, TourCards, TourCover } from "./cards/card.ts";
export { mostShots } from "./cards/card.ts";
export { cardsMarkdown, keptWhere } from "./cards/cards-markdown.ts";
export { coverLight, toSettle } from "./cards/cover.ts";
export { makeCards } from "./cards/make-cards.ts";
export type { ExpectedWindow, ExpectedWindows } from "./expected-window.ts";
export { factParagraphs } from "./facts.ts";
export { photosCompared } from "./growth-lines.ts";
export { keeps } from "./keys.ts";
export { makeBrief } from "./make-brief.ts";
export type { Plan, StartScore } from "./plan/plan.ts";
export { type PlanToKeep, planToKeep } from "./plan-to-keep.ts";
export { leftOutWords, lightWords, planWords, seenBefore } from "./plan-words.ts";
export { levelWords, quietChanges } from "./show-values.ts";
export { tourProblems } from "./tour-problems.ts";
export { type AskedKind, askedNow, type NextShown, type WorthAsking, worthAsking } from "./worth-asking.ts";
