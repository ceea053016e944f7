/**
 * What a film costs in time: its words, and what stands beside them: one table, seconds each.
 *
 * Source of every row: common practice of people who film alone in a garden, rounded; no standard gives them. Words are
 * counted at the garden's own narration rate (see `secondsToSay`), so a slower speaker's film holds less and a row here
 * need not be changed for it.
 */

/** How a thing is filmed while it is told. */
export type Handling = "to camera" | "close-up" | "comparison" | "demonstration";

export const filmTime = {
  /** The greeting and one opening line, before the first stop. */
  opening: 12,
  /** The last look round and the goodbye. */
  goodbye: 8,
  /** Walking up to a stop; the line that leads there is spoken over it. */
  walk: 6,
  /** The stop as a whole, held before anything is said. */
  wide: 4,
  handling: {
    /** Spoken to the camera; the picture is there already. */
    "to camera": 1,
    /** Moving in, finding focus, holding still. */
    "close-up": 4,
    /** Two things side by side, or a photo of then beside now, each held long enough to be looked at. */
    comparison: 7,
    /** Hands do something: a net is lifted, a root is dug, seed is shaken out. */
    demonstration: 10,
  } satisfies Readonly<Record<Handling, number>>,
} as const;

/** Time that passes in the garden and not in the film: it moves the clock and leaves the film's length alone. */
export const offFilm = {
  /** Finding the spot, matching the photo, one take that is thrown away. Seconds a stop. */
  setUp: 60,
  /** Packing up at one site and unpacking at the next. Seconds. */
  changeOfSite: 240,
  /** A person who carries a camera, metres a second: 4 km an hour. */
  walkingPace: 1.1,
  /** Sites further apart than this are driven or cycled to, at a town's pace, metres a second: 25 km an hour. */
  furthestWalk: 1500,
  ride: 7,
  /** One step, metres. */
  step: 0.75,
} as const;

/** Film time of a stop beside what is shown there. */
export const stopOverhead = filmTime.walk + filmTime.wide;

/**
 * Seconds to say a text aloud at a rate in words a minute. A word is what stands between spaces; a number with digits is
 * counted as two, because "24 May" and "2.5 kg" take about twice as long to say as to read (common practice of
 * narrators; the usual band is 120 to 160 words a minute).
 */
export function secondsToSay(text: string, wordsAMinute: number): number {
  let words = 0;
  for (const word of text.split(/\s+/)) {
    if (word !== "") words += /\d/.test(word) ? 2 : 1;
  }
  return Math.round((words * 60) / wordsAMinute);
}
