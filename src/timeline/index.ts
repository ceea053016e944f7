// Takes: what was read from the records, and the photos.
// Gives: the garden: plantings, nursery lots, follow-ups, the state of a bed on a day, its changes, and the words to say them.
// Never does: touch the disk, ask a clock, know about the sun, the weather or films.
export { applyChange, changes, foldChanges, living, state } from "./bed-state.ts";
export { comesAsPlants, habitOf, takingVerb } from "./crop-habits.ts";
export { growGarden } from "./grow-garden.ts";
export { oneForm } from "./names.ts";
export { openFollowUps, openTasks } from "./open-follow-ups.ts";
export { nothingPicked, pickedMore } from "./picked-totals.ts";
export { plantingsOf } from "./plantings-of.ts";
export { yearOfLife } from "./seasons.ts";
export { pieceWords } from "./speech/pieces.ts";
export type { Amount, Speech } from "./speech/speech.ts";
export { speechOf } from "./speech/speech-of.ts";
export { type ChangeView, type PlantingView, type TimelineView, timelineView } from "./timeline-view.ts";
export {
  capital,
  cropName,
  type DaySpeech,
  fullStop,
  sayAge,
  sayCount,
  sayDay,
  sayLength,
  sayList,
  sayMonth,
  sayNumber,
  sayOrdinal,
  sayPlural,
  sayVolume,
  sayWeekday,
  sayWeight,
  varietyName,
} from "./words.ts";
