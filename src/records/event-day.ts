/** The day a line's events happened on: the one it says, else its note's. */
import type { Day } from "../model.ts";
import type { Line } from "./line.ts";
import { lineDay, nearDayWithin } from "./line-day.ts";
import { lineProblem } from "./line-rules.ts";

/** The day said at the end of the line, else at the end of a clause that names what it tells of; else the note's. */
export function dayOfLine(line: Line, from: number): Day {
  const { note, monthFirst } = line.context;
  const noteDay = note.day;
  const atEnd = lineDay(line.words, from, line.end, noteDay, monthFirst);
  if (atEnd?.day !== undefined) {
    line.end = atEnd.from;
    return atEnd.day;
  }
  if (atEnd?.rule !== undefined) {
    line.problems.push(lineProblem(atEnd.rule, line.place, atEnd.what ?? "", atEnd.fix ?? ""));
    return noteDay;
  }
  const early = dayInFirstClause(line, from);
  if (early !== undefined) return early;
  let clause = from;
  for (let at = from; at < line.end; at++) {
    if (line.words[at]?.text !== ",") continue;
    // "planted 6 Crown Prince today, 90 cm apart", but not "…, hardened off on 3 May, row 2".
    const found = lineDay(line.words, clause, at, noteDay, monthFirst);
    if (found?.day !== undefined && found.from > clause && namesSomething(line, clause, found.from)) {
      line.claim(found.from, at);
      return found.day;
    }
    clause = at + 1;
  }
  return noteDay;
}

/** "planted yesterday: 12 Musselburgh", "planted on 3 May: …", "picked 1 kg Sungold this morning from Tunnel North". */
function dayInFirstClause(line: Line, from: number): Day | undefined {
  const { note, monthFirst } = line.context;
  const noteDay = note.day;
  let stop = from;
  while (stop < line.end && !/^[,;:(.]$/.test(line.words[stop]?.text ?? "")) stop += 1;
  const atHead = line.words[stop]?.text === ":" ? lineDay(line.words, from, stop, noteDay, monthFirst) : undefined;
  if (atHead?.day !== undefined && atHead.from === from) {
    line.claim(from, stop + 1);
    return atHead.day;
  }
  const near = nearDayWithin(line.words, from, stop, noteDay);
  if (near !== undefined) line.claim(near.from, near.end);
  return near?.day;
}

function namesSomething(line: Line, from: number, end: number): boolean {
  for (let at = from; at < end; at++) {
    if (line.names.plantAt(line.words, at) ?? line.names.at("bed", line.words, at)) return true;
  }
  return false;
}
