/**
 * Sample sizes in each of two groups for an unpaired t-test, two-tailed 0.05, power 80 %, by Cohen's d: MRC Cognition and Brain
 * Sciences Unit, StatsWiki, FAQ/dunp (https://imaging.mrc-cbu.cam.ac.uk/statswiki/FAQ/dunp; seen 2026-11-29).
 */
export const publishedSizes: readonly (readonly [apart: number, size: number])[] = [
  [0.1, 1568],
  [0.2, 393],
  [0.3, 175],
  [0.4, 100],
  [0.5, 64],
  [0.6, 45],
  [0.7, 34],
  [0.8, 26],
  [0.9, 21],
  [1, 17],
  [1.1, 15],
  [1.2, 13],
  [1.3, 11],
];
