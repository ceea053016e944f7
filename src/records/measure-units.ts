/** The unit of measure behind a number, where it is one: "6 in apart" is a length and "6 in Long Bed" is not. */
import { isCapital, type Word } from "./line-words.ts";
import { type Unit, type UnitSystem, unitCalled } from "./units.ts";

/** After an inch written "in", which is also a preposition. */
const afterInches = new Set(
  "apart tall high long wide deep across spacing between round from diameter girth stems".split(" "),
);

export interface UnitRead {
  readonly unit: Unit;
  readonly end: number;
}

/** `system` decides what degrees are meant where no scale is named. */
export function measureUnitAt(words: readonly Word[], at: number, system: UnitSystem = "metric"): UnitRead | undefined {
  const word = words[at];
  if (word === undefined) return undefined;
  if (word.text === "°" || word.lower === "degree" || word.lower === "degrees" || word.lower === "deg") {
    const scale = words[at + 1];
    const unit = scale === undefined ? undefined : unitCalled(scale.lower);
    if (unit?.dimension === "temperature") return { unit, end: at + 2 };
    return { unit: unitCalled(system === "us" ? "f" : "c") as Unit, end: at + 1 };
  }
  const unit = unitCalled(word.lower);
  if (unit === undefined) return undefined;
  // "12 C" is a temperature only in capitals; "6 in Long Bed" is no length.
  if (unit.dimension === "temperature")
    return word.text === word.text.toUpperCase() ? { unit, end: at + 1 } : undefined;
  if (word.lower === "in" && !isInch(words, at)) return undefined;
  if (word.text === "'" || word.text === "’" || word.text === '"' || word.text === "”") {
    if (words[at - 1]?.end !== word.start) return undefined;
  }
  const point = words[at + 1];
  const pointed =
    point?.text === "." &&
    point.start === word.end &&
    (word.lower === "in" || word.lower === "lb" || word.lower === "oz" || word.lower === "ft");
  return { unit, end: pointed && words[at + 2] !== undefined ? at + 2 : at + 1 };
}

/** "6 in apart" is a length and "6 in Long Bed" none: what follows decides, and capitals begin a name. */
function isInch(words: readonly Word[], at: number): boolean {
  const [before, word, after] = [words[at - 1], words[at], words[at + 1]];
  if (before !== undefined && word !== undefined && before.end === word.start) return true;
  if (after === undefined) return true;
  if (after.kind === "mark") return !/^['‘"“(]$/.test(after.text);
  return !isCapital(after) && (afterInches.has(after.lower) || after.lower === "x");
}
