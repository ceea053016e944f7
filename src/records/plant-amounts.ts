/** Amounts with no name behind them, and measures of plants. */
import type { Line } from "./line.ts";
import { plainNouns, plantNouns } from "./plant-names.ts";
import type { Scan } from "./plant-scan.ts";
import type { Amount } from "./quantities.ts";

const notHeight = new Set("wide across diameter girth round circumference spread deep thick".split(" "));

/** An amount with no name behind it belongs to the item before it, when the clause says nothing else. */
export function strayAmount(scan: Scan, amount: Amount): boolean {
  const { line, at, read, kind } = scan;
  const item = read.items.at(-1);
  if (kind === "thinned" && item !== undefined && /^(?:left|remaining)$/.test(line.lower(amount.end))) {
    read.leftOver = amount;
    return taken(scan, at, amount.end + 1, amount);
  }
  const end = afterStray(line, amount);
  // "day 9" is no count, and neither is the "a" of "a male one".
  const joined = scan.afterItem || read.items.length === 0 || /^(?:[,;:(x×]|all)$/.test(line.lower(at - 1));
  const article = /^an?$/.test(line.lower(at)) && amount.count !== undefined && amount.unit === undefined;
  const free = item === undefined ? read.loose === undefined : takes(item.amount, amount) && kind !== "thinned";
  if (!free || !joined || article || !standsAlone(scan, end, amount)) {
    scan.at = amount.end;
    scan.afterItem = false;
    scan.listOpen = read.items.length === 0;
    return true;
  }
  if (item === undefined) read.loose = amount;
  else item.amount = { ...item.amount, ...amount };
  const kept = plantNouns.has(line.lower(amount.end)) ? amount.end : end;
  return taken(scan, /^[x×]$/.test(line.lower(at - 1)) ? at - 1 : at, kept, amount, end);
}

/** Claims an amount that is only about right not at all: its words say more than the number. */
function taken(scan: Scan, from: number, claimed: number, amount: Amount, end = claimed): true {
  if (amount.loose !== true) scan.line.claim(from, claimed);
  // "Sungold x 4, Gardener's Delight x 3" goes on; after "…, 2.3 kg," come other words.
  if (/^[x×]$/.test(scan.line.lower(scan.at - 1))) scan.afterItem = true;
  scan.at = end;
  scan.listOpen = scan.read.items.length === 0;
  return true;
}

/** "12 of them", "20 tubers", "1.2 kg in all": the word after an amount that names nothing. */
function afterStray(line: Line, amount: Amount): number {
  let end = amount.end;
  if (plantNouns.has(line.lower(end)) || plainNouns.has(line.lower(end))) end += 1;
  else if (line.lower(end) === "of" && line.lower(end + 1) === "them") end += 2;
  if (line.lower(end) === "in" && /^(?:all|total)$/.test(line.lower(end + 1))) return end + 2;
  return /^(?:altogether|total)$/.test(line.lower(end)) ? end + 1 : end;
}

/** Whether nothing follows that makes the amount another's: "1.2 kg podded" is the crop's, "300 g each" is not. */
function standsAlone({ line, kind }: Scan, end: number, amount: Amount): boolean {
  const next = line.words[end];
  if (end >= line.end || next === undefined) return true;
  if (next.kind === "mark") return next.text !== "-" && next.text !== "/";
  // "5 in Long Bed", but not "two to a pot" and "one in each corner".
  if (/^(?:and|from|into|indoors)$/.test(next.lower)) return true;
  if (next.lower === "to") return kind === "lost" || kind === "moved" || kind === "gave away" || kind === "sold";
  if (next.lower === "in" || next.lower === "on") return !/^(?:each|every|a|an)$/.test(line.lower(end + 1));
  const weighed = amount.grams !== undefined || amount.litres !== undefined;
  return weighed && /^(?:podded|shelled|trimmed|cleaned|dried|fresh|untrimmed|topped|of)$/.test(next.lower);
}

/** Whether an item can take a second amount: a weight beside a count, never two weights. */
function takes(has: Amount | undefined, more: Amount): boolean {
  if (has === undefined) return true;
  if (more.count !== undefined) return has.count === undefined;
  return (
    (more.grams !== undefined && has.grams === undefined) || (more.litres !== undefined && has.litres === undefined)
  );
}

/** A measure that is only about right keeps its words, for the number alone says too much. */
function keepLoose(line: Line, from: number, end: number, amount: Amount): void {
  if (amount.loose !== true) line.claim(from, end);
}

/** A height, length or temperature; width and girth are no height and stay as detail. */
export function readMeasure(scan: Scan, amount: Amount): boolean {
  const { line, at, read, kind } = scan;
  scan.at = amount.end;
  scan.afterItem = false;
  if (kind !== "measured" && kind !== "soil test") return true;
  if (amount.celsius !== undefined) {
    if (read.celsius === undefined) {
      read.celsius = amount.celsius;
      keepLoose(line, at, amount.end, amount);
    }
    return true;
  }
  const what = line.lower(amount.end);
  const inWhat = what === "in" ? line.lower(amount.end + 1) : what;
  if (notHeight.has(inWhat)) return true;
  const item = read.items.at(-1);
  // "measured rain 12 mm" tells of no plant's height.
  if (item === undefined ? read.heightCm !== undefined || scan.passedOver : item.amount?.cm !== undefined) return true;
  if (item === undefined) read.heightCm = amount.cm;
  else item.amount = { ...item.amount, ...amount };
  const said = /^(?:tall|high|long)$/.test(what) ? 1 : what === "in" && /^(?:height|length)$/.test(inWhat) ? 2 : 0;
  keepLoose(line, at, amount.end + said, amount);
  scan.at = amount.end + said;
  scan.listOpen = true;
  scan.afterItem = item !== undefined;
  return true;
}
