// Takes: the garden, and an episode or a day.
// Gives: the brief of that tour as plain data (what to show and say, in which order, time and light, each with its source), and its Markdown.
// Never does: touch the disk, ask a clock, invent anything no record tells.

// The words and measures that recaps share with briefs, so that one fact reads the same in both.
export { bedVerb, inBed, isGround, theBed } from "./bed-names.ts";
export { isBeingPicked } from "./being-picked.ts";
export type {
  Brief,
  ChangeLine,
  Check,
  Fact,
  FollowUpLine,
  GearRow,
  LeftOut,
  Level,
  OpeningLine,
  OutlineLine,
  Sentence,
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
export { allOf, careOf, cautionsFor, closingCaution, namesPoison, preservingCautions } from "./cautions.ts";
export { againstLastYear, dayOnly, onDay, type Voice, yearBefore } from "./days-said.ts";
export type { PointTo } from "./earlier-films.ts";
export type { ExpectedWindow, ExpectedWindows } from "./expected-window.ts";
export { type FactParagraph, factParagraphs } from "./facts.ts";
export { offFilm } from "./film-time.ts";
export { photosCompared } from "./growth-lines.ts";
export {
  comparable,
  type HarvestSum,
  harvestSize,
  sayHarvest,
  sayHarvestOf,
  sayPickings,
  sumOf,
} from "./harvest-sums.ts";
export { type BriefRequest, makeBrief } from "./make-brief.ts";
export { makeOutlook, type OutlookRequest } from "./outlook/make-outlook.ts";
export type { Deadline, Expected, FilmingDay, Outlook } from "./outlook/outlook.ts";
export { outlookMarkdown } from "./outlook/outlook-markdown.ts";
export { inTurn, oneOf } from "./phrasing.ts";
export { type Fit, type Fitting, fitToTarget } from "./plan/fit.ts";
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
export { cultivar, isSingular, isUnnamed, label, type Named, plantName, theCrop, thePlants } from "./plant-names.ts";
export { type Ground, say, secondsToSay, together } from "./sentence.ts";
export type { Shot } from "./shots.ts";
export { levelWords, quietChanges } from "./show-values.ts";
export { disclosureLines, fromWords } from "./source-words.ts";
export { tourProblems } from "./tour-problems.ts";
