/** What was not so, was another year's, is only thought of or still to come never stands as a fact. */
import { describe, expect, it } from "vitest";
import { reading } from "./a-reader.ts";

const factual = [
  "sowed 24 Musselburgh leek indoors",
  "planted 6 Crown Prince in Squash Bed",
  "picked 1.4 kg Sungold",
  "lost 3 Musselburgh to slugs",
  "up: Aquadulce",
  "cleared Aquadulce from Long Bed",
  "potted on 12 Sungold",
  "first flower: Crown Prince",
  "Sungold 900 g",
  "12 leeks planted in Long Bed",
  "peas are up",
  "first radishes, 12",
  "850 g of courgettes from the cold frame",
  "broad beans in flower",
  "6 Crown Prince in",
  "watered Long Bed",
];

/** Kinds that are said of what is still to come. */
const ofTheFuture = new Set(["to do", "plan", "promised", "asked"]);

const doubts: readonly [string, (line: string) => string][] = [
  ["last year before", (line) => `last year ${line}`],
  ["last year behind", (line) => `${line} last year`],
  ["last year in a clause behind", (line) => `${line}, last year`],
  ["might before", (line) => `might have ${line}`],
  ["might with a colon", (line) => `might: ${line}`],
  ["not before", (line) => `not ${line}`],
  ["didn't", (line) => `didn't: ${line}`],
  ["next week behind", (line) => `${line} next week`],
  ["next week before", (line) => `next week ${line}`],
  ["next week in a clause behind", (line) => `${line}, next week`],
  ["perhaps before", (line) => `perhaps ${line}`],
  ["if before", (line) => `if only: ${line}`],
];

describe.each(doubts)("%s", (_, doubt) => {
  it.each(factual)("takes %s from being a fact", (line) => {
    const { as, events } = reading(doubt(line));
    const stands = as === "facts" && events.some(({ kind }) => !ofTheFuture.has(kind));
    expect(stands ? `${doubt(line)}: ${events.map(({ kind }) => kind).join(", ")}` : "").toBe("");
  });
});

describe("the same lines without doubt", () => {
  it("are read, so that the tests above try something", () => {
    const read = factual.filter((line) => reading(line).as === "facts");
    expect(read.length).toBeGreaterThanOrEqual(11);
  });
});
