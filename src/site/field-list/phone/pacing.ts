/** How the words of the talking view move: each paragraph passes the reading line in the time it takes to say it. */

export interface SpokenPart {
  readonly words: number;
  /** Height on the screen with the gap below it, pixels. */
  readonly height: number;
}

export function wordsIn(text: string): number {
  return text.split(/\s+/).filter((word) => word !== "").length;
}

/** Pixels scrolled after so many seconds, at a rate in words a minute. */
export function scrolledAfter(seconds: number, parts: readonly SpokenPart[], rate: number): number {
  let left = seconds;
  let scrolled = 0;
  for (const { words, height } of parts) {
    const lasts = (words * 60) / rate;
    if (left < lasts) return scrolled + (height * left) / lasts;
    left -= lasts;
    scrolled += height;
  }
  return scrolled;
}

/** The other way round: where the telling is when a hand has scrolled there. */
export function secondsAt(scrolled: number, parts: readonly SpokenPart[], rate: number): number {
  let left = scrolled;
  let seconds = 0;
  for (const { words, height } of parts) {
    const lasts = (words * 60) / rate;
    if (left < height) return seconds + (lasts * Math.max(0, left)) / height;
    left -= height;
    seconds += lasts;
  }
  return seconds;
}
