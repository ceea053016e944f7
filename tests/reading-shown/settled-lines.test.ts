/** Lines the person has settled: the plain line below says what counts, and the words above stay as they are. */
import { describe, expect, it } from "vitest";
import type { Records } from "../../src/model.ts";
import { factsOf } from "../note-lines/a-garden.ts";
import { problemsOf, recordsOf } from "../records/records-of.ts";

const garden = {
  "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
  "varieties/musselburgh.md": "---\ntitle: Musselburgh\ncrop: leek\n---\n",
};

function read(note: string): Promise<Records> {
  return recordsOf({ ...garden, "notes/2026-05-20.md": note });
}

function problems(note: string): Promise<readonly string[]> {
  return problemsOf({ ...garden, "notes/2026-05-20.md": note });
}

const planted = { kind: "planted", count: 12, variety: "musselburgh", bed: "long-bed" };

describe("a settled line", () => {
  it("gives the facts of the plain line, in the person's words and at their place", async () => {
    const { events, readings, notes } = await read(
      "- leeks went in today\n  - = planted 12 Musselburgh in Long Bed\n- wet\n",
    );
    expect(events).toHaveLength(1);
    expect(factsOf(events[0] as never)).toMatchObject(planted);
    expect(events[0]).toMatchObject({
      id: "notes/2026-05-20.md:1",
      text: "leeks went in today",
      place: { file: "notes/2026-05-20.md", line: 1, column: 3 },
      more: [],
    });
    expect(readings.map(({ text, as, place }) => [place.line, text, as])).toEqual([
      [1, "leeks went in today", "facts"],
      [3, "wet", "story"],
    ]);
    expect(notes[0]?.story.map(({ text }) => text)).toEqual(["- wet"]);
  });

  it("wins over what its own words would be read as", async () => {
    const { events } = await read("- planted 24 Musselburgh in Long Bed\n  - = planted 12 Musselburgh in Long Bed\n");
    expect(events.map(({ count }) => count?.value)).toEqual([12]);
  });

  it("may take several plain lines, and keeps what stands below it", async () => {
    const { events } = await read(
      "1. out with the peas, in with the leeks\n" +
        "   - = cleared peas from Long Bed\n" +
        "   - = planted 12 Musselburgh in Long Bed\n" +
        "   - under mesh\n",
    );
    expect(events.map(({ id, kind, more }) => [id, kind, more])).toEqual([
      ["notes/2026-05-20.md:1", "cleared", ["under mesh"]],
      ["notes/2026-05-20.md:1/2", "planted", ["under mesh"]],
    ]);
  });

  it("holds no fact when that is what the person said", async () => {
    const { events, readings, notes } = await read(
      "- planted 24 Musselburgh in Long Bed\n  - = story\n  - in my dreams\n- wet\n",
    );
    expect(events).toEqual([]);
    expect(readings[0]).toMatchObject({ as: "story", text: "planted 24 Musselburgh in Long Bed" });
    expect(notes[0]?.story.map(({ text }) => text)).toEqual([
      "- planted 24 Musselburgh in Long Bed\n  - in my dreams\n- wet",
    ]);
  });

  it("may be a paragraph, which stays story, with the answer below an empty line", async () => {
    const { events, readings, notes } = await read(
      "We got the leeks in\nbefore the rain.\n\n- = planted 12 Musselburgh in Long Bed\n- picked 2 kg peas\n\nLater it rained.\n",
    );
    expect(events.map(({ kind, text, place }) => [kind, text, place.line])).toEqual([
      ["planted", "We got the leeks in before the rain.", 1],
      ["picked", "picked 2 kg peas", 5],
    ]);
    expect(readings.map(({ text, as, lastLine }) => [text, as, lastLine])).toEqual([
      ["We got the leeks in before the rain.", "facts", 2],
      ["picked 2 kg peas", "facts", 5],
      ["Later it rained.", "story", 7],
    ]);
    expect(notes[0]?.story.map(({ text }) => text)).toEqual([
      "We got the leeks in\nbefore the rain.",
      "Later it rained.",
    ]);
  });

  it("speaks of the bed its words stand under", async () => {
    const { events } = await read("- Long Bed:\n  - leeks in\n    - = planted 12 Musselburgh\n");
    expect(events.map(({ bed, text }) => [bed, text])).toEqual([["long-bed", "leeks in"]]);
  });

  it("is found below an item of a list that shares its verb, and beside it", async () => {
    const { events, readings } = await read(
      "- Planted in Long Bed:\n  - 6 Musselburgh\n  - the rest\n    - = lost 2 Musselburgh to frost\n- leeks up\n- = up: Musselburgh\n",
    );
    expect(events.map(({ kind, variety, count }) => [kind, variety, count?.value])).toEqual([
      ["planted", "musselburgh", 6],
      ["lost", "musselburgh", 2],
      ["up", "musselburgh", undefined],
    ]);
    expect(readings.map(({ text }) => text)).toEqual(["6 Musselburgh", "the rest", "leeks up"]);
  });

  it("is a name's witness as any line is", async () => {
    const { varieties } = await read('- got the BS in\n  - = planted 6 "Bleu de Solaise" leek in Long Bed\n');
    expect([...varieties.keys()]).toEqual(["bleu-de-solaise", "musselburgh"]);
  });
});

describe("what settles nothing", () => {
  it("is told where it stands when it cannot be read", async () => {
    expect(await problems("- leeks went in\n  - = twelve of the good ones\n")).toEqual([
      "notes/2026-05-20.md:2:5 warning note/settled-unread\n" +
        '  "twelve of the good ones" says how the line above it is read, and gives no fact itself.\n' +
        '  Write it as in docs/notes.md, with the verb first; or write "= story" when the line above holds no fact.',
    ]);
  });

  it("is told when nothing stands above it", async () => {
    for (const note of [
      "- = planted 12 Musselburgh in Long Bed\n",
      "# Leeks\n\n- = up: Musselburgh\n",
      "-\n  - = up: Musselburgh\n",
    ]) {
      const told = await problems(note);
      expect(told, note).toHaveLength(1);
      expect(told[0], note).toContain("note/settled-unread\n  A line that begins with");
    }
  });

  it("is a person's own mark", async () => {
    const {
      readings,
      events,
      problems: found,
    } = await read("- wet\n  - => drainage\n  - == rain ==\n  - \\= up: leeks\n");
    expect(events).toEqual([]);
    expect(readings.map(({ text }) => text)).toEqual(["wet", "=> drainage", "== rain ==", "= up: leeks"]);
    // The last names leeks, so it is asked about as any line is.
    expect(found.map(({ rule, line }) => [rule, line])).toEqual([["note/question", 4]]);
  });
});

describe("a day in figures", () => {
  const note = "- the leeks went in\n  - = planted 12 Musselburgh in Long Bed on 4/23\n";
  const line = "- planted 12 Musselburgh in Long Bed on 4/5\n";

  it("is month and day in a garden of US units, whatever its English", async () => {
    const files = { ...garden, "garden.md": "---\nunits: us\n---\n", "notes/2026-05-20.md": note + line };
    const { events, problems: found } = await recordsOf(files);
    expect(events.map(({ day, count }) => [day, count?.value])).toEqual([
      ["2026-04-05", 12],
      ["2026-04-23", 12],
    ]);
    expect(found.filter(({ rule }) => rule === "note/unclear-day")).toEqual([]);
  });

  it("is asked about elsewhere, where it can be two", async () => {
    expect((await problems(note + line)).filter((one) => one.includes("two ways"))).toHaveLength(1);
  });
});
