/**
 * Edit lists in the form of CMX 3600: one line an event with four timecodes, out exclusive, comments behind "*". The rate
 * stands nowhere in the form, so it is told in a comment. Marks come as "LOC" comments, and for programs that read them so as
 * events of one picture in a list of their own.
 */
import type { FrameRate } from "../../model.ts";
import { sayRate } from "../clips/clip-rows.ts";
import { countOf, framesIn, labelOfFrame } from "./timecode.ts";
import type { Timeline, TimelineMark } from "./timeline.ts";

/** Lists have three digits for their events. */
const MOST_EVENTS = 999;

/** Timelines usually begin at one hour. */
const hour = (rate: FrameRate, isDrop: boolean) => {
  const frames = countOf(rate) * 3600;
  return isDrop ? frames - (countOf(rate) / 15) * 54 : frames;
};

const colours: Readonly<Record<TimelineMark["kind"], string>> = {
  stop: "GREEN",
  shot: "CYAN",
  variety: "BLUE",
  promise: "YELLOW",
  question: "YELLOW",
  check: "RED",
  name: "MAGENTA",
};

function head({ name, rate, isDrop }: Timeline): string[] {
  return [
    `TITLE: ${plain(name)}`,
    `FCM: ${isDrop ? "DROP FRAME" : "NON-DROP FRAME"}`,
    `* PLOTREEL RATE ${sayRate(rate)}${isDrop ? " DF" : ""}`,
    "",
  ];
}

export function editList(timeline: Timeline): string {
  const { clips, marks, rate, isDrop } = timeline;
  const label = (frame: number) => labelOfFrame(frame, rate, isDrop);
  const lines = head(timeline);
  let at = hour(rate, isDrop);
  clips.slice(0, MOST_EVENTS).forEach(({ name, note, reel, from, frames }, index) => {
    // Source timecode as the file's own label, counted at the timeline's rate.
    const start =
      reel === undefined ? 0 : Math.round((reel.start * reel.rate.den * rate.num) / (reel.rate.num * rate.den));
    const first = start + framesIn(from + 1e-3, rate);
    const times = [first, first + frames, at, at + frames].map(label).join(" ");
    lines.push(
      `${String(index + 1).padStart(3, "0")}  ${reelName(reel?.file).padEnd(8)} V     C        ${times}`,
      `* FROM CLIP NAME: ${plain(reel === undefined ? name : (reel.file.split("/").at(-1) ?? name))}`,
    );
    if (reel !== undefined) lines.push(`* SOURCE FILE: ${plain(reel.file)}`);
    if (note !== "") lines.push(`* COMMENT: ${plain(`${name}; ${note}`)}`);
    for (const mark of marks.filter(
      (one) => one.at >= at - hour(rate, isDrop) && one.at < at - hour(rate, isDrop) + frames,
    ))
      lines.push(`* LOC: ${label(hour(rate, isDrop) + mark.at)} ${colours[mark.kind].padEnd(7)} ${plain(mark.name)}`);
    at += frames;
  });
  return `${lines.join("\n")}\n`;
}

const shades: Readonly<Record<TimelineMark["kind"], string>> = {
  stop: "Green",
  shot: "Cyan",
  variety: "Blue",
  promise: "Yellow",
  question: "Yellow",
  check: "Red",
  name: "Pink",
};

/** Each mark an event of one picture, with its colour, name and length on a line below. */
export function markList(timeline: Timeline): string {
  const { marks, rate, isDrop } = timeline;
  const label = (frame: number) => labelOfFrame(frame + hour(rate, isDrop), rate, isDrop);
  const lines = marks.slice(0, MOST_EVENTS).flatMap(({ at, frames, name, kind }, index) => {
    const [from, to] = [label(at), label(at + 1)];
    return [
      `${String(index + 1).padStart(3, "0")}  001      V     C        ${from} ${to} ${from} ${to}`,
      ` |C:ResolveColor${shades[kind]} |M:${plain(name).replaceAll("|", "/")} |D:${frames}`,
      "",
    ];
  });
  return `${[...head(timeline), ...lines].join("\n")}\n`;
}

/** At most eight of A-Z and 0-9; "AX" is a source of unknown reel. */
function reelName(file: string | undefined): string {
  const stem =
    file
      ?.split("/")
      .at(-1)
      ?.replace(/\.[^.]*$/, "") ?? "";
  return (
    plain(stem)
      .toUpperCase()
      .replace(/[^A-Z0-9]/g, "")
      .slice(0, 8) || "AX"
  );
}

/** Letters of ASCII: the form knows no others. */
function plain(text: string): string {
  return text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .replace(/[‘’]/g, "'")
    .replace(/[“”]/g, '"')
    .replace(/[–—]/g, "-")
    .replaceAll("…", "...")
    .replace(/[^\x20-\x7e]+/g, "?");
}
