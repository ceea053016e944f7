/** Cues to a WebVTT or SubRip file. */
import { type CaptionFormat, writeTime } from "./caption-times.ts";

export interface CueToWrite {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  readonly settings?: string | undefined;
}

export function writeCaptions(cues: readonly CueToWrite[], format: CaptionFormat): string {
  const blocks = cues.map((cue, index) => {
    const times = `${writeTime(cue.start, format)} --> ${writeTime(Math.max(cue.end, cue.start + 1), format)}`;
    const settings = format === "vtt" && cue.settings !== undefined && cue.settings !== "" ? ` ${cue.settings}` : "";
    return `${format === "srt" ? `${index + 1}\n` : ""}${times}${settings}\n${payload(cue.text)}\n`;
  });
  return format === "vtt" ? `WEBVTT\n\n${blocks.join("\n")}` : blocks.join("\n");
}

/** Words that are plain text, as WebVTT writes them. */
export function plainCaptions(cues: readonly CueToWrite[], format: CaptionFormat): string {
  return writeCaptions(format === "vtt" ? cues.map((cue) => ({ ...cue, text: escaped(cue.text) })) : cues, format);
}

/** The same cut for another language: what is said as a note above each caption, and room for what it becomes. */
export function captionsToFill(cues: readonly CueToWrite[]): string {
  const blocks = cues.map(
    ({ start, end, text }) =>
      `NOTE ${payload(text).replaceAll("\n", " / ")}\n\n${writeTime(start, "vtt")} --> ${writeTime(end, "vtt")}\n\n`,
  );
  return `WEBVTT\n\n${blocks.join("\n")}`;
}

function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}

/** An arrow or an empty line inside the text would end the cue. */
function payload(text: string): string {
  return text
    .replaceAll("-->", "→")
    .split("\n")
    .filter((line) => line.trim() !== "")
    .join("\n");
}
