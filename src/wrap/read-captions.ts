/**
 * WebVTT, SubRip and plain timed text to cues. Written here because the caption parsers to be had drop a cue whose times
 * are wrong without a word; here every cue that was begun is kept, and what was wrong with it is said.
 */
import type { Place, Problem } from "../model.ts";
import { problem, type RuleName } from "../records/index.ts";
import { type CaptionFormat, type ReadTime, readTime } from "./caption-times.ts";

export interface Cue {
  /** Milliseconds into the film. */
  readonly start: number;
  readonly end: number;
  /** Text as the file has it, tags and line breaks included. */
  readonly text: string;
  /** Settings after a WebVTT time line: "align:start line:90%". */
  readonly settings: string;
  readonly place: Place;
}

export interface Captions {
  readonly file: string;
  readonly format: CaptionFormat | "timed text";
  /** In order of start; cues that start together keep the file's order. */
  readonly cues: readonly Cue[];
  readonly problems: readonly Problem[];
}

/** How long a cue is shown when its own end cannot be right: common practice for a short line. */
const SHORT_CUE = 2000;

export function readCaptions(file: string, text: string): Captions {
  const lines = text.split("\n");
  if (/^WEBVTT(?:[ \t].*)?$/.test(lines[0] ?? "")) return blocks(file, lines, "vtt");
  const arrow = lines.find((line) => line.includes("-->"));
  if (arrow === undefined) return timedText(file, lines);
  return blocks(file, lines, /\d[.]\d+\s*-->/.test(arrow) ? "vtt" : "srt");
}

function blocks(file: string, lines: readonly string[], format: CaptionFormat): Captions {
  const found: Draft[] = [];
  const faults = new Faults(file);
  if (format === "vtt" && !/^WEBVTT(?:[ \t].*)?$/.test(lines[0] ?? "")) {
    faults.add(
      "captions/no-header",
      1,
      1,
      "This looks like WebVTT, but its first line is not WEBVTT.",
      "Make WEBVTT the first line, with an empty line after it.",
    );
  }
  for (let at = 0; at < lines.length; at += 1) {
    const line = lines[at] as string;
    if (/^(NOTE|STYLE|REGION)\b/.test(line) && format === "vtt" && !line.includes("-->")) {
      while (at + 1 < lines.length && lines[at + 1] !== "") at += 1;
      continue;
    }
    const arrow = line.indexOf("-->");
    if (arrow < 0) continue;
    const body: string[] = [];
    let next = at + 1;
    while (next < lines.length && lines[next] !== "" && !(lines[next] as string).includes("-->")) {
      body.push(lines[next] as string);
      next += 1;
    }
    // A cue's number or name stands above the next time line when no empty line parts them.
    if (next < lines.length && (lines[next] as string).includes("-->") && body.length > 0) {
      if (/^\d+$/.test((body.at(-1) as string).trim())) body.pop();
    }
    const [endText = "", ...settings] = line
      .slice(arrow + 3)
      .trim()
      .split(/\s+/);
    const startText = line.slice(0, arrow).trim();
    if (format === "vtt" && !/\s-->\s/.test(line)) {
      faults.add(
        "captions/arrow",
        at + 1,
        arrow + 1,
        "The arrow has no space on each side.",
        "Write the times as 00:05.000 --> 00:06.000.",
      );
    }
    const start = faults.time(startText, format, at + 1, line.indexOf(startText) + 1);
    const end = faults.time(endText, format, at + 1, line.indexOf(endText, arrow) + 1);
    found.push({
      start,
      end,
      text: body.join("\n"),
      settings: settings.join(" "),
      place: { file, line: at + 1, column: 1 },
    });
    at = next - 1;
  }
  return { file, format, ...inOrder(found, faults, lines.length) };
}

interface Draft {
  readonly start?: ReadTime | undefined;
  readonly end?: ReadTime | undefined;
  readonly text: string;
  readonly settings: string;
  readonly place: Place;
}

/** A time at the start of each paragraph: "1:05 and this is the bean row" or "[00:01:05] …". */
function timedText(file: string, lines: readonly string[]): Captions {
  const found: { start: ReadTime; text: string[]; place: Place }[] = [];
  lines.forEach((line, index) => {
    const begun = /^[[(]?((?:\d{1,9}:)?\d{1,2}:\d{2}(?:[.,]\d+)?)[\])]?(?=(\s*))\2[-–:]?(.*)$/s.exec(line.trim());
    const [hours, minutes, seconds] =
      begun === null
        ? []
        : [...Array(3 - (begun[1] as string).split(":").length).fill("0"), ...(begun[1] as string).split(":")].map(
            (part) => Number(part.replace(",", ".")),
          );
    if (begun !== null && minutes !== undefined && seconds !== undefined && seconds < 60) {
      const ms = Math.round((((hours ?? 0) * 60 + minutes) * 60 + seconds) * 1000);
      found.push({ start: { ms }, text: [(begun[3] as string).trim()], place: { file, line: index + 1, column: 1 } });
    } else if (line.trim() !== "") found.at(-1)?.text.push(line.trim());
  });
  const drafts = found.map(({ start, text, place }, index) => ({
    start,
    end: { ms: found[index + 1]?.start.ms ?? start.ms + Math.max(SHORT_CUE, text.join(" ").length * 60) },
    text: text.filter((line) => line !== "").join("\n"),
    settings: "",
    place,
  }));
  return { file, format: "timed text", ...inOrder(drafts, new Faults(file), lines.length) };
}

function inOrder(drafts: readonly Draft[], faults: Faults, lines: number): Pick<Captions, "cues" | "problems"> {
  if (drafts.length === 0) {
    faults.add(
      "captions/none",
      Math.min(1, lines),
      1,
      "No caption was found in this file.",
      "Give a WebVTT or SRT file, or text with a time at the start of each paragraph.",
    );
  }
  let before = 0;
  const nextStarts = startsAfter(drafts);
  const cues: Cue[] = drafts.map(({ start, end, text, settings, place }, index) => {
    // A cue whose own times cannot be read is shown where its neighbours leave it.
    const begins = start?.ms ?? before;
    const nextStart = nextStarts[index];
    let ends = end?.ms ?? (nextStart !== undefined && nextStart > begins ? nextStart : begins + SHORT_CUE);
    if (ends <= begins) {
      if (end !== undefined && start !== undefined) {
        faults.add(
          "captions/end-before-start",
          place.line,
          1,
          "This caption ends before it begins.",
          "Give it an end after its start; it was kept with a short length.",
        );
      }
      ends =
        nextStart !== undefined && nextStart > begins ? Math.min(nextStart, begins + SHORT_CUE) : begins + SHORT_CUE;
    }
    if (begins < before) {
      faults.add(
        "captions/out-of-order",
        place.line,
        1,
        "This caption begins before the one above it.",
        "Sort the captions by time; they were read in order of time.",
      );
    }
    before = Math.max(before, begins);
    return { start: begins, end: ends, text, settings, place };
  });
  cues.sort((a, b) => a.start - b.start);
  return { cues, problems: faults.list() };
}

/** For each draft, the first start after it that could be read. */
function startsAfter(drafts: readonly Draft[]): readonly (number | undefined)[] {
  const after: (number | undefined)[] = new Array(drafts.length).fill(undefined);
  for (let index = drafts.length - 2; index >= 0; index -= 1) {
    after[index] = drafts[index + 1]?.start?.ms ?? after[index + 1];
  }
  return after;
}

/** At most three of each fault are listed one by one; a file made wrong throughout is told once how often. */
class Faults {
  private readonly problems: Problem[] = [];
  private readonly counts = new Map<string, number>();
  private readonly file: string;

  constructor(file: string) {
    this.file = file;
  }

  add(rule: RuleName, line: number, column: number, what: string, fix: string): void {
    const count = (this.counts.get(rule) ?? 0) + 1;
    this.counts.set(rule, count);
    if (count <= 3) this.problems.push(problem(rule, { file: this.file, line, column }, what, fix));
  }

  time(text: string, format: CaptionFormat, line: number, column: number): ReadTime | undefined {
    const time = readTime(text, format);
    if (time === undefined || time.fault !== undefined) {
      const example = format === "vtt" ? "00:01:05.000" : "00:01:05,000";
      this.add(
        "captions/time",
        line,
        Math.max(1, column),
        `The time "${text}" ${time?.fault ?? "cannot be read"}.`,
        `Write it as ${example}.`,
      );
    }
    return time;
  }

  list(): readonly Problem[] {
    return this.problems.map((problem, index) => {
      const count = this.counts.get(problem.rule) ?? 1;
      const lastOfRule = this.problems.findLastIndex(({ rule }) => rule === problem.rule) === index;
      return lastOfRule && count > 3
        ? { ...problem, what: `${problem.what} (${count - 3} more like this below.)` }
        : problem;
    });
  }
}
