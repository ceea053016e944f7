// Takes: the garden, and an episode or a day.
// Gives: the brief of that tour as plain data (what to show at each stop, why, and where each sentence rests), and its Markdown.
// Never does: touch the disk, ask a clock, invent anything no record tells.
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
  Sentence,
  ShowKind,
  ShowPoint,
  Since,
  Spot,
  Stop,
  TaskLine,
  TroubleLine,
  VarietyRow,
} from "./brief.ts";
export { briefMarkdown, targetWords } from "./brief-markdown.ts";
export { type FactParagraph, factParagraphs } from "./facts.ts";
export { type BriefRequest, makeBrief } from "./make-brief.ts";
export { levelWords, quietChanges } from "./show-values.ts";
