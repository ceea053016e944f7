// Takes: numbers, days, amounts, crops and varieties, and the garden's English and units.
// Gives: how they are said.
// Never does: know of beds, films or pages; touch the disk or the clock.
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
export { type DaySpeech, sayDay, sayMonth, sayWeekday } from "./days.ts";
export { type Amount, type Amounts, type Locale, localeOf } from "./locale.ts";
export { capital, digits, fullStop, sayCount, sayList, sayNumber, sayOrdinal, sayPlural } from "./numbers.ts";
export { pieceWords } from "./pieces.ts";
export { cropName, varietyName } from "./plant-names.ts";
export { sayAge } from "./spans.ts";
