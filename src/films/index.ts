// Takes: words, and things that ask to be shown with their lengths.
// Gives: how long they take on film, and which of them fit into it: what tours and recaps have in common.
// Never does: know of beds or plants; touch the disk or the clock.
export { filmTime, type Handling, offFilm, secondsToSay, stopOverhead } from "./film-time.ts";
export { type Fit, type Fitting, fitToTarget, type Level } from "./fit.ts";
export { exactLength, filmLength, minutes, roughLength, stopLength } from "./lengths.ts";
