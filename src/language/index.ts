// Takes: numbers, days, amounts, crops and varieties, and the garden's English and units.
// Gives: how they are said, and what beds, sources and harvests are called; sentences with the lines they rest on.
// Never does: know of films or pages; work out a fact of a garden; touch the disk or the clock.
export { inItsEnglish } from "./american-words.ts";
export {
  chartUnit,
  groundUnit,
  sayAirTemperature,
  sayClimb,
  sayDistance,
  sayFromGround,
  sayLength,
  sayRain,
  sayRoughDistance,
  saySide,
  sayTemperature,
  sayVolume,
  sayWeight,
} from "./amounts.ts";
export { changeSentence } from "./changes/change-sentence.ts";
export { sayTried } from "./changes/tried.ts";
export { withWordsOnce } from "./changes/words-once.ts";
export { sayDay, sayMonth, sayWeekday } from "./days.ts";
export { againstLastYear, dayOnly, onDay, roughly, sinceDay, type Voice, whenDone } from "./days-said.ts";
export { sayDoubt } from "./doubts.ts";
export { looksHardToSay } from "./hard-names.ts";
export { pickedAmount, sayPicked, sayPickedOf, sayPickings } from "./harvests.ts";
export { type Amount, type Amounts, type Locale, localeOf } from "./locale.ts";
export { type Markdown, markdownWriter, md } from "./markdown-text.ts";
export { mentions, mentionsAny, plainWords } from "./mentions.ts";
export { type Names, namesOf } from "./names.ts";
export { endOf, sentencesOf } from "./note-sentences.ts";
export { gravest, type HowItCame, isNotice, isUndecided, noticeLine, noticesOf } from "./notices.ts";
export { capital, digits, fullStop, sayCount, sayList, sayNumber, sayOrdinal, sayPlural, sayShare } from "./numbers.ts";
export { inTurn, oneOf } from "./phrasing.ts";
export { pieceWords } from "./pieces.ts";
export { bedVerb, inBed, isGround, theBed, theGear, withPreposition } from "./places.ts";
export {
  cropName,
  cultivar,
  isSingular,
  isUnnamed,
  label,
  oneForm,
  plantName,
  theCrop,
  thePlants,
  varietyName,
} from "./plant-names.ts";
export { type Ground, type Sentence, say, sourcesOf, together } from "./sentence.ts";
export { disclosureLines, fromWords, namedGiver } from "./sources.ts";
export { sayAge } from "./spans.ts";
export { toYou } from "./to-you.ts";
