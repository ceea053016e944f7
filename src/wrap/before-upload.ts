/** The page before upload: what is still to be looked at before viewers see the film, each as a line with its time. */
import { fullStop, sayPlural } from "../language/index.ts";
import { sayTime } from "./caption-times.ts";
import type { CaptionTooFull } from "./captions-fit.ts";
import { captionLimits } from "./clean-captions.ts";
import type { Moment, UploadCheck, Wrap } from "./wrap.ts";

export interface BeforeUploadRequest {
  readonly wrap: Omit<Wrap, "beforeUpload">;
  readonly tooFull: readonly CaptionTooFull[];
  /** Captions of the clean set that go by too fast. */
  readonly fast: readonly Moment[];
  /** When the last caption ends, milliseconds, and whether somebody told how long the film is. */
  readonly captionsEnd: number;
  readonly isLengthKnown: boolean;
}

export function beforeUpload(request: BeforeUploadRequest): readonly UploadCheck[] {
  const { wrap } = request;
  return [
    check("Where things came from is said in the film", noticeLines(wrap)),
    check(
      "No private name is said aloud",
      wrap.privateAloud.map(({ time, name, why }) => `${time} ${name}, ${why}: cut it, or bleep it and its caption.`),
    ),
    check("Chapters keep the rules of video sites", chapterLines(wrap)),
    check("The description fits", descriptionLines(wrap)),
    check("Captions belong to this film and can be read", captionLines(request)),
    check(
      "Promises stand in the record",
      wrap.followUps
        .filter(({ recorded }) => !recorded)
        .map(({ number, time, what }) => `${number}. ${time} ${fullStop(what)}`),
    ),
    check("Nothing is left to shoot", [...wrap.coverage.toPickUp, ...reshootLine(wrap)]),
  ];
}

function reshootLine({ coverage: { reshoot } }: BeforeUploadRequest["wrap"]): readonly string[] {
  const count = sayPlural(reshoot.length, "shot", "shots");
  return reshoot.length === 0 ? [] : [`${count} to go back for, by bed and importance: they stand in \`wrap.md\`.`];
}

function check(what: string, lines: readonly string[]): UploadCheck {
  return { what, isDone: lines.length === 0, lines };
}

function noticeLines({ noticesSpoken, disclosures, captions }: Omit<Wrap, "beforeUpload">): readonly string[] {
  const asked = disclosures.flatMap(({ warning }) => warning ?? []);
  // What was said nobody knows without captions.
  const silent = captions === undefined ? [] : noticesSpoken.filter(({ spoken }) => spoken === undefined);
  return [
    ...silent.map(({ thing, shown, unclear }) => {
      if (shown === undefined)
        return `${thing}: in the film and never named, so nothing says how it came to you. Show it on the picture.`;
      const said =
        unclear === undefined
          ? "nothing near it says how it came to you"
          : `"${unclear}" is the only word for how it came to you, and regulators call that unclear`;
      return `${thing}: named at ${shown.time}; ${said}. Say it there, or show it on the picture.`;
    }),
    ...asked,
  ];
}

/** Letters at which players cut a chapter's title off when it is pointed at. */
const TITLE = 49;

function chapterLines({ chapters, noChapters, description }: Omit<Wrap, "beforeUpload">): readonly string[] {
  if (noChapters !== undefined) return [noChapters];
  const lines = description.text.split("\n").map((line) => line.trim());
  const starts = lines.flatMap((line) => /^[[(]?((?:\d+:)?\d{1,2}:\d{2})\b/.exec(line)?.[1] ?? []);
  const listed = new Set(chapters.map(({ time }) => time));
  const stray = starts.find((time) => !listed.has(time));
  return [
    ...(starts.length > 0 && starts[0] !== "0:00"
      ? [`The first time in the description is ${starts[0]}, so no site shows chapters.`]
      : []),
    ...(stray === undefined ? [] : [`A line of the description begins with ${stray}, which is no chapter.`]),
    ...chapters
      .filter(({ at, until }) => until - at < 10)
      .map(({ time, title }) => `${time} ${title} is shorter than ten seconds.`),
    ...chapters
      .filter(({ title }) => title.length > TITLE)
      .map(({ time, title }) => `${time} ${title} has ${title.length} letters; players cut it off at ${TITLE}.`),
  ];
}

function descriptionLines({ description: { length, limit, cut } }: Omit<Wrap, "beforeUpload">): readonly string[] {
  return cut.length === 0
    ? []
    : [`It has ${length} of at most ${limit} letters, and this was left out: ${cut.join(", ")}.`];
}

/** Share of a film that may be silent at its end. */
const SILENT_END = 0.2;

function captionLines({ wrap, tooFull, fast, captionsEnd, isLengthKnown }: BeforeUploadRequest): readonly string[] {
  const length = wrap.length * 1000;
  const endsEarly = wrap.captions !== undefined && isLengthKnown && captionsEnd < length * (1 - SILENT_END);
  const wrong = wrap.problems.filter(({ severity }) => severity !== "hint");
  const how = {
    "long line": `a line is longer than ${captionLimits.line} letters`,
    "more lines": "it has a third line",
    "too fast": "there is little time to read it",
  };
  return [
    ...(wrap.captions === undefined ? ["There are no captions yet."] : []),
    ...(endsEarly
      ? [`The captions end at ${sayTime(captionsEnd)} and the film at ${sayTime(length)}: are they of this cut?`]
      : []),
    ...wrong.map(({ what, file, line }) => `${what} (${file}:${line})`),
    ...tooFull.map(({ time, what }) => `${time} with the right name ${how[what]}.`),
    ...(fast.length === 0
      ? []
      : [
          `${sayPlural(fast.length, "caption", "captions")} of the clean set ${fast.length === 1 ? "goes" : "go"} by faster than most can read, the first at ${fast[0]?.time}; nothing was left out.`,
        ]),
  ];
}

export function beforeUploadPage({ title, beforeUpload: checks, noticesSpoken }: Wrap): string {
  const spoken = noticesSpoken.flatMap(({ thing, spoken: at }) =>
    at === undefined ? [] : [`${thing}: said at ${at.time}.`],
  );
  const lines = checks.flatMap(({ what, isDone, lines: open }, index) => [
    `- [${isDone ? "x" : " "}] ${what}`,
    ...[...(index === 0 ? spoken : []), ...open].map((line) => `  - ${line}`),
  ]);
  return `# Before you upload: ${title}\n\n${lines.join("\n")}\n`;
}
