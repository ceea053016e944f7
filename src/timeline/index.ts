// Takes: what was read from the records, and the photos.
// Gives: the garden: plantings, nursery lots, follow-ups, the state of a bed on a day, its changes as facts, where its notes leave a doubt.
// Never does: word anything, touch the disk, ask a clock, know about the sun, the weather or films.
export { applyChange, changes, foldChanges, living, state } from "./bed-state.ts";
export { isBeingPicked } from "./being-picked.ts";
export { comesAsPlants, habitOf, takingVerb } from "./crop-habits.ts";
export { growGarden } from "./grow-garden.ts";
export { openFollowUps, openTasks } from "./open-follow-ups.ts";
export { yearOfLife } from "./seasons.ts";
