/**
 * FCPXML 1.9, the oldest version whose files have their present form: an asset holds a media-rep. Times are fractions of a
 * second, and every edge is a whole picture of the sequence. Children stand in the order of the format's definition: note,
 * markers, chapters.
 */
import type { FrameRate } from "../../model.ts";
import type { Reel, Timeline, TimelineMark } from "./timeline.ts";

/** A gap's own time begins at an hour. */
const GAP_START = 3600;

export function finalCutXml({ name, rate, isDrop, clips, marks }: Timeline): string {
  const time = (frames: number, at: FrameRate = rate) =>
    frames === 0
      ? "0s"
      : at.den === 1 && frames % at.num === 0
        ? `${frames / at.num}s`
        : `${frames * at.den}/${at.num}s`;
  const reels = [
    ...new Map(clips.flatMap(({ reel }) => (reel === undefined ? [] : [[reel.file, reel] as const]))).values(),
  ];
  const first = reels[0];
  const formats = new Map<string, string>();
  const formatLines: string[] = [];
  const formatOf = (at: FrameRate, width: number, height: number) => {
    const key = `${at.num}/${at.den} ${width}x${height}`;
    const known = formats.get(key);
    if (known !== undefined) return known;
    const id = `f${formats.size + 1}`;
    formats.set(key, id);
    formatLines.push(
      `    <format id="${id}" frameDuration="${at.den}/${at.num}s" width="${width}" height="${height}"/>`,
    );
    return id;
  };
  const sequence = formatOf(rate, first?.width ?? 1920, first?.height ?? 1080);
  const assets = reels.map((reel, index) => {
    const { file, url, start, frames, hasSound, width = 1920, height = 1080 } = reel;
    const format = formatOf(reel.rate, width, height);
    return [
      `    <asset id="r${index + 1}" name="${xml(baseName(file))}" start="${time(start, reel.rate)}" duration="${time(frames, reel.rate)}" hasVideo="1"${hasSound ? ' hasAudio="1"' : ""} format="${format}">`,
      `      <media-rep kind="original-media" src="${xml(url)}"/>`,
      "    </asset>",
    ].join("\n");
  });
  const asset = (reel: Reel) => `r${reels.findIndex(({ file }) => file === reel.file) + 1}`;
  let at = 0;
  const spine = clips.map((clip) => {
    const offset = at;
    at += clip.frames;
    const inClip = marks.filter((mark) => mark.at >= offset && mark.at < at);
    const note = clip.note === "" ? [] : [`          <note>${xml(clip.note)}</note>`];
    const edges = `name="${xml(clip.name)}" offset="${time(offset)}"`;
    if (clip.reel === undefined) {
      const begins = GAP_START * rate.num;
      const start = Math.ceil(begins / rate.den);
      const inside = markers(inClip, (mark) => time(start + mark.at - offset), time);
      return [
        `        <gap ${edges} start="${time(start)}" duration="${time(clip.frames)}">`,
        ...note,
        ...inside,
        "        </gap>",
      ];
    }
    const { reel } = clip;
    const begins = Math.round((reel.start * reel.rate.den * rate.num) / (reel.rate.num * rate.den));
    const start = begins + Math.round((clip.from * rate.num) / (rate.den * 1000));
    const inside = markers(inClip, (mark) => time(start + mark.at - offset), time);
    return [
      `        <asset-clip ref="${asset(reel)}" ${edges} start="${time(start)}" duration="${time(clip.frames)}">`,
      ...note,
      ...inside,
      "        </asset-clip>",
    ];
  });
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    "<!DOCTYPE fcpxml>",
    '<fcpxml version="1.9">',
    "  <resources>",
    ...formatLines,
    ...assets,
    "  </resources>",
    `  <library><event name="${xml(name)}"><project name="${xml(name)}">`,
    `    <sequence format="${sequence}" duration="${time(at)}" tcStart="0s" tcFormat="${isDrop ? "DF" : "NDF"}"><spine>`,
    ...spine.flat(),
    "    </spine></sequence>",
    "  </project></event></library>",
    "</fcpxml>",
    "",
  ].join("\n");
}

/** What is to be looked at is a to-do; stops are chapters, which stand behind all other marks. */
function markers(
  marks: readonly TimelineMark[],
  start: (mark: TimelineMark) => string,
  time: (frames: number) => string,
): readonly string[] {
  const line = (mark: TimelineMark, tag: string, more: string) =>
    `          <${tag} start="${start(mark)}" duration="${time(1)}" value="${xml(mark.name)}"${more}/>`;
  const open = new Set<TimelineMark["kind"]>(["check", "name", "question"]);
  return [
    ...marks
      .filter(({ kind }) => kind !== "stop")
      .map((mark) =>
        line(
          mark,
          "marker",
          `${open.has(mark.kind) ? ' completed="0"' : ""} note="${xml([mark.text, mark.note].filter((part) => part !== "").join(" · "))}"`,
        ),
      ),
    ...marks.filter(({ kind }) => kind === "stop").map((mark) => line(mark, "chapter-marker", "")),
  ];
}

function baseName(file: string): string {
  return file.split("/").at(-1) ?? file;
}

/** Characters that XML 1.0 has not are left out. */
function xml(text: string): string {
  return text
    .replace(/[^\t\n\r\x20-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, "")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;")
    .replace(/[\n\r\t]+/g, " ");
}
