// Takes: captions of a film, its episode record, the garden as it was on the filming day, the brief of the tour.
// Gives: everything done after filming, as plain data: chapters, coverage, names set right, promises, questions, description.
// Never does: touch the disk, ask a clock, change a caption file or a record.
export { type CaptionFile, openCaptions } from "./open-captions.ts";
