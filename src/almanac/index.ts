// Takes: places, days, and what bed records say of their surroundings.
// Gives: sun and light by the clock.
// Never: touches the disk or the clock, or knows of tours and pages.
export * from "./light.ts";
export * from "./obstacles.ts";
export * from "./sun.ts";
