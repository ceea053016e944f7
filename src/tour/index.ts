// Takes: the garden, and an episode or a day.
// Gives: the brief of that tour as plain data (what to show and say, in which order, time and light, each with its source), and its Markdown.
// Never does: touch the disk, ask a clock, invent anything no record tells.

export type { Brief, BriefRequest, FollowUpLine, ShowKind, ShowPoint, Stop, VarietyRow } from "./brief.ts";
export { briefMarkdown } from "./brief-markdown.ts";
export type { Shot } from "./camera.ts";
export type { ExpectedWindow, ExpectedWindows } from "./expected-window.ts";
export { factParagraphs } from "./facts.ts";
export { photosCompared } from "./growth-lines.ts";
export { makeBrief } from "./make-brief.ts";
export { makeOutlook } from "./outlook/make-outlook.ts";
export type { Deadline, Expected, Outlook } from "./outlook/outlook.ts";
export { outlookMarkdown } from "./outlook/outlook-markdown.ts";
export type { Plan, StartScore } from "./plan/plan.ts";
export { headLine, leftOutWords, lightWords, planWords, seenBefore } from "./plan-words.ts";
export { levelWords, quietChanges } from "./show-values.ts";
export { careOf } from "./stop-cautions.ts";
export { tourProblems } from "./tour-problems.ts";
