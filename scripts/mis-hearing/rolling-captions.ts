/** Automatic captions as they are downloaded: two lines that roll, each word with its time, each line shown again. */
import { writeTime } from "../../src/wrap/caption-times.ts";
import { type Random, randomFrom } from "../random.ts";
import type { HeardWord } from "./automatic-words.ts";

const LINE_LENGTH = 36;
/** Milliseconds for which a finished line is shown alone before the next one begins under it. */
const FLASH = 10;
/** Silence before a word, in milliseconds, from which a sound may be described. */
const PAUSE = 900;
const SOUNDS = ["[Music]", "[Wind]", "[Laughter]"];

export function rollingCaptions(words: readonly HeardWord[], seed: string): string {
  const random = randomFrom(`${seed} sounds`);
  const lines = linesOf(words, random);
  const cues: string[] = [];
  lines.forEach((line, index) => {
    const from = (line.words[0] as HeardWord).at;
    const next = lines[index + 1]?.words[0]?.at ?? (line.words.at(-1) as HeardWord).end + 500;
    const to = Math.max(from + 200, next);
    const above = lines[index - 1];
    cues.push(cue(from, to - FLASH, `${above === undefined ? " " : written(above)}\n${timed(line)}`));
    cues.push(cue(to - FLASH, to, `${written(line)}\n `));
  });
  return `WEBVTT\nKind: captions\nLanguage: en\n\n${cues.join("\n")}`;
}

interface Line {
  readonly words: HeardWord[];
  readonly sound?: string | undefined;
}

function linesOf(words: readonly HeardWord[], random: Random): readonly Line[] {
  const lines: Line[] = [];
  let line: Line | undefined;
  words.forEach((word, index) => {
    const paused = index > 0 && word.at - (words[index - 1] as HeardWord).at > PAUSE;
    const sound = index === 0 || (paused && random() < 0.04) ? SOUNDS[Math.floor(random() * SOUNDS.length)] : undefined;
    const length = line?.words.reduce((sum, { text }) => sum + text.length + 1, 0) ?? 0;
    if (line === undefined || sound !== undefined || length + word.text.length > LINE_LENGTH) {
      line = { words: [], sound };
      lines.push(line);
    }
    line.words.push(word);
  });
  return lines;
}

function written({ words, sound }: Line): string {
  return [...(sound === undefined ? [] : [sound]), ...words.map(({ text }) => text)].join(" ");
}

function timed({ words, sound }: Line): string {
  const [first, ...rest] = words as [HeardWord, ...HeardWord[]];
  const times = rest.map(({ text, at }) => `<${writeTime(at, "vtt")}><c> ${text}</c>`);
  return `${sound === undefined ? "" : `${sound} `}${first.text}${times.join("")}`;
}

function cue(from: number, to: number, text: string): string {
  return `${writeTime(from, "vtt")} --> ${writeTime(to, "vtt")} align:start position:0%\n${text}\n`;
}
