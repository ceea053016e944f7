/** Everything a wrap is written as, by file name: reports, captions, what goes to the platform, what goes to the editor. */
import { stringify } from "csv-stringify/sync";
import type { FrameRate, Garden } from "../model.ts";
import {
  beforeUploadPage,
  type ClipLog,
  type ClipNames,
  captionsToFill,
  chapterCues,
  chapterLines,
  clipRows,
  editList,
  editLog,
  filmTimeline,
  finalCutXml,
  markList,
  marksOf,
  openTimeline,
  type PlateFrame,
  plainCaptions,
  roughCut,
  shortRows,
  type Timeline,
  takeRows,
  titleLines,
  type WrapMade,
  wrapReport,
} from "../wrap/index.ts";

export interface WrapFilesRequest {
  readonly made: WrapMade;
  readonly garden: Garden;
  /** Without it no timeline is made. */
  readonly rate?: FrameRate | undefined;
  readonly clips?: ClipLog["clips"] | undefined;
  /** Pictures out of the film that are offered. */
  readonly plates: readonly PlateFrame[];
  /** Of a clip. */
  readonly url: (file: string) => string;
}

export function wrapFiles(request: WrapFilesRequest): ReadonlyMap<string, string> {
  return new Map([...reports(request), ...captions(request.made), ...forPlatforms(request), ...forEditors(request)]);
}

function reports({ made: { wrap }, garden, plates }: WrapFilesRequest): [string, string][] {
  return [
    ["wrap.md", wrapReport(wrap, garden, plates)],
    ["before-upload.md", beforeUploadPage(wrap)],
    ["wrap.json", json(wrap)],
    ["description.txt", wrap.description.text],
  ];
}

/** Each as long as garden.md wants it and there is something to say. */
function forPlatforms({ made: { wrap }, garden }: WrapFilesRequest): [string, string][] {
  const { pinnedComment, post, newsletter, shorts, titles } = wrap;
  const without = new Set(garden.settings.wrapWithout);
  const texts = [
    ["pinned comment", "pinned-comment.txt", pinnedComment],
    ["shorts", "shorts.csv", shorts.length === 0 ? undefined : csv(shortRows(shorts))],
    ["post", "post.txt", post],
    ["newsletter", "newsletter.txt", newsletter],
    ["titles", "titles.txt", titles.length === 0 ? undefined : titleLines(titles)],
    ["end cards", "end-cards.txt", wrap.endCards],
  ] as const;
  return texts.flatMap(([word, file, text]): [string, string][] =>
    text === undefined || without.has(word) ? [] : [[file, text]],
  );
}

function captions({ wrap, corrected, clean, format }: WrapMade): [string, string][] {
  const files: [string, string][] = [];
  if (wrap.chapters.length > 0)
    files.push(
      ["chapters.txt", `${chapterLines(wrap.chapters).join("\n")}\n`],
      ["chapters.vtt", plainCaptions(chapterCues(wrap.chapters), "vtt")],
    );
  if (corrected !== undefined)
    files.push(
      [`captions.corrected.${format === "timed text" ? "txt" : format}`, corrected],
      ["transcript.txt", `${wrap.transcript.map(({ text }) => text).join("\n\n")}\n`],
    );
  if (clean !== undefined)
    files.push(
      ["captions.clean.vtt", plainCaptions(clean.cues, "vtt")],
      ["captions.clean.srt", plainCaptions(clean.cues, "srt")],
      ["captions.to-fill.vtt", captionsToFill(clean.cues)],
    );
  return files;
}

function forEditors({ made: { wrap }, garden, rate, clips, url }: WrapFilesRequest): [string, string][] {
  const title = (bed: string | undefined) => (bed === undefined ? "At no bed" : (garden.beds.get(bed)?.title ?? bed));
  const names: ClipNames = {
    stop: title,
    shot: (bed, shot) => wrap.coverage.shots.find((one) => one.bed === bed && one.id === shot)?.text,
  };
  const files: [string, string][] = [["edit-log.csv", csv(editLog(wrap, title, rate))]];
  const takes = takeRows(wrap, title);
  if (takes.length > 0) files.push(["takes.csv", csv(takes)]);
  if (clips !== undefined) files.push(["clips.csv", csv(clipRows(clips, names))]);
  if (rate === undefined) return files;
  if (wrap.length > 0) {
    const film = filmTimeline(wrap.title, wrap.length, marksOf(wrap, title), rate);
    files.push(...timelineFiles("edit-log", film), ["markers.edl", markList(film)]);
  }
  const cut = clips === undefined ? undefined : roughCut({ name: wrap.title, clips, names, url, rate });
  if (cut !== undefined && cut.clips.length > 0) files.push(...timelineFiles("rough-cut", cut));
  return files;
}

function timelineFiles(name: string, timeline: Timeline): [string, string][] {
  return [
    [`${name}.otio`, json(openTimeline(timeline))],
    [`${name}.edl`, editList(timeline)],
    [`${name}.fcpxml`, finalCutXml(timeline)],
  ];
}

function json(value: object): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}

function csv(rows: readonly object[]): string {
  return stringify([...rows], { header: true, bom: true, escape_formulas: true });
}
