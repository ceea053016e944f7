/** Every way that a question offers is written as plain lines; these must say what was shown, and nothing else. */
import { describe, expect, it } from "vitest";
import { readCorpora } from "../../scripts/reading/corpus.ts";
import { contextOf, gardensOf, type LineGarden } from "../../scripts/reading/examples.ts";
import { printEvent, readNoteLine } from "../../src/records/index.ts";
import { readLine } from "../../src/records/reading/read-line.ts";
import { garden, names, reading } from "./a-reader.ts";

const place = { file: "notes/n.md", line: 1, column: 1 };
/** Of the lines of strangers each so many is tried. */
const each = 9;

describe("what a question offers", () => {
  it("reads back as it was shown, whatever kind it is of", () => {
    const { lines, gardens: all } = readCorpora("tests/corpus/learn");
    const gardens = gardensOf({ lines, gardens: all });
    const kinds = new Set<string>();
    const wrong: string[] = [];
    for (const line of lines.filter((_, at) => at % each === 0)) {
      const where = gardens.get(line.gardener) as LineGarden;
      const { line: context, find } = contextOf(line, where);
      const own = { text: line.text, more: [], place };
      const mark = where.names.mark();
      const { readings } = readLine(
        own,
        { ...context, monthFirst: find.monthFirst },
        { prose: false, lastLine: 1 },
      ).reading;
      for (const { line: offered, events } of readings) {
        const plain = offered.split("\n");
        expect(plain).toHaveLength(events.length);
        for (const [at, text] of plain.entries()) {
          const read = readNoteLine({ ...own, text }, context)?.events ?? [];
          const [event] = read;
          // The unit in which an amount was said stands in the person's own words.
          const said = event === undefined ? "" : printEvent({ ...event, text: line.text }, where.names, context.units);
          // A name taken in other letters is the same name.
          const isSame = (a: string, b: string) => a.replaceAll("œ", "oe") === b.replaceAll("œ", "oe");
          const withDay = event === undefined || event.day === line.date ? said : `${said} on ${event.day}`;
          if (read.length !== 1 || !isSame(withDay, text) || event?.kind !== events[at]?.kind)
            wrong.push(`${text} → ${withDay}`);
          else if (event !== undefined) kinds.add(event.kind);
        }
      }
      where.names.backTo(mark);
    }
    expect(wrong).toEqual([]);
    expect(kinds.size).toBeGreaterThan(25);
  });

  it("tells what a plant has that no file describes from the plant itself", () => {
    const own = { text: "", more: [], place };
    const context = { note: { id: "n", day: "2026-06-14", private: false }, beds: [], names };
    const read = (text: string) => {
      const mark = names.mark();
      const found = readNoteLine({ ...own, text }, context)?.events.map(
        ({ kind, cause, variety, crop, what, bed }) => ({
          ...{ kind, cause, variety, crop, what, bed },
        }),
      );
      names.backTo(mark);
      return found?.map((one) => Object.fromEntries(Object.entries(one).filter(([, value]) => value !== undefined)));
    };
    expect(read('trouble: leaf curl on "Moorpark" apricot in Long Bed')).toEqual([
      { kind: "trouble", cause: "leaf curl", variety: "moorpark", bed: "long-bed" },
    ]);
    expect(read("trouble: leeks in Long Bed")).toEqual([
      { kind: "trouble", cause: "trouble", crop: "leek", bed: "long-bed" },
    ]);
    expect(read('did: haulm off all of it, only "Kestrel" potato, in Long Bed')).toEqual([
      { kind: "did", variety: "kestrel", what: "haulm off all of it", bed: "long-bed" },
    ]);
  });

  it("keeps the words of each plant with it", () => {
    const two = reading("the kale is knee high and the leeks are pencil thick");
    expect(
      [...two.events, ...two.readings.flatMap(({ events }) => events)].map(({ crop, what }) => [crop, what]),
    ).toEqual([
      ["kale", "knee high"],
      ["leek", "pencil thick"],
    ]);
    expect(garden.beds).toContain("Long Bed");
  });
});
