/** The clip log as rows of a spreadsheet. */
import type { FrameRate } from "../../model.ts";
import { sayTime } from "../caption-times.ts";
import type { LoggedClip } from "./clip-log.ts";

export interface ClipRow {
  readonly file: string;
  readonly stop: string;
  readonly shot: string;
  readonly what: string;
  readonly take: string;
  readonly mark: string;
  readonly best: string;
  /** "2026-06-14 09:20:11" by the garden's clock. */
  readonly begins: string;
  /** "0:12.5" */
  readonly length: string;
  readonly rate: string;
  readonly camera: string;
  readonly within: string;
  readonly said: string;
  readonly sure: string;
}

/** How stops and shots are called. */
export interface ClipNames {
  stop(bed: string): string;
  shot(bed: string, shot: string): string | undefined;
}

export function clipRows(clips: readonly LoggedClip[], names: ClipNames): readonly ClipRow[] {
  return clips.map((clip) => ({
    file: clip.file,
    stop: clip.bed === undefined ? "" : names.stop(clip.bed),
    shot: clip.shot ?? "",
    what: clip.bed === undefined || clip.shot === undefined ? "" : (names.shot(clip.bed, clip.shot) ?? ""),
    take: clip.take === undefined ? "" : String(clip.take),
    mark: clip.mark ?? "",
    best: clip.isBest ? "best" : "",
    begins: clip.begins === undefined ? "" : new Date(clip.begins).toISOString().slice(0, 19).replace("T", " "),
    length: clip.length === undefined ? "" : `${sayTime(clip.length)}.${Math.floor((clip.length % 1000) / 100)}`,
    rate: `${clip.rate === undefined ? "" : sayRate(clip.rate)}${clip.isVariable ? " on average" : ""}`,
    camera: clip.camera,
    within: clip.within.map(({ bed, shot, at }) => `${names.stop(bed)} ${shot} until ${sayTime(at)}`).join("; "),
    said: clip.said ?? "",
    sure: clip.isSure ? "" : "not sure",
  }));
}

/** "29.97", "25" */
export function sayRate({ num, den }: FrameRate): string {
  return den === 1 ? String(num) : String(Math.round((num / den) * 1000) / 1000);
}
