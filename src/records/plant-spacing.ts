/** Distances between plants, and how many are left after thinning. */
import type { Line } from "./line.ts";
import { mayBeginNumber, numberAt } from "./numbers.ts";
import { plainNouns } from "./plant-names.ts";
import type { PlantLine, Scan } from "./plant-scan.ts";
import { amountAt } from "./quantities.ts";

const afterSpacing = new Set(["apart", "spacing", "spacings", "centres", "centers"]);

/** "20 cm apart", "spaced 9 in", "at 30 cm", "20 x 30 cm apart"; the distance of rows from each other is kept as detail. */
export function readSpacing(scan: Scan): boolean {
  const { line, at } = scan;
  const lower = line.lower(at);
  const lead =
    lower === "at" || lower === "every" || lower === "@"
      ? 1
      : lower === "spaced"
        ? line.lower(at + 1) === "at"
          ? 2
          : 1
        : 0;
  if (scan.kind === "measured") return false;
  const spaced = spacingAt(line, at + lead);
  if (spaced === undefined) return false;
  const next = line.lower(spaced.end);
  const between = next === "between" && /^(?:plants|them|each|seeds|seedlings)$/.test(line.lower(spaced.end + 1));
  if (!afterSpacing.has(next) && !between && lead === 0) return false;
  if (/^(?:rows|row|lines)$/.test(line.lower(at - 1)) || !takesSpacing(scan.read)) return false;
  const end = between ? spaced.end + 2 : afterSpacing.has(next) ? spaced.end + 1 : spaced.end;
  setSpacing(scan.read, spaced.cm);
  line.claim(at, end);
  scan.at = end;
  scan.afterItem = false;
  scan.listOpen = false;
  return true;
}

function takesSpacing(read: PlantLine): boolean {
  return read.items.length === 0
    ? read.spacingCm === undefined
    : read.items.some((item) => item.spacingCm === undefined);
}

/** A distance belongs to the items before it that have none; said first, it belongs to all. */
function setSpacing(read: PlantLine, cm: number): void {
  if (read.items.length === 0) read.spacingCm = cm;
  for (const item of read.items) item.spacingCm ??= cm;
}

function spacingAt(line: Line, at: number): { readonly cm: number; readonly end: number } | undefined {
  const word = line.words[at];
  if (word === undefined || !mayBeginNumber(word)) return undefined;
  const amount = amountAt(line.words, at, line.system);
  if (amount?.cm !== undefined) return { cm: amount.cm, end: amount.end };
  const first = numberAt(line.words, at);
  if (
    first === undefined ||
    (line.lower(first.end) !== "x" && line.lower(first.end) !== "by" && line.lower(first.end) !== "×")
  )
    return undefined;
  const second = numberAt(line.words, first.end + 1);
  const both = amountAt(line.words, first.end + 1, line.system);
  if (second === undefined || both?.cm === undefined || second.value === 0) return undefined;
  return { cm: (both.cm / second.value) * first.value, end: both.end };
}

/** "thinned Nantes to 10" leaves ten; "to 10 cm" sets a distance. */
export function readThinnedTo(scan: Scan): boolean {
  const { line, at, read } = scan;
  if (scan.kind !== "thinned" || line.lower(at) !== "to") return false;
  const amount = amountAt(line.words, at + 1, line.system);
  const every =
    amount !== undefined && line.lower(amount.end) === "every"
      ? amountAt(line.words, amount.end + 1, line.system)
      : undefined;
  if (every?.cm !== undefined) {
    // "to one every 10 cm"
    setSpacing(read, every.cm);
    line.claim(at, every.end);
    scan.at = every.end;
    scan.listOpen = read.items.length === 0;
    return true;
  }
  if (amount?.cm !== undefined) setSpacing(read, amount.cm);
  else if (amount?.count !== undefined) read.leftOver = amount;
  else return false;
  let end = amount.end;
  if (afterSpacing.has(line.lower(end)) || plainNouns.has(line.lower(end))) end += 1;
  line.claim(at, end);
  scan.at = end;
  scan.afterItem = false;
  scan.listOpen = read.items.length === 0;
  return true;
}
