/** A small garden and the real reader, for lines read one by one. */

import { type CorpusGarden, namesOfGarden } from "../../scripts/reading/corpus.ts";
import type { LineReading } from "../../src/model.ts";
import type { Names } from "../../src/records/names.ts";
import { readLine } from "../../src/records/reading/read-line.ts";

export const garden: CorpusGarden = {
  units: "metric",
  lang: "en-GB",
  tz: "Europe/London",
  beds: ["Long Bed", "Cold Frame", "Squash Bed"],
  varieties: [
    ["Crown Prince", "squash"],
    ["Musselburgh", "leek"],
    ["Sungold", "tomato"],
    ["Aquadulce", "broad bean"],
  ],
};

export const names: Names = namesOfGarden(garden);

export function reading(
  text: string,
  { prose = false, with: those = names }: { prose?: boolean; with?: Names } = {},
): LineReading {
  const mark = those.mark();
  const read = readLine(
    { text, more: [], place: { file: "notes/n.md", line: 1, column: 1 } },
    {
      note: { id: "n", day: "2026-06-14", private: false },
      beds: ["long-bed"],
      names: those,
      units: "metric",
      southern: false,
      monthFirst: false,
    },
    { prose, lastLine: 1 },
  );
  those.backTo(mark);
  return read.reading;
}
