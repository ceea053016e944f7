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

/** An arrow or an empty line inside the text would end the cue. */
function payload(text: string): string {
  return text
    .replaceAll("-->", "→")
    .split("\n")
    .filter((line) => line.trim() !== "")
    .join("\n");
}
