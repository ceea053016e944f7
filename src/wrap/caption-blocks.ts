/**
 * WebVTT, SubRip and SBV: a time line and the text below it. WebVTT's blocks are taken apart as the specification has it
 * (W3C, webvtt1, 6.1 "WebVTT parser algorithm", "collect a WebVTT block"), but a caption whose times are wrong is kept.
 */
import { type Draft, Faults, inOrder } from "./caption-faults.ts";
import { type CaptionFormat, readTime } from "./caption-times.ts";
import type { Captions, TextPiece } from "./read-captions.ts";

export const vttHeader = /^WEBVTT(?:[ \t].*)?$/;

const ARROW = "-->";

export function readBlocks(file: string, lines: readonly string[], format: CaptionFormat): Captions {
  const faults = new Faults(file);
  const found = format === "vtt" ? vttBlocks(lines, faults) : srtBlocks(lines, faults);
  const drafts = found.map(({ time, to }) => draft(file, lines, time, to, format, faults));
  return { file, format, ...inOrder(drafts, faults, lines.length) };
}

/** A caption's lines, from 0: its times, and after the last of its text. */
interface Block {
  readonly time: number;
  readonly to: number;
}

function vttBlocks(lines: readonly string[], faults: Faults): readonly Block[] {
  const found: Block[] = [];
  let at = 0;
  if (vttHeader.test(lines[0] ?? "")) {
    // What stands right below the header is a part of it.
    for (at = 1; at < lines.length && lines[at] !== "" && !lines[at]?.includes(ARROW); ) at += 1;
  } else {
    faults.add(
      "captions/no-header",
      1,
      1,
      "This looks like WebVTT, but its first line is not WEBVTT.",
      "Make WEBVTT the first line, with an empty line after it.",
    );
  }
  while (at < lines.length) {
    if (lines[at] === "") {
      at += 1;
      continue;
    }
    const from = at;
    let time: number | undefined;
    for (; at < lines.length && lines[at] !== ""; at += 1) {
      if (!lines[at]?.includes(ARROW)) continue;
      // Only a block's first line, or its second below a name, holds times; any other begins the next block.
      if (at - from > 1 || time !== undefined) break;
      time = at;
    }
    if (time !== undefined) found.push({ time, to: at });
    else tellOfStray(lines[from] as string, from, found.length > 0, faults);
    // A block that another one follows at once: players show a number that was meant for that one.
    if (time !== undefined && lines[at]?.includes(ARROW))
      faults.add(
        "captions/no-empty-line",
        at + 1,
        1,
        "No empty line stands above these times.",
        "Put one there; a name or number right above them is shown as text of the caption before.",
      );
  }
  return found;
}

function tellOfStray(first: string, line: number, isAfterCue: boolean, faults: Faults): void {
  if (/^NOTE(?:[ \t]|$)/.test(first)) return;
  const isStyle = /^(?:STYLE|REGION|ATTRIBUTES)[ \t]*$/.test(first);
  if (isStyle && !isAfterCue) return;
  faults.stray(
    line + 1,
    isStyle
      ? `${first.trim()} after the first caption does nothing.`
      : "These words stand in no caption, so players show them nowhere, and they were not read as speech.",
  );
}

function srtBlocks(lines: readonly string[], faults: Faults): readonly Block[] {
  const found: Block[] = [];
  for (let at = 0; at < lines.length; at += 1) {
    if (!lines[at]?.includes(ARROW)) {
      const isNumber = lines[at + 1]?.includes(ARROW) === true;
      if (lines[at] === "" || isNumber) continue;
      const stray = at;
      while (at + 1 < lines.length && lines[at + 1] !== "" && !lines[at + 1]?.includes(ARROW)) at += 1;
      if (found.length > 0)
        faults.stray(stray + 1, "These words stand in no caption, and they were not read as speech.");
      continue;
    }
    let to = at + 1;
    while (to < lines.length && lines[to] !== "" && !lines[to]?.includes(ARROW)) to += 1;
    // A caption's number stands above the next time line when no empty line parts them.
    const isNumbered = lines[to]?.includes(ARROW) === true && /^\d+$/.test(lines[to - 1]?.trim() ?? "");
    found.push({ time: at, to: isNumbered && to - 1 > at ? to - 1 : to });
    at = to - 1;
  }
  return found;
}

function draft(
  file: string,
  lines: readonly string[],
  time: number,
  to: number,
  format: CaptionFormat,
  faults: Faults,
): Draft {
  const line = lines[time] as string;
  const arrow = line.indexOf(ARROW);
  const [endText = "", ...settings] = line
    .slice(arrow + 3)
    .trim()
    .split(/\s+/);
  const startText = line.slice(0, arrow).trim();
  if (format === "vtt" && !/\s-->\s/.test(line)) {
    faults.add(
      "captions/arrow",
      time + 1,
      arrow + 1,
      "The arrow has no space on each side.",
      "Write the times as 00:05.000 --> 00:06.000.",
    );
  }
  return {
    start: faults.time(startText, format, time + 1, line.indexOf(startText) + 1),
    end: faults.time(endText, format, time + 1, line.indexOf(endText, arrow) + 1),
    ...textOf(lines, time + 1, to),
    settings: settings.join(" "),
    place: { file, line: time + 1, column: 1 },
  };
}

function textOf(lines: readonly string[], from: number, to: number): Pick<Draft, "text" | "pieces"> {
  const pieces: TextPiece[] = [];
  let at = 0;
  for (let line = from; line < to; line += 1) {
    pieces.push({ at, line, column: 0 });
    at += (lines[line] as string).length + 1;
  }
  return { text: lines.slice(from, to).join("\n"), pieces };
}

/** "0:00:01.000,0:00:03.500" */
export const sbvTimes = /^(\d+:\d{2}:\d{2}\.\d{3}),(\d+:\d{2}:\d{2}\.\d{3})$/;

/** SBV as video sites export it: two times on a line, text below, an empty line. */
export function readSbv(file: string, lines: readonly string[]): Captions {
  const faults = new Faults(file);
  const drafts: Draft[] = [];
  for (let at = 0; at < lines.length; at += 1) {
    const times = sbvTimes.exec((lines[at] as string).trim());
    if (times === null) {
      if (lines[at] !== "") faults.stray(at + 1, "These words stand in no caption, and they were not read as speech.");
      continue;
    }
    let to = at + 1;
    while (to < lines.length && lines[to] !== "") to += 1;
    const ms = (text: string | undefined) => ({ ms: readTime(text ?? "", "vtt")?.ms ?? 0 });
    drafts.push({
      start: ms(times[1]),
      end: ms(times[2]),
      ...textOf(lines, at + 1, to),
      settings: "",
      place: { file, line: at + 1, column: 1 },
    });
    at = to;
  }
  return { file, format: "sbv", ...inOrder(drafts, faults, lines.length) };
}
