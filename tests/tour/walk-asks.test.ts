/** What is worth asking in three gardens of strangers, read aloud once and kept: a question that sounds wrong shows here. */
import path from "node:path";
import { expect, test } from "vitest";
import { openRecordsFolder, readRecords } from "../../src/records/index.ts";
import { growGarden } from "../../src/timeline/index.ts";
import { askedNow, makeCards } from "../../src/tour/index.ts";

const asks = {
  "midwest-canning": {
    day: "2026-08-15",
    asked: [
      "Where did the Danvers carrots come from?",
      "Where did the Detroit Dark beets come from?",
      "Which variety is the sweet corn in Corn Block?",
    ],
  },
  "leipzig-balcony": { day: "2026-07-25", asked: ["Which variety are the radishes in the railing boxes?"] },
  "nant-y-gof": {
    day: "2026-07-18",
    asked: [
      "Where did the Nero di Toscana kale come from?",
      "Where did the January King cabbages come from?",
      "Which variety are the gooseberries in Fruit Bank?",
    ],
  },
};

test.each(Object.entries(asks))("%s", async (name, { day, asked }) => {
  const folder = await openRecordsFolder(path.resolve("tests/walks", name, "records"));
  const garden = growGarden(await readRecords(folder, { today: day }), []);
  expect(askedNow(garden, day).map(({ text }) => text)).toEqual(asked);
  expect(makeCards(garden, { day, today: day }).cover.asks.map(({ text }) => text)).toEqual(asked);
});
