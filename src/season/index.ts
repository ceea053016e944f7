// Takes: the garden, its weather, and a season or a day.
// Gives: the recap as cover, cards and dossier, plain data and Markdown; results, forecasts, trials, needs, plan and seed list for next year.
// Never does: touch the disk, ask a clock, claim more than the numbers allow.
export { type BackTest, backTest } from "./back-test.ts";
export { makeRecapCards } from "./cards/make-recap-cards.ts";
export { type RecapCards, type RecapCover, recapTitles, type ThreadCard } from "./cards/recap-card.ts";
export { recapCardsMarkdown } from "./cards/recap-cards-markdown.ts";
export type { CalendarRow, HeatLine, RecapCharts, WeekPicked } from "./chart-data.ts";
export { type Forecast, forecaster } from "./forecast.ts";
export { lastRecap, makeRecap, type RecapRequest, recapName } from "./make-recap.ts";
export { allTimed, stillWaiting, waits } from "./maturity.ts";
export { openPickings } from "./open-pickings.ts";
export { plantYields } from "./plant-yields.ts";
export type {
  ForecastRow,
  LossRow,
  NextYear,
  PhotoSet,
  PromiseRow,
  Recap,
  RecapPoint,
  ResultRow,
  Results,
  Segment,
} from "./recap.ts";
export { recapMarkdown } from "./recap-markdown.ts";
export type { PerPlant } from "./results.ts";
export { type SeasonBook, seasonBook } from "./season-book.ts";
export { seasonProblems } from "./season-problems.ts";
export { seedListCsv } from "./seed-list.ts";
export type { MeasureResult, TrialResult } from "./trial-results.ts";
