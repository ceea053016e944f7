// Takes: captions of a film, its episode record, the garden as it was on the filming day, the brief of the tour.
// Gives: everything done after filming, as plain data: chapters, coverage, names set right, promises, questions, description.
// Never does: touch the disk, ask a clock, change a caption file or a record.
export { type Accepted, acceptPromises, type PromiseToWrite } from "./accept-promises.ts";
export { beforeUploadPage } from "./before-upload.ts";
export { sayTime } from "./caption-times.ts";
export { chapterCues, chapterLines } from "./chapters.ts";
export { captionLimits } from "./clean-captions.ts";
export { type ClipLog, type ClipSpeech, clipLog } from "./clips/clip-log.ts";
export { type ClipNames, clipRows, sayRate } from "./clips/clip-rows.ts";
export { commonWords } from "./common-words.ts";
export { USUAL_LIMIT } from "./description.ts";
export { disclosureCaution } from "./disclosures.ts";
export { editLog, type LogRow, marksOf } from "./edit-log.ts";
export { filmingDay } from "./filming-day.ts";
export { readGlossary } from "./glossary.ts";
export { editList, markList } from "./hand-over/edit-list.ts";
export { finalCutXml } from "./hand-over/final-cut-xml.ts";
export { openTimeline } from "./hand-over/open-timeline.ts";
export { commonRate, roughCut } from "./hand-over/rough-cut.ts";
export { readRate } from "./hand-over/timecode.ts";
export { filmTimeline, type Timeline } from "./hand-over/timeline.ts";
export { type FilmHeard, hearFilm } from "./hear-film.ts";
export type { GlossaryWord } from "./known-names.ts";
export { APPLY_FROM, PROPOSE_FROM } from "./names-heard.ts";
export { type CaptionFile, openCaptions } from "./open-captions.ts";
export { type PromiseHeard, promisesHeard } from "./promises-heard.ts";
export { shortRows } from "./shorts.ts";
export { soundLikeness, soundOf } from "./sound.ts";
export { type SpokenRule, spokenRules } from "./spoken-rules.ts";
export { type TakeRow, takeRows } from "./takes.ts";
export { titleLines } from "./titles.ts";
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
  Reshoot,
  Short,
  StopHeard,
  Thumbnail,
  TitleOffered,
  VarietyNamed,
  Wrap,
} from "./wrap.ts";
export { type FilmTold, filmTold, type WrapMade, type WrapRequest, wrapEpisode } from "./wrap-episode.ts";
export { wrapReport } from "./wrap-report.ts";
export { type CueToWrite, captionsToFill, plainCaptions, writeCaptions } from "./write-captions.ts";
