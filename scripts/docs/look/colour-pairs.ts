/** Which colour stands on which, how far apart they must be, and why: the style page shows it, a test holds it. */

export interface ColourPair {
  readonly on: string;
  readonly ground: string;
  /** The least contrast. */
  readonly least: number;
  /** What it is for. */
  readonly use: "text" | "edge";
}

/**
 * Text reaches 7 to 1 (WCAG 2.2, 1.4.6, AAA): a phone in the sun loses most of its contrast, and paper goes grey in a
 * pocket. Edges of what can be pressed, and lines that tell something, reach 3 to 1 (1.4.11).
 */
export const colourPairs: readonly ColourPair[] = [
  ...["paper", "plate", "zinc-wash"].flatMap((ground) =>
    ["pencil", "quiet"].map((on) => ({ on, ground, least: 7, use: "text" as const })),
  ),
  { on: "flower", ground: "paper", least: 7, use: "text" },
  { on: "flower", ground: "plate", least: 7, use: "text" },
  { on: "paper", ground: "pencil", least: 7, use: "text" },
  { on: "on-soil", ground: "soil", least: 7, use: "text" },
  { on: "on-band", ground: "band", least: 7, use: "text" },
  { on: "on-label", ground: "label", least: 7, use: "text" },
  { on: "zinc", ground: "paper", least: 3, use: "edge" },
];
