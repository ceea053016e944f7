/** A row of the table of truth, and how the table is printed. */

export interface TruthRow {
  readonly quantity: string;
  /** How many were compared. */
  readonly cases: number;
  /** The greatest difference, or the figure itself where a share is what counts. */
  readonly found: string;
  /** Whose figures, or what known truth. Says so where these come from memory. */
  readonly against: string;
  readonly goal: string;
  /** Undefined where there is no goal, and the figure is only shown. */
  readonly met?: boolean | undefined;
}

/** Gives the rows of one subject. */
export type RowMaker = () => Promise<readonly TruthRow[]> | readonly TruthRow[];

const heads = ["quantity", "cases", "greatest difference", "against what", "goal", "met"] as const;

/** Whether every goal is met. */
export function printTable(rows: readonly TruthRow[]): boolean {
  const cells = rows.map(({ quantity, cases, found, against, goal, met }) => [
    quantity,
    cases.toLocaleString("en-GB"),
    found,
    against,
    goal,
    met === undefined ? "" : met ? "yes" : "NO",
  ]);
  const all = [heads, heads.map((head) => "-".repeat(head.length)), ...cells];
  const widths = heads.map((_, at) => Math.max(...all.map((row) => (row[at] ?? "").length)));
  for (const row of all)
    console.log(
      row
        .map((cell, at) => cell.padEnd(widths[at] ?? 0))
        .join("  ")
        .trimEnd(),
    );
  return rows.every(({ met }) => met !== false);
}

/** "3.2 %" */
export function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}
