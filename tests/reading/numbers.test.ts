/** What each number of a line is a number of: what it comes to, and what it only names. */
import { expect, it } from "vitest";
import { seenIn } from "../../src/records/reading/find-mentions.ts";
import type { AmountMention } from "../../src/records/reading/mention.ts";
import { gardenNames, noteDay } from "../note-lines/a-garden.ts";

const names = gardenNames();

function numbersOf(text: string): readonly (string | number | boolean)[][] {
  return seenIn(text, { names, noteDay, system: "metric", monthFirst: false })
    .mentions.filter((one): one is AmountMention => one.type === "amount")
    .map(({ use, value, sum, each }) => [
      use,
      value,
      ...(sum === true ? ["sum"] : []),
      ...(each === true ? ["each"] : []),
    ]);
}

it.each<readonly [string, readonly (string | number)[][]]>([
  ["two 210 trays of leeks", [["count", 420]]],
  ["leeks, 38-cell x 2", [["count", 76]]],
  ["leeks, four trays of 84", [["count", 336]]],
  ["leeks in three drifts of five", [["count", 15]]],
  ["leeks, 4 rows × 10", [["count", 40]]],
  [
    "leeks, 60 a tray = 240",
    [
      ["count", 60],
      ["count", 240, "sum"],
    ],
  ],
  [
    "two leeks to a pot, thirty in total",
    [
      ["count", 2],
      ["count", 30, "sum"],
    ],
  ],
  ["leeks and onions, 9 seeds of each", [["count", 9, "each"]]],
  ["leeks 33 / 40 through", [["share", 33]]],
  [
    "2. Heads of the best four leeks kept",
    [
      ["label", 2],
      ["count", 4],
    ],
  ],
  ["leeks in box 2", [["label", 2]]],
  [
    "of the five young leeks three are eaten",
    [
      ["label", 5],
      ["count", 3],
    ],
  ],
  ["leeks in, the old ugly one", [["label", 1]]],
  ["leeks up in every hole bar two", [["label", 2]]],
  ["leeks in before it drops under 50", [["label", 50]]],
  ["24 P. Javelin", [["count", 24]]],
  ["leeks at 24 p each", [["price", 24]]],
  ["both trays of leeks", []],
  // A bed that no file describes, by its number.
  ["Wicking Bed Three: pulled 20 carrots", [["count", 20]]],
  ["Wicking Bed Two: 20 carrots", [["count", 20]]],
  ["planted two: carrots", [["count", 2]]],
  // A day; one that is still to come, or long gone, is none and counts nothing; of what came up it is a share.
  ["picked the first Sungold 5/5", []],
  ["picked the first Sungold 5/6", [["label", 0]]],
  ["picked the first Sungold 9/12", [["label", 0]]],
  ["Sungold 9/12 up", [["share", 9]]],
])("%s", (text, expected) => {
  expect(numbersOf(text)).toEqual(expected);
});
