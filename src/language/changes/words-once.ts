/** What a line says behind several plants ("…, sweeter than last year") is told with one of its changes, as the person said it once. */
import type { Change } from "../../model.ts";

/** With the last of them, whose name it stands behind. */
export function withWordsOnce(changes: readonly Change[]): readonly Change[] {
  const told = new Set<string>();
  return changes
    .toReversed()
    .map((change) => {
      const { line } = change.told;
      if (line?.detail === undefined) return change;
      const key = `${line.place.file}:${line.place.line}:${line.kind}: ${line.detail}`;
      // A line of one event, told of two plantings, keeps its words with both: they may be told apart.
      const first = told.has(key) && !told.has(line.id);
      told.add(key).add(line.id);
      return first ? withoutDetail(change) : change;
    })
    .reverse();
}

function withoutDetail(change: Change): Change {
  const { told } = change;
  return { ...change, told: { ...told, line: { ...told.line, detail: undefined } } as Change["told"] };
}
