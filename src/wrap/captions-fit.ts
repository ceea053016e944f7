/** What a name set right does to a caption: longer lines, more of them, less time to read. Nothing is timed anew for it. */

import { shownText } from "./caption-text.ts";
import { captionLimits } from "./clean-captions.ts";
import { moment } from "./moments.ts";
import type { Cue } from "./read-captions.ts";
import type { Moment } from "./wrap.ts";

export interface CaptionTooFull extends Moment {
  readonly what: "long line" | "more lines" | "too fast";
}

/** Only what the corrections made so; how the captions were before is their maker's. */
export function grewTooFull(before: readonly Cue[], after: readonly Cue[]): readonly CaptionTooFull[] {
  return after.flatMap((cue, index): CaptionTooFull[] => {
    const was = before[index];
    if (was === undefined || was.text === cue.text) return [];
    const [old, now] = [measured(was), measured(cue)];
    const at = moment(cue.start);
    if (now.longest > captionLimits.line && now.longest > old.longest) return [{ ...at, what: "long line" }];
    if (now.lines > captionLimits.lines && now.lines > old.lines) return [{ ...at, what: "more lines" }];
    if (now.letters <= old.letters) return [];
    const isFast = now.letters > captionLimits.letters || wordsASecond(now) > captionLimits.words;
    return isFast ? [{ ...at, what: "too fast" }] : [];
  });
}

function measured({ text, start, end }: Cue) {
  const lines = shownText(text)
    .text.split("\n")
    .map((line) => line.trim());
  const seconds = Math.max(1, end - start) / 1000;
  const shown = lines.join(" ");
  return {
    lines: lines.length,
    longest: Math.max(...lines.map(({ length }) => length)),
    letters: shown.length / seconds,
    shown,
    seconds,
  };
}

function wordsASecond({ shown, seconds }: ReturnType<typeof measured>): number {
  return shown.split(/\s+/).length / seconds;
}
