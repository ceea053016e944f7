// Takes: the garden, and an episode or a day.
// Gives: the brief of that tour as plain data (what to show and say, in which order, time and light, each with its source), and its Markdown.
// Never does: touch the disk, ask a clock, invent anything no record tells.

// The words and measures that recaps share with briefs, so that one fact reads the same in both.
export type {
  Brief,
  ChangeLine,
  Check,
  Fact,
  FollowUpLine,
  GearRow,
  LeftOut,
  OpeningLine,
  OutlineLine,
  ShowKind,
  ShowPoint,
  SideBySide,
  Since,
  Spot,
  Stop,
  TaskLine,
  TroubleLine,
  VarietyRow,
} from "./brief.ts";
export { briefMarkdown, type MarkdownOptions } from "./brief-markdown.ts";
export type { PointTo } from "./earlier-films.ts";
export { type FactParagraph, factParagraphs } from "./facts.ts";
export { photosCompared } from "./growth-lines.ts";
export { type BriefRequest, makeBrief } from "./make-brief.ts";
export { type ExpectedWindow, makeOutlook, type OutlookRequest } from "./outlook/make-outlook.ts";
export type { Deadline, Expected, FilmingDay, Outlook } from "./outlook/outlook.ts";
export { outlookMarkdown } from "./outlook/outlook-markdown.ts";
export type { Plan, Reorder, StartScore } from "./plan/plan.ts";
export {
  headLine,
  type LeftOutWords,
  leftOutWords,
  lightWords,
  planWords,
  seenBefore,
  stopLength,
  targetWords,
} from "./plan-words.ts";
export type { Shot } from "./shots.ts";
export { levelWords, quietChanges } from "./show-values.ts";
export { careOf } from "./stop-cautions.ts";
export { tourProblems } from "./tour-problems.ts";
