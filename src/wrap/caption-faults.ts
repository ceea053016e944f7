/** What is wrong with a caption file, and its captions put in order of time whatever was wrong with them. */
import type { Place, Problem } from "../model.ts";
import { problem, type RuleName } from "../records/index.ts";
import { type CaptionFormat, type ReadTime, readTime } from "./caption-times.ts";
import type { Captions, Cue, TextPiece } from "./read-captions.ts";

/** A caption as it was found, before the times of its neighbours are known. */
export interface Draft {
  readonly start?: ReadTime | undefined;
  readonly end?: ReadTime | undefined;
  readonly text: string;
  readonly pieces: readonly TextPiece[];
  readonly settings: string;
  readonly place: Place;
}

/** How long a cue is shown when its own end cannot be right: common practice for a short line. */
export const SHORT_CUE = 2000;

export function inOrder(drafts: readonly Draft[], faults: Faults, lines: number): Pick<Captions, "cues" | "problems"> {
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
  const cues: Cue[] = drafts.map(({ start, end, text, pieces, settings, place }, index) => {
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
    return { start: begins, end: ends, text, pieces, settings, place };
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

/** What players read of a time in WebVTT ("collect a WebVTT timestamp"); a caption of any other they leave out. */
const shownByPlayers = /^(?:\d+:[0-5]\d|[0-5]\d):[0-5]\d\.\d{3}(?!\d)/;

/** At most three of each fault are listed one by one; a file made wrong throughout is told once how often. */
export class Faults {
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
      const isLost = format === "vtt" && !shownByPlayers.test(text);
      this.add(
        "captions/time",
        line,
        Math.max(1, column),
        `The time "${text}" ${time?.fault ?? "cannot be read"}.`,
        `Write it as ${example}${isLost ? "; until then players leave this caption out" : ""}.`,
      );
    }
    return time;
  }

  stray(line: number, what: string): void {
    this.add(
      "captions/stray-text",
      line,
      1,
      what,
      "Take away the empty line above it, if it belongs to that caption; it stays in the corrected copy as it is.",
    );
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
