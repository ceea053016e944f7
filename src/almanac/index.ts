// Takes: places, days, weather files' text, and what bed records say of their size and surroundings.
// Gives: sun and light by the clock, weather and heat, how many plants a bed has room for.
// Never: touches the disk or the clock, or knows of tours and pages.
export * from "./bed-fit.ts";
export * from "./canning-facts.ts";
export * from "./canning-words.ts";
export * from "./crop-facts.ts";
export * from "./day-length.ts";
export * from "./frost-dates.ts";
export * from "./hazards/index.ts";
export * from "./heat-table.ts";
export * from "./heat-units.ts";
export * from "./light.ts";
export * from "./obstacles.ts";
export * from "./plant-yields.ts";
export * from "./rotation-facts.ts";
export * from "./soil-facts.ts";
export * from "./sun.ts";
export * from "./sun-hours.ts";
export * from "./weather-collector.ts";
export * from "./weather-files.ts";
export * from "./weather-series.ts";
export * from "./weather-span.ts";
export * from "./year-days.ts";
