// Takes: captions of a film, its episode record, the garden as it was on the filming day, the brief of the tour.
// Gives: everything done after filming, as plain data: chapters, coverage, names set right, promises, questions, description.
// Never does: touch the disk, ask a clock, change a caption file or a record.
export { type Accepted, acceptPromises, type PromiseToWrite } from "./accept-promises.ts";
export { chapterCues, chapterLines } from "./chapters.ts";
export { commonWords } from "./common-words.ts";
export { USUAL_LIMIT } from "./description.ts";
export { disclosureCaution } from "./disclosures.ts";
export { editLog, type LogRow, openTimeline } from "./edit-log.ts";
export { filmingDay } from "./filming-day.ts";
export { readGlossary } from "./glossary.ts";
export { type FilmHeard, hearFilm } from "./hear-film.ts";
export type { GlossaryWord } from "./known-names.ts";
export { APPLY_FROM, PROPOSE_FROM } from "./names-heard.ts";
export { type CaptionFile, openCaptions } from "./open-captions.ts";
export { type PromiseHeard, promisesHeard } from "./promises-heard.ts";
export { type SpokenRule, spokenRules } from "./spoken-rules.ts";
export { isoDuration, type VideoData, videoObject } from "./video-data.ts";
export type {
  Answer,
  Chapter,
  Correction,
  Coverage,
  Covered,
  Description,
  Disagreement,
  Disclosure,
  FollowUpProposed,
  Moment,
  Paragraph,
  PlannedCovered,
  PlateFrame,
  QuestionHeard,
  StopHeard,
  Thumbnail,
  VarietyNamed,
  Wrap,
} from "./wrap.ts";
export { type FilmTold, filmTold, type WrapMade, type WrapRequest, wrapEpisode } from "./wrap-episode.ts";
export { wrapReport } from "./wrap-report.ts";
export { type CueToWrite, writeCaptions } from "./write-captions.ts";
