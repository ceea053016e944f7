/**
 * Lines that keep what was said: work done, things to do, promises, questions. Names and beds are found in the words,
 * and the words stay whole.
 */
import { monthNumber, monthOf, yearOf } from "../calendar.ts";
import type { Day, EventKind } from "../model.ts";
import { type DueDay, dueDay } from "./due-day.ts";
import type { Line } from "./line.ts";
import { plantIn, takePlant } from "./plant-names.ts";

export interface SaidPlant {
  readonly variety?: string | undefined;
  readonly crop?: string | undefined;
}

/** What such a line says. */
export interface SaidLine {
  readonly what: string;
  readonly plants: readonly SaidPlant[];
  readonly beds: readonly string[];
  readonly gear?: string | undefined;
  readonly due?: string | undefined;
}

/** Reads the words from `from` on; of "did" lines that begin with the work itself, `from` is that word. */
export function readSaid(line: Line, from: number): SaidLine {
  const end = lastClauses(line, from);
  const found = bedsIn(line, from, line.end);
  return {
    what: line.slice(from, end.what),
    plants: end.only ?? plantsIn(line, from, end.what),
    beds: end.bed === undefined ? found : [end.bed],
    gear: gearIn(line, from, end.what),
  };
}

/**
 * The day in a "to do" or "promised" line: between the verb and its colon ("to do by Friday: …"), else in the words
 * themselves ("show the leeks again in July"), which keep it.
 */
export function readTask(line: Line, from: number, kind: EventKind): SaidLine {
  const colon = headColon(line, from);
  const takesDay = kind === "to do" || kind === "promised";
  const head = colon === undefined ? "" : line.slice(from, colon);
  // "Promised in July: …" tells in August when it was promised, not by when.
  const past = kind === "promised" && saysWhenPromised(head, line.context.note.day);
  const inHead =
    !past && (takesDay || kind === "plan") && head !== ""
      ? dueDay(head, line.context.note.day, line.context)
      : undefined;
  const hasHead = colon !== undefined && (past || inHead !== undefined);
  const said = readSaid(line, hasHead ? colon + 1 : afterColon(line, from));
  if (inHead !== undefined) return { ...said, due: inHead.day };
  const inWords = takesDay ? dueDay(said.what, line.context.note.day, line.context) : undefined;
  if (inWords === undefined) return said;
  const what = withoutDue(said.what, inWords, kind);
  return { ...said, what: what === "" ? said.what : what, due: inWords.day };
}

/** "to do by Friday net the brassicas" lacks its colon; "show the garlic by Sunday" is a promise to show the garlic. */
function withoutDue(what: string, { start, end }: DueDay, kind: EventKind): string {
  if (start === 0) return what.slice(end).replace(/^[\s,:–-]+/, "");
  const isLast = /^[\s.!]*$/.test(what.slice(end));
  // "By the end of the season" says more than its last day.
  const isDay = /^(?:by|before|until|till)\b.*(?:\d|day\b|tomorrow)/i.test(what.slice(start, end));
  if (kind !== "promised" || !isLast || !isDay) return what;
  return what.slice(0, start).replace(/(?<![\s,:–-])[\s,:–-]+$/, "");
}

/** "Promised in July: …", written in July or after it, says when it was promised, and not by when it is due. */
function saysWhenPromised(head: string, noteDay: Day): boolean {
  const [, month, year] = /^\s*(?:back )?in ([a-z]{3,9})(?: (\d{4}))?\s*$/i.exec(head) ?? [];
  const number = monthNumber((month ?? "").toLowerCase());
  if (number === undefined) return false;
  return year === undefined ? number <= monthOf(noteDay) : Number(year) <= yearOf(noteDay);
}

/** The colon of "to do by 20 June: …", looked for in the first few words only. */
function headColon(line: Line, from: number): number | undefined {
  for (let at = from; at < Math.min(line.end, from + 9); at++) {
    if (line.words[at]?.text === ":") return at;
  }
  return undefined;
}

/** Past the colon, and past the "to" of "promised to show the leeks". */
function afterColon(line: Line, from: number): number {
  return line.words[from]?.text === ":" || line.lower(from) === "to" ? from + 1 : from;
}

/** ", in Long Bed" and ", only Black Beauty" at the end say where and which, and are no part of what was said. */
function lastClauses(
  line: Line,
  from: number,
): { what: number; bed?: string | undefined; only?: readonly SaidPlant[] | undefined } {
  let what = line.end;
  let bed: string | undefined;
  const comma = lastComma(line, from, what);
  if (comma !== undefined && line.lower(comma + 1) === "in") {
    const at = line.lower(comma + 2) === "the" ? comma + 3 : comma + 2;
    const found = line.names.at("bed", line.words, at);
    if (found?.end === what) [bed, what] = [found.id, comma];
  }
  const before = lastComma(line, from, what);
  if (before === undefined || line.lower(before + 1) !== "only") return { what, bed };
  const plant = namedOnly(line, before + 2, what);
  return plant === undefined ? { what, bed } : { what: before, bed, only: [plant] };
}

/** A plant that is the whole of these words, in quotation marks where no file describes it. */
function namedOnly(line: Line, from: number, end: number): SaidPlant | undefined {
  const plant = line.names.plantAt(line.words, from);
  if (plant?.end === end) return { variety: plant.variety, crop: plant.crop };
  if (!/^["“]$/.test(line.lower(from))) return undefined;
  const named = plantIn(line, from, end, "did", true);
  return named?.title !== undefined && named.end === end ? takePlant(line, named) : undefined;
}

function lastComma(line: Line, from: number, end: number): number | undefined {
  for (let at = end - 1; at > from; at--) if (line.words[at]?.text === ",") return at;
  return undefined;
}

/** Every plant in a stretch of words, each once. */
function plantsIn(line: Line, from: number, end: number): SaidPlant[] {
  const plants: SaidPlant[] = [];
  let bedBefore = false;
  for (let at = from; at < end; at++) {
    // "fed tomatoes with comfrey" tells of tomatoes, "mulched Long Bed, manure for the squash" of the bed.
    if (/^(?:with|using)$/.test(line.lower(at)) || (line.lower(at) === "w" && line.lower(at + 1) === "/")) break;
    if ((plants.length > 0 || bedBefore) && line.lower(at) === "for") break;
    const found = line.names.plantAt(line.words, at);
    const bed = line.names.at("bed", line.words, at);
    if (bed !== undefined && (found === undefined || bed.end > found.end)) {
      bedBefore = true;
      at = bed.end - 1;
      continue;
    }
    if (found === undefined || found.end > end) continue;
    at = found.end - 1;
    if (plants.some((plant) => plant.variety === found.variety && plant.crop === found.crop)) continue;
    plants.push({ variety: found.variety, crop: found.crop });
  }
  return plants;
}

/** Every bed in a stretch of words, each once; a site stands for all its beds. */
function bedsIn(line: Line, from: number, end: number): string[] {
  const beds: string[] = [];
  for (let at = from; at < end; at++) {
    const bed = line.names.at("bed", line.words, at);
    const site = line.names.at("site", line.words, at);
    const found = bed === undefined || (site !== undefined && site.end > bed.end) ? site : bed;
    const plant = found === undefined ? undefined : line.names.plantAt(line.words, at);
    if (found === undefined || found.end > end || (plant !== undefined && plant.end > found.end)) continue;
    at = found.end - 1;
    for (const id of found === site ? line.names.bedsOfSite(found.id) : [found.id])
      if (!beds.includes(id)) beds.push(id);
  }
  return beds;
}

function gearIn(line: Line, from: number, end: number): string | undefined {
  for (let at = from; at < end; at++) {
    const gear = line.names.at("gear", line.words, at);
    if (gear !== undefined && gear.end <= end) return gear.id;
  }
  return undefined;
}
