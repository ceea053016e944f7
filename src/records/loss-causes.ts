/** Why plants were lost: "to leek moth", "by frost", "because of the heat", or a pest alone after a comma. */
import type { Line } from "./line.ts";
import { bareBedAt } from "./place-words.ts";
import type { Scan } from "./plant-scan.ts";

/** Causes that may follow a loss after a comma alone: "lost 4 lettuces, slugs". */
export const causeWords: ReadonlySet<string> = new Set(
  (
    "slug slugs snail snails frost blight rust mildew moth fly rot canker virus mosaic aphids blackfly greenfly whitefly caterpillars pigeon pigeons " +
    "mice mouse rabbit rabbits deer squirrel squirrels badger badgers drought heat wind storm hail flood damping rats voles vole moles gophers " +
    "groundhog birds blackbirds sparrows pheasants cat cats dog fox foxes wireworm cutworm chafer weevil weevils beetle beetles hornworm hornworms psyllid psyllids thrips mites whiteflies botrytis " +
    "wilt clubroot eelworm borer bug bugs neglect underwatering overwatering cold"
  ).split(" "),
);

/** "to leek moth", "because of frost", and after a comma a pest or disease alone. */
export function readCause(scan: Scan): boolean {
  const { line, at, read } = scan;
  if (scan.kind !== "lost" || read.cause !== undefined) return false;
  const lower = line.lower(at);
  const second = line.lower(at + 1);
  let from: number | undefined;
  if (/^(?:to|from|after|by)$/.test(lower)) from = at + 1;
  else if ((lower === "because" && second === "of") || (lower === "due" && second === "to")) from = at + 2;
  const clause = line.words[at - 1]?.text;
  // "lost 3 Mortgage Lifter, damped off" tells the disease by its verb.
  if (lower === "damped" && second === "off") {
    read.cause = "damping off";
    line.claim(at, at + 2);
    scan.at = at + 2;
    return true;
  }
  if (from === undefined && (clause === "," || clause === "(" || clause === ":") && read.items.length > 0) {
    const end = causeEnd(line, at);
    // "slugs everywhere" and "late frost" are causes, "mind the slugs" is advice.
    if (causeWords.has(lower) || (end - at <= 2 && causeWords.has(line.lower(end - 1)))) from = at;
  }
  if (from === undefined) return false;
  const end = causeEnd(line, from);
  const cause = line.slice(from, end);
  if (cause === "") return false;
  read.cause = cause;
  line.claim(at, end);
  scan.at = end;
  scan.afterItem = false;
  scan.listOpen = read.items.length === 0;
  return true;
}

/** The end of words that say by what, or by whom: the next comma, or the bed. */
export function causeEnd(line: Line, from: number): number {
  let at = from;
  while (at < line.end) {
    const word = line.words[at];
    if (word === undefined || /^[,;:().–—]$/.test(word.text)) break;
    if ((word.lower === "in" || word.lower === "from") && bareBedAt(line, at + 1)) break;
    at += 1;
  }
  return at;
}
