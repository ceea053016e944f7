/** What held how often, as one table at the end of `npm run trust`. */

export interface TrustRow {
  readonly what: string;
  readonly cases: number;
  /** What did not hold, a sentence each. */
  readonly failed: readonly string[];
  /** A figure worth seeing, such as the longest time. */
  readonly seen?: string | undefined;
}

/** Says it at once, since the table comes after many minutes. */
export function done(row: TrustRow): TrustRow {
  console.error(
    `${row.what}: ${row.cases} cases, ${row.failed.length === 0 ? "held" : `failed:\n  ${row.failed.slice(0, 5).join("\n  ")}`}`,
  );
  return row;
}

/** Whether everything held. */
export function printTable(rows: readonly TrustRow[]): boolean {
  const cells = rows.map(({ what, cases, failed, seen = "" }) => [
    what,
    cases.toLocaleString("en-GB"),
    failed.length === 0 ? "held" : `${failed.length} FAILED`,
    seen,
  ]);
  const all = [["what", "cases", "outcome", "seen"], ...cells];
  const widths = [0, 1, 2].map((at) => Math.max(...all.map((row) => row[at]?.length ?? 0)));
  for (const row of all)
    console.log(
      row
        .map((cell, at) => cell.padEnd(widths[at] ?? 0))
        .join("  ")
        .trimEnd(),
    );
  for (const { what, failed } of rows)
    for (const sentence of failed.slice(0, 20)) console.log(`\n${what}: ${sentence}`);
  return rows.every(({ failed }) => failed.length === 0);
}
