// Takes: words, and things that ask to be shown with their lengths.
// Gives: how long they take on film, which of them fit into it, and the card they are spoken from: what tours and recaps have in common.
// Never does: know of beds or plants; touch the disk or the clock.
export {
  type CardSet,
  type CardTitles,
  type Cover,
  type CoverRow,
  cardLimits,
  type NameToSay,
  type NowPhrase,
  type SpokenCard,
  tourTitles,
} from "./cards/card.ts";
export { cardMarkdown, rowMarkdown } from "./cards/card-markdown.ts";
export { clockOf } from "./cards/clock.ts";
export { countWords, fits, toCircumstance, toPause } from "./cards/count-words.ts";
export { howItCame } from "./cards/how-it-came.ts";
export { askedIn, promised } from "./cards/promised.ts";
export { ratioWords, twoDigits } from "./cards/ratio-words.ts";
export { type Spoken, spokenParts, toSixty } from "./cards/sixty.ts";
export { makeWording, own, type Way, type Wording } from "./cards/wording.ts";
export { filmTime, type Handling, offFilm, secondsToSay, stopOverhead } from "./film-time.ts";
export { type Fit, type Fitting, fitToTarget, type Level } from "./fit.ts";
export { exactLength, filmLength, minutes, roughLength, stopLength } from "./lengths.ts";
