// Takes: the garden and its book.
// Gives: facts of plantings, each worked out once for every output, with the lines it rests on.
// Never does: touch the disk or the clock; word anything.
export { type Age, ageOf } from "./age.ts";
export type { Fact } from "./fact.ts";
export { type Ending, type Life, lifeOf, type Span } from "./life.ts";
export { type Maturity, maturityOf, type UsualMaturity, usualMaturityOf } from "./maturity.ts";
export { pickedOf } from "./picked.ts";
export { type Plants, plantsOf } from "./plants.ts";
export { type WhoseName, whoseName } from "./whose-name.ts";
